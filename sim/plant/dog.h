// SPDX-License-Identifier: GPL-3.0-or-later
// The dog sleeve as an automaton: moving, tooth on tooth, entering, meshed, rattling. Its changes
// are located like those of the friction rows.
#pragma once

#include "plant/locks.h"
#include "plant/machine.h"

namespace cabwright::plant {

/// Angle of the crown wheel of that side against the axle within one tooth pitch, [0, pitch):
/// 0..window is a gap.
[[nodiscard]] double calcToothPhase(const Machine& m, const State& x, std::size_t line, int side);

/// Distance from the next change of the sleeve's state; negative once it is due.
[[nodiscard]] double calcDogGuard(const Machine& m, const State& x, std::size_t line,
                                  const RowVector& row_forces);

/// Makes the change that is due; returns what happened, nullptr if nothing.
const char* advanceDog(Machine& m, State& x, std::size_t line, const RowVector& row_forces);

/// What air, pin and hand do to the sleeve, decided at ticks. True when its state changed.
bool decideDog(Machine& m, const Modes& modes, State& x, std::size_t line);

}  // namespace cabwright::plant
