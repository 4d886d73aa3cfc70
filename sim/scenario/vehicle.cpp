// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/vehicle.h"

#include <algorithm>
#include <map>

#include "fault/fault.h"
#include "plant/named_numbers.h"
#include "scenario/parameter_entries.h"
#include "scenario/table_reader.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

// A sentence of findParameterFaults begins with the name of a number or of its group. The place of
// that number in the file, or of another one of the group.
FilePlace findBlamed(const std::string& sentence, const std::vector<ParameterEntry>& entries,
                     const FaultSink& sink) {
  const std::string name = sentence.substr(0, sentence.find_first_of(" :"));
  FilePlace best = sink.place(1, 1);
  std::size_t best_score = 0;
  for (const ParameterEntry& e : entries) {
    for (const fault::ParameterRef& p : e.parameters) {
      const std::string& full = fault::nameOf(p);
      std::size_t score = 0;
      if (full == name) score = 4;
      if (full.starts_with(name + ".")) score = 2;
      // "air.cut_out_psi = 60: must be above cut_in_psi = 82": the other one may be in the file.
      const std::string group = name.substr(0, name.rfind('.') + 1);
      if (score == 0 && !group.empty() && full.starts_with(group) &&
          sentence.find(full.substr(group.size()) + " ") != std::string::npos) {
        score = 3;
      }
      if (score > best_score || (score != 0 && score == best_score && best.line < e.at.line)) {
        best_score = score;
        best = e.at;
      }
    }
  }
  return best;
}

void checkTogether(const Vehicle& vehicle, const std::vector<ParameterEntry>& entries,
                   FaultSink& sink) {
  std::map<std::string, bool> told;
  for (const std::string& sentence : plant::findParameterFaults(vehicle.plant)) {
    const FilePlace at = findBlamed(sentence, entries, sink);
    // The same is wrong with both instances when they come from one line.
    const std::string key = std::to_string(at.line) + sentence.substr(sentence.find_first_of(".:"));
    if (told.emplace(key, true).second) sink.add(at, sentence);
  }
}

}  // namespace

std::variant<Vehicle, FileFaults> parseVehicle(const SourceFile& file) {
  FaultSink sink(file);
  const TomlFile toml = parseToml(file, sink);
  TableReader root(toml.root, sink, "a vehicle file", toml.broken);
  Vehicle vehicle;
  vehicle.title = root.text("title", Need::kMust).value_or("");
  vehicle.text = root.text("text").value_or("");
  std::vector<FlatEntry> flat = flatten(toml.root, sink);
  std::erase_if(flat, [](const FlatEntry& e) { return e.name == "title" || e.name == "text"; });
  const std::vector<ParameterEntry> entries = readParameters(flat, sink);
  applyParameters(entries, vehicle.plant, vehicle.unit);
  checkTogether(vehicle, entries, sink);
  if (!sink.isEmpty()) return sink.take();
  return vehicle;
}

std::vector<unit::NumberSetting> unitSettings(const unit::UnitParameters& unit) {
  std::vector<unit::NumberSetting> settings;
  for (const unit::UnitParameterInfo& info : unit::unitParameterTable()) {
    if (info.of(unit) != info.standard) settings.push_back({info.name, info.of(unit)});
  }
  return settings;
}

}  // namespace cabwright::scenario
