// SPDX-License-Identifier: GPL-3.0-or-later
// The electric cupboard: its case, its switches, and its wiring as a diagram of single lines.
#pragma once

#include "cab/drawn_part.h"

namespace cabwright::cab {

/// Case with the two doors thrown open to its sides, `leaf` u wide as they are seen.
void paintCupboardCase(drawing::Pen& pen, const QRectF& box, double leaf);
/// A wire: heavy when it is live, thin and dashed when it is dead.
void paintWire(drawing::Pen& pen, const QPolygonF& points, bool live);
/// A joint of wires.
void paintJoint(drawing::Pen& pen, QPointF at, bool live);

/// A knife switch 120 u wide, its clips 150 u apart: closed the blade lies in both. `centre`:
/// middle between them.
void paintKnifeSwitch(drawing::Pen& pen, QPointF centre, const DrawnState& state);
/// The slab it stands on; the lower part of it is below the hinge.
[[nodiscard]] QRectF knifeSwitchSlab(QPointF centre);
/// A breaker 64 by 108 u with its toggle: up is in.
void paintBreaker(drawing::Pen& pen, QPointF centre, const DrawnState& state);
/// A battery of cells, `width` u wide; plus at the left end.
void paintBattery(drawing::Pen& pen, QPointF centre, double width);

enum class Consumer : std::uint8_t { kControl, kStarter, kLamps, kLights, kFan };
/// What a wire feeds, as its sign, in a circle of 26 u.
void paintConsumer(drawing::Pen& pen, QPointF centre, Consumer what, bool live);

}  // namespace cabwright::cab
