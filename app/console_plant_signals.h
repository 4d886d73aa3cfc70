// SPDX-License-Identifier: GPL-3.0-or-later
// The true values of the machine by name, in SI units, for the trace command.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "plant/readings.h"

namespace cabwright::console {

struct PlantSignal {
  std::string name;       ///< "plant.line1.crank"
  std::string_view unit;  ///< SI: "rad/s", "Pa" (absolute), "K" ...; "" for plain numbers
  std::string_view text;
  std::function<double(const plant::PlantReadings&)> of;
};

/// All of them, in the order of readings.h.
[[nodiscard]] std::vector<PlantSignal> makePlantSignals();

}  // namespace cabwright::console
