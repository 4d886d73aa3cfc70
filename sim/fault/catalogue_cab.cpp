// SPDX-License-Identifier: GPL-3.0-or-later
// Faults of the driver's safety device, of cabs, ends and people at the unit; and of instruments.
#include <string>

#include "fault/catalogue_rows.h"
#include "unit/instruments.h"

namespace cabwright::fault {

namespace {

std::vector<FaultRow> safetyDevice() {
  return {
      {.name = "safety_device#.choke_blocked",
       .where = "cab #, choke of the safety device",
       .text = "the choke is partly blocked",
       .symptom = "device test: lamp out, brake long after 5 s, or never",
       .decision = "repeat once, time it, check cock and seal; the unit fails. Late is not works",
       .size = {"%", 10.0, 100.0, 55.0, false, "closed"},
       .gradual = true,
       .numbers = {{"safety_device#.choke_c", How::kScale, leftOf}}},
      {.name = "safety_device#.choke_wide",
       .where = "cab #, choke of the safety device",
       .text = "the choke is too wide",
       .symptom = "brake goes on well before 5 s when the hand is changed",
       .decision = "under 4 s report",
       .size = {"times", 1.2, 10.0, 2.0},
       .numbers = {{"safety_device#.choke_c", How::kScale, itself}}},
      {.name = "safety_device#.valve_stuck",
       .where = "cab #, valve of the safety device",
       .text = "the device's valve does not open",
       .symptom = "device test: lamp out, no brake at all",
       .decision = "the unit fails; never the cock to get away",
       .numbers = {{"safety_device#.valve_stuck", How::kTo, one}}},
      {.name = "safety_device#.reduced_low",
       .where = "cab #, reducing valve",
       .text = "the reducing valve gives too little",
       .symptom = "brake on sooner than 5 s; slow to reset",
       .decision = "under 4 s report",
       .size = {"psi", 5.0, 40.0, 25.0},
       .numbers = {{"safety_device#.reduced_psi", How::kAdd, lessItself}}},
      {.name = "safety_device#.cock_shut",
       .where = "cab #, isolating cock of the safety device",
       .text = "the isolating cock is shut, its seal cut and laid back to look whole",
       .symptom = "seen only by looking closely; device test: lamp out, no brake",
       .decision = "critical: report, the unit does not go",
       .acts = {{"condition cab#.seal cut", "condition cab#.seal good"}}},
      {.name = "safety_device#.handle_contact_made",
       .where = "cab #, contact under the handle",
       .text = "the contact under the handle stays made",
       .symptom = "let go: lamp stays lit, throttle stays in; brake comes after 5 s",
       .decision = "the unit fails; report",
       .numbers = {{"desk#.device_contact_stuck", How::kTo, one}}},
      {.name = "safety_device#.handle_valve_held",
       .where = "cab #, valve under the handle",
       .text = "the valve under the handle stays held",
       .symptom = "let go: lamp out, throttle dead, no brake",
       .decision = "the unit fails; report",
       .numbers = {{"desk#.device_valve_stuck", How::kTo, one}}},
  };
}

std::vector<FaultRow> cabs() {
  return {
      {.name = "cab#.bell_dead",
       .where = "cab #",
       .text = "the bell in this cab does not sound",
       .symptom = "bell test: nothing heard here, the other side hears",
       .decision = "the stop code must arrive: no departure",
       .numbers = {{"desk#.bell_dead", How::kTo, one}}},
      {.name = "cab#.bell_button_dead",
       .where = "cab #",
       .text = "the bell button of this cab is dead",
       .symptom = "bell test: heard here, not answered",
       .decision = "no departure without a way to answer; report",
       .numbers = {{"desk#.bell_button_dead", How::kTo, one}}},
      {.name = "cab#.horn_dead",
       .where = "cab #",
       .text = "tones of the horn are dead (1 low, 2 high, 3 both)",
       .symptom = "silent when tried",
       .decision = "one tone left: report; none: by the local rule",
       .size = {"tones", 1.0, 3.0, 3.0, true},
       .numbers = {{"desk#.horn_dead", How::kTo, itself}}},
      {.name = "cab#.wiper_dead",
       .where = "cab #",
       .text = "the wiper does not move",
       .symptom = "still when switched on",
       .decision = "in rain: slow or not at all, by the local rule; report",
       .numbers = {{"desk#.wiper_dead", How::kTo, one}}},
      {.name = "cab#.fire_bell_dead",
       .where = "cab #",
       .text = "the fire bell of this cab is dead",
       .symptom = "silent under the fire test, lamp lit",
       .decision = "report before leaving",
       .numbers = {{"desk#.fire_bell_dead", How::kTo, one}}},
      {.name = "end#.white_lamps_dead",
       .where = "end #",
       .text = "the white lamps are dead",
       .symptom = "seen at the end",
       .decision = "by the local rule; report",
       .numbers = {{"desk#.white_lamps_dead", How::kTo, one}}},
      {.name = "end#.tail_lamp_out",
       .where = "end #",
       .text = "the red lamps are dead",
       .symptom = "seen at the rear end: no red",
       .decision = "no departure without a tail lamp",
       .numbers = {{"desk#.red_lamps_dead", How::kTo, one}}},
      {.name = "end#.tail_lamp_missing",
       .where = "end #",
       .text = "the tail lamp is missing",
       .symptom = "the bracket is empty",
       .decision = "no departure without a tail lamp",
       .acts = {{"condition end#.tail_lamp missing", "condition end#.tail_lamp good"}}},
      {.name = "end#.display_wrong",
       .where = "end #",
       .text = "the display shows another working",
       .symptom = "front and rear do not agree",
       .decision = "set it",
       .acts = {{"condition end#.display wrong", "condition end#.display good"}}},
      {.name = "end#.flag",
       .where = "end #",
       .text = "a red flag hangs on the unit: people work on it",
       .symptom = "seen at that end only",
       .decision = "touch nothing, ask",
       .acts = {{"condition end#.protection flag", "condition end#.protection good"}}},
      {.name = "end#.board",
       .where = "end #",
       .text = "a board hangs on the unit: not to be moved",
       .symptom = "seen at that end only",
       .decision = "do not move it; ask who hung it and why",
       .acts = {{"condition end#.protection board", "condition end#.protection good"}}},
      {.name = "side#.flag",
       .where = "side # of car 1",
       .text = "a red flag hangs on this side: people work on it",
       .symptom = "seen from this side only",
       .decision = "touch nothing, ask",
       .acts = {{"condition side#.protection flag", "condition side#.protection good"}}},
      {.name = "engine#.fitter",
       .where = "engine #",
       .text = "a fitter has his arms in the engine",
       .symptom = "seen at that side only",
       .decision = "no start; ask",
       .acts = {{"condition engine#.people fitter", "condition engine#.people good"}}},
      {.name = "cab#.detonators_missing",
       .where = "cab #",
       .text = "the detonators are missing",
       .symptom = "no canister",
       .decision = "no departure without them",
       .acts = {{"condition cab#.detonators missing", "condition cab#.detonators good"}}},
      {.name = "cab#.extinguisher_missing",
       .where = "cab #",
       .text = "the fire extinguisher is missing",
       .symptom = "empty bracket",
       .decision = "no departure without it; report",
       .acts = {{"condition cab#.extinguisher missing", "condition cab#.extinguisher good"}}},
      {.name = "cab#.seal_gone",
       .where = "cab #",
       .text = "the seal of the safety device's cock is gone, the cock is open",
       .symptom = "seen when looked at",
       .decision = "test the device, report",
       .acts = {{"condition cab#.seal seal_gone", "condition cab#.seal good"}}},
      {.name = "door#.open",
       .where = "passenger doors, side #",
       .text = "a passenger door is open",
       .symptom = "seen along that side",
       .decision = "shut it; nothing moves with a door open",
       .acts = {{"set door# open", "set door# shut"}}},
  };
}

FaultSpec makeInstrumentFault(const unit::InstrumentInfo& info, const char* kind) {
  FaultSpec f;
  const std::string name(info.name);
  f.name = name + "_" + kind;
  f.family = std::string(info.lamp ? "LAMP_" : "GAUGE_") + kind;
  f.system = "instruments";
  f.where = name;
  f.acts = {{"condition " + name + " " + kind, "condition " + name + " sound"}};
  return f;
}

void addLampFaults(const unit::InstrumentInfo& info, std::vector<FaultSpec>& all) {
  FaultSpec blown = makeInstrumentFault(info, "blown");
  blown.text = "the lamp is blown";
  blown.symptom = "dark also under the lamp test, other signs good";
  blown.decision = "other instruments and the other cab first; with the thing itself sound: report";
  all.push_back(blown);
  FaultSpec lit = makeInstrumentFault(info, "lit");
  lit.text = "the lamp is lit whatever is so";
  lit.symptom = "lit when it has to be dark";
  lit.decision = "do not trust it: the test of the thing itself decides; report";
  all.push_back(lit);
}

void addGaugeFaults(const unit::InstrumentInfo& info, std::vector<FaultSpec>& all) {
  FaultSpec stuck = makeInstrumentFault(info, "stuck");
  stuck.text = "the needle sticks where it is";
  stuck.symptom = "does not stir when the thing must be changing, nor when tapped";
  stuck.decision = "the other cab's gauge decides; report";
  all.push_back(stuck);
  FaultSpec offset = makeInstrumentFault(info, "offset");
  const double span = info.highest - info.lowest;
  offset.text = "the needle is off by the same amount everywhere";
  offset.symptom = "does not rest on its zero; differs from the other cab's";
  offset.decision = "the other cab's gauge decides; report";
  offset.size = {info.unit, -0.3 * span, 0.3 * span, 0.1 * span};
  offset.acts = {{"condition " + std::string(info.name) + " offset {size}",
                  "condition " + std::string(info.name) + " sound"}};
  all.push_back(offset);
  FaultSpec slow = makeInstrumentFault(info, "slow");
  slow.text = "the needle follows slowly";
  slow.symptom = "arrives long after the other cab's, and after what is heard";
  slow.decision = "wait for it; report";
  slow.size = {"s", 2.0, 120.0, 15.0};
  slow.acts = {{"condition " + std::string(info.name) + " slow {size}",
                "condition " + std::string(info.name) + " sound"}};
  all.push_back(slow);
  FaultSpec dead = makeInstrumentFault(info, "dead");
  dead.text = "the needle stays at its rest";
  dead.symptom = "at rest whatever is so";
  dead.decision = "the other cab's gauge decides; report";
  all.push_back(dead);
}

}  // namespace

std::vector<FaultSystem> deviceFaults() { return {{"safety device", 2, 1, safetyDevice()}}; }

std::vector<FaultSystem> cabFaults() { return {{"cabs and ends", 2, 1, cabs()}}; }

std::vector<FaultSpec> instrumentFaults() {
  std::vector<FaultSpec> all;
  for (const unit::InstrumentInfo& info : unit::instrumentTable()) {
    info.lamp ? addLampFaults(info, all) : addGaugeFaults(info, all);
  }
  return all;
}

}  // namespace cabwright::fault
