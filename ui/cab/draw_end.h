// SPDX-License-Identifier: GPL-3.0-or-later
// The face of a car seen from the ground before it, from the rails to the roof, and the small gear
// on its buffer beam. Lengths on the car are metres: right of its middle, above the rails.
#pragma once

#include <QPointF>
#include <QRectF>

#include "drawing/pen.h"

namespace cabwright::cab {

struct EndFrame {
  double x = 0;       ///< middle of the car, u
  double rail_y = 0;  ///< top of the rails, u
  double scale = 1;   ///< u for one metre

  [[nodiscard]] QPointF at(double right_m, double up_m) const {
    return {x + right_m * scale, rail_y - up_m * scale};
  }
  [[nodiscard]] QRectF box(double left_m, double bottom_m, double right_m, double top_m) const {
    return {at(left_m, top_m), at(right_m, bottom_m)};
  }
};

/// Where things are on the face, m.
inline constexpr double kRoofTop_m = 3.74, kLampUp_m = 1.62, kWhiteLampOut_m = 1.03,
                        kRedLampOut_m = 0.67, kHoseOut_m = 0.50, kDummyOut_m = 0.27;

// What stands still, from behind to before.
void drawTrackAcross(drawing::Pen& pen, const EndFrame& f);
void drawWheelsBehind(drawing::Pen& pen, const EndFrame& f);
void drawFace(drawing::Pen& pen, const EndFrame& f);
void drawBufferBeam(drawing::Pen& pen, const EndFrame& f);
void drawLifeguards(drawing::Pen& pen, const EndFrame& f);
void drawSteps(drawing::Pen& pen, const EndFrame& f);

// What changes.
/// `number` 0: nothing is lit.
void drawDisplay(drawing::Pen& pen, const EndFrame& f, int number);
/// `swing`: 0 parked, 1 at the far side.
void drawWiper(drawing::Pen& pen, const EndFrame& f, double swing);
void drawTailLamp(drawing::Pen& pen, const EndFrame& f, bool there, bool lit);
/// Both brake hoses, on their dummies or hanging free.
void drawBrakeHoses(drawing::Pen& pen, const EndFrame& f, bool on_dummies);
void drawCoupling(drawing::Pen& pen, const EndFrame& f, bool hooked_up);
/// 0 nothing, 1 flag, 2 board, 3 lamp, in the order of the conditions of the item.
void drawEndProtection(drawing::Pen& pen, const EndFrame& f, int what);

/// A flag or board on its stick, foot at `foot`, `height` u high.
void drawFlag(drawing::Pen& pen, QPointF foot, double height);
void drawBoard(drawing::Pen& pen, QPointF foot, double height);
/// A red hand lamp standing at `foot`.
void drawRedLamp(drawing::Pen& pen, QPointF foot, double height);

/// Enlarged: a hose with its head, on its dummy or hanging. Fits a circle of 105 u round `centre`.
void drawHoseDetail(drawing::Pen& pen, QPointF centre, bool on_dummy);
/// Enlarged, from the side: drawhook and screw coupling. Fits the same circle.
void drawCouplingDetail(drawing::Pen& pen, QPointF centre, bool hooked_up);
/// A hose of canvas and rubber along a line, `width` u thick.
void drawHose(drawing::Pen& pen, const QPainterPath& line, double width);

}  // namespace cabwright::cab
