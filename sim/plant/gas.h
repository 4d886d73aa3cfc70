// SPDX-License-Identifier: GPL-3.0-or-later
// Gas: vessels hold mass, p = m R T / V, and every pipe, valve, choke and leak is an orifice.
#pragma once

#include <algorithm>
#include <cmath>

#include "quantity/units.h"

namespace cabwright::plant {

/// ISO 6358 reference air: 20 C, 100 kPa, 65 % relative humidity.
inline constexpr double kReferenceDensity = 1.185;  // kg/m3
inline constexpr double kReferenceK = 293.15;
/// Of a sonic conductance given in dm3/(s bar), m3/(s Pa).
inline constexpr double kConductanceUnit = 1e-8;

/// From which pressure ratio the flow law goes over to a straight line, so that the slope stays
/// finite as the pressures meet. The ellipse has infinite slope there, which no orifice has: below
/// some Reynolds number the flow is laminar.
inline constexpr double kLinearFrom = 0.98;

/// The subsonic part of ISO 6358 for one critical ratio b.
struct FlowLaw {
  double b = 0.4;
  double inverse_span = 1.0 / 0.6;
  double slope = 0.0;  ///< of the straight part
  constexpr FlowLaw() : FlowLaw(0.4) {}
  explicit constexpr FlowLaw(double critical) : b(critical), inverse_span(1.0 / (1.0 - critical)) {
    const double y = (kLinearFrom - b) * inverse_span;
    slope = root(1.0 - y * y) / (1.0 - kLinearFrom);
  }

 private:
  static constexpr double root(double x) {  // Newton, so that it can be constant-folded
    double y = 1.0;
    for (int k = 0; k < 60; ++k) y = 0.5 * (y + x / y);
    return y;
  }
};

/// psi(r) of ISO 6358: 1 up to the critical ratio, a quarter ellipse beyond it, straight at the
/// end.
[[nodiscard]] inline double calcFlowFunction(const FlowLaw& law, double ratio) {
  if (ratio <= law.b) return 1.0;
  if (ratio >= kLinearFrom) return law.slope * (1.0 - ratio);
  const double y = (ratio - law.b) * law.inverse_span;
  return std::sqrt(1.0 - y * y);
}

/// Choked mass flow per pascal upstream, kg/(s Pa), of conductance c (dm3/(s bar)) at gas_k:
/// C rho0 sqrt(T0/T).
[[nodiscard]] inline double calcChokedFactor(double c, double gas_k) {
  return c * kConductanceUnit * kReferenceDensity * std::sqrt(kReferenceK / gas_k);
}

/// Mass flow from a to b, kg/s, negative the other way. factor = calcChokedFactor(...).
[[nodiscard]] inline double calcFlow(double factor, const FlowLaw& law, double a_pa, double b_pa) {
  if (factor == 0.0) return 0.0;
  return a_pa >= b_pa ? factor * a_pa * calcFlowFunction(law, b_pa / a_pa)
                      : -factor * b_pa * calcFlowFunction(law, a_pa / b_pa);
}

/// The same through a valve that lets nothing back.
[[nodiscard]] inline double calcOneWayFlow(double factor, const FlowLaw& law, double a_pa,
                                           double b_pa) {
  return a_pa > b_pa ? calcFlow(factor, law, a_pa, b_pa) : 0.0;
}

/// Pressure of a mass of air, Pa: m R T / V.
[[nodiscard]] inline double calcPressure(double mass_kg, double volume_m3, double gas_k) {
  return mass_kg * quantity::kAirGasConstant * gas_k / volume_m3;
}
[[nodiscard]] inline double calcMass(double pressure_pa, double volume_m3, double gas_k) {
  return pressure_pa * volume_m3 / (quantity::kAirGasConstant * gas_k);
}

/// A cylinder whose spring lets the piston move between two pressures: dead volume below the
/// first, dead + stroke above the second, in step between. The piston's mass is neglected.
struct SpringCylinder {
  double dead_m3 = 0, swept_m3 = 0, start_pa = 0, end_pa = 0;  ///< start, end: absolute
};

/// Pressure of a mass of air m in it: p (V0 + Vs (p - p1)/(p2 - p1)) = m R T on the way.
[[nodiscard]] inline double calcCylinderPressure(const SpringCylinder& c, double mass_kg,
                                                 double gas_k) {
  const double pv = mass_kg * quantity::kAirGasConstant * gas_k;
  if (pv <= c.start_pa * c.dead_m3) return pv / c.dead_m3;
  if (pv >= c.end_pa * (c.dead_m3 + c.swept_m3)) return pv / (c.dead_m3 + c.swept_m3);
  const double k = c.swept_m3 / (c.end_pa - c.start_pa);
  const double half = 0.5 * (c.dead_m3 - k * c.start_pa);
  return (std::sqrt(half * half + k * pv) - half) / k;
}
[[nodiscard]] inline double calcCylinderVolume(const SpringCylinder& c, double pressure_pa) {
  const double share = (pressure_pa - c.start_pa) / (c.end_pa - c.start_pa);
  return c.dead_m3 + c.swept_m3 * std::clamp(share, 0.0, 1.0);
}

/// Isentropic choked flow through an ideal nozzle of this area: m sqrt(R T)/(A p) =
/// sqrt(gamma) (2/(gamma+1))^((gamma+1)/(2(gamma-1))) = 0.684731 for air. Gives the conductance C
/// (dm3/(s bar)) of that nozzle.
[[nodiscard]] inline double calcNozzleConductance(double area_m2) {
  constexpr double kChoked = 0.6847314563772704;
  return area_m2 * kChoked /
         (std::sqrt(quantity::kAirGasConstant * kReferenceK) * kReferenceDensity *
          kConductanceUnit);
}

}  // namespace cabwright::plant
