// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/live_run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "forge.h"
#include "sample_scenario.h"
#include "session/database.h"
#include "session/replay.h"

namespace cabwright::session {
namespace {

using scenario::Mode;
using testing::HasSubstr;

unit::Action act(const std::string& text) {
  return std::get<unit::Action>(unit::parseAction(text));
}

// The sample scenario is one for practice and has no aim; this one could be an assessment.
Situation situationWithAim() {
  auto sources = sampleSources();
  std::string& text = sources.front().text;
  text.replace(text.find("pass_mark"), 0, "complete = \"cab1.handbrake >= 0\"\n");
  return std::get<Situation>(readSituation(sources));
}

class LiveRunTest : public testing::Test {
 protected:
  std::filesystem::path file() const { return folder_ / "a.cabsession"; }
  LiveOptions options(std::optional<Mode> mode = {}) const {
    LiveOptions given;
    given.mode = mode;
    given.record = file();
    given.trainee_number = "12";
    given.trainee_name = "P. Example";
    given.program_version = "0.1.0";
    return given;
  }
  static void doGood(LiveRun& live, std::int64_t last_tick) {
    for (const Deed& deed : kGoodDeeds) {
      if (deed.tick > last_tick) break;
      live.advance(deed.tick - live.tick());
      EXPECT_FALSE(live.take(act(deed.text)).fault);
    }
    live.advance(last_tick - live.tick());
  }

