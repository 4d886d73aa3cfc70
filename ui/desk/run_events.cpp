// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/run_events.h"

#include <algorithm>

#include "after/words.h"
#include "session/desk_actions.h"

namespace cabwright::desk {

using fault::FaultStage;

namespace {

QString toQt(const std::string& words) { return QString::fromStdString(words); }

RunEvent makeEvent(const session::TimedAction& timed) {
  const unit::Action& action = timed.action;
  RunEvent event{timed.tick, EventKind::kOther, {}, false};
  if (action.actor == unit::Actor::kTrainee) event.kind = EventKind::kAct;
  if (const auto name = session::findMarkName(action)) {
    event.kind = EventKind::kMark;
    event.words = toQt(*name);
  } else if (const auto why = session::findIntervention(action)) {
    event.kind = EventKind::kIntervene;
    event.words = toQt(*why);
  } else if (const auto remark = session::findRemark(action)) {
    event.kind = EventKind::kRemark;
    event.words = toQt(*remark);
  }
  if (event.words.isEmpty()) event.words = after::actText(unit::toText(action));
  return event;
}

RunEvent makeEvent(const marking::Mark& mark, const marking::RuleSpec& rule) {
  const EventKind kind = mark.met                ? EventKind::kMet
                         : mark.inside_tolerance ? EventKind::kForgiven
                                                 : EventKind::kBroken;
  return {mark.tick, kind, after::sheetWords(rule.title),
          kind == EventKind::kBroken && rule.rule_class == marking::RuleClass::kCritical};
}

bool isAtWork(FaultStage stage) {
  return stage == FaultStage::kGrowing || stage == FaultStage::kThere;
}

}  // namespace

void RunEvents::clear() { *this = {}; }

void RunEvents::add(RunEvent event) {
  const auto place = std::ranges::upper_bound(events_, event.tick, {}, &RunEvent::tick);
  events_.insert(place, std::move(event));
}

bool RunEvents::update(const session::LiveRun& run) {
  const std::size_t before = seen_actions_ + seen_marks_;
  const std::vector<session::TimedAction>& actions = run.actions();
  for (; seen_actions_ < actions.size(); ++seen_actions_) add(makeEvent(actions[seen_actions_]));
  const std::vector<marking::Mark>& marks = run.marker().marks();
  const auto& rules = run.marker().rules().rules();
  for (; seen_marks_ < marks.size(); ++seen_marks_)
    add(makeEvent(marks[seen_marks_], rules[marks[seen_marks_].rule].spec));
  const bool faults = updateFaults(run);
  return faults || seen_actions_ + seen_marks_ != before;
}

bool RunEvents::updateFaults(const session::LiveRun& run) {
  const std::vector<session::FaultEvent>& log = run.faultLog();
  const bool changed = seen_faults_ < log.size();
  for (; seen_faults_ < log.size(); ++seen_faults_) {
    const session::FaultEvent& event = log[seen_faults_];
    const auto stay = std::ranges::find_if(
        faults_, [&event](const FaultStay& s) { return s.id == event.id && !s.to; });
    if (isAtWork(event.stage)) {
      if (stay == faults_.end()) {
        faults_.push_back({event.id,
                           after::faultName(*event.spec),
                           event.tick,
                           {},
                           event.stage == FaultStage::kGrowing});
      } else {
        stay->growing = event.stage == FaultStage::kGrowing;
      }
    } else if (event.stage == FaultStage::kCleared && stay != faults_.end()) {
      stay->to = event.tick;
    }
  }
  return changed;
}

}  // namespace cabwright::desk
