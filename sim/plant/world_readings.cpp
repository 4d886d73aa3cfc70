// SPDX-License-Identifier: GPL-3.0-or-later
// Truth as plain values, and the wear that is counted from it.
#include <algorithm>
#include <cmath>

#include "plant/electrics.h"
#include "plant/world.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

bool World::standing() const {
  return modes.row[kBreakawayRow] == RowMode::kLocked || std::abs(x[kTrain]) < 1e-4;
}

const PlantReadings& World::readings() const {
  if (readings_fresh_) return readings_;
  readings_fresh_ = true;
  State dx;
  Forces forces;
  calcRates(m, modes, x, dx, forces);
  const RowVector held = calcRowForces(modes, forces);
  PlantReadings& r = readings_;
  r.tick = tick;
  r.escape = calcEscapes(m, forces);
  r.ambient_k = m.d.gas_k;
  r.main_reservoir_pa = forces.main_pa;
  r.control_reservoir_pa = forces.control_pa;
  r.train_pipe_pa = forces.train_pa;
  r.release_pipe_pa = forces.release_pa;
  for (std::size_t c = 0; c < kCylinders; ++c) {
    r.chamber_pa[c] = forces.chamber_pa[c];
    r.block_force_n[c] = forces.block_n[c];
    r.piston_m[c] = x[kPiston + c];
  }
  for (std::size_t c = 0; c < kCabs; ++c) {
    const AirParameters& air = m.p.air;
    const double level = (q::paToPsiGauge(forces.horn_pa[c]) - air.horn_speaks_psi) /
                         (air.horn_full_psi - air.horn_speaks_psi);
    r.cab[c] = {forces.device_pa[c], forces.device_vent[c], forces.horn_pa[c],
                std::clamp(level, 0.0, 1.0)};
  }
  r.bus_v = forces.bus_v;
  r.battery_a = forces.battery_a;
  r.battery_charge = x[kCharge];
  r.battery_rest_v = calcRestVoltage(m.p.battery, x[kCharge]);
  r.standing = standing();
  r.speed_mps = r.standing ? 0.0 : x[kTrain];
  r.position_m = x[kPosition];
  r.acceleration_mps2 = dx[kTrain];
  r.gradient = m.grade.calcGradient(x[kPosition]);
  r.tractive_n = -(held[kRailRow] + held[kRailRow + 1]);
  const double radius = m.p.train.wheel_radius_m;
  r.brake_n =
      (std::abs(held[kBlockRow]) + std::abs(held[kBlockRow + 1]) + std::abs(held[kBlockRow + 2])) /
      radius;
  r.resistance_n = std::abs(held[kBreakawayRow]);
  r.trailing_wheel_rad_per_s = x[kTrailingWheel];
  r.trailing_slipping = modes.row[kRailRow + 2] != RowMode::kLocked && !r.standing;

  r.rolled_back_m = std::max(0.0, -rolled_sense * (x[kPosition] - rolled_from_m));
  r.out_of_validity = false;
  for (std::size_t n = 0; n < kLines; ++n) fillLine(n, forces, held);
  return r;
}

// Rolling back is against the way the dogs stand, counted from the last stand; dogs put over there
// count from there.
void World::noteRolling(bool stood) {
  int wanted = 0;
  for (const LineFlags& flag : m.flags) {
    if (flag.dog_side != 0) wanted = flag.dog_side;
  }
  if (stood && (!standing() || wanted != rolled_sense)) rolled_from_m = x[kPosition];
  rolled_sense = wanted;
}

double World::calcArmatureSpeed(std::size_t n) const {
  return m.flags[n].pinion_in ? std::abs(x[speedOf(n, kCrank)]) * m.p.starter[n].ratio : 0.0;
}

