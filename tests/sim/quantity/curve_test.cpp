// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/curve.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace cabwright::quantity {
namespace {

constexpr std::array<double, 5> kX{0.0, 1.0, 2.5, 3.0, 7.0};
constexpr std::array<double, 5> kY{1.0, 2.0, 2.0, 5.0, 4.0};

TEST(Curve, GoesThroughItsPointsExactly) {
  const Curve<5> curve(kX, kY);
  for (std::size_t k = 0; k < kX.size(); ++k) EXPECT_EQ(curve.calc(kX[k]), kY[k]);
}

TEST(Curve, FollowsAStraightLine) {
  const Curve<4> curve({0.0, 1.0, 3.0, 4.0}, {1.0, 3.0, 7.0, 9.0});
  for (double x = 0.0; x <= 4.0; x += 0.01) EXPECT_NEAR(curve.calc(x), 1.0 + 2.0 * x, 1e-14);
}

// Inside, a parabola sampled evenly has its exact slopes at every inner point: only the two outer
// pieces bend otherwise.
TEST(Curve, FollowsAParabolaBetweenInnerPoints) {
  const Curve<6> curve({1, 2, 3, 4, 5, 6}, {1, 4, 9, 16, 25, 36});
  for (double x = 2.0; x <= 5.0; x += 0.01) EXPECT_NEAR(curve.calc(x), x * x, 1e-12);
}

TEST(Curve, StaysAtTheEndsOrGoesOnWithTheirSlope) {
  const Curve<5> clamped(kX, kY);
  EXPECT_EQ(clamped.calc(-3.0), 1.0);
  EXPECT_EQ(clamped.calc(9.0), 4.0);
  const Curve<3> linear({0.0, 1.0, 2.0}, {0.0, 2.0, 4.0}, CurveEnds::kLinear);
  EXPECT_NEAR(linear.calc(-1.0), -2.0, 1e-15);
  EXPECT_NEAR(linear.calc(5.0), 10.0, 1e-15);
}

TEST(Curve, HasNoKinkAtItsPoints) {
  const Curve<5> curve(kX, kY);
  constexpr double kStep = 1e-6;
  for (std::size_t k = 1; k + 1 < kX.size(); ++k) {
    const double left = (curve.calc(kX[k]) - curve.calc(kX[k] - kStep)) / kStep;
    const double right = (curve.calc(kX[k] + kStep) - curve.calc(kX[k])) / kStep;
    EXPECT_NEAR(left, right, 1e-4);  // the second derivative here is below 30
  }
}

TEST(Curve, IsFlatBetweenEqualPoints) {
  const Curve<5> curve(kX, kY);
  for (double x = 1.0; x <= 2.5; x += 0.01) EXPECT_EQ(curve.calc(x), 2.0);
}

TEST(Curve, PassesNanOnAndIsZeroWhenMadeByDefault) {
  const Curve<5> curve(kX, kY);
  EXPECT_TRUE(std::isnan(curve.calc(std::numeric_limits<double>::quiet_NaN())));
  const Curve<5> none;
  EXPECT_EQ(none.calc(-1.0), 0.0);
  EXPECT_EQ(none.calc(1.0), 0.0);
}

TEST(Curve, RefusesPointsOutOfOrderOrNotFinite) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_THROW(Curve<2>({1.0, 1.0}, {0.0, 1.0}), std::invalid_argument);
  EXPECT_THROW(Curve<2>({2.0, 1.0}, {0.0, 1.0}), std::invalid_argument);
  EXPECT_THROW(Curve<2>({0.0, nan}, {0.0, 1.0}), std::invalid_argument);
  EXPECT_THROW(Curve<2>({0.0, 1.0}, {0.0, nan}), std::invalid_argument);
}

// Between two points the curve stays between their values and never turns, whatever the points.
template <std::size_t N>
void checkNeverTurnsBetweenPoints() {
  std::array<double, N> x{};
  std::array<double, N> y{};
  double at = *rc::gen::inRange(-1000, 1000);
  for (std::size_t k = 0; k < N; ++k) {
    x[k] = at;
    at += 0.01 * *rc::gen::inRange(1, 1000);
    y[k] = *rc::gen::inRange(-1000, 1000);
  }
  const Curve<N> curve(x, y);
  for (std::size_t k = 0; k + 1 < N; ++k) {
    const double sign = y[k + 1] >= y[k] ? 1.0 : -1.0;
    double before = y[k];
    for (int n = 1; n <= 50; ++n) {
      const double here = curve.calc(x[k] + (x[k + 1] - x[k]) * n / 50.0);
      RC_ASSERT(sign * (here - before) >= -1e-9);
      before = here;
    }
  }
}

RC_GTEST_PROP(Curve, NeverTurnsBetweenPoints, ()) { checkNeverTurnsBetweenPoints<8>(); }
RC_GTEST_PROP(Curve, NeverTurnsBetweenManyPoints, ()) { checkNeverTurnsBetweenPoints<40>(); }

}  // namespace
}  // namespace cabwright::quantity
