// SPDX-License-Identifier: GPL-3.0-or-later
// What air sounds like where it goes out or comes in: by the flows of the plant and nothing else.
#pragma once

#include "plant/escapes.h"
#include "unit/places.h"

namespace cabwright::unit {

/// Flow of air through openings that are heard at a place, kg/s. What belongs to an engine is heard
/// at it and along its side of car 1; what leaks along a car on that side of it; what is in a cab
/// in that cab. What leaks between the cars is heard there, and fainter along both cars.
[[nodiscard]] double calcEscapeHeardAt(const plant::Escapes& escape, Place place);

/// Loudness of that, 0 silent .. 1: nothing below what a sound unit loses, half at 3 g/s (house
/// values), growing with the flow.
[[nodiscard]] double calcHiss(double flow_kg_s);

}  // namespace cabwright::unit
