// SPDX-License-Identifier: GPL-3.0-or-later
// Values that never jump: what a voice is told goes through one of these before it is heard.
#pragma once

#include <cmath>

namespace cabwright::hearing {

/// Follows a target exponentially, one step a sample, and comes to rest on it exactly.
class Glide {
 public:
  /// `seconds`: time after which 63 % of a step is done, > 0.
  explicit Glide(double seconds) : seconds_(seconds) {}
  void prepare(double sample_rate) { share_ = 1.0 - std::exp(-1.0 / (seconds_ * sample_rate)); }
  void setTarget(double target) { target_ = target; }
  void jumpTo(double value) { value_ = target_ = value; }
  [[nodiscard]] double value() const { return value_; }
  [[nodiscard]] double target() const { return target_; }
  /// Nothing is to be heard, and nothing is to come.
  [[nodiscard]] bool isZero() const { return value_ == 0.0 && target_ == 0.0; }
  double next() {
    const double rest = target_ - value_;
    value_ = std::abs(rest) < kClose ? target_ : value_ + share_ * rest;
    return value_;
  }

 private:
  static constexpr double kClose = 1e-6;  // -120 dB of a gain
  double seconds_, share_ = 1.0, value_ = 0.0, target_ = 0.0;
};

}  // namespace cabwright::hearing