void World::fillLine(std::size_t n, const Forces& forces, const RowVector& held) const {
  LineReadings& r = readings_.line[n];
  const LineFlags& flag = m.flags[n];
  r.crank_rad_per_s = x[speedOf(n, kCrank)];
  r.rack = x[stateOf(n, kRack)];
  r.delivery = forces.delivery[n];
  r.fired_fraction = forces.fired[n];
  r.smoke = forces.unburnt[n];
  r.lever = std::max(x[stateOf(n, kLever)], m.u.line[n].hand_throttle);
  r.coolant_k = x[stateOf(n, kCoolantK)];
  r.oil_k = x[stateOf(n, kOilK)];
  r.wall_k = x[stateOf(n, kWallK)];
  r.oil_pressure_pa =
      calcOilPressure(m.p.engine[n], r.crank_rad_per_s, q::kelvinToCelsius(r.oil_k));
  r.trapped_air = x[stateOf(n, kTrapped)];
  r.fuel_kg = std::max(0.0, x[stateOf(n, kFuelKg)]);
  r.coolant_level = std::max(0.0, x[stateOf(n, kCoolantLevel)]);
  r.indicated_nm = forces.indicated_nm[n];
  r.friction_nm = forces.friction_nm[n];
  r.load_nm = forces.aux_nm[n] + forces.coupling_nm[n];
  r.fuel_latch_tripped = flag.latch_tripped;
  r.protection_tripped = flag.protection_tripped;
  r.running = flag.running;
  r.pinion_in = flag.pinion_in;
  r.starter_a = forces.starter_a[n];
  r.starter_k = x[stateOf(n, kStarterK)];
  r.starter_rad_per_s = calcArmatureSpeed(n);
  r.generator_a = forces.generator_a[n];
  r.turbine_rad_per_s = x[speedOf(n, kTurbine)];
  r.input_rad_per_s = x[speedOf(n, kBoxIn)];
  r.output_rad_per_s = x[speedOf(n, kBoxOut)];
  for (std::size_t b = 0; b < kBands; ++b) {
    r.drum_rad_per_s[b] = m.d.drum[n][b].calcSpeed(r.input_rad_per_s, r.output_rad_per_s);
    r.drum_k[b] = x[stateOf(n, kDrumK + b)];
    r.gear_locked[b] = modes.row[kBandRow + n * kBands + b] == RowMode::kLocked &&
                       forces.gear_pa[n * kGears + b] > m.d.gear_cylinder[n][b].end_pa;
  }
  for (std::size_t g = 0; g < kGears; ++g) r.gear_pa[g] = forces.gear_pa[n * kGears + g];
  r.gear_locked[kBands] = modes.row[kClutchRow + n] == RowMode::kLocked &&
                          r.gear_pa[kBands] > m.d.gear_cylinder[n][kBands].end_pa;
  r.clutch_k = x[stateOf(n, kClutchK)];
  r.coupling_nm = forces.coupling_nm[n];
  r.coupling_k = x[stateOf(n, kCouplingK)];
  r.box_oil_k = x[stateOf(n, kBoxOilK)];
  r.freewheel_locked = modes.row[kFreewheelRow + n] == RowMode::kLocked;
  r.output_nm = -held[kDogRow + n] / m.p.final_drive[n].ratio;
  r.dog = flag.dog;
  r.dog_side = flag.dog_side;
  r.sleeve_m = x[stateOf(n, kSleeve)];
  r.tooth_phase_rad = calcToothPhase(m, x, n, flag.dog_side);
  r.shift_forward_pa = forces.shift_forward_pa[n];
  r.shift_reverse_pa = forces.shift_reverse_pa[n];
  r.throttle_motor_pa = forces.throttle_pa[n];
  r.compressor_loaded = flag.compressor_loaded && r.crank_rad_per_s > 1.0;
  r.wheel_rad_per_s = x[speedOf(n, kWheel)];
  r.wheel_slipping = modes.row[kRailRow + n] != RowMode::kLocked && !readings_.standing;
  const Wear& worn = wear[n];
  r.wear_race_cold_rev = worn.race_cold_rev;
  r.wear_lug_j = worn.lug_j;
  r.wear_overspeed_rad = worn.overspeed_rad;
  r.wear_band_j = worn.band_j;
  r.wear_dog = worn.dog_j;
  r.wear_starter_ks = worn.starter_ks;
  r.wear_starter_rad = worn.starter_rad;
  r.crank_s = worn.crank_s;
  // Ranges the parts were checked in: twice governed speed, oil and drums not yet burning.
  const double governed = q::rpmToRadPerSec(m.p.engine[n].governor_rpm_4);
  readings_.out_of_validity = readings_.out_of_validity || r.crank_rad_per_s > 1.5 * governed ||
                              r.input_rad_per_s > 5.0 * governed || r.coupling_k > 473.0 ||
                              r.drum_k[0] > 900.0 || r.drum_k[1] > 900.0 || r.drum_k[2] > 900.0 ||
                              std::abs(readings_.speed_mps) > 40.0;
}

