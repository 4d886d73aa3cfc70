// SPDX-License-Identifier: GPL-3.0-or-later
// What nobody wrote down as a rule: consequences that come out of circuits and machine together.
#include <gmock/gmock.h>

#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

void takeTheSeat(Unit& unit) {
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.reverser forward");
  unit.advance();
}

bool runs(const Unit& unit, int engine) {
  return value(unit, "true.engine" + std::to_string(engine) + ".rpm") > 350.0;
}

TEST(Consequences, WithAirAnEngineStartsFromTheCab) {
  Unit unit = makeUnit(preparedStart());
  takeTheSeat(unit);
  doIt(unit, "set cab1.throttle 2");
  run(unit, 1.5);
  doIt(unit, "hold cab1.start1");
  EXPECT_TRUE(
      runUntil(unit, 6.0, [](const Frame& f) { return f[Signal::kCab1LampEngine1] > 0.5F; }));
  doIt(unit, "release cab1.start1");
  doIt(unit, "set cab1.throttle idle");
  run(unit, 8.0);
  EXPECT_TRUE(runs(unit, 1));
  EXPECT_FALSE(runs(unit, 2));
}

TEST(Consequences, WithoutAirTheCabThrottleIsDeafAndTheEngineOnlyTurns) {
  UnitStart s = preparedStart();
  s.plant.main_psi = s.plant.control_psi = 0.0;
  Unit unit = makeUnit(s);
  takeTheSeat(unit);
  doIt(unit, "set cab1.throttle 2");
  run(unit, 1.5);
  doIt(unit, "hold cab1.start1");
  run(unit, 5.0);
  EXPECT_GT(value(unit, "true.engine1.rpm"), 50.0);
  EXPECT_LT(value(unit, "true.engine1.lever"), 0.05);
  doIt(unit, "release cab1.start1");
  run(unit, 5.0);
  EXPECT_FALSE(runs(unit, 1));
}

TEST(Consequences, FromTheGroundItStartsWithoutAirByTheHandThrottle) {
  UnitStart s = preparedStart();
  s.plant.main_psi = s.plant.control_psi = 0.0;
  s.place = "engine1";
  Unit unit = makeUnit(s);
  doIt(unit, "set engine1.switch ground");
  doIt(unit, "set engine1.hand_throttle full");
  doIt(unit, "hold engine1.start");
  EXPECT_TRUE(runUntil(unit, 10.0, [](const Frame& f) { return f[Signal::kTrueRpm1] > 350; }));
  doIt(unit, "release engine1.start");
  doIt(unit, "set engine1.hand_throttle fast_idle");
  run(unit, 8.0);
  EXPECT_GT(value(unit, "true.engine1.rpm"), 600.0);
  EXPECT_LT(value(unit, "true.engine1.rpm"), 950.0);  // the fast-idle stop
  EXPECT_GT(value(unit, "engine1.oil_gauge"), 5.0);
  doIt(unit, "hold engine1.stop");
  EXPECT_TRUE(runUntil(unit, 15.0, [](const Frame& f) { return f[Signal::kTrueRpm1] < 5; }));
}

// A dying battery lets the control relay go as the starter bites, and pull again as it lets go:
// for whoever holds the button that is one attempt, not ten.
TEST(Consequences, ARelayThatChattersIsOneAttempt) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "scenario: fault battery.resistance_ohm 0.2");
  takeTheSeat(unit);
  const auto tryOnce = [&] {
    int bites = 0;
    bool fed = false;
    doIt(unit, "hold cab1.start1");
    for (int k = 0; k < 300; ++k) {
      unit.advance();
      const bool now = unit.world().result.starter[0];
      if (now && !fed) ++bites;
      fed = now;
    }
    doIt(unit, "release cab1.start1");
    run(unit, 2.0);
    return bites;
  };
  EXPECT_GT(tryOnce(), 3);
  EXPECT_EQ(value(unit, "true.engine1.start_attempts"), 1);
  EXPECT_GT(tryOnce(), 3);
  EXPECT_EQ(value(unit, "true.engine1.start_attempts"), 2);
  EXPECT_NEAR(value(unit, "true.engine1.starter_rest_s"), 2.0, 0.5)
      << "the rest is that of the hand";
}

