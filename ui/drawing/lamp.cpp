// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/lamp.h"

#include <algorithm>

namespace cabwright::drawing {
namespace {

void paintLensSign(Pen& pen, QPointF c, double k, LampColor color) {
  const Tone tone = Tone::kBezel;
  switch (color) {
    case LampColor::kRed:
      pen.rect({c.x() - k, c.y() - k, 2 * k, 2 * k}, kNoLine, tone);
      break;
    case LampColor::kYellow:
      pen.polygon({{c + QPointF(0, -1.2 * k), c + QPointF(1.15 * k, 0.8 * k),
                    c + QPointF(-1.15 * k, 0.8 * k)}},
                  kNoLine, tone);
      break;
    case LampColor::kGreen:
      pen.circle(c, k, kNoLine, tone);
      break;
    case LampColor::kBlue:
      pen.rect({c.x() - 1.4 * k, c.y() - 0.45 * k, 2.8 * k, 0.9 * k}, kNoLine, tone);
      break;
    case LampColor::kWhite:
      break;
  }
}

void paintLit(Pen& pen, QPointF c, double r, const LampLook& look) {
  const double bright = std::clamp(look.brightness, 0.0, 1.0);
  pen.circle(c, r, {}, Tone::kBezel);
  pen.push();
  pen.painter().setOpacity(0.45 + 0.55 * bright);
  pen.circle(c, 0.70 * r, kNoLine, toneOf(look.color));
  pen.pop();
  for (int i = 0; i < 12; ++i) {
    const double length = (i % 3 == 0 ? 5.5 : 3.5) * (0.35 + 0.65 * bright);
    pen.line(pointAt(c, r + 4.5, i * 30), pointAt(c, r + 4.5 + length, i * 30));
  }
  if (look.mixed) paintLensSign(pen, c, 0.30 * r, look.color);
}

}  // namespace

Tone toneOf(LampColor color) {
  switch (color) {
    case LampColor::kRed:
      return Tone::kRed;
    case LampColor::kYellow:
      return Tone::kYellow;
    case LampColor::kGreen:
      return Tone::kGreen;
    case LampColor::kBlue:
      return Tone::kBlue;
    case LampColor::kWhite:
      break;
  }
  return Tone::kWhite;
}

void paintLamp(Pen& pen, QPointF centre, const LampLook& look, const QString& word, double r) {
  const bool seen_lit = look.lit && !look.out_of_reach;
  if (seen_lit) {
    paintLit(pen, centre, r, look);
  } else {
    pen.circle(centre, r, {kNorm, look.out_of_reach ? Tone::kRule : Tone::kInk}, Tone::kPaper);
    if (!look.out_of_reach) pen.hatch(circleShape(centre, 0.70 * r), Tone::kRule, 5, -45, 1.2);
    pen.circle(centre, 0.70 * r, {kThin, Tone::kRule});
  }
  if (!word.isEmpty())
    pen.text(
        centre + QPointF(0, r + 29), word,
        {.anchor = Anchor::kMiddle, .bold = seen_lit, .tone = seen_lit ? Tone::kInk : Tone::kInk2});
  if (look.focus) pen.circle(centre, r + 15, {kFocus, Tone::kHand});
}

QRectF lampBounds(QPointF centre, const QString& word, double r) {
  const double reach = r + 15 + kFocus / 2 + 0.5;
  QRectF box(centre - QPointF(reach, reach), centre + QPointF(reach, reach));
  if (word.isEmpty()) return box;
  const double half = textWidth(word, kText, true) / 2 + 1;
  return box |
         QRectF(centre.x() - half, centre.y() + r + 29 - 0.74 * kText, 2 * half, 0.94 * kText);
}

}  // namespace cabwright::drawing
