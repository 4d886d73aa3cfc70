// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/world.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "quantity/hash.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

constexpr double kLongestStepS = 0.10;
constexpr int kMostEventsPerTick = 32;
constexpr double kLocateS = 1e-9;  // how closely an event is located
constexpr double kTimeGrain = 1e-12;

// Levels at which the discrete parts act; see decideLine.
constexpr double kRunsAbove = 30.0, kStoppedBelow = 12.0;  // rad/s
constexpr double kPinionMeetsBelow = 8.0;                  // rad/s
constexpr double kTripClearsBelowK = 10.0;

}  // namespace

World::World(const World& o)
    : m(o.m),
      modes(o.modes),
      x(o.x),
      tick(o.tick),
      method(o.method->clone()),
      step_at(o.step_at),
      step_usable(o.step_usable),
      step_open(o.step_open),
      event_due(o.event_due),
      restart(o.restart),
      failed(o.failed),
      wear(o.wear),
      rolled_from_m(o.rolled_from_m),
      rolled_sense(o.rolled_sense),
      impulse_j(o.impulse_j),
      altered_j(o.altered_j),
      events(o.events),
      counts(o.counts),
      readings_(o.readings_),
      readings_fresh_(o.readings_fresh_) {}

void World::advance(const PlantInputs& inputs) {
  events.clear();
  if (failed) return;
  if (!(inputs == m.u)) {
    m.u = inputs;
    restart = true;
  }
  const double main_psi = q::paToPsiGauge(calcPressure(x[kMainMass], m.p.air.main_m3, m.d.gas_k));
  for (std::size_t n = 0; n < kLines; ++n) decideLine(n, main_psi);
  const bool stood = standing();
  const auto rhs = [this](const State& at, State& dx) {
    Forces scratch;
    calcRates(m, modes, at, dx, scratch);
  };
  if (restart) {
    const Modes before = modes;
    x[kBearingJ] += resolveModes(m, x, modes);
    noteModeChanges(before, static_cast<double>(tick) * q::kTickSeconds);
    method->start(rhs, x);
    step_open = false;
    restart = false;
  }
  double remaining = q::kTickSeconds;
  int events_now = 0;
  while (remaining > 0.0) {
    if (!step_open) openStep();
    if (failed) return;
    const double usable = step_usable - step_at;
    if (usable > remaining + kTimeGrain) {
      step_at += remaining;
      method->calcAt(step_at, x);
      break;
    }
    remaining -= usable;
    if (remaining < kTimeGrain) remaining = 0.0;
    method->calcAt(step_usable, x);
    step_open = false;
    if (!event_due) continue;
    applyEvents(q::kTickSeconds - remaining);
    ++counts.events;
    if (++events_now > kMostEventsPerTick && remaining > 0.0) {
      advanceVelocityLevel(m, x, modes, remaining);
      ++counts.storms;
      remaining = 0.0;
    }
    method->start(rhs, x);
  }
  ++tick;
  readings_fresh_ = false;
  noteRolling(stood);
  addWear();
}

double World::calcLongestStep() const {
  double longest = kLongestStepS;
  for (std::size_t n = 0; n < kLines; ++n) {
    if (m.flags[n].dog != DogState::kOnTooth) continue;
    // A gap must not pass between two looks.
    const double speed = std::abs(rowSpeed(m.shapeOf(kDogRow + n), x)) + 0.5;
    longest = std::min(longest, 0.5 * m.d.window[n] / speed);
  }
  return longest;
}

void World::openStep() {
  Forces scratch;
  const auto rhs = [this, &scratch](const State& at, State& dx) {
    calcRates(m, modes, at, dx, scratch);
  };
  const double length = method->step(rhs, calcLongestStep());
  if (length < 0.0) {
    failed = true;  // x still is the last good state
    return;
  }
  ++counts.steps;
  step_open = true;
  step_at = 0.0;
  findFirstEvent(length, method->endsOnEvaluation() ? &scratch : nullptr);
}

bool World::guardsHold(const State& at) const {
  State dx;
  Forces forces;
  calcForces(m, at, dx, forces);
  return guardsHold(at, forces.bounds, calcRowForces(modes, forces));
}

bool World::guardsHold(const State& at, const Bounds& bounds, const RowVector& held) const {
  const RowVector guard = calcRowGuards(modes, at, bounds, held);
  for (double g : guard) {
    if (!(g > 0.0)) return false;
  }
  for (std::size_t n = 0; n < kLines; ++n) {
    if (!(calcDogGuard(m, at, n, held) > 0.0)) return false;
  }
  return true;
}

namespace {

// True when some lock holds with less than a tenth of its range to spare.
bool isAnyLockNear(const Modes& modes, const Bounds& bounds, const RowVector& held) {
  for (std::size_t r = 0; r < modes.locked_count; ++r) {
    const std::size_t k = modes.locked[r];
    const double lo = bounds.lo[k], hi = bounds.hi[k];
    if (std::min(held[k] - lo, hi - held[k]) < 0.1 * std::min(hi - lo, 1e4)) return true;
  }
  return false;
}

}  // namespace

// Looks at the end and in the middle. In the middle the speeds are always looked at; the holding
// forces, which cost an evaluation, only where some lock is near its bound at the end.
void World::findFirstEvent(double length, const Forces* at_end) {
  step_usable = length;
  event_due = false;
  Forces own;
  if (at_end == nullptr) {
    State dx;
    calcForces(m, method->end(), dx, own);
    at_end = &own;
  }
  const RowVector held = calcRowForces(modes, *at_end);
  State at;
  method->calcAt(0.5 * length, at);
  const bool middle_holds = isAnyLockNear(modes, at_end->bounds, held)
                                ? guardsHold(at)
                                : guardsHold(at, at_end->bounds, held);
  double good = 0.0, bad = 0.5 * length;
  if (middle_holds) {
    if (guardsHold(method->end(), at_end->bounds, held)) return;
    good = bad;
    bad = length;
  }
  while (bad - good > kLocateS) {
    const double middle = 0.5 * (good + bad);
    method->calcAt(middle, at);
    (guardsHold(at) ? good : bad) = middle;
  }
  step_usable = bad;
  event_due = true;
}

