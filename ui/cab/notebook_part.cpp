// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/notebook_part.h"

#include <algorithm>

#include "cab/names.h"
#include "cab/you_parts.h"
#include "drawing/furniture.h"
#include "drawing/verdict.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;
using drawing::VerdictSign;
using unit::Signal;
using unit::Verdict;

namespace {

constexpr double kPadding = 18, kHead = 58, kFoot = 44;
constexpr double kJudgeRow = 40;

// Name and two lines of what is seen, and the look that closes, grow with the running text.
double lookEnd(double reading) { return kHead + 44 + 50 * reading; }

QString fromText(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

VerdictSign signOf(int verdict) {
  switch (static_cast<Verdict>(verdict)) {
    case Verdict::kGood:
      return VerdictSign::kGood;
    case Verdict::kDefect:
      return VerdictSign::kDefect;
    case Verdict::kUnsure:
      return VerdictSign::kUnsure;
    case Verdict::kNone:
      break;
  }
  return VerdictSign::kNone;
}

QString judgedText(Verdict verdict) {
  switch (verdict) {
    case Verdict::kGood:
      return NotebookPart::tr("good");
    case Verdict::kDefect:
      return NotebookPart::tr("defect");
    case Verdict::kUnsure:
      return NotebookPart::tr("not sure");
    case Verdict::kNone:
      break;
  }
  return {};
}

// Whole as long as it takes no more lines than that.
QStringList fewLines(const QString& words, double width, double size, bool bold, qsizetype most) {
  QStringList lines = drawing::wrapText(words, width, size, bold);
  if (lines.size() <= most) return lines;
  lines = lines.mid(0, most);
  lines.back() = drawing::elideText(lines.back() + QLatin1String(" …"), width, size, bold);
  return lines;
}

}  // namespace

NotebookPart::NotebookPart(Seat& seat, const SheetStyle& style, QWidget* parent)
    : Part(seat, style, parent) {
  setAccessibleName(tr("Notebook"));
  connect(&seat, &Seat::guideChanged, this, [this] {
    if (this->seat().mode() == scenario::Mode::kPractice) hint_ = false;
    update();
    announceValue();
  });
}

void NotebookPart::showHint(bool shown) {
  hint_ = shown;
  update();
  announceValue();
}

bool NotebookPart::showsHint() const {
  if (seat().guide() == nullptr) return false;
  return seat().mode() == scenario::Mode::kGuided || hint_;
}

QString NotebookPart::seen() const { return looked_ == shown_.looking ? seen_ : QString(); }

void NotebookPart::setSeen(unit::Item item, const QString& words) {
  looked_ = item;
  seen_ = words;
  update();
  announceValue();
}

void NotebookPart::setClassRows(int rows) {
  class_rows_ = rows;
  update();
}

void NotebookPart::refresh() {
  const unit::World& w = seat().unit().world();
  Shown now;
  now.looking = w.trainee.looking;
  if (now.looking) {
    const double needed = seat().value(Signal::kLookNeeded);
    now.share = static_cast<int>(
        std::clamp(needed > 0 ? seat().value(Signal::kLookSeconds) / needed : 1.0, 0.0, 1.0) * 40);
  }
  const unit::Judgement* said = now.looking ? seat().findJudgement(*now.looking) : nullptr;
  if (said != nullptr && said->verdict == Verdict::kDefect) now.rank = said->said_class;
  now.judgements = w.judgements.size();
  now.notes = w.notes.size();
  now.book = w.book.size();
  now.decision = w.trainee.decision;
  now.step = seat().guide() != nullptr ? seat().guide()->behind() : 0;
  if (now == shown_) return;
  shown_ = now;
  update();
}

PartRole NotebookPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kText;
  r.name = tr("Notebook");
  r.value = !shown_.looking    ? tr("nothing is being looked at")
            : seen().isEmpty() ? nameOf(*shown_.looking)
                               : nameOf(*shown_.looking) + QLatin1String(": ") + seen();
  if (showsHint() && seat().guide()->current() != nullptr) {
    const scenario::GuideStep& step = *seat().guide()->current();
    r.description = tr("Next: %1 %2").arg(exerciseWords(step.act), exerciseWords(step.why));
  }
  return r;
}

QRectF NotebookPart::judgeRow(const QRectF& page, double reading) {
  return {page.left() + kPadding - 5, page.top() + lookEnd(reading) + 10,
          page.width() - 2 * kPadding + 10, kJudgeRow};
}

