// SPDX-License-Identifier: GPL-3.0-or-later
// Each family of the catalogue in a run of its own: what is set up, what is done, and the signal
// somebody there perceives, held against the same run without the fault.
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "symptom_rig.h"

namespace cabwright::fault {
namespace {

using namespace cabwright::testing;
using enum Reading;

// ---- set-ups -----------------------------------------------------------------------------------

// Teeth that face gaps, so that nothing but the fault keeps a drive out of mesh.
Setup standing() {
  Setup s;
  for (auto& line : s.start.plant.line) {
    line.tooth_phase_deg = 4.0;
    line.coolant_c = line.oil_c = 70.0;
  }
  return s;
}
Setup idling() {
  Setup s = standing();
  for (auto& line : s.start.plant.line) {
    line.crank_rpm = 420.0;
    line.latch_tripped = 0.0;
  }
  return s;
}
Setup engine1Idling() {
  Setup s = idling();
  s.start.plant.line[1].crank_rpm = 0.0;
  s.start.plant.line[1].latch_tripped = 1.0;
  return s;
}
Setup at(const std::string& place, Setup s) {
  s.start.place = place;
  return s;
}
Setup with(std::vector<unit::Setting> controls, Setup s) {
  s.start.controls.insert(s.start.controls.end(), controls.begin(), controls.end());
  return s;
}
Setup handbrakesOff(Setup s) {
  return with({{"cab1.handbrake", "off"}, {"cab2.handbrake", "off"}}, std::move(s));
}
Setup rolling(double mph, Setup s) {
  s = handbrakesOff(std::move(s));
  s.start.plant.speed_mph = mph;
  return s;
}
Setup onGrade(double gradient, Setup s) {
  s.gradient = gradient;
  return s;
}
Setup withAir(double main_psi, double control_psi, Setup s) {
  s.start.plant.main_psi = main_psi;
  s.start.plant.control_psi = control_psi;
  return s;
}
Setup withRelease(double inhg, Setup s) {
  s.start.plant.release_pipe_inhg = inhg;
  return s;
}
Setup deviceEmpty(Setup s) {
  s.start.plant.cab[0].device_psi = 0.0;
  return s;
}
Setup warm(double coolant_c, Setup s) {
  for (auto& line : s.start.plant.line) line.coolant_c = coolant_c;
  return s;
}
Setup coldAtEngine1() {
  Setup s = at("engine1", standing());
  s.start.plant.ambient_c = 8.0;
  for (auto& line : s.start.plant.line) line.coolant_c = line.oil_c = 8.0;
  return with({{"engine1.switch", "ground"}, {"engine1.hand_throttle", "full"}}, s);
}
Setup cab2Leads() {
  Setup s = standing();
  s.start.place = "cab2";
  s.start.objects = {
      {"brake_handle", "cab2"}, {"reversing_lever", "cab2"}, {"control_key", "cab2"}};
  s.start.controls = {{"cab2.key", "on"}};
  return s;
}

// ---- deeds -------------------------------------------------------------------------------------

using Deeds = std::vector<Deed>;
Deeds operator+(Deeds a, const Deeds& b) {
  a.insert(a.end(), b.begin(), b.end());
  return a;
}

const Deeds kHold{{0.1, "hold cab1.device"}};
const Deeds kForward{{0.1, "hold cab1.device"}, {0.2, "set cab1.reverser forward"}};
const Deeds kForwardFromAfar{{0.1, "scenario: set cab1.reverser forward"}};
Deeds drive(int gear, int notch) {
  return kForward + Deeds{{3.0, "set cab1.gear " + std::to_string(gear)},
                          {5.0, "set cab1.throttle " + std::to_string(notch)}};
}
Deeds notch(int n) { return kForward + Deeds{{0.5, "set cab1.throttle " + std::to_string(n)}}; }
Deeds gearFromAfar(int gear) {
  return kForwardFromAfar + Deeds{{1.0, "scenario: set cab1.gear " + std::to_string(gear)}};
}
Deeds notchFromAfar(int n) {
  return Deeds{{0.1, "scenario: set cab1.device down"},
               {0.1, "scenario: set cab1.reverser forward"},
               {0.5, "scenario: set cab1.throttle " + std::to_string(n)}};
}
const Deeds kCrank = kForward + Deeds{{0.5, "hold cab1.start1"}};
const Deeds kCrankFromAfar{{0.1, "scenario: set cab1.device down"},
                           {0.1, "scenario: set cab1.reverser forward"},
                           {0.5, "scenario: set cab1.start1 in"}};
const Deeds kGroundStart{{0.2, "hold engine1.start"}};
const Deeds kApply{{0.2, "set cab1.brake full"}};
const Deeds kApplyAndLap{{0.2, "set cab1.brake full"}, {4.0, "set cab1.brake lap"}};
const Deeds kRelease = kHold + Deeds{{0.2, "set cab1.brake release"}};
const Deeds kLetGo =
    kForward + Deeds{{0.5, "set cab1.brake release"}, {2.0, "release cab1.device"}};

const Deeds kChargeAndLetGo =
    kForward + Deeds{{0.5, "set cab1.brake release"}, {9.0, "release cab1.device"}};

// ---- the table ---------------------------------------------------------------------------------

// clang-format off
const std::vector<SymptomRow> kRows{
    // final drives
    {"final_drive1.tooth_on_tooth", 0, standing(), kForward, {"cab1.lamp_air", kEnd, 0, 5}, -0.5},
    {"final_drive1.burred_teeth", 0, idling(), kForward, {"cab1.lamp_air", kEnd, 0, 20}, -0.5},
    {"final_drive1.shift_leak", 0, at("engine1", standing()), kForwardFromAfar, {"heard.hiss", kEnd, 0, 3}, 0.3},
    {"final_drive1.shift_sticks", 0, standing(), kForward, {"engine1.thump", kMax, 0, 5}, -0.5},
    {"final_drive1.shift_frozen", 98, standing(), kForward, {"engine1.thump", kMax, 0, 2}, -0.5},
    {"final_drive1.forward_valve_open", 0, standing(), {}, {"engine1.thump", kMax, 0, 5}, 0.5},
    {"final_drive1.forward_valve_shut", 0, standing(), kForward, {"engine1.thump", kMax, 0, 5}, -0.5},
    {"final_drive1.reverse_valve_open", 0, standing(), {}, {"engine1.thump", kMax, 0, 5}, 0.5},
    {"final_drive1.reverse_valve_shut", 0, standing(), {{0.1, "hold cab1.device"}, {0.2, "set cab1.reverser reverse"}}, {"engine1.thump", kMax, 0, 5}, -0.5},
    {"final_drive1.pipes_crossed", 0, handbrakesOff(idling()), drive(1, 2), {"cab1.speed", kEnd, 0, 12}, -1},
    {"final_drive1.dog_worn", 0, handbrakesOff(idling()), drive(1, 4), {"cab1.lamp_air", kMin, 5, 12}, -0.5},
    {"final_drive1.mesh_switch_made", 0, with({{"engine1.air_cock", "shut"}}, standing()), kForward, {"cab1.lamp_air", kEnd, 0, 5}, 0.5},
    {"final_drive1.mesh_switch_open", 0, standing(), kForward, {"cab1.lamp_air", kEnd, 0, 5}, -0.5},
    {"final_drive1.pin_in", 0, handbrakesOff(idling()), drive(1, 2), {"cab1.rpm1", kMax, 5, 9}, 100},
    {"final_drive1.air_cock_shut", 0, standing(), kForward, {"engine1.thump", kMax, 0, 5}, -0.5},
    {"coupling1.oil_low", 0, handbrakesOff(idling()), drive(1, 3), {"cab1.rpm1", kMean, 6, 9}, 50},
    {"freewheel1.slips", 0, handbrakesOff(idling()), drive(1, 3), {"cab1.rpm1", kMax, 6, 9}, 100},
    {"freewheel1.seized", 0, handbrakesOff(idling()), drive(1, 4) + Deeds{{25.0, "set cab1.throttle idle"}}, {"cab1.rpm1", kMean, 30, 33}, 100},
    // gearboxes
    {"gearbox1.band1_worn", 0, handbrakesOff(idling()), drive(1, 4), {"cab1.rpm1", kMax, 6, 9}, 100},
    {"gearbox1.band1_leak", 0, at("engine1", standing()), gearFromAfar(1), {"heard.hiss", kEnd, 0, 4}, 0.2},
    {"gearbox1.band1_slow", 97, handbrakesOff(idling()), drive(1, 3), {"cab1.rpm1", kMax, 5, 8}, 100},
    {"gearbox1.drum1_seized", 0, handbrakesOff(idling()), notch(3) + kRelease, {"cab1.speed", kEnd, 0, 12}, 1},
    {"gearbox1.gear1_valve_open", 0, handbrakesOff(idling()), notch(3), {"cab1.speed", kEnd, 0, 12}, 1},
    {"gearbox1.gear1_valve_shut", 0, handbrakesOff(idling()), drive(1, 2), {"cab1.rpm1", kMax, 5, 9}, 100},
    {"gearbox1.clutch_worn", 85, handbrakesOff(idling()), drive(4, 4), {"cab1.rpm1", kMax, 6, 9}, 100},
    {"gearbox1.clutch_leak", 0, at("engine1", standing()), gearFromAfar(4), {"heard.hiss", kEnd, 0, 4}, 0.2},
    {"gearbox1.two_bands_on", 0, idling(), notch(2), {"cab1.rpm1", kMean, 4, 6}, -100},
    {"gearbox1.oil_low", 90, handbrakesOff(idling()), drive(1, 4) + Deeds{{40.0, "set cab1.gear 2"}, {60.0, "set cab1.gear 3"}, {80.0, "set cab1.gear 4"}}, {"cab1.speed", kEnd, 0, 110}, -0.5},
    // engines
    {"engine1.hard_to_fire", 0, coldAtEngine1(), kGroundStart, {"engine1.note", kEnd, 0, 12}, -150},
    {"engine1.air_in_fuel", 0, coldAtEngine1(), kGroundStart, {"engine1.note", kEnd, 0, 12}, -150},
    {"engine1.water_in_fuel", 0, idling(), {}, {"engine1.firing_even", kMean, 1, 5}, -0.2},
    {"engine1.fuel_leak", 400, idling(), {}, {"engine1.note", kEnd, 0, 60}, -300},
    {"engine1.fuel_cock_shut", 0, idling(), {}, {"engine1.note", kEnd, 0, 40}, -300},
    {"engine1.low_compression", 0, coldAtEngine1(), kGroundStart, {"engine1.note", kEnd, 0, 12}, -150},
    {"engine1.injector_out", 0, idling(), {}, {"engine1.firing_even", kMean, 1, 5}, -0.1},
    {"engine1.air_filter_blocked", 40, coldAtEngine1(), kGroundStart, {"engine1.note", kEnd, 0, 12}, -150},
    {"engine1.governor_hunts", 0, idling(), notch(2) + Deeds{{6.0, "set cab1.throttle idle"}}, {"engine1.note", kSwing, 14, 20}, 20},
    {"engine1.rack_sticks", 0, idling(), notch(4), {"engine1.note", kEnd, 0, 2.5}, -100},
    {"engine1.hand_throttle_out", 0, idling(), {}, {"engine1.note", kEnd, 0, 10}, 100},
    {"engine1.coolant_leak", 60, idling(), {}, {"cab1.lamp_engine1", kEnd, 0, 80}, -0.5},
    {"engine1.oil_low", 0, engine1Idling(), notch(4), {"engine1.oil_gauge", kEnd, 0, 20}, -10},
    {"engine1.oil_switch_made", 0, idling(), {{0.1, "instructor: fault engine1.oil_level 0.02"}}, {"cab1.lamp_engine1", kEnd, 0, 5}, 0.5},
    {"engine1.thermostat_shut", 0, warm(82, idling()), notch(4), {"engine1.coolant_gauge", kEnd, 0, 120}, 1},
    {"engine1.fan_lost", 0, warm(82, idling()), notch(4), {"engine1.coolant_gauge", kEnd, 0, 120}, 1},
    {"engine1.radiator_blocked", 95, warm(82, idling()), notch(4), {"engine1.coolant_gauge", kEnd, 0, 120}, 1},
    {"engine1.trips_falsely", 0, idling(), {}, {"cab1.lamp_engine1", kEnd, 0, 10}, -0.5},
    {"engine1.stop_solenoid_dead", 0, idling(), kForward + Deeds{{0.5, "hold cab1.stop1"}}, {"cab1.lamp_engine1", kEnd, 0, 20}, 0.5},
    {"engine1.oil_switch_open", 0, idling(), {}, {"cab1.lamp_engine1", kEnd, 0, 2}, -0.5},
    {"engine1.fire", 0, idling(), {}, {"cab1.fire_bell", kEnd, 0, 1}, 0.5},
    {"engine1.fire_line_broken", 0, idling(), {{0.1, "hold cab1.fire_test"}}, {"cab1.fire_bell", kEnd, 0, 1}, -0.5},
    {"engine1.fire_line_false", 0, idling(), {}, {"cab1.fire_bell", kEnd, 0, 1}, 0.5},
    {"engine1.fire_bottle_empty", 0, at("engine1", idling()), {{0.1, "instructor: fault fire1.burns 1"}, {0.5, "set engine1.fire_bottle pulled"}}, {"engine1.fire", kEnd, 0, 2}, 0.5},
    {"engine1.switch_off", 0, idling(), {}, {"cab1.lamp_engine1", kEnd, 0, 2}, -0.5},
    // starting, charging, circuits
    {"starter1.dead", 0, standing(), kCrank, {"engine1.note", kMax, 0, 2}, -50},
    {"starter1.weak", 0, standing(), kCrank, {"engine1.note", kMean, 1, 2}, -20},
    {"starter1.pinion_sticks", 0, standing(), notch(2) + Deeds{{2.0, "hold cab1.start1"}, {7.0, "release cab1.start1"}}, {"engine1.grind", kEnd, 0, 12}, 0.5},
    {"starter1.relay_welded", 0, standing(), {}, {"engine1.grind", kMax, 0.5, 2}, 0.5},
    {"starter1.relay_dead", 0, standing(), kCrank, {"heard.click", kMax, 0.5, 2}, -0.5},
    {"generator1.dead", 0, engine1Idling(), notch(2), {"cab1.lamp_charge", kEnd, 0, 30}, 0.5},
    {"generator1.weak", 95, engine1Idling(), notch(2), {"cab1.lamp_charge", kEnd, 0, 30}, 0.5},
    {"desk1.start1_dead", 0, standing(), kCrank, {"heard.click", kMax, 0.5, 2}, -0.5},
    {"battery.weak", 0, standing(), kCrank, {"cupboard.volts", kMin, 0.5, 2}, -1},
    {"battery.flat", 0, standing(), kCrank, {"cupboard.volts", kMin, 0.5, 2}, -3},
    {"battery.cell_dead", 0, standing(), {}, {"cupboard.volts", kEnd, 0, 3}, -1.5},
    {"battery.terminals_corroded", 0, standing(), kCrank, {"cupboard.volts", kMin, 0.5, 2}, -1},
    {"battery.earth_fault", 4.9, with({{"cab1.key", "off"}}, standing()), {}, {"cupboard.volts", kEnd, 0, 600}, -0.05},
    {"battery.load_left_on", 0, standing(), {}, {"cupboard.volts", kEnd, 0, 10}, -0.1},
    {"circuits.relay_dead", 0, standing(), {}, {"cab1.lamp_charge", kEnd, 0, 1}, -0.5},
    {"circuits.battery_switch_open", 0, standing(), {}, {"cab1.lamp_charge", kEnd, 0, 1}, -0.5},
    {"circuits.breaker_control_out", 0, standing(), {}, {"cab1.lamp_charge", kEnd, 0, 1}, -0.5},
    {"circuits.breaker_start_out", 0, standing(), kCrank, {"heard.click", kMax, 0.5, 2}, -0.5},
    {"circuits.breaker_lamps_out", 0, standing(), {}, {"cab1.lamp_charge", kEnd, 0, 1}, -0.5},
    {"circuits.breaker_lights_out", 0, with({{"cab1.white_lamps", "on"}}, standing()), {}, {"end1.white", kEnd, 0, 1}, -0.5},
    {"circuits.jumper_half_in", 0, cab2Leads(), {{0.1, "hold cab2.device"}, {0.2, "set cab2.reverser forward"}}, {"cab2.lamp_air", kEnd, 0, 5}, -0.5},
    {"desk1.key_dead", 0, standing(), {}, {"cab1.lamp_charge", kEnd, 0, 1}, -0.5},
    {"desk1.reverser_dead", 0, standing(), kForward, {"engine1.thump", kMax, 0, 5}, -0.5},
    {"desk1.gear_contact_dead", 1, handbrakesOff(idling()), drive(1, 3), {"cab1.speed", kEnd, 0, 12}, -1},
    // air
    {"compressor1.belt_gone", 0, withAir(40, 40, idling()), {}, {"cab1.air", kEnd, 0, 60}, -2},
    {"compressor1.belt_slips", 0, withAir(40, 40, idling()), {}, {"cab1.air", kEnd, 0, 60}, -1},
    {"compressor1.worn", 0, withAir(80, 80, idling()), {}, {"cab1.air", kEnd, 0, 90}, -1},
    {"compressor1.stuck_loaded", 0, withAir(94, 94, idling()), {}, {"cab1.air", kEnd, 0, 90}, 1},
    {"compressor1.stuck_unloaded", 0, withAir(40, 40, idling()), {}, {"cab1.air", kEnd, 0, 60}, -2},
    {"throttle_motor1.leak", 0, at("engine1", idling()), notchFromAfar(2), {"heard.hiss", kEnd, 0, 4}, 0.2},
    {"throttle_motor1.frozen", 99, idling(), notch(2), {"engine1.note", kEnd, 0, 3}, -200},
    {"throttle_motor1.valve_dead", 0, idling(), notch(2), {"engine1.note", kEnd, 0, 5}, -200},
    {"throttle_motor1.valve_stuck_open", 0, idling(), {}, {"engine1.note", kEnd, 0, 6}, 200},
    {"air.main_leak", 0, at("side1", standing()), {}, {"heard.hiss", kEnd, 0, 2}, 0.3},
    {"air.control_leak", 0, standing(), {}, {"cab1.air", kEnd, 0, 120}, -3},
    {"air.main_drain_open", 0, at("side1", standing()), {}, {"heard.hiss", kEnd, 0, 2}, 0.5},
    {"air.control_drain_open", 0, standing(), {}, {"cab1.air", kEnd, 0, 60}, -10},
    {"air.check_valve_blocked", 0, withAir(95, 60, standing()), {}, {"cab1.air", kEnd, 0, 5}, -5},
    {"air.check_valve_leaks", 0, with({{"drain_main", "open"}}, standing()), {}, {"cab1.air", kEnd, 0, 60}, -10},
    {"air.unloading_low", 0, withAir(78, 78, idling()), {}, {"cab1.air", kMax, 0, 120}, -3},
    {"air.safety_valve_low", 0, at("side1", withAir(94, 94, idling())), {{0.1, "instructor: fault compressor1.unloader_stuck 1"}}, {"heard.hiss", kMax, 10, 120}, 0.2},
    {"air.switch_open", 0, standing(), kForward, {"cab1.lamp_air", kEnd, 0, 5}, -0.5},
    {"air.switch_made", 0, withAir(64, 64, standing()), kForward, {"cab1.lamp_air", kEnd, 0, 8}, 0.5},
    {"air.horn_leaks", 0, standing(), {{0.5, "hold cab1.horn low"}}, {"cab1.air", kEnd, 0, 4}, -1},
    // vacuum brake
    {"exhauster1.belt_gone", 0, withRelease(10, idling()), {}, {"engine1.hum", kEnd, 0, 5}, -0.5},
    {"exhauster1.belt_slips", 0, withRelease(10, idling()), {}, {"engine1.hum", kEnd, 0, 5}, -0.3},
    {"exhauster1.worn", 0, withRelease(22, engine1Idling()), {}, {"cab1.release_pipe", kEnd, 0, 120}, -1},
    {"exhauster1.non_return_leaks", 0, standing(), {}, {"cab1.release_pipe", kEnd, 0, 30}, -2},
    {"drivers_valve1.feed_high", 0, idling(), kRelease, {"cab1.train_pipe", kEnd, 0, 60}, 1},
    {"drivers_valve1.feed_low", 0, idling(), kApplyAndLap + Deeds{{8, "set cab1.brake release"}}, {"cab1.train_pipe", kEnd, 0, 90}, -1},
    {"drivers_valve1.passes_to_air", 0, standing(), {}, {"cab1.train_pipe", kEnd, 0, 60}, -1},
    {"drivers_valve1.passes_to_release", 0, standing(), {{0.2, "set cab1.brake full"}, {1.2, "set cab1.brake lap"}}, {"cab1.train_pipe", kEnd, 0, 25}, 1},
    {"end1.hose_off", 0, at("end1", standing()), {}, {"heard.hiss", kMax, 0, 1}, 0.5},
    {"cab1.guards_valve_open", 0, standing(), {}, {"cab1.hiss", kMax, 0, 2}, 0.3},
    {"handbrake1.slack", 0, onGrade(-0.025, with({{"cab2.handbrake", "off"}}, standing())), {}, {"cab1.speed", kEnd, 0, 20}, 1},
    {"handbrake1.pawl_worn", 0, standing(), {}, {"cab1.handbrake", kEnd, 0, 5}, -0.5},
    {"handbrake1.left_on", 0, handbrakesOff(idling()), drive(1, 3), {"cab1.speed", kEnd, 0, 15}, -1},
    {"vacuum.train_pipe_leak", 0, standing(), {}, {"cab1.train_pipe", kEnd, 0, 60}, -2},
    {"vacuum.hose_chafed", 0, standing(), {}, {"cab1.train_pipe", kEnd, 0, 60}, -5},
    {"vacuum.hose_parted", 0, standing(), {}, {"cab1.train_pipe", kEnd, 0, 10}, -15},
    {"vacuum.release_pipe_leak", 0, standing(), {}, {"cab1.release_pipe", kEnd, 0, 60}, -2},
    {"vacuum.guards_valves_pass", 0, standing(), {}, {"cab2.hiss", kEnd, 0, 2}, 0.02},
    {"axlebox.hot", 0, rolling(30, idling()), kForward, {"cab1.speed", kEnd, 0, 60}, -3},
    {"vacuum.alarm_pulled", 0, idling(), kRelease, {"cab1.train_pipe", kEnd, 0, 20}, -4},
    {"brake.poor_friction", 0, rolling(30, idling()), kApply, {"cab1.speed", kEnd, 0, 12}, 3},
    {"brake_cylinder1.ball_valve_leaks", 0, handbrakesOff(standing()), kApplyAndLap, {"side1.blocks_on", kEnd, 0, 120}, -0.5},
    {"brake_cylinder1.chamber_leak", 0, handbrakesOff(standing()), kApplyAndLap, {"side1.blocks_on", kEnd, 0, 240}, -0.5},
    {"brake_cylinder1.sticks_on", 0, handbrakesOff(standing()), {}, {"side1.blocks_on", kEnd, 0, 20}, 0.5},
    {"brake_cylinder1.block_missing", 7, rolling(30, idling()), kApply, {"cab1.speed", kEnd, 0, 12}, 0.5},
    {"brake_cylinder1.blocks_worn", 120, handbrakesOff(standing()), kApply, {"side1.blocks_on", kMean, 0, 10}, -0.02},
    // safety device
    {"safety_device1.choke_blocked", 0, idling(), kLetGo, {"cab1.train_pipe", kEnd, 0, 10}, 5},
    {"safety_device1.choke_wide", 0, idling(), kLetGo, {"cab1.train_pipe", kEnd, 0, 6}, -5},
    {"safety_device1.valve_stuck", 0, idling(), kLetGo, {"cab1.train_pipe", kEnd, 0, 15}, 10},
    {"safety_device1.reduced_low", 0, deviceEmpty(idling()), kChargeAndLetGo, {"cab1.train_pipe", kEnd, 0, 13}, -5},
    {"safety_device1.cock_shut", 0, idling(), kLetGo, {"cab1.train_pipe", kEnd, 0, 15}, 10},
    {"safety_device1.handle_contact_made", 0, idling(), kLetGo, {"cab1.lamp_device", kEnd, 0, 3}, 0.5},
    {"safety_device1.handle_valve_held", 0, idling(), kLetGo, {"cab1.train_pipe", kEnd, 0, 15}, 10},
    // cabs, ends
    {"cab1.bell_dead", 0, standing(), {{0.1, "guard: ring bell 2"}}, {"cab1.bell_rings", kMax, 0, 4}, -0.5},
    {"cab1.bell_button_dead", 0, standing(), {{0.1, "ring cab1.bell 3-3"}}, {"heard.bell", kEnd, 0, 15}, -30},
    {"cab1.horn_dead", 0, standing(), {{0.1, "hold cab1.horn low"}}, {"heard.horn", kMax, 0, 2}, -0.5},
    {"cab1.wiper_dead", 0, standing(), {{0.1, "set cab1.wiper on"}}, {"cab1.wiper_sweeps", kEnd, 0, 1}, -0.5},
    {"cab1.fire_bell_dead", 0, standing(), {{0.1, "hold cab1.fire_test"}}, {"cab1.fire_bell", kEnd, 0, 1}, -0.5},
    {"end1.white_lamps_dead", 0, with({{"cab1.white_lamps", "on"}}, standing()), {}, {"end1.white", kEnd, 0, 1}, -0.5},
    {"end1.tail_lamp_out", 0, with({{"cab1.red_lamps", "on"}}, standing()), {}, {"end1.red", kEnd, 0, 1}, -0.5},
    {"end1.tail_lamp_missing", 0, with({{"cab1.red_lamps", "on"}}, standing()), {}, {"end1.red", kEnd, 0, 1}, -0.5},
    // instruments
    {"cab1.lamp_charge_blown", 0, standing(), {}, {"cab1.lamp_charge", kEnd, 0, 1}, -0.5},
    {"cab1.lamp_fire_lit", 0, standing(), {}, {"cab1.lamp_fire", kEnd, 0, 1}, 0.5},
    {"cab1.train_pipe_stuck", 0, standing(), kApply, {"cab1.train_pipe", kEnd, 0, 10}, 10},
    {"cab1.air_offset", 0, standing(), {}, {"cab1.air", kEnd, 0, 2}, 5},
    {"cab1.train_pipe_slow", 0, standing(), kApply, {"cab1.train_pipe", kEnd, 0, 8}, 4},
    {"cab1.air_dead", 0, standing(), {}, {"cab1.air", kEnd, 0, 5}, -50},
};
// clang-format on

// What has no run here, and why.
const std::map<std::string, std::string> kOnlyByLooking{
    {"end#.display_wrong", "a word on glass: the walk round finds it"},
    {"end#.flag", "hangs there: the walk round finds it"},
    {"wheels@.flat", "the mark of a dragged wheel: the walk round finds it"},
    {"cardan#.bolt_gone", "an empty hole: the walk round finds it"},
    {"end#.board", "hangs there: the walk round finds it"},
    {"side#.flag", "hangs there: the walk round finds it"},
    {"engine#.fitter", "stands there: the walk round finds him"},
    {"cab#.detonators_missing", "an empty bracket: the walk round finds it"},
    {"cab#.extinguisher_missing", "an empty bracket: the walk round finds it"},
    {"cab#.seal_gone", "the cock works as ever: the walk round finds it"},
    {"door#.open", "stands open: the walk round finds it"},
};

TEST(SymptomTable, HoldsEachFamilyOrSaysWhyNot) {
  std::set<std::string> covered;
  for (const SymptomRow& row : kRows) {
    const FaultSpec* spec = findFault(row.fault);
    ASSERT_TRUE(spec) << row.fault;
    EXPECT_TRUE(covered.insert(spec->family).second) << row.fault;
    const unit::Signal signal = unit::findSignal(row.look.signal).value();
    const bool control = unit::findControl(row.look.signal).has_value();
    EXPECT_TRUE(unit::signalInfo(signal).layer == unit::Layer::kShown || control) << row.fault;
  }
  for (const auto& [family, why] : kOnlyByLooking) {
    EXPECT_TRUE(covered.insert(family).second) << family;
    EXPECT_FALSE(why.empty());
  }
  std::set<std::string> families;
  for (const FaultSpec& spec : faultCatalogue()) families.insert(spec.family);
  EXPECT_EQ(covered, families);
}

// One line of the catalogue with its figures, for whoever reads what the tests print:
// SYMPTOM | fault, size | signal, what of it, when | without | with | unit
void printSymptom(const SymptomRow& row, double sound, double faulty) {
  static const std::map<Reading, std::string> kWords{{kEnd, "at the end"},
                                                     {kMax, "highest"},
                                                     {kMin, "lowest"},
                                                     {kMean, "mean"},
                                                     {kSwing, "swing"}};
  const fault::ArmedFault fault = armed(row.fault, row.size);
  const SizeRange& range = fault.spec->size;
  const std::string size =
      range.exists() ? fmt::format(", {:g} {} {}", fault.size, range.unit, range.of) : "";
  const Look& look = row.look;
  const std::string_view unit = unit::signalInfo(unit::findSignal(look.signal).value()).unit;
  fmt::print("SYMPTOM | {}{} | {} {}, {:g} to {:g} s | {:.4g} | {:.4g} | {}\n", row.fault, size,
             look.signal, kWords.at(look.reading), look.from_s, look.to_s, sound, faulty, unit);
}

TEST(SymptomTable, EachFaultIsPerceivedAgainstTheSameRunWithoutIt) {
  for (const SymptomRow& row : kRows) {
    const double sound = readRun(row, false), faulty = readRun(row, true);
    const double more = faulty - sound;
    printSymptom(row, sound, faulty);
    EXPECT_TRUE(row.more > 0 ? more >= row.more : more <= row.more)
        << row.fault << ": " << row.look.signal << " " << sound << " without, " << faulty
        << " with, wanted a difference of " << row.more;
  }
}

}  // namespace
}  // namespace cabwright::fault
