// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/lever.h"

#include <QtMath>
#include <algorithm>
#include <cmath>

#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

constexpr double kRim = 17;      // width of the toothed rim
constexpr double kPastEnd = 15;  // of the rim, past its end positions
constexpr double kUpright = 28;  // labels within this angle stand centred over the rim
constexpr double kKnobR = 17, kPressedR = 23;

struct Range {
  double from, to;
};

Range rimRange(double radius, std::span<const Detent> detents) {
  if (detents.empty()) return {-60, 60};
  const auto [low, high] =
      std::ranges::minmax_element(detents, {}, [](const Detent& d) { return d.angle; });
  const double past = qRadiansToDegrees(kPastEnd / radius);
  return {low->angle - past, high->angle + past};
}

bool isAt(const Detent& detent, double angle) { return std::abs(detent.angle - angle) < 0.5; }

// Baseline and anchor of a label.
std::pair<QPointF, Anchor> labelPlace(QPointF pivot, double radius, double angle) {
  if (std::abs(angle) < kUpright)
    return {pointAt(pivot, radius + 24, angle) + QPointF(0, 0.36 * kText), Anchor::kMiddle};
  return {pointAt(pivot, radius + 11, angle) + QPointF(0, 0.36 * kText - 2),
          angle > 0 ? Anchor::kStart : Anchor::kEnd};
}

void paintRim(Pen& pen, QPointF c, double radius, Range range, const LeverLook& look, Tone tone) {
  for (double a : {range.from, range.to})
    pen.line(pointAt(c, 14, a), pointAt(c, radius - kRim, a), {kThin, Tone::kRule});
  pen.sector(c, radius - kRim, radius, range.from, range.to, {kNorm, tone}, Tone::kFace);
  if (!look.wedge) return;
  const auto [from, to] = *look.wedge;
  constexpr int kSteps = 40;
  QPolygonF band;
  for (int i = 0; i <= kSteps; ++i) band << pointAt(c, radius - 2, from + (to - from) * i / kSteps);
  for (int i = kSteps; i >= 0; --i)
    band << pointAt(c, radius - 2 - 13.0 * i / kSteps, from + (to - from) * i / kSteps);
  QPainterPath shape;
  shape.addPolygon(band);
  pen.hatch(shape, Tone::kInk2, 3.6, 20, 1.1);
}

void paintBlocks(Pen& pen, QPointF c, double radius, double at, const LeverLook& look) {
  for (const LeverBlock& block : look.blocked) {
    pen.hatch(sectorShape(c, radius - kRim, radius, block.from, block.to), Tone::kBad, 5, 45, 1.6);
    const bool first = std::abs(block.from - at) < std::abs(block.to - at);
    const double stop = first ? block.from : block.to;
    pen.line(pointAt(c, radius - 30, stop), pointAt(c, radius + 5, stop), {kHeavy, Tone::kBad});
  }
}

void paintDetents(Pen& pen, QPointF c, double radius, std::span<const Detent> detents, double at,
                  const LeverLook& look, Tone tone) {
  for (const Detent& detent : detents) {
    if (!detent.plain) {
      pen.push(pointAt(c, radius - kRim, detent.angle), detent.angle);
      pen.path(outlineOf("M-6.5 -0.6 A6.5 0 1 6.5 -0.6"), {kNorm, tone}, Tone::kPaper);
      pen.line({-5.4, 0}, {5.4, 0}, {2.4, Tone::kPaper});
      pen.pop();
    }
    pen.line(pointAt(c, radius, detent.angle), pointAt(c, radius + 5, detent.angle), {kNorm, tone});
    if (detent.label.isEmpty()) continue;
    const bool here = isAt(detent, at) && !look.empty;
    const auto [baseline, anchor] = labelPlace(c, radius, detent.angle);
    pen.text(baseline, detent.label,
             {.size = kText + (here ? 1.5 : 0),
              .anchor = anchor,
              .bold = here,
              .tone = here && !look.out_of_reach ? Tone::kInk : Tone::kInk2});
  }
}

