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
using marking::Waiting;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(VerdictView)
};

QString numberText(double value) {
  return QString::number(value, 'f', std::abs(value) >= 100 ? 0 : 1);
}

QString signedText(double value) {
  const QString text = numberText(std::abs(value));
  return value < 0 ? QChar(0x2212) + text : text;
}

// A margin is positive where the rule was kept, negative where it was missed. Of what is only so or
// not so it is a bare 1, which says nothing.
QString marginText(const Verdict& verdict) {
  if (!verdict.margin || verdict.unit.empty()) return {};
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

namespace {

QString listText(const std::vector<std::string>& names) {
  QStringList words;
  for (const std::string& name : names) words << after::sheetWords(name);
  return words.join(QLatin1String("; "));
}

// What is open, in one sentence.
QString waitingText(const marking::Outlook& outlook) {
  const QString what = listText(outlook.what), before = after::sheetWords(outlook.before);
  switch (outlook.waiting) {
    case Waiting::kEnding:
      return Words::tr("Has to end: %1").arg(what);
    case Waiting::kComing:
      return Words::tr("Has to come: %1").arg(what);
    case Waiting::kKeeping:
      return before.isEmpty() ? Words::tr("Has to be kept: %1").arg(what)
                              : Words::tr("Has to be kept until %1: %2").arg(before, what);
    case Waiting::kMissing:
      return Words::tr("Missing before %1: %2").arg(before, what);
    case Waiting::kAvoiding:
      return Words::tr("Must not come: %1").arg(what);
    case Waiting::kReady:
      return Words::tr("Nothing is missing for %1").arg(before);
    case Waiting::kResting:
      break;
  }
  return Words::tr("Nothing is asked until %1").arg(what);
}

QString waitingWord(Waiting waiting) {
  switch (waiting) {
    case Waiting::kEnding:
      return Words::tr("breached now");
    case Waiting::kComing:
      return Words::tr("waits");
    case Waiting::kKeeping:
      return Words::tr("to be kept");
    case Waiting::kMissing:
      return Words::tr("would break");
    case Waiting::kAvoiding:
      return Words::tr("to be avoided");
    case Waiting::kReady:
      return Words::tr("ready");
    case Waiting::kResting:
      break;
  }
  return Words::tr("rests");
}

VerdictSign signOf(Waiting waiting) {
  return waiting == Waiting::kEnding                                   ? VerdictSign::kDefect
         : waiting == Waiting::kComing || waiting == Waiting::kMissing ? VerdictSign::kUnsure
         : waiting == Waiting::kReady                                  ? VerdictSign::kGood
                                                                       : VerdictSign::kSeen;
}

QString inText(std::int64_t ticks) {
  const double s = static_cast<double>(ticks) / 100.0;
  if (s < 0) return Words::tr("overdue");
  return s < 100 ? Words::tr("in %1 s").arg(std::ceil(s), 0, 'f', 0)
                 : Words::tr("in %1 min").arg(std::floor(s / 60), 0, 'f', 0);
}

}  // namespace

std::vector<VerdictRow> findOpen(const session::LiveRun& run) {
  const auto& rules = run.marker().rules().rules();
  std::vector<VerdictRow> open;
  for (const marking::Outlook& outlook : run.marker().outlook()) {
    const marking::RuleSpec& rule = rules[outlook.rule].spec;
    VerdictRow row;
    row.part = VerdictPart::kOpen;
    row.title = after::sheetWords(rule.title);
    row.verdict = waitingWord(outlook.waiting);
    row.reason = waitingText(outlook);
    row.sign = signOf(outlook.waiting);
    row.rule_class = outlook.rule_class;
    if (outlook.margin && !outlook.unit.empty())
      row.margin = Words::tr("margin %1")
                       .arg((signedText(*outlook.margin) + QLatin1Char(' ') +
                             after::sheetWords(outlook.unit))
                                .trimmed());
    if (const auto by = outlook.breaks_at ? outlook.breaks_at : outlook.deadline) {
      row.tick = *by;
      row.moment = inText(*by - run.tick());
    }
    open.push_back(std::move(row));
  }
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
