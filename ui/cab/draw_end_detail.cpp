// SPDX-License-Identifier: GPL-3.0-or-later
// The enlarged gear of an end: brake hose and screw coupling.
#include "cab/draw_end.h"

namespace cabwright::cab {

using drawing::kBold;
using drawing::kHairline;
using drawing::kNorm;
using drawing::kThin;
using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kCircle = 105;

void clipToCircle(Pen& pen, QPointF centre) {
  pen.push();
  pen.painter().setClipPath(drawing::circleShape(centre, kCircle - 1), Qt::IntersectClip);
}

// The coupling head with its horn and lug, washer side up.
void drawLargeHead(Pen& pen, QPointF at, double degrees) {
  pen.push(at, degrees);
  pen.rect({-13, -8, 26, 34}, {kNorm, Tone::kInk}, Tone::kFace, 3);  // sleeve on the hose
  for (double y : {2.0, 9.0, 16.0}) pen.line({-13, y}, {13, y}, {kThin, Tone::kInk2});
  QPainterPath head(QPointF(-20, -8));
  head.lineTo(-20, -20);
  head.quadTo(-20, -28, -12, -28);
  head.lineTo(24, -28);
  head.lineTo(34, -22);
  head.lineTo(34, -14);
  head.lineTo(22, -16);
  head.lineTo(20, -8);
  head.closeSubpath();
  pen.path(head, {kNorm, Tone::kInk}, Tone::kFace);
  pen.rect({-11, -33, 24, 5}, {kThin, Tone::kInk}, Tone::kShade, 2);  // washer
  pen.pop();
}

}  // namespace

void drawHoseDetail(Pen& pen, QPointF c, bool on_dummy) {
  clipToCircle(pen, c);
  // Lower edge of the beam, cut.
  const QRectF beam(c.x() - 120, c.y() - 110, 240, 48);
  pen.rect(beam, {kNorm, Tone::kInk}, Tone::kFace);
  pen.hatch(drawing::rectShape(beam), Tone::kRule, 8);
  // Dummy: plate with two bolts, and a blind plug whose face takes the washer.
  const QPointF plug = c + QPointF(-38, -62);
  pen.rect({plug.x() - 28, plug.y() - 22, 56, 22}, {kNorm, Tone::kInk}, Tone::kFace, 2);
  for (double x : {-19.0, 19.0}) pen.circle(plug + QPointF(x, -11), 4, {kThin, Tone::kInk});
  pen.rect({plug.x() - 15, plug.y(), 30, 21}, {kNorm, Tone::kInk}, Tone::kFace, 2);
  pen.rect({plug.x() - 19, plug.y() + 14, 38, 8}, {kNorm, Tone::kInk}, Tone::kFace, 2);
  // Standpipe with its flange and swan neck.
  const QPointF pipe = c + QPointF(46, -62);
  pen.rect({pipe.x() - 30, pipe.y() - 30, 60, 30}, {kNorm, Tone::kInk}, Tone::kFace, 3);
  for (double x : {-21.0, 21.0}) pen.circle(pipe + QPointF(x, -15), 4.5, {kThin, Tone::kInk});
  pen.circle(pipe + QPointF(0, -15), 11, {kThin, Tone::kInk});
  QPainterPath line(pipe + QPointF(0, 14));
  const QPointF head = on_dummy ? plug + QPointF(0, 55) : pipe + QPointF(-8, 118);
  if (on_dummy) {
    line.cubicTo(pipe + QPointF(6, 150), head + QPointF(0, 110), head + QPointF(0, 20));
  } else {
    line.cubicTo(pipe + QPointF(4, 60), head + QPointF(-6, -50), head + QPointF(0, -20));
  }
  drawHose(pen, line, 25);
  pen.rect({pipe.x() - 16, pipe.y(), 32, 30}, {kNorm, Tone::kInk}, Tone::kFace, 3);
  for (double y : {8.0, 21.0})
    pen.line(pipe + QPointF(-16, y), pipe + QPointF(16, y), {kThin, Tone::kInk2});
  drawLargeHead(pen, head, on_dummy ? 0 : 180);
  // Chain of the dummy's cap pin.
  QPainterPath chain(plug + QPointF(-24, 0));
  chain.quadTo(plug + QPointF(-34, 26), plug + QPointF(-19, 18));
  pen.path(chain, {kThin, Tone::kInk, {2, 2}, false});
  pen.pop();
}

