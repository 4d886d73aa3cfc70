// SPDX-License-Identifier: GPL-3.0-or-later
// A unit as it stands as the start of another run.
#pragma once

#include "unit/unit.h"

namespace cabwright::unit {

/// The start with which another unit goes on like this one: machine, controls, loose things, hidden
/// conditions, where the trainee is and what his hands hold. Numbers of the vehicle are not in it.
///
/// Not kept: answers on their way and bells that ring, people who were called, what has been seen,
/// judged, noted and booked, how far a walk is done (the trainee stands where it began), where the
/// needle of a stuck gauge stood, and a handbrake wheel's turn that is under way.
[[nodiscard]] UnitStart calcStartOf(const Unit& unit);

/// The word of a file for where a control stands, or the number.
[[nodiscard]] std::string positionText(const ControlInfo& info, double value);
/// The word of a file for where a loose thing is: "carried", "none", "lying cab1", "cab1".
[[nodiscard]] std::string whereabouts(const World& w, Object object);

}  // namespace cabwright::unit
