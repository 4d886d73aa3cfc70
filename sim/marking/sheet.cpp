// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

namespace cabwright::marking {
namespace {

SheetLine makeLine(const CompiledRule& rule, std::size_t number, Verdict verdict) {
  SheetLine line;
  line.rule = number;
  line.id = rule.spec.id;
  line.phase = rule.spec.phase;
  line.title = rule.spec.title;
  line.why = rule.spec.reason;
  line.advice = rule.spec.advice;
  line.tolerance = rule.spec.tolerance.text;
  line.rule_class = rule.spec.rule_class;
  line.reads = rule.spec.reads;
  line.weight = rule.spec.weight;
  line.verdict = std::move(verdict);
  return line;
}

// The unaided part is over, so what was kept in it is met; what was still open nobody can tell.
Verdict endUnaided(Verdict verdict) {
  if (verdict.outcome == Outcome::kPendingGood) verdict.outcome = Outcome::kMet;
  if (verdict.outcome == Outcome::kPendingBad) {
    verdict.outcome = Outcome::kNotExercised;
    verdict.reason = "Not decided when the instructor stepped in.";
    verdict.times_exercised = 0;
  }
  verdict.is_final = true;
  return verdict;
}

SheetLine makeLineUnaided(const CompiledRule& rule, std::size_t number, const Verdict& unaided,
                          const Verdict& whole) {
  SheetLine line = makeLine(rule, number, endUnaided(unaided));
  const bool more = whole.outcome != line.verdict.outcome &&
                    whole.outcome != Outcome::kPendingGood && whole.outcome != Outcome::kPendingBad;
  if (more) line.aided_outcome = whole.outcome;
  return line;
}

// Headings in the order asked for, then as the rules name them.
std::vector<std::string> makePhases(const PassRule& pass, const RuleSet& rules) {
  std::vector<std::string> phases = pass.phases;
  for (const CompiledRule& rule : rules.rules()) {
    if (std::find(phases.begin(), phases.end(), rule.spec.phase) == phases.end()) {
      phases.push_back(rule.spec.phase);
    }
  }
  return phases;
}

std::int64_t timeOf(const SheetLine& line) {
  const bool has_time = line.verdict.times_exercised > 0;
  return has_time ? line.verdict.tick : std::numeric_limits<std::int64_t>::max();
}

// Criticals first, broken ones at the top; then phase by phase; inside a phase by time.
void sortLines(std::vector<SheetLine>& lines, const std::vector<std::string>& phases) {
  const auto keyOf = [&](const SheetLine& line) {
    const bool critical = line.rule_class == RuleClass::kCritical;
    const auto phase = std::find(phases.begin(), phases.end(), line.phase) - phases.begin();
    const bool broken = line.verdict.outcome == Outcome::kBroken;
    return std::tuple(critical ? 0 : 1, critical ? (broken ? 0 : 1) : phase, timeOf(line));
  };
  std::stable_sort(lines.begin(), lines.end(),
                   [&](const SheetLine& a, const SheetLine& b) { return keyOf(a) < keyOf(b); });
  for (std::size_t k = 0; k < lines.size(); ++k) lines[k].number = static_cast<int>(k) + 1;
}

bool countsAsBroken(const SheetLine& line) {
  return line.void_reason.empty() && line.outcome() == Outcome::kBroken;
}

bool isCriticalBreach(const SheetLine& line) {
  return countsAsBroken(line) && line.verdict.judged_as == RuleClass::kCritical;
}

class Settler {
 public:
  Settler(MarkSheet& sheet, const RuleSet& rules) : sheet_(sheet), rules_(rules) {
    line_of_rule_.resize(rules.rules().size());
    for (std::size_t k = 0; k < sheet.lines.size(); ++k) line_of_rule_[sheet.lines[k].rule] = k;
  }

  void settle() {
    for (SheetLine& line : sheet_.lines) line.follows_line = findCause(line);
    sheet_.totals = {};
    for (SheetLine& line : sheet_.lines) settleLine(line);
    settleTotals();
    settleDecision();
  }

 private:
  std::optional<int> findCause(const SheetLine& line) const {
    if (!countsAsBroken(line)) return std::nullopt;
    for (std::size_t cause : rules_.rules()[line.rule].follows) {
      const SheetLine& other = sheet_.lines[line_of_rule_[cause]];
      if (countsAsBroken(other)) return other.number;
    }
    return std::nullopt;
  }

  // Counted once means: with the line it follows from. But a critical breach that follows from a
  // lesser one fails the run all the same.
  bool failsRun(const SheetLine& line) const {
    if (!isCriticalBreach(line)) return false;
    const SheetLine* at = &line;
    while (at->follows_line) {
      at = &sheet_.lines[static_cast<std::size_t>(*at->follows_line) - 1];
      if (isCriticalBreach(*at)) return false;
    }
    return true;
  }

  void settleLine(SheetLine& line) {
    SheetTotals& totals = sheet_.totals;
    line.possible = line.earned = 0;
    line.fails_run = failsRun(line);
    if (!line.void_reason.empty()) {
      ++totals.voided;
      return;
    }
    if (line.follows_line) {
      ++totals.following;
      return;
    }
    switch (line.outcome()) {
      case Outcome::kNotExercised:
        ++totals.not_exercised;
        return;
      case Outcome::kPendingGood:
      case Outcome::kPendingBad:
        ++totals.pending;
        return;
      case Outcome::kMet:
        ++(line.prompted_at ? totals.prompted : totals.met);
        line.possible = line.weight;
        line.earned = line.prompted_at ? 0 : line.weight;
        break;
      case Outcome::kBroken:
        ++totals.broken;
        line.possible = line.weight;
        break;
    }
    totals.possible += line.possible;
    totals.earned += line.earned;
  }

