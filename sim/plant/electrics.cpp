// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/electrics.h"

#include <algorithm>
#include <cmath>

#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {
constexpr double kGivesOutBelow = 0.01;  // share of full
}

namespace {
double calcGivenCharge(const BatteryParameters& p, double charge) {
  return std::clamp(charge - p.lost_share, 0.0, 1.0);
}
}  // namespace

double calcRestVoltage(const BatteryParameters& p, double charge) {
  return p.empty_v + (p.full_v - p.empty_v) * calcGivenCharge(p, charge) - p.dead_cells_v;
}

double calcSourceVoltage(const BatteryParameters& p, double charge) {
  return calcRestVoltage(p, charge) *
         std::clamp(calcGivenCharge(p, charge) / kGivesOutBelow, 0.0, 1.0);
}

double calcBatteryResistance(const BatteryParameters& p, double ambient_c) {
  return p.resistance_ohm * std::max(0.5, 1.0 + p.resistance_cold_per_k * (25.0 - ambient_c));
}

double calcChargeResistance(const BatteryParameters& p, double ambient_c, double charge) {
  const double full =
      std::clamp((charge - p.acceptance_from) / (1.0 - p.acceptance_from), 0.0, 1.0);
  return calcBatteryResistance(p, ambient_c) + p.acceptance_ohm * full;
}

double calcTerminalVoltage(double rest_v, double resistance_ohm, double current_a) {
  return rest_v - current_a * resistance_ohm;
}

double calcStarterCurrent(const StarterParameters& p, double terminal_v, double motor_rad_per_s) {
  const double v = terminal_v - p.brush_v;
  if (v <= 0.0 || p.health <= 0.0) return 0.0;
  // (v - I R)(I + knee) = k0 w I:  R I^2 + (R knee + k0 w - v) I - v knee = 0
  const double w = std::max(0.0, motor_rad_per_s);
  const double half = 0.5 * (p.resistance_ohm * p.knee_a + p.torque_constant * w - v);
  return (std::sqrt(half * half + p.resistance_ohm * v * p.knee_a) - half) / p.resistance_ohm *
         p.health;
}

double calcStarterTorque(const StarterParameters& p, double current_a) {
  return p.torque_constant * current_a * current_a / (current_a + p.knee_a);
}

double calcDrivenArmatureTorque(const StarterParameters& p, double crank_rad_per_s) {
  constexpr double kDragFades = 0.5;  // rad/s of the crank: no drag at rest
  const double speed = std::abs(crank_rad_per_s);
  const double drag = p.drag_nm + p.drag_nm_s * speed * p.ratio;
  return drag * p.ratio * crank_rad_per_s / (speed + kDragFades);
}

double calcGeneratorLimit(const GeneratorParameters& p, double crank_rad_per_s) {
  const double rpm = q::radPerSecToRpm(std::abs(crank_rad_per_s));
  const double share = std::clamp((rpm - p.cut_in_rpm) / (p.full_rpm - p.cut_in_rpm), 0.0, 1.0);
  return share * p.health * p.power_w / p.set_v;
}

namespace {

enum class Regime { kOff, kRegulating, kLimited };

// Without starters the balance is a broken straight line in the voltage: settle which piece each
// generator is on, at most a few passes because the balance falls steadily.
double solveCharging(const Parameters& p, const BusInputs& in,
                     const std::array<double, kLines>& limit, double battery_ohm) {
  std::array<Regime, kLines> regime{};
  for (std::size_t n = 0; n < kLines; ++n) {
    regime[n] = limit[n] > 0.0 ? Regime::kRegulating : Regime::kOff;
  }
  double v = 0.0;
  for (int pass = 0; pass < 8; ++pass) {
    double current = in.source_v / battery_ohm, conductance = 1.0 / battery_ohm + in.load_s;
    for (std::size_t n = 0; n < kLines; ++n) {
      const GeneratorParameters& g = p.generator[n];
      if (regime[n] == Regime::kLimited) current += limit[n];
      if (regime[n] == Regime::kRegulating) {
        current += g.set_v / g.regulator_ohm;
        conductance += 1.0 / g.regulator_ohm;
      }
    }
    v = current / conductance;
    bool settled = true;
    for (std::size_t n = 0; n < kLines; ++n) {
      if (limit[n] <= 0.0) continue;
      const double wanted = (p.generator[n].set_v - v) / p.generator[n].regulator_ohm;
      const Regime right = wanted <= 0.0       ? Regime::kOff
                           : wanted > limit[n] ? Regime::kLimited
                                               : Regime::kRegulating;
      settled = settled && right == regime[n];
      regime[n] = right;
    }
    if (settled) break;
  }
  return v;
}

BusState calcAt(const Parameters& p, const BusInputs& in, const std::array<double, kLines>& limit,
                double v) {
  BusState s;
  s.bus_v = v;
  s.battery_a = in.load_s * v;
  for (std::size_t n = 0; n < kLines; ++n) {
    s.generator_a[n] =
        std::clamp((p.generator[n].set_v - v) / p.generator[n].regulator_ohm, 0.0, limit[n]);
    if (in.starter_on[n]) {
      s.starter_a[n] = calcStarterCurrent(p.starter[n], v, in.motor_rad_per_s[n]);
    }
    s.battery_a += s.starter_a[n] - s.generator_a[n];
  }
  return s;
}

// With a starter in the balance is curved: Illinois false position, to the last bits.
double solveCranking(const Parameters& p, const BusInputs& in,
                     const std::array<double, kLines>& limit) {
  const auto surplus = [&](double v) {
    const double ohm = v > in.source_v ? in.charge_ohm : in.source_ohm;
    return (in.source_v - v) / ohm - calcAt(p, in, limit, v).battery_a;
  };
  double lo = 0.0;
  double hi = std::max({in.source_v, p.generator[0].set_v, p.generator[1].set_v}) + 1.0;
  double g_lo = surplus(lo), g_hi = surplus(hi), v = hi;
  int side = 0;
  for (int k = 0; k < 80 && hi - lo > 1e-12 * hi; ++k) {
    v = (lo * g_hi - hi * g_lo) / (g_hi - g_lo);
    const double g = surplus(v);
    if (std::abs(g) < 1e-10) break;
    double& end = g > 0.0 ? lo : hi;
    double& g_end = g > 0.0 ? g_lo : g_hi;
    double& g_other = g > 0.0 ? g_hi : g_lo;
    const int now = g > 0.0 ? 1 : -1;
    end = v;
    g_end = g;
    if (side == now) g_other *= 0.5;
    side = now;
  }
  return v;
}

}  // namespace

BusState solveBus(const Parameters& p, const BusInputs& in) {
  std::array<double, kLines> limit{};
  for (std::size_t n = 0; n < kLines; ++n) {
    limit[n] = calcGeneratorLimit(p.generator[n], in.crank_rad_per_s[n]);
  }
  if (in.starter_on[0] || in.starter_on[1]) {
    return calcAt(p, in, limit, solveCranking(p, in, limit));
  }
  // Whether the battery gives or takes is the same with either resistance.
  const double giving = solveCharging(p, in, limit, in.source_ohm);
  const bool takes = giving > in.source_v && in.charge_ohm > in.source_ohm;
  return calcAt(p, in, limit, takes ? solveCharging(p, in, limit, in.charge_ohm) : giving);
}

}  // namespace cabwright::plant
