// SPDX-License-Identifier: GPL-3.0-or-later
// Two hands. A hand stays on what it holds; reaching for a third thing makes one let go, and never
// the one that holds the safety device down.
#pragma once

#include "unit/world.h"

namespace cabwright::unit {

/// The device is the throttle's own handle: one hand serves both.
[[nodiscard]] bool isSameGrip(Control a, Control b);
[[nodiscard]] bool isDevice(Control c);

/// Whether a hand is on this control (or its grip).
[[nodiscard]] bool isHeld(const World& w, Control c);

/// Puts a hand on it: the one already there, a free one, else the one used longest ago.
void reach(World& w, Control c);

/// Takes the hand off it, if one is there; what springs goes back.
void letGo(World& w, Control c);
/// Both hands off everything, as somebody who walks away.
void letGoOfAll(World& w);

/// One tick: pushed buttons come back, the throttle springs to idle where the device is let go,
/// handbrake wheels turn under a hand, stand on their pawl or unwind.
void advanceHands(World& w);

}  // namespace cabwright::unit