QRectF NotebookPart::classRow(const QRectF& page, int which, double reading) {
  const QRectF row = judgeRow(page, reading);
  return row.translated(0, (row.height() + 2) * (1 + which));
}

QRectF NotebookPart::footArea(const QRectF& page, int which) {
  const double w = (page.width() - 2 * kPadding + 10) / 3;
  return {page.left() + kPadding - 5 + w * which, page.bottom() - kFoot - 4, w, 40};
}

std::vector<NotebookPart::Entry> NotebookPart::entries() const {
  const unit::World& w = seat().unit().world();
  std::vector<Entry> list;
  for (const unit::Judgement& j : w.judgements) {
    QString how = j.empty ? tr("not looked at long enough") : judgedText(j.verdict);
    if (!j.empty && j.said_class != unit::DefectClass::kNone)
      how = tr("%1, %2").arg(how, nameOf(j.said_class));
    list.push_back({j.tick, nameOf(j.item) + QLatin1String(", ") + nameOf(j.from), how,
                    j.empty ? 0 : static_cast<int>(j.verdict)});
  }
  for (const unit::Note& n : w.notes)
    list.push_back(
        {n.tick, tr("Reading: %1").arg(fromText(n.what)), QString::number(n.value, 'g', 4), 0});
  for (const unit::BookEntry& b : w.book)
    list.push_back({b.tick, b.item ? tr("Booked: %1").arg(nameOf(*b.item)) : tr("Booked"),
                    fromText(b.text), 0});
  std::ranges::stable_sort(list, std::greater{}, &Entry::tick);
  return list;
}

// What can be done, as much of it and as large as stands whole above the judgements.
void NotebookPart::paintNothing(drawing::Pen& pen) const {
  QStringList choice{tr("Nothing is being looked at.")};
  if (!seat().isToLookAt()) {
    const QString click = tr("Click a thing on the sheet, look as long as it takes, then judge.");
    choice = {choice[0] + QLatin1Char(' ') + click, click};
  }
  const double room = area().width() - 2 * kPadding;
  const double top = area().top() + kHead + 4, end = judgeRow(area(), style().reading).top() - 4;
  const QPointF at(area().left() + kPadding, top);
  for (const double t : {style().reading, 1.0}) {
    for (const QString& words : choice) {
      const auto lines = drawing::wrapText(words, room, drawing::kText * t).size();
      const bool last = t <= 1 && words == choice.back();
      if (!last && top + (24 + 25 * static_cast<double>(lines - 1)) * t > end) continue;
      pen.paragraph(at + QPointF(0, 24 * t), words, room,
                    {.size = drawing::kText * t, .tone = Tone::kInk2, .on = Tone::kFace}, 25 * t);
      return;
    }
  }
}

void NotebookPart::paintLooking(drawing::Pen& pen) const {
  const QRectF& a = area();
  const double t = style().reading;
  const double x = a.left() + kPadding, room = a.width() - 2 * kPadding;
  const double y = a.top() + kHead;
  const QString name = nameOf(*shown_.looking);
  double size = drawing::kName * t;
  for (const double smaller : {drawing::kText * t, drawing::kText})
    if (drawing::textWidth(name, size, true) > room) size = smaller;
  pen.text({x, y + 4 + 24 * t}, drawing::elideText(name, room, size, true),
           {.size = size, .bold = true, .on = Tone::kFace});
  const QString words = shown_.share >= 40 ? seen() : tr("looking …");
  double text = drawing::kText * t;
  if (drawing::wrapText(words, room, text).size() > 2) text = drawing::kText;
  const QStringList lines = fewLines(words, room, text, false, 2);
  for (qsizetype k = 0; k < lines.size(); ++k)
    pen.text({x, y + 4 + (50 + 24.0 * static_cast<double>(k)) * t}, lines[k],
             {.size = text, .on = Tone::kFace});
  const double end = a.top() + lookEnd(t);
  pen.line({x, end}, {x + room, end}, {drawing::kHairline, Tone::kHair, {}, false});
  pen.line({x, end}, {x + room * shown_.share / 40, end}, {drawing::kBold, Tone::kHand, {}, false});
}

