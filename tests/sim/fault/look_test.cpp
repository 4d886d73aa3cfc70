// SPDX-License-Identifier: GPL-3.0-or-later
// The whole catalogue, fault by fault: either somebody who walks round sees it, at this thing and
// with this judgement right, or it cannot be seen by looking, and then something else shows it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdio>
#include <map>
#include <set>

#include "fault_rig.h"
#include "unit/instruments.h"

namespace cabwright::fault {
namespace {

using cabwright::testing::armed;
using cabwright::testing::FaultRig;

/// "#" and "@" as in the catalogue, "&" for the side of the car of brake cylinder "@".
struct Seen {
  std::string item, condition;
  std::string verdict = "defect";  ///< the right one
};
struct Row {
  std::string family;
  std::vector<Seen> seen;  ///< first the thing it is found at
  std::string signal;      ///< not to be seen: what shows it instead
};

// clang-format off
const std::vector<Row> kRows{
    // final drive: inside its case. The lamp and the ear speak for it.
    {"final_drive#.tooth_on_tooth", {}, "cab1.lamp_air"},
    {"final_drive#.burred_teeth", {}, "cab1.lamp_air"},
    {"final_drive#.shift_leak", {}, "heard.hiss"},
    {"final_drive#.shift_sticks", {}, "engine#.thump"},
    {"final_drive#.shift_frozen", {{"side#.drains", "ice"}}, ""},
    {"final_drive#.forward_valve_open", {}, "engine#.thump"},
    {"final_drive#.forward_valve_shut", {}, "engine#.thump"},
    {"final_drive#.reverse_valve_open", {}, "engine#.thump"},
    {"final_drive#.reverse_valve_shut", {}, "engine#.thump"},
    {"final_drive#.pipes_crossed", {}, "cab1.lamp_air"},
    {"final_drive#.dog_worn", {}, "cab1.rpm#"},
    {"final_drive#.mesh_switch_made", {}, "cab1.lamp_air"},
    {"final_drive#.mesh_switch_open", {}, "cab1.lamp_air"},
    {"final_drive#.pin_in", {{"engine#.final_drive", "pin_in"}}, ""},
    {"final_drive#.air_cock_shut", {{"engine#.final_drive", "cock_shut"}}, ""},
    {"coupling#.oil_low", {{"engine#.coupling", "varnish"}}, ""},
    {"freewheel#.slips", {}, "cab1.rpm#"},
    {"freewheel#.seized", {}, "cab1.rpm#"},
    // gearbox
    {"gearbox#.band@_worn", {{"engine#.gearbox", "BURNT@"}}, ""},
    {"gearbox#.band@_leak", {}, "heard.hiss"},
    {"gearbox#.band@_slow", {}, "cab1.rpm#"},
    {"gearbox#.drum@_seized", {}, "cab1.rpm#"},
    {"gearbox#.gear@_valve_open", {}, "cab1.rpm#"},
    {"gearbox#.gear@_valve_shut", {}, "cab1.rpm#"},
    {"gearbox#.clutch_worn", {{"engine#.gearbox", "burnt_clutch"}}, ""},
    {"gearbox#.clutch_leak", {}, "heard.hiss"},
    {"gearbox#.two_bands_on", {}, "cab1.rpm#"},
    {"gearbox#.oil_low", {{"engine#.gearbox", "wet"}}, ""},
    // engine
    {"engine#.hard_to_fire", {}, "engine#.smoke"},
    {"engine#.air_in_fuel", {{"engine#.tray", "pool_rainbow"}}, ""},
    {"engine#.water_in_fuel", {{"engine#.fuel", "drops"}}, ""},
    {"engine#.fuel_leak", {{"engine#.tray", "pool_fuel"}}, ""},
    {"engine#.fuel_cock_shut", {{"engine#.cock", "shut"}}, ""},
    {"engine#.low_compression", {}, "engine#.firing_even"},
    {"engine#.injector_out", {}, "engine#.firing_even"},
    {"engine#.air_filter_blocked", {{"engine#.air_filter", "blocked"}}, ""},
    {"engine#.governor_hunts", {}, "engine#.note"},
    {"engine#.rack_sticks", {}, "engine#.note"},
    {"engine#.hand_throttle_out", {{"engine#.throttle", "out"}}, ""},
    {"engine#.coolant_leak", {{"engine#.tray", "pool_green"}}, ""},
    {"engine#.oil_low", {{"engine#.oil", "low"}}, ""},
    {"engine#.thermostat_shut", {}, "engine#.coolant_gauge"},
    {"engine#.fan_lost", {{"engine#.fan", "lost"}}, ""},
    {"engine#.radiator_blocked", {{"engine#.fan", "leaves"}}, ""},
    {"engine#.trips_falsely", {}, "cab1.lamp_engine#"},
    {"engine#.stop_solenoid_dead", {}, "cab1.lamp_engine#"},
    {"engine#.oil_switch_open", {}, "cab1.lamp_engine#"},
    {"engine#.oil_switch_made", {}, "cab1.lamp_engine#"},
    {"engine#.fire", {{"engine#.cover", "fire"}}, ""},
    {"engine#.fire_line_broken", {}, "cab1.fire_bell"},
    {"engine#.fire_line_false", {}, "cab1.fire_bell"},
    {"engine#.fire_bottle_empty", {{"engine#.bottle", "discharged"}}, ""},
    {"engine#.switch_off", {{"engine#.isolating_switch", "off"}}, ""},
    // starting and electrics
    {"starter#.dead", {}, "engine#.grind"},
    {"starter#.weak", {}, "engine#.note"},
    {"starter#.pinion_sticks", {}, "engine#.grind"},
    {"starter#.relay_welded", {{"cupboard.volts_read", "low"}}, ""},
    {"starter#.relay_dead", {}, "heard.click"},
    {"generator#.dead", {}, "cab1.lamp_charge"},
    {"generator#.weak", {}, "cab1.lamp_charge"},
    {"desk#.start@_dead", {}, "heard.click"},
    {"battery.weak", {}, "cupboard.volts"},
    {"battery.flat", {{"cupboard.volts_read", "low"}}, ""},
    {"battery.cell_dead", {{"cupboard.volts_read", "low"}}, ""},
    {"battery.terminals_corroded", {{"trailer1.batteries", "crust"}, {"trailer2.batteries", "crust"}}, ""},
    {"battery.earth_fault", {}, "cupboard.volts"},
    {"battery.load_left_on", {{"cupboard.breakers", "warm"}}, ""},
    {"circuits.relay_dead", {}, "cab1.lamp_charge"},
    {"circuits.battery_switch_open", {{"cupboard.battery_switch", "open", "good"}, {"cupboard.volts_read", "nothing", "good"}}, ""},
    {"circuits.breaker_control_out", {{"cupboard.breakers", "control_out"}}, ""},
    {"circuits.breaker_start_out", {{"cupboard.breakers", "start_out"}}, ""},
    {"circuits.breaker_lamps_out", {{"cupboard.breakers", "lamps_out"}}, ""},
    {"circuits.breaker_lights_out", {{"cupboard.breakers", "lights_out"}}, ""},
    {"circuits.jumper_half_in", {{"between.jumper", "half_in"}}, ""},
    {"desk#.key_dead", {}, "cab#.lamp_charge"},
    {"desk#.reverser_dead", {}, "cab#.lamp_device"},
    {"desk#.gear_contact_dead", {}, "cab1.rpm1"},
    // air
    {"compressor#.belt_gone", {{"engine#.belts", "compressor_gone"}}, ""},
    {"compressor#.belt_slips", {{"engine#.belts", "compressor_slack"}}, ""},
    {"compressor#.worn", {}, "cab1.air"},
    {"compressor#.stuck_loaded", {}, "cab1.air"},
    {"compressor#.stuck_unloaded", {}, "cab1.air"},
    {"throttle_motor#.leak", {}, "heard.hiss"},
    {"throttle_motor#.frozen", {}, "engine#.note"},
    {"throttle_motor#.valve_dead", {}, "engine#.note"},
    {"throttle_motor#.valve_stuck_open", {}, "engine#.note"},
    {"air.main_leak", {{"side1.pipes", "air_joint"}}, ""},
    {"air.control_leak", {{"side2.pipes", "air_joint"}}, ""},
    {"air.main_drain_open", {{"side1.drains", "open"}}, ""},
    {"air.control_drain_open", {{"side2.drains", "open"}}, ""},
    {"air.check_valve_blocked", {}, "cab1.air"},
    {"air.check_valve_leaks", {}, "cab1.air"},
    {"air.unloading_low", {}, "cab1.air"},
    {"air.safety_valve_low", {}, "heard.hiss"},
    {"air.switch_open", {}, "cab1.lamp_air"},
    {"air.switch_made", {}, "cab1.lamp_air"},
    {"air.horn_leaks", {}, "cab1.air"},
    // vacuum brake
    {"exhauster#.belt_gone", {{"engine#.belts", "exhauster_gone"}}, ""},
    {"exhauster#.belt_slips", {{"engine#.belts", "exhauster_slack"}}, ""},
    {"exhauster#.worn", {}, "cab1.release_pipe"},
    {"exhauster#.non_return_leaks", {}, "heard.hiss"},
    {"drivers_valve#.feed_high", {}, "cab1.train_pipe"},
    {"drivers_valve#.feed_low", {}, "cab1.train_pipe"},
    {"drivers_valve#.passes_to_air", {}, "cab#.hiss"},
    {"drivers_valve#.passes_to_release", {}, "cab1.train_pipe"},
    {"end#.hose_off", {{"end#.hoses", "hanging"}}, ""},
    {"cab#.guards_valve_open", {{"cab#.valve", "cracked_open"}}, ""},
    {"handbrake#.slack", {{"cab#.handbrake_chain", "chain_slack"}}, ""},
    {"handbrake#.pawl_worn", {{"cab#.handbrake_chain", "pawl_worn"}}, ""},
    {"handbrake#.left_on", {}, "side1.blocks_on"},  // hard on is how it should be looked at
    {"vacuum.train_pipe_leak", {{"side1.pipes", "chafed"}}, ""},
    {"vacuum.hose_chafed", {{"between.hoses", "chafed"}}, ""},
    {"vacuum.hose_parted", {{"between.hoses", "parted"}}, ""},
    {"vacuum.release_pipe_leak", {{"trailer1.underframe", "seam"}, {"trailer2.underframe", "seam"}}, ""},
    {"vacuum.guards_valves_pass", {{"cab1.valve", "passes"}, {"cab2.valve", "passes"}}, ""},
    {"axlebox.hot", {{"trailer1.axleboxes", "blue"}}, ""},
    {"wheels@.flat", {{"&.wheels", "flat"}}, ""},
    {"cardan#.bolt_gone", {{"side#.cardan", "bolt_gone"}}, ""},
    {"vacuum.alarm_pulled", {{"trailer1.alarm_telltale", "standing_out"}, {"trailer2.alarm_telltale", "standing_out"}, {"saloon.alarm", "pulled"}}, ""},
    {"brake.poor_friction", {{"side1.blocks", "glazed"}, {"side2.blocks", "glazed"}, {"trailer1.blocks", "glazed"}, {"trailer2.blocks", "glazed"}}, ""},
    {"brake_cylinder@.ball_valve_leaks", {}, "&.blocks_on"},
    {"brake_cylinder@.chamber_leak", {{"&.brake_cylinder", "bag_split"}}, ""},
    {"brake_cylinder@.sticks_on", {{"&.blocks", "frozen"}}, ""},
    {"brake_cylinder@.block_missing", {{"&.blocks", "missing"}}, ""},
    {"brake_cylinder@.blocks_worn", {{"&.brake_cylinder", "rod_far_out"}}, ""},
    // safety device
    {"safety_device#.choke_blocked", {}, "cab#.hiss"},
    {"safety_device#.choke_wide", {}, "cab#.hiss"},
    {"safety_device#.valve_stuck", {}, "cab#.train_pipe"},
    {"safety_device#.reduced_low", {}, "cab#.train_pipe"},
    {"safety_device#.cock_shut", {{"cab#.seal", "cut"}}, ""},
    {"safety_device#.handle_contact_made", {}, "cab#.lamp_device"},
    {"safety_device#.handle_valve_held", {}, "cab#.train_pipe"},
    // cabs and ends
    {"cab#.bell_dead", {}, "cab#.bell_rings"},
    {"cab#.bell_button_dead", {}, "heard.bell"},
    {"cab#.horn_dead", {{"end#.horn", "both_plugged"}}, ""},
    {"cab#.wiper_dead", {}, "cab#.wiper_sweeps"},
    {"cab#.fire_bell_dead", {}, "cab#.fire_bell"},
    {"end#.white_lamps_dead", {{"end#.lamps", "bulbs_dead"}}, ""},
    {"end#.tail_lamp_out", {{"end#.tail_lamp", "dead"}}, ""},
    {"end#.tail_lamp_missing", {{"end#.tail_lamp", "missing"}}, ""},
    {"end#.display_wrong", {{"end#.display", "wrong"}}, ""},
    {"end#.flag", {{"end#.protection", "flag"}}, ""},
    {"end#.board", {{"end#.protection", "board"}}, ""},
    {"side#.flag", {{"side#.protection", "flag"}}, ""},
    {"engine#.fitter", {{"engine#.people", "fitter"}}, ""},
    {"cab#.detonators_missing", {{"cab#.detonators", "missing"}}, ""},
    {"cab#.extinguisher_missing", {{"cab#.extinguisher", "missing"}}, ""},
    {"cab#.seal_gone", {{"cab#.seal", "seal_gone"}}, ""},
    {"door#.open", {{"side#.doors", "open"}, {"trailer#.doors", "open"}, {"saloon.doors", "DOOR#"}}, ""},
};
// clang-format on

// The numbers in a fault's name, as the catalogue fills them in.
struct Numbers {
  char hash = '1', at = '1';
};
Numbers numbersOf(const FaultSpec& spec) {
  Numbers n;
  std::size_t k = 0;
  for (char c : spec.family) {
    if (c == '#') n.hash = spec.name[k];
    if (c == '@') n.at = spec.name[k];
    ++k;
  }
  return n;
}

std::string filled(const std::string& text, const Numbers& n) {
  static const std::map<char, std::string> kSides{
      {'1', "side1"}, {'2', "side2"}, {'3', "trailer1"}, {'4', "trailer2"}};
  static const std::map<char, std::string> kBurnt{
      {'1', "burnt_first"}, {'2', "burnt_second"}, {'3', "burnt"}};
  if (text == "BURNT@") return kBurnt.at(n.at);
  if (text == "DOOR#") return n.hash == '1' ? "side1_open" : "side2_open";
  std::string out;
  for (char c : text) {
    if (c == '&') {
      out += kSides.at(n.at);
    } else {
      out += c == '#' ? n.hash : c == '@' ? n.at : c;
    }
  }
  return out;
}

// Of instruments: where a fault of each kind is found by looking.
Row rowOfInstrument(const FaultSpec& spec) {
  const std::string name = spec.where, kind = spec.family;
  const std::string place = name.substr(0, name.find('.'));
  const std::string which = name.substr(name.find('.') + 1);
  Row row{kind, {}, name};
  if (kind == "LAMP_blown") {
    row.seen = {{place + ".lamps", which.substr(5) + "_out"}};
  } else if (which == "guards_gauge" && kind != "GAUGE_slow") {
    const std::string word = kind == "GAUGE_offset" ? "reads_low" : kind.substr(6);
    row.seen = {{place + ".rear_gauge", word}};
  } else if (name == "cupboard.volts") {
    if (kind == "GAUGE_dead") row.seen = {{name + "_read", "dead"}};
  } else if (place.starts_with("cab") && (kind == "GAUGE_offset" || kind == "GAUGE_stuck")) {
    const bool pipe = which == "train_pipe" && kind == "GAUGE_offset";
    const std::string word = kind == "GAUGE_offset" ? "_off" : "_stuck";
    row.seen = {{place + ".gauges", pipe ? "needle_off" : which + word}};
  }
  return row;
}

Row rowOf(const FaultSpec& spec) {
  if (spec.system == "instruments") return rowOfInstrument(spec);
  for (const Row& row : kRows) {
    if (row.family == spec.family) return row;
  }
  ADD_FAILURE() << spec.family << ": nobody has said how it is found";
  return {};
}

// Someone standing at a thing, by day, with current in everything that is lit for looking.
unit::UnitStart lookerAt(const std::string& place) {
  unit::UnitStart s;
  s.place = place;
  const std::string cab = place == "cab2" ? "cab2" : "cab1";
  s.objects = {{"control_key", cab}};
  s.controls = {{cab + ".key", "on"},       {cab + ".lamp_test", "in"}, {"cab1.white_lamps", "on"},
                {"cab2.white_lamps", "on"}, {"cab1.red_lamps", "on"},   {"cab2.red_lamps", "on"},
                {"saloon_lights", "on"}};
  s.plant.main_psi = s.plant.control_psi = 90;
  s.plant.train_pipe_inhg = s.plant.chamber_inhg = 21;
  s.plant.release_pipe_inhg = 25;
  return s;
}

std::map<std::string, std::string> showing(const FaultRig& rig) {
  std::map<std::string, std::string> all;
  for (const unit::ItemInfo& item : unit::itemTable()) {
    const int present = rig.unit.presentCondition(item.id);
    if (present == 0) continue;
    all[std::string(item.name)] = item.conditions[static_cast<std::size_t>(present - 1)].name;
  }
  return all;
}

TEST(WalkRound, TheTableKnowsEachFamilyOnceAndNoOther) {
  std::set<std::string> families, rows;
  for (const FaultSpec& spec : faultCatalogue()) {
    if (spec.system != "instruments") families.insert(spec.family);
  }
  for (const Row& row : kRows) EXPECT_TRUE(rows.insert(row.family).second) << row.family;
  EXPECT_EQ(rows, families);
}

TEST(WalkRound, EachFaultShowsWhereTheTableSaysAndNowhereElse) {
  const FaultRig sound_rig(lookerAt("cupboard"));
  FaultRig sound = sound_rig;
  sound.run(1.5);
  const auto before = showing(sound);
  for (const FaultSpec& spec : faultCatalogue()) {
    const Row row = rowOf(spec);
    const Numbers n = numbersOf(spec);
    FaultRig rig = sound_rig;
    rig.faults.arm(armed(spec.name));
    rig.run(1.5);
    std::map<std::string, std::string> expected = before;
    for (const Seen& s : row.seen) expected[filled(s.item, n)] = filled(s.condition, n);
    EXPECT_EQ(showing(rig), expected) << spec.name;
    if (!row.seen.empty()) continue;
    const auto signal = unit::findSignal(filled(row.signal, n));
    ASSERT_TRUE(signal) << spec.name << ": " << row.signal;
    EXPECT_EQ(unit::signalInfo(*signal).layer, unit::Layer::kShown) << spec.name;
  }
}

TEST(WalkRound, WhoLooksSeesItAndIsRightToJudgeSo) {
  std::set<std::string> printed;  // LOOK | fault | thing | seen without | seen with
  for (const FaultSpec& spec : faultCatalogue()) {
    for (const Seen& s : rowOf(spec).seen) {
      const std::string name = filled(s.item, numbersOf(spec));
      const unit::ItemInfo& item = unit::itemInfo(*unit::findItem(name));
      const int wanted = *unit::findItemCondition(item, filled(s.condition, numbersOf(spec)));
      const std::string& words = item.conditions[static_cast<std::size_t>(wanted - 1)].seen;
      FaultRig rig(lookerAt(std::string(unit::placeInfo(item.place).name)));
      rig.faults.arm(armed(spec.name));
      rig.run(1.5);
      const std::string seen = rig.act("look " + name).perceived;
      EXPECT_THAT(seen, ::testing::StartsWith(words)) << spec.name;
      if (printed.insert(spec.family).second) {
        FaultRig sound(lookerAt(std::string(unit::placeInfo(item.place).name)));
        sound.run(1.5);
        const std::string before = sound.act("look " + name).perceived;
        EXPECT_NE(before, seen) << spec.name;
        std::printf("LOOK | %s | %s | %s | %s\n", spec.name.c_str(), name.c_str(), before.c_str(),
                    seen.c_str());
      }
      rig.run(item.look_s + 0.02);
      rig.act("judge " + name + " " + s.verdict);
      rig.run(0.02);
      EXPECT_EQ(rig.value("judgements.empty"), 0) << spec.name;
      EXPECT_EQ(rig.value("judgements.hits"), s.verdict == "defect" ? 1 : 0) << spec.name;
      EXPECT_EQ(rig.value("judgements.false_alarms"), 0) << spec.name;
      EXPECT_EQ(rig.value("judgements.misses"), 0) << spec.name;
    }
  }
}

TEST(WalkRound, WhatIsTooSmallToBeSeenIsNotSeen) {
  for (const auto& [name, size] :
       {std::pair("vacuum.train_pipe_leak", 0.5), std::pair("handbrake1.slack", 20.0)}) {
    FaultRig sound(lookerAt("cupboard")), rig = sound;
    rig.faults.arm(armed(name, size));
    rig.run(1.5);
    sound.run(1.5);
    EXPECT_EQ(showing(rig), showing(sound)) << name;
  }
}

TEST(WalkRound, PutRightItLooksSoundAgain) {
  for (const char* name : {"exhauster1.belt_gone", "engine2.oil_low", "vacuum.hose_chafed",
                           "cab1.air_stuck", "brake_cylinder3.block_missing"}) {
    FaultRig rig(lookerAt("cupboard"));
    rig.run(1.5);
    const auto before = showing(rig);
    rig.faults.arm(armed(name));
    rig.run(1.5);
    EXPECT_NE(showing(rig), before) << name;
    rig.faults.clear(name);
    rig.run(1.5);
    EXPECT_EQ(showing(rig), before) << name;
  }
}

}  // namespace
}  // namespace cabwright::fault
