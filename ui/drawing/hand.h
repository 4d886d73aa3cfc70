// SPDX-License-Identifier: GPL-3.0-or-later
// A hand seen from its back, fingers up, free or gripping what it holds.
#pragma once

#include <QPointF>
#include <QRectF>
#include <cstdint>

#include "drawing/pen.h"

namespace cabwright::drawing {

enum class Grip : std::uint8_t {
  kFree,
  kBar,
  kKnob,         ///< of a lever
  kKnobPressed,  ///< the same, pressed down
  kFinger,       ///< on a button
  kLamp,
  kDipstick,
  kWheel,
  kKey,
  kCock,
  kBell,
};

/// `knuckles` is the middle of the palm's upper edge, as the sheets place it: the fingers of a free
/// hand reach 57 k u above it, what is held up to 78 k u, and the cuff 74 k u below. A left hand is
/// a right one mirrored; the letter stands in the palm.
void paintHand(Pen& pen, QPointF knuckles, bool right, Grip grip, double k = 1);

/// All that it may paint on, with what it holds.
[[nodiscard]] QRectF handBounds(QPointF knuckles, double k = 1);

}  // namespace cabwright::drawing
