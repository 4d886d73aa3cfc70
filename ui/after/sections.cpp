// SPDX-License-Identifier: GPL-3.0-or-later
// The rest of the sheet in words: the run as a whole, lines kept and not exercised, judgements.
#include <QCoreApplication>

#include "after/finding.h"
#include "after/section_block.h"
#include "after/words.h"

namespace cabwright::after {

using drawing::VerdictSign;
using marking::JudgementResult;
using marking::Outcome;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sections)
};

SectionRow timeRow(const marking::MarkSheet& sheet) {
  const marking::SheetHead& head = sheet.head;
  if (!head.time_allowed_s)
    return {VerdictSign::kNone, Words::tr("Time taken"), {}, timeText(head.last_tick)};
  const auto allowed = static_cast<std::int64_t>(*head.time_allowed_s * 100);
  const bool in_time = sheet.decision.in_time;
  return {in_time ? VerdictSign::kGood : VerdictSign::kUnsure,
          in_time ? Words::tr("In the time allowed") : Words::tr("Over the time allowed"),
          Words::tr("%1 were allowed").arg(timeText(allowed)), timeText(head.last_tick)};
}

// What the instructor did, with what was said to it.
void addDeskRows(const marking::SheetHead& head, SectionText& section) {
  const auto add = [&](const std::vector<marking::SheetNote>& notes, const QString& what) {
    for (const marking::SheetNote& note : notes)
      section.rows.push_back(
          {VerdictSign::kSeen, what, sheetWords(note.text), timeText(note.tick)});
  };
  add(head.taken_again, Words::tr("Taken again"));
  add(head.paces, Words::tr("Time passed at another pace"));
  add(head.interventions, Words::tr("The instructor stepped in; only what came before counts"));
  add(head.remarks, Words::tr("Remark of the instructor"));
}

SectionText wholeRun(const marking::MarkSheet& sheet) {
  SectionText section{Words::tr("The run as a whole"), {}, {}, false};
  if (sheet.aim) {
    const auto& at = sheet.aim->reached_at;
    section.rows.push_back({at ? VerdictSign::kGood : VerdictSign::kDefect,
                            at ? Words::tr("It came to what was asked")
                               : Words::tr("It did not come to what was asked"),
                            aimWords(sheet.aim->words), at ? timeText(*at) : QString()});
  }
  section.rows.push_back(timeRow(sheet));
  const bool enough =
      sheet.totals.possible > 0 && sheet.totals.percent + 1e-9 >= sheet.pass.pass_percent;
  section.rows.push_back({enough ? VerdictSign::kGood : VerdictSign::kUnsure,
                          enough ? Words::tr("Points enough") : Words::tr("Too few points"),
                          pointsSentence(sheet),
                          {}});
  for (const auto& notes :
       {sheet.head.faults, sheet.head.freezes, sheet.head.prompts, sheet.head.limits_met})
    for (const marking::SheetNote& note : notes)
      section.rows.push_back({VerdictSign::kSeen, sheetWords(note.text), {}, timeText(note.tick)});
  addDeskRows(sheet.head, section);
  return section;
}

SectionRow keptRow(const marking::MarkSheet& sheet, const marking::SheetLine& line) {
  QStringList detail;
  if (line.prompted_at) detail << Words::tr("after a prompt: earns nothing");
  if (line.verdict.inside_tolerance)
    detail << Words::tr("just within the tolerance: %1").arg(sheetWords(line.tolerance));
  return {line.prompted_at ? VerdictSign::kSeen : VerdictSign::kGood, sheetWords(line.title),
          detail.join(QLatin1String("; ")), timeText(momentOf(sheet, line))};
}

void addLines(const marking::MarkSheet& sheet, std::vector<SectionText>& sections) {
  SectionText kept{Words::tr("Well done"), {}, {}, false};
  SectionText void_lines{Words::tr("Does not count"), {}, {}, false};
  SectionText untried{Words::tr("Not exercised"), {}, {}, true};
  for (const marking::SheetLine& line : sheet.lines) {
    if (!line.void_reason.empty()) {
      void_lines.rows.push_back(
          {VerdictSign::kNone, sheetWords(line.title), sheetWords(line.void_reason), {}});
    } else if (line.outcome() == Outcome::kMet) {
      kept.rows.push_back(keptRow(sheet, line));
    } else if (line.outcome() == Outcome::kNotExercised) {
      untried.rows.push_back({VerdictSign::kNone, sheetWords(line.title), {}, {}});
    }
  }
  for (SectionText* section : {&kept, &void_lines, &untried}) {
    if (section->rows.empty()) continue;
    section->count = linesText(static_cast<int>(section->rows.size()));
    sections.push_back(std::move(*section));
  }
}

VerdictSign signOf(JudgementResult result) {
  switch (result) {
    case JudgementResult::kHit:
    case JudgementResult::kRight:
      return VerdictSign::kGood;
    case JudgementResult::kMiss:
    case JudgementResult::kNotJudged:
      return VerdictSign::kDefect;
    case JudgementResult::kFalseAlarm:
      return VerdictSign::kUnsure;
    case JudgementResult::kUnsure:
      return VerdictSign::kSeen;
  }
  return VerdictSign::kNone;
}

SectionRow judgementRow(const marking::JudgementRow& row) {
  const QString judged = row.judged.empty() ? Words::tr("not judged") : sheetWords(row.judged);
  QString detail = row.judged.empty()
                       ? Words::tr("was %1; not judged").arg(truthText(row.item, row.truth))
                       : Words::tr("was %1, judged %2, looked %3 s")
                             .arg(truthText(row.item, row.truth), judged, pointsText(row.looked_s));
  if (row.empty_entry) detail += Words::tr("; not looked at for long enough");
  if (row.revised > 0) detail += Words::tr("; changed");
  return {row.empty_entry ? VerdictSign::kUnsure : signOf(row.result), itemName(row.item), detail,
          sheetWords(marking::wordOf(row.result))};
}

void addJudgements(const marking::MarkSheet& sheet, std::vector<SectionText>& sections) {
  if (!sheet.judgements) return;
  SectionText wrong{Words::tr("Judgements to look at again"), {}, {}, false};
  SectionText right{Words::tr("Judged as it was"), {}, {}, true};
  for (const marking::JudgementRow& row : sheet.judgements->rows) {
    const bool good = !row.empty_entry && (row.result == JudgementResult::kHit ||
                                           row.result == JudgementResult::kRight);
    (good ? right : wrong).rows.push_back(judgementRow(row));
  }
  for (SectionText* section : {&wrong, &right}) {
    if (section->rows.empty()) continue;
    section->count = QString::number(section->rows.size());
    sections.push_back(std::move(*section));
  }
}

}  // namespace

std::vector<SectionText> makeSections(const marking::MarkSheet& sheet) {
  std::vector<SectionText> sections{wholeRun(sheet)};
  addJudgements(sheet, sections);
  addLines(sheet, sections);
  return sections;
}

}  // namespace cabwright::after
