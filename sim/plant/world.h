// SPDX-License-Identifier: GPL-3.0-or-later
// The physical world as one copyable value, and the loop that carries it from tick to tick.
#pragma once

#include <memory>
#include <vector>

#include "plant/accounts.h"
#include "plant/dog.h"
#include "plant/locks.h"
#include "plant/machine.h"
#include "plant/plant.h"
#include "plant/step_method.h"

namespace cabwright::plant {

struct Wear {
  double race_cold_rev = 0, lug_j = 0, overspeed_rad = 0, band_j = 0, dog_j = 0, starter_ks = 0,
         starter_rad = 0, crank_s = 0;
};

/// Counts for tests and benchmarks.
struct StepCounts {
  std::int64_t steps = 0, events = 0, storms = 0;
};

struct World {
  World(const Parameters& p, const GradeProfile& grade, const StartConditions& start,
        std::unique_ptr<StepMethod> stepper);
  World(const World& other);
  World& operator=(const World&) = delete;

  void advance(const PlantInputs& inputs);
  [[nodiscard]] std::uint64_t hash() const;

  Machine m;
  Modes modes;
  State x{};  ///< at the last tick
  std::int64_t tick = 0;
  std::unique_ptr<StepMethod> method;
  double step_at = 0;      ///< where x stands inside the step under way, s
  double step_usable = 0;  ///< length of that step up to its first event
  bool step_open = false;
  bool event_due = false;  ///< the step ends in an event
  bool restart = true;     ///< something changed: the step under way no longer holds
  bool failed = false;
  std::array<Wear, kLines> wear;
  double rolled_from_m = 0;
  int rolled_sense = 0;
  double impulse_j = 0;  ///< lost in shocks since the start
  double altered_j = 0;  ///< Accounts::altered_j
  std::vector<PlantEvent> events;
  StepCounts counts;
  /// Truth at the last tick; made when first asked for.
  [[nodiscard]] const PlantReadings& readings() const;
  [[nodiscard]] bool standing() const;

 private:
  mutable PlantReadings readings_;
  mutable bool readings_fresh_ = false;

  void decideLine(std::size_t n, double main_psi);
  void openStep();
  void findFirstEvent(double length, const Forces* at_end);
  [[nodiscard]] bool guardsHold(const State& at) const;
  [[nodiscard]] bool guardsHold(const State& at, const Bounds& bounds, const RowVector& held) const;
  void applyEvents(double since_tick_s);
  void noteModeChanges(const Modes& before, double time);
  void addWear();
  void noteRolling(bool stood);
  [[nodiscard]] double calcBandPower(std::size_t n) const;
  [[nodiscard]] double calcArmatureSpeed(std::size_t n) const;
  void fillLine(std::size_t n, const Forces& forces, const RowVector& row_forces) const;
  [[nodiscard]] double calcLongestStep() const;
};

/// Accounts::stored_j alone.
[[nodiscard]] double calcStoredEnergy(const World& w);

}  // namespace cabwright::plant
