// SPDX-License-Identifier: GPL-3.0-or-later
// Locks: which rows of the friction problem hold and which slide, found anew at every event.
#pragma once

#include "plant/box_solver.h"
#include "plant/machine.h"

namespace cabwright::plant {

/// A row whose speed is within this of zero may lock, rad/s or m/s.
inline constexpr double kSpeedTolerance = 1e-6;
/// Friction gives an impulse over the time that teeth and shafts take to yield, s: with none at
/// all, rail and bands would slip whenever a dog drops in.
inline constexpr double kShockSeconds = 5e-3;

/// Energy of all that turns and moves, J.
[[nodiscard]] double calcKineticEnergy(const Machine& m, const State& x);

/// The matrices of a set of locked rows. Rows that follow from the others take no part in the
/// accelerations; all of them share the holding forces.
void calcModeMatrices(const Machine& m, Modes& modes);

/// Settles all rows at this state: an impulse first where rows close with a jump (a dog dropped
/// in, a freewheel caught), then lock or slide for each row at rest, then the speeds are put
/// exactly on the locks. Returns the energy lost in the impulse, J.
double resolveModes(const Machine& m, State& x, Modes& modes);

/// Holding force of every row at this state: found from the locks, or the sliding force.
[[nodiscard]] RowVector calcRowForces(const Modes& modes, const Forces& forces);

/// Distance of each row from leaving its mode: negative once it has left.
/// row_forces as calcRowForces gives them.
[[nodiscard]] RowVector calcRowGuards(const Modes& modes, const State& x, const Bounds& bounds,
                                      const RowVector& row_forces);

/// One step of h seconds on the velocity level, all rows at once, for the rest of a tick in which
/// events follow each other without end.
void advanceVelocityLevel(const Machine& m, State& x, Modes& modes, double h);

}  // namespace cabwright::plant
