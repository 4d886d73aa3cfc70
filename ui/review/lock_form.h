// SPDX-License-Identifier: GPL-3.0-or-later
// Setting, changing and taking away the passphrase, and locking at once; with plain words on what
// it is good for.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "review_room/lock_keeper.h"

namespace cabwright::review_room {

class LockForm : public QWidget {
  Q_OBJECT
 public:
  /// The keeper must outlive it.
  LockForm(LockKeeper& keeper, QWidget* parent);
  [[nodiscard]] QString saidText() const { return said_->text(); }
  /// Forgets what was typed, and says how it stands.
  void refresh();

 private:
  void set();
  void remove();
  void ask(const QString& fresh, const QString& words);
  void take(bool done, const QString& words);
  void enable(bool enabled);
  LockKeeper& keeper_;
  QLabel *stands_, *said_;
  QLineEdit *old_, *fresh_, *again_;
  QPushButton *set_, *remove_, *lock_;
};

}  // namespace cabwright::review_room
