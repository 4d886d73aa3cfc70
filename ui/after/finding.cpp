// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/finding.h"

#include <QCoreApplication>
#include <algorithm>

#include "after/finished_run.h"
#include "after/words.h"

namespace cabwright::after {
namespace {

// Sentences here are whole and not put together of halves, so that they can be translated.
struct Words {
  Q_DECLARE_TR_FUNCTIONS(Finding)
};

QString quoted(const std::string& title) {
  return QChar(0x201C) + sheetWords(title) + QChar(0x201D);
}

QString criticalSentence(const marking::MarkSheet& sheet) {
  const auto first = static_cast<std::size_t>(sheet.decision.failed_by.front()) - 1;
  const QString title = quoted(sheet.lines[first].title);
  const auto others = static_cast<int>(sheet.decision.failed_by.size()) - 1;
  if (others == 0) return Words::tr("Not yet: %1 was not kept.").arg(title);
  if (others == 1)
    return Words::tr("Not yet: %1 was not kept, nor was one other critical rule.").arg(title);
  return Words::tr("Not yet: %1 was not kept, nor were %2 other critical rules.")
      .arg(title)
      .arg(others);
}

// A defect that matters, judged good.
const marking::JudgementRow* findMissedCritical(const marking::MarkSheet& sheet) {
  if (!sheet.judgements || !sheet.judgement_policy.missed_critical_fails) return nullptr;
  for (const marking::JudgementRow& row : sheet.judgements->rows) {
    if (row.result == marking::JudgementResult::kMiss &&
        row.defect == marking::RuleClass::kCritical)
      return &row;
  }
  return nullptr;
}

bool isEnough(const marking::MarkSheet& sheet) {
  return sheet.totals.possible > 0 && sheet.totals.percent + 1e-9 >= sheet.pass.pass_percent;
}

// The broken line that cost most; the first of equal ones.
const marking::SheetLine* findDearest(const marking::MarkSheet& sheet) {
  const marking::SheetLine* dearest = nullptr;
  for (const marking::SheetLine* line : findBrokenLines(sheet))
    if (dearest == nullptr || line->possible - line->earned > dearest->possible - dearest->earned)
      dearest = line;
  return dearest;
}

bool isUnaided(const marking::MarkSheet& sheet) {
  const auto& until = sheet.head.unaided_until;
  return !until || (sheet.aim && sheet.aim->reached_at && *sheet.aim->reached_at <= *until);
}

QString notPassed(const marking::MarkSheet& sheet, const marking::JudgementRow* missed) {
  if (!sheet.decision.failed_by.empty()) return criticalSentence(sheet);
  if (missed != nullptr)
    return Words::tr("Not yet: a critical defect was judged good: %1, %2.")
        .arg(itemName(missed->item), truthText(missed->item, missed->truth));
  if (!isUnaided(sheet))
    return Words::tr("Not yet: the instructor stepped in at %1, before the exercise was done.")
        .arg(timeText(*sheet.head.unaided_until));
  if (!sheet.decision.complete) return Words::tr("Not decided: the run has not ended.");
  if (sheet.totals.possible <= 0) return Words::tr("Not yet: nothing was exercised.");
  if (sheet.aim && !sheet.aim->reached_at)
    return Words::tr("Not yet: it did not come to what was asked: %1.")
        .arg(insideSentence(aimWords(sheet.aim->words)));
  if (!isEnough(sheet)) {
    const marking::SheetLine* dearest = findDearest(sheet);
    if (dearest == nullptr) return Words::tr("Not yet: too few points.");
    return Words::tr("Not yet: too few points; %1 among others was not kept.")
        .arg(quoted(dearest->title));
  }
  return Words::tr("Not yet: it took longer than the time allowed.");
}

QString passedSentence(const marking::MarkSheet& sheet) {
  if (sheet.aim)
    return Words::tr("Passed: no critical rule was broken, and it came to what was asked: %1.")
        .arg(insideSentence(aimWords(sheet.aim->words)));
  return Words::tr("Passed: no critical rule was broken, and there were points enough.");
}

QStringList makeFacts(const marking::MarkSheet& sheet) {
  const marking::SheetHead& head = sheet.head;
  QStringList facts;
  if (!head.title.empty()) facts << exerciseWords(head.title);
  if (!head.attempt.empty())
    facts << Words::tr("attempt %1").arg(QString::fromStdString(head.attempt));
  if (!head.trainee.empty())
    facts << Words::tr("trainee %1").arg(QString::fromStdString(head.trainee));
  if (!head.mode.empty()) facts << sheetWords(head.mode);
  if (head.time_allowed_s) {
    const auto allowed = static_cast<std::int64_t>(*head.time_allowed_s * 100);
    facts << Words::tr("%1 of %2").arg(timeText(head.last_tick), timeText(allowed));
  } else {
    facts << timeText(head.last_tick);
  }
  facts << pointsSentence(sheet);
  return facts;
}

}  // namespace

QString pointsSentence(const marking::MarkSheet& sheet) {
  return Words::tr("%1 of %2 points, %3 % needed")
      .arg(pointsText(sheet.totals.earned), pointsText(sheet.totals.possible),
           pointsText(sheet.pass.pass_percent));
}

Finding makeFinding(const marking::MarkSheet& sheet) {
  Finding finding;
  finding.passed = sheet.decision.passed;
  finding.critical = !sheet.decision.failed_by.empty() || findMissedCritical(sheet) != nullptr;
  finding.sentence =
      finding.passed ? passedSentence(sheet) : notPassed(sheet, findMissedCritical(sheet));
  if (!sheet.decision.failed_by.empty()) {
    const auto first = static_cast<std::size_t>(sheet.decision.failed_by.front()) - 1;
    finding.seen = sheetWords(sheet.lines[first].verdict.reason);
  }
  finding.facts = makeFacts(sheet);
  finding.told = exerciseWords(sheet.head.conditions_told);
  return finding;
}

}  // namespace cabwright::after
