// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_car_detail.h"

#include <algorithm>

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

constexpr double kWheelR = 78, kBlockWay = 7;
constexpr double kWheelDown = 8;  // centre of the wheel below that of the circle

class Clipped {
 public:
  Clipped(Pen& pen, QPointF centre, double r) : pen_(pen) {
    pen.push(centre, 0);
    pen.painter().setClipPath(drawing::circleShape({0, 0}, r - 1), Qt::IntersectClip);
  }
  ~Clipped() { pen_.pop(); }
  Clipped(const Clipped&) = delete;
  Clipped& operator=(const Clipped&) = delete;

 private:
  Pen& pen_;
};

void drawPin(Pen& pen, QPointF at, double r = 5) {
  pen.circle(at, r, {kNorm, Tone::kInk}, Tone::kFace);
  pen.circle(at, r * 0.3, kNoLine, Tone::kInk);
}

void drawBar(Pen& pen, QPointF from, QPointF to, double width) {
  pen.line(from, to, {width, Tone::kInk, {}, true});
  pen.line(from, to, {width - 3.2, Tone::kFace, {}, true});
}

// One block on its hanger; `side` -1 left, 1 right; `gap` to the tyre.
void drawBlock(Pen& pen, QPointF wheel, double side, double gap) {
  const double r = kWheelR + gap;
  drawBar(pen, wheel + QPointF(side * (r + 22), -86), wheel + QPointF(side * (r + 17), 6), 11);
  QPainterPath block;
  for (int k = 0; k <= 8; ++k) {
    const QPointF p =
        wheel + QPointF(side * gap, 0) + drawing::pointAt({0, 0}, kWheelR, side * (68 + 5.5 * k));
    k == 0 ? block.moveTo(p) : block.lineTo(p);
  }
  block.lineTo(wheel + QPointF(side * (r + 12), 30));
  block.lineTo(wheel + QPointF(side * (r + 15), -22));
  block.closeSubpath();
  pen.path(block, {kNorm, Tone::kInk}, Tone::kShade);
  pen.rect(QRectF(wheel.x() + side * (r + 15) - 5, wheel.y() - 20, 10, 46), {kNorm, Tone::kInk},
           Tone::kFace, 3);  // its head
  drawPin(pen, wheel + QPointF(side * (r + 16), 4));
}

void drawSpring(Pen& pen, QPointF over_box) {
  for (int leaf = 5; leaf >= 0; --leaf) {
    const double half = 92 - 13 * leaf, y = -1.0 + 5.4 * leaf;
    QPainterPath p(over_box + QPointF(-half, y - 28));
    p.quadTo(over_box + QPointF(0, y - 12 - 6), over_box + QPointF(half, y - 28));
    p.lineTo(over_box + QPointF(half, y - 22.6));
    p.quadTo(over_box + QPointF(0, y - 12.6), over_box + QPointF(-half, y - 22.6));
    p.closeSubpath();
    pen.path(p, {kThin, Tone::kInk}, Tone::kFace);
  }
  pen.rect({over_box.x() - 13, over_box.y() - 30, 26, 38}, {kNorm, Tone::kInk}, Tone::kFace, 2);
  for (double y : {-22.0, 0.0})
    pen.line(over_box + QPointF(-13, y), over_box + QPointF(13, y), {kThin, Tone::kInk2});
}

void drawBox(Pen& pen, QPointF c) {
  pen.rect({c.x() - 27, c.y() - 28, 54, 56}, {kNorm, Tone::kInk}, Tone::kFace, 4);
  pen.circle(c, 19, {kNorm, Tone::kInk}, Tone::kFace);
  pen.circle(c, 11, {kThin, Tone::kInk2});
  for (int k = 0; k < 6; ++k)
    pen.circle(drawing::pointAt(c, 15, 30 + 60 * k), 1.8, kNoLine, Tone::kInk);
  for (double side : {-1.0, 1.0})  // horns of the frame, in which the box slides
    pen.rect({c.x() + side * 32 - 5, c.y() - 44, 10, 72}, {kThin, Tone::kInk}, Tone::kFace, 2);
}

}  // namespace

