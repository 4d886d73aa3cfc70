// SPDX-License-Identifier: GPL-3.0-or-later
// The sectioned drive line, drawn from plain state: a sheet of 1600 by 1000 u, scaled into a frame.
#pragma once

#include <QRectF>

#include "drawing/pen.h"
#include "mechanism/gear_angles.h"

namespace cabwright::mechanism {

struct MechanismLook {
  int line = 0;          ///< which drive line is drawn large
  double slowness = 20;  ///< one second here is 1/slowness of one there; 0: it stands still
};

inline constexpr double kSheetWidth = 1600, kSheetHeight = 1000;

/// All of it. `frame` is where on the sheet of the caller it may stand; it keeps its shape.
void paintMechanism(drawing::Pen& pen, const QRectF& frame, const MechanismState& state,
                    const MechanismTurn& turn, const MechanismLook& look);

// Its regions, each in the coordinates of the 1600 by 1000 sheet.
void paintDriveSection(drawing::Pen& pen, const MechanismState& state, const LineState& line,
                       const MechanismTurn& turn);
void paintSpeedStrip(drawing::Pen& pen, const LineState& line);
void paintCrossSections(drawing::Pen& pen, const MechanismState& state, const LineState& line,
                        const MechanismTurn& turn, const MechanismLook& look);
void paintDogs(drawing::Pen& pen, const MechanismState& state, const LineState& line);
void paintLampPath(drawing::Pen& pen, const MechanismState& state);
void paintBeside(drawing::Pen& pen, const MechanismState& state, const MechanismLook& look);

/// Turn of the wheel in one picture of 1/25 s, in pitches of its teeth.
[[nodiscard]] double pitchesPerPicture(double rpm, int teeth, double slowness);

}  // namespace cabwright::mechanism