// The hook points outward to the right; its coupling hangs from the pin and is turned up over it.
void drawCouplingDetail(Pen& pen, QPointF c, bool hooked_up) {
  clipToCircle(pen, c);
  const QRectF beam(c.x() - 110, c.y() - 110, 36, 190);
  pen.rect(beam, {kNorm, Tone::kInk}, Tone::kFace);
  pen.hatch(drawing::rectShape(beam), Tone::kRule, 8);
  pen.rect({c.x() - 74, c.y() - 62, 12, 76}, {kNorm, Tone::kInk}, Tone::kFace, 2);  // plate
  const QPointF pin = c + QPointF(-24, -18);
  QPainterPath hook(c + QPointF(-62, -36));
  hook.lineTo(c + QPointF(8, -36));
  hook.cubicTo(c + QPointF(22, -36), c + QPointF(20, -14), c + QPointF(34, -18));
  hook.cubicTo(c + QPointF(46, -22), c + QPointF(40, -44), c + QPointF(36, -58));
  hook.cubicTo(c + QPointF(44, -70), c + QPointF(64, -50), c + QPointF(64, -24));
  hook.cubicTo(c + QPointF(64, 6), c + QPointF(34, 16), c + QPointF(10, 6));
  hook.lineTo(c + QPointF(-62, -2));
  hook.closeSubpath();
  pen.path(hook, {kNorm, Tone::kInk}, Tone::kFace);
  const auto bar = [&](QPointF from, QPointF to, double width) {
    pen.line(from, to, {width, Tone::kInk, {}, true});
    pen.line(from, to, {width - 3.4, Tone::kFace, {}, true});
  };
  // Shackle down to the first nut, then the screw, then the free link.
  const QPointF nut = c + QPointF(-30, 56), far = c + QPointF(22, 72);
  bar(pin, nut, 15);
  pen.line(nut + QPointF(-16, -6), far + QPointF(18, 7), {17, Tone::kInk});
  pen.line(nut + QPointF(-15, -5.6), far + QPointF(17, 6.6), {13.6, Tone::kFace});
  for (int i = 0; i < 12; ++i) {
    const QPointF p = nut + (far - nut) * (i / 11.0);
    pen.line(p + QPointF(1, -7), p + QPointF(-3, 7), {kHairline, Tone::kInk2});
  }
  const QPointF end = hooked_up ? c + QPointF(27, -24) : c + QPointF(30, 150);
  bar(far, end, 13);
  for (const QPointF& p : {nut, far}) {
    pen.circle(p, 11, {kNorm, Tone::kInk}, Tone::kFace);
    pen.circle(p, 3, {kThin, Tone::kInk});
  }
  if (hooked_up) pen.circle(end, 8, {kNorm, Tone::kInk}, Tone::kFace);
  // The pin with its washer and cotter.
  pen.circle(pin, 12, {kNorm, Tone::kInk}, Tone::kFace);
  pen.circle(pin, 5.5, {kThin, Tone::kInk});
  pen.line(pin + QPointF(-4, 4), pin + QPointF(-12, 15), {kNorm, Tone::kInk});
  pen.line(pin + QPointF(-1, 5), pin + QPointF(-6, 17), {kNorm, Tone::kInk});
  // Tommy bar.
  const QPointF mid = (nut + far) / 2.0;
  pen.line(mid, mid + QPointF(-8, 24), {kBold, Tone::kInk});
  pen.circle(mid + QPointF(-9, 28), 6, {kNorm, Tone::kInk}, Tone::kFace);
  pen.pop();
}

}  // namespace cabwright::cab
