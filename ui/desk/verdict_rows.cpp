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

QString wordOf(const Verdict& verdict) {
  if (verdict.inside_tolerance)
    return verdict.outcome == Outcome::kMet ? Words::tr("met, inside the tolerance")
                                            : Words::tr("broken, inside the tolerance");
  return verdict.outcome == Outcome::kMet ? Words::tr("met") : Words::tr("broken");
}

VerdictSign signOf(const Verdict& verdict) {
  if (verdict.outcome == Outcome::kBroken) return VerdictSign::kDefect;
  return verdict.inside_tolerance ? VerdictSign::kUnsure : VerdictSign::kGood;
}

bool hasFallen(const Verdict& verdict) {
  return verdict.outcome == Outcome::kMet || verdict.outcome == Outcome::kBroken;
}

VerdictRow makeRow(const marking::RuleSpec& rule, const Verdict& verdict) {
  VerdictRow row;
  row.tick = verdict.tick;
  row.title = after::sheetWords(rule.title);
  row.verdict = wordOf(verdict);
  row.margin = marginText(verdict);
  row.reason = after::sheetWords(verdict.reason);
  row.moment = after::timeText(verdict.tick);
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
  std::vector<VerdictRow> critical, fallen;
  for (std::size_t k = 0; k < verdicts.size(); ++k) {
    if (!hasFallen(verdicts[k])) continue;
    VerdictRow row = makeRow(rules[k].spec, verdicts[k]);
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
    VerdictRow row = makeRow(rules[k].spec, verdicts[k]);
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
  for (const Verdict& verdict : run.marker().verdicts()) {
    switch (verdict.outcome) {
      case Outcome::kMet:
        ++counts.met;
        break;
      case Outcome::kBroken:
        ++counts.broken;
        counts.critical += verdict.judged_as == RuleClass::kCritical ? 1 : 0;
        break;
      case Outcome::kPendingGood:
      case Outcome::kPendingBad:
        ++counts.open;
        break;
      case Outcome::kNotExercised:
        ++counts.not_exercised;
        break;
    }
  }
  return counts;
}

}  // namespace cabwright::desk
