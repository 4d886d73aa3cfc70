// SPDX-License-Identifier: GPL-3.0-or-later
// Battery, starters, generators on one 24 V bus: an algebraic network at each instant.
#pragma once

#include <array>

#include "plant/parameters.h"

namespace cabwright::plant {

/// Open-circuit voltage over charge (share of full): straight between empty and full, which the
/// published six-cell table (doubled) follows within 0.1 V.
[[nodiscard]] double calcRestVoltage(const BatteryParameters& p, double charge);
/// What the cells can put behind their resistance, V: the rest voltage, but in the last hundredth
/// of their charge they give out, so that a flat battery gives nothing (common practice, no
/// published source).
[[nodiscard]] double calcSourceVoltage(const BatteryParameters& p, double charge);
/// Internal resistance at this temperature: rises in the cold, never below half its 25 C value.
[[nodiscard]] double calcBatteryResistance(const BatteryParameters& p, double ambient_c);
/// Resistance against charging, ohm, not below the internal one: from `acceptance_from` of full it
/// grows in a straight line by `acceptance_ohm`, since a battery that is nearly full gasses and
/// takes little. House form and values, chosen so that a full one charges at 27.5 to 28.5 V (common
/// practice, no published source).
[[nodiscard]] double calcChargeResistance(const BatteryParameters& p, double ambient_c,
                                          double charge);
/// Terminal voltage of a source E behind r under load, V: E - I r.
[[nodiscard]] double calcTerminalVoltage(double rest_v, double resistance_ohm, double current_a);

/// Series motor: torque constant k(I) = k0 I/(I + knee), so current from
/// V - brush = I R + k(I) w. Never negative (it does not brake).
[[nodiscard]] double calcStarterCurrent(const StarterParameters& p, double terminal_v,
                                        double motor_rad_per_s);
/// Torque at the motor shaft, N m.
[[nodiscard]] double calcStarterTorque(const StarterParameters& p, double current_a);

/// What an armature costs the crank that drives it unfed, through a pinion left in the ring, N m at
/// the crank with the sign of its speed: bearings, brushes and fan times the ratio. While it is
/// fed, `efficiency` stands for these.
[[nodiscard]] double calcDrivenArmatureTorque(const StarterParameters& p, double crank_rad_per_s);

/// Largest generator current at this engine speed, A: its rating over its set voltage, from the
/// cut-in speed upwards.
[[nodiscard]] double calcGeneratorLimit(const GeneratorParameters& p, double crank_rad_per_s);

struct BusInputs {
  double source_v = 0;       ///< rest voltage less polarisation
  double source_ohm = 0.01;  ///< giving
  double charge_ohm = 0.01;  ///< taking, not below source_ohm
  double load_s = 0;         ///< conductance of all loads
  std::array<bool, kLines> starter_on{};
  std::array<double, kLines> motor_rad_per_s{};
  std::array<double, kLines> crank_rad_per_s{};
};
struct BusState {
  double bus_v = 0;
  double battery_a = 0;  ///< positive: discharging
  std::array<double, kLines> starter_a{}, generator_a{};
};

/// Solves the bus: the voltage at which source, generators, loads and starters agree. Current
/// balance falls steadily with voltage, so there is one answer.
[[nodiscard]] BusState solveBus(const Parameters& p, const BusInputs& in);

}  // namespace cabwright::plant
