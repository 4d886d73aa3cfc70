// SPDX-License-Identifier: GPL-3.0-or-later
// How a world begins, and the accounts a test can hold it to.
#include <algorithm>
#include <utility>

#include "plant/brake_piston.h"
#include "plant/electrics.h"
#include "plant/running.h"
#include "plant/world.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

constexpr double kMetresPerMm = 0.001;

double radOr(double rpm, double usual) { return rpm == kUsual ? usual : q::rpmToRadPerSec(rpm); }
double kelvinOr(double celsius, double usual) {
  return celsius == kUsual ? usual : q::celsiusToKelvin(celsius);
}

void startLine(World& w, const StartConditions& start, std::size_t n) {
  const LineStart& s = start.line[n];
  Machine& m = w.m;
  State& x = w.x;
  const double rt = m.d.rt;
  const double crank = q::rpmToRadPerSec(s.crank_rpm);
  x[speedOf(n, kCrank)] = crank;
  x[speedOf(n, kTurbine)] = radOr(s.turbine_rpm, crank);
  x[speedOf(n, kBoxIn)] = radOr(s.box_in_rpm, crank);
  const double wheel = x[kTrain] / m.p.train.wheel_radius_m;
  x[speedOf(n, kWheel)] = wheel;

  LineFlags& flag = m.flags[n];
  flag.latch_tripped = s.latch_tripped > 0.5;
  flag.protection_tripped = orUsual(s.protection_tripped, 0.0) > 0.5;
  flag.compressor_loaded = orUsual(s.compressor_loaded, 1.0) > 0.5;
  flag.running = crank > 30.0;
  const double side = s.dog_side > 0.5 ? 1.0 : s.dog_side < -0.5 ? -1.0 : 0.0;
  flag.dog_side = static_cast<int>(side);
  flag.dog = side != 0.0 ? DogState::kMeshed : DogState::kMiddle;
  x[stateOf(n, kSleeve)] = side * m.p.final_drive[n].travel_m;
  x[speedOf(n, kBoxOut)] = radOr(s.box_out_rpm, side * m.p.final_drive[n].ratio * wheel);
  x[stateOf(n, kShaftAngle)] = q::degToRad(s.tooth_phase_deg) * m.p.final_drive[n].ratio;

  x[stateOf(n, kRack)] = orUsual(s.rack, crank > 30.0 ? m.p.engine[n].governor_idle_rack : 0.0);
  x[stateOf(n, kLever)] = orUsual(s.lever, 0.0);
  x[stateOf(n, kCoolantK)] = q::celsiusToKelvin(s.coolant_c);
  x[stateOf(n, kWallK)] = kelvinOr(s.wall_c, x[stateOf(n, kCoolantK)]);
  x[stateOf(n, kOilK)] = q::celsiusToKelvin(s.oil_c);
  x[stateOf(n, kBoxOilK)] = q::celsiusToKelvin(s.box_oil_c);
  x[stateOf(n, kCouplingK)] = q::celsiusToKelvin(s.coupling_c);
  x[stateOf(n, kStarterK)] = kelvinOr(s.starter_c, m.d.gas_k);
  const std::array<double, kBands + 1> drums{s.drum1_c, s.drum2_c, s.drum3_c, s.clutch_c};
  for (std::size_t b = 0; b <= kBands; ++b) {
    x[stateOf(n, kDrumK + b)] = kelvinOr(drums[b], x[stateOf(n, kBoxOilK)]);
  }
  x[stateOf(n, kTrapped)] = s.trapped_air;
  x[stateOf(n, kFuelKg)] = s.fuel_kg;
  x[stateOf(n, kCoolantLevel)] = s.coolant_level;

  const std::array<double, kGears> gears{s.gear1_psi, s.gear2_psi, s.gear3_psi, s.gear4_psi};
  for (std::size_t g = 0; g < kGears; ++g) {
    const double pa = q::psiGaugeToPa(orUsual(gears[g], s.gear_psi));
    x[stateOf(n, kGearMass + g)] = pa * calcCylinderVolume(m.d.gear_cylinder[n][g], pa) / rt;
  }
  const auto air = [](double psi) { return q::psiGaugeToPa(orUsual(psi, 0.0)); };
  x[stateOf(n, kThrottleMass)] = air(s.throttle_psi) * m.p.throttle_motor[n].volume_m3 / rt;
  const FinalDriveParameters& f = m.p.final_drive[n];
  const double sleeve = x[stateOf(n, kSleeve)];
  x[stateOf(n, kShiftForwardMass)] =
      air(s.shift_forward_psi) * (f.dead_m3 + f.piston_m2 * (f.travel_m + sleeve)) / rt;
  x[stateOf(n, kShiftReverseMass)] =
      air(s.shift_reverse_psi) * (f.dead_m3 + f.piston_m2 * (f.travel_m - sleeve)) / rt;
}

