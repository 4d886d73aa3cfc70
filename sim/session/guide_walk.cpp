// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/guide_walk.h"

#include <utility>

namespace cabwright::session {

GuideWalk::GuideWalk(scenario::Guide guide)
    : guide_(std::move(guide)),
      states_(guide_.steps.size(), StepState::kAhead),
      ticks_(guide_.steps.size(), -1),
      met_(guide_.steps.size(), false) {}

const scenario::GuideStep* GuideWalk::current() const {
  if (isDone() || states_[next_] != StepState::kCurrent) return nullptr;
  return &guide_.steps[next_];
}

void GuideWalk::seeFrame(const unit::Frame& frame) {
  for (std::size_t k = next_; k < guide_.steps.size(); ++k) {
    const scenario::GuideStep& step = guide_.steps[k];
    if (step.anytime && !met_[k] && step.done.holds(frame)) met_[k] = true;
  }
  for (; next_ < guide_.steps.size(); ++next_) {
    const scenario::GuideStep& step = guide_.steps[next_];
    const bool passed_over = step.when && !step.when->holds(frame);
    if (!passed_over && !met_[next_] && !step.done.holds(frame)) {
      states_[next_] = StepState::kCurrent;
      return;
    }
    states_[next_] = passed_over ? StepState::kPassedOver : StepState::kDone;
    ticks_[next_] = frame.tick;
  }
}

}  // namespace cabwright::session
