// SPDX-License-Identifier: GPL-3.0-or-later
// What each family of rules waits for. Where a rule is judged at b, a copy is asked what it would
// say if b came now.
#include <algorithm>
#include <cmath>

#include "marking/monitors.h"

namespace cabwright::marking {
namespace {

using Found = std::optional<Outlook>;

Outlook waitFor(Waiting waiting, std::vector<std::string> what) {
  Outlook outlook;
  outlook.waiting = waiting;
  outlook.what = std::move(what);
  return outlook;
}

// Judged at b: nothing is missing, or these are.
Outlook waitForB(const CompiledRule& rule, bool good, std::vector<std::string> what) {
  Outlook outlook =
      good ? waitFor(Waiting::kReady, {}) : waitFor(Waiting::kMissing, std::move(what));
  outlook.before = rule.b.name;
  return outlook;
}

bool isGood(const Ruling& ruling) { return ruling.met || ruling.inside; }

void setMargin(const Robust& value, Outlook& outlook) {
  if (!std::isfinite(value.margin)) return;
  outlook.margin = value.margin;
  outlook.unit = value.unit;
}

// A time that ends: nothing can be done about it but what is asked.
void setDeadline(std::optional<std::int64_t> tick, Outlook& outlook) {
  outlook.deadline = tick;
  outlook.breaks_at = tick;
}

std::optional<std::int64_t> endOf(const CompiledRule& rule, std::int64_t asked) {
  return rule.hi ? std::optional(asked + *rule.hi + rule.slack) : std::nullopt;
}

}  // namespace

Found BeforeMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (rule.spec.first_only && judged_) return std::nullopt;
  BeforeMonitor copy = *this;
  const bool good = isGood(copy.judge(rule, scene));
  Outlook outlook = waitForB(rule, good, {rule.a.name});
  const auto youngest = copy.a_.youngest();
  if (!good && youngest && scene.tick < *youngest + rule.lo)
    outlook.good_from = *youngest + rule.lo;
  if (good && youngest) outlook.deadline = endOf(rule, *youngest);
  return outlook;
}

Found ResponseMonitor::look(const CompiledRule& rule, const Scene&) const {
  if (open_.empty()) return waitFor(Waiting::kResting, {rule.a.name});
  Outlook outlook = waitFor(Waiting::kComing, {rule.b.name});
  outlook.since = open_.front().tick;
  if (rule.lo > 0) outlook.good_from = open_.front().tick + rule.lo;
  setDeadline(endOf(rule, open_.front().tick), outlook);
  return outlook;
}

Found CountMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (done_) return std::nullopt;
  const bool during = !rule.during || scene.pool.value(*rule.during).holds;
  if (rule.spec.kind == RuleKind::kAbsence) {
    return during ? waitFor(Waiting::kAvoiding, {rule.a.name})
                  : waitFor(Waiting::kResting, {duringWords(rule)});
  }
  if (!active_) return waitFor(Waiting::kResting, {duringWords(rule)});
  Outlook outlook = waitFor(Waiting::kComing, {rule.a.name});
  outlook.since = start_;
  if (start_) setDeadline(endOf(rule, *start_), outlook);
  return outlook;
}

Found PairMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (rule.spec.kind == RuleKind::kNotSuccession) {
    const auto a = a_.youngest();
    if (!a || (rule.hi && scene.tick - *a > *rule.hi))
      return waitFor(Waiting::kResting, {rule.a.name});
    Outlook outlook = waitFor(Waiting::kAvoiding, {rule.b.name});
    outlook.since = a;
    outlook.deadline = rule.hi ? std::optional(*a + *rule.hi) : std::nullopt;
    return outlook;
  }
  if (!first_a_ && !first_b_) return waitFor(Waiting::kResting, {rule.a.name, rule.b.name});
  const bool together = rule.spec.kind == RuleKind::kCoExistence;
  Outlook outlook = waitFor(together ? Waiting::kComing : Waiting::kAvoiding,
                            {first_a_ ? rule.b.name : rule.a.name});
  outlook.since = first_a_ ? first_a_ : first_b_;
  return outlook;
}

// The first step not done, in front of the next that is not done either.
Found OrderMonitor::look(const CompiledRule& rule, const Scene&) const {
  std::vector<std::size_t> left;
  for (std::size_t k = 0; k < done_.size(); ++k) {
    if (!done_[k] && !named_[k]) left.push_back(k);
  }
  if (left.size() < 2) return std::nullopt;
  Outlook outlook = waitFor(Waiting::kMissing, {rule.steps[left[0]].name});
  outlook.before = rule.steps[left[1]].name;
  return outlook;
}

