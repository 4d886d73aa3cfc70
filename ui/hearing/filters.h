// SPDX-License-Identifier: GPL-3.0-or-later
// Small parts the voices are made of: noise, a low pass, a band pass.
// Each settles to an exact zero: values too small to be heard are dropped, because numbers near the
// smallest a processor knows are slow to reckon with.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace cabwright::hearing {

inline constexpr double kInaudible = 1e-9;
[[nodiscard]] inline double dropInaudible(double v) { return std::abs(v) < kInaudible ? 0.0 : v; }

/// White noise, even over -1..1. The same seed, the same noise.
class Noise {
 public:
  explicit Noise(std::uint32_t seed) : state_(seed == 0 ? 1 : seed) {}
  double next() {
    state_ ^= state_ << 13;  // Marsaglia's xorshift
    state_ ^= state_ >> 17;
    state_ ^= state_ << 5;
    return static_cast<double>(state_) * (2.0 / 4294967295.0) - 1.0;
  }

 private:
  std::uint32_t state_;
};

/// First order low pass; two in a row fall by 12 dB an octave.
class LowPass {
 public:
  void tune(double sample_rate, double cutoff_hz) {
    share_ = 1.0 - std::exp(-2.0 * std::numbers::pi * std::min(cutoff_hz / sample_rate, 0.45));
  }
  double next(double in) { return value_ = dropInaudible(value_ + share_ * (in - value_)); }
  [[nodiscard]] double value() const { return value_; }

 private:
  double share_ = 1.0, value_ = 0.0;
};

/// Band pass of the second order, 0 dB in the middle (bilinear transform of s/Q / (s^2 + s/Q + 1)).
class BandPass {
 public:
  void tune(double sample_rate, double middle_hz, double quality) {
    const double w = 2.0 * std::numbers::pi * std::min(middle_hz / sample_rate, 0.45);
    const double alpha = std::sin(w) / (2.0 * quality);
    const double norm = 1.0 / (1.0 + alpha);
    b_ = alpha * norm;
    a1_ = -2.0 * std::cos(w) * norm;
    a2_ = (1.0 - alpha) * norm;
  }
  double next(double in) {
    const double out = b_ * in + z1_;
    z1_ = dropInaudible(z2_ - a1_ * out);
    z2_ = dropInaudible(-b_ * in - a2_ * out);
    return out;
  }

 private:
  double b_ = 0.0, a1_ = 0.0, a2_ = 0.0, z1_ = 0.0, z2_ = 0.0;
};

}  // namespace cabwright::hearing
