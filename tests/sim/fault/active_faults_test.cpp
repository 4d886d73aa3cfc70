// SPDX-License-Identifier: GPL-3.0-or-later
#include "fault/active_faults.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "fault_rig.h"

namespace cabwright::fault {
namespace {

using cabwright::testing::armed;
using cabwright::testing::FaultRig;

double parameter(const FaultRig& rig, std::string_view name) {
  return plant::findParameters(name).front()->of(rig.unit.plant().parameters());
}

unit::Condition condition(std::string_view text) {
  return std::get<unit::Condition>(unit::Condition::parse(text));
}

TEST(ActiveFaults, ComeAtTheirTickAndGoAtTheirs) {
  FaultRig rig;
  ArmedFault leak = armed("vacuum.train_pipe_leak", 2.0, 5);
  leak.until = Moment{std::nullopt, 8};
  rig.faults.arm(leak);
  const double sound = parameter(rig, "vacuum.side1_leak_c");
  std::vector<std::pair<std::int64_t, FaultStage>> seen;
  for (int k = 0; k < 12; ++k) {
    for (const FaultChange& c : rig.faults.advance(rig.unit)) seen.emplace_back(c.tick, c.stage);
    const bool there = k >= 5 && k < 8;
    EXPECT_EQ(parameter(rig, "vacuum.side1_leak_c") > sound, there) << k;
    rig.unit.advance();
  }
  EXPECT_THAT(seen, ::testing::ElementsAre(std::pair(5, FaultStage::kThere),
                                           std::pair(8, FaultStage::kCleared)));
  EXPECT_EQ(parameter(rig, "vacuum.side1_leak_c"), sound);
}

TEST(ActiveFaults, ComeSoLongAfterAConditionFirstHolds) {
  FaultRig rig;
  ArmedFault f = armed("compressor1.belt_gone");
  f.from = {condition("cab1.horn == low"), 30};
  rig.faults.arm(f);
  rig.run(0.2);
  EXPECT_EQ(rig.faults.stage(0), FaultStage::kArmed);
  rig.act("hold cab1.horn low");
  rig.run(0.1);
  rig.act("release cab1.horn");  // that it lapses does not take the moment back
  rig.run(0.15);
  EXPECT_EQ(rig.faults.stage(0), FaultStage::kArmed);
  rig.run(0.10);
  EXPECT_EQ(rig.faults.stage(0), FaultStage::kThere);
  EXPECT_EQ(parameter(rig, "compressor1.belt"), 0.0);
}

TEST(ActiveFaults, GrowAlongTheirRamp) {
  FaultRig rig;
  ArmedFault f = armed("engine1.coolant_leak", 60.0, 10);
  f.ramp_ticks = 100;
  rig.faults.arm(f);
  rig.run(0.10);
  EXPECT_EQ(rig.faults.stage(0), FaultStage::kArmed);
  rig.run(0.51);
  EXPECT_EQ(rig.faults.stage(0), FaultStage::kGrowing);
  EXPECT_NEAR(parameter(rig, "engine1.coolant_leak_per_s"), 0.005, 1e-12);
  rig.run(1.0);
  EXPECT_EQ(rig.faults.stage(0), FaultStage::kThere);
  EXPECT_EQ(parameter(rig, "engine1.coolant_leak_per_s"), 0.01);
}

TEST(ActiveFaults, FactorsThenAdditionsThenWhatIsStuck) {
  FaultRig rig;
  rig.faults.arm(armed("engine1.injector_out", 1.0));    // adds -1/6
  rig.faults.arm(armed("engine1.water_in_fuel", 30.0));  // times 0.7
  rig.faults.advance(rig.unit);
  EXPECT_NEAR(parameter(rig, "engine1.cylinders_firing"), 0.7 - 1.0 / 6.0, 1e-12);
  rig.faults.arm(armed("compressor2.belt_slips", 50.0));
  rig.faults.arm(armed("compressor2.belt_gone"));
  rig.faults.advance(rig.unit);
  EXPECT_EQ(parameter(rig, "compressor2.belt"), 0.0);
  rig.faults.clear("compressor2.belt_gone");
  rig.faults.advance(rig.unit);
  EXPECT_EQ(parameter(rig, "compressor2.belt"), 0.5);
}

TEST(ActiveFaults, StayInsideTheBoundsOfTheNumber) {
  FaultRig rig;
  ArmedFault one = armed("brake_cylinder1.block_missing", 7.0);
  ArmedFault two = one, three = one, four = one, five = one;
  two.id = "b", three.id = "c", four.id = "d", five.id = "e";
  for (const auto& f : {one, two, three, four, five}) rig.faults.arm(f);
  rig.faults.advance(rig.unit);
  EXPECT_EQ(parameter(rig, "brake_cylinder1.blocks_missing"), 32.0);
}

// Any faults in any order give the same machine, to the bit, and none when all are gone.
RC_GTEST_PROP(ActiveFaults, TheOrderInWhichTheyAreArmedIsOfNoMatter, ()) {
  std::vector<const FaultSpec*> numbered;
  for (const FaultSpec& s : faultCatalogue()) {
    if (!s.numbers.empty()) numbered.push_back(&s);
  }
  // Few families on purpose: they have to meet on the same numbers.
  const std::vector<std::string_view> meeting{
      "vacuum.train_pipe_leak", "vacuum.hose_chafed",        "vacuum.hose_parted",
      "engine1.injector_out",   "engine1.water_in_fuel",     "starter1.weak",
      "starter1.dead",          "safety_device1.choke_wide", "safety_device1.choke_blocked",
      "battery.weak",           "battery.terminals_corroded"};
  const auto count = *rc::gen::inRange<std::size_t>(2, 9);
  std::vector<ArmedFault> chosen;
  for (std::size_t k = 0; k < count; ++k) {
    const bool near = *rc::gen::arbitrary<bool>();
    const FaultSpec& spec =
        near ? *findFault(meeting[*rc::gen::inRange<std::size_t>(0, meeting.size())])
             : *numbered[*rc::gen::inRange<std::size_t>(0, numbered.size())];
    ArmedFault f = armed(spec.name);
    f.id = std::to_string(k);
    if (spec.size.exists() && !spec.size.whole) {
      const double share = *rc::gen::inRange(0, 1001) / 1000.0;
      f.size = spec.size.lowest + share * (spec.size.highest - spec.size.lowest);
    }
    chosen.push_back(f);
  }
  static const FaultRig sound;
  FaultRig one = sound, two = sound;
  for (const ArmedFault& f : chosen) one.faults.arm(f);
  std::vector<ArmedFault> shuffled = chosen;
  const auto turn = *rc::gen::inRange<std::size_t>(0, chosen.size());
  std::rotate(shuffled.begin(), shuffled.begin() + static_cast<std::ptrdiff_t>(turn),
              shuffled.end());
  if (*rc::gen::arbitrary<bool>()) std::reverse(shuffled.begin(), shuffled.end());
  for (const ArmedFault& f : shuffled) two.faults.arm(f);
  one.faults.advance(one.unit);
  two.faults.advance(two.unit);
  RC_ASSERT(one.numbers() == two.numbers());
  for (const ArmedFault& f : shuffled) {
    one.faults.clear(f.id);
    one.faults.advance(one.unit);  // one after the other
  }
  RC_ASSERT(one.numbers() == sound.numbers());
}

TEST(ActiveFaults, KeepWhatOthersDoToTheSameNumber) {
  FaultRig rig;
  const double sound = parameter(rig, "vacuum.side1_leak_c");
  rig.faults.arm(armed("vacuum.train_pipe_leak", 2.0));
  rig.run(0.02);
  const double leaking = parameter(rig, "vacuum.side1_leak_c");
  rig.act("instructor: condition side1.pipes chafed");  // adds 2
  EXPECT_NEAR(parameter(rig, "vacuum.side1_leak_c"), leaking + 2.0, 1e-9);
  rig.faults.clear("vacuum.train_pipe_leak");
  rig.run(0.02);
  EXPECT_NEAR(parameter(rig, "vacuum.side1_leak_c"), sound + 2.0, 1e-9);
}

TEST(ActiveFaults, MoveControlsOnceAndLeaveThemToPeopleThen) {
  FaultRig rig;
  rig.faults.arm(armed("air.main_drain_open"));
  rig.run(0.02);
  EXPECT_EQ(rig.value("drain_main"), 1.0);
  rig.act("instructor: set drain_main shut");
  rig.run(1.0);
  EXPECT_EQ(rig.value("drain_main"), 0.0);
}

TEST(ActiveFaults, RefuseWhatCannotBe) {
  ActiveFaults faults;
  EXPECT_THROW(faults.arm(armed("no.such_thing")), std::invalid_argument);
  EXPECT_THROW(faults.arm(armed("vacuum.train_pipe_leak", 99.0)), std::invalid_argument);
  faults.arm(armed("vacuum.train_pipe_leak"));
  EXPECT_THROW(faults.arm(armed("vacuum.train_pipe_leak")), std::invalid_argument);
  EXPECT_FALSE(faults.clear("another"));
  EXPECT_TRUE(faults.clear("vacuum.train_pipe_leak"));
}

TEST(ActiveFaults, ClearedBeforeTheyCameNeverCome) {
  FaultRig rig;
  rig.faults.arm(armed("compressor1.belt_gone", 0, 10));
  rig.faults.clear("compressor1.belt_gone");
  rig.run(0.5);
  EXPECT_EQ(rig.faults.stage(0), FaultStage::kCleared);
  EXPECT_EQ(parameter(rig, "compressor1.belt"), 1.0);
}

TEST(ActiveFaults, ACopyGoesOnAlike) {
  FaultRig rig;
  ArmedFault f = armed("vacuum.train_pipe_leak", 6.0, 20);
  f.ramp_ticks = 200;
  rig.faults.arm(f);
  rig.run(1.0);
  FaultRig copy = rig;
  rig.run(2.0);
  copy.run(2.0);
  quantity::Fnv1a64 a, b;
  rig.faults.addTo(a);
  copy.faults.addTo(b);
  EXPECT_EQ(a.value(), b.value());
  EXPECT_EQ(rig.unit.hash(), copy.unit.hash());
}

std::uint64_t hashOf(const ActiveFaults& faults) {
  quantity::Fnv1a64 hash;
  faults.addTo(hash);
  return hash.value();
}

TEST(ActiveFaults, TheHashKnowsWhatWasArmedOnTheWay) {
  // Of those there from the start the scenario says what they are, and recordings count on their
  // hash; what came later must tell itself.
  const ActiveFaults small({armed("vacuum.train_pipe_leak", 1.0, 50)});
  const ActiveFaults large({armed("vacuum.train_pipe_leak", 3.0, 50)});
  EXPECT_EQ(hashOf(small), hashOf(large));
  ActiveFaults one, other, elsewhere;
  one.arm(armed("vacuum.train_pipe_leak", 1.0, 50));
  other.arm(armed("vacuum.train_pipe_leak", 3.0, 50));
  elsewhere.arm(armed("air.main_leak", 1.0, 50));
  EXPECT_NE(hashOf(one), hashOf(other));
  EXPECT_NE(hashOf(one), hashOf(elsewhere));
  EXPECT_NE(hashOf(one), hashOf(small));
}

TEST(ActiveFaults, AreFoundByTheirIdWhateverTheirStage) {
  FaultRig rig;
  rig.faults.arm(armed("compressor1.belt_gone"));
  rig.faults.arm(armed("air.main_leak", 2.0));
  EXPECT_EQ(rig.faults.find("air.main_leak"), 1U);
  EXPECT_EQ(rig.faults.find("air.main_leek"), std::nullopt);
  rig.faults.clear("air.main_leak");
  rig.run(0.02);
  EXPECT_EQ(rig.faults.stage(1), FaultStage::kCleared);
  EXPECT_EQ(rig.faults.find("air.main_leak"), 1U);
}

}  // namespace
}  // namespace cabwright::fault
