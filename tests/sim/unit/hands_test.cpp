// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

TEST(Hands, TheDeviceIsNeverTheThingLetGo) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "hold cab1.device");
  unit.advance();
  doIt(unit, "set cab1.reverser forward");
  unit.advance();
  doIt(unit, "hold cab1.start1");
  unit.advance();
  EXPECT_EQ(value(unit, "cab1.device"), 1);
  EXPECT_EQ(value(unit, "cab1.start1"), 1);
  doIt(unit, "hold cab1.start2");
  unit.advance();
  EXPECT_EQ(value(unit, "cab1.device"), 1);
  EXPECT_EQ(value(unit, "cab1.start1"), 0);  // the third thing lets it go
  EXPECT_EQ(value(unit, "hand.let_go"), 2);
}

TEST(Hands, OneHandHoldsTheDeviceDownAndMovesTheThrottle) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.throttle 3");
  unit.advance();
  EXPECT_EQ(value(unit, "cab1.throttle"), 3);
  EXPECT_EQ(value(unit, "hand.right"), 0);
}

TEST(Throttle, SpringsToIdleTheMomentTheDeviceIsLetGo) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.throttle 3");
  unit.advance();
  doIt(unit, "release cab1.device");
  unit.advance();
  EXPECT_EQ(value(unit, "cab1.throttle"), 0);
  const ActionOutcome outcome = act(unit, "set cab1.throttle 1");
  EXPECT_FALSE(outcome.accepted);
  EXPECT_EQ(outcome.perceived, "springs back to idle");
}

TEST(Hands, WalkingAwayLetsGoOfEverything) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "hold cab1.device");
  doIt(unit, "hold cab1.horn high");
  unit.advance();
  doIt(unit, "go cupboard");
  unit.advance();
  EXPECT_EQ(value(unit, "cab1.device"), 0);
  EXPECT_EQ(value(unit, "cab1.horn"), 0);
}

TEST(Hands, APushedButtonComesBackByItself) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "press cab1.start1");
  run(unit, 0.3);
  EXPECT_EQ(value(unit, "cab1.start1"), 1);
  run(unit, 0.3);
  EXPECT_EQ(value(unit, "cab1.start1"), 0);
}

TEST(Handbrake, TakesTimeToTurnAndHoldsOnItsPawl) {
  UnitStart s = preparedStart();
  s.controls.push_back({"cab1.handbrake", "off"});
  Unit unit = makeUnit(s);
  doIt(unit, "set cab1.handbrake on");
  run(unit, 4.0);
  EXPECT_NEAR(value(unit, "cab1.handbrake"), 0.5, 0.02);
  run(unit, 4.2);
  EXPECT_NEAR(value(unit, "cab1.handbrake"), 1.0, 1e-6);
  const ActionOutcome outcome = act(unit, "set cab1.handbrake off");
  EXPECT_FALSE(outcome.accepted);
  EXPECT_THAT(outcome.cause, testing::HasSubstr("pawl"));
}

TEST(Handbrake, SpinsOffWhenThePawlIsOutAndNobodyHoldsTheWheel) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "set cab1.pawl out");
  run(unit, 2.0);
  EXPECT_EQ(value(unit, "cab1.handbrake"), 0);
  EXPECT_EQ(value(unit, "cab2.handbrake"), 1);
}

TEST(Handbrake, WithAHandOnTheWheelThePawlComesOutAndItStays) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "hold cab1.handbrake");
  doIt(unit, "set cab1.pawl out");
  run(unit, 3.0);
  EXPECT_NEAR(value(unit, "cab1.handbrake"), 1.0, 1e-6);
}

TEST(Levers, AreBlockedAsTheTableSays) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.throttle 1");
  EXPECT_EQ(act(unit, "set cab1.reverser forward").perceived, "the lever is blocked");
  doIt(unit, "set cab1.throttle idle");
  doIt(unit, "set cab1.reverser forward");
  EXPECT_EQ(act(unit, "take reversing_lever").perceived, "the lever will not lift");
  doIt(unit, "set cab1.brake release");
  EXPECT_EQ(act(unit, "take brake_handle").perceived, "the handle will not lift");
  EXPECT_FALSE(act(unit, "take control_key").accepted);
}

