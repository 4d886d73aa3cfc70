// SPDX-License-Identifier: GPL-3.0-or-later
// Every shipped exercise with every script beside it: the good one passes, each bad one fails for
// the rule its first line names and for no other critical one, or is not passed in the words named
// there; each flawed one passes and breaks the rule named there and nothing else; and each run
// again from its record is identical.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "program.h"

namespace cabwright::console_test {
namespace {

namespace fs = std::filesystem;

std::vector<fs::path> shippedScripts() {
  std::vector<fs::path> scripts;
  for (const auto& folder : fs::directory_iterator(shippedScenarios())) {
    if (!fs::exists(folder.path() / "scenario.toml")) continue;
    for (const auto& file : fs::directory_iterator(folder.path())) {
      if (file.path().extension() == ".txt") scripts.push_back(file.path());
    }
  }
  std::sort(scripts.begin(), scripts.end());
  return scripts;
}

std::string nameOf(const fs::path& script) {
  std::string name = script.parent_path().filename().string() + "_" + script.stem().string();
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}

std::string firstLineAfter(const fs::path& script, const std::string& mark) {
  std::ifstream file(script);
  std::string line;
  std::getline(file, line);
  return line.starts_with(mark) ? line.substr(mark.size()) : "";
}
std::string brokenRule(const fs::path& script) { return firstLineAfter(script, "# breaks: "); }
std::string wordsOfDecision(const fs::path& script) {
  return firstLineAfter(script, "# not passed: ");
}
std::string lostRule(const fs::path& script) { return firstLineAfter(script, "# loses: "); }
bool isGood(const fs::path& script) { return script.stem().string().starts_with("good"); }
bool isFlawed(const fs::path& script) { return script.stem().string().starts_with("flawed"); }

std::vector<std::string> brokenOn(const nlohmann::json& sheet) {
  std::vector<std::string> broken;
  for (const auto& line : sheet["lines"]) {
    if (line["verdict"] == "broken") broken.push_back(line["id"]);
  }
  return broken;
}

class Exercise : public ::testing::TestWithParam<fs::path> {};

TEST_P(Exercise, IsMarkedForWhatWasDoneAndRepeatsToTheBit) {
  const fs::path& script = GetParam();
  const Folder folder;
  const std::string session = (folder.path() / "run.cabsession").string();
  const Outcome run = console_test::run({"run", script.parent_path().string(), "--script",
                                         script.string(), "--record", session, "--json"});
  const std::string wanted = brokenRule(script);
  ASSERT_EQ(run.code, isGood(script) || isFlawed(script) ? 0 : 1) << run.err;
  const auto sheet = nlohmann::json::parse(run.out);
  std::vector<std::string> failed_by;
  for (const auto& line : sheet["decision"]["failed_by"]) {
    failed_by.push_back(sheet["lines"][line.get<std::size_t>() - 1]["id"]);
  }
  if (isGood(script)) {
    EXPECT_TRUE(failed_by.empty());
  } else if (isFlawed(script)) {
    ASSERT_FALSE(lostRule(script).empty()) << "its first line does not say what it loses";
    EXPECT_EQ(brokenOn(sheet), std::vector<std::string>{lostRule(script)});
  } else if (wanted.empty()) {
    EXPECT_TRUE(failed_by.empty());
    const std::string words = wordsOfDecision(script);
    ASSERT_FALSE(words.empty()) << "its first line says neither what it breaks nor what is missing";
    const std::string text = sheet["decision"]["text"];
    EXPECT_NE(text.find(words), std::string::npos) << text;
  } else {
    EXPECT_EQ(failed_by, std::vector<std::string>{wanted});
  }
  const Outcome replay = console_test::run({"replay", session});
  EXPECT_EQ(replay.code, 0) << replay.out << replay.err;
  EXPECT_NE(replay.out.find("identical"), std::string::npos) << replay.out;
  const Outcome marked = console_test::run({"mark", session, "--json"});
  EXPECT_EQ(nlohmann::json::parse(marked.out)["lines"], sheet["lines"]);
}

INSTANTIATE_TEST_SUITE_P(Shipped, Exercise, ::testing::ValuesIn(shippedScripts()),
                         [](const auto& script) { return nameOf(script.param); });

// The ids of the critical rules that exercises share, as the files on the rules shelf write them.
std::set<std::string> criticalRules() {
  std::set<std::string> rules;
  for (const auto& file : fs::directory_iterator(shippedScenarios() / "rules")) {
    std::ifstream lines(file.path());
    std::string id;
    for (std::string line; std::getline(lines, line);) {
      if (line.starts_with("id = \"")) id = line.substr(6, line.size() - 7);
      if (line == "class = \"C\"") rules.insert(id);
    }
  }
  return rules;
}

TEST(Exercises, HaveAGoodScriptAndTwoOfThemEightThatBreakDifferentRules) {
  std::map<std::string, std::set<std::string>> rules;
  std::set<std::string> good;
  for (const fs::path& script : shippedScripts()) {
    const std::string exercise = script.parent_path().filename().string();
    if (isGood(script)) good.insert(exercise);
    if (const std::string rule = brokenRule(script); !rule.empty()) rules[exercise].insert(rule);
  }
  for (const auto& [exercise, broken] : rules) EXPECT_TRUE(good.contains(exercise)) << exercise;
  const auto with_many =
      std::count_if(rules.begin(), rules.end(), [](const auto& r) { return r.second.size() >= 8; });
  EXPECT_GE(with_many, 2);
}

TEST(Exercises, BreakEveryCriticalRuleThatTheyShare) {
  std::set<std::string> broken;
  for (const fs::path& script : shippedScripts()) broken.insert(brokenRule(script));
  const std::set<std::string> critical = criticalRules();
  EXPECT_GE(critical.size(), 20U);
  for (const std::string& rule : critical) {
    EXPECT_TRUE(broken.contains(rule)) << "no script fails by " << rule;
  }
}

}  // namespace
}  // namespace cabwright::console_test
