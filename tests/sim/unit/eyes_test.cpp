// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <algorithm>

#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

UnitStart atEnd1() {
  UnitStart s = preparedStart();
  s.place = "end1";
  return s;
}

TEST(Looking, RevealsWhatIsThereAndOnlyFromThere) {
  UnitStart s = atEnd1();
  s.conditions = {{"end1.coupling", "pin_gone"}};
  Unit unit = makeUnit(s);
  EXPECT_THAT(act(unit, "look end1.coupling").perceived, testing::HasSubstr("pin is gone"));
  EXPECT_THAT(act(unit, "look end1.hoses").perceived, testing::HasSubstr("on their dummies"));
  EXPECT_FALSE(act(unit, "look end2.hoses").accepted);
}

TEST(Looking, NeedsALampInTheDark) {
  UnitStart s = atEnd1();
  s.dark = true;
  Unit unit = makeUnit(s);
  EXPECT_EQ(act(unit, "look end1.hoses").perceived, "too dark to see");
  doIt(unit, "set lamp on");
  EXPECT_TRUE(act(unit, "look end1.hoses").accepted);
}

TEST(Judging, CountsOnlyAfterASecondOfLooking) {
  UnitStart s = atEnd1();
  s.conditions = {{"end1.coupling", "pin_gone"}};
  Unit unit = makeUnit(s);
  doIt(unit, "look end1.coupling");
  run(unit, 0.5);
  doIt(unit, "judge end1.coupling defect S");
  unit.advance();
  EXPECT_EQ(value(unit, "judgements.empty"), 1);
  EXPECT_EQ(value(unit, "judged.end1.coupling"), 0);
  run(unit, 0.6);
  doIt(unit, "judge end1.coupling defect S");
  unit.advance();
  EXPECT_EQ(value(unit, "judged.end1.coupling"), 2);
  EXPECT_EQ(value(unit, "judgements.hits"), 1);
}

TEST(Judging, WithoutHavingLookedIsAnEmptyEntry) {
  Unit unit = makeUnit(atEnd1());
  doIt(unit, "judge end2.hoses good");
  unit.advance();
  EXPECT_EQ(value(unit, "judgements.empty"), 1);
  EXPECT_EQ(value(unit, "judgements.count"), 0);
}

TEST(Judging, TellsMissesFalseAlarmsAndOdditiesApart) {
  UnitStart s = atEnd1();
  s.conditions = {{"end1.lifeguard", "loose"}, {"end1.steps", "bent"}};
  Unit unit = makeUnit(s);
  const auto judge = [&](const std::string& item, const std::string& verdict) {
    doIt(unit, "look " + item);
    run(unit, 1.1);
    doIt(unit, "judge " + item + " " + verdict);
    unit.advance();
  };
  judge("end1.lifeguard", "good");
  EXPECT_EQ(value(unit, "judgements.missed_critical"), 1);
  judge("end1.steps", "defect");  // bent, firm: sound
  EXPECT_EQ(value(unit, "judgements.false_alarms"), 1);
  judge("end1.hoses", "unsure");
  EXPECT_EQ(value(unit, "judgements.unsure"), 1);
  judge("end1.lifeguard", "defect T");  // corrected, but the class is wrong
  EXPECT_EQ(value(unit, "judgements.missed_critical"), 0);
  EXPECT_EQ(value(unit, "judgements.hits"), 1);
  EXPECT_EQ(value(unit, "judgements.wrong_class"), 1);
}

TEST(Judging, KeepsWhatWasThereWhenItWasJudged) {
  Unit unit = makeUnit(atEnd1());
  doIt(unit, "look end1.hoses");
  run(unit, 1.1);
  doIt(unit, "judge end1.hoses good");
  doIt(unit, "scenario: condition end1.hoses hanging");
  unit.advance();
  EXPECT_EQ(value(unit, "judgements.misses"), 0);
}

