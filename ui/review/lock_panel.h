// SPDX-License-Identifier: GPL-3.0-or-later
// Asks for the passphrase, in the window and beside what goes on in it. Escape closes it.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

#include "after/sheet_look.h"
#include "review_room/lock_keeper.h"

namespace cabwright::review_room {

class LockPanel : public QFrame {
  Q_OBJECT
 public:
  /// The keeper must outlive it.
  LockPanel(LockKeeper& keeper, QWidget* parent);
  void setTheme(drawing::Theme theme);
  /// Shows itself in the upper middle of its parent. `what`: what is opened by it.
  void ask(const QString& what);
  [[nodiscard]] QLineEdit* box() const { return box_; }
  [[nodiscard]] QString saidText() const { return said_->text(); }

 Q_SIGNALS:
  /// It was the passphrase.
  void opened();
  void closed();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void tryIt();
  void hear(bool right);
  void tick();
  void leave();
  LockKeeper& keeper_;
  QLabel *title_, *said_;
  QLineEdit* box_;
  QPushButton *go_, *close_;
  QTimer second_;
  bool waits_ = false;
};

}  // namespace cabwright::review_room