void World::applyEvents(double since_tick_s) {
  State dx{};
  Forces forces;
  calcForces(m, x, dx, forces);
  const RowVector held = calcRowForces(modes, forces);
  const double time = static_cast<double>(tick) * q::kTickSeconds + since_tick_s;
  const Modes before = modes;
  for (std::size_t n = 0; n < kLines; ++n) {
    const double wheel_side = m.flags[n].dog_side;
    if (const char* what = advanceDog(m, x, n, held)) {
      events.push_back({time, what, static_cast<int>(n) + 1, static_cast<int>(wheel_side)});
    }
  }
  const double lost = resolveModes(m, x, modes);
  x[kBearingJ] += lost;
  impulse_j += lost;
  for (std::size_t n = 0; n < kLines; ++n) {
    if (m.flags[n].dog == DogState::kMeshed) wear[n].dog_j += lost;
  }
  noteModeChanges(before, time);
}

void World::noteModeChanges(const Modes& before, double time) {
  const auto note = [&](std::size_t row, const char* locks, const char* frees, int line,
                        int index) {
    const bool was = before.row[row] == RowMode::kLocked, is = modes.row[row] == RowMode::kLocked;
    if (was != is) events.push_back({time, is ? locks : frees, line, index});
  };
  for (std::size_t n = 0; n < kLines; ++n) {
    const int line = static_cast<int>(n) + 1;
    note(kFreewheelRow + n, "freewheel locks", "freewheel over-runs", line, 0);
    for (std::size_t b = 0; b < kBands; ++b) {
      note(kBandRow + n * kBands + b, "drum stops", "drum turns", line, static_cast<int>(b) + 1);
    }
    note(kClutchRow + n, "clutch grips", "clutch slips", line, 4);
    note(kRailRow + n, "wheel rolls", "wheel slips", line, 0);
    note(kBlockRow + n, "wheel held", "wheel turns", line, 0);
    note(kCrankRow + n, "engine at rest", "engine turns", line, 0);
  }
  note(kRailRow + 2, "wheel rolls", "wheel slips", 0, 0);
  note(kBreakawayRow, "train stands", "train moves", 0, 0);
}

void World::decideLine(std::size_t n, double main_psi) {
  LineFlags& flag = m.flags[n];
  const LineFlags before = flag;
  const EngineParameters& e = m.p.engine[n];
  const LineInputs& u = m.u.line[n];
  const double speed = x[speedOf(n, kCrank)];

  const double lever = std::max(x[stateOf(n, kLever)], u.hand_throttle);
  if (u.stop_solenoid) {
    flag.latch_tripped = true;
  } else if (lever > e.latch_reset_lever) {
    flag.latch_tripped = false;
  }
  const double coolant_c = q::kelvinToCelsius(x[stateOf(n, kCoolantK)]);
  const bool low = x[stateOf(n, kCoolantLevel)] < e.trip_level;
  if (coolant_c > e.trip_c || low || e.false_trip > 0.5) {
    flag.protection_tripped = true;
  } else if (coolant_c < e.trip_c - kTripClearsBelowK && speed < kStoppedBelow) {
    flag.protection_tripped = false;
  }
  if (speed > kRunsAbove) flag.running = true;
  if (speed < kStoppedBelow) flag.running = false;
  if (u.starter_contactor) {
    if (speed < kPinionMeetsBelow) flag.pinion_in = true;
  } else if (m.p.starter[n].pinion_sticks <= 0.5) {
    flag.pinion_in = false;
  }
  if (main_psi > m.p.air.cut_out_psi) flag.compressor_loaded = false;
  if (main_psi < m.p.air.cut_in_psi) flag.compressor_loaded = true;
  if (m.p.compressor[n].unloader_stuck > 0.5) flag.compressor_loaded = true;
  if (m.p.compressor[n].unloader_stuck < -0.5) flag.compressor_loaded = false;
  const bool dog_changed = decideDog(m, modes, x, n);
  restart = restart || dog_changed || flag.latch_tripped != before.latch_tripped ||
            flag.protection_tripped != before.protection_tripped ||
            flag.pinion_in != before.pinion_in ||
            flag.compressor_loaded != before.compressor_loaded;
}

std::uint64_t World::hash() const {
  q::Fnv1a64 h;
  h.addInt(tick);
  for (double v : x) h.addDouble(v);
  for (RowMode r : modes.row) h.addInt(static_cast<std::int64_t>(r));
  for (const LineFlags& f : m.flags) {
    h.addInt((f.latch_tripped ? 1 : 0) | (f.protection_tripped ? 2 : 0) | (f.pinion_in ? 4 : 0) |
             (f.compressor_loaded ? 8 : 0) | (f.running ? 16 : 0));
    h.addInt(static_cast<std::int64_t>(f.dog));
    h.addInt(f.dog_side);
  }
  for (const Wear& w : wear) {
    for (double v : {w.race_cold_rev, w.lug_j, w.overspeed_rad, w.band_j, w.dog_j, w.starter_ks,
                     w.starter_rad, w.crank_s}) {
      h.addDouble(v);
    }
  }
  return h.value();
}

}  // namespace cabwright::plant
