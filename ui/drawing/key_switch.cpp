// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/key_switch.h"

#include <cmath>

#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

constexpr double kUpright = 28;  // labels within this angle stand centred above

std::pair<QPointF, Anchor> labelPlace(QPointF c, double r, double angle) {
  if (std::abs(angle) < kUpright)
    return {pointAt(c, r + 20, angle) + QPointF(0, 0.3 * kText), Anchor::kMiddle};
  return {pointAt(c, r + 13, angle) + QPointF(0, 0.3 * kText),
          angle > 0 ? Anchor::kStart : Anchor::kEnd};
}

void paintKey(Pen& pen, double r, bool held) {
  const Tone tone = held ? Tone::kHand : Tone::kInk;
  QPainterPath bow(QPointF(-8, -r + 14));
  bow.arcTo(-8, -r + 6, 16, 16, 180, -180);
  bow.lineTo(8, r - 16);
  bow.arcTo(-8, r - 24, 16, 16, 0, -180);
  bow.closeSubpath();
  pen.path(bow, {held ? kBold : kNorm, tone}, held ? Tone::kWash : Tone::kPaper);
  pen.circle({0, r - 16}, 3.4, {kThin, tone});
  pen.line({0, -r + 5}, {0, -r + 12}, {kBold, tone});
}

void paintSlot(Pen& pen) {
  const QRectF slot(-3, -11, 6, 22);
  pen.hatch(rectShape(slot, 2), Tone::kRule, 4, 45, 1);
  pen.rect(slot, {}, Tone::kNone, 2);
}

}  // namespace

void paintKeySwitch(Pen& pen, QPointF centre, double r, const KeySwitchLook& look) {
  pen.circle(centre, r, {}, Tone::kFace);
  pen.circle(centre, r - 5, {kHairline, Tone::kHair});
  for (const Detent& position : look.positions) {
    const bool here = std::abs(position.angle - look.at) < 0.5;
    pen.line(pointAt(centre, r, position.angle), pointAt(centre, r + 7, position.angle));
    if (position.label.isEmpty()) continue;
    const auto [baseline, anchor] = labelPlace(centre, r, position.angle);
    pen.text(baseline, position.label,
             {.size = kText + (here ? 1.5 : 0),
              .anchor = anchor,
              .bold = here,
              .tone = here ? Tone::kInk : Tone::kInk2});
  }
  pen.push(centre, look.at);
  if (look.has_key) {
    paintKey(pen, r, !look.held.isEmpty());
  } else {
    paintSlot(pen);
  }
  pen.pop();
  if (look.focus) pen.circle(centre, r + 7, {kFocus, Tone::kHand});
}

QRectF keySwitchBounds(QPointF centre, double r, const KeySwitchLook& look) {
  const double reach = r + 7 + kFocus / 2 + 0.5;
  QRectF box(centre - QPointF(reach, reach), centre + QPointF(reach, reach));
  for (const Detent& position : look.positions) {
    const auto [baseline, anchor] = labelPlace(centre, r, position.angle);
    const double size = kText + 1.5, width = textWidth(position.label, size, true);
    const double left = anchor == Anchor::kMiddle ? width / 2 : anchor == Anchor::kEnd ? width : 0;
    box |= QRectF(baseline.x() - left - 1, baseline.y() - 0.84 * size, width + 2, 1.08 * size);
  }
  return box;
}

}  // namespace cabwright::drawing
