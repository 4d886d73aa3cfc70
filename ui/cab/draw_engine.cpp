// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_engine.h"

#include <QtMath>
#include <algorithm>
#include <array>
#include <cmath>

#include "drawing/outline.h"

namespace cabwright::cab {

using drawing::kBold;
using drawing::kHairline;
using drawing::kNoLine;
using drawing::kNorm;
using drawing::kThin;
using drawing::outlineOf;
using drawing::Pen;
using drawing::pointAt;
using drawing::rectShape;
using drawing::Stroke;
using drawing::Tone;

namespace {

constexpr double kAxis = EngineGeometry::kAxis;
constexpr double kFrom = EngineGeometry::kEngineFrom, kTo = EngineGeometry::kEngineTo;
constexpr double kTop = 120, kBottom = 256, kWall = 10;
constexpr int kCylinders = 6;
constexpr double kEnd = 12, kPitch = (kTo - kFrom - 2 * kEnd) / kCylinders;
constexpr double kThrow = 30, kBore = 25;
/// Of the crank pins, in the order of the cylinders: fires 1 5 3 6 2 4.
constexpr std::array<double, kCylinders> kPins{0, 240, 120, 120, 240, 0};

double cylinderAt(int k) { return kFrom + kEnd + kPitch * (k + 0.5); }
double bearingAt(int k) { return kFrom + kEnd + kPitch * k; }

void cut(Pen& pen, const QPainterPath& shape, double width = kThin, double degrees = 45,
         double gap = 6) {
  pen.path(shape, kNoLine, Tone::kFace);
  pen.hatch(shape, Tone::kInk2, gap, degrees, 1.1);
  pen.path(shape, {width});
}

void cut(Pen& pen, const QRectF& box, double width = kThin, double degrees = 45, double gap = 6) {
  cut(pen, rectShape(box), width, degrees, gap);
}

}  // namespace

void paintUnderframe(Pen& pen, const EngineGeometry& g) {
  const double w = g.width;
  pen.hatch(rectShape({0, 0, w, 10}), Tone::kHair, 8, 45, 1.2);
  pen.line({0, 0}, {w, 0}, {kHairline, Tone::kRule, {18, 5}, false});
  pen.rect({0, 10, w, 26}, {}, Tone::kFace);
  pen.line({0, 16}, {w, 16}, {kThin});
  pen.line({0, 30}, {w, 30}, {kThin});
  for (double x : {341.0, 606.0, 806.0}) {
    pen.rect({x - 8, 36, 16, 88}, {}, Tone::kFace);
    cut(pen, QRectF(x - 14, 88, 28, 14), kThin, 45, 4);
    pen.circle({x, 44}, 3.5, {kThin}, Tone::kPaper);
  }
  const double rail = EngineGeometry::kRail, ground = EngineGeometry::kGround;
  pen.rect({0, rail, w, ground - rail}, {}, Tone::kFace);
  pen.line({0, rail + 5}, {w, rail + 5}, {kThin});
  pen.line({0, ground - 5}, {w, ground - 5}, {kThin});
  pen.dots(rectShape({0, ground + 2, w, 12}), Tone::kRule, 9, 1.6);
}

void paintEngineCasing(Pen& pen) {
  // Sump and what lies in it, crankcase, its walls and bulkheads.
  pen.path(outlineOf("M196 256 L566 256 L548 288 L214 288 Z"), {}, Tone::kFace);
  pen.dots(outlineOf("M204 268 L558 268 L547 286 L215 286 Z"), Tone::kInk2, 8, 1.2);
  pen.line({203, 268}, {559, 268}, {kThin, Tone::kInk2});
  pen.rect({kFrom, kTop, kTo - kFrom, kBottom - kTop}, {}, Tone::kPaper);
  cut(pen, QRectF(kFrom, kTop, kTo - kFrom, kWall));
  cut(pen, QRectF(kFrom - 5, kBottom - 5, kTo - kFrom + 10, 10), kThin, -45, 5);
  for (int k = 0; k < kCylinders; ++k) {
    // The bores lie away from us: their mouths, with the piston's skirt in them.
    const QPointF c(cylinderAt(k), kAxis);
    pen.circle(c, kBore, {}, Tone::kFace);
    pen.circle(c, kBore - 3.5, {kThin});
    pen.rect({c.x() - kBore + 6, c.y() - 5, 2 * kBore - 12, 10}, {kThin, Tone::kInk2});
  }
  for (int k = 0; k <= kCylinders; ++k) {
    const double x = bearingAt(k), half = k == 0 || k == kCylinders ? 8 : 4;
    cut(pen, QRectF(x - half, kTop + kWall, 2 * half, kAxis - 17 - kTop - kWall));
    cut(pen, QRectF(x - half, kAxis + 17, 2 * half, kBottom - 5 - kAxis - 17));
    cut(pen, QRectF(x - 9, kAxis - 17, 18, 34), kThin, -45, 4);
  }
  // Dipstick in its tube, filler, and the rail of the fuel pump on top.
  pen.rect({203, 112, 9, 8}, {kThin}, Tone::kFace);
  pen.line({207.5, 112}, {207.5, 108}, {kNorm});
  pen.circle({207.5, 101}, 7, {kNorm}, Tone::kPaper);
  pen.rect({372, 111, 150, 9}, {kThin}, Tone::kFace, 3);
  for (int k = 0; k < kCylinders; ++k) pen.rect({384 + 23.0 * k, 107, 10, 4}, {kThin}, Tone::kFace);
  // Drip tray below.
  pen.path(outlineOf("M204 296 L204 306 L558 306 L558 296"), {});
  pen.line({204, 301}, {558, 301}, {kThin});
}

void paintCrankTrain(Pen& pen, double crank_deg) {
  pen.rect({bearingAt(0) - 54, kAxis - 8, 54, 16}, {}, Tone::kPaper);
  pen.rect({kTo - 12, kAxis - 12, 22, 24}, {}, Tone::kPaper);
  for (int k = 0; k <= kCylinders; ++k)
    pen.rect({bearingAt(k) - 11, kAxis - 10, 22, 20}, {kThin}, Tone::kPaper);
  for (std::size_t k = 0; k < kCylinders; ++k) {
    const double x = cylinderAt(static_cast<int>(k));
    const double a = qDegreesToRadians(crank_deg + kPins[k]);
    const double pin = kAxis - kThrow * std::cos(a);
    const bool up = pin < kAxis;
    const double top = up ? pin - 12 : kAxis - 22, bottom = up ? kAxis + 22 : pin + 12;
    for (double web : {x - 17, x + 10})
      pen.rect({web, top, 7, bottom - top}, {}, Tone::kPaper, 2.5);
    // The rod runs from the piston, behind, to the pin before us.
    const double small = kAxis, y0 = std::min(small, pin), y1 = std::max(small, pin);
    if (y1 - y0 > 6) pen.rect({x - 5, y0, 10, y1 - y0}, {kThin}, Tone::kFace);
    pen.rect({x - 10, pin - 11, 20, 22}, {}, Tone::kFace, 3);
    pen.line({x - 10, pin}, {x + 10, pin}, {kThin});
  }
  pen.line({120, kAxis}, {840, kAxis}, {kHairline, Tone::kInk2, {16, 4, 3, 4}, false});
}

void paintRadiator(Pen& pen) {
  const QPointF c = EngineGeometry::kFan;
  pen.rect({8, 124, 122, 160}, {}, Tone::kFace, 3);
  pen.hatch(rectShape({16, 140, 106, 128}), Tone::kHair, 5, 90, 1.2);
  pen.line({8, 138}, {130, 138}, {kThin});
  pen.line({8, 270}, {130, 270}, {kThin});
  pen.circle(c, 55, {kNorm}, Tone::kPaper);
  pen.circle(c, 51, {kThin, Tone::kInk2});
  // Straps to the solebar, and the pipe from the tank.
  for (double x : {16.0, 118.0}) pen.rect({x - 4, 36, 8, 88}, {kThin}, Tone::kFace);
  pen.path(outlineOf("M62 104 V124 M74 104 V124"), {kThin});
  // Hose to the engine, below.
  pen.path(outlineOf("M130 258 h40 q10 0 10 -10 v-6 h16 M130 270 h52 q10 0 10 -10 v-8 h4"),
           {kThin, Tone::kInk});
  // Shaft from the free end to the bevel box that drives the fan's belt.
  pen.rect({146, kAxis - 5, 24, 10}, {kThin}, Tone::kPaper);
  pen.rect({122, kAxis - 16, 24, 32}, {}, Tone::kFace, 4);
}

void paintFan(Pen& pen, double fan_deg, bool belt) {
  const QPointF c = EngineGeometry::kFan;
  const QPainterPath blade =
      outlineOf("M-5 -13 C-17 -26 -15 -42 -4 -47 L9 -46 C5 -34 5 -22 5 -13 Z");
  for (int k = 0; k < 6; ++k) {
    pen.push(c, fan_deg + 60.0 * k);
    pen.path(blade, {kThin}, Tone::kFace);
    pen.line({1, -44}, {-1, -18}, {kHairline, Tone::kRule});
    pen.pop();
  }
  const QPointF box(134, kAxis);
  if (belt) {
    const QPolygonF loop = hullAround({{c, 13}, {box, 8}}, 0);
    const QPolygonF outer = hullAround({{c, 13}, {box, 8}}, 3.5);
    pen.polygon(outer, {kNorm}, Tone::kPaper);
    pen.polygon(loop, {kThin});
  }
  pen.circle(c, 13, {}, Tone::kFace);
  for (int k = 0; k < 3; ++k) pen.circle(pointAt(c, 8, fan_deg + 120.0 * k), 1.8, {kThin});
  pen.circle(c, 3, kNoLine, Tone::kInk);
  pen.circle(box, 8, {}, Tone::kFace);
  pen.circle(box, 2, kNoLine, Tone::kInk);
}

void paintHeaderTank(Pen& pen, std::optional<double> level) {
  pen.rect({24, 52, 88, 52}, {}, Tone::kFace, 7);
  pen.rect({40, 42, 22, 10}, {}, Tone::kFace, 2);
  const QRectF glass(86, 58, 14, 40);
  pen.rect(glass, {kThin}, Tone::kPaper, 7);
  for (double y : {66.0, 88.0}) pen.line({102, y}, {110, y}, {kNorm});
  if (!level) {
    pen.hatch(rectShape(glass, 7), Tone::kHair, 5, 45, 1);
    return;
  }
  // Full stands at the upper mark, half of it at the lower one.
  const double y = std::clamp(88 - (*level - 0.5) / 0.5 * 22, 59.0, 98.0);
  pen.push();
  pen.painter().setClipPath(rectShape(glass.adjusted(2, 2, -2, -2), 5));
  pen.rect({86, y, 14, 60}, kNoLine, Tone::kInk2);
  pen.pop();
}

void paintFilterAndExhaust(Pen& pen) {
  // Air filter: a canister with its louvres, and the trunk into the engine.
  pen.path(outlineOf("M256 44 V40 H320 V44"), {kThin});
  pen.rect({250, 44, 74, 42}, {}, Tone::kFace, 6);
  for (int k = 0; k < 7; ++k)
    pen.line({261 + 7.0 * k, 51}, {257 + 7.0 * k, 79}, {kThin, Tone::kInk2});
  pen.line({311, 44}, {311, 86}, {kThin});
  pen.path(outlineOf("M324 56 h4 q9 0 9 9 v55 M324 74 h0 v46"), {kThin});
  // Silencer with its clamps, and the tail pipe.
  pen.path(outlineOf("M362 120 V80 M374 108 V80"), {kThin});
  pen.rect({356, 44, 196, 36}, {}, Tone::kFace, 10);
  for (double x : {384.0, 518.0}) pen.rect({x, 41, 9, 42}, {kThin}, Tone::kPaper, 2);
  pen.path(outlineOf("M552 54 H628 L636 50 V76 L628 70 H552 Z"), {}, Tone::kFace);
  pen.rect({576, 51, 7, 22}, {kThin}, Tone::kPaper, 2);
  pen.ellipse({636, 63}, 4, 13, {}, Tone::kPaper);
}

QPolygonF hullAround(std::initializer_list<Round> rounds, double pad) {
  QPolygonF points;
  for (const Round& round : rounds) {
    for (int k = 0; k < 72; ++k) points << pointAt(round.centre, round.r + pad, 5.0 * k);
  }
  std::ranges::sort(points, [](const QPointF& a, const QPointF& b) {
    return a.x() != b.x() ? a.x() < b.x() : a.y() < b.y();
  });
  const auto half = [](const QPolygonF& sorted) {
    QPolygonF h;
    for (const QPointF& p : sorted) {
      while (h.size() > 1) {
        const QPointF a = h[h.size() - 1] - h[h.size() - 2], b = p - h[h.size() - 2];
        if (a.x() * b.y() - a.y() * b.x() > 0) break;
        h.removeLast();
      }
      h << p;
    }
    h.removeLast();
    return h;
  };
  QPolygonF hull = half(points);
  std::ranges::reverse(points);
  hull << half(points);
  return hull;
}

}  // namespace cabwright::cab
