// SPDX-License-Identifier: GPL-3.0-or-later
// What a group finds hard: the lines of the sessions that are shown, by the share in which they
// were broken, and the sessions in which one of them was.
#pragma once

#include <QLabel>
#include <QWidget>

#include "after/rows_table.h"
#include "review/weak_lines.h"
#include "review_room/shelf_model.h"

namespace cabwright::review_room {

class WeakPage : public QWidget {
  Q_OBJECT
 public:
  /// Look and model must outlive it.
  WeakPage(const after::SheetLook& look, const ShelfModel& model, QWidget* parent);
  void restyle();
  /// Reads the model again; does nothing while it is not seen.
  void refresh();
  [[nodiscard]] after::RowsTable* lines() const { return lines_; }
  [[nodiscard]] after::RowsTable* brokenIn() const { return broken_in_; }
  [[nodiscard]] after::RowsTable* never() const { return never_; }

 Q_SIGNALS:
  void openAsked(const QString& file);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void showLine(int row);
  const after::SheetLook& look_;
  const ShelfModel& model_;
  review::WeakLines found_;
  QLabel *heading_, *line_heading_, *never_heading_;
  after::RowsTable *lines_, *broken_in_, *never_;
};

}  // namespace cabwright::review_room
