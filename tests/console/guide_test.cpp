// SPDX-License-Identifier: GPL-3.0-or-later
// README.md, DEVELOPERS.md and the help say what is so: commands run, samples are what comes out,
// files that are named are there.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <regex>
#include <set>
#include <sstream>

#include "program.h"

namespace cabwright::console_test {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;
using testing::IsEmpty;

fs::path root() { return fs::path(CABWRIGHT_SOURCE_DIR); }

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

// The words behind the program's name of each line that calls it; a '\' at the end goes on.
std::vector<std::vector<std::string>> commandsIn(const std::string& text) {
  std::vector<std::vector<std::string>> commands;
  std::string joined = std::regex_replace(text, std::regex(" *\\\\\n *"), " ");
  for (const std::string& line : linesOf(joined)) {
    std::istringstream words(line.substr(0, line.find("   #")));
    std::string word;
    if (!(words >> word) || (word != "./cabwright-console" && word != "cabwright-console"))
      continue;
    commands.emplace_back();
    while (words >> word && word != ">" && word != "#") commands.back().push_back(word);
  }
  return commands;
}

// As a shell would: every exercise, wherever the stars stand.
std::vector<std::string> withoutStars(const std::vector<std::string>& words) {
  std::vector<std::string> all;
  for (const std::string& word : words) {
    const std::size_t star = word.find("scenarios/*/scenario.toml");
    if (star == std::string::npos) {
      all.push_back(word);
      continue;
    }
    for (const auto& entry : fs::directory_iterator(shippedScenarios()))
      if (fs::exists(entry.path() / "scenario.toml"))
        all.push_back((entry.path() / "scenario.toml").string());
  }
  return all;
}

// One after the other in a folder: what one records the next reads.
void expectAllRun(const std::string& text, std::size_t least) {
  const Folder folder;
  Program::Settings settings;
  settings.folder = folder.path();
  const auto commands = commandsIn(text);
  EXPECT_GE(commands.size(), least);
  for (const std::vector<std::string>& words : commands) {
    const Outcome outcome = run(withoutStars(words), settings);
    EXPECT_EQ(outcome.code, 0) << testing::PrintToString(words) << outcome.err;
    EXPECT_NE(outcome.out, "") << testing::PrintToString(words);
    if (words[0] == "replay") {
      EXPECT_THAT(outcome.out, HasSubstr("identical"));
    }
  }
}

TEST(Guide, TheCommandsOfTheReadmeRun) { expectAllRun(slurp(root() / "README.md"), 6); }

TEST(Guide, TheCommandsOfTheHelpRun) { expectAllRun(run({"--help"}).out, 7); }

// The block in ``` that follows these words.
std::string blockAfter(const std::string& text, const std::string& words) {
  const std::size_t from = text.find("```\n", text.find(words));
  const std::size_t to = text.find("```", from + 4);
  return text.substr(from + 4, to - from - 4);
}

TEST(Guide, TheSampleOfASheetIsWhatComesOut) {
  const std::string readme = slurp(root() / "README.md");
  ASSERT_THAT(readme, HasSubstr("`run warm-tooth --script bad-dark-lamp` is the one above"));
  const std::string sample = blockAfter(readme, "A line of the sheet");
  ASSERT_GT(linesOf(sample).size(), 5U);
  const Outcome outcome = run({"run", "warm-tooth", "--script", "bad-dark-lamp"});
  EXPECT_EQ(outcome.code, 1);
  EXPECT_THAT(outcome.out, HasSubstr(sample));
}

// All files, from the root, as "sim/unit/frame.h".
std::set<std::string> filesOfTheTree() {
  std::set<std::string> files;
  for (const char* folder : {"app", "sim", "tests", "scenarios", "ui", "assets", ".ci"}) {
    files.insert(folder);
    if (!fs::exists(root() / folder)) continue;
    for (const auto& entry : fs::recursive_directory_iterator(root() / folder))
      files.insert(fs::relative(entry.path(), root()).generic_string());
  }
  for (const auto& entry : fs::directory_iterator(root()))
    files.insert(entry.path().filename().string());
  return files;
}

// `like_this.h`, `unit/like_this`: names in small letters with a slash or a known ending.
std::vector<std::string> filesNamedIn(const std::string& text) {
  const std::regex quoted("`([a-z0-9_./-]+)`");
  std::vector<std::string> names;
  for (std::sregex_iterator at(text.begin(), text.end(), quoted), end; at != end; ++at) {
    std::string name = (*at)[1];
    const std::string ending = fs::path(name).extension().string();
    const bool has_ending = ending == ".h" || ending == ".cpp" || ending == ".toml" ||
                            ending == ".txt" || ending == ".md";
    if (name.ends_with("/")) name.pop_back();
    if (name.starts_with("build/")) continue;
    if (has_ending || name.find('/') != std::string::npos) names.push_back(name);
  }
  return names;
}

TEST(Guide, FilesThatAreNamedAreThere) {
  const std::set<std::string> files = filesOfTheTree();
  std::size_t named = 0;
  for (const char* guide : {"README.md", "DEVELOPERS.md"}) {
    const std::vector<std::string> names = filesNamedIn(slurp(root() / guide));
    named += names.size();
    for (const std::string& name : names) {
      const bool is_there = std::any_of(files.begin(), files.end(), [&](const std::string& file) {
        return file == name || file.ends_with("/" + name);
      });
      EXPECT_TRUE(is_there) << guide << " names " << name;
    }
  }
  EXPECT_GE(named, 20U);
}

}  // namespace
}  // namespace cabwright::console_test
