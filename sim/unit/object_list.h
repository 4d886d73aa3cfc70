// SPDX-License-Identifier: GPL-3.0-or-later
// X(Y, Identifier, name, meaning): loose things that are carried, put into sockets and handed back.
#pragma once

// clang-format off
#define CABWRIGHT_OBJECTS(X, Y) \
  X(Y, BrakeHandle, "brake_handle", "handle of the driver's brake valve, one to a unit") \
  X(Y, ReversingLever, "reversing_lever", "reversing lever") \
  X(Y, ControlKey, "control_key", "key of the control switch") \
  X(Y, SpareKey, "spare_key", "another control key, which should not be on the unit") \
  X(Y, DoorKey, "door_key", "key of the cab doors") \
  X(Y, Lamp, "hand_lamp", "hand lamp") \
  X(Y, Vest, "vest", "high-visibility vest") \
  X(Y, Notebook, "notebook", "notebook and pencil") \
  X(Y, RuleBook, "rule_book", "rule book and traction manual") \
  X(Y, Padlock, "padlock", "padlock for an isolating switch")
// clang-format on
