// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/horn_voice.h"

#include <cmath>
#include <cstddef>
#include <numbers>

namespace cabwright::hearing {

namespace {
constexpr double kLevel = 0.30;
constexpr double kFlat = 0.03;  // by which share the tone sinks when the air gives out
constexpr int kPartials = 12;
}  // namespace

void HornVoice::prepare(double sample_rate) {
  sample_rate_ = sample_rate;
  level_.prepare(sample_rate);
  for (Glide& g : gain_) g.prepare(sample_rate);
  breath_.tune(sample_rate, 1400.0, 0.8);
}

void HornVoice::set(const HeardScene& scene) {
  for (std::size_t k = 0; k < gain_.size(); ++k) {
    const bool sounds = scene.horn == static_cast<int>(k) + 1;
    gain_[k].setTarget(sounds ? kLevel * scene.horn_level : 0.0);
  }
  // A note that ends keeps its colour.
  if (scene.horn > 0) level_.setTarget(scene.horn_level);
  wall_.tune(sample_rate_, 6000.0 - 4500.0 * scene.walls);
}

// Sum of r^(n-1) sin(n x) over the partials, by the recurrence of sines.
double HornVoice::nextTrumpet(std::size_t k) {
  const double level = level_.value();
  const double pitch = (k == 0 ? kLowHz : kHighHz) * (1.0 - kFlat * (1.0 - level));
  phase_[k] += pitch / sample_rate_;
  phase_[k] -= std::floor(phase_[k]);
  const double x = 2.0 * std::numbers::pi * phase_[k];
  const double sine = std::sin(x), cosine = std::cos(x);
  const double r = 0.45 + 0.3 * level;
  double sum = 0.0, factor = 1.0, before = 0.0, now = sine;
  for (int n = 1; n <= kPartials; ++n) {
    sum += factor * now;
    factor *= r;
    const double after = 2.0 * cosine * now - before;
    before = now;
    now = after;
  }
  return sum * (1.0 - 0.5 * r);
}

void HornVoice::addTo(Block block) {
  if (gain_[0].isZero() && gain_[1].isZero()) return;
  for (Stereo& s : block) {
    level_.next();
    double sound = 0.0, loud = 0.0;
    for (std::size_t k = 0; k < gain_.size(); ++k) {
      if (gain_[k].isZero()) continue;
      const double gain = gain_[k].next();
      sound += gain * nextTrumpet(k);
      loud += gain;
    }
    sound += 0.15 * loud * breath_.next(noise_.next());
    addMono(s, wall_.next(sound));
  }
}

}  // namespace cabwright::hearing
