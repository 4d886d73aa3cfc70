// SPDX-License-Identifier: GPL-3.0-or-later
// What is heard of the horn follows the air in it; a pinion left in the ring is heard too.
#include <gtest/gtest.h>

#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

TEST(HeardHorn, SwellsAndOutlastsTheLever) {
  Unit unit = makeUnit(preparedStart());
  EXPECT_EQ(value(unit, "heard.horn"), 0);
  doIt(unit, "hold cab1.horn high");
  run(unit, 0.02);
  const double first = value(unit, "heard.horn_level");
  run(unit, 0.5);
  EXPECT_LT(first, value(unit, "heard.horn_level"));
  EXPECT_EQ(value(unit, "heard.horn_level"), 1);
  EXPECT_EQ(value(unit, "heard.horn"), 2);
  doIt(unit, "release cab1.horn");
  run(unit, 0.3);
  EXPECT_EQ(value(unit, "cab1.horn"), 0);
  EXPECT_EQ(value(unit, "heard.horn"), 2) << "the same note, dying away";
  EXPECT_GT(value(unit, "heard.horn_level"), 0.05);
  EXPECT_LT(value(unit, "heard.horn_level"), 0.9);
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "heard.horn"), 0);
  EXPECT_EQ(value(unit, "heard.horn_level"), 0);
}

TEST(HeardHorn, IsWeakWithLittleAir) {
  UnitStart s = preparedStart();
  s.plant.main_psi = s.plant.control_psi = 30.0;
  Unit unit = makeUnit(s);
  doIt(unit, "hold cab1.horn low");
  run(unit, 1.0);
  EXPECT_EQ(value(unit, "heard.horn"), 1);
  EXPECT_GT(value(unit, "heard.horn_level"), 0.2);
  EXPECT_LT(value(unit, "heard.horn_level"), 0.6);
  s.plant.main_psi = s.plant.control_psi = 3.0;
  Unit empty = makeUnit(s);
  doIt(empty, "hold cab1.horn low");
  run(empty, 1.0);
  EXPECT_EQ(value(empty, "heard.horn"), 0);
}

TEST(StuckPinion, HowlsOnWithTheEngineRunning) {
  for (const double sticks : {0.0, 1.0}) {
    UnitStart s = preparedStart();
    s.place = "engine1";
    plant::Parameters p;
    p.starter[0].pinion_sticks = sticks;
    Unit unit(p, {}, s);
    doIt(unit, "set engine1.switch ground");
    doIt(unit, "set engine1.hand_throttle 0.6");
    doIt(unit, "hold engine1.start");
    EXPECT_TRUE(runUntil(unit, 10.0, [](const Frame& f) { return f[Signal::kTrueRpm1] > 350; }));
    doIt(unit, "release engine1.start");
    run(unit, 5.0);
    EXPECT_GT(value(unit, "true.engine1.rpm"), 350);
    EXPECT_EQ(value(unit, "engine1.grind"), sticks);
  }
}

}  // namespace
}  // namespace cabwright::unit
