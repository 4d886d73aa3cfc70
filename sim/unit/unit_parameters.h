// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers of everything discrete: switch settings, and what can be wrong with contacts, valves and
// relays. A fault is such a number changed; scenario files address them like the plant's:
// "start_relay1.welded", "gear_valve2.gear3_stuck", "air_switch.rise_psi".
// X(field, default, lowest, highest, unit, meaning); groups with a number exist twice.
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "plant/inputs.h"

namespace cabwright::unit {

// clang-format off
#define CABWRIGHT_STOP_SOLENOID(X) \
  X(dead, 0.0, 0.0, 1.0, "", "the stop solenoid does not pull above 0.5")
#define CABWRIGHT_START_RELAY(X) \
  X(welded, 0.0, 0.0, 1.0, "", "the start relay's contacts are welded above 0.5") \
  X(dead, 0.0, 0.0, 1.0, "", "the start relay does not pull above 0.5")
#define CABWRIGHT_THROTTLE_VALVE(X) \
  X(dead, 0.0, 0.0, 1.0, "", "the throttle motor's air valves do not open above 0.5") \
  X(stuck_notch, 0.0, 0.0, 4.0, "", "notch in which the throttle motor's valves stick open")
#define CABWRIGHT_GEAR_VALVE(X) \
  X(gear1_stuck, 0.0, -1.0, 1.0, "", "valve of first gear: 1 stuck open, -1 stuck shut") \
  X(gear2_stuck, 0.0, -1.0, 1.0, "", "valve of second gear: 1 stuck open, -1 stuck shut") \
  X(gear3_stuck, 0.0, -1.0, 1.0, "", "valve of third gear: 1 stuck open, -1 stuck shut") \
  X(gear4_stuck, 0.0, -1.0, 1.0, "", "valve of top gear: 1 stuck open, -1 stuck shut")
#define CABWRIGHT_DIRECTION_VALVE(X) \
  X(forward_stuck, 0.0, -1.0, 1.0, "", "valve towards forward: 1 stuck open, -1 stuck shut") \
  X(reverse_stuck, 0.0, -1.0, 1.0, "", "valve towards reverse: 1 stuck open, -1 stuck shut")
#define CABWRIGHT_MESH_SWITCH(X) \
  X(stuck, 0.0, -1.0, 1.0, "", "mesh switch: 1 stuck made, -1 stuck open")
#define CABWRIGHT_OIL_SWITCH(X) \
  X(rise_psi, 10.0, 1.0, 60.0, "psi", "oil pressure switch makes above this (CP)") \
  X(fall_psi, 6.0, 0.5, 60.0, "psi", "and breaks below this") \
  X(stuck, 0.0, -1.0, 1.0, "", "oil pressure switch: 1 stuck made, -1 stuck open")
#define CABWRIGHT_RUNNING_CONTACT(X) \
  X(rise_rpm, 300.0, 100.0, 1000.0, "rpm", "running contact makes above this (CP)") \
  X(fall_rpm, 200.0, 50.0, 1000.0, "rpm", "and breaks below this")
#define CABWRIGHT_FIRE(X) \
  X(burns, 0.0, 0.0, 1.0, "", "the engine burns above 0.5") \
  X(line_broken, 0.0, 0.0, 1.0, "", "its heat line is broken above 0.5: no warning") \
  X(line_false, 0.0, 0.0, 1.0, "", "its heat line warns without a fire above 0.5") \
  X(bottle_empty, 0.0, 0.0, 1.0, "", "its bottle is empty above 0.5")
#define CABWRIGHT_DESK(X) \
  X(key_contact_dead, 0.0, 0.0, 1.0, "", "key switch makes no contact above 0.5") \
  X(reverser_contact_dead, 0.0, 0.0, 1.0, "", "reverser contacts dead above 0.5") \
  X(gear_contact_dead, 0.0, 0.0, 5.0, "", "selector contact of this gear is dead (5: all)") \
  X(start1_dead, 0.0, 0.0, 1.0, "", "start button of engine 1 dead above 0.5") \
  X(start2_dead, 0.0, 0.0, 1.0, "", "start button of engine 2 dead above 0.5") \
  X(device_contact_stuck, 0.0, 0.0, 1.0, "", "contact of the device's handle stays made above 0.5") \
  X(device_valve_stuck, 0.0, 0.0, 1.0, "", "valve under the device's handle stays held above 0.5") \
  X(pawl_worn, 0.0, 0.0, 1.0, "", "handbrake pawl does not hold above 0.5") \
  X(bell_dead, 0.0, 0.0, 1.0, "", "the bell in this cab does not sound above 0.5") \
  X(bell_button_dead, 0.0, 0.0, 1.0, "", "this cab's bell button is dead above 0.5") \
  X(horn_dead, 0.0, 0.0, 3.0, "", "tones of the horn that are dead: 1 low, 2 high, 3 both") \
  X(wiper_dead, 0.0, 0.0, 1.0, "", "wiper dead above 0.5") \
  X(white_lamps_dead, 0.0, 0.0, 1.0, "", "white lamps at this end dead above 0.5") \
  X(red_lamps_dead, 0.0, 0.0, 1.0, "", "red lamps at this end dead above 0.5") \
  X(fire_bell_dead, 0.0, 0.0, 1.0, "", "fire bell in this cab dead above 0.5")
#define CABWRIGHT_RELAY(X) \
  X(pull_v, 17.0, 5.0, 30.0, "V", "control relay pulls in above this") \
  X(drop_v, 12.0, 2.0, 29.0, "V", "and drops out below this") \
  X(lag_s, 0.02, 0.001, 0.5, "s", "its lag") \
  X(dead, 0.0, 0.0, 1.0, "", "control relay does not pull above 0.5")
#define CABWRIGHT_AIR_SWITCH(X) \
  X(rise_psi, 75.0, 10.0, 120.0, "psi", "air lamp's switch makes above this (CP)") \
  X(fall_psi, 70.0, 5.0, 119.0, "psi", "and breaks below this (CP)") \
  X(stuck, 0.0, -1.0, 1.0, "", "air lamp's switch: 1 stuck made, -1 stuck open")
#define CABWRIGHT_CHARGE_RELAY(X) \
  X(rise_v, 26.6, 20.0, 32.0, "V", "charge lamp goes out above this") \
  X(fall_v, 25.8, 18.0, 31.0, "V", "and comes on below this")
#define CABWRIGHT_LOADS(X) \
  X(desk_w, 25.0, 0.0, 2000.0, "W", "a living desk") \
  X(lamp_w, 3.0, 0.0, 200.0, "W", "an indication lamp") \
  X(valve_w, 12.0, 0.0, 500.0, "W", "an energised air valve or solenoid") \
  X(marker_w, 60.0, 0.0, 2000.0, "W", "white lamps of one end") \
  X(tail_w, 20.0, 0.0, 2000.0, "W", "red lamps of one end") \
  X(cab_light_w, 15.0, 0.0, 500.0, "W", "cab light") \
  X(display_w, 20.0, 0.0, 500.0, "W", "lit display") \
  X(saloon_w, 360.0, 0.0, 5000.0, "W", "saloon lights") \
  X(heater_w, 240.0, 0.0, 5000.0, "W", "heater fan") \
  X(wiper_w, 50.0, 0.0, 500.0, "W", "wiper") \
  X(bell_w, 20.0, 0.0, 500.0, "W", "a sounding bell") \
  X(extra_w, 0.0, 0.0, 5000.0, "W", "something left on (a fault)")
#define CABWRIGHT_HANDS(X) \
  X(handbrake_s, 8.0, 0.5, 60.0, "s", "to turn a handbrake wheel right on or off (CP)") \
  X(unwind_s, 1.5, 0.1, 30.0, "s", "in which it unwinds by itself with the pawl out and no hand on it") \
  X(press_s, 0.5, 0.05, 10.0, "s", "how long a push of a button lasts") \
  X(stroke_s, 0.3, 0.05, 2.0, "s", "length of a bell stroke, and the pause after it") \
  X(group_s, 1.0, 0.1, 5.0, "s", "pause between groups of a bell code (3-3)") \
  X(code_s, 2.0, 0.3, 10.0, "s", "silence after which a code is complete") \
  X(code_stands_s, 60.0, 5.0, 600.0, "s", "after which a code lapses, standing (CP)") \
  X(answer_s, 2.5, 0.1, 60.0, "s", "people take to answer") \
  X(person_leaves_s, 5.0, 0.5, 120.0, "s", "a passer-by takes to stand clear after a warning") \
  X(look_s, 1.0, 0.1, 10.0, "s", "least look that counts") \
  X(tank_kg, 300.0, 10.0, 2000.0, "kg", "fuel tank of each engine, full")
// clang-format on

#define CABWRIGHT_FIELD(name, value, lo, hi, unit, text) double name = value;
struct StopSolenoidParameters {
  CABWRIGHT_STOP_SOLENOID(CABWRIGHT_FIELD)
};
struct StartRelayParameters {
  CABWRIGHT_START_RELAY(CABWRIGHT_FIELD)
};
struct ThrottleValveParameters {
  CABWRIGHT_THROTTLE_VALVE(CABWRIGHT_FIELD)
};
struct GearValveParameters {
  CABWRIGHT_GEAR_VALVE(CABWRIGHT_FIELD)
};
struct DirectionValveParameters {
  CABWRIGHT_DIRECTION_VALVE(CABWRIGHT_FIELD)
};
struct MeshSwitchParameters {
  CABWRIGHT_MESH_SWITCH(CABWRIGHT_FIELD)
};
struct OilSwitchParameters {
  CABWRIGHT_OIL_SWITCH(CABWRIGHT_FIELD)
};
struct RunningContactParameters {
  CABWRIGHT_RUNNING_CONTACT(CABWRIGHT_FIELD)
};
struct FireParameters {
  CABWRIGHT_FIRE(CABWRIGHT_FIELD)
};
struct DeskParameters {
  CABWRIGHT_DESK(CABWRIGHT_FIELD)
};
struct RelayParameters {
  CABWRIGHT_RELAY(CABWRIGHT_FIELD)
};
struct AirSwitchParameters {
  CABWRIGHT_AIR_SWITCH(CABWRIGHT_FIELD)
};
struct ChargeRelayParameters {
  CABWRIGHT_CHARGE_RELAY(CABWRIGHT_FIELD)
};
struct LoadParameters {
  CABWRIGHT_LOADS(CABWRIGHT_FIELD)
};
struct HandParameters {
  CABWRIGHT_HANDS(CABWRIGHT_FIELD)
};
#undef CABWRIGHT_FIELD

struct UnitParameters {
  std::array<StopSolenoidParameters, plant::kLines> stop_solenoid;
  std::array<StartRelayParameters, plant::kLines> start_relay;
  std::array<ThrottleValveParameters, plant::kLines> throttle_valve;
  std::array<GearValveParameters, plant::kLines> gear_valve;
  std::array<DirectionValveParameters, plant::kLines> direction_valve;
  std::array<MeshSwitchParameters, plant::kLines> mesh_switch;
  std::array<OilSwitchParameters, plant::kLines> oil_switch;
  std::array<RunningContactParameters, plant::kLines> running_contact;
  std::array<FireParameters, plant::kLines> fire;
  std::array<DeskParameters, plant::kCabs> desk;
  RelayParameters relay;
  AirSwitchParameters air_switch;
  ChargeRelayParameters charge_relay;
  LoadParameters load;
  HandParameters hands;
};

struct UnitParameterInfo {
  std::string name;
  std::size_t offset;  ///< of the double inside UnitParameters
  double standard, lowest, highest;
  std::string_view unit, text;
  [[nodiscard]] double& of(UnitParameters& p) const;
  [[nodiscard]] double of(const UnitParameters& p) const;
};

/// All of them in a fixed order; none has the name of a plant parameter.
[[nodiscard]] const std::vector<UnitParameterInfo>& unitParameterTable();
/// As plant::findParameters: one for an exact name, both when the instance number is left out.
[[nodiscard]] std::vector<const UnitParameterInfo*> findUnitParameters(std::string_view written);

}  // namespace cabwright::unit
