// SPDX-License-Identifier: GPL-3.0-or-later
// Rules that ask for something after a: final when it comes, or when its time is over.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "marking/monitors.h"

namespace cabwright::marking {
namespace {

std::string startText(const CompiledRule& rule, std::int64_t tick) {
  return fmt::format("{} at {}", startOf(rule.a), clockText(tick));
}

}  // namespace

void ResponseMonitor::passTime(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                               std::int64_t tick) {
  while (rule.hi && !open_.empty() && open_.front().tick + *rule.hi + rule.slack < tick) {
    const Open open = std::move(open_.front());
    open_.pop_front();
    Ruling ruling;
    ruling.met = false;
    ruling.inside = open.early || isInside(rule, scene);
    ruling.tick = open.tick + *rule.hi;
    ruling.reason = fmt::format("{}. Not done within {} of it: {}.", startText(rule, open.tick),
                                secondsText(*rule.hi), rule.b.name);
    if (open.early) ruling.reason += " It came too early.";
    ruling.act = open.act;
    ledger.add(rule, scene, std::move(ruling));
  }
}

void ResponseMonitor::close(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                            std::size_t way) {
  while (!open_.empty() && open_.front().tick + rule.lo <= scene.tick) {
    const std::int64_t distance = scene.tick - open_.front().tick;
    Ruling ruling;
    ruling.met = !rule.hi || distance <= *rule.hi;
    ruling.inside = !ruling.met;
    ruling.tick = scene.tick;
    setRoom(calcRoom(distance, rule.lo, rule.hi), ruling);
    ruling.reason = fmt::format("{}, {} {} after.", startText(rule, open_.front().tick),
                                rule.b.name, secondsText(distance));
    ruling.way = wayText(rule.b, way);
    open_.pop_front();
    ledger.add(rule, scene, std::move(ruling));
  }
  for (auto open = open_.rbegin(); open != open_.rend(); ++open) {
    if (open->tick + rule.lo - rule.slack <= scene.tick && rule.slack > 0) open->early = true;
  }
}

void ResponseMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (findWay(rule.a, scene)) {
    if (rule.spec.kind == RuleKind::kAlternateResponse && !open_.empty()) {
      Ruling ruling;
      ruling.met = false;
      ruling.inside = isInside(rule, scene);
      ruling.tick = scene.tick;
      ruling.reason =
          fmt::format("{}. Not done yet after the one at {}: {}.", startText(rule, scene.tick),
                      clockText(open_.front().tick), rule.b.name);
      open_.clear();
      ledger.add(rule, scene, std::move(ruling));
    }
    open_.push_back({scene.tick, scene.act ? unit::toText(*scene.act) : std::string(), false});
    ledger.exercise();
  }
  if (const auto way = findWay(rule.b, scene)) close(rule, scene, ledger, *way);
}

void ResponseMonitor::finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  for (const Open& open : open_) {
    Ruling ruling;
    ruling.met = false;
    ruling.inside = open.early;
    ruling.tick = scene.tick;
    ruling.reason = fmt::format("{}. Not done before the run ended at {}: {}.",
                                startText(rule, open.tick), clockText(scene.tick), rule.b.name);
    ruling.act = open.act;
    ledger.add(rule, scene, std::move(ruling));
  }
  open_.clear();
}

// Loosened by its tolerance, reaching may come a little outside its window, and holding may begin a
// little late.
SignalAfterMonitor::SignalAfterMonitor(const CompiledRule& rule)
    : reach_(rule.spec.kind == RuleKind::kReachWithin),
      strict_(reach_ ? Extreme::kMost : Extreme::kLeast, rule.lo, rule.hi),
      loose_(reach_ ? Extreme::kMost : Extreme::kLeast,
             reach_ ? std::max<std::int64_t>(0, rule.lo - rule.slack) : rule.lo + rule.slack,
             reach_ && rule.hi ? std::optional(*rule.hi + rule.slack) : rule.hi) {}

