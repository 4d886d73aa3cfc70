// SPDX-License-Identifier: GPL-3.0-or-later
// The handbrake: a wheel, its ratchet and its pawl, and how far it is on.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>

#include "drawing/pen.h"

namespace cabwright::drawing {

struct HandbrakeLook {
  double on = 1;            ///< 0: off, 1: hard on
  double turn_deg = 0;      ///< of the wheel
  bool pawl_in = true;      ///< solid and in the teeth; else hollow and clear
  QString held = {};        ///< letter of the hand, empty: nobody
  bool focus = false;       ///< of the wheel
  bool pawl_focus = false;  ///< of the pawl
};

/// `radius`: of the wheel, u.
void paintHandbrake(Pen& pen, QPointF centre, double radius, const HandbrakeLook& look);

/// All that it may paint on.
[[nodiscard]] QRectF handbrakeBounds(QPointF centre, double radius);

/// Middle of the pawl, for pointing at.
[[nodiscard]] QPointF handbrakePawl(QPointF centre, double radius);

}  // namespace cabwright::drawing
