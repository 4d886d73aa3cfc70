// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/ledger.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

namespace cabwright::marking {

std::vector<Reading> makeReadings(const CompiledRule& rule, const unit::Frame& frame) {
  std::vector<Reading> readings;
  readings.reserve(rule.signals.size());
  for (unit::Signal signal : rule.signals) {
    Reading reading{signal, frame[signal], findCounterpart(signal), 0};
    if (reading.counterpart) reading.true_value = frame[*reading.counterpart];
    readings.push_back(reading);
  }
  return readings;
}

std::string secondsText(std::int64_t ticks) { return fmt::format("{} s", toSeconds(ticks)); }

std::string startOf(const CompiledEvent& event) {
  std::string name = event.name;
  if (!name.empty() && name.front() >= 'a' && name.front() <= 'z') {
    name.front() = static_cast<char>(name.front() - 'a' + 'A');
  }
  return name;
}

std::string allowedText(const CompiledRule& rule) {
  if (!rule.hi) return fmt::format("at least {}", secondsText(rule.lo));
  if (rule.lo == 0) return fmt::format("at most {}", secondsText(*rule.hi));
  return fmt::format("{} to {}", secondsText(rule.lo), secondsText(*rule.hi));
}

std::string conditionWords(const CompiledRule& rule) {
  const RuleSpec& spec = rule.spec;
  return spec.condition_name.empty() ? "'" + spec.condition + "'" : spec.condition_name;
}

std::string duringWords(const CompiledRule& rule) {
  const RuleSpec& spec = rule.spec;
  return spec.during_name.empty() ? "'" + spec.during + "'" : spec.during_name;
}

std::string wayText(const CompiledEvent& event, std::size_t way) {
  return event.ways.size() < 2 ? std::string() : event.ways[way].way.text;
}

void setRoom(std::optional<std::int64_t> room, Ruling& ruling) {
  if (!room) return;
  ruling.margin = toSeconds(*room);
  ruling.unit = "s";
}

Ledger::Rank Ledger::rankOf(const CompiledRule& rule, const Ruling& ruling) {
  if (ruling.met) return kKept;
  if (!ruling.inside) return kFull;
  return rule.spec.tolerance.falls_to ? kFallen : kForgiven;
}

// The worst decides; of several breaches the first, of several met ones the closest call.
bool Ledger::decides(Rank rank, const Ruling& ruling) const {
  if (rank != rank_) return rank > rank_;
  if (rank != kKept || !ruling.margin) return false;
  return !deciding_.margin || (ruling.unit == deciding_.unit && *ruling.margin < *deciding_.margin);
}

void Ledger::add(const CompiledRule& rule, const Scene& scene, Ruling ruling) {
  exercised_ = true;
  ++rulings_;
  const Rank rank = rankOf(rule, ruling);
  if (rank >= kFallen) ++broken_;
  new_marks_.push_back({ruling.tick, 0, rank < kFallen, ruling.inside});
  if (!decides(rank, ruling)) return;
  rank_ = rank;
  if (ruling.act.empty() && scene.act != nullptr) ruling.act = unit::toText(*scene.act);
  readings_ = makeReadings(rule, scene.frame);
  deciding_ = std::move(ruling);
}

void Ledger::setReadings(const CompiledRule& rule, const unit::Frame& frame, std::int64_t tick) {
  if (rank_ != kNothing) return;
  readings_ = makeReadings(rule, frame);
  deciding_.tick = tick;
}

std::vector<Mark> Ledger::takeMarks() { return std::exchange(new_marks_, {}); }

void Ledger::fillOutcome(const CompiledRule& rule, bool finished, bool pending_bad,
                         Verdict& v) const {
  v.is_final = finished || settled_ || rank_ == kFull;
  if (rank_ == kFull || rank_ == kFallen) {
    v.outcome = Outcome::kBroken;
  } else if (!finished && pending_bad) {
    v.outcome = Outcome::kPendingBad;
  } else if (exercised_) {
    v.outcome = finished || settled_ ? Outcome::kMet : Outcome::kPendingGood;
  } else if (finished && rule.spec.must_occur) {
    v.outcome = Outcome::kBroken;
    v.reason = "It never came to this, and it had to.";
  }
}

Verdict Ledger::makeVerdict(const CompiledRule& rule, bool finished, bool pending_bad) const {
  Verdict v;
  fillOutcome(rule, finished, pending_bad, v);
  v.judged_as = rule.spec.rule_class;
  if (rank_ == kFallen) v.judged_as = *rule.spec.tolerance.falls_to;
  const auto& repeated = rule.spec.repeated;
  if (repeated && broken_ >= repeated->times && v.judged_as < repeated->counts_as) {
    v.judged_as = repeated->counts_as;
  }
  v.tick = deciding_.tick;
  v.inside_tolerance = rank_ == kForgiven || rank_ == kFallen;
  if (deciding_.margin && std::isfinite(*deciding_.margin)) v.margin = deciding_.margin;
  v.unit = deciding_.unit;
  if (!deciding_.reason.empty()) v.reason = deciding_.reason;
  if (v.inside_tolerance) v.reason += " Inside the tolerance: " + rule.spec.tolerance.text + ".";
  if (broken_ > 1) {
    v.reason += fmt::format(" The first of {} times.", broken_);
  } else if (rank_ == kKept && deciding_.margin && rulings_ > 1) {
    v.reason += fmt::format(" The closest of {} times.", rulings_);
  }
  v.act = deciding_.act;
  v.way = deciding_.way;
  v.readings = readings_;
  v.times_exercised = rulings_;
  v.times_broken = broken_;
  return v;
}

}  // namespace cabwright::marking
