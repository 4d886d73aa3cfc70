// SPDX-License-Identifier: GPL-3.0-or-later
// X(identifier, name, unit, layer, meaning). The order is the order in session files, which name
// their signals, so an older file still opens when signals are added.
//
// Shown values exist whether or not somebody stands there: PLACE.seen says who could have read
// them. Controls, places, phrases and items each come from their own list.
#pragma once

#include "unit/control_list.h"
#include "unit/item_list.h"
#include "unit/object_list.h"
#include "unit/phrase_list.h"
#include "unit/place_list.h"

// clang-format off
/// Instruments of a desk: S(Y, Identifier, name, unit, meaning); gauges first, then lamps.
#define CABWRIGHT_CAB_GAUGES(S, Y, N) \
  S(Y, Cab##N##Air, "cab" #N ".air", "psi", "control air gauge, cab " #N) \
  S(Y, Cab##N##TrainPipe, "cab" #N ".train_pipe", "inHg", "vacuum gauge, train pipe needle, cab " #N) \
  S(Y, Cab##N##ReleasePipe, "cab" #N ".release_pipe", "inHg", "vacuum gauge, release pipe needle, cab " #N) \
  S(Y, Cab##N##GuardsGauge, "cab" #N ".guards_gauge", "inHg", "guard's vacuum gauge, train pipe, cab " #N) \
  S(Y, Cab##N##Speed, "cab" #N ".speed", "mph", "speedometer, cab " #N) \
  S(Y, Cab##N##Rpm1, "cab" #N ".rpm1", "rpm", "tachometer of engine 1, cab " #N) \
  S(Y, Cab##N##Rpm2, "cab" #N ".rpm2", "rpm", "tachometer of engine 2, cab " #N)
#define CABWRIGHT_CAB_LAMPS(S, Y, N) \
  S(Y, Cab##N##LampEngine1, "cab" #N ".lamp_engine1", "", "lamp: engine 1 runs with oil pressure, cab " #N) \
  S(Y, Cab##N##LampEngine2, "cab" #N ".lamp_engine2", "", "lamp: engine 2 runs with oil pressure, cab " #N) \
  S(Y, Cab##N##LampAir, "cab" #N ".lamp_air", "", "air lamp: drives in mesh and air enough, cab " #N) \
  S(Y, Cab##N##LampDevice, "cab" #N ".lamp_device", "", "lamp of the safety device: held, cab " #N) \
  S(Y, Cab##N##LampCharge, "cab" #N ".lamp_charge", "", "charge lamp: battery is not being charged, cab " #N) \
  S(Y, Cab##N##LampFire, "cab" #N ".lamp_fire", "", "fire lamp, cab " #N)
#define CABWRIGHT_ENGINE_GAUGES(S, Y, N) \
  S(Y, Engine##N##OilGauge, "engine" #N ".oil_gauge", "psi", "oil pressure gauge at engine " #N) \
  S(Y, Engine##N##FuelGauge, "engine" #N ".fuel_gauge", "%", "fuel gauge at engine " #N) \
  S(Y, Engine##N##CoolantGauge, "engine" #N ".coolant_gauge", "C", "coolant gauge at engine " #N)
#define CABWRIGHT_UNIT_GAUGES(S, Y) \
  S(Y, CupboardVolts, "cupboard.volts", "V", "battery volts at the cupboard")

/// What else is shown in a cab.
#define CABWRIGHT_CAB_SHOWN(X, N) \
  X(kCab##N##Bright, "cab" #N ".lamp_brightness", "", Layer::kShown, "how brightly lit lamps burn, 0..1, cab " #N) \
  X(kCab##N##Signal, "cab" #N ".signal", "", Layer::kShown, "signal ahead of cab " #N ": 1 clear, 0 danger, -1 none in sight") \
  X(kCab##N##SignalDistance, "cab" #N ".signal_distance", "m", Layer::kShown, "distance to that signal from the front") \
  X(kCab##N##Limit, "cab" #N ".limit", "mph", Layer::kShown, "speed limit in force") \
  X(kCab##N##Mark, "cab" #N ".mark_distance", "m", Layer::kShown, "distance to the next stopping mark; 9999: none") \
  X(kCab##N##BellRings, "cab" #N ".bell_rings", "", Layer::kShown, "the bell in cab " #N " sounds") \
  X(kCab##N##FireBell, "cab" #N ".fire_bell", "", Layer::kShown, "the fire bell in cab " #N " sounds") \
  X(kCab##N##Hiss, "cab" #N ".hiss", "", Layer::kShown, "hiss of air in cab " #N ", 0..1") \
  X(kCab##N##Swept, "cab" #N ".wiper_sweeps", "", Layer::kShown, "the wiper of cab " #N " sweeps") \
  X(kEnd##N##White, "end" #N ".white", "", Layer::kShown, "white lamps lit at end " #N) \
  X(kEnd##N##RedLit, "end" #N ".red", "", Layer::kShown, "red lamps lit at end " #N) \
  X(kEnd##N##Shows, "end" #N ".shows", "", Layer::kShown, "number readable on the display at end " #N ", 0 none")

/// What is seen, heard and smelled at an engine and along its side.
#define CABWRIGHT_ENGINE_SHOWN(X, N) \
  X(kEngine##N##Note, "engine" #N ".note", "rpm", Layer::kShown, "note of engine " #N " heard at its side") \
  X(kEngine##N##Even, "engine" #N ".firing_even", "", Layer::kShown, "how evenly engine " #N " fires, 0..1") \
  X(kEngine##N##Smoke, "engine" #N ".smoke", "", Layer::kShown, "white smoke of engine " #N ", 0..1") \
  X(kEngine##N##Hum, "engine" #N ".hum", "", Layer::kShown, "hum of exhauster " #N ", 0..1") \
  X(kEngine##N##Thump, "engine" #N ".thump", "", Layer::kShown, "thump of final drive " #N " going into mesh") \
  X(kEngine##N##Rattle, "engine" #N ".rattle", "", Layer::kShown, "rattle of dog teeth passing each other, drive " #N) \
  X(kEngine##N##Grind, "engine" #N ".grind", "", Layer::kShown, "pinion of the starter of engine " #N " heard in the ring: it turns the engine, or howls with it") \
  X(kEngine##N##HotSmell, "engine" #N ".hot_smell", "", Layer::kShown, "smell of hot lining at side " #N ", 0..1") \
  X(kEngine##N##FireSeen, "engine" #N ".fire", "", Layer::kShown, "fire to be seen at engine " #N)

/// What reaches the trainee's senses, wherever the trainee is.
#define CABWRIGHT_SENSED(X) \
  X(kHeardEngine1, "heard.engine1", "rpm", Layer::kShown, "note of engine 1 as far as it is heard here, 0: not") \
  X(kHeardEngine2, "heard.engine2", "rpm", Layer::kShown, "note of engine 2 as far as it is heard here, 0: not") \
  X(kHeardHum1, "heard.hum1", "", Layer::kShown, "exhauster 1 heard here, 0..1") \
  X(kHeardHum2, "heard.hum2", "", Layer::kShown, "exhauster 2 heard here, 0..1") \
  X(kHeardHiss, "heard.hiss", "", Layer::kShown, "hiss of air heard here, 0..1") \
  X(kHeardThump, "heard.thump", "", Layer::kShown, "thump of a final drive heard here") \
  X(kHeardRattle, "heard.rattle", "", Layer::kShown, "rattle of dog teeth heard here") \
  X(kHeardClick, "heard.click", "", Layer::kShown, "relays click, heard here") \
  X(kHeardHorn, "heard.horn", "", Layer::kShown, "horn sounds: 1 low, 2 high") \
  X(kHeardHornLevel, "heard.horn_level", "", Layer::kShown, "how loud it sounds, 0..1") \
  X(kHeardBell, "heard.bell", "", Layer::kShown, "last complete bell code heard here: strokes, groups as digits (3-3 is 33)") \
  X(kHeardBellAge, "heard.bell_age", "s", Layer::kShown, "time since that code was complete") \
  X(kHeardFireBell, "heard.fire_bell", "", Layer::kShown, "fire bell heard here") \
  X(kHeardWords, "heard.words", "", Layer::kShown, "number of the last answer heard (reply table)") \
  X(kHeardWordsAge, "heard.words_age", "s", Layer::kShown, "time since that answer") \
  X(kSmelledHot, "smelled.hot", "", Layer::kShown, "smell of hot lining here, 0..1") \
  X(kSmelledFuel, "smelled.fuel", "", Layer::kShown, "smell of unburnt fuel here, 0..1") \
  X(kFelt, "felt.acceleration", "m/s2", Layer::kShown, "pull or push felt by whoever is in the unit") \
  X(kSeenMoving, "seen.moving", "", Layer::kShown, "the unit is seen to move against the ground: from 0.5 mph") \
  X(kSide1BlocksOn, "side1.blocks_on", "", Layer::kShown, "blocks of car 1 seen on the wheels, share, side 1") \
  X(kSide2BlocksOn, "side2.blocks_on", "", Layer::kShown, "blocks of car 1 seen on the wheels, share, side 2") \
  X(kTrailer1BlocksOn, "trailer1.blocks_on", "", Layer::kShown, "blocks of car 2 seen on the wheels, share, side 1") \
  X(kTrailer2BlocksOn, "trailer2.blocks_on", "", Layer::kShown, "blocks of car 2 seen on the wheels, share, side 2") \
  X(kRearRead, "second.rear_reading", "inHg", Layer::kShown, "rear gauge as last told by the second person") \
  X(kRearReadAge, "second.rear_reading_age", "s", Layer::kShown, "time since that was told; 9999: never") \
  X(kSecondBlocks, "second.blocks_seen", "", Layer::kShown, "blocks as last told: 1 on, 0 off, 0.5 not the same, -1 never") \
  X(kSecondThere, "second.at_rear", "", Layer::kShown, "the second person has said to be at the rear")

/// The truth about one drive line.
#define CABWRIGHT_LINE_TRUE(X, N) \
  X(kTrueRpm##N, "true.engine" #N ".rpm", "rpm", Layer::kTrue, "crank speed") \
  X(kTrueRack##N, "true.engine" #N ".rack", "", Layer::kTrue, "fuel rack, 0..1") \
  X(kTrueLever##N, "true.engine" #N ".lever", "", Layer::kTrue, "throttle opening at the engine, 0..1") \
  X(kTrueFired##N, "true.engine" #N ".fired", "", Layer::kTrue, "share of cycles that fire") \
  X(kTrueRunning##N, "true.engine" #N ".running", "", Layer::kTrue, "turns by its own firing") \
  X(kTrueCoolant##N, "true.engine" #N ".coolant_c", "C", Layer::kTrue, "coolant temperature") \
  X(kTrueOil##N, "true.engine" #N ".oil_c", "C", Layer::kTrue, "oil temperature") \
  X(kTrueOilPressure##N, "true.engine" #N ".oil_pressure", "psi", Layer::kTrue, "oil pressure") \
  X(kTrueCoolantLevel##N, "true.engine" #N ".coolant_level", "", Layer::kTrue, "coolant, share of full") \
  X(kTrueTrapped##N, "true.engine" #N ".trapped_air", "", Layer::kTrue, "air in the fuel system") \
  X(kTrueFuel##N, "true.engine" #N ".fuel_kg", "kg", Layer::kTrue, "fuel in the tank") \
  X(kTrueLatch##N, "true.engine" #N ".latch_tripped", "", Layer::kTrue, "fuel latch tripped") \
  X(kTrueProtection##N, "true.engine" #N ".protection", "", Layer::kTrue, "protection has tripped") \
  X(kTrueStarter##N, "true.engine" #N ".starter", "", Layer::kTrue, "starter fed") \
  X(kTrueStarterA##N, "true.engine" #N ".starter_a", "A", Layer::kTrue, "starter current") \
  X(kTrueStarterC##N, "true.engine" #N ".starter_c", "C", Layer::kTrue, "starter winding") \
  X(kTrueCrankS##N, "true.engine" #N ".crank_s", "s", Layer::kTrue, "starter fed without a break") \
  X(kTrueStarts##N, "true.engine" #N ".start_attempts", "", Layer::kTrue, "times the starter was fed since the engine last ran") \
  X(kTrueRest##N, "true.engine" #N ".starter_rest_s", "s", Layer::kTrue, "rest before the last attempt; 9999 before the first") \
  X(kTrueRanS##N, "true.engine" #N ".running_s", "s", Layer::kTrue, "time it has run without a break") \
  X(kTrueGenerator##N, "true.engine" #N ".generator_a", "A", Layer::kTrue, "generator current") \
  X(kTrueCompressor##N, "true.engine" #N ".compressor_loaded", "", Layer::kTrue, "compressor delivers") \
  X(kTrueCoupling##N, "true.drive" #N ".coupling_nm", "N m", Layer::kTrue, "torque through the coupling") \
  X(kTrueCouplingC##N, "true.drive" #N ".coupling_c", "C", Layer::kTrue, "coupling oil") \
  X(kTrueInput##N, "true.drive" #N ".input_rpm", "rpm", Layer::kTrue, "gearbox input") \
  X(kTrueOutput##N, "true.drive" #N ".output_rpm", "rpm", Layer::kTrue, "gearbox output and propeller shaft") \
  X(kTrueDrum1##N, "true.drive" #N ".drum1_rpm", "rpm", Layer::kTrue, "drum of first gear") \
  X(kTrueDrum2##N, "true.drive" #N ".drum2_rpm", "rpm", Layer::kTrue, "drum of second gear") \
  X(kTrueDrum3##N, "true.drive" #N ".drum3_rpm", "rpm", Layer::kTrue, "drum of third gear") \
  X(kTrueDrumC##N, "true.drive" #N ".hottest_c", "C", Layer::kTrue, "hottest drum or clutch") \
  X(kTrueGear1##N, "true.drive" #N ".gear1_psi", "psi", Layer::kTrue, "band cylinder of first gear") \
  X(kTrueGear2##N, "true.drive" #N ".gear2_psi", "psi", Layer::kTrue, "band cylinder of second gear") \
  X(kTrueGear3##N, "true.drive" #N ".gear3_psi", "psi", Layer::kTrue, "band cylinder of third gear") \
  X(kTrueGear4##N, "true.drive" #N ".gear4_psi", "psi", Layer::kTrue, "clutch cylinder of top gear") \
  X(kTrueEngaged##N, "true.drive" #N ".gear_engaged", "", Layer::kTrue, "gear whose drum stands or clutch holds, 0 none") \
  X(kTrueFreewheel##N, "true.drive" #N ".freewheel_locked", "", Layer::kTrue, "freewheel drives") \
  X(kTrueMeshed##N, "true.drive" #N ".meshed", "", Layer::kTrue, "dogs in mesh: 1 forward, -1 reverse, 0 not") \
  X(kTrueDog##N, "true.drive" #N ".dog", "", Layer::kTrue, "dog sleeve: 0 middle, 1 moving, 2 on tooth, 3 entering, 4 meshed, 5 rattling, 6 pinned") \
  X(kTrueSlip##N, "true.drive" #N ".wheel_slips", "", Layer::kTrue, "driven wheels slip or slide") \
  X(kWearRace##N, "wear.engine" #N ".race_cold", "rev", Layer::kTrue, "turns above fast idle while cold") \
  X(kWearLug##N, "wear.engine" #N ".lugging", "kJ", Layer::kTrue, "full-rack work below 900 rpm") \
  X(kWearOver##N, "wear.drive" #N ".overspeed", "rad", Layer::kTrue, "shaft angle above the box's safe speed") \
  X(kWearBand##N, "wear.drive" #N ".band", "kJ", Layer::kTrue, "heat into bands and clutch") \
  X(kWearDog##N, "wear.drive" #N ".dog", "J", Layer::kTrue, "lost in rattle and meshing shocks") \
  X(kWearStarter##N, "wear.engine" #N ".starter", "K s", Layer::kTrue, "starter winding above its limit")

/// The truth about the unit.
#define CABWRIGHT_UNIT_TRUE(X) \
  X(kTrueTrainPipe, "true.train_pipe", "inHg", Layer::kTrue, "vacuum in the train pipe") \
  X(kTrueReleasePipe, "true.release_pipe", "inHg", Layer::kTrue, "vacuum in the release pipe") \
  X(kTrueChamber1, "true.chamber1", "inHg", Layer::kTrue, "vacuum above brake piston 1") \
  X(kTrueChamber2, "true.chamber2", "inHg", Layer::kTrue, "vacuum above brake piston 2") \
  X(kTrueChamber3, "true.chamber3", "inHg", Layer::kTrue, "vacuum above brake piston 3") \
  X(kTrueChamber4, "true.chamber4", "inHg", Layer::kTrue, "vacuum above brake piston 4") \
  X(kTrueDifference, "true.brake_difference", "inHg", Layer::kTrue, "least chamber vacuum less train pipe: what brakes") \
  X(kTrueMain, "true.main_air", "psi", Layer::kTrue, "main reservoir") \
  X(kTrueAir, "true.air", "psi", Layer::kTrue, "control reservoir") \
  X(kTrueDevice1, "true.device1", "psi", Layer::kTrue, "timing volume of the safety device, cab 1") \
  X(kTrueDevice2, "true.device2", "psi", Layer::kTrue, "timing volume of the safety device, cab 2") \
  X(kTrueDeviceVent, "true.device_vent", "", Layer::kTrue, "opening of a tripped safety device, 0..1") \
  X(kTrueBusV, "true.volts", "V", Layer::kTrue, "bus voltage") \
  X(kTrueBatteryA, "true.battery_a", "A", Layer::kTrue, "battery current, positive: discharging") \
  X(kTrueCharge, "true.charge", "", Layer::kTrue, "battery, share of full") \
  X(kTrueRelay, "true.relay", "", Layer::kTrue, "control relay is in") \
  X(kSpeed, "true.speed", "mph", Layer::kTrue, "speed of the unit, positive: car 1 leads") \
  X(kTrueAbsSpeed, "true.abs_speed", "mph", Layer::kTrue, "speed without its sign") \
  X(kTruePosition, "true.position", "m", Layer::kTrue, "middle of the unit along the line") \
  X(kTrueTravelled, "true.travelled", "m", Layer::kTrue, "distance covered since the start, either way") \
  X(kTrueAcceleration, "true.acceleration", "m/s2", Layer::kTrue, "acceleration") \
  X(kTrueTractive, "true.tractive", "kN", Layer::kTrue, "tractive effort") \
  X(kTrueBrake, "true.brake", "kN", Layer::kTrue, "brake force at the rail") \
  X(kTrueBlocks1, "true.blocks1", "kN", Layer::kTrue, "pressing force of brake cylinder 1 and handbrake share") \
  X(kTrueBlocks2, "true.blocks2", "kN", Layer::kTrue, "pressing force of brake cylinder 2") \
  X(kTrueBlocks3, "true.blocks3", "kN", Layer::kTrue, "pressing force of brake cylinder 3") \
  X(kTrueBlocks4, "true.blocks4", "kN", Layer::kTrue, "pressing force of brake cylinder 4") \
  X(kTrueGradient, "true.gradient", "%", Layer::kTrue, "gradient, positive: rises towards growing position") \
  X(kTrueStanding, "true.standing", "", Layer::kTrue, "the unit stands") \
  X(kTrueRolledBack, "true.rolled_back", "m", Layer::kTrue, "rolled against the direction wanted since the last stand") \
  X(kTrueLimit, "true.limit", "mph", Layer::kTrue, "lowest speed limit under the unit") \
  X(kTrueMark, "true.mark_distance", "m", Layer::kTrue, "front of the unit to the next stopping mark, negative: past it; 9999 none") \
  X(kTrueInPlatform, "true.in_platform", "", Layer::kTrue, "the whole unit stands in a platform") \
  X(kTruePastDanger, "harm.passed_at_danger", "", Layer::kTrue, "signals passed at danger by the end that leads; a signal goes back to danger behind it") \
  X(kHarmStart, "harm.started_at_person", "", Layer::kTrue, "times an engine was turned with somebody at it") \
  X(kHarmMoved, "harm.moved_at_person", "", Layer::kTrue, "times somebody was at the unit while it moved") \
  X(kHarmProtected, "harm.touched_protected", "", Layer::kTrue, "acts on the unit while it was protected") \
  X(kHarmMovedProtected, "harm.moved_protected", "", Layer::kTrue, "times a board, flag or lamp hung on the unit while it moved") \
  X(kHarmReversed, "harm.reversed_moving", "", Layer::kTrue, "times a reverser was moved while the unit was moving") \
  X(kHarmReverserOff, "harm.reverser_off_moving", "", Layer::kTrue, "times a reverser was put to off while the unit was moving") \
  X(kHarmDoor, "harm.moved_door_open", "", Layer::kTrue, "times a door was open while the unit moved") \
  X(kHarmBetween, "harm.between_unprotected", "", Layer::kTrue, "times the trainee was between or under with no handbrake on, an engine turning or the unit moving") \
  X(kHarmCords, "harm.cords_unsecured", "", Layer::kTrue, "release cords pulled with a handbrake off") \
  X(kHarmScotch, "harm.moved_on_scotch", "", Layer::kTrue, "times the unit was pulled against a scotch") \
  X(kHarmReach, "harm.reached_running", "", Layer::kTrue, "times a hand was in the drive of an engine that turned") \
  X(kTrueProtected, "true.protected", "", Layer::kTrue, "a board, flag or lamp hangs on the unit") \
  X(kTruePerson, "true.person", "", Layer::kTrue, "somebody is at the unit") \
  X(kTruePerson1, "true.person_engine1", "", Layer::kTrue, "somebody is at engine 1") \
  X(kTruePerson2, "true.person_engine2", "", Layer::kTrue, "somebody is at engine 2") \
  X(kTrueDoorOpen, "true.door_open", "", Layer::kTrue, "a passenger door is open") \
  X(kTrueFire, "true.fire", "", Layer::kTrue, "an engine burns") \
  X(kTrueControlledBy, "true.desk", "", Layer::kTrue, "cab whose desk is alive: 1, 2, or 0") \
  X(kTrueEventCount, "true.mode_changes", "", Layer::kTrue, "located changes of mode in the machine") \
  X(kTrueValid, "true.within_model", "", Layer::kTrue, "0 once the machine left the range the model was checked in")

/// What people have set, hold, carry, judged and said, beyond the controls themselves.
#define CABWRIGHT_DONE(X) \
  X(kPlace, "trainee.place", "", Layer::kDone, "number of the place (place table, from 1); 0 on the way") \
  X(kWalking, "trainee.walking", "", Layer::kDone, "on the way to another place") \
  X(kWalkLeft, "trainee.walk_left", "s", Layer::kDone, "time until arrival") \
  X(kLight, "trainee.light", "", Layer::kDone, "there is light enough to see things closely where the trainee is") \
  X(kHandLeft, "hand.left", "", Layer::kDone, "control under the left hand (control table, from 1); 0 free") \
  X(kHandRight, "hand.right", "", Layer::kDone, "control under the right hand; 0 free") \
  X(kLetGo, "hand.let_go", "", Layer::kDone, "times a third thing made a hand let go") \
  X(kCrossings, "trainee.crossings", "", Layer::kDone, "times the line was crossed before an end") \
  X(kWentBetween, "trainee.went_between", "", Layer::kDone, "times between the cars") \
  X(kWentUnder, "trainee.went_under", "", Layer::kDone, "times ducked under the unit") \
  X(kCrossedBlind, "trainee.crossed_blind", "", Layer::kDone, "crossings without having looked both ways just before") \
  X(kLookItem, "look.item", "", Layer::kDone, "item being looked at (item table, from 1); 0 none") \
  X(kLookSeconds, "look.seconds", "s", Layer::kDone, "how long, without a break") \
  X(kLookNeeded, "look.needed", "s", Layer::kDone, "how long that item has to be looked at for the look to count; 0 none") \
  X(kLookCondition, "look.condition", "", Layer::kDone, "what it shows: 0 good, n the nth condition of its list, -1 nothing to be made out") \
  X(kCarriedCount, "carried.count", "", Layer::kDone, "loose objects carried") \
  X(kKey1, "cab1.has_key", "", Layer::kDone, "a control key is in cab 1's switch") \
  X(kKey2, "cab2.has_key", "", Layer::kDone, "a control key is in cab 2's switch") \
  X(kReverser1, "cab1.has_reverser", "", Layer::kDone, "a reversing lever is in cab 1") \
  X(kReverser2, "cab2.has_reverser", "", Layer::kDone, "a reversing lever is in cab 2") \
  X(kBrake1, "cab1.has_brake_handle", "", Layer::kDone, "a brake handle is in cab 1") \
  X(kBrake2, "cab2.has_brake_handle", "", Layer::kDone, "a brake handle is in cab 2") \
  X(kJudgedCount, "judgements.count", "", Layer::kDone, "items judged after having been looked at") \
  X(kJudgedHits, "judgements.hits", "", Layer::kTrue, "defects judged defect") \
  X(kJudgedMisses, "judgements.misses", "", Layer::kTrue, "defects judged good") \
  X(kJudgedCritical, "judgements.missed_critical", "", Layer::kTrue, "critical defects judged good") \
  X(kJudgedFalse, "judgements.false_alarms", "", Layer::kTrue, "sound things judged defect") \
  X(kJudgedUnsure, "judgements.unsure", "", Layer::kDone, "items judged not sure and not resolved") \
  X(kJudgedEmpty, "judgements.empty", "", Layer::kDone, "judgements of things not looked at, or not for long enough") \
  X(kJudgedLook, "judgements.last_look", "s", Layer::kDone, "longest look at the item judged last, at that moment; 0: not looked at") \
  X(kJudgedClass, "judgements.wrong_class", "", Layer::kTrue, "defects found but given another class") \
  X(kBookedCount, "booked.count", "", Layer::kDone, "entries in the repair book") \
  X(kDefectsOpen, "defects.not_booked", "", Layer::kTrue, "defects on the unit that are not in the book") \
  X(kDefectsCritical, "defects.critical_not_booked", "", Layer::kTrue, "critical defects that are not in the book") \
  X(kDefectsSeen, "defects.critical_seen_not_booked", "", Layer::kTrue, "critical defects that the trainee has seen and that are not in the book") \
  X(kUnsureOpen, "defects.unsure_open", "", Layer::kDone, "items judged not sure, neither judged anew nor entered in the book") \
  X(kFoundNotBooked, "defects.found_not_booked", "", Layer::kDone, "items judged defect that are not in the book") \
  X(kNotes, "notes.count", "", Layer::kDone, "readings entered in the notebook") \
  X(kNoteValue, "notes.last", "", Layer::kDone, "the last reading entered") \
  X(kDecision, "decision", "", Layer::kDone, "decision told: 0 none, 1 go on, 2 go on restricted, 3 fail the unit") \
  X(kGuardCode, "guard.code", "", Layer::kDone, "last complete code the guard gave: strokes, groups as digits") \
  X(kGuardCodeAge, "guard.code_age", "s", Layer::kDone, "time since it was complete; 9999: never") \
  X(kGuardValid, "guard.code_valid", "", Layer::kDone, "that code still stands") \
  X(kGuardAnswered, "guard.answered", "", Layer::kDone, "the driver has repeated that code") \
  X(kGuardAnsweredCode, "guard.answered_code", "", Layer::kDone, "code of the guard's that still stands and that the driver has repeated: groups as digits; 0 none. A code the driver gave first, as in a bell test, is not one") \
  X(kGuardRepeated, "guard.repeated", "", Layer::kDone, "last code the guard gave back to the driver: orders nothing") \
  X(kDriverCode, "driver.code", "", Layer::kDone, "last complete code the driver gave") \
  X(kDriverCodeAge, "driver.code_age", "s", Layer::kDone, "time since it was complete; 9999: never") \
  X(kDriverHeard, "driver.code_heard", "", Layer::kTrue, "that code sounded at the guard's end") \
  X(kWarned, "warning.age", "s", Layer::kDone, "time since the last warning by horn or call; 9999: never") \
  X(kActs, "acts.count", "", Layer::kDone, "what the trainee has done in all") \
  X(kRefused, "acts.refused", "", Layer::kDone, "what would not go")

#define CABWRIGHT_GAUGE_SIGNAL(Y, id, name, unit, text) Y(k##id, name, unit, Layer::kShown, text)
#define CABWRIGHT_CONTROL_SIGNAL(Y, id, name, kind, positions, standard, places, spring, text) \
  Y(k##id, name, "", Layer::kDone, text)
#define CABWRIGHT_SEEN_SIGNAL(Y, id, name, kind, text) \
  Y(kSeen##id, name ".seen", "", Layer::kDone, "the trainee is " text)
#define CABWRIGHT_PHRASE_SIGNAL(Y, id, name, verb, text) \
  Y(kPhrase##id, #verb "." name, "", Layer::kDone, "how often the trainee " text)
#define CABWRIGHT_ANSWERED_SIGNAL(Y, id, name, verb, text) \
  Y(kAnswered##id, "answered." name, "", Layer::kDone, "number of the answer got (reply table), 0 none since last said: " text)
#define CABWRIGHT_OBJECT_SIGNAL(Y, id, name, text) \
  Y(kCarried##id, "carried." name, "", Layer::kDone, "carried: " text)
#define CABWRIGHT_JUDGED_SIGNAL(Y, id, name, place, text) \
  Y(kJudged##id, "judged." name, "", Layer::kDone, "judged: 0 not, 1 good, 2 defect, 3 not sure: " text)
#define CABWRIGHT_LOOKED_SIGNAL(Y, id, name, place, text) \
  Y(kLooked##id, "looked." name, "", Layer::kDone, "has been looked at for long enough: " text)
#define CABWRIGHT_BOOKED_SIGNAL(Y, id, name, place, text) \
  Y(kBooked##id, "booked." name, "", Layer::kDone, "entered in the repair book: " text)
#define CABWRIGHT_DEFECT_SIGNAL(Y, id, name, place, text) \
  Y(kDefect##id, "true." name, "", Layer::kTrue, "0 sound, 1 technical, 2 serious, 3 critical defect: " text)
#define CABWRIGHT_SHOWS_SIGNAL(Y, id, name, place, text) \
  Y(kShows##id, "shows." name, "", Layer::kTrue, "0 good, n the nth condition of its list: " text)

#define CABWRIGHT_SIGNALS(X) \
  CABWRIGHT_CAB_GAUGES(CABWRIGHT_GAUGE_SIGNAL, X, 1) \
  CABWRIGHT_CAB_LAMPS(CABWRIGHT_GAUGE_SIGNAL, X, 1) \
  CABWRIGHT_CAB_GAUGES(CABWRIGHT_GAUGE_SIGNAL, X, 2) \
  CABWRIGHT_CAB_LAMPS(CABWRIGHT_GAUGE_SIGNAL, X, 2) \
  CABWRIGHT_ENGINE_GAUGES(CABWRIGHT_GAUGE_SIGNAL, X, 1) \
  CABWRIGHT_ENGINE_GAUGES(CABWRIGHT_GAUGE_SIGNAL, X, 2) \
  CABWRIGHT_UNIT_GAUGES(CABWRIGHT_GAUGE_SIGNAL, X) \
  CABWRIGHT_CAB_SHOWN(X, 1) \
  CABWRIGHT_CAB_SHOWN(X, 2) \
  CABWRIGHT_ENGINE_SHOWN(X, 1) \
  CABWRIGHT_ENGINE_SHOWN(X, 2) \
  CABWRIGHT_SENSED(X) \
  CABWRIGHT_LINE_TRUE(X, 1) \
  CABWRIGHT_LINE_TRUE(X, 2) \
  CABWRIGHT_UNIT_TRUE(X) \
  CABWRIGHT_DONE(X) \
  CABWRIGHT_PLACES(CABWRIGHT_SEEN_SIGNAL, X) \
  CABWRIGHT_CONTROLS(CABWRIGHT_CONTROL_SIGNAL, X) \
  CABWRIGHT_OBJECTS(CABWRIGHT_OBJECT_SIGNAL, X) \
  CABWRIGHT_PHRASES(CABWRIGHT_PHRASE_SIGNAL, X) \
  CABWRIGHT_PHRASES(CABWRIGHT_ANSWERED_SIGNAL, X) \
  CABWRIGHT_ITEMS(CABWRIGHT_JUDGED_SIGNAL, X) \
  CABWRIGHT_ITEMS(CABWRIGHT_LOOKED_SIGNAL, X) \
  CABWRIGHT_ITEMS(CABWRIGHT_BOOKED_SIGNAL, X) \
  CABWRIGHT_ITEMS(CABWRIGHT_DEFECT_SIGNAL, X) \
  CABWRIGHT_ITEMS(CABWRIGHT_SHOWS_SIGNAL, X)
// clang-format on
