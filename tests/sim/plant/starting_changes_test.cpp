// SPDX-License-Identifier: GPL-3.0-or-later
// Starting from cold over weather, hours and throttle: firing decides, not a timer.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>

#include "plant_rig.h"

namespace cabwright::testing {
namespace {

bool runsByItself(const PlantRig& rig) {
  const plant::LineReadings& e = rig.now().line[0];
  return e.indicated_nm > 1.1 * e.friction_nm && rig.rpm(0) > 300.0;
}

constexpr double kLimitS = 90.0, kNever = 1e9;

double calcStartTime(const plant::StartConditions& s, double throttle = 1.0) {
  PlantRig rig(s);
  rig.in.line[0].hand_throttle = throttle;
  rig.in.line[0].starter_contactor = true;
  const double took = rig.runUntil(runsByItself, kLimitS);
  return took < 0.0 ? kNever : took;
}

TEST(ColdStart, TakesLongerTheColderItIs) {
  for (double hours : {4.0, 12.0, 24.0}) {
    double before = kNever;
    std::string row;
    for (double c : {-10.0, -5.0, 0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0}) {
      const double took = calcStartTime(coldNight(c, hours));
      row += took == kNever ? " never" : fmt::format(" {:.2f}", took);
      EXPECT_LE(took, before + 0.011) << c << " C after " << hours << " h";
      before = took;
    }
    std::printf("START | %g h, -10..30 C:%s s\n", hours, row.c_str());
    EXPECT_LT(before, kLimitS) << "at 30 C it must start";
  }
}

TEST(ColdStart, TakesLongerTheLongerItStood) {
  for (double c : {-5.0, 5.0, 20.0}) {
    double before = 0.0;
    std::string row;
    for (double hours : {0.0, 2.0, 4.0, 8.0, 12.0, 18.0, 24.0}) {
      const double took = calcStartTime(coldNight(c, hours));
      row += took == kNever ? " never" : fmt::format(" {:.2f}", took);
      // The compressors start against the air that is left: once the block is as cold as it gets,
      // lost air makes the last hours lighter by a little.
      EXPECT_GE(took, 0.98 * before - 0.011) << c << " C after " << hours << " h";
      before = took;
    }
    std::printf("START | %g C, 0..24 h:%s s\n", c, row.c_str());
  }
}

TEST(ColdStart, FailsBelowSomeTemperature) {
  EXPECT_LT(calcStartTime(coldNight(2.0)), kLimitS);
  EXPECT_EQ(calcStartTime(coldNight(-28.0, 24.0)), kNever);
}

TEST(ColdStart, NeedsMoreThanHalfTheThrottle) {
  plant::StartConditions s = coldNight(2.0);
  EXPECT_EQ(calcStartTime(s, 0.5), kNever) << "half resets the latch and is not enough";
  EXPECT_LT(calcStartTime(s, 1.0), kLimitS);
  EXPECT_EQ(calcStartTime(s, 0.3), kNever) << "does not even reset the latch";
  s.line[0].latch_tripped = 0.0;
  EXPECT_EQ(calcStartTime(s, 0.0), kNever) << "the idle rack is too little";
}

TEST(ColdStart, TheSecondTryIsQuicker) {
  const double first = calcStartTime(coldNight(2.0));
  PlantRig rig(coldNight(2.0));
  rig.in.line[0].hand_throttle = 1.0;
  rig.in.line[0].starter_contactor = true;
  rig.run(0.6 * first);
  rig.in.line[0].starter_contactor = false;
  rig.run(20.0);
  ASSERT_LT(rig.rpm(0), 1.0) << "it stopped again";
  rig.in.line[0].starter_contactor = true;
  const double second = rig.runUntil(runsByItself, kLimitS);
  std::printf("START | first try %.2f s, second %.2f s\n", first, second);
  ASSERT_GT(second, 0.0);
  EXPECT_LT(second, 0.9 * first) << "the air in the fuel is gone";
}

TEST(ColdStart, TheBatteryFallsByTheIntegralOfItsCurrent) {
  const plant::Parameters p;
  PlantRig rig(coldNight(2.0));
  rig.in.load_conductance_s = 0.8;
  const double from = rig.now().battery_charge;
  rig.in.line[0].hand_throttle = 1.0;
  rig.in.line[0].starter_contactor = true;
  double ampere_s = 0.0, before = 0.0;
  int tick = 0;
  rig.tick();
  const double first = rig.now().battery_charge;
  before = rig.now().battery_a;
  for (; tick < 500; ++tick) {
    rig.tick();
    ampere_s += 0.005 * (before + rig.now().battery_a);
    before = rig.now().battery_a;
  }
  const double fell = (first - rig.now().battery_charge) * p.battery.capacity_ah * 3600.0;
  const double own = p.battery.self_discharge_a * 5.0;
  std::printf("START | battery gave %.1f A s, current says %.1f A s\n", fell, ampere_s + own);
  EXPECT_GT(ampere_s, 500.0);
  EXPECT_NEAR(fell, ampere_s + own, 0.005 * fell);
  EXPECT_LT(rig.now().battery_charge, from);
}

}  // namespace
}  // namespace cabwright::testing
