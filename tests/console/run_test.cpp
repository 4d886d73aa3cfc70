// SPDX-License-Identifier: GPL-3.0-or-later
// The command run, by what comes out of the real program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "exercise.h"

namespace cabwright::console_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;
using testing::StartsWith;

class RunCommand : public testing::Test {
 protected:
  Outcome runScript(const std::string& script, std::vector<std::string> more = {},
                    const Program::Settings& settings = {}) {
    std::vector<std::string> words{"run", folder_.exercise().string(), "--script",
                                   folder_.script(script)};
    words.insert(words.end(), more.begin(), more.end());
    return run(words, settings);
  }
  ExerciseFolder folder_;
};

TEST_F(RunCommand, PassesAGoodScriptWithItsSheetAndNothingElse) {
  const Outcome outcome = runScript("good.txt");
  EXPECT_EQ(outcome.code, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("Handbrake"));
  EXPECT_THAT(outcome.out, HasSubstr("Lift the pawl before turning the wheel"));
  EXPECT_EQ(outcome.err, "");  // no progress where there is no terminal
}

TEST_F(RunCommand, FailsABadScriptWithCodeOne) {
  const Outcome outcome = runScript("bad-gear.txt");
  EXPECT_EQ(outcome.code, 1) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("Leave the gear alone"));
  EXPECT_EQ(outcome.err, "");
}

TEST_F(RunCommand, GivesTheSheetAsJson) {
  const auto sheet = nlohmann::json::parse(runScript("bad-gear.txt", {"--json"}).out);
  EXPECT_EQ(sheet.at("decision").at("passed"), false);
  EXPECT_EQ(sheet.at("lines").at(0).at("id"), "gear");
  EXPECT_EQ(sheet.at("lines").at(0).at("verdict"), "broken");
}

TEST_F(RunCommand, TheSameRunGivesTheSameTextEveryTime) {
  EXPECT_EQ(runScript("good.txt").out, runScript("good.txt").out);
}

TEST_F(RunCommand, TakesAScenarioAsAFolderAFileOrAName) {
  const std::string script = folder_.script("good.txt");
  const std::string file = (folder_.exercise() / "scenario.toml").string();
  EXPECT_EQ(run({"run", file, "--script", script}).code, 0);
  EXPECT_EQ(run({"--data", folder_.data(), "run", "handbrake", "--script", script}).code, 0);
  EXPECT_EQ(run({"run", "handbrake", "--script", "good", "--data", folder_.data()}).code, 0);
  Program::Settings settings;
  settings.environment["CABWRIGHT_DATA"] = folder_.data();
  EXPECT_EQ(run({"run", "handbrake", "--script", "good.txt"}, settings).code, 0);
}

// A course author works in a folder of their own: what is not on its shelves comes from the
// shipped.
TEST(OwnFolder, BorrowsVehicleRouteAndRulesFromTheShippedOnes) {
  namespace fs = std::filesystem;
  const Folder folder;
  const fs::path own = folder.path() / "night";
  fs::copy(shippedScenarios() / "cold-preparation", own);
  const Outcome check = run({"check", own.string(), (own / "good.txt").string()});
  EXPECT_EQ(check.code, 0) << check.err;
  // Its own shelf comes first.
  fs::create_directory(folder.path() / "vehicles");
  std::ofstream(folder.path() / "vehicles" / "two-engine-unit.toml") << "title = \"Mine\"\n";
  const Outcome mine = run({"run", own.string(), "--script", "bad-no-leave"});
  EXPECT_THAT(mine.out, HasSubstr("Mine")) << mine.err;
}

TEST_F(RunCommand, NamesTheNearestExerciseForOneThatIsNotThere) {
  const Outcome outcome = run({"run", "handbrak", "--script", "good", "--data", folder_.data()});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_EQ(outcome.out, "");
  ASSERT_THAT(outcome.errorLines(), SizeIs(1));
  EXPECT_THAT(outcome.err, HasSubstr("did you mean 'handbrake'"));
}

TEST_F(RunCommand, ANameIsNoWayOutOfTheDataFolder) {
  for (const std::string name : {"../scenarios/handbrake", "..", ".", "", "/"})
    EXPECT_EQ(run({"run", name, "--script", "good", "--data", folder_.data()}).code, 2) << name;
}

TEST_F(RunCommand, SaysThatAScriptIsMissing) {
  const Outcome outcome = runScript("none.txt");
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.errorLines(), ElementsAre(HasSubstr("there is no such script")));
}

TEST_F(RunCommand, ListsEveryFaultOfAScriptOneToALine) {
  spill(folder_.script("faulty.txt"), "set cab1.paul out\nset cab1.handbrake off\ngo moon\n");
  const Outcome outcome = runScript("faulty.txt");
  EXPECT_EQ(outcome.code, 2);
  EXPECT_EQ(outcome.out, "");
  EXPECT_THAT(outcome.errorLines(),
              ElementsAre(HasSubstr("faulty.txt:1:"), HasSubstr("faulty.txt:3:")));
}

TEST_F(RunCommand, AWaitThatRunsOutIsAnErrorWithItsLineAndValues) {
  const Outcome outcome = runScript("stuck.txt");
  EXPECT_EQ(outcome.code, 2);
  EXPECT_EQ(outcome.out, "");
  ASSERT_THAT(outcome.errorLines(), SizeIs(1));
  EXPECT_THAT(outcome.err, HasSubstr("stuck.txt:2:"));
  EXPECT_THAT(outcome.err, HasSubstr("cab1.air"));
}

TEST_F(RunCommand, AStuckScriptStillLeavesItsSession) {
  const std::string file = folder_ / "a.cabsession";
  EXPECT_EQ(runScript("stuck.txt", {"--record", file}).code, 2);
  EXPECT_EQ(run({"replay", file}).code, 0);
}