  Folder folder_;
};

TEST_F(LiveRunTest, GoesAsTheSameRunDoes) {
  const Situation situation = sampleSituation();
  LiveRun live(situation, {});
  session::Run run(scenario::makeSetup(situation.loaded, 7));
  run.begin();
  perform(run, kGoodDeeds, 915);
  doGood(live, 915);
  EXPECT_EQ(live.run().hash(), run.hash());
  ASSERT_EQ(live.actions().size(), 4U);
  EXPECT_EQ(live.actions()[1].tick, 253);
  EXPECT_EQ(unit::toText(live.actions()[3].action), "set cab1.handbrake on");
}

TEST_F(LiveRunTest, ARecordingInAnotherModeIsRunAndMarkedAgainInThatMode) {
  const Situation situation = situationWithAim();
  for (const Mode mode : {Mode::kGuided, Mode::kPractice, Mode::kAssessment}) {
    LiveOptions given = options(mode);
    given.record = folder_ / std::string(scenario::wordOf(mode));
    LiveRun live(situation, given);
    doGood(live, 700);
    // Only the mode says whether this is a way or none.
    const Taken skipped = live.take(act("go saloon skip"));
    EXPECT_EQ(skipped.outcome.accepted, mode != Mode::kAssessment);
    EXPECT_EQ(live.unit().world().assessment, mode == Mode::kAssessment);
    live.advance(200);
    const auto sheet = live.finish("finished");
    EXPECT_EQ(live.recordFault(), std::nullopt);
    EXPECT_EQ(sheet.head.mode, scenario::wordOf(mode));
    EXPECT_EQ(sheet.head.trainee, "12, P. Example");

    const Store store(*given.record);
    EXPECT_EQ(store.header().mode, mode == Mode::kPractice ? std::nullopt : std::optional(mode));
    const Replayed replayed = replay(store);
    EXPECT_FALSE(replayed.difference) << scenario::wordOf(mode);
    EXPECT_EQ(replayed.last_tick, 900);
    const Remarked marked = markAgain(store);
    EXPECT_EQ(marked.as_recorded, true);
    EXPECT_EQ(marking::printSheet(marked.sheet), marking::printSheet(sheet));
  }
}

TEST_F(LiveRunTest, WithoutItsModeTheRecordingIsAnotherRun) {
  LiveRun live(situationWithAim(), options(Mode::kAssessment));
  live.advance(150);
  live.take(act("go saloon skip"));
  live.advance(50);
  live.finish("finished");
  ASSERT_FALSE(replay(Store(file())).difference);
  Database::openForWriting(file()).run("DELETE FROM about WHERE key = 'mode'");
  forgeChain(file());
  EXPECT_TRUE(replay(Store(file())).difference);
}

TEST_F(LiveRunTest, AnUnknownModeInAFileIsSaid) {
  LiveRun live(situationWithAim(), options(Mode::kGuided));
  live.finish("finished");
  Database::openForWriting(file()).run("UPDATE about SET value = 'exam' WHERE key = 'mode'");
  forgeChain(file());
  EXPECT_THAT(errorOf([&] { return Store(file()); }), HasSubstr("does not know"));
}

TEST_F(LiveRunTest, AnExerciseWithoutAnAimIsNoAssessment) {
  EXPECT_THROW(LiveRun(sampleSituation(), options(Mode::kAssessment)), std::invalid_argument);
  EXPECT_FALSE(std::filesystem::exists(file()));
}

TEST_F(LiveRunTest, TroubleWithTheFileIsSaidAndTheRunGoesOn) {
  spill(file(), "somebody else's");
  LiveRun live(sampleSituation(), options());
  ASSERT_TRUE(live.recordFault());
  EXPECT_THAT(*live.recordFault(), HasSubstr("exists already"));
  EXPECT_EQ(live.advance(30), 30);
  EXPECT_EQ(live.finish("finished").head.last_tick, 30);
  EXPECT_EQ(slurp(file()), "somebody else's");
}

TEST_F(LiveRunTest, AfterTheEndNothingIsDone) {
  LiveRun live(sampleSituation(), options());
  live.advance(100);
  const std::string sheet = marking::printSheet(live.finish("finished"));
  EXPECT_TRUE(live.take(act("set cab1.pawl out")).fault);
  EXPECT_EQ(live.advance(10), 0);
  EXPECT_EQ(marking::printSheet(live.finish("again")), sheet);
  EXPECT_EQ(Store(file()).closing()->reason, "finished");
}

TEST_F(LiveRunTest, IsTakenAgainFromAMoment) {
  LiveRun live(sampleSituation(), {});
  doGood(live, 915);
  LiveOptions again_options;
  again_options.record = file();
  const auto again = live.takenAgainFrom(600, again_options);
  ASSERT_TRUE(again);
  EXPECT_EQ(again->tick(), 600);
  EXPECT_EQ(again->frame().value, live.frameAt(600).value);
  EXPECT_LT(again->frame()[unit::Signal::kCab1Handbrake], 0.5F);
  // What was done at that moment is to be done again, or otherwise.
  EXPECT_FALSE(again->take(act("set cab1.handbrake on")).fault);
  again->advance(315);
  EXPECT_EQ(again->frame().value, live.frame().value);
  const auto sheet = again->finish("finished");
  EXPECT_THAT(marking::printSheet(sheet), HasSubstr("Taken again       0:00:06.0 from 0:00:06.00"));
  EXPECT_FALSE(replay(Store(file())).difference);
  EXPECT_EQ(markAgain(Store(file())).as_recorded, true);
  EXPECT_EQ(live.takenAgainFrom(600, {}, [](std::int64_t) { return false; }), nullptr);
}

TEST_F(LiveRunTest, AnAssessmentIsNotTakenAgain) {
  LiveRun live(situationWithAim(), options(Mode::kAssessment));
  live.advance(300);
  EXPECT_EQ(live.takenAgainFrom(100, {}), nullptr);
  LiveRun practice(situationWithAim(), {});
  practice.advance(300);
  EXPECT_EQ(practice.takenAgainFrom(100, options(Mode::kAssessment)), nullptr);
  EXPECT_NE(practice.takenAgainFrom(100, {}), nullptr);
}

TEST_F(LiveRunTest, ARunInAChosenModeIsTakenAgainInIt) {
  LiveRun live(sampleSituation(), options(Mode::kGuided));
  live.advance(300);
  const auto again = live.takenAgainFrom(200, {});
  EXPECT_EQ(again->mode(), Mode::kGuided);
  EXPECT_EQ(again->header().mode, Mode::kGuided);
}

TEST_F(LiveRunTest, EveryPastFrameIsFoundAgain) {
  LiveRun live(sampleSituation(), {});
  Notebook notebook;
  session::Run run(scenario::makeSetup(sampleSituation().loaded, 7));
  run.addWitness(notebook);
  run.begin();
  perform(run, kGoodDeeds, 6500);
  doGood(live, 6500);
  int held = 0;
  for (const RecordedEvent& event : notebook.events) {
    const auto* frame = std::get_if<unit::Frame>(&event);
    if (frame == nullptr || (frame->tick > 620 && frame->tick % 730 != 0)) continue;
    EXPECT_EQ(live.frameAt(frame->tick).value, frame->value) << frame->tick;
    ++held;
  }
  EXPECT_GT(held, 60);
  EXPECT_EQ(live.frameAt(9999).tick, 6500);
}

TEST_F(LiveRunTest, KeepsChosenSignalsForCharts) {
  LiveRun live(sampleSituation(), {});
  doGood(live, 915);
  const SignalHistory& history = live.history();
  EXPECT_EQ(history.size(), 92U);
  EXPECT_EQ(history.series(unit::Signal::kCab1Handbrake).size(), 92U);
  EXPECT_EQ(history.findValue(unit::Signal::kCab1Handbrake, 605),
            live.frameAt(600)[unit::Signal::kCab1Handbrake]);
  EXPECT_TRUE(history.series(unit::Signal::kTrueCharge).empty());
  EXPECT_EQ(history.findValue(unit::Signal::kTrueCharge, 605), std::nullopt);
  EXPECT_EQ(history.findValue(unit::Signal::kCab1Air, -1), std::nullopt);
}

}  // namespace
}  // namespace cabwright::session
