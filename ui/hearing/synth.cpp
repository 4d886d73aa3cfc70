// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/synth.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace cabwright::hearing {

namespace {
constexpr int kLowestRate = 8000, kHighestRate = 192000, kUsualRate = 48000;
}  // namespace

Synth::Synth() {
  volume_gain_.jumpTo(volume_);
  prepare(kUsualRate);
}

template <typename Do>
void Synth::forEachVoice(const Do& act) {
  for (EngineVoice& v : engines_) act(v);
  for (StarterVoice& v : starters_) act(v);
  for (MachineVoice& v : machines_) act(v);
  act(air_);
  act(knocks_);
  act(bells_);
  act(horn_);
  act(wheels_);
}

void Synth::prepare(int sample_rate) {
  sample_rate_ = sample_rate;
  forEachVoice([&](auto& voice) { voice.prepare(sample_rate); });
  limiter_.prepare(sample_rate);
  volume_gain_.prepare(sample_rate);
  // Some filters are tuned by what is heard.
  forEachVoice([&](auto& voice) { voice.set(scene_); });
}

void Synth::setScene(const HeardScene& scene) {
  scene_ = calcBounded(scene);
  forEachVoice([&](auto& voice) { voice.set(scene_); });
}

void Synth::setVolume(double volume) {
  volume_ = std::isfinite(volume) ? std::clamp(volume, 0.0, 1.0) : 0.0;
  volume_gain_.setTarget(muted_ ? 0.0 : volume_);
}

void Synth::setMuted(bool muted) {
  muted_ = muted;
  volume_gain_.setTarget(muted_ ? 0.0 : volume_);
}

void Synth::renderBlock(Block block) {
  std::fill(block.begin(), block.end(), Stereo{});
  forEachVoice([&](auto& voice) { voice.addTo(block); });
  for (Stereo& s : block) {
    limiter_.apply(s);
    const double volume = volume_gain_.next();
    s.left *= volume;
    s.right *= volume;
  }
}

void Synth::render(std::span<float> interleaved_stereo, int sample_rate) {
  const int rate = std::clamp(sample_rate, kLowestRate, kHighestRate);
  if (rate != sample_rate_) prepare(rate);
  std::array<Stereo, kBlockSamples> buffer;
  const std::size_t pairs = interleaved_stereo.size() / 2;
  for (std::size_t done = 0; done < pairs;) {
    const std::size_t count = std::min(buffer.size(), pairs - done);
    const Block block(buffer.data(), count);
    renderBlock(block);
    for (std::size_t k = 0; k < count; ++k) {
      interleaved_stereo[2 * (done + k)] = static_cast<float>(block[k].left);
      interleaved_stereo[2 * (done + k) + 1] = static_cast<float>(block[k].right);
    }
    done += count;
  }
  if (interleaved_stereo.size() % 2 == 1) interleaved_stereo.back() = 0.0F;
}

}  // namespace cabwright::hearing
