// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/desk_actions.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "unit/item_state.h"

namespace cabwright::session {
namespace {

using unit::Action;
using unit::Actor;

// The first word stands in the place of the object.
Action makeWords(std::string verb, std::string_view text) {
  auto read = unit::parseAction(fmt::format("instructor: {} {}", verb, text));
  if (auto* action = std::get_if<Action>(&read)) return std::move(*action);
  return {Actor::kInstructor, std::move(verb), "", ""};
}

std::string wordsOf(const Action& action) {
  return action.argument.empty() ? action.object : action.object + " " + action.argument;
}

bool isInstructor(const Action& action, std::string_view verb) {
  return action.actor == Actor::kInstructor && action.verb == verb;
}

// Somebody who stands outside the world: what they do in it is done for the trainee.
bool isOutsider(const Action& action) {
  return action.actor == Actor::kInstructor || action.actor == Actor::kScenario;
}

std::optional<std::string> findPaceFault(const DeskSituation& situation, const unit::Pace& pace) {
  if (pace == unit::kStandardPace) return std::nullopt;
  if (pace.rate != 0.0)
    return "an assessment runs at pace 1: at another one hands and waits are not what they are";
  const auto& at = situation.intervened_at;
  if (at && situation.tick - *at <= kFreezeTicks) return std::nullopt;
  return fmt::format(
      "an assessment stands still only with an intervention: step in first, and freeze within {} s",
      kFreezeTicks / 100);
}

// Whether there is something to be found at a thing now; of an instrument whatever is not sound.
bool isDefective(const unit::Unit& unit, const std::string& name) {
  if (const auto item = unit::findItem(name)) {
    const auto shown = unit::findSignal("shows." + name);
    return unit.world().item[unit::indexOf(*item)].hidden > 0 ||
           (shown && unit.frame()[*shown] > 0.5F);
  }
  const auto instrument = unit::findInstrument(name);
  return instrument && unit.world().instrument[unit::indexOf(*instrument)].condition !=
                           unit::InstrumentCondition::kSound;
}

std::optional<std::string> findConditionFault(const DeskSituation& situation,
                                              const Action& action) {
  const std::string word = action.argument.substr(0, action.argument.find(' '));
  const bool lifts = word == "good" || word == "sound";
  if (!lifts && !(situation.unit && isDefective(*situation.unit, action.object)))
    return std::nullopt;
  return fmt::format(
      "what is wrong with '{}' is evidence in an assessment: it stays as the trainee found it, or "
      "missed it; step in first",
      action.object);
}

}  // namespace

unit::Action makePace(const unit::Pace& pace) {
  return {Actor::kInstructor, "pace", std::string(pace.word), ""};
}

std::optional<unit::Pace> findPaceOf(const Action& action) {
  return isInstructor(action, "pace") ? unit::findPace(action.object) : std::nullopt;
}

unit::Action makeMark(std::string_view name) { return makeWords("mark", name); }

std::optional<std::string> findMarkName(const Action& action) {
  return isInstructor(action, "mark") ? std::optional(wordsOf(action)) : std::nullopt;
}

unit::Action makeRemark(std::string_view text) {
  return {Actor::kInstructor, "remark", "general", std::string(text)};
}

unit::Action makePrompt(std::string_view text) {
  return {Actor::kInstructor, "remark", std::string(kPrompt), std::string(text)};
}

unit::Action makeIntervene(std::string_view text) { return makeWords("intervene", text); }

std::optional<std::string> findRemark(const Action& action) {
  if (!isInstructor(action, "remark")) return std::nullopt;
  return action.object == "general" ? action.argument : wordsOf(action);
}

std::optional<std::string> findIntervention(const Action& action) {
  return isInstructor(action, "intervene") ? std::optional(wordsOf(action)) : std::nullopt;
}

std::optional<std::string> findDeskFault(const DeskSituation& situation, const Action& action) {
  if (situation.mode != scenario::Mode::kAssessment || !isOutsider(action)) return std::nullopt;
  if (const auto pace = findPaceOf(action)) return findPaceFault(situation, *pace);
  if (situation.intervened_at) return std::nullopt;
  if (action.verb == "condition") return findConditionFault(situation, action);
  const bool of_line = action.object.starts_with("signal.");
  const bool hands_on =
      (action.verb == "set" && !of_line) || action.verb == "place" || action.verb == "tooth";
  if (!hands_on) return std::nullopt;
  return fmt::format(
      "'{} {}' would be done for the trainee, and an assessment is of what the trainee does; "
      "step in first",
      action.verb, action.object);
}

std::optional<std::string> findGoBackFault(scenario::Mode mode) {
  if (mode != scenario::Mode::kAssessment) return std::nullopt;
  return "an assessment is not gone back in: its evidence is of one go";
}

}  // namespace cabwright::session
