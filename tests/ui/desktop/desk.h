// SPDX-License-Identifier: GPL-3.0-or-later
// The whole program's window with somebody before it: settings and sessions in a folder that goes
// again, no clock but the test's, and a mouse and a keyboard that go through the window as real
// ones do. What lies over something else takes the click; keys go to whatever has the focus.
#pragma once

#include <QTemporaryDir>
#include <QtTest>
#include <string>

#include "cab/lever_part.h"
#include "desktop/main_window.h"

namespace cabwright::tests {

class Desk {
 public:
  explicit Desk(QSize size = {1280, 800});

  [[nodiscard]] desktop::MainWindow& window() { return window_; }
  [[nodiscard]] cab::Seat& seat() { return *window_.seat(); }
  [[nodiscard]] cab::SeatView& view() { return *window_.seatView(); }
  [[nodiscard]] cab::Plate& plate() { return *view().plate(); }
  [[nodiscard]] QDir sessions() const { return QDir(home_.filePath(QStringLiteral("s"))); }
  [[nodiscard]] double value(unit::Signal s) { return seat().value(s); }

  /// Begins without choosing by hand.
  void begin(const std::string& exercise, scenario::Mode mode);
  /// Plays a script of the exercise through the seat, with no events, up to the line it is about
  /// to do that reads so (that line is not done), or to its end. False: it never came to it.
  bool playUpTo(const std::string& exercise, const std::string& script, const std::string& line,
                int times = 1);
  /// Time passes, in steps of a tenth of a second; nothing modal may stand in the way.
  void pass(double seconds);
  /// Everything that was posted is done; long enough for the frame to show what was just done.
  void settle();

  /// A visible part of that name on the sheet; nullptr: there is none.
  template <class P>
  [[nodiscard]] P* find(const QString& name) {
    for (P* part : view().findChildren<P*>(name))
      if (part->isVisible()) return part;
    return nullptr;
  }
  template <class P>
  [[nodiscard]] P* find(std::string_view name) {
    return find<P>(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
  }
  /// Of controls with several parts: the one with that command.
  [[nodiscard]] cab::ControlPart* findControl(const QString& command) {
    return plate().findControl(command);
  }
  [[nodiscard]] QWidget* focus() const { return QApplication::focusWidget(); }

  /// A point of the window where a click goes to this widget and no other; null: nowhere.
  [[nodiscard]] QPoint pointOn(QWidget* widget);
  /// A point of the sheet, in pixels of the window.
  [[nodiscard]] QPoint onSheet(QPointF sheet);
  /// False: something lies over it, or it is not to be seen.
  bool click(QWidget* widget, Qt::MouseButton button = Qt::LeftButton);
  void clickAt(QPoint in_window, Qt::MouseButton button = Qt::LeftButton);
  bool pressMouse(QWidget* widget);
  void releaseMouse();
  void drag(QPoint from, QPoint to);
  void wheel(QWidget* widget, int notches);
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {});
  void type(const QString& text);
  void pressKey(Qt::Key key);
  void releaseKey(Qt::Key key);
  /// Presses Tab or Shift+Tab until it has the focus; false: it never gets it.
  bool tabTo(QWidget* widget);

  /// What was refused so far, in the words of the action and of the refusal.
  [[nodiscard]] QStringList& refused() { return refused_; }
  /// Anything modal was up at any time.
  [[nodiscard]] bool sawModal() const { return saw_modal_; }

 private:
  void watch();
  QTemporaryDir home_;
  QSettings settings_;
  desktop::MainWindow window_;
  cab::Seat* watched_ = nullptr;
  QPoint mouse_;
  QStringList refused_;
  bool saw_modal_ = false;
};

}  // namespace cabwright::tests
