// SPDX-License-Identifier: GPL-3.0-or-later
// verify, seal, erase and key, by what comes out of the real program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>

#include "exercise.h"

namespace cabwright::console_test {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::SizeIs;
using testing::StartsWith;

class Trust : public testing::Test {
 protected:
  // With a user's data folder of its own.
  Outcome console(const std::vector<std::string>& words) {
    Program::Settings settings;
    settings.environment = {{"XDG_DATA_HOME", folder_ / "data"}};
    return run(words, settings);
  }
  void record(const std::vector<std::string>& more = {}) {
    std::vector<std::string> words{"run",       folder_.exercise().string(),
                                   "--script",  "good",
                                   "--record",  file_,
                                   "--trainee", "P. Example"};
    words.insert(words.end(), more.begin(), more.end());
    ASSERT_EQ(console(words).code, 0);
  }
  ExerciseFolder folder_;
  std::string file_ = folder_ / "a.cabsession";
};

TEST_F(Trust, AnAssessmentIsSealedAtItsEnd) {
  std::string text = slurp(folder_.script("scenario.toml"));
  text.insert(text.find("seed"), "mode = \"assessment\"\n");
  text.insert(text.find("pass_mark"),
              "complete = \"cab1.handbrake >= 0\"\n"
              "complete_says = \"It is there.\"\n");
  spill(folder_.script("scenario.toml"), text);
  record();
  EXPECT_EQ(console({"verify", file_}).code, 0);
  EXPECT_EQ(console({"replay", file_}).code, 0);
}

TEST_F(Trust, AnAssessmentThatWasCutOffIsSaidToBeOne) {
  std::string text = slurp(folder_.script("scenario.toml"));
  text.insert(text.find("seed"), "mode = \"assessment\"\n");
  text.insert(text.find("pass_mark"),
              "complete = \"cab1.handbrake >= 0\"\n"
              "complete_says = \"It is there.\"\n");
  spill(folder_.script("scenario.toml"), text);
  Program::Settings settings;
  settings.environment = {{"XDG_DATA_HOME", folder_ / "data"}};
  Program program({"run", folder_.exercise().string(), "--script", folder_.script("long.txt"),
                   "--record", file_},
                  settings);
  while (!std::filesystem::exists(file_)) ::usleep(1000);
  ::usleep(50'000);
  program.send(SIGKILL);
  program.wait();
  const Outcome outcome = console({"verify", file_});
  EXPECT_EQ(outcome.code, 4);
  EXPECT_THAT(outcome.out, HasSubstr("it was cut off"));
  EXPECT_THAT(outcome.out, HasSubstr("an assessment is sealed when it ends"));
  EXPECT_EQ(console({"seal", file_}).code, 0);
  EXPECT_EQ(console({"verify", file_}).code, 0);
}

TEST_F(Trust, ASessionIsSealedWhenAskedAndTheKeyIsForItsOwnerAlone) {
  record({"--seal"});
  const Outcome outcome = console({"verify", file_});
  EXPECT_EQ(outcome.code, 0);
  EXPECT_THAT(outcome.out,
              AllOf(StartsWith(file_ + ": sealed and whole"), HasSubstr("sealed when it ended")));
  struct stat status {};
  ASSERT_EQ(::stat((folder_ / "data/cabwright/station.key").c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 0777U, 0600U);
}

TEST_F(Trust, OneThatIsNotSealedIsCodeFourUntilItIs) {
  record();
  const Outcome before = console({"verify", file_});
  EXPECT_EQ(before.code, 4);
  EXPECT_THAT(before.out, HasSubstr("not sealed"));
  EXPECT_EQ(console({"seal", file_}).code, 0);
  EXPECT_EQ(console({"verify", file_}).code, 0);
  const Outcome twice = console({"seal", file_});
  EXPECT_EQ(twice.code, 2);
  EXPECT_THAT(twice.err, HasSubstr("is sealed already"));
  EXPECT_EQ(console({"mark", file_}).code, 0);
  EXPECT_EQ(console({"replay", file_}).code, 0);
}

TEST_F(Trust, AChangedByteAndACutAreCodeThreeAndSaid) {
  record({"--seal"});
  const std::string good = slurp(file_);
  std::string bytes = good;
  bytes[bytes.rfind("set cab1.pawl out")] = 'g';
  spill(file_, bytes);
  Outcome outcome = console({"verify", file_});
  EXPECT_EQ(outcome.code, 3);
  EXPECT_THAT(outcome.out, StartsWith(file_ + ": altered\n"));
  spill(file_, good.substr(0, good.size() - 5000));
  outcome = console({"verify", file_});
  EXPECT_EQ(outcome.code, 3);
  EXPECT_THAT(outcome.out, HasSubstr("altered"));
  spill(file_, good + "more");
  EXPECT_THAT(console({"verify", file_}).out, HasSubstr("4 bytes were added behind its end"));
}

TEST_F(Trust, WhatIsNoSessionIsCodeTwo) {
  spill(file_, "nothing");
  for (const std::string& what : {file_, folder_ / "none", std::string("/")}) {
    const Outcome outcome = console({"verify", what});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_THAT(outcome.errorLines(), SizeIs(1));
  }
}

TEST_F(Trust, OnlyTheSealOfAKnownStationCountsWhenOneSaysWhom) {
  record({"--seal"});
  const Outcome key = console({"key"});
  EXPECT_EQ(key.code, 0);
  spill(folder_ / "known.txt", "# ours\n" + key.out);
  std::string others(64, '7');
  others += " another depot\n";
  spill(folder_ / "others.txt", others);
  spill(folder_ / "bad.txt", "not a key\n");
  const Outcome known = console({"verify", file_, "--trust", folder_ / "known.txt"});
  EXPECT_EQ(known.code, 0);
  EXPECT_THAT(known.out, HasSubstr("by this station"));
  const Outcome other = console({"verify", file_, "--trust", folder_ / "others.txt"});
  EXPECT_EQ(other.code, 4);
  EXPECT_THAT(other.out, HasSubstr("not every key that signed it is trusted"));
  EXPECT_THAT(other.out, HasSubstr("not among the trusted"));
  const Outcome bad = console({"verify", file_, "--trust", folder_ / "bad.txt"});
  EXPECT_EQ(bad.code, 2);
  EXPECT_THAT(bad.err, HasSubstr("bad.txt:1: no public key"));
}

TEST_F(Trust, NamesAreErasedOnlyWhenOneIsSureAndTheSealStaysWhole) {
  record({"--seal"});
  const std::string before = slurp(file_);
  const Outcome unsure = console({"erase", file_});
  EXPECT_EQ(unsure.code, 2);
  EXPECT_THAT(unsure.err, HasSubstr("cannot be undone"));
  EXPECT_EQ(slurp(file_), before);
  const Outcome erased = console({"erase", file_, "--erase-names-for-good"});
  EXPECT_EQ(erased.code, 0);
  EXPECT_THAT(erased.out, HasSubstr(": 1 name erased;"));
  EXPECT_THAT(slurp(file_), Not(HasSubstr("P. Example")));
  const Outcome verified = console({"verify", file_});
  EXPECT_EQ(verified.code, 0);
  EXPECT_THAT(verified.out, HasSubstr("  1 name of those who took part was erased\n"));
  const Outcome marked = console({"mark", file_});
  EXPECT_EQ(marked.code, 0);
  EXPECT_EQ(marked.err, "");
  EXPECT_EQ(console({"replay", file_}).code, 0);
}

}  // namespace
}  // namespace cabwright::console_test
