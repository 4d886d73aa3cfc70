// SPDX-License-Identifier: GPL-3.0-or-later
// Constants and the trade's units. Inside the plant everything is SI (Pa absolute, kg, m, s, rad,
// K, J, N, V, A); these conversions are used at the edges only: gauges, scenario files, reports.
#pragma once

namespace cabwright::quantity {

inline constexpr double kPi = 3.14159265358979323846;
/// Standard gravity, m/s2 (ISO 80000-3).
inline constexpr double kStandardGravity = 9.80665;
/// Standard atmosphere, Pa (ISO 2533).
inline constexpr double kStandardAtmospherePa = 101325.0;
/// Specific gas constant of dry air, J/(kg K), and ratio of specific heats (ISO 2533).
inline constexpr double kAirGasConstant = 287.05287;
inline constexpr double kAirHeatRatio = 1.4;
/// Conventional inch of mercury, Pa (NIST SP 811, appendix B.8).
inline constexpr double kPaPerInHg = 3386.389;
/// Pound-force per square inch, Pa (NIST SP 811, appendix B.8).
inline constexpr double kPaPerPsi = 6894.757;
inline constexpr double kZeroCelsiusK = 273.15;
/// Exact: 1609.344 m / 3600 s.
inline constexpr double kMpsPerMph = 0.44704;
inline constexpr double kRadPerSecPerRpm = 2.0 * kPi / 60.0;

[[nodiscard]] constexpr double celsiusToKelvin(double c) { return c + kZeroCelsiusK; }
[[nodiscard]] constexpr double kelvinToCelsius(double k) { return k - kZeroCelsiusK; }
[[nodiscard]] constexpr double rpmToRadPerSec(double rpm) { return rpm * kRadPerSecPerRpm; }
[[nodiscard]] constexpr double radPerSecToRpm(double w) { return w / kRadPerSecPerRpm; }
[[nodiscard]] constexpr double mphToMps(double mph) { return mph * kMpsPerMph; }
[[nodiscard]] constexpr double mpsToMph(double mps) { return mps / kMpsPerMph; }
/// Pressure above the standard atmosphere, psi, to Pa absolute and back.
[[nodiscard]] constexpr double psiGaugeToPa(double psi) {
  return kStandardAtmospherePa + psi * kPaPerPsi;
}
[[nodiscard]] constexpr double paToPsiGauge(double pa) {
  return (pa - kStandardAtmospherePa) / kPaPerPsi;
}
/// Vacuum below the standard atmosphere, inHg, to Pa absolute and back.
[[nodiscard]] constexpr double inHgVacuumToPa(double inhg) {
  return kStandardAtmospherePa - inhg * kPaPerInHg;
}
[[nodiscard]] constexpr double paToInHgVacuum(double pa) {
  return (kStandardAtmospherePa - pa) / kPaPerInHg;
}
/// Degrees to radians.
[[nodiscard]] constexpr double degToRad(double deg) { return deg * kPi / 180.0; }

/// One tick of simulated time, in seconds: ticks are integers and time is tick * kTickSeconds.
inline constexpr double kTickSeconds = 0.01;
inline constexpr int kTicksPerSecond = 100;

}  // namespace cabwright::quantity
