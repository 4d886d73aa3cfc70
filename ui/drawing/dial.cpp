// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/dial.h"

#include <QtMath>
#include <algorithm>
#include <cmath>

#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

constexpr double kFirst = -135, kLast = 135;
// In radii: the scale's arc, and how far small, middle and large marks reach in from it.
constexpr double kArc = 0.935, kSmallEnd = 0.865, kMiddleEnd = 0.840, kLargeEnd = 0.815;
constexpr double kLargeDial = 90;
constexpr double kRimSize = 20, kCapHalf = 0.36;  // half a capital's height in sizes of type

bool isLarge(double r) { return r >= kLargeDial; }
// Where the unit stands: below the figures, and on a small dial clear of them.
double unitDown(double r) { return (isLarge(r) ? 0.76 : 0.87) * r; }
double figureSize(double r) { return isLarge(r) ? kFigure : 20; }
bool isMultiple(double value, double step) {
  if (step <= 0) return false;
  const double n = value / step;
  return std::abs(n - std::round(n)) < 1e-6;
}

QString figureOf(const DialScale& scale, double value) {
  double shown = value / scale.figure_divisor;
  if (std::abs(shown) < 1e-9) shown = 0;
  QString text = QString::number(std::abs(shown), 'g', 6);
  return shown < 0 ? QChar(0x2212) + text : text;
}

// How far a word's box reaches from its middle towards the clock angle.
double reachOf(double width, double size, double degrees) {
  const double a = qDegreesToRadians(degrees);
  return width / 2 * std::abs(std::sin(a)) + kCapHalf * size * std::abs(std::cos(a));
}

int countMarks(const DialScale& scale) {
  if (scale.minor <= 0) return 0;
  return static_cast<int>(std::lround((scale.high - scale.low) / scale.minor));
}

void paintScale(Pen& pen, QPointF c, double r, const DialScale& scale, Tone tone) {
  pen.arc(c, kArc * r, kFirst, kLast, {kThin, tone});
  for (int i = 0, n = countMarks(scale); i <= n; ++i) {
    const double value = scale.low + i * scale.minor;
    const bool large = isMultiple(value, scale.major);
    const bool middle = isMultiple(value, scale.middle);
    const double end = large ? kLargeEnd : middle ? kMiddleEnd : kSmallEnd;
    const double width = large ? kBold : middle ? kNorm : kThin;
    const double a = dialAngle(scale, value);
    pen.line(pointAt(c, kArc * r, a), pointAt(c, end * r, a), {width, tone});
  }
}

void paintFigures(Pen& pen, QPointF c, double r, const DialScale& scale, Tone tone) {
  const double size = figureSize(r);
  for (int i = 0, n = countMarks(scale); i <= n; ++i) {
    const double value = scale.low + i * scale.minor;
    if (!isMultiple(value, scale.major)) continue;
    const QRectF box = dialFigureBox(scale, c, r, value);
    pen.text(
        {box.center().x(), box.bottom()}, figureOf(scale, value),
        {.size = size, .anchor = Anchor::kMiddle, .tone = tone, .on = Tone::kFace, .halo = 3.5});
  }
}

void paintZones(Pen& pen, QPointF c, double r, const DialScale& scale) {
  for (const DialZone& zone : scale.zones)
    pen.hatch(sectorShape(c, kArc * r, r - kRing / 2, dialAngle(scale, zone.from),
                          dialAngle(scale, zone.to)),
              Tone::kInk2, 4, 45, kThin);
}

QPointF rimFigureCentre(QPointF c, double r, const DialScale& scale, const RimMark& mark) {
  const double a = dialAngle(scale, mark.value);
  const double reach = reachOf(textWidth(mark.figure, kRimSize, true), kRimSize, a);
  return pointAt(c, r + std::max(29.0, 17 + reach), a);
}

void paintRimMarks(Pen& pen, QPointF c, double r, const DialScale& scale, Tone tone) {
  for (const RimMark& mark : scale.marks) {
    const double a = dialAngle(scale, mark.value), half = qRadiansToDegrees(7 / r);
    pen.polygon(
        {{pointAt(c, r + 1.6, a), pointAt(c, r + 14, a - half), pointAt(c, r + 14, a + half)}},
        kNoLine, tone);
    pen.line(pointAt(c, kArc * r, a), pointAt(c, kMiddleEnd * r, a), {kBold, tone});
    const QPointF at = rimFigureCentre(c, r, scale, mark);
    pen.text(at + QPointF(0, kCapHalf * kRimSize), mark.figure,
             {.size = kRimSize,
              .anchor = Anchor::kMiddle,
              .bold = true,
              .tone = tone == Tone::kRule ? Tone::kInk2 : tone});
  }
}

