// SPDX-License-Identifier: GPL-3.0-or-later
// The instructor's desk as a window of its own, for a second screen: its pages, how time passes,
// and what was said to the last thing that was done. Nothing modal; closing it changes nothing.
//
// Keys: F2 remark, F3 search for a fault, F4 name of a mark, F6 the unit, F7 slower, F8 faster,
// F9 the faults that are in, Ctrl+Space stops and releases, Ctrl+1 ... the pages.
#pragma once

#include <QLabel>
#include <QStackedWidget>
#include <QTabBar>
#include <QWidget>

#include "desk/control_bar.h"
#include "desk/desk.h"
#include "desk/fault_page.h"
#include "desk/foot_line.h"
#include "desk/people_page.h"
#include "desk/situation_page.h"

namespace cabwright::desk {

class DeskWindow : public QWidget {
  Q_OBJECT
 public:
  explicit DeskWindow(Desk& desk, QWidget* parent = nullptr);

  /// One more page, behind those that are there. The window owns it.
  void addPage(const QString& name, QWidget* page);
  void showPage(QWidget* page);
  [[nodiscard]] QWidget* page() const { return pages_->currentWidget(); }
  [[nodiscard]] int pageCount() const { return pages_->count(); }

  [[nodiscard]] FaultPage* faults() const { return faults_; }
  [[nodiscard]] PeoplePage* people() const { return people_; }
  [[nodiscard]] SituationPage* situation() const { return situation_; }
  [[nodiscard]] ControlBar* bar() const { return bar_; }
  [[nodiscard]] QTabBar* tabs() const { return tabs_; }
  /// The line at the foot.
  [[nodiscard]] QString said() const { return foot_->text(); }
  [[nodiscard]] FootLine* foot() const { return foot_; }
  void setTheme(drawing::Theme theme);

 Q_SIGNALS:
  void closed();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void closeEvent(QCloseEvent* event) override;

 private:
  void makeKeys();
  void addKey(const QKeySequence& keys, const std::function<void()>& done);
  void restyle();
  void refresh();

  Desk& desk_;
  QLabel *title_, *run_, *clock_;
  FootLine* foot_;
  QTabBar* tabs_;
  QStackedWidget* pages_;
  FaultPage* faults_;
  PeoplePage* people_;
  SituationPage* situation_;
  ControlBar* bar_ = nullptr;
};

}  // namespace cabwright::desk
