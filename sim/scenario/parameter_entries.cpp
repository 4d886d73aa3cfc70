// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/parameter_entries.h"

#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

std::vector<fault::ParameterRef> findBoth(std::string_view written) {
  std::vector<fault::ParameterRef> all;
  for (const auto* info : plant::findParameters(written)) all.emplace_back(info);
  for (const auto* info : unit::findUnitParameters(written)) all.emplace_back(info);
  return all;
}

// All names a file may write: with the instance number and without.
std::vector<std::string> makeNames() {
  std::vector<std::string> names;
  const auto add = [&](const std::string& full) {
    names.push_back(full);
    const std::size_t dot = full.find('.');
    const char before = full[dot - 1];
    if (before != '1') return;
    std::string without = full;
    without.erase(dot - 1, 1);
    names.push_back(std::move(without));
  };
  for (const auto& info : plant::parameterTable()) add(info.name);
  for (const auto& info : unit::unitParameterTable()) add(info.name);
  return names;
}

std::string unknownParameter(const std::string& written) {
  static const std::vector<std::string> names = makeNames();
  std::vector<std::string_view> group, views(names.begin(), names.end());
  // Inside a known group its own names are nearer than any other.
  const std::string prefix = written.substr(0, written.rfind('.') + 1);
  for (std::string_view n : views) {
    if (!prefix.empty() && n.starts_with(prefix) &&
        n.find('.', prefix.size()) == std::string_view::npos) {
      group.push_back(n);
    }
  }
  if (!group.empty() && unit::nearestName(written, group)) views = group;
  return unit::unknownWord("parameter", written, views);
}

void put(const ParameterEntry& entry, plant::Parameters& plant, unit::UnitParameters& unit) {
  for (const fault::ParameterRef& p : entry.parameters) {
    if (const auto* of_plant = std::get_if<const plant::ParameterInfo*>(&p)) {
      (*of_plant)->of(plant) = entry.value;
    } else {
      std::get<const unit::UnitParameterInfo*>(p)->of(unit) = entry.value;
    }
  }
}

}  // namespace

std::vector<ParameterEntry> readParameters(const std::vector<FlatEntry>& flat, FaultSink& sink) {
  std::vector<ParameterEntry> entries;
  for (const FlatEntry& e : flat) {
    if (sink.isFull()) {
      sink.add(e.key_at, "not looked at");
      continue;
    }
    ParameterEntry entry{e.name, findBoth(e.name), 0, e.at};
    if (entry.parameters.empty()) {
      sink.add(e.key_at, unknownParameter(e.name));
      continue;
    }
    const fault::ParameterRef& first = entry.parameters.front();
    const Bounds bounds{fault::lowestOf(first), fault::highestOf(first)};
    if (const auto value = readNumberNode(*e.node, e.name, fault::unitOf(first), bounds, sink)) {
      entry.value = *value;
      entries.push_back(std::move(entry));
    }
  }
  return entries;
}

void applyParameters(const std::vector<ParameterEntry>& entries, plant::Parameters& plant,
                     unit::UnitParameters& unit) {
  for (const bool exact : {false, true}) {
    for (const ParameterEntry& e : entries) {
      if (e.isExact() == exact) put(e, plant, unit);
    }
  }
}

}  // namespace cabwright::scenario
