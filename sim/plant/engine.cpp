// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/engine.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {
constexpr double kWorkingOilC = 80.0;

double clampedDivisor(double speed) { return std::max(speed, 0.5); }
}  // namespace

double calcLogViscosityRatio(const EngineParameters& p, double temperature_c) {
  const double t = std::max(temperature_c, -50.0);
  return p.vogel_b_c / (t + p.vogel_c_c) - p.vogel_b_c / (kWorkingOilC + p.vogel_c_c);
}

double calcViscosity(const EngineParameters& p, double temperature_c) {
  return p.vogel_a_pa_s * q::detExp(p.vogel_b_c / (temperature_c + p.vogel_c_c));
}

double calcFrictionMep(const EngineParameters& p, double viscosity_factor, double peak_bar,
                       double piston_mps) {
  return p.fmep_viscous_bar * viscosity_factor + p.fmep_pressure * peak_bar +
         p.fmep_speed_bar * piston_mps * std::sqrt(viscosity_factor) +
         p.fmep_speed2_bar * piston_mps * piston_mps;
}

double calcMepTorque(double mep_bar, double displacement_m3) {
  return mep_bar * 1e5 * displacement_m3 / (4.0 * q::kPi);
}

double calcPistonSpeed(const EngineParameters& p, double crank_rad_per_s) {
  return 2.0 * p.stroke_m * crank_rad_per_s / (2.0 * q::kPi);
}

double calcPeakPressure(double delivery) { return 40.0 + 35.0 * delivery; }

EngineLogs::EngineLogs(const EngineParameters& p)
    : compression_ratio(q::detLog(p.compression_ratio)),
      charge_bar(
          q::detLog(p.charge_factor * p.compression_sealing * (q::kStandardAtmospherePa * 1e-5))),
      firing_ref_bar(q::detLog(p.firing_ref_bar)),
      firing_ref_speed(q::detLog(p.firing_ref_speed)),
      firing_ratio(q::detLog(p.firing_ratio)) {}

Compression calcCompression(const EngineParameters& p, const EngineLogs& logs,
                            double crank_rad_per_s, double ambient_k, double wall_k) {
  Compression end;
  const double speed = std::abs(crank_rad_per_s);
  end.exponent = p.polytropic_hot - p.polytropic_drop * q::detExp(-speed / p.polytropic_decay);
  const double start_k =
      ambient_k + p.intake_warming_k + p.wall_warming * std::max(0.0, wall_k - ambient_k);
  const double log_rise = (end.exponent - 1.0) * logs.compression_ratio;
  const double rise = q::detExp(log_rise);
  end.temperature_k = start_k * rise;
  end.pressure_bar = p.charge_factor * p.compression_sealing * rise * p.compression_ratio *
                     (q::kStandardAtmospherePa * 1e-5);
  end.log_pressure = logs.charge_bar + log_rise + logs.compression_ratio;
  return end;
}

double calcFiredFraction(const EngineParameters& p, const EngineLogs& logs, const Compression& end,
                         double crank_rad_per_s) {
  const double speed = std::abs(crank_rad_per_s);
  if (speed < 0.5) return 0.0;
  const double log_r = logs.firing_ratio -
                       p.firing_pressure_exponent * (end.log_pressure - logs.firing_ref_bar) +
                       p.firing_activation_k * (1.0 / end.temperature_k - 1.0 / p.firing_ref_k) +
                       p.firing_speed_exponent * (q::detLog(speed) - logs.firing_ref_speed);
  const double raised = p.firing_steepness * log_r;
  if (raised > 60.0) return 0.0;
  return 1.0 / (1.0 + q::detExp(raised));
}

double calcDelivery(const EngineParameters& p, double rack, double crank_rad_per_s) {
  const double speed = std::abs(crank_rad_per_s);
  const double lost = std::max(
      0.0, p.delivery_leak / clampedDivisor(speed) - p.delivery_leak / p.delivery_leak_speed);
  return std::clamp(rack - lost, 0.0, 1.0);
}

