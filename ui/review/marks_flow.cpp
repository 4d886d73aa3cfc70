// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_flow.h"

#include <QWidget>
#include <algorithm>

namespace cabwright::review_room {

FlowRow::~FlowRow() {
  for (QLayoutItem* item : items_) delete item;
}

void FlowRow::addItem(QLayoutItem* item) { items_.push_back(item); }

QLayoutItem* FlowRow::itemAt(int index) const {
  return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowRow::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item != nullptr) items_.erase(items_.begin() + index);
  return item;
}

QSize FlowRow::minimumSize() const {
  QSize size;
  for (const QLayoutItem* item : items_)
    if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
  return size;
}

void FlowRow::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  arrange(rect, true);
}

int FlowRow::arrange(const QRect& rect, bool moves) const {
  int x = rect.x(), y = rect.y(), high = 0;
  for (QLayoutItem* item : items_) {
    if (item->isEmpty()) continue;
    const QSize size = item->sizeHint();
    if (x > rect.x() && x + size.width() > rect.right() + 1) {
      x = rect.x();
      y += high + gap_;
      high = 0;
    }
    if (moves) item->setGeometry({QPoint(x, y), size});
    x += size.width() + gap_;
    high = std::max(high, size.height());
  }
  return y + high - rect.y();
}

}  // namespace cabwright::review_room
