// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/handbrake.h"

#include <algorithm>

namespace cabwright::drawing {
namespace {

constexpr int kTeeth = 20;
constexpr double kHowFar = 9;  // arc outside the wheel that shows how far it is on
constexpr double kArcFrom = -120, kArcTo = 100;

// The pawl's pivot stands right below the wheel.
QPointF pawlPivot(QPointF c, double radius) { return c + QPointF(0.62 * radius, radius + 9); }

void paintWheel(Pen& pen, QPointF c, double radius, const HandbrakeLook& look) {
  const bool held = !look.held.isEmpty();
  const Tone tone = held ? Tone::kHand : Tone::kInk;
  pen.circle(c, radius, {held ? kBold : kNorm, tone}, held ? Tone::kWash : Tone::kFace);
  pen.circle(c, radius - 9, {kNorm, tone}, Tone::kPaper);
  for (int i = 0; i < 4; ++i) {
    const double a = look.turn_deg + i * 90;
    for (double side : {-3.0, 3.0}) {
      const QPointF aside = pointAt({}, side, a + 90);
      pen.line(pointAt(c, 0.6 * radius, a) + aside, pointAt(c, radius - 9, a) + aside,
               {kThin, tone});
    }
  }
  QPolygonF ratchet;
  for (int i = 0; i < kTeeth; ++i) {
    const double a = i * 360.0 / kTeeth;
    ratchet << pointAt(c, 0.50 * radius, a) << pointAt(c, 0.64 * radius, a + 2)
            << pointAt(c, 0.50 * radius, a + 15);
  }
  pen.polygon(ratchet, {kThin}, Tone::kFace);
  pen.circle(c, 8, {}, Tone::kPaper);
  pen.circle(c, 2, kNoLine, Tone::kInk);
}

void paintPawl(Pen& pen, QPointF c, double radius, bool in) {
  const QPointF pivot = pawlPivot(c, radius);
  const QPointF tip = in ? pointAt(c, 0.56 * radius, 160) : pointAt(c, 0.84 * radius, 146);
  pen.polygon({{tip, pivot + QPointF(3, -7), pivot + QPointF(5, 4), pivot + QPointF(-7, 4)}}, {},
              in ? Tone::kInk : Tone::kPaper);
  pen.circle(pivot, 4.2, {}, Tone::kFace);
}

void paintHowFar(Pen& pen, QPointF c, double radius, double on) {
  const double end = kArcFrom + (kArcTo - kArcFrom) * std::clamp(on, 0.0, 1.0);
  pen.arc(c, radius + kHowFar, kArcFrom, kArcTo, {kThin, Tone::kRule});
  for (double a : {kArcFrom, kArcTo})
    pen.line(pointAt(c, radius + kHowFar - 4, a), pointAt(c, radius + kHowFar + 4, a), {kNorm});
  if (end > kArcFrom) pen.arc(c, radius + kHowFar, kArcFrom, end, {kFocus});
}

}  // namespace

QPointF handbrakePawl(QPointF centre, double radius) {
  return (pointAt(centre, 0.56 * radius, 160) + pawlPivot(centre, radius)) / 2;
}

void paintHandbrake(Pen& pen, QPointF centre, double radius, const HandbrakeLook& look) {
  paintHowFar(pen, centre, radius, look.on);
  paintWheel(pen, centre, radius, look);
  paintPawl(pen, centre, radius, look.pawl_in);
  if (look.focus) pen.circle(centre, radius + 3.5, {kFocus, Tone::kHand});
  if (look.pawl_focus)
    pen.circle(handbrakePawl(centre, radius), 0.36 * radius + 10, {kFocus, Tone::kHand});
}

QRectF handbrakeBounds(QPointF centre, double radius) {
  const double reach = radius + kHowFar + 5;
  const QRectF wheel(centre - QPointF(reach, reach), centre + QPointF(reach, reach));
  const double ring = 0.36 * radius + 10 + kFocus / 2 + 0.5;
  const QPointF pawl = handbrakePawl(centre, radius), pivot = pawlPivot(centre, radius);
  return wheel | QRectF(pawl - QPointF(ring, ring), pawl + QPointF(ring, ring)) |
         QRectF(pivot - QPointF(9, 9), pivot + QPointF(9, 9));
}

}  // namespace cabwright::drawing
