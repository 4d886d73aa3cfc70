// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/marker.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "marking/monitors.h"

namespace cabwright::marking {
namespace {

constexpr std::size_t kMostMarks = 10'000;

}  // namespace

Monitor makeMonitor(const CompiledRule& rule) {
  switch (rule.spec.kind) {
    case RuleKind::kPrecedence:
    case RuleKind::kAlternatePrecedence:
    case RuleKind::kChainPrecedence:
      return BeforeMonitor(rule);
    case RuleKind::kResponse:
    case RuleKind::kAlternateResponse:
      return ResponseMonitor(rule);
    case RuleKind::kAbsence:
    case RuleKind::kExistence:
      return CountMonitor(rule);
    case RuleKind::kCoExistence:
    case RuleKind::kNotCoExistence:
    case RuleKind::kNotSuccession:
      return PairMonitor(rule);
    case RuleKind::kOrder:
      return OrderMonitor(rule);
    case RuleKind::kSequence:
      return SequenceMonitor(rule);
    case RuleKind::kAllBefore:
      return AllBeforeMonitor(rule);
    case RuleKind::kNeverWhile:
    case RuleKind::kLimit:
      return SustainMonitor(rule);
    case RuleKind::kHoldFor:
    case RuleKind::kOnceWithin:
    case RuleKind::kHeldSince:
      return SignalBeforeMonitor(rule);
    case RuleKind::kHoldAfter:
    case RuleKind::kReachWithin:
      return SignalAfterMonitor(rule);
    case RuleKind::kFallTold:
      return FallToldMonitor(rule);
    case RuleKind::kHoldUntil:
      break;
  }
  return HoldUntilMonitor(rule);
}

struct Marker::State {
  struct Track {
    Monitor monitor;
    Ledger ledger;
  };

  explicit State(std::shared_ptr<const RuleSet> set)
      : rules(std::move(set)), pool(rules->conditions().size()) {
    for (const CompiledRule& rule : rules->rules()) tracks.push_back({makeMonitor(rule), {}});
  }

  template <typename Call>
  void forEach(Call call) {
    for (std::size_t k = 0; k < tracks.size(); ++k) {
      const CompiledRule& rule = rules->rules()[k];
      std::visit([&](auto& monitor) { call(monitor, rule, tracks[k].ledger); }, tracks[k].monitor);
      for (Mark mark : tracks[k].ledger.takeMarks()) {
        mark.rule = k;
        if (marks.size() < kMostMarks) marks.push_back(mark);
      }
    }
  }

  // Ticks never go back; deadlines that end before this one are over, on the evidence so far.
  std::int64_t enterTick(std::int64_t tick) {
    if (tick <= now) return now;
    if (seen) {
      const Scene scene{now, nullptr, pool, frame};
      forEach([&](auto& monitor, const CompiledRule& rule, Ledger& ledger) {
        monitor.passTime(rule, scene, ledger, tick);
      });
    }
    return now = tick;
  }

  void advance(const unit::Action* act) {
    seen = true;
    const Scene scene{now, act, pool, frame};
    forEach([&](auto& monitor, const CompiledRule& rule, Ledger& ledger) {
      monitor.advance(rule, scene, ledger);
    });
  }

  [[nodiscard]] Verdict makeVerdict(std::size_t k) const {
    const CompiledRule& rule = rules->rules()[k];
    const Track& track = tracks[k];
    const bool bad = std::visit([](const auto& m) { return m.isPendingBad(); }, track.monitor);
    Verdict verdict = track.ledger.makeVerdict(rule, finished, bad);
    if (const auto* order = std::get_if<OrderMonitor>(&track.monitor)) {
      verdict.details = order->makeDetails(rule, finished);
    }
    if (const auto* sustain = std::get_if<SustainMonitor>(&track.monitor)) {
      finishSustained(*sustain, verdict);
    }
    if (verdict.reason.empty()) verdict.reason = wordsFor(verdict.outcome);
    return verdict;
  }

