// SPDX-License-Identifier: GPL-3.0-or-later
// The true state of the machine at one tick, as plain values in SI: what instruments, interlocks,
// recorders and tests may look at. Nothing here is a gauge yet: gauges belong to the unit.
#pragma once

#include <array>
#include <cstdint>

#include "plant/escapes.h"
#include "plant/inputs.h"

namespace cabwright::plant {

/// Where a final drive's dog sleeve stands.
enum class DogState : std::uint8_t {
  kMiddle,    ///< between the gears, free to move
  kMoving,    ///< on its way under air or by hand
  kOnTooth,   ///< tooth on tooth, pushing
  kEntering,  ///< in a gap, not yet deep enough to drive
  kMeshed,    ///< in, shaft and wheels are one
  kRattling,  ///< pushed against teeth that pass too fast to drop in
  kPinned,    ///< locked in the middle by the isolating pin
};

struct LineReadings {
  // engine
  double crank_rad_per_s = 0;
  double rack = 0;            ///< 0..1
  double delivery = 0;        ///< fuel delivered per cycle as a fraction of full, 0..1
  double fired_fraction = 0;  ///< share of cycles that fire, 0..1
  double lever = 0;           ///< position of the throttle at the engine, 0..1 (motor or hand)
  double coolant_k = 0, oil_k = 0, wall_k = 0;
  double oil_pressure_pa = 0;  ///< gauge
  double trapped_air = 0;      ///< 1 after a night, 0 when the fuel system is purged
  double fuel_kg = 0;
  double indicated_nm = 0, friction_nm = 0, load_nm = 0;
  double smoke = 0;          ///< unburnt fuel, fraction of full delivery (white smoke)
  double coolant_level = 1;  ///< 0..1
  bool fuel_latch_tripped = false;
  bool protection_tripped = false;
  bool running = false;  ///< turns by its own firing
  // starting
  bool pinion_in = false;
  double starter_a = 0;
  double starter_k = 0;          ///< winding temperature
  double starter_rad_per_s = 0;  ///< armature, driven by the ring while its pinion is in; else 0
  double generator_a = 0;
  // drive
  double turbine_rad_per_s = 0, input_rad_per_s = 0, output_rad_per_s = 0;
  std::array<double, kBands> drum_rad_per_s{};
  std::array<double, kBands> drum_k{};
  double clutch_k = 0;
  double coupling_nm = 0;  ///< torque through the coupling
  double coupling_k = 0;   ///< oil temperature
  double box_oil_k = 0;
  std::array<double, kGears> gear_pa{};    ///< band cylinders 1..3 and the clutch, absolute
  std::array<bool, kGears> gear_locked{};  ///< drum held / clutch locked
  bool freewheel_locked = false;
  double output_nm = 0;  ///< torque delivered to the propeller shaft
  DogState dog = DogState::kMiddle;
  int dog_side = 0;            ///< +1 forward, -1 reverse, 0 middle
  double sleeve_m = 0;         ///< + towards forward
  double tooth_phase_rad = 0;  ///< angle within one tooth pitch on the side it points to
  double shift_forward_pa = 0, shift_reverse_pa = 0, throttle_motor_pa = 0;
  bool compressor_loaded = false;
  bool wheel_slipping = false;
  double wheel_rad_per_s = 0;
  // wear, accumulated for the marker (each non-decreasing)
  double wear_race_cold_rev = 0;  ///< revolutions above fast idle while cold
  double wear_lug_j = 0;          ///< full-rack work below 900 rpm
  double wear_overspeed_rad = 0;  ///< shaft angle turned above the box's safe input speed
  double wear_band_j = 0;         ///< heat into bands and clutch
  double wear_dog = 0;            ///< J lost in rattle and meshing shocks
  double wear_starter_ks = 0;     ///< K s above the winding's limit
  double wear_starter_rad = 0;    ///< armature angle turned above its safe speed
  double crank_s = 0;             ///< seconds the starter has been energised without a break
};

struct CabReadings {
  double device_pa = 0;    ///< timing volume, absolute
  double device_vent = 0;  ///< opening of its vent valve, 0..1
  double horn_pa = 0;      ///< air in the horn, absolute
  double horn_level = 0;   ///< loudness of its note, 0 silent .. 1 full
};

struct PlantReadings {
  std::int64_t tick = 0;
  std::array<LineReadings, kLines> line;
  std::array<CabReadings, kCabs> cab;
  Escapes escape;
  double ambient_k = 0;
  double main_reservoir_pa = 0, control_reservoir_pa = 0;
  double train_pipe_pa = 0, release_pipe_pa = 0;
  std::array<double, kCylinders> chamber_pa{};     ///< above each brake piston
  std::array<double, kCylinders> block_force_n{};  ///< total pressing force of that cylinder
  std::array<double, kCylinders> piston_m{};
  double bus_v = 0, battery_a = 0, battery_charge = 0, battery_rest_v = 0;
  double speed_mps = 0;   ///< positive: car 1 leads
  double position_m = 0;  ///< of the middle of the unit along the route
  double acceleration_mps2 = 0;
  double tractive_n = 0, brake_n = 0, resistance_n = 0, gradient = 0;  ///< gradient: rise/run
  double trailing_wheel_rad_per_s = 0;
  bool trailing_slipping = false;
  bool standing = true;
  double rolled_back_m = 0;  ///< distance since the last stand against the direction wanted, >= 0
  bool out_of_validity = false;  ///< a state left the range the model was checked in
};

}  // namespace cabwright::plant
