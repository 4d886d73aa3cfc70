// SPDX-License-Identifier: GPL-3.0-or-later
// What can be seen and heard from where.
#pragma once

#include "unit/world.h"

namespace cabwright::unit {

/// From where an engine's note, its exhauster's hum, the thump of its final drive are heard.
[[nodiscard]] PlaceSet hearingOfEngine(int line);
[[nodiscard]] PlaceSet hearingOfHum(int line);
[[nodiscard]] PlaceSet hearingOfDrive(int line);

/// Whether there is light enough to see a thing closely where the trainee stands.
[[nodiscard]] bool hasLight(const World& w);

/// How long an item has to be looked at to have been seen, s: its own time, and no less than what
/// counts as a look at all.
[[nodiscard]] double calcSecondsToSee(const World& w, Item item);

/// Whether it has once been looked at for so long.
[[nodiscard]] bool hasSeen(const World& w, Item item);

/// Whether a shown signal can be read or heard at a place.
[[nodiscard]] bool isPerceivedAt(Signal s, Place place);

/// 0: sound; n: the nth condition of its list is there, hidden or by the state of the unit.
[[nodiscard]] int findPresentCondition(const World& w, Item item);

}  // namespace cabwright::unit
