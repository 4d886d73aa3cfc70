// SPDX-License-Identifier: GPL-3.0-or-later
// The one road in: everything anyone can do to the world. An action has a text form, which is a
// line of a script, a row of a session file and what an assessor reads.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

namespace cabwright::unit {

enum class Actor : std::uint8_t {
  kTrainee,
  kInstructor,
  kGuard,
  kSignaller,
  kHelper,    ///< the second person who goes to the rear or to the ground
  kScenario,  ///< what the scenario file makes happen
};

/// verb object [argument], e.g. "set cab1.throttle 2", "hold cab1.device", "release cab1.device",
/// "go engine1", "look end1.hoses", "judge end1.hoses defect", "take brake_handle",
/// "insert brake_handle cab1", "say ask_protection", "book end1.hoses ...".
/// The words are checked against the unit's registry (controls, places, items, phrases).
struct Action {
  Actor actor = Actor::kTrainee;
  std::string verb;
  std::string object;
  std::string argument;  ///< position, verdict, number or free text; may be empty
  bool operator==(const Action&) const = default;
};

/// "verb object argument", with "actor: " in front unless it is the trainee.
[[nodiscard]] std::string toText(const Action& action);

/// Reads the text form. Only the form is checked here (a verb, known actor); whether the words
/// exist is Unit's registry's business (Unit::findActionFault).
[[nodiscard]] std::variant<Action, std::string> parseAction(std::string_view text);

}  // namespace cabwright::unit
