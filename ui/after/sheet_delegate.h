// SPDX-License-Identifier: GPL-3.0-or-later
// A row or a cell that is drawn by the sheet's pen, in sheet units from its own corner; and rows
// that are kept as they are drawn.
#pragma once

#include <QPainter>
#include <QStyledItemDelegate>
#include <vector>

#include "after/sheet_look.h"
#include "drawing/pen.h"

namespace cabwright::after {

class SheetDelegate : public QStyledItemDelegate {
 public:
  SheetDelegate(const SheetLook& look, QObject* parent)
      : QStyledItemDelegate(parent), look_(look) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const final {
    painter->save();
    painter->setClipRect(option.rect);
    painter->translate(option.rect.topLeft());
    painter->scale(look_.scale, look_.scale);
    drawing::Pen pen(*painter, look_.theme);
    paintCell(pen, QSizeF(option.rect.size()) / look_.scale, index,
              option.state.testFlag(QStyle::State_Selected));
    painter->restore();
  }

 protected:
  /// `size` in u.
  virtual void paintCell(drawing::Pen& pen, QSizeF size, const QModelIndex& index,
                         bool chosen) const = 0;
  [[nodiscard]] const SheetLook& look() const { return look_; }

 private:
  const SheetLook& look_;
};

/// Puts other rows in the place of those that are shown: `reset(put)` when their number is another,
/// which has to call `put()`; else `changed(number, row before)` for each that is not as it was.
template <class Row, class Reset, class Changed>
void putRows(std::vector<Row>& shown, std::vector<Row> rows, Reset reset, Changed changed) {
  if (rows.size() != shown.size()) {
    reset([&] { shown = std::move(rows); });
    return;
  }
  for (std::size_t k = 0; k < rows.size(); ++k) {
    if (rows[k] == shown[k]) continue;
    std::swap(shown[k], rows[k]);
    changed(static_cast<int>(k), rows[k]);
  }
}

}  // namespace cabwright::after
