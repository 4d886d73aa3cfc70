// SPDX-License-Identifier: GPL-3.0-or-later
// Help, version, the command line itself, trace and the catalogue of faults.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "exercise.h"

namespace cabwright::console_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;
using testing::SizeIs;
using testing::StartsWith;

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

TEST(ConsoleProgram, HelpTeachesWithExamplesAndTheCaution) {
  const Outcome outcome = run({"--help"});
  EXPECT_EQ(outcome.code, 0);
  EXPECT_EQ(outcome.err, "");
  for (const char* command : {"check", "run", "mark", "replay", "trace", "faults"})
    EXPECT_THAT(outcome.out, HasSubstr(std::string("cabwright-console ") + command)) << command;
  EXPECT_THAT(outcome.out, HasSubstr("training aid only"));
  EXPECT_THAT(outcome.out, HasSubstr("Exit code"));
}

TEST(ConsoleProgram, EveryCommandHasItsOwnHelp) {
  for (const char* command : {"check", "run", "mark", "replay", "verify", "export", "seal", "erase",
                              "key", "trace", "faults"}) {
    const Outcome outcome = run({command, "--help"});
    EXPECT_EQ(outcome.code, 0) << command;
    EXPECT_THAT(outcome.out, HasSubstr(command));
    EXPECT_THAT(outcome.out, HasSubstr("Example"));
    EXPECT_THAT(outcome.out, Not(HasSubstr("from nothing to a mark")))
        << command << " has that of the program";
  }
}

TEST(ConsoleProgram, NamesTheWordThatNothingTakes) {
  EXPECT_THAT(run({"rum"}).err, HasSubstr("unknown command 'rum'; did you mean 'run'?"));
  EXPECT_THAT(run({"run", "x", "--scrip", "y"}).err,
              HasSubstr("unknown option '--scrip'; did you mean '--script'?"));
  EXPECT_THAT(run({"run", "x"}).err, HasSubstr("--script is required"));
}

TEST(ConsoleProgram, ASeedIsAWholeNumberThatFits) {
  for (const char* seed : {"-1", "99999999999999999999999", "", "1.5", "nan", "0x10", " 1", "1e3"})
    for (const std::vector<std::string>& command :
         {std::vector<std::string>{"run"}, {"trace", "--signals", "cab1.air"}}) {
      std::vector<std::string> words = command;
      for (const char* word : {"warm-tooth", "--script", "good", "--seed", seed})
        words.emplace_back(word);
      const Outcome outcome = run(words);
      EXPECT_EQ(outcome.code, 2) << seed;
      EXPECT_EQ(outcome.out, "");
      EXPECT_THAT(outcome.errorLines(), ElementsAre(HasSubstr("--seed"))) << seed;
    }
}

TEST(ConsoleProgram, SaysItsVersion) {
  const Outcome outcome = run({"--version"});
  EXPECT_EQ(outcome.code, 0);
  EXPECT_THAT(outcome.out, testing::MatchesRegex("cabwright-console [0-9]+\\.[0-9]+\\.[0-9]+\n"));
}

TEST(ConsoleProgram, AWrongCommandLineIsOneLineAndCodeTwo) {
  const std::vector<std::vector<std::string>> wrong{
      {},
      {"fly"},
      {"run"},
      {"run", "x"},
      {"mark"},
      {"replay", "a", "b"},
      {"run", "x", "--script"},
      {"run", "x", "--script", "y", "--seed", "many"},
      {"trace", "x", "--script", "y", "--signals", "a", "--every", "soon"},
      {"--data"}};
  for (const auto& words : wrong) {
    const Outcome outcome = run(words);
    EXPECT_EQ(outcome.code, 2) << testing::PrintToString(words);
    EXPECT_EQ(outcome.out, "");
    EXPECT_THAT(outcome.errorLines(), SizeIs(1)) << outcome.err;
    EXPECT_THAT(outcome.err, StartsWith("cabwright-console: "));
  }
}

TEST(ConsoleProgram, SaysThatADataFolderHasNoScenarios) {
  const Folder empty;
  const Outcome outcome = run({"--data", empty.path().string(), "faults"});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.errorLines(), ElementsAre(HasSubstr("--data: no folder")));
}

TEST(ConsoleProgram, FindsItsExercisesFromTheBuildTreeWhereverItIsCalledFrom) {
  Program::Settings settings;
  settings.folder = "/";
  const Outcome outcome = run({"run", "no-such-exercise", "--script", "good"}, settings);
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.err, HasSubstr("exercise"));
  EXPECT_THAT(outcome.err, HasSubstr("cold-preparation"));
}

