// SPDX-License-Identifier: GPL-3.0-or-later
// A starter with its pinion in the ring of an engine: the teeth whine as they turn it, howl when it
// runs with a running engine, and growl when nothing turns.
#pragma once

#include <cstddef>

#include "hearing/filters.h"
#include "hearing/glide.h"
#include "hearing/scene.h"
#include "hearing/voice.h"

namespace cabwright::hearing {

class StarterVoice {
 public:
  explicit StarterVoice(std::size_t line);
  void prepare(double sample_rate);
  void set(const HeardScene& scene);
  void addTo(Block block);

  /// Teeth of the ring (house value): the whine is at rpm / 60 times this.
  static constexpr double kRingTeeth = 110.0;

 private:
  std::size_t line_;
  double sample_rate_ = 48000.0, phase_ = 0.0;
  Noise noise_;
  Glide gain_{0.03}, rpm_{0.03}, harsh_{0.05}, growl_{0.03};
  BandPass teeth_, growling_;
  LowPass wall_;
  Pan pan_;
};

}  // namespace cabwright::hearing
