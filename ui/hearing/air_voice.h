// SPDX-License-Identifier: GPL-3.0-or-later
// Air through openings: noise, bright where pressure blows out, deeper and unsteady where a vacuum
// draws in.
#pragma once

#include "hearing/filters.h"
#include "hearing/glide.h"
#include "hearing/scene.h"
#include "hearing/voice.h"

namespace cabwright::hearing {

class AirVoice {
 public:
  void prepare(double sample_rate);
  void set(const HeardScene& scene);
  void addTo(Block block);

  /// Middle of the two noises, Hz.
  static constexpr double kOutwardsHz = 5200.0, kInwardsHz = 950.0;

 private:
  Noise left_{0xA1A1}, right_{0xB7B7}, sway_noise_{0xC3};
  Glide out_{0.05}, in_{0.05};
  BandPass out_left_, out_right_, in_left_, in_right_;
  LowPass sway_;
};

}  // namespace cabwright::hearing
