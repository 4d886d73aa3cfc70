// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_car.h"

#include <array>
#include <cmath>

#include "cab/draw_end.h"
#include "cab/draw_engine.h"

namespace cabwright::cab {

using drawing::kBold;
using drawing::kHairline;
using drawing::kNoLine;
using drawing::kNorm;
using drawing::kRing;
using drawing::kThin;
using drawing::Pen;
using drawing::Tone;

namespace {

constexpr std::array<double, 3> kDoors_m{1.15, 8.55, 14.45};
constexpr double kDoorWidth_m = 0.85, kDoorLow_m = 1.02, kDoorHigh_m = 3.08;
constexpr int kOpenDoor = 1;

QPainterPath bodyShape(const CarFrame& f) {
  QPainterPath p(f.at(0.15, 0.95));
  p.lineTo(f.at(0.15, 3.42));
  p.quadTo(f.at(0.15, kCarTop_m), f.at(0.55, kCarTop_m));
  p.lineTo(f.at(16.3, kCarTop_m));
  p.quadTo(f.at(17.05, kCarTop_m), f.at(17.18, 3.12));
  p.lineTo(f.at(17.45, 1.95));
  p.lineTo(f.at(17.40, 0.95));
  p.closeSubpath();
  return p;
}

void drawSideWindow(Pen& pen, const CarFrame& f, double from, double to) {
  pen.rect(f.box(from, 2.0, to, 2.86), {kThin, Tone::kInk}, Tone::kPaper, 4);
  pen.line(f.at(from, 2.58), f.at(to, 2.58), {kHairline, Tone::kRule});  // top light
}

void drawDoor(Pen& pen, const CarFrame& f, double from) {
  const double to = from + kDoorWidth_m;
  pen.rect(f.box(from, kDoorLow_m, to, kDoorHigh_m), {kThin, Tone::kInk}, Tone::kFace, 3);
  pen.rect(f.box(from + 0.14, 2.0, to - 0.14, 2.84), {kThin, Tone::kInk}, Tone::kPaper, 3);
  for (double y : {1.25, 2.9})  // hinges
    pen.rect(f.box(from - 0.03, y - 0.06, from + 0.05, y + 0.06), {kHairline, Tone::kInk},
             Tone::kInk);
  pen.line(f.at(to - 0.18, 1.72), f.at(to - 0.05, 1.72), {kBold, Tone::kInk});   // handle
  pen.line(f.at(to + 0.12, 1.45), f.at(to + 0.12, 2.35), {kThin, Tone::kInk2});  // handrail
  pen.rect(f.box(from - 0.02, 0.50, to + 0.02, 0.55), {kThin, Tone::kInk}, Tone::kFace);  // step
  for (double x : {from + 0.1, to - 0.1})
    pen.line(f.at(x, 0.55), f.at(x, 0.95), {kThin, Tone::kInk2});
}

void drawInnerEnd(Pen& pen, const CarFrame& f) {
  // Bellows of the gangway, and the bar of the coupler.
  QPolygonF folds;
  for (int k = 0; k <= 6; ++k) folds << f.at(k % 2 == 0 ? 0.15 : -0.02, 1.25 + k * 0.32);
  pen.polyline(folds, {kThin, Tone::kInk2});
  QPolygonF outer;
  for (int k = 0; k <= 6; ++k) outer << f.at(k % 2 == 0 ? -0.10 : -0.27, 1.25 + k * 0.32);
  pen.polyline(outer, {kThin, Tone::kInk2});
  pen.line(f.at(0.15, 3.2), f.at(-0.2, 3.2), {kThin, Tone::kInk2});
  pen.line(f.at(0.15, 1.2), f.at(-0.3, 1.2), {kNorm, Tone::kInk});
  pen.rect(f.box(-0.35, 0.86, 0.35, 1.0), {kThin, Tone::kInk}, Tone::kFace);
}

void drawCabEnd(Pen& pen, const CarFrame& f) {
  pen.rect(f.box(15.78, kDoorLow_m, 16.38, kDoorHigh_m), {kThin, Tone::kInk}, Tone::kFace, 3);
  pen.rect(f.box(15.90, 2.0, 16.26, 2.84), {kThin, Tone::kInk}, Tone::kPaper, 3);
  pen.line(f.at(15.84, 1.72), f.at(15.95, 1.72), {kBold, Tone::kInk});
  QPainterPath light(f.at(16.58, 2.05));
  light.lineTo(f.at(16.58, 2.86));
  light.lineTo(f.at(17.02, 2.86));
  light.lineTo(f.at(17.20, 2.05));
  light.closeSubpath();
  pen.path(light, {kThin, Tone::kInk}, Tone::kPaper);
  // Bracket for a board, flag or lamp.
  pen.rect(f.box(kBracket_m - 0.06, kBracketUp_m - 0.08, kBracket_m + 0.06, kBracketUp_m + 0.08),
           {kNorm, Tone::kInk}, Tone::kFace, 1.5);
  // Buffer and hook.
  pen.rect(f.box(17.40, 0.98, 17.66, 1.16), {kThin, Tone::kInk}, Tone::kFace);
  pen.rect(f.box(17.66, 1.02, 17.86, 1.12), {kThin, Tone::kInk}, Tone::kFace);
  pen.rect(f.box(17.86, 0.86, 17.93, 1.28), {kNorm, Tone::kInk}, Tone::kFace, 2);
}

}  // namespace

void drawTrackAlong(Pen& pen, const CarFrame& f, double from_x, double to_x) {
  const double k = f.scale;
  const QRectF rail(from_x, f.rail_y, to_x - from_x, 0.10 * k);
  for (double x = from_x + 8; x + 14 < to_x; x += 0.62 * k)
    pen.rect({x, rail.bottom(), 0.24 * k, 0.10 * k}, {kHairline, Tone::kInk2}, Tone::kFace);
  pen.rect(rail, {kThin, Tone::kInk}, Tone::kFace);
  pen.line({from_x, f.rail_y}, {to_x, f.rail_y}, {kNorm, Tone::kInk});
  pen.dots(drawing::rectShape({from_x, rail.bottom() + 0.10 * k, to_x - from_x, 0.1 * k}),
           Tone::kRule, 7, 0.9);
}

void drawCarBody(Pen& pen, const CarFrame& f, bool motor) {
  drawInnerEnd(pen, f);
  if (motor) {  // exhaust stacks
    for (double x : {7.65, 7.85})
      pen.rect(f.box(x - 0.05, 3.66, x + 0.05, 3.92), {kThin, Tone::kInk}, Tone::kFace);
  }
  for (double x : {3.4, 6.0, 11.0, 13.2})  // ventilators
    pen.rect(f.box(x - 0.22, 3.70, x + 0.22, 3.82), {kThin, Tone::kInk2}, Tone::kFace, 3);
  const QPainterPath body = bodyShape(f);
  pen.path(body, {kRing, Tone::kInk}, Tone::kFace);
  pen.line(f.at(0.15, 3.22), f.at(17.15, 3.22), {kThin, Tone::kInk2});  // gutter
  pen.push();
  pen.painter().setClipPath(body, Qt::IntersectClip);
  for (double y : {1.90, 1.84}) pen.line(f.at(0, y), f.at(17.6, y), {kHairline, Tone::kRule});
  pen.pop();
  for (int k = 0; k < 4; ++k) drawSideWindow(pen, f, 2.32 + k * 1.54, 2.32 + k * 1.54 + 1.3);
  for (int k = 0; k < 3; ++k) drawSideWindow(pen, f, 9.72 + k * 1.54, 9.72 + k * 1.54 + 1.3);
  drawSideWindow(pen, f, 0.36, 0.92);
  for (double x : kDoors_m) drawDoor(pen, f, x);
  drawCabEnd(pen, f);
  pen.rect(f.box(0.15, 0.83, 17.40, 0.95), {kThin, Tone::kInk}, Tone::kFace);  // solebar
}

namespace {

// An open door hangs edge-on on its hinges; behind it the vestibule is in shade.
void drawOpenDoor(Pen& pen, const CarFrame& f) {
  const double from = kDoors_m[kOpenDoor], to = from + kDoorWidth_m;
  const QRectF way = f.box(from, kDoorLow_m, to, kDoorHigh_m);
  pen.rect(way, {kNorm, Tone::kInk}, Tone::kShade, 2);
  pen.line(f.at(from, 1.15), f.at(to, 1.15), {kThin, Tone::kInk2});
  pen.line(f.at((from + to) / 2, 1.15), f.at((from + to) / 2, 2.75), {kThin, Tone::kInk2});
  pen.rect(f.box(from - 0.14, kDoorLow_m - 0.03, from + 0.02, kDoorHigh_m), {kNorm, Tone::kInk},
           Tone::kFace, 1);
}

void drawFeet(Pen& pen, const CarFrame& f) {
  for (double x : {kPerson_m - 0.16, kPerson_m + 0.10}) {
    pen.rect(f.box(x - 0.06, 0.05, x + 0.06, 0.24), {kThin, Tone::kInk}, Tone::kFace);
    pen.rect(f.box(x - 0.08, -0.04, x + 0.14, 0.06), {kNorm, Tone::kInk}, Tone::kInk, 2);
  }
}

void drawScotch(Pen& pen, const CarFrame& f, double wheel_m) {
  const double x = wheel_m + 0.30;
  pen.polygon({{f.at(x - 0.10, 0), f.at(x + 0.38, 0), f.at(x + 0.34, 0.14), f.at(x + 0.06, 0.20)}},
              {kNorm, Tone::kInk}, Tone::kShade);
}

// Smoke from the stacks drifts towards the coupled end, thinning; from beside the trailer it is
// seen beyond that end.
void drawSmokeOver(Pen& pen, const CarFrame& f, double smoke, bool motor) {
  if (smoke < 0.02) return;
  const int puffs = 3 + static_cast<int>(std::lround(5 * smoke));
  const double from = motor ? 7.75 : 0.1, length = motor ? 3.6 : 0.7;
  for (int k = puffs - 1; k >= 0; --k) {
    const double far = (k + 0.5) / puffs;
    const QPointF at = f.at(from - length * far, (motor ? 4.02 : 3.62) + 0.06 * std::sin(7.0 * k));
    const double r = (5 + 7 * far) * (0.6 + 0.4 * smoke);
    QPainterPath puff;
    for (int lobe = 0; lobe < 5; ++lobe) {
      QPainterPath one;
      one.addEllipse(drawing::pointAt(at, 0.6 * r, 72.0 * lobe + 31 * k), 0.6 * r, 0.56 * r);
      puff = puff.united(one);
    }
    pen.path(puff, {kThin, far < 0.6 ? Tone::kInk2 : Tone::kRule}, Tone::kFace);
  }
}

void drawFire(Pen& pen, const CarFrame& f, bool motor) {
  if (motor) {
    const QRectF under = f.box(8.0, 0.2, 10.3, 0.8);
    paintFlames(pen, under.bottomLeft(), under.width(), 0.3);
  } else {
    const QRectF beyond = f.box(-0.38, 0.2, -0.02, 0.8);
    paintFlames(pen, beyond.bottomLeft(), beyond.width(), 0.3);
  }
}

}  // namespace

void drawPerson(Pen& pen, QPointF feet, double h) {
  const auto p = [&](double x, double y) { return feet + QPointF(x * h, -y * h); };
  for (double side : {-1.0, 1.0}) {
    QPainterPath leg(p(side * 0.015, 0.47));
    leg.lineTo(p(side * 0.105, 0.47));
    leg.lineTo(p(side * 0.085, 0.03));
    leg.lineTo(p(side * 0.11, 0.0));
    leg.lineTo(p(side * 0.02, 0.0));
    leg.closeSubpath();
    pen.path(leg, {kNorm, Tone::kInk}, Tone::kFace);
  }
  QPainterPath coat(p(-0.12, 0.44));
  coat.lineTo(p(-0.12, 0.66));
  coat.lineTo(p(-0.17, 0.46));
  coat.lineTo(p(-0.215, 0.48));
  coat.lineTo(p(-0.15, 0.77));
  coat.quadTo(p(-0.13, 0.82), p(-0.05, 0.83));
  coat.lineTo(p(0.05, 0.83));
  coat.quadTo(p(0.13, 0.82), p(0.15, 0.77));
  coat.lineTo(p(0.215, 0.48));
  coat.lineTo(p(0.17, 0.46));
  coat.lineTo(p(0.12, 0.66));
  coat.lineTo(p(0.12, 0.44));
  coat.closeSubpath();
  pen.path(coat, {kNorm, Tone::kInk}, Tone::kPaper);
  for (double y : {0.52, 0.57}) pen.line(p(-0.12, y), p(0.12, y), {kThin, Tone::kInk2});  // vest
  pen.circle(p(0, 0.915), 0.075 * h, {kNorm, Tone::kInk}, Tone::kFace);
  pen.sector(p(0, 0.925), 0, 0.082 * h, -90, 90, {kNorm, Tone::kInk}, Tone::kFace);  // helmet
}

void drawCarLive(Pen& pen, const CarFrame& f, const CarLook& look) {
  if (look.door_open) drawOpenDoor(pen, f);
  drawSmokeOver(pen, f, look.smoke, look.motor);
  if (look.fire) drawFire(pen, f, look.motor);
  if (!look.motor) {  // tell-tale of the passenger alarm: a disc on the end of its shaft
    const QPointF pivot = f.at(0.32, 3.32);
    const double out = look.alarm ? 0.34 : 0.0;
    pen.push(pivot, look.alarm ? (f.cab_right ? -70 : 70) : 0);
    pen.rect(QRectF(-4, -4 - out * 6, 8, 20), {kNorm, Tone::kInk},
             look.alarm ? Tone::kYellow : Tone::kFace, 3);
    pen.pop();
    pen.circle(pivot, 3.4, {kThin, Tone::kInk}, Tone::kFace);
  }
  for (int k = 0; k < look.scotches; ++k)
    drawScotch(pen, f, k == 0 ? kDetailWheel_m : kInnerBogie_m - kHalfBase_m - 0.9);
  if (look.person == 1) drawPerson(pen, f.at(kPerson_m, -0.18), 1.78 * f.scale);
  if (look.person == 2) drawFeet(pen, f);
  const QPointF bracket = f.at(kBracket_m, kBracketUp_m);
  if (look.protection == 1) drawFlag(pen, bracket, 0.95 * f.scale);
  if (look.protection == 2) drawBoard(pen, bracket, 0.95 * f.scale);
  if (look.protection == 3) drawRedLamp(pen, bracket + QPointF(0, 0.42 * f.scale), 0.46 * f.scale);
}

}  // namespace cabwright::cab
