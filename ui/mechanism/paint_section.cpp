// SPDX-License-Identifier: GPL-3.0-or-later
// The longitudinal section of the drive line, and the speeds below its parts.
#include <QtMath>
#include <algorithm>
#include <cmath>

#include "drawing/furniture.h"
#include "drawing/outline.h"
#include "mechanism/paint_mechanism.h"
#include "mechanism/words.h"

namespace cabwright::mechanism {

using drawing::Anchor;
using drawing::kHairline;
using drawing::kNoLine;
using drawing::kThin;
using drawing::outlineOf;
using drawing::Pen;
using drawing::rectShape;
using drawing::Stroke;
using drawing::Tone;

namespace {

constexpr double kAxis = 218;
constexpr double kThird = 346, kSecond = 446, kFirst = 546, kJoint = 681, kAxle = 986;
constexpr double kPerTooth = 84.0 / 78.0;

enum class Fill : std::uint8_t { kCut, kCutBack, kFace, kPaper, kInk, kLining };

void fillShape(Pen& pen, const QPainterPath& shape, Fill fill, const Stroke& stroke = {}) {
  const Tone tone = fill == Fill::kPaper ? Tone::kPaper
                    : fill == Fill::kInk ? Tone::kInk
                                         : Tone::kFace;
  pen.path(shape, kNoLine, tone);
  if (fill == Fill::kCut) pen.hatch(shape, Tone::kInk2, 6, 45, 1.1);
  if (fill == Fill::kCutBack) pen.hatch(shape, Tone::kInk2, 6, -45, 1.1);
  if (fill == Fill::kLining) pen.dots(shape, Tone::kInk, 3.4, 1.0);
  pen.path(shape, stroke);
}

/// A ring about the axis, cut: twice the same rectangle, above and below.
void ring(Pen& pen, double x, double r0, double r1, double width, Fill fill,
          const Stroke& stroke = {}) {
  fillShape(pen, rectShape({x, kAxis - r1, width, r1 - r0}), fill, stroke);
  fillShape(pen, rectShape({x, kAxis + r0, width, r1 - r0}), fill, stroke);
}

void paintCoupling(Pen& pen, double oil_c) {
  fillShape(pen, outlineOf("M44 206 H66 V230 H44 Q49 224 44 218 Q39 212 44 206 Z"), Fill::kPaper);
  ring(pen, 66, 0, 104, 14, Fill::kCutBack);
  for (double s : {-1.0, 1.0}) {
    pen.push({80, kAxis}, 0, 1, s);
    fillShape(pen, outlineOf("M0 104 H52 Q74 104 74 82 V28 H62 V78 Q62 92 50 92 H0 Z"), Fill::kCut);
    const QPointF c(33, 58);
    pen.ellipse(c, 25, 32, {}, Tone::kFace);
    QPainterPath torus;
    torus.addEllipse(c, 24, 31);
    QPainterPath core;
    core.addEllipse(c, 9, 12);
    // Thin oil, hot, lies less dense.
    pen.dots(torus.subtracted(core), Tone::kInk2, oil_c > 110 ? 8.4 : 5.6, 0.9);
    for (int k = -2; k <= 2; ++k) {
      for (double side : {-1.0, 1.0})
        pen.line({33 + side * 8, 58 + k * 4.5},
                 {33 + side * 22.5 * std::sqrt(1 - (k / 2.9) * (k / 2.9)), 58 + k * 11.0},
                 {kThin, Tone::kInk2});
    }
    pen.ellipse(c, 8.5, 12, {kThin}, Tone::kPaper);
    pen.line({33, 26}, {33, 46}, {2.6});
    pen.line({33, 70}, {33, 90}, {2.6});
    pen.pop();
  }
  fillShape(pen, rectShape({90, kAxis - 10, 88, 20}), Fill::kPaper);
}

void paintFreewheelSection(Pen& pen) {
  ring(pen, 176, 10, 26, 44, Fill::kCut);
  ring(pen, 176, 26, 40, 44, Fill::kPaper);
  ring(pen, 176, 40, 56, 44, Fill::kCutBack);
  ring(pen, 220, 10, 56, 9, Fill::kCutBack);
  fillShape(pen, rectShape({170, kAxis - 10, 52, 20}), Fill::kPaper);
}

void paintTrain(Pen& pen, double x, const TrainTeeth& t) {
  const double rs = kPerTooth * t.sun, rp = kPerTooth * t.planet, ra = kPerTooth * t.annulus;
  ring(pen, x, 9, rs, 40, Fill::kCutBack);
  ring(pen, x, rs, rs + 2 * rp, 40, Fill::kFace);
  ring(pen, x, ra, 96, 40, Fill::kCut);
  for (double s : {-1.0, 1.0}) {
    pen.line({x, kAxis + s * rs}, {x + 40, kAxis + s * rs}, {drawing::kBold});
    pen.line({x, kAxis + s * ra}, {x + 40, kAxis + s * ra}, {drawing::kBold});
    pen.line({x - 10, kAxis + s * (rs + rp)}, {x + 62, kAxis + s * (rs + rp)},
             {kHairline, Tone::kInk2, {10, 3, 2, 3}, false});
  }
  ring(pen, x - 6, rs + rp - 6, rs + rp + 6, 56, Fill::kPaper);
}

/// Band round its drum; `open` is its gap, 0 closed to 1.
void paintBandCut(Pen& pen, double x, double open) {
  const double gap = 1 + 7 * open;
  ring(pen, x + 1, 104 + gap, 108 + gap, 38, Fill::kLining, kNoLine);
  ring(pen, x + 1, 104 + gap, 113 + gap, 38, Fill::kPaper);
  ring(pen, x + 1, 104 + gap, 108 + gap, 38, Fill::kLining, kNoLine);
}

void paintBox(Pen& pen, const MechanismState& state, const LineState& line) {
  const double pin3 = kPerTooth * (state.teeth[2].sun + state.teeth[2].planet);
  const double pin2 = kPerTooth * (state.teeth[1].sun + state.teeth[1].planet);
  const double pin1 = kPerTooth * (state.teeth[0].sun + state.teeth[0].planet);
  pen.path(outlineOf("M244 86 H664 V350 H244 Z"), {kThin, Tone::kInk2, {18, 5}, false});
  fillShape(pen, rectShape({229, kAxis - 9, 400, 18}), Fill::kPaper);
  paintTrain(pen, kThird, state.teeth[2]);
  paintTrain(pen, kSecond, state.teeth[1]);
  paintTrain(pen, kFirst, state.teeth[0]);
  // Each carrier is one with the drum of the train behind it; the last one is the output.
  ring(pen, kThird + 50, pin3 - 9, 104, 9, Fill::kCutBack);
  ring(pen, kThird + 50, 96, 104, kSecond - kThird - 10, Fill::kCutBack);
  ring(pen, kSecond + 50, pin2 - 9, 104, 9, Fill::kCutBack);
  ring(pen, kSecond + 50, 96, 104, kFirst - kSecond - 10, Fill::kCutBack);
  ring(pen, kFirst + 50, 12, pin1 + 9, 10, Fill::kCutBack);
  // Third drum reaches over to the clutch, which makes it one with the input.
  ring(pen, kThird - 32, 52, 104, 9, Fill::kCut);
  ring(pen, kThird - 32, 96, 104, 72, Fill::kCut);
  ring(pen, kThird - 56, 52, 60, 33, Fill::kCut);
  const double together = line.gear_holds[3] ? 4.2 : 6;
  for (int i = 0; i < 4; ++i)
    ring(pen, kThird - 56 + together * i, i % 2 != 0 ? 24 : 30, i % 2 != 0 ? 46 : 52, 3.5,
         i % 2 != 0 ? Fill::kInk : Fill::kFace, {kThin});
  ring(pen, kThird - 66, 9, 24, 34, Fill::kCutBack);
  ring(pen, kThird - 84, 14, 50, 20, Fill::kFace);
  const double push = line.gear_psi[3] > 8 ? 4 : 0;
  ring(pen, kThird - 72 + push, 16, 48, 7, Fill::kPaper, {kThin});
  for (std::size_t k = 0; k < 3; ++k) {
    const double open = std::clamp(1 - line.gear_psi[k] / 14, 0.0, 1.0);
    paintBandCut(pen, k == 0 ? kFirst : k == 1 ? kSecond : kThird, open);
  }
  fillShape(pen, rectShape({kFirst + 48, kAxis - 12, 78, 24}), Fill::kPaper);
  ring(pen, kFirst + 126, 0, 34, 9, Fill::kCutBack);
}

void paintShaft(Pen& pen, double turn_deg) {
  const double x = kJoint;
  ring(pen, x, 0, 34, 8, Fill::kCut);
  for (double at : {x + 8, x + 122}) {
    pen.push({at, kAxis}, 0);
    pen.path(outlineOf("M0 -20 H18 Q34 -20 34 0 Q34 20 18 20 H0 Z"), {}, Tone::kFace);
    pen.path(outlineOf("M54 -20 H36 Q20 -20 20 0 Q20 20 36 20 H54 Z"), {}, Tone::kFace);
    pen.circle({27, 0}, 8, {}, Tone::kPaper);
    pen.pop();
  }
  fillShape(pen, rectShape({x + 62, kAxis - 15, 60, 30}), Fill::kPaper);
  for (double seam : {0.0, 120.0, 240.0}) {
    const double a = qDegreesToRadians(turn_deg + seam);
    if (std::cos(a) > 0.1)
      pen.line({x + 64, kAxis + 15 * std::sin(a)}, {x + 120, kAxis + 15 * std::sin(a)},
               {kThin, Tone::kInk2});
  }
  ring(pen, x + 176, 0, 34, 8, Fill::kCut);
  fillShape(pen, rectShape({x + 184, kAxis - 13, kAxle - 99 - x - 182, 26}), Fill::kPaper);
}

void paintBevels(Pen& pen, const LineState& line) {
  constexpr double kPinion = 36, kGear = 99;
  const QPolygonF pinion{{kAxle - kGear, kAxis - kPinion},
                         {kAxle - kGear * 0.6, kAxis - kPinion * 0.6},
                         {kAxle - kGear * 0.6, kAxis + kPinion * 0.6},
                         {kAxle - kGear, kAxis + kPinion}};
  pen.polygon(pinion, {}, Tone::kFace);
  for (int i = -3; i <= 3; ++i)
    pen.line({kAxle - kGear, kAxis + kPinion * i / 3.6},
             {kAxle - kGear * 0.6, kAxis + 0.6 * kPinion * i / 3.6}, {kThin});
  fillShape(
      pen,
      outlineOf("M971 76 Q979 81 986 76 Q993 71 1001 76 V364 Q993 359 986 364 Q979 369 971 364 Z"),
      Fill::kPaper);
  for (double s : {-1.0, 1.0}) {
    for (double side : {1.0, -1.0}) {
      pen.push({kAxle, kAxis}, 0, side, s);
      const QPainterPath bevel = outlineOf(
          "M-99 36 L-59.4 21.6 L-57.4 23.8 L-42 34 L-15 34 L-15 92 L-40 92 L-46 62 L-91 52 Z");
      fillShape(pen, bevel, s < 0 ? Fill::kCut : Fill::kCutBack);
      for (double x : {21.0, 33.0}) pen.rect({x - 4, 26, 8, 8}, {kThin}, Tone::kInk);
      pen.pop();
    }
  }
  // The sleeve on the axle, pushed towards the gear whose way is wanted: forward is below here.
  const double move = 12 * line.sleeve;
  for (double side : {-1.0, 1.0}) {
    for (double x : {26.0, 38.0}) {
      pen.rect({kAxle + side * x - 4, kAxis + move + 11, 8, 8}, {kThin}, Tone::kFace);
      pen.rect({kAxle + side * x - 4, kAxis + move - 19, 8, 8}, {kThin}, Tone::kFace);
    }
    pen.rect({side < 0 ? kAxle - 44 : kAxle + 15, kAxis - 11 + move, 29, 22}, {}, Tone::kFace);
  }
  // Fork, rod, and the shift cylinder with its two sides.
  pen.rect({kAxle + 36, kAxis + move - 7, 60, 14}, {}, Tone::kFace);
  const double rx = kAxle + 104;
  pen.rect({rx - 5, kAxis - 62, 10, 164}, {}, Tone::kPaper);
  pen.rect({rx - 10, kAxis + move - 11, 20, 22}, {}, Tone::kFace);
  const QRectF cylinder(rx - 21, kAxis - 110, 42, 70);
  pen.rect(cylinder, {}, Tone::kFace);
  const double piston = kAxis - 79 + move;
  const auto air = [&](const QRectF& room, double psi) {
    if (psi > 2) pen.dots(rectShape(room), Tone::kInk, psi > 60 ? 4.2 : 5.6, 1.15);
  };
  air({rx - 20, kAxis - 109, 40, piston - kAxis + 109}, line.shift_forward_psi);
  air({rx - 20, piston + 8, 40, kAxis - 41 - piston - 8}, line.shift_reverse_psi);
  pen.rect({rx - 21, piston, 42, 8}, {}, Tone::kPaper);
  pen.rect({rx - 4, piston + 8, 8, kAxis - 40 - piston - 8}, {}, Tone::kPaper);
  const auto psi = [&](double y, double value) {
    pen.line({rx + 21, y}, {rx + 40, y});
    pen.text({rx + 46, y + 6.5}, Words::tr("%1 psi").arg(value, 0, 'f', 0),
             {.bold = value > 2, .tone = value > 2 ? Tone::kInk : Tone::kInk2});
  };
  psi(kAxis - 98, line.shift_forward_psi);
  psi(kAxis - 50, line.shift_reverse_psi);
}

QString speedText(double rpm) {
  const double size = std::abs(rpm);
  const QString digits =
      size >= 10 || size < 0.05 ? QString::number(size, 'f', 0) : QString::number(size, 'f', 1);
  return rpm < 0 && size >= 0.05 ? QStringLiteral("−") + digits : digits;
}

}  // namespace

void paintDriveSection(Pen& pen, const MechanismState& state, const LineState& line,
                       const MechanismTurn& turn) {
  paintCoupling(pen, line.coupling_c);
  paintFreewheelSection(pen);
  paintBox(pen, state, line);
  paintShaft(pen, turn.output);
  paintBevels(pen, line);
  pen.line({40, kAxis}, {kAxle + 130, kAxis}, {kHairline, Tone::kInk2, {16, 4, 3, 4}, false});
  const auto name = [&](double x, const QString& word) {
    pen.text({x, 78}, word, {.anchor = Anchor::kMiddle});
  };
  name(88, Words::tr("Coupling"));
  name(199, Words::tr("Freewheel"));
  name(kThird - 58, Words::tr("Direct"));
  name(kThird + 20, Words::tr("Third"));
  name(kSecond + 20, Words::tr("Second"));
  name(kFirst + 20, Words::tr("First"));
  name(kJoint + 92, Words::tr("Cardan shaft"));
  pen.text({kAxle - 24, 78}, Words::tr("Axle"), {.anchor = Anchor::kEnd});
  pen.line({199, 86}, {199, kAxis - 56}, {kThin, Tone::kInk2});
  pen.line({kThird - 58, 90}, {kThird - 58, kAxis - 60}, {kThin, Tone::kInk2});
  pen.line({kJoint + 92, 86}, {kJoint + 92, kAxis - 18}, {kThin, Tone::kInk2});
  pen.line({kThird - 74, kAxis + 50}, {kThird - 74, kAxis + 82}, {kThin, Tone::kInk2});
  pen.text({kThird - 62, kAxis + 102}, Words::tr("%1 psi").arg(line.gear_psi[3], 0, 'f', 0),
           {.anchor = Anchor::kMiddle,
            .bold = line.gear_psi[3] > 2,
            .tone = line.gear_psi[3] > 2 ? Tone::kInk : Tone::kInk2});
}

void paintSpeedStrip(Pen& pen, const LineState& line) {
  constexpr double kY = 420, kPerRpm = 30.0 / 700.0, kLongest = 36;
  pen.line({40, kY}, {1220, kY}, {kThin, Tone::kRule});
  pen.text({1220, kY - 10}, Words::tr("rev/min"), {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
  struct Bar {
    double x;
    QString name;
    double rpm;
    QPointF part;
  };
  const Bar bars[] = {{58, Words::tr("engine"), line.engine, {72, kAxis + 104}},
                      {150, Words::tr("runner"), line.runner, {108, kAxis + 70}},
                      {250, Words::tr("input"), line.input, {236, kAxis + 9}},
                      {352, Words::tr("drum 3"), line.drum[2], {kThird - 12, kAxis + 100}},
                      {452, Words::tr("drum 2"), line.drum[1], {kSecond - 18, kAxis + 100}},
                      {552, Words::tr("drum 1"), line.drum[0], {kFirst - 18, kAxis + 100}},
                      {655, Words::tr("output"), line.output, {kFirst + 112, kAxis + 12}},
                      {926, Words::tr("crown"), std::abs(line.crown), {kAxle - 70, kAxis + 60}},
                      {1026, Words::tr("axle"), line.wheel, {kAxle + 8, 362}}};
  for (const Bar& bar : bars) {
    const double h = std::clamp(bar.rpm * kPerRpm, -kLongest, kLongest);
    pen.rect({bar.x - 5, kY - std::max(h, 0.0), 10, std::max(std::abs(h), 1.2)}, kNoLine,
             Tone::kInk);
    pen.polyline({{bar.part, {bar.part.x(), 368}, {bar.x, kY - 40}}}, {kHairline, Tone::kInk2});
    pen.circle(bar.part, 2.6, kNoLine, Tone::kInk);
    const bool down = h < 0;
    pen.text({bar.x + 12, down ? kY + 24 : kY - 12}, speedText(bar.rpm),
             {.size = drawing::kName, .bold = true});
    pen.text({bar.x + 12, down ? kY - 12 : kY + 24}, bar.name, {.tone = Tone::kInk2});
  }
}

}  // namespace cabwright::mechanism
