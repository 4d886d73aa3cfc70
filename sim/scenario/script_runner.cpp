// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/named_numbers.h"
#include "scenario/script.h"

namespace cabwright::scenario {

namespace {

// Longer than any way over the unit: somebody who never arrives is a fault of the script.
constexpr std::int64_t kLongestWalkTicks = 60'000;

std::string inSeconds(std::int64_t ticks) {
  return plant::shortNumber(static_cast<double>(ticks) / 100.0) + " s";
}

std::string valuesOf(const unit::Condition& condition, const unit::Frame& frame) {
  std::string text;
  for (unit::Signal s : condition.signals()) {
    const unit::SignalInfo& info = unit::signalInfo(s);
    text += text.empty() ? "" : ", ";
    text.append(info.name).append(" is ");
    text += plant::shortNumber(static_cast<double>(frame[s]));
    if (!info.unit.empty()) text.append(" ").append(info.unit);
  }
  return text;
}

}  // namespace

ScriptRunner::ScriptRunner(Script script) : script_(std::move(script)) {}

bool ScriptRunner::isDone() const { return fault_ || next_ >= script_.steps.size(); }

void ScriptRunner::fail(const ScriptStep& step, std::string what) {
  fault_ = FileFault{script_.placeOf(step), std::move(what)};
}

std::vector<ScriptRunner::Due> ScriptRunner::advance(const unit::Frame& frame) {
  std::vector<Due> due;
  while (!isDone()) {
    if (advanceStep(script_.steps[next_], frame, due) == Progress::kWaits) break;
    if (fault_) break;
    ++next_;
    since_ = frame.tick;
  }
  return due;
}

ScriptRunner::Progress ScriptRunner::advanceStep(const ScriptStep& step, const unit::Frame& frame,
                                                 std::vector<Due>& due) {
  const std::int64_t waited = frame.tick - since_;
  switch (step.kind) {
    case ScriptStep::Kind::kWait:
      return waited >= step.ticks ? Progress::kDone : Progress::kWaits;
    case ScriptStep::Kind::kWaitUntil:
      // An act of this very tick shows in the next Frame only.
      if (acted_at_ == frame.tick) return Progress::kWaits;
      if (step.condition.holds(frame)) return Progress::kDone;
      if (waited >= step.ticks) {
        fail(step, "waited " + inSeconds(waited) + " for '" + step.condition.text() + "'; at " +
                       inSeconds(frame.tick) + " " + valuesOf(step.condition, frame));
      }
      return Progress::kWaits;
    case ScriptStep::Kind::kAt:
      if (frame.tick < step.ticks) return Progress::kWaits;
      if (frame.tick > step.ticks) {
        fail(step, "this was to be done at " + inSeconds(step.ticks) + "; it is " +
                       inSeconds(frame.tick) + " already");
        return Progress::kWaits;
      }
      break;
    case ScriptStep::Kind::kAfter:
      if (waited < step.ticks) return Progress::kWaits;
      break;
    case ScriptStep::Kind::kThen: {
      const bool walks = last_ && last_->verb == "go" && last_->actor == unit::Actor::kTrainee &&
                         step.action.actor == unit::Actor::kTrainee;
      if (!walks) break;
      if (acted_at_ == frame.tick) return Progress::kWaits;
      if (frame[unit::Signal::kWalking] < 0.5f) break;
      if (waited > kLongestWalkTicks) fail(step, "the walk before this does not end");
      return Progress::kWaits;
    }
  }
  due.push_back({step.action, script_.placeOf(step)});
  last_ = step.action;
  acted_at_ = frame.tick;
  return Progress::kDone;
}

}  // namespace cabwright::scenario
