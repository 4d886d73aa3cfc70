// SPDX-License-Identifier: GPL-3.0-or-later
// The operators against their definitions, written out tick by tick, on random streams.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <vector>

#include "marking/window.h"

namespace cabwright::marking {
namespace {

struct Sample {
  std::int64_t tick;
  int value, other;
};
using Stream = std::vector<Sample>;

Robust robust(int margin) { return {margin >= 0, static_cast<double>(margin), {}}; }

// Different ticks, some with a pause between.
Stream makeStream() {
  Stream stream;
  std::int64_t tick = *rc::gen::inRange(0, 4);
  const int length = *rc::gen::inRange(1, 25);
  for (int k = 0; k < length; ++k) {
    stream.push_back({tick, *rc::gen::inRange(-4, 5), *rc::gen::inRange(-4, 5)});
    tick += *rc::gen::inRange(1, 5);
  }
  return stream;
}

std::optional<std::int64_t> makeUpper(std::int64_t lo) {
  if (*rc::gen::inRange(0, 4) == 0) return std::nullopt;
  return lo + *rc::gen::inRange(0, 9);
}

// The sample that holds at a tick; none before the first.
const Sample* holdingAt(const Stream& stream, std::int64_t tick) {
  const Sample* found = nullptr;
  for (const Sample& s : stream) {
    if (s.tick <= tick) found = &s;
  }
  return found;
}

double extremeOver(const Stream& stream, Extreme which, std::int64_t first, std::int64_t last) {
  double best = which == Extreme::kLeast ? kInfinite : -kInfinite;
  for (std::int64_t t = first; t <= last; ++t) {
    const Sample* s = holdingAt(stream, t);
    if (s == nullptr) continue;
    best = which == Extreme::kLeast ? std::min(best, double(s->value))
                                    : std::max(best, double(s->value));
  }
  return best;
}

RC_GTEST_PROP(PastWindowOracle, AgreesAtEverySample, ()) {
  const Stream stream = makeStream();
  const auto which = *rc::gen::element(Extreme::kLeast, Extreme::kMost);
  const std::int64_t lo = *rc::gen::inRange(0, 7);
  const auto hi = makeUpper(lo);
  PastWindow window(which, lo, hi);
  for (const Sample& s : stream) {
    window.push(s.tick, robust(s.value));
    const std::int64_t first =
        hi ? std::max(stream.front().tick, s.tick - *hi) : stream.front().tick;
    RC_ASSERT(window.calc(s.tick).margin == extremeOver(stream, which, first, s.tick - lo));
  }
}

RC_GTEST_PROP(FutureWindowOracle, AgreesForEveryQuestion, ()) {
  const Stream stream = makeStream();
  const auto which = *rc::gen::element(Extreme::kLeast, Extreme::kMost);
  const std::int64_t lo = *rc::gen::inRange(0, 7);
  const auto hi = makeUpper(lo);
  FutureWindow window(which, lo, hi);
  std::vector<FutureWindow::Answer> answers;
  std::vector<std::int64_t> asked;
  const std::int64_t end = stream.back().tick;
  for (const Sample& s : stream) {
    while (const auto answer = window.takeAnswer(s.tick)) answers.push_back(*answer);
    window.push(s.tick, robust(s.value));
    if (*rc::gen::inRange(0, 2) == 0) continue;
    window.ask(s.tick);
    asked.push_back(s.tick);
  }
  while (const auto answer = window.takeCutAnswer(end)) answers.push_back(*answer);
  RC_ASSERT(answers.size() == asked.size());
  for (std::size_t k = 0; k < asked.size(); ++k) {
    const std::int64_t last = hi ? std::min(end, asked[k] + *hi) : end;
    RC_ASSERT(answers[k].asked == asked[k]);
    RC_ASSERT(answers[k].value.margin == extremeOver(stream, which, asked[k] + lo, last));
    RC_ASSERT(answers[k].cut == (!hi || asked[k] + *hi > end));
  }
}

RC_GTEST_PROP(SinceOracle, AgreesAtEverySample, ()) {
  const Stream stream = makeStream();
  const std::int64_t lo = *rc::gen::inRange(0, 7);
  const auto hi = makeUpper(lo);
  Since operation(lo, hi);
  for (std::size_t now = 0; now < stream.size(); ++now) {
    double best = -kInfinite;
    for (std::size_t start = 0; start <= now; ++start) {
      const std::int64_t age = stream[now].tick - stream[start].tick;
      if (age < lo || (hi && age > *hi)) continue;
      double value = stream[start].other;
      for (std::size_t k = start + 1; k <= now; ++k)
        value = std::min(value, double(stream[k].value));
      best = std::max(best, value);
    }
    const Robust got =
        operation.push(stream[now].tick, robust(stream[now].value), robust(stream[now].other));
    RC_ASSERT(got.margin == best);
  }
}

RC_GTEST_PROP(UntilOracle, AgreesForEveryStart, ()) {
  const Stream stream = makeStream();
  const std::int64_t lo = *rc::gen::inRange(0, 7);
  const auto hi = makeUpper(lo);
  for (std::size_t start = 0; start < stream.size(); ++start) {
    Until operation(stream[start].tick, lo, hi);
    double best = -kInfinite, least = kInfinite;
    for (std::size_t k = start; k < stream.size(); ++k) {
      operation.push(stream[k].tick, robust(stream[k].value), robust(stream[k].other));
      const std::int64_t age = stream[k].tick - stream[start].tick;
      if (age >= lo && (!hi || age <= *hi)) {
        best = std::max(best, std::min(least, double(stream[k].other)));
      }
      least = std::min(least, double(stream[k].value));
    }
    RC_ASSERT(operation.value().margin == best);
  }
}

TEST(WindowExtreme, CountsEverySampleOfOneTick) {
  PastWindow least(Extreme::kLeast, 0, 5);
  least.push(10, robust(3));
  least.push(10, robust(-1));
  least.push(10, robust(2));
  EXPECT_EQ(least.calc(10).margin, -1);
  least.push(16, robust(4));
  EXPECT_EQ(least.calc(15 + 1).margin, 2);  // the last of that tick holds until the next
}

TEST(FutureWindow, OfAnActCountsOnlyWhatComesAfterIt) {
  FutureWindow always(Extreme::kLeast, 0, 10);
  always.push(5, robust(-3));
  always.ask(5, true);
  always.push(5, robust(-2));  // the same tick again: the act has not been advanced yet
  always.push(6, robust(1));
  const auto answer = always.takeAnswer(16);
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->value.margin, 1);
}

}  // namespace
}  // namespace cabwright::marking
