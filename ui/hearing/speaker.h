// SPDX-License-Identifier: GPL-3.0-or-later
// Plays what is heard on the computer's default sound device, as long as there is one. Without a
// device, or when it is taken away, everything goes on in silence; when one comes, it is used.
#pragma once

#include <QMediaDevices>
#include <QObject>
#include <QThread>
#include <QTimer>
#include <memory>

#include "hearing/scene.h"

namespace cabwright::hearing {

class Player;

/// Lives in the thread of its parent; sound is made in a thread of its own, so that a busy window
/// does not stutter.
class Speaker : public QObject {
  Q_OBJECT
 public:
  explicit Speaker(QObject* parent = nullptr);
  ~Speaker() override;

  /// What is heard from now on. To be called with every frame shown, at least 20 times a second.
  /// From any thread; never waits for the sound.
  void setScene(const HeardScene& scene);
  /// 0..1, values outside taken as the nearest.
  void setVolume(double volume);
  void setMuted(bool muted);
  /// While the program is frozen nothing is heard, and the device is left alone.
  void setFrozen(bool frozen);

  /// Whether there is a device at work.
  [[nodiscard]] bool hasDevice() const { return has_device_; }

 Q_SIGNALS:
  void hasDeviceChanged(bool has_device);

 private:
  void useDefaultDevice();
  void noteDevice(bool works);

  QMediaDevices devices_;
  QTimer hold_timer_;
  QThread thread_;
  std::unique_ptr<Player> player_;  // lives in thread_
  bool has_device_ = false, frozen_ = false;
};

}  // namespace cabwright::hearing
