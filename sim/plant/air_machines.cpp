// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/air_machines.h"

#include <algorithm>
#include <cmath>

#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

CompressionPowers calcCompressionPowers(double polytropic, double inlet_pa, double delivery_pa) {
  CompressionPowers powers;
  powers.ratio = std::max(1.0, delivery_pa / inlet_pa);
  powers.volume = q::detPow(powers.ratio, 1.0 / polytropic);
  powers.work = powers.ratio / powers.volume;
  return powers;
}

double calcVolumetricEfficiency(double clearance, const CompressionPowers& powers) {
  return std::max(0.0, 1.0 + clearance - clearance * powers.volume);
}

double calcCompressionWork(double polytropic, double inlet_pa, double drawn_m3,
                           const CompressionPowers& powers) {
  // n -> 1 is the isothermal limit, ln r.
  if (polytropic <= 1.0 + 1e-9) return inlet_pa * drawn_m3 * q::detLog(powers.ratio);
  return inlet_pa * drawn_m3 * (powers.work - 1.0) * polytropic / (polytropic - 1.0);
}

AirMachineFlow calcCompressor(const CompressorParameters& p, double crank_rad_per_s, bool loaded,
                              double inlet_pa, const CompressionPowers& powers, double gas_k) {
  AirMachineFlow flow;
  if (p.belt <= 0.0) return flow;
  flow.torque_nm = p.windage_nm * p.belt;
  if (!loaded) return flow;
  const double drawn_m3 =
      p.swept_l_rev * 1e-3 * p.belt * calcVolumetricEfficiency(p.clearance, powers);
  const double revs = std::abs(crank_rad_per_s) / (2.0 * q::kPi);
  flow.mass_kg_s = revs * drawn_m3 * inlet_pa / (q::kAirGasConstant * gas_k);
  flow.torque_nm +=
      calcCompressionWork(p.polytropic, inlet_pa, drawn_m3, powers) / (2.0 * q::kPi * p.efficiency);
  return flow;
}

AirMachineFlow calcExhauster(const ExhausterParameters& p, double crank_rad_per_s, double inlet_pa,
                             double log_ratio, double gas_k) {
  AirMachineFlow flow;
  if (p.belt <= 0.0) return flow;
  const double swept_m3 = p.swept_l_rev * 1e-3 * p.belt;
  const double drawn_pa = std::max(0.0, inlet_pa - p.ultimate_pa);
  const double revs = std::abs(crank_rad_per_s) / (2.0 * q::kPi);
  flow.mass_kg_s = revs * swept_m3 * drawn_pa / (q::kAirGasConstant * gas_k);
  // Per turn: drawn mass x R T ln(p_atm/p) over the efficiency.
  flow.torque_nm = p.windage_nm * p.belt +
                   swept_m3 * drawn_pa * std::max(0.0, log_ratio) / (2.0 * q::kPi * p.efficiency);
  return flow;
}

}  // namespace cabwright::plant
