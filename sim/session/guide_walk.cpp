// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/guide_walk.h"

#include <algorithm>
#include <string>
#include <utility>

namespace cabwright::session {
namespace {

using unit::Control;
using unit::Signal;

bool reads(const unit::Condition& term, std::string_view name) {
  return std::ranges::any_of(term.signals(),
                             [name](Signal s) { return unit::signalInfo(s).name == name; });
}

// What `done` reads of a thing it does not name: a handle in the desk, a key in its lock.
std::string_view sittingOf(unit::Object thing, unit::Place cab) {
  const bool first = cab == unit::Place::kCab1;
  if (thing == unit::Object::kBrakeHandle)
    return first ? "cab1.has_brake_handle" : "cab2.has_brake_handle";
  if (thing == unit::Object::kReversingLever)
    return first ? "cab1.has_reverser" : "cab2.has_reverser";
  if (thing == unit::Object::kControlKey) return first ? "cab1.key" : "cab2.key";
  return {};
}

// The signals by which a step is known to be done there.
std::vector<std::string> namesOf(const scenario::GuidePoint& point) {
  if (const auto* item = std::get_if<unit::Item>(&point))
    return {"judged." + std::string(unit::itemInfo(*item).name)};
  if (const auto* place = std::get_if<unit::Place>(&point))
    return {std::string(unit::placeInfo(*place).name) + ".seen"};
  if (const auto* signal = std::get_if<Signal>(&point))
    return {std::string(unit::signalInfo(*signal).name)};
  if (const auto* thing = std::get_if<unit::Object>(&point)) {
    std::vector<std::string> names{"carried." + std::string(unit::objectInfo(*thing).name)};
    for (const unit::Place cab : {unit::Place::kCab1, unit::Place::kCab2})
      if (const auto sitting = sittingOf(*thing, cab); !sitting.empty())
        names.emplace_back(sitting);
    return names;
  }
  const std::string name(unit::controlInfo(std::get<Control>(point)).name);
  std::vector<std::string> names{name};
  if (name.ends_with(".brake")) names.push_back(name.substr(0, 4) + ".has_brake_handle");
  if (name.ends_with(".reverser")) names.push_back(name.substr(0, 4) + ".has_reverser");
  return names;
}

}  // namespace

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
  goOn(frame);
  before_ = frame;
}

void GuideWalk::goOn(const unit::Frame& frame) {
  for (std::size_t k = next_; k < guide_.steps.size(); ++k) {
    const scenario::GuideStep& step = guide_.steps[k];
    if (step.anytime && !met_[k] && step.done.holds(frame)) met_[k] = true;
  }
  for (; next_ < guide_.steps.size(); ++next_) {
    const scenario::GuideStep& step = guide_.steps[next_];
    const bool begins = states_[next_] == StepState::kAhead;
    if (begins) begin(frame);
    const bool passed_over =
        (step.when && !step.when->holds(frame)) || (begins && step.past && step.past->holds(frame));
    was_so_ = was_so_ || !step.meanwhile || step.meanwhile->holds(frame);
    const bool done = (met_[next_] || step.done.holds(frame)) && was_so_ && hasActed(step, frame);
    if (!passed_over && !done) {
      states_[next_] = StepState::kCurrent;
      return;
    }
    states_[next_] = passed_over ? StepState::kPassedOver : StepState::kDone;
    ticks_[next_] = frame.tick;
  }
}

// What was said before its turn came was for something else; before the first Frame nothing was. In
// the very Frame in which the step before it was done, what that one did not ask for is for this.
void GuideWalk::begin(const unit::Frame& frame) {
  const scenario::GuideStep& step = guide_.steps[next_];
  const std::vector<unit::Phrase> none;
  const auto& used = next_ > 0 ? guide_.steps[next_ - 1].acts : none;
  was_so_ = false;
  counts_.clear();
  for (const unit::Phrase act : step.acts) {
    const bool is_used = std::ranges::find(used, act) != used.end();
    const unit::Frame* from = is_used ? &frame : before_ ? &*before_ : nullptr;
    counts_.push_back(from != nullptr ? (*from)[scenario::countOf(act)] : 0);
  }
  terms_ = step.done.terms();
}

// Named twice, twice: each is one crossing, or one start.
bool GuideWalk::isActed(const scenario::GuideStep& step, unit::Phrase act,
                        const unit::Frame& frame) const {
  const auto first = std::ranges::find(step.acts, act);
  if (first == step.acts.end()) return true;
  const auto times = static_cast<float>(std::ranges::count(step.acts, act));
  const float before = counts_[static_cast<std::size_t>(first - step.acts.begin())];
  return frame[scenario::countOf(act)] >= before + times;
}

bool GuideWalk::hasActed(const scenario::GuideStep& step, const unit::Frame& frame) const {
  return std::ranges::all_of(step.acts,
                             [&](unit::Phrase act) { return isActed(step, act, frame); });
}

std::vector<unit::Phrase> GuideWalk::openPhrases(const unit::Frame& frame) const {
  std::vector<unit::Phrase> open;
  const scenario::GuideStep* step = current();
  if (step == nullptr) return open;
  for (const unit::PhraseInfo& info : unit::phraseTable()) {
    bool is_open = !isActed(*step, info.id, frame);
    const std::string name(info.name);
    for (const unit::Condition& term : terms_)
      is_open = is_open ||
                (!term.holds(frame) && (reads(term, "said." + name) || reads(term, "did." + name) ||
                                        reads(term, "answered." + name)));
    if (is_open) open.push_back(info.id);
  }
  return open;
}

bool GuideWalk::isOpen(const scenario::GuidePoint& point, const unit::Frame& frame) const {
  const scenario::GuideStep* step = current();
  if (step == nullptr || std::ranges::find(step->points, point) == step->points.end()) return false;
  bool named = false;
  for (const unit::Condition& term : terms_) {
    for (const std::string& name : namesOf(point)) {
      if (!reads(term, name)) continue;
      named = true;
      if (!term.holds(frame)) return true;
    }
  }
  return !named;
}

}  // namespace cabwright::session
