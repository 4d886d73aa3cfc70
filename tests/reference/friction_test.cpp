// SPDX-License-Identifier: GPL-3.0-or-later
// Dry friction: the plant's solver of the friction problem on the statics textbooks' blocks.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "plant/box_solver.h"
#include "published.h"

namespace cabwright::reference {
namespace {

using plant::BoxPlace;
using plant::BoxProblem;
using plant::BoxSolution;

BoxSolution solve(const BoxProblem& p) {
  const BoxSolution s = plant::solveBox(p, BoxSolution());
  EXPECT_TRUE(s.solved);
  return s;
}

// A crate of 300 lb on a slope of 3 in 4, pushed up along it: friction within `most`.
BoxSolution crate(double push_lb, double most_lb) {
  const double mass = 300.0 / 32.2;
  BoxProblem p;
  p.size = 1;
  p.a[0][0] = 1.0 / mass;
  p.b[0] = (push_lb - 300.0 * 3.0 / 5.0) / mass;
  p.lo[0] = -most_lb;
  p.hi[0] = most_lb;
  return solve(p);
}

TEST(DryFriction, CrateOnASlope) {
  // Beer & Johnston, Vector Mechanics for Engineers: Statics, Sample Problem 8.1: 300 lb, 3:4:5,
  // static friction 0.25, kinetic 0.20, push 100 lb: equilibrium wants 80 lb, at most 60 lb can be
  // had, so it slides down, held by 48 lb. From memory, to be verified in print. Exact but for the
  // solver's softness.
  const double normal = 300.0 * 4.0 / 5.0;
  EXPECT_EQ(crate(100.0, 0.25 * normal).place[0], BoxPlace::kHigh);
  EXPECT_PUBLISHED("Beer & Johnston, Statics, Sample Problem 8.1",
                   crate(100.0, 0.20 * normal).lambda[0], 48.0, 1e-9);
  // From 120 lb on it stands: with 121 lb friction carries the other 59 lb.
  EXPECT_EQ(crate(121.0, 0.25 * normal).place[0], BoxPlace::kInside);
  EXPECT_NEAR(crate(121.0, 0.25 * normal).lambda[0], 59.0, 1e-6);
}

// Meriam & Kraige, Engineering Mechanics: Statics, Sample Problem 6/5: blocks of 30, 50 and 40 kg
// on one another on a slope of 30 deg, the top one tied back; friction 0.30, 0.40, and 0.45 under
// the lowest; a pull P down the slope on the middle one. The greatest P before anything slips
// is 93.8 N, and the two lower blocks then slip together; the middle one alone would take 103.1 N.
// From memory, to be verified in print.
BoxSolution threeBlocks(double pull_n, double lowest_friction = 0.45) {
  constexpr double kG = 9.81, kMiddle = 50.0, kLowest = 40.0;
  const double cosine = std::sqrt(3.0) / 2.0, sine = 0.5;
  const std::array<double, 3> most{0.30 * 30.0 * kG * cosine, 0.40 * 80.0 * kG * cosine,
                                   lowest_friction * 120.0 * kG * cosine};
  // Rows: middle on top one, middle on lowest, lowest on the slope; unknown speeds middle, lowest.
  constexpr std::array<std::array<double, 2>, 3> kRow{{{1.0, 0.0}, {1.0, -1.0}, {0.0, 1.0}}};
  const std::array<double, 2> mobility{1.0 / kMiddle, 1.0 / kLowest};
  const std::array<double, 2> free{pull_n / kMiddle + kG * sine, kG * sine};
  BoxProblem p;
  p.size = 3;
  for (std::size_t r = 0; r < 3; ++r) {
    for (std::size_t k = 0; k < 2; ++k) {
      p.b[r] += kRow[r][k] * free[k];
      for (std::size_t c = 0; c < 3; ++c) p.a[r][c] += kRow[r][k] * mobility[k] * kRow[c][k];
    }
    p.lo[r] = -most[r];
    p.hi[r] = most[r];
  }
  return solve(p);
}

bool slips(const BoxSolution& s, std::size_t row) { return s.place[row] != BoxPlace::kInside; }

int countSlipping(const BoxSolution& s) {
  int count = 0;
  for (std::size_t r = 0; r < 3; ++r) count += slips(s, r) ? 1 : 0;
  return count;
}

TEST(DryFriction, ThreeBlocksHoldUpToTheGreatestPull) {
  // Half a unit in the last digit on either side: everything holds at 93.7, something slips
  // at 93.9.
  const BoxSolution holds = threeBlocks(93.7), gives = threeBlocks(93.9);
  // Two of three rows are enough for both blocks to stand; the third may be at its bound.
  EXPECT_LE(countSlipping(holds), 1);
  EXPECT_TRUE(slips(gives, 0));
  EXPECT_FALSE(slips(gives, 1)) << "the two lower blocks move together";
  EXPECT_TRUE(slips(gives, 2));
}

TEST(DryFriction, TheMiddleBlockAloneTakesMorePull) {
  // The same with the lowest block pinned: 103.1 N, half a unit in the last digit on either side.
  const BoxSolution holds = threeBlocks(103.0, 10.0), gives = threeBlocks(103.2, 10.0);
  EXPECT_FALSE(slips(holds, 0) && slips(holds, 1));
  EXPECT_TRUE(slips(gives, 0));
  EXPECT_TRUE(slips(gives, 1));
  EXPECT_FALSE(slips(gives, 2));
}

}  // namespace
}  // namespace cabwright::reference
