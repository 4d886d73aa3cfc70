// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <set>

#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

TEST(Signals, HaveOneNameEach) {
  std::set<std::string_view> names;
  for (const SignalInfo& s : signalTable()) EXPECT_TRUE(names.insert(s.name).second) << s.name;
  EXPECT_GT(names.size(), 250u);
}

TEST(Controls, EachStandardPositionIsOneItCanTake) {
  for (const ControlInfo& c : controlTable()) {
    ASSERT_GE(c.positions.size(), 1u) << c.name;
    EXPECT_GE(c.standard, c.lowest) << c.name;
    EXPECT_LE(c.standard, c.highest) << c.name;
    for (const ControlPosition& p : c.positions) {
      EXPECT_EQ(findPosition(c, p.name), p.value) << c.name << " " << p.name;
    }
    EXPECT_EQ(findControl(c.name), c.id);
    EXPECT_EQ(signalInfo(c.signal).name, c.name);
  }
}

TEST(Controls, TheSecondCabAndEngineMirrorTheFirst) {
  for (const ControlInfo& c : controlTable()) {
    if (c.name.starts_with("cab1.")) {
      EXPECT_EQ(controlInfo(ofCab(c.id, 1)).name.substr(4), c.name.substr(4));
    }
    if (c.name.starts_with("engine1.")) {
      EXPECT_EQ(controlInfo(ofEngine(c.id, 1)).name.substr(7), c.name.substr(7));
    }
  }
}

TEST(Controls, TakeNumbersOnlyWhereTheyCan) {
  const ControlInfo& brake = controlInfo(Control::kCab1Brake);
  EXPECT_EQ(findPosition(brake, "0.4"), 0.4);
  EXPECT_EQ(findPosition(brake, "release"), -1.0);
  EXPECT_FALSE(findPosition(brake, "1.01"));
  EXPECT_FALSE(findPosition(brake, "nan"));
  EXPECT_FALSE(findPosition(controlInfo(Control::kCab1Gear), "2.5"));
  EXPECT_FALSE(findPosition(controlInfo(Control::kCab1Display), "2.5"));
  EXPECT_EQ(findPosition(controlInfo(Control::kCab1Display), "7"), 7.0);
}

TEST(Items, CoverEveryPlaceOfTheWalkRound) {
  EXPECT_GE(itemTable().size(), 100u);
  for (const ItemInfo& item : itemTable()) {
    EXPECT_FALSE(item.good.empty()) << item.name;
    EXPECT_FALSE(item.conditions.empty()) << item.name;
    std::set<std::string> names{"good"};
    for (const ItemCondition& c : item.conditions) {
      EXPECT_TRUE(names.insert(c.name).second) << item.name << " " << c.name;
    }
  }
}

// A condition with an effect must be one the unit can bring about: each is put in and lifted again.
TEST(Items, EveryConditionCanBePutInAndLiftedWithoutATrace) {
  for (const ItemInfo& item : itemTable()) {
    for (const ItemCondition& c : item.conditions) {
      if (c.live && c.effects.empty()) continue;
      Unit unit = makeUnit(preparedStart());
      const plant::Parameters before = unit.plant().parameters();
      const std::string name(item.name);
      doIt(unit, "scenario: condition " + name + " " + c.name);
      unit.advance();
      EXPECT_GT(unit.presentCondition(item.id), 0) << name << " " << c.name;
      doIt(unit, "scenario: condition " + name + " good");
      unit.advance();
      for (const plant::ParameterInfo& info : plant::parameterTable()) {
        EXPECT_NEAR(info.of(unit.plant().parameters()), info.of(before), 1e-9)
            << name << " " << c.name << ": " << info.name;
      }
    }
  }
}

TEST(Items, HaveNoMoreLiveTestsThanThereAreBitsForThem) {
  std::size_t count = 0;
  for (const ItemInfo& item : itemTable()) {
    for (const ItemCondition& c : item.conditions) count += c.live ? 1 : 0;
  }
  EXPECT_GT(count, 20u);
  EXPECT_LE(count, 64 * ItemTests{}.size());
}

TEST(Items, TwoLeaksAddUp) {
  Unit unit = makeUnit(preparedStart());
  const auto leaks = [&] { return plant::calcTrainLeakC(unit.plant().parameters().vacuum); };
  const double sound = leaks();
  doIt(unit, "scenario: condition end1.hoses split");
  doIt(unit, "scenario: condition between.hoses chafed");
  EXPECT_NEAR(leaks(), sound + 2.5 + 3.0, 1e-9);
  doIt(unit, "scenario: condition end1.hoses good");
  EXPECT_NEAR(leaks(), sound + 3.0, 1e-9);
}

