// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/instruments.h"

#include <gtest/gtest.h>

namespace cabwright::unit {
namespace {

const InstrumentInfo& gauge() { return instrumentTable()[indexOf(Instrument::kCab1TrainPipe)]; }
const InstrumentInfo& lamp() { return instrumentTable()[indexOf(Instrument::kCab1LampAir)]; }

InstrumentState settle(InstrumentState s, double truth, double seconds) {
  for (int k = 0; k < static_cast<int>(seconds * 100.0); ++k) {
    s = calcInstrument(gauge(), s, truth, 0.01);
  }
  return s;
}

TEST(Gauge, FollowsWithALag) {
  const InstrumentState at_once = settle({}, 21.0, 0.01);
  EXPECT_LT(at_once.shown, 2.0);
  EXPECT_NEAR(settle({}, 21.0, 5.0).shown, 21.0, 0.01);
}

TEST(Gauge, StuckStaysWhereItWas) {
  InstrumentState s = settle({}, 15.0, 5.0);
  s.condition = InstrumentCondition::kStuck;
  EXPECT_NEAR(settle(s, 0.0, 10.0).shown, 15.0, 0.01);
}

TEST(Gauge, OffsetShowsAtRestAndEverywhereElse) {
  InstrumentState s;
  s.condition = InstrumentCondition::kOffset;
  s.size = 2.0;
  EXPECT_NEAR(settle(s, 0.0, 5.0).shown, 2.0, 0.01);
  EXPECT_NEAR(settle(s, 15.0, 5.0).shown, 17.0, 0.01);
}

TEST(Gauge, SlowIsBehindAndArrives) {
  InstrumentState s;
  s.condition = InstrumentCondition::kSlow;
  s.size = 20.0;
  EXPECT_LT(settle(s, 21.0, 5.0).shown, 6.0);
  EXPECT_NEAR(settle(s, 21.0, 200.0).shown, 21.0, 0.1);
}

TEST(Gauge, DeadFallsToItsRest) {
  InstrumentState s = settle({}, 21.0, 5.0);
  s.condition = InstrumentCondition::kDead;
  EXPECT_NEAR(settle(s, 21.0, 5.0).shown, 0.0, 0.01);
}

TEST(Gauge, StopsAtTheEndsOfItsScale) {
  EXPECT_EQ(settle({}, 99.0, 20.0).shown, 30.0);
  EXPECT_EQ(settle({}, -5.0, 20.0).shown, 0.0);
}

TEST(Lamp, BlownStaysDarkAndLitFalselyBurns) {
  InstrumentState s;
  EXPECT_EQ(calcInstrument(lamp(), s, 1.0, 0.01).shown, 1.0);
  s.condition = InstrumentCondition::kBlown;
  EXPECT_EQ(calcInstrument(lamp(), s, 1.0, 0.01).shown, 0.0);
  s.condition = InstrumentCondition::kLit;
  EXPECT_EQ(calcInstrument(lamp(), s, 0.0, 0.01).shown, 1.0);
}

TEST(InstrumentWords, FitTheKindOfInstrument) {
  EXPECT_TRUE(findInstrumentCondition(gauge(), "stuck"));
  EXPECT_FALSE(findInstrumentCondition(gauge(), "blown"));
  EXPECT_TRUE(findInstrumentCondition(lamp(), "blown"));
  EXPECT_FALSE(findInstrumentCondition(lamp(), "offset"));
}

}  // namespace
}  // namespace cabwright::unit