TEST(Consequences, TheStarterDropsOutWithTheLampThoughTheButtonIsHeld) {
  Unit unit = makeUnit(preparedStart());
  takeTheSeat(unit);
  doIt(unit, "set cab1.throttle 2");
  run(unit, 1.5);
  doIt(unit, "hold cab1.start1");
  ASSERT_TRUE(
      runUntil(unit, 6.0, [](const Frame& f) { return f[Signal::kCab1LampEngine1] > 0.5F; }));
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "cab1.start1"), 1);
  EXPECT_EQ(value(unit, "true.engine1.starter"), 0);
}

TEST(Consequences, TeethThatDoNotFaceLeaveTheAirLampDark) {
  UnitStart s = preparedStart();
  s.plant.line[0].tooth_phase_deg = s.plant.line[1].tooth_phase_deg = 4.0;
  Unit facing = makeUnit(s);
  takeTheSeat(facing);
  run(facing, 3.0);
  EXPECT_EQ(value(facing, "cab1.lamp_air"), 1);
  s.plant.line[1].tooth_phase_deg = 20.0;
  Unit standing = makeUnit(s);
  takeTheSeat(standing);
  run(standing, 20.0);
  EXPECT_EQ(value(standing, "cab1.lamp_air"), 0);
  EXPECT_GT(value(standing, "cab1.air"), 75.0);
  EXPECT_EQ(value(standing, "true.drive1.meshed"), 1);
  EXPECT_EQ(value(standing, "true.drive2.meshed"), 0);
}

TEST(Consequences, APinnedDriveIsByPassedAndItsSleeveDoesNotStir) {
  UnitStart s = preparedStart();
  s.plant.line[0].tooth_phase_deg = 4.0;
  s.place = "engine2";
  Unit unit = makeUnit(s);
  doIt(unit, "set engine2.air_cock shut");
  doIt(unit, "hold engine2.sleeve");
  run(unit, 2.0);
  doIt(unit, "set engine2.pin sleeve");
  doIt(unit, "go cab1 skip");
  unit.advance();
  takeTheSeat(unit);
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "cab1.lamp_air"), 1);
  EXPECT_EQ(value(unit, "true.drive2.meshed"), 0);
}

TEST(Consequences, WithoutVacuumTheBrakeDoesNotComeOff) {
  UnitStart s = preparedStart();
  s.plant.train_pipe_inhg = 0.0;
  s.plant.release_pipe_inhg = 0.0;
  Unit unit = makeUnit(s);
  takeTheSeat(unit);
  doIt(unit, "set cab1.brake release");
  run(unit, 20.0);
  EXPECT_LT(value(unit, "cab1.train_pipe"), 1.0);
  EXPECT_GT(value(unit, "true.blocks1"), 10.0);
}

TEST(Consequences, WithBothHandbrakesOffAndTheBrakeReleasedItRolls) {
  Route hill;
  hill.grades = {{-1000.0, -1.0 / 80.0, 0.0}};
  UnitStart s = runningStart();
  for (plant::LineStart& line : s.plant.line) line.tooth_phase_deg = 4.0;
  Unit unit = makeUnit(s, hill);
  takeTheSeat(unit);
  doIt(unit, "set cab1.brake release");
  doIt(unit, "set cab1.pawl out");
  run(unit, 20.0);
  EXPECT_EQ(value(unit, "true.standing"), 1);  // the other cab's handbrake still holds
  doIt(unit, "instructor: set cab2.handbrake off");
  EXPECT_TRUE(runUntil(unit, 30.0, [](const Frame& f) { return f[Signal::kSpeed] > 1.0F; }));
}

TEST(Consequences, TheDeviceLetGoTakesThePowerAtOnceAndThePipeAfterFiveSeconds) {
  UnitStart s = runningStart();
  s.plant.cab[0].device_psi = 60.0;
  Unit unit = makeUnit(s);
  takeTheSeat(unit);
  doIt(unit, "set cab1.brake release");
  run(unit, 5.0);
  ASSERT_GT(value(unit, "cab1.train_pipe"), 20.0);
  EXPECT_EQ(value(unit, "cab1.lamp_device"), 1);
  doIt(unit, "release cab1.device");
  run(unit, 0.1);
  EXPECT_EQ(value(unit, "cab1.lamp_device"), 0);
  run(unit, 3.9);
  EXPECT_GT(value(unit, "true.train_pipe"), 20.0);
  run(unit, 6.0);
  EXPECT_LT(value(unit, "true.train_pipe"), 5.0);
  EXPECT_EQ(value(unit, "cab1.brake"), -1);  // though the valve stands in release
}

