// SPDX-License-Identifier: GPL-3.0-or-later
// From the flywheel to the axle: coupling (cut), gearbox, propeller shaft, final drive.
#include <QtMath>
#include <cmath>

#include "cab/draw_engine.h"
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
using drawing::Tone;

namespace {

constexpr double kAxis = EngineGeometry::kAxis;
constexpr double kBoxOut = 838;  // output flange of the gearbox

void bolt(Pen& pen, QPointF c, double r = 4) {
  QPolygonF head;
  for (int k = 0; k < 6; ++k) head << pointAt(c, r, 60.0 * k);
  pen.circle(c, r + 1.5, {kThin}, Tone::kFace);
  pen.polygon(head, {kHairline, Tone::kInk2});
}

}  // namespace

void paintCoupling(Pen& pen) {
  const QRectF flywheel(576, kAxis - 74, 14, 148);
  pen.rect(flywheel, kNoLine, Tone::kFace);
  pen.hatch(rectShape(flywheel), Tone::kInk2, 6, -45, 1.1);
  pen.rect(flywheel);
  for (double s : {-1.0, 1.0}) {
    pen.push({590, kAxis}, 0, 1, s);
    const QPainterPath shell = outlineOf("M0 74 H40 Q60 74 60 52 V20 H50 V46 Q50 64 38 64 H0 Z");
    pen.path(shell, kNoLine, Tone::kFace);
    pen.hatch(shell, Tone::kInk2, 6, 45, 1.1);
    pen.path(shell, {});
    const QPointF torus(26, 40);
    pen.ellipse(torus, 16, 21, {}, Tone::kFace);
    pen.line({26, 19}, {26, 61}, {drawing::kRing});
    pen.ellipse(torus, 6, 8, {kThin}, Tone::kPaper);
    for (int k = -2; k <= 2; ++k) {
      pen.line({26.0 - 6, 40 + 3.4 * k}, {26.0 - 13.5, 40 + 8.0 * k}, {kHairline});
      pen.line({26.0 + 6, 40 + 3.4 * k}, {26.0 + 13.5, 40 + 8.0 * k}, {kHairline});
    }
    pen.pop();
  }
  pen.rect({612, kAxis - 8, 56, 16}, {}, Tone::kPaper);
  pen.rect({658, kAxis - 18, 6, 36}, {}, Tone::kPaper);
}

void paintGearbox(Pen& pen) {
  // Bell with the freewheel, then the three trains and the top clutch under their covers.
  pen.path(outlineOf("M668 156 L692 134 V242 L668 220 Z"), {}, Tone::kFace);
  pen.rect({692, 126, 132, 126}, {}, Tone::kFace, 6);
  pen.path(outlineOf("M824 150 L836 162 V214 L824 226 Z"), {}, Tone::kFace);
  pen.path(outlineOf("M700 252 L708 266 H808 L816 252"), {}, Tone::kFace);
  for (double y : {134.0, 244.0}) pen.line({694, y}, {822, y}, {kThin});
  for (int k = 0; k < 3; ++k) {
    const double x = 700 + 40.0 * k;
    pen.rect({x, 142, 34, 94}, {kThin}, Tone::kPaper, 5);
    for (double cx : {x + 7, x + 27}) {
      for (double cy : {149.0, 229.0}) pen.circle({cx, cy}, 2.4, {kThin}, Tone::kFace);
    }
    pen.circle({x + 17, kAxis}, 11, {kThin, Tone::kInk2});
  }
  // Band cylinders on top with their pipes, the breather between.
  for (int k = 0; k < 3; ++k) {
    const double x = 708 + 40.0 * k;
    pen.rect({x, 113, 18, 13}, {kThin}, Tone::kPaper, 2);
    pen.line({x + 9, 113}, {x + 9, 106}, {kThin});
  }
  pen.line({717, 106}, {797, 106}, {kThin});
  pen.path(outlineOf("M740 126 v-6 h-2 v-9 h-8"), {kThin});
  pen.circle({758, 259}, 4, {kThin}, Tone::kPaper);
}

void paintCardanShaft(Pen& pen, const EngineGeometry& g, double shaft_deg) {
  const QPointF from(kBoxOut, kAxis), to(g.wheel().x() - 92, g.wheel().y());
  const double length = std::hypot(to.x() - from.x(), to.y() - from.y());
  pen.push(from, qRadiansToDegrees(std::atan2(to.y() - from.y(), to.x() - from.x())));
  pen.rect({0, -24, 7, 48}, {}, Tone::kPaper);
  pen.rect({length - 7, -24, 7, 48}, {}, Tone::kPaper);
  for (double end : {0.0, 1.0}) {
    pen.push({end > 0 ? length : 0.0, 0}, 0, end > 0 ? -1 : 1, 1);
    pen.path(outlineOf("M7 -15 H26 Q36 -15 36 0 Q36 15 26 15 H7 Z"), {}, Tone::kFace);
    pen.pop();
  }
  pen.rect({30, -11, length - 60, 22}, {}, Tone::kFace);
  for (double x : {28.0, length - 28.0}) {
    pen.circle({x, 0}, 8, {}, Tone::kPaper);
    pen.circle({x, 0}, 2.5, kNoLine, Tone::kInk);
  }
  // Seams of the tube: they pass by as it turns.
  for (double seam : {0.0, 120.0, 240.0}) {
    const double a = qDegreesToRadians(shaft_deg + seam);
    if (std::cos(a) < 0.1) continue;
    const double y = 11 * std::sin(a);
    pen.line({44, y}, {length - 44, y}, {kThin, Tone::kInk2});
  }
  pen.pop();
}