double NotebookPart::paintNext(drawing::Pen& pen, double y) const {
  if (!showsHint()) return y;
  const QRectF& a = area();
  const double x = a.left() + kPadding, room = a.width() - 2 * kPadding;
  const session::GuideWalk& guide = *seat().guide();
  pen.line({a.left() + 1, y}, {a.right() - 1, y}, {drawing::kThin, Tone::kRule, {}, false});
  const scenario::GuideStep* step = guide.current();
  if (step == nullptr) {
    pen.text({x, y + 28}, tr("All steps are done."),
             {.size = drawing::kName, .bold = true, .on = Tone::kFace});
    return y + 44;
  }
  const QString phase = exerciseWords(step->phase);
  const QString count = tr("%1 of %2").arg(guide.behind() + 1).arg(guide.steps().size());
  pen.text({x, y + 26},
           drawing::elideText(phase.isEmpty() ? tr("Next") : tr("Next: %1").arg(phase),
                              room - drawing::textWidth(count) - 10),
           {.tone = Tone::kInfo, .on = Tone::kFace});
  pen.text({a.right() - kPadding, y + 26}, count,
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = Tone::kFace});
  y += 26;
  const double end = a.bottom() - kFoot - 8;
  if (!paintStep(pen, y, end, style().reading, false)) paintStep(pen, y, end, 1, true);
  return y;
}

bool NotebookPart::paintStep(drawing::Pen& pen, double& y, double end, double t, bool cut) const {
  const scenario::GuideStep& step = *seat().guide()->current();
  const double x = area().left() + kPadding, room = area().width() - 2 * kPadding;
  const double name = drawing::kName * t, text = drawing::kText * t;
  const QStringList act = drawing::wrapText(exerciseWords(step.act), room, name, true);
  QStringList why = drawing::wrapText(exerciseWords(step.why), room, text);
  const double after_act = y + 1 + 27 * t * static_cast<double>(act.size());
  const auto lines = static_cast<qsizetype>((end - after_act) / (25 * t));
  if (why.size() > lines) {
    if (!cut) return false;
    why = why.mid(0, std::max<qsizetype>(0, lines));
    if (!why.isEmpty()) why.back() = drawing::elideText(why.back() + QLatin1String(" …"), room);
  }
  for (const QString& line : act)
    pen.text({x, y += 27 * t}, line, {.size = name, .bold = true, .on = Tone::kFace});
  y += 1;
  for (const QString& line : why)
    pen.text({x, y += 25 * t}, line, {.size = text, .on = Tone::kFace});
  y += 12;
  return true;
}

void NotebookPart::paintEntries(drawing::Pen& pen, double y) const {
  const QRectF& a = area();
  const double t = style().reading, text = drawing::kText * t;
  const double x = a.left() + kPadding, room = a.width() - 2 * kPadding;
  const double end = a.bottom() - kFoot - 12;
  for (const Entry& e : entries()) {
    const QString when = clockText(e.tick);
    const double w = drawing::textWidth(when, text);
    const QStringList what = fewLines(e.what, room - 30, text, true, 2);
    const QStringList how = fewLines(e.how, room - 40 - w, text, false, 2);
    const double row = 8 + (2 + 22.0 * static_cast<double>(what.size() + how.size())) * t;
    if (y + row > end) return;
    pen.line({x, y}, {x + room, y}, {drawing::kHairline, Tone::kHair, {}, false});
    const VerdictSign sign = signOf(e.sign);
    drawing::paintVerdict(pen, {x + 10, y + 18 * t}, sign);
    double line = y + t;
    for (const QString& words : what)
      pen.text({x + 30, line += 22 * t}, words, {.size = text, .bold = true, .on = Tone::kFace});
    for (const QString& words : how)
      pen.text({x + 30, line += 22 * t}, words,
               {.size = text,
                .tone = sign == VerdictSign::kNone ? Tone::kInk2 : drawing::toneOf(sign),
                .on = Tone::kFace});
    pen.text({x + room, line}, when,
             {.size = text, .anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = Tone::kFace});
    y += row;
  }
}

void NotebookPart::paint(drawing::Pen& pen) const {
  const QRectF& a = area();
  drawing::paintNotebookPage(pen, a);
  pen.text({a.left() + kPadding, a.top() + 44}, tr("Notebook"),
           {.size = drawing::kName, .bold = true, .on = Tone::kFace});
  pen.text({a.right() - kPadding, a.top() + 44}, modeText(seat().mode()),
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = Tone::kFace});
  shown_.looking ? paintLooking(pen) : paintNothing(pen);
  const double t = style().reading;
  double y =
      shown_.rank ? classRow(a, class_rows_ - 1, t).bottom() + 8 : judgeRow(a, t).bottom() + 6;
  y = paintNext(pen, y);
  paintEntries(pen, y);
}

}  // namespace cabwright::cab
