// SPDX-License-Identifier: GPL-3.0-or-later
// What changes on the face of a car.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "cab/draw_end.h"

namespace cabwright::cab {

using drawing::kBold;
using drawing::kHairline;
using drawing::kNoLine;
using drawing::kNorm;
using drawing::kThin;
using drawing::Pen;
using drawing::Tone;

namespace {

// A head with its washer, at the end of a hose; `down`: way it faces.
void drawHoseHead(Pen& pen, QPointF at, double k, bool upright) {
  pen.push(at, upright ? 0 : 180);
  pen.rect(QRectF(-0.04 * k, -0.085 * k, 0.08 * k, 0.085 * k), {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.rect(QRectF(-0.055 * k, -0.11 * k, 0.11 * k, 0.035 * k), {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.pop();
}

}  // namespace

void drawHose(Pen& pen, const QPainterPath& line, double width) {
  pen.path(line, {width, Tone::kInk});
  pen.path(line, {width - 3.2, Tone::kFace});
  const double length = line.length(), half = (width - 3.2) / 2, pitch = std::max(4.5, width / 4);
  for (double at = pitch; at < length; at += pitch) {
    const double share = line.percentAtLength(at);
    const QPointF p = line.pointAtPercent(share);
    const double a = line.angleAtPercent(share) * std::numbers::pi / 180;
    const QPointF across(half * std::sin(a), half * std::cos(a));
    pen.line(p - across, p + across, {kHairline, Tone::kRule});
  }
}

void drawDisplay(Pen& pen, const EndFrame& f, int number) {
  const QRectF box = f.box(-0.46, 3.07, 0.46, 3.42);
  pen.rect(box, {kNorm, Tone::kInk}, Tone::kFace, 5);
  const QRectF glass = box.adjusted(6, 6, -6, -6);
  if (number > 0) {
    pen.rect(glass, {kThin, Tone::kInk}, Tone::kPaper, 3);
    for (int i = 0; i < 2; ++i) {  // light falls on the blind from both sides
      const double x = i == 0 ? glass.left() + 12 : glass.right() - 12;
      const double out = i == 0 ? 1 : -1;
      for (double dy : {-10.0, 0.0, 10.0})
        pen.line({x, glass.center().y() + dy}, {x + out * 14, glass.center().y() + dy},
                 {kThin, Tone::kInk2});
    }
    const double size = glass.height() * 0.88;
    pen.text({glass.center().x(), glass.center().y() + 0.36 * size}, QString::number(number),
             {.size = size, .anchor = drawing::Anchor::kMiddle, .bold = true});
  } else {
    pen.rect(glass, {kThin, Tone::kInk}, Tone::kFace, 3);
    pen.hatch(drawing::rectShape(glass, 3), Tone::kRule, 6, -45);
  }
}

void drawWiper(Pen& pen, const EndFrame& f, double swing) {
  const QPointF pivot = f.at(0.62, 2.055);
  const double angle = -64 + 128 * std::clamp(swing, 0.0, 1.0), k = f.scale;
  pen.push(pivot, angle);
  pen.line({0, 0}, {0, -0.50 * k}, {kBold, Tone::kInk, {}, true});
  pen.line({0, -0.30 * k}, {0, -0.72 * k}, {kThin, Tone::kInk});
  pen.rect(QRectF(-2.4, -0.72 * k, 4.8, 0.44 * k), {kThin, Tone::kInk}, Tone::kFace, 2);
  pen.pop();
  pen.circle(pivot, 5, {kNorm, Tone::kInk}, Tone::kFace);
}

void drawTailLamp(Pen& pen, const EndFrame& f, bool there, bool lit) {
  // The bracket: a hook of flat iron on its plate.
  pen.rect(f.box(0.17, 1.35, 0.35, 1.41), {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.rect(f.box(0.24, 1.35, 0.28, 1.56), {kThin, Tone::kInk}, Tone::kFace, 1);
  if (!there) return;
  const QRectF body = f.box(0.145, 1.43, 0.375, 1.76);
  pen.arc({body.center().x(), body.top() + 2}, 0.09 * f.scale, -80, 80, {kNorm, Tone::kInk});
  pen.rect(body, {kNorm, Tone::kInk}, Tone::kFace, 4);
  pen.line({body.left(), body.top() + 10}, {body.right(), body.top() + 10}, {kThin, Tone::kInk2});
  const QPointF c(body.center().x(), body.center().y() + 4);
  const double r = 0.075 * f.scale;
  if (lit) {
    pen.circle(c, r, {kNorm, Tone::kInk}, Tone::kBezel);
    pen.circle(c, 0.74 * r, kNoLine, Tone::kRed);
    pen.rect(QRectF(c.x() - 3, c.y() - 3, 6, 6), kNoLine, Tone::kBezel);
  } else {
    pen.circle(c, r, {kNorm, Tone::kInk}, Tone::kPaper);
    pen.hatch(drawing::circleShape(c, 0.7 * r), Tone::kRule, 5, -45);
    pen.circle(c, 0.7 * r, {kThin, Tone::kRule});
  }
}

void drawBrakeHoses(Pen& pen, const EndFrame& f, bool on_dummies) {
  const double k = f.scale;
  for (double side : {-1.0, 1.0}) {
    const double out = side * kHoseOut_m, in = side * kDummyOut_m;
    // Dummy: a blind plug on its plate below the beam.
    pen.rect(f.box(in - 0.06, 0.80, in + 0.06, 0.90), {kThin, Tone::kInk}, Tone::kFace, 2);
    pen.rect(f.box(in - 0.035, 0.745, in + 0.035, 0.80), {kNorm, Tone::kInk}, Tone::kFace, 2);
    // Standpipe end in its flange.
    pen.rect(f.box(out - 0.075, 0.955, out + 0.075, 1.11), {kThin, Tone::kInk}, Tone::kFace, 3);
    QPainterPath line(f.at(out, 0.95));
    if (on_dummies) {
      line.cubicTo(f.at(out + side * 0.02, 0.20), f.at(in, 0.22), f.at(in, 0.62));
    } else {
      line.cubicTo(f.at(out, 0.70), f.at(out - side * 0.07, 0.55), f.at(out - side * 0.05, 0.30));
    }
    drawHose(pen, line, 0.072 * k);
    pen.rect(f.box(out - 0.05, 0.90, out + 0.05, 1.06), {kNorm, Tone::kInk}, Tone::kFace, 3);
    if (on_dummies) {
      drawHoseHead(pen, f.at(in, 0.64), k, true);
    } else {
      drawHoseHead(pen, f.at(out - side * 0.05, 0.31), k, false);
    }
  }
}

void drawCoupling(Pen& pen, const EndFrame& f, bool hooked_up) {
  const double k = f.scale;
  const double low = 0.52;
  // Shackles on the hook's pin carry the screw; the free link goes back up over the hook.
  for (double side : {-1.0, 1.0})
    pen.rect(f.box(side * 0.075 - 0.018, low, side * 0.075 + 0.018, 1.03), {kThin, Tone::kInk},
             Tone::kFace, 3);
  pen.rect(f.box(-0.035, low - 0.10, 0.035, low + 0.18), {kThin, Tone::kInk}, Tone::kFace, 2);
  for (int i = 0; i < 7; ++i) {
    const double y = low - 0.08 + 0.035 * i;
    pen.line(f.at(-0.035, y), f.at(0.035, y + 0.02), {kHairline, Tone::kInk2});
  }
  pen.rect(f.box(-0.10, low - 0.03, 0.10, low + 0.03), {kNorm, Tone::kInk}, Tone::kFace, 3);
  const double end = hooked_up ? 1.02 : 0.24;
  QPainterPath link(f.at(-0.045, low - 0.06));
  link.lineTo(f.at(-0.045, end));
  if (hooked_up) {
    link.cubicTo(f.at(-0.045, end + 0.09), f.at(0.045, end + 0.09), f.at(0.045, end));
  } else {
    link.cubicTo(f.at(-0.045, end - 0.09), f.at(0.045, end - 0.09), f.at(0.045, end));
  }
  link.lineTo(f.at(0.045, low - 0.06));
  pen.path(link, {0.042 * k, Tone::kInk, {}, true});
  pen.path(link, {0.042 * k - 3.2, Tone::kFace, {}, true});
  // The hook head-on.
  pen.rect(f.box(-0.028, 0.97, 0.028, 1.17), {kNorm, Tone::kInk}, Tone::kFace, 4);
  pen.line(f.at(-0.105, 1.0), f.at(0.105, 1.0), {kBold, Tone::kInk});
  // Tommy bar with its weight.
  pen.line(f.at(0, low - 0.08), f.at(0.13, low - 0.12), {kNorm, Tone::kInk});
  pen.circle(f.at(0.14, low - 0.125), 0.03 * k, {kNorm, Tone::kInk}, Tone::kFace);
}

void drawFlag(Pen& pen, QPointF foot, double h) {
  pen.line(foot, foot - QPointF(0, h), {kBold, Tone::kInk, {}, true});
  QPainterPath cloth(foot - QPointF(0, h - 3));
  cloth.cubicTo(foot + QPointF(0.25 * h, -1.08 * h), foot + QPointF(0.45 * h, -0.88 * h),
                foot + QPointF(0.74 * h, -0.98 * h));
  cloth.lineTo(foot + QPointF(0.70 * h, -0.50 * h));
  cloth.cubicTo(foot + QPointF(0.45 * h, -0.40 * h), foot + QPointF(0.25 * h, -0.60 * h),
                foot + QPointF(0, -0.48 * h));
  cloth.closeSubpath();
  pen.path(cloth, {kNorm, Tone::kInk}, Tone::kRed);
}

// A square with a bar across: not to be moved.
void drawBoard(Pen& pen, QPointF foot, double h) {
  pen.line(foot, foot - QPointF(0, 0.4 * h), {kBold, Tone::kInk, {}, true});
  const QRectF board(foot.x() - 0.46 * h, foot.y() - h, 0.92 * h, 0.68 * h);
  pen.rect(board, {kNorm, Tone::kInk}, Tone::kRed, 3);
  const QRectF inner = board.adjusted(5, 5, -5, -5);
  pen.rect(inner, {kThin, Tone::kInk}, Tone::kPaper, 2);
  pen.rect(QRectF(inner.left() + 7, inner.center().y() - 4.5, inner.width() - 14, 9), kNoLine,
           Tone::kInk);
}

void drawRedLamp(Pen& pen, QPointF foot, double h) {
  const QRectF body(foot.x() - 0.30 * h, foot.y() - 0.74 * h, 0.60 * h, 0.74 * h);
  pen.arc({foot.x(), body.top() + 2}, 0.24 * h, -85, 85, {kNorm, Tone::kInk});
  pen.rect(body, {kNorm, Tone::kInk}, Tone::kFace, 3);
  const QPointF c = body.center();
  const double r = 0.21 * h;
  pen.circle(c, r, {kThin, Tone::kInk}, Tone::kBezel);
  pen.circle(c, 0.74 * r, kNoLine, Tone::kRed);
  for (int i = 0; i < 8; ++i)
    pen.line(drawing::pointAt(c, 0.40 * h, i * 45 + 22), drawing::pointAt(c, 0.52 * h, i * 45 + 22),
             {kThin, Tone::kInk});
}

void drawEndProtection(Pen& pen, const EndFrame& f, int what) {
  const QPointF socket = f.at(-0.62, 2.01);
  if (what == 1) drawFlag(pen, socket, 0.52 * f.scale);
  if (what == 2) drawBoard(pen, socket, 0.56 * f.scale);
  if (what == 3) drawRedLamp(pen, f.at(-0.62, 1.25), 0.24 * f.scale);
}

}  // namespace cabwright::cab
