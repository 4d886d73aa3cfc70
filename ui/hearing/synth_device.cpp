// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/synth_device.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstring>

namespace cabwright::hearing {

namespace {

constexpr int kChannels = 2;
constexpr qint64 kPlenty = 1 << 16;  // bytes said to be ready: there are always more
// Between two looks for a newer scene, so that a large buffer does not make one long moment of it.
constexpr std::size_t kMostAtOnce = 2U * 4096U;

void store(std::span<const float> samples, QAudioFormat::SampleFormat format, char* to) {
  if (format == QAudioFormat::Float) {
    std::memcpy(to, samples.data(), samples.size_bytes());
    return;
  }
  for (std::size_t k = 0; k < samples.size(); ++k) {
    const auto value = static_cast<std::int16_t>(std::lround(samples[k] * 32767.0F));
    std::memcpy(to + k * sizeof value, &value, sizeof value);
  }
}

}  // namespace

SynthDevice::SynthDevice(QObject* parent) : QIODevice(parent) {
  format_.setSampleFormat(QAudioFormat::Float);
  format_.setChannelCount(kChannels);
  format_.setSampleRate(48000);
}

bool SynthDevice::isPossible(const QAudioFormat& format) {
  const bool sample =
      format.sampleFormat() == QAudioFormat::Float || format.sampleFormat() == QAudioFormat::Int16;
  return sample && format.channelCount() == kChannels && format.sampleRate() >= 8000 &&
         format.sampleRate() <= 192000;
}

bool SynthDevice::setFormat(const QAudioFormat& format) {
  if (!isPossible(format)) return false;
  format_ = format;
  return true;
}

qint64 SynthDevice::bytesAvailable() const { return isOpen() ? kPlenty : 0; }

qint64 SynthDevice::readData(char* data, qint64 max_bytes) {
  const int pair_bytes = format_.bytesPerFrame();
  if (pair_bytes <= 0 || max_bytes < pair_bytes) return 0;
  synth_.setVolume(volume_);
  synth_.setMuted(muted_ || held_);
  auto left = static_cast<std::size_t>(max_bytes / pair_bytes) * kChannels;
  const auto sample_bytes = static_cast<std::size_t>(format_.bytesPerSample());
  char* to = data;
  while (left > 0) {
    HeardScene scene;
    if (scenes_.take(scene)) synth_.setScene(scene);
    samples_.resize(std::min(left, kMostAtOnce));
    synth_.render(samples_, format_.sampleRate());
    store(samples_, format_.sampleFormat(), to);
    to += samples_.size() * sample_bytes;
    left -= samples_.size();
  }
  return to - data;
}

qint64 SynthDevice::writeData(const char* /*data*/, qint64 /*bytes*/) { return -1; }

}  // namespace cabwright::hearing
