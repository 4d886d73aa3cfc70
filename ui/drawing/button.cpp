// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/button.h"

#include <algorithm>

#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

constexpr double kArcOut = 13;  // the arc of a held button, beyond its ring

void paintRays(Pen& pen, QPointF c, Tone tone) {
  pen.circle(c, 3.6, {kNorm, tone});
  for (int i = 0; i < 8; ++i) pen.line(pointAt(c, 6, i * 45), pointAt(c, 9, i * 45), {kNorm, tone});
}

void paintSign(Pen& pen, QPointF c, ButtonSign sign, Tone tone) {
  const auto outline = [&](std::string_view notation) {
    pen.push(c, 0);
    pen.path(outlineOf(notation), {kNorm, tone});
    pen.pop();
  };
  switch (sign) {
    case ButtonSign::kNone:
      return;
    case ButtonSign::kStart:
      return pen.line(c - QPointF(0, 7), c + QPointF(0, 7), {3, tone});
    case ButtonSign::kStop:
      return pen.circle(c, 5.6, {2.6, tone});
    case ButtonSign::kHorn:
      return outline("M-8 -2.5 h5 l9 -5 v15 l-9 -5 h-5 Z M-3 -2.5 v5");
    case ButtonSign::kBell:
      return outline("M-7.5 4 h15 q-3 -3 -3 -8 a4.5 0 0 -9 0 q0 5 -3 8 Z M-2.2 6.2 a2.2 0 0 4.4 0");
    case ButtonSign::kLamp:
      return paintRays(pen, c, tone);
    case ButtonSign::kFire:
      return outline(
          "M0 9 C-6 9 -8 4 -5.5 -0.5 C-4.5 2 -3.5 2 -2.5 1.5 C-4 -3 -1 -7 2.5 -9 "
          "C2 -5 7 -2 6.5 3 C6.2 7 3.5 9 0 9 Z");
    case ButtonSign::kPlus:
      pen.line(c - QPointF(7, 0), c + QPointF(7, 0), {2.6, tone});
      return pen.line(c - QPointF(0, 7), c + QPointF(0, 7), {2.6, tone});
    case ButtonSign::kMinus:
      return pen.line(c - QPointF(7, 0), c + QPointF(7, 0), {2.6, tone});
  }
}

// Returns the tone its sign has.
Tone paintFace(Pen& pen, QPointF c, double r, ButtonState state) {
  switch (state) {
    case ButtonState::kPressed:
      pen.circle(c, r, {}, Tone::kFace);
      pen.circle(c, r - 5, kNoLine, Tone::kHand);
      pen.circle(c, r + 5, {kBold, Tone::kHand});
      return Tone::kPaper;
    case ButtonState::kBlocked:
      pen.circle(c, r, {}, Tone::kFace);
      pen.hatch(circleShape(c, r - 5), Tone::kBad, 5, 45, 1.6);
      pen.circle(c, r - 5, {kThin});
      return Tone::kInk;
    case ButtonState::kDead:
      pen.circle(c, r, {kNorm, Tone::kRule, {4, 3}, false}, Tone::kFace);
      pen.circle(c, r - 5, {kThin, Tone::kRule}, Tone::kPaper);
      return Tone::kRule;
    case ButtonState::kUp:
      break;
  }
  pen.circle(c, r, {}, Tone::kFace);
  pen.circle(c, r - 5, {kThin}, Tone::kPaper);
  return Tone::kInk;
}

}  // namespace

void paintButton(Pen& pen, QPointF centre, double r, const ButtonLook& look, const QString& label) {
  const Tone sign = paintFace(pen, centre, r, look.state);
  paintSign(pen, centre, look.sign, sign);
  if (look.focus)
    pen.circle(centre, r + (look.state == ButtonState::kPressed ? 9 : 7), {kFocus, Tone::kHand});
  if (look.held_share > 0) {
    const double end = 360 * std::min(look.held_share, 1.0);
    pen.arc(centre, r + kArcOut, 0, end, {kHeavy, Tone::kHand});
    if (end < 360) pen.arc(centre, r + kArcOut, end, 360, {kThin, Tone::kHand});
  }
  if (!label.isEmpty())
    pen.text(centre + QPointF(0, r + 24), label,
             {.anchor = Anchor::kMiddle,
              .tone = look.state == ButtonState::kDead ? Tone::kInk2 : Tone::kInk});
}

QRectF buttonBounds(QPointF centre, double r, const QString& label) {
  const double reach = r + kArcOut + kHeavy / 2 + 0.5;
  QRectF box(centre - QPointF(reach, reach), centre + QPointF(reach, reach));
  if (label.isEmpty()) return box;
  const double half = textWidth(label) / 2 + 1;
  return box |
         QRectF(centre.x() - half, centre.y() + r + 24 - 0.74 * kText, 2 * half, 0.94 * kText);
}

}  // namespace cabwright::drawing
