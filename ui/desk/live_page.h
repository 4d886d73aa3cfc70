// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages of the desk that only look into a run share: the run, theme and size of type, and
// that nothing is drawn while they are hidden.
#pragma once

#include <QWidget>

#include "after/sheet_look.h"
#include "desk/desk.h"
#include "drawing/pen.h"

namespace cabwright::desk {

/// Colours, face and size of the sheet for ordinary widgets inside a page: fields, lists, tables,
/// scroll bars.
[[nodiscard]] QString pageStyle(const after::SheetLook& look);

class LivePage : public QWidget {
  Q_OBJECT
 public:
  LivePage(Desk& desk, QWidget* parent);

  /// Null while nothing goes on.
  [[nodiscard]] const session::LiveRun* run() const { return desk_.run(); }
  [[nodiscard]] const after::SheetLook& look() const { return look_; }

 protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) final;
  void paintEvent(QPaintEvent* event) final;

  /// Forget what was kept of another run.
  virtual void forget() = 0;
  /// Take what is to be kept of the run, seen or not; called at every refresh.
  virtual void keep() {}
  /// Draw anew what has changed; only while it is seen, and only with a run.
  virtual void showRun() = 0;
  /// Theme or scale are others.
  virtual void restyle() = 0;
  /// Puts the widgets in their places, at a new size.
  virtual void arrange() = 0;
  /// What the page itself draws, below its widgets; `sheet`: its size in u.
  virtual void paintSheet(drawing::Pen& pen, QSizeF sheet) = 0;
  [[nodiscard]] QSizeF sizeInSheet() const { return QSizeF(size()) / look_.scale; }
  void place(QWidget* widget, const QRectF& u) const;
  [[nodiscard]] Desk& desk() const { return desk_; }
  [[nodiscard]] int px(double u) const { return toPixels(u, look_); }

 private:
  void refresh();
  void takeStyle();
  Desk& desk_;
  after::SheetLook look_;
};

}  // namespace cabwright::desk
