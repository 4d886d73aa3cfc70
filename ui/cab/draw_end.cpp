// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_end.h"

#include "drawing/outline.h"

namespace cabwright::cab {

using drawing::kHairline;
using drawing::kNoLine;
using drawing::kNorm;
using drawing::kRing;
using drawing::kThin;
using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kRailOut_m = 0.7525, kWheelIn_m = 0.66, kWheelOut_m = 0.80, kWheelR_m = 0.457;

QPainterPath faceShape(const EndFrame& f, double inset_m) {
  const double i = inset_m;
  QPainterPath p(f.at(-1.33 + i, 0.98 + i));
  p.lineTo(f.at(-1.36 + i, 1.95));
  p.lineTo(f.at(-1.25 + i, 3.10));
  p.cubicTo(f.at(-1.21 + i, 3.46 - i), f.at(-0.72, kRoofTop_m - i), f.at(0, kRoofTop_m - i));
  p.cubicTo(f.at(0.72, kRoofTop_m - i), f.at(1.21 - i, 3.46 - i), f.at(1.25 - i, 3.10));
  p.lineTo(f.at(1.36 - i, 1.95));
  p.lineTo(f.at(1.33 - i, 0.98 + i));
  p.closeSubpath();
  return p;
}

// A window, a little narrower at the top, in its rubber.
void drawWindow(Pen& pen, const EndFrame& f, double side) {
  const auto pane = [&](double grow) {
    const double l = 0.10 - grow, b = 2.08 - grow, t = 2.92 + grow;
    QPainterPath p(f.at(side * (l + 0.08), t));
    p.lineTo(f.at(side * (1.02 + grow), t));
    p.quadTo(f.at(side * (1.09 + grow), t), f.at(side * (1.10 + grow), t - 0.08));
    p.lineTo(f.at(side * (1.17 + grow), b + 0.08));
    p.quadTo(f.at(side * (1.17 + grow), b), f.at(side * (1.09 + grow), b));
    p.lineTo(f.at(side * (l + 0.08), b));
    p.quadTo(f.at(side * l, b), f.at(side * l, b + 0.08));
    p.lineTo(f.at(side * l, t - 0.08));
    p.quadTo(f.at(side * l, t), f.at(side * (l + 0.08), t));
    return p;
  };
  pen.path(pane(0.035), {kNorm, Tone::kInk}, Tone::kFace);
  pen.path(pane(0), {kThin, Tone::kInk}, Tone::kPaper);
  // Inside: blind at the top, back of a seat, edge of the desk.
  pen.push();
  pen.painter().setClipPath(pane(-0.01), Qt::IntersectClip);
  pen.line(f.at(side * 0.1, 2.80), f.at(side * 1.15, 2.80), {kHairline, Tone::kRule});
  pen.rect(f.box(side * 0.63 - 0.19, 1.9, side * 0.63 + 0.19, 2.40), {kHairline, Tone::kRule},
           Tone::kNone, 14);
  pen.rect(f.box(side * 0.63 - 0.11, 2.42, side * 0.63 + 0.11, 2.56), {kHairline, Tone::kRule},
           Tone::kNone, 8);
  pen.rect(f.box(-1.2, 1.9, 1.2, 2.17), {kHairline, Tone::kRule}, Tone::kPaper);
  pen.pop();
}

void drawHorns(Pen& pen, const EndFrame& f) {
  pen.line(f.at(-1.02, 3.20), f.at(-0.58, 3.20), {kNorm, Tone::kInk});
  for (const auto& [x, r] : {std::pair{-0.92, 0.092}, std::pair{-0.69, 0.070}}) {
    const QPointF c = f.at(x, 3.20);
    pen.circle(c, r * f.scale, {kNorm, Tone::kInk}, Tone::kFace);
    pen.circle(c, r * f.scale * 0.74, {kThin, Tone::kInk2});
    pen.circle(c, r * f.scale * 0.26, kNoLine, Tone::kInk);
  }
}

void drawSockets(Pen& pen, const EndFrame& f) {
  for (double x : {-0.36, -0.12}) {
    const QPointF c = f.at(x, 1.60);
    const double r = 0.085 * f.scale;
    pen.rect(f.box(x - 0.10, 1.47, x + 0.10, 1.73), {kThin, Tone::kInk}, Tone::kFace, 3);
    pen.circle(c, r, {kNorm, Tone::kInk}, Tone::kFace);
    pen.circle(c, r * 0.55, {kThin, Tone::kRule});
    // The cap's hinge above and its spring catch below.
    pen.rect(f.box(x - 0.045, 1.685, x + 0.045, 1.72), {kThin, Tone::kInk}, Tone::kFace, 2);
    pen.rect(f.box(x - 0.02, 1.475, x + 0.02, 1.52), {kThin, Tone::kInk}, Tone::kFace, 2);
  }
}

}  // namespace

