// SPDX-License-Identifier: GPL-3.0-or-later
// Walks a guide along with a run: which step is next, and what has been done.
//
// A step is done when its condition holds while it is the next one; at once if it holds already;
// or, with `anytime`, when it held at any time before. What its `acts` name has to be said or done
// while it is the next one, and what its `meanwhile` asks has to be true once then. A step with
// `when` is passed over unless that holds when its turn comes, and one with `past` if that does.
// What is done stays done.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "scenario/guide.h"
#include "session/record.h"

namespace cabwright::session {

enum class StepState : std::uint8_t { kAhead, kCurrent, kDone, kPassedOver };

class GuideWalk final : public Witness {
 public:
  explicit GuideWalk(scenario::Guide guide);

  void seeFrame(const unit::Frame& frame) override;
  void seeAction(const TimedAction&) override {}
  void seeHash(const StateHash&) override {}

  [[nodiscard]] const std::vector<scenario::GuideStep>& steps() const { return guide_.steps; }
  /// One for each step.
  [[nodiscard]] const std::vector<StepState>& states() const { return states_; }
  /// Tick at which each was done or passed over; -1 before.
  [[nodiscard]] const std::vector<std::int64_t>& ticks() const { return ticks_; }
  /// The step to do next; null before the first frame, after the last step, and without any.
  [[nodiscard]] const scenario::GuideStep* current() const;
  /// Of the step to do next what is still to be said or done: of its acts, and of what its `done`
  /// counts. Empty without one.
  [[nodiscard]] std::vector<unit::Phrase> openPhrases(const unit::Frame& frame) const;
  /// True if the step to do next points there and this part of it is still to be done: not if all
  /// that `done` asks of it holds.
  [[nodiscard]] bool isOpen(const scenario::GuidePoint& point, const unit::Frame& frame) const;
  /// How many are behind: done or passed over; progress is this of steps().size().
  [[nodiscard]] std::size_t behind() const { return next_; }
  [[nodiscard]] bool isDone() const { return next_ == guide_.steps.size(); }

 private:
  void goOn(const unit::Frame& frame);
  void begin(const unit::Frame& frame);
  [[nodiscard]] bool isActed(const scenario::GuideStep& step, unit::Phrase act,
                             const unit::Frame& frame) const;
  [[nodiscard]] bool hasActed(const scenario::GuideStep& step, const unit::Frame& frame) const;

  scenario::Guide guide_;
  std::vector<StepState> states_;
  std::vector<std::int64_t> ticks_;
  std::vector<bool> met_;  ///< of steps with anytime: it has held
  std::size_t next_ = 0;
  // Of the step that is next.
  std::vector<float> counts_;  ///< of each of its acts, when its turn came
  std::optional<unit::Frame> before_;
  bool was_so_ = false;  ///< its `meanwhile` has held
  std::vector<unit::Condition> terms_;
};

}  // namespace cabwright::session
