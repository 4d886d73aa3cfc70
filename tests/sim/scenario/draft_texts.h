// SPDX-License-Identifier: GPL-3.0-or-later
// What the tests of the writer share: files to change, and a scenario in words to compare.
#pragma once

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "scenario/draft.h"
#include "scenario/scenario.h"
#include "scenario/scenario_writer.h"
#include "unit/action.h"

namespace cabwright::testing {

inline std::filesystem::path scenariosFolder() {
  return std::filesystem::path(CABWRIGHT_SOURCE_DIR) / "scenarios";
}

/// The scenario files that ship.
inline std::vector<std::string> shippedFiles() {
  std::vector<std::string> all;
  for (const auto& entry : std::filesystem::directory_iterator(scenariosFolder())) {
    const auto file = entry.path() / "scenario.toml";
    if (std::filesystem::exists(file)) all.push_back(file.string());
  }
  std::sort(all.begin(), all.end());
  return all;
}

inline std::string textOf(const std::string& path) {
  auto loaded = scenario::loadText(path);
  EXPECT_TRUE(std::holds_alternative<scenario::SourceFile>(loaded)) << path;
  return std::get<scenario::SourceFile>(std::move(loaded)).text;
}

inline scenario::Draft draftOf(const std::string& text) {
  auto read = scenario::readDraft({"scenario.toml", text});
  if (const auto* faults = std::get_if<scenario::FileFaults>(&read)) {
    ADD_FAILURE() << scenario::toText(faults->front());
    return {};
  }
  return std::get<scenario::Draft>(std::move(read));
}

/// The same sections and keys, without a file they come from.
inline scenario::Draft freshOf(scenario::Draft draft) {
  draft.original = scenario::Draft().original;
  return draft;
}

inline std::string inWords(const fault::Moment& m) {
  return fmt::format("({} +{})", m.when ? m.when->text() : "", m.ticks);
}
inline std::string inWords(const scenario::Hidden& h) {
  if (h.condition) return h.condition->name + "=" + h.condition->value;
  if (!h.fault) return "nothing";
  return fmt::format("{}:{} {} {} ramp {} until {}", h.fault->id, h.fault->spec->name,
                     h.fault->size, inWords(h.fault->from), h.fault->ramp_ticks,
                     h.fault->until ? inWords(*h.fault->until) : "-");
}
inline std::string inWords(const scenario::RuleText& rule) {
  std::string text = rule.id;
  for (const auto& field : rule.fields) {
    text += " " + field.key + "=";
    if (const auto* t = std::get_if<std::string>(&field.value)) text += *t;
    if (const auto* n = std::get_if<double>(&field.value)) text += fmt::format("{}", *n);
    if (const auto* b = std::get_if<bool>(&field.value)) text += *b ? "true" : "false";
    if (const auto* l = std::get_if<std::vector<std::string>>(&field.value))
      for (const auto& item : *l) text += item + "|";
    if (const auto* l = std::get_if<std::vector<double>>(&field.value))
      for (const double item : *l) text += fmt::format("{}|", item);
  }
  return text;
}

/// All that a scenario says, places in files left out.
inline std::vector<std::string> inWords(const scenario::Scenario& s) {
  std::vector<std::string> all{s.title, s.purpose, s.summary, s.vehicle, s.route, s.weather};
  const auto add = [&](std::string line) { all.push_back(std::move(line)); };
  add(fmt::format("{} seed {} level {} stood {} allowed {} pass {}", scenario::wordOf(s.mode),
                  s.seed, s.level.value_or(0), s.stood_hours.value_or(-1),
                  s.time_allowed_s.value_or(-1), s.pass_percent));
  for (const auto& t : s.teaches) add("teaches " + t);
  for (const auto& t : s.phases) add("phase " + t);
  if (s.aim) add("aim " + s.aim->condition.text() + " " + s.aim->says);
  for (const auto& info : plant::startTable())
    add(fmt::format("{} {}", info.name, info.of(s.start.plant)));
  const auto settings = [&](std::vector<unit::Setting> list, const std::string& what) {
    std::sort(list.begin(), list.end(), [](auto& a, auto& b) { return a.name < b.name; });
    for (const auto& one : list) add(what + " " + one.name + " " + one.value);
  };
  settings(s.start.controls, "control");
  settings(s.start.objects, "object");
  for (const auto& p : s.start.parameters) add(fmt::format("unit {} {}", p.name, p.value));
  for (const auto& p : s.plant_parameters) add(fmt::format("plant {} {}", p.name, p.value));
  add(fmt::format("{} {} {} {} {} {}", s.start.place, s.start.assessment, s.start.dark,
                  s.start.guard_present, s.start.second_person, s.random_teeth));
  for (const auto& h : s.hidden) add("hidden " + inWords(h));
  for (const auto& d : s.draws) {
    add(fmt::format("draw {} {}", d.name, d.count));
    for (std::size_t k = 0; k < d.choices.size(); ++k)
      add(fmt::format("  {} {}", d.weights[k], inWords(d.choices[k])));
  }
  for (const auto& f : s.faults) add("fault " + inWords(scenario::Hidden{std::nullopt, f}));
  for (const auto& h : s.happenings) {
    add("event " + inWords(h.at));
    for (const auto& a : h.actions) add("  " + unit::toText(a));
  }
  for (const auto& r : s.rules) add("rule " + inWords(r));
  const auto points = [](const std::optional<double>& v) { return v.value_or(-1); };
  add(fmt::format("judgements {} {} {} {}", points(s.judgements.hit_points),
                  points(s.judgements.false_alarm_cost), points(s.judgements.empty_cost),
                  s.judgements.missed_critical_fails.value_or(false)));
  for (const auto& step : s.guide.steps)
    add(fmt::format("step {} {} {} {} {} {} {} {}", step.id, step.phase, step.act, step.why,
                    step.alternative, step.done.text(), step.when ? step.when->text() : "",
                    step.points.size()));
  return all;
}

/// What `text` means, or what is wrong in it without the places.
inline std::vector<std::string> meaningOf(const std::string& text) {
  const scenario::FolderLibrary library(scenariosFolder());
  auto parsed = scenario::parseScenario({"scenario.toml", text}, library);
  if (const auto* good = std::get_if<scenario::LoadedScenario>(&parsed)) {
    return inWords(good->scenario);
  }
  std::vector<std::string> faults{"FAULTS"};
  for (const auto& f : std::get<scenario::FileFaults>(parsed)) faults.push_back(f.what);
  std::sort(faults.begin(), faults.end());
  return faults;
}

}  // namespace cabwright::testing
