// SPDX-License-Identifier: GPL-3.0-or-later
// Where people can be, and how long it takes to get from one place to another.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "unit/place_list.h"

namespace cabwright::unit {

#define CABWRIGHT_PLACE(Y, id, name, kind, text) k##id,
enum class Place : std::uint8_t { CABWRIGHT_PLACES(CABWRIGHT_PLACE, ) kCount };
#undef CABWRIGHT_PLACE
inline constexpr std::size_t kPlaceCount = static_cast<std::size_t>(Place::kCount);

enum class PlaceKind : std::uint8_t { kAway, kGround, kInside };

struct PlaceInfo {
  Place id;
  std::string_view name;
  PlaceKind kind;
  std::string_view text;
};

[[nodiscard]] std::span<const PlaceInfo> placeTable();
[[nodiscard]] const PlaceInfo& placeInfo(Place p);
[[nodiscard]] std::optional<Place> findPlace(std::string_view name);

/// Places as a set.
using PlaceSet = std::uint32_t;
[[nodiscard]] constexpr PlaceSet placeBit(Place p) {
  return PlaceSet{1} << static_cast<unsigned>(p);
}
[[nodiscard]] constexpr bool contains(PlaceSet set, Place p) { return (set & placeBit(p)) != 0; }

/// Walking speed, m/s, and time to climb in or out, s (CP).
inline constexpr double kWalkingMps = 1.2;
inline constexpr double kClimbingS = 10.0;

/// The way on foot: the quickest of the ways that do not lead between or under the cars.
struct Walk {
  double metres = 0;
  int climbs = 0;        ///< up into the unit or down from it
  int crossings = 0;     ///< of the line before an end of the unit
  bool between = false;  ///< ends between the cars
  bool under = false;    ///< ducks under the unit, from one engine to the other
  /// Length over walking speed plus the climbs.
  [[nodiscard]] double seconds() const { return metres / kWalkingMps + climbs * kClimbingS; }
};

/// From one place to another. With `under` the short way beneath the cars may be taken.
[[nodiscard]] Walk calcWalk(Place from, Place to, bool under = false);

/// Cab 0 or 1 of a place that is a cab, -1 otherwise.
[[nodiscard]] constexpr int cabOf(Place p) {
  return p == Place::kCab1 ? 0 : p == Place::kCab2 ? 1 : -1;
}
[[nodiscard]] constexpr Place cabPlace(int cab) { return cab == 0 ? Place::kCab1 : Place::kCab2; }

}  // namespace cabwright::unit
