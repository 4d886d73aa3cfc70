// SPDX-License-Identifier: GPL-3.0-or-later
// A plant with hands on it: what the tests of the machine drive it through.
#pragma once

#include <cstdio>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>

#include "plant/world.h"
#include "quantity/units.h"

namespace cabwright::testing {

namespace q = cabwright::quantity;

/// Start of a unit that stands with both engines warm and idling, no air, no vacuum.
inline plant::StartConditions warmIdling() {
  plant::StartConditions s;
  for (plant::LineStart& line : s.line) {
    line.crank_rpm = 420.0;
    line.coolant_c = line.oil_c = 75.0;
    line.box_oil_c = line.coupling_c = 60.0;
    line.latch_tripped = 0.0;
  }
  return s;
}

/// The same with air at this pressure, full vacuum everywhere, dogs in forward, ready to go.
inline plant::StartConditions warmReady(double air_psi = 92.0) {
  plant::StartConditions s = warmIdling();
  s.main_psi = s.control_psi = air_psi;
  s.train_pipe_inhg = s.chamber_inhg = 21.0;
  s.release_pipe_inhg = 27.0;
  for (plant::LineStart& line : s.line) line.dog_side = 1.0;
  s.cab[0].device_psi = 60.0;
  return s;
}

/// After a night in the open at this temperature.
inline plant::StartConditions coldNight(double ambient_c, double hours = 14.0) {
  return plant::StartConditions::afterStanding(hours, ambient_c);
}

inline plant::GradeProfile slope(double gradient) {
  return plant::GradeProfile({{0.0, gradient, 0.0}});
}

/// Cab 1 leads. Handbrakes are on to begin with.
struct PlantRig {
  plant::World world;
  plant::PlantInputs in;

  explicit PlantRig(const plant::StartConditions& start, const plant::GradeProfile& grade = {},
                    const plant::Parameters& p = plant::Parameters(),
                    std::unique_ptr<plant::StepMethod> method = plant::makeDopri5())
      : world(p, grade, start, std::move(method)) {
    in.cab[0].handbrake = in.cab[1].handbrake = 1.0;
  }

  [[nodiscard]] const plant::PlantReadings& now() const { return world.readings(); }
  [[nodiscard]] double seconds() const { return static_cast<double>(world.tick) * q::kTickSeconds; }
  void tick() {
    world.advance(in);
    if (world.failed)
      throw std::runtime_error("the plant failed at tick " + std::to_string(world.tick));
  }
  void run(double s) {
    const int ticks = static_cast<int>(s * q::kTicksPerSecond + 0.5);
    for (int k = 0; k < ticks; ++k) tick();
  }
  /// Runs until `done`; the time it took, s, or a negative number if `limit_s` went by first.
  double runUntil(const std::function<bool(const PlantRig&)>& done, double limit_s) {
    const double from = seconds();
    while (!done(*this)) {
      if (seconds() - from > limit_s) return -1.0;
      tick();
    }
    return seconds() - from;
  }

  [[nodiscard]] double rpm(std::size_t n) const {
    return q::radPerSecToRpm(now().line[n].crank_rad_per_s);
  }
  [[nodiscard]] double mph() const { return q::mpsToMph(now().speed_mps); }
  [[nodiscard]] double controlPsi() const { return q::paToPsiGauge(now().control_reservoir_pa); }
  [[nodiscard]] double trainInHg() const { return q::paToInHgVacuum(now().train_pipe_pa); }
  [[nodiscard]] double releaseInHg() const { return q::paToInHgVacuum(now().release_pipe_pa); }

  void handbrakes(double on) { in.cab[0].handbrake = in.cab[1].handbrake = on; }
  void notch(int n) {
    for (plant::LineInputs& line : in.line) line.throttle_notch = n;
  }
  void gear(int g) {
    for (plant::LineInputs& line : in.line) {
      line.gear_valve.fill(false);
      if (g > 0) line.gear_valve[static_cast<std::size_t>(g - 1)] = true;
    }
  }
  void forward() {
    for (plant::LineInputs& line : in.line) line.shift_forward = true;
    in.cab[0].device_in_circuit = true;
    in.cab[0].device_held = true;
  }
};

/// One row of the acceptance table, as a reader wants it.
inline void printRow(const std::string& row, const std::string& got) {
  std::printf("ACCEPTANCE | %s | %s\n", row.c_str(), got.c_str());
}

}  // namespace cabwright::testing
