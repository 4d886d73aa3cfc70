// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps the sum of all voices in bounds: turns loud passages down slowly, and bends what is still
// too high, smoothly and never above kCeiling.
#pragma once

#include "hearing/voice.h"

namespace cabwright::hearing {

class Limiter {
 public:
  static constexpr double kCeiling = 0.9;
  /// Below this nothing is changed.
  static constexpr double kThreshold = 0.6;

  void prepare(double sample_rate);
  /// In place. What is no number becomes silence.
  void apply(Stereo& sample);

 private:
  double attack_ = 1.0, release_ = 1.0, envelope_ = 0.0;
};

}  // namespace cabwright::hearing
