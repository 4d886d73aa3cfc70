// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/limiter.h"

#include <algorithm>
#include <cmath>

namespace cabwright::hearing {

namespace {

constexpr double kAttackS = 0.004, kReleaseS = 0.4;

double bend(double value) {
  const double over = std::abs(value) - Limiter::kThreshold;
  if (over <= 0.0) return value;
  constexpr double kRoom = Limiter::kCeiling - Limiter::kThreshold;
  return std::copysign(Limiter::kThreshold + kRoom * std::tanh(over / kRoom), value);
}

}  // namespace

void Limiter::prepare(double sample_rate) {
  attack_ = 1.0 - std::exp(-1.0 / (kAttackS * sample_rate));
  release_ = 1.0 - std::exp(-1.0 / (kReleaseS * sample_rate));
}

void Limiter::apply(Stereo& sample) {
  if (!std::isfinite(sample.left) || !std::isfinite(sample.right)) sample = {};
  const double peak = std::max(std::abs(sample.left), std::abs(sample.right));
  envelope_ += (peak > envelope_ ? attack_ : release_) * (peak - envelope_);
  const double gain = envelope_ > kThreshold ? kThreshold / envelope_ : 1.0;
  sample.left = bend(gain * sample.left);
  sample.right = bend(gain * sample.right);
}

}  // namespace cabwright::hearing