TEST(Judging, TakesAsLongAsTheThingTakesToLookAt) {
  UnitStart s = preparedStart();
  s.place = "engine1";
  Unit unit = makeUnit(s);
  doIt(unit, "look engine1.oil");  // out, wiped, in, out, read
  unit.advance();
  const double needed = value(unit, "look.needed");
  EXPECT_GE(needed, 4.0);
  run(unit, needed - 0.5);
  EXPECT_EQ(value(unit, "looked.engine1.oil"), 0);
  doIt(unit, "judge engine1.oil good");
  unit.advance();
  EXPECT_EQ(value(unit, "judgements.empty"), 1);
  EXPECT_EQ(value(unit, "judged.engine1.oil"), 0);
  EXPECT_NEAR(value(unit, "judgements.last_look"), needed - 0.49, 0.02);
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "looked.engine1.oil"), 1);
  doIt(unit, "judge engine1.oil good");
  unit.advance();
  EXPECT_EQ(value(unit, "judged.engine1.oil"), 1);
  // What hangs in front of the eyes is seen sooner.
  doIt(unit, "look engine1.cover");
  unit.advance();
  EXPECT_LT(value(unit, "look.needed"), needed);
}

TEST(Judging, ALookOfNoLengthHasSeenNothing) {
  Unit unit = makeUnit(atEnd1());
  doIt(unit, "look end1.hoses");
  doIt(unit, "judge end1.hoses good");
  doIt(unit, "look end1.coupling");
  run(unit, 1.1);
  EXPECT_EQ(value(unit, "judgements.empty"), 1);
  EXPECT_EQ(value(unit, "judgements.last_look"), 0);
  EXPECT_EQ(value(unit, "looked.end1.hoses"), 0);
  EXPECT_EQ(value(unit, "looked.end1.coupling"), 1);
}

TEST(Defects, ACriticalOneWeighsOnWhoHasSeenItUntilItIsInTheBook) {
  UnitStart s = preparedStart();
  s.conditions = {{"cab1.seal", "cut"}, {"end1.lifeguard", "loose"}};
  Unit unit = makeUnit(s);
  unit.advance();
  EXPECT_EQ(value(unit, "defects.critical_not_booked"), 2);
  EXPECT_EQ(value(unit, "defects.critical_seen_not_booked"), 0);
  doIt(unit, "look cab1.seal");
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "defects.critical_seen_not_booked"), 0);
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "defects.critical_seen_not_booked"), 1);
  doIt(unit, "book cab1.seal the seal is cut, the cock is shut");
  unit.advance();
  EXPECT_EQ(value(unit, "defects.critical_seen_not_booked"), 0);
  EXPECT_EQ(value(unit, "defects.critical_not_booked"), 1);
}

TEST(Defects, SeenAndThenPutRightAreNoLongerOpen) {
  UnitStart s = atEnd1();
  s.conditions = {{"end1.hoses", "hanging"}};
  Unit unit = makeUnit(s);
  doIt(unit, "look end1.hoses");
  run(unit, 1.1);
  EXPECT_EQ(value(unit, "defects.critical_seen_not_booked"), 1);
  doIt(unit, "set end1.hose on");
  unit.advance();
  EXPECT_EQ(value(unit, "defects.critical_seen_not_booked"), 0);
}

TEST(Defects, NotSureStaysOpenUntilItIsJudgedAnewOrEntered) {
  UnitStart s = preparedStart();
  s.conditions = {{"cab1.extinguisher", "needle_down"}};
  Unit unit = makeUnit(s);
  for (const char* item : {"cab1.extinguisher", "cab1.first_aid"}) {
    doIt(unit, std::string("look ") + item);
    run(unit, 1.1);
    doIt(unit, std::string("judge ") + item + " unsure");
  }
  unit.advance();
  EXPECT_EQ(value(unit, "defects.unsure_open"), 2);
  doIt(unit, "judge cab1.first_aid good");
  unit.advance();
  EXPECT_EQ(value(unit, "defects.unsure_open"), 1);
  doIt(unit, "book cab1.extinguisher needle low, not sure whether it counts");
  unit.advance();
  EXPECT_EQ(value(unit, "defects.unsure_open"), 0);
}

