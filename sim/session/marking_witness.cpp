// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/marking_witness.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace cabwright::session {
namespace {

unit::Signal itemSignal(const std::string& what, unit::Item item) {
  // The signals of the items stand in a row in the order of the item table.
  const auto first = static_cast<std::size_t>(
      *unit::findSignal(what + std::string(unit::itemTable().front().name)));
  return static_cast<unit::Signal>(first + unit::indexOf(item));
}

std::optional<marking::RuleClass> toRuleClass(unit::DefectClass rank) {
  switch (rank) {
    case unit::DefectClass::kNone:
      return std::nullopt;
    case unit::DefectClass::kTechnical:
      return marking::RuleClass::kTechnique;
    case unit::DefectClass::kSerious:
      return marking::RuleClass::kSerious;
    case unit::DefectClass::kCritical:
      return marking::RuleClass::kCritical;
  }
  return std::nullopt;
}

std::string firstWord(const std::string& text) { return text.substr(0, text.find(' ')); }

bool isTrainee(const unit::Action& action) { return action.actor == unit::Actor::kTrainee; }

}  // namespace

MarkingWitness::MarkingWitness(MarkingTerms terms)
    : terms_(std::move(terms)), marker_(terms_.rules), aim_(terms_.aim) {
  for (const unit::Setting& setting : terms_.hidden)
    if (const auto item = unit::findItem(setting.name))
      items_[unit::indexOf(*item)].hidden = firstWord(setting.value);
}

unit::DefectClass MarkingWitness::defectNow(unit::Item item) const {
  if (!last_) return unit::DefectClass::kNone;
  const float value = (*last_)[itemSignal("true.", item)];
  return static_cast<unit::DefectClass>(std::clamp(static_cast<int>(value), 0, 3));
}

// In words: the one put in, or else the one that follows from the world as it is.
std::string MarkingWitness::conditionNow(unit::Item item) const {
  const ItemTruth& truth = items_[unit::indexOf(item)];
  if (!truth.hidden.empty()) return truth.hidden;
  const auto& conditions = unit::itemInfo(item).conditions;
  const auto shown = static_cast<std::size_t>(last_ ? (*last_)[itemSignal("shows.", item)] : 0.0F);
  return shown > 0 && shown <= conditions.size() ? conditions[shown - 1].name : "good";
}

// What the thing shows by itself is told by this; null: it is sound, or what it shows was put on
// it.
const unit::LiveTest* MarkingWitness::findLiveTest(unit::Item item) const {
  const auto& conditions = unit::itemInfo(item).conditions;
  const auto shown = std::ranges::find(conditions, conditionNow(item), &unit::ItemCondition::name);
  return shown != conditions.end() && shown->live ? &*shown->live : nullptr;
}

// What it shows follows from a control the scenario has put where it stands.
bool MarkingWitness::isStaged(unit::Item item) const {
  if (!items_[unit::indexOf(item)].hidden.empty()) return false;
  const unit::LiveTest* live = findLiveTest(item);
  if (live == nullptr || live->of != unit::LiveTest::Of::kSignal) return false;
  const std::string_view control = unit::signalInfo(live->signal).name;
  return std::ranges::any_of(terms_.staged,
                             [&](const unit::Setting& s) { return s.name == control; });
}

// A machine part's number tells what it shows, not where a control stands: no hand of the trainee
// brought that about.
bool MarkingWitness::isMachineAtFault(unit::Item item) const {
  const unit::LiveTest* live = findLiveTest(item);
  return live != nullptr && live->of != unit::LiveTest::Of::kSignal &&
         defectNow(item) != unit::DefectClass::kNone;
}

void MarkingWitness::comeTo(unit::Place place) {
  for (const unit::ItemInfo& info : unit::itemTable())
    if (info.place == place && isMachineAtFault(info.id)) items_[unit::indexOf(info.id)].met = true;
}

void MarkingWitness::seeFrame(const unit::Frame& frame) {
  const bool is_first = !last_;
  const auto placeIn = [](const unit::Frame& f) { return std::lround(f[unit::Signal::kPlace]); };
  const long place = placeIn(frame);  // from 1; 0 on the way
  const bool has_come = last_ && place > 0 && place != placeIn(*last_);
  marker_.seeFrame(frame);
  judgements_.seeFrame(frame);
  aim_.seeFrame(frame);
  last_ = frame;
  if (is_first)
    for (const unit::ItemInfo& info : unit::itemTable())
      items_[unit::indexOf(info.id)].at_start =
          isStaged(info.id) ? unit::DefectClass::kNone : defectNow(info.id);
  if (has_come) comeTo(static_cast<unit::Place>(place - 1));
  const bool within = frame[unit::Signal::kTrueValid] > 0.5F;
  if (within_model_ && !within)
    notes_.limits_met.push_back(
        {frame.tick, "the machine left the range the model was checked in"});
  within_model_ = within;
}

