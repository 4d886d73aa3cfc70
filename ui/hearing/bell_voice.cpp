// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/bell_voice.h"

namespace cabwright::hearing {

namespace {
// The fire bell has to be heard over both engines at full power.
constexpr double kStroke = 0.34, kFireBlow = 0.20;
// Partials of a thin bowl over its lowest, rounded.
constexpr double kSecond = 2.6, kThird = 4.9;
}  // namespace

BellVoice::BellVoice()
    : guard_(
          {{kGuardHz, 0.9, 1.0}, {kGuardHz * kSecond, 0.5, 0.45}, {kGuardHz * kThird, 0.2, 0.2}}),
      fire_({{kFireHz, 0.5, 1.0}, {kFireHz * kSecond, 0.3, 0.5}, {kFireHz * kThird, 0.1, 0.15}}) {}

void BellVoice::prepare(double sample_rate) {
  sample_rate_ = sample_rate;
  guard_.prepare(sample_rate);
  fire_.prepare(sample_rate);
}

void BellVoice::set(const HeardScene& scene) {
  if (scene.bell && !bell_) guard_.strike(kStroke);
  bell_ = scene.bell;
  if (scene.fire_bell && !fire_rings_) fire_phase_ = 1.0;
  fire_rings_ = scene.fire_bell;
  fire_.setDamped(!fire_rings_);
}

void BellVoice::addTo(Block block) {
  if (guard_.isSilent() && fire_.isSilent() && !fire_rings_) return;
  for (Stereo& s : block) {
    if (fire_rings_ && fire_phase_ >= 1.0) {
      fire_phase_ -= 1.0;
      fire_.strike(kFireBlow);
    }
    if (fire_rings_) fire_phase_ += kFireBlowsHz / sample_rate_;
    addMono(s, guard_.next() + fire_.next());
  }
}

}  // namespace cabwright::hearing
