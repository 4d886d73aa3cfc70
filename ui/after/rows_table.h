// SPDX-License-Identifier: GPL-3.0-or-later
// A table of words: plain rows in, only changed cells are drawn anew. One column may bear a sign,
// one a bar. Enter or a double click opens a row.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <QTableView>
#include <vector>

#include "after/sheet_look.h"
#include "drawing/verdict.h"

namespace cabwright::after {

struct TableColumn {
  QString title;
  double width = 0;    ///< u; 0: shares what is left over
  bool right = false;  ///< figures: set against the right edge
};

struct TableRow {
  QStringList cells;  ///< one for each column
  drawing::VerdictSign sign = drawing::VerdictSign::kNone;
  bool strong = false;  ///< its words in the strong column are bold
  qint64 tag = 0;       ///< whatever the owner wants to know it by
  double share = -1;    ///< length of the bar, 0 to 1; below: none
  bool bad = false;     ///< words of the sign's column in the tone of what is wrong
  bool operator==(const TableRow&) const = default;
};

/// Which columns bear sign and bar, and which one is bold in strong rows; -1: none.
struct RowsMarks {
  int sign = -1, bar = -1, strong = 0;
};

class RowsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  RowsModel(std::vector<TableColumn> columns, QObject* parent);
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;
  /// Rows that are as before stay as they are drawn.
  void setRows(std::vector<TableRow> rows);
  /// All are others, whatever they look like.
  void replaceRows(std::vector<TableRow> rows);
  [[nodiscard]] const std::vector<TableRow>& rows() const { return rows_; }
  [[nodiscard]] const std::vector<TableColumn>& columns() const { return columns_; }

 private:
  std::vector<TableColumn> columns_;
  std::vector<TableRow> rows_;
};

class RowsTable : public QTableView {
  Q_OBJECT
 public:
  /// The look must outlive it.
  RowsTable(const SheetLook& look, std::vector<TableColumn> columns, RowsMarks marks,
            const QString& name, QWidget* parent);
  /// The same rows, later: what was chosen stays so.
  void setRows(std::vector<TableRow> rows) { model_->setRows(std::move(rows)); }
  /// Other rows: the first is chosen.
  void replaceRows(std::vector<TableRow> rows);
  [[nodiscard]] const std::vector<TableRow>& rows() const { return model_->rows(); }
  void restyle();

 Q_SIGNALS:
  /// Enter, or a double click.
  void rowOpened(int row);
  /// The current row; -1: none.
  void rowChosen(int row);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void currentChanged(const QModelIndex& now, const QModelIndex& before) override;

 private:
  void arrangeColumns();
  const SheetLook& look_;
  RowsModel* model_;
};

}  // namespace cabwright::after