TEST(Defects, AreOpenUntilTheyAreInTheBook) {
  UnitStart s = preparedStart();
  s.conditions = {{"cab1.extinguisher", "needle_down"}};
  Unit unit = makeUnit(s);
  const double open = value(unit, "defects.not_booked");
  EXPECT_GE(open, 1);
  doIt(unit, "book cab1.extinguisher needle out of the green");
  unit.advance();
  EXPECT_EQ(value(unit, "defects.not_booked"), open - 1);
  EXPECT_EQ(value(unit, "booked.cab1.extinguisher"), 1);
  doIt(unit, "go side1 skip");
  unit.advance();
  EXPECT_FALSE(act(unit, "book general nothing else").accepted);
}

TEST(LiveConditions, AreGoneWhenTheyArePutRightByHand) {
  Unit unit = makeUnit(atEnd1());
  doIt(unit, "scenario: condition end1.hoses hanging");
  unit.advance();
  EXPECT_EQ(value(unit, "true.end1.hoses"), 3);
  EXPECT_EQ(value(unit, "end1.hose"), 0);
  doIt(unit, "set end1.hose on");
  unit.advance();
  EXPECT_EQ(value(unit, "true.end1.hoses"), 0);
}

TEST(Dipstick, IsReadWithTheEngineStopped) {
  UnitStart s = runningStart();
  s.place = "engine1";
  Unit unit = makeUnit(s);
  EXPECT_FALSE(act(unit, "look engine1.oil").accepted);
  EXPECT_TRUE(act(unit, "look engine1.belts").accepted);
}

TEST(Perception, AGaugeOfTheOtherCabIsNotReadFromHere) {
  const Unit unit = makeUnit(preparedStart());
  const Perceivable p = unit.perceivable(Place::kCab1);
  const auto has = [&](Signal s) {
    return std::find(p.signals.begin(), p.signals.end(), s) != p.signals.end();
  };
  EXPECT_TRUE(has(Signal::kCab1Air));
  EXPECT_FALSE(has(Signal::kCab2Air));
  EXPECT_FALSE(has(Signal::kEngine1OilGauge));
  EXPECT_FALSE(has(Signal::kTrueTrainPipe));
  EXPECT_TRUE(has(Signal::kHeardHiss));
  for (Control c : p.controls) {
    EXPECT_TRUE(contains(controlInfo(c).places, Place::kCab1) || c == Control::kHandLamp);
  }
}

TEST(Perception, EveryControlAndItemIsPerceivedSomewhere) {
  const Unit unit = makeUnit(preparedStart());
  std::array<bool, kControlCount> control{};
  std::array<bool, kItemCount> item{};
  for (const PlaceInfo& place : placeTable()) {
    const Perceivable p = unit.perceivable(place.id);
    for (Control c : p.controls) control[indexOf(c)] = true;
    for (Item i : p.items) item[indexOf(i)] = true;
  }
  EXPECT_TRUE(std::all_of(control.begin(), control.end(), [](bool b) { return b; }));
  EXPECT_TRUE(std::all_of(item.begin(), item.end(), [](bool b) { return b; }));
}

TEST(Hearing, AnEngineIsHeardFromItsOwnSide) {
  UnitStart s = runningStart();
  s.place = "side1";
  Unit one = makeUnit(s);
  one.advance();
  EXPECT_GT(value(one, "heard.engine1"), 300);
  EXPECT_EQ(value(one, "heard.engine2"), 0);
  s.place = "booking";
  Unit away = makeUnit(s);
  away.advance();
  EXPECT_EQ(value(away, "heard.engine1"), 0);
}

TEST(Hearing, AnOpenDrainHissesLowDownOnItsSide) {
  UnitStart s = preparedStart();
  s.place = "side1";
  s.conditions = {{"side1.drains", "open"}};
  Unit unit = makeUnit(s);
  unit.advance();
  EXPECT_GT(value(unit, "heard.hiss"), 0.5);
  doIt(unit, "set drain_main shut");
  unit.advance();
  EXPECT_EQ(value(unit, "heard.hiss"), 0);
}

