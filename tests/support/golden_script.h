// SPDX-License-Identifier: GPL-3.0-or-later
// Twenty minutes with every part of the machine in use: a cold night, both engines started from
// the ground by hand throttle, air and vacuum raised, the brakes tried, dogs, gears, two trips over
// a line with grades, a stop on a rise, stabling. Inputs go by the clock alone, so that every
// integration method is given exactly the same.
#pragma once

#include <cstddef>
#include <cstdint>

#include "plant/inputs.h"
#include "plant/route.h"
#include "plant/start_conditions.h"

namespace cabwright::testing {

inline constexpr std::int64_t kGoldenTicks = 120'000;

/// Fourteen hours in the open, at 2 C unless said otherwise.
[[nodiscard]] plant::StartConditions goldenStart(const plant::Parameters& p = plant::Parameters(),
                                                 double ambient_c = 2.0);
/// Level, a rise of 1 in 120, a fall of 1 in 90, curves.
[[nodiscard]] plant::GradeProfile goldenLine();
/// How many times the script changes the inputs.
[[nodiscard]] std::size_t countGoldenChanges();

/// Plays the script: ask for the inputs of tick 0, 1, 2 ... in this order.
class GoldenScript {
 public:
  GoldenScript();
  /// Inputs that hold from this tick to the next.
  const plant::PlantInputs& advanceTo(std::int64_t tick);

 private:
  plant::PlantInputs inputs_;
  std::size_t next_ = 0;
};

}  // namespace cabwright::testing
