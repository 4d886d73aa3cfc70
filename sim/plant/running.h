// SPDX-License-Identifier: GPL-3.0-or-later
// Wheels, blocks and the line: brake friction, adhesion, resistance, vacuum cylinder force.
#pragma once

#include "plant/parameters.h"

namespace cabwright::plant {

/// Cast-iron block on a steel tyre (Karwatzki, from memory, as reprinted in brake handbooks):
/// mu = 0.6 (16 P/g + 100)/(80 P/g + 100) (V + 100)/(5 V + 100), P block force in kN, V in km/h.
[[nodiscard]] double calcBlockFriction(double block_force_n, double speed_mps);

/// Adhesion of wheel on rail (Curtius & Kniffler 1944/1950, from memory):
/// mu = 7.5/(V + 44) + 0.161, V in km/h.
[[nodiscard]] double calcAdhesion(double speed_mps);

/// Running resistance on straight level track, N, of the speed's magnitude: a + b v + c v^2.
[[nodiscard]] double calcRunningResistance(const TrainParameters& p, double speed_mps);

/// Force of a vacuum piston, N: difference of pressure below and above on its area.
[[nodiscard]] double calcPistonForce(double bore_m, double below_pa, double above_pa);

/// Force along the track of a gradient, N: m g i, with i the rise per metre along the rail (the
/// sine of the slope; on railway gradients it differs from the tangent by less than 1 in 3000).
[[nodiscard]] double calcGradeForce(double mass_kg, double gradient);

}  // namespace cabwright::plant