void startVacuum(World& w, const StartConditions& s) {
  const Machine& m = w.m;
  State& x = w.x;
  const double train_pa = q::inHgVacuumToPa(s.train_pipe_inhg);
  const std::array<double, kCylinders> chambers{s.chamber1_inhg, s.chamber2_inhg, s.chamber3_inhg,
                                                s.chamber4_inhg};
  const std::array<double, kCylinders> pistons{s.piston1_mm, s.piston2_mm, s.piston3_mm,
                                               s.piston4_mm};
  x[kReleaseMass] = q::inHgVacuumToPa(s.release_pipe_inhg) * m.p.vacuum.release_m3 / m.d.rt;
  double train_m3 = m.p.vacuum.train_m3;
  for (std::size_t c = 0; c < kCylinders; ++c) {
    const CylinderParameters& y = m.p.brake_cylinder[c];
    const double chamber_pa = q::inHgVacuumToPa(orUsual(chambers[c], s.chamber_inhg));
    const double net = m.d.piston_area[c] * (train_pa - chamber_pa) - y.spring_n + y.stick_n;
    const double resting = net > 0.0 ? y.take_up_m + net / y.rigging_n_m : 0.0;
    const double lift = pistons[c] == kUsual ? resting : pistons[c] * kMetresPerMm;
    x[kPiston + c] = lift;
    x[kChamberMass + c] =
        chamber_pa / (calcChamberPressure(y, m.d.piston_area[c], lift, 1.0) * m.d.rt);
    train_m3 += y.lower_m3 + m.d.piston_area[c] * lift;
  }
  x[kTrainMass] = train_pa * train_m3 / m.d.rt;
}

}  // namespace

World::World(const Parameters& p, const GradeProfile& grade, const StartConditions& start,
             std::unique_ptr<StepMethod> stepper)
    : method(std::move(stepper)) {
  m.p = p;
  m.d = calcDerived(p, q::celsiusToKelvin(start.ambient_c));
  m.grade = grade;
  x[kTrain] = q::mphToMps(start.speed_mph);
  x[kTrailingWheel] = x[kTrain] / p.train.wheel_radius_m;
  x[kPosition] = start.position_m;
  x[kMainMass] = q::psiGaugeToPa(start.main_psi) * p.air.main_m3 / m.d.rt;
  x[kControlMass] = q::psiGaugeToPa(start.control_psi) * p.air.control_m3 / m.d.rt;
  for (std::size_t c = 0; c < kCabs; ++c) {
    x[kDeviceMass + c] =
        q::psiGaugeToPa(start.cab[c].device_psi) * p.safety_device[c].volume_m3 / m.d.rt;
  }
  for (std::size_t c = 0; c < kCabs; ++c) {
    x[kHornMass + c] = q::kStandardAtmospherePa * p.air.horn_m3 / m.d.rt;
  }
  startVacuum(*this, start);
  for (std::size_t n = 0; n < kLines; ++n) startLine(*this, start, n);
  x[kCharge] = start.battery_charge;
  x[kPolarisationV] = orUsual(start.polarisation_v, 0.0);
  rolled_from_m = x[kPosition];
  modes.row.fill(RowMode::kPositive);
  resolveModes(m, x, modes);
}

namespace {

double calcStoredHeat(const Machine& m, const State& x, std::size_t n) {
  const EngineParameters& e = m.p.engine[n];
  const double a = m.d.gas_k;
  double heat = e.wall_capacity_j_k * (x[stateOf(n, kWallK)] - a) +
                e.oil_capacity_j_k * (x[stateOf(n, kOilK)] - a) +
                m.p.coupling[n].heat_j_k * (x[stateOf(n, kCouplingK)] - a) +
                m.p.gearbox[n].heat_j_k * (x[stateOf(n, kBoxOilK)] - a) +
                m.p.starter[n].heat_j_k * (x[stateOf(n, kStarterK)] - a) +
                m.p.gearbox[n].clutch.heat_j_k * (x[stateOf(n, kClutchK)] - a);
  const double level = std::clamp(x[stateOf(n, kCoolantLevel)], 0.0, 1.0);
  heat += e.coolant_capacity_j_k * (0.5 + 0.5 * level) * (x[stateOf(n, kCoolantK)] - a);
  for (std::size_t b = 0; b < kBands; ++b) {
    heat += m.p.gearbox[n].band[b].heat_j_k * (x[stateOf(n, kDrumK + b)] - a);
  }
  return heat;
}

}  // namespace

double calcStoredEnergy(const World& w) {
  const Machine& m = w.m;
  return calcKineticEnergy(m, w.x) + calcStoredHeat(m, w.x, 0) + calcStoredHeat(m, w.x, 1) +
         m.p.train.mass_kg * q::kStandardGravity * m.grade.calcHeight(w.x[kPosition]);
}

Accounts calcAccounts(const World& w) {
  const State& x = w.x;
  Accounts a;
  a.in_j = x[kFuelJ] + x[kBatteryJ];
  a.out_j = x[kExhaustJ] + x[kAmbientJ] + x[kAuxiliaryJ] + x[kResistanceJ] + x[kBlockJ] +
            x[kRailJ] + x[kBearingJ] + x[kElectricJ];
  a.stored_j = calcStoredEnergy(w);
  a.altered_j = w.altered_j;
  a.air_kg = x[kMainMass] + x[kControlMass];
  for (std::size_t c = 0; c < kCabs; ++c) a.air_kg += x[kDeviceMass + c] + x[kHornMass + c];
  for (std::size_t n = 0; n < kLines; ++n) {
    for (std::size_t k = kThrottleMass; k <= kShiftReverseMass; ++k) a.air_kg += x[stateOf(n, k)];
  }
  a.air_in_kg = x[kAirInKg];
  a.air_out_kg = x[kAirOutKg];
  a.vacuum_kg = x[kReleaseMass] + x[kTrainMass];
  for (std::size_t c = 0; c < kCylinders; ++c) a.vacuum_kg += x[kChamberMass + c];
  a.vacuum_in_kg = x[kVacuumInKg];
  a.vacuum_out_kg = x[kVacuumOutKg];
  return a;
}

}  // namespace cabwright::plant
