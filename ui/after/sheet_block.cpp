// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/sheet_block.h"

#include <QImage>
#include <QPainter>
#include <cmath>

namespace cabwright::after {

int SheetBlock::takeWidth(double width_u) {
  width_u_ = width_u;
  // Measured by the same hand that draws, so that the two cannot differ.
  QImage nowhere(1, 1, QImage::Format_RGB32);
  QPainter painter(&nowhere);
  painter.setClipRect(0, 0, 0, 0);
  drawing::Pen pen(painter, look_.theme);
  const double height_u = paint(pen, width_u, true);
  setFixedSize(static_cast<int>(std::lround(width_u * look_.scale)),
               static_cast<int>(std::ceil(height_u * look_.scale)));
  placeButtons();
  update();
  return height();
}

void SheetBlock::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  paint(pen, width_u_, false);
}

}  // namespace cabwright::after
