// SPDX-License-Identifier: GPL-3.0-or-later
// A piece of the column beside the strip: drawn, as high as its words need at a given width.
#pragma once

#include <QWidget>

#include "after/sheet_look.h"
#include "drawing/pen.h"

namespace cabwright::after {

class SheetBlock : public QWidget {
  Q_OBJECT
 public:
  SheetBlock(const SheetLook& look, QWidget* parent) : QWidget(parent), look_(look) {}

  /// Takes this width (u), becomes as high as it needs, and gives that height in pixels.
  int takeWidth(double width_u);

 Q_SIGNALS:
  /// It wants to be higher or lower.
  void heightChanged();

 protected:
  /// Draws itself; gives the height it takes, u. When `measured`, nothing is seen of it.
  virtual double paint(drawing::Pen& pen, double width, bool measured) = 0;
  /// Where buttons are to stand, after a new width or look.
  virtual void placeButtons() {}

  void paintEvent(QPaintEvent* event) override;
  [[nodiscard]] const SheetLook& look() const { return look_; }
  [[nodiscard]] double widthInSheet() const { return width_u_; }

 private:
  const SheetLook& look_;
  double width_u_ = 400;
};

}  // namespace cabwright::after
