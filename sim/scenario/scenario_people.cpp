// SPDX-License-Identifier: GPL-3.0-or-later
// Guard, signaller and the world in a scenario file.
#include <array>

#include "scenario/scenario_parts.h"

namespace cabwright::scenario {

namespace {

constexpr std::size_t kMostEvents = 2000;
constexpr std::array<std::string_view, 4> kWho{"guard", "signaller", "instructor", "scenario"};
constexpr std::array<unit::Actor, 4> kActors{unit::Actor::kGuard, unit::Actor::kSignaller,
                                             unit::Actor::kInstructor, unit::Actor::kScenario};

void readEvent(TableReader& table, ScenarioDraft& draft) {
  const auto who = table.word("who", kWho, Need::kMust);
  const auto at = readMoment(table, "at", "when", "after");
  if (!table.has("at") && !table.has("when") && !table.isLenient()) {
    table.sink().add(table.at(), "[[event]] needs 'at' or 'when'");
  }
  Happening happening;
  happening.at = at.value_or(fault::Moment{});
  for (const TableReader::Text& text : table.texts("do", Need::kMust)) {
    auto parsed = unit::parseAction(text.text);
    if (const auto* wrong = std::get_if<std::string>(&parsed)) {
      table.sink().add(text.at, *wrong);
      continue;
    }
    PlacedAction placed{text.text, std::get<unit::Action>(std::move(parsed)), text.at, {}};
    placed.inside = findTextPlaces(table.sink(), text.at, text.text);
    if (placed.action.actor != unit::Actor::kTrainee) {
      table.sink().add(text.at, "'who' says who does it; allowed here: VERB OBJECT ARGUMENT");
      continue;
    }
    placed.action.actor = kActors[who.value_or(3)];
    placed.knows_actor = who.has_value();
    happening.actions.push_back(placed.action);
    draft.actions.push_back(std::move(placed));
  }
  table.finish();
  draft.scenario.happenings.push_back(std::move(happening));
  draft.happening_at.push_back(table.at());
}

}  // namespace

void readPeople(TableReader& root, ScenarioDraft& draft) {
  if (auto people = root.table("people")) {
    draft.scenario.start.guard_present = people->flag("guard").value_or(true);
    draft.scenario.start.second_person = people->flag("second_person").value_or(true);
    people->finish();
  }
  std::vector<TableReader> events = root.tables("event");
  if (events.size() > kMostEvents) {
    root.sink().add(root.placeOfKey("event"), "more than 2000 of [[event]]");
    return;
  }
  for (TableReader& table : events) readEvent(table, draft);
}

}  // namespace cabwright::scenario
