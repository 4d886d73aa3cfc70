// SPDX-License-Identifier: GPL-3.0-or-later
// The view on the free end, and what is seen round an engine: dipstick, smoke, fire, a pool,
// people.
#include <QtMath>
#include <algorithm>
#include <cmath>

#include "cab/draw_engine.h"
#include "drawing/furniture.h"
#include "drawing/outline.h"

namespace cabwright::cab {

using drawing::capsuleShape;
using drawing::kBold;
using drawing::kHairline;
using drawing::kNoLine;
using drawing::kNorm;
using drawing::kThin;
using drawing::outlineOf;
using drawing::Pen;
using drawing::pointAt;
using drawing::Tone;

namespace {

void pulley(Pen& pen, QPointF c, double r, int spokes, double turn, double hub) {
  pen.circle(c, r, {}, Tone::kFace);
  pen.circle(c, r - 6, {kThin}, Tone::kPaper);
  for (int k = 0; k < spokes; ++k) {
    const double a = turn + 360.0 * k / spokes;
    for (double side : {-2.6, 2.6}) {
      const QPointF off = pointAt({0, 0}, side, a + 90);
      pen.line(pointAt(c, hub, a) + off, pointAt(c, r - 6, a) + off, {kThin});
    }
  }
  pen.circle(c, hub, {}, Tone::kFace);
  pen.circle(c, 2, kNoLine, Tone::kInk);
}

void belt(Pen& pen, const Round& a, const Round& b) {
  pen.polygon(hullAround({a, b}, 4.5), {});
  pen.polygon(hullAround({a, b}, 0.5), {kThin});
}

}  // namespace

QPointF compressorAt(const EngineGeometry& g) { return g.freeEnd() + QPointF(-72, -92); }
QPointF exhausterAt(const EngineGeometry& g) { return g.freeEnd() + QPointF(88, -94); }
QPointF generatorAt(const EngineGeometry& g) { return g.freeEnd() + QPointF(92, 50); }

void paintFreeEnd(Pen& pen, const EngineGeometry& g) {
  pen.push(g.freeEnd(), 0);
  // Cylinders lie: crankcase before us, block and head behind it towards the middle of the car.
  const drawing::Stroke quiet{kThin, Tone::kRule};
  pen.path(outlineOf("M-58 -62 H54 V62 L40 84 H-44 L-58 62 Z"), quiet, Tone::kFace);
  pen.rect({54, -52, 62, 104}, quiet, Tone::kFace);
  pen.rect({116, -58, 18, 116}, quiet, Tone::kFace);
  pen.path(outlineOf("M134 -46 h8 q12 0 12 12 v68 q0 12 -12 12 h-8 Z"), quiet, Tone::kFace);
  pen.line({-58, 62}, {54, 62}, quiet);
  for (double y : {-36.0, 36.0}) pen.line({54, y}, {116, y}, quiet);
  drawing::paintCentreLine(pen, {-64, 0}, {160, 0});
  pen.pop();
  for (const Round& m :
       {Round{compressorAt(g), kCompressorPulleyR}, Round{exhausterAt(g), kExhausterPulleyR}}) {
    const double r = m.r;
    pen.rect({m.centre.x() - r - 7, m.centre.y() - r - 5, 2 * r + 14, 2 * r + 10},
             {kThin, Tone::kRule}, Tone::kFace, 11);
  }
}

void paintBelts(Pen& pen, const EngineGeometry& g, const EngineTurn& turn, const BeltsLook& look) {
  const Round crank{g.freeEnd(), kCrankPulleyR}, compressor{compressorAt(g), kCompressorPulleyR},
      exhauster{exhausterAt(g), kExhausterPulleyR}, generator{generatorAt(g), kGeneratorPulleyR};
  if (look.compressor) belt(pen, crank, compressor);
  if (look.exhauster) belt(pen, crank, exhauster);
  if (look.generator) belt(pen, crank, generator);
  pulley(pen, compressor.centre, compressor.r, 4, turn.compressor, 7);
  pulley(pen, exhauster.centre, exhauster.r, 4, turn.exhauster, 7);
  pulley(pen, generator.centre, generator.r, 3, turn.generator, 5);
  pulley(pen, crank.centre, crank.r, 5, turn.crank, 10);
  if (!look.guard) return;
  const QPolygonF edge = hullAround({compressor, exhauster, crank}, 14);
  QPainterPath mesh;
  mesh.addPolygon(edge);
  mesh.closeSubpath();
  pen.dots(mesh, Tone::kRule, 10, 0.9);
  pen.polygon(edge, {kBold});
  pen.polygon(hullAround({compressor, exhauster, crank}, 9), {kHairline});
  // Catches: one above each machine, one below the crank.
  for (const QPointF& c : {pointAt(compressor.centre, compressor.r + 14, -50),
                           pointAt(exhauster.centre, exhauster.r + 14, 50),
                           pointAt(crank.centre, crank.r + 14, 180)}) {
    pen.circle(c, 6, {kThin}, Tone::kFace);
    pen.circle(c, 2.4, {kThin}, Tone::kPaper);
  }
}

void paintFuelTank(Pen& pen, const QRectF& box, double cock_y) {
  pen.rect(box, {}, Tone::kFace, 12);
  for (double x : {box.left() + 12, box.right() - 20})
    pen.rect({x, box.top() - 6, 8, box.height() + 12}, {kThin}, Tone::kPaper);
  // Bowl under the tank, then the pipe to the cock.
  const double bx = box.center().x() - 28, by = box.bottom();
  pen.rect({bx - 11, by, 22, 7}, {kThin}, Tone::kFace);
  pen.path(outlineOf("M-9 0 V18 Q-9 28 0 28 Q9 28 9 18 V0 Z").translated(bx, by + 7), {kThin},
           Tone::kPaper);
  // Down to the cock, and on to the engine behind a union.
  for (double side : {-5.0, 5.0}) pen.line({bx + side, by + 35}, {bx + side, cock_y - 6}, {kThin});
  const double out = box.center().x() + 28;
  pen.path(outlineOf("M-5 6 V60 M5 6 V60").translated(out, cock_y), {kThin});
  pen.rect({out - 9, cock_y + 22, 18, 16}, {kThin}, Tone::kFace, 2);
}

void paintHasp(Pen& pen, QPointF c, bool padlock) {
  pen.rect({c.x() - 6, c.y() - 14, 12, 22}, {kThin}, Tone::kFace, 4);
  pen.circle(c + QPointF(0, -5), 3.5, {kThin}, Tone::kPaper);
  if (!padlock) return;
  pen.path(outlineOf("M-7 14 V4 A7 0 1 7 4 V14").translated(c + QPointF(0, -7)), {kNorm});
  pen.rect({c.x() - 13, c.y() + 5, 26, 20}, {}, Tone::kFace, 3);
  pen.circle(c + QPointF(0, 13), 2.2, kNoLine, Tone::kInk);
  pen.line(c + QPointF(0, 13), c + QPointF(0, 20), {kThin});
}

void paintDipstick(Pen& pen, QPointF left, std::optional<double> level) {
  constexpr double kLength = 264, kMin = 34, kMax = 184;
  const double x = left.x(), y = left.y();
  pen.circle({x + kLength - 12, y}, 12, {kNorm}, Tone::kFace);
  pen.circle({x + kLength - 12, y}, 5.5, {kThin}, Tone::kPaper);
  pen.rect({x, y - 5, kLength - 24, 10}, {}, Tone::kFace, 4);
  if (level) {
    const double wet = std::clamp(kMin + *level * (kMax - kMin), 4.0, kLength - 30);
    pen.rect({x + 2, y - 4, wet - 2, 8}, kNoLine, Tone::kInk2, 3);
  }
  for (double mark : {kMin, kMax}) pen.line({x + mark, y - 12}, {x + mark, y + 12}, {kBold});
  for (int k = 1; k < 4; ++k) {
    const double at = x + kMin + (kMax - kMin) * k / 4;
    pen.line({at, y - 7}, {at, y + 7}, {kThin});
  }
}

void paintSmoke(Pen& pen, double smoke, double phase) {
  if (smoke < 0.02) return;
  const int puffs = 3 + static_cast<int>(std::lround(6 * std::min(1.0, smoke)));
  for (int k = puffs - 1; k >= 0; --k) {
    const double far = std::fmod(phase + static_cast<double>(k) / puffs, 1.0);
    const double r = 7 + 15 * far * (0.5 + 0.5 * smoke);
    const double x = 652 + 320 * far, y = 66 + 6 * std::sin(9 * far + k) - 4 * far;
    const Tone line = far < 0.35 ? Tone::kInk2 : far < 0.75 ? Tone::kRule : Tone::kHair;
    QPainterPath puff;
    for (int lobe = 0; lobe < 5; ++lobe) {
      QPainterPath one;
      const QPointF c = pointAt({x, y}, 0.62 * r, 72.0 * lobe + 31 * k);
      one.addEllipse(c, 0.6 * r, 0.56 * r);
      puff = puff.united(one);
    }
    pen.path(puff, {kThin, line}, far < 0.75 ? Tone::kFace : Tone::kNone);
  }
}

void paintFlames(Pen& pen, QPointF foot, double width, double phase) {
  const int tongues = std::max(3, static_cast<int>(width / 26));
  for (int pass = 0; pass < 2; ++pass) {
    for (int k = 0; k < tongues; ++k) {
      const double sway = std::sin(6.283 * phase * (1 + k % 3) + 2.1 * k);
      const double h = (pass == 0 ? 52 : 27) * (0.75 + 0.25 * sway);
      const double x = foot.x() + width * (k + 0.5) / tongues, w = pass == 0 ? 17.0 : 9.0;
      QPainterPath tongue(QPointF(x - w, foot.y()));
      tongue.cubicTo(x - w, foot.y() - 0.5 * h, x - 2 + 5 * sway, foot.y() - 0.6 * h, x + 6 * sway,
                     foot.y() - h);
      tongue.cubicTo(x + 4 + 5 * sway, foot.y() - 0.5 * h, x + w, foot.y() - 0.45 * h, x + w,
                     foot.y());
      tongue.closeSubpath();
      pen.path(tongue, {kThin, pass == 0 ? Tone::kBad : Tone::kDoubt},
               pass == 0 ? Tone::kRed : Tone::kYellow);
    }
  }
}

void paintPool(Pen& pen, PoolKind kind) {
  if (kind == PoolKind::kNone) return;
  const QPainterPath shape = outlineOf(
      "M330 351 C334 345 392 343 430 345 C478 343 516 346 520 350 C522 356 470 358 428 356 "
      "C380 359 332 357 330 351 Z");
  if (kind == PoolKind::kStain) {
    pen.path(shape, kNoLine, Tone::kShade);
    pen.dots(shape, Tone::kRule, 5, 0.9);
    return;
  }
  pen.path(shape, {}, Tone::kFace);
  pen.path(outlineOf("M362 351 q30 -3 62 -2 M400 354 q40 1 84 -2"), {kHairline, Tone::kInk2});
}

void paintPerson(Pen& pen, QPointF foot, bool arms_in) {
  pen.push(foot, 0);
  const auto limb = [](const QPolygonF& joints, double r) {
    QPainterPath all;
    for (qsizetype k = 1; k < joints.size(); ++k)
      all = all.united(capsuleShape(joints[k - 1], joints[k], r));
    return all;
  };
  // One knee on the ground, the other foot before it.
  const QPainterPath back_leg = limb({{20, -74}, {30, -12}, {84, -10}}, 12);
  const QPainterPath front_leg = limb({{18, -76}, {-36, -72}, {-34, -10}, {-52, -8}}, 12);
  const QPainterPath trunk =
      outlineOf("M-10 -152 Q4 -166 20 -156 Q36 -146 38 -118 L36 -66 Q22 -58 2 -64 L-2 -112 Z");
  const QPainterPath arm = arms_in ? limb({{12, -144}, {-32, -118}, {-78, -128}}, 9)
                                   : limb({{12, -144}, {-8, -104}, {-34, -84}}, 9);
  pen.path(back_leg, {}, Tone::kFace);
  pen.path(front_leg, {}, Tone::kFace);
  pen.path(trunk, {}, Tone::kFace);
  pen.path(outlineOf("M-5 -98 L37 -90 M-4 -92 L36 -84"), {kThin});
  pen.path(arm, {}, Tone::kFace);
  pen.circle({0, -178}, 18, {}, Tone::kFace);
  pen.path(outlineOf("M-22 -184 Q-18 -200 2 -200 Q20 -198 20 -180 Z"), {}, Tone::kFace);
  pen.pop();
}

}  // namespace cabwright::cab
