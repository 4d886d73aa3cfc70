// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/unit_start_of.h"

#include <fmt/format.h>

#include "unit/hands.h"

namespace cabwright::unit {

namespace {

std::string instrumentWord(const InstrumentInfo& info, const InstrumentState& state) {
  for (const std::string_view word : {"stuck", "offset", "slow", "dead", "blown", "lit"}) {
    if (findInstrumentCondition(info, word) != state.condition) continue;
    const bool sized = word == "offset" || (word == "slow" && state.size > 0.0);
    return sized ? fmt::format("{} {}", word, state.size) : std::string(word);
  }
  return "sound";
}

void takeConditions(const World& w, UnitStart& start) {
  for (const ItemInfo& info : itemTable()) {
    const int hidden = w.item[indexOf(info.id)].hidden;
    if (hidden == 0) continue;
    const ItemCondition& condition = info.conditions[static_cast<std::size_t>(hidden - 1)];
    start.conditions.push_back({std::string(info.name), std::string(condition.name)});
  }
  for (const InstrumentInfo& info : instrumentTable()) {
    const InstrumentState& state = w.instrument[indexOf(info.id)];
    if (state.condition == InstrumentCondition::kSound) continue;
    start.conditions.push_back({std::string(info.name), instrumentWord(info, state)});
  }
}

void takeControls(const World& w, UnitStart& start) {
  for (const ControlInfo& info : controlTable()) {
    const double value = w.control[info.id];
    const bool pushed = w.pressed_until[indexOf(info.id)] != kNever;
    if (value == info.standard || pushed) continue;
    if (info.spring == ControlSpring::kSprings && !isHeld(w, info.id)) continue;
    start.controls.push_back({std::string(info.name), positionText(info, value)});
  }
}

void takeObjects(const World& w, UnitStart& start) {
  for (const ObjectInfo& info : objectTable()) {
    const std::string where = whereabouts(w, info.id);
    const bool usual = where == (info.id == Object::kSpareKey ? "none" : "lying booking");
    if (!usual) start.objects.push_back({std::string(info.name), where});
  }
}

}  // namespace

std::string positionText(const ControlInfo& info, double value) {
  for (const auto& position : info.positions) {
    if (position.value == value) return std::string(position.name);
  }
  return fmt::format("{}", value);
}

std::string whereabouts(const World& w, Object object) {
  if (!w.object_exists[indexOf(object)]) return "none";
  const ObjectPlace& at = w.object[indexOf(object)];
  if (at.state == ObjectState::kCarried) return "carried";
  const std::string place(placeInfo(at.place).name);
  return at.state == ObjectState::kInserted ? place : "lying " + place;
}

UnitStart calcStartOf(const Unit& unit) {
  const World& w = unit.world();
  UnitStart start;
  start.plant = unit.plant().calcStart();
  start.place = placeInfo(w.trainee.place).name;
  start.assessment = w.assessment;
  start.dark = w.dark;
  start.guard_present = w.guard_present;
  start.second_person = w.second_person;
  takeControls(w, start);
  takeConditions(w, start);
  takeObjects(w, start);
  return start;
}

}  // namespace cabwright::unit
