// SPDX-License-Identifier: GPL-3.0-or-later
// The way from the trainee's window to the instructor's desk: opens it beside, tells it which run
// goes on, and remembers where it stood.
#pragma once

#include <QObject>
#include <QSettings>
#include <filesystem>
#include <memory>

#include "desk/desk.h"
#include "desk/desk_window.h"

namespace cabwright::desktop {

class DeskDoor : public QObject {
  Q_OBJECT
 public:
  explicit DeskDoor(QSettings& settings, QObject* parent = nullptr);
  ~DeskDoor() override;

  /// `scenarios`: the exercises a situation can be made of.
  void open(const std::filesystem::path& scenarios, const QString& trainee);
  void close();
  void setTheme(drawing::Theme theme);
  /// Null: there is no run.
  void setSeat(cab::Seat* seat) { desk_.setSeat(seat); }
  [[nodiscard]] desk::Desk& desk() { return desk_; }
  /// Null until it was opened once.
  [[nodiscard]] desk::DeskWindow* window() const { return window_.get(); }

 Q_SIGNALS:
  void beginAsked(const cabwright::desk::SituationWish& wish);

 private:
  void keepPlace();
  void addWriting(const std::filesystem::path& scenarios);
  QSettings& settings_;
  desk::Desk desk_;
  drawing::Theme theme_ = drawing::Theme::kDay;
  std::unique_ptr<desk::DeskWindow> window_;
};

}  // namespace cabwright::desktop
