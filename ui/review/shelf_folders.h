// SPDX-License-Identifier: GPL-3.0-or-later
// Which folders stand on the shelf: the program's own one always, others by choice.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStringList>

namespace cabwright::review_room {

class ShelfFolders : public QFrame {
  Q_OBJECT
 public:
  explicit ShelfFolders(QWidget* parent);

  void setFolders(const QString& own, const QStringList& others);
  [[nodiscard]] const QString& own() const { return own_; }
  /// Without the program's own one.
  [[nodiscard]] QStringList others() const;
  void takeFocus();

 Q_SIGNALS:
  void changed();
  void closed();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void add();
  void takeOff();
  void look();
  void refresh();
  QString own_;
  QListWidget* list_;
  QLineEdit* path_;
  QPushButton* take_off_;
  QLabel* fault_;
};

}  // namespace cabwright::review_room
