// SPDX-License-Identifier: GPL-3.0-or-later
// What condition each item is in: hidden ones, and those that follow from the world as it is.
#pragma once

#include "unit/world.h"

namespace cabwright::unit {

/// Finds out anew which conditions follow from numbers of plant and unit and from instruments;
/// sound is the machine as this vehicle has it. To be called when a number has changed:
/// w.numbers_changed.
void updateNumberTests(World& w, const plant::Parameters& now, const plant::Parameters& sound);

/// Which of all tests hold, those of the Frame by w.frame, one bit each.
[[nodiscard]] ItemTests findHolding(const World& w);

/// 0: sound; n: the nth condition of its list is there, hidden or by the state of the unit.
[[nodiscard]] int findPresentCondition(const World& w, Item item);
/// The same of all items at once, by tests found before.
[[nodiscard]] std::array<int, kItemCount> findAllPresent(const World& w, const ItemTests& holding);

/// Whether the test of a condition that has one holds.
[[nodiscard]] bool holdsNow(const World& w, const ItemCondition& condition);

}  // namespace cabwright::unit
