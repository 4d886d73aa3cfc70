// SPDX-License-Identifier: GPL-3.0-or-later
// Rules over signals alone. A breach has to last, so that a needle's flicker is none.
#include <fmt/format.h>

#include "marking/monitors.h"

namespace cabwright::marking {

SustainMonitor::SustainMonitor(const CompiledRule& rule)
    : breach_(Extreme::kLeast, 0, rule.hold), beyond_(Extreme::kLeast, 0, rule.hold + rule.slack) {}

void SustainMonitor::note(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                          bool inside) {
  Ruling ruling;
  ruling.met = false;
  ruling.inside = inside;
  ruling.tick = scene.tick;
  const bool limit = rule.spec.kind == RuleKind::kLimit;
  ruling.reason = fmt::format("From {}{}: {}", clockText(*since_), limit ? ", not kept" : "",
                              conditionWords(rule));
  if (rule.during) ruling.reason += fmt::format(", while {}", duringWords(rule));
  if (rule.hold > 0) ruling.reason += fmt::format(", for {} and more", secondsText(rule.hold));
  ruling.reason += ".";
  ledger.add(rule, scene, std::move(ruling));
}

void SustainMonitor::endBreach(std::int64_t tick) {
  if (noted_breach_ || noted_beyond_) corrected_after_ = tick - *since_;
  since_.reset();
  noted_breach_ = noted_beyond_ = false;
}

void SustainMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (scene.act != nullptr) return;
  const bool during = !rule.during || scene.pool.value(*rule.during).holds;
  if (during) ledger.exercise();
  const Robust condition = calcStrict(rule, scene);
  const bool limit = rule.spec.kind == RuleKind::kLimit;
  const Robust bad = !during ? Robust::never() : limit ? calcNot(condition) : condition;
  const Robust worse = rule.inside ? calcAnd(bad, calcNot(scene.pool.value(*rule.inside))) : bad;
  breach_.push(scene.tick, bad);
  beyond_.push(scene.tick, worse);
  follow(scene.tick, bad);
  if (!bad.holds && since_) endBreach(scene.tick);
  if (bad.holds && !since_) since_ = scene.tick;
  judge(rule, scene, ledger);
}

void SustainMonitor::judge(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  const Robust lasting = breach_.calc(scene.tick);
  const Robust beyond = beyond_.calc(scene.tick);
  // Before the run nothing was so: a window that reaches back beyond it is not filled.
  const bool is_breach = breach_.isComplete(scene.tick) && lasting.holds;
  const bool is_beyond = beyond_.isComplete(scene.tick) && beyond.holds;
  if (breach_.isComplete(scene.tick) && isLess(worst_, lasting)) {
    worst_ = lasting;
    ledger.setReadings(rule, scene.frame, scene.tick);
  }
  if (is_beyond && !noted_beyond_) {
    noted_breach_ = noted_beyond_ = true;
    corrected_after_.reset();
    note(rule, scene, ledger, false);
  } else if (is_breach && !noted_breach_) {
    noted_breach_ = true;
    corrected_after_.reset();
    note(rule, scene, ledger, true);
  }
}

std::optional<double> SustainMonitor::correctedAfterSeconds() const {
  if (!corrected_after_) return std::nullopt;
  return static_cast<double>(*corrected_after_) / 100.0;
}

}  // namespace cabwright::marking