void SignalAfterMonitor::ask(const CompiledRule& rule, const Scene& scene, std::size_t way) {
  // What is to be kept after an act is judged once the act can have taken effect.
  const bool from_next = !reach_ && scene.act != nullptr;
  strict_.ask(scene.tick, from_next);
  loose_.ask(scene.tick, from_next);
  open_.push_back({scene.tick, scene.act ? unit::toText(*scene.act) : std::string(),
                   wayText(rule.a, way), from_next, false});
}

void SignalAfterMonitor::closeReached(const CompiledRule& rule, const Scene& scene,
                                      Ledger& ledger) {
  if (!calcStrict(rule, scene).holds) return;
  for (; next_ < open_.size() && open_[next_].tick + rule.lo <= scene.tick; ++next_) {
    Open& open = open_[next_];
    const std::int64_t distance = scene.tick - open.tick;
    if (rule.hi && distance > *rule.hi) continue;  // only the slack is left
    open.closed = true;
    Ruling ruling;
    ruling.tick = scene.tick;
    setRoom(calcRoom(distance, rule.lo, rule.hi), ruling);
    ruling.reason =
        fmt::format("{}. Asked after it: {}; reached {} after.", startText(rule, open.tick),
                    conditionWords(rule), secondsText(distance));
    ruling.way = open.way;
    ruling.act = open.act;
    ledger.add(rule, scene, std::move(ruling));
  }
}

void SignalAfterMonitor::closeFailed(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  const Robust loose = calcLoose(rule, scene);
  if (loose.holds) return;
  for (; next_ < open_.size(); ++next_) {
    Open& open = open_[next_];
    const std::int64_t distance = scene.tick - open.tick;
    if (distance < rule.lo + rule.slack || (open.from_next && distance == 0)) return;
    open.closed = true;
    Ruling ruling;
    ruling.met = false;
    ruling.tick = scene.tick;
    if (std::isfinite(loose.margin)) ruling.margin = loose.margin;
    ruling.unit = loose.unit;
    ruling.reason =
        fmt::format("{}. Asked after it: {}; not kept, {} after.", startText(rule, open.tick),
                    conditionWords(rule), secondsText(distance));
    ruling.way = open.way;
    ruling.act = open.act;
    ledger.add(rule, scene, std::move(ruling));
  }
}

void SignalAfterMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (scene.act == nullptr) {
    strict_.push(scene.tick, calcStrict(rule, scene));
    loose_.push(scene.tick, calcLoose(rule, scene));
  }
  const auto way = findWay(rule.a, scene);
  if (way) {
    ledger.exercise();
    ask(rule, scene, *way);
  }
  if (reach_) closeReached(rule, scene, ledger);
  if (!reach_ && scene.act == nullptr) closeFailed(rule, scene, ledger);
}

void SignalAfterMonitor::pairAnswers(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                                     const FutureWindow::Answer& loose) {
  const FutureWindow::Answer strict = strict_answers_.front();
  strict_answers_.pop_front();
  const Open open = std::move(open_.front());
  open_.pop_front();
  if (next_ > 0) --next_;
  if (open.closed) return;
  Ruling ruling;
  ruling.met = strict.value.holds;
  ruling.inside = !ruling.met && hasTolerance(rule) && loose.value.holds;
  ruling.tick = strict.cut || !rule.hi ? scene.tick : open.tick + *rule.hi;
  if (std::isfinite(strict.value.margin)) ruling.margin = strict.value.margin;
  ruling.unit = strict.value.unit;
  const std::string_view how =
      reach_ ? (ruling.met ? "reached" : "not reached") : (ruling.met ? "kept" : "not kept");
  ruling.reason = fmt::format("{}. Asked after it: {}; {}{}.", startText(rule, open.tick),
                              conditionWords(rule), how,
                              strict.cut ? " before the run ended"
                              : rule.hi  ? " within " + secondsText(*rule.hi)
                                         : "");
  ruling.way = open.way;
  ruling.act = open.act;
  ledger.add(rule, scene, std::move(ruling));
}

void SignalAfterMonitor::passTime(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                                  std::int64_t tick) {
  while (const auto answer = strict_.takeAnswer(tick)) strict_answers_.push_back(*answer);
  while (const auto answer = loose_.takeAnswer(tick)) pairAnswers(rule, scene, ledger, *answer);
}

