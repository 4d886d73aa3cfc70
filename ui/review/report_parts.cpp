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
#include "review_room/recency_day.h"
#include "session/digest.h"

namespace cabwright::review_room {

using drawing::Tone;
using session::Standing;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Report)
};

constexpr double kStripHigh = 760, kStripLeast = 560, kStripAround = 76;

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

QString attemptWords(const ReportMatter& matter) {
  if (const auto& attempt = matter.options.attempt)
    return Words::tr("%1 of %2 at this exercise in the folder of this session")
        .arg(attempt->number)
        .arg(attempt->of);
  return Words::tr("not counted: the session cannot be told to be one trainee's");
}

// The numbers of the machine are the vehicle's; what is made of them is the program's that ran it.
QString plantWords(const ReportMatter& matter) {
  const session::SessionHeader& header = matter.session.store().header();
  const QString plant = toQt(review::describePlant(header));
  if (plant.isEmpty()) return Words::tr("not recorded");
  if (header.program_version.empty()) return plant;
  return Words::tr("%1, calculated by version %2").arg(plant, toQt(header.program_version));
}

QString validityWords(const ReportMatter& matter) {
  using Kind = review::GoodFor::Kind;
  const review::GoodFor good =
      review::findGoodFor(review::lookAt(matter.session.file()),
                          matter.session.verification().standing, matter.options.recency, localDay);
  switch (good.kind) {
    case Kind::kAltered:
      return Words::tr("the record was altered: it proves no pass");
    case Kind::kNoPass:
      return Words::tr(
          "not a pass that counts: that is a sealed assessment passed, or what an "
          "assessor decided as passed");
    case Kind::kNoDay:
      return Words::tr("a pass, but the session does not say when it was begun");
    case Kind::kNoTime:
      return Words::tr("no time is set at this station; the operator says how long it is");
    case Kind::kUntil:
      break;
  }
  return Words::tr("%1 (%n month(s))", nullptr, good.months).arg(dayText(good.until));
}

void setNotes(Paper& paper, const QString& name, const std::vector<marking::SheetNote>& notes) {
  for (const marking::SheetNote& note : notes)
    paper.fact(&note == &notes.front() ? name : QString(),
               after::timeText(note.tick) + QLatin1String("  ") + after::sheetWords(note.text));
}

[[maybe_unused]] constexpr std::array kRoles{
    QT_TRANSLATE_NOOP("Report", "trainee"), QT_TRANSLATE_NOOP("Report", "instructor"),
    QT_TRANSLATE_NOOP("Report", "assessor"), QT_TRANSLATE_NOOP("Report", "second assessor")};

void setRecord(Paper& paper, const ReportMatter& matter) {
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
             head.program_version.empty()
                 ? Words::tr("a program whose version was not recorded")
                 : Words::tr("version %1 of the program").arg(toQt(head.program_version)));
  if (!matter.options.program.isEmpty())
    paper.fact(Words::tr("Report by"), Words::tr("version %1").arg(matter.options.program));
}

void setWho(Paper& paper, const ReportMatter& matter) {
  const marking::SheetHead& head = matter.run.sheet.head;
  paper.caption(Words::tr("Who and what"));
  paper.fact(Words::tr("Trainee"),
             head.trainee.empty() ? Words::tr("not recorded") : toQt(head.trainee));
  paper.fact(Words::tr("Attempt"), attemptWords(matter));
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
  paper.fact(Words::tr("Plant"), plantWords(matter));
  if (head.limits_met.empty()) paper.fact(Words::tr("Model limits"), Words::tr("none met"));
  if (head.seed) paper.fact(Words::tr("Seed"), QString::number(*head.seed));
  paper.fact(Words::tr("Good until"), validityWords(matter));
  setNotes(paper, Words::tr("Faults put in"), head.faults);
  setNotes(paper, Words::tr("Stopped"), head.freezes);
  setNotes(paper, Words::tr("Prompted"), head.prompts);
  setNotes(paper, Words::tr("Pace of time"), head.paces);
  setNotes(paper, Words::tr("Stepped in"), head.interventions);
  setNotes(paper, Words::tr("Remarks"), head.remarks);
  setNotes(paper, Words::tr("Taken again"), head.taken_again);
  setNotes(paper, Words::tr("Model limits"), head.limits_met);
}

bool fitsStrip(const Paper& paper) { return paper.room() >= kStripLeast + kStripAround; }

// As high as the page still has room for; on the next one where that is too little.
void setStrip(Paper& paper, const ReportMatter& matter) {
  if (matter.run.history->size() < 2) return;
  if (!fitsStrip(paper)) paper.need(kStripHigh + kStripAround);
  const double high = std::min(kStripHigh, paper.room() - kStripAround);
  paper.caption(Words::tr("The whole run"), after::timeText(matter.run.sheet.head.last_tick));
  if (!paper.isCounting()) {
    const after::SheetLook look{drawing::Theme::kDay, 1, false};
    after::StripChart strip(look);
    strip.resize(static_cast<int>(Paper::kWidth), static_cast<int>(high));
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
    paper.pen().painter().drawImage(QRectF(0, paper.y(), Paper::kWidth, strip.height()), image);
  }
  paper.skip(high + 8);
}

}  // namespace

void whiten(QImage& image) {
  const QRgb sheet = drawing::colorOf(drawing::Theme::kDay, Tone::kPaper).rgb();
  for (int y = 0; y < image.height(); ++y) {
    auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
    std::replace(line, line + image.width(), sheet, qRgb(255, 255, 255));
  }
}

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
  // What was found is worth no more than what it was found in.
  const Standing standing = matter.session.verification().standing;
  if (standing != Standing::kWhole)
    paper.paragraph(
        standingWords(matter.session).front(),
        {.bold = true, .tone = standing == Standing::kAltered ? Tone::kBad : Tone::kInk});
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
  setWho(paper, matter);
  const bool is_first = fitsStrip(paper);
  if (is_first) setStrip(paper, matter);
  setRecord(paper, matter);
  if (!is_first) setStrip(paper, matter);
}

}  // namespace cabwright::review_room
