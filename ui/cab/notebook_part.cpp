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

constexpr double kPadding = 18, kHead = 58, kLookBlock = 150, kFoot = 44, kRow = 50;

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

void NotebookPart::setSeen(unit::Item item, const QString& words) {
  looked_ = item;
  seen_ = words;
  update();
  announceValue();
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
  r.value = shown_.looking ? nameOf(*shown_.looking) + QLatin1String(": ") + seen_
                           : tr("nothing is being looked at");
  if (showsHint() && seat().guide()->current() != nullptr) {
    const scenario::GuideStep& step = *seat().guide()->current();
    r.description = tr("Next: %1 %2").arg(exerciseWords(step.act), exerciseWords(step.why));
  }
  return r;
}

QRectF NotebookPart::judgeArea(const QRectF& page, int which) {
  const double w = (page.width() - 2 * kPadding + 10) / 3;
  return {page.left() + kPadding - 5 + w * which, page.top() + kHead + 104, w, 40};
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
      how += QLatin1String(", ") + fromText(unit::letterOf(j.said_class));
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

double NotebookPart::paintLooking(drawing::Pen& pen) const {
  const QRectF& a = area();
  const double x = a.left() + kPadding, room = a.width() - 2 * kPadding;
  const double y = a.top() + kHead;
  if (!shown_.looking || looked_ != shown_.looking) {
    pen.text({x, y + 30}, tr("Nothing is being looked at."),
             {.tone = Tone::kInk2, .on = Tone::kFace});
    pen.paragraph({x, y + 56},
                  tr("Click a thing on the sheet, look as long as it takes, then judge."), room,
                  {.tone = Tone::kInk2, .on = Tone::kFace}, 25);
    return y + kLookBlock;
  }
  pen.text({x, y + 28}, drawing::elideText(nameOf(*shown_.looking), room, drawing::kName, true),
           {.size = drawing::kName, .bold = true, .on = Tone::kFace});
  const bool clear = shown_.share >= 40;
  QStringList lines = drawing::wrapText(clear ? seen_ : tr("looking …"), room);
  if (lines.size() > 2) {
    lines = lines.mid(0, 2);
    lines[1] = drawing::elideText(lines[1] + QLatin1String(" …"), room);
  }
  for (qsizetype k = 0; k < lines.size(); ++k)
    pen.text({x, y + 54 + 24.0 * static_cast<double>(k)}, lines[k], {.on = Tone::kFace});
  const double end = y + 94;
  pen.line({x, end}, {x + room, end}, {drawing::kHairline, Tone::kHair, {}, false});
  pen.line({x, end}, {x + room * shown_.share / 40, end}, {drawing::kBold, Tone::kHand, {}, false});
  return y + kLookBlock;
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
  pen.text({x, y + 26}, phase.isEmpty() ? tr("Next") : tr("Next: %1").arg(phase),
           {.tone = Tone::kInfo, .on = Tone::kFace});
  pen.text({a.right() - kPadding, y + 26},
           tr("%1 of %2").arg(guide.behind() + 1).arg(guide.steps().size()),
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = Tone::kFace});
  y = pen.paragraph({x, y + 54}, exerciseWords(step->act), room,
                    {.size = drawing::kName, .bold = true, .on = Tone::kFace}, 27);
  y = pen.paragraph({x, y + 1}, exerciseWords(step->why), room, {.on = Tone::kFace}, 25);
  return y - 6;
}

void NotebookPart::paintEntries(drawing::Pen& pen, double y) const {
  const QRectF& a = area();
  const double x = a.left() + kPadding, room = a.width() - 2 * kPadding;
  const double end = a.bottom() - kFoot - 12;
  for (const Entry& e : entries()) {
    if (y + kRow > end) return;
    pen.line({x, y}, {x + room, y}, {drawing::kHairline, Tone::kHair, {}, false});
    const VerdictSign sign = signOf(e.sign);
    drawing::paintVerdict(pen, {x + 10, y + 18}, sign);
    const QString when = clockText(e.tick);
    const double w = drawing::textWidth(when);
    pen.text({x + 30, y + 23}, drawing::elideText(e.what, room - 30, drawing::kText, true),
             {.bold = true, .on = Tone::kFace});
    pen.text({x + 30, y + 45}, drawing::elideText(e.how, room - 40 - w),
             {.tone = sign == VerdictSign::kNone ? Tone::kInk2 : drawing::toneOf(sign),
              .on = Tone::kFace});
    pen.text({x + room, y + 45}, when,
             {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = Tone::kFace});
    y += kRow;
  }
}

void NotebookPart::paint(drawing::Pen& pen) const {
  const QRectF& a = area();
  drawing::paintNotebookPage(pen, a);
  pen.text({a.left() + kPadding, a.top() + 44}, tr("Notebook"),
           {.size = drawing::kName, .bold = true, .on = Tone::kFace});
  pen.text({a.right() - kPadding, a.top() + 44}, modeText(seat().mode()),
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = Tone::kFace});
  double y = paintLooking(pen);
  y = paintNext(pen, y);
  paintEntries(pen, y);
}

}  // namespace cabwright::cab
