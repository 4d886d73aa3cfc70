// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/running.h"

#include <cmath>

#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {
constexpr double kKmhPerMps = 3.6;
}

double calcBlockFriction(double block_force_n, double speed_mps) {
  const double p_kn = block_force_n * 1e-3;
  const double v = std::abs(speed_mps) * kKmhPerMps;
  const double g = q::kStandardGravity;
  return 0.6 * (16.0 / g * p_kn + 100.0) / (80.0 / g * p_kn + 100.0) * (v + 100.0) /
         (5.0 * v + 100.0);
}

double calcAdhesion(double speed_mps) {
  return 7.5 / (std::abs(speed_mps) * kKmhPerMps + 44.0) + 0.161;
}

double calcRunningResistance(const TrainParameters& p, double speed_mps) {
  const double v = std::abs(speed_mps);
  return p.resistance_a_n + p.resistance_b_n_s_m * v + p.resistance_c_n_s2_m2 * v * v;
}

double calcPistonForce(double bore_m, double below_pa, double above_pa) {
  return 0.25 * q::kPi * bore_m * bore_m * (below_pa - above_pa);
}

double calcGradeForce(double mass_kg, double gradient) {
  return mass_kg * q::kStandardGravity * gradient;
}

}  // namespace cabwright::plant
