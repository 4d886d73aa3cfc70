// SPDX-License-Identifier: GPL-3.0-or-later
// X(Y, Identifier, name, verb, meaning): what the trainee can say ("say NAME") and do with nothing
// but eyes and voice ("do NAME"). Each is a signal that counts: said.NAME, did.NAME.
// R(Y, Identifier, words): what people answer, or say of their own accord ("guard: say NAME", with
// the names of condition_words.cpp); the signal heard.words carries the number.
#pragma once

// clang-format off
#define CABWRIGHT_PHRASES(X, Y) \
  X(Y, AskPermission, "ask_permission", said, "asks whether the line may be walked and the unit approached") \
  X(Y, AskProtection, "ask_protection", said, "asks who is working on the unit, and whether it may be touched") \
  X(Y, AskSwitch, "ask_switch", said, "asks why an isolating switch stands at off") \
  X(Y, CallWarning, "call_warning", said, "calls out that an engine will start: stand clear") \
  X(Y, AskSecondPerson, "ask_second_person", said, "asks for a second person at the rear") \
  X(Y, AskRearGauge, "ask_rear_gauge", said, "asks the second person for the reading in the rear cab") \
  X(Y, AskValveOpen, "ask_valve_open", said, "asks the second person to open the guard's valve") \
  X(Y, AskValveShut, "ask_valve_shut", said, "asks the second person to shut the guard's valve") \
  X(Y, AskBlocks, "ask_blocks", said, "asks the second person whether the blocks are on, each side") \
  X(Y, ThankSecondPerson, "thank_second_person", said, "lets the second person go") \
  X(Y, AskBellTest, "ask_bell_test", said, "agrees a bell test with the guard") \
  X(Y, TellGuard, "tell_guard", said, "tells the guard what is the matter") \
  X(Y, TellSignaller, "tell_signaller", said, "tells the signaller what is the matter") \
  X(Y, TellShed, "tell_shed", said, "tells the shed of a defect by word") \
  X(Y, AskReseat, "ask_reseat", said, "asks the shed whether a jumper may be put home") \
  X(Y, AskRestricted, "ask_restricted", said, "asks the signaller whether the unit may go on restricted") \
  X(Y, RefuseUnit, "refuse_unit", said, "says that the unit does not go") \
  X(Y, HandOver, "hand_over", said, "hands handles, keys and the unit over by name") \
  X(Y, CallFire, "call_fire", said, "calls fire, people away, help") \
  X(Y, LookBothWays, "look_both_ways", did, "looks both ways before stepping on the line") \
  X(Y, LookAlong, "look_along", did, "looks along both sides of the unit") \
  X(Y, LookAhead, "look_ahead", did, "looks at the signal and the road ahead") \
  X(Y, LookBack, "look_back", did, "looks back along the train") \
  X(Y, CountScotches, "count_scotches", did, "counts the scotches") \
  X(Y, StandClear, "stand_clear", did, "stands clear of the moving parts")

#define CABWRIGHT_REPLIES(R, Y) \
  R(Y, None, "") \
  R(Y, Granted, "permission given, mind the other line") \
  R(Y, NobodyWorks, "nobody is working on it, you may have it") \
  R(Y, StillWorking, "no: people are still working on it") \
  R(Y, NobodyKnows, "the switch was left from yesterday, put it back") \
  R(Y, FitterHasIt, "the fitter has that engine, leave the switch alone") \
  R(Y, OnMyWay, "on my way to the rear") \
  R(Y, AtTheRear, "at the rear cab") \
  R(Y, NobodyThere, "nobody answers") \
  R(Y, RearReading, "I read the rear gauge to you") \
  R(Y, ValveOpen, "valve open at the rear") \
  R(Y, ValveShut, "valve shut at the rear") \
  R(Y, BlocksOn, "all blocks are on") \
  R(Y, BlocksOff, "all blocks are off") \
  R(Y, BlocksDiffer, "the blocks are not all the same") \
  R(Y, Understood, "understood") \
  R(Y, ReadyForBell, "ready for the bell") \
  R(Y, PersonSeen, "somebody is standing at the unit") \
  R(Y, NobodySeen, "nobody to be seen along the sides") \
  R(Y, PersonLeaves, "all right, I am clear") \
  R(Y, Hurry, "that road is wanted: when do you go?") \
  R(Y, AlarmDealt, "somebody was unwell and is cared for: the alarm may be put back") \
  R(Y, MayReseat, "put it home, with the engines stopped and the handbrakes on") \
  R(Y, MayRestricted, "you may go on restricted to the next station, and no further")
// clang-format on
