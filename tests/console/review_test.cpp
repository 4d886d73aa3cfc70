// SPDX-License-Identifier: GPL-3.0-or-later
// mark, replay and check, by what comes out of the real program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <csignal>
#include <nlohmann/json.hpp>
#include <random>

#include "exercise.h"

namespace cabwright::console_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::SizeIs;
using testing::StartsWith;

class Review : public testing::Test {
 protected:
  // The text of the sheet printed by the run.
  std::string record(const std::string& script) {
    return run({"run", folder_.exercise().string(), "--script", folder_.script(script), "--record",
                file_})
        .out;
  }
  ExerciseFolder folder_;
  std::string file_ = folder_ / "a.cabsession";
};

TEST_F(Review, MarkGivesTheSheetOfTheRunAndItsCode) {
  const std::string sheet = record("bad-gear.txt");
  const Outcome outcome = run({"mark", file_});
  EXPECT_EQ(outcome.code, 1);
  EXPECT_EQ(outcome.out, sheet);
  EXPECT_EQ(outcome.err, "");
}

TEST_F(Review, MarkGivesJson) {
  record("good.txt");
  const Outcome outcome = run({"mark", file_, "--json"});
  EXPECT_EQ(outcome.code, 0);
  EXPECT_EQ(nlohmann::json::parse(outcome.out).at("decision").at("passed"), true);
}

TEST_F(Review, ReplaySaysIdentical) {
  record("good.txt");
  const Outcome outcome = run({"replay", file_});
  EXPECT_EQ(outcome.code, 0);
  EXPECT_THAT(outcome.out, StartsWith("identical"));
  EXPECT_EQ(outcome.err, "");
}

TEST_F(Review, ASessionIsWholeWithoutTheFilesItWasMadeFrom) {
  const std::string sheet = record("good.txt");
  std::filesystem::remove_all(folder_.scenarios());
  EXPECT_EQ(run({"mark", file_}).out, sheet);
  EXPECT_EQ(run({"replay", file_}).code, 0);
}

// A script that stands on another: the session keeps both, and needs neither.
TEST_F(Review, ASessionOfAnEditedScriptNeedsTheScriptItStandsOnNoMore) {
  spill(folder_.script("bad-edited.txt"),
        "# breaks: gear\nas good\nafter \"set cab1.pawl in\":\n  set cab1.gear 1\nend\n");
  const std::string sheet = record("bad-edited.txt");
  EXPECT_THAT(sheet, HasSubstr("Leave the gear alone"));
  spill(folder_.script("good.txt"), "set cab1.gear 2\n");
  EXPECT_EQ(run({"mark", file_}).out, sheet);
  EXPECT_EQ(run({"replay", file_}).code, 0);
  EXPECT_THAT(slurp(file_), HasSubstr("after \"set cab1.pawl in\":"));
  EXPECT_THAT(slurp(file_), HasSubstr("wait 1.2 s\nset cab1.pawl out\n"));
  const Outcome check = run({"check", folder_.script("bad-edited.txt")});
  EXPECT_EQ(check.code, 2);
  EXPECT_THAT(check.errorLines(),
              ElementsAre(HasSubstr("bad-edited.txt:3:7: good.txt has no line")));
}

TEST_F(Review, BadSessionsGetOneLineAndCodeTwo) {
  record("good.txt");
  const std::string good = slurp(file_);
  const std::vector<std::string> bad{
      "",
      "no session\n",
      std::string(5000, '\0'),
      good.substr(0, good.size() / 2),
      good.substr(0, 100),
      good + good,  // more bytes than its header says
  };
  for (std::size_t i = 0; i < bad.size(); ++i) {
    spill(folder_ / "bad.cabsession", bad[i]);
    for (const std::string command : {"mark", "replay"}) {
      const Outcome outcome = run({command, folder_ / "bad.cabsession"});
      if (i + 1 == bad.size() && outcome.code == 0) continue;  // what follows the end is not read
      EXPECT_EQ(outcome.code, 2) << command << " " << i;
      EXPECT_EQ(outcome.out, "");
      ASSERT_THAT(outcome.errorLines(), SizeIs(1)) << outcome.err;
      EXPECT_THAT(outcome.err, StartsWith(folder_ / "bad.cabsession: "));
    }
  }
  const Outcome none = run({"mark", folder_ / "none"});
  EXPECT_EQ(none.code, 2);
  EXPECT_THAT(none.errorLines(), ElementsAre(HasSubstr("there is no such file")));
}

// A fault in a file must not steer the terminal of who reads about it.
TEST_F(Review, MessagesHoldNoControlCharacters) {
  spill(folder_.script("evil.txt"), "set \x1b[2J\x07 out\n");
  const Outcome outcome = run({"check", folder_.script("evil.txt")});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.err, testing::Not(HasSubstr("\x1b")));
  EXPECT_THAT(outcome.err, testing::Not(HasSubstr("\x07")));
}

TEST_F(Review, CheckRecognisesEveryKindOfFileAndFindsThemGood) {
  const auto shelf = folder_.scenarios();
  const Outcome outcome =
      run({"check", folder_.exercise().string(), folder_.script("scenario.toml"),
           (shelf / "vehicles/plain.toml").string(), (shelf / "routes/line.toml").string(),
           folder_.script("good.txt"), folder_.script("bad-gear.txt")});
  EXPECT_EQ(outcome.code, 0) << outcome.err;
  EXPECT_EQ(outcome.err, "");
}

