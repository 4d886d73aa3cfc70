// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/playback.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

#include "forge.h"
#include "reviewed_session.h"
#include "session/database.h"
#include "session/session_error.h"
#include "shipped_run.h"

namespace cabwright::review {
namespace {

using session::Database;
using session::Store;

void buildAll(Playback& playback) {
  while (playback.build(5 * session::kTicksPerSecond)) {
  }
}

bool sameFrame(const unit::Frame& a, const unit::Frame& b) {
  return a.tick == b.tick && a.value == b.value;
}

class PlaybackTest : public testing::Test {
 protected:
  std::filesystem::path file() const { return folder_ / "a.cabsession"; }
  void forge(const std::string& sql) const {
    Database::openForWriting(file()).run(sql);
    session::forgeChain(file());
  }
  // All recorded frames, in any order, and back and forth: as recorded, bit by bit.
  void expectFramesAsRecorded(const Playback& playback, std::size_t every = 1) const {
    std::vector<unit::Frame> frames;
    for (const session::RecordedEvent& event : session::readAll(file()))
      if (const auto* frame = std::get_if<unit::Frame>(&event)) frames.push_back(*frame);
    std::shuffle(frames.begin(), frames.end(), std::minstd_rand(7));  // NOLINT: any order does
    auto moment = playback.findMoment(0);
    ASSERT_TRUE(moment);
    for (std::size_t k = 0; k < frames.size(); k += every) {
      ASSERT_TRUE(playback.moveTo(*moment, frames[k].tick));
      ASSERT_TRUE(sameFrame(moment->frame(), frames[k])) << "tick " << frames[k].tick;
    }
  }
  void playShipped(const std::string& name, const std::string& script_name) const {
    const session::Situation situation = session::shippedSituation(name);
    session::LiveOptions options;
    options.record = file();
    session::LiveRun live(situation, options);
    const auto path = session::shippedFolder() / name / (script_name + ".txt");
    const auto text = std::get<scenario::SourceFile>(scenario::loadText(path.string()));
    scenario::ScriptRunner runner(
        std::get<scenario::Script>(scenario::parseScript(text, {}, scenario::neighboursOf(path))));
    session::playGood(live, runner, [] { return true; });
    live.finish("finished");
  }
  session::Folder folder_;
};

TEST_F(PlaybackTest, EveryRecordedFrameIsThereAgain) {
  session::record(file(), session::kGoodDeeds);
  Playback playback(file());
  buildAll(playback);
  const Playback::State state = playback.state();
  EXPECT_FALSE(state.difference);
  EXPECT_EQ(state.fault, "");
  EXPECT_EQ(state.last_tick, 915);
  EXPECT_EQ(state.built_to, 915);
  expectFramesAsRecorded(playback);
  EXPECT_EQ(playback.findMoment(915)->frame().tick, 915);
}

TEST_F(PlaybackTest, AShippedExerciseWellAndBadlyDone) {
  for (const char* script : {"good", "bad-restricted"}) {
    std::filesystem::remove(file());
    playShipped("late-device", script);
    if (HasFatalFailure()) return;
    Playback playback(file());
    buildAll(playback);
    EXPECT_FALSE(playback.state().difference);
    expectFramesAsRecorded(playback, 97);
  }
}

TEST_F(PlaybackTest, ItIsBuiltInStepsAndWhatIsNotBuiltIsNotThere) {
  session::record(file(), session::kGoodDeeds);
  Playback playback(file());
  EXPECT_FALSE(playback.findMoment(0));
  EXPECT_TRUE(playback.build(300));
  EXPECT_EQ(playback.state().built_to, 300);
  EXPECT_TRUE(playback.findMoment(300));
  EXPECT_FALSE(playback.findMoment(301));
  EXPECT_FALSE(playback.findMoment(-1));
  auto moment = playback.findMoment(100);
  EXPECT_FALSE(playback.moveTo(*moment, 301));
  EXPECT_EQ(moment->tick(), 100) << "and nothing was changed";
  EXPECT_FALSE(playback.build(10'000));
  EXPECT_TRUE(playback.state().done);
}

TEST_F(PlaybackTest, AMomentIsTheWorldBeforeAnythingWasDoneAtIt) {
  session::record(file(), session::kGoodDeeds);
  Playback playback(file());
  buildAll(playback);
  const auto pawl = unit::Signal::kCab1Pawl;
  EXPECT_EQ(playback.findMoment(120)->frame()[pawl], 1.0F);
  EXPECT_EQ(playback.findMoment(121)->frame()[pawl], 0.0F);
}

TEST_F(PlaybackTest, KnowsWhatWasDoneAndWhatCameOfIt) {
  session::record(file(), {{120, "set cab1.handbrake off"}, {200, "say ask_permission"}});
  Playback playback(file());
  buildAll(playback);
  const auto deeds = playback.deeds(0, 915);
  ASSERT_EQ(deeds.size(), 2U);
  EXPECT_EQ(deeds[0].timed.tick, 120);
  EXPECT_FALSE(deeds[0].outcome.accepted) << "the pawl is in";
  EXPECT_TRUE(deeds[1].outcome.accepted);
  EXPECT_TRUE(playback.deeds(121, 199).empty());
}

TEST_F(PlaybackTest, WhatDiffersIsToldAndNothingIsShownAfterIt) {
  session::record(file(), session::kGoodDeeds);
  forge("UPDATE action SET text = 'say ask_permission' WHERE text = 'say call_warning'");
  Playback playback(file());
  buildAll(playback);
  const Playback::State state = playback.state();
  ASSERT_TRUE(state.difference);
  EXPECT_EQ(state.difference->tick, 260);
  EXPECT_TRUE(state.done);
  EXPECT_EQ(state.built_to, 253) << "the last that was found to be as recorded";
  EXPECT_TRUE(playback.findMoment(253));
  EXPECT_FALSE(playback.findMoment(254));
}

TEST_F(PlaybackTest, ARecordThatCannotBeReadOnIsRunAsFarAsItCan) {
  session::record(file(), session::kGoodDeeds);
  Database::openForWriting(file()).run("UPDATE action SET text = 'say hello' WHERE tick = 600");
  Playback playback(file());
  EXPECT_NE(playback.state().fault, "");
  buildAll(playback);
  const Playback::State state = playback.state();
  EXPECT_FALSE(state.difference);
  EXPECT_TRUE(state.done);
  EXPECT_GE(state.built_to, 590);
  EXPECT_LE(state.built_to, 600);
}

TEST_F(PlaybackTest, AnEndFarBehindWhatWasRecordedIsNotRunTo) {
  session::record(file(), session::kGoodDeeds);
  forge("UPDATE closing SET tick = 900000000000");
  Playback playback(file());
  EXPECT_EQ(playback.state().last_tick, 910);
  EXPECT_NE(playback.state().fault, "");
  buildAll(playback);
  EXPECT_LE(playback.state().built_to, 910);
}

TEST_F(PlaybackTest, ASessionThatWasCutOff) {
  session::record(file(), session::kGoodDeeds, 400, false);
  Playback playback(file());
  buildAll(playback);
  EXPECT_FALSE(playback.state().difference);
  EXPECT_EQ(playback.state().fault, "");
  EXPECT_GE(playback.state().built_to, 400);
  expectFramesAsRecorded(playback);
}

TEST_F(PlaybackTest, WhatIsNoSessionIsRefused) {
  session::spill(file(), "no session");
  EXPECT_THROW(Playback{file()}, session::SessionError);
}

}  // namespace
}  // namespace cabwright::review
