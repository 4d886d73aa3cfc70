// SPDX-License-Identifier: GPL-3.0-or-later
// The synthesiser as a device that samples are read from without end. Scenes and settings may come
// from any thread, reading happens in one.
#pragma once

#include <QAudioFormat>
#include <QIODevice>
#include <atomic>
#include <vector>

#include "hearing/mailbox.h"
#include "hearing/scene.h"
#include "hearing/synth.h"

namespace cabwright::hearing {

class SynthDevice : public QIODevice {
  Q_OBJECT
 public:
  explicit SynthDevice(QObject* parent = nullptr);

  /// Sample formats it can give.
  [[nodiscard]] static bool isPossible(const QAudioFormat& format);
  /// To be set while nothing is read. False, and nothing is changed, if it is not possible.
  bool setFormat(const QAudioFormat& format);

  void setScene(const HeardScene& scene) { scenes_.put(scene); }
  void setVolume(double volume) { volume_ = volume; }
  void setMuted(bool muted) { muted_ = muted; }
  /// Silent as when muted, whatever the setting is.
  void setHeld(bool held) { held_ = held; }

  [[nodiscard]] bool isSequential() const override { return true; }
  [[nodiscard]] bool atEnd() const override { return false; }
  [[nodiscard]] qint64 bytesAvailable() const override;

 protected:
  /// Whole pairs of samples, as many as fit.
  qint64 readData(char* data, qint64 max_bytes) override;
  qint64 writeData(const char* data, qint64 bytes) override;

 private:
  Mailbox<HeardScene> scenes_;
  std::atomic<double> volume_{1.0};
  std::atomic<bool> muted_{false}, held_{false};
  QAudioFormat format_;
  Synth synth_;
  std::vector<float> samples_;
};

}  // namespace cabwright::hearing
