// SPDX-License-Identifier: GPL-3.0-or-later
// Who is asked answers, and who is not asked may speak as well.
#include <gmock/gmock.h>

#include "unit/people.h"
#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

TEST(Protection, CountsEveryTouchAndIsAnsweredTruly) {
  UnitStart s = preparedStart();
  s.conditions = {{"side2.protection", "flag"}};
  Unit unit = makeUnit(s);
  doIt(unit, "say ask_protection");
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "heard.words"), static_cast<double>(Reply::kStillWorking));
  EXPECT_EQ(value(unit, "harm.touched_protected"), 0);
  doIt(unit, "set cab1.wiper on");
  unit.advance();
  EXPECT_EQ(value(unit, "harm.touched_protected"), 1);
  doIt(unit, "scenario: condition side2.protection good");
  doIt(unit, "say ask_protection");
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "heard.words"), static_cast<double>(Reply::kNobodyWorks));
}

TEST(SecondPerson, ReadsTheRearGaugeAndWorksTheValve) {
  UnitStart s = preparedStart();
  s.conditions = {{"cab2.guards_gauge", "offset -2"}};
  Unit unit = makeUnit(s);
  doIt(unit, "say ask_rear_gauge");
  run(unit, 3.0);
  EXPECT_EQ(value(unit, "heard.words"), static_cast<double>(Reply::kNobodyThere));
  doIt(unit, "say ask_second_person");
  run(unit, 50.0);
  EXPECT_EQ(value(unit, "second.at_rear"), 1);
  doIt(unit, "say ask_rear_gauge");
  run(unit, 3.0);
  EXPECT_NEAR(value(unit, "second.rear_reading"), value(unit, "true.train_pipe") - 2.0, 0.3);
  doIt(unit, "say ask_valve_open");
  run(unit, 8.0);
  EXPECT_LT(value(unit, "true.train_pipe"), 5.0);
  doIt(unit, "say ask_blocks");
  run(unit, 30.0);
  EXPECT_EQ(value(unit, "second.blocks_seen"), 1);
}

TEST(Others, SayThingsOfTheirOwnAccordAndAreHeard) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "signaller: say hurry");
  unit.advance();
  EXPECT_EQ(value(unit, "heard.words"), static_cast<double>(Reply::kHurry));
  EXPECT_LT(value(unit, "heard.words_age"), 0.1);
  EXPECT_EQ(value(unit, "acts.count"), 0);
  const auto fault = unit.findActionFault({Actor::kGuard, "say", "ask_blocks", ""});
  ASSERT_TRUE(fault);
  EXPECT_THAT(*fault, testing::HasSubstr("answer"));
  EXPECT_FALSE(unit.findActionFault({Actor::kGuard, "say", "alarm_dealt", ""}));
  EXPECT_TRUE(unit.findActionFault({Actor::kTrainee, "say", "alarm_dealt", ""}));
}

TEST(Others, GiveLeaveWhenAsked) {
  Unit unit = makeUnit(preparedStart());
  doIt(unit, "say ask_restricted");
  doIt(unit, "say ask_reseat");
  run(unit, 4.0);
  EXPECT_EQ(value(unit, "answered.ask_restricted"), static_cast<double>(Reply::kMayRestricted));
  EXPECT_EQ(value(unit, "answered.ask_reseat"), static_cast<double>(Reply::kMayReseat));
}

// It may hang out because somebody pulled it, and has his hand at the other end.
TEST(Others, GiveNoLeaveForTheJumperWhilePeopleWork) {
  for (const char* sign : {"condition end2.protection flag", "condition engine1.people fitter"}) {
    Unit unit = makeUnit(preparedStart());
    doIt(unit, std::string("scenario: ") + sign);
    doIt(unit, "say ask_reseat");
    run(unit, 4.0);
    EXPECT_EQ(value(unit, "answered.ask_reseat"), static_cast<double>(Reply::kStillWorking))
        << sign;
  }
}

TEST(Fire, LightsAgainWhereFuelStillRunsIntoIt) {
  UnitStart s = preparedStart();
  s.place = "engine1";
  s.parameters = {{"fire1.burns", 1}};
  Unit unit = makeUnit(s);
  doIt(unit, "set engine1.fire_bottle pulled");
  run(unit, 5.0);
  EXPECT_EQ(value(unit, "engine1.fire"), 0);
  Unit in_time = unit;
  doIt(in_time, "set engine1.fuel_cock shut");
  run(in_time, 60.0);
  EXPECT_EQ(value(in_time, "engine1.fire"), 0) << "shut while the bottle lasts: out";
  doIt(in_time, "set engine1.fuel_cock open");
  run(in_time, 1.0);
  EXPECT_EQ(value(in_time, "engine1.fire"), 0) << "and cold";
  run(unit, 6.0);
  EXPECT_EQ(value(unit, "engine1.fire"), 1) << "the cock is open, the bottle spent";
  EXPECT_EQ(value(unit, "cab1.fire_bell"), 1);
  doIt(unit, "set engine1.fuel_cock shut");
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "engine1.fire"), 1) << "too late";
}

TEST(Fire, ASpentBottleDoesNotHelpAgainstTheNextOne) {
  UnitStart s = preparedStart();
  s.place = "engine1";
  s.controls.push_back({"engine1.fuel_cock", "shut"});
  Unit unit = makeUnit(s);
  doIt(unit, "scenario: fault fire1.burns 1");
  doIt(unit, "set engine1.fire_bottle pulled");
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "engine1.fire"), 0);
  doIt(unit, "scenario: fault fire1.burns 0");
  run(unit, 0.1);
  doIt(unit, "scenario: fault fire1.burns 1");
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "engine1.fire"), 1);
}

TEST(Fire, RingsThroughTheHeatLineAndGoesOutByAFullBottleOnly) {
  UnitStart s = preparedStart();
  s.place = "engine1";
  s.parameters = {{"fire1.burns", 1}};
  Unit unit = makeUnit(s);
  unit.advance();
  EXPECT_EQ(value(unit, "cab1.fire_bell"), 1);
  EXPECT_EQ(value(unit, "engine1.fire"), 1);
  doIt(unit, "set engine1.fire_bottle pulled");
  unit.advance();
  unit.advance();
  EXPECT_EQ(value(unit, "engine1.fire"), 0);
  EXPECT_FALSE(act(unit, "set engine1.fire_bottle full").accepted);
  s.parameters.push_back({"fire1.bottle_empty", 1});
  Unit empty = makeUnit(s);
  doIt(empty, "set engine1.fire_bottle pulled");
  run(empty, 1.0);
  EXPECT_EQ(value(empty, "engine1.fire"), 1);
}

}  // namespace
}  // namespace cabwright::unit
