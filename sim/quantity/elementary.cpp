// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/elementary.h"

#include <cmath>
#include <limits>

namespace cabwright::quantity {

namespace {

// A number as the sum of two, the second below the last bit of the first.
struct Double2 {
  double high;
  double low;
};

// [T. J. Dekker, Numer. Math. 18 (1971) 224-242]: the exact product as a sum, without a fused
// multiply-add. The factors are far from overflow here.
Double2 multiplyExactly(double a, double b) {
  constexpr double kHalves = 0x1p27 + 1.0;
  const double a_scaled = kHalves * a;
  const double a_high = a_scaled - (a_scaled - a);
  const double a_low = a - a_high;
  const double b_scaled = kHalves * b;
  const double b_high = b_scaled - (b_scaled - b);
  const double b_low = b - b_high;
  const double product = a * b;
  const double low =
      ((a_high * b_high - product) + a_high * b_low + a_low * b_high) + a_low * b_low;
  return {product, low};
}

// |a| not below |b|, or a = 0.
Double2 addOrdered(double a, double b) {
  const double sum = a + b;
  return {sum, b - (sum - a)};
}

// log x with about ten bits more than a double holds: the quotient s = (m - 1) / (m + 1) and the
// first term of the series after it are carried in two parts, the rest is small against them.
Double2 calcLogLong(double x) {
  constexpr double kTwoThirds = 2.0 / 3;
  constexpr double kTwoThirdsLow = 0x1.5555555555555p-55;
  const elementary::Split split = elementary::calcSplit(x);
  const double f = split.m - 1.0;
  const Double2 denominator = addOrdered(2.0, f);
  const double s = f / denominator.high;
  const Double2 back = multiplyExactly(s, denominator.high);
  const double s_low = ((f - back.high) - back.low - s * denominator.low) / denominator.high;
  const Double2 square = multiplyExactly(s, s);
  const Double2 cube = multiplyExactly(s, square.high);
  const Double2 third = multiplyExactly(kTwoThirds, cube.high);
  const double third_low =
      third.low + (kTwoThirds * (cube.low + s * square.low) + kTwoThirdsLow * cube.high);
  const double fifth = cube.high * elementary::calcAtanhTail(square.high);
  // d(2 atanh s) = 2 / (1 - s^2) ds
  const double quotient_low = 2.0 * s_low * (1.0 + square.high + square.high * square.high);
  const Double2 first = addOrdered(split.k * elementary::kLn2High, 2.0 * s);
  const Double2 second = addOrdered(first.high, third.high);
  const double low = fifth + third_low + quotient_low + split.k * elementary::kLn2Low;
  return addOrdered(second.high, second.low + (first.low + low));
}

double calcPowAtTheEdge(double x, double y) {
  if (x != x || y != y || x < 0.0) return std::numeric_limits<double>::quiet_NaN();
  constexpr double kInfinity = std::numeric_limits<double>::infinity();
  const bool grows = (x > 1.0) == (y > 0.0);
  return grows ? kInfinity : 0.0;
}

}  // namespace

double detPow(double x, double y) noexcept {
  if (y == 0.0 || x == 1.0) return 1.0;
  constexpr double kMax = std::numeric_limits<double>::max();
  if (!(x > 0.0 && x <= kMax && std::abs(y) <= kMax)) return calcPowAtTheEdge(x, y);
  const Double2 log = calcLogLong(x);
  const double rough = y * log.high;
  if (!(std::abs(rough) < 745.2)) return calcPowAtTheEdge(x, y);
  const Double2 exponent = multiplyExactly(y, log.high);
  const double low = exponent.low + y * log.low;
  if (!(exponent.high < 709.8)) return std::numeric_limits<double>::infinity();
  return elementary::calcExpOfSum(exponent.high, low);
}

}  // namespace cabwright::quantity
