// SPDX-License-Identifier: GPL-3.0-or-later
// Vehicles, starts, lines and hands drawn by chance from a seed.
#pragma once

#include "plant/inputs.h"
#include "plant/parameters.h"
#include "plant/route.h"
#include "plant/start_conditions.h"
#include "quantity/random.h"

namespace cabwright::testing {

[[nodiscard]] inline double drawBetween(quantity::Random& r, double lo, double hi) {
  return lo + (hi - lo) * r.uniform01();
}

/// Every size and rate between four fifths and five quarters of the shipped one, sound together;
/// whole numbers (teeth) and what only faults change stay.
[[nodiscard]] plant::Parameters makeSensibleParameters(quantity::Random& r);
/// Whole tooth numbers that fit and can be assembled.
void drawTeeth(quantity::Random& r, plant::GearboxParameters& box);
/// Any start condition anywhere within its bounds, speeds of engine and train kept to what a
/// vehicle can have.
[[nodiscard]] plant::StartConditions makeRandomStart(quantity::Random& r);
[[nodiscard]] plant::GradeProfile makeRandomLine(quantity::Random& r);

/// How many different things hands can move, and moving one of them to a drawn position.
inline constexpr std::uint64_t kHandles = 27;
void actOn(plant::PlantInputs& u, std::uint64_t handle, std::uint64_t which, double level);
void actAtRandom(quantity::Random& r, plant::PlantInputs& u);

}  // namespace cabwright::testing
