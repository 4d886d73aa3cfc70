// SPDX-License-Identifier: GPL-3.0-or-later
// The discrete things that happen by themselves in a tick.
#pragma once

#include "plant/readings.h"
#include "unit/route.h"
#include "unit/world.h"

namespace cabwright::unit {

/// Arrives where the trainee was walking to; counts how long something has been looked at.
void advanceTrainee(World& w);

/// A pulled bottle that is full holds its fire down for ten seconds, once: out it stays where the
/// fuel cock is shut by then; where fuel still runs into it, it lights again.
void advanceFires(World& w);

/// Thumps of dogs and clicks of relays that have just happened.
void noteSounds(World& w, const InterlockResult& before, const plant::PlantReadings& r,
                const std::array<bool, plant::kLines>& was_meshed);

/// Attempts to start, rests between them, how long each engine has run, and who stood there.
void noteStarts(World& w, const InterlockResult& before, const plant::PlantReadings& r);

/// Way covered, signals passed (and put back to danger behind the end that leads), and what moving
/// did to people and things.
void noteMovement(World& w, const plant::PlantReadings& r, const Route& route);

/// The trainee between the cars or under them, or with a hand in a drive, when that is no place.
void noteExposure(World& w, const plant::PlantReadings& r);

}  // namespace cabwright::unit
