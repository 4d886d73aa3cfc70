// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/live_page.h"

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "drawing/face.h"

namespace cabwright::desk {

using drawing::Tone;

int toPixels(double u, double scale) { return static_cast<int>(std::lround(u * scale)); }

QString pageStyle(const after::SheetLook& look) {
  const auto c = [&look](Tone tone) { return drawing::colorOf(look.theme, tone).name(); };
  const int type = std::max(13, toPixels(drawing::kText, look.scale));
  const int bar = std::max(10, toPixels(14, look.scale));
  return QStringLiteral(
             "QWidget { color: %1; font-family: '%2'; font-size: %3px; }"
             "QLineEdit { background: %4; border: 1px solid %5; border-radius: 3px;"
             " padding: 4px 6px; selection-background-color: %6; selection-color: %1; }"
             "QLineEdit:focus { border: 2px solid %7; padding: 3px 5px; }"
             "QAbstractItemView { background: %4; border: 1px solid %5; border-radius: 3px;"
             " outline: 0; }"
             "QAbstractItemView:focus { border: 2px solid %7; }"
             "QHeaderView { background: %8; border: 0; }"
             "QHeaderView::section { background: %8; color: %9; border: 0; padding: 4px 6px;"
             " border-bottom: 1px solid %5; }"
             "QScrollBar:vertical { background: %8; width: %10px; margin: 0; }"
             "QScrollBar::handle:vertical { background: %5; border-radius: %11px;"
             " min-height: 32px; margin: 1px; }"
             "QScrollBar::handle:vertical:disabled { background: transparent; }"
             "QScrollBar::add-line:vertical, QScrollBar::sub-line:vertical { height: 0; }"
             "QScrollBar::add-page:vertical, QScrollBar::sub-page:vertical { background: none; }")
      .arg(c(Tone::kInk), drawing::faceName(), QString::number(type), c(Tone::kFace),
           c(Tone::kRule), c(Tone::kWash), c(Tone::kHand), c(Tone::kPaper), c(Tone::kInk2))
      .arg(bar)
      .arg(bar / 2 - 2);
}

LivePage::LivePage(Desk& desk, QWidget* parent)
    : QWidget(parent), desk_(desk), look_{desk.style().theme, desk.style().scale} {
  connect(&desk, &Desk::changed, this, &LivePage::refresh);
  connect(&desk, &Desk::runChanged, this, [this] {
    forget();
    refresh();
    update();
  });
  connect(&desk, &Desk::restyled, this, &LivePage::takeStyle);
}

void LivePage::refresh() {
  if (run() == nullptr) return;
  keep();
  if (isVisible()) showRun();
}

void LivePage::takeStyle() {
  look_ = {desk_.style().theme, desk_.style().scale};
  restyle();
  update();
}

void LivePage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void LivePage::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.fillRect(event->rect(), drawing::colorOf(look_.theme, Tone::kPaper));
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  paintSheet(pen, sizeInSheet());
}

void LivePage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void LivePage::place(QWidget* widget, const QRectF& u) const {
  widget->setGeometry(QRectF(u.topLeft() * look_.scale, u.size() * look_.scale).toAlignedRect());
}

}  // namespace cabwright::desk
