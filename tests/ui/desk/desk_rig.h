// SPDX-License-Identifier: GPL-3.0-or-later
// Runs of shipped exercises for the tests of the desk.
#pragma once

#include <filesystem>
#include <memory>
#include <stdexcept>
#include <string>

#include "cab/seat.h"
#include "session/situation.h"

namespace cabwright::tests {

inline std::unique_ptr<cab::Seat> makeSeat(const std::string& exercise, scenario::Mode mode) {
  const std::filesystem::path scenarios = std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios";
  const auto loaded =
      session::loadSituation((scenarios / exercise / "scenario.toml").string(), scenarios);
  if (!std::holds_alternative<session::Situation>(loaded)) throw std::runtime_error(exercise);
  session::LiveOptions options;
  options.mode = mode;
  return std::make_unique<cab::Seat>(
      std::make_unique<session::LiveRun>(std::get<session::Situation>(loaded), options));
}

}  // namespace cabwright::tests
