// SPDX-License-Identifier: GPL-3.0-or-later
// Why a lamp is dark, a button dead, a lever blocked: the facts its row of the interlock table
// needs and how each stands, in words that follow from the state of the moment.
//
// It tells what is so, hidden defects included, and is for the guided run, for practice and for the
// instructor. In assessment nothing of it may be shown; to see to that is up to the caller.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "unit/unit.h"

namespace cabwright::unit {

using WhyPoint = std::variant<Control, Item, Signal>;

struct WhyFact {
  Fact fact{};
  bool there = false;
  std::string when_there, when_missing;  ///< in words, with the figures of now
  std::optional<Place> place;            ///< where it can be seen or put right
  std::optional<WhyPoint> points;        ///< at what
  /// That of the two which is so.
  [[nodiscard]] const std::string& text() const { return there ? when_there : when_missing; }
};

/// The facts of a row, in the order of the list. "This desk is alive" is followed to its own facts;
/// "the drives are in mesh" to one for each drive, with the state of its dogs. All are there when
/// the row is fulfilled as of the last tick, and only then. Cab and line are 0 or 1.
[[nodiscard]] std::vector<WhyFact> calcWhy(const Unit& unit, Outcome outcome, int cab, int line);

/// What to ask of calcWhy.
struct WhyOf {
  Outcome outcome{};
  int cab = 0, line = 0;
  bool operator==(const WhyOf&) const = default;
};
/// Of a desk lamp; empty for any other signal.
[[nodiscard]] std::optional<WhyOf> findWhyOf(Signal lamp);
/// Of a lever or button that does nothing or will not move; empty where no row stands behind it. Of
/// the gear selector: that of engine 1.
[[nodiscard]] std::optional<WhyOf> findWhyOf(Control control);

/// The facts of a desk lamp; with one more, missing, when it is fed and dark all the same. Empty
/// for any other signal.
[[nodiscard]] std::vector<WhyFact> calcWhyOfLamp(const Unit& unit, Signal lamp);

}  // namespace cabwright::unit
