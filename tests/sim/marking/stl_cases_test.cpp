// SPDX-License-Identifier: GPL-3.0-or-later
// The published cases of bounded signal temporal logic on discrete ticks, at every tick, through
// the operators the rules use. Signals and expectations after the tests of the rtamt library
// (commit 5e30b7b, test_stl_discrete_time_offline_evaluation), operators after Maler and Nickovic
// 2004 and Donze and Maler 2010.
#include <gtest/gtest.h>

#include <vector>

#include "marking/window.h"

namespace cabwright::marking {
namespace {

using Values = std::vector<double>;
const Values kSignalA{100, -1, -2, 5, -1};
const Values kSignalB{20, -2, 10, 4, -1};
using Bound = std::optional<std::int64_t>;

Robust robust(double margin) { return {margin > 0, margin, {}}; }

Values past(Extreme which, std::int64_t lo, Bound hi) {
  PastWindow window(which, lo, hi);
  Values result;
  for (std::size_t t = 0; t < kSignalA.size(); ++t) {
    const auto tick = static_cast<std::int64_t>(t);
    window.push(tick, robust(kSignalA[t]));
    result.push_back(window.calc(tick).margin);
  }
  return result;
}

Values future(Extreme which, std::int64_t lo, Bound hi) {
  FutureWindow window(which, lo, hi);
  Values result;
  for (std::size_t t = 0; t < kSignalA.size(); ++t) {
    const auto tick = static_cast<std::int64_t>(t);
    while (const auto answer = window.takeAnswer(tick)) result.push_back(answer->value.margin);
    window.ask(tick);
    window.push(tick, robust(kSignalA[t]));
  }
  while (const auto answer = window.takeCutAnswer(4)) result.push_back(answer->value.margin);
  return result;
}

Values since(std::int64_t lo, Bound hi) {
  Since operation(lo, hi);
  Values result;
  for (std::size_t t = 0; t < kSignalA.size(); ++t) {
    const Robust value =
        operation.push(static_cast<std::int64_t>(t), robust(kSignalA[t]), robust(kSignalB[t]));
    result.push_back(value.margin);
  }
  return result;
}

Values until(std::int64_t lo, Bound hi) {
  Values result;
  for (std::size_t asked = 0; asked < kSignalA.size(); ++asked) {
    Until operation(static_cast<std::int64_t>(asked), lo, hi);
    for (std::size_t t = 0; t < kSignalA.size(); ++t) {
      operation.push(static_cast<std::int64_t>(t), robust(kSignalA[t]), robust(kSignalB[t]));
    }
    result.push_back(operation.value().margin);
  }
  return result;
}

TEST(StlCase, OneAlways) {
  EXPECT_EQ(future(Extreme::kLeast, 0, std::nullopt), (Values{-2, -2, -2, -1, -1}));
}
TEST(StlCase, TwoAlwaysBounded) {
  EXPECT_EQ(future(Extreme::kLeast, 0, 1), (Values{-1, -2, -2, -1, -1}));
}
TEST(StlCase, ThreeEventually) {
  EXPECT_EQ(future(Extreme::kMost, 0, std::nullopt), (Values{100, 5, 5, 5, -1}));
}
TEST(StlCase, FourEventuallyBounded) {
  EXPECT_EQ(future(Extreme::kMost, 0, 1), (Values{100, -1, 5, 5, -1}));
}
TEST(StlCase, FiveHistorically) {
  EXPECT_EQ(past(Extreme::kLeast, 0, std::nullopt), (Values{100, -1, -2, -2, -2}));
  EXPECT_EQ(past(Extreme::kLeast, 0, 1), (Values{100, -1, -2, -2, -1}));
}
TEST(StlCase, SixHistoricallyOfAnEmptyWindowIsInfinite) {
  EXPECT_EQ(past(Extreme::kLeast, 1, 2), (Values{kInfinite, 100, -1, -2, -2}));
}
TEST(StlCase, SevenOnceAndItsEmptyWindow) {
  EXPECT_EQ(past(Extreme::kMost, 0, 1), (Values{100, 100, -1, 5, 5}));
  EXPECT_EQ(past(Extreme::kMost, 1, 2), (Values{-kInfinite, 100, 100, -1, 5}));
}
TEST(StlCase, EightSince) {
  EXPECT_EQ(since(0, std::nullopt), (Values{20, -1, 10, 5, -1}));
  EXPECT_EQ(since(0, 1), (Values{20, -1, 10, 5, -1}));
}
TEST(StlCase, NineUntilHalfOpen) {
  EXPECT_EQ(until(0, std::nullopt), (Values{20, -1, 10, 4, -1}));
  EXPECT_EQ(until(0, 1), (Values{20, -1, 10, 4, -1}));
}
TEST(StlCase, TenRiseAndFall) {
  Edge edge;
  Values rise, fall;
  for (double value : kSignalA) {
    edge.push(robust(value));
    rise.push_back(edge.rise().margin);
    fall.push_back(edge.fall().margin);
  }
  EXPECT_EQ(rise, (Values{100, -100, -2, 2, -5}));
  EXPECT_EQ(fall, (Values{-100, 1, -1, -5, 1}));
}

// The published cases leave the future windows that begin later, and those beyond the end, open.
TEST(StlCase, FutureWindowsThatLieBeyondTheEndAreEmpty) {
  EXPECT_EQ(future(Extreme::kLeast, 1, 2), (Values{-2, -2, -1, -1, kInfinite}));
  EXPECT_EQ(future(Extreme::kMost, 1, 2), (Values{-1, 5, 5, -1, -kInfinite}));
}

TEST(Robustness, KeepsTheTruthApartFromAMarginOfNothing) {
  const Robust strictly_above{false, 0, {}}, at_least{true, 0, {}};
  EXPECT_FALSE(calcAnd(strictly_above, at_least).holds);
  EXPECT_FALSE(calcAnd(at_least, strictly_above).holds);
  EXPECT_TRUE(calcOr(strictly_above, at_least).holds);
  EXPECT_TRUE(calcOr(at_least, strictly_above).holds);
  EXPECT_TRUE(calcNot(strictly_above).holds);
}

}  // namespace
}  // namespace cabwright::marking
