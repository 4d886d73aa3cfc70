// SPDX-License-Identifier: GPL-3.0-or-later
// A switch that is turned with a key, or stands without one.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <vector>

#include "drawing/lever.h"

namespace cabwright::drawing {

struct KeySwitchLook {
  std::vector<Detent> positions = {};
  double at = 0;  ///< clock angle of the key or its slot
  bool has_key = true;
  QString held = {};  ///< letter of the hand, empty: nobody
  bool focus = false;
};

/// `r`: radius of the face, u.
void paintKeySwitch(Pen& pen, QPointF centre, double r, const KeySwitchLook& look);

/// All that it may paint on, with its labels in their bold form.
[[nodiscard]] QRectF keySwitchBounds(QPointF centre, double r, const KeySwitchLook& look);

}  // namespace cabwright::drawing
