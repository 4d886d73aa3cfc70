// SPDX-License-Identifier: GPL-3.0-or-later
// The line at the foot of a window.
#pragma once

class QStatusBar;

namespace cabwright::drawing {

/// It is there as long as it says something: what is above it has the room again afterwards.
void hideWhileSilent(QStatusBar* line);

}  // namespace cabwright::drawing
