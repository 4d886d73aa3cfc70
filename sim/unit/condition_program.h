// SPDX-License-Identifier: GPL-3.0-or-later
// A condition as it is worked out: a row of steps over two stacks, one of numbers and one of
// truths. Used by condition.cpp and its parser only.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "unit/condition.h"

namespace cabwright::unit {

enum class Step : std::uint8_t {
  kNumber,
  kSignal,
  kNegate,
  kAbs,
  kAdd,
  kSubtract,
  kMultiply,
  kDivide,
  kLess,
  kLessEqual,
  kGreater,
  kGreaterEqual,
  kEqual,
  kNotEqual,
  kNear,
  kTruth,           ///< of a bare signal
  kSignalCompared,  ///< a signal with a number, by `comparison`: the usual case in one step
  kAnd,
  kOr,
  kNot,
};

struct ConditionStep {
  Step step = Step::kNumber;
  Signal signal{};
  double number = 0;
  std::string_view unit;  ///< of a comparison; points into the signal table
  Step comparison = Step::kLess;
};

/// Neither stack grows beyond this: the parser refuses deeper nesting long before.
inline constexpr std::size_t kConditionStack = 256;

struct Condition::Node {
  std::vector<ConditionStep> steps;  ///< none: always true
};

struct ParsedCondition {
  std::vector<ConditionStep> steps;
  std::vector<Signal> signals;
};

/// Throws the first ConditionFault.
[[nodiscard]] ParsedCondition parseCondition(std::string_view text);

}  // namespace cabwright::unit
