// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_between.h"

#include <array>

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

constexpr double kSole_m = 0.96, kFloor_m = 1.24, kStandpipe_m = 0.78;

// The edge where the drawing of a car breaks off.
QPolygonF breakLine(QPointF from, QPointF to) {
  const QPointF way = to - from, across(-way.y() * 0.012, way.x() * 0.012);
  return {{from, from + way * 0.46, from + way * 0.485 + across * 3,
           from + way * 0.515 - across * 3, from + way * 0.54, to}};
}

// Half of a hose that hangs between the cars, from its standpipe to the middle.
QPainterPath hangingLine(const EndFrame& f, double side, double out_m, double low_m) {
  QPainterPath line(f.at(side * out_m, kStandpipe_m));
  line.cubicTo(f.at(side * out_m, low_m + 0.10), f.at(side * out_m * 0.62, low_m),
               f.at(side * 0.07, low_m));
  return line;
}

// A hose that hangs between two ends, with a pair of heads in its middle.
void drawHangingHose(Pen& pen, const EndFrame& f, double out_m, double low_m, double width) {
  for (double side : {-1.0, 1.0}) {
    drawHose(pen, hangingLine(f, side, out_m, low_m), width);
    const double w = width * 0.62;
    pen.rect(QRectF(f.at(side * out_m, kStandpipe_m).x() - w, f.at(0, kStandpipe_m).y() - 4, 2 * w,
                    0.11 * f.scale),
             {kNorm, Tone::kInk}, Tone::kFace, 3);
  }
  const double h = width * 0.78 / f.scale;
  pen.rect(f.box(-0.115, low_m - h * 0.7, -0.035, low_m + h * 0.7), {kNorm, Tone::kInk},
           Tone::kFace, 2);
  pen.rect(f.box(0.035, low_m - h * 0.7, 0.115, low_m + h * 0.7), {kNorm, Tone::kInk}, Tone::kFace,
           2);
  pen.rect(f.box(-0.04, low_m - h, 0.0, low_m + h), {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.rect(f.box(0.0, low_m - h, 0.04, low_m + h), {kNorm, Tone::kInk}, Tone::kFace, 2);
}

// A strap from the bracket down to the hose, `share` of the way along it.
void drawStraps(Pen& pen, const EndFrame& f, double out_m, double low_m, double share) {
  for (double side : {-1.0, 1.0}) {
    const QPainterPath line = hangingLine(f, side, out_m, low_m);
    const QPointF p = line.pointAtPercent(share);
    pen.line({p.x(), f.at(0, 0.80).y()}, p - QPointF(0, 9), {kNorm, Tone::kInk2});
    pen.push(p, -line.angleAtPercent(share));
    pen.rect({-3, -11, 6, 22}, {kThin, Tone::kInk}, Tone::kFace, 2);
    pen.pop();
  }
}

}  // namespace

void drawCarEnds(Pen& pen, const EndFrame& f, double top_y) {
  const double far = kHalfGap_m + kCarShown_m;
  const double reach = (far + 0.25) * f.scale;
  for (double x = f.x - reach; x + 20 < f.x + reach; x += 0.65 * f.scale)
    pen.rect({x, f.rail_y + 0.085 * f.scale, 0.26 * f.scale, 0.075 * f.scale}, {kThin, Tone::kInk2},
             Tone::kFace);
  pen.rect({f.x - reach, f.rail_y, 2 * reach, 0.085 * f.scale}, {kNorm, Tone::kInk}, Tone::kFace);
  pen.line({f.x - reach, f.rail_y + 8}, {f.x + reach, f.rail_y + 8}, {kHairline, Tone::kRule});
  pen.dots(drawing::rectShape({f.x - reach, f.rail_y + 0.16 * f.scale, 2 * reach, 0.05 * f.scale}),
           Tone::kRule, 7, 1.0);
  for (double side : {-1.0, 1.0}) {
    const double in = side * kHalfGap_m, out = side * far;
    const QPointF top_in(f.at(in, 0).x(), top_y), top_out(f.at(out, 0).x(), top_y);
    QPolygonF body{{top_in, f.at(in, kSole_m), f.at(out, kSole_m)}};
    body << breakLine(f.at(out, kSole_m), top_out);
    pen.polygon(body, kNoLine, Tone::kFace);
    pen.polyline(breakLine(f.at(out, kSole_m), top_out), {kThin, Tone::kInk2});
    pen.polyline({{top_in, f.at(in, kSole_m), f.at(out, kSole_m)}}, {kRing, Tone::kInk});
    const double pillar = side * (kHalfGap_m + 0.09);
    pen.line({f.at(pillar, 0).x(), top_y + 8}, f.at(pillar, kFloor_m), {kHairline, Tone::kRule});
    pen.line(f.at(in, kFloor_m), f.at(out, kFloor_m), {kThin, Tone::kInk2});
    pen.line(f.at(in, 1.9), f.at(out, 1.9), {kHairline, Tone::kRule});
    const double rail = side * (kHalfGap_m + 0.2);  // handrail
    pen.line(f.at(rail, 1.5), f.at(rail, 2.35), {kBold, Tone::kInk, {}, true});
    for (double y : {1.5, 2.35}) pen.circle(f.at(rail, y), 4, {kThin, Tone::kInk}, Tone::kFace);
    // Headstock below the body, with the pipes' stubs.
    const double head = side * (kHalfGap_m + 0.05);
    pen.rect(QRectF(f.at(head, kSole_m), f.at(out, 0.80)).normalized(), {kNorm, Tone::kInk},
             Tone::kFace);
    pen.line(f.at(head, 0.88), f.at(out, 0.88), {kHairline, Tone::kRule});
    // Bracket that carries the ends of the pipes.
    pen.rect(QRectF(f.at(head, 0.845), f.at(side * 0.29, 0.80)).normalized(), {kNorm, Tone::kInk},
             Tone::kFace, 2);
    for (double x : {0.33, 0.43, 0.58, 0.74})
      pen.circle(f.at(side * x, 0.8225), 2.4, {kThin, Tone::kInk2});
    for (double y : {0.70, 0.74})
      pen.line(f.at(head, y - 0.02), f.at(out, y - 0.02), {kThin, Tone::kInk2});
    pen.line(f.at(side * 0.80, 0.80), f.at(side * 0.80, 0.72), {kThin, Tone::kInk2});
  }
}

void drawGangway(Pen& pen, const EndFrame& f, double top_y) {
  const int folds = 9;
  const double left = -kHalfGap_m, step = 2 * kHalfGap_m / folds;
  const double low = f.at(0, kFloor_m + 0.05).y();
  for (int k = 0; k < folds; ++k) {
    const double x0 = f.at(left + k * step, 0).x(), x1 = f.at(left + (k + 1) * step, 0).x();
    QPainterPath fold(QPointF(x0, top_y));
    fold.lineTo(x0, low - 14);
    fold.quadTo(x0, low, (x0 + x1) / 2, low);
    fold.quadTo(x1, low, x1, low - 14);
    fold.lineTo(x1, top_y);
    pen.path(fold, {kThin, Tone::kInk2}, Tone::kFace);
    pen.line({(x0 + x1) / 2, top_y}, {(x0 + x1) / 2, low - 8}, {kHairline, Tone::kRule});
  }
  // The two face plates, clipped together in the middle, and the floor plate over the gap.
  for (double side : {-1.0, 1.0})
    pen.rect(QRectF(QPointF(f.at(side * 0.035, 0).x(), top_y), QPointF(f.x, low + 6)).normalized(),
             {kThin, Tone::kInk}, Tone::kPaper);
  const double far = (kHalfGap_m + kCarShown_m) * f.scale;  // all of it goes on upwards
  for (double side : {-1.0, 1.0})
    pen.polyline(breakLine({f.x + side * far, top_y}, {f.x, top_y}), {kThin, Tone::kInk2});
  pen.rect(f.box(-kHalfGap_m + 0.02, kFloor_m - 0.035, kHalfGap_m - 0.10, kFloor_m + 0.005),
           {kNorm, Tone::kInk}, Tone::kFace, 1);
  pen.circle(f.at(-kHalfGap_m + 0.03, kFloor_m - 0.015), 5, {kNorm, Tone::kInk}, Tone::kFace);
}

void drawCoupler(Pen& pen, const EndFrame& f) {
  for (double side : {-1.0, 1.0}) {
    const QRectF shank =
        QRectF(f.at(side * (kHalfGap_m + 0.05), 1.06), f.at(side * 0.20, 0.94)).normalized();
    pen.rect(shank, {kNorm, Tone::kInk}, Tone::kFace, 2);
    pen.rect(QRectF(f.at(side * 0.64, 1.10), f.at(side * 0.56, 0.90)).normalized(),
             {kThin, Tone::kInk}, Tone::kFace, 2);
  }
  pen.rect(f.box(-0.21, 0.88, 0.0, 1.12), {kNorm, Tone::kInk}, Tone::kFace, 5);
  pen.rect(f.box(0.0, 0.88, 0.21, 1.12), {kNorm, Tone::kInk}, Tone::kFace, 5);
  pen.rect(f.box(-0.03, 0.83, 0.03, 1.16), {kNorm, Tone::kInk}, Tone::kFace, 2);  // locking pin
  pen.rect(f.box(-0.055, 1.14, 0.055, 1.175), {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.line(f.at(-0.055, 0.855), f.at(0.06, 0.845), {kBold, Tone::kInk});  // its cotter
}

void drawAirHose(Pen& pen, const EndFrame& f) { drawHangingHose(pen, f, 0.36, 0.56, 11); }

void drawVacuumHoses(Pen& pen, const EndFrame& f, bool parted) {
  drawHangingHose(pen, f, 0.50, 0.37, 17);
  drawStraps(pen, f, 0.50, 0.37, 0.42);
  if (!parted) {
    drawHangingHose(pen, f, 0.66, 0.17, 17);
    drawStraps(pen, f, 0.66, 0.17, 0.34);
    return;
  }
  for (double side : {-1.0, 1.0}) {
    QPainterPath line(f.at(side * 0.66, 0.78));
    line.cubicTo(f.at(side * 0.66, 0.5), f.at(side * 0.62, 0.35), f.at(side * 0.63, 0.20));
    drawHose(pen, line, 17);
    const QPointF end = f.at(side * 0.63, 0.20);
    pen.rect({end.x() - 11, end.y() - 4, 22, 16}, {kNorm, Tone::kInk}, Tone::kFace, 2);
    pen.rect({end.x() - 15, end.y() + 12, 30, 9}, {kNorm, Tone::kInk}, Tone::kFace, 2);
    const QPointF top = f.at(side * 0.66, 0.78);
    pen.rect({top.x() - 10.5, top.y() - 4, 21, 0.11 * f.scale}, {kNorm, Tone::kInk}, Tone::kFace,
             3);
  }
}

void drawJumper(Pen& pen, const EndFrame& f, bool home) {
  const double drawn = home ? 0 : 0.10;
  for (double side : {-1.0, 1.0}) {
    pen.rect(QRectF(f.at(side * kHalfGap_m, kJumperUp_m + 0.09),
                    f.at(side * (kHalfGap_m - 0.10), kJumperUp_m - 0.09))
                 .normalized(),
             {kNorm, Tone::kInk}, Tone::kFace, 3);
  }
  const auto plug = [&](double side, double back) {
    const double x = side * (kHalfGap_m - 0.10 - back);
    pen.rect(QRectF(f.at(x, kJumperUp_m + 0.055), f.at(x - side * 0.14, kJumperUp_m - 0.055))
                 .normalized(),
             {kNorm, Tone::kInk}, Tone::kFace, 3);
    if (back > 0)
      pen.rect(
          QRectF(f.at(side * (kHalfGap_m - 0.10), kJumperUp_m + 0.03), f.at(x, kJumperUp_m - 0.03))
              .normalized(),
          {kThin, Tone::kInk}, Tone::kShade);
    return f.at(x - side * 0.14, kJumperUp_m);
  };
  const QPointF from = plug(-1, 0), to = plug(1, drawn);
  QPainterPath cable(from);
  cable.cubicTo(from + QPointF(60, 6), f.at(-0.3, 1.44), f.at(0, 1.44));
  cable.cubicTo(f.at(0.3, 1.44), to + QPointF(-60, 6), to);
  pen.path(cable, {14, Tone::kInk});
  pen.path(cable, {10.4, Tone::kFace});
  // The lever that locks the plug: over it when it is home.
  const QPointF pivot = f.at(kHalfGap_m - 0.05, kJumperUp_m + 0.10);
  pen.push(pivot, home ? -78 : 8);
  pen.rect({-4, -44, 8, 46}, {kNorm, Tone::kInk}, Tone::kFace, 4);
  pen.pop();
  pen.circle(pivot, 5, {kNorm, Tone::kInk}, Tone::kFace);
}

}  // namespace cabwright::cab
