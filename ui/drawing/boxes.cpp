// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/boxes.h"

#include <QPainter>
#include <QStyleOptionButton>

#include "drawing/ink.h"

namespace cabwright::drawing {

namespace {

constexpr int kMiddleGrey = 128;
constexpr double kTickLine = 2.0;  // px

// The theme is that to which the colour of its words belongs.
QColor paperUnder(const QWidget& box) {
  const bool dark_words = box.palette().color(QPalette::WindowText).lightness() < kMiddleGrey;
  return colorOf(dark_words ? Theme::kDay : Theme::kNight, Tone::kPaper);
}

}  // namespace

void ChoiceBox::paintEvent(QPaintEvent* event) {
  QComboBox::paintEvent(event);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(
      palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled, QPalette::Text));
  const double half = fontMetrics().height() * 0.24, x = width() - 6 - 2 * half;
  const double y = (height() - half) / 2.0;
  painter.drawPolygon(
      QPolygonF({QPointF(x, y), QPointF(x + 2 * half, y), QPointF(x + half, y + 1.2 * half)}));
}

void TickBox::paintEvent(QPaintEvent* event) {
  QCheckBox::paintEvent(event);
  if (checkState() != Qt::Checked) return;
  QStyleOptionButton option;
  initStyleOption(&option);
  const QRectF box = style()->subElementRect(QStyle::SE_CheckBoxIndicator, &option, this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(paperUnder(*this), kTickLine, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  const auto at = [&box](double x, double y) {
    return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
  };
  painter.drawPolyline(QPolygonF({at(0.26, 0.54), at(0.43, 0.70), at(0.75, 0.32)}));
}

}  // namespace cabwright::drawing