namespace {
constexpr double kColdOilC = 40.0, kFastIdleRpm = 900.0, kLuggingRpm = 900.0;
}

// Rectangles over a tick are enough for what only counts.
void World::addWear() {
  const double h = q::kTickSeconds;
  for (std::size_t n = 0; n < kLines; ++n) {
    Wear& worn = wear[n];
    const double crank = x[speedOf(n, kCrank)], input = x[speedOf(n, kBoxIn)];
    const double rpm = q::radPerSecToRpm(crank);
    if (rpm > kFastIdleRpm && q::kelvinToCelsius(x[stateOf(n, kOilK)]) < kColdOilC) {
      worn.race_cold_rev += crank * h / (2.0 * q::kPi);
    }
    if (m.flags[n].running && rpm < kLuggingRpm && x[stateOf(n, kRack)] > 0.9) {
      worn.lug_j += m.d.torque[n].calcIndicated(crank) * x[stateOf(n, kRack)] * crank * h;
    }
    const double safe = q::rpmToRadPerSec(m.p.gearbox[n].safe_input_rpm);
    worn.overspeed_rad += std::max(0.0, std::abs(input) - safe) * h;
    worn.band_j += h * calcBandPower(n);
    if (m.flags[n].dog == DogState::kRattling) {
      const FinalDriveParameters& f = m.p.final_drive[n];
      const double rub = f.tooth_friction * f.push_n * f.tooth_radius_m;
      worn.dog_j += rub * std::abs(rowSpeed(m.shapeOf(kDogRow + n), x)) * h;
    }
    const double over = x[stateOf(n, kStarterK)] - q::celsiusToKelvin(m.p.starter[n].limit_c);
    worn.starter_ks += std::max(0.0, over) * h;
    const double fastest = q::rpmToRadPerSec(m.p.starter[n].safe_rpm);
    worn.starter_rad += std::max(0.0, calcArmatureSpeed(n) - fastest) * h;
    worn.crank_s = m.u.line[n].starter_contactor ? worn.crank_s + h : 0.0;
  }
}

// Friction power of bands and clutch while they slip under air, W.
double World::calcBandPower(std::size_t n) const {
  double power = 0.0;
  const double input = x[speedOf(n, kBoxIn)], output = x[speedOf(n, kBoxOut)];
  for (std::size_t g = 0; g < kGears; ++g) {
    const std::size_t row = g < kBands ? kBandRow + n * kBands + g : kClutchRow + n;
    if (modes.row[row] == RowMode::kLocked) continue;
    const SpringCylinder& cylinder = m.d.gear_cylinder[n][g];
    const double mass = x[stateOf(n, kGearMass + g)];
    // Below the closing pressure there is no grip: no need to work the pressure out.
    if (mass * m.d.rt <= cylinder.end_pa * (cylinder.dead_m3 + cylinder.swept_m3)) continue;
    const double over = calcCylinderPressure(cylinder, mass, m.d.gas_k) - cylinder.end_pa;
    if (g == kBands) {
      power +=
          over * m.p.gearbox[n].clutch.capacity_nm_psi / q::kPaPerPsi * std::abs(input - output);
      continue;
    }
    const BandParameters& band = m.p.gearbox[n].band[g];
    const double speed = m.d.drum[n][g].calcSpeed(input, output);
    const double gain = speed < 0.0 ? m.d.band[n][g].energising : m.d.band[n][g].opposing;
    power += over * band.leverage * band.piston_m2 * gain * std::abs(speed);
  }
  return power;
}

}  // namespace cabwright::plant
