// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "unit/people.h"
#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

Route oneSignal(bool clear) {
  Route r;
  r.signals = {{"starter", 60.0, 1, 400.0, clear}};
  return r;
}

UnitStart rollingStart() {
  UnitStart s = preparedStart();
  s.plant.speed_mph = 20.0;
  s.controls.push_back({"cab1.handbrake", "off"});
  s.controls.push_back({"cab2.handbrake", "off"});
  return s;
}

TEST(BellCode, IsReadByGroups) {
  EXPECT_EQ(readBellCode("2"), (std::vector<int>{2}));
  EXPECT_EQ(readBellCode("3-3"), (std::vector<int>{3, 3}));
  for (const char* bad : {"", "0", "3-", "-3", "33", "a", "3-3-3-3"}) {
    EXPECT_TRUE(readBellCode(bad).empty()) << bad;
  }
}

TEST(Guard, TwoStrokesAreHeardInTheCabAndStandUntilTheyLapse) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "heard.bell"), 2);
  EXPECT_EQ(value(unit, "guard.code"), 2);
  EXPECT_EQ(value(unit, "guard.code_valid"), 1);
  run(unit, 61.0);
  EXPECT_EQ(value(unit, "guard.code_valid"), 0);
}

TEST(Guard, IsAnsweredByTheSameCode) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  doIt(unit, "ring cab1.bell 2");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "guard.answered"), 1);
  run(unit, 6.0);
  EXPECT_EQ(value(unit, "guard.repeated"), 0);  // an answer is not given back
}

TEST(Guard, GivesACodeBackInTheBellTestWithoutOrderingAnything) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "ring cab1.bell 3-3");
  run(unit, 15.0);
  EXPECT_EQ(value(unit, "driver.code"), 33);
  EXPECT_EQ(value(unit, "guard.repeated"), 33);
  EXPECT_EQ(value(unit, "heard.bell"), 33);
  EXPECT_EQ(value(unit, "guard.code"), 0);
  EXPECT_EQ(value(unit, "guard.code_valid"), 0);
}

TEST(Guard, OrdersNothingByACodeOfTheBellTest) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "say ask_bell_test");
  run(unit, 5.0);
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "heard.bell"), 2);
  EXPECT_EQ(value(unit, "guard.code_valid"), 0);
  EXPECT_EQ(value(unit, "guard.code"), 0);
  doIt(unit, "ring cab1.bell 2");
  run(unit, 8.0);
  EXPECT_EQ(value(unit, "driver.code_heard"), 1);
  EXPECT_EQ(value(unit, "guard.answered_code"), 0);
  EXPECT_EQ(value(unit, "guard.repeated"), 0);  // it was an answer
  // The test is over: the next two strokes are meant.
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "guard.code_valid"), 1);
}

TEST(Guard, MeansWhatHeRingsOnceTheDriversTrialHasComeBack) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "say ask_bell_test");
  run(unit, 5.0);
  doIt(unit, "ring cab1.bell 3");
  run(unit, 15.0);
  EXPECT_EQ(value(unit, "guard.repeated"), 3);
  EXPECT_EQ(value(unit, "guard.code_valid"), 0);
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "guard.code_valid"), 1);
}

TEST(Guard, MeansOneStrokeAlwaysAndForgetsABellTestNobodyRingsIn) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "say ask_bell_test");
  run(unit, 5.0);
  doIt(unit, "guard: ring bell 1");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "guard.code"), 1);
  EXPECT_EQ(value(unit, "guard.code_valid"), 1);
  run(unit, 61.0);
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "guard.code"), 2);
  EXPECT_EQ(value(unit, "guard.code_valid"), 1);
}

TEST(Guard, NeverHearsABellThatHasNoCurrent) {
  UnitStart s = preparedStart();
  s.parameters = {{"desk1.bell_button_dead", 1}};
  Unit unit = makeUnit(s);
  doIt(unit, "ring cab1.bell 2");
  run(unit, 12.0);
  EXPECT_EQ(value(unit, "driver.code"), 2);
  EXPECT_EQ(value(unit, "driver.code_heard"), 0);
  EXPECT_EQ(value(unit, "guard.repeated"), 0);
}

TEST(Guard, IsNotHeardThroughADeadBell) {
  UnitStart s = preparedStart();
  s.parameters = {{"desk1.bell_dead", 1}};
  Unit unit = makeUnit(s);
  doIt(unit, "guard: ring bell 2");
  run(unit, 5.0);
  EXPECT_EQ(value(unit, "guard.code"), 2);
  EXPECT_EQ(value(unit, "heard.bell"), 0);
}