void drawTrackAcross(Pen& pen, const EndFrame& f) {
  const double half = 1.64;
  QPainterPath ballast(f.at(-half, -0.27));
  ballast.lineTo(f.at(-1.46, -0.13));
  ballast.lineTo(f.at(1.46, -0.13));
  ballast.lineTo(f.at(half, -0.27));
  ballast.closeSubpath();
  pen.dots(ballast, Tone::kRule, 7, 1.0);
  pen.polyline({{f.at(-half, -0.27), f.at(-1.46, -0.13), f.at(1.46, -0.13), f.at(half, -0.27)}},
               {kThin, Tone::kInk2});
  pen.rect(f.box(-1.28, -0.25, 1.28, -0.155), {kNorm, Tone::kInk}, Tone::kFace);
  for (double side : {-1.0, 1.0}) {
    const QPointF o = f.at(side * kRailOut_m, 0);
    const double k = f.scale;
    QPainterPath rail(o + QPointF(-0.035 * k, 0));
    for (const QPointF& p :
         {QPointF(0.035, 0), QPointF(0.035, 0.045), QPointF(0.01, 0.06), QPointF(0.01, 0.125),
          QPointF(0.07, 0.14), QPointF(0.07, 0.155), QPointF(-0.07, 0.155), QPointF(-0.07, 0.14),
          QPointF(-0.01, 0.125), QPointF(-0.01, 0.06), QPointF(-0.035, 0.045)})
      rail.lineTo(o + p * k);
    rail.closeSubpath();
    pen.path(rail, {kNorm, Tone::kInk}, Tone::kFace);
    pen.hatch(rail, Tone::kInk2, 4);
  }
}

void drawWheelsBehind(Pen& pen, const EndFrame& f) {
  pen.rect(f.box(-kWheelIn_m, kWheelR_m - 0.07, kWheelIn_m, kWheelR_m + 0.07), {kThin, Tone::kRule},
           Tone::kPaper);
  for (double side : {-1.0, 1.0}) {
    const double in = side * kWheelIn_m, out = side * kWheelOut_m;
    pen.rect(f.box(std::min(in, out), 0, std::max(in, out), 0.95), {kThin, Tone::kInk2},
             Tone::kFace);
    pen.line(f.at(side * 0.755, 0), f.at(side * 0.755, 0.95), {kHairline, Tone::kRule});
    const double flange = side * (kWheelIn_m - 0.035);
    pen.rect(f.box(std::min(in, flange), -0.028, std::max(in, flange), 0.95), {kThin, Tone::kInk2},
             Tone::kFace);
  }
}

void drawFace(Pen& pen, const EndFrame& f) {
  const QPainterPath face = faceShape(f, 0);
  pen.path(face, {kRing, Tone::kInk}, Tone::kFace);
  pen.path(faceShape(f, 0.035), {kHairline, Tone::kRule});
  pen.line(f.at(-1.355, 1.97), f.at(1.355, 1.97), {kThin, Tone::kInk2});
  pen.line(f.at(0, 1.97), f.at(0, 3.02), {kHairline, Tone::kRule});
  for (double side : {-1.0, 1.0}) drawWindow(pen, f, side);
  drawHorns(pen, f);
  // Air intake, opposite the trumpets.
  pen.rect(f.box(0.62, 3.10, 1.0, 3.30), {kThin, Tone::kInk}, Tone::kFace, 3);
  for (double y : {3.14, 3.18, 3.22, 3.26})
    pen.line(f.at(0.65, y), f.at(0.97, y), {kThin, Tone::kRule});
  drawSockets(pen, f);
  // Socket for a board, flag or lamp on a stick, below the second man's window.
  pen.rect(f.box(-0.66, 1.93, -0.58, 2.03), {kNorm, Tone::kInk}, Tone::kFace, 2);
  for (double side : {-1.0, 1.0}) {  // handrails
    pen.line(f.at(side * 1.28, 1.52), f.at(side * 1.265, 1.90),
             {drawing::kBold, Tone::kInk, {}, true});
    for (double y : {1.52, 1.90})
      pen.circle(f.at(side * (y < 1.7 ? 1.28 : 1.265), y), 3.4, {kThin, Tone::kInk}, Tone::kFace);
  }
}

