// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/run_events.h"

#include <algorithm>

#include "after/words.h"
#include "wording/sentences.h"

namespace cabwright::desk {

using fault::FaultStage;

namespace {

QString toQt(const std::string& words) { return QString::fromStdString(words); }

RunEvent makeEvent(const session::TimedAction& timed) {
  const unit::Action& action = timed.action;
  RunEvent event{timed.tick, EventKind::kOther, {}, false};
  if (action.actor == unit::Actor::kTrainee) event.kind = EventKind::kAct;
  if (action.actor == unit::Actor::kInstructor) {
    // Of a mark and an intervention all words are its name; a remark names first what it is of.
    const std::string rest =
        action.argument.empty() ? action.object : action.object + " " + action.argument;
    if (action.verb == "mark") {
      event.kind = EventKind::kMark;
      event.words = toQt(rest);
    } else if (action.verb == "intervene") {
      event.kind = EventKind::kIntervene;
      event.words = toQt(rest);
    } else if (action.verb == "remark") {
      event.kind = EventKind::kRemark;
      event.words = toQt(action.argument);
    }
  }
  if (event.words.isEmpty()) event.words = after::actText(unit::toText(action));
  return event;
}

RunEvent makeEvent(const marking::Mark& mark, const marking::RuleSpec& rule) {
  const EventKind kind = mark.met              ? EventKind::kMet
                         : mark.inside_tolerance ? EventKind::kForgiven
                                                 : EventKind::kBroken;
  return {mark.tick, kind, after::sheetWords(rule.title),
          kind == EventKind::kBroken && rule.rule_class == marking::RuleClass::kCritical};
}

bool isAtWork(FaultStage stage) {
  return stage == FaultStage::kGrowing || stage == FaultStage::kThere;
}

}  // namespace

QString faultName(const fault::FaultSpec& spec) {
  QString where = wording::translateEntry("Fault", toQt(spec.where));
  if (!where.isEmpty()) where[0] = where[0].toUpper();
  return where + QLatin1String(": ") + wording::translateEntry("Fault", toQt(spec.text));
}

void RunEvents::clear() { *this = {}; }

void RunEvents::add(RunEvent event) {
  const auto place = std::ranges::upper_bound(events_, event.tick, {}, &RunEvent::tick);
  events_.insert(place, std::move(event));
}

bool RunEvents::update(const session::LiveRun& run) {
  const std::size_t before = seen_actions_ + seen_marks_;
  const std::vector<session::TimedAction>& actions = run.actions();
  for (; seen_actions_ < actions.size(); ++seen_actions_)
    add(makeEvent(actions[seen_actions_]));
  const std::vector<marking::Mark>& marks = run.marker().marks();
  const auto& rules = run.marker().rules().rules();
  for (; seen_marks_ < marks.size(); ++seen_marks_)
    add(makeEvent(marks[seen_marks_], rules[marks[seen_marks_].rule].spec));
  const bool faults = updateFaults(run);
  began_ = true;
  return faults || seen_actions_ + seen_marks_ != before;
}

// The run does not say when a fault came; it is seen at the next look. One that was there already
// at the first look came at its time, if it has one.
bool RunEvents::updateFaults(const session::LiveRun& run) {
  const fault::ActiveFaults& active = run.run().faults();
  bool changed = false;
  for (std::size_t k = 0; k < active.armed().size(); ++k) {
    const fault::ArmedFault& fault = active.armed()[k];
    const FaultStage now = active.stage(k);
    if (k >= stages_.size()) stages_.push_back(FaultStage::kArmed);
    if (now == stages_[k]) continue;
    changed = true;
    if (isAtWork(now) && !isAtWork(stages_[k])) {
      const std::int64_t planned = fault.from.when ? 0 : fault.from.ticks;
      faults_.push_back({fault.id, faultName(*fault.spec),
                         began_ ? run.tick() : std::min(planned, run.tick()), {}, false});
    }
    const auto stay = std::ranges::find_if(
        faults_, [&fault](const FaultStay& s) { return s.id == fault.id && !s.to; });
    if (stay != faults_.end()) {
      stay->growing = now == FaultStage::kGrowing;
      if (!isAtWork(now)) stay->to = run.tick();
    }
    stages_[k] = now;
  }
  return changed;
}

}  // namespace cabwright::desk
