// SPDX-License-Identifier: GPL-3.0-or-later
// Handbrake and vacuum brake on the same blocks: the forces add up, one friction law for the sum.
#include <gtest/gtest.h>

#include <cmath>

#include "plant/running.h"
#include "plant_rig.h"

namespace cabwright::testing {
namespace {

// What the blocks of each wheelset group can hold now, N m.
std::array<double, 3> calcHold(const PlantRig& rig) {
  plant::State dx;
  plant::Forces f;
  plant::calcForces(rig.world.m, rig.world.x, dx, f);
  return {f.bounds.hi[plant::kBlockRow], f.bounds.hi[plant::kBlockRow + 1],
          f.bounds.hi[plant::kBlockRow + 2]};
}

PlantRig makeStanding(bool vacuum, double handbrake_1, double handbrake_2) {
  PlantRig rig(warmReady());
  rig.in.cab[0].drivers_valve = vacuum ? plant::kValveFull : plant::kValveRelease;
  rig.in.cab[0].handbrake = handbrake_1;
  rig.in.cab[1].handbrake = handbrake_2;
  rig.run(8.0);
  return rig;
}

TEST(Blocks, RubByTheSumOfBothForces) {
  const plant::Parameters p;
  const PlantRig rig = makeStanding(true, 1.0, 1.0);
  // Driven wheelset 1: half of cylinder 1's eight blocks; the handbrake presses half of those too.
  const double vacuum_n = rig.now().block_force_n[0] / 8.0;
  const double hand_n = p.handbrake[0].block_force_n / p.handbrake[0].blocks;
  const double both = vacuum_n + hand_n;
  const double wanted =
      p.train.wheel_radius_m * (2.0 * both * plant::calcBlockFriction(both, 0.0) +
                                2.0 * vacuum_n * plant::calcBlockFriction(vacuum_n, 0.0));
  const double apart =
      p.train.wheel_radius_m * (2.0 * hand_n * plant::calcBlockFriction(hand_n, 0.0) +
                                4.0 * vacuum_n * plant::calcBlockFriction(vacuum_n, 0.0));
  const std::array<double, 3> hold = calcHold(rig);
  std::printf("BLOCKS | driven wheelset, both brakes: %.0f N m; rubbed apart it would be %.0f\n",
              hold[0], apart);
  EXPECT_NEAR(hold[0], wanted, 1e-9 * wanted);
  EXPECT_NEAR(hold[1], wanted, 1e-3 * wanted);
  EXPECT_LT(hold[0], 0.95 * apart);
}

TEST(Blocks, OfOneBrakeAloneAreAsTheyWere) {
  const plant::Parameters p;
  const PlantRig vacuum = makeStanding(true, 0.0, 0.0);
  const double each = vacuum.now().block_force_n[0] / 8.0;
  const double of_vacuum =
      p.train.wheel_radius_m * 4.0 * each * plant::calcBlockFriction(each, 0.0);
  EXPECT_NEAR(calcHold(vacuum)[0], of_vacuum, 1e-9 * of_vacuum);
  // 35 kN on eight blocks: two each on the driven wheelsets, four on the trailing ones of car 1,
  // eight on car 2.
  const double hand_n = p.handbrake[0].block_force_n / 8.0;
  const double of_hand = p.train.wheel_radius_m * hand_n * plant::calcBlockFriction(hand_n, 0.0);
  const std::array<double, 3> first = calcHold(makeStanding(false, 1.0, 0.0));
  EXPECT_NEAR(first[0], 2.0 * of_hand, 1e-9 * of_hand);
  EXPECT_NEAR(first[2], 4.0 * of_hand, 1e-9 * of_hand);
  const std::array<double, 3> second = calcHold(makeStanding(false, 0.0, 1.0));
  EXPECT_EQ(second[0], 0.0);
  EXPECT_NEAR(second[2], 8.0 * of_hand, 1e-9 * of_hand);
}

TEST(Blocks, HoldMoreWithBothBrakesThanWithEither) {
  const double both = calcHold(makeStanding(true, 1.0, 1.0))[2];
  EXPECT_GT(both, calcHold(makeStanding(true, 0.0, 0.0))[2]);
  EXPECT_GT(both, calcHold(makeStanding(false, 1.0, 1.0))[2]);
  // Half on is not half the hold: a block pressed less rubs better.
  const double half = calcHold(makeStanding(false, 0.5, 0.0))[2];
  const double whole = calcHold(makeStanding(false, 1.0, 0.0))[2];
  EXPECT_GT(half, 0.5 * whole);
  EXPECT_LT(half, whole);
}

TEST(Blocks, MissingOnesRubNeitherWay) {
  plant::Parameters p;
  for (plant::CylinderParameters& y : p.brake_cylinder) y.blocks_missing = 4.0;
  PlantRig rig(warmReady(), {}, p);
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.run(8.0);
  EXPECT_NEAR(calcHold(rig)[2], 0.5 * calcHold(makeStanding(false, 1.0, 1.0))[2], 1e-6);
}

}  // namespace
}  // namespace cabwright::testing
