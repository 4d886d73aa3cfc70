// SPDX-License-Identifier: GPL-3.0-or-later
#include "spectrum.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cabwright::hearing::testing {

double calcAmplitude(std::span<const double> samples, double frequency_hz, double sample_rate) {
  const double turn = 2.0 * std::numbers::pi;
  const double step = turn * frequency_hz / sample_rate;
  const double c = 2.0 * std::cos(step);
  const auto count = static_cast<double>(samples.size());
  double s1 = 0.0, s2 = 0.0, weights = 0.0;
  for (std::size_t k = 0; k < samples.size(); ++k) {
    const double weight = 0.5 - 0.5 * std::cos(turn * (static_cast<double>(k) + 0.5) / count);
    const double s0 = weight * samples[k] + c * s1 - s2;
    s2 = s1;
    s1 = s0;
    weights += weight;
  }
  return 2.0 * std::sqrt(std::max(0.0, s1 * s1 + s2 * s2 - c * s1 * s2)) / weights;
}

double findStrongest(std::span<const double> samples, double low_hz, double high_hz, double step_hz,
                     double sample_rate) {
  double best = low_hz, most = -1.0;
  for (double f = low_hz; f <= high_hz + 1e-9; f += step_hz) {
    const double a = calcAmplitude(samples, f, sample_rate);
    if (a > most) {
      most = a;
      best = f;
    }
  }
  return best;
}

double calcRms(std::span<const double> samples) {
  double sum = 0.0;
  for (double s : samples) sum += s * s;
  return std::sqrt(sum / static_cast<double>(samples.size()));
}

double calcPeak(std::span<const double> samples) {
  double peak = 0.0;
  for (double s : samples) peak = std::max(peak, std::abs(s));
  return peak;
}

double calcLargestStep(std::span<const double> samples) {
  double most = 0.0;
  for (std::size_t k = 1; k < samples.size(); ++k) {
    most = std::max(most, std::abs(samples[k] - samples[k - 1]));
  }
  return most;
}

Mono calcEnvelope(std::span<const double> samples, double stretch_s) {
  const auto length = static_cast<std::size_t>(stretch_s * kRate);
  Mono envelope;
  for (std::size_t k = 0; k + length <= samples.size(); k += length) {
    envelope.push_back(calcRms(samples.subspan(k, length)));
  }
  return envelope;
}

int countRises(std::span<const double> envelope, double on, double off) {
  int rises = 0;
  bool below = true;
  for (double e : envelope) {
    if (below && e > on) ++rises;
    if (e > on) below = false;
    if (e < off) below = true;
  }
  return rises;
}

double calcShareAbove(std::span<const double> samples, double frequency_hz) {
  const double share = 1.0 - std::exp(-2.0 * std::numbers::pi * frequency_hz / kRate);
  double low1 = 0.0, low2 = 0.0, above = 0.0, all = 0.0;
  for (double s : samples) {
    low1 += share * (s - low1);
    low2 += share * (s - low1 - low2);
    const double high = s - low1 - low2;
    above += high * high;
    all += s * s;
  }
  return above / all;
}

Mono render(Synth& synth, double seconds, int side) {
  std::vector<float> stereo(2 * static_cast<std::size_t>(seconds * kRate + 0.5));
  synth.render(stereo, kRate);
  Mono mono;
  mono.reserve(stereo.size() / 2);
  for (std::size_t k = static_cast<std::size_t>(side); k < stereo.size(); k += 2) {
    mono.push_back(stereo[k]);
  }
  return mono;
}

Mono renderScenes(Synth& synth, double seconds, const std::function<HeardScene(double)>& scene_at) {
  Mono all;
  for (int tick = 0; tick < static_cast<int>(seconds * 100.0 + 0.5); ++tick) {
    synth.setScene(scene_at(tick / 100.0));
    const Mono part = render(synth, 0.01);
    all.insert(all.end(), part.begin(), part.end());
  }
  return all;
}

Mono renderSteady(const HeardScene& scene, double seconds, int side) {
  Synth synth;
  synth.setScene(scene);
  (void)render(synth, 1.0);
  return render(synth, seconds, side);
}

HeardScene oneEngine(double rpm, double evenness, double load) {
  HeardScene s;
  s.engine_nearness = 0.6;
  s.engine[0].note_rpm = rpm;
  s.engine[0].evenness = evenness;
  s.engine[0].load = load;
  return s;
}

HeardScene loudest() {
  HeardScene s;
  s.engine_nearness = 1.0;
  for (HeardEngine& e : s.engine) {
    e.note_rpm = 1800.0;
    e.evenness = e.load = e.hum = 1.0;
    e.starter = true;
    e.compressor = Compressor::kLoaded;
  }
  s.hiss = s.horn_level = s.block_press = 1.0;
  s.thump = s.rattle = s.click = s.bell = s.fire_bell = true;
  s.rattle_hz = 60.0;
  s.horn = 2;
  s.speed_mph = 5.0;
  return s;
}

}  // namespace cabwright::hearing::testing
