// SPDX-License-Identifier: GPL-3.0-or-later
// Rules over whether, how often and in which order things happen.
#include <fmt/format.h>

#include <algorithm>

#include "marking/monitors.h"

namespace cabwright::marking {
namespace {

Ruling makeRuling(bool met, const Scene& scene, std::string reason) {
  Ruling ruling;
  ruling.met = met;
  ruling.tick = scene.tick;
  ruling.reason = std::move(reason);
  return ruling;
}

}  // namespace

void CountMonitor::passTime(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                            std::int64_t tick) {
  const bool absence = rule.spec.kind == RuleKind::kAbsence;
  if (absence || done_ || !active_ || !rule.hi || !start_) return;
  if (*start_ + *rule.hi + rule.slack < tick) {
    missExistence(rule, scene, ledger, *start_ + *rule.hi);
  }
}

void CountMonitor::missExistence(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                                 std::int64_t tick) {
  const int wanted = rule.spec.times.value_or(1);
  std::string text = count_ == 0
                         ? fmt::format("{} did not come", startOf(rule.a))
                         : fmt::format("{} came {} of {} times", startOf(rule.a), count_, wanted);
  Ruling ruling = makeRuling(false, scene, fmt::format("{} by {}.", text, clockText(tick)));
  ruling.tick = tick;
  ruling.inside = isInside(rule, scene);
  ledger.add(rule, scene, std::move(ruling));
  done_ = true;
  pending_bad_ = false;
}

void CountMonitor::countAbsence(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                                std::size_t way) {
  const int allowed = rule.spec.times.value_or(0);
  if (++count_ <= allowed) return;
  std::string reason = fmt::format("{} at {}", startOf(rule.a), clockText(scene.tick));
  if (allowed > 0) reason += fmt::format(", for the {}. time; {} allowed", count_, allowed);
  Ruling ruling = makeRuling(false, scene, reason + ".");
  ruling.inside = isInside(rule, scene);
  ruling.way = wayText(rule.a, way);
  ledger.add(rule, scene, std::move(ruling));
}

void CountMonitor::countExistence(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                                  std::size_t way) {
  const std::int64_t distance = scene.tick - *start_;
  if (done_ || distance < rule.lo) return;
  if (++count_ < rule.spec.times.value_or(1)) return;
  Ruling ruling =
      makeRuling(true, scene, fmt::format("{} at {}.", startOf(rule.a), clockText(scene.tick)));
  if (rule.hi) {
    ruling.met = distance <= *rule.hi;
    ruling.inside = !ruling.met;
    ruling.margin = toSeconds(*rule.hi - distance);
    ruling.unit = "s";
  }
  ruling.way = wayText(rule.a, way);
  ledger.add(rule, scene, std::move(ruling));
  ledger.settle();
  done_ = true;
  pending_bad_ = false;
}

void CountMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (!start_) start_ = scene.tick;
  const bool during = !rule.during || scene.pool.value(*rule.during).holds;
  active_ = active_ || during;
  if (!active_) return;
  ledger.exercise();
  const bool absence = rule.spec.kind == RuleKind::kAbsence;
  pending_bad_ = !absence && !done_;
  if (!during) return;
  const auto way = findWay(rule.a, scene);
  if (!way) return;
  if (absence) {
    countAbsence(rule, scene, ledger, *way);
  } else {
    countExistence(rule, scene, ledger, *way);
  }
}

void CountMonitor::finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (pending_bad_) missExistence(rule, scene, ledger, scene.tick);
}

void PairMonitor::seeCoExistence(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  const bool together = rule.spec.kind == RuleKind::kCoExistence;
  ledger.exercise();
  pending_bad_ = together && !(first_a_ && first_b_);
  if (!first_a_ || !first_b_) return;
  const std::string text = fmt::format("{} at {} and {} at {}.", startOf(rule.a),
                                       clockText(*first_a_), rule.b.name, clockText(*first_b_));
  Ruling ruling = makeRuling(together, scene, text);
  ruling.inside = !together && isInside(rule, scene);
  ledger.add(rule, scene, std::move(ruling));
  if (together) ledger.settle();
}

