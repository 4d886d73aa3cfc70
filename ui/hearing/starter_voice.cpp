// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/starter_voice.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace cabwright::hearing {

namespace {
constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr double kTurnsRpm = 15.0;      // less is standing still to the ear
constexpr double kCrankingRpm = 300.0;  // above it the engine drags the pinion along
constexpr double kHowlingRpm = 450.0;
constexpr double kLevel = 0.17;
}  // namespace

StarterVoice::StarterVoice(std::size_t line)
    : line_(line), noise_(static_cast<std::uint32_t>(0x7A11 + 31 * line)) {}

void StarterVoice::prepare(double sample_rate) {
  sample_rate_ = sample_rate;
  for (Glide* g : {&gain_, &rpm_, &harsh_, &growl_}) g->prepare(sample_rate);
  teeth_.tune(sample_rate, 1500.0, 0.9);
  growling_.tune(sample_rate, 100.0, 5.0);
}

void StarterVoice::set(const HeardScene& scene) {
  const HeardEngine& e = scene.engine[line_];
  if (!e.starter) {
    gain_.setTarget(0.0);
    return;
  }
  if (gain_.isZero()) {
    rpm_.jumpTo(e.note_rpm);
    pan_ = Pan(e.bearing);
  }
  gain_.setTarget(kLevel * scene.engine_nearness * (1.0 - 0.4 * scene.walls));
  rpm_.setTarget(e.note_rpm);
  harsh_.setTarget(
      std::clamp((e.note_rpm - kCrankingRpm) / (kHowlingRpm - kCrankingRpm), 0.0, 1.0));
  growl_.setTarget(e.note_rpm < kTurnsRpm ? 1.0 : 0.0);
  wall_.tune(sample_rate_, 5000.0 - 4000.0 * scene.walls);
}

void StarterVoice::addTo(Block block) {
  if (gain_.isZero()) return;
  for (Stereo& s : block) {
    phase_ += rpm_.next() * kRingTeeth / 60.0 / sample_rate_;
    phase_ -= std::floor(phase_);
    const double sine = std::sin(kTwoPi * phase_);
    // Odd and even partials of teeth in mesh, out of one sine: its square and cube.
    const double whine =
        0.6 * sine + 0.5 * sine * std::cos(kTwoPi * phase_) + 0.3 * sine * sine * sine;
    const double hiss = noise_.next();
    const double harsh = harsh_.next();
    const double grind = teeth_.next(hiss * (0.35 + 0.65 * std::abs(sine)));
    const double turning = 1.0 - growl_.next();
    const double sound = turning * ((1.0 - 0.3 * harsh) * whine + (0.25 + 1.6 * harsh) * grind) +
                         2.5 * (1.0 - turning) * growling_.next(hiss);
    const double heard = gain_.next() * wall_.next(sound);
    s.left += pan_.left * heard;
    s.right += pan_.right * heard;
  }
}

}  // namespace cabwright::hearing
