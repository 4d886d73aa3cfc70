// SPDX-License-Identifier: GPL-3.0-or-later
// What joins the two cars, seen by who stands beside the gap. Lengths are metres: right of the
// middle of the gap and above the rails.
#pragma once

#include "cab/draw_end.h"

namespace cabwright::cab {

/// Half the gap between the cars, and how much of a car is drawn beside it, m.
inline constexpr double kHalfGap_m = 0.74, kCarShown_m = 0.66;
/// Where the jumper's sockets are, m above the rails.
inline constexpr double kJumperUp_m = 1.86;

struct BetweenLook {
  bool jumper_home = true;
  bool hose_parted = false;  ///< a vacuum hose hangs down
};

void drawCarEnds(drawing::Pen& pen, const EndFrame& f, double top_y);
void drawGangway(drawing::Pen& pen, const EndFrame& f, double top_y);
void drawCoupler(drawing::Pen& pen, const EndFrame& f);
void drawAirHose(drawing::Pen& pen, const EndFrame& f);

void drawVacuumHoses(drawing::Pen& pen, const EndFrame& f, bool parted);
void drawJumper(drawing::Pen& pen, const EndFrame& f, bool home);

/// Enlarged, in a circle of 105 u: the heads of the coupler with pin and cotter, from above.
void drawCouplerDetail(drawing::Pen& pen, QPointF centre);
/// Enlarged: plug, socket and lever of the jumper.
void drawJumperDetail(drawing::Pen& pen, QPointF centre, bool home);

}  // namespace cabwright::cab
