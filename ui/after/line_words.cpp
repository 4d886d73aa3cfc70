// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/line_words.h"

#include <QCoreApplication>

#include "after/words.h"

namespace cabwright::after {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(LineWords)
};

}  // namespace

QString whenAndWhere(const FinishedRun& run, const marking::SheetLine& line) {
  const auto place = run.history->findValue(unit::Signal::kPlace, line.verdict.tick);
  const QString when = timeText(line.verdict.tick, true);
  if (neverCame(line)) return Words::tr("not once in this run");
  if (line.verdict.tick >= run.sheet.head.last_tick) return Words::tr("%1, at the end").arg(when);
  return place ? Words::tr("%1, %2").arg(when, insideSentence(placeName(static_cast<int>(*place))))
               : when;
}

QStringList doneWords(const marking::SheetLine& line) {
  const marking::Verdict& v = line.verdict;
  QStringList parts{sheetWords(v.reason)};
  if (!v.act.empty()) parts << Words::tr("Done: %1").arg(actText(v.act));
  for (const std::string& detail : v.details) parts << sheetWords(detail);
  if (v.corrected_after_s)
    parts << Words::tr("It lasted %1 s and was put right.").arg(pointsText(*v.corrected_after_s));
  if (v.times_broken > 1) parts << Words::tr("%1 times in all.").arg(v.times_broken);
  if (line.override_record)
    parts << Words::tr("Decided by %1: %2")
                 .arg(QString::fromStdString(line.override_record->who),
                      QString::fromStdString(line.override_record->reason));
  return parts;
}

QString rankWords(const marking::SheetLine& line) {
  const QString word = className(line.verdict.judged_as);
  return line.fails_run ? Words::tr("%1, decides the run").arg(word) : word;
}

QString evidenceTitle(const marking::SheetLine& line, int cab) {
  return (neverCame(line) ? Words::tr("What cab %1 showed at the end, and how things stood")
                          : Words::tr("What cab %1 showed then, and how things stood"))
      .arg(cab);
}

}  // namespace cabwright::after
