// SPDX-License-Identifier: GPL-3.0-or-later
// What a night does to a unit: air and vacuum leak, the battery gives, everything cools.
#include <algorithm>

#include "plant/brake_piston.h"
#include "plant/electrics.h"
#include "plant/gas.h"
#include "plant/start_conditions.h"
#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

// What a unit is left with: warm, air at the cut-out, brake applied from full vacuum.
constexpr double kLeftWarmC = 75.0, kLeftDriveWarmC = 60.0;
constexpr double kLeftVacuumInHg = 21.0, kLeftReleaseInHg = 25.0;
constexpr double kFullAirLossHours = 8.0;  // until the fuel system holds as much air as it takes
constexpr double kLeakStepS = 1.0, kBatteryStepS = 60.0;

struct Standing {
  double control_pa, main_pa, release_pa, chamber_mrt_j;
};

double calcTravel(const CylinderParameters& y, double chamber_mrt_j) {
  const double area = 0.25 * q::kPi * y.bore_m * y.bore_m;
  return calcRestingTravel(y, area, q::kStandardAtmospherePa, chamber_mrt_j);
}
double calcChamber(const CylinderParameters& y, double chamber_mrt_j) {
  const double area = 0.25 * q::kPi * y.bore_m * y.bore_m;
  return calcChamberPressure(y, area, calcTravel(y, chamber_mrt_j), chamber_mrt_j);
}

// The air above a piston that has come up against this vacuum above it.
double calcAppliedMrt(const CylinderParameters& y, double chamber_pa) {
  const double area = 0.25 * q::kPi * y.bore_m * y.bore_m;
  const double net = area * (q::kStandardAtmospherePa - chamber_pa) - y.spring_n + y.stick_n;
  const double travel = net > 0.0 ? y.take_up_m + net / y.rigging_n_m : 0.0;
  return chamber_pa / calcChamberPressure(y, area, travel, 1.0);
}

// The gas of a stabled unit leaks through the same orifices as in service, and each piston stands
// where its forces balance; nothing else moves, so one-second steps of the explicit rule are fine
// (the quickest rate is under 0.02 per second).
Standing letLeak(Standing s, double seconds, const Parameters& p, double gas_k) {
  const FlowLaw air(p.air.critical_ratio), vacuum(p.vacuum.critical_ratio);
  const double rt = q::kAirGasConstant * gas_k;
  const double atmosphere = q::kStandardAtmospherePa;
  const double main = calcChokedFactor(calcMainLeakC(p.air), gas_k) * rt / p.air.main_m3;
  const double control = calcChokedFactor(p.air.control_leak_c, gas_k) * rt / p.air.control_m3;
  const double check = calcChokedFactor(p.air.check_c, gas_k) * rt;
  double release_c = p.vacuum.release_leak_c;
  for (const ExhausterParameters& e : p.exhauster) release_c += e.backflow_c;
  const double release = calcChokedFactor(release_c, gas_k) * rt / p.vacuum.release_m3;
  const CylinderParameters& y = p.brake_cylinder[0];
  // The train pipe is empty: what passes the ball valve the wrong way comes from the atmosphere.
  const double chamber = calcChokedFactor(y.leak_c + y.ball_leak_c, gas_k) * rt;
  for (double t = 0.0; t < seconds; t += kLeakStepS) {
    const double h = std::min(kLeakStepS, seconds - t);
    s.main_pa -= h * calcFlow(main, air, s.main_pa, atmosphere);
    s.control_pa -= h * calcFlow(control, air, s.control_pa, atmosphere);
    // The check valve keeps the control reservoir at least at the main one's pressure; what passes
    // settles at once on this scale.
    if (check > 0.0 && s.main_pa > s.control_pa) {
      const double both = (s.main_pa * p.air.main_m3 + s.control_pa * p.air.control_m3) /
                          (p.air.main_m3 + p.air.control_m3);
      s.main_pa = s.control_pa = both;
    }
    s.release_pa += h * calcFlow(release, vacuum, atmosphere, s.release_pa);
    s.chamber_mrt_j += h * calcFlow(chamber, vacuum, atmosphere, calcChamber(y, s.chamber_mrt_j));
  }
  return s;
}

// The battery under what was left on: the same bus as in service with everything standing, its
// polarisation long settled.
double letDischarge(double hours, double ambient_c, const Parameters& p, const LeftOn& on) {
  const BatteryParameters& b = p.battery;
  BusInputs in;
  in.source_ohm = calcBatteryResistance(b, ambient_c) + b.polarisation_ohm;
  in.charge_ohm = in.source_ohm;
  in.load_s = on.battery_switch_closed ? on.load_s + b.earth_s : 0.0;
  double charge = 1.0;
  for (double t = 0.0; t < hours * 3600.0 && charge > 0.0; t += kBatteryStepS) {
    const double h = std::min(kBatteryStepS, hours * 3600.0 - t);
    in.source_v = std::max(0.0, calcSourceVoltage(b, charge));
    const double drawn_a = in.load_s > 0.0 ? solveBus(p, in).battery_a : 0.0;
    charge -= h * (drawn_a + b.self_discharge_a) / (b.capacity_ah * 3600.0);
  }
  return std::max(0.0, charge);
}

// Block, water and oil cool as one lump (they share heat far quicker than they lose it).
void letCool(double seconds, double ambient_c, const Parameters& p, std::size_t n,
             LineStart& line) {
  const auto left = [&](double from_c, double w_k, double j_k) {
    return ambient_c + (from_c - ambient_c) * q::detExp(-seconds * w_k / j_k);
  };
  const EngineParameters& e = p.engine[n];
  line.coolant_c = left(kLeftWarmC, e.coolant_ambient_w_k + e.oil_ambient_w_k,
                        e.coolant_capacity_j_k + e.oil_capacity_j_k);
  line.oil_c = line.coolant_c;
  line.box_oil_c = left(kLeftDriveWarmC, p.gearbox[n].cooling_w_k, p.gearbox[n].heat_j_k);
  line.coupling_c = left(kLeftDriveWarmC, p.coupling[n].loss_w_k, p.coupling[n].heat_j_k);
}

}  // namespace

StartConditions StartConditions::afterStanding(double hours, double ambient_c, const Parameters& p,
                                               const LeftOn& on) {
  StartConditions s;
  hours = std::max(0.0, hours);
  s.ambient_c = ambient_c;
  const double gas_k = q::celsiusToKelvin(ambient_c);
  const CylinderParameters& y = p.brake_cylinder[0];
  Standing left{q::psiGaugeToPa(p.air.cut_out_psi), q::psiGaugeToPa(p.air.cut_out_psi),
                q::inHgVacuumToPa(kLeftReleaseInHg),
                calcAppliedMrt(y, q::inHgVacuumToPa(kLeftVacuumInHg))};
  left = letLeak(left, hours * 3600.0, p, gas_k);
  s.main_psi = std::max(0.0, q::paToPsiGauge(left.main_pa));
  s.control_psi = std::max(0.0, q::paToPsiGauge(left.control_pa));
  s.release_pipe_inhg = std::max(0.0, q::paToInHgVacuum(left.release_pa));
  s.chamber_inhg = std::max(0.0, q::paToInHgVacuum(calcChamber(y, left.chamber_mrt_j)));
  s.battery_charge = letDischarge(hours, ambient_c, p, on);
  for (std::size_t n = 0; n < kLines; ++n) {
    letCool(hours * 3600.0, ambient_c, p, n, s.line[n]);
    s.line[n].trapped_air = std::clamp(hours / kFullAirLossHours, 0.0, 1.0);
  }
  return s;
}

}  // namespace cabwright::plant