// b is judged before a is noted: a second a may be the b of the first.
void PairMonitor::seeSuccession(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                                std::optional<std::size_t> way) {
  const std::int64_t latest = scene.tick - rule.lo;
  a_.ripen(latest);
  if (const auto a = a_.oldest(); way && a) {
    const std::int64_t distance = scene.tick - *a;
    const bool too_young = distance < rule.lo;
    std::int64_t margin = too_young ? rule.lo - distance
                          : rule.hi ? distance - *rule.hi
                                    : -distance;
    if (const auto young = a_.above(latest)) {
      margin = std::min(margin, rule.lo - (scene.tick - *young));
    }
    // At the very end of the window it is still inside it.
    const bool met = too_young || (rule.hi && distance > *rule.hi);
    const std::string text = fmt::format("{} at {}, {} after {}.", startOf(rule.b),
                                         clockText(scene.tick), secondsText(distance), rule.a.name);
    Ruling ruling = makeRuling(met, scene, text);
    ruling.inside = !met && ((rule.hi && margin > -rule.slack) || isInside(rule, scene));
    if (rule.hi) {
      ruling.margin = toSeconds(margin);
      ruling.unit = "s";
    }
    ruling.way = wayText(rule.b, *way);
    ledger.add(rule, scene, std::move(ruling));
  }
  if (findWay(rule.a, scene)) {
    ledger.exercise();
    a_.push(scene.tick);
  }
}

void PairMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  const auto a_way = findWay(rule.a, scene);
  const auto b_way = findWay(rule.b, scene);
  if (rule.spec.kind == RuleKind::kNotSuccession) {
    if (a_way || b_way) seeSuccession(rule, scene, ledger, b_way);
    return;
  }
  const bool had_both = first_a_ && first_b_;
  if (a_way && !first_a_) first_a_ = scene.tick;
  if (b_way && !first_b_) first_b_ = scene.tick;
  if ((a_way || b_way) && !had_both) seeCoExistence(rule, scene, ledger);
}

void PairMonitor::finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (!pending_bad_) return;
  pending_bad_ = false;
  const CompiledEvent& came = first_a_ ? rule.a : rule.b;
  const CompiledEvent& missing = first_a_ ? rule.b : rule.a;
  Ruling ruling =
      makeRuling(false, scene,
                 fmt::format("{} at {}, but no {}.", startOf(came),
                             clockText(first_a_ ? *first_a_ : *first_b_), missing.name));
  ruling.inside = isInside(rule, scene);
  ledger.add(rule, scene, std::move(ruling));
}

void OrderMonitor::seeStep(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                           std::size_t step, std::size_t way) {
  if (done_[step]) return;
  done_[step] = scene.tick;
  const std::string when =
      fmt::format("{} at {}", startOf(rule.steps[step]), clockText(scene.tick));
  if (named_[step]) details_.push_back(when + ": too late.");
  std::string missing;
  for (std::size_t k = 0; k < step; ++k) {
    if (done_[k] || named_[k]) continue;
    named_[k] = true;
    details_.push_back(fmt::format("{}: before {}.", when, rule.steps[k].name));
    missing += (missing.empty() ? "" : ", ") + rule.steps[k].name;
  }
  if (step == 0) return;
  Ruling ruling = makeRuling(missing.empty(), scene, when + ", in its place.");
  if (!missing.empty()) {
    ruling.reason = fmt::format("{}, before {}.", when, missing);
    ruling.inside = isInside(rule, scene);
  }
  ruling.way = wayText(rule.steps[step], way);
  ledger.add(rule, scene, std::move(ruling));
}

void OrderMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  for (std::size_t k = 0; k < rule.steps.size(); ++k) {
    if (const auto way = findWay(rule.steps[k], scene)) seeStep(rule, scene, ledger, k, *way);
  }
}

std::vector<std::string> OrderMonitor::makeDetails(const CompiledRule& rule, bool finished) const {
  std::vector<std::string> details = details_;
  for (std::size_t k = 0; finished && k < named_.size(); ++k) {
    if (named_[k] && !done_[k]) details.push_back(startOf(rule.steps[k]) + ": never.");
  }
  return details;
}

}  // namespace cabwright::marking
