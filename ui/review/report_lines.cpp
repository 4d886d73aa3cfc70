// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of the sheet on paper, what assessors added, and the cautions.
#include <QCoreApplication>

#include "after/evidence.h"
#include "after/line_words.h"
#include "after/section_block.h"
#include "after/words.h"
#include "review/agreement.h"
#include "review/entry.h"
#include "review_room/report_parts.h"
#include "session/digest.h"

namespace cabwright::review_room {

using drawing::Tone;
using drawing::VerdictSign;
using marking::SheetLine;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Report)
};

constexpr double kLineHigh = 400;  // of its head with common gauges: they stay together
constexpr double kPictureWide = 820, kPictureLeast = 640;

QString toQt(const std::string& text) { return QString::fromStdString(text); }

QString marginWords(const SheetLine& line) {
  const marking::Verdict& v = line.verdict;
  if (!v.margin || v.unit.empty()) return {};
  return Words::tr("margin %1 %2").arg(QString::number(*v.margin, 'g', 4), toQt(v.unit));
}

const SheetLine* firstOfItsMoment(const ReportMatter& matter, const SheetLine& line) {
  const std::int64_t tick = after::momentOf(matter.run.sheet, line);
  for (const SheetLine* other : after::findBrokenLines(matter.run.sheet))
    if (after::momentOf(matter.run.sheet, *other) == tick) return other;
  return &line;
}

void setEvidence(Paper& paper, const ReportMatter& matter, const SheetLine& line) {
  const std::int64_t tick = after::momentOf(matter.run.sheet, line);
  const after::Evidence evidence = after::gatherEvidence(
      line.verdict, matter.run.frame_at(tick), after::findLeadingCab(*matter.run.history));
  // Counted on a drawing that is not kept, then drawn where it fits whole.
  Paper probe;
  const double height = after::paintEvidence(probe.pen(), {0, 0}, 560, evidence);
  paper.need(height + 44);
  paper.paragraph(after::evidenceTitle(line, evidence.cab), {.tone = Tone::kInk2});
  after::paintEvidence(paper.pen(), {0, paper.y() + 4}, 560, evidence);
  paper.skip(height + 14);
}

// Once for each moment: others of the same one say where it stands.
QImage pictureOf(const ReportMatter& matter, const SheetLine& line) {
  const SheetLine* first = firstOfItsMoment(matter, line);
  const auto found = matter.pictures.find(after::momentOf(matter.run.sheet, line));
  return first != &line || found == matter.pictures.end() ? QImage() : found->second;
}

void setLine(Paper& paper, const ReportMatter& matter, const SheetLine& line) {
  paper.need(kLineHigh);
  paper.pen().line({0, paper.y()}, {Paper::kWidth, paper.y()}, {drawing::kThin, Tone::kInk2});
  paper.skip(8);
  paper.paragraph(
      Words::tr("Line %1, %2: %3")
          .arg(QString::number(line.number), after::rankWords(line), toQt(line.verdictText())),
      {.bold = true, .tone = Tone::kBad});
  paper.paragraph(after::sheetWords(line.title), {.size = drawing::kName, .bold = true});
  QStringList facts{after::whenAndWhere(matter.run, line)};
  if (const QString margin = marginWords(line); !margin.isEmpty()) facts << margin;
  if (line.possible > 0)
    facts << Words::tr("%1 of %2 points")
                 .arg(after::pointsText(line.earned), after::pointsText(line.possible));
  paper.paragraph(facts.join(QStringLiteral("; ")), {.tone = Tone::kInk2});
  for (const QString& words : after::doneWords(line)) paper.paragraph(words);
  paper.skip(6);
  setEvidence(paper, matter, line);
  const QImage picture = pictureOf(matter, line);
  const bool is_next = paper.fits(picture, kPictureLeast);
  if (is_next) paper.picture(picture, kPictureWide, kPictureLeast);
  const SheetLine* first = firstOfItsMoment(matter, line);
  if (first != &line && matter.pictures.contains(after::momentOf(matter.run.sheet, line)))
    paper.fact(Words::tr("The moment"),
               Words::tr("as in the picture at line %1").arg(first->number));
  paper.fact(Words::tr("Why it matters"), after::sheetWords(line.why));
  paper.fact(Words::tr("Next time"), after::sheetWords(line.advice));
  paper.fact(Words::tr("Tolerance"), after::sheetWords(line.tolerance));
  for (const SheetLine* following : after::findFollowing(matter.run.sheet, line.number))
    paper.fact(Words::tr("Follows from it"),
               Words::tr("line %1, %2")
                   .arg(QString::number(following->number), after::sheetWords(following->title)));
  if (!is_next) {  // words fill the page, and it begins the next one
    paper.skip(6);
    paper.picture(picture, kPictureWide, kPictureLeast);
  }
  paper.skip(12);
}

