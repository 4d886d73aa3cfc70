// SPDX-License-Identifier: GPL-3.0-or-later
// The way back from a machine that runs to the start conditions it could have begun with: each line
// undoes one of world_start.cpp.
#include <algorithm>
#include <cmath>

#include "plant/brake_piston.h"
#include "plant/plant.h"
#include "plant/world.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

constexpr double kMmPerMetre = 1000.0, kDegreesPerTurn = 360.0;

// Not said where it is what it would be anyhow.
double unlessUsual(double value, double usual) { return value == usual ? kUsual : value; }

// What rounding makes of nothing is nothing.
double orNothing(double value) {
  constexpr double kNothing = 1e-9;
  return std::abs(value) < kNothing ? 0.0 : value;
}
double psiOf(double pa) { return std::max(0.0, orNothing(q::paToPsiGauge(pa))); }
double inHgOf(double pa) { return orNothing(q::paToInHgVacuum(pa)); }

void takeSpeeds(const World& w, std::size_t n, LineStart& s) {
  const State& x = w.x;
  const double crank = x[speedOf(n, kCrank)];
  const auto rpm = [&](double speed, double usual) {
    return speed == usual ? kUsual : q::radPerSecToRpm(speed);
  };
  s.crank_rpm = q::radPerSecToRpm(crank);
  s.turbine_rpm = rpm(x[speedOf(n, kTurbine)], crank);
  s.box_in_rpm = rpm(x[speedOf(n, kBoxIn)], crank);
  const double with_wheels = s.dog_side * w.m.p.final_drive[n].ratio * x[speedOf(n, kWheel)];
  s.box_out_rpm = rpm(x[speedOf(n, kBoxOut)], with_wheels);
}

void takeHeat(const World& w, std::size_t n, LineStart& s) {
  const State& x = w.x;
  const auto celsius = [&](std::size_t which) { return q::kelvinToCelsius(x[stateOf(n, which)]); };
  s.coolant_c = celsius(kCoolantK);
  s.oil_c = celsius(kOilK);
  s.box_oil_c = celsius(kBoxOilK);
  s.coupling_c = celsius(kCouplingK);
  s.wall_c = unlessUsual(celsius(kWallK), s.coolant_c);
  s.starter_c = unlessUsual(celsius(kStarterK), q::kelvinToCelsius(w.m.d.gas_k));
  s.drum1_c = unlessUsual(celsius(kDrumK), s.box_oil_c);
  s.drum2_c = unlessUsual(celsius(kDrumK + 1), s.box_oil_c);
  s.drum3_c = unlessUsual(celsius(kDrumK + 2), s.box_oil_c);
  s.clutch_c = unlessUsual(celsius(kClutchK), s.box_oil_c);
}

void takeAir(const LineReadings& r, LineStart& s) {
  s.gear_psi = 0.0;
  s.gear1_psi = unlessUsual(psiOf(r.gear_pa[0]), 0.0);
  s.gear2_psi = unlessUsual(psiOf(r.gear_pa[1]), 0.0);
  s.gear3_psi = unlessUsual(psiOf(r.gear_pa[2]), 0.0);
  s.gear4_psi = unlessUsual(psiOf(r.gear_pa[3]), 0.0);
  s.throttle_psi = unlessUsual(psiOf(r.throttle_motor_pa), 0.0);
  s.shift_forward_psi = unlessUsual(psiOf(r.shift_forward_pa), 0.0);
  s.shift_reverse_psi = unlessUsual(psiOf(r.shift_reverse_pa), 0.0);
}

void takeLine(const World& w, const LineReadings& r, std::size_t n, LineStart& s) {
  const State& x = w.x;
  const LineFlags& flag = w.m.flags[n];
  const bool meshed = flag.dog == DogState::kMeshed;
  s.dog_side = meshed ? flag.dog_side : 0.0;
  // In mesh the angle says nothing any more.
  const double degrees = r.tooth_phase_rad * kDegreesPerTurn / (2.0 * q::kPi);
  s.tooth_phase_deg = meshed ? LineStart{}.tooth_phase_deg : degrees;
  s.latch_tripped = flag.latch_tripped ? 1.0 : 0.0;
  s.protection_tripped = unlessUsual(flag.protection_tripped ? 1.0 : 0.0, 0.0);
  s.compressor_loaded = unlessUsual(flag.compressor_loaded ? 1.0 : 0.0, 1.0);
  s.lever = unlessUsual(x[stateOf(n, kLever)], 0.0);
  const bool stopped = x[speedOf(n, kCrank)] == 0.0;
  s.rack = stopped ? unlessUsual(x[stateOf(n, kRack)], 0.0) : x[stateOf(n, kRack)];
  s.trapped_air = x[stateOf(n, kTrapped)];
  s.fuel_kg = x[stateOf(n, kFuelKg)];
  s.coolant_level = x[stateOf(n, kCoolantLevel)];
  takeSpeeds(w, n, s);
  takeHeat(w, n, s);
  takeAir(r, s);
}

void takeBrake(const World& w, const PlantReadings& r, StartConditions& s) {
  s.train_pipe_inhg = inHgOf(r.train_pipe_pa);
  s.release_pipe_inhg = inHgOf(r.release_pipe_pa);
  s.chamber_inhg = inHgOf(r.chamber_pa[0]);
  double* const chamber[] = {&s.chamber1_inhg, &s.chamber2_inhg, &s.chamber3_inhg,
                             &s.chamber4_inhg};
  double* const piston[] = {&s.piston1_mm, &s.piston2_mm, &s.piston3_mm, &s.piston4_mm};
  for (std::size_t c = 0; c < kCylinders; ++c) {
    *chamber[c] = unlessUsual(inHgOf(r.chamber_pa[c]), s.chamber_inhg);
    // Released pistons are down, without a word.
    const CylinderParameters& y = w.m.p.brake_cylinder[c];
    const double net = w.m.d.piston_area[c] * (r.train_pipe_pa - r.chamber_pa[c]) - y.spring_n;
    const bool rests = w.x[kPiston + c] == 0.0 && net + y.stick_n <= 0.0;
    *piston[c] = rests ? kUsual : w.x[kPiston + c] * kMmPerMetre;
  }
}

}  // namespace

StartConditions Plant::calcStart() const {
  const World& w = *world_;
  const PlantReadings& r = readings();
  StartConditions s;
  s.ambient_c = q::kelvinToCelsius(w.m.d.gas_k);
  s.main_psi = psiOf(r.main_reservoir_pa);
  s.control_psi = psiOf(r.control_reservoir_pa);
  s.battery_charge = w.x[kCharge];
  s.polarisation_v = unlessUsual(w.x[kPolarisationV], 0.0);
  s.position_m = w.x[kPosition];
  s.speed_mph = q::mpsToMph(w.x[kTrain]);
  for (std::size_t c = 0; c < kCabs; ++c) {
    s.cab[c].device_psi = psiOf(r.cab[c].device_pa);
  }
  takeBrake(w, r, s);
  for (std::size_t n = 0; n < kLines; ++n) takeLine(w, r.line[n], n, s.line[n]);
  for (const StartInfo& info : startTable()) {
    double& value = info.of(s);
    if (value != kUsual) value = std::clamp(value, info.lowest, info.highest);
  }
  return s;
}

}  // namespace cabwright::plant
