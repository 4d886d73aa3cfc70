// SPDX-License-Identifier: GPL-3.0-or-later
// X(Y, Identifier, name, kind, meaning): where a person can be. Y is handed through, so that other
// lists can be made of this one.
//
// The unit stands with car 1 (the motor car, cab 1) towards growing positions. Side 1 is the cess,
// the safe side with the walkway; side 2 lies beside another line. Engine n is reached from side n.
#pragma once

// clang-format off
#define CABWRIGHT_PLACES(X, Y) \
  X(Y, Booking, "booking", kAway, "the booking-on point") \
  X(Y, Lineside, "lineside", kAway, "the walkway's end by the line, before the unit is reached") \
  X(Y, End1, "end1", kGround, "on the ground before end 1, the end of cab 1") \
  X(Y, End2, "end2", kGround, "on the ground before end 2, the end of cab 2") \
  X(Y, Side1, "side1", kGround, "on the ground along car 1, on side 1 (the cess)") \
  X(Y, Side2, "side2", kGround, "on the ground along car 1, on side 2 (towards the other line)") \
  X(Y, Trailer1, "trailer1", kGround, "on the ground along car 2, on side 1") \
  X(Y, Trailer2, "trailer2", kGround, "on the ground along car 2, on side 2") \
  X(Y, Engine1, "engine1", kGround, "at engine 1, from side 1") \
  X(Y, Engine2, "engine2", kGround, "at engine 2, from side 2") \
  X(Y, Between, "between", kGround, "between the cars") \
  X(Y, Cab1, "cab1", kInside, "in cab 1") \
  X(Y, Cab2, "cab2", kInside, "in cab 2") \
  X(Y, Cupboard, "cupboard", kInside, "at the electric cupboard behind cab 1") \
  X(Y, Saloon, "saloon", kInside, "in the saloon")
// clang-format on
