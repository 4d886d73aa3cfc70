// SPDX-License-Identifier: GPL-3.0-or-later
// The saloon, seen along its middle towards cab 1: side 1 is on the right.
#pragma once

#include <array>

#include "cab/drawn_part.h"

namespace cabwright::cab {

struct SaloonState {
  std::array<bool, 2> door_open{};  ///< side 1, side 2
  bool alarm_pulled = false;
  bool lamps_lit = false;
  bool dark_outside = false;
};

/// Depth 1 is the picture's own plane, larger is farther. `across` and `up` from -1 to 1 between
/// the walls, and between floor and ceiling.
class SaloonView {
 public:
  explicit SaloonView(const QRectF& picture) : picture_(picture) {}
  [[nodiscard]] QPointF at(double across, double up, double depth) const;
  /// A piece of a side wall: -1 left, 1 right.
  [[nodiscard]] QPolygonF onWall(double side, double low, double high, double from,
                                 double to) const;
  [[nodiscard]] const QRectF& picture() const { return picture_; }

 private:
  QRectF picture_;
};

/// Walls, windows, seats, the door to the cab.
void paintSaloonGround(drawing::Pen& pen, const SaloonView& view, bool dark_outside);
/// Doors, alarm handles and lamps as they are.
void paintSaloonState(drawing::Pen& pen, const SaloonView& view, const SaloonState& state);
/// Boxes of what can be looked at there.
[[nodiscard]] QRectF saloonDoorBox(const SaloonView& view, int side);
[[nodiscard]] QRectF saloonAlarmBox(const SaloonView& view);
[[nodiscard]] QRectF saloonLampBox(const SaloonView& view);

/// A handle behind its cover, 76 u wide: flat, or pulled down with its wire broken.
void paintAlarmHandle(drawing::Pen& pen, QPointF centre, const DrawnState& state);

}  // namespace cabwright::cab
