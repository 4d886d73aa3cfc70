// SPDX-License-Identifier: GPL-3.0-or-later
// Who is due for what again. A reminder: nothing is revoked by it, and nothing else looks at it.
#pragma once

#include <QDate>
#include <QLabel>
#include <QWidget>
#include <functional>

#include "after/rows_table.h"
#include "review_room/recency_form.h"
#include "review_room/shelf_model.h"

namespace cabwright::review_room {

class RecencyPage : public QWidget {
  Q_OBJECT
 public:
  /// Look and model must outlive it.
  RecencyPage(const after::SheetLook& look, const ShelfModel& model, QWidget* parent);
  void restyle();
  /// Reads the model again; does nothing while it is not seen.
  void refresh();
  [[nodiscard]] RecencyForm* form() const { return form_; }
  [[nodiscard]] after::RowsTable* list() const { return list_; }
  [[nodiscard]] QString headingText() const { return heading_->text(); }
  /// Which day it is; for tests another one.
  void setToday(std::function<QDate()> today) { today_ = std::move(today); }

 Q_SIGNALS:
  void openAsked(const QString& file);
  void rulesChanged();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  const after::SheetLook& look_;
  const ShelfModel& model_;
  std::function<QDate()> today_ = [] { return QDate::currentDate(); };
  std::vector<review::DuePass> due_;
  RecencyForm* form_;
  QLabel* heading_;
  after::RowsTable* list_;
};

}  // namespace cabwright::review_room
