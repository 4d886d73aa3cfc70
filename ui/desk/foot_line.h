// SPDX-License-Identifier: GPL-3.0-or-later
// The line at the foot of the desk: what was done or refused last; the way back to a moment that
// was chosen on a page; and, while a run is taken again, the way to leave that off.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <cstdint>

#include "desk/desk.h"

namespace cabwright::desk {

class FootLine : public QWidget {
  Q_OBJECT
 public:
  explicit FootLine(Desk& desk, QWidget* parent = nullptr);
  [[nodiscard]] QString text() const { return said_->text(); }
  [[nodiscard]] QPushButton* here() const { return here_; }
  [[nodiscard]] QPushButton* leaveOff() const { return leave_off_; }
  void say(const QString& words, bool bad);
  /// Takes a refusal away; what was done stays.
  void forgetFault();
  /// A moment was chosen: offers the way back to it, or says why there is none.
  void offerMoment(std::int64_t tick);

 private:
  Desk& desk_;
  QLabel* said_;
  QPushButton *here_, *leave_off_;
  std::int64_t moment_ = 0;
};

}  // namespace cabwright::desk