TEST(Levers, WithoutTheLooseControlsTheDeskIsDeadInItsOwnWay) {
  UnitStart s = preparedStart();
  s.objects = {{"door_key", "carried"}};
  s.controls = {};
  Unit unit = makeUnit(s);
  EXPECT_FALSE(act(unit, "set cab1.key on").accepted);
  EXPECT_FALSE(act(unit, "set cab1.reverser forward").accepted);
  EXPECT_FALSE(act(unit, "set cab1.brake release").accepted);
}

TEST(Levers, AreOutOfReachFromElsewhere) {
  Unit unit = makeUnit(preparedStart());
  EXPECT_EQ(act(unit, "set cab2.gear 1").perceived, "out of reach");
  EXPECT_EQ(act(unit, "hold engine1.start").perceived, "out of reach");
}

TEST(Assessment, NeverSaysWhy) {
  UnitStart s = preparedStart();
  s.assessment = true;
  Unit unit = makeUnit(s);
  const ActionOutcome outcome = act(unit, "set cab1.handbrake off");
  EXPECT_FALSE(outcome.accepted);
  EXPECT_FALSE(outcome.perceived.empty());
  EXPECT_TRUE(outcome.cause.empty());
  EXPECT_FALSE(act(unit, "go saloon skip").accepted);
}

TEST(Walking, TakesItsTimeAndNothingCanBeDoneOnTheWay) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "go engine1");
  unit.advance();
  EXPECT_EQ(value(unit, "trainee.walking"), 1);
  EXPECT_EQ(value(unit, "cab1.seen"), 0);
  EXPECT_EQ(act(unit, "hold engine1.start").perceived, "on the way");
  const double seconds = calcWalk(Place::kCab1, Place::kEngine1).seconds();
  run(unit, seconds - 0.1);
  EXPECT_EQ(value(unit, "engine1.seen"), 0);
  run(unit, 0.2);
  EXPECT_EQ(value(unit, "engine1.seen"), 1);
}

TEST(Walking, CanBeSkippedInPractice) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "go engine1 skip");
  unit.advance();
  EXPECT_EQ(value(unit, "engine1.seen"), 1);
}

TEST(Walking, CountsCrossingsAndThoseMadeBlind) {
  UnitStart s = preparedStart();
  s.place = "side1";
  Unit unit = makeUnit(s);
  doIt(unit, "go engine2 skip");
  unit.advance();
  EXPECT_EQ(value(unit, "trainee.crossings"), 1);
  EXPECT_EQ(value(unit, "trainee.crossed_blind"), 1);
  doIt(unit, "do look_both_ways");
  doIt(unit, "go side1 skip");
  unit.advance();
  EXPECT_EQ(value(unit, "trainee.crossings"), 2);
  EXPECT_EQ(value(unit, "trainee.crossed_blind"), 1);
}

TEST(Walking, ALockedCabNeedsTheDoorKey) {
  UnitStart s = preparedStart();
  s.place = "side1";
  s.controls = {};
  s.objects = {};
  Unit unit = makeUnit(s);
  EXPECT_EQ(act(unit, "go cab1").perceived, "the door is locked");
  doIt(unit, "instructor: place door_key carried");
  doIt(unit, "go cab1");
}

TEST(Padlock, KeepsTheSwitchWhereItIs) {
  UnitStart s = preparedStart();
  s.place = "engine1";
  s.objects.push_back({"padlock", "carried"});
  Unit unit = makeUnit(s);
  EXPECT_FALSE(act(unit, "insert padlock engine1").accepted);
  doIt(unit, "set engine1.switch off");
  doIt(unit, "insert padlock engine1");
  EXPECT_FALSE(act(unit, "set engine1.switch cab").accepted);
  doIt(unit, "take padlock");
  doIt(unit, "set engine1.switch cab");
}

}  // namespace
}  // namespace cabwright::unit
