// SPDX-License-Identifier: GPL-3.0-or-later
// Enlarged spots of a car's underside. Each fits a circle round `centre`; things that hang right
// and left of the spot lie as they do on a car whose cab is on the right.
#pragma once

#include <QPointF>
#include <QRectF>
#include <cstdint>

#include "drawing/pen.h"

namespace cabwright::cab {

inline constexpr double kWheelCircle = 130, kSmallCircle = 106;

/// Wheel, axlebox, spring, blocks and rigging. `blocks_on`: share of the way to the tyre.
/// `scotch`: 0 an outline where it would lie, 1 it lies there.
void drawWheelDetail(drawing::Pen& pen, QPointF centre, double blocks_on, bool scotch);
/// Where in it things are, relative to the centre.
inline constexpr QRectF kWheelTread{-62, 40, 68, 46}, kBlockLeft{-112, -18, 34, 66},
    kRiggingRight{-30, 100, 66, 26}, kSpringTop{-80, -62, 160, 18}, kBoxMiddle{-26, -26, 52, 52},
    kScotchRight{50, 50, 62, 34};

/// Brake cylinder with piston rod, release valve and cord.
void drawCylinderDetail(drawing::Pen& pen, QPointF centre, double blocks_on, bool cord_pulled);
inline constexpr QRectF kDrum{-58, -50, 84, 96}, kCordRight{50, -34, 44, 74};

/// How its drain cock is found to be.
enum class DrainState : std::uint8_t { kShut, kOpen, kDripping, kCracked, kIced };
/// Pipes in their clips, and the vessel with its drain cock.
void drawDrainDetail(drawing::Pen& pen, QPointF centre, bool motor, DrainState state);
inline constexpr QRectF kPipesTop{-84, -66, 168, 40}, kCockBelow{-30, 40, 60, 56};

}  // namespace cabwright::cab
