// SPDX-License-Identifier: GPL-3.0-or-later
// Where a vacuum brake's piston stands when nothing moves any more.
#pragma once

#include "plant/parameters.h"

namespace cabwright::plant {

/// Travel of the piston, m, at which the air above it, the pipe below, the spring and the rigging
/// balance: 0 on its stop, above `take_up_m` with the blocks pressing. The air above is given as
/// m R T, J; its volume shrinks as the piston rises, so there is one answer.
[[nodiscard]] double calcRestingTravel(const CylinderParameters& p, double area_m2, double pipe_pa,
                                       double chamber_mrt_j);

/// Pressure of that air, Pa absolute, with the piston here.
[[nodiscard]] double calcChamberPressure(const CylinderParameters& p, double area_m2,
                                         double travel_m, double chamber_mrt_j);

}  // namespace cabwright::plant
