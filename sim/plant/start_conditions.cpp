// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/start_conditions.h"

#include <algorithm>

#include "plant/gas.h"
#include "plant/named_numbers.h"
#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

template <class T>
std::size_t offsetIn(const StartConditions& whole, const T& part) {
  return static_cast<std::size_t>(reinterpret_cast<const char*>(&part) -
                                  reinterpret_cast<const char*>(&whole));
}

std::vector<StartInfo> makeTable() {
  static const StartConditions proto;
  std::vector<StartInfo> table;
  std::string prefix;
#define CABWRIGHT_ADD(name, value, lo, hi, unit, text) \
  table.push_back({prefix + #name, offsetIn(proto, part.name), value, lo, hi, unit, text});
  {
    const StartConditions& part = proto;
    CABWRIGHT_START_UNIT(CABWRIGHT_ADD)
  }
  for (std::size_t n = 0; n < kLines; ++n) {
    prefix = "line" + std::to_string(n + 1) + ".";
    const LineStart& part = proto.line[n];
    CABWRIGHT_START_LINE(CABWRIGHT_ADD)
  }
  for (std::size_t c = 0; c < kCabs; ++c) {
    prefix = "cab" + std::to_string(c + 1) + ".";
    const CabStart& part = proto.cab[c];
    CABWRIGHT_START_CAB(CABWRIGHT_ADD)
  }
#undef CABWRIGHT_ADD
  return table;
}

// What a unit is left with: warm, air at the cut-out, brake applied from full vacuum.
constexpr double kLeftWarmC = 75.0, kLeftVacuumInHg = 21.0;
constexpr double kStandStepS = 1.0;

struct Standing {
  double control_pa, main_pa, release_pa, chamber_pa;
};

// The gas of a stabled unit leaks through the same orifices as in service; nothing else moves, so
// one-second steps of the explicit rule are fine (the quickest rate is under 0.02 per second).
Standing letLeak(Standing s, double seconds, const Parameters& p, double gas_k) {
  const FlowLaw air(p.air.critical_ratio), vacuum(p.vacuum.critical_ratio);
  const double rt = q::kAirGasConstant * gas_k;
  const double atmosphere = q::kStandardAtmospherePa;
  const double main = calcChokedFactor(p.air.main_leak_c, gas_k) * rt / p.air.main_m3;
  const double control = calcChokedFactor(p.air.control_leak_c, gas_k) * rt / p.air.control_m3;
  const double check = calcChokedFactor(p.air.check_c, gas_k) * rt;
  const double release =
      calcChokedFactor(p.vacuum.release_leak_c, gas_k) * rt / p.vacuum.release_m3;
  const CylinderParameters& y = p.brake_cylinder[0];
  const double chamber = calcChokedFactor(y.leak_c, gas_k) * rt / y.upper_m3;
  for (double t = 0.0; t < seconds; t += kStandStepS) {
    const double h = std::min(kStandStepS, seconds - t);
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
    s.chamber_pa += h * calcFlow(chamber, vacuum, atmosphere, s.chamber_pa);
  }
  return s;
}

}  // namespace

StartConditions StartConditions::afterStanding(double hours, double ambient_c,
                                               const Parameters& p) {
  StartConditions s;
  const double seconds = std::max(0.0, hours) * 3600.0;
  s.ambient_c = ambient_c;
  const double gas_k = q::celsiusToKelvin(ambient_c);
  Standing left{q::psiGaugeToPa(p.air.cut_out_psi), q::psiGaugeToPa(p.air.cut_out_psi),
                q::inHgVacuumToPa(25.0), q::inHgVacuumToPa(kLeftVacuumInHg)};
  left = letLeak(left, seconds, p, gas_k);
  s.main_psi = std::max(0.0, q::paToPsiGauge(left.main_pa));
  s.control_psi = std::max(0.0, q::paToPsiGauge(left.control_pa));
  s.release_pipe_inhg = std::max(0.0, q::paToInHgVacuum(left.release_pa));
  s.chamber_inhg = std::max(0.0, q::paToInHgVacuum(left.chamber_pa));
  s.battery_charge = std::max(
      0.0, 1.0 - p.battery.self_discharge_a * std::max(0.0, hours) / p.battery.capacity_ah);
  for (std::size_t n = 0; n < kLines; ++n) {
    const EngineParameters& e = p.engine[n];
    // Block, water and oil cool as one lump (they share heat far quicker than they lose it).
    const double tau =
        (e.coolant_capacity_j_k + e.oil_capacity_j_k) / (e.coolant_ambient_w_k + e.oil_ambient_w_k);
    const double left_c = ambient_c + (kLeftWarmC - ambient_c) * q::detExp(-seconds / tau);
    const double box_tau = p.gearbox[n].heat_j_k / p.gearbox[n].cooling_w_k;
    LineStart& line = s.line[n];
    line.coolant_c = left_c;
    line.oil_c = left_c;
    line.box_oil_c = ambient_c + (60.0 - ambient_c) * q::detExp(-seconds / box_tau);
    line.coupling_c = ambient_c + (60.0 - ambient_c) * q::detExp(-seconds * p.coupling[n].loss_w_k /
                                                                 p.coupling[n].heat_j_k);
    line.trapped_air = std::clamp(hours / 8.0, 0.0, 1.0);
  }
  return s;
}

double& StartInfo::of(StartConditions& s) const {
  return *reinterpret_cast<double*>(reinterpret_cast<char*>(&s) + offset);
}
double StartInfo::of(const StartConditions& s) const {
  return *reinterpret_cast<const double*>(reinterpret_cast<const char*>(&s) + offset);
}

const std::vector<StartInfo>& startTable() {
  static const std::vector<StartInfo> table = makeTable();
  return table;
}

std::vector<const StartInfo*> findStartConditions(std::string_view written) {
  return findNamed(startTable(), written);
}

}  // namespace cabwright::plant