// ---- light -----------------------------------------------------------------------------------

bool readable(const Unit& unit, Signal s, Place place) {
  const Perceivable p = unit.perceivable(place);
  return std::find(p.signals.begin(), p.signals.end(), s) != p.signals.end();
}

TEST(Perception, SmokeAndFireAreSeenAlongTheirSideAndNowhereElse) {
  const Unit unit = makeUnit(preparedStart());
  const std::array along1{Place::kEngine1, Place::kSide1, Place::kTrailer1, Place::kLineside};
  const std::array along2{Place::kEngine2, Place::kSide2, Place::kTrailer2};
  for (const PlaceInfo& place : placeTable()) {
    SCOPED_TRACE(place.name);
    const bool one = std::ranges::find(along1, place.id) != along1.end();
    const bool two = std::ranges::find(along2, place.id) != along2.end();
    EXPECT_EQ(readable(unit, Signal::kEngine1Smoke, place.id), one);
    EXPECT_EQ(readable(unit, Signal::kEngine1FireSeen, place.id), one);
    EXPECT_EQ(readable(unit, Signal::kEngine2Smoke, place.id), two);
    EXPECT_EQ(readable(unit, Signal::kEngine2FireSeen, place.id), two);
  }
  // What is felt of the firing stays at the engine.
  EXPECT_TRUE(readable(unit, Signal::kEngine1Even, Place::kEngine1));
  EXPECT_FALSE(readable(unit, Signal::kEngine1Even, Place::kSide1));
}

TEST(Perception, FireIsItsOwnLightAndSmokeIsNot) {
  UnitStart s = preparedStart();
  s.dark = true;
  s.place = "side1";
  Unit unit = makeUnit(s);
  doIt(unit, "set lamp off");
  unit.advance();
  EXPECT_TRUE(readable(unit, Signal::kEngine1FireSeen, Place::kSide1));
  EXPECT_FALSE(readable(unit, Signal::kEngine1Smoke, Place::kSide1));
}

TEST(Perception, ThatTheUnitMovesIsSeenOnItAndBesideIt) {
  const Unit unit = makeUnit(preparedStart());
  for (const PlaceInfo& place : placeTable())
    EXPECT_EQ(readable(unit, Signal::kSeenMoving, place.id), place.id != Place::kBooking)
        << place.name;
}

TEST(Light, AGaugeIsReadByDayByTheCabLightWithCurrentOrByTheHandLamp) {
  UnitStart s = preparedStart();
  EXPECT_TRUE(readable(makeUnit(s), Signal::kCab1Air, Place::kCab1));
  s.dark = true;
  Unit unit = makeUnit(s);
  EXPECT_FALSE(readable(unit, Signal::kCab1Air, Place::kCab1));
  EXPECT_TRUE(readable(unit, Signal::kCab1LampAir, Place::kCab1));  // a lamp is its own light
  EXPECT_TRUE(readable(unit, Signal::kHeardHiss, Place::kCab1));
  EXPECT_EQ(value(unit, "trainee.light"), 0);
  doIt(unit, "set cab1.cab_light on");
  unit.advance();
  EXPECT_TRUE(readable(unit, Signal::kCab1Air, Place::kCab1));
  EXPECT_EQ(value(unit, "trainee.light"), 1);
  doIt(unit, "instructor: set breaker_lights out");
  unit.advance();
  EXPECT_FALSE(readable(unit, Signal::kCab1Air, Place::kCab1));
  doIt(unit, "set lamp on");
  unit.advance();
  EXPECT_TRUE(readable(unit, Signal::kCab1Air, Place::kCab1));
  EXPECT_FALSE(readable(unit, Signal::kCab2Air, Place::kCab2));  // the lamp is not there
}

