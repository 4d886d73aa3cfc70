// SPDX-License-Identifier: GPL-3.0-or-later
// What can be seen and heard from where.
#pragma once

#include "unit/world.h"

namespace cabwright::unit {

/// From where an engine's note, its exhauster's hum, the thump of its final drive are heard.
[[nodiscard]] PlaceSet hearingOfEngine(int line);
[[nodiscard]] PlaceSet hearingOfHum(int line);
[[nodiscard]] PlaceSet hearingOfDrive(int line);

/// Whether there is light enough to see a thing closely or to read a gauge at a place: daylight,
/// the light of that cab or of the saloon with current in it, or the hand lamp lit in the trainee's
/// hand where the trainee is.
[[nodiscard]] bool hasLightAt(const World& w, Place place);
/// The same where the trainee is.
[[nodiscard]] bool hasLight(const World& w);

/// Whether a signal, shown though it is, needs that light: gauges and what is only looked at, not
/// lamps, not signals by the line, and nothing that is heard.
[[nodiscard]] bool needsLight(Signal s);

/// How long an item has to be looked at to have been seen, s: its own time, and no less than what
/// counts as a look at all.
[[nodiscard]] double calcSecondsToSee(const World& w, Item item);

/// Whether it has once been looked at for so long.
[[nodiscard]] bool hasSeen(const World& w, Item item);

/// Whether a shown signal can be read or heard at a place.
[[nodiscard]] bool isPerceivedAt(Signal s, Place place);

/// Whether there is anything to be made out of an item: of desk lamps only under the lamp test.
[[nodiscard]] bool canMakeOut(const World& w, Item item);

/// Of what is wrong with an item what shows just now: a dead lamp only while it should burn. 0: it
/// looks sound.
[[nodiscard]] int findVisibleCondition(const World& w, Item item);

/// What an item shows whoever looks at it just now.
[[nodiscard]] Sight describeSight(const World& w, Item item);

}  // namespace cabwright::unit
