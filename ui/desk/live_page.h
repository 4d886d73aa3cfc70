// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages of the desk that look into a run share: the run, theme and size of type, and that
// nothing is drawn while they are hidden.
#pragma once

#include <QWidget>
#include <optional>

#include "after/sheet_look.h"
#include "session/live_run.h"

namespace cabwright::desk {

/// Device-independent pixels for one sheet unit, so that common words (18.5 u) are as large as the
/// system's own, and 13 pixels at least.
[[nodiscard]] double calcFontScale();
/// A length on the sheet in whole pixels.
[[nodiscard]] int toPixels(double u, double scale);

/// Colours, face and size of the sheet for ordinary widgets inside a page: fields, lists, tables,
/// scroll bars.
[[nodiscard]] QString pageStyle(const after::SheetLook& look);

class LivePage : public QWidget {
  Q_OBJECT
 public:
  explicit LivePage(QWidget* parent);

  /// Another run, or none. It must outlive the page or be replaced first.
  void setRun(const session::LiveRun* run);
  [[nodiscard]] const session::LiveRun* run() const { return run_; }
  /// To be called as often as the screen is drawn, and after everything that was done.
  void refresh();

  void setTheme(drawing::Theme theme);
  /// Pixels for one u; without it the size of the system's type decides.
  void setScale(double px_per_u);
  [[nodiscard]] const after::SheetLook& look() const { return look_; }

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

  /// Forget what was kept of another run.
  virtual void forget() = 0;
  /// Take what is to be kept of the run, seen or not; called at every refresh.
  virtual void keep() {}
  /// Draw anew what has changed; only while it is seen, and only with a run.
  virtual void showRun() = 0;
  /// Theme or scale are others.
  virtual void restyle() = 0;
  [[nodiscard]] int px(double u) const { return toPixels(u, look_.scale); }

 private:
  void applyLook();
  const session::LiveRun* run_ = nullptr;
  after::SheetLook look_;
  bool own_scale_ = false;
};

}  // namespace cabwright::desk
