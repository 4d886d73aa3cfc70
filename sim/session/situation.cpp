// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/situation.h"

#include <fmt/format.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "scenario/library.h"
#include "session/rule_reader.h"

namespace cabwright::session {
namespace {

using scenario::FileFaults;
using Parsed = std::variant<scenario::LoadedScenario, FileFaults>;

// The reader has looked at what the rules mean already, so that all faults come at once.
std::variant<Situation, FileFaults> addRules(Parsed parsed) {
  if (auto* faults = std::get_if<FileFaults>(&parsed)) return std::move(*faults);
  Situation situation{std::get<scenario::LoadedScenario>(std::move(parsed)), nullptr};
  auto rules = readRules(situation.loaded.scenario.rules);
  if (auto* faults = std::get_if<FileFaults>(&rules)) return std::move(*faults);
  situation.rules = std::get<std::shared_ptr<const marking::RuleSet>>(std::move(rules));
  return situation;
}

std::optional<scenario::Shelf> findShelf(const std::string& role) {
  for (const auto shelf : {scenario::Shelf::kVehicles, scenario::Shelf::kRoutes,
                           scenario::Shelf::kRules, scenario::Shelf::kGuides})
    if (scenario::wordOf(shelf) == role) return shelf;
  return std::nullopt;
}

// "night/scenario.toml" of "/home/somebody/exercises/night/scenario.toml".
std::string shortName(const std::string& path) {
  const std::filesystem::path file = path;
  return (file.parent_path().filename() / file.filename()).generic_string();
}

}  // namespace

std::variant<Situation, FileFaults> loadSituation(const std::string& path,
                                                  const std::filesystem::path& shipped) {
  return addRules(scenario::loadScenario(path, shipped, findRuleFaults));
}

std::variant<Situation, FileFaults> readSituation(const std::vector<SourceText>& sources) {
  scenario::TextLibrary library;
  const SourceText* main = nullptr;
  for (const SourceText& source : sources) {
    if (source.role == "scenario") main = &source;
    if (const auto shelf = findShelf(source.role)) library.add(*shelf, source.name, source.text);
  }
  if (main == nullptr) {
    scenario::FileFault fault;
    fault.what = "the session holds no scenario";
    return FileFaults(1, fault);
  }
  const scenario::SourceFile file{main->name, main->text};
  // The door of a file on disk checks this; a session's texts come in here.
  if (FileFaults faults = scenario::findTextFaults(file); !faults.empty()) return faults;
  return addRules(scenario::parseScenario(file, library, findRuleFaults));
}

SessionHeader makeHeader(const Situation& situation, std::uint64_t seed,
                         const std::string& program_version) {
  SessionHeader header;
  header.session_id = makeSessionId();
  header.program_version = program_version;
  header.started_utc = currentUtc();
  header.scenario = situation.loaded.scenario.title;
  header.seed = seed;
  header.run_mode = situation.loaded.scenario.mode;
  for (const auto& source : situation.loaded.sources)
    header.sources.push_back({source.role,
                              source.role == "scenario" ? shortName(source.name) : source.name,
                              source.text});
  return header;
}

void chooseMode(Situation& situation, SessionHeader& header, std::optional<scenario::Mode> mode) {
  scenario::Scenario& scenario = situation.loaded.scenario;
  if (!mode || *mode == scenario.mode) return;
  header.mode = header.run_mode = mode;
  scenario::chooseMode(scenario, *mode);
}

void addScript(SessionHeader& header, const scenario::Script& script) {
  for (const scenario::SourceFile& file : script.files)
    header.sources.push_back({"script", shortName(file.name), file.text});
}

marking::SheetHead makeHead(const Situation& situation, const SessionHeader& header) {
  const scenario::Scenario& scenario = situation.loaded.scenario;
  marking::SheetHead head;
  head.title = scenario.title;
  head.purpose = scenario.purpose;
  head.vehicle = situation.loaded.vehicle.title;
  head.route = situation.loaded.route.route.title;
  head.conditions_told = scenario.summary;
  head.session_id = header.session_id;
  head.started_utc = header.started_utc;
  head.program_version = header.program_version;
  head.seed = header.seed;
  head.mode = scenario::wordOf(scenario.mode);
  head.time_allowed_s = scenario.time_allowed_s;
  head.trainee = traineeWords(header);
  for (const Person& person : header.people) {
    if (person.role == "instructor") head.instructor = person.name;
    if (person.role == "assessor") head.assessor = person.name;
  }
  for (const SourceText& source : header.sources)
    if (source.role == "scenario") head.scenario = source.name;
  head.scenario_hash = calcScenarioHash(header.sources);
  return head;
}

MarkingTerms makeTerms(const Situation& situation, const scenario::Setup& setup) {
  const scenario::Scenario& scenario = situation.loaded.scenario;
  MarkingTerms terms;
  terms.rules = situation.rules;
  terms.pass = {scenario.pass_percent, scenario.phases};
  if (scenario.aim) terms.aim = marking::Aim{scenario.aim->condition, scenario.aim->says};
  const scenario::JudgementText& given = scenario.judgements;
  marking::JudgementPolicy& policy = terms.judgement_policy;
  policy.hit_points = given.hit_points.value_or(policy.hit_points);
  policy.false_alarm_cost = given.false_alarm_cost.value_or(policy.false_alarm_cost);
  policy.empty_cost = given.empty_cost.value_or(policy.empty_cost);
  policy.missed_critical_fails = given.missed_critical_fails.value_or(policy.missed_critical_fails);
  terms.hidden = setup.start.conditions;
  terms.staged = scenario.start.controls;
  return terms;
}

std::string sheetText(const marking::MarkSheet& sheet) {
  return marking::sheetToJson(sheet).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

Closing makeClosing(std::int64_t tick, const std::string& reason, const marking::MarkSheet& sheet) {
  Closing closing;
  closing.tick = tick;
  closing.reason = reason;
  closing.passed = sheet.decision.passed;
  // Names stand in a table of their own, from where they can be erased.
  marking::MarkSheet nameless = sheet;
  nameless.head.trainee = nameless.head.instructor = nameless.head.assessor = "";
  closing.sheet_json = sheetText(nameless);
  for (const marking::SheetLine& line : sheet.lines)
    closing.verdicts.push_back({line.id, line.verdictText(), line.verdict.tick, line.verdict.margin,
                                line.verdict.unit, line.verdict.reason});
  return closing;
}

}  // namespace cabwright::session
