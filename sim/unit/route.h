// SPDX-License-Identifier: GPL-3.0-or-later
// The line as people see it: signals, platforms, stopping marks, speed limits, and under them the
// gradients and curves the train feels. Positions are metres along the line, of the kind the plant
// counts: car 1 leads towards growing positions.
#pragma once

#include <string>
#include <vector>

#include "plant/route.h"

namespace cabwright::unit {

struct RouteSignal {
  std::string name;  ///< a word: letters, digits, underscores; actions say "signal.NAME"
  double position_m = 0;
  int direction = 1;        ///< +1 for trains towards growing positions, -1 the other way
  double sighting_m = 400;  ///< from how far it can be seen
  bool clear = false;       ///< at the start of a run
};

struct Platform {
  std::string name;
  double from_m = 0, to_m = 0;  ///< from_m < to_m
  double mark_up_m = 0;    ///< where the front should stand, travelling towards growing positions
  double mark_down_m = 0;  ///< and the other way
  int side = 1;            ///< on side 1 or side 2 of the unit
};

struct SpeedLimit {
  double from_m = 0;  ///< holds from here on towards growing positions, in both directions
  double mph = 0;
};

struct Route {
  std::string name, title;
  std::vector<plant::GradePoint> grades;
  double easing_m = 40.0;
  std::vector<RouteSignal> signals;  ///< in any order
  std::vector<Platform> platforms;
  std::vector<SpeedLimit> limits;  ///< in order of from_m
  int display = 0;                 ///< number the destination displays should show, 0: any

  [[nodiscard]] plant::GradeProfile profile() const {
    return plant::GradeProfile(grades, easing_m);
  }
};

/// Length of the unit over its ends, m: its front is half of it ahead of the plant's position.
inline constexpr double kUnitLengthM = 40.0;

/// What is wrong with a route, one sentence each: double names, marks outside their platform,
/// numbers that are not finite, limits out of order. Empty when sound.
[[nodiscard]] std::vector<std::string> findRouteFaults(const Route& route);

}  // namespace cabwright::unit