void MarkingWitness::noteCondition(const unit::Action& action) {
  const auto item = unit::findItem(action.object);
  if (!item) return;
  ItemTruth& truth = items_[unit::indexOf(*item)];
  const std::string name = firstWord(action.argument);
  truth.hidden = name == "good" ? "" : name;
  truth.put_in = !truth.hidden.empty();
}

void MarkingWitness::notePace(std::int64_t tick, const unit::Pace& pace) {
  const unit::Pace before = pace_;
  pace_ = pace;
  if (pace == before) return;
  if (pace.rate == 0.0) return notes_.freezes.push_back({tick, "frozen"});
  notes_.paces.push_back({tick, std::string(pace.word)});
}

// What the instructor does that changes nothing in the world.
bool MarkingWitness::noteDesk(const TimedAction& timed) {
  const unit::Action& action = timed.action;
  if (const auto pace = findPaceOf(action)) {
    notePace(timed.tick, *pace);
  } else if (const auto reason = findIntervention(action)) {
    notes_.interventions.push_back({timed.tick, *reason});
    if (!unaided_) unaided_ = Unaided{{timed.tick, marker_.verdicts()}, makeJudgements()};
  } else if (const auto text = findRemark(action)) {
    auto& notes = action.object == kTakenAgain ? notes_.taken_again
                  : action.object == "general" ? notes_.remarks
                                               : notes_.prompts;
    const bool named = action.object == kTakenAgain || action.object == kPrompt;
    notes.push_back({timed.tick, named ? action.argument : *text});
  } else {
    return false;
  }
  return true;
}

void MarkingWitness::seeAction(const TimedAction& timed) {
  const unit::Action& action = timed.action;
  marker_.seeAction(timed.tick, action);
  judgements_.seeAction(timed.tick, action);
  if (noteDesk(timed)) return;
  constexpr std::array<std::string_view, 5> kPutsIn{"condition", "fault", "tooth", "arm", "clear"};
  if (action.actor == unit::Actor::kScenario && action.verb == "remark") {
    notes_.faults.push_back({timed.tick, action.argument});
  } else if (!isTrainee(action) && std::ranges::find(kPutsIn, action.verb) != kPutsIn.end()) {
    notes_.faults.push_back({timed.tick, unit::toText(action)});
    if (action.verb == "condition") noteCondition(action);
  } else if (isTrainee(action) && action.verb == "judge") {
    const auto item = unit::findItem(action.object);
    if (!item) return;
    items_[unit::indexOf(*item)].at_judgement = defectNow(*item);
    items_[unit::indexOf(*item)].judged_condition = conditionNow(*item);
  }
}

void MarkingWitness::finish(std::int64_t tick) { marker_.finish(tick); }

// A judgement is held against what was so when it was made. Of things nobody judged those count
// that were wrong from the start, were put wrong, or failed before the trainee came to them, and
// still are: what the trainee's own hands changed on the way is the business of rules, and so is
// what one does about a thing that fails while one drives.
std::vector<marking::TruthRow> MarkingWitness::makeTruth() const {
  std::vector<marking::TruthRow> rows;
  for (const unit::ItemInfo& info : unit::itemTable()) {
    const ItemTruth& truth = items_[unit::indexOf(info.id)];
    if (truth.at_judgement) {
      rows.push_back(
          {std::string(info.name), truth.judged_condition, toRuleClass(*truth.at_judgement)});
      continue;
    }
    const unit::DefectClass now = defectNow(info.id);
    const bool stands = truth.put_in || truth.met || truth.at_start != unit::DefectClass::kNone;
    if (stands && now != unit::DefectClass::kNone)
      rows.push_back({std::string(info.name), conditionNow(info.id), toRuleClass(now)});
  }
  return rows;
}

marking::JudgementTable MarkingWitness::makeJudgements() const {
  return judgements_.makeTable(makeTruth(), terms_.judgement_policy);
}

marking::MarkSheet MarkingWitness::makeSheet(marking::SheetHead head) const {
  for (const unit::Setting& setting : terms_.hidden)
    head.faults.push_back({0, setting.name + " " + setting.value});
  std::ranges::stable_sort(head.faults, {}, &marking::SheetNote::tick);
  head.last_tick = std::max(head.last_tick, last_ ? last_->tick : 0);
  using Notes = std::vector<marking::SheetNote> marking::SheetHead::*;
  using Head = marking::SheetHead;
  for (const Notes notes :
       {&Head::faults, &Head::freezes, &Head::paces, &Head::prompts, &Head::interventions,
        &Head::remarks, &Head::taken_again, &Head::limits_met})
    (head.*notes).insert((head.*notes).end(), (notes_.*notes).begin(), (notes_.*notes).end());
  return marking::makeSheet(head, terms_.pass, *terms_.rules, marker_.verdicts(),
                            unaided_ ? unaided_->judgements : makeJudgements(),
                            terms_.judgement_policy, aim_.result(),
                            unaided_ ? std::optional(unaided_->part) : std::nullopt);
}

}  // namespace cabwright::session