TEST(FaultsCommand, ListsTheCatalogueAsTextAndAsJson) {
  const Outcome text = run({"faults"});
  EXPECT_EQ(text.code, 0);
  const auto json = nlohmann::json::parse(run({"faults", "--json"}).out);
  ASSERT_GT(json.size(), 20U);
  for (const auto& fault : json) {
    EXPECT_THAT(text.out, HasSubstr(fault.at("name").get<std::string>()));
    EXPECT_NE(fault.at("symptom"), "");
    EXPECT_NE(fault.at("decision"), "");
  }
}

class TraceCommand : public testing::Test {
 protected:
  Outcome trace(const std::string& signals, const std::string& every,
                const Program::Settings& settings = {}) {
    return run({"trace", folder_.exercise().string(), "--script", folder_.script("good.txt"),
                "--signals", signals, "--every", every},
               settings);
  }
  ExerciseFolder folder_;
};

TEST_F(TraceCommand, HeadsItsColumnsWithUnits) {
  const Outcome good = trace("cab1.air,true.volts,plant.main_reservoir,cab1.pawl", "1");
  ASSERT_EQ(good.code, 0) << good.err;
  EXPECT_EQ(linesOf(good.out)[0],
            "time [s],cab1.air [psi],true.volts [V],plant.main_reservoir [Pa],cab1.pawl");
}

TEST_F(TraceCommand, GivesALineForEachIntervalFromTheStart) {
  const auto lines = linesOf(trace("true.volts", "0.5").out);
  EXPECT_THAT(lines[1], StartsWith("0.00,"));
  EXPECT_THAT(lines[2], StartsWith("0.50,"));
  EXPECT_THAT(lines[3], StartsWith("1.00,"));
}

TEST_F(TraceCommand, ShownAndTrueValuesAreThoseOfTheRun) {
  const auto lines = linesOf(trace("cab1.pawl,plant.standing", "1").out);
  EXPECT_EQ(lines[1], "0.00,1,1");
  EXPECT_EQ(lines[4], "3.00,0,1");
}

TEST_F(TraceCommand, TakesAStarForManySignals) {
  const Outcome outcome = trace("plant.line1.*", "5");
  ASSERT_EQ(outcome.code, 0) << outcome.err;
  EXPECT_THAT(linesOf(outcome.out)[0], HasSubstr("plant.line1.crank [rad/s]"));
  EXPECT_THAT(linesOf(outcome.out)[0], Not(HasSubstr("line2")));
}

TEST_F(TraceCommand, ListsAllSignals) {
  const Outcome outcome = run({"trace", "--signals", "help"});
  EXPECT_EQ(outcome.code, 0);
  EXPECT_THAT(outcome.out, HasSubstr("cab1.air"));
  EXPECT_THAT(outcome.out, HasSubstr("plant.line2.dog"));
  EXPECT_THAT(outcome.out, HasSubstr("inHg"));
}

TEST_F(TraceCommand, SaysAllThatIsWrongAtOnce) {
  const Outcome outcome =
      run({"trace", "--signals", "cab1.aire,plant.line1.cranc,cab1.air", "--every", "0.005"});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.errorLines(),
              ElementsAre(HasSubstr("did you mean 'cab1.air'"),
                          HasSubstr("did you mean 'plant.line1.crank'"), HasSubstr("--every"),
                          HasSubstr("needs SCENARIO and --script")));
}

TEST_F(TraceCommand, RefusesIntervalsThatAreNoTicks) {
  for (const std::string every : {"0", "-1", "nan", "inf", "0.015", "1e9"}) {
    const Outcome outcome = trace("cab1.air", every);
    EXPECT_EQ(outcome.code, 2) << every;
    EXPECT_EQ(outcome.out, "");
  }
}

TEST_F(TraceCommand, EndsWhenItsReaderGoesAway) {
  Program::Settings settings;
  settings.read_out = 100;
  const Outcome outcome = run({"trace", folder_.exercise().string(), "--script",
                               folder_.script("long.txt"), "--signals", "*", "--every", "0.01"},
                              settings);
  EXPECT_EQ(outcome.signal, 0);
  EXPECT_EQ(outcome.code, 0);
  EXPECT_EQ(outcome.err, "");
}

}  // namespace
}  // namespace cabwright::console_test
