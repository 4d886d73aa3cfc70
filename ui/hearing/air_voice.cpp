// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/air_voice.h"

#include <cmath>

namespace cabwright::hearing {

namespace {
constexpr double kOutwardsLevel = 0.28, kInwardsLevel = 0.55;
constexpr double kSwayHz = 6.0;
constexpr double kSway = 18.0;  // the low pass leaves little of the noise it is given
}  // namespace

void AirVoice::prepare(double sample_rate) {
  out_.prepare(sample_rate);
  in_.prepare(sample_rate);
  for (BandPass* b : {&out_left_, &out_right_}) b->tune(sample_rate, kOutwardsHz, 0.8);
  for (BandPass* b : {&in_left_, &in_right_}) b->tune(sample_rate, kInwardsHz, 0.8);
  sway_.tune(sample_rate, kSwayHz);
}

void AirVoice::set(const HeardScene& scene) {
  out_.setTarget(kOutwardsLevel * scene.hiss * (1.0 - scene.hiss_inwards));
  in_.setTarget(kInwardsLevel * scene.hiss * scene.hiss_inwards);
}

void AirVoice::addTo(Block block) {
  if (out_.isZero() && in_.isZero()) return;
  for (Stereo& s : block) {
    const double left = left_.next(), right = right_.next();
    const double sway = 1.0 + std::tanh(kSway * sway_.next(sway_noise_.next())) * 0.3;
    const double out = out_.next(), in = in_.next() * sway;
    s.left += out * out_left_.next(left) + in * in_left_.next(left);
    s.right += out * out_right_.next(right) + in * in_right_.next(right);
  }
}

}  // namespace cabwright::hearing
