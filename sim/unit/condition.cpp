// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/condition.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <span>
#include <utility>

#include "unit/condition_program.h"

namespace cabwright::unit {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

// Without a constructor, so that a stack of them costs nothing to have.
struct Truth {
  bool holds;
  double margin;
  const ConditionStep* decided_by;
};

// Less robust first; of two at margin 0 the one that does not hold.
bool isLess(const Truth& a, const Truth& b) {
  if (a.margin != b.margin) return a.margin < b.margin;
  return !a.holds && b.holds;
}

// Equality of plain numbers is a switch: it holds or it does not. Of quantities the distance
// counts.
double calcEqualityMargin(double difference, bool holds, bool equal, bool has_unit) {
  if (!has_unit) return holds ? 1.0 : -1.0;
  const double distance = std::fabs(difference);
  return equal ? -distance : distance;
}

Truth compare(const ConditionStep& op, Step comparison, double left, double right) {
  // A Frame holds single precision; a limit has to be rounded alike, or 0.7 is not 0.7.
  const double a = static_cast<float>(left);
  const double b = static_cast<float>(right);
  if (!std::isfinite(a) || !std::isfinite(b)) return {false, -kInfinity, &op};
  const bool has_unit = !op.unit.empty();
  switch (comparison) {
    case Step::kLess:
      return {a < b, b - a, &op};
    case Step::kLessEqual:
      return {a <= b, b - a, &op};
    case Step::kGreater:
      return {a > b, a - b, &op};
    case Step::kGreaterEqual:
      return {a >= b, a - b, &op};
    case Step::kEqual:
      return {a == b, calcEqualityMargin(a - b, a == b, true, has_unit), &op};
    default:
      return {a != b, calcEqualityMargin(a - b, a != b, false, has_unit), &op};
  }
}

Truth compareNear(const ConditionStep& op, double value, double centre, double reach) {
  const double distance = std::fabs(static_cast<double>(static_cast<float>(value)) - centre);
  const double a = static_cast<float>(distance);
  const double b = static_cast<float>(reach);
  if (!std::isfinite(a) || !std::isfinite(b)) return {false, -kInfinity, &op};
  return {a <= b, b - a, &op};
}

double calcArithmetic(Step step, double a, double b) {
  switch (step) {
    case Step::kAdd:
      return a + b;
    case Step::kSubtract:
      return a - b;
    case Step::kMultiply:
      return a * b;
    default:
      return a / b;
  }
}

// The two stacks. The parser has seen to it that they neither run dry nor over.
class Stacks {
 public:
  void advance(const ConditionStep& op, const Frame& frame) {
    switch (op.step) {
      case Step::kNumber:
        numbers_[n_++] = op.number;
        break;
      case Step::kSignal:
        numbers_[n_++] = static_cast<double>(frame[op.signal]);
        break;
      case Step::kNegate:
        numbers_[n_ - 1] = -numbers_[n_ - 1];
        break;
      case Step::kAbs:
        numbers_[n_ - 1] = std::fabs(numbers_[n_ - 1]);
        break;
      case Step::kAdd:
      case Step::kSubtract:
      case Step::kMultiply:
      case Step::kDivide:
        --n_;
        numbers_[n_ - 1] = calcArithmetic(op.step, numbers_[n_ - 1], numbers_[n_]);
        break;
      case Step::kNear:
        n_ -= 3;
        truths_[t_++] = compareNear(op, numbers_[n_], numbers_[n_ + 1], numbers_[n_ + 2]);
        break;
      case Step::kTruth: {
        const bool on = numbers_[--n_] >= 0.5;
        truths_[t_++] = {on, on ? 1.0 : -1.0, &op};
        break;
      }
      case Step::kSignalCompared:
        truths_[t_++] =
            compare(op, op.comparison, static_cast<double>(frame[op.signal]), op.number);
        break;
      case Step::kAnd:
        --t_;
        if (isLess(truths_[t_], truths_[t_ - 1])) truths_[t_ - 1] = truths_[t_];
        break;
      case Step::kOr:
        --t_;
        if (isLess(truths_[t_ - 1], truths_[t_])) truths_[t_ - 1] = truths_[t_];
        break;
      case Step::kNot:
        truths_[t_ - 1].holds = !truths_[t_ - 1].holds;
        truths_[t_ - 1].margin = -truths_[t_ - 1].margin;
        break;
      default:
        n_ -= 2;
        truths_[t_++] = compare(op, op.step, numbers_[n_], numbers_[n_ + 1]);
        break;
    }
  }
  [[nodiscard]] const Truth& top() const { return truths_[t_ - 1]; }

