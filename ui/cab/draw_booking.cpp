// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_booking.h"
#include "drawing/outline.h"

namespace cabwright::cab {

using drawing::kHairline;
using drawing::kThin;
using drawing::Pen;
using drawing::Stroke;
using drawing::Tone;

namespace {

const Stroke kFine{kThin, Tone::kInk, {}, false};
const Stroke kFaint{kThin, Tone::kRule, {}, false};

void paintPaper(Pen& pen, const QRectF& box, int kind) {
  pen.rect(box, kFine, Tone::kFace, 1);
  pen.circle({box.center().x(), box.top() + 6}, 2.6, drawing::kNoLine, Tone::kInk);
  const double left = box.left() + 10, right = box.right() - 10;
  double y = box.top() + 20;
  if (kind % 3 == 0) {  // a heading
    pen.line({left + 8, y}, {right - 8, y}, {drawing::kHeavy, Tone::kInk2, {}, false});
    y += 14;
  }
  if (kind % 3 == 1) {  // a piece of track with a bar over it
    pen.line({left, y + 6}, {right, y + 6}, {});
    pen.line({left, y + 13}, {right, y + 13}, {});
    for (double x = left + 4; x < right; x += 11) pen.line({x, y + 3}, {x, y + 16}, kFaint);
    pen.line({box.center().x(), y - 2}, {box.center().x(), y + 21},
             {drawing::kBold, Tone::kInk, {}, false});
    y += 32;
  }
  for (int n = 0; y < box.bottom() - 8; y += 10, ++n) {
    const double end = (n + kind) % 4 == 3 ? left + 0.55 * (right - left) : right;
    pen.line({left, y}, {end, y}, kFaint);
  }
}

}  // namespace

void paintNoticeBoard(Pen& pen, const QRectF& box) {
  pen.rect(box.adjusted(-7, -7, 7, 7), {}, Tone::kFace, 3);
  pen.rect(box, kFine, Tone::kPaper);
  const double w = (box.width() - 64) / 3, h = (box.height() - 48) / 2;
  int kind = 0;
  for (int row = 0; row < 2; ++row) {
    for (int column = 0; column < 3; ++column, ++kind) {
      const double tall = h * (kind % 2 == 0 ? 1.0 : 0.86);
      paintPaper(pen,
                 {box.left() + 16 + column * (w + 16), box.top() + 16 + row * (h + 16), w, tall},
                 kind);
    }
  }
}

void paintKeyCupboard(Pen& pen, const QRectF& box) {
  // Its door stands open: seen nearly from the edge, with its lock.
  const double leaf = 30;
  pen.polygon({{box.topRight(),
                {box.right() + leaf, box.top() + 14},
                {box.right() + leaf, box.bottom() + 10},
                box.bottomRight()}},
              {}, Tone::kFace);
  pen.rect({box.right() + leaf - 10, box.center().y() - 14, 5, 28}, kFine, Tone::kPaper, 2);
  for (double y : {box.top() + 40, box.bottom() - 40})
    pen.rect({box.right() - 4, y - 12, 8, 24}, kFine, Tone::kPaper, 2);
  pen.rect(box, {drawing::kRing, Tone::kInk, {}, false}, Tone::kPaper, 2);
  pen.rect(box.adjusted(8, 8, -8, -8), kFaint, Tone::kNone, 2);
}

void paintDesk(Pen& pen, const QRectF& box) {
  const double slope = box.top() + 0.68 * box.height();
  // The sloping top, its front board, two legs, and the floor they stand on.
  pen.polygon({{{box.left() + 46, box.top()},
                {box.right() - 46, box.top()},
                {box.right(), slope},
                {box.left(), slope}}},
              {}, Tone::kFace);
  pen.line({box.left() + 44, box.top() + 6}, {box.right() - 44, box.top() + 6}, kFaint);
  pen.rect({box.left(), slope, box.width(), 18}, {}, Tone::kFace, 2);
  for (double x : {box.left() + 20, box.right() - 48})
    pen.rect({x, slope + 18, 28, box.bottom() - slope - 18}, {}, Tone::kFace);
  pen.rect({box.center().x() - 60, slope + 18, 120, 30}, kFine, Tone::kFace, 2);
  pen.circle({box.center().x(), slope + 33}, 4, kFine);
}

void paintOpenBook(Pen& pen, const QRectF& box) {
  const double x = box.center().x(), top = box.top(), foot = box.bottom();
  for (double out : {6.0, 0.0}) {
    QPainterPath pages({box.left() - out, top + 6 + out});
    pages.cubicTo(box.left() + 60, top - 6 + out, x - 40, top - 6 + out, x, top + 8 + out);
    pages.cubicTo(x + 40, top - 6 + out, box.right() - 60, top - 6 + out, box.right() + out,
                  top + 6 + out);
    pages.lineTo(box.right() + out + 10, foot + out);
    pages.cubicTo(box.right() - 50, foot - 12 + out, x + 40, foot - 12 + out, x, foot + 2 + out);
    pages.cubicTo(x - 40, foot - 12 + out, box.left() + 50, foot - 12 + out, box.left() - out - 10,
                  foot + out);
    pages.closeSubpath();
    pen.path(pages, out > 0 ? kFine : Stroke{}, Tone::kPaper);
  }
  pen.line({x, top + 8}, {x, foot + 2}, {});
  pen.line({x - 5, top + 7}, {x - 5, foot}, kFaint);
  // A pencil in the fold.
  pen.push({box.right() + 34, foot - 30}, 24);
  pen.path(drawing::outlineOf("M-4 -46 H4 V38 L0 48 L-4 38 Z"), kFine, Tone::kFace);
  pen.line({-4, 38}, {4, 38}, {kHairline, Tone::kInk, {}, false});
  pen.pop();
}

}  // namespace cabwright::cab
