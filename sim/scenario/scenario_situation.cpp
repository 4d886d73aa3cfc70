// SPDX-License-Identifier: GPL-3.0-or-later
// Head, conditions and start of a scenario file.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <limits>

#include "scenario/quantity_text.h"
#include "scenario/scenario_parts.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

constexpr std::array<std::string_view, 3> kModes{"guided", "practice", "assessment"};
constexpr std::array<std::string_view, 8> kWeathers{"clear", "overcast", "rain", "snow",
                                                    "frost", "fog",      "wind", "hot"};
struct Rail {
  std::string_view word;
  double factor;
};
// Shares of the adhesion of a dry rail; house values.
constexpr std::array<Rail, 6> kRails{{{"dry", 1.0},
                                      {"damp", 0.7},
                                      {"wet", 0.6},
                                      {"frosty", 0.5},
                                      {"greasy", 0.35},
                                      {"leaves", 0.25}}};

double readRail(TableReader& table, ScenarioDraft& draft) {
  const toml::node* node = table.find("rail");
  if (!node) return 1.0;
  draft.rail_at = placeOf(table.sink(), node->source());
  const auto* text = node->as_string();
  if (!text) {
    return readNumberNode(*node, "rail", "", {0.05, 1.3}, table.sink()).value_or(1.0);
  }
  std::vector<std::string_view> words;
  for (const Rail& rail : kRails) {
    if (rail.word == text->get()) return rail.factor;
    words.push_back(rail.word);
  }
  table.sink().add(*draft.rail_at, unit::unknownWord("rail", text->get(), words));
  return 1.0;
}

std::vector<std::string> makeStartNames() {
  std::vector<std::string> names{"place", "berth", "teeth", "controls", "objects", "parameters"};
  for (const plant::StartInfo& info : plant::startTable()) {
    names.push_back(info.name);
    const std::size_t dot = info.name.find('.');
    if (dot == std::string::npos || info.name[dot - 1] != '1') continue;
    std::string without = info.name;
    without.erase(dot - 1, 1);
    names.push_back(std::move(without));
  }
  return names;
}

void readStartNumber(const FlatEntry& e, ScenarioDraft& draft, FaultSink& sink) {
  if (sink.isFull()) return sink.add(e.key_at, "not looked at");
  StartEntry entry{e.name, plant::findStartConditions(e.name), 0, e.at};
  if (entry.infos.empty()) {
    const std::vector<std::string> names = makeStartNames();
    const std::vector<std::string_view> views(names.begin(), names.end());
    sink.add(e.key_at, unit::unknownWord("start condition", e.name, views));
    return;
  }
  if (e.name == "ambient_c") {
    sink.add(e.key_at, "the air's temperature is 'temperature' of [conditions]");
    return;
  }
  const plant::StartInfo& info = *entry.infos.front();
  const auto value = readNumberNode(*e.node, e.name, info.unit, {info.lowest, info.highest}, sink);
  if (!value) return;
  entry.value = *value;
  draft.numbers.push_back(std::move(entry));
}

std::vector<FlatEntry> flattenTable(TableReader& start, std::string_view key) {
  const toml::node* node = start.find(key);
  if (!node) return {};
  if (const auto* table = node->as_table()) return flatten(*table, start.sink());
  start.sink().add(placeOf(start.sink(), node->source()),
                   "'" + std::string(key) + "' is " + std::string(kindOf(*node)) +
                       "; allowed: a table, as [start." + std::string(key) + "]");
  return {};
}

// Positions may be written as words or as plain numbers.
std::optional<std::string> settingValue(const FlatEntry& e, FaultSink& sink) {
  if (const auto* text = e.node->as_string()) return text->get();
  if (const auto* whole = e.node->as_integer()) return std::to_string(whole->get());
  if (const auto* number = e.node->as_floating_point()) return fmt::format("{}", number->get());
  sink.add(e.at, "'" + e.name + "' is " + std::string(kindOf(*e.node)) +
                     "; allowed: a word, or a number");
  return std::nullopt;
}

void readSettings(TableReader& start, std::string_view key,
                  std::vector<std::string> (*check)(const unit::Setting&),
                  std::vector<unit::Setting>& into) {
  for (const FlatEntry& e : flattenTable(start, key)) {
    if (start.sink().isFull()) {
      start.sink().add(e.key_at, "not looked at");
      continue;
    }
    const auto value = settingValue(e, start.sink());
    if (!value) continue;
    unit::Setting setting{e.name, *value};
    const std::vector<std::string> faults = check(setting);
    for (const std::string& what : faults) {
      // An unknown name stands on the left, a wrong word on the right.
      const bool of_name = what.starts_with("unknown");
      start.sink().add(of_name ? e.key_at : e.at, what);
    }
    if (faults.empty()) into.push_back(std::move(setting));
  }
}

}  // namespace

std::string_view wordOf(Mode mode) { return kModes[static_cast<std::size_t>(mode)]; }

std::optional<Mode> findMode(std::string_view word) {
  for (std::size_t k = 0; k < kModes.size(); ++k)
    if (kModes[k] == word) return static_cast<Mode>(k);
  return std::nullopt;
}

