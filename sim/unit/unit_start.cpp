// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/unit_start.h"

#include <array>

#include "plant/named_numbers.h"
#include "unit/actions.h"
#include "unit/nearest_name.h"

namespace cabwright::unit {

namespace {

using Faults = std::vector<std::string>;

template <class Table>
std::vector<std::string_view> namesOf(const Table& table) {
  std::vector<std::string_view> names;
  names.reserve(table.size());
  for (const auto& info : table) names.push_back(info.name);
  return names;
}

Faults findInstrumentFaults(const InstrumentInfo& info, const Setting& s) {
  std::string_view size = s.value;
  const std::string_view word = firstWord(size);
  const auto condition = findInstrumentCondition(info, word);
  if (!condition) {
    const std::vector<std::string_view> known =
        info.lamp ? std::vector<std::string_view>{"sound", "blown", "lit"}
                  : std::vector<std::string_view>{"sound", "stuck", "offset", "slow", "dead"};
    return {s.name + ": " + unknownWord("condition", word, known)};
  }
  const bool sized =
      *condition == InstrumentCondition::kOffset || *condition == InstrumentCondition::kSlow;
  if (*condition == InstrumentCondition::kOffset && !readFinite(size)) {
    return {s.name + ": offset needs how much, in " + std::string(info.unit) + ", as 'offset 2'"};
  }
  if (!size.empty() && (!sized || !readFinite(size))) {
    return {s.name + ": '" + std::string(size) + "' behind '" + std::string(word) +
            "' means nothing"};
  }
  return {};
}

void append(Faults& all, const Faults& more) { all.insert(all.end(), more.begin(), more.end()); }

}  // namespace

std::vector<std::string> findControlFaults(const Setting& s) {
  const auto c = findControl(s.name);
  if (!c) return {unknownWord("control", s.name, namesOf(controlTable()))};
  const ControlInfo& info = controlInfo(*c);
  if (findPosition(info, s.value)) return {};
  return {s.name + " cannot be '" + s.value + "'; allowed: " + positionsInWords(info)};
}

std::vector<std::string> findConditionFaults(const Setting& s) {
  if (const auto instrument = findInstrument(s.name)) {
    return findInstrumentFaults(instrumentTable()[indexOf(*instrument)], s);
  }
  const auto item = findItem(s.name);
  if (!item) {
    std::vector<std::string_view> names = namesOf(itemTable());
    for (const InstrumentInfo& info : instrumentTable()) names.push_back(info.name);
    return {unknownWord("item or instrument", s.name, names)};
  }
  const ItemInfo& info = itemInfo(*item);
  const auto condition = findItemCondition(info, s.value);
  if (!condition) {
    std::vector<std::string_view> known{"good"};
    for (const ItemCondition& c : info.conditions) known.push_back(c.name);
    return {s.name + ": " + unknownWord("condition", s.value, known)};
  }
  if (*condition == 0) return {};
  const ItemCondition& c = info.conditions[static_cast<std::size_t>(*condition - 1)];
  if (c.live && c.effects.empty()) {
    return {s.name + ": '" + s.value +
            "' follows from the state of the unit; set that instead of the look of it"};
  }
  return {};
}

std::vector<std::string> findObjectFaults(const Setting& s) {
  const auto object = findObject(s.name);
  if (!object) return {unknownWord("thing", s.name, namesOf(objectTable()))};
  if (auto fault = findObjectWordFault(*object, s.value)) return {*fault};
  return {};
}

std::vector<std::string> findParameterFaults(const NumberSetting& s) {
  const auto found = findUnitParameters(s.name);
  if (found.empty()) return {unknownWord("unit parameter", s.name, namesOf(unitParameterTable()))};
  const UnitParameterInfo& info = *found.front();
  if (s.value >= info.lowest && s.value <= info.highest) return {};
  return {s.name + " cannot be " + plant::shortNumber(s.value) +
          "; allowed: " + plant::shortNumber(info.lowest) + " to " +
          plant::shortNumber(info.highest) + " " + std::string(info.unit)};
}

std::vector<std::string> findPlaceFaults(const std::string& place) {
  if (findPlace(place)) return {};
  return {unknownWord("place", place, namesOf(placeTable()))};
}

std::vector<std::string> findStartFaults(const UnitStart& start) {
  Faults faults;
  for (const plant::StartInfo& info : plant::startTable()) {
    const double v = info.of(start.plant);
    if (info.allows(v)) continue;
    faults.push_back(info.name + " cannot be " + plant::shortNumber(v) + "; allowed: " +
                     plant::shortNumber(info.lowest) + " to " + plant::shortNumber(info.highest));
  }
  for (const Setting& s : start.controls) append(faults, findControlFaults(s));
  for (const Setting& s : start.conditions) append(faults, findConditionFaults(s));
  for (const Setting& s : start.objects) append(faults, findObjectFaults(s));
  for (const NumberSetting& s : start.parameters) append(faults, findParameterFaults(s));
  append(faults, findPlaceFaults(start.place));
  // Two things in one socket.
  for (std::size_t k = 0; k < start.objects.size(); ++k) {
    for (std::size_t j = 0; j < k; ++j) {
      const Setting &a = start.objects[j], &b = start.objects[k];
      if (a.name == b.name) faults.push_back(b.name + " is placed twice");
      const bool keys = a.name.ends_with("_key") && b.name.ends_with("_key");
      if (keys && a.name != b.name && a.value == b.value && a.value.starts_with("cab")) {
        faults.push_back(a.name + " and " + b.name + " are both in " + a.value);
      }
    }
  }
  return faults;
}

}  // namespace cabwright::unit
