// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/window.h"

#include <algorithm>
#include <limits>

namespace cabwright::marking {
namespace {
constexpr std::int64_t kNoTick = std::numeric_limits<std::int64_t>::max();
}

std::optional<std::int64_t> calcRoom(std::int64_t distance, std::int64_t lo,
                                     std::optional<std::int64_t> hi) {
  if (lo == 0) return hi ? std::optional(*hi - distance) : std::nullopt;
  return hi ? std::min(distance - lo, *hi - distance) : distance - lo;
}

bool WindowExtreme::outlasts(const Robust& newer, const Robust& older) const {
  return which_ == Extreme::kLeast ? !isLess(older, newer) : !isLess(newer, older);
}

void WindowExtreme::push(std::int64_t tick, const Robust& value) {
  // The one before ends where this one starts; of two in one tick the earlier keeps its tick.
  Sample* before = !waiting_.empty()  ? &waiting_.back()
                   : !inside_.empty() ? &inside_.back()
                                      : nullptr;
  if (before != nullptr && before->to == kNoTick) before->to = std::max(before->from, tick - 1);
  waiting_.push_back({tick, kNoTick, value});
}

Robust WindowExtreme::calc(std::int64_t first, std::int64_t last) {
  while (!waiting_.empty() && waiting_.front().from <= last) {
    const Sample& sample = waiting_.front();
    while (!inside_.empty() && outlasts(sample.value, inside_.back().value)) inside_.pop_back();
    inside_.push_back(sample);
    waiting_.pop_front();
  }
  while (!inside_.empty() && inside_.front().to < first) inside_.pop_front();
  if (!inside_.empty() && first <= last) return inside_.front().value;
  return which_ == Extreme::kLeast ? Robust::always() : Robust::never();
}

void PastWindow::push(std::int64_t tick, const Robust& value) {
  if (!first_) first_ = tick;
  window_.push(tick, value);
}

Robust PastWindow::calc(std::int64_t tick) {
  const std::int64_t start = first_.value_or(tick);
  return window_.calc(hi_ ? std::max(tick - *hi_, start) : start, tick - lo_);
}

bool PastWindow::isComplete(std::int64_t tick) const {
  return first_ && (!hi_ || tick - *hi_ >= *first_);
}

void FutureWindow::ask(std::int64_t tick, bool from_next) {
  asked_.push_back({tick, tick, from_next});
}

void FutureWindow::push(std::int64_t tick, const Robust& value) {
  for (auto q = asked_.rbegin(); q != asked_.rend() && q->waits; ++q) {
    if (tick == q->asked) continue;  // the act has not been advanced yet
    q->not_before = tick;
    q->waits = false;
  }
  window_.push(tick, value);
  // Forget what no question, asked or to come, can reach.
  std::int64_t first = tick, last = tick;
  if (!asked_.empty()) {
    first = firstOf(asked_.front());
    if (hi_) last = std::min(last, asked_.front().asked + *hi_);
  }
  (void)window_.calc(first, last);
}

std::optional<FutureWindow::Answer> FutureWindow::takeAnswer(std::int64_t tick) {
  if (asked_.empty() || !hi_ || asked_.front().asked + *hi_ >= tick) return std::nullopt;
  const Question q = asked_.front();
  asked_.pop_front();
  if (q.waits) return Answer{q.asked, window_.calc(tick, q.asked + *hi_), false};
  return Answer{q.asked, window_.calc(firstOf(q), q.asked + *hi_), false};
}

std::optional<FutureWindow::Answer> FutureWindow::takeCutAnswer(std::int64_t tick) {
  if (asked_.empty()) return std::nullopt;
  const Question q = asked_.front();
  asked_.pop_front();
  const bool cut = !hi_ || q.asked + *hi_ > tick;
  const std::int64_t last = cut ? tick : q.asked + *hi_;
  return Answer{q.asked, window_.calc(q.waits ? last + 1 : firstOf(q), last), cut};
}

// Every start so far has to stand this a as well. Those it brings down become equal, and of equals
// only the latest matters: it stays in the window longest.
void Since::limitBy(const Robust& a) {
  std::optional<Start> limited;
  while (!starts_.empty() && isLess(a, starts_.front().value)) {
    limited = starts_.front();
    starts_.pop_front();
  }
  if (!limited) return;
  limited->value = a;
  if (starts_.empty() || isLess(starts_.front().value, a)) starts_.push_front(*limited);
}

void Since::admit(Start start) {
  // What held since then: a at the steps after it.
  start.value = calcAnd(start.value, least_a_.calc(start.step + 1, steps_));
  while (!starts_.empty() && !isLess(start.value, starts_.back().value)) starts_.pop_back();
  starts_.push_back(start);
}

Robust Since::push(std::int64_t tick, const Robust& a, const Robust& b) {
  ++steps_;
  least_a_.push(steps_, a);
  limitBy(a);
  waiting_.push_back({tick, steps_, b});
  return calc(tick);
}

Robust Since::calc(std::int64_t tick) {
  while (!waiting_.empty() && waiting_.front().tick <= tick - lo_) {
    admit(waiting_.front());
    waiting_.pop_front();
  }
  while (hi_ && !starts_.empty() && starts_.front().tick < tick - *hi_) starts_.pop_front();
  return starts_.empty() ? Robust::never() : starts_.front().value;
}

void Until::push(std::int64_t tick, const Robust& a, const Robust& b) {
  if (tick < asked_) return;
  const bool in_window = tick >= asked_ + lo_ && (!hi_ || tick <= asked_ + *hi_);
  if (in_window) best_ = calcOr(best_, calcAnd(b, least_a_));
  least_a_ = calcAnd(least_a_, a);
}

void Edge::push(const Robust& value) {
  rise_ = samples_ == 0 ? value : calcAnd(calcNot(before_), value);
  fall_ = samples_ == 0 ? calcNot(value) : calcAnd(before_, calcNot(value));
  before_ = value;
  if (samples_ < 2) ++samples_;
}

}  // namespace cabwright::marking