std::optional<std::string> findModeFault(const Scenario& scenario, Mode mode) {
  if (mode != Mode::kAssessment) return std::nullopt;
  if (scenario.rules.empty()) return "an assessment needs rules, and this exercise has none";
  if (!scenario.aim) return "an assessment needs an aim, and this exercise has none";
  if (!(scenario.pass_percent > 0.0)) return "an assessment needs a pass mark above 0";
  return std::nullopt;
}

void chooseMode(Scenario& scenario, Mode mode) {
  scenario.mode = mode;
  scenario.start.assessment = mode == Mode::kAssessment;
}

namespace {

void readTeaches(TableReader& root, std::vector<std::string>& teaches) {
  constexpr std::size_t kMostTeaches = 20;
  for (TableReader::Text& text : root.texts("teaches")) {
    if (trimmed(text.text).empty()) {
      root.sink().add(text.at, "an empty text in 'teaches'");
    } else if (std::ranges::find(teaches, text.text) != teaches.end()) {
      root.sink().add(text.at, "'" + printable(text.text) + "' is said twice in 'teaches'");
    } else {
      teaches.push_back(std::move(text.text));
    }
  }
  if (teaches.size() > kMostTeaches)
    root.sink().add(root.placeOfKey("teaches"), "more than 20 texts in 'teaches'");
}

}  // namespace

void readHead(TableReader& root, ScenarioDraft& draft) {
  Scenario& s = draft.scenario;
  s.title = root.text("title", Need::kMust).value_or("");
  s.purpose = root.text("purpose", Need::kMust).value_or("");
  s.summary = root.text("summary", Need::kMust).value_or("");
  s.vehicle = root.text("vehicle", Need::kMust).value_or("");
  s.route = root.text("route", Need::kMust).value_or("");
  draft.vehicle_at = root.placeOfValue("vehicle");
  draft.route_at = root.placeOfValue("route");
  s.mode = static_cast<Mode>(root.word("mode", kModes).value_or(1));
  if (const auto level = root.whole("level", 1, 5)) s.level = static_cast<int>(*level);
  readTeaches(root, s.teaches);
  constexpr auto kMost = std::numeric_limits<std::int64_t>::max();
  s.seed = static_cast<std::uint64_t>(root.whole("seed", 0, kMost).value_or(0));
  if (const auto ticks = root.ticks("time_allowed")) {
    s.time_allowed_s = static_cast<double>(*ticks) / 100.0;
    if (*ticks == 0)
      root.sink().add(root.placeOfValue("time_allowed"), "no time is allowed at all");
  }
}

void readConditions(TableReader& root, ScenarioDraft& draft) {
  auto table = root.table("conditions");
  if (!table) return;
  Scenario& s = draft.scenario;
  if (const auto k = table->word("weather", kWeathers)) s.weather = kWeathers[*k];
  if (table->has("temperature")) draft.temperature_at = table->placeOfValue("temperature");
  draft.ambient_c = table->number("temperature", "C", {-30.0, 45.0}).value_or(15.0);
  s.start.dark = table->flag("dark").value_or(false);
  s.stood_hours = table->number("stood_hours", "h", {0.0, 200.0});
  draft.rail_factor = readRail(*table, draft);
  table->finish();
}

void readStart(TableReader& root, ScenarioDraft& draft) {
  const toml::node* node = root.find("start");
  if (!node) return;
  const auto* inner = node->as_table();
  FaultSink& sink = root.sink();
  draft.start_at = placeOf(sink, node->source());
  if (!inner) {
    sink.add(draft.start_at, "'start' is " + std::string(kindOf(*node)) + "; allowed: [start]");
    return;
  }
  TableReader start(*inner, sink, "[start]", root.isLenient());
  unit::UnitStart& s = draft.scenario.start;
  if (const auto place = start.text("place")) {
    const std::vector<std::string> faults = unit::findPlaceFaults(*place);
    for (const std::string& what : faults) sink.add(start.placeOfValue("place"), what);
    if (faults.empty()) s.place = *place;
  }
  draft.berth = start.text("berth");
  draft.berth_at = start.placeOfValue("berth");
  constexpr std::array<std::string_view, 2> kTeeth{"as_said", "random"};
  draft.scenario.random_teeth = start.word("teeth", kTeeth).value_or(0) == 1;
  readSettings(start, "controls", unit::findControlFaults, s.controls);
  readSettings(start, "objects", unit::findObjectFaults, s.objects);
  draft.parameters = readParameters(flattenTable(start, "parameters"), sink);
  for (const FlatEntry& e : flatten(*inner, sink)) {
    const std::string_view head = std::string_view(e.name).substr(0, e.name.find('.'));
    bool reserved = false;
    for (std::string_view r : {"place", "berth", "teeth", "controls", "objects", "parameters"}) {
      reserved = reserved || head == r;
    }
    if (!reserved) readStartNumber(e, draft, sink);
  }
}

}  // namespace cabwright::scenario
