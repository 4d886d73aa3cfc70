// SPDX-License-Identifier: GPL-3.0-or-later
// A table of words: plain rows in, only changed cells are drawn anew. One column may bear a sign.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <QTableView>
#include <vector>

#include "after/sheet_look.h"
#include "drawing/verdict.h"

namespace cabwright::desk {

struct TableColumn {
  QString title;
  double width = 0;    ///< u; 0: shares what is left over
  bool right = false;  ///< figures: set against the right edge
};

struct TableRow {
  QStringList cells;  ///< one for each column
  drawing::VerdictSign sign = drawing::VerdictSign::kNone;
  bool strong = false;  ///< its first words are bold
  qint64 tag = 0;       ///< whatever the owner wants to know it by
  bool operator==(const TableRow&) const = default;
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
  [[nodiscard]] const std::vector<TableRow>& rows() const { return rows_; }
  [[nodiscard]] const std::vector<TableColumn>& columns() const { return columns_; }

 private:
  std::vector<TableColumn> columns_;
  std::vector<TableRow> rows_;
};

class RowsTable : public QTableView {
  Q_OBJECT
 public:
  /// `sign_column`: bears the sign of the row, and its words have the sign's tone; -1: none.
  /// `strong_column`: bold in strong rows.
  RowsTable(const after::SheetLook& look, std::vector<TableColumn> columns, int sign_column,
            int strong_column, const QString& name, QWidget* parent);
  void setRows(std::vector<TableRow> rows) { model_->setRows(std::move(rows)); }
  [[nodiscard]] const std::vector<TableRow>& rows() const { return model_->rows(); }
  void restyle();

 Q_SIGNALS:
  /// Enter, or a double click.
  void rowChosen(qint64 tag);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void arrangeColumns();
  const after::SheetLook& look_;
  RowsModel* model_;
};

}  // namespace cabwright::desk
