// SPDX-License-Identifier: GPL-3.0-or-later
// Two hands at the foot of the sheet: what each is on, and how to let go.
#pragma once

#include "cab/part.h"
#include "cab/shortcuts.h"
#include "drawing/hand.h"

namespace cabwright::cab {

/// What a hand is on, and how.
struct Hold {
  std::optional<unit::Control> on;  ///< empty: the hand is free
  double value = 0;                 ///< of that control
  bool down = false;                ///< the device's handle is pressed down
  bool operator==(const Hold&) const = default;
};
/// `side`: 0 left, 1 right.
[[nodiscard]] Hold findHold(const unit::Unit& unit, int side);
[[nodiscard]] drawing::Grip gripOf(const Hold& hold);
/// "3, handle pressed down"; empty: the hand is free.
[[nodiscard]] QString howText(const Hold& hold);

class HandPart : public Part {
  Q_OBJECT
 public:
  /// `side`: 0 left, 1 right.
  HandPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, int side,
           QWidget* parent);
  void refresh() override;
  /// Where its thread begins: above the fingers and what they hold, u of the sheet.
  [[nodiscard]] QPointF top() const;
  [[nodiscard]] PartRole role() const override;
  /// Lets go.
  bool activate() override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  [[nodiscard]] Hold held() const { return findHold(seat().unit(), side_); }
  const Shortcuts& shortcuts_;
  int side_;
  Hold shown_;
};

}  // namespace cabwright::cab
