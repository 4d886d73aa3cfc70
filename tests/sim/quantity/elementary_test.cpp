// SPDX-License-Identifier: GPL-3.0-or-later
// The reference is the C library's long double (64 bits of mantissa, at worst an error of one unit
// in its own last place, which is 1/2048 of a unit of double).
#include "quantity/elementary.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "quantity/random.h"

namespace cabwright::quantity {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

// Distance from the true value in units of the last place of double there.
double calcUlps(double got, long double truth) {
  const double near = static_cast<double>(truth);
  if (got == near && !std::isfinite(got)) return 0.0;
  const double unit = std::nextafter(std::abs(near), kInfinity) - std::abs(near);
  return static_cast<double>(std::abs(static_cast<long double>(got) - truth) / unit);
}

double calcWorstExp(double from, double to, int samples, Random& random) {
  double worst = 0.0;
  for (int k = 0; k < samples; ++k) {
    const double x = from + (to - from) * random.uniform01();
    worst = std::max(worst, calcUlps(detExp(x), std::exp(static_cast<long double>(x))));
  }
  return worst;
}

TEST(DetExp, StaysWithinOneUnitOfTheLastPlace) {
  Random random(1);
  EXPECT_LE(calcWorstExp(-1.0, 1.0, 400000, random), 1.0);
  EXPECT_LE(calcWorstExp(-40.0, 40.0, 400000, random), 1.0);
  EXPECT_LE(calcWorstExp(-708.0, 709.0, 400000, random), 1.0);
}

TEST(DetExp, IsExactWhereTheAnswerIsKnown) {
  EXPECT_EQ(detExp(0.0), 1.0);
  EXPECT_EQ(detExp(-0.0), 1.0);
  EXPECT_EQ(detExp(1.0), 2.718281828459045);
  EXPECT_EQ(detExp(1e-300), 1.0);
}

TEST(DetExp, GoesThroughTheSmallestNumbersToZeroAndUpToInfinity) {
  EXPECT_LE(calcUlps(detExp(-740.0), std::exp(-740.0L)), 1.0);
  EXPECT_EQ(detExp(-745.0), std::numeric_limits<double>::denorm_min());
  EXPECT_EQ(detExp(-746.0), 0.0);
  EXPECT_EQ(detExp(-kInfinity), 0.0);
  EXPECT_LE(calcUlps(detExp(709.75), std::exp(709.75L)), 1.0);
  EXPECT_EQ(detExp(710.0), kInfinity);
  EXPECT_EQ(detExp(kInfinity), kInfinity);
  EXPECT_TRUE(std::isnan(detExp(kNan)));
}

// Neighbouring numbers from one side of the middle to the other.
template <typename F>
int countFalls(F f, double middle, int steps) {
  double x = middle;
  for (int k = 0; k < steps / 2; ++k) x = std::nextafter(x, -kInfinity);
  int falls = 0;
  double before = f(x);
  for (int k = 0; k < steps; ++k) {
    x = std::nextafter(x, kInfinity);
    const double here = f(x);
    falls += here < before ? 1 : 0;
    before = here;
  }
  return falls;
}

TEST(DetExp, NeverFallsBetweenNeighboursWhereTheReductionChanges) {
  constexpr double kLn2 = 0.6931471805599453;
  for (int k = -1000; k <= 1000; ++k) {
    EXPECT_EQ(countFalls(detExp, (k + 0.5) * kLn2, 2000), 0) << "near " << (k + 0.5) * kLn2;
  }
}

TEST(DetExp, NeverFallsBetweenNeighboursAnywhereElse) {
  Random random(2);
  for (int k = 0; k < 2000; ++k) {
    const double x = -20.0 + 40.0 * random.uniform01();
    EXPECT_EQ(countFalls(detExp, x, 500), 0) << "near " << x;
    const double small = x * detExp(-30.0 * random.uniform01());
    EXPECT_EQ(countFalls(detExp, small, 500), 0) << "near " << small;
  }
}

TEST(DetLog, StaysWithinOneUnitOfTheLastPlace) {
  Random random(3);
  double worst = 0.0;
  const auto see = [&](double x) {
    worst = std::max(worst, calcUlps(detLog(x), std::log(static_cast<long double>(x))));
  };
  for (int k = 0; k < 400000; ++k) {
    see(0.5 + 1.5 * random.uniform01());
    see(1.0 + 1e-4 * (random.uniform01() - 0.5));
    see(std::ldexp(1.0 + random.uniform01(), static_cast<int>(random.uniformBelow(2045)) - 1022));
  }
  EXPECT_LE(worst, 1.0);
}

TEST(DetLog, IsExactWhereTheAnswerIsKnown) {
  EXPECT_EQ(detLog(1.0), 0.0);
  EXPECT_EQ(detLog(2.0), 0.6931471805599453);
  EXPECT_EQ(detLog(10.0), 2.302585092994046);
  EXPECT_EQ(detLog(0x1p-1000), -693.1471805599453);
}

TEST(DetLog, TakesTheSmallestNumbersAndTheEdges) {
  const double tiny = std::numeric_limits<double>::denorm_min();
  EXPECT_LE(calcUlps(detLog(tiny), std::log(static_cast<long double>(tiny))), 1.0);
  EXPECT_LE(calcUlps(detLog(1e-310), std::log(static_cast<long double>(1e-310))), 1.0);
  EXPECT_EQ(detLog(0.0), -kInfinity);
  EXPECT_EQ(detLog(kInfinity), kInfinity);
  EXPECT_TRUE(std::isnan(detLog(-1.0)));
  EXPECT_TRUE(std::isnan(detLog(-kInfinity)));
  EXPECT_TRUE(std::isnan(detLog(kNan)));
}

TEST(DetLog, NeverFallsBetweenNeighbours) {
  for (int k = -40; k <= 40; ++k) {
    EXPECT_EQ(countFalls(detLog, std::ldexp(std::sqrt(0.5), k), 20000), 0) << "exponent " << k;
    EXPECT_EQ(countFalls(detLog, std::ldexp(1.0, k), 20000), 0) << "exponent " << k;
  }
  Random random(4);
  for (int k = 0; k < 2000; ++k) {
    const double x = 0.3 + 3.0 * random.uniform01();
    EXPECT_EQ(countFalls(detLog, x, 500), 0) << "near " << x;
  }
}

double calcWorstPow(double largest_exponent, int samples) {
  Random random(5);
  double worst = 0.0;
  for (int k = 0; k < samples; ++k) {
    const double x = std::ldexp(0.5 + random.uniform01(), static_cast<int>(random.uniformBelow(9)));
    const double log = detLog(x);
    if (std::abs(log) < 1e-6) continue;
    const double y = (2.0 * random.uniform01() - 1.0) * largest_exponent / log;
    const long double truth = std::pow(static_cast<long double>(x), static_cast<long double>(y));
    worst = std::max(worst, calcUlps(detPow(x, y), truth));
  }
  return worst;
}

TEST(DetPow, StaysWithinTheBoundItStates) {
  EXPECT_LE(calcWorstPow(50.0, 500000), 1.0);
  EXPECT_LE(calcWorstPow(700.0, 500000), 8.0);
}

TEST(DetPow, HitsWholePowers) {
  EXPECT_EQ(detPow(2.0, 10.0), 1024.0);
  EXPECT_EQ(detPow(3.0, 4.0), 81.0);
  EXPECT_EQ(detPow(10.0, -2.0), 0.01);
  EXPECT_EQ(detPow(4.0, 0.5), 2.0);
  EXPECT_EQ(detPow(0.25, -1.5), 8.0);
}

TEST(DetPow, KnowsTheEdges) {
  EXPECT_EQ(detPow(0.0, 0.0), 1.0);
  EXPECT_EQ(detPow(kNan, 0.0), 1.0);
  EXPECT_EQ(detPow(1.0, kNan), 1.0);
  EXPECT_EQ(detPow(0.0, 2.0), 0.0);
  EXPECT_EQ(detPow(0.0, -2.0), kInfinity);
  EXPECT_EQ(detPow(kInfinity, 0.5), kInfinity);
  EXPECT_EQ(detPow(kInfinity, -0.5), 0.0);
  EXPECT_EQ(detPow(0.5, kInfinity), 0.0);
  EXPECT_EQ(detPow(0.5, -kInfinity), kInfinity);
  EXPECT_EQ(detPow(10.0, 400.0), kInfinity);
  EXPECT_EQ(detPow(10.0, -400.0), 0.0);
  EXPECT_EQ(detPow(2.0, -1074.0), std::numeric_limits<double>::denorm_min());
  EXPECT_TRUE(std::isnan(detPow(-2.0, 2.0)));
  EXPECT_TRUE(std::isnan(detPow(2.0, kNan)));
  EXPECT_TRUE(std::isnan(detPow(kNan, 2.0)));
}

TEST(DetPow, TakesAnEnormousExponentNextToOne) {
  const double x = std::nextafter(1.0, 2.0);
  const long double truth = std::exp(1e17L * std::log1p(0x1p-52L));
  EXPECT_LE(calcUlps(detPow(x, 1e17), truth), 1.0);
}

}  // namespace
}  // namespace cabwright::quantity
