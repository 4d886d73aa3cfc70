// SPDX-License-Identifier: GPL-3.0-or-later
// The friction problem in one piece: find lambda with lo <= lambda <= hi and w = A lambda + b such
// that w = 0 inside, w >= 0 at lo, w <= 0 at hi. With A = J M^-1 J^T it is the convex problem of
// dry friction with given normal forces: accelerations that follow are unique.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

#include "plant/layout.h"

namespace cabwright::plant {

enum class BoxPlace : std::uint8_t { kInside, kLow, kHigh };

/// Softness of every row, as a share of its own diagonal: redundant rows then share their load in
/// one way only. Small enough not to show, large enough that rounding (1e-16 over it) does not
/// decide who carries what.
inline constexpr double kRowSoftness = 1e-8;

struct BoxProblem {
  std::size_t size = 0;
  std::array<std::array<double, kRows>, kRows> a{};
  RowVector b{}, lo{}, hi{};
};

struct BoxSolution {
  RowVector lambda{};
  std::array<BoxPlace, kRows> place{};
  int passes = 0;
  bool solved = false;
};

/// Principal pivoting by single flips of the worst row, warm-started from `start.place`, the
/// smallest index first once it threatens to cycle.
[[nodiscard]] BoxSolution solveBox(const BoxProblem& problem, const BoxSolution& start);

}  // namespace cabwright::plant
