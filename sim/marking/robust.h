// SPDX-License-Identifier: GPL-3.0-or-later
// How well something holds: the truth, and beside it by how much (robustness of signal temporal
// logic, Donze and Maler 2010). The truth is kept apart because a margin of 0 says nothing: x > c
// at x = c is false.
#pragma once

#include <limits>
#include <string_view>

#include "unit/condition.h"

namespace cabwright::marking {

inline constexpr double kInfinite = std::numeric_limits<double>::infinity();

struct Robust {
  bool holds = false;
  double margin = -kInfinite;
  std::string_view unit;  ///< of the margin; into static text

  [[nodiscard]] static Robust always() { return {true, kInfinite, {}}; }
  [[nodiscard]] static Robust never() { return {false, -kInfinite, {}}; }
  [[nodiscard]] static Robust of(const unit::ConditionValue& v) {
    return {v.holds, v.margin, v.unit};
  }
};

/// Less robust: the smaller margin, and of two equal ones that which does not hold.
[[nodiscard]] inline bool isLess(const Robust& a, const Robust& b) {
  if (a.margin != b.margin) return a.margin < b.margin;
  return !a.holds && b.holds;
}
[[nodiscard]] inline Robust calcNot(const Robust& a) { return {!a.holds, -a.margin, a.unit}; }
[[nodiscard]] inline Robust calcAnd(const Robust& a, const Robust& b) {
  return isLess(b, a) ? b : a;
}
[[nodiscard]] inline Robust calcOr(const Robust& a, const Robust& b) {
  return isLess(a, b) ? b : a;
}

}  // namespace cabwright::marking
