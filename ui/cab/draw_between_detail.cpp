// SPDX-License-Identifier: GPL-3.0-or-later
// The coupler's heads and the jumper's plug, enlarged.
#include "cab/draw_between.h"

namespace cabwright::cab {

using drawing::kBold;
using drawing::kHairline;
using drawing::kNorm;
using drawing::kThin;
using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kCircle = 105;

void clip(Pen& pen, QPointF centre) {
  pen.push(centre, 0);
  pen.painter().setClipPath(drawing::circleShape({0, 0}, kCircle - 1), Qt::IntersectClip);
}

QPainterPath polygonShape(const QPolygonF& points) {
  QPainterPath p;
  p.addPolygon(points);
  p.closeSubpath();
  return p;
}

}  // namespace

// A fork and a tongue with the pin through both, cut along the middle.
void drawCouplerDetail(Pen& pen, QPointF centre) {
  clip(pen, centre);
  const QPainterPath fork = polygonShape({{{-120, -22},
                                           {-58, -22},
                                           {-46, -50},
                                           {50, -50},
                                           {50, -22},
                                           {-30, -22},
                                           {-30, 22},
                                           {50, 22},
                                           {50, 50},
                                           {-46, 50},
                                           {-58, 22},
                                           {-120, 22}}});
  pen.path(fork, {kNorm, Tone::kInk}, Tone::kFace);
  pen.hatch(fork, Tone::kRule, 7, 45);
  const QPainterPath tongue = polygonShape(
      {{{120, -24}, {62, -24}, {56, -19}, {-24, -19}, {-24, 19}, {56, 19}, {62, 24}, {120, 24}}});
  pen.path(tongue, {kNorm, Tone::kInk}, Tone::kFace);
  pen.hatch(tongue, Tone::kRule, 7, -45);
  pen.rect({-13, -68, 26, 140}, {kNorm, Tone::kInk}, Tone::kFace, 2);  // pin
  pen.line({0, -80}, {0, 84}, {kHairline, Tone::kRule, {12, 4, 2, 4}, false});
  pen.rect({-22, -74, 44, 14}, {kNorm, Tone::kInk}, Tone::kFace, 3);
  pen.rect({-20, 50, 40, 6}, {kThin, Tone::kInk}, Tone::kFace, 1);  // washer
  pen.circle({0, 63}, 3.5, {kThin, Tone::kInk}, Tone::kPaper);
  pen.line({-21, 61}, {19, 63}, {kBold, Tone::kInk});  // cotter, spread
  pen.line({-18, 62}, {-25, 71}, {kNorm, Tone::kInk});
  pen.circle({22, 63}, 4.5, {kNorm, Tone::kInk}, Tone::kPaper);
  pen.pop();
}

void drawJumperDetail(Pen& pen, QPointF centre, bool home) {
  clip(pen, centre);
  const double back = home ? 0 : 34;
  const QRectF wall(62, -120, 60, 240);
  pen.rect(wall, {kNorm, Tone::kInk}, Tone::kFace);
  pen.hatch(drawing::rectShape(wall), Tone::kRule, 8);
  // Pins of the plug, seen only while it is drawn back.
  for (double y : {-14.0, 0.0, 14.0})
    pen.rect({6 - back, y - 2.5, 26, 5}, {kThin, Tone::kInk}, Tone::kShade);
  pen.rect({6, -34, 56, 68}, {kNorm, Tone::kInk}, Tone::kFace, 4);  // socket
  pen.rect({48, -46, 14, 92}, {kNorm, Tone::kInk}, Tone::kFace, 2);
  for (double y : {-39.0, 39.0}) pen.circle({55, y}, 3, {kThin, Tone::kInk});
  QPainterPath plug(QPointF(4 - back, -28));
  plug.lineTo(4 - back, 28);
  plug.lineTo(-40 - back, 22);
  plug.lineTo(-62 - back, 13);
  plug.lineTo(-62 - back, -13);
  plug.lineTo(-40 - back, -22);
  plug.closeSubpath();
  pen.path(plug, {kNorm, Tone::kInk}, Tone::kFace);
  pen.line({-8 - back, -26}, {-8 - back, 26}, {kThin, Tone::kInk2});
  QPainterPath cable(QPointF(-62 - back, 0));
  cable.cubicTo(QPointF(-84 - back, 2), QPointF(-92, 26), QPointF(-104, 60));
  pen.path(cable, {22, Tone::kInk});
  pen.path(cable, {18, Tone::kFace});
  pen.rect({-66 - back, -14, 10, 28}, {kThin, Tone::kInk}, Tone::kFace, 2);
  pen.circle({-22 - back, 0}, 5, {kNorm, Tone::kInk}, Tone::kFace);  // stud for the lever
  // The lever lies over the stud, or stands up.
  pen.push({36, -44}, home ? -52 : 12);
  QPainterPath lever(QPointF(-6, 4));
  lever.lineTo(-6, -52);
  lever.quadTo(-6, -78, 12, -78);
  lever.lineTo(12, -68);
  lever.quadTo(6, -66, 6, -52);
  lever.lineTo(6, 4);
  lever.closeSubpath();
  pen.path(lever, {kNorm, Tone::kInk}, Tone::kFace);
  pen.pop();
  pen.circle({36, -44}, 7, {kNorm, Tone::kInk}, Tone::kFace);
  pen.pop();
}

}  // namespace cabwright::cab
