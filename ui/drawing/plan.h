// SPDX-License-Identifier: GPL-3.0-or-later
// The unit seen from above with the places one can be at; forward is to the right. Side 1, with the
// cess and the safe path, is below; side 2, with the other line, above.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <span>

#include "drawing/pen.h"

namespace cabwright::drawing {

/// One place of the plan, as a balloon.
struct PlanPlace {
  QString id = {};
  QString key = {};  ///< digit or letter in the balloon
  QPointF at = {};   ///< centre of the balloon, on the sheet
  bool here = false, reachable = false, pointed = false;
};

struct PlanLook {
  bool forward_is_right = true;  ///< the arrow points there; false: to the left, cab 2 leads
  bool moving = false;           ///< the arrow is filled
  double balloon_r = 12.5;       ///< u
};

/// Number of places of the unit.
inline constexpr int kPlanPlaces = 15;

/// Draws the unit and the places given; places not given are left out. The box is 316 u wide and
/// 110 u high at least.
void paintPlan(Pen& pen, const QRectF& box, const PlanLook& look,
               std::span<const PlanPlace> places);

/// Where a place stands in the box. 0 booking, 1 lineside, 2 end1, 3 end2, 4 side1, 5 side2,
/// 6 trailer1, 7 trailer2, 8 engine1, 9 engine2, 10 between, 11 cab1, 12 cab2, 13 cupboard,
/// 14 saloon. Another number is an error (assertion).
[[nodiscard]] QPointF planPosition(const QRectF& box, int place_number);

}  // namespace cabwright::drawing