  // The margin of a rule over signals is the least of the whole run.
  static void finishSustained(const SustainMonitor& sustain, Verdict& verdict) {
    const Robust& worst = sustain.worst();
    if (std::isfinite(worst.margin)) {
      verdict.margin = -worst.margin;
      verdict.unit = worst.unit;
    }
    verdict.corrected_after_s = sustain.correctedAfterSeconds();
  }

  static std::string wordsFor(Outcome outcome) {
    switch (outcome) {
      case Outcome::kNotExercised:
        return "It did not come to this.";
      case Outcome::kPendingGood:
        return "Kept so far.";
      case Outcome::kPendingBad:
        return "Still to come.";
      case Outcome::kMet:
        return "Kept to the end.";
      case Outcome::kBroken:
        break;
    }
    return "Not kept.";
  }

  std::shared_ptr<const RuleSet> rules;
  ConditionPool pool;
  std::vector<Track> tracks;
  std::vector<Mark> marks;
  unit::Frame frame{};
  std::int64_t now = 0;
  bool seen = false, finished = false;
};

Marker::Marker(std::shared_ptr<const RuleSet> rules)
    : state_(std::make_unique<State>(std::move(rules))) {}
Marker::Marker(const Marker& other) : state_(std::make_unique<State>(*other.state_)) {}
Marker::Marker(Marker&&) noexcept = default;
Marker& Marker::operator=(const Marker& other) {
  if (this != &other) state_ = std::make_unique<State>(*other.state_);
  return *this;
}
Marker& Marker::operator=(Marker&&) noexcept = default;
Marker::~Marker() = default;

void Marker::seeFrame(const unit::Frame& frame) {
  if (state_->finished) return;
  state_->enterTick(frame.tick);
  state_->frame = frame;
  state_->pool.see(frame, *state_->rules);
  state_->advance(nullptr);
}

void Marker::seeAction(std::int64_t tick, const unit::Action& action) {
  if (state_->finished) return;
  state_->enterTick(tick);
  state_->advance(&action);
}

void Marker::finish(std::int64_t tick) {
  if (state_->finished) return;
  state_->enterTick(tick);
  const Scene scene{state_->now, nullptr, state_->pool, state_->frame};
  state_->forEach([&](auto& monitor, const CompiledRule& rule, Ledger& ledger) {
    monitor.finish(rule, scene, ledger);
  });
  state_->finished = true;
}

bool Marker::isFinished() const { return state_->finished; }
const RuleSet& Marker::rules() const { return *state_->rules; }
const std::vector<Mark>& Marker::marks() const { return state_->marks; }

std::vector<Outlook> Marker::outlook() const {
  std::vector<Outlook> outlooks;
  if (!state_->seen || state_->finished) return outlooks;
  const Scene scene{state_->now, nullptr, state_->pool, state_->frame};
  for (std::size_t k = 0; k < state_->tracks.size(); ++k) {
    const CompiledRule& rule = state_->rules->rules()[k];
    const auto& track = state_->tracks[k];
    const bool bad = std::visit([](const auto& m) { return m.isPendingBad(); }, track.monitor);
    const Verdict verdict = track.ledger.makeVerdict(rule, false, bad);
    if (verdict.is_final) continue;
    auto found = std::visit([&](const auto& m) { return m.look(rule, scene); }, track.monitor);
    if (!found) continue;
    found->rule = k;
    found->rule_class = rule.spec.rule_class;
    found->outcome = verdict.outcome;
    outlooks.push_back(std::move(*found));
  }
  sortByNearness(outlooks);
  return outlooks;
}

std::vector<Verdict> Marker::verdicts() const {
  std::vector<Verdict> verdicts;
  verdicts.reserve(state_->tracks.size());
  for (std::size_t k = 0; k < state_->tracks.size(); ++k) {
    verdicts.push_back(state_->makeVerdict(k));
  }
  return verdicts;
}

}  // namespace cabwright::marking
