// SPDX-License-Identifier: GPL-3.0-or-later
// The unit from above as the instructor's desk shows it: both cars with what is on and under them,
// cab 1 on the right, side 1 below. Not to scale: where much is, there is more room.
#pragma once

#include "drawing/pen.h"

namespace cabwright::desk {

/// The whole drawing, with room above and below for what stands written about it, u.
inline constexpr double kUnitWidth = 1520, kUnitHeight = 340, kUnitMiddle = 170;
/// Off the middle: body sides; shafts and engines; what hangs outside of them; beside the unit.
inline constexpr double kBodyOff = 92, kAxisOff = 34, kOuterOff = 70, kBesideOff = 122;

void drawUnit(drawing::Pen& pen);

}  // namespace cabwright::desk