// A blade that goes on as a hairline, which passes behind the figures to the smallest marks.
void paintNeedle(Pen& pen, QPointF c, double r, double degrees, NeedleKind kind) {
  const double k = isLarge(r) ? 1 : 0.85;
  const double blade = (isLarge(r) ? 0.47 : 0.40) * r, tail = 0.20 * r;
  pen.push(c, degrees);
  pen.line({0, -kSmallEnd * r + 0.5}, {0, -blade}, {2.1});
  QPainterPath shape;
  if (kind == NeedleKind::kSolid) {
    shape.moveTo(-1.2, -blade - 4);
    shape.lineTo(1.2, -blade - 4);
    shape.lineTo(5.6 * k, 0);
    shape.lineTo(3.8 * k, tail);
    shape.arcTo(-3.8 * k, tail - 3.8 * k, 7.6 * k, 7.6 * k, 0, -180);
    shape.lineTo(-5.6 * k, 0);
    shape.closeSubpath();
    pen.path(shape, kNoLine, Tone::kInk);
  } else {
    const double y = -blade + 6;
    pen.polygon({{{0, y - 10}, {6, y}, {0, y + 10}, {-6, y}}}, {2.0}, Tone::kFace);
    shape.moveTo(-2, y + 7.5);
    shape.lineTo(-4.4, 0);
    shape.lineTo(-3.4, tail);
    shape.arcTo(-3.4, tail - 3.4, 6.8, 6.8, 180, 180);
    shape.lineTo(4.4, 0);
    shape.lineTo(2, y + 7.5);
    pen.path(shape, {1.8}, Tone::kFace);
  }
  pen.pop();
}

void paintHub(Pen& pen, QPointF c, double r, Tone tone) {
  pen.circle(c, 0.068 * r, {kNorm, tone}, Tone::kFace);
  pen.circle(c, 1.8, kNoLine, tone);
}

}  // namespace

double dialAngle(const DialScale& scale, double value) {
  if (scale.high <= scale.low) return kFirst;
  const double share =
      (std::clamp(value, scale.low, scale.high) - scale.low) / (scale.high - scale.low);
  return kFirst + (kLast - kFirst) * share;
}

QRectF dialFigureBox(const DialScale& scale, QPointF centre, double r, double value) {
  const double size = figureSize(r), a = dialAngle(scale, value);
  const double width = textWidth(figureOf(scale, value), size);
  // The box ends a constant gap short of the marks.
  const QPointF at = pointAt(centre, (isLarge(r) ? 0.775 : 0.77) * r - reachOf(width, size, a), a);
  return {at.x() - width / 2, at.y() - kCapHalf * size, width, 2 * kCapHalf * size};
}

QRectF dialBounds(QPointF centre, double r, const DialScale& scale) {
  const double reach = r + 7 + kFocus / 2 + 0.5;
  QRectF box(centre - QPointF(reach, reach), centre + QPointF(reach, reach));
  for (const RimMark& mark : scale.marks) {
    const QPointF at = rimFigureCentre(centre, r, scale, mark);
    const double half = textWidth(mark.figure, kRimSize, true) / 2 + 1;
    box |= QRectF(at - QPointF(half, 0.74 * kRimSize - kCapHalf * kRimSize + 1),
                  at + QPointF(half, (kCapHalf + 0.2) * kRimSize));
  }
  return box;
}

void paintDial(Pen& pen, QPointF centre, double r, const DialScale& scale,
               std::span<const DialNeedle> needles, const DialLook& look) {
  const bool pale = look.out_of_reach || look.dark;
  const Tone tone = pale ? Tone::kRule : Tone::kInk;
  pen.circle(centre, r, {kRing, tone}, look.dark ? Tone::kShade : Tone::kFace);
  if (!look.dark) {
    paintZones(pen, centre, r, scale);
    paintScale(pen, centre, r, scale, tone);
  }
  paintRimMarks(pen, centre, r, scale, tone);
  const bool seen = !pale;
  if (seen) {
    for (NeedleKind kind : {NeedleKind::kHollow, NeedleKind::kSolid})
      for (const DialNeedle& needle : needles)
        if (needle.kind == kind) paintNeedle(pen, centre, r, dialAngle(scale, needle.value), kind);
  }
  if (!look.dark) {
    paintFigures(pen, centre, r, scale, pale ? Tone::kInk2 : Tone::kInk);
    if (!scale.unit.isEmpty())
      pen.text(centre + QPointF(0, unitDown(r)), scale.unit,
               {.anchor = Anchor::kMiddle, .tone = Tone::kInk2, .on = Tone::kFace});
  }
  if (seen && !needles.empty()) paintHub(pen, centre, r, tone);
  if (look.being_read && !look.focus) pen.circle(centre, r + 7, {kNorm, Tone::kInk, {3, 5}, false});
  if (look.focus) pen.circle(centre, r + 7, {kFocus, Tone::kHand});
  if (look.being_read && look.focus)
    pen.circle(centre, r + 3.5, {kThin, Tone::kInk, {3, 5}, false});
}

void paintNeedleSign(Pen& pen, QPointF at, NeedleKind kind) {
  pen.push(at, 0);
  if (kind == NeedleKind::kSolid) {
    pen.path(outlineOf("M0 -1 L26 -2 V0 L0 3 Q-4 1 0 -1 Z"), kNoLine, Tone::kInk);
  } else {
    pen.line({-2, 0}, {28, 0}, {1.8});
    pen.polygon({{{6, 0}, {13, -5}, {20, 0}, {13, 5}}}, {1.8}, Tone::kPaper);
  }
  pen.pop();
}

}  // namespace cabwright::drawing
