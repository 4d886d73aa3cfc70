// SPDX-License-Identifier: GPL-3.0-or-later
// The loose things one carries, as outlines.
#pragma once

#include <QPointF>
#include <QRectF>
#include <cstdint>

#include "drawing/pen.h"

namespace cabwright::drawing {

enum class LooseThing : std::uint8_t {
  kBrakeHandle,
  kReversingLever,
  kControlKey,
  kDoorKey,
  kHandLamp,
  kVest,
  kNotebook,
  kRuleBook,
  kPadlock,
  kDipstick,
};

/// In a box of 56 by 50 u around `centre`. Not here: a dashed empty outline.
void paintLooseThing(Pen& pen, QPointF centre, LooseThing thing, bool here = true);

/// All that it may paint on.
[[nodiscard]] QRectF looseThingBounds(QPointF centre);

}  // namespace cabwright::drawing
