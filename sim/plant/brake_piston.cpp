// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/brake_piston.h"

#include <algorithm>
#include <cmath>

namespace cabwright::plant {

namespace {
constexpr double kLeastVolume = 0.1;  // share of the chamber that no travel takes away
}

double calcChamberPressure(const CylinderParameters& p, double area_m2, double travel_m,
                           double chamber_mrt_j) {
  return chamber_mrt_j / std::max(p.upper_m3 - area_m2 * travel_m, kLeastVolume * p.upper_m3);
}

double calcRestingTravel(const CylinderParameters& p, double area_m2, double pipe_pa,
                         double chamber_mrt_j) {
  const double spring_n = p.spring_n - p.stick_n;
  const double lift_n = area_m2 * pipe_pa - spring_n;
  const auto net = [&](double travel) {
    return lift_n - area_m2 * chamber_mrt_j / (p.upper_m3 - area_m2 * travel);
  };
  if (net(0.0) <= 0.0) return 0.0;
  // On the way the spring alone is held, at one pressure.
  if (net(p.take_up_m) <= 0.0) {
    return (p.upper_m3 - chamber_mrt_j * area_m2 / lift_n) / area_m2;
  }
  // (lift - k u)(V - A u) = A m R T with u the stretch of the rigging: the smaller root.
  const double touching_m3 = p.upper_m3 - area_m2 * p.take_up_m;
  const double a = p.rigging_n_m * area_m2;
  const double b = lift_n * area_m2 + p.rigging_n_m * touching_m3;
  const double c = lift_n * touching_m3 - area_m2 * chamber_mrt_j;
  return p.take_up_m + 2.0 * c / (b + std::sqrt(std::max(0.0, b * b - 4.0 * a * c)));
}

}  // namespace cabwright::plant
