// SPDX-License-Identifier: GPL-3.0-or-later
// The examples that teach the formats (scenarios/README.txt) are files like any other: they are
// read with what ships and nothing else, since they have to work for whoever copies them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "scenario/arm_words.h"
#include "scenario/scenario.h"
#include "scenario/script.h"
#include "session/rule_reader.h"
#include "session/situation.h"
#include "unit/unit.h"

namespace cabwright::session {
namespace {

std::filesystem::path shipped() {
  return std::filesystem::path(CABWRIGHT_SOURCE_DIR) / "scenarios";
}

std::string readmeText() {
  return std::get<scenario::SourceFile>(scenario::loadText((shipped() / "README.txt").string()))
      .text;
}

template <class T>
T good(std::variant<T, scenario::FileFaults> read) {
  if (const auto* faults = std::get_if<scenario::FileFaults>(&read)) {
    for (const auto& fault : *faults) ADD_FAILURE() << scenario::toText(fault);
    return T{};
  }
  return std::get<T>(std::move(read));
}

scenario::LoadedScenario readmeScenario() {
  const std::string text = readmeText();
  const std::size_t from = text.find("\n  title = "), to = text.find("\nScripts\n");
  return good(scenario::parseScenario({"README.txt", text.substr(from, to - from)},
                                      scenario::FolderLibrary(shipped())));
}

// The example that begins with this line, up to a line that is not indented. The words behind each
// step are no part of it.
std::string scriptFrom(const std::string& first) {
  const std::string text = readmeText();
  std::istringstream lines(text.substr(text.find("\n  " + first) + 1));
  std::string script;
  for (std::string line; std::getline(lines, line) && line.starts_with("  ");) {
    script += line.substr(0, line.find("   ", 4)) + "\n";
  }
  return script;
}

scenario::Script readmeScript(const std::string& first) {
  const scenario::LoadedScenario loaded = readmeScenario();
  const scenario::Setup setup = scenario::makeSetup(loaded, 1);
  const unit::Unit unit(setup.parameters, setup.route, setup.start);
  return good(scenario::parseScript(
      {"README.txt", scriptFrom(first)},
      [&](const unit::Action& action) { return scenario::findActionFault(unit, action); },
      scenario::neighboursOf(shipped() / "cold-preparation" / "README.txt")));
}

bool isShippedRule(const std::string& id) {
  const auto shelf = scenario::FolderLibrary(shipped());
  const auto file =
      std::get<scenario::SourceFile>(shelf.find(scenario::Shelf::kRules, "preparation"));
  const auto rules = good(scenario::parseRules(file));
  return std::any_of(rules.begin(), rules.end(), [&](const auto& rule) { return rule.id == id; });
}

TEST(Readme, ItsScenarioIsOne) {
  const scenario::Scenario s = readmeScenario().scenario;
  EXPECT_EQ(s.rules.size(), 3U);
  EXPECT_EQ(s.faults.size(), 1U);
  EXPECT_EQ(good(readRules(s.rules))->rules().size(), 3U);
}

TEST(Readme, ItsScriptIsOne) {
  const scenario::Script script = readmeScript("# breaks: hb-on");
  EXPECT_EQ(script.steps.size(), 7U);
  EXPECT_TRUE(isShippedRule(script.breaks.value_or("")));
}

TEST(Readme, TheInstructorsWordsAreKnown) {
  std::istringstream lines(scriptFrom("instructor: arm vacuum"));
  const auto loaded = good(loadSituation((shipped() / "cold-preparation/scenario.toml").string()));
  const scenario::Setup setup = scenario::makeSetup(loaded.loaded, 1);
  const std::string signal = setup.route.signals.front().name;
  const unit::Unit unit(setup.parameters, setup.route, setup.start);
  int count = 0;
  for (std::string line; std::getline(lines, line); ++count) {
    if (const auto at = line.find("signal.S1"); at != std::string::npos)
      line.replace(at, 9, "signal." + signal);
    const auto read = unit::parseAction(line);
    ASSERT_TRUE(std::holds_alternative<unit::Action>(read)) << line;
    EXPECT_EQ(scenario::findActionFault(unit, std::get<unit::Action>(read)), std::nullopt) << line;
  }
  EXPECT_EQ(count, 9);
}

TEST(Readme, ItsEditedScriptIsOne) {
  const scenario::Script script = readmeScript("# breaks: seal-lead");
  EXPECT_EQ(script.files.size(), 2U);
  EXPECT_TRUE(isShippedRule(script.breaks.value_or("")));
  EXPECT_EQ(std::count_if(script.steps.begin(), script.steps.end(),
                          [](const auto& step) { return step.file == 0; }),
            3);
}

TEST(Situation, KeepsTheTextsOfAScriptButCountsThemNoPartOfTheScenario) {
  Situation situation;
  situation.loaded = readmeScenario();
  SessionHeader header = makeHeader(situation, 1, "0");
  const std::size_t before = header.sources.size();
  const std::string hash = makeHead(situation, header).scenario_hash;
  scenario::Script script;
  script.files = {{"/home/somebody/night/bad-a.txt", "as good\n"},
                  {"/x/night/good.txt", "wait 1 s\n"}};
  addScript(header, script);
  ASSERT_EQ(header.sources.size(), before + 2);
  EXPECT_EQ(header.sources[before], (SourceText{"script", "night/bad-a.txt", "as good\n"}));
  EXPECT_EQ(header.sources[before + 1], (SourceText{"script", "night/good.txt", "wait 1 s\n"}));
  EXPECT_EQ(makeHead(situation, header).scenario_hash, hash);
}

}  // namespace
}  // namespace cabwright::session