  void settleTotals() {
    SheetTotals& totals = sheet_.totals;
    if (sheet_.judgements) {
      totals.possible += sheet_.judgements->possible;
      totals.earned = std::max(0.0, totals.earned + sheet_.judgements->earned);
    }
    totals.percent = totals.possible > 0 ? 100.0 * totals.earned / totals.possible : 0.0;
  }

  void settleDecision() {
    Decision& d = sheet_.decision;
    d = {};
    d.complete = sheet_.totals.pending == 0;
    for (const SheetLine& line : sheet_.lines) {
      if (line.fails_run) d.failed_by.push_back(line.number);
    }
    const auto& table = sheet_.judgements;
    const int missed =
        table && sheet_.judgement_policy.missed_critical_fails ? table->missed_critical : 0;
    const bool enough =
        sheet_.totals.possible > 0 && sheet_.totals.percent + 1e-9 >= sheet_.pass.pass_percent;
    const bool reached = !sheet_.aim || sheet_.aim->reached_at;
    d.in_time = isInTime();
    d.passed = d.complete && d.failed_by.empty() && missed == 0 && reached && enough && d.in_time &&
               isUnaided();
    d.text = makeText(d, missed, enough);
  }

  // Being early earns nothing; being late is "not yet".
  bool isInTime() const {
    if (!sheet_.head.time_allowed_s) return true;
    const bool reached = sheet_.aim && sheet_.aim->reached_at;
    const std::int64_t took = reached ? *sheet_.aim->reached_at : sheet_.head.last_tick;
    return static_cast<double>(took) / 100.0 <= *sheet_.head.time_allowed_s;
  }

  // Up to the aim, or else to the end.
  bool isUnaided() const {
    const auto& until = sheet_.head.unaided_until;
    if (!until) return true;
    return sheet_.aim && sheet_.aim->reached_at && *sheet_.aim->reached_at <= *until;
  }

  std::string makeText(const Decision& d, int missed, bool enough) const {
    const std::string points =
        fmt::format("{} % of the points, {} % needed", std::floor(sheet_.totals.percent + 1e-9),
                    sheet_.pass.pass_percent);
    if (!d.failed_by.empty()) {
      const auto first = static_cast<std::size_t>(d.failed_by.front()) - 1;
      std::string lines;
      for (int line : d.failed_by) lines += (lines.empty() ? "" : ", ") + std::to_string(line);
      return fmt::format(
          "Not passed: {} in line {} ({}). {}.",
          d.failed_by.size() == 1 ? "a critical rule is broken" : "critical rules are broken",
          lines, sheet_.lines[first].title, points);
    }
    if (missed > 0)
      return fmt::format("Not passed: a critical defect was judged good. {}.", points);
    if (!isUnaided())
      return fmt::format(
          "Not passed: the instructor stepped in at {}, before the exercise was done. Unaided: {}.",
          clockText(*sheet_.head.unaided_until), points);
    if (!d.complete) return "Not decided: the run has not ended.";
    if (sheet_.totals.possible <= 0) return "Not passed: nothing was exercised.";
    if (sheet_.aim && !sheet_.aim->reached_at)
      return fmt::format("Not passed: the exercise was not done. Asked: {}. {}.", sheet_.aim->words,
                         points);
    if (!enough) return fmt::format("Not yet: {}.", points);
    if (!d.in_time)
      return fmt::format("Not yet: it took longer than the time allowed. {}.", points);
    return fmt::format("Passed: {}; no critical rule broken.", points);
  }

  MarkSheet& sheet_;
  const RuleSet& rules_;
  std::vector<std::size_t> line_of_rule_;
};

}  // namespace

Outcome SheetLine::outcome() const {
  return override_record && override_record->outcome ? *override_record->outcome : verdict.outcome;
}

std::string SheetLine::verdictText() const {
  if (!void_reason.empty()) return "void (" + void_reason + ")";
  std::string text(wordOf(outcome()));
  if (follows_line) {
    text = fmt::format("follows from line {}", *follows_line);
  } else if (outcome() == Outcome::kMet && prompted_at) {
    text = "met, prompted";
  } else if (self_corrected_after_s) {
    text = fmt::format("self-corrected after {:.1f} s", *self_corrected_after_s);
  }
  if (aided_outcome) text += fmt::format(" (with help: {})", wordOf(*aided_outcome));
  if (override_record && override_record->outcome) {
    text += fmt::format(" (by {}; the program: {})", override_record->who, wordOf(verdict.outcome));
  }
  return text;
}

MarkSheet makeSheet(const SheetHead& head, const PassRule& pass, const RuleSet& rules,
                    const std::vector<Verdict>& verdicts, std::optional<JudgementTable> judgements,
                    const JudgementPolicy& policy, std::optional<AimResult> aim,
                    const std::optional<UnaidedPart>& unaided) {
  MarkSheet sheet;
  sheet.aim = std::move(aim);
  sheet.head = head;
  if (unaided) sheet.head.unaided_until = unaided->until;
  sheet.pass = pass;
  sheet.judgements = std::move(judgements);
  sheet.judgement_policy = policy;
  const std::size_t count = std::min(verdicts.size(), rules.rules().size());
  for (std::size_t k = 0; k < count; ++k) {
    const CompiledRule& rule = rules.rules()[k];
    sheet.lines.push_back(unaided ? makeLineUnaided(rule, k, unaided->verdicts.at(k), verdicts[k])
                                  : makeLine(rule, k, verdicts[k]));
  }
  sortLines(sheet.lines, makePhases(pass, rules));
  settleSheet(sheet, rules);
  return sheet;
}

void settleSheet(MarkSheet& sheet, const RuleSet& rules) { Settler(sheet, rules).settle(); }

}  // namespace cabwright::marking
