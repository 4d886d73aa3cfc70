// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/live_page.h"

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "drawing/style.h"

namespace cabwright::desk {

using drawing::Tone;

QString pageStyle(const after::SheetLook& look) {
  const int px = std::max(13, toPixels(drawing::kText, look));
  return drawing::commonStyle(look.theme, px) +
         drawing::fillStyle(
             QStringLiteral(
                 "QAbstractItemView { background: @face; border: 1px solid @rule;"
                 " border-radius: 3px; outline: 0; }"
                 "QAbstractItemView:focus { border: 2px solid @hand; }"
                 "QHeaderView, QHeaderView::section { background: @paper; color: @ink2; border: 0; "
                 "}"
                 "QHeaderView::section { padding: 4px 6px; border-bottom: 1px solid @rule; }"),
             look.theme, px);
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