TEST(Guard, HisCodeLapsesWhenTheSignalGoesBack) {
  Unit unit = makeUnit(preparedStart(), oneSignal(true));
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  ASSERT_EQ(value(unit, "guard.code_valid"), 1);
  doIt(unit, "signaller: set signal.starter danger");
  unit.advance();
  EXPECT_EQ(value(unit, "guard.code_valid"), 0);
  EXPECT_EQ(value(unit, "cab1.signal"), 0);
}

TEST(Guard, RungByHandStrokeByStrokeMakesTheSameCode) {
  Unit unit = makeUnit(preparedStart());
  for (int stroke = 0; stroke < 3; ++stroke) {
    doIt(unit, "hold cab1.bell");
    run(unit, 0.3);
    doIt(unit, "release cab1.bell");
    run(unit, 0.3);
  }
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "driver.code"), 3);
}

TEST(Signals, AreSeenAheadFromTheirOwnDirectionOnly) {
  const Unit unit = makeUnit(preparedStart(), oneSignal(true));
  EXPECT_EQ(value(unit, "cab1.signal"), 1);
  EXPECT_NEAR(value(unit, "cab1.signal_distance"), 40.0, 0.1);
  EXPECT_EQ(value(unit, "cab2.signal"), -1);
}

TEST(Signals, PassedAtDangerAreCountedOnce) {
  UnitStart s = preparedStart();
  s.plant.speed_mph = 20.0;
  s.plant.position_m = 30.0;
  s.controls.push_back({"cab1.handbrake", "off"});
  s.controls.push_back({"cab2.handbrake", "off"});
  Unit unit = makeUnit(s, oneSignal(false));
  EXPECT_TRUE(runUntil(unit, 10.0, [](const Frame& f) { return f[Signal::kTruePosition] > 45; }));
  EXPECT_EQ(value(unit, "harm.passed_at_danger"), 1);
  Unit clear = makeUnit(s, oneSignal(true));
  run(clear, 5.0);
  EXPECT_EQ(value(clear, "harm.passed_at_danger"), 0);
}

TEST(Signals, GoBackToDangerBehindTheEndThatLeads) {
  UnitStart s = rollingStart();
  s.plant.position_m = 30.0;  // the front 10 m before the signal
  Unit unit = makeUnit(s, oneSignal(true));
  EXPECT_EQ(value(unit, "cab1.signal"), 1);
  ASSERT_TRUE(runUntil(unit, 10.0, [](const Frame& f) { return f[Signal::kTruePosition] > 41; }));
  EXPECT_FALSE(unit.world().signal_clear[0]);
  EXPECT_EQ(value(unit, "harm.passed_at_danger"), 0);
}

TEST(Signals, OfTheOtherDirectionStayAsTheyAre) {
  UnitStart s = rollingStart();
  s.plant.position_m = 30.0;
  Route r = oneSignal(true);
  r.signals[0].direction = -1;
  Unit unit = makeUnit(s, r);
  ASSERT_TRUE(runUntil(unit, 10.0, [](const Frame& f) { return f[Signal::kTruePosition] > 45; }));
  EXPECT_TRUE(unit.world().signal_clear[0]);
}

TEST(Harm, ADoorOpenedOnTheMoveCountsLikeOneLeftOpen) {
  UnitStart s = rollingStart();
  Unit unit = makeUnit(s);
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "harm.moved_door_open"), 0);
  doIt(unit, "guard: set door1 open");
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "harm.moved_door_open"), 1);
  doIt(unit, "guard: set door1 shut");
  unit.advance();
  doIt(unit, "guard: set door2 open");
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "harm.moved_door_open"), 2);
}

TEST(Harm, BetweenTheCarsCountsAlsoWhenTheHandbrakesComeOffMeanwhile) {
  UnitStart s = preparedStart();
  s.place = "between";
  Unit unit = makeUnit(s);
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "harm.between_unprotected"), 0);
  doIt(unit, "instructor: set cab1.handbrake off");
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "harm.between_unprotected"), 0);  // the other one holds
  doIt(unit, "instructor: set cab2.handbrake off");
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "harm.between_unprotected"), 1);
}

TEST(Harm, GoingUnderARunningEngineCountsOnce) {
  UnitStart s = runningStart();
  s.place = "engine1";
  Unit unit = makeUnit(s);
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "harm.between_unprotected"), 0);
  doIt(unit, "go engine2 under");
  run(unit, 30.0);
  EXPECT_EQ(value(unit, "harm.between_unprotected"), 1);
}

