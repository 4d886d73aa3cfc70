// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "fault/fault.h"
#include "sample_session.h"

namespace cabwright::session {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using unit::Action;
using unit::Actor;

unit::Condition condition(const std::string& text) {
  return std::get<unit::Condition>(unit::Condition::parse(text));
}

// A unit after a night, a guard who rings after a second, a fault that comes after two.
scenario::Setup sampleSetup() {
  scenario::Setup setup;
  setup.start.plant = plant::StartConditions::afterStanding(10.0, 8.0);
  scenario::Happening ring;
  ring.at.ticks = 100;
  ring.actions.push_back({Actor::kGuard, "ring", "bell", "2"});
  setup.timeline = scenario::Timeline({ring});
  fault::ArmedFault worn;
  worn.id = "one";
  worn.spec = fault::findFault("compressor1.worn");
  worn.size = worn.spec->size.usual;
  worn.from.ticks = 200;
  setup.faults = fault::ActiveFaults({worn});
  return setup;
}

const Action kKnock{Actor::kTrainee, "say", "call_warning", ""};

std::vector<std::int64_t> frameTicks(const Notebook& notebook) {
  std::vector<std::int64_t> ticks;
  for (const RecordedEvent& event : notebook.events)
    if (const auto* frame = std::get_if<unit::Frame>(&event)) ticks.push_back(frame->tick);
  return ticks;
}

std::vector<StateHash> hashesOf(const Notebook& notebook) {
  std::vector<StateHash> hashes;
  for (const RecordedEvent& event : notebook.events)
    if (const auto* hash = std::get_if<StateHash>(&event)) hashes.push_back(*hash);
  return hashes;
}

std::vector<TimedAction> actionsOf(const Notebook& notebook) {
  std::vector<TimedAction> actions;
  for (const RecordedEvent& event : notebook.events)
    if (const auto* action = std::get_if<TimedAction>(&event)) actions.push_back(*action);
  return actions;
}

void advance(Run& run, int ticks) {
  for (int i = 0; i < ticks; ++i) run.advance();
}

TEST(Run, ShowsTheStartThenAFrameEachTenthOfASecondAndAHashEachSecond) {
  Notebook notebook;
  session::Run run(scenario::Setup{});
  run.addWitness(notebook);
  run.begin();
  advance(run, 215);
  std::vector<std::int64_t> expected;
  for (std::int64_t tick = 0; tick <= 210; tick += 10) expected.push_back(tick);
  EXPECT_EQ(frameTicks(notebook), expected);
  const auto hashes = hashesOf(notebook);
  ASSERT_EQ(hashes.size(), 3U);
  EXPECT_EQ(hashes[2].tick, 200);
}

TEST(Run, ShowsTheFrameOfTheTickOnceBeforeItsActions) {
  Notebook notebook;
  session::Run run(scenario::Setup{});
  run.addWitness(notebook);
  run.begin();
  advance(run, 13);
  run.take(kKnock);
  run.take(kKnock);
  advance(run, 7);
  run.take(kKnock);
  EXPECT_EQ(frameTicks(notebook), (std::vector<std::int64_t>{0, 10, 13, 20}));
  ASSERT_EQ(actionsOf(notebook).size(), 3U);
  EXPECT_TRUE(std::holds_alternative<unit::Frame>(notebook.events[3]));
  EXPECT_TRUE(std::holds_alternative<TimedAction>(notebook.events[4]));
}

TEST(Run, RefusesWordsThatMeanNothingAndKeepsThemOutOfTheRecord) {
  Notebook notebook;
  session::Run run(scenario::Setup{});
  run.addWitness(notebook);
  run.begin();
  const std::uint64_t before = run.hash();
  const Taken taken = run.take({Actor::kTrainee, "set", "cab1.trottle", "2"});
  ASSERT_TRUE(taken.fault);
  EXPECT_THAT(*taken.fault, HasSubstr("cab1.throttle"));
  EXPECT_TRUE(actionsOf(notebook).empty());
  EXPECT_EQ(run.hash(), before);
  EXPECT_EQ(run.actionCount(), 0);
}

TEST(Run, DoesWhatTheTextOfAnActionSaysSinceThatIsWhatIsRecorded) {
  Notebook notebook;
  session::Run run(scenario::Setup{});
  run.addWitness(notebook);
  run.begin();
  ASSERT_FALSE(run.take({Actor::kTrainee, "book", "general", "  lamp   is dim "}).fault);
  const Action done = actionsOf(notebook).at(0).action;
  EXPECT_EQ(done, std::get<Action>(unit::parseAction(unit::toText(done))));
}

TEST(Run, NumbersAllActionsAndMarksThoseOfTheScenario) {
  Notebook notebook;
  session::Run run(sampleSetup());
  run.addWitness(notebook);
  run.begin();
  advance(run, 50);
  run.take(kKnock);
  advance(run, 200);
  run.take(kKnock);
  const auto actions = actionsOf(notebook);
  ASSERT_EQ(actions.size(), 4U);
  for (std::size_t i = 0; i < actions.size(); ++i)
    EXPECT_EQ(actions[i].number, static_cast<std::int64_t>(i) + 1);
  EXPECT_FALSE(actions[0].scheduled);
  EXPECT_TRUE(actions[1].scheduled);
  EXPECT_EQ(actions[1].tick, 100);
  EXPECT_EQ(unit::toText(actions[1].action), "guard: ring bell 2");
  EXPECT_TRUE(actions[2].scheduled);
  EXPECT_EQ(actions[2].tick, 200);
  EXPECT_THAT(unit::toText(actions[2].action), HasSubstr("remark fault compressor1.worn"));
}

TEST(Run, TheSameSetupAndActionsGiveTheSameHashesAndOneActionLessDoesNot) {
  const auto go = [](bool acts) {
    Notebook notebook;
    session::Run run(sampleSetup());
    run.addWitness(notebook);
    run.begin();
    advance(run, 120);
    if (acts) run.take(kKnock);
    advance(run, 380);
    return hashesOf(notebook);
  };
  EXPECT_EQ(go(true), go(true));
  EXPECT_NE(go(true), go(false));
}

TEST(Run, ACopyIsAMarkToReturnTo) {
  session::Run run(sampleSetup());
  run.begin();
  advance(run, 150);
  session::Run mark = run;
  advance(run, 300);
  advance(mark, 300);
  EXPECT_EQ(run.hash(), mark.hash());
  EXPECT_EQ(run.frame().value, mark.frame().value);
}

TEST(Run, TheHashKnowsOfFaultsThatAreStillToCome) {
  scenario::Setup with = sampleSetup();
  scenario::Setup without = sampleSetup();
  without.faults = {};
  EXPECT_NE(session::Run(with).hash(), session::Run(without).hash());
}

TEST(Run, WaitsForAConditionOfTheScenario) {
  scenario::Setup setup;
  scenario::Happening answer;
  answer.at.when = condition("said.call_warning >= 1");
  answer.at.ticks = 30;
  answer.actions.push_back({Actor::kGuard, "ring", "bell", "1"});
  setup.timeline = scenario::Timeline({answer});
  Notebook notebook;
  session::Run run(setup);
  run.addWitness(notebook);
  run.begin();
  advance(run, 60);
  ASSERT_TRUE(actionsOf(notebook).empty());
  run.take(kKnock);
  advance(run, 60);
  const auto actions = actionsOf(notebook);
  ASSERT_EQ(actions.size(), 2U);
  EXPECT_GE(actions[1].tick, 90);
  EXPECT_LE(actions[1].tick, 92);
}

}  // namespace
}  // namespace cabwright::session