TEST(Consequences, WithItsCockShutTheDeviceDoesNothingAndTheLampLooksTheSame) {
  UnitStart s = runningStart();
  s.plant.cab[0].device_psi = 60.0;
  s.conditions = {{"cab1.seal", "cut"}};
  Unit unit = makeUnit(s);
  takeTheSeat(unit);
  doIt(unit, "set cab1.brake release");
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "cab1.lamp_device"), 1);
  doIt(unit, "release cab1.device");
  run(unit, 12.0);
  EXPECT_GT(value(unit, "true.train_pipe"), 20.0);
}

TEST(Consequences, AWeakBatteryMakesTheRelaysChatter) {
  UnitStart s = preparedStart();
  Unit unit = makeUnit(s);
  for (const plant::ParameterInfo* info : plant::findParameters("battery.resistance_ohm")) {
    unit.setParameter(*info, 0.12);
  }
  takeTheSeat(unit);
  doIt(unit, "set cab1.throttle 2");
  run(unit, 1.0);
  doIt(unit, "hold cab1.start1");
  int changes = 0;
  double last = value(unit, "true.relay");
  for (int k = 0; k < 300; ++k) {
    unit.advance();
    const double now = value(unit, "true.relay");
    if (now != last) ++changes;
    last = now;
  }
  EXPECT_GE(changes, 4);
}

TEST(Consequences, AnOpenHoseKeepsTheVacuumDown) {
  UnitStart s = runningStart();
  s.plant.train_pipe_inhg = 0.0;
  s.conditions = {{"end2.hoses", "hanging"}};
  Unit unit = makeUnit(s);
  takeTheSeat(unit);
  doIt(unit, "set cab1.brake release");
  run(unit, 60.0);
  EXPECT_LT(value(unit, "cab1.train_pipe"), 15.0);
}

TEST(World, ACopyGoesTheSameWayToTheBit) {
  UnitStart s = runningStart();
  s.plant.line[0].tooth_phase_deg = s.plant.line[1].tooth_phase_deg = 4.0;
  Unit unit = makeUnit(s);
  takeTheSeat(unit);
  doIt(unit, "guard: ring bell 2");
  run(unit, 1.0);
  Unit copy = unit;
  EXPECT_EQ(copy.hash(), unit.hash());
  for (Unit* u : {&unit, &copy}) {
    doIt(*u, "set cab1.throttle 1");
    run(*u, 3.0);
  }
  EXPECT_EQ(copy.hash(), unit.hash());
  doIt(copy, "judge end1.hoses good");
  EXPECT_NE(copy.hash(), unit.hash());
}

TEST(World, EveryKindOfChangeShowsInTheHash) {
  const Unit unit = makeUnit(preparedStart(), [] {
    Route r;
    r.signals = {{"s1", 100.0, 1, 400.0, false}};
    return r;
  }());
  for (const char* text :
       {"set cab1.gear 1", "hold cab1.device", "press cab1.bell", "take brake_handle", "go cab2",
        "say ask_protection", "look cab1.flags", "judge cab1.flags good", "book general x",
        "note volts 25", "decide fail", "ring cab1.bell 2", "set lamp on",
        "signaller: set signal.s1 clear", "scenario: condition cab1.flags torn",
        "scenario: condition cab1.air stuck", "scenario: fault desk1.bell_dead 1",
        "scenario: place vest none", "guard: ring bell 2"}) {
    Unit changed = unit;
    doIt(changed, text);
    EXPECT_NE(changed.hash(), unit.hash()) << text;
  }
}

TEST(World, ARefusalChangesNothingButTheCountOfRefusals) {
  Unit unit = makeUnit(preparedStart());
  Unit other = unit;
  EXPECT_FALSE(act(unit, "set cab2.gear 1").accepted);
  EXPECT_FALSE(act(other, "set engine1.switch off").accepted);
  EXPECT_EQ(unit.hash(), other.hash());
}

}  // namespace
}  // namespace cabwright::unit
