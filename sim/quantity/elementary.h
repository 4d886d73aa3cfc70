// SPDX-License-Identifier: GPL-3.0-or-later
// exp, log and pow that give the same bits on every x86-64 processor and with every compiler.
//
// The C library's versions choose their code by the processor they find at run time: with fused
// multiply-add or without it, and the last bit differs. A recorded run would then not be the run
// played again. Here only + - * / and operations on the bits are used, each rounded once, in the
// order written (built with -ffp-contract=off; see the top CMakeLists.txt).
//
// No table and no fitted numbers: the coefficients are those of the Taylor series, 1/n! and
// 1/(2n+1), taken so far that what is left out is far below the last bit; the rest is the usual
// argument reduction by the natural logarithm of 2 in two parts, so that a multiple of the first
// part is exact [W. J. Cody, W. Waite, Software Manual for the Elementary Functions, 1980].
#pragma once

#include <bit>
#include <cfloat>
#include <cmath>
#include <cstdint>
#include <limits>

#ifdef __FAST_MATH__
#error "fast-math changes the bits of a recorded run; build without it"
#endif
static_assert(FLT_EVAL_METHOD == 0, "double arithmetic must round to double after every operation");
static_assert(std::numeric_limits<double>::is_iec559);

namespace cabwright::quantity {

namespace elementary {

/// Natural logarithm of 2: the first 42 bits, and what is missing.
inline constexpr double kLn2High = 0x1.62e42fefa3800p-1;
inline constexpr double kLn2Low = 0x1.ef35793c76730p-45;
inline constexpr double kPerLn2 = 0x1.71547652b82fep+0;
/// Adding it to a number below 2^51 pushes the fraction out: rounds to the nearest whole number.
inline constexpr double kRounder = 0x1.8p52;
/// Beyond these exp leaves the normal numbers.
inline constexpr double kExpTop = 709.0;
inline constexpr double kExpBottom = -708.0;

/// exp(r + low) - 1 - r for |r| below 0.3466 and low below the last bit of r. Remainder of the
/// series after r^13: 4e-18 of exp(r).
inline double calcExpTail(double r, double low) noexcept {
  const double r2 = r * r;
  const double r4 = r2 * r2;
  const double c0 = (1.0 / 2) + r * (1.0 / 6);
  const double c2 = (1.0 / 24) + r * (1.0 / 120);
  const double c4 = (1.0 / 720) + r * (1.0 / 5040);
  const double c6 = (1.0 / 40320) + r * (1.0 / 362880);
  const double c8 = (1.0 / 3628800) + r * (1.0 / 39916800);
  const double c10 = (1.0 / 479001600) + r * (1.0 / 6227020800);
  const double upper = (c4 + r2 * c6) + r4 * (c8 + r2 * c10);
  return r2 * ((c0 + r2 * c2) + r4 * upper) + (low + low * r);
}

/// y * 2^k for y near 1, also where the result is no normal number any more.
inline double calcScaled(double y, std::int64_t k) noexcept {
  const auto power = [](std::int64_t n) {
    return std::bit_cast<double>(static_cast<std::uint64_t>(n + 1023) << 52);
  };
  if (k > 1022) return y * power(k - 1000) * power(1000);
  if (k < -1021) return y * power(k + 1000) * power(-1000);
  return y * power(k);
}

/// exp(x + low), low being a correction below the last bits of x. |x| below 750.
inline double calcExpOfSum(double x, double low) noexcept {
  const double shifted = x * kPerLn2 + kRounder;
  const double whole = shifted - kRounder;
  const double high = x - whole * kLn2High;  // exact
  const double rest = low - whole * kLn2Low;
  const double r = high + rest;
  const double r_low = (high - r) + rest;
  // 1 + r with what the sum rounds off carried along.
  const double one_r = 1.0 + r;
  const double one_r_low = r - (one_r - 1.0);
  const double y = one_r + (one_r_low + calcExpTail(r, r_low));
  return calcScaled(y, static_cast<std::int64_t>(whole));
}

/// x = m * 2^k with m from sqrt(1/2) to sqrt(2).
struct Split {
  double m;
  double k;
};

/// For finite x above zero.
inline Split calcSplit(double x) noexcept {
  double k = 0.0;
  if (x < std::numeric_limits<double>::min()) {
    x *= 0x1p54;
    k = -54.0;
  }
  const std::uint64_t bits = std::bit_cast<std::uint64_t>(x);
  // Counted from the bits of sqrt(1/2), so that the exponent steps there and not at 1.
  constexpr std::uint64_t kHalfRoot = 0x3fe6a09e667f3bcd;
  const std::int64_t above = static_cast<std::int64_t>(bits - kHalfRoot) >> 52;
  const std::uint64_t m = bits - (static_cast<std::uint64_t>(above) << 52);
  return {std::bit_cast<double>(m), k + static_cast<double>(above)};
}

/// The series of atanh from its third term on, 2 (z/5 + z^2/7 + ...) for z = s^2 to 0.0295;
/// remainder 2e-17 of its first term: 2 atanh s = 2 s + s^3 (2/3 + this).
inline double calcAtanhTail(double z) noexcept {
  const double z2 = z * z;
  const double z4 = z2 * z2;
  const double c2 = (2.0 / 5) + z * (2.0 / 7);
  const double c4 = (2.0 / 9) + z * (2.0 / 11);
  const double c6 = (2.0 / 13) + z * (2.0 / 15);
  const double c8 = (2.0 / 17) + z * (2.0 / 19);
  return z * ((c2 + z2 * c4) + z4 * ((c6 + z2 * c8) + z4 * (2.0 / 21)));
}

}  // namespace elementary

/// e to the x. Within 1 unit in the last place; never falls as x rises. Infinite above 709.79,
/// 0 below -745.14, NaN for NaN.
[[nodiscard]] inline double detExp(double x) noexcept {
  if (x > elementary::kExpBottom && x < elementary::kExpTop) [[likely]] {
    return elementary::calcExpOfSum(x, 0.0);
  }
  if (x != x) return x;
  if (x > 709.8) return std::numeric_limits<double>::infinity();
  if (x < -745.2) return 0.0;
  return elementary::calcExpOfSum(x, 0.0);
}

/// Natural logarithm. Within 1 unit in the last place; never falls as x rises. Minus infinity at
/// 0, NaN below it and for NaN.
[[nodiscard]] inline double detLog(double x) noexcept {
  if (!(x > 0.0 && x <= std::numeric_limits<double>::max())) [[unlikely]] {
    if (x == 0.0) return -std::numeric_limits<double>::infinity();
    return x > 0.0 ? x : std::numeric_limits<double>::quiet_NaN();
  }
  const elementary::Split split = elementary::calcSplit(x);
  // With f = m - 1 (exact) and s = f / (2 + f):  log m = 2 atanh s,  and  2 s = f - s f, so that
  // log m = f - (f^2/2 - s (f^2/2 + tail)), where the largest term carries no rounding.
  const double f = split.m - 1.0;
  const double s = f / (2.0 + f);
  const double half_square = 0.5 * f * f;
  const double z = s * s;
  const double tail = z * ((2.0 / 3) + elementary::calcAtanhTail(z));
  const double bend = half_square - s * (half_square + tail);
  // k ln2 + f, the larger first, and what the sum rounds off.
  const double whole = split.k * elementary::kLn2High;  // exact
  const double sum = whole + f;
  const double sum_low = split.k == 0.0 ? 0.0 : f - (sum - whole);
  return sum - (bend - (sum_low + split.k * elementary::kLn2Low));
}

/// x to the y for x not below zero (NaN below it, even for a whole y): |y log x| to 50 within
/// 1 unit in the last place, to 700 within 8. 1 when y is 0 or x is 1.
[[nodiscard]] double detPow(double x, double y) noexcept;

/// The processor's square root is rounded correctly everywhere (IEEE 754), so it is safe as it is.
[[nodiscard]] inline double detSqrt(double x) noexcept { return std::sqrt(x); }

}  // namespace cabwright::quantity
