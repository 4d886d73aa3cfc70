// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions of the shelf, row by row. Enter or a double click opens one; several are chosen with
// Shift and Ctrl; a click on the head of a column sorts by it.
#pragma once

#include <QTableView>

#include "after/sheet_look.h"
#include "review_room/shelf_model.h"

namespace cabwright::review_room {

class ShelfTable : public QTableView {
  Q_OBJECT
 public:
  /// Look and model must outlive it.
  ShelfTable(const after::SheetLook& look, ShelfModel& model, QWidget* parent);
  void restyle();
  /// The chosen rows, from above.
  [[nodiscard]] std::vector<int> chosenRows() const;

 Q_SIGNALS:
  void rowOpened(int row);
  void rowsChosen();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void selectionChanged(const QItemSelection& now, const QItemSelection& before) override;

 private:
  void arrangeColumns();
  const after::SheetLook& look_;
  ShelfModel& model_;
};

}  // namespace cabwright::review_room
