// SPDX-License-Identifier: GPL-3.0-or-later
// What a hand has hold of, in the hand's own units; part of hand.h.
#pragma once

#include "drawing/hand.h"

namespace cabwright::drawing {

/// The thing of this grip, as a right hand has it; `k` is the scale the hand is drawn at.
void paintHeld(Pen& pen, Grip grip, double k);

}  // namespace cabwright::drawing
