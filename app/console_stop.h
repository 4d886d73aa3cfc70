// SPDX-License-Identifier: GPL-3.0-or-later
// Ctrl-C, kill and a closed terminal: the run ends at its next tick and its session is closed.
#pragma once

namespace cabwright::console {

/// From now on INT, TERM and HUP are noted. A second one of the same kind ends the program at once.
void watchForStop();

/// Number of the signal that asked for the end, 0 while none did.
[[nodiscard]] int findStopSignal();

}  // namespace cabwright::console