TEST_F(RunCommand, RecordsASessionAndDoesNotOverwriteOne) {
  const std::string file = folder_ / "a.cabsession";
  EXPECT_EQ(runScript("good.txt", {"--record", file}).code, 0);
  const std::string before = slurp(file);
  const Outcome again = runScript("good.txt", {"--record", file});
  EXPECT_EQ(again.code, 2);
  EXPECT_EQ(again.out, "");
  EXPECT_THAT(again.errorLines(), ElementsAre(file + ": exists already and is not overwritten"));
  EXPECT_EQ(slurp(file), before);
}

TEST_F(RunCommand, SaysThatASessionCannotBeWritten) {
  const Outcome outcome = runScript("good.txt", {"--record", folder_ / "none/a.cabsession"});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.errorLines(), ElementsAre(HasSubstr("there is no folder")));
  EXPECT_EQ(runScript("good.txt", {"--record", "/proc/a.cabsession"}).code, 2);
}

TEST_F(RunCommand, AFullDiskIsSaidAndTheSheetPrintedAllTheSame) {
  Program::Settings settings;
  settings.most_file_bytes = 300'000;
  spill(folder_.script("minutes.txt"), "set cab1.pawl out\nset cab1.handbrake off\nwait 20 min\n");
  const Outcome outcome =
      runScript("minutes.txt", {"--record", folder_ / "a.cabsession"}, settings);
  EXPECT_EQ(outcome.code, 2);
  ASSERT_THAT(outcome.errorLines(), SizeIs(1));
  EXPECT_THAT(outcome.err, HasSubstr("a.cabsession: "));
  EXPECT_THAT(outcome.out, HasSubstr("Lift the pawl"));
  EXPECT_EQ(run({"replay", folder_ / "a.cabsession"}).code, 0);  // as far as it goes
}

TEST_F(RunCommand, ASignalEndsTheRunAndClosesItsSession) {
  for (const int signal : {SIGINT, SIGTERM}) {
    const std::string file = folder_ / ("s" + std::to_string(signal));
    Program program({"run", folder_.exercise().string(), "--script", folder_.script("long.txt"),
                     "--record", file});
    while (!std::filesystem::exists(file)) ::usleep(1000);
    ::usleep(50'000);
    program.send(signal);
    const Outcome outcome = program.wait();
    EXPECT_EQ(outcome.signal, 0);
    EXPECT_EQ(outcome.code, 128 + signal);
    EXPECT_THAT(outcome.err, HasSubstr("stopped by a signal at"));
    EXPECT_THAT(outcome.out, HasSubstr("Handbrake"));
    EXPECT_FALSE(std::filesystem::exists(file + "-wal"));  // closed, not only dropped
    const Outcome marked = run({"mark", file});
    EXPECT_EQ(marked.out, outcome.out);
    EXPECT_EQ(marked.err, "");
  }
}

TEST_F(RunCommand, TheLogSaysWhatWouldNotGo) {
  spill(folder_.script("pawl.txt"), "look cab1.seal\nset cab2.gear 1\nset cab1.pawl out\n");
  const Outcome outcome = runScript("pawl.txt", {"--log"});
  EXPECT_THAT(
      outcome.errorLines(),
      ElementsAre(HasSubstr("pawl.txt:1: look cab1.seal"),
                  testing::AllOf(HasSubstr("pawl.txt:2: set cab2.gear 1"), HasSubstr("refused")),
                  testing::AllOf(HasSubstr("pawl.txt:3: set cab1.pawl out"),
                                 testing::Not(HasSubstr("refused")))));
}

TEST_F(RunCommand, AWaitThatRunsOutInTheScriptStoodOnIsSaidWithThatFile) {
  spill(folder_.script("edited.txt"), "as stuck\nafter \"set cab1.pawl out\":\nwait 1 s\nend\n");
  const Outcome outcome = runScript("edited.txt", {"--log"});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.errorLines(), ElementsAre(HasSubstr("stuck.txt:1: set cab1.pawl out"),
                                                HasSubstr("stuck.txt:2:1: waited 5 s for")));
}

TEST_F(RunCommand, KeepsTheNameOfTheTraineeInTheSessionAndTheSheet) {
  const std::string file = folder_ / "a.cabsession";
  const Outcome outcome = runScript("good.txt", {"--record", file, "--trainee", "P. Example"});
  EXPECT_THAT(outcome.out, HasSubstr("P. Example"));
  EXPECT_EQ(run({"mark", file}).out, outcome.out);
}

TEST_F(RunCommand, NoPathOfThisMachineGetsIntoTheSession) {
  const std::string file = folder_ / "a.cabsession";
  ASSERT_EQ(runScript("good.txt", {"--record", file}).code, 0);
  EXPECT_THAT(slurp(file), testing::Not(HasSubstr(folder_.path().string())));
}

// As | head: the reader goes away; the run and its record do not suffer.
TEST_F(RunCommand, AReaderWhoGoesAwayDoesNotHurt) {
  Program::Settings settings;
  settings.read_out = 1;
  const std::string file = folder_ / "a.cabsession";
  const Outcome outcome = runScript("good.txt", {"--record", file}, settings);
  EXPECT_EQ(outcome.signal, 0);
  EXPECT_EQ(outcome.code, 0);
  EXPECT_EQ(run({"replay", file}).code, 0);
}

TEST_F(RunCommand, SaysThatStandardOutputIsFull) {
  Program::Settings settings;
  settings.out_file = "/dev/full";
  const Outcome outcome = runScript("good.txt", {}, settings);
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.errorLines(), ElementsAre(HasSubstr("standard output: No space left")));
}

}  // namespace
}  // namespace cabwright::console_test
