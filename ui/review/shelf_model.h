// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions of a shelf as a table: those asked for, in the order asked for. Ten thousand are
// filtered and sorted here at once, without a model in between that asks for each cell.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "review_room/shelf_row.h"

namespace cabwright::review_room {

class ShelfModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  explicit ShelfModel(QObject* parent = nullptr);

  void setRows(std::vector<ShelfRow> rows);
  void setFilter(const ShelfFilter& filter);
  [[nodiscard]] const ShelfFilter& filter() const { return filter_; }
  /// The session that is recorded just now; empty: none.
  void setRunning(const QString& file);

  [[nodiscard]] const std::vector<ShelfRow>& allRows() const { return rows_; }
  /// `shown`: 0 to rowCount() - 1.
  [[nodiscard]] const ShelfRow& row(int shown) const {
    return rows_[order_[static_cast<std::size_t>(shown)]];
  }
  /// All that is shown, in its order.
  [[nodiscard]] std::vector<const review::ShelfItem*> shownItems() const;
  [[nodiscard]] bool isRunning(int shown) const;
  /// By whatever path or link it is named.
  [[nodiscard]] bool isRunningFile(const QString& file) const;
  /// -1: it is not shown.
  [[nodiscard]] int findShown(const QString& file) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;
  void sort(int column, Qt::SortOrder order) override;

 Q_SIGNALS:
  /// Other rows are shown.
  void shownChanged();

 private:
  void choose();
  void arrange();

  std::vector<ShelfRow> rows_;
  std::vector<std::size_t> order_;  ///< places in rows_
  ShelfFilter filter_;
  QString running_;
  ShelfColumn column_ = ShelfColumn::kStarted;
  Qt::SortOrder direction_ = Qt::DescendingOrder;
};

}  // namespace cabwright::review_room
