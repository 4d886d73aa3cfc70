// SPDX-License-Identifier: GPL-3.0-or-later
// What a run has taken in, given away and holds: so that whoever leads it, whatever he does to it,
// can be held to the conservation of mass and energy.
#pragma once

namespace cabwright::plant {

struct World;

/// Accounts of a run since its start. Between any two moments, up to the errors of the steps,
///     d air_kg = d air_in_kg - d air_out_kg          (control air)
///     d vacuum_kg = d vacuum_in_kg - d vacuum_out_kg (both pipes, chambers)
///     d stored_j = d in_j - d out_j + d altered_j
/// whatever hands and faults do meanwhile. Masses in kg, energies in J.
struct Accounts {
  /// Heat of the fuel injected, and what the battery gave from its source (taken in: negative).
  double in_j = 0;
  /// Exhaust, heat to the air, work into belt-driven machines, rolling and air resistance, blocks,
  /// slipping wheels, bearings and shocks, electric loads and losses.
  double out_j = 0;
  /// Of moving masses, of heat above the ambient temperature, of the height of the line.
  double stored_j = 0;
  /// Brought along or taken away by numbers that were changed while the run went on: the same
  /// speed is another energy when a mass is another. No fault of the catalogue changes such a one.
  double altered_j = 0;
  double air_kg = 0;         ///< in reservoirs, cylinders, devices, horns
  double air_in_kg = 0;      ///< compressed
  double air_out_kg = 0;     ///< through valves, chokes, horns, drains and leaks
  double vacuum_kg = 0;      ///< in release pipe, train pipe and chambers
  double vacuum_in_kg = 0;   ///< through valves, leaks, cords and parted hoses
  double vacuum_out_kg = 0;  ///< drawn off by the exhausters
};

[[nodiscard]] Accounts calcAccounts(const World& w);

}  // namespace cabwright::plant
