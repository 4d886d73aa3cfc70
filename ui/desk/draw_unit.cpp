// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/draw_unit.h"

#include <array>

namespace cabwright::desk {

using drawing::kBold;
using drawing::kHairline;
using drawing::kHeavy;
using drawing::kNorm;
using drawing::kThin;
using drawing::Pen;
using drawing::Stroke;
using drawing::Tone;

namespace {

constexpr double kMid = kUnitMiddle;
constexpr double kGapLeft = 700, kGapRight = 780, kNose = 60;  // of car 2; cab 1 mirrors it
constexpr double kCabDepth = 122;
const Stroke kFine{kThin, Tone::kInk2, {}, false};

double mirrored(double x) { return kUnitWidth - x; }

// Rails, the way on foot along side 1, and the car bodies.
void drawGround(Pen& pen) {
  for (double off : {-40.0, 40.0})
    pen.line({0, kMid + off}, {kUnitWidth, kMid + off}, {kHairline, Tone::kHair, {}, false});
  pen.line({0, kMid + kBesideOff + 16}, {kUnitWidth, kMid + kBesideOff + 16},
           {kThin, Tone::kRule, {5, 4}, false});
}

void drawBody(Pen& pen, bool car2) {
  const auto at = [car2](double x, double y) { return QPointF(car2 ? x : mirrored(x), y); };
  const double inner = car2 ? kGapLeft : mirrored(kGapRight);
  QPainterPath body(at(inner, kMid - kBodyOff));
  body.lineTo(at(kNose + 26, kMid - kBodyOff));
  body.quadTo(at(kNose + 2, kMid - kBodyOff + 6), at(kNose, kMid));
  body.quadTo(at(kNose + 2, kMid + kBodyOff - 6), at(kNose + 26, kMid + kBodyOff));
  body.lineTo(at(inner, kMid + kBodyOff));
  body.closeSubpath();
  pen.path(body, {kNorm, Tone::kInk, {}, false}, Tone::kFace);
  const double wall = kNose + kCabDepth;
  pen.line(at(wall, kMid - kBodyOff), at(wall, kMid + kBodyOff), {kThin, Tone::kInk, {}, false});
  // The desk under the window.
  QPainterPath desk(at(kNose + 50, kMid - 56));
  desk.lineTo(at(kNose + 38, kMid - 56));
  desk.quadTo(at(kNose + 34, kMid), at(kNose + 38, kMid + 56));
  desk.lineTo(at(kNose + 50, kMid + 56));
  pen.path(desk, kFine);
}

void drawAxle(Pen& pen, double x, bool faint) {
  const Tone tone = faint ? Tone::kRule : Tone::kInk2;
  pen.line({x, kMid - 56}, {x, kMid + 56}, {kThin, tone, {}, false});
  for (double off : {-54.0, 54.0})
    pen.line({x - 13, kMid + off}, {x + 13, kMid + off}, {kHeavy, tone, {}, false});
}

// The two pipes of the brake from end to end.
void drawPipes(Pen& pen) {
  for (double off : {-4.0, 4.0})
    pen.line({kNose + kCabDepth, kMid + off}, {mirrored(kNose + kCabDepth), kMid + off},
             {kThin, Tone::kRule, {}, false});
  for (double off : {-4.0, 4.0}) pen.line({kGapLeft, kMid + off}, {kGapRight, kMid + off}, kFine);
}

void box(Pen& pen, double from, double to, double middle, double half, double corner,
         const Stroke& stroke = {kNorm, Tone::kInk, {}, false}) {
  pen.rect(QRectF(QPointF(from, middle - half), QPointF(to, middle + half)), stroke, Tone::kFace,
           corner);
}

void drawEngine(Pen& pen, double axis, double side) {
  box(pen, 1030, 1152, axis, 21, 4);
  for (int k = 0; k < 6; ++k)
    pen.rect(QRectF(1036 + 19.0 * k, axis + (side > 0 ? 6 : -17), 14, 11), kFine, Tone::kNone, 3);
  pen.line({1030, axis + side * 2}, {1152, axis + side * 2}, kFine);
  // Belts on its free end.
  pen.line({1152, axis - 6}, {1272, axis - 6}, kFine);
  pen.line({1152, axis + 6}, {1272, axis + 6}, kFine);
  for (double x : {1180.0, 1222.0, 1264.0})
    pen.circle({x, axis}, 17, {kNorm, Tone::kInk, {}, false}, Tone::kFace);
}

void drawDriveLine(Pen& pen, double side, double axle) {
  const double axis = kMid + side * kAxisOff;
  pen.line({axle, axis}, {1030, axis}, {kBold, Tone::kInk, {}, false});
  pen.circle({axle, axis}, 19, {kNorm, Tone::kInk, {}, false}, Tone::kFace);
  box(pen, 908, 964, axis, 19, 5);
  for (double x : {918.0, 954.0}) pen.line({x, axis - 17}, {x, axis + 17}, kFine);
  box(pen, 974, 1010, axis, 19, 12);
  drawEngine(pen, axis, side);
}

// What hangs outside of the drive line: tank, starter and panel, radiator, cylinder, reservoir.
void drawOutside(Pen& pen, double side) {
  const double y = kMid + side * kOuterOff;
  box(pen, 862, 940, y, 15, 9);
  for (double x : {874.0, 928.0}) pen.line({x, y - 15}, {x, y + 15}, kFine);
  box(pen, 990, 1022, y, 14, 8, kFine);
  box(pen, 1034, 1066, y, 14, 3, kFine);
  box(pen, 1076, 1112, y, 15, 2);
  box(pen, 1122, 1162, y, 15, 2, kFine);
  pen.hatch(drawing::rectShape(QRectF(1122, y - 15, 40, 30)), Tone::kRule, 5, 90, kHairline);
  pen.circle({1200, y}, 17, {kNorm, Tone::kInk, {}, false}, Tone::kFace);
  box(pen, 1230, 1298, y, 15, 14);
}

void drawTrailer(Pen& pen) {
  for (double side : {-1.0, 1.0}) {
    const double y = kMid + side * kOuterOff;
    pen.circle({290, y}, 17, {kNorm, Tone::kInk, {}, false}, Tone::kFace);
    box(pen, 480, 544, y, 15, 2);
    for (double x : {496.0, 528.0}) pen.line({x, y - 15}, {x, y + 15}, kFine);
    // Doors, standing in the body's side.
    const double edge = kMid + side * kBodyOff;
    pen.line({404, edge}, {456, edge}, {kHeavy, Tone::kFace, {}, false});
    pen.rect(QRectF(404, edge - 4, 25, 8), kFine, Tone::kFace);
    pen.rect(QRectF(431, edge - 4, 25, 8), kFine, Tone::kFace);
  }
  box(pen, 332, 412, kMid, 17, 15);
}

void drawCoupling(Pen& pen) {
  box(pen, 726, 754, kMid, 9, 3, kFine);
  for (double x : {kGapLeft, 754.0})
    pen.line({x, kMid}, {x + 26, kMid}, {kBold, Tone::kInk2, {}, false});
  for (double off : {-28.0, 28.0})
    pen.line({kGapLeft, kMid + off}, {kGapRight, kMid + off}, {kNorm, Tone::kInk2, {}, false});
}

}  // namespace

void drawUnit(Pen& pen) {
  drawGround(pen);
  drawBody(pen, true);
  drawBody(pen, false);
  for (double x : {214.0, 256.0, 618.0, 656.0}) drawAxle(pen, x, false);
  for (double x : {820.0, 858.0}) drawAxle(pen, x, false);
  for (double x : {1316.0}) drawAxle(pen, x, true);
  drawPipes(pen);
  drawCoupling(pen);
  drawTrailer(pen);
  for (double side : {-1.0, 1.0}) {
    drawDriveLine(pen, side, side > 0 ? 858 : 820);
    drawOutside(pen, side);
  }
  // The cupboard behind cab 1.
  box(pen, 1298, 1326, kMid - kAxisOff, 17, 2);
}

}  // namespace cabwright::desk