void drawWheelDetail(Pen& pen, QPointF centre, double blocks_on, bool scotch) {
  const Clipped clipped(pen, centre, kWheelCircle);
  const QPointF w(0, kWheelDown);
  const double rail = w.y() + kWheelR;
  pen.rect({-140, rail, 280, 12}, {kNorm, Tone::kInk}, Tone::kFace);
  pen.circle(w, kWheelR, {kRing, Tone::kInk}, Tone::kFace);
  pen.circle(w, kWheelR - 11, {kThin, Tone::kInk});
  pen.circle(w, kWheelR - 15, {kHairline, Tone::kRule});
  const double gap = kBlockWay * (1 - std::clamp(blocks_on, 0.0, 1.0));
  for (double side : {-1.0, 1.0}) drawBlock(pen, w, side, gap);
  // Pull rod below, from beam to beam, with its turnbuckle.
  const double y = rail + 25;
  for (double side : {-1.0, 1.0})
    drawBar(pen, w + QPointF(side * (kWheelR + gap + 16), 26), {side * (kWheelR + gap + 12), y}, 8);
  drawBar(pen, {-kWheelR - gap - 12, y}, {kWheelR + gap + 12, y}, 9);
  pen.rect({-22, y - 8, 44, 16}, {kNorm, Tone::kInk}, Tone::kFace, 3);
  for (int k = 0; k < 5; ++k)
    pen.line({-16.0 + 8 * k, y - 8}, {-16.0 + 8 * k, y + 8}, {kHairline, Tone::kInk2});
  for (double side : {-1.0, 1.0}) drawPin(pen, {side * (kWheelR + gap + 12), y});
  // Frame of the bogie, the spring hung from it, the box.
  pen.rect({-140, -104, 280, 22}, {kNorm, Tone::kInk}, Tone::kFace);
  for (double side : {-1.0, 1.0}) {
    drawBar(pen, {side * 92, -86}, {side * 88, w.y() - 62}, 8);
    drawPin(pen, {side * 92, -88}, 4);
  }
  drawBox(pen, w);
  drawSpring(pen, w + QPointF(0, -34));
  const QPolygonF wedge({QPointF(58, rail), QPointF(112, rail), QPointF(108, rail - 15),
                         QPointF(72, rail - 24), QPointF(64, rail - 14)});
  if (scotch) {
    pen.polygon(wedge, {kNorm, Tone::kInk}, Tone::kShade);
    pen.hatch(
        [&] {
          QPainterPath p;
          p.addPolygon(wedge);
          p.closeSubpath();
          return p;
        }(),
        Tone::kRule, 6, 10);
  } else {
    pen.polygon(wedge, {kThin, Tone::kRule, {5, 3}, false});
  }
}

