// SPDX-License-Identifier: GPL-3.0-or-later
// The moment in a row, where there is no room for a plate or no plate can be had: the gauges, lamps
// and levers of the cab that is driven from, as they were recorded.
#pragma once

#include <QWidget>

#include "after/sheet_look.h"
#include "drawing/pen.h"
#include "unit/frame.h"

namespace cabwright::review_room {

class MomentRow : public QWidget {
  Q_OBJECT
 public:
  /// `look` must outlive it.
  explicit MomentRow(const after::SheetLook& look, QWidget* parent = nullptr);

  /// `cab` is 1 or 2.
  void showFrame(const unit::Frame& frame, int cab);
  [[nodiscard]] const unit::Frame& frame() const { return frame_; }
  [[nodiscard]] int cab() const { return cab_; }
  /// All of it in words.
  [[nodiscard]] QString summary() const;

  /// Height it wants, u.
  static constexpr double kHeight = 140;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] double value(unit::Signal of_cab1) const;
  void paintDials(drawing::Pen& pen, double pitch) const;
  void paintLamps(drawing::Pen& pen, double x) const;
  void paintLevers(drawing::Pen& pen, double x, double right) const;
  const after::SheetLook& look_;
  unit::Frame frame_;
  int cab_ = 1;
};

}  // namespace cabwright::review_room
