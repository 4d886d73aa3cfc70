// SPDX-License-Identifier: GPL-3.0-or-later
// Two hands at the foot of the sheet: what each is on, and how to let go.
#pragma once

#include "cab/part.h"
#include "cab/shortcuts.h"
#include "drawing/hand.h"

namespace cabwright::cab {

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
  [[nodiscard]] std::optional<unit::Control> held() const;
  [[nodiscard]] drawing::Grip grip() const;
  [[nodiscard]] QString how() const;
  const Shortcuts& shortcuts_;
  int side_;
  struct Shown {
    std::optional<unit::Control> on;
    double value = 0;
    bool down = false;
    bool operator==(const Shown&) const = default;
  } shown_;
};

}  // namespace cabwright::cab
