// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_cupboard.h"

#include "drawing/outline.h"

namespace cabwright::cab {

using drawing::kHairline;
using drawing::kNorm;
using drawing::kThin;
using drawing::Pen;
using drawing::Stroke;
using drawing::Tone;

namespace {

const Stroke kFine{kThin, Tone::kInk, {}, false};
const Stroke kFaint{kThin, Tone::kRule, {}, false};
constexpr double kClipAt = 75;  // of the knife switch, above and below its middle
constexpr double kOpenDeg = 46;

void paintLeaf(Pen& pen, const QRectF& box, double leaf, double side) {
  const double hinge = side < 0 ? box.left() : box.right(), edge = hinge + side * leaf;
  pen.polygon({{{hinge, box.top()},
                {edge, box.top() + 22},
                {edge, box.bottom() + 16},
                {hinge, box.bottom()}}},
              {}, Tone::kFace);
  const double in = hinge + side * leaf * 0.22, out = hinge + side * leaf * 0.78;
  for (int k = 0; k < 7; ++k) {
    const double y = box.bottom() - 150 + 16 * k;
    pen.line({in, y + 3}, {out, y + 9}, kFaint);
  }
  for (double s : {0.12, 0.5, 0.88}) {
    const double y = box.top() + s * box.height();
    pen.rect({hinge - 4, y - 16, 8, 32}, kFine, Tone::kPaper, 2);
  }
  pen.rect({edge - side * 10 - 3, box.center().y() - 6, 6, 34}, kFine, Tone::kPaper, 3);
}

}  // namespace

void paintCupboardCase(Pen& pen, const QRectF& box, double leaf) {
  paintLeaf(pen, box, leaf, -1);
  paintLeaf(pen, box, leaf, 1);
  pen.rect(box, {drawing::kRing, Tone::kInk, {}, false}, Tone::kFace, 2);
  pen.rect(box.adjusted(8, 8, -8, -8), kFaint, Tone::kNone, 2);
}

void paintWire(Pen& pen, const QPolygonF& points, bool live) {
  if (live) {
    pen.polyline(points, {drawing::kHeavy, Tone::kInk, {}, false});
  } else {
    pen.polyline(points, {kThin, Tone::kInk2, {5, 4}, false});
  }
}

void paintJoint(Pen& pen, QPointF at, bool live) {
  pen.circle(at, live ? 5.5 : 4, live ? drawing::kNoLine : Stroke{kThin, Tone::kInk2, {}, false},
             live ? Tone::kInk : Tone::kFace);
}

QRectF knifeSwitchSlab(QPointF c) { return {c.x() - 50, c.y() - 112, 100, 236}; }

void paintKnifeSwitch(Pen& pen, QPointF c, const DrawnState& state) {
  const Stroke moving{state.held.isEmpty() ? kNorm : drawing::kBold, state.line(), {}, false};
  // Clip above, hinge below.
  for (double s : {-1.0, 1.0})
    pen.rect({c.x() + s * 10 - 4, c.y() - kClipAt - 18, 8, 36}, {}, Tone::kPaper, 1);
  pen.rect({c.x() - 24, c.y() - kClipAt + 16, 48, 9}, kFine, Tone::kPaper, 2);
  pen.push(c + QPointF(0, kClipAt), state.isOn() ? 0 : kOpenDeg);
  pen.path(drawing::outlineOf("M-5 6 V-162 H5 V6 Z"), moving, state.fill());
  pen.path(drawing::outlineOf("M-9 -162 Q-12 -184 -8 -200 H8 Q12 -184 9 -162 Z"), moving,
           state.held.isEmpty() ? Tone::kShade : Tone::kHand);
  if (!state.held.isEmpty())
    pen.text({0, -175}, state.held,
             {.anchor = drawing::Anchor::kMiddle,
              .bold = true,
              .tone = Tone::kPaper,
              .on = Tone::kHand});
  pen.pop();
  pen.rect({c.x() - 22, c.y() + kClipAt - 12, 44, 26}, {}, Tone::kPaper, 3);
  pen.circle(c + QPointF(0, kClipAt), 6, {kNorm, state.line(), {}, false}, Tone::kFace);
  if (state.focus)
    pen.rect({c.x() - 36, c.y() - kClipAt - 26, 72, 2 * kClipAt + 48},
             {drawing::kFocus, Tone::kHand, {}, false}, Tone::kNone, 8);
}

void paintBreaker(Pen& pen, QPointF c, const DrawnState& state) {
  const Stroke moving{state.held.isEmpty() ? kNorm : drawing::kBold, state.line(), {}, false};
  pen.rect({c.x() - 32, c.y() - 54, 64, 108}, {kNorm, state.line(), {}, false}, Tone::kFace, 4);
  for (double s : {-1.0, 1.0}) {
    pen.circle({c.x(), c.y() + s * 43}, 6, kFine, Tone::kPaper);
    pen.line({c.x() - 4, c.y() + s * 43 + 2}, {c.x() + 4, c.y() + s * 43 - 2}, kFine);
  }
  pen.rect({c.x() - 13, c.y() - 30, 26, 60}, kFine, Tone::kPaper, 4);
  // The mark that shows in the slot behind the toggle: a bar when it is in, a ring when it is out.
  if (state.isOn()) {
    pen.line(c + QPointF(0, 8), c + QPointF(0, 22), {drawing::kBold, Tone::kInk, {}, false});
  } else {
    pen.circle(c + QPointF(0, -15), 6, {});
  }
  const double y = state.isOn() ? c.y() - 27 : c.y() + 1;
  pen.rect({c.x() - 16, y, 32, 26}, moving, state.held.isEmpty() ? Tone::kFace : Tone::kHand, 5);
  if (state.held.isEmpty()) {
    for (double d : {8.0, 13.0, 18.0}) pen.line({c.x() - 9, y + d}, {c.x() + 9, y + d}, kFaint);
  } else {
    pen.text({c.x(), y + 20}, state.held,
             {.anchor = drawing::Anchor::kMiddle,
              .bold = true,
              .tone = Tone::kPaper,
              .on = Tone::kHand});
  }
  if (state.focus)
    pen.rect({c.x() - 39, c.y() - 61, 78, 122}, {drawing::kFocus, Tone::kHand, {}, false},
             Tone::kNone, 8);
}

void paintBattery(Pen& pen, QPointF c, double width) {
  constexpr int kCells = 4;
  const double pitch = width / kCells;
  for (int k = 0; k < kCells; ++k) {
    const double x = c.x() - width / 2 + (k + 0.3) * pitch;
    pen.line({x, c.y() - 20}, {x, c.y() + 20}, {});
    pen.line({x + 0.3 * pitch, c.y() - 10}, {x + 0.3 * pitch, c.y() + 10},
             {drawing::kHeavy, Tone::kInk, {}, false});
    if (k + 1 < kCells) pen.line({x + 0.3 * pitch, c.y()}, {x + pitch, c.y()}, {});
  }
}

void paintConsumer(Pen& pen, QPointF c, Consumer what, bool live) {
  const Tone tone = live ? Tone::kInk : Tone::kRule;
  const Stroke line{live ? kNorm : kThin, tone, {}, false};
  const double r = 26;
  if (what == Consumer::kControl) {
    // A relay's coil with its contact.
    pen.rect({c.x() - 22, c.y() - 24, 44, 24}, line, Tone::kFace);
    pen.line({c.x() - 22, c.y()}, {c.x() - 2, c.y() - 24}, line);
    pen.line(c, c + QPointF(0, 9), {line.width, tone, {3, 2}, false});
    pen.line(c + QPointF(-22, 18), c + QPointF(-8, 18), line);
    pen.line(c + QPointF(-8, 18), c + QPointF(8, 9), line);
    pen.line(c + QPointF(10, 18), c + QPointF(22, 18), line);
    return;
  }
  pen.circle(c, r, line, Tone::kFace);
  switch (what) {
    case Consumer::kStarter:
      pen.text(c + QPointF(0, 8), QStringLiteral("M"),
               {.size = drawing::kFigure,
                .anchor = drawing::Anchor::kMiddle,
                .bold = live,
                .tone = live ? Tone::kInk : Tone::kInk2,
                .on = Tone::kFace});
      break;
    case Consumer::kLights:  // without rays: the circuit is live, whether a lamp burns or not
    case Consumer::kLamps:
      for (double a : {45.0, 135.0})
        pen.line(drawing::pointAt(c, r, a), drawing::pointAt(c, r, a + 180), line);
      break;
    default:
      pen.circle(c, 4, line);
      for (int k = 0; k < 4; ++k) {
        pen.push(c, k * 90.0);
        pen.path(drawing::outlineOf("M0 -4 C10 -8 11 -18 3 -21 C-3 -16 -3 -9 0 -4 Z"), line);
        pen.pop();
      }
  }
}

}  // namespace cabwright::cab