TEST(Harm, AHandInTheDriveCountsWhileTheEngineTurns) {
  UnitStart s = preparedStart();
  s.place = "engine1";
  Unit still = makeUnit(s);
  doIt(still, "set engine1.air_cock shut");
  doIt(still, "hold engine1.sleeve");
  run(still, 1.0);
  EXPECT_EQ(value(still, "harm.reached_running"), 0);
  s = runningStart();
  s.place = "engine1";
  Unit turning = makeUnit(s);
  doIt(turning, "hold engine1.sleeve");
  run(turning, 1.0);
  EXPECT_EQ(value(turning, "harm.reached_running"), 1);
}

TEST(Harm, CordsPulledWithAHandbrakeOffAreCounted) {
  UnitStart s = preparedStart();
  s.place = "side1";
  Unit unit = makeUnit(s);
  doIt(unit, "hold cord1");
  unit.advance();
  EXPECT_EQ(value(unit, "harm.cords_unsecured"), 0);
  doIt(unit, "release cord1");
  doIt(unit, "instructor: set cab2.handbrake off");
  doIt(unit, "hold cord1");
  unit.advance();
  EXPECT_EQ(value(unit, "harm.cords_unsecured"), 1);
}

TEST(Harm, MovingOnAScotchIsCounted) {
  UnitStart s = rollingStart();
  s.controls.push_back({"scotch2", "under"});
  Unit unit = makeUnit(s);
  run(unit, 0.2);
  EXPECT_EQ(value(unit, "harm.moved_on_scotch"), 1);
}

TEST(Answers, TellWhichQuestionTheyBelongTo) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "say ask_protection");
  unit.advance();
  EXPECT_EQ(value(unit, "answered.ask_protection"), 0);
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "answered.ask_protection"), static_cast<double>(Reply::kNobodyWorks));
  doIt(unit, "say ask_bell_test");
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "answered.ask_bell_test"), static_cast<double>(Reply::kReadyForBell));
  EXPECT_EQ(value(unit, "answered.ask_protection"), static_cast<double>(Reply::kNobodyWorks));
  doIt(unit, "say ask_protection");  // asked again, it waits for a new answer
  unit.advance();
  EXPECT_EQ(value(unit, "answered.ask_protection"), 0);
}

TEST(Guard, ABellTestIsNoAnswerToAnythingHeAsked) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "ring cab1.bell 2");
  run(unit, 12.0);
  ASSERT_EQ(value(unit, "guard.repeated"), 2);
  EXPECT_EQ(value(unit, "guard.answered_code"), 0);
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "guard.answered_code"), 0);
  doIt(unit, "ring cab1.bell 3");  // another code is no answer
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "guard.answered_code"), 0);
  run(unit, 8.0);
  doIt(unit, "guard: ring bell 2");
  run(unit, 4.0);
  doIt(unit, "ring cab1.bell 2");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "guard.answered_code"), 2);
  run(unit, 60.0);
  EXPECT_EQ(value(unit, "guard.code_valid"), 0);
  EXPECT_EQ(value(unit, "guard.answered_code"), 0);
}

TEST(Passers, StandClearAfterAWarning) {
  UnitStart s = preparedStart();
  s.conditions = {{"engine1.people", "passing"}, {"engine2.people", "fitter"}};
  Unit unit = makeUnit(s);
  EXPECT_EQ(value(unit, "true.person_engine1"), 1);
  doIt(unit, "say call_warning");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "true.person_engine1"), 1);
  run(unit, 2.0);
  EXPECT_EQ(value(unit, "true.person_engine1"), 0);
  EXPECT_EQ(value(unit, "true.person_engine2"), 1);  // a fitter stays
}

TEST(Passers, AreWarnedByTheNoteOfTheHornNotByItsLever) {
  const auto warned = [](double psi) {
    UnitStart s = preparedStart();
    s.plant.main_psi = s.plant.control_psi = psi;
    Unit unit = makeUnit(s);
    doIt(unit, "hold cab1.horn low");
    run(unit, 1.0);
    return value(unit, "warning.age") < 1.0;
  };
  EXPECT_TRUE(warned(90.0));
  EXPECT_FALSE(warned(0.0));
}

TEST(Passers, AreHurtWhenAnEngineIsTurnedAtThem) {
  UnitStart s = preparedStart();
  s.conditions = {{"engine1.people", "passing"}};
  Unit unit = makeUnit(s);
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.reverser forward");
  unit.advance();
  doIt(unit, "hold cab1.start2");
  run(unit, 0.2);
  EXPECT_EQ(value(unit, "harm.started_at_person"), 0);
  doIt(unit, "hold cab1.start1");
  run(unit, 0.2);
  EXPECT_EQ(value(unit, "harm.started_at_person"), 1);
}

}  // namespace
}  // namespace cabwright::unit
