// SPDX-License-Identifier: GPL-3.0-or-later
// How the unit and the people around it stand when a run begins.
#pragma once

#include <string>
#include <vector>

#include "plant/start_conditions.h"
#include "unit/route.h"

namespace cabwright::unit {

/// A word and what it is set to, both as files write them.
struct Setting {
  std::string name, value;
};
struct NumberSetting {
  std::string name;
  double value = 0;
};

struct UnitStart {
  plant::StartConditions plant;
  /// Controls out of their standard position: {"cab2.pawl", "out"}, {"engine1.switch", "off"}. One
  /// that springs back is held by the trainee, if it is within his reach.
  std::vector<Setting> controls;
  /// Hidden conditions of items and instruments: {"end2.hoses", "hanging"}, {"cab1.air", "stuck"},
  /// {"cab1.train_pipe", "offset 2"}.
  std::vector<Setting> conditions;
  /// Loose things that are not at the booking-on point: {"brake_handle", "carried"},
  /// {"brake_handle", "cab2"} (in its socket), {"hand_lamp", "lying cab1"}, {"spare_key", "none"}.
  /// A thing not named lies at the booking-on point, but the spare key, which is nowhere.
  std::vector<Setting> objects;
  /// Unit parameters (faults among them), by the names of unitParameterTable().
  std::vector<NumberSetting> parameters;
  std::string place = "booking";  ///< where the trainee stands
  bool assessment = false;        ///< walking takes its time and nothing is prompted
  bool dark = false;              ///< outside a lit hand lamp is needed to see anything closely
  bool guard_present = true;      ///< a guard who answers bells and talks
  bool second_person = true;      ///< somebody comes when asked
};

/// Everything that is wrong with it, one sentence each: what was found, what is allowed, the
/// nearest known name. Empty when sound.
[[nodiscard]] std::vector<std::string> findStartFaults(const UnitStart& start);
/// The same for one setting each, so that a file can point at it.
[[nodiscard]] std::vector<std::string> findControlFaults(const Setting& s);
[[nodiscard]] std::vector<std::string> findConditionFaults(const Setting& s);
[[nodiscard]] std::vector<std::string> findObjectFaults(const Setting& s);
[[nodiscard]] std::vector<std::string> findParameterFaults(const NumberSetting& s);
[[nodiscard]] std::vector<std::string> findPlaceFaults(const std::string& place);

}  // namespace cabwright::unit