void drawCylinderDetail(Pen& pen, QPointF centre, double blocks_on, bool cord_pulled) {
  const Clipped clipped(pen, centre, kSmallCircle);
  const double out = 12 * std::clamp(blocks_on, 0.0, 1.0);
  const QRectF beam(-120, -96, 240, 26);
  pen.rect(beam, {kNorm, Tone::kInk}, Tone::kFace);
  pen.hatch(drawing::rectShape(beam), Tone::kRule, 8);
  // Drum on trunnions between two hangers.
  for (double x : {-62.0, 30.0})
    pen.rect({x - 6, -70, 12, 60}, {kThin, Tone::kInk}, Tone::kFace, 2);
  QPainterPath drum(QPointF(-54, 36));
  drum.lineTo(-54, -32);
  drum.quadTo(-54, -52, -16, -54);
  drum.quadTo(22, -52, 22, -32);
  drum.lineTo(22, 36);
  drum.closeSubpath();
  pen.path(drum, {kNorm, Tone::kInk}, Tone::kFace);
  pen.rect({-60, 30, 88, 12}, {kNorm, Tone::kInk}, Tone::kFace, 2);
  for (int k = 0; k < 6; ++k)
    pen.line({-52.0 + 14 * k, 28}, {-52.0 + 14 * k, 44}, {kBold, Tone::kInk});
  for (double x : {-62.0, 30.0}) drawPin(pen, {x, -14}, 7);
  // Bag round the rod, and the rod to its bell crank.
  pen.rect({-21, 44 + 0.3 * out, 10, 60}, {kNorm, Tone::kInk}, Tone::kFace);
  for (int k = 0; k < 4; ++k) {
    const double y = 43 + k * (5.5 + out / 8);
    pen.rect({-29, y, 26, 5.5 + out / 8}, {kThin, Tone::kInk}, Tone::kFace, 2.5);
  }
  // Marks of the rod's normal travel, on a stay beside it.
  pen.line({-40, 46}, {-40, 92}, {kThin, Tone::kInk2});
  for (double y : {72.0, 86.0}) pen.line({-40, y}, {-32, y}, {kNorm, Tone::kInk2});
  const QPointF joint(-16, 70 + out);
  drawBar(pen, joint, {52, 84}, 10);
  drawPin(pen, joint);
  drawPin(pen, {52, 84});
  // Release valve on the drum's shoulder, its lever, and the cord through an eye.
  pen.rect({22, -34, 16, 14}, {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.circle({46, -27}, 9, {kNorm, Tone::kInk}, Tone::kFace);
  const QPointF lever = drawing::pointAt({46, -27}, 26, cord_pulled ? 128 : 96);
  const Tone cord = cord_pulled ? Tone::kHand : Tone::kInk;
  drawBar(pen, {46, -27}, lever, 7);
  pen.circle({82, -58}, 5, {kNorm, Tone::kInk});
  QPainterPath line(lever);
  if (cord_pulled) {
    line.lineTo(76, 34);
  } else {  // hung up on its hook
    line.cubicTo(lever + QPointF(2, 46), QPointF(88, 36), QPointF(88, -10));
    line.lineTo(86, -36);
  }
  pen.path(line, {kRing, cord});
  const QPointF ring = cord_pulled ? QPointF(76, 42) : QPointF(86, -44);
  pen.circle(ring, 7, {kRing, cord}, Tone::kFace);
}

namespace {

// What comes out of the spout or of the cock's side, round the middle of the vessel.
void drawDrained(Pen& pen, DrainState state) {
  switch (state) {
    case DrainState::kShut:
      return;
    case DrainState::kOpen:
      for (double x : {-6.0, 0.0, 6.0}) pen.line({x * 0.5, 97}, {x, 106}, {kThin, Tone::kInk2});
      return;
    case DrainState::kDripping:
      for (double y : {98.0, 104.0}) {
        QPainterPath drop({0, y - 5});
        drop.cubicTo(4, y, 3, y + 3, 0, y + 3);
        drop.cubicTo(-3, y + 3, -4, y, 0, y - 5);
        pen.path(drop, {kThin, Tone::kInk}, Tone::kInk2);
      }
      return;
    case DrainState::kCracked:
      pen.polyline({{{-4, 60}, {2, 65}, {-5, 70}, {3, 76}, {-3, 82}, {4, 88}}},
                   {kBold, Tone::kInk});
      for (double y : {62.0, 70.0, 78.0})
        pen.line({-16, y}, {-27, y + (y - 70) * 0.5}, {kThin, Tone::kInk2});
      return;
    case DrainState::kIced: {
      QPainterPath icicle({-9, 92});
      icicle.lineTo(9, 92);
      icicle.lineTo(3, 98);
      icicle.lineTo(0, 106);
      icicle.lineTo(-4, 98);
      icicle.closeSubpath();
      pen.path(icicle, {kNorm, Tone::kInk}, Tone::kPaper);
      pen.line({-2, 94}, {0, 101}, {kHairline, Tone::kInk2});
      return;
    }
  }
}

}  // namespace

void drawDrainDetail(Pen& pen, QPointF centre, bool motor, DrainState state) {
  const Clipped clipped(pen, centre, kSmallCircle);
  const QRectF beam(-120, -100, 240, 22);
  pen.rect(beam, {kNorm, Tone::kInk}, Tone::kFace);
  pen.hatch(drawing::rectShape(beam), Tone::kRule, 8);
  // Train pipe, release pipe, and on the motor car the air pipe.
  const auto pipe = [&](double y, double d) {
    pen.rect({-120, y - d / 2, 240, d}, {kNorm, Tone::kInk}, Tone::kFace);
    pen.line({-120, y - d * 0.2}, {120, y - d * 0.2}, {kHairline, Tone::kRule});
  };
  pipe(-58, 15);
  pipe(-36, 15);
  if (motor) pipe(-18, 8);
  for (double x : {-56.0, 50.0}) {
    pen.rect({x - 7, -78, 14, motor ? 68.0 : 56.0}, {kThin, Tone::kInk}, Tone::kFace, 2);
    for (double y : {-47.0, -72.0}) pen.circle({x, y}, 2.6, {kThin, Tone::kInk});
  }
  // Vessel, with a strap.
  pen.rect({-86, 0, 210, 46}, {kNorm, Tone::kInk}, Tone::kFace, 18);
  pen.line({-70, 23}, {120, 23}, {kHairline, Tone::kRule, {12, 4, 2, 4}, false});
  pen.rect({56, -10, 12, 60}, {kThin, Tone::kInk}, Tone::kFace, 2);
  pen.circle({62, -4}, 2.6, {kThin, Tone::kInk});
  // Drain: nipple, cock, spout. Its bar lies along the pipe when it is open.
  pen.rect({-7, 46, 14, 12}, {kNorm, Tone::kInk}, Tone::kFace, 1);
  pen.rect({-5, 58, 10, 36}, {kNorm, Tone::kInk}, Tone::kFace);
  pen.circle({0, 72}, 12, {kNorm, Tone::kInk}, Tone::kFace);
  pen.push({0, 72}, state == DrainState::kOpen ? 0 : 90);
  pen.rect({-4, -8, 8, 34}, {kNorm, Tone::kInk}, Tone::kFace, 4);
  pen.pop();
  pen.circle({0, 72}, 3, {kThin, Tone::kInk}, Tone::kFace);
  drawDrained(pen, state);
}

}  // namespace cabwright::cab
