// SPDX-License-Identifier: GPL-3.0-or-later
#include "key_signals.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string>

#include "golden_script.h"

namespace cabwright::testing {

namespace {
constexpr std::int64_t kEvery = 10;  // ticks between rows
}

const std::array<std::string_view, kKeySignals>& keySignalNames() {
  static constexpr std::array<std::string_view, kKeySignals> names{
      "speed",        "position",    "main reservoir", "control reservoir", "train pipe",
      "release pipe", "chamber 1",   "chamber 4",      "crank 1",           "crank 2",
      "turbine 1",    "turbine 2",   "output 1",       "coolant 1",         "oil 1",
      "coupling 1",   "drum 1 of 1", "wall 2",         "first gear air 1",  "battery charge",
      "piston 1"};
  return names;
}

KeyRow calcKeyRow(const plant::World& w) {
  using namespace plant;
  const State& x = w.x;
  State dx;
  Forces f;
  calcForces(w.m, x, dx, f);
  return {x[kTrain],
          x[kPosition],
          f.main_pa,
          f.control_pa,
          f.train_pa,
          f.release_pa,
          f.chamber_pa[0],
          f.chamber_pa[3],
          x[speedOf(0, kCrank)],
          x[speedOf(1, kCrank)],
          x[speedOf(0, kTurbine)],
          x[speedOf(1, kTurbine)],
          x[speedOf(0, kBoxOut)],
          x[stateOf(0, kCoolantK)],
          x[stateOf(0, kOilK)],
          x[stateOf(0, kCouplingK)],
          x[stateOf(0, kDrumK)],
          x[stateOf(1, kWallK)],
          f.gear_pa[0],
          x[kCharge],
          x[kPiston]};
}

GoldenRun runGolden(std::unique_ptr<plant::StepMethod> method, const plant::Parameters& vehicle,
                    double ambient_c) {
  plant::World world(vehicle, goldenLine(), goldenStart(vehicle, ambient_c), std::move(method));
  GoldenScript script;
  GoldenRun run;
  for (std::int64_t tick = 0; tick < kGoldenTicks; ++tick) {
    world.advance(script.advanceTo(tick));
    if (world.failed) throw std::runtime_error("failed at tick " + std::to_string(tick));
    run.events.insert(run.events.end(), world.events.begin(), world.events.end());
    if (tick % kEvery == 0) run.rows.push_back(calcKeyRow(world));
  }
  run.counts = world.counts;
  return run;
}

SignalError compareRuns(const std::vector<KeyRow>& run, const std::vector<KeyRow>& reference) {
  if (run.size() != reference.size() || run.empty()) {
    throw std::invalid_argument("runs of different length");
  }
  SignalError result;
  std::vector<double> error(run.size());
  for (std::size_t s = 0; s < kKeySignals; ++s) {
    double lowest = reference[0][s], highest = lowest;
    for (std::size_t k = 0; k < run.size(); ++k) {
      lowest = std::min(lowest, reference[k][s]);
      highest = std::max(highest, reference[k][s]);
      error[k] = std::abs(run[k][s] - reference[k][s]);
    }
    const double range = std::max(highest - lowest, 1e-12);
    std::sort(error.begin(), error.end());
    result.p99[s] = error[error.size() * 99 / 100] / range;
    result.most[s] = error.back() / range;
    if (result.p99[s] > result.worst_p99) {
      result.worst_p99 = result.p99[s];
      result.worst_signal = s;
    }
    result.worst = std::max(result.worst, result.most[s]);
  }
  return result;
}

}  // namespace cabwright::testing