 private:
  std::array<double, kConditionStack> numbers_;  // not cleared: it would cost more than the steps
  std::array<Truth, kConditionStack> truths_;
  std::size_t n_ = 0, t_ = 0;
};

bool isComparison(Step step) {
  return step == Step::kLess || step == Step::kLessEqual || step == Step::kGreater ||
         step == Step::kGreaterEqual || step == Step::kEqual || step == Step::kNotEqual;
}

// Signal, number, comparison: in one step. Nearly all conditions are made of these.
std::vector<ConditionStep> shorten(const std::vector<ConditionStep>& steps) {
  std::vector<ConditionStep> shorter;
  for (const ConditionStep& step : steps) {
    const std::size_t n = shorter.size();
    if (isComparison(step.step) && n >= 2 && shorter[n - 1].step == Step::kNumber &&
        shorter[n - 2].step == Step::kSignal) {
      shorter[n - 2] = {Step::kSignalCompared, shorter[n - 2].signal, shorter[n - 1].number,
                        step.unit, step.step};
      shorter.pop_back();
    } else {
      shorter.push_back(step);
    }
  }
  return shorter;
}

// How many of what is before it on the stacks a step takes; each leaves one.
std::size_t countTaken(Step step) {
  switch (step) {
    case Step::kNumber:
    case Step::kSignal:
    case Step::kSignalCompared:
      return 0;
    case Step::kNegate:
    case Step::kAbs:
    case Step::kTruth:
    case Step::kNot:
      return 1;
    case Step::kNear:
      return 3;
    default:
      return 2;
  }
}

using Steps = std::span<const ConditionStep>;

// Where the last operand of these steps begins.
std::size_t findLastOperand(Steps steps) {
  std::size_t begin = steps.size();
  for (std::size_t wanted = 1; wanted > 0; --wanted) wanted += countTaken(steps[--begin].step);
  return begin;
}

// From the last to the first, since a long row of "and" leans to the left.
void splitAnd(Steps steps, std::vector<Steps>& terms) {
  std::vector<Steps> right;
  while (!steps.empty() && steps.back().step == Step::kAnd) {
    const Steps operands = steps.first(steps.size() - 1);
    const std::size_t at = findLastOperand(operands);
    right.push_back(operands.subspan(at));
    steps = operands.first(at);
  }
  terms.push_back(steps);
  for (auto operand = right.rbegin(); operand != right.rend(); ++operand) splitAnd(*operand, terms);
}

}  // namespace

Condition::Condition() : root_(std::make_shared<const Node>()) {}

std::variant<Condition, ConditionFault> Condition::parse(std::string_view text) {
  try {
    ParsedCondition parsed = parseCondition(text);
    Condition condition;
    condition.root_ = std::make_shared<const Node>(Node{shorten(parsed.steps)});
    condition.signals_ = std::move(parsed.signals);
    condition.text_ = text;
    return condition;
  } catch (const ConditionFault& fault) {
    return fault;
  }
}

ConditionValue Condition::evaluate(const Frame& frame) const {
  if (root_->steps.empty()) return {true, kInfinity, {}};
  Stacks stacks;
  for (const ConditionStep& step : root_->steps) stacks.advance(step, frame);
  const Truth& top = stacks.top();
  return {top.holds, top.margin, top.decided_by->unit};
}

bool Condition::holds(const Frame& frame) const { return evaluate(frame).holds; }
double Condition::margin(const Frame& frame) const { return evaluate(frame).margin; }
std::string_view Condition::marginUnit(const Frame& frame) const { return evaluate(frame).unit; }
const std::vector<Signal>& Condition::signals() const { return signals_; }
const std::string& Condition::text() const { return text_; }

std::vector<Condition> Condition::terms() const {
  std::vector<Steps> parts;
  splitAnd(root_->steps, parts);
  if (parts.size() == 1) return {*this};
  std::vector<Condition> all;
  for (const Steps part : parts) {
    Condition term;
    term.root_ = std::make_shared<const Node>(Node{{part.begin(), part.end()}});
    for (const ConditionStep& step : part) {
      const bool reads = step.step == Step::kSignal || step.step == Step::kSignalCompared;
      if (reads && std::ranges::find(term.signals_, step.signal) == term.signals_.end())
        term.signals_.push_back(step.signal);
    }
    term.text_ = text_;
    all.push_back(std::move(term));
  }
  return all;
}

}  // namespace cabwright::unit
