// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/verdict_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "after/words.h"

namespace cabwright::desk {

using drawing::VerdictSign;
using marking::Outcome;
using marking::RuleClass;
using marking::Verdict;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(VerdictView)
};

QString numberText(double value) {
  return QString::number(value, 'f', std::abs(value) >= 100 ? 0 : 1);
}

// A margin is positive where the rule was kept, negative where it was missed.
QString marginText(const Verdict& verdict) {
  if (!verdict.margin) return {};
  const QString much =
      (numberText(std::abs(*verdict.margin)) + QLatin1Char(' ') + after::sheetWords(verdict.unit))
          .trimmed();
  return *verdict.margin >= 0 ? Words::tr("margin %1").arg(much)
                              : Words::tr("missed by %1").arg(much);
}

QString wordOf(const Verdict& verdict, int times_met) {
  const bool broken = verdict.outcome == Outcome::kBroken;
  if (verdict.inside_tolerance)
    return broken ? Words::tr("broken, inside the tolerance")
                  : Words::tr("kept, inside the tolerance");
  if (broken) return Words::tr("broken");
  return times_met > 1 ? Words::tr("kept, %1 times").arg(times_met) : Words::tr("kept");
}

VerdictSign signOf(const Verdict& verdict) {
  if (verdict.outcome == Outcome::kBroken) return VerdictSign::kDefect;
  return verdict.inside_tolerance ? VerdictSign::kUnsure : VerdictSign::kGood;
}

// What was ruled on a rule so far. One that was kept can still be broken on another occasion: it is
// pending to the end of the run, and has been kept all the same.
struct Ruled {
  int times_met = 0;
  std::int64_t last_met = -1;
};

std::vector<Ruled> findRuled(const marking::Marker& marker) {
  std::vector<Ruled> ruled(marker.rules().rules().size());
  for (const marking::Mark& mark : marker.marks()) {
    if (!mark.met) continue;
    ++ruled[mark.rule].times_met;
    ruled[mark.rule].last_met = std::max(ruled[mark.rule].last_met, mark.tick);
  }
  return ruled;
}

bool hasFallen(const Verdict& verdict, const Ruled& ruled) {
  return verdict.outcome == Outcome::kMet || verdict.outcome == Outcome::kBroken ||
         (verdict.outcome == Outcome::kPendingGood && ruled.times_met > 0);
}

VerdictRow makeRow(const marking::RuleSpec& rule, const Verdict& verdict, const Ruled& ruled) {
  VerdictRow row;
  row.tick = verdict.outcome == Outcome::kPendingGood ? ruled.last_met : verdict.tick;
  row.title = after::sheetWords(rule.title);
  row.verdict = wordOf(verdict, ruled.times_met);
  row.margin = marginText(verdict);
  row.reason = after::sheetWords(verdict.reason);
  row.moment = after::timeText(row.tick);
  row.sign = signOf(verdict);
  row.rule_class = verdict.outcome == Outcome::kBroken ? verdict.judged_as : rule.rule_class;
  const bool fails = verdict.outcome == Outcome::kBroken && row.rule_class == RuleClass::kCritical;
  row.part = fails ? VerdictPart::kCritical : VerdictPart::kFallen;
  return row;
}

VerdictRow makeHeading(const QString& words) {
  VerdictRow row;
  row.part = VerdictPart::kHeading;
  row.title = words;
  return row;
}

}  // namespace

std::vector<VerdictRow> findFallen(const session::LiveRun& run) {
  const auto& rules = run.marker().rules().rules();
  const std::vector<Verdict> verdicts = run.marker().verdicts();
  const std::vector<Ruled> ruled = findRuled(run.marker());
  std::vector<VerdictRow> critical, fallen;
  for (std::size_t k = 0; k < verdicts.size(); ++k) {
    if (!hasFallen(verdicts[k], ruled[k])) continue;
    VerdictRow row = makeRow(rules[k].spec, verdicts[k], ruled[k]);
    (row.part == VerdictPart::kCritical ? critical : fallen).push_back(std::move(row));
  }
  for (auto* rows : {&critical, &fallen})
    std::ranges::stable_sort(*rows, std::greater{}, &VerdictRow::tick);
  std::vector<VerdictRow> all;
  if (!critical.empty()) {
    all.push_back(makeHeading(Words::tr("Critical: each fails the run")));
    all.insert(all.end(), critical.begin(), critical.end());
    if (!fallen.empty()) all.push_back(makeHeading(Words::tr("As they fell, the latest first")));
  }
  all.insert(all.end(), fallen.begin(), fallen.end());
  return all;
}

std::vector<VerdictRow> findOpen(const session::LiveRun& run) {
  const auto& rules = run.marker().rules().rules();
  const std::vector<Verdict> verdicts = run.marker().verdicts();
  std::vector<VerdictRow> open;
  for (std::size_t k = 0; k < verdicts.size(); ++k) {
    const bool bad = verdicts[k].outcome == Outcome::kPendingBad;
    if (!bad && verdicts[k].outcome != Outcome::kPendingGood) continue;
    VerdictRow row = makeRow(rules[k].spec, verdicts[k], {});
    row.part = VerdictPart::kOpen;
    row.tick = -1;
    row.moment.clear();
    row.verdict = bad ? Words::tr("open: something has to come") : Words::tr("kept so far");
    row.sign = bad ? VerdictSign::kUnsure : VerdictSign::kSeen;
    row.rule_class = rules[k].spec.rule_class;
    open.push_back(std::move(row));
  }
  std::ranges::stable_sort(open, [](const VerdictRow& a, const VerdictRow& b) {
    if (a.sign != b.sign) return a.sign == VerdictSign::kUnsure;
    return a.rule_class > b.rule_class;
  });
  return open;
}

VerdictCounts countVerdicts(const session::LiveRun& run) {
  VerdictCounts counts;
  const std::vector<Verdict> verdicts = run.marker().verdicts();
  const std::vector<Ruled> ruled = findRuled(run.marker());
  for (std::size_t k = 0; k < verdicts.size(); ++k) {
    const Verdict& verdict = verdicts[k];
    if (verdict.outcome == Outcome::kBroken) {
      ++counts.broken;
      counts.critical += verdict.judged_as == RuleClass::kCritical ? 1 : 0;
    } else if (hasFallen(verdict, ruled[k])) {
      ++counts.kept;
    } else if (verdict.outcome == Outcome::kNotExercised) {
      ++counts.not_exercised;
    } else {
      ++counts.open;
    }
  }
  return counts;
}

}  // namespace cabwright::desk
