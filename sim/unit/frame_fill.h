// SPDX-License-Identifier: GPL-3.0-or-later
// From the world to the Frame: every signal of the list, at every tick.
#pragma once

#include "plant/plant.h"
#include "unit/route.h"
#include "unit/world.h"

namespace cabwright::unit {

/// Moves all gauges and lamps one tick towards what they measure.
void advanceInstruments(World& w, const plant::PlantReadings& r, double dt);

/// Fills the whole Frame; pure but for w.frame.
void fillFrame(World& w, const plant::Plant& plant, const Route& route);

// Its parts.
void fillShown(World& w, const plant::Plant& plant, const Route& route);
void fillTrue(World& w, const plant::Plant& plant, const Route& route);
void fillDone(World& w);

/// The signal of cab, end or engine n (0 or 1) from those of the first and the second.
[[nodiscard]] constexpr Signal ofNumber(Signal first, Signal second, std::size_t n) {
  const auto a = static_cast<std::size_t>(first), b = static_cast<std::size_t>(second);
  return static_cast<Signal>(a + n * (b - a));
}

class FrameWriter {
 public:
  explicit FrameWriter(Frame& frame) : frame_(frame) {}
  void put(Signal s, double value) { frame_[s] = static_cast<float>(value); }
  void put(Signal s, bool value) { frame_[s] = value ? 1.0F : 0.0F; }
  void put(Signal s, int value) { frame_[s] = static_cast<float>(value); }

 private:
  Frame& frame_;
};

/// Seconds since a tick; 9999 for never.
[[nodiscard]] double calcAge(const World& w, std::int64_t since);

/// Front of the unit, m, for one who looks out of cab 0 or 1, and +1 or -1 for the way it looks.
[[nodiscard]] double calcFront(const plant::PlantReadings& r, int cab);
/// The next signal ahead of a cab, none if there is none at all.
[[nodiscard]] const RouteSignal* findSignalAhead(const Route& route, double front_m, int cab,
                                                 std::size_t& index);
[[nodiscard]] double calcMarkDistance(const Route& route, double front_m, int cab);
[[nodiscard]] double calcLimit(const Route& route, double from_m, double to_m);

}  // namespace cabwright::unit
