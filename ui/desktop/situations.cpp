// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/situations.h"

#include <fmt/format.h>

#include "desktop/exercises.h"
#include "scenario/draft.h"
#include "scenario/scenario_writer.h"

namespace cabwright::desktop {
namespace {

using Loaded = std::variant<session::Situation, scenario::FileFaults>;

void change(scenario::DraftTable& table, const desk::OtherConditions& conditions) {
  if (conditions.weather) table.set("weather", *conditions.weather);
  if (conditions.temperature_c)
    table.set("temperature", fmt::format("{:g} C", *conditions.temperature_c));
  if (conditions.stood_hours) table.set("stood_hours", *conditions.stood_hours);
  if (conditions.dark) table.set("dark", *conditions.dark);
}

Loaded readChanged(const session::Situation& situation, const desk::OtherConditions& conditions) {
  std::vector<session::SourceText> sources;
  for (const auto& source : situation.loaded.sources) {
    session::SourceText text{source.role, source.name, source.text};
    if (source.role == "scenario") {
      auto read = scenario::readDraft({source.name, source.text});
      if (auto* faults = std::get_if<scenario::FileFaults>(&read)) return std::move(*faults);
      auto& draft = std::get<scenario::Draft>(read);
      change(draft.table(scenario::DraftSection::kConditions), conditions);
      text.text = scenario::writeDraft(draft);
    }
    sources.push_back(std::move(text));
  }
  return session::readSituation(sources);
}

}  // namespace

Loaded loadExercise(const std::filesystem::path& scenarios, const std::string& name,
                    const desk::OtherConditions& conditions) {
  Loaded loaded = session::loadSituation((scenarios / name / "scenario.toml").string(), scenarios);
  const auto* situation = std::get_if<session::Situation>(&loaded);
  if (situation == nullptr || conditions.isEmpty()) return loaded;
  return readChanged(*situation, conditions);
}

std::vector<desk::SituationChoice> loadChoices(const std::filesystem::path& scenarios) {
  std::vector<desk::SituationChoice> choices;
  for (const Exercise& exercise : loadExercises(scenarios)) {
    const Loaded loaded = loadExercise(scenarios, exercise.name);
    const auto* situation = std::get_if<session::Situation>(&loaded);
    if (situation == nullptr) continue;
    const scenario::Scenario& s = situation->loaded.scenario;
    desk::SituationChoice choice;
    choice.name = exercise.name;
    choice.title = exercise.title;
    choice.summary = exercise.summary;
    choice.can_be_assessed = exercise.can_be_assessed;
    choice.has_guide = exercise.has_guide;
    choice.seed = s.seed;
    choice.weather = s.weather;
    choice.temperature_c = s.start.plant.ambient_c;
    choice.stood_hours = s.stood_hours;
    choice.dark = s.start.dark;
    choices.push_back(std::move(choice));
  }
  return choices;
}

}  // namespace cabwright::desktop
