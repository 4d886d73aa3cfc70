// SPDX-License-Identifier: GPL-3.0-or-later
// The horn: two tones, a major third apart, each with its own trumpet. With little air the note is
// thinner and a little flat.
#pragma once

#include <array>

#include "hearing/filters.h"
#include "hearing/glide.h"
#include "hearing/scene.h"
#include "hearing/voice.h"

namespace cabwright::hearing {

class HornVoice {
 public:
  void prepare(double sample_rate);
  void set(const HeardScene& scene);
  void addTo(Block block);

  /// Tones with full air, Hz (house values, ratio 5 : 4).
  static constexpr double kLowHz = 300.0, kHighHz = 375.0;

 private:
  double nextTrumpet(std::size_t k);

  double sample_rate_ = 48000.0;
  Noise noise_{0x401};
  Glide level_{0.03};
  std::array<Glide, 2> gain_{Glide{0.03}, Glide{0.03}};
  std::array<double, 2> phase_{};
  BandPass breath_;
  LowPass wall_;
};

}  // namespace cabwright::hearing