TEST_F(Review, CheckListsTheFaultsOfAllFilesWithTheirPlaces) {
  const auto shelf = folder_.scenarios();
  spill(shelf / "vehicles/odd.toml", "title = \"Odd\"\n[relay]\npul_v = 18\n");
  spill(shelf / "routes/odd.toml", "title = \"Odd\"\n[[grade]]\nfrm = 0\nslope = \"level\"\n");
  spill(shelf / "rules/odd.toml",
        "[[rule]]\nid = \"x\"\ntitle = \"t\"\nreason = \"r\"\nkind = \"absense\"\n"
        "a = \"did set cab1.gear *\"\n");
  spill(folder_.script("odd.txt"), "set cab1.geer 1\n");
  spill(folder_.script("breaks.txt"), "# breaks: no-such-rule\nset cab1.gear 1\n");
  const Outcome outcome =
      run({"check", (shelf / "vehicles/odd.toml").string(), (shelf / "routes/odd.toml").string(),
           (shelf / "rules/odd.toml").string(), folder_.script("odd.txt"),
           folder_.script("breaks.txt"), folder_ / "none.toml", folder_.script("good.txt")});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.err, HasSubstr("vehicles/odd.toml:3:1"));
  EXPECT_THAT(outcome.err, HasSubstr("pull_v"));
  EXPECT_THAT(outcome.err, HasSubstr("routes/odd.toml:3:1"));
  EXPECT_THAT(outcome.err, HasSubstr("rules/odd.toml:5:9"));
  EXPECT_THAT(outcome.err, HasSubstr("odd.txt:1:"));
  EXPECT_THAT(outcome.err, HasSubstr("breaks.txt:1:1: the scenario beside this script has no "
                                     "rule 'no-such-rule'"));
  EXPECT_THAT(outcome.err, HasSubstr("none.toml: "));
  EXPECT_THAT(outcome.out, HasSubstr("good.txt: good"));
}

TEST_F(Review, CheckSaysThatAFileIsNothingItKnows) {
  spill(folder_ / "empty.toml", "");
  spill(folder_ / "title.toml", "title = \"Plain\"\n");
  spill(folder_ / "mine.toml", "title = \"Plain\"\n[engine2]\nidle = 3\n");
  spill(folder_ / "half.toml", "[marking]\npass_mark = 200\n");
  spill(folder_.script("empty.txt"), "# breaks: gear\n");
  const Outcome outcome =
      run({"check", folder_ / "empty.toml", folder_ / "title.toml", folder_ / "mine.toml",
           folder_ / "half.toml", folder_.script("empty.txt")});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_EQ(outcome.out, "");
  EXPECT_THAT(outcome.err, HasSubstr("empty.toml: no telling what this is"));
  EXPECT_THAT(outcome.err, HasSubstr("title.toml: no telling what this is"));
  EXPECT_THAT(outcome.err, HasSubstr("mine.toml:3:1: unknown parameter 'engine2.idle'"));
  EXPECT_THAT(outcome.err, HasSubstr("half.toml:1:1: a scenario needs 'title'"));
  EXPECT_THAT(outcome.err, HasSubstr("empty.txt: no step in it"));
}

TEST_F(Review, CheckRemarksOnAScriptThatOnlyWaits) {
  spill(folder_.script("idle.txt"), "wait 5 s\n");
  const Outcome outcome = run({"check", folder_.script("idle.txt")});
  EXPECT_EQ(outcome.code, 0);
  EXPECT_THAT(outcome.errorLines(), ElementsAre(HasSubstr("idle.txt: nobody does anything in it")));
}

TEST_F(Review, CheckListsFaultsOfTheScenarioAndOfItsRulesTogether) {
  std::string text = slurp(folder_.script("scenario.toml"));
  text.replace(text.find("did set cab1.gear"), 17, "did set cab1.gaer");
  text.replace(text.find("\"8 C\""), 5, "\"8 F\"");
  spill(folder_.script("scenario.toml"), text);
  const Outcome outcome = run({"check", folder_.exercise().string()});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.errorLines(),
              ElementsAre(HasSubstr("unit 'F' found"), HasSubstr("did you mean 'cab1.gear'")));
}

TEST_F(Review, CheckFindsFaultsInTheRulesOfAScenario) {
  std::string text = slurp(folder_.script("scenario.toml"));
  text.replace(text.find("did set cab1.gear"), 17, "did set cab1.gaer");
  spill(folder_.script("scenario.toml"), text);
  const Outcome outcome = run({"check", folder_.exercise().string()});
  EXPECT_EQ(outcome.code, 2);
  ASSERT_THAT(outcome.errorLines(), SizeIs(1));
  EXPECT_THAT(outcome.err, HasSubstr("cab1.gear"));
}

// The real program, killed at moments drawn by a fixed seed.
TEST_F(Review, AKilledRunLeavesASessionThatOpensAndReplays) {
  std::minstd_rand random(7);
  int opened = 0;
  for (int kill = 0; kill < 50; ++kill) {
    const std::string file = folder_ / ("k" + std::to_string(kill));
    Program program({"run", folder_.exercise().string(), "--script", folder_.script("long.txt"),
                     "--record", file});
    // Half of them once there is a session, the others at any moment from the start on.
    while (kill % 2 == 0 && !std::filesystem::exists(file)) ::usleep(200);
    ::usleep(static_cast<useconds_t>(random() % 120'000));
    program.send(SIGKILL);
    EXPECT_EQ(program.wait().signal, SIGKILL);
    if (!std::filesystem::exists(file)) continue;  // killed before there was anything to lose
    ++opened;
    const Outcome marked = run({"mark", file});
    EXPECT_EQ(marked.code, 1) << marked.err;
    EXPECT_THAT(marked.err, HasSubstr("was cut off at"));
    if (kill % 10 != 0) continue;  // running it again takes as long as it ran
    const Outcome replayed = run({"replay", file});
    EXPECT_EQ(replayed.code, 0) << replayed.out;
  }
  EXPECT_GE(opened, 25);
}

}  // namespace
}  // namespace cabwright::console_test