void SignalAfterMonitor::finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  while (const auto answer = strict_.takeCutAnswer(scene.tick)) strict_answers_.push_back(*answer);
  while (const auto answer = loose_.takeCutAnswer(scene.tick)) {
    pairAnswers(rule, scene, ledger, *answer);
  }
}

void HoldUntilMonitor::close(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                             Ruling ruling) {
  const Robust least = ruling.met ? strict_->value() : strict_->leastA();
  if (std::isfinite(least.margin) && !ruling.margin) {
    ruling.margin = least.margin;
    ruling.unit = least.unit;
  }
  ruling.act = act_;
  ledger.add(rule, scene, std::move(ruling));
  strict_.reset();
  loose_.reset();
}

void HoldUntilMonitor::passTime(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                                std::int64_t tick) {
  if (!loose_ || !loose_->isOver(tick)) return;
  Ruling ruling;
  ruling.met = false;
  ruling.tick = strict_->asked() + *rule.hi;
  ruling.reason =
      fmt::format("{}. Not done within {} of it: {}.", startText(rule, strict_->asked()),
                  secondsText(*rule.hi), rule.b.name);
  close(rule, scene, ledger, std::move(ruling));
}

void HoldUntilMonitor::seeStep(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                               std::optional<std::size_t> b_way) {
  const Robust b = b_way ? Robust::always() : Robust::never();
  strict_->push(scene.tick, calcStrict(rule, scene), b);
  loose_->push(scene.tick, calcLoose(rule, scene), b);
  const std::int64_t distance = scene.tick - strict_->asked();
  Ruling ruling;
  ruling.tick = scene.tick;
  if (strict_->value().holds) {
    ruling.reason = fmt::format("{}. Asked after it: {}; kept until {}, {} after.",
                                startText(rule, strict_->asked()), conditionWords(rule),
                                rule.b.name, secondsText(distance));
    ruling.way = b_way ? wayText(rule.b, *b_way) : std::string();
    close(rule, scene, ledger, std::move(ruling));
  } else if (loose_->value().holds) {
    // Good enough for the tolerance; the strict one can no longer be met by this b.
    ruling.met = false;
    ruling.inside = true;
    ruling.reason = fmt::format("{}. Asked until {}, {} after: {}; not quite kept.",
                                startText(rule, strict_->asked()), rule.b.name,
                                secondsText(distance), conditionWords(rule));
    close(rule, scene, ledger, std::move(ruling));
  } else if (!loose_->leastA().holds) {
    ruling.met = false;
    ruling.reason = fmt::format("{}. Asked until {}: {}; it failed {} after.",
                                startText(rule, strict_->asked()), rule.b.name,
                                conditionWords(rule), secondsText(distance));
    close(rule, scene, ledger, std::move(ruling));
  }
}

void HoldUntilMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  const bool opens = !strict_ && findWay(rule.a, scene);
  if (opens) {
    ledger.exercise();
    const std::int64_t slack = rule.slack;
    strict_.emplace(scene.tick, rule.lo, rule.hi);
    loose_.emplace(scene.tick, std::max<std::int64_t>(0, rule.lo - slack),
                   rule.hi ? std::optional(*rule.hi + slack) : std::nullopt);
    by_act_ = scene.act != nullptr;
    act_ = by_act_ ? unit::toText(*scene.act) : std::string();
  }
  if (!strict_) return;
  const auto b_way = findWay(rule.b, scene);
  // An act of a takes effect in the next tick: what is to be kept counts from there.
  if (by_act_ && scene.tick == strict_->asked() && !b_way) return;
  if (scene.act == nullptr || b_way) seeStep(rule, scene, ledger, b_way);
}

void HoldUntilMonitor::finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (!strict_) return;
  Ruling ruling;
  ruling.met = false;
  ruling.tick = scene.tick;
  ruling.reason =
      fmt::format("{}. Not done before the run ended at {}: {}.", startText(rule, strict_->asked()),
                  clockText(scene.tick), rule.b.name);
  close(rule, scene, ledger, std::move(ruling));
}

}  // namespace cabwright::marking
