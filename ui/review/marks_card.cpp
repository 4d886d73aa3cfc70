// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_card.h"

#include <QCoreApplication>

#include "after/words.h"

namespace cabwright::review_room {

using drawing::Anchor;
using drawing::Tone;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MarkSheet)
};

constexpr double kPad = 12, kText = 46, kTop = 27, kLead = 23.5, kFoot = 11, kHeading = 36;
constexpr qsizetype kMostTitle = 4, kMostDetail = 2;

QStringList wrapped(const QString& words, double room, qsizetype most, bool bold) {
  if (words.isEmpty()) return {};
  QStringList lines = drawing::wrapText(words, room, drawing::kText, bold);
  if (lines.size() <= most) return lines;
  const QString rest = lines.mid(most - 1).join(QLatin1Char(' '));
  lines = lines.mid(0, most - 1);
  lines << drawing::elideText(rest, room, drawing::kText, bold);
  return lines;
}

QString numbered(const MarkRow& row) {
  return QString::number(row.number) + QLatin1String(". ") + row.title;
}

QStringList titleLines(const MarkRow& row, double width) {
  const double moment = row.moment.isEmpty() ? 0 : drawing::textWidth(row.moment) + 16;
  return wrapped(numbered(row), width - kText - kPad - moment, kMostTitle, true);
}

QStringList detailLines(const MarkRow& row, double width) {
  return wrapped(row.detail, width - kText - kPad, kMostDetail, false);
}

double widthOf(const QString& words, bool bold = false) {
  return drawing::textWidth(words, drawing::kText, bold);
}

QString arrow() { return QStringLiteral(" \u2192 "); }
QString dot() { return QStringLiteral(" \u00B7 "); }

// What follows the verdict on its line when there is room for it.
bool hasMarginBeside(const MarkRow& row, double width) {
  if (row.margin.isEmpty()) return true;
  double words = widthOf(row.verdict, true) + widthOf(dot() + row.margin);
  if (!row.was.isEmpty()) words += widthOf(row.was + arrow());
  const double points = row.points.isEmpty() ? 0 : widthOf(row.points) + 14;
  return kText + words + points <= width - kPad;
}

void paintHeading(drawing::Pen& pen, QSizeF size, const MarkRow& row) {
  pen.rect({0, 0, size.width(), size.height()}, drawing::kNoLine, Tone::kFace);
  const double right = widthOf(row.points);
  pen.text({size.width() - kPad, kTop}, row.points,
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = Tone::kFace});
  pen.text({kPad, kTop}, drawing::elideText(row.title, size.width() - 2 * kPad - right - 12),
           {.tone = Tone::kInk2, .on = Tone::kFace});
}

// "broken -> met", the recorded word struck through.
double paintVerdictWords(drawing::Pen& pen, QPointF at, const MarkRow& row, Tone on) {
  double x = at.x();
  if (!row.was.isEmpty()) {
    const double wide = pen.text({x, at.y()}, row.was, {.tone = Tone::kInk2, .on = on, .halo = 0});
    pen.line({x, at.y() - 6.2}, {x + wide, at.y() - 6.2}, {drawing::kThin, Tone::kInk2});
    x += wide + pen.text({x + wide, at.y()}, arrow(), {.tone = Tone::kInk2, .on = on});
  }
  return x + pen.text({x, at.y()}, row.verdict,
                      {.bold = true, .tone = drawing::toneOf(row.sign), .on = on});
}

// Where its moment stands.
QRectF momentBox(const MarkRow& row, double width) {
  if (row.moment.isEmpty()) return {};
  const double wide = widthOf(row.moment);
  return {width - kPad - wide, kTop - 20, wide, 27};
}

}  // namespace

double calcCardHeight(const MarkRow& row, double width) {
  if (row.rule.empty()) return kHeading;
  auto lines = titleLines(row, width).size() + 1 + detailLines(row, width).size();
  if (!hasMarginBeside(row, width)) ++lines;
  return kTop - 19 + kLead * static_cast<double>(lines) + kFoot;
}

void paintCard(drawing::Pen& pen, QSizeF size, const MarkRow& row, bool selected, bool focus) {
  if (row.rule.empty()) {
    paintHeading(pen, size, row);
    return;
  }
  const double w = size.width(), h = size.height();
  const Tone on = selected ? Tone::kWash : Tone::kFace;
  pen.rect({0, 0, w, h}, drawing::kNoLine, on);
  if (selected)
    pen.rect({3, 2, w - 6, h - 4}, {focus ? drawing::kFocus : drawing::kRing, Tone::kHand},
             Tone::kNone, 4);
  else
    pen.line({kPad, h - 0.5}, {w - kPad, h - 0.5}, {drawing::kHairline, Tone::kHair});
  drawing::paintVerdict(pen, {kPad + 13, kTop - 6.5}, row.sign, 9.5, on);
  double y = kTop;
  for (const QString& line : titleLines(row, w)) {
    pen.text({kText, y}, line, {.bold = true, .on = on});
    y += kLead;
  }
  if (const QRectF box = momentBox(row, w); !box.isEmpty()) {
    pen.text({box.left(), kTop}, row.moment, {.on = on});
    pen.line({box.left(), kTop + 5}, {box.right(), kTop + 5}, {drawing::kHairline, Tone::kInk2});
  }
  const double end = paintVerdictWords(pen, {kText, y}, row, on);
  pen.text({w - kPad, y}, row.points, {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = on});
  if (!row.margin.isEmpty()) {
    const bool beside = hasMarginBeside(row, w);
    if (!beside) y += kLead;
    pen.text({beside ? end : kText, y}, beside ? dot() + row.margin : row.margin, {.on = on});
  }
  y += kLead;
  for (const QString& line : detailLines(row, w)) {
    pen.text({kText, y}, line, {.tone = Tone::kInk2, .on = on});
    y += kLead;
  }
  if (row.commented)
    pen.text({kPad + 4, kTop + kLead}, QStringLiteral("\u201D"),
             {.size = drawing::kResult, .bold = true, .tone = Tone::kInfo, .on = on});
}

}  // namespace cabwright::review_room
