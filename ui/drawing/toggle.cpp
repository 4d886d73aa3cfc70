// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/toggle.h"

#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

constexpr double kHalfWidth = 36;
constexpr double kRimR = 34, kKnobAt = 21, kKnobR = 10, kSwing = 42, kPivotBelow = 15;
constexpr double kBodyR = 14;

Tone lineTone(const ToggleLook& look) { return look.out_of_reach ? Tone::kRule : Tone::kInk; }

void paintSwitch(Pen& pen, QPointF c, const ToggleLook& look) {
  const bool held = !look.held.isEmpty();
  const Tone tone = lineTone(look), moving = held ? Tone::kHand : tone;
  const QPointF pivot = c + QPointF(0, kPivotBelow);
  pen.sector(pivot, kRimR - 8, kRimR, -kSwing - 16, kSwing + 16, {kNorm, tone}, Tone::kFace);
  for (double a : {-kSwing, kSwing})
    pen.line(pointAt(pivot, kRimR - 8, a), pointAt(pivot, kRimR, a), {kThin, tone});
  pen.push(pivot, look.is_on ? kSwing : -kSwing);
  pen.path(outlineOf("M-4.5 0 L-3 -20 h6 L4.5 0 Z"), {kNorm, moving},
           held ? Tone::kWash : Tone::kFace);
  pen.pop();
  const QPointF knob = pointAt(pivot, kKnobAt, look.is_on ? kSwing : -kSwing);
  pen.circle(knob, kKnobR, {held ? kBold : kNorm, moving}, held ? Tone::kHand : Tone::kFace);
  if (held)
    pen.text(knob + QPointF(0, 0.37 * kText), look.held,
             {.anchor = Anchor::kMiddle, .bold = true, .tone = Tone::kPaper, .on = Tone::kHand});
  pen.circle(pivot, 5.5, {kNorm, tone}, Tone::kFace);
}

void paintCock(Pen& pen, QPointF c, const ToggleLook& look) {
  const bool held = !look.held.isEmpty();
  const Tone tone = lineTone(look), moving = held ? Tone::kHand : tone;
  for (double y : {-6.0, 6.0})
    pen.line(c + QPointF(-kHalfWidth, y), c + QPointF(kHalfWidth, y), {kNorm, tone});
  pen.circle(c, kBodyR, {kNorm, tone}, Tone::kFace);
  // The bore of the plug, then the bar that turns with it.
  pen.push(c, look.is_on ? 90 : 0);
  pen.path(outlineOf("M-4 14 V-18 a4 0 1 8 0 V14 a4 0 1 -8 0 Z"), {held ? kBold : kNorm, moving},
           held ? Tone::kWash : Tone::kFace);
  pen.line({0, -17}, {0, -12}, {kBold, moving});
  pen.pop();
  if (held) {
    pen.circle(c, kKnobR, kNoLine, Tone::kHand);
    pen.text(c + QPointF(0, 0.37 * kText), look.held,
             {.anchor = Anchor::kMiddle, .bold = true, .tone = Tone::kPaper, .on = Tone::kHand});
  } else {
    pen.circle(c, 3.2, {kThin, tone}, Tone::kFace);
  }
}

void paintWord(Pen& pen, QPointF baseline, Anchor anchor, const QString& word, bool here,
               bool pale) {
  if (word.isEmpty()) return;
  pen.text(baseline, word,
           {.size = kText + (here ? 1.5 : 0),
            .anchor = anchor,
            .bold = here,
            .tone = here && !pale ? Tone::kInk : Tone::kInk2});
}

}  // namespace

void paintToggle(Pen& pen, QPointF centre, const ToggleLook& look) {
  if (look.cock) {
    paintCock(pen, centre, look);
  } else {
    paintSwitch(pen, centre, look);
  }
  const QPointF aside(kHalfWidth + 8, 0), drop(0, 0.36 * kText);
  paintWord(pen, centre - aside + drop, Anchor::kEnd, look.off, !look.is_on, look.out_of_reach);
  paintWord(pen, centre + aside + drop, Anchor::kStart, look.on, look.is_on, look.out_of_reach);
  if (look.focus)
    pen.rect({centre.x() - kHalfWidth - 2, centre.y() - 25, 2 * kHalfWidth + 4, 52},
             {kFocus, Tone::kHand}, Tone::kNone, 8);
}

QRectF toggleBounds(QPointF centre, const ToggleLook& look) {
  QRectF box(centre.x() - kHalfWidth - 4, centre.y() - 27, 2 * kHalfWidth + 8, 56);
  const double size = kText + 1.5;
  if (!look.off.isEmpty()) box.setLeft(box.left() - textWidth(look.off, size, true) - 5);
  if (!look.on.isEmpty()) box.setRight(box.right() + textWidth(look.on, size, true) + 5);
  return box;
}

}  // namespace cabwright::drawing
