// SPDX-License-Identifier: GPL-3.0-or-later
// A car seen from its side: body, what hangs under it, and its bogies. Lengths on the car are
// metres: along it from its coupled end to its cab, and above the rails.
#pragma once

#include <QPointF>
#include <QRectF>

#include "drawing/pen.h"

namespace cabwright::cab {

inline constexpr double kCarLength_m = 17.6, kCarTop_m = 3.74;
/// Where things are along the car, m.
inline constexpr double kInnerBogie_m = 2.9, kOuterBogie_m = 14.7, kHalfBase_m = 1.05,
                        kDetailWheel_m = kInnerBogie_m + kHalfBase_m, kCylinder_m = 11.5,
                        kDrain_m = 12.5, kPerson_m = 9.95, kBracket_m = 16.52, kBracketUp_m = 1.72;

struct CarFrame {
  double left = 0, rail_y = 0, scale = 1;  ///< u, u, u for one metre
  bool cab_right = true;

  [[nodiscard]] QPointF at(double along_m, double up_m) const {
    return {left + (cab_right ? along_m : kCarLength_m - along_m) * scale, rail_y - up_m * scale};
  }
  [[nodiscard]] QRectF box(double from_m, double bottom_m, double to_m, double top_m) const {
    return QRectF(at(from_m, top_m), at(to_m, bottom_m)).normalized();
  }
};

struct CarLook {
  bool motor = true;
  bool door_open = false;
  bool alarm = false;    ///< the trailer's tell-tale stands out
  double blocks_on = 0;  ///< share
  int scotches = 0;      ///< under the wheels
  int person = 0;        ///< 1 walks along the car, 2 only feet show beneath it
  int protection = 0;    ///< 1 flag, 2 board, 3 lamp
  double smoke = 0;      ///< of the engine of this side, 0 to 1: at its tail pipe on the motor car
  bool fire = false;     ///< it burns
};

// What stands still.
void drawTrackAlong(drawing::Pen& pen, const CarFrame& f, double from_x, double to_x);
void drawCarBody(drawing::Pen& pen, const CarFrame& f, bool motor);
void drawUnderMotorCar(drawing::Pen& pen, const CarFrame& f);
void drawUnderTrailer(drawing::Pen& pen, const CarFrame& f);
void drawSkirts(drawing::Pen& pen, const CarFrame& f);
void drawBogie(drawing::Pen& pen, const CarFrame& f, double centre_m);

/// What changes: door, tell-tale, scotches, people, protection.
void drawCarLive(drawing::Pen& pen, const CarFrame& f, const CarLook& look);

/// A person from behind, standing on `feet`, `height` u high.
void drawPerson(drawing::Pen& pen, QPointF feet, double height);

}  // namespace cabwright::cab
