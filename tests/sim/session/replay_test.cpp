// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/replay.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "forge.h"
#include "sample_scenario.h"
#include "session/database.h"

namespace cabwright::session {
namespace {

using testing::HasSubstr;

class ReplayTest : public testing::Test {
 protected:
  std::filesystem::path file() const { return folder_ / "a.cabsession"; }

  // Changes the recording as somebody would who knows the format.
  void forge(const std::string& sql) const {
    Database::openForWriting(file()).run(sql);
    forgeChain(file());
  }

  Folder folder_;
};

TEST_F(ReplayTest, MarksARecordingExactlyAsTheRun) {
  const auto sheet = record(file(), kGoodDeeds);
  const Remarked marked = markAgain(Store(file()));
  EXPECT_TRUE(marked.complete);
  EXPECT_EQ(marked.as_recorded, true);
  EXPECT_EQ(marking::printSheet(marked.sheet), marking::printSheet(sheet));
  EXPECT_EQ(marking::sheetToJson(marked.sheet), marking::sheetToJson(sheet));
  EXPECT_TRUE(sheet.decision.passed) << marking::printSheet(sheet);
}

TEST_F(ReplayTest, AFailedRunFailsFromItsRecordingAsWell) {
  auto deeds = kGoodDeeds;
  deeds.push_back({700, "set cab1.gear 1"});
  const auto sheet = record(file(), deeds);
  const Remarked marked = markAgain(Store(file()));
  EXPECT_FALSE(marked.sheet.decision.passed);
  EXPECT_EQ(marking::sheetToJson(marked.sheet), marking::sheetToJson(sheet));
  EXPECT_FALSE(Store(file()).closing()->passed);
}

TEST_F(ReplayTest, TheSheetNamesWhatWasHiddenAndWhatFailedOnTheWay) {
  const std::string text = marking::printSheet(record(file(), kGoodDeeds));
  EXPECT_THAT(text, HasSubstr("end2.hoses hanging"));
  EXPECT_THAT(text, HasSubstr("vacuum.train_pipe_leak (2 mm) there"));
  EXPECT_THAT(text, HasSubstr("P. Example"));
}

TEST_F(ReplayTest, ASessionThatWasCutOffIsMarkedAsFarAsItGoes) {
  record(file(), kGoodDeeds, 400, false);
  const Remarked marked = markAgain(Store(file()));
  EXPECT_FALSE(marked.complete);
  EXPECT_FALSE(marked.as_recorded);
  EXPECT_FALSE(marked.sheet.decision.complete);
  EXPECT_FALSE(marked.sheet.decision.passed);
}

TEST_F(ReplayTest, SaysWhenTheRecordedSheetIsAnother) {
  record(file(), kGoodDeeds);
  forge("UPDATE closing SET sheet = '{}'");
  EXPECT_EQ(markAgain(Store(file())).as_recorded, false);
}

TEST_F(ReplayTest, RunsTheSameAgain) {
  record(file(), kGoodDeeds);
  const Replayed replayed = replay(Store(file()));
  EXPECT_FALSE(replayed.difference);
  EXPECT_EQ(replayed.last_tick, 915);
  EXPECT_EQ(replayed.hashes, 10);
  EXPECT_EQ(replayed.frames, 92 + 1);  // and one before the actions of tick 253
  EXPECT_EQ(replayed.actions, 4 + 2);  // and the guard's, and the fault's
}

TEST_F(ReplayTest, RunsACutOffSessionAgainAsFarAsItGoes) {
  for (const std::int64_t last_tick : {0, 119, 120, 253, 254, 300}) {
    record(folder_ / std::to_string(last_tick), kGoodDeeds, last_tick, false);
    const Replayed replayed = replay(Store(folder_ / std::to_string(last_tick)));
    EXPECT_FALSE(replayed.difference) << "cut at " << last_tick;
  }
}

TEST_F(ReplayTest, ADifferentActionIsSeenAtTheFirstTickAtWhichItShows) {
  record(file(), kGoodDeeds);
  forge("UPDATE action SET text = 'say ask_permission' WHERE text = 'say call_warning'");
  const Replayed replayed = replay(Store(file()));
  ASSERT_TRUE(replayed.difference);
  EXPECT_EQ(replayed.difference->tick, 260);
}

TEST_F(ReplayTest, ADifferentTickOfAnActionIsSeen) {
  record(file(), kGoodDeeds);
  forge("UPDATE action SET tick = 601 WHERE tick = 600");
  const Replayed replayed = replay(Store(file()));
  ASSERT_TRUE(replayed.difference);
  EXPECT_GE(replayed.difference->tick, 600);
  EXPECT_LE(replayed.difference->tick, 610);
}

TEST_F(ReplayTest, AStateThatDiffersWithoutAnySignalIsSeen) {
  record(file(), kGoodDeeds);
  EXPECT_FALSE(replay(Store(file())).difference);
  forge("UPDATE state SET hash = hash + 1 WHERE tick = 500");
  const Replayed replayed = replay(Store(file()));
  ASSERT_TRUE(replayed.difference);
  EXPECT_EQ(replayed.difference->tick, 500);
  EXPECT_EQ(replayed.difference->quantity, "state");
}

TEST_F(ReplayTest, AChangedParameterOfTheVehicleIsSeen) {
  record(file(), kGoodDeeds);
  forge(
      "UPDATE source SET text = 'title = \"Plain\"\n[relay]\npull_v = 18\n' "
      "WHERE role = 'vehicle'");
  EXPECT_TRUE(replay(Store(file())).difference);
}

TEST_F(ReplayTest, AChangedScenarioIsSeen) {
  record(file(), kGoodDeeds);
  forge("UPDATE source SET text = replace(text, '8 C', '9 C') WHERE role = 'scenario'");
  const Replayed replayed = replay(Store(file()));
  ASSERT_TRUE(replayed.difference);
  EXPECT_EQ(replayed.difference->tick, 0);
}

TEST_F(ReplayTest, AWordThatIsNoLongerKnownIsADifference) {
  record(file(), kGoodDeeds);
  forge("UPDATE action SET text = 'set cab1.crank on' WHERE tick = 600");
  const Replayed replayed = replay(Store(file()));
  ASSERT_TRUE(replayed.difference);
  EXPECT_EQ(replayed.difference->tick, 600);
  EXPECT_THAT(replayed.difference->replayed, HasSubstr("cab1.crank"));
}

TEST_F(ReplayTest, ASessionWhoseScenarioIsBrokenSaysWhere) {
  record(file(), kGoodDeeds);
  forge(
      "UPDATE source SET text = replace(text, 'cab1.gear', 'cab1.gaer') "
      "WHERE role = 'scenario'");
  const auto message = errorOf([&] { return markAgain(Store(file())); });
  EXPECT_THAT(message, HasSubstr("a.cabsession: its scenario cannot be read: "
                                 "sample/scenario.toml:"));
  EXPECT_EQ(errorOf([&] { return replay(Store(file())); }), message);
  EXPECT_THAT(message, testing::Not(HasSubstr("\n")));
}

TEST_F(ReplayTest, ASessionWithoutItsScenarioSaysSo) {
  record(file(), kGoodDeeds);
  forge("UPDATE source SET role = 'rules' WHERE role = 'scenario'");
  EXPECT_THAT(errorOf([&] { return markAgain(Store(file())); }), HasSubstr("holds no scenario"));
}

TEST_F(ReplayTest, StopsWhenAsked) {
  record(file(), kGoodDeeds);
  int asked = 0;
  const Replayed replayed = replay(Store(file()), [&](std::int64_t) { return ++asked < 3; });
  EXPECT_EQ(asked, 3);
  EXPECT_FALSE(replayed.difference);
}

}  // namespace
}  // namespace cabwright::session
