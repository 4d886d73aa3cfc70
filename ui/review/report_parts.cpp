// SPDX-License-Identifier: GPL-3.0-or-later
// The first page: what was decided, what the record is worth, who and what, the whole run.
#include "review_room/report_parts.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>
#include <array>

#include "after/finding.h"
#include "after/strip_chart.h"
#include "after/words.h"
#include "review/review.h"
#include "session/digest.h"

namespace cabwright::review_room {

using drawing::Tone;
using session::Standing;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Report)
};

QString toQt(const std::string& text) { return QString::fromStdString(text); }

QString keyWords(const session::PublicKey& key) {
  return toQt(session::toHex(key)).left(16) + QChar(0x2026);
}

// As the file has it (UTC), and nothing made of it that depends on where it is read.
QString timeWords(const std::string& utc) {
  const QDateTime time = QDateTime::fromString(toQt(utc), Qt::ISODate);
  if (!time.isValid()) return toQt(utc);
  return time.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm:ss")) + QStringLiteral(" UTC");
}

QStringList standingWords(const Opened& session) {
  const session::Verification& v = session.verification();
  switch (v.standing) {
    case Standing::kWhole:
      return {Words::tr("Sealed and whole: %1 rows, none changed, cut off or added.").arg(v.rows),
              Words::tr("Key of the station: %1").arg(keyWords(v.seal->station))};
    case Standing::kNotSealed:
      return {Words::tr("Not sealed: nothing here proves that it was not changed.")};
    default:
      break;
  }
  QStringList words{Words::tr("Altered: this is not what was sealed.")};
  for (const std::string& finding : v.findings) words << toQt(finding);
  return words;
}

QString resultWords(review::Result result) {
  switch (result) {
    case review::Result::kPassed:
      return Words::tr("passed");
    case review::Result::kNotYet:
      return Words::tr("not yet");
    case review::Result::kFailed:
      break;
  }
  return Words::tr("failed");
}

// The sheet on the screen has a colour; paper has its own.
void whiten(QImage& image) {
  const QRgb sheet = drawing::colorOf(drawing::Theme::kDay, Tone::kPaper).rgb();
  for (int y = 0; y < image.height(); ++y) {
    auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
    std::replace(line, line + image.width(), sheet, qRgb(255, 255, 255));
  }
}

void setNotes(Paper& paper, const QString& name, const std::vector<marking::SheetNote>& notes) {
  for (const marking::SheetNote& note : notes)
    paper.fact(&note == &notes.front() ? name : QString(),
               after::timeText(note.tick) + QLatin1String("  ") + after::sheetWords(note.text));
}

[[maybe_unused]] constexpr std::array kRoles{
    QT_TRANSLATE_NOOP("Report", "trainee"), QT_TRANSLATE_NOOP("Report", "instructor"),
    QT_TRANSLATE_NOOP("Report", "assessor"), QT_TRANSLATE_NOOP("Report", "second assessor")};

}  // namespace

QString personWords(const session::Person& person) {
  if (person.name.empty()) return Words::tr("somebody whose name was erased");
  const QString role = QCoreApplication::translate("Report", person.role.c_str());
  return QStringLiteral("%1 (%2)").arg(toQt(person.name), role);
}

void setDecision(Paper& paper, const ReportMatter& matter) {
  const marking::MarkSheet& sheet = matter.run.sheet;
  paper.paragraph(Words::tr("Mark sheet"), {.size = drawing::kTitle});
  paper.paragraph(after::exerciseWords(sheet.head.title), {.size = drawing::kResult, .bold = true});
  paper.skip(10);
  const after::Finding finding = after::makeFinding(sheet);
  paper.paragraph(
      finding.sentence,
      {.size = drawing::kName, .bold = true, .tone = finding.passed ? Tone::kGood : Tone::kBad});
  if (!finding.seen.isEmpty()) paper.paragraph(finding.seen);
  paper.paragraph(after::pointsSentence(sheet));
  if (const auto entry = review::findDecision(matter.session.entries())) {
    const auto& decision = std::get<review::Decision>(entry->content);
    paper.skip(8);
    paper.paragraph(
        Words::tr("Decided: %1, by %2, %3")
            .arg(resultWords(decision.result), personWords(entry->by), timeWords(entry->utc)),
        {.bold = true});
    if (!decision.reason.empty()) paper.paragraph(toQt(decision.reason));
    if (!decision.next.empty())
      paper.paragraph(Words::tr("Next step: %1").arg(toQt(decision.next)));
  } else {
    paper.skip(8);
    paper.paragraph(Words::tr("No assessor has decided yet; this is what the program found."));
  }
}

