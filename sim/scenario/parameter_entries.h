// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers of the plant and of the unit as files set them. Used by the readers only.
#pragma once

#include <vector>

#include "fault/fault.h"
#include "scenario/table_reader.h"

namespace cabwright::scenario {

/// One line of a file: the numbers it speaks of (several when the instance is left out).
struct ParameterEntry {
  std::string written;
  std::vector<fault::ParameterRef> parameters;
  double value = 0;
  FilePlace at;  ///< of the value
  [[nodiscard]] bool isExact() const {
    return parameters.size() == 1 && fault::nameOf(parameters.front()) == written;
  }
};

/// Names, types, units and bounds are checked; what is wrong goes to the sink and is left out.
[[nodiscard]] std::vector<ParameterEntry> readParameters(const std::vector<FlatEntry>& flat,
                                                         FaultSink& sink);

/// Those of all instances first, then those of one, whatever their order in the file.
void applyParameters(const std::vector<ParameterEntry>& entries, plant::Parameters& plant,
                     unit::UnitParameters& unit);

}  // namespace cabwright::scenario
