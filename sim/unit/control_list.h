// SPDX-License-Identifier: GPL-3.0-or-later
// X(Y, Identifier, name, kind, positions, standard, places, spring, meaning): everything a hand can
// move. Y is handed through, so that the signal list can be made of this one: each control is also
// a signal of the same name that says where it stands.
//
// positions: "name=value|name=value"; "lo..hi" in front: any number between as well
// ("lo..hi#": any whole number).
// spring: kStays, or kSprings: goes back to its first position as soon as no hand is on it.
// places: from where it can be reached.
#pragma once

// clang-format off
#define CABWRIGHT_CAB_CONTROLS(X, Y, N) \
  X(Y, Cab##N##Key, "cab" #N ".key", kSwitch, "off=0|on=1", 0, (kCab##N), kStays, "key switch: makes this desk the living one (needs the control key)") \
  X(Y, Cab##N##Reverser, "cab" #N ".reverser", kLever, "off=0|forward=1|reverse=-1", 0, (kCab##N), kStays, "reversing lever: direction as seen from this cab (needs the lever)") \
  X(Y, Cab##N##Throttle, "cab" #N ".throttle", kLever, "idle=0|1=1|2=2|3=3|4=4", 0, (kCab##N), kStays, "throttle, four notches; springs to idle when the safety device is let go") \
  X(Y, Cab##N##Device, "cab" #N ".device", kLever, "up=0|down=1", 0, (kCab##N), kSprings, "driver's safety device: the throttle's own handle, to be held down") \
  X(Y, Cab##N##Brake, "cab" #N ".brake", kLever, "-1..1|release=-1|lap=0|full=1", 0, (kCab##N), kStays, "driver's brake valve: release, lap, and from there a growing opening to full (needs the brake handle)") \
  X(Y, Cab##N##Gear, "cab" #N ".gear", kLever, "N=0|1=1|2=2|3=3|4=4", 0, (kCab##N), kStays, "gear selector") \
  X(Y, Cab##N##Start1, "cab" #N ".start1", kButton, "out=0|in=1", 0, (kCab##N), kSprings, "start button, engine 1") \
  X(Y, Cab##N##Start2, "cab" #N ".start2", kButton, "out=0|in=1", 0, (kCab##N), kSprings, "start button, engine 2") \
  X(Y, Cab##N##Stop1, "cab" #N ".stop1", kButton, "out=0|in=1", 0, (kCab##N), kSprings, "stop button, engine 1") \
  X(Y, Cab##N##Stop2, "cab" #N ".stop2", kButton, "out=0|in=1", 0, (kCab##N), kSprings, "stop button, engine 2") \
  X(Y, Cab##N##Handbrake, "cab" #N ".handbrake", kWheel, "0..1|off=0|on=1", 1, (kCab##N), kStays, "handbrake wheel of this cab's own car; turning takes time") \
  X(Y, Cab##N##Pawl, "cab" #N ".pawl", kSwitch, "out=0|in=1", 1, (kCab##N), kStays, "pawl of the handbrake's ratchet") \
  X(Y, Cab##N##White, "cab" #N ".white_lamps", kSwitch, "off=0|on=1", 0, (kCab##N), kStays, "white lamps at this end") \
  X(Y, Cab##N##Red, "cab" #N ".red_lamps", kSwitch, "off=0|on=1", 0, (kCab##N), kStays, "red lamps at this end") \
  X(Y, Cab##N##CabLight, "cab" #N ".cab_light", kSwitch, "off=0|on=1", 0, (kCab##N), kStays, "light in this cab") \
  X(Y, Cab##N##Display, "cab" #N ".display", kWheel, "0..9#|blank=0", 0, (kCab##N), kStays, "number on the destination display at this end") \
  X(Y, Cab##N##Horn, "cab" #N ".horn", kLever, "off=0|low=1|high=2", 0, (kCab##N), kSprings, "horn, two tones") \
  X(Y, Cab##N##Bell, "cab" #N ".bell", kButton, "out=0|in=1", 0, (kCab##N), kSprings, "bell button to the guard") \
  X(Y, Cab##N##LampTest, "cab" #N ".lamp_test", kButton, "out=0|in=1", 0, (kCab##N), kSprings, "lamp test") \
  X(Y, Cab##N##FireTest, "cab" #N ".fire_test", kButton, "out=0|in=1", 0, (kCab##N), kSprings, "fire bell test") \
  X(Y, Cab##N##Wiper, "cab" #N ".wiper", kSwitch, "off=0|on=1", 0, (kCab##N), kStays, "window wiper") \
  X(Y, Cab##N##GuardsValve, "cab" #N ".guards_valve", kCock, "0..1|shut=0|open=1", 0, (kCab##N), kStays, "guard's valve: lets air into the train pipe") \
  X(Y, Cab##N##DeviceCock, "cab" #N ".device_cock", kCock, "open=1|shut=0", 1, (kCab##N), kStays, "isolating cock of the safety device (sealed open)") \
  X(Y, Cab##N##Lock, "cab" #N ".lock", kSwitch, "locked=0|unlocked=1", 0, (kCab##N), kStays, "lock of the cab door (needs the door key)")

#define CABWRIGHT_ENGINE_CONTROLS(X, Y, N) \
  X(Y, Engine##N##Start, "engine" #N ".start", kButton, "out=0|in=1", 0, (kEngine##N), kSprings, "start button at engine " #N) \
  X(Y, Engine##N##Stop, "engine" #N ".stop", kButton, "out=0|in=1", 0, (kEngine##N), kSprings, "stop lever at engine " #N ": works without current") \
  X(Y, Engine##N##HandThrottle, "engine" #N ".hand_throttle", kLever, "0..1|home=0|fast_idle=0.3|full=1", 0, (kEngine##N), kStays, "hand throttle at engine " #N ": stays where it is put") \
  X(Y, Engine##N##Switch, "engine" #N ".switch", kSwitch, "cab=0|off=1|ground=2", 0, (kEngine##N), kStays, "isolating switch of engine " #N) \
  X(Y, Engine##N##FuelCock, "engine" #N ".fuel_cock", kCock, "0..1|open=1|shut=0", 1, (kEngine##N), kStays, "fuel cock of engine " #N) \
  X(Y, Engine##N##AirCock, "engine" #N ".air_cock", kCock, "open=1|shut=0", 1, (kEngine##N), kStays, "air cock of final drive " #N ": shut, its shift cylinder is vented") \
  X(Y, Engine##N##Sleeve, "engine" #N ".sleeve", kLever, "free=0|middle=1", 0, (kEngine##N), kSprings, "the dog sleeve of final drive " #N ", drawn to the middle by hand") \
  X(Y, Engine##N##Pin, "engine" #N ".pin", kSwitch, "keeper=0|sleeve=1", 0, (kEngine##N), kStays, "locking pin of final drive " #N) \
  X(Y, Engine##N##Bottle, "engine" #N ".fire_bottle", kSwitch, "full=0|pulled=1", 0, (kEngine##N), kStays, "fire bottle of engine " #N ": once")

#define CABWRIGHT_UNIT_CONTROLS(X, Y) \
  X(Y, BatterySwitch, "battery_switch", kSwitch, "open=0|closed=1", 1, (kCupboard), kStays, "battery switch") \
  X(Y, BreakerControl, "breaker_control", kSwitch, "out=0|in=1", 1, (kCupboard), kStays, "breaker: desks and control circuits") \
  X(Y, BreakerStart, "breaker_start", kSwitch, "out=0|in=1", 1, (kCupboard), kStays, "breaker: start circuits") \
  X(Y, BreakerLamps, "breaker_lamps", kSwitch, "out=0|in=1", 1, (kCupboard), kStays, "breaker: indication lamps and bell") \
  X(Y, BreakerLights, "breaker_lights", kSwitch, "out=0|in=1", 1, (kCupboard), kStays, "breaker: lights, displays, wipers") \
  X(Y, SaloonLights, "saloon_lights", kSwitch, "off=0|on=1", 0, (kCab1, kCab2, kSaloon), kStays, "saloon lights") \
  X(Y, Heater, "heater", kSwitch, "off=0|on=1", 0, (kCupboard), kStays, "saloon heater's fan") \
  X(Y, Alarm, "alarm", kLever, "flat=0|pulled=1", 0, (kSaloon, kTrailer1, kTrailer2), kStays, "passenger alarm: pulled inside, put back from outside at its tell-tale") \
  X(Y, Cord1, "cord1", kLever, "hung=0|pulled=1", 0, (kSide1), kSprings, "release cord of brake cylinder 1") \
  X(Y, Cord2, "cord2", kLever, "hung=0|pulled=1", 0, (kSide2), kSprings, "release cord of brake cylinder 2") \
  X(Y, Cord3, "cord3", kLever, "hung=0|pulled=1", 0, (kTrailer1), kSprings, "release cord of brake cylinder 3") \
  X(Y, Cord4, "cord4", kLever, "hung=0|pulled=1", 0, (kTrailer2), kSprings, "release cord of brake cylinder 4") \
  X(Y, DrainMain, "drain_main", kCock, "shut=0|open=1", 0, (kSide1), kStays, "drain cock of the main reservoir") \
  X(Y, DrainControl, "drain_control", kCock, "shut=0|open=1", 0, (kSide2), kStays, "drain cock of the control reservoir") \
  X(Y, Hose1, "end1.hose", kLever, "off=0|on=1", 1, (kEnd1), kStays, "brake hoses at end 1 on their dummies") \
  X(Y, Hose2, "end2.hose", kLever, "off=0|on=1", 1, (kEnd2), kStays, "brake hoses at end 2 on their dummies") \
  X(Y, Jumper, "jumper", kSwitch, "half=0|home=1", 1, (kBetween), kStays, "control jumper between the cars") \
  X(Y, Scotch1, "scotch1", kSwitch, "out=0|under=1", 0, (kSide1), kStays, "scotch under a wheel of car 1") \
  X(Y, Scotch2, "scotch2", kSwitch, "out=0|under=1", 0, (kTrailer1), kStays, "scotch under a wheel of car 2") \
  X(Y, Door1, "door1", kSwitch, "shut=0|open=1", 0, (kSide1, kTrailer1, kSaloon), kStays, "passenger doors on side 1") \
  X(Y, Door2, "door2", kSwitch, "shut=0|open=1", 0, (kSide2, kTrailer2, kSaloon), kStays, "passenger doors on side 2") \
  X(Y, HandLamp, "lamp", kSwitch, "off=0|on=1", 0, (), kStays, "the hand lamp, wherever it is carried")

#define CABWRIGHT_CONTROLS(X, Y) \
  CABWRIGHT_CAB_CONTROLS(X, Y, 1) \
  CABWRIGHT_CAB_CONTROLS(X, Y, 2) \
  CABWRIGHT_ENGINE_CONTROLS(X, Y, 1) \
  CABWRIGHT_ENGINE_CONTROLS(X, Y, 2) \
  CABWRIGHT_UNIT_CONTROLS(X, Y)
// clang-format on
