// SPDX-License-Identifier: GPL-3.0-or-later
// Rules that are judged when b comes, on what was before: final at that moment.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "marking/monitors.h"

namespace cabwright::marking {
void RecentTimes::ripen(std::int64_t latest) {
  while (ticks_.size() >= 2 && ticks_[1] <= latest) ticks_.pop_front();
}

std::optional<std::int64_t> RecentTimes::above(std::int64_t latest) const {
  const auto found = std::upper_bound(ticks_.begin(), ticks_.end(), latest);
  return found == ticks_.end() ? std::nullopt : std::optional(*found);
}

// How far from a to b, against the window. The a that is nearest below lo is the best one; one that
// is too young can be inside the slack.
Ruling BeforeMonitor::judge(const CompiledRule& rule, const Scene& scene) {
  Ruling ruling;
  ruling.tick = scene.tick;
  const std::string when = fmt::format("{} at {}", startOf(rule.b), clockText(scene.tick));
  const std::int64_t latest = scene.tick - rule.lo;
  a_.ripen(latest);
  const auto oldest = a_.oldest();
  if (!oldest) {
    ruling.met = false;
    ruling.inside = isInside(rule, scene);
    ruling.reason =
        last_b_ ? fmt::format("{}. Not done since the last time, at {}: {}.", when,
                              clockText(*last_b_), rule.a.name)
                : fmt::format("{}. Not done {}: {}.", when,
                              rule.spec.kind == RuleKind::kChainPrecedence ? "right before it"
                                                                           : "before it",
                              rule.a.name);
    return ruling;
  }
  const std::int64_t distance = scene.tick - *oldest;
  auto room = calcRoom(distance, rule.lo, rule.hi);
  if (const auto young = a_.above(latest); room && *room < 0 && young) {
    room = std::max(room, calcRoom(scene.tick - *young, rule.lo, rule.hi));
  }
  ruling.met = !room || *room >= 0;
  ruling.inside = !ruling.met && (*room >= -rule.slack || isInside(rule, scene));
  setRoom(room, ruling);
  ruling.reason = fmt::format("{}, {} {} before.", when, rule.a.name, secondsText(distance));
  if (!ruling.met) {
    ruling.reason.pop_back();
    ruling.reason += fmt::format("; asked: {}.", allowedText(rule));
  }
  return ruling;
}

void BeforeMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (const auto way = findWay(rule.a, scene)) {
    a_.ripen(scene.tick - rule.lo);
    a_.push(scene.tick);
    last_a_way_ = wayText(rule.a, *way);
  }
  const auto way = findWay(rule.b, scene);
  if (!way) {
    // What a chain must not have between; of these events only, or any lamp test would break it.
    for (const CompiledEvent& between : rule.steps) {
      if (findWay(between, scene)) a_.clear();
    }
    return;
  }
  if (!rule.spec.first_only || !judged_) {
    Ruling ruling = judge(rule, scene);
    ruling.way = ruling.met ? last_a_way_ : wayText(rule.b, *way);
    ledger.add(rule, scene, std::move(ruling));
  }
  judged_ = true;
  last_b_ = scene.tick;
  // An a is good for one b.
  if (rule.spec.kind != RuleKind::kPrecedence) a_.clear();
}

SignalBeforeMonitor::SignalBeforeMonitor(const CompiledRule& rule)
    : strict_(makePast(rule, 0)), loose_(makePast(rule, rule.slack)) {}

SignalBeforeMonitor::Past SignalBeforeMonitor::makePast(const CompiledRule& rule,
                                                        std::int64_t slack) {
  const std::int64_t lo = std::max<std::int64_t>(0, rule.lo - slack);
  const auto hi = rule.hi ? std::optional(*rule.hi + slack) : std::nullopt;
  switch (rule.spec.kind) {
    case RuleKind::kHoldFor:
      return PastWindow(Extreme::kLeast, 0, std::max<std::int64_t>(0, rule.hold - slack));
    case RuleKind::kOnceWithin:
      return PastWindow(Extreme::kMost, lo, hi);
    default:
      return Since(lo, hi);
  }
}

void SignalBeforeMonitor::push(const CompiledRule& rule, const Scene& scene, bool a_comes) {
  const Robust a = a_comes ? Robust::always() : Robust::never();
  const Robust strict = calcStrict(rule, scene);
  const auto pushOne = [&](Past& past, const Robust& value) {
    if (auto* window = std::get_if<PastWindow>(&past)) {
      window->push(scene.tick, value);
      (void)window->calc(scene.tick);  // forgets what no b to come can reach
    } else {
      std::get<Since>(past).push(scene.tick, value, a);
    }
  };
  pushOne(strict_, strict);
  pushOne(loose_, calcLoose(rule, scene));
  if (!strict.holds) holds_since_.reset();
  if (strict.holds && !holds_since_) holds_since_ = scene.tick;
}

// The value now; of hold_for only if it is known for the whole time asked.
Robust SignalBeforeMonitor::calc(Past& past, std::int64_t tick, bool whole) {
  if (auto* since = std::get_if<Since>(&past)) return since->calc(tick);
  auto& window = std::get<PastWindow>(past);
  Robust value = window.calc(tick);
  if (whole && !window.isComplete(tick)) value.holds = false;
  return value;
}

// The time it has held, or, where none is asked or it does not hold at all, the value.
void SignalBeforeMonitor::judgeHoldFor(const CompiledRule& rule, const Scene& scene,
                                       Ruling& ruling) const {
  if (rule.hold == 0 || !holds_since_) {
    ruling.reason += ruling.met ? ". So it was." : ". It was not so.";
    return;
  }
  const std::int64_t held = scene.tick - *holds_since_;
  ruling.margin = toSeconds(held - rule.hold);
  ruling.unit = "s";
  ruling.reason +=
      fmt::format(", for {}. It had been so for {}.", secondsText(rule.hold), secondsText(held));
}

Ruling SignalBeforeMonitor::judge(const CompiledRule& rule, const Scene& scene) {
  const bool whole = rule.spec.kind == RuleKind::kHoldFor;
  const Robust strict = calc(strict_, scene.tick, whole);
  const Robust loose = calc(loose_, scene.tick, whole);
  Ruling ruling;
  ruling.tick = scene.tick;
  ruling.met = strict.holds;
  ruling.inside = !strict.holds && hasTolerance(rule) && loose.holds;
  if (std::isfinite(strict.margin)) ruling.margin = strict.margin;
  ruling.unit = strict.unit;
  ruling.reason = fmt::format("{} at {}. Asked before it: {}", startOf(rule.b),
                              clockText(scene.tick), conditionWords(rule));
  if (whole) {
    judgeHoldFor(rule, scene, ruling);
  } else if (rule.spec.kind == RuleKind::kOnceWithin) {
    ruling.reason += ruling.met ? ". It had been so." : ". It had not been so in time.";
  } else if (!last_a_) {
    ruling.reason += fmt::format(", ever since {}. That had not been.", rule.a.name);
  } else {
    ruling.reason += fmt::format(", ever since {}, last at {}. It was {}.", rule.a.name,
                                 clockText(*last_a_), ruling.met ? "kept" : "not kept");
  }
  return ruling;
}

void SignalBeforeMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  const bool a_comes = findWay(rule.a, scene).has_value();
  if (scene.act == nullptr || a_comes) push(rule, scene, a_comes);
  if (a_comes) last_a_ = scene.tick;
  if (!findWay(rule.b, scene) || (rule.spec.first_only && judged_)) return;
  judged_ = true;
  ledger.add(rule, scene, judge(rule, scene));
}

}  // namespace cabwright::marking
