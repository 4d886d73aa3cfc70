// SPDX-License-Identifier: GPL-3.0-or-later
// Faults that events arm and clear: their ids go together with those of the rest of the file.
#include <algorithm>

#include "scenario/arm_words.h"
#include "scenario/scenario_parts.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

std::vector<std::string> idsOfFile(const Scenario& s) {
  std::vector<std::string> ids;
  for (const fault::ArmedFault& fault : s.faults) ids.push_back(fault.id);
  const auto add = [&](const Hidden& hidden) {
    if (hidden.fault) ids.push_back(hidden.fault->id);
  };
  for (const Hidden& hidden : s.hidden) add(hidden);
  for (const Draw& draw : s.draws) std::for_each(draw.choices.begin(), draw.choices.end(), add);
  return ids;
}

bool holds(const std::vector<std::string>& ids, const std::string& id) {
  return std::find(ids.begin(), ids.end(), id) != ids.end();
}

// Adds the id this one will have; of those without one the first takes the fault's name.
std::optional<std::string> takeId(const unit::Action& action, std::vector<std::string>& ids) {
  const auto read = readArm(action);
  const auto* words = std::get_if<ArmWords>(&read);
  if (!words) return std::nullopt;  // said already
  if (!words->id.empty()) {
    if (holds(ids, words->id)) {
      return "the id '" + printable(words->id) + "' is taken by another fault";
    }
    ids.push_back(words->id);
    return std::nullopt;
  }
  std::string id = words->spec->name;
  for (int n = 2; holds(ids, id); ++n) id = words->spec->name + "#" + std::to_string(n);
  ids.push_back(std::move(id));
  return std::nullopt;
}

}  // namespace

std::vector<std::optional<std::string>> findArmFaults(const ScenarioDraft& draft) {
  std::vector<std::string> ids = idsOfFile(draft.scenario);
  std::vector<std::optional<std::string>> faults(draft.actions.size());
  for (std::size_t k = 0; k < draft.actions.size(); ++k) {
    if (draft.actions[k].action.verb == "arm") faults[k] = takeId(draft.actions[k].action, ids);
  }
  const std::vector<std::string_view> known(ids.begin(), ids.end());
  for (std::size_t k = 0; k < draft.actions.size(); ++k) {
    const unit::Action& action = draft.actions[k].action;
    if (action.verb != "clear" || action.object.empty()) continue;
    const std::string id = idOfClear(action);
    if (!holds(ids, id)) faults[k] = unit::unknownWord("fault of this file", printable(id), known);
  }
  return faults;
}

}  // namespace cabwright::scenario
