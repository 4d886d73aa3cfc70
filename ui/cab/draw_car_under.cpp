// SPDX-License-Identifier: GPL-3.0-or-later
// Bogies and what hangs between them.
#include "cab/draw_car.h"

namespace cabwright::cab {

using drawing::kBold;
using drawing::kHairline;
using drawing::kNorm;
using drawing::kThin;
using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kWheelR_m = 0.457;

void drawWheel(Pen& pen, const CarFrame& f, double at_m) {
  const QPointF c = f.at(at_m, kWheelR_m);
  const double k = f.scale;
  pen.circle(c, kWheelR_m * k, {kNorm, Tone::kInk}, Tone::kFace);
  pen.circle(c, (kWheelR_m - 0.07) * k, {kThin, Tone::kInk2});
  pen.circle(c, 0.14 * k, {kThin, Tone::kInk2});
  for (double side : {-1.0, 1.0}) {  // blocks and their hangers
    const double x = at_m + side * (kWheelR_m + 0.055);
    pen.line(f.at(x, 0.50), f.at(x + side * 0.03, 0.80), {kThin, Tone::kInk});
    pen.rect(f.box(x - 0.04, 0.30, x + 0.05, 0.58), {kThin, Tone::kInk}, Tone::kFace, 2);
  }
}

void drawAxlebox(Pen& pen, const CarFrame& f, double at_m) {
  pen.rect(f.box(at_m - 0.17, 0.31, at_m + 0.17, 0.62), {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.circle(f.at(at_m, kWheelR_m), 0.085 * f.scale, {kThin, Tone::kInk2});
  for (int leaf = 0; leaf < 4; ++leaf) {
    const double half = 0.56 - 0.12 * leaf, y = 0.76 - 0.035 * leaf;
    QPainterPath p(f.at(at_m - half, y));
    p.quadTo(f.at(at_m, y - 0.09), f.at(at_m + half, y));
    pen.path(p, {kThin, Tone::kInk});
  }
  pen.rect(f.box(at_m - 0.06, 0.60, at_m + 0.06, 0.76), {kThin, Tone::kInk}, Tone::kFace, 1);
}

void drawTank(Pen& pen, const CarFrame& f, double from, double to, double low, double high) {
  const QRectF tank = f.box(from, low, to, high);
  pen.rect(tank, {kNorm, Tone::kInk}, Tone::kFace, tank.height() * 0.28);
  for (double share : {0.24, 0.76}) {
    const double x = tank.left() + share * tank.width();
    pen.rect(QRectF(x - 3, f.at(0, 0.83).y(), 6, tank.bottom() - f.at(0, 0.83).y() + 2),
             {kThin, Tone::kInk}, Tone::kFace);
  }
}

// Cylinder with its rod, and the vessel with its drain: both cars have them.
void drawBrakeGear(Pen& pen, const CarFrame& f) {
  const QRectF drum = f.box(kCylinder_m - 0.27, 0.36, kCylinder_m + 0.27, 0.80);
  pen.rect(drum, {kNorm, Tone::kInk}, Tone::kFace, 6);
  pen.line(drum.bottomLeft() + QPointF(3, -7), drum.bottomRight() + QPointF(-3, -7),
           {kThin, Tone::kInk2});
  pen.line(f.at(kCylinder_m, 0.36), f.at(kCylinder_m, 0.17), {kBold, Tone::kInk});
  pen.line(f.at(kCylinder_m - 0.2, 0.16), f.at(kCylinder_m + 0.25, 0.20), {kNorm, Tone::kInk});
  drawTank(pen, f, kDrain_m - 0.5, kDrain_m + 0.45, 0.34, 0.72);
  pen.line(f.at(kDrain_m, 0.34), f.at(kDrain_m, 0.16), {kNorm, Tone::kInk});
  pen.circle(f.at(kDrain_m, 0.25), 3, {kThin, Tone::kInk}, Tone::kFace);
  // Pull rods to both bogies.
  pen.line(f.at(kCylinder_m - 0.2, 0.16), f.at(kInnerBogie_m + 1.9, 0.16), {kThin, Tone::kInk2});
  pen.line(f.at(kCylinder_m + 0.25, 0.20), f.at(kOuterBogie_m - 1.9, 0.20), {kThin, Tone::kInk2});
}

}  // namespace

void drawBogie(Pen& pen, const CarFrame& f, double c) {
  for (double side : {-1.0, 1.0}) drawWheel(pen, f, c + side * kHalfBase_m);
  QPainterPath frame(f.at(c - 1.78, 0.86));
  for (const QPointF& p :
       {QPointF(1.78, 0.86), QPointF(1.78, 0.76), QPointF(0.55, 0.72), QPointF(0.42, 0.50),
        QPointF(-0.42, 0.50), QPointF(-0.55, 0.72), QPointF(-1.78, 0.76)})
    frame.lineTo(f.at(c + p.x(), p.y()));
  frame.closeSubpath();
  pen.path(frame, {kNorm, Tone::kInk}, Tone::kFace);
  // Bolster spring in its window.
  pen.rect(f.box(c - 0.22, 0.52, c + 0.22, 0.74), {kThin, Tone::kInk2}, Tone::kPaper, 2);
  for (int k = 0; k < 4; ++k)
    pen.line(f.at(c - 0.18, 0.555 + 0.045 * k), f.at(c + 0.18, 0.58 + 0.045 * k),
             {kThin, Tone::kInk2});
  for (double side : {-1.0, 1.0}) drawAxlebox(pen, f, c + side * kHalfBase_m);
}

void drawUnderMotorCar(Pen& pen, const CarFrame& f) {
  // Cardan shaft in its guard, from the gearbox to the driven axle.
  const double from = kDetailWheel_m + 0.75, to = 6.35;
  pen.rect(f.box(from, 0.435, to, 0.505), {kThin, Tone::kInk}, Tone::kFace);
  for (double x : {from, from + 0.12, to - 0.18, to - 0.06})
    pen.rect(f.box(x, 0.38, x + 0.06, 0.56), {kThin, Tone::kInk}, Tone::kFace);
  for (double x : {from + 0.35, to - 0.45}) {  // straps of the guard
    pen.rect(f.box(x, 0.28, x + 0.10, 0.84), {kThin, Tone::kInk}, Tone::kFace, 2);
  }
  pen.rect(f.box(from + 0.30, 0.27, to - 0.30, 0.32), {kThin, Tone::kInk}, Tone::kFace);
  // Gearbox, coupling and engine, lying.
  pen.rect(f.box(6.35, 0.26, 7.25, 0.74), {kNorm, Tone::kInk}, Tone::kFace, 5);
  for (double x : {6.62, 6.84, 7.06})
    pen.line(f.at(x, 0.28), f.at(x, 0.66), {kHairline, Tone::kRule});
  pen.rect(f.box(7.25, 0.42, 7.42, 0.52), {kThin, Tone::kInk}, Tone::kFace);
  pen.rect(f.box(7.42, 0.22, 7.86, 0.76), {kNorm, Tone::kInk}, Tone::kFace, 7);
  pen.rect(f.box(7.86, 0.24, 10.45, 0.78), {kNorm, Tone::kInk}, Tone::kFace, 4);
  for (int k = 0; k < 6; ++k) {
    const double x = 8.02 + k * 0.40;
    pen.rect(f.box(x, 0.30, x + 0.30, 0.52), {kThin, Tone::kInk2}, Tone::kFace, 3);
  }
  pen.line(f.at(7.95, 0.58), f.at(10.38, 0.58), {kThin, Tone::kInk2});
  drawBrakeGear(pen, f);
}

void drawUnderTrailer(Pen& pen, const CarFrame& f) {
  // Battery box with its lid, doors and clips.
  const QRectF box = f.box(4.85, 0.22, 6.25, 0.78);
  pen.rect(box, {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.line(f.at(4.85, 0.58), f.at(6.25, 0.58), {kThin, Tone::kInk2});
  pen.line(f.at(5.55, 0.22), f.at(5.55, 0.58), {kThin, Tone::kInk2});
  for (double x : {5.15, 5.9})
    pen.rect(f.box(x, 0.50, x + 0.08, 0.63), {kThin, Tone::kInk}, Tone::kFace);
  drawTank(pen, f, 6.55, 8.55, 0.24, 0.76);
  // Heater with its flap and chimney.
  pen.rect(f.box(8.9, 0.26, 10.45, 0.78), {kNorm, Tone::kInk}, Tone::kFace, 3);
  pen.rect(f.box(9.05, 0.34, 9.65, 0.56), {kThin, Tone::kInk}, Tone::kPaper, 2);
  for (double y : {0.39, 0.45, 0.51}) pen.line(f.at(9.10, y), f.at(9.60, y), {kThin, Tone::kInk2});
  pen.circle(f.at(10.08, 0.45), 0.12 * f.scale, {kThin, Tone::kInk}, Tone::kPaper);
  drawBrakeGear(pen, f);
}

void drawSkirts(Pen& pen, const CarFrame& f) {
  const auto panel = [&](double from, double to, double low) {
    pen.rect(f.box(from, low, to, 0.95), {kThin, Tone::kInk}, Tone::kFace, 2);
    for (double x : {from + 0.16, to - 0.16})
      pen.rect(f.box(x - 0.04, low + 0.03, x + 0.04, low + 0.13), {kThin, Tone::kInk}, Tone::kFace);
  };
  for (int k = 0; k < 5; ++k) panel(4.72 + k * 1.64, 4.72 + k * 1.64 + 1.60, 0.66);
  panel(16.50, 17.40, 0.52);
  panel(0.20, 0.98, 0.62);
}

}  // namespace cabwright::cab