void drawBufferBeam(Pen& pen, const EndFrame& f) {
  pen.rect(f.box(-1.29, 0.86, 1.29, 1.25), {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.line(f.at(-1.29, 1.21), f.at(1.29, 1.21), {kHairline, Tone::kRule});
  pen.line(f.at(-1.29, 0.90), f.at(1.29, 0.90), {kHairline, Tone::kRule});
  for (double side : {-1.0, 1.0}) {
    const QPointF c = f.at(side * 0.89, 1.055);
    pen.rect(f.box(side * 0.89 - 0.2, 0.875, side * 0.89 + 0.2, 1.235), {kThin, Tone::kInk2},
             Tone::kFace, 3);
    pen.circle(c, 0.215 * f.scale, {kNorm, Tone::kInk}, Tone::kFace);
    pen.circle(c, 0.195 * f.scale, {kHairline, Tone::kRule});
    pen.circle(c, 0.045 * f.scale, {kThin, Tone::kInk2});
    for (double y : {0.93, 1.18}) pen.circle(f.at(side * 1.22, y), 2.6, {kThin, Tone::kInk2});
  }
  // Plate of the drawgear.
  pen.rect(f.box(-0.16, 0.90, 0.16, 1.21), {kThin, Tone::kInk}, Tone::kFace, 3);
  for (double x : {-0.125, 0.125}) {
    for (double y : {0.935, 1.175}) pen.circle(f.at(x, y), 2.8, {kThin, Tone::kInk2});
  }
}

void drawLifeguards(Pen& pen, const EndFrame& f) {
  for (double side : {-1.0, 1.0}) {
    QPainterPath bar(f.at(side * 0.68, 0.86));
    bar.lineTo(f.at(side * 0.80, 0.86));
    bar.lineTo(f.at(side * 0.80, 0.64));
    bar.lineTo(f.at(side * 0.765, 0.58));
    bar.lineTo(f.at(side * 0.765, 0.20));
    bar.lineTo(f.at(side * 0.79, 0.09));
    bar.lineTo(f.at(side * 0.70, 0.09));
    bar.lineTo(f.at(side * 0.725, 0.20));
    bar.lineTo(f.at(side * 0.725, 0.58));
    bar.lineTo(f.at(side * 0.68, 0.64));
    bar.closeSubpath();
    pen.path(bar, {kNorm, Tone::kInk}, Tone::kFace);
    for (double y : {0.80, 0.70}) pen.circle(f.at(side * 0.74, y), 3.2, {kThin, Tone::kInk});
  }
}

void drawSteps(Pen& pen, const EndFrame& f) {
  for (double side : {-1.0, 1.0}) {
    for (double x : {0.98, 1.28})
      pen.rect(f.box(side * x - 0.018, 0.34, side * x + 0.018, 0.98), {kThin, Tone::kInk},
               Tone::kFace);
    for (double y : {0.62, 0.34}) {
      const QRectF tread = f.box(side * 1.13 - 0.19, y - 0.02, side * 1.13 + 0.19, y + 0.035);
      pen.rect(tread, {kNorm, Tone::kInk}, Tone::kFace, 1.5);
      for (int k = 1; k < 9; ++k) {
        const double x = tread.left() + tread.width() * k / 9;
        pen.line({x, tread.top() + 2}, {x, tread.bottom() - 2}, {kHairline, Tone::kRule});
      }
    }
  }
}

}  // namespace cabwright::cab
