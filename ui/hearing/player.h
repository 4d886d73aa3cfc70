// SPDX-License-Identifier: GPL-3.0-or-later
// The part of a speaker that lives in the sound's own thread. Nobody else needs it.
#pragma once

#include <QAudioDevice>
#include <QAudioSink>
#include <QObject>
#include <memory>

#include "hearing/synth_device.h"

namespace cabwright::hearing {

class Player : public QObject {
  Q_OBJECT
 public:
  Player();
  ~Player() override;

  /// From any thread.
  SynthDevice& source() { return source_; }

  // All others in the player's own thread.

  /// Plays on this device instead of the one before; a null device: on none.
  void play(const QAudioDevice& device);
  void stop();
  /// Leaves the device alone, or takes it up again.
  void setSuspended(bool suspended);

 Q_SIGNALS:
  void worksChanged(bool works);

 private:
  void heedState(QAudio::State state);

  SynthDevice source_;
  std::unique_ptr<QAudioSink> sink_;
  QByteArray device_id_;
  bool suspended_ = false;
};

}  // namespace cabwright::hearing
