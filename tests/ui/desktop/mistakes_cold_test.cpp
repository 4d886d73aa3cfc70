// SPDX-License-Identifier: GPL-3.0-or-later
// Typical mistakes in a cold unit, made with the mouse: what the dials, lamps and levers show of
// them, and what the sheet says afterwards.
#include "mistakes_rig.h"

namespace cabwright::tests {
namespace {

using ::testing::HasSubstr;
using unit::Control;
using unit::Signal;

TEST(Mistake, ABrakeWithoutItsHandleIsAnEmptySocket) {
  Trainee t;
  t.act("take", "door_key");
  t.go("cab1");
  auto* brake = t.part(Control::kCab1Brake);
  ASSERT_TRUE(t.drag(Control::kCab1Brake, 0.5));
  EXPECT_EQ(t.value(Control::kCab1Brake), 0);
  EXPECT_THAT(brake->role().value.toStdString(), HasSubstr("handle"));
  EXPECT_THAT(t.desk.view().message().toStdString(), HasSubstr("there is no handle"));
}

TEST(Mistake, TheReversingLeverIsBlockedWhileTheThrottleIsOpen) {
  Trainee t;
  t.makeDeskAlive();
  ASSERT_TRUE(t.click(Control::kCab1Device));
  ASSERT_TRUE(t.drag(Control::kCab1Reverser, 1));
  ASSERT_TRUE(t.drag(Control::kCab1Throttle, 2));
  EXPECT_EQ(t.value(Control::kCab1Throttle), 2);
  ASSERT_TRUE(t.drag(Control::kCab1Reverser, 0));
  EXPECT_EQ(t.value(Control::kCab1Reverser), 1);
  EXPECT_THAT(t.desk.view().message().toStdString(), HasSubstr("the lever is blocked"));
  ASSERT_TRUE(t.drag(Control::kCab1Throttle, 0));
  ASSERT_TRUE(t.drag(Control::kCab1Reverser, 0));
  EXPECT_EQ(t.value(Control::kCab1Reverser), 0);
}

TEST(Mistake, AThrottleWhoseHandleIsNotPressedSpringsBack) {
  Trainee t;
  t.makeDeskAlive();
  ASSERT_TRUE(t.drag(Control::kCab1Throttle, 3));
  EXPECT_EQ(t.value(Control::kCab1Throttle), 0);
  EXPECT_THAT(t.desk.view().message().toStdString(), HasSubstr("springs back"));
}

TEST(Mistake, AThirdHandLetsSomethingGoButNeverTheDevice) {
  Trainee t;
  t.makeDeskAlive();
  ASSERT_TRUE(t.click(Control::kCab1Device));
  EXPECT_THAT(t.hand(0), HasSubstr("Safety device"));
  ASSERT_TRUE(t.drag(Control::kCab1Brake, 0.5));
  EXPECT_THAT(t.hand(1), HasSubstr("Brake"));
  for (int k = 0; k < 3; ++k) {
    ASSERT_TRUE(t.desk.pressMouse(t.desk.findControl("cab.horn_low")));
    EXPECT_THAT(t.hand(0), HasSubstr("Safety device"));
    EXPECT_THAT(t.hand(1), HasSubstr("Horn"));
    EXPECT_EQ(t.value(Control::kCab1Device), 1);
    t.desk.pass(0.5);
    t.desk.releaseMouse();
    ASSERT_TRUE(t.drag(Control::kCab1Brake, 0.5 - 0.1 * k));
    EXPECT_THAT(t.hand(1), HasSubstr("Brake"));
  }
  // A finger that is taken off the button by the other lever sounds it no more.
  ASSERT_TRUE(t.desk.click(t.desk.findControl("cab.horn_low"), Qt::RightButton));
  t.desk.pass(1);
  EXPECT_EQ(t.value(Control::kCab1Horn), 1);
  ASSERT_TRUE(t.drag(Control::kCab1Brake, 0));
  EXPECT_EQ(t.value(Control::kCab1Horn), 0);
}

TEST(Mistake, LettingGoOfTheStartTooEarlyLeavesTheEngineDead) {
  Trainee t;
  t.makeDeskAlive();
  t.go("engine1");
  t.act("set", "engine1.switch", "ground");
  t.act("set", "engine1.hand_throttle", "full");
  auto* start = t.part(Control::kEngine1Start);
  ASSERT_TRUE(t.desk.pressMouse(start));
  t.desk.pass(2);
  EXPECT_GT(t.desk.value(Signal::kEngine1Note), 40);
  EXPECT_THAT(t.heard(), HasSubstr("Engine 1"));
  t.desk.releaseMouse();
  t.desk.pass(6);
  EXPECT_LT(t.desk.value(Signal::kEngine1Note), 5);
  EXPECT_LT(t.needle("Oil pressure"), 2);
  // And at once again: without the rest that the starter needs.
  ASSERT_TRUE(t.desk.pressMouse(start));
  t.desk.pass(1);
  t.desk.releaseMouse();
  EXPECT_THAT(t.verdict("rest-1"), HasSubstr("broken"));
}

TEST(Mistake, AStarterHeldTooLongTurnsAnEngineThatGetsNoFuel) {
  Trainee t;
  t.makeDeskAlive();
  t.go("engine1");
  t.act("set", "engine1.switch", "ground");
  t.act("set", "engine1.fuel_cock", "shut");
  ASSERT_TRUE(t.desk.pressMouse(t.part(Control::kEngine1Start)));
  t.desk.pass(3);
  const double early = t.desk.value(Signal::kEngine1Note);
  EXPECT_GT(early, 40);
  t.desk.pass(17);
  EXPECT_LT(t.desk.value(Signal::kEngine1Note), early);  // the battery goes down
  t.desk.releaseMouse();
  t.desk.pass(5);
  EXPECT_LT(t.desk.value(Signal::kEngine1Note), 5);
  EXPECT_THAT(t.verdict("no-hold"), HasSubstr("broken"));
}

TEST(Mistake, WithoutAirTheEngineIsDeafAndTheGearNotTakenUp) {
  Trainee t;
  t.makeDeskAlive();
  t.startFromTheGround(1);
  t.go("cab1");
  ASSERT_TRUE(t.click(Control::kCab1Device));
  ASSERT_TRUE(t.drag(Control::kCab1Reverser, 1));
  t.desk.pass(4);
  EXPECT_LT(t.needle("Control air"), 60);
  EXPECT_EQ(t.lamp(Signal::kCab1LampAir), "dark");
  EXPECT_EQ(t.lamp(Signal::kCab1LampEngine1), "lit");
  const double idling = t.needle("Engine 1");
  EXPECT_GT(idling, 300);
  ASSERT_TRUE(t.drag(Control::kCab1Gear, 1));
  EXPECT_EQ(t.value(Control::kCab1Gear), 1);
  ASSERT_TRUE(t.drag(Control::kCab1Throttle, 4));
  EXPECT_EQ(t.value(Control::kCab1Throttle), 4);
  t.desk.pass(5);
  EXPECT_NEAR(t.needle("Engine 1"), idling, 60);
  EXPECT_LT(t.needle("Speed"), 0.5);
  EXPECT_EQ(t.lamp(Signal::kCab1LampAir), "dark");
  EXPECT_THAT(t.verdict("air-light"), HasSubstr("broken"));
}

TEST(Mistake, ACordPulledWithTheHandbrakeOffIsNotForgiven) {
  Trainee t;
  t.makeDeskAlive();
  t.act("set", "cab1.pawl", "out");
  t.act("set", "cab1.handbrake", "off");
  t.desk.pass(20);
  t.go("side1");
  auto* cord = t.part(Control::kCord1);
  ASSERT_TRUE(t.desk.pressMouse(cord));
  EXPECT_EQ(t.value(Control::kCord1), 1);
  EXPECT_THAT(cord->role().value.toStdString(), HasSubstr("pulled"));
  t.desk.pass(1);
  t.desk.releaseMouse();
  EXPECT_EQ(t.value(Control::kCord1), 0);
  EXPECT_THAT(t.verdict("cords"), HasSubstr("broken"));
}

}  // namespace
}  // namespace cabwright::tests
