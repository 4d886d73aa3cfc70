// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/places.h"

#include <array>

namespace cabwright::unit {

namespace {

#define CABWRIGHT_PLACE(Y, id, name, kind, text) \
  PlaceInfo{Place::k##id, name, PlaceKind::kind, text},
constexpr std::array<PlaceInfo, kPlaceCount> kPlaces{CABWRIGHT_PLACES(CABWRIGHT_PLACE, )};
#undef CABWRIGHT_PLACE

enum class Way : std::uint8_t { kWalk, kCross, kBetween, kUnder };

struct Path {
  Place a, b;
  double metres;
  int climbs;
  Way way;
};

// Two cars are 40 m over their ends; the engines lie a third of the way along car 1. The line is
// crossed where a path leads round an end, from side 1 to side 2.
constexpr std::array<Path, 26> kPaths{{
    {Place::kBooking, Place::kLineside, 60, 0, Way::kWalk},
    {Place::kLineside, Place::kEnd1, 12, 0, Way::kWalk},
    {Place::kLineside, Place::kSide1, 10, 0, Way::kWalk},
    {Place::kEnd1, Place::kSide1, 10, 0, Way::kWalk},
    {Place::kSide1, Place::kTrailer1, 20, 0, Way::kWalk},
    {Place::kTrailer1, Place::kEnd2, 10, 0, Way::kWalk},
    {Place::kEnd1, Place::kSide2, 13, 0, Way::kCross},
    {Place::kEnd2, Place::kTrailer2, 13, 0, Way::kCross},
    {Place::kSide2, Place::kTrailer2, 20, 0, Way::kWalk},
    {Place::kSide1, Place::kEngine1, 3, 0, Way::kWalk},
    {Place::kSide2, Place::kEngine2, 3, 0, Way::kWalk},
    {Place::kSide1, Place::kBetween, 11, 0, Way::kBetween},
    {Place::kTrailer1, Place::kBetween, 11, 0, Way::kBetween},
    {Place::kSide2, Place::kBetween, 11, 0, Way::kBetween},
    {Place::kTrailer2, Place::kBetween, 11, 0, Way::kBetween},
    {Place::kEngine1, Place::kEngine2, 4, 0, Way::kUnder},
    {Place::kSide1, Place::kCab1, 8, 1, Way::kWalk},
    {Place::kSide2, Place::kCab1, 8, 1, Way::kWalk},
    {Place::kEnd1, Place::kCab1, 5, 1, Way::kWalk},
    {Place::kTrailer1, Place::kCab2, 8, 1, Way::kWalk},
    {Place::kTrailer2, Place::kCab2, 8, 1, Way::kWalk},
    {Place::kEnd2, Place::kCab2, 5, 1, Way::kWalk},
    {Place::kCab1, Place::kCupboard, 2, 0, Way::kWalk},
    {Place::kCupboard, Place::kSaloon, 16, 0, Way::kWalk},
    {Place::kSaloon, Place::kCab2, 18, 0, Way::kWalk},
    {Place::kTrailer1, Place::kSaloon, 6, 1, Way::kWalk},
}};

constexpr double kFar = 1e9;

std::size_t at(Place p) { return static_cast<std::size_t>(p); }

struct Reached {
  Walk walk;
  double seconds = kFar;
  bool done = false;
};

Walk extend(const Walk& so_far, const Path& path) {
  Walk walk = so_far;
  walk.metres += path.metres;
  walk.climbs += path.climbs;
  if (path.way == Way::kCross) ++walk.crossings;
  if (path.way == Way::kBetween) walk.between = true;
  if (path.way == Way::kUnder) walk.under = true;
  return walk;
}

}  // namespace

std::span<const PlaceInfo> placeTable() { return kPlaces; }
const PlaceInfo& placeInfo(Place p) { return kPlaces[at(p)]; }

std::optional<Place> findPlace(std::string_view name) {
  for (const PlaceInfo& info : kPlaces) {
    if (info.name == name) return info.id;
  }
  return std::nullopt;
}

// Dijkstra over a handful of places; the first of equals wins, so the way is always the same.
Walk calcWalk(Place from, Place to, bool under) {
  std::array<Reached, kPlaceCount> reached{};
  reached[at(from)].seconds = 0.0;
  for (;;) {
    std::size_t here = kPlaceCount;
    for (std::size_t k = 0; k < kPlaceCount; ++k) {
      if (reached[k].done || reached[k].seconds >= kFar) continue;
      if (here == kPlaceCount || reached[k].seconds < reached[here].seconds) here = k;
    }
    if (here == kPlaceCount || here == at(to)) break;
    reached[here].done = true;
    // Between the cars is somewhere to go, never somewhere to pass through.
    if (here == at(Place::kBetween) && here != at(from)) continue;
    for (const Path& path : kPaths) {
      if (at(path.a) != here && at(path.b) != here) continue;
      if (path.way == Way::kUnder && !under) continue;
      const std::size_t there = at(path.a) == here ? at(path.b) : at(path.a);
      const Walk walk = extend(reached[here].walk, path);
      if (walk.seconds() >= reached[there].seconds) continue;
      reached[there].walk = walk;
      reached[there].seconds = walk.seconds();
    }
  }
  return reached[at(to)].walk;
}

}  // namespace cabwright::unit
