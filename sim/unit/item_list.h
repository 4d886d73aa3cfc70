// SPDX-License-Identifier: GPL-3.0-or-later
// X(Y, Identifier, name, Place, meaning): everything that can be looked at and judged. Y is handed
// through. What can be wrong with each, and how that shows, is in the item tables (items_*.cpp).
#pragma once

// clang-format off
#define CABWRIGHT_BOOKING_ITEMS(X, Y) \
  X(Y, Notices, "booking.notices", Booking, "notices and restrictions") \
  X(Y, RepairBook, "booking.repair_book", Booking, "the unit's repair book") \
  X(Y, Roster, "booking.roster", Booking, "the working: train, display number, time")

#define CABWRIGHT_END_ITEMS(X, Y, N) \
  X(Y, End##N##Protection, "end" #N ".protection", End##N, "board, flag or lamp at end " #N) \
  X(Y, End##N##Hoses, "end" #N ".hoses", End##N, "brake hoses at end " #N) \
  X(Y, End##N##Coupling, "end" #N ".coupling", End##N, "coupling at end " #N) \
  X(Y, End##N##Lamps, "end" #N ".lamps", End##N, "lamps at end " #N) \
  X(Y, End##N##TailLamp, "end" #N ".tail_lamp", End##N, "tail lamp at end " #N) \
  X(Y, End##N##Display, "end" #N ".display", End##N, "destination display at end " #N) \
  X(Y, End##N##Window, "end" #N ".window", End##N, "cab window at end " #N) \
  X(Y, End##N##Wiper, "end" #N ".wiper", End##N, "wiper blade at end " #N) \
  X(Y, End##N##Horn, "end" #N ".horn", End##N, "horn trumpets at end " #N) \
  X(Y, End##N##Steps, "end" #N ".steps", End##N, "steps at end " #N) \
  X(Y, End##N##Sockets, "end" #N ".jumper_sockets", End##N, "jumper sockets at end " #N) \
  X(Y, End##N##Lifeguard, "end" #N ".lifeguard", End##N, "lifeguards at end " #N)

#define CABWRIGHT_CAR_ITEMS(X, Y, Id, name, words) \
  X(Y, Id##Protection, name ".protection", Id, "board, flag or lamp " words) \
  X(Y, Id##People, name ".people", Id, "people " words) \
  X(Y, Id##Scotches, name ".scotches", Id, "scotches " words) \
  X(Y, Id##Doors, name ".doors", Id, "doors " words) \
  X(Y, Id##Windows, name ".windows", Id, "windows " words) \
  X(Y, Id##Skirts, name ".skirts", Id, "skirts and covers " words) \
  X(Y, Id##Wheels, name ".wheels", Id, "wheels and tyres " words) \
  X(Y, Id##Blocks, name ".blocks", Id, "brake blocks " words) \
  X(Y, Id##Rigging, name ".rigging", Id, "brake rigging, pins and cotters " words) \
  X(Y, Id##Cylinder, name ".brake_cylinder", Id, "brake cylinder " words) \
  X(Y, Id##Cord, name ".cord", Id, "release cord " words) \
  X(Y, Id##Springs, name ".springs", Id, "springs " words) \
  X(Y, Id##Axleboxes, name ".axleboxes", Id, "axleboxes " words) \
  X(Y, Id##Pipes, name ".pipes", Id, "pipes " words) \
  X(Y, Id##Drains, name ".drains", Id, "drain cocks " words)

#define CABWRIGHT_SIDE_ITEMS(X, Y, N) \
  CABWRIGHT_CAR_ITEMS(X, Y, Side##N, "side" #N, "along car 1, side " #N) \
  X(Y, Side##N##Cardan, "side" #N ".cardan", Side##N, "cardan shaft and its guard, side " #N)

#define CABWRIGHT_TRAILER_ITEMS(X, Y, N) \
  CABWRIGHT_CAR_ITEMS(X, Y, Trailer##N, "trailer" #N, "along car 2, side " #N) \
  X(Y, Trailer##N##Telltale, "trailer" #N ".alarm_telltale", Trailer##N, "tell-tale of the passenger alarm, side " #N) \
  X(Y, Trailer##N##Underframe, "trailer" #N ".underframe", Trailer##N, "underframe, tanks and straps, side " #N) \
  X(Y, Trailer##N##Heater, "trailer" #N ".heater", Trailer##N, "heater, side " #N) \
  X(Y, Trailer##N##Batteries, "trailer" #N ".batteries", Trailer##N, "battery box, side " #N)

#define CABWRIGHT_ENGINE_ITEMS(X, Y, N) \
  X(Y, Engine##N##People, "engine" #N ".people", Engine##N, "people at engine " #N) \
  X(Y, Engine##N##Switch, "engine" #N ".isolating_switch", Engine##N, "isolating switch of engine " #N) \
  X(Y, Engine##N##FuelCock, "engine" #N ".cock", Engine##N, "fuel cock of engine " #N) \
  X(Y, Engine##N##Fuel, "engine" #N ".fuel", Engine##N, "fuel of engine " #N) \
  X(Y, Engine##N##Coolant, "engine" #N ".coolant", Engine##N, "coolant of engine " #N) \
  X(Y, Engine##N##Oil, "engine" #N ".oil", Engine##N, "oil of engine " #N ", by the dipstick") \
  X(Y, Engine##N##Belts, "engine" #N ".belts", Engine##N, "belts of engine " #N) \
  X(Y, Engine##N##Fan, "engine" #N ".fan", Engine##N, "fan of engine " #N) \
  X(Y, Engine##N##Exhaust, "engine" #N ".exhaust", Engine##N, "exhaust of engine " #N) \
  X(Y, Engine##N##AirFilter, "engine" #N ".air_filter", Engine##N, "air filter of engine " #N) \
  X(Y, Engine##N##Throttle, "engine" #N ".throttle", Engine##N, "hand throttle of engine " #N) \
  X(Y, Engine##N##Tray, "engine" #N ".tray", Engine##N, "tray and ground below engine " #N) \
  X(Y, Engine##N##FinalDrive, "engine" #N ".final_drive", Engine##N, "final drive " #N ", its pin and seal") \
  X(Y, Engine##N##Gearbox, "engine" #N ".gearbox", Engine##N, "gearbox " #N) \
  X(Y, Engine##N##Coupling, "engine" #N ".coupling", Engine##N, "fluid coupling " #N) \
  X(Y, Engine##N##Bottle, "engine" #N ".bottle", Engine##N, "fire bottle of engine " #N) \
  X(Y, Engine##N##Cover, "engine" #N ".cover", Engine##N, "cover of engine " #N)

#define CABWRIGHT_BETWEEN_ITEMS(X, Y) \
  X(Y, BetweenHoses, "between.hoses", Between, "vacuum hoses between the cars") \
  X(Y, BetweenAirHose, "between.air_hose", Between, "air hose between the cars") \
  X(Y, BetweenJumper, "between.jumper", Between, "control jumper between the cars") \
  X(Y, BetweenCoupler, "between.coupler", Between, "coupler between the cars") \
  X(Y, BetweenGangway, "between.gangway", Between, "gangway between the cars")

#define CABWRIGHT_CAB_ITEMS(X, Y, N) \
  X(Y, Cab##N##Detonators, "cab" #N ".detonators", Cab##N, "detonator canister, cab " #N) \
  X(Y, Cab##N##Flags, "cab" #N ".flags", Cab##N, "red flags, cab " #N) \
  X(Y, Cab##N##Clips, "cab" #N ".clips", Cab##N, "track circuit clips, cab " #N) \
  X(Y, Cab##N##Extinguisher, "cab" #N ".extinguisher", Cab##N, "fire extinguisher, cab " #N) \
  X(Y, Cab##N##FirstAid, "cab" #N ".first_aid", Cab##N, "first-aid box, cab " #N) \
  X(Y, Cab##N##Seal, "cab" #N ".seal", Cab##N, "isolating cock of the safety device and its seal, cab " #N) \
  X(Y, Cab##N##HandbrakeItem, "cab" #N ".handbrake_chain", Cab##N, "handbrake: wheel, pawl, chain, cab " #N) \
  X(Y, Cab##N##Neutral, "cab" #N ".controls_neutral", Cab##N, "controls at rest: gear, throttle, reverser, cab " #N) \
  X(Y, Cab##N##Gauges, "cab" #N ".gauges", Cab##N, "gauges: glass whole, needles at rest on their zero, cab " #N) \
  X(Y, Cab##N##Lamps, "cab" #N ".lamps", Cab##N, "desk lamps under the lamp test, cab " #N) \
  X(Y, Cab##N##GuardsValveItem, "cab" #N ".valve", Cab##N, "guard's valve, cab " #N) \
  X(Y, Cab##N##GuardsGaugeItem, "cab" #N ".rear_gauge", Cab##N, "guard's gauge against the other cab's, cab " #N) \
  X(Y, Cab##N##Book, "cab" #N ".book", Cab##N, "repair book and plates, cab " #N) \
  X(Y, Cab##N##Floor, "cab" #N ".floor", Cab##N, "floor and steps, cab " #N) \
  X(Y, Cab##N##Windows, "cab" #N ".windows", Cab##N, "windows seen from inside, cab " #N) \
  X(Y, Cab##N##LockItem, "cab" #N ".door", Cab##N, "door and its lock, cab " #N)

#define CABWRIGHT_CUPBOARD_ITEMS(X, Y) \
  X(Y, Breakers, "cupboard.breakers", Cupboard, "breakers") \
  X(Y, BatterySwitchItem, "cupboard.battery_switch", Cupboard, "battery switch") \
  X(Y, Volts, "cupboard.volts_read", Cupboard, "battery volts") \
  X(Y, SaloonDoors, "saloon.doors", Saloon, "passenger doors from inside") \
  X(Y, SaloonAlarm, "saloon.alarm", Saloon, "passenger alarm handles") \
  X(Y, SaloonLightsItem, "saloon.lights", Saloon, "saloon lights")

#define CABWRIGHT_ITEMS(X, Y) \
  CABWRIGHT_BOOKING_ITEMS(X, Y) \
  CABWRIGHT_END_ITEMS(X, Y, 1) \
  CABWRIGHT_END_ITEMS(X, Y, 2) \
  CABWRIGHT_SIDE_ITEMS(X, Y, 1) \
  CABWRIGHT_SIDE_ITEMS(X, Y, 2) \
  CABWRIGHT_TRAILER_ITEMS(X, Y, 1) \
  CABWRIGHT_TRAILER_ITEMS(X, Y, 2) \
  CABWRIGHT_ENGINE_ITEMS(X, Y, 1) \
  CABWRIGHT_ENGINE_ITEMS(X, Y, 2) \
  CABWRIGHT_BETWEEN_ITEMS(X, Y) \
  CABWRIGHT_CAB_ITEMS(X, Y, 1) \
  CABWRIGHT_CAB_ITEMS(X, Y, 2) \
  CABWRIGHT_CUPBOARD_ITEMS(X, Y)
// clang-format on
