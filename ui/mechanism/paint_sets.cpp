// SPDX-License-Identifier: GPL-3.0-or-later
// Freewheel and epicyclic trains across their axis, with true tooth counts, and the dogs unrolled.
#include <algorithm>
#include <cmath>

#include "drawing/furniture.h"
#include "drawing/outline.h"
#include "mechanism/paint_mechanism.h"
#include "mechanism/words.h"

namespace cabwright::mechanism {

using drawing::Anchor;
using drawing::circleShape;
using drawing::kNoLine;
using drawing::kThin;
using drawing::Pen;
using drawing::pointAt;
using drawing::rectShape;
using drawing::Tone;

namespace {

constexpr double kCentreY = 606, kCaptionY = 482, kSetR = 78;
constexpr double kPictureS = 0.04;
constexpr double kLine = 1.15;

// Straight-sided teeth, exactly as many; `rot`: clock angle of the middle of one.
QPolygonF gearOutline(QPointF c, int teeth, double module, double rot, bool internal) {
  const double r = module * teeth / 2, add = 0.85 * module, ded = 1.05 * module;
  const double tip = internal ? r - add : r + add, root = internal ? r + ded : r - ded;
  const double pitch = 360.0 / teeth;
  QPolygonF points;
  for (int i = 0; i < teeth; ++i) {
    const double a = rot + i * pitch;
    points << pointAt(c, root, a - 0.31 * pitch) << pointAt(c, tip, a - 0.15 * pitch)
           << pointAt(c, tip, a + 0.15 * pitch) << pointAt(c, root, a + 0.31 * pitch);
  }
  return points;
}

void paintGear(Pen& pen, QPointF c, int teeth, double module, double rot, bool blurred) {
  if (blurred) {  // too quick for teeth to be followed: pitch circle and tip
    pen.circle(c, module * teeth / 2 + 0.85 * module, {kThin, Tone::kRule}, Tone::kFace);
    pen.circle(c, module * teeth / 2, {kThin, Tone::kInk2, {6, 3}, false});
  } else {
    pen.polygon(gearOutline(c, teeth, module, rot, false), {kLine}, Tone::kFace);
  }
}

void turnArrow(Pen& pen, QPointF c, double r, double from, double to) {
  pen.arc(c, r, from, to);
  const double sense = to > from ? 1 : -1, back = to - sense * 540 / r;
  pen.polygon({{pointAt(c, r, to), pointAt(c, r - 4, back), pointAt(c, r + 4, back)}}, kNoLine,
              Tone::kInk);
}

// Which way and roughly how quick: nothing while it stands.
void turnSign(Pen& pen, QPointF c, double r, double rpm, double at, double span) {
  if (std::abs(rpm) < 0.5) return;
  const double half = span / 2;
  rpm > 0 ? turnArrow(pen, c, r, at - half, at + half) : turnArrow(pen, c, r, at + half, at - half);
}

void paintFreewheel(Pen& pen, const LineState& line, const MechanismTurn& turn) {
  const QPointF c(112, kCentreY);
  pen.text({c.x(), kCaptionY}, Words::tr("Freewheel"),
           {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  QPainterPath ring = circleShape(c, 72).subtracted(circleShape(c, 56));
  pen.path(ring, kNoLine, Tone::kFace);
  pen.hatch(ring, Tone::kInk2, 6, 45 + turn.sun, 1.1);
  pen.path(ring, {});
  constexpr int kRollers = 8;
  QPolygonF cam;
  for (int i = 0; i < kRollers; ++i) {
    const double a = 45.0 * i + turn.runner;
    cam << pointAt(c, 49, a - 6) << pointAt(c, 34, a + 2) << pointAt(c, 42, a + 38);
  }
  QPainterPath hub;
  hub.addPolygon(cam);
  hub.closeSubpath();
  pen.path(hub, kNoLine, Tone::kFace);
  pen.hatch(hub, Tone::kInk2, 6, -45 + turn.runner, 1.1);
  pen.path(hub, {});
  pen.circle(c, 16, {}, Tone::kPaper);
  // Wedged they sit high on their ramps, against the ring; loose they lie in the pocket.
  const double along = line.freewheel_drives ? 24 : 12, high = line.freewheel_drives ? 47.4 : 44.5;
  for (int i = 0; i < kRollers; ++i) {
    const QPointF roller = pointAt(c, high, 45.0 * i + along + turn.runner);
    pen.circle(roller, 8.2, {}, Tone::kFace);
    pen.circle(roller, 1.4, kNoLine, Tone::kInk);
  }
  turnSign(pen, c, 82, line.input, 0, 70);
  const QString words = freewheelWords(line);
  const auto colon = words.indexOf(QLatin1Char(':'));
  const double y = kCentreY + 116;
  pen.text({c.x(), y}, colon < 0 ? words : words.left(colon + 1), {.anchor = Anchor::kMiddle});
  if (colon >= 0)
    pen.text({c.x(), y + 25}, words.mid(colon + 2), {.anchor = Anchor::kMiddle, .bold = true});
}

// The band round its drum and the cylinder that closes it.
void paintBand(Pen& pen, QPointF c, double drum_r, double psi) {
  const double close = std::clamp(psi / 14, 0.0, 1.0);
  const double r = drum_r + 7 * (1 - close) + 0.8;
  pen.dots(drawing::sectorShape(c, r, r + 4, 190, 530), Tone::kInk, 3.4, 1.0);
  pen.sector(c, r, r + 8, 190, 530);
  const double y = c.y() + drum_r + 24;
  const QPointF left = pointAt(c, r + 8, 190), right = pointAt(c, r + 8, 170);
  for (const QPointF& end : {left, right})
    pen.rect({end.x() - 3.5, end.y() - 2, 7, y + 9 - end.y()}, {}, Tone::kFace);
  pen.line({left.x() - 12, y}, {right.x() + 30, y}, {3.2});
  pen.line({left.x() - 12, y - 6}, {left.x() - 12, y + 6}, {3.2});
  const QRectF cylinder(right.x() + 14, y - 12, 62, 24);
  pen.rect(cylinder, {}, Tone::kFace);
  const double piston = cylinder.left() + 8 + 38 * (0.06 + 0.5 * close);
  if (psi > 2)
    pen.dots(rectShape({piston + 8, y - 11, cylinder.right() - piston - 9, 22}), Tone::kInk,
             psi > 60 ? 4.2 : 5.6, 1.15);
  pen.rect({piston, y - 12, 8, 24}, {}, Tone::kPaper);
  pen.line({right.x() + 3, y}, {piston, y}, {3.2});
  pen.text(
      {right.x() + 45, y + 36}, Words::tr("%1 psi").arg(psi, 0, 'f', 0),
      {.anchor = Anchor::kMiddle, .bold = psi > 2, .tone = psi > 2 ? Tone::kInk : Tone::kInk2});
}

void paintSet(Pen& pen, QPointF c, const TrainTeeth& t, double sun_deg, double carrier_deg,
              const LineState& line, std::size_t train, double slowness) {
  const double module = 2 * kSetR / t.annulus;
  const double rs = module * t.sun / 2, rp = module * t.planet / 2, drum_r = kSetR + 12;
  const MeshAngles mesh = calcMesh(t, sun_deg, carrier_deg);
  const auto quick = [&](double rpm, int teeth) {
    return pitchesPerPicture(rpm, teeth, slowness) > 1.0 / 3;
  };
  QPainterPath rim = circleShape(c, drum_r);
  const bool rim_quick = quick(line.drum[train], t.annulus);
  QPainterPath inside;
  if (rim_quick) {
    inside.addEllipse(c, kSetR, kSetR);
  } else {
    inside.addPolygon(gearOutline(c, t.annulus, module, mesh.annulus, true));
    inside.closeSubpath();
  }
  rim = rim.subtracted(inside);
  pen.path(rim, kNoLine, Tone::kFace);
  pen.hatch(rim, Tone::kInk2, 5.5, 45 + mesh.annulus, 1.05);
  pen.path(rim, {kLine});
  pen.circle(c, drum_r);
  // Carrier, planets, sun.
  QPolygonF arms;
  for (int k = 0; k < 3; ++k) arms << pointAt(c, rs + rp, carrier_deg + 120 * k);
  pen.polygon(arms, {13, Tone::kInk2});
  pen.polygon(arms, {10.6, Tone::kFace});
  const double carrier = train == 0 ? line.output : line.drum[train - 1];
  const double planet_rpm = carrier - (line.input - carrier) * t.sun / t.planet;
  for (int k = 0; k < 3; ++k) {
    const double a = carrier_deg + 120 * k;
    const QPointF at = pointAt(c, rs + rp, a);
    paintGear(pen, at, t.planet, module, calcMesh(t, sun_deg, a).planet,
              quick(planet_rpm, t.planet));
    pen.circle(at, std::max(4.5, rp * 0.26), {}, Tone::kPaper);
    pen.circle(at, 1.6, kNoLine, Tone::kInk);
  }
  paintGear(pen, c, t.sun, module, sun_deg, quick(line.input, t.sun));
  pen.path(circleShape(c, 9), {}, Tone::kPaper);
  pen.hatch(circleShape(c, 9), Tone::kInk2, 4, -45, 1.1);
  turnSign(pen, c, 16, line.input, 0, 120);
  turnSign(pen, c, kSetR + 7.5, line.drum[train], 26, 32);
}

}  // namespace

double pitchesPerPicture(double rpm, int teeth, double slowness) {
  if (slowness <= 0) return 0;
  return std::abs(rpm) / 60 * kPictureS / slowness * teeth;
}

void paintCrossSections(Pen& pen, const MechanismState& state, const LineState& line,
                        const MechanismTurn& turn, const MechanismLook& look) {
  paintFreewheel(pen, line, turn);
  const struct {
    double x;
    QString name;
    std::size_t train;
  } sets[] = {
      {304, Words::tr("Third"), 2}, {524, Words::tr("Second"), 1}, {744, Words::tr("First"), 0}};
  for (const auto& set : sets) {
    const QPointF c(set.x, kCentreY);
    const QString words = bandWords(line, static_cast<int>(set.train));
    const bool works = line.gear_psi[set.train] > 8 || line.gear_holds[set.train];
    const QString before = Words::tr("%1: band ").arg(set.name);
    const double w = drawing::textWidth(before) + drawing::textWidth(words, drawing::kText, works);
    const double x = c.x() - w / 2;
    pen.text({x, kCaptionY}, before, {.tone = Tone::kInk2});
    pen.text({x + drawing::textWidth(before), kCaptionY}, words,
             {.bold = works, .tone = works ? Tone::kInk : Tone::kInk2});
    paintSet(pen, c, state.teeth[set.train], turn.sun, turn.carrier(set.train), line, set.train,
             look.slowness);
    paintBand(pen, c, kSetR + 12, line.gear_psi[set.train]);
  }
}

void paintDogs(Pen& pen, const MechanismState& state, const LineState& line) {
  constexpr double kLeft = 892, kWidth = 328, kPitchU = 64, kFace = 602, kDeep = 26;
  const double tooth = kPitchU * (1 - state.dog_window_deg / state.dog_pitch_deg) / 2;
  const bool reverse = line.dog_side < 0;
  pen.text({kLeft, kCaptionY},
           reverse ? Words::tr("Reverse dogs, unrolled") : Words::tr("Forward dogs, unrolled"),
           {.tone = Tone::kInk2});
  // How deep the sleeve's teeth stand in the gaps: none while face stands on face or apart.
  const double way = std::abs(line.sleeve);
  const bool inside =
      line.dog == plant::DogState::kMeshed || line.dog == plant::DogState::kEntering;
  const double gap =
      inside ? -kDeep * std::clamp((way - 0.8) / 0.2, 0.15, 1.0)
      : line.dog == plant::DogState::kOnTooth || line.dog == plant::DogState::kRattling
          ? 0
          : 18 * (1 - std::min(1.0, way));
  // In mesh the machine keeps no angle: the teeth lie against the flank that drives.
  const double driven_deg = line.output_nm < 0 ? 0 : state.dog_window_deg;
  const double shown_deg = line.dog == plant::DogState::kMeshed ? driven_deg : line.tooth_deg;
  const double offset = shown_deg / state.dog_pitch_deg * kPitchU;
  const auto row = [&](double base, double tip, double shift, double degrees) {
    QPolygonF edge{{kLeft - kPitchU, base}};
    const double root = tip + (base < tip ? -kDeep : kDeep);
    for (double x = kLeft - kPitchU + std::fmod(shift, kPitchU); x < kLeft + kWidth + kPitchU;
         x += kPitchU)
      edge << QPointF(x, root) << QPointF(x, tip) << QPointF(x + tooth, tip)
           << QPointF(x + tooth, root);
    edge << QPointF(kLeft + kWidth + 2 * kPitchU, root)
         << QPointF(kLeft + kWidth + 2 * kPitchU, base);
    QPainterPath shape;
    shape.addPolygon(edge);
    shape.closeSubpath();
    pen.path(shape, kNoLine, Tone::kFace);
    pen.hatch(shape, Tone::kInk2, 6, degrees, 1.1);
    pen.path(shape, {});
  };
  pen.push();
  pen.painter().setClipRect(QRectF(kLeft, 500, kWidth, 220));
  // The crown wheel moves on by its angle against the axle. Between nought and the window its teeth
  // stand in the gaps of the sleeve's.
  row(532, kFace, offset, 45);
  row(672 + gap, kFace + gap, kPitchU - tooth, -45);
  if (line.dog == plant::DogState::kOnTooth) {
    const double from = std::max(offset, kPitchU - tooth), to = std::min(offset + tooth, kPitchU);
    for (double x = kLeft - kPitchU; x < kLeft + kWidth; x += kPitchU)
      pen.line({x + from, kFace}, {x + to, kFace}, {drawing::kHeavy, Tone::kDoubt});
  }
  pen.pop();
  for (double x : {kLeft, kLeft + kWidth}) {
    pen.line({x, 528}, {x, 580}, {drawing::kNorm, Tone::kInk, {9, 4}, false});
    pen.line({x, 624 + gap}, {x, 672 + gap}, {drawing::kNorm, Tone::kInk, {9, 4}, false});
  }
  pen.text({kLeft, 520}, Words::tr("crown wheel"));
  pen.text({kLeft + kWidth, 520}, Words::tr("%1 rev/min").arg(std::abs(line.crown), 0, 'f', 1),
           {.anchor = Anchor::kEnd, .bold = true});
  const double psi = reverse ? line.shift_reverse_psi : line.shift_forward_psi;
  pen.text({kLeft, 716}, Words::tr("sleeve"));
  pen.text({kLeft + kWidth, 716}, Words::tr("%1 psi").arg(psi, 0, 'f', 0),
           {.anchor = Anchor::kEnd, .bold = psi > 2});
  QString words = dogWords(line);
  words[0] = words[0].toUpper();
  pen.text({kLeft, 750}, words,
           {.size = drawing::kName,
            .bold = true,
            .tone = line.dog == plant::DogState::kOnTooth || line.dog == plant::DogState::kRattling
                        ? Tone::kDoubt
                        : Tone::kInk});
  const QString outlook = dogOutlook(line, state);
  if (!outlook.isEmpty()) pen.paragraph({kLeft, 775}, outlook, kWidth, {}, 24);
}

}  // namespace cabwright::mechanism
