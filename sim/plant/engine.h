// SPDX-License-Identifier: GPL-3.0-or-later
// The diesel engine: friction, governor, fuel delivery, firing, heat.
#pragma once

#include "plant/parameters.h"
#include "quantity/curve.h"

namespace cabwright::plant {

/// Natural logarithm of (dynamic viscosity at temperature_c over that at 80 C), by Vogel's law
/// mu = a exp(b/(T + c)).
[[nodiscard]] double calcLogViscosityRatio(const EngineParameters& p, double temperature_c);
/// Dynamic viscosity, Pa s.
[[nodiscard]] double calcViscosity(const EngineParameters& p, double temperature_c);

/// Chen-Flynn friction mean effective pressure, bar, with the viscous terms scaled by
/// f = (viscosity ratio)^exponent: c0 f + c1 p_max + c2 S_p sqrt(f) + c3 S_p^2
/// (Chen & Flynn, SAE 650733; later one-dimensional codes add the squared term).
[[nodiscard]] double calcFrictionMep(const EngineParameters& p, double viscosity_factor,
                                     double peak_bar, double piston_mps);
/// Torque of a mean effective pressure in a four-stroke engine, N m: p V / (4 pi).
[[nodiscard]] double calcMepTorque(double mep_bar, double displacement_m3);
/// Mean piston speed, m/s: 2 stroke x rev/s.
[[nodiscard]] double calcPistonSpeed(const EngineParameters& p, double crank_rad_per_s);

/// Natural logarithms of parameters, made once.
struct EngineLogs {
  double compression_ratio = 0, charge_bar = 0, firing_ref_bar = 0, firing_ref_speed = 0,
         firing_ratio = 0;
  EngineLogs() = default;
  explicit EngineLogs(const EngineParameters& p);
};

/// State of the charge at the end of compression: T = T1 r^(n-1), p = p1 r^n with n falling at
/// low speed, where gas leaks and cools.
struct Compression {
  double exponent = 0, temperature_k = 0, pressure_bar = 0;
  double log_pressure = 0;  ///< natural logarithm of pressure_bar
};
[[nodiscard]] Compression calcCompression(const EngineParameters& p, const EngineLogs& logs,
                                          double crank_rad_per_s, double ambient_k, double wall_k);

/// Share of cycles that fire, 1/(1 + r^3), r = ignition delay over time available, in Wolfer's
/// form: delay ~ p^-1.19 exp(4650/T).
[[nodiscard]] double calcFiredFraction(const EngineParameters& p, const EngineLogs& logs,
                                       const Compression& end, double crank_rad_per_s);

/// Fuel delivered per cycle, share of full, at this rack: the pump leaks at low speed.
[[nodiscard]] double calcDelivery(const EngineParameters& p, double rack, double crank_rad_per_s);

/// Rack the governor asks for at this lever opening (0..1) and speed.
[[nodiscard]] double calcGovernorRack(const EngineParameters& p,
                                      const ThrottleMotorParameters& notches, double lever,
                                      double crank_rad_per_s);

/// Oil pressure, Pa gauge: grows with speed and viscosity up to the relief valve.
[[nodiscard]] double calcOilPressure(const EngineParameters& p, double crank_rad_per_s,
                                     double oil_c);

/// Full-delivery indicated torque over speed (rad/s): brake torque of the list plus the warm
/// engine's own friction.
class TorqueCurve {
 public:
  TorqueCurve() = default;
  explicit TorqueCurve(const EngineParameters& p);
  [[nodiscard]] double calcIndicated(double crank_rad_per_s) const {
    return curve_.calc(crank_rad_per_s);
  }

 private:
  quantity::Curve<8> curve_;
};

/// Peak cylinder pressure taken for friction, bar: grows with delivery.
[[nodiscard]] double calcPeakPressure(double delivery);

}  // namespace cabwright::plant
