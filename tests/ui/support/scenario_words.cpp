// SPDX-License-Identifier: GPL-3.0-or-later
#include <stdexcept>

#include "session/situation.h"
#include "table_words.h"

namespace cabwright::testing_ui {
namespace {

using session::Situation;

class Collector {
 public:
  explicit Collector(TableWords& found) : found_(found) {}

  void addExercise(const Situation& situation) {
    const scenario::Scenario& s = situation.loaded.scenario;
    for (const std::string& text : {s.title, s.summary, s.purpose}) add("Scenario", text);
    for (const std::string& text : s.teaches) add("Scenario", text);
    add("Scenario", situation.loaded.route.route.title);
    using scenario::Mode;
    for (const Mode mode : {Mode::kGuided, Mode::kPractice, Mode::kAssessment})
      add("Sheet", std::string(scenario::wordOf(mode)));
    if (s.aim) add("Sheet", s.aim->says);
    for (const scenario::GuideStep& step : s.guide.steps)
      for (const std::string& text : {step.act, step.why, step.phase, step.alternative})
        add("Scenario", text);
    for (const scenario::Board& board : situation.loaded.route.boards) add("Scenario", board.says);
    for (const unit::Platform& platform : situation.loaded.route.route.platforms)
      add("Scenario", platform.name);
    for (const scenario::RuleText& rule : s.rules) addRule(rule);
  }

 private:
  void add(const char* context, const std::string& text) {
    if (!text.empty()) found_.emplace(context, text);
  }

  // What stands on the sheet, and what sentences are put together of.
  void addRule(const scenario::RuleText& rule) {
    for (const char* key : {"title", "reason", "advice", "tolerance", "a_name", "b_name",
                            "condition_name", "during_name"})
      add("Sheet", rule.text(key));
    for (const std::string& name : rule.texts("step_names")) add("Sheet", name);
  }

  TableWords& found_;
};

}  // namespace

TableWords collectScenarioWords(const std::filesystem::path& scenarios) {
  TableWords found;
  Collector collector(found);
  for (const auto& entry : std::filesystem::directory_iterator(scenarios)) {
    const auto file = entry.path() / "scenario.toml";
    if (!std::filesystem::exists(file)) continue;
    const auto loaded = session::loadSituation(file.string(), scenarios);
    if (const auto* faults = std::get_if<scenario::FileFaults>(&loaded))
      throw std::runtime_error(scenario::toText(faults->front()));
    collector.addExercise(std::get<Situation>(loaded));
  }
  return found;
}

}  // namespace cabwright::testing_ui
