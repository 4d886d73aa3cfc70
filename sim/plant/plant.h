// SPDX-License-Identifier: GPL-3.0-or-later
// The whole machine: parameters, state and the road from one tick to the next.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "plant/accounts.h"
#include "plant/inputs.h"
#include "plant/parameters.h"
#include "plant/readings.h"
#include "plant/route.h"
#include "plant/start_conditions.h"

namespace cabwright::plant {

struct World;  // the state, the locks and the step under way: plain values

/// A located change of mode (a dog drops in, a band grips, a freewheel locks).
struct PlantEvent {
  double time_s = 0;      ///< since the start of the run
  std::string_view what;  ///< "band grips", "dog drops in" ...
  int line = 0;           ///< 1 or 2, 0 for the unit
  int index = 0;          ///< band or gear number where it has one
};

/// Advances the machine in ticks of 10 ms. Copying a Plant copies the whole physical world, to the
/// bit: a copy given the same inputs goes the same way.
class Plant {
 public:
  /// The parameters must be free of faults (findParameterFaults); throws std::invalid_argument
  /// with the first fault otherwise.
  Plant(const Parameters& parameters, const GradeProfile& grade, const StartConditions& start);
  Plant(const Plant& other);
  Plant& operator=(const Plant& other);
  Plant(Plant&&) noexcept;
  Plant& operator=(Plant&&) noexcept;
  ~Plant();

  /// One tick with inputs constant during it.
  void advance(const PlantInputs& inputs);

  /// Truth after the last tick; at construction, the start.
  [[nodiscard]] const PlantReadings& readings() const;

  /// What came in, went out and is there, after the last tick.
  [[nodiscard]] Accounts accounts() const;

  [[nodiscard]] const Parameters& parameters() const;
  /// Changes a number from the next tick on: a fault, its ramp or its removal. Takes any value
  /// inside the parameter's bounds; throws std::out_of_range otherwise.
  void setParameter(const ParameterInfo& which, double value);

  /// Puts the dog teeth of a line (0 or 1) at this angle within a tooth pitch, degrees; only while
  /// it is not in mesh (no effect otherwise).
  void setToothPhase(int line, double degrees);

  /// The machine as it stands as start conditions: one that begins with them goes on like this one.
  /// Not among them: the air in the horns, a pinion in the ring, a dog sleeve between the gears,
  /// wear and ledgers. What lies outside the bounds of a start condition is taken to their edge.
  [[nodiscard]] StartConditions calcStart() const;

  /// Hash of the whole state, to the bit (FNV-1a 64).
  [[nodiscard]] std::uint64_t hash() const;

  /// Events located during the last tick.
  [[nodiscard]] const std::vector<PlantEvent>& lastEvents() const;

  /// True once a step failed (state not finite) and the last good state was put back: the machine
  /// then stands still and says so rather than put nonsense on a dial. Never expected.
  [[nodiscard]] bool failed() const;

 private:
  std::unique_ptr<World> world_;
};

}  // namespace cabwright::plant