TEST(UnitParameters, ShareNoNameWithThePlant) {
  for (const UnitParameterInfo& info : unitParameterTable()) {
    EXPECT_TRUE(plant::findParameters(info.name).empty()) << info.name;
    EXPECT_GE(info.standard, info.lowest) << info.name;
    EXPECT_LE(info.standard, info.highest) << info.name;
  }
  EXPECT_EQ(findUnitParameters("start_relay.welded").size(), 2u);
}

TEST(Places, WalkingTakesItsTimeAndFindsTheShortWay) {
  const Walk walk = calcWalk(Place::kSide1, Place::kTrailer1);
  EXPECT_DOUBLE_EQ(walk.seconds(), 20.0 / 1.2);
  EXPECT_EQ(calcWalk(Place::kSide1, Place::kCab1).climbs, 1);
  EXPECT_EQ(calcWalk(Place::kEngine1, Place::kEngine2).crossings, 1);
  EXPECT_TRUE(calcWalk(Place::kEngine1, Place::kEngine2, true).under);
  EXPECT_FALSE(calcWalk(Place::kSide1, Place::kSide2).between);
  EXPECT_TRUE(calcWalk(Place::kSide1, Place::kBetween).between);
}

TEST(Places, EveryPlaceIsReachedFromEveryOther) {
  for (const PlaceInfo& a : placeTable()) {
    for (const PlaceInfo& b : placeTable()) {
      const Walk there = calcWalk(a.id, b.id), back = calcWalk(b.id, a.id);
      EXPECT_NEAR(there.seconds(), back.seconds(), 1e-9) << a.name << " " << b.name;
      EXPECT_EQ(there.metres > 0.0, a.id != b.id) << a.name << " " << b.name;
    }
  }
}

TEST(Actions, GoThroughTheirTextForm) {
  for (const char* text : {"set cab1.throttle 2", "hold cab1.device", "guard: ring bell 3-3",
                           "judge end1.hoses defect S", "book end1.hoses hangs free at the left"}) {
    const auto parsed = parseAction(text);
    ASSERT_TRUE(std::holds_alternative<Action>(parsed)) << text;
    EXPECT_EQ(toText(std::get<Action>(parsed)), text);
  }
  EXPECT_TRUE(std::holds_alternative<std::string>(parseAction("")));
  EXPECT_TRUE(std::holds_alternative<std::string>(parseAction("gaurd: ring bell 2")));
  EXPECT_TRUE(std::holds_alternative<std::string>(parseAction("set a\x01 b")));
  // It would be read as of an actor "a" when written without the trainee's name.
  EXPECT_TRUE(std::holds_alternative<std::string>(parseAction("trainee:a:b c")));
}

TEST(Actions, NameTheNearestKnownWord) {
  const Unit unit = makeUnit(preparedStart());
  const auto fault = [&](const std::string& text) {
    return unit.findActionFault(std::get<Action>(parseAction(text))).value_or("none");
  };
  using testing::HasSubstr;
  EXPECT_THAT(fault("sett cab1.throttle 2"), HasSubstr("'set'"));
  EXPECT_THAT(fault("set cab1.throtle 2"), HasSubstr("'cab1.throttle'"));
  EXPECT_THAT(fault("set cab1.reverser sideways"), HasSubstr("off, forward, reverse"));
  EXPECT_THAT(fault("look end1.hose"), HasSubstr("'end1.hoses'"));
  EXPECT_THAT(fault("judge end1.hoses bad"), HasSubstr("good, defect, unsure"));
  EXPECT_THAT(fault("say ask_protecton"), HasSubstr("'ask_protection'"));
  EXPECT_THAT(fault("condition end1.hoses hanging"), HasSubstr("instructor"));
  EXPECT_THAT(fault("scenario: fault start_relay1.weldet 1"), HasSubstr("start_relay1.welded"));
  EXPECT_THAT(fault("scenario: fault start_relay1.welded 7"), HasSubstr("0 to 1"));
  EXPECT_EQ(fault("set cab1.throttle 2"), "none");
  EXPECT_EQ(fault("scenario: fault gearbox2.band3.friction 0.05"), "none");
}

TEST(Start, ReportsEveryFaultAtOnce) {
  UnitStart s;
  s.controls = {{"cab1.throtle", "1"}, {"cab1.gear", "9"}};
  s.conditions = {{"end1.hoses", "hangin"}, {"cab1.air", "offset"}};
  s.objects = {{"brake_handel", "cab1"}};
  s.place = "cab9";
  EXPECT_EQ(findStartFaults(s).size(), 6u);
  EXPECT_THROW(makeUnit(s), std::invalid_argument);
  EXPECT_TRUE(findStartFaults(preparedStart()).empty());
}

}  // namespace
}  // namespace cabwright::unit
