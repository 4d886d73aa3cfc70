// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/key_repeat.h"

#include <QCoreApplication>
#include <utility>

namespace cabwright::desktop {
namespace {

constexpr int kWaitMs = 20;        // the press comes with the same packet or the next
constexpr qulonglong kSameMs = 2;  // by the server's clock

bool isSameKey(const QKeyEvent& a, const QKeyEvent& b) {
  return a.key() == b.key() && a.nativeScanCode() == b.nativeScanCode();
}

}  // namespace

KeyRepeat::KeyRepeat(QObject* parent) : QObject(parent) {
  wait_.setSingleShot(true);
  wait_.setInterval(kWaitMs);
  // Once more round the loop: what the server has sent meanwhile comes before it.
  connect(&wait_, &QTimer::timeout, this, &KeyRepeat::letGo, Qt::QueuedConnection);
  QCoreApplication::instance()->installEventFilter(this);
}

bool KeyRepeat::eventFilter(QObject* watched, QEvent* event) {
  if (passing_on_ || !watched->isWindowType()) return false;
  switch (event->type()) {
    case QEvent::KeyRelease: {
      const auto& release = static_cast<const QKeyEvent&>(*event);
      letGo();  // of another key
      if (release.isAutoRepeat()) return false;
      window_ = watched;
      release_.reset(release.clone());
      wait_.start();
      return true;
    }
    case QEvent::KeyPress:
      return takePress(watched, static_cast<const QKeyEvent&>(*event));
    case QEvent::MouseButtonPress:
    case QEvent::FocusOut:
    case QEvent::Close:
      letGo();
      return false;
    default:
      return false;
  }
}

bool KeyRepeat::takePress(QObject* window, const QKeyEvent& press) {
  if (!release_) return false;
  const bool held = window_ == window && isSameKey(press, *release_) &&
                    press.timestamp() - release_->timestamp() <= kSameMs;
  if (!held) {
    letGo();
    return false;
  }
  wait_.stop();
  release_.reset();
  QKeyEvent repeat(QEvent::KeyPress, press.key(), press.modifiers(), press.nativeScanCode(),
                   press.nativeVirtualKey(), press.nativeModifiers(), press.text(), true,
                   static_cast<quint16>(press.count()));
  repeat.setTimestamp(press.timestamp());
  passing_on_ = true;
  QCoreApplication::sendEvent(window, &repeat);
  passing_on_ = false;
  return true;
}

void KeyRepeat::letGo() {
  wait_.stop();
  const std::unique_ptr<QKeyEvent> release = std::exchange(release_, nullptr);
  if (!release || !window_) return;
  passing_on_ = true;
  QCoreApplication::sendEvent(window_, release.get());
  passing_on_ = false;
}

}  // namespace cabwright::desktop