double calcGovernorRack(const EngineParameters& p, const ThrottleMotorParameters& m, double lever,
                        double crank_rad_per_s) {
  const double idle_speed = q::rpmToRadPerSec(p.governor_idle_rpm);
  const double factor = p.governor_gain_factor;
  const double idle = std::clamp(
      p.governor_idle_rack + p.governor_idle_gain * factor * (idle_speed - crank_rad_per_s), 0.0,
      p.governor_idle_limit);
  if (lever <= 0.0) return idle;
  // Set speed over the lever: idle at rest, then the notches' unloaded speeds, straight between.
  const std::array<double, 5> at{0.0, m.opening_1, m.opening_2, m.opening_3, m.opening_4};
  const std::array<double, 5> rpm{p.governor_idle_rpm, p.governor_rpm_1, p.governor_rpm_2,
                                  p.governor_rpm_3, p.governor_rpm_4};
  double set_rpm = rpm[4];
  for (std::size_t k = 1; k < at.size(); ++k) {
    if (lever < at[k]) {
      set_rpm = rpm[k - 1] + (rpm[k] - rpm[k - 1]) * (lever - at[k - 1]) / (at[k] - at[k - 1]);
      break;
    }
  }
  // The lever limits the rack too, but never below what the idle spring may ask: a cold engine
  // could not hold its fast idle otherwise.
  const double most = std::max(lever, p.governor_idle_limit);
  // Idle spring and main spring share the rack below notch 1: the law has no step as the lever
  // comes home.
  const double share = std::min(1.0, lever / at[1]);
  const double unloaded =
      p.governor_idle_rack + share * (p.governor_rack_unloaded - p.governor_idle_rack);
  const double gain = p.governor_idle_gain + share * (p.governor_gain - p.governor_idle_gain);
  const double wanted = unloaded + gain * factor * (q::rpmToRadPerSec(set_rpm) - crank_rad_per_s);
  return std::max(idle, std::clamp(wanted, 0.0, most));
}

double calcOilPressure(const EngineParameters& p, double crank_rad_per_s, double oil_c) {
  const double thick = q::detExp(p.oil_pressure_exponent * calcLogViscosityRatio(p, oil_c));
  const double pumped = p.oil_pressure_bar_s * std::abs(crank_rad_per_s) * thick;
  // What the pump keeps in pipes and bearings is not in the sump: the faster, the less covers its
  // inlet, and an inlet half bare draws air.
  const double speed_share =
      std::min(1.0, std::abs(crank_rad_per_s) / q::rpmToRadPerSec(p.governor_rpm_4));
  const double sump = p.oil_level - p.oil_held_up * speed_share;
  const double drawn = std::clamp((sump - p.oil_bare) / (p.oil_covered - p.oil_bare), 0.0, 1.0);
  return std::min(pumped, p.oil_relief_bar) * drawn * 1e5;
}

TorqueCurve::TorqueCurve(const EngineParameters& p) {
  const std::array<double, 8> rpm{420, 600, 800, 1000, 1200, 1400, 1600, 1800};
  const std::array<double, 8> brake{p.brake_nm_420,  p.brake_nm_600,  p.brake_nm_800,
                                    p.brake_nm_1000, p.brake_nm_1200, p.brake_nm_1400,
                                    p.brake_nm_1600, p.brake_nm_1800};
  std::array<double, 8> speed{}, indicated{};
  for (std::size_t k = 0; k < rpm.size(); ++k) {
    speed[k] = q::rpmToRadPerSec(rpm[k]);
    const double mep = calcFrictionMep(p, 1.0, calcPeakPressure(1.0), calcPistonSpeed(p, speed[k]));
    indicated[k] = brake[k] + calcMepTorque(mep, p.displacement_m3);
  }
  curve_ = quantity::Curve<8>(speed, indicated);
}

}  // namespace cabwright::plant
