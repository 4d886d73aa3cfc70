// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/why.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

using testing::Contains;
using testing::Each;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

std::vector<std::string> missing(const std::vector<WhyFact>& facts) {
  std::vector<std::string> texts;
  for (const WhyFact& why : facts)
    if (!why.there) texts.push_back(why.text());
  return texts;
}

std::vector<std::string> airLamp(const Unit& unit) {
  return missing(calcWhyOfLamp(unit, Signal::kCab1LampAir));
}

const WhyFact& find(const std::vector<WhyFact>& facts, Fact fact) {
  for (const WhyFact& why : facts)
    if (why.fact == fact) return why;
  ADD_FAILURE() << missingWords(fact);
  return facts.front();
}

// The words and the circuits must never say different things.
void expectOneMind(const Unit& unit, const std::string& state) {
  for (const InterlockRow& row : interlockTable()) {
    for (int cab = 0; cab < plant::kCabs; ++cab) {
      for (int line = 0; line < plant::kLines; ++line) {
        const auto facts = calcWhy(unit, row.outcome, cab, line);
        EXPECT_EQ(missing(facts).empty(), unit.world().result.facts.fulfils(row.outcome, cab, line))
            << state << ": " << row.action << ", cab " << cab + 1 << ", engine " << line + 1;
        EXPECT_FALSE(facts.empty()) << row.action;
        for (const WhyFact& why : facts) {
          EXPECT_FALSE(why.when_there.empty());
          EXPECT_FALSE(why.when_missing.empty());
          EXPECT_NE(why.when_there, why.when_missing);
        }
      }
    }
  }
}

TEST(Why, AllThatIsThereIsThereWhenTheLampIsLit) {
  Unit unit = makeUnit(runningStart());
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.reverser forward");
  ASSERT_TRUE(runUntil(unit, 20, [](const Frame& f) { return f[Signal::kCab1LampAir] > 0.5F; }));
  EXPECT_THAT(airLamp(unit), IsEmpty());
  const auto facts = calcWhyOfLamp(unit, Signal::kCab1LampAir);
  EXPECT_EQ(find(facts, Fact::kDrivesMeshed).text(), "final drive 1 is in mesh that way");
  EXPECT_THAT(find(facts, Fact::kAirSwitchMade).text(), HasSubstr("control air is enough: 9"));
  expectOneMind(unit, "air lamp lit");
}

TEST(Why, TheDarkAirLampNamesTheDriveThatStandsToothOnTooth) {
  UnitStart start = preparedStart();
  start.plant.line[0].tooth_phase_deg = 17;
  start.plant.line[1].tooth_phase_deg = 4;
  Unit unit = makeUnit(start);
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.reverser forward");
  run(unit, 10);
  EXPECT_THAT(airLamp(unit), ElementsAre("final drive 1 stands tooth on tooth"));
  const auto facts = calcWhyOfLamp(unit, Signal::kCab1LampAir);
  const WhyFact& first = find(facts, Fact::kDrivesMeshed);
  EXPECT_EQ(first.place, Place::kEngine1);
  EXPECT_EQ(first.points, WhyPoint(Item::kEngine1FinalDrive));
  int drives = 0;
  for (const WhyFact& why : facts) drives += why.fact == Fact::kDrivesMeshed ? 1 : 0;
  EXPECT_EQ(drives, 2);
  expectOneMind(unit, "tooth on tooth");
}

TEST(Why, LowAirIsSaidWithItsFigureOnBothSidesOfTheLamp) {
  UnitStart start = preparedStart();
  start.plant.main_psi = start.plant.control_psi = 12;
  Unit unit = makeUnit(start);
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.reverser forward");
  run(unit, 5);
  const auto texts = airLamp(unit);
  EXPECT_THAT(texts, Contains(HasSubstr("not enough control air: ")));
  EXPECT_THAT(texts, Contains(HasSubstr("psi, and 75 psi are needed")));
  EXPECT_THAT(texts, Contains(HasSubstr("final drive 2: its shift air is too low, ")));
  const WhyFact air = find(calcWhyOfLamp(unit, Signal::kCab1LampAir), Fact::kAirSwitchMade);
  EXPECT_EQ(air.points, WhyPoint(Signal::kCab1Air));
  EXPECT_EQ(air.place, Place::kCab1);
  expectOneMind(unit, "low air");
}

TEST(Why, WithoutADirectionNoneIsAskedOfTheDrives) {
  Unit unit = makeUnit(preparedStart());
  run(unit, 1);
  EXPECT_THAT(airLamp(unit),
              ElementsAre("final drive 1: no direction is asked for",
                          "final drive 2: no direction is asked for", "the reverser is at off"));
  expectOneMind(unit, "no direction");
}

TEST(Why, ADeadDeskIsFollowedToItsOwnCause) {
  UnitStart start = preparedStart();
  start.controls.push_back({"battery_switch", "open"});
  Unit unit = makeUnit(start);
  run(unit, 1);
  const auto facts = calcWhy(unit, Outcome::kLampEngine, 0, 0);
  EXPECT_THAT(missing(facts),
              ElementsAre("the battery switch is open", "the control relay has no current",
                          "engine 1 does not run"));
  EXPECT_EQ(find(facts, Fact::kBatteryOn).points, WhyPoint(Control::kBatterySwitch));
  EXPECT_EQ(find(facts, Fact::kBatteryOn).place, Place::kCupboard);
  expectOneMind(unit, "battery off");
}

