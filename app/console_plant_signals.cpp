// SPDX-License-Identifier: GPL-3.0-or-later
#include "console_plant_signals.h"

#include <fmt/format.h>

namespace cabwright::console {
namespace {

using plant::LineReadings;
using plant::PlantReadings;
using Signals = std::vector<PlantSignal>;

struct LineEntry {
  const char* name;
  std::string_view unit, text;
  double (*of)(const LineReadings&);
};

#define CABWRIGHT_LINE(name, field, unit, text)                                          \
  LineEntry {                                                                            \
    name, unit, text, [](const LineReadings& l) { return static_cast<double>(l.field); } \
  }

// clang-format off
constexpr LineEntry kLineEntries[] = {
    CABWRIGHT_LINE("crank", crank_rad_per_s, "rad/s", "engine speed"),
    CABWRIGHT_LINE("rack", rack, "", "fuel rack, 0..1"),
    CABWRIGHT_LINE("delivery", delivery, "", "fuel per cycle, share of full"),
    CABWRIGHT_LINE("fired", fired_fraction, "", "share of cycles that fire"),
    CABWRIGHT_LINE("lever", lever, "", "throttle at the engine, 0..1"),
    CABWRIGHT_LINE("coolant", coolant_k, "K", "coolant"),
    CABWRIGHT_LINE("oil", oil_k, "K", "engine oil"),
    CABWRIGHT_LINE("wall", wall_k, "K", "cylinder walls"),
    CABWRIGHT_LINE("oil_pressure", oil_pressure_pa, "Pa gauge", "engine oil pressure"),
    CABWRIGHT_LINE("trapped_air", trapped_air, "", "air in the fuel system, 1 after a night"),
    CABWRIGHT_LINE("fuel", fuel_kg, "kg", "fuel in the tank"),
    CABWRIGHT_LINE("indicated", indicated_nm, "N m", "torque of the gas"),
    CABWRIGHT_LINE("friction", friction_nm, "N m", "torque of engine friction"),
    CABWRIGHT_LINE("load", load_nm, "N m", "torque of all that the engine drives"),
    CABWRIGHT_LINE("smoke", smoke, "", "unburnt fuel, share of full delivery"),
    CABWRIGHT_LINE("coolant_level", coolant_level, "", "coolant, share of full"),
    CABWRIGHT_LINE("latch_tripped", fuel_latch_tripped, "", "fuel latch tripped"),
    CABWRIGHT_LINE("protection_tripped", protection_tripped, "", "engine protection tripped"),
    CABWRIGHT_LINE("running", running, "", "turns by its own firing"),
    CABWRIGHT_LINE("pinion_in", pinion_in, "", "starter pinion in the ring"),
    CABWRIGHT_LINE("starter_current", starter_a, "A", "starter"),
    CABWRIGHT_LINE("starter_winding", starter_k, "K", "starter winding"),
    CABWRIGHT_LINE("generator_current", generator_a, "A", "generator"),
    CABWRIGHT_LINE("turbine", turbine_rad_per_s, "rad/s", "coupling turbine"),
    CABWRIGHT_LINE("input", input_rad_per_s, "rad/s", "gearbox input shaft"),
    CABWRIGHT_LINE("output", output_rad_per_s, "rad/s", "gearbox output shaft"),
    CABWRIGHT_LINE("clutch", clutch_k, "K", "direct clutch"),
    CABWRIGHT_LINE("coupling", coupling_nm, "N m", "torque through the coupling"),
    CABWRIGHT_LINE("coupling_oil", coupling_k, "K", "coupling oil"),
    CABWRIGHT_LINE("box_oil", box_oil_k, "K", "gearbox oil"),
    CABWRIGHT_LINE("freewheel_locked", freewheel_locked, "", "freewheel drives"),
    CABWRIGHT_LINE("output_torque", output_nm, "N m", "torque to the propeller shaft"),
    CABWRIGHT_LINE("dog", dog, "", "0 middle, 1 moving, 2 on tooth, 3 entering, 4 meshed, 5 rattling, 6 pinned"),
    CABWRIGHT_LINE("dog_side", dog_side, "", "1 forward, -1 reverse, 0 middle"),
    CABWRIGHT_LINE("sleeve", sleeve_m, "m", "dog sleeve, + towards forward"),
    CABWRIGHT_LINE("tooth_phase", tooth_phase_rad, "rad", "angle within a tooth pitch"),
    CABWRIGHT_LINE("shift_forward", shift_forward_pa, "Pa", "shift cylinder, forward side"),
    CABWRIGHT_LINE("shift_reverse", shift_reverse_pa, "Pa", "shift cylinder, reverse side"),
    CABWRIGHT_LINE("throttle_motor", throttle_motor_pa, "Pa", "throttle motor"),
    CABWRIGHT_LINE("compressor_loaded", compressor_loaded, "", "compressor delivers"),
    CABWRIGHT_LINE("wheel_slipping", wheel_slipping, "", "driven wheels slip"),
    CABWRIGHT_LINE("wheel", wheel_rad_per_s, "rad/s", "driven wheels"),
    CABWRIGHT_LINE("wear_race_cold", wear_race_cold_rev, "rev", "turned too fast while cold"),
    CABWRIGHT_LINE("wear_lug", wear_lug_j, "J", "work at full rack below 900 rpm"),
    CABWRIGHT_LINE("wear_overspeed", wear_overspeed_rad, "rad", "turned above the box's safe speed"),
    CABWRIGHT_LINE("wear_band", wear_band_j, "J", "heat into bands and clutch"),
    CABWRIGHT_LINE("wear_dog", wear_dog, "J", "rattle and shocks of the dogs"),
    CABWRIGHT_LINE("wear_starter", wear_starter_ks, "K s", "starter winding above its limit"),
    CABWRIGHT_LINE("starter_speed", starter_rad_per_s, "rad/s", "armature, while its pinion is in the ring"),
    CABWRIGHT_LINE("wear_starter_speed", wear_starter_rad, "rad", "armature turned above its safe speed"),
    CABWRIGHT_LINE("crank_time", crank_s, "s", "starter energised without a break"),
};
// clang-format on
#undef CABWRIGHT_LINE

void addLine(Signals& signals, std::size_t line) {
  const std::string stem = fmt::format("plant.line{}.", line + 1);
  for (const LineEntry& entry : kLineEntries)
    signals.push_back({stem + entry.name, entry.unit, entry.text,
                       [line, of = entry.of](const PlantReadings& r) { return of(r.line[line]); }});
  for (std::size_t band = 0; band < plant::kBands; ++band) {
    signals.push_back({fmt::format("{}drum{}", stem, band + 1), "rad/s", "brake drum of that gear",
                       [=](const PlantReadings& r) { return r.line[line].drum_rad_per_s[band]; }});
    signals.push_back({fmt::format("{}drum{}_heat", stem, band + 1), "K", "that drum's band",
                       [=](const PlantReadings& r) { return r.line[line].drum_k[band]; }});
  }
  for (std::size_t gear = 0; gear < plant::kGears; ++gear) {
    signals.push_back({fmt::format("{}gear{}", stem, gear + 1), "Pa", "cylinder of that gear",
                       [=](const PlantReadings& r) { return r.line[line].gear_pa[gear]; }});
    signals.push_back(
        {fmt::format("{}gear{}_locked", stem, gear + 1), "", "its band holds",
         [=](const PlantReadings& r) { return r.line[line].gear_locked[gear] ? 1.0 : 0.0; }});
  }
}

void addCab(Signals& signals, std::size_t cab) {
  const std::string stem = fmt::format("plant.cab{}.", cab + 1);
  signals.push_back({stem + "device", "Pa", "safety device's timing volume",
                     [cab](const PlantReadings& r) { return r.cab[cab].device_pa; }});
  signals.push_back({stem + "device_vent", "", "opening of its vent valve, 0..1",
                     [cab](const PlantReadings& r) { return r.cab[cab].device_vent; }});
  signals.push_back({stem + "horn", "Pa", "air in the horn",
                     [cab](const PlantReadings& r) { return r.cab[cab].horn_pa; }});
}

void addCylinder(Signals& signals, std::size_t i) {
  const std::string stem = fmt::format("plant.brake{}.", i + 1);
  signals.push_back({stem + "chamber", "Pa", "above that brake piston",
                     [i](const PlantReadings& r) { return r.chamber_pa[i]; }});
  signals.push_back({stem + "blocks", "N", "pressing force of its blocks",
                     [i](const PlantReadings& r) { return r.block_force_n[i]; }});
  signals.push_back({stem + "piston", "m", "piston travel",
                     [i](const PlantReadings& r) { return r.piston_m[i]; }});
}

struct UnitEntry {
  const char* name;
  std::string_view unit, text;
  double (*of)(const PlantReadings&);
};

#define CABWRIGHT_UNIT(name, field, unit, text)                                           \
  UnitEntry {                                                                             \
    name, unit, text, [](const PlantReadings& r) { return static_cast<double>(r.field); } \
  }

// clang-format off
constexpr UnitEntry kUnitEntries[] = {
    CABWRIGHT_UNIT("ambient", ambient_k, "K", "air temperature"),
    CABWRIGHT_UNIT("main_reservoir", main_reservoir_pa, "Pa", "main reservoir"),
    CABWRIGHT_UNIT("control_reservoir", control_reservoir_pa, "Pa", "control reservoir"),
    CABWRIGHT_UNIT("train_pipe", train_pipe_pa, "Pa", "train pipe"),
    CABWRIGHT_UNIT("release_pipe", release_pipe_pa, "Pa", "release pipe"),
    CABWRIGHT_UNIT("bus", bus_v, "V", "battery bus"),
    CABWRIGHT_UNIT("battery_current", battery_a, "A", "battery"),
    CABWRIGHT_UNIT("battery_charge", battery_charge, "", "battery, share of full"),
    CABWRIGHT_UNIT("battery_rest", battery_rest_v, "V", "battery at rest"),
    CABWRIGHT_UNIT("speed", speed_mps, "m/s", "speed, positive: car 1 leads"),
    CABWRIGHT_UNIT("position", position_m, "m", "middle of the unit along the route"),
    CABWRIGHT_UNIT("acceleration", acceleration_mps2, "m/s2", "acceleration"),
    CABWRIGHT_UNIT("tractive", tractive_n, "N", "pull of the driven wheels"),
    CABWRIGHT_UNIT("brake", brake_n, "N", "brake force"),
    CABWRIGHT_UNIT("resistance", resistance_n, "N", "running resistance"),
    CABWRIGHT_UNIT("gradient", gradient, "", "rise over run"),
    CABWRIGHT_UNIT("trailing_wheel", trailing_wheel_rad_per_s, "rad/s", "trailing wheels"),
    CABWRIGHT_UNIT("trailing_slipping", trailing_slipping, "", "trailing wheels slip"),
    CABWRIGHT_UNIT("standing", standing, "", "stands still"),
    CABWRIGHT_UNIT("rolled_back", rolled_back_m, "m", "rolled against the way wanted"),
    CABWRIGHT_UNIT("out_of_validity", out_of_validity, "", "outside the range the model was checked in"),
};
// clang-format on
#undef CABWRIGHT_UNIT

}  // namespace

std::vector<PlantSignal> makePlantSignals() {
  Signals signals;
  for (std::size_t line = 0; line < plant::kLines; ++line) addLine(signals, line);
  for (std::size_t cab = 0; cab < plant::kCabs; ++cab) addCab(signals, cab);
  for (std::size_t i = 0; i < plant::kCylinders; ++i) addCylinder(signals, i);
  for (const UnitEntry& entry : kUnitEntries)
    signals.push_back({std::string("plant.") + entry.name, entry.unit, entry.text, entry.of});
  return signals;
}

}  // namespace cabwright::console
