// SPDX-License-Identifier: GPL-3.0-or-later
// One trainee's attempts at an exercise: points, time, critical lines broken, and how quick it goes
// with practice.
//
// The time of the Nth attempt follows a power law, T = A * N^-b [A. Newell, P. S. Rosenbloom,
// Mechanisms of skill acquisition and the law of practice, 1981]; each doubling of attempts leaves
// the share 2^-b of the time, 0.8 with b = 0.322. Two numbers through a few points say little, so
// that none is fitted to fewer than five.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "review/shelf.h"

namespace cabwright::review {

inline constexpr std::size_t kLeastForCurve = 5;

struct LearningCurve {
  double first_s = 0;   ///< A, seconds
  double exponent = 0;  ///< b; below zero it takes longer with practice
  std::size_t fitted_to = 0;
  /// Share of the spread of ln T that the curve accounts for, 0 to 1.
  double accounted = 0;
};

struct TimedAttempt {
  int number = 0;  ///< 1, 2, 3 ...
  double seconds = 0;
};
/// Least squares of ln T over ln N. Empty with fewer than kLeastForCurve attempts that took time,
/// or when all have one number.
[[nodiscard]] std::optional<LearningCurve> fitLearningCurve(
    const std::vector<TimedAttempt>& attempts);
/// Seconds of the attempt of this number, from 1.
[[nodiscard]] double calcSeconds(const LearningCurve& curve, double number);
/// What is left of the time when the attempts are doubled: 2^-b.
[[nodiscard]] double calcDoublingShare(const LearningCurve& curve);

struct Attempt {
  const ShelfItem* item = nullptr;
  int number = 0;       ///< among those of the same version, cut off ones counted
  bool ended = false;   ///< else it was cut off, and has neither points nor a time to compare
  bool passed = false;  ///< an assessor's decision before the program's
  double percent = 0, seconds = 0;
  int criticals_broken = 0;
};

/// The attempts at one version of an exercise: what was learnt at another one is not the same.
struct VersionAttempts {
  std::string scenario_hash;
  std::vector<Attempt> attempts;  ///< by the time they began
  std::optional<LearningCurve> curve;
};

/// By trainee (traineeKey) and title of the exercise; versions by the time of their first attempt.
/// Files that cannot be read are left out. The items must outlive what is given.
[[nodiscard]] std::vector<VersionAttempts> findAttempts(const std::vector<const ShelfItem*>& items,
                                                        const std::string& trainee,
                                                        const std::string& exercise);

/// Passed, as far as is known: by an assessor's decision, else by the program.
[[nodiscard]] bool isPassed(const ShelfItem& item);

}  // namespace cabwright::review
