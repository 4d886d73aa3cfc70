// SPDX-License-Identifier: GPL-3.0-or-later
// Where air goes out to the atmosphere or comes in from it, opening by opening: what can be heard.
#pragma once

#include <array>

#include "plant/inputs.h"

namespace cabwright::plant {

/// Mass flows through the openings to the atmosphere, kg/s, never negative; out of air, into
/// vacuum. The flow laws are those of the rates (ISO 6358), so all of them together (but for the
/// horns, which have a note of their own) are what the ledgers of lost and drawn-in air take up.
struct Escapes {
  std::array<double, kCabs> drivers_valve{};  ///< applied, or passing to air in lap
  std::array<double, kCabs> guards_valve{};   ///< open or passing; each passes half of its leak
  std::array<double, kCabs> device_vent{}, device_choke{};
  std::array<double, kCabs> end{};              ///< hoses at the ends: off their dummies, leaking
  std::array<double, 2> side{}, trailer{};      ///< pipes along car 1 and car 2, by side
  double between = 0;                           ///< vacuum and air hoses between the cars
  double alarm = 0;                             ///< passenger alarm, on car 2
  double release_pipe = 0;                      ///< release pipe and its reservoir, on car 2
  std::array<double, kCylinders> chamber{};     ///< brake cylinders: leak and release cord
  std::array<double, kLines> exhauster_back{};  ///< backwards through a stopped exhauster
  std::array<double, kLines> gears{}, throttle{}, shift{};  ///< leaks and exhausts of the users
  double main_reservoir = 0, main_drain = 0, control_reservoir = 0, control_drain = 0;
  double safety_valve = 0;
};

}  // namespace cabwright::plant
