// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/engine_voice.h"

#include <algorithm>
#include <cmath>

namespace cabwright::hearing {

namespace {

// Firing order of a six in line, by strength of its cylinders' readiness to miss; mean 1.
constexpr std::array<double, EngineVoice::kCylinders> kMisses{0.4, 1.6, 0.6, 0.3, 2.4, 0.7};
// No two cylinders are quite alike.
constexpr std::array<double, EngineVoice::kCylinders> kStrength{1.0, 0.985, 1.01, 1.0, 0.99, 1.015};

constexpr double kStandsRpm = 1.0;
constexpr double kFullNoteRpm = 60.0;  // below this the note fades out
constexpr double kGovernedRpm = 1800.0;
constexpr double kCompression = 0.16;  // what a cylinder without fire sounds like
constexpr double kKnockS = 0.0025;
constexpr double kFloorHz = 11.0;  // less is felt, not heard
constexpr double kOpenHz = 7000.0, kWalledHz = 650.0;
constexpr double kLevel = 0.55;

}  // namespace

double EngineVoice::calcFires(std::size_t cylinder, double evenness) {
  // The weakest miss first; what they cannot miss any more is left to the others.
  double to_miss = (1.0 - evenness) * kCylinders;
  std::array<double, kCylinders> missed{};
  for (int round = 0; round < 6 && to_miss > 1e-9; ++round) {
    double open = 0.0;
    for (std::size_t k = 0; k < kCylinders; ++k) open += missed[k] < 1.0 ? kMisses[k] : 0.0;
    if (open <= 0.0) break;
    double left = 0.0;
    for (std::size_t k = 0; k < kCylinders; ++k) {
      if (missed[k] >= 1.0) continue;
      missed[k] += to_miss * kMisses[k] / open;
      left += std::max(0.0, missed[k] - 1.0);
      missed[k] = std::min(missed[k], 1.0);
    }
    to_miss = left;
  }
  return 1.0 - missed[cylinder];
}

EngineVoice::EngineVoice(std::size_t line)
    : line_(line), noise_(static_cast<std::uint32_t>(0x51ED + 977 * line)) {
  phase_ = 0.37 * static_cast<double>(line);
}

void EngineVoice::prepare(double sample_rate) {
  sample_rate_ = sample_rate;
  for (Glide* g : {&rpm_, &gain_, &load_, &walls_, &bearing_}) g->prepare(sample_rate);
  // A pipe of its own each: the second engine's is a little longer.
  const double longer = line_ == 0 ? 1.0 : 0.94;
  pipe_[0].tune(sample_rate, 92.0 * longer, 1.2);
  pipe_[1].tune(sample_rate, 238.0 * longer, 2.5);
  pipe_[2].tune(sample_rate, 560.0 * longer, 3.0);
  breath_.tune(sample_rate, 700.0, 0.6);
  clatter_.tune(sample_rate, 2100.0, 1.2);
  rumble_.tune(sample_rate, kFloorHz);
  knock_decay_ = std::exp(-1.0 / (kKnockS * sample_rate));
  tuneWalls();
}

void EngineVoice::tuneWalls() {
  const double cutoff = kOpenHz * std::pow(kWalledHz / kOpenHz, walls_.value());
  wall1_.tune(sample_rate_, cutoff);
  wall2_.tune(sample_rate_, cutoff);
}

void EngineVoice::set(const HeardScene& scene) {
  const HeardEngine& e = scene.engine[line_];
  if (e.note_rpm < kStandsRpm) {
    // Stopped, or not heard any more: the pitch stays and the note fades, for a note that sank to
    // nothing when one walks away would tell of an engine that stops.
    gain_.setTarget(0.0);
    return;
  }
  if (gain_.isZero()) {
    rpm_.jumpTo(e.note_rpm);
    load_.jumpTo(e.load);
    walls_.jumpTo(scene.walls);
    bearing_.jumpTo(e.bearing);
  }
  rpm_.setTarget(e.note_rpm);
  load_.setTarget(e.load);
  walls_.setTarget(scene.walls);
  bearing_.setTarget(e.bearing);
  evenness_ = e.evenness;
  const double by_speed = 0.5 + 0.5 * std::min(1.0, e.note_rpm / kGovernedRpm);
  gain_.setTarget(kLevel * scene.engine_nearness * by_speed *
                  std::min(1.0, e.note_rpm / kFullNoteRpm));
}

void EngineVoice::beginFiring() {
  cylinder_ = (cylinder_ + 1) % kCylinders;
  const double chance = 0.5 + 0.5 * noise_.next();
  const double load = load_.value();
  const bool fires = evenness_ > 0.0 && chance <= calcFires(cylinder_, evenness_);
  firing_ =
      fires ? kStrength[cylinder_] * (0.34 + 0.66 * load) * (1.0 + 0.02 * noise_.next()) : 0.0;
  // A pulse is partly a matter of time: over a slow engine's long interval it is the shorter.
  const double by_speed = std::min(1.0, rpm_.value() / kGovernedRpm);
  edge_ = 0.07 + 0.15 * by_speed - 0.06 * load * by_speed;
  // Cold or light, the charge lights late and hard.
  if (fires) knock_ += (0.25 + 0.35 * (1.0 - evenness_)) * std::min(1.0, 4.0 * load);
}

double EngineVoice::nextRaw() {
  phase_ += rpm_.next() / 20.0 / sample_rate_;
  if (phase_ >= 1.0) {
    phase_ -= std::floor(phase_);
    beginFiring();
  }
  load_.next();
  // Rises and falls inside its interval and is zero at both ends, whatever the strength.
  const double shut = 1.0 - phase_;
  const double x = phase_ / edge_;
  const double pulse = x * std::exp(1.0 - x) * shut * shut;
  const double squeeze = 4.0 * phase_ * shut;
  const double pressure = firing_ * pulse + kCompression * squeeze * squeeze;
  knock_ = dropInaudible(knock_ * knock_decay_);
  const double hiss = noise_.next();
  return pressure + 0.5 * clatter_.next(hiss * knock_) +
         0.35 * breath_.next(hiss * firing_ * pulse) * load_.value();
}

double EngineVoice::nextThroughPipe(double raw) {
  const double sound = raw - rumble_.next(raw);
  const double pipe =
      0.2 * pipe_[0].next(sound) + 0.55 * pipe_[1].next(sound) + 0.5 * pipe_[2].next(sound);
  return wall2_.next(wall1_.next(0.7 * sound + 1.3 * pipe));
}

void EngineVoice::addTo(Block block) {
  if (gain_.isZero()) return;
  tuneWalls();
  for (Stereo& s : block) {
    walls_.next();
    const double sound = gain_.next() * nextThroughPipe(nextRaw());
    const Pan pan(bearing_.next());
    s.left += pan.left * sound;
    s.right += pan.right * sound;
  }
}

}  // namespace cabwright::hearing
