// SPDX-License-Identifier: GPL-3.0-or-later
// Steps of a guide out of tables. Used by the readers only.
#pragma once

#include "scenario/guide.h"
#include "scenario/table_reader.h"

namespace cabwright::scenario {

inline constexpr std::size_t kMostSteps = 500;

/// A step as it is written, with the places later checks point at.
struct WrittenStep {
  GuideStep step;
  FilePlace id_at;
  std::optional<std::string> before, after;
  FilePlace beside_at;
};

/// Reads one step; what is wrong goes to the sink. `own`: of a scenario, "before" and "after" are
/// allowed.
[[nodiscard]] WrittenStep readGuideStep(TableReader& table, bool own);

/// All of a list, each id once.
[[nodiscard]] std::vector<WrittenStep> readGuideSteps(TableReader& root, bool own);

}  // namespace cabwright::scenario