TEST(Why, TheKeySaysWhichOfThreeThingsItIs) {
  UnitStart start = preparedStart();
  start.controls = {};
  Unit off = makeUnit(start);
  run(off, 1);
  EXPECT_THAT(missing(calcWhy(off, Outcome::kDeskAlive, 0, 0)),
              ElementsAre("the key switch is off"));
  EXPECT_THAT(missing(calcWhy(off, Outcome::kDeskAlive, 1, 0)),
              ElementsAre("no control key is in the switch"));
  Unit dead = makeUnit(preparedStart());
  ASSERT_TRUE(act(dead, "instructor: fault desk1.key_contact_dead 1").accepted);
  run(dead, 1);
  EXPECT_THAT(missing(calcWhy(dead, Outcome::kDeskAlive, 0, 0)),
              ElementsAre("the key switch is on and makes no contact"));
  expectOneMind(off, "key off");
  expectOneMind(dead, "key dead");
}

TEST(Why, ASwitchThatLiesIsToldFromTeethAndFromAir) {
  Unit unit = makeUnit(runningStart());
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.reverser forward");
  run(unit, 20);
  ASSERT_THAT(airLamp(unit), IsEmpty());
  ASSERT_TRUE(act(unit, "instructor: fault mesh_switch2.stuck -1").accepted);
  run(unit, 1);
  EXPECT_THAT(airLamp(unit), ElementsAre("final drive 2 is in mesh, but its switch does not make"));
  ASSERT_TRUE(act(unit, "instructor: fault mesh_switch2.stuck 0").accepted);
  ASSERT_TRUE(act(unit, "instructor: fault air_switch.stuck -1").accepted);
  run(unit, 1);
  EXPECT_THAT(airLamp(unit), ElementsAre(HasSubstr("the air switch does not make, with ")));
  expectOneMind(unit, "air switch stuck");
}

TEST(Why, ALampThatIsFedAndDarkIsTheLampItself) {
  Unit unit = makeUnit(runningStart());
  ASSERT_TRUE(act(unit, "instructor: condition cab1.lamp_engine1 blown").accepted);
  run(unit, 2);
  EXPECT_THAT(missing(calcWhyOfLamp(unit, Signal::kCab1LampEngine1)),
              ElementsAre(HasSubstr("it is the lamp itself")));
  EXPECT_THAT(missing(calcWhyOfLamp(unit, Signal::kCab1LampEngine2)), IsEmpty());
}

TEST(Why, AGroundStartThatDoesNotClickNamesWhatIsNotSet) {
  UnitStart start = preparedStart();
  start.place = "engine1";
  Unit unit = makeUnit(start);
  run(unit, 1);
  EXPECT_THAT(missing(calcWhy(unit, Outcome::kGroundStart, 0, 0)),
              ElementsAre("the isolating switch is not at ground",
                          "the start button at the engine is not pressed"));
  doIt(unit, "set engine1.switch ground");
  doIt(unit, "hold engine1.start");
  run(unit, 0.02);
  EXPECT_THAT(missing(calcWhy(unit, Outcome::kGroundStart, 0, 0)), IsEmpty());
}

TEST(Why, LampsAndControlsLeadToTheirRows) {
  EXPECT_EQ(findWhyOf(Signal::kCab2LampEngine2), (WhyOf{Outcome::kLampEngine, 1, 1}));
  EXPECT_EQ(findWhyOf(Signal::kCab1Air), std::nullopt);
  EXPECT_EQ(findWhyOf(Control::kCab2Reverser), (WhyOf{Outcome::kMoveReverser, 1, 0}));
  EXPECT_EQ(findWhyOf(Control::kCab1Start2), (WhyOf{Outcome::kCabStart, 0, 1}));
  EXPECT_EQ(findWhyOf(Control::kEngine2Start), (WhyOf{Outcome::kGroundStart, 0, 1}));
  EXPECT_EQ(findWhyOf(Control::kDoor1), std::nullopt);
  Unit unit = makeUnit(preparedStart());
  EXPECT_THAT(calcWhyOfLamp(unit, Signal::kCab1Air), IsEmpty());
}

// What is refused is explained by the row that is looked up for it.
TEST(Why, ARefusedLeverIsMissingWhatTheRefusalSays) {
  Unit unit = makeUnit(runningStart());
  doIt(unit, "hold cab1.device");
  doIt(unit, "set cab1.reverser forward");
  doIt(unit, "set cab1.throttle 1");
  run(unit, 0.1);
  const ActionOutcome refused = act(unit, "set cab1.reverser reverse");
  ASSERT_FALSE(refused.accepted);
  const auto of = findWhyOf(Control::kCab1Reverser);
  EXPECT_THAT(missing(calcWhy(unit, of->outcome, of->cab, of->line)), ElementsAre(refused.cause));
}

}  // namespace
}  // namespace cabwright::unit
