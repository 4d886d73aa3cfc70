// SPDX-License-Identifier: GPL-3.0-or-later
// One spot of the drawing of the unit. Used by UnitView only.
#pragma once

#include <QAbstractButton>

#include "desk/unit_view.h"

namespace cabwright::desk {

class SpotButton : public QAbstractButton {
  Q_OBJECT
 public:
  /// Half of the square that takes the mouse, u.
  static constexpr double kHalf = 18;

  SpotButton(UnitView& view, std::size_t spot);
  void setState(const SpotState& state);
  void setChosen(bool chosen);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void enterEvent(QEnterEvent* event) override;

 private:
  void describe();
  UnitView& view_;
  std::size_t spot_;
  std::size_t faults_;  ///< how many can be put in here
  SpotState state_;
  bool chosen_ = false;
};

/// The mark of a spot, around `at`, u: a diamond that is small and empty, dashed, half or full.
void drawSpotMark(drawing::Pen& pen, QPointF at, const SpotState& state);

}  // namespace cabwright::desk
