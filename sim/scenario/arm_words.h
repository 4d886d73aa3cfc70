// SPDX-License-Identifier: GPL-3.0-or-later
// Faults put in and taken out by an action, in a script, an event of a scenario or from the
// instructor's desk:
//   arm FAULT [size N] [ramp 30 s] [after 5 s] [when CONDITION] [as ID]
//   clear ID
// FAULT, size and ramp are those of a [[fault]] in a scenario file: the catalogue's name, the size
// in the unit of the catalogue (which may stand behind it), a ramp where the fault can come bit by
// bit. Without `when` it comes so long after it was armed; with it, so long after the condition
// first holds from then on. The parts may stand in any order, each once.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "fault/fault.h"
#include "unit/action.h"
#include "unit/condition.h"
#include "unit/unit.h"

namespace cabwright::scenario {

struct ArmWords {
  const fault::FaultSpec* spec = nullptr;  ///< of the catalogue
  double size = 0;                         ///< in its unit; as read without one: the usual size
  std::int64_t ramp_ticks = 0;             ///< time to grow from nothing to its size
  std::int64_t after_ticks = 0;            ///< from now, or from when `when` first holds
  std::optional<unit::Condition> when;
  /// Tells it from others. Empty: the fault's name, with "#2" and so on behind it if that is taken.
  std::string id;
};

/// The action that arms this fault; what is usual is left out of its text. The spec must be there.
[[nodiscard]] unit::Action makeArm(const ArmWords& words,
                                   unit::Actor actor = unit::Actor::kInstructor);
/// What an `arm` says, or what is wrong with it: found and allowed in a sentence, with the nearest
/// known name.
[[nodiscard]] std::variant<ArmWords, std::string> readArm(const unit::Action& action);

[[nodiscard]] unit::Action makeClear(std::string_view id,
                                     unit::Actor actor = unit::Actor::kInstructor);
/// The id that a `clear` names.
[[nodiscard]] std::string idOfClear(const unit::Action& action);

/// What is wrong with the words of any action: what the unit knows of them (Unit::findActionFault)
/// and what is known of faults. Whether an id is there, or free, is known to a Run only.
[[nodiscard]] std::optional<std::string> findActionFault(const unit::Unit& unit,
                                                         const unit::Action& action);

}  // namespace cabwright::scenario