Found SequenceMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (rule.spec.first_only && judged_) return std::nullopt;
  std::vector<std::string> left;
  for (std::size_t k = next_; k < rule.steps.size(); ++k) left.push_back(rule.steps[k].name);
  return waitForB(rule, isGood(judge(rule, scene)), std::move(left));
}

Found AllBeforeMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (rule.spec.first_only && judged_) return std::nullopt;
  AllBeforeMonitor copy = *this;
  const bool good = isGood(copy.judge(rule, scene));
  std::vector<std::string> left;
  for (std::size_t k = 0; k < copy.done_.size(); ++k) {
    const auto when = copy.done_[k].oldest();
    const auto room = when ? calcRoom(scene.tick - *when, rule.lo, rule.hi) : std::nullopt;
    if (!when || (room && *room < 0)) left.push_back(rule.steps[k].name);
  }
  return waitForB(rule, good, std::move(left));
}

void SustainMonitor::follow(std::int64_t tick, const Robust& bad) {
  if (newer_ && tick - newer_->tick < kTrendTicks) return;
  older_ = newer_;
  newer_ = Sample{tick, -bad.margin};
}

// Where a margin that shrinks as it does now runs out; nobody can tell beyond ten minutes.
std::optional<std::int64_t> SustainMonitor::expectBreach(std::int64_t tick, double room) const {
  constexpr double kFarthestTicks = 60'000;
  if (!older_ || !std::isfinite(older_->room) || !std::isfinite(room) || room <= 0)
    return std::nullopt;
  const double lost = older_->room - room;
  const double in_ticks = room / lost * static_cast<double>(tick - older_->tick);
  if (lost <= 0 || in_ticks > kFarthestTicks) return std::nullopt;
  return tick + static_cast<std::int64_t>(in_ticks);
}

Found SustainMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (rule.during && !scene.pool.value(*rule.during).holds)
    return waitFor(Waiting::kResting, {duringWords(rule)});
  const bool limit = rule.spec.kind == RuleKind::kLimit;
  const Robust condition = calcStrict(rule, scene);
  const std::int64_t lasts = rule.hold + rule.slack;
  Outlook outlook = waitFor(since_  ? Waiting::kEnding
                            : limit ? Waiting::kKeeping
                                    : Waiting::kAvoiding,
                            {conditionWords(rule)});
  setMargin(limit ? condition : calcNot(condition), outlook);
  if (since_) {
    outlook.since = since_;
    setDeadline(*since_ + lasts, outlook);
  } else if (const auto at = expectBreach(scene.tick, outlook.margin.value_or(kInfinite))) {
    outlook.breaks_at = *at + lasts;
  }
  return outlook;
}

Found SignalBeforeMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (rule.spec.first_only && judged_) return std::nullopt;
  SignalBeforeMonitor copy = *this;
  Outlook outlook = waitForB(rule, isGood(copy.judge(rule, scene)), {conditionWords(rule)});
  setMargin(calcStrict(rule, scene), outlook);
  const bool waits = outlook.waiting == Waiting::kMissing && holds_since_;
  if (waits && rule.spec.kind == RuleKind::kHoldFor) outlook.good_from = *holds_since_ + rule.hold;
  return outlook;
}

Found SignalAfterMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (next_ >= open_.size()) return waitFor(Waiting::kResting, {rule.a.name});
  Outlook outlook = waitFor(reach_ ? Waiting::kComing : Waiting::kKeeping, {conditionWords(rule)});
  outlook.since = open_[next_].tick;
  setMargin(calcStrict(rule, scene), outlook);
  const auto end = endOf(rule, open_[next_].tick);
  if (reach_) {
    setDeadline(end, outlook);
  } else {
    outlook.deadline = rule.hi ? std::optional(open_[next_].tick + *rule.hi) : std::nullopt;
  }
  if (rule.lo > 0) outlook.good_from = open_[next_].tick + rule.lo;
  return outlook;
}

Found HoldUntilMonitor::look(const CompiledRule& rule, const Scene& scene) const {
  if (!strict_) return waitFor(Waiting::kResting, {rule.a.name});
  Outlook outlook = waitFor(Waiting::kKeeping, {conditionWords(rule)});
  outlook.before = rule.b.name;
  outlook.since = strict_->asked();
  setMargin(calcStrict(rule, scene), outlook);
  setDeadline(endOf(rule, strict_->asked()), outlook);
  return outlook;
}

Found FallToldMonitor::look(const CompiledRule& rule, const Scene&) const {
  if (rule.spec.first_only && judged_) return std::nullopt;
  Outlook outlook = waitForB(rule, start_.has_value(), {conditionWords(rule)});
  if (start_) outlook.since = start_->tick;
  return outlook;
}

}  // namespace cabwright::marking