TEST(Light, BlocksAndGaugesOutsideAreSeenInTheDarkByTheHandLampOnly) {
  UnitStart s = preparedStart();
  s.dark = true;
  s.place = "side1";
  Unit unit = makeUnit(s);
  EXPECT_FALSE(readable(unit, Signal::kSide1BlocksOn, Place::kSide1));
  doIt(unit, "set lamp on");
  unit.advance();
  EXPECT_TRUE(readable(unit, Signal::kSide1BlocksOn, Place::kSide1));
  EXPECT_FALSE(readable(unit, Signal::kEngine2OilGauge, Place::kEngine2));
}

TEST(DeskLamps, AreLookedAtUnderTheLampTestWithCurrentInIt) {
  UnitStart s = preparedStart();
  s.conditions = {{"cab1.lamp_air", "blown"}};
  Unit unit = makeUnit(s);
  EXPECT_EQ(act(unit, "look cab1.lamps").perceived, "dark");
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "looked.cab1.lamps"), 0);  // however long
  EXPECT_EQ(value(unit, "look.condition"), -1);
  doIt(unit, "hold cab1.lamp_test");
  unit.advance();
  EXPECT_THAT(act(unit, "look cab1.lamps").perceived, testing::HasSubstr("air lamp stays dark"));
  run(unit, 0.5);
  EXPECT_EQ(value(unit, "looked.cab1.lamps"), 0);
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "looked.cab1.lamps"), 1);
  doIt(unit, "judge cab1.lamps defect S");
  unit.advance();
  EXPECT_EQ(value(unit, "judgements.hits"), 1);
}

TEST(DeskLamps, TellNothingOnADeadDesk) {
  for (const char* dead : {"battery_switch open", "breaker_lamps out", "breaker_control out"}) {
    UnitStart s = preparedStart();
    Unit unit = makeUnit(s);
    doIt(unit, std::string("instructor: set ") + dead);
    doIt(unit, "hold cab1.lamp_test");
    run(unit, 0.3);
    EXPECT_EQ(act(unit, "look cab1.lamps").perceived, "dark") << dead;
    run(unit, 2.0);
    doIt(unit, "judge cab1.lamps good");
    unit.advance();
    EXPECT_EQ(value(unit, "judgements.empty"), 1) << dead;
  }
}

TEST(EndLamps, ShowThatTheyAreDeadOnlyWhenTheyShouldBurn) {
  UnitStart s = atEnd1();
  s.parameters = {{"desk1.red_lamps_dead", 1}};
  Unit unit = makeUnit(s);
  unit.advance();
  EXPECT_THAT(act(unit, "look end1.tail_lamp").perceived, testing::HasSubstr("glass whole"));
  EXPECT_EQ(value(unit, "true.end1.tail_lamp"), 3);  // a defect all the same
  doIt(unit, "instructor: set cab1.red_lamps on");
  unit.advance();
  EXPECT_THAT(act(unit, "look end1.tail_lamp").perceived, testing::HasSubstr("stay dark"));
  doIt(unit, "instructor: set battery_switch open");
  unit.advance();
  EXPECT_THAT(act(unit, "look end1.tail_lamp").perceived, testing::HasSubstr("glass whole"));
}

TEST(Instruments, ShowWhatTheirConditionLetsThem) {
  UnitStart s = preparedStart();
  s.conditions = {{"cab1.train_pipe", "stuck"}, {"cab1.air", "offset 5"}, {"cab2.air", "dead"}};
  Unit unit = makeUnit(s);
  doIt(unit, "set cab1.brake full");
  run(unit, 10.0);
  EXPECT_LT(value(unit, "true.train_pipe"), 2.0);
  EXPECT_GT(value(unit, "cab1.train_pipe"), 15.0);
  EXPECT_NEAR(value(unit, "cab1.air"), value(unit, "true.air") + 5.0, 0.3);
  EXPECT_LT(value(unit, "cab2.air"), 1.0);
}

}  // namespace
}  // namespace cabwright::unit
