// SPDX-License-Identifier: GPL-3.0-or-later
// Past-time and future-time operators over a stream of margins with whole-tick bounds, closed at
// both ends (Maler and Nickovic 2004; robustness after Donze and Maler 2010). Samples may come at
// any distance: each holds until the next one. Several samples of one tick all count. Each step
// costs O(1) on average.
#pragma once

#include <algorithm>
#include <cstdint>
#include <deque>
#include <optional>
#include <vector>

#include "marking/robust.h"

namespace cabwright::marking {

/// How many ticks a distance between two events is inside a window (negative: outside), against the
/// ends the window has. One from 0 on has no near end that could be missed; without any end: none.
[[nodiscard]] std::optional<std::int64_t> calcRoom(std::int64_t distance, std::int64_t lo,
                                                   std::optional<std::int64_t> hi);

enum class Extreme : std::uint8_t { kLeast, kMost };

/// The least or most robust sample of a window whose two ends only move forward.
class WindowExtreme {
 public:
  explicit WindowExtreme(Extreme which) : which_(which) {}
  void push(std::int64_t tick, const Robust& value);
  /// Over the ticks from `first` to `last`, both included; the ends may not move back from one call
  /// to the next. Of an empty window: always for the least, never for the most.
  [[nodiscard]] Robust calc(std::int64_t first, std::int64_t last);

 private:
  struct Sample {
    std::int64_t from, to;  ///< ticks in which it counts
    Robust value;
  };
  [[nodiscard]] bool outlasts(const Robust& newer, const Robust& older) const;
  Extreme which_;
  std::deque<Sample> waiting_;  ///< not yet reached by the window
  std::deque<Sample> inside_;   ///< the ones that can still become the extreme, in order
};

/// Within lo to hi ticks before now: once (most) or historically (least). Windows are cut at the
/// first sample: what was before the run is not asked.
class PastWindow {
 public:
  /// No hi: back to the first sample.
  PastWindow(Extreme which, std::int64_t lo, std::optional<std::int64_t> hi)
      : window_(which), lo_(lo), hi_(hi) {}
  void push(std::int64_t tick, const Robust& value);
  /// At the tick of the last sample or, if nothing was pushed since, later.
  [[nodiscard]] Robust calc(std::int64_t tick);
  /// Whether samples reach back over the whole window. If not, "historically" only says that
  /// nothing is known to the contrary.
  [[nodiscard]] bool isComplete(std::int64_t tick) const;

 private:
  WindowExtreme window_;
  std::int64_t lo_;
  std::optional<std::int64_t> hi_;
  std::optional<std::int64_t> first_;
};

/// Within lo to hi ticks after each tick asked about: eventually (most) or always (least). An
/// answer falls when its window has passed, or at the end of the run with the window cut there.
class FutureWindow {
 public:
  struct Answer {
    std::int64_t asked = 0;
    Robust value;
    bool cut = false;  ///< the run ended inside the window
  };
  FutureWindow(Extreme which, std::int64_t lo, std::optional<std::int64_t> hi)
      : window_(which), lo_(lo), hi_(hi) {}
  /// Ticks never go back. `from_next`: only samples pushed from now on count, not the one that
  /// holds at this moment (an act that has yet to take effect).
  void ask(std::int64_t tick, bool from_next = false);
  void push(std::int64_t tick, const Robust& value);
  /// Answers whose window ends before `tick`; call it before pushing samples of that tick.
  [[nodiscard]] std::optional<Answer> takeAnswer(std::int64_t tick);
  /// At the end of the run, `tick` being its last: the rest.
  [[nodiscard]] std::optional<Answer> takeCutAnswer(std::int64_t tick);

 private:
  WindowExtreme window_;
  std::int64_t lo_;
  std::optional<std::int64_t> hi_;
  struct Question {
    std::int64_t asked;
    std::int64_t not_before;  ///< first tick that counts
    bool waits;               ///< for the next sample to say which tick that is
  };
  [[nodiscard]] std::int64_t firstOf(const Question& q) const {
    return std::max(q.asked + lo_, q.not_before);
  }
  std::deque<Question> asked_;
};

/// a since b: some b lo to hi ticks back, and a at every sample after it up to now. Judged at the
/// samples alone.
class Since {
 public:
  Since(std::int64_t lo, std::optional<std::int64_t> hi)
      : lo_(lo), hi_(hi), least_a_(Extreme::kLeast) {}
  /// One step; returns the value at it.
  Robust push(std::int64_t tick, const Robust& a, const Robust& b);
  /// The value at a later tick without a new sample.
  [[nodiscard]] Robust calc(std::int64_t tick);

 private:
  struct Start {
    std::int64_t tick;
    std::int64_t step;
    Robust value;
  };
  void limitBy(const Robust& a);
  void admit(Start start);
  std::int64_t lo_;
  std::optional<std::int64_t> hi_;
  std::int64_t steps_ = 0;
  WindowExtreme least_a_;      ///< over step numbers, for starts that were waiting
  std::deque<Start> waiting_;  ///< newer than lo
  std::deque<Start> starts_;   ///< from the best to the latest
};

/// a until b from one tick on: b comes lo to hi ticks after it, and a holds at every sample from it
/// up to, but without, that of b (half-open; the 2010 paper includes it). Judged at the samples.
class Until {
 public:
  Until(std::int64_t asked, std::int64_t lo, std::optional<std::int64_t> hi)
      : asked_(asked), lo_(lo), hi_(hi) {}
  void push(std::int64_t tick, const Robust& a, const Robust& b);
  [[nodiscard]] std::int64_t asked() const { return asked_; }
  [[nodiscard]] const Robust& value() const { return best_; }
  /// The least a so far, and whether b can still come in time.
  [[nodiscard]] const Robust& leastA() const { return least_a_; }
  [[nodiscard]] bool isOver(std::int64_t tick) const { return hi_ && tick > asked_ + *hi_; }

 private:
  std::int64_t asked_, lo_;
  std::optional<std::int64_t> hi_;
  Robust least_a_ = Robust::always();
  Robust best_ = Robust::never();
};

/// Beginning and ending of something. Before the first sample nothing was so: what holds at the
/// first sample begins there, and what does not ends there, as the published cases have it.
class Edge {
 public:
  void push(const Robust& value);
  [[nodiscard]] const Robust& rise() const { return rise_; }
  [[nodiscard]] const Robust& fall() const { return fall_; }
  /// False at the first sample.
  [[nodiscard]] bool hasBefore() const { return samples_ > 1; }

 private:
  int samples_ = 0;
  Robust before_, rise_, fall_;
};

}  // namespace cabwright::marking
