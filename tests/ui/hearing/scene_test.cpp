// SPDX-License-Identifier: GPL-3.0-or-later
// What of a frame is heard where.
#include <gtest/gtest.h>

#include <limits>

#include "hearing/scene.h"

namespace cabwright::hearing::testing {
namespace {

using unit::Frame;
using unit::Place;
using unit::Signal;

// Both engines run; what reaches the trainee's ears is filled in by each test.
Frame running() {
  Frame f;
  for (Signal s : {Signal::kEngine1Even, Signal::kEngine2Even}) f[s] = 0.9F;
  for (Signal s : {Signal::kTrueRack1, Signal::kTrueRack2}) f[s] = 0.4F;
  for (Signal s : {Signal::kTrueCompressor1, Signal::kTrueCompressor2}) f[s] = 1.0F;
  for (Signal s : {Signal::kEngine1Grind, Signal::kEngine2Grind}) f[s] = 1.0F;
  f[Signal::kSpeed] = -20.0F;
  for (Signal s :
       {Signal::kTrueBlocks1, Signal::kTrueBlocks2, Signal::kTrueBlocks3, Signal::kTrueBlocks4}) {
    f[s] = 30.0F;
  }
  return f;
}

TEST(Scene, HasTheEngineNotesAndBlowsThatAreHeard) {
  Frame f = running();
  f[Signal::kHeardEngine1] = 700.0F;
  f[Signal::kHeardEngine2] = 710.0F;
  f[Signal::kHeardThump] = f[Signal::kHeardClick] = 1.0F;
  f[Signal::kHeardHiss] = 0.25F;
  const HeardScene s = calcScene(f, Place::kCab1);
  EXPECT_EQ(s.engine[0].note_rpm, 700.0);
  EXPECT_EQ(s.engine[1].note_rpm, 710.0);
  EXPECT_FLOAT_EQ(static_cast<float>(s.engine[0].evenness), 0.9F);
  EXPECT_FLOAT_EQ(static_cast<float>(s.engine[0].load), 0.4F);
  EXPECT_TRUE(s.engine[0].starter);
  EXPECT_TRUE(s.thump && s.click);
  EXPECT_EQ(s.hiss, 0.25);
  EXPECT_EQ(s.speed_mph, 20.0);
  EXPECT_DOUBLE_EQ(s.block_press, 0.5);
  EXPECT_GT(s.walls, 0.5);
}

TEST(Scene, KeepsWhatIsTooFarAway) {
  Frame f = running();
  f[Signal::kHeardEngine1] = 700.0F;
  const HeardScene side = calcScene(f, Place::kSide1);
  EXPECT_EQ(side.engine[0].compressor, Compressor::kLoaded);
  EXPECT_EQ(side.engine[1], (HeardEngine{.bearing = 0.35}));
  EXPECT_EQ(side.walls, 0.0);
  EXPECT_GT(calcScene(f, Place::kEngine1).engine_nearness, side.engine_nearness);
  EXPECT_LT(calcScene(f, Place::kCab1).engine_nearness, side.engine_nearness);
  EXPECT_EQ(calcScene(f, Place::kCab1).engine[0].compressor, Compressor::kNotHeard);
  const HeardScene away = calcScene(running(), Place::kBooking);
  EXPECT_EQ(away.engine[0].note_rpm, 0.0);
  EXPECT_FALSE(away.engine[0].starter);
  EXPECT_EQ(away.speed_mph, 0.0);
}

TEST(Scene, HasNoLoadWhereAirIsInTheFuel) {
  Frame f = running();
  f[Signal::kTrueTrapped1] = 1.0F;
  EXPECT_EQ(calcScene(f, Place::kEngine1).engine[0].load, 0.0);
}

TEST(Scene, HasTheBellOfThisCabAlone) {
  Frame f;
  f[Signal::kCab2BellRings] = 1.0F;
  EXPECT_FALSE(calcScene(f, Place::kCab1).bell);
  EXPECT_TRUE(calcScene(f, Place::kCab2).bell);
  EXPECT_FALSE(calcScene(f, Place::kSaloon).bell);
}

TEST(Scene, IsTheHornAloneOnTheWay) {
  Frame f = running();
  f[Signal::kWalking] = 1.0F;
  f[Signal::kHeardHorn] = 2.0F;
  f[Signal::kHeardHornLevel] = 0.7F;
  HeardScene horn = calcScene(f, Place::kSide1);
  EXPECT_EQ(horn.horn, 2);
  EXPECT_FLOAT_EQ(static_cast<float>(horn.horn_level), 0.7F);
  horn.horn = 0;
  horn.horn_level = 0.0;
  EXPECT_EQ(horn, HeardScene{});
}

TEST(Scene, TellsAirDrawnInFromAirBlownOut) {
  Frame f;
  f[Signal::kHeardHiss] = 0.5F;
  f[Signal::kTrueDevice1] = 40.0F;  // the device empties: its lever is up
  EXPECT_EQ(calcScene(f, Place::kCab1).hiss_inwards, 0.0);
  f[Signal::kCab1Brake] = 1.0F;
  EXPECT_EQ(calcScene(f, Place::kCab1).hiss_inwards, 1.0);
  EXPECT_EQ(calcScene(f, Place::kCab2).hiss_inwards, 1.0);  // a valve that passes
  EXPECT_LT(calcScene(f, Place::kSide1).hiss_inwards, 0.5);
  f[Signal::kCord1] = 1.0F;
  EXPECT_EQ(calcScene(f, Place::kSide1).hiss_inwards, 1.0);
}

TEST(Scene, RattlesAsFastAsTheTeethPass) {
  Frame f;
  f[Signal::kHeardRattle] = f[Signal::kEngine1Rattle] = 1.0F;
  f[Signal::kTrueOutput1] = 137.5F;  // 50 rpm at the crown wheel, 12 teeth, axle standing
  EXPECT_NEAR(calcScene(f, Place::kCab1).rattle_hz, 10.0, 0.01);
}

TEST(Scene, IsBroughtInsideItsRanges) {
  HeardScene s;
  s.engine[0].note_rpm = std::numeric_limits<double>::quiet_NaN();
  s.engine[1].load = 7.0;
  s.engine[1].bearing = -std::numeric_limits<double>::infinity();
  s.hiss = -1.0;
  s.horn = 9;
  const HeardScene b = calcBounded(s);
  EXPECT_EQ(b.engine[0].note_rpm, 0.0);
  EXPECT_EQ(b.engine[1].load, 1.0);
  EXPECT_EQ(b.engine[1].bearing, 0.0);
  EXPECT_EQ(b.hiss, 0.0);
  EXPECT_EQ(b.horn, 2);
  EXPECT_EQ(calcBounded(HeardScene{}), HeardScene{});
}

}  // namespace
}  // namespace cabwright::hearing::testing