void setFacts(Paper& paper, const ReportMatter& matter) {
  const marking::SheetHead& head = matter.run.sheet.head;
  paper.caption(Words::tr("The record"));
  for (const QString& words : standingWords(matter.session)) paper.paragraph(words);
  if (!matter.session.store().closing())
    paper.paragraph(Words::tr("The session was cut off; it is marked as far as it goes."));
  if (!matter.session.readFault().empty())
    paper.paragraph(
        Words::tr("It could be read only so far: %1").arg(toQt(matter.session.readFault())));
  paper.skip(6);
  paper.fact(Words::tr("Session"), toQt(head.session_id));
  paper.fact(Words::tr("File, SHA-256"),
             matter.file_hash.left(32) + QChar(' ') + matter.file_hash.mid(32));
  paper.fact(Words::tr("Recorded by"),
             Words::tr("version %1 of the program").arg(toQt(head.program_version)));
  if (!matter.options.program.isEmpty())
    paper.fact(Words::tr("Report by"), Words::tr("version %1").arg(matter.options.program));

  paper.caption(Words::tr("Who and what"));
  paper.fact(Words::tr("Trainee"), toQt(head.trainee));
  paper.fact(Words::tr("Attempt"), toQt(head.attempt));
  paper.fact(Words::tr("Instructor"), toQt(head.instructor));
  paper.fact(Words::tr("Assessor"), toQt(head.assessor));
  paper.fact(Words::tr("Purpose"), after::exerciseWords(head.purpose));
  paper.fact(Words::tr("Taken as"), after::sheetWords(head.mode));
  paper.fact(Words::tr("Told beforehand"), after::exerciseWords(head.conditions_told));
  paper.fact(Words::tr("Begun"), timeWords(head.started_utc));
  paper.fact(Words::tr("Length"), after::timeText(head.last_tick));
  if (head.time_allowed_s)
    paper.fact(Words::tr("Allowed"),
               after::timeText(static_cast<std::int64_t>(*head.time_allowed_s * 100)));
  paper.fact(Words::tr("Exercise file"),
             QStringLiteral("%1 [%2]").arg(toQt(head.scenario), toQt(head.scenario_hash)));
  paper.fact(Words::tr("Vehicle, route"),
             QStringLiteral("%1, %2").arg(toQt(head.vehicle), toQt(head.route)));
  if (head.seed) paper.fact(Words::tr("Seed"), QString::number(*head.seed));
  setNotes(paper, Words::tr("Faults put in"), head.faults);
  setNotes(paper, Words::tr("Stopped"), head.freezes);
  setNotes(paper, Words::tr("Prompted"), head.prompts);
  setNotes(paper, Words::tr("Pace of time"), head.paces);
  setNotes(paper, Words::tr("Stepped in"), head.interventions);
  setNotes(paper, Words::tr("Remarks"), head.remarks);
  setNotes(paper, Words::tr("Taken again"), head.taken_again);
  setNotes(paper, Words::tr("Limits of the model met"), head.limits_met);
}

void setStrip(Paper& paper, const ReportMatter& matter) {
  constexpr double kHeight = 760;
  if (matter.run.history->size() < 2) return;
  paper.need(kHeight + 90);
  paper.caption(Words::tr("The whole run"), after::timeText(matter.run.sheet.head.last_tick));
  if (!paper.isCounting()) {
    const after::SheetLook look{drawing::Theme::kDay, 1};
    after::StripChart strip(look);
    strip.resize(static_cast<int>(Paper::kWidth), static_cast<int>(kHeight));
    strip.setRun(matter.run);
    strip.restyle();
    strip.showAll();
    // As a picture of three times the size of its units: what Qt Charts draws straight on paper
    // has lines of one point, whatever the scale.
    QImage image(strip.size() * 3, QImage::Format_RGB32);
    image.setDevicePixelRatio(3);
    image.fill(Qt::white);
    strip.render(&image, {}, {}, QWidget::DrawChildren);
    whiten(image);
    paper.pen().painter().drawImage(QRectF(0, paper.y(), Paper::kWidth, kHeight), image);
  }
  paper.skip(kHeight + 8);
}

}  // namespace cabwright::review_room
