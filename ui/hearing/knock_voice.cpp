// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/knock_voice.h"

namespace cabwright::hearing {

namespace {
constexpr double kThump = 0.45, kRattle = 0.22, kClick = 0.16;
}  // namespace

KnockVoice::KnockVoice()
    : drive_({{47.0, 0.35, 1.0}, {83.0, 0.25, 0.7}, {205.0, 0.12, 0.35}, {610.0, 0.05, 0.15}}),
      teeth_({{940.0, 0.07, 1.0}, {1720.0, 0.05, 0.7}, {2980.0, 0.04, 0.5}, {310.0, 0.06, 0.6}}),
      relay_({{1900.0, 0.018, 1.0}, {3350.0, 0.012, 0.8}, {720.0, 0.02, 0.4}}) {}

void KnockVoice::prepare(double sample_rate) {
  sample_rate_ = sample_rate;
  for (ModalBody* b : {&drive_, &teeth_, &relay_}) b->prepare(sample_rate);
}

void KnockVoice::set(const HeardScene& scene) {
  if (scene.thump && !thump_) drive_.strike(kThump);
  if (scene.click && !click_) relay_.strike(kClick);
  thump_ = scene.thump;
  click_ = scene.click;
  rattle_ = scene.rattle;
  rattle_hz_ = scene.rattle_hz;
}

void KnockVoice::addTo(Block block) {
  const bool silent = drive_.isSilent() && teeth_.isSilent() && relay_.isSilent() && !rattle_;
  if (silent) return;
  for (Stereo& s : block) {
    if (rattle_) rattle_phase_ += rattle_hz_ / sample_rate_;
    if (rattle_phase_ >= 1.0) {
      rattle_phase_ -= 1.0;
      teeth_.strike(kRattle * (1.0 + 0.35 * noise_.next()));
    }
    addMono(s, drive_.next() + teeth_.next() + relay_.next());
  }
}

}  // namespace cabwright::hearing
