// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/furniture.h"

#include <cmath>

namespace cabwright::drawing {
namespace {

constexpr double kEdge = 20, kCentringMark = 9, kClear = 5;

}  // namespace

void paintFrame(Pen& pen, const SheetFrame& frame) {
  const double w = frame.width, h = frame.height, m = kCentringMark;
  pen.rect({kEdge, kEdge, w - 2 * kEdge, h - 2 * kEdge});
  pen.line({w / 2, kEdge}, {w / 2, kEdge + m});
  pen.line({w / 2, h - kEdge}, {w / 2, h - kEdge - m});
  pen.line({kEdge, h / 2}, {kEdge + m, h / 2});
  pen.line({w - kEdge, h / 2}, {w - kEdge - m, h / 2});
}

void paintCaption(Pen& pen, QPointF at, double width, const QString& words, const QString& right) {
  const double before = pen.text(at, words, {.tone = Tone::kInk2});
  double after = 0;
  if (!right.isEmpty())
    after =
        12 + pen.text(at + QPointF(width, 0), right, {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
  if (width - before - after > 30)
    pen.line(at + QPointF(before + 12, -6), at + QPointF(width - after, -6),
             {kHairline, Tone::kRule});
}

void paintTitleBlock(Pen& pen, const QRectF& box, const std::vector<std::vector<TitleCell>>& rows) {
  pen.rect(box);
  if (rows.empty()) return;
  const double height = box.height() / static_cast<double>(rows.size());
  double top = box.top();
  for (const std::vector<TitleCell>& row : rows) {
    if (&row != &rows.front()) pen.line({box.left(), top}, {box.right(), top}, {kThin});
    double left = box.left();
    for (const TitleCell& cell : row) {
      if (&cell != &row.front()) pen.line({left, top}, {left, top + height}, {kThin});
      const double size = kText + (cell.bold ? 0.5 : 0), room = cell.share * box.width() - 22;
      pen.text({left + 14, top + height / 2 + 0.36 * kText},
               elideText(cell.text, room, size, cell.bold),
               {.size = size, .bold = cell.bold, .tone = cell.bold ? Tone::kInk : Tone::kInk2});
      left += cell.share * box.width();
    }
    top += height;
  }
}

void paintLeader(Pen& pen, QPointF thing, QPointF bend, QPointF end, Tone tone) {
  pen.polyline({{thing, bend, end}}, {kThin, tone});
  pen.circle(thing, 3, kNoLine, tone);
}

void paintCentreLine(Pen& pen, QPointF from, QPointF to) {
  pen.line(from, to, {kHairline, Tone::kRule, {12, 4, 2, 4}, false});
}

void paintNotebookPage(Pen& pen, const QRectF& box) {
  pen.rect(box, {}, Tone::kFace, 3);
  const int stitches = static_cast<int>((box.width() - 40) / 20);
  const double first = box.center().x() - (stitches - 1) * 10.0;
  for (int i = 0; i < stitches; ++i)
    pen.line({first + i * 20 - 5, box.top() + 9}, {first + i * 20 + 5, box.top() + 9},
             {kThin, Tone::kRule});
}

void paintFocusRing(Pen& pen, const QRectF& around, double corner_r) {
  const double out = kClear + kFocus / 2;
  pen.rect(around.adjusted(-out, -out, out, out), {kFocus, Tone::kHand}, Tone::kNone, corner_r);
}

void paintThread(Pen& pen, QPointF hand, QPointF thing) {
  pen.line(hand, thing, {kNorm, Tone::kHand, {2, 5}, true});
}

}  // namespace cabwright::drawing