void paintFinalDrive(Pen& pen, const EngineGeometry& g, const FinalDriveLook& look) {
  const QPointF c = g.wheel();
  pen.push(c, 0);
  // The wheel before it is taken away: where it stands is phantom.
  pen.circle({0, 0}, 100, {kThin, Tone::kRule, {14, 4, 2, 4, 2, 4}, false});
  pen.circle({0, 0}, 86, {kHairline, Tone::kRule, {14, 4, 2, 4, 2, 4}, false});
  // Nose with the pinion, case with the bevel wheel, and the arm that takes the reaction.
  pen.path(outlineOf("M54 -16 L84 -28 V-58 H96 V-20 L54 14 Z"), {kThin}, Tone::kFace);
  pen.path(outlineOf("M74 -74 H108 V-56 H74 Z"), {kThin}, Tone::kPaper);
  pen.hatch(outlineOf("M74 -74 H108 V-56 H74 Z"), Tone::kInk2, 5, 45, 1);
  pen.circle({90, -50}, 4, {kThin}, Tone::kPaper);
  pen.path(outlineOf("M-92 -18 H-80 L-52 -34 V34 L-80 18 H-92 Z"), {}, Tone::kFace);
  pen.circle({0, 0}, 60, {}, Tone::kFace);
  pen.circle({0, 0}, 52, {kThin});
  for (int k = 0; k < 8; ++k) bolt(pen, pointAt({0, 0}, 45, 22.5 + 45 * k));
  pen.circle({0, 0}, 26, {kThin}, Tone::kPaper);
  const QPainterPath axle = drawing::circleShape({0, 0}, 18);
  pen.path(axle, kNoLine, Tone::kFace);
  pen.hatch(axle, Tone::kInk2, 6, 45 + look.axle_deg, 1.1);
  pen.path(axle, {});
  pen.push({0, 0}, look.axle_deg);
  pen.rect({-4, -22, 8, 7}, {kThin}, Tone::kPaper);
  pen.pop();
  // Shift cylinder with its rod, the fork it moves, air from its cock.
  const double rod = look.sleeve_drawn || look.pin_in_sleeve ? 0 : -7;
  pen.path(outlineOf("M-34 -85 H-76 V-194"), {kNorm});
  pen.rect({-34, -96, 66, 22}, {}, Tone::kFace, 3);
  for (double x : {-24.0, 22.0}) pen.line({x, -96}, {x, -74}, {kThin});
  pen.rect({32, -88, 26 + rod, 6}, {kThin}, Tone::kPaper);
  pen.push({52 + rod, 0}, 0);
  pen.path(outlineOf("M0 -92 H10 V-62 L-12 -50 L-18 -58 L0 -68 Z"), {}, Tone::kFace);
  pen.circle({5, -74}, 4, {kThin}, Tone::kPaper);
  pen.pop();
  // Locking pin: in its keeper on the case, or through the fork.
  const QPointF pin = look.pin_in_sleeve ? QPointF(57 + rod, -74) : QPointF(-46, -52);
  if (!look.pin_in_sleeve) pen.rect({-53, -55, 14, 18}, {kThin}, Tone::kPaper, 2);
  pen.path(outlineOf("M0 0 m-3 16 V-8 h6 V16 L0 20 Z").translated(pin), {kThin}, Tone::kFace);
  pen.circle(pin + QPointF(0, -14), 6, {kNorm});
  const QPointF cock(-76, -130);
  pen.circle(cock, 10, {}, Tone::kFace);
  pen.push(cock, look.air_open ? 0 : 90);
  pen.rect({-3, -16, 6, 32}, {kThin}, Tone::kFace, 3);
  pen.pop();
  pen.circle(cock, 2.5, {kThin}, Tone::kFace);
  pen.pop();
}

void paintFireBottle(Pen& pen, const EngineGeometry& g, bool pulled) {
  pen.push({1026 + g.stretch, 0}, 0);
  pen.path(outlineOf("M14 47 H120 A16 0 1 120 79 H14 Q4 79 4 72 H-4 V54 H4 Q4 47 14 47 Z"), {},
           Tone::kFace);
  for (double x : {36.0, 100.0}) pen.rect({x, 36, 8, 46}, {kThin}, Tone::kPaper);
  pen.circle({70, 63}, 6, {kThin}, Tone::kPaper);
  pen.line({-4, 63}, {-12, 63}, {kThin});
  if (pulled) {
    pen.line({-12, 63}, {-14, 84}, {kThin});
    pen.circle({-14, 91}, 7, {kNorm});
  } else {
    pen.circle({-19, 63}, 7, {kNorm});
  }
  pen.pop();
}

}  // namespace cabwright::cab
