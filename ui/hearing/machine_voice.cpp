// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/machine_voice.h"

#include <cmath>
#include <cstdint>
#include <numbers>

namespace cabwright::hearing {

namespace {
constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr double kTurnsRpm = 20.0;
constexpr double kPuffS = 0.22, kPuffRiseS = 0.008;
constexpr double kHumLevel = 0.06, kKnockLevel = 0.16, kPuffLevel = 0.5;
}  // namespace

MachineVoice::MachineVoice(std::size_t line)
    : line_(line),
      noise_(static_cast<std::uint32_t>(0x3C0F + 71 * line)),
      casting_({{168.0, 0.10, 1.0}, {412.0, 0.06, 0.5}, {1130.0, 0.03, 0.25}}) {}

void MachineVoice::prepare(double sample_rate) {
  sample_rate_ = sample_rate;
  for (Glide* g : {&rpm_, &hum_, &knock_}) g->prepare(sample_rate);
  casting_.prepare(sample_rate);
  air_.tune(sample_rate, 2600.0, 0.7);
  puff_decay_ = std::exp(-1.0 / (kPuffS * sample_rate));
  puff_rise_share_ = 1.0 - std::exp(-1.0 / (kPuffRiseS * sample_rate));
}

void MachineVoice::set(const HeardScene& scene) {
  const HeardEngine& e = scene.engine[line_];
  const bool turns = e.note_rpm > kTurnsRpm;
  if (hum_.isZero() && knock_.isZero()) rpm_.jumpTo(e.note_rpm);
  if (turns) rpm_.setTarget(e.note_rpm);
  hum_.setTarget(kHumLevel * e.hum);
  knock_.setTarget(turns && e.compressor == Compressor::kLoaded ? kKnockLevel : 0.0);
  if (was_ == Compressor::kLoaded && e.compressor == Compressor::kUnloaded) puff_ = kPuffLevel;
  was_ = e.compressor;
}

double MachineVoice::nextHum() {
  if (hum_.isZero()) return 0.0;
  hum_phase_ += rpm_.value() * kVanesPerTurn / 60.0 / sample_rate_;
  hum_phase_ -= std::floor(hum_phase_);
  const double sine = std::sin(kTwoPi * hum_phase_), cosine = std::cos(kTwoPi * hum_phase_);
  return hum_.next() * (sine + 0.6 * sine * cosine + 0.15 * sine * (4.0 * cosine * cosine - 1.0));
}

double MachineVoice::nextKnock() {
  if (!knock_.isZero()) {
    stroke_phase_ += rpm_.value() * kStrokesPerTurn / 60.0 / sample_rate_;
    if (stroke_phase_ >= 1.0) {
      stroke_phase_ -= std::floor(stroke_phase_);
      casting_.strike(knock_.value() * (1.0 + 0.1 * noise_.next()));
    }
    knock_.next();
  }
  return casting_.next();
}

double MachineVoice::nextPuff() {
  if (puff_ == 0.0 && puff_rise_ == 0.0) return 0.0;
  puff_ = dropInaudible(puff_ * puff_decay_);
  puff_rise_ = dropInaudible(puff_rise_ + puff_rise_share_ * (puff_ - puff_rise_));
  return air_.next(puff_rise_ * noise_.next());
}

void MachineVoice::addTo(Block block) {
  const bool silent =
      hum_.isZero() && knock_.isZero() && casting_.isSilent() && puff_ == 0.0 && puff_rise_ == 0.0;
  if (silent) return;
  for (Stereo& s : block) {
    rpm_.next();
    addMono(s, nextHum() + nextKnock() + nextPuff());
  }
}

}  // namespace cabwright::hearing