void paintSocket(Pen& pen, QPointF c, Tone tone) {
  const QRectF square(c.x() - 4.5, c.y() - 4.5, 9, 9);
  pen.circle(c, 12, {kNorm, tone}, Tone::kPaper);
  pen.hatch(rectShape(square), Tone::kRule, 4, 45, 1);
  pen.rect(square, {kThin, tone});
}

void paintArm(Pen& pen, QPointF c, double radius, double at, const LeverLook& look, Tone tone) {
  const bool held = !look.held.isEmpty();
  const Tone line = held ? Tone::kHand : tone;
  QPainterPath arm(QPointF(-7, 0));
  arm.lineTo(-4, -(radius - 20));
  arm.arcTo(-4, -(radius - 20) - 4, 8, 8, 180, -180);
  arm.lineTo(7, 0);
  arm.arcTo(-7, -7, 14, 14, 0, -180);
  arm.closeSubpath();
  pen.push(c, at);
  pen.path(arm, {kNorm, line}, held ? Tone::kWash : Tone::kFace);
  pen.pop();
  const QPointF knob = leverKnob(c, radius, at);
  pen.circle(knob, kKnobR, {held ? kBold : kNorm, line}, held ? Tone::kHand : Tone::kFace);
  if (look.pressed) pen.circle(knob, kPressedR, {kBold, Tone::kHand});
  if (look.focus) pen.circle(knob, look.pressed ? kPressedR + 5.5 : 24, {kFocus, Tone::kHand});
  if (held) {
    pen.text(knob + QPointF(0, 0.37 * kText), look.held,
             {.anchor = Anchor::kMiddle, .bold = true, .tone = Tone::kPaper, .on = Tone::kHand});
  } else {
    pen.circle(knob, 12.5, {kHairline, Tone::kHair});
  }
  pen.circle(c, 9, {kNorm, tone}, Tone::kFace);
  pen.circle(c, 2, kNoLine, tone);
}

void paintGhost(Pen& pen, QPointF c, double radius, double angle) {
  pen.push(c, angle);
  for (double side : {-1.0, 1.0})
    pen.line({side * 4, -14}, {side * 3, -(radius - 22)}, {kThin, Tone::kRule, {4, 4}, false});
  pen.pop();
}

}  // namespace

QPointF leverKnob(QPointF pivot, double radius, double at_angle) {
  return pointAt(pivot, 0.60 * radius, at_angle);
}

void paintLever(Pen& pen, QPointF pivot, double radius, std::span<const Detent> detents,
                double at_angle, const LeverLook& look) {
  const Tone tone = look.out_of_reach || look.empty ? Tone::kRule : Tone::kInk;
  paintRim(pen, pivot, radius, rimRange(radius, detents), look, tone);
  paintBlocks(pen, pivot, radius, at_angle, look);
  paintDetents(pen, pivot, radius, detents, at_angle, look, tone);
  if (look.ghost) paintGhost(pen, pivot, radius, *look.ghost);
  if (look.empty) {
    paintSocket(pen, pivot, tone);
    if (look.focus) pen.circle(pivot, 18, {kFocus, Tone::kHand});
  } else {
    paintArm(pen, pivot, radius, at_angle, look, tone);
  }
}

QRectF leverBounds(QPointF pivot, double radius, std::span<const Detent> detents) {
  const auto around = [](QPointF c, double r) {
    return QRectF(c.x() - r, c.y() - r, 2 * r, 2 * r);
  };
  const Range range = rimRange(radius, detents);
  QRectF box = around(pivot, 20) | around(pivot - QPointF(0, radius), 6);
  const double ring = kPressedR + 5.5 + kFocus / 2 + 0.5;
  for (double a : {range.from, range.to}) {
    box |= around(pointAt(pivot, radius, a), 6);
    box |= around(leverKnob(pivot, radius, a), ring);
  }
  for (const Detent& detent : detents) {
    const auto [baseline, anchor] = labelPlace(pivot, radius, detent.angle);
    const double size = kText + 1.5, width = textWidth(detent.label, size, true);
    const double left = anchor == Anchor::kMiddle ? width / 2 : anchor == Anchor::kEnd ? width : 0;
    box |= QRectF(baseline.x() - left - 1, baseline.y() - 0.84 * size, width + 2, 1.08 * size);
  }
  return box;
}

}  // namespace cabwright::drawing