// An override with both verdicts, whatever it made of the line.
void setOverrides(Paper& paper, const ReportMatter& matter) {
  bool any = false;
  for (const SheetLine& line : matter.run.sheet.lines) {
    if (!line.override_record) continue;
    if (!any) paper.caption(Words::tr("Decided otherwise than the program"));
    any = true;
    const marking::Override& by = *line.override_record;
    paper.row({VerdictSign::kNone,
               Words::tr("Line %1, %2: recorded %3, counts as %4")
                   .arg(QString::number(line.number), after::sheetWords(line.title),
                        after::sheetWords(marking::wordOf(line.verdict.outcome)),
                        after::sheetWords(line.verdictText())),
               Words::tr("%1, %2: %3")
                   .arg(by.who.empty() ? Words::tr("somebody whose name was erased") : toQt(by.who),
                        toQt(by.when_utc), toQt(by.reason)),
               {}});
  }
}

void setAgreement(Paper& paper, const ReportMatter& matter) {
  std::vector<std::pair<std::int64_t, session::Person>> raters;
  for (const review::Entry& entry : matter.session.entries()) {
    if (!std::holds_alternative<review::BlindMark>(entry.content)) continue;
    if (raters.empty() || raters.back().first != entry.person)
      raters.emplace_back(entry.person, entry.by);
  }
  for (std::size_t k = 0; k < raters.size(); ++k) {
    const auto seen = [&](std::size_t before) { return raters[before].first == raters[k].first; };
    bool repeated = false;
    for (std::size_t before = 0; before < k; ++before) repeated = repeated || seen(before);
    if (repeated) continue;
    const review::Agreement found = review::calcAgreement(
        review::pairMarks(matter.run.sheet, matter.session.entries(), raters[k].first));
    if (found.count == 0) continue;
    QString words = Words::tr("%1 marked %2 lines without seeing these marks and agrees on %3 %")
                        .arg(personWords(raters[k].second), QString::number(found.count),
                             QString::number(100 * found.plain, 'f', 0));
    if (found.kappa)
      words += Words::tr("; Cohen's kappa %1").arg(QString::number(*found.kappa, 'f', 2));
    paper.paragraph(words + QLatin1Char('.'));
  }
}

void setSignatures(Paper& paper, const ReportMatter& matter) {
  for (const review::Entry& entry : matter.session.entries()) {
    const auto* sign = std::get_if<review::SignOff>(&entry.content);
    if (sign == nullptr) continue;
    paper.row(
        {VerdictSign::kGood,
         Words::tr("Signed by %1: %2").arg(personWords(entry.by), toQt(sign->statement)),
         Words::tr("%1, key %2").arg(toQt(entry.utc), toQt(session::toHex(entry.key)).left(32)),
         {}});
  }
  paper.need(150);
  paper.skip(64);
  const QStringList names{Words::tr("Assessor, date"), Words::tr("Trainee, date"),
                          Words::tr("Second assessor, date")};
  const double wide = (Paper::kWidth - 60) / 3;
  for (int k = 0; k < 3; ++k) {
    const double x = k * (wide + 30);
    paper.pen().line({x, paper.y()}, {x + wide, paper.y()}, {drawing::kThin});
    paper.pen().text({x, paper.y() + 24}, names[k], {.tone = Tone::kInk2});
  }
  paper.skip(44);
}

}  // namespace

void setBrokenLines(Paper& paper, const ReportMatter& matter) {
  const auto lines = after::findBrokenLines(matter.run.sheet);
  if (lines.empty()) return;
  paper.caption(Words::tr("What was not kept"), after::linesText(static_cast<int>(lines.size())));
  for (const SheetLine* line : lines) setLine(paper, matter, *line);
}

void setOtherLines(Paper& paper, const ReportMatter& matter) {
  for (const after::SectionText& section : after::makeSections(matter.run.sheet)) {
    paper.caption(section.caption, section.count);
    for (const after::SectionRow& row : section.rows)
      paper.row({row.sign, row.title, row.detail, row.right});
  }
}

void setEntries(Paper& paper, const ReportMatter& matter) {
  setOverrides(paper, matter);
  paper.caption(Words::tr("Added by assessors"));
  const auto& entries = matter.session.entries();
  if (entries.empty()) paper.paragraph(Words::tr("Nothing."));
  for (const review::Entry& entry : entries) {
    if (std::holds_alternative<review::BlindMark>(entry.content)) continue;
    paper.row({VerdictSign::kNone,
               QStringLiteral("%1. %2").arg(QString::number(entry.seq),
                                            toQt(review::describe(entry.content))),
               QStringLiteral("%1, %2").arg(personWords(entry.by), toQt(entry.utc)),
               {}});
  }
  setAgreement(paper, matter);
  paper.caption(Words::tr("Signatures"));
  setSignatures(paper, matter);
}

void setCautions(Paper& paper, const ReportMatter& matter) {
  Q_UNUSED(matter)
  paper.caption(Words::tr("Cautions"));
  paper.paragraph(Words::tr(
      "Cabwright is a training aid. It is generic, models no particular vehicle, and gives "
      "no authority to drive. The operator's rule book, the vehicle's own manual and a "
      "licensed instructor or assessor decide."));
  paper.paragraph(
      Words::tr("Working around stabled trains, rotating shafts, compressed air, batteries and "
                "moving vehicles kills people. Isolate, scotch, protect and ask before you "
                "reach in."));
  paper.paragraph(
      Words::tr("A mark is one occasion. Whoever does not agree with a line can ask for a second "
                "assessor on the same record; how long a result is good for is for the operator "
                "to say."));
}

}  // namespace cabwright::review_room
