// SPDX-License-Identifier: GPL-3.0-or-later
// A key that is held is held. An X server repeats it as releases and presses of the same moment;
// Qt sees that only if the press is already there when it reads the release, and else takes it for
// a hand that let go: a start button that is held by its key would be pressed forty times.
#pragma once

#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QTimer>
#include <memory>

namespace cabwright::desktop {

/// Watches the whole program from when it is made until it goes. A release is held back for a
/// moment too short to be noticed; a press of the same key and time makes a repeat of both.
class KeyRepeat : public QObject {
  Q_OBJECT
 public:
  explicit KeyRepeat(QObject* parent = nullptr);

  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  /// The hand has let go after all.
  void letGo();
  bool takePress(QObject* window, const QKeyEvent& press);

  QTimer wait_;
  QPointer<QObject> window_;
  std::unique_ptr<QKeyEvent> release_;
  bool passing_on_ = false;
};

}  // namespace cabwright::desktop
