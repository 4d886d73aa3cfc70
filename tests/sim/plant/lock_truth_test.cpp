// SPDX-License-Identifier: GPL-3.0-or-later
// What is locked does not move and holds within what friction can give; what slides loses energy;
// nothing changes without a cause.
#include <gtest/gtest.h>

#include <cmath>

#include "golden_script.h"
#include "plant/world.h"
#include "random_machine.h"
#include "vehicle_text.h"

namespace cabwright::testing {
namespace {

using plant::RowMode;

constexpr double kStill = 1e-9, kHoldShare = 1e-6;

// Checks one world at one tick; empty when all is true.
std::string findUntruth(const plant::World& w) {
  plant::State dx;
  plant::Forces f;
  plant::calcRates(w.m, w.modes, w.x, dx, f);
  const plant::RowVector force = plant::calcRowForces(w.modes, f);
  for (std::size_t k = 0; k < plant::kRows; ++k) {
    const double v = plant::rowSpeed(w.m.shapeOf(k), w.x);
    const double lo = f.bounds.lo[k], hi = f.bounds.hi[k];
    const std::string where = "row " + std::to_string(k) + " at tick " + std::to_string(w.tick);
    if (w.modes.row[k] == RowMode::kLocked) {
      const double slack = kHoldShare * (hi - lo) + 1e-6;
      if (std::abs(v) > kStill) return where + " is locked and moves at " + std::to_string(v);
      if (force[k] < lo - slack || force[k] > hi + slack) {
        return where + " holds " + std::to_string(force[k]) + " beyond its bounds";
      }
    } else if (force[k] * v > 1e-5 * std::max(1.0, hi - lo)) {
      return where + " slides and gives " + std::to_string(force[k] * v) + " W";
    }
  }
  return {};
}

// A change of mode needs an event, or inputs or switches that changed at the tick.
std::string findUncausedChange(const plant::World& before, const plant::World& after,
                               bool inputs_changed) {
  bool flags_changed = false;
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    const plant::LineFlags &a = before.m.flags[n], &b = after.m.flags[n];
    flags_changed = flags_changed || a.dog != b.dog || a.dog_side != b.dog_side ||
                    a.latch_tripped != b.latch_tripped || a.pinion_in != b.pinion_in ||
                    a.protection_tripped != b.protection_tripped ||
                    a.compressor_loaded != b.compressor_loaded;
  }
  const bool changed = before.modes.row != after.modes.row;
  const bool caused = inputs_changed || flags_changed || before.restart ||
                      after.counts.events != before.counts.events ||
                      after.counts.storms != before.counts.storms;
  if (changed && !caused) return "uncaused change at tick " + std::to_string(after.tick);
  return {};
}

class GoldenLocks : public ::testing::TestWithParam<GoldenVehicle> {};

TEST_P(GoldenLocks, AreTrueAtEveryTick) {
  const plant::Parameters p = shippedVehicle(GetParam().name);
  plant::World w(p, goldenLine(), goldenStart(p, GetParam().ambient_c), plant::makeDopri5());
  GoldenScript script;
  plant::PlantInputs last;
  for (std::int64_t tick = 0; tick < kGoldenTicks; ++tick) {
    const plant::PlantInputs u = script.advanceTo(tick);
    const plant::World before(w);
    w.advance(u);
    ASSERT_EQ(findUntruth(w), "");
    ASSERT_EQ(findUncausedChange(before, w, !(u == last)), "");
    last = u;
  }
}

INSTANTIATE_TEST_SUITE_P(Vehicles, GoldenLocks, ::testing::ValuesIn(kGoldenVehicles),
                         [](const auto& vehicle) { return shortName(vehicle.param); });

TEST(Locks, AreTrueUnderRandomHands) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    quantity::Random r(seed + 4000);
    const plant::Parameters p = makeSensibleParameters(r);
    const plant::StartConditions start = makeRandomStart(r);
    plant::World w(p, makeRandomLine(r), start, plant::makeDopri5());
    plant::PlantInputs u;
    for (int tick = 0; tick < 4'000; ++tick) {
      if (r.uniformBelow(60) == 0) actAtRandom(r, u);
      w.advance(u);
      ASSERT_FALSE(w.failed) << "seed " << seed << ", tick " << tick;
      ASSERT_EQ(findUntruth(w), "") << "seed " << seed;
    }
  }
}

TEST(Locks, AStandingTrainStandsExactly) {
  plant::StartConditions start = goldenStart();
  plant::World w(plant::Parameters(), plant::GradeProfile({{0.0, 1.0 / 60.0, 0.0}}), start,
                 plant::makeDopri5());
  plant::PlantInputs u;
  u.cab[0].handbrake = u.cab[1].handbrake = 1.0;
  for (int tick = 0; tick < 60'000; ++tick) w.advance(u);
  EXPECT_LT(std::abs(w.x[plant::kPosition]), 1e-9);
  EXPECT_LT(std::abs(w.x[plant::kTrain]), 1e-12);
  EXPECT_TRUE(w.standing());
}

}  // namespace
}  // namespace cabwright::testing
