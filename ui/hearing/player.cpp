// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/player.h"

#include <QAudioFormat>
#include <optional>

namespace cabwright::hearing {

namespace {

constexpr int kRate = 48000;
constexpr int kBufferMs = 80;  // short enough for sound and sight to be one

// The first format that the device and the synthesiser both know.
std::optional<QAudioFormat> findFormat(const QAudioDevice& device) {
  QAudioFormat wanted;
  wanted.setChannelCount(2);
  for (const int rate : {kRate, device.preferredFormat().sampleRate()}) {
    for (const auto sample : {QAudioFormat::Float, QAudioFormat::Int16}) {
      wanted.setSampleRate(rate);
      wanted.setSampleFormat(sample);
      if (SynthDevice::isPossible(wanted) && device.isFormatSupported(wanted)) return wanted;
    }
  }
  return std::nullopt;
}

}  // namespace

// The source is a child, so that it comes along into the thread.
Player::Player() : source_(this) {}

Player::~Player() { stop(); }

void Player::play(const QAudioDevice& device) {
  if (sink_ && device.id() == device_id_) return;
  stop();
  if (device.isNull()) return;
  const std::optional<QAudioFormat> format = findFormat(device);
  if (!format || !source_.setFormat(*format)) return;
  source_.open(QIODevice::ReadOnly | QIODevice::Unbuffered);
  device_id_ = device.id();
  sink_ = std::make_unique<QAudioSink>(device, *format);
  sink_->setBufferSize(format->bytesForDuration(kBufferMs * 1000));
  // Queued: a sink must not be deleted while it tells of itself.
  connect(sink_.get(), &QAudioSink::stateChanged, this, &Player::heedState, Qt::QueuedConnection);
  sink_->start(&source_);
  if (sink_->error() != QAudio::NoError) return stop();
  if (suspended_) sink_->suspend();
  Q_EMIT worksChanged(true);
}

void Player::stop() {
  if (!sink_) return;
  sink_->disconnect(this);
  sink_->stop();
  sink_.reset();
  source_.close();
  device_id_.clear();
  Q_EMIT worksChanged(false);
}

void Player::setSuspended(bool suspended) {
  if (suspended == suspended_) return;
  suspended_ = suspended;
  if (!sink_) return;
  if (suspended) {
    sink_->suspend();
  } else {
    sink_->resume();
  }
}

void Player::heedState(QAudio::State state) {
  // The source never ends, so a sink that stops has lost its device.
  if (sink_ && state == QAudio::StoppedState && sink_->state() == QAudio::StoppedState) stop();
}

}  // namespace cabwright::hearing
