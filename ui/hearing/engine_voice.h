// SPDX-License-Identifier: GPL-3.0-or-later
// The note of one engine: six cylinders, four strokes, so three firings a turn, rpm / 20 Hz.
//
// The sound is made firing by firing: each is a pressure pulse whose length goes with the turning
// and whose edge with the load, then the knock of the combustion, then the exhaust pipe, floor and
// walls. A cylinder that misses leaves its compression alone. A pattern that comes again after two
// turns holds every half order (multiples of rpm / 120 Hz), which is the roughness one hears.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

#include "hearing/filters.h"
#include "hearing/glide.h"
#include "hearing/scene.h"
#include "hearing/voice.h"

namespace cabwright::hearing {

class EngineVoice {
 public:
  /// `line` 0 or 1: two engines do not fire together.
  explicit EngineVoice(std::size_t line);
  void prepare(double sample_rate);
  void set(const HeardScene& scene);
  void addTo(Block block);

  static constexpr std::size_t kCylinders = 6;
  /// Share of its cycles that a cylinder fires when the engine as a whole fires this share: some
  /// fail sooner than others. The mean over the six is the share asked for.
  [[nodiscard]] static double calcFires(std::size_t cylinder, double evenness);

 private:
  void beginFiring();
  double nextRaw();
  double nextThroughPipe(double raw);
  void tuneWalls();

  std::size_t line_;
  double sample_rate_ = 48000.0;
  Noise noise_;
  Glide rpm_{0.04}, gain_{0.06}, load_{0.05}, walls_{0.06}, bearing_{0.06};
  double evenness_ = 1.0;
  double phase_ = 0.0;  // of the running firing interval, 0..1
  std::size_t cylinder_ = 0;
  double firing_ = 0.0;  // strength of the running firing, 0: missed
  double edge_ = 0.2, knock_ = 0.0, knock_decay_ = 0.0;
  std::array<BandPass, 3> pipe_;
  BandPass breath_, clatter_;
  LowPass wall1_, wall2_, rumble_;
};

}  // namespace cabwright::hearing
