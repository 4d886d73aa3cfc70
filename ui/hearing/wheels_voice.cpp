// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/wheels_voice.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace cabwright::hearing {

namespace {
constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr double kMpsPerMph = 0.44704;
constexpr double kFastMph = 60.0;
constexpr double kLoudest[4] = {1.0, 0.9, 0.4, 0.35};  // the near bogie, then the far one
constexpr double kRolling = 1.1, kRubbing = 0.35, kSquealing = 0.10, kJoint = 0.20;
constexpr double kSqueal1Hz = 1840.0, kSqueal2Hz = 2710.0;
}  // namespace

double WheelsVoice::calcSqueal(double speed_mph) {
  const double rises = std::clamp((speed_mph - 0.2) / 1.5, 0.0, 1.0);
  const double falls = std::clamp((12.0 - speed_mph) / 7.0, 0.0, 1.0);
  return rises * falls;
}

WheelsVoice::WheelsVoice()
    : rail_({{72.0, 0.14, 1.0}, {190.0, 0.10, 0.6}, {430.0, 0.06, 0.4}, {1250.0, 0.03, 0.15}}) {}

void WheelsVoice::prepare(double sample_rate) {
  sample_rate_ = sample_rate;
  for (Glide* g : {&speed_, &rolling_, &rubbing_, &squeal_}) g->prepare(sample_rate);
  rail_.prepare(sample_rate);
  rub_.tune(sample_rate, 780.0, 1.0);
  wander_.tune(sample_rate, 9.0);
}

void WheelsVoice::set(const HeardScene& scene) {
  const double share = scene.speed_mph / kFastMph;
  nearness_ = 1.0 - 0.5 * scene.walls;
  speed_.setTarget(scene.speed_mph);
  rolling_.setTarget(kRolling * nearness_ * std::min(1.5, share * std::sqrt(share)));
  rubbing_.setTarget(kRubbing * nearness_ * scene.block_press *
                     std::min(1.0, scene.speed_mph / 15.0));
  squeal_.setTarget(kSquealing * nearness_ * std::sqrt(scene.block_press) *
                    calcSqueal(scene.speed_mph));
  const double colour = 110.0 + 300.0 * share;
  roll1_.tune(sample_rate_, colour);
  roll2_.tune(sample_rate_, 2.0 * colour);
  wall_.tune(sample_rate_, 5000.0 - 3600.0 * scene.walls);
}

void WheelsVoice::advanceJoints() {
  metres_ += speed_.value() * kMpsPerMph / sample_rate_;
  if (metres_ < kAxlesM[next_axle_]) return;
  const double hard = std::min(1.0, 0.15 + speed_.value() / kFastMph);
  rail_.strike(kJoint * nearness_ * kLoudest[next_axle_] * hard * (1.0 + 0.15 * noise_.next()));
  if (++next_axle_ == std::size(kAxlesM)) {
    next_axle_ = 0;
    metres_ -= kRailM;
  }
}

double WheelsVoice::nextSqueal() {
  if (squeal_.isZero()) return 0.0;
  const double wander = std::tanh(12.0 * wander_.next(wander_noise_.next()));
  const double pitch = 1.0 + 0.006 * wander;
  phase1_ += kSqueal1Hz * pitch / sample_rate_;
  phase2_ += kSqueal2Hz * (2.0 - pitch) / sample_rate_;
  phase1_ -= std::floor(phase1_);
  phase2_ -= std::floor(phase2_);
  return squeal_.next() * ((0.7 + 0.3 * wander) * std::sin(kTwoPi * phase1_) +
                           (0.4 - 0.3 * wander) * std::sin(kTwoPi * phase2_));
}

void WheelsVoice::addTo(Block block) {
  if (speed_.isZero() && rolling_.isZero() && rubbing_.isZero() && squeal_.isZero() &&
      rail_.isSilent()) {
    return;
  }
  for (Stereo& s : block) {
    speed_.next();
    advanceJoints();
    const double hiss = noise_.next();
    const double roll = rolling_.next() * roll2_.next(roll1_.next(hiss));
    const double rub = rubbing_.next() * rub_.next(hiss);
    addMono(s, wall_.next(roll + rub + rail_.next() + nextSqueal()));
  }
}

}  // namespace cabwright::hearing
