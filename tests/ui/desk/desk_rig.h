// SPDX-License-Identifier: GPL-3.0-or-later
// A desk before a run, without the trainee's window: mouse and keys go to it as real ones do.
#pragma once

#include <QSignalSpy>
#include <QtTest>
#include <filesystem>
#include <memory>
#include <stdexcept>
#include <string>

#include "cab/seat.h"
#include "desk/desk_window.h"
#include "session/situation.h"

namespace cabwright::tests {

inline std::unique_ptr<cab::Seat> makeSeat(const std::string& exercise, scenario::Mode mode) {
  const std::filesystem::path scenarios = std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios";
  const auto loaded =
      session::loadSituation((scenarios / exercise / "scenario.toml").string(), scenarios);
  if (!std::holds_alternative<session::Situation>(loaded)) throw std::runtime_error(exercise);
  session::LiveOptions options;
  options.mode = mode;
  return std::make_unique<cab::Seat>(
      std::make_unique<session::LiveRun>(std::get<session::Situation>(loaded), options));
}

class DeskRig {
 public:
  explicit DeskRig(const std::string& exercise = "warm-tooth",
                   scenario::Mode mode = scenario::Mode::kPractice, QSize size = {1280, 720})
      : seat_(makeSeat(exercise, mode)), window_(desk_) {
    desk_.setSeat(seat_.get());
    window_.resize(size);
    window_.show();
    window_.activateWindow();
    QCoreApplication::processEvents();
  }

  [[nodiscard]] desk::Desk& desk() { return desk_; }
  [[nodiscard]] desk::DeskWindow& window() { return window_; }
  [[nodiscard]] cab::Seat& seat() { return *seat_; }
  [[nodiscard]] const session::LiveRun& run() { return seat_->run(); }

  void pass(double seconds) {
    for (double left = seconds; left > 1e-9; left -= 0.1) seat_->passRealTime(std::min(left, 0.1));
    QCoreApplication::processEvents();
  }
  /// The text of the last action; empty: nothing was done.
  [[nodiscard]] std::string lastDone() {
    return run().actions().empty() ? std::string() : unit::toText(run().actions().back().action);
  }

  template <class W>
  [[nodiscard]] W* find(const char* name) {
    return window_.findChild<W*>(QLatin1String(name));
  }
  /// A click where the widget is to be seen; false: something else is there.
  bool click(QWidget* widget) {
    if (widget == nullptr || !widget->isVisible()) return false;
    const QPoint at = widget->mapTo(&window_, widget->rect().center());
    QWidget* hit = window_.childAt(at);
    if (hit != widget && !widget->isAncestorOf(hit)) return false;
    QTest::mouseClick(hit, Qt::LeftButton, {}, hit->mapFrom(&window_, at));
    QCoreApplication::processEvents();
    return true;
  }
  bool click(const char* name) { return click(find<QWidget>(name)); }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QWidget* to = QApplication::focusWidget();
    QTest::keyClick(to != nullptr ? to : &window_, key, modifiers);
    QCoreApplication::processEvents();
  }
  void type(const QString& words) {
    QTest::keyClicks(QApplication::focusWidget(), words);
    QCoreApplication::processEvents();
  }

 private:
  std::unique_ptr<cab::Seat> seat_;
  desk::Desk desk_;
  desk::DeskWindow window_;
};

}  // namespace cabwright::tests
