// SPDX-License-Identifier: GPL-3.0-or-later
// Settings on a page of their own: looks, language, sound, sessions, and every key.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSlider>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QWidget>

#include "cab/shortcuts.h"
#include "desktop/preferences.h"
#include "review_room/lock_form.h"

namespace cabwright::desktop {

class SettingsView : public QWidget {
  Q_OBJECT
 public:
  /// All must outlive it.
  SettingsView(Preferences& preferences, cab::Shortcuts& shortcuts, review_room::LockKeeper& keeper,
               QWidget* parent = nullptr);
  /// Fills in what is so now.
  void show(const Preferences& preferences);
  void setTheme(drawing::Theme theme);
  [[nodiscard]] QTableWidget* keys() const { return keys_; }

 Q_SIGNALS:
  /// Something was changed, and is in the preferences already.
  void changed();
  void closed();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void makeLooks(QVBoxLayout* column);
  void makeKeys(QVBoxLayout* column);
  void fillKeys();
  void makeKeyBoxes();
  void take();

  Preferences& preferences_;
  cab::Shortcuts& shortcuts_;
  drawing::Theme theme_ = drawing::Theme::kDay;
  QComboBox *look_, *language_;
  QCheckBox *calm_, *caps_, *silent_;
  QSlider* volume_;
  QLineEdit* sessions_;
  QTableWidget* keys_;
  review_room::LockForm* lock_;
  QLabel* note_;
  bool filling_ = false;
};

}  // namespace cabwright::desktop
