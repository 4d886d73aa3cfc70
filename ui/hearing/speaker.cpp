// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/speaker.h"

#include <QMetaObject>

#include "hearing/player.h"

namespace cabwright::hearing {

namespace {
constexpr int kFadeMs = 200;  // the synthesiser's fade, and the device's buffer
}  // namespace

Speaker::Speaker(QObject* parent) : QObject(parent), player_(std::make_unique<Player>()) {
  player_->moveToThread(&thread_);
  thread_.setObjectName("sound");
  hold_timer_.setSingleShot(true);
  hold_timer_.setInterval(kFadeMs);
  connect(&hold_timer_, &QTimer::timeout, player_.get(), [this] { player_->setSuspended(true); });
  connect(&devices_, &QMediaDevices::audioOutputsChanged, this, &Speaker::useDefaultDevice);
  connect(player_.get(), &Player::worksChanged, this, &Speaker::noteDevice);
  thread_.start();
  useDefaultDevice();
}

Speaker::~Speaker() {
  player_->disconnect(this);
  QMetaObject::invokeMethod(
      player_.get(), [this] { player_->stop(); }, Qt::BlockingQueuedConnection);
  thread_.quit();
  thread_.wait();
}

void Speaker::setScene(const HeardScene& scene) { player_->source().setScene(scene); }

void Speaker::setVolume(double volume) { player_->source().setVolume(volume); }

void Speaker::setMuted(bool muted) { player_->source().setMuted(muted); }

void Speaker::setFrozen(bool frozen) {
  if (frozen == frozen_) return;
  frozen_ = frozen;
  player_->source().setHeld(frozen);
  if (frozen) {
    hold_timer_.start();
    return;
  }
  hold_timer_.stop();
  QMetaObject::invokeMethod(player_.get(), [this] { player_->setSuspended(false); });
}

void Speaker::useDefaultDevice() {
  const QAudioDevice device = QMediaDevices::defaultAudioOutput();
  // Without a device there is nothing to open, and nothing to complain about.
  QMetaObject::invokeMethod(player_.get(), [this, device] { player_->play(device); });
}

void Speaker::noteDevice(bool works) {
  if (works == has_device_) return;
  has_device_ = works;
  Q_EMIT hasDeviceChanged(works);
}

}  // namespace cabwright::hearing
