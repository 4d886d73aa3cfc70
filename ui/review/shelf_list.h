// SPDX-License-Identifier: GPL-3.0-or-later
// A short table of words, for attempts, lines and dates: plain rows in, one column may bear a sign,
// one a bar. Enter or a double click opens a row.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <QTableView>
#include <vector>

#include "after/sheet_look.h"
#include "drawing/verdict.h"

namespace cabwright::review_room {

struct ListColumn {
  QString title;
  double width = 0;    ///< u; 0: shares what is left over
  bool right = false;  ///< figures: set against the right edge
};

struct ListRow {
  QStringList cells;  ///< one for each column
  drawing::VerdictSign sign = drawing::VerdictSign::kNone;
  double share = -1;    ///< length of the bar, 0 to 1; below: none
  bool strong = false;  ///< its first words are bold
  bool bad = false;     ///< words of the sign's column in the tone of what is wrong
};

/// Which columns bear sign and bar; -1: none.
struct ListMarks {
  int sign = -1, bar = -1;
};

class ListModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  ListModel(std::vector<ListColumn> columns, QObject* parent);
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;
  void setRows(std::vector<ListRow> rows);
  [[nodiscard]] const std::vector<ListRow>& rows() const { return rows_; }
  [[nodiscard]] const std::vector<ListColumn>& columns() const { return columns_; }

 private:
  std::vector<ListColumn> columns_;
  std::vector<ListRow> rows_;
};

class ListTable : public QTableView {
  Q_OBJECT
 public:
  /// The look must outlive it.
  ListTable(const after::SheetLook& look, std::vector<ListColumn> columns, ListMarks marks,
            const QString& name, QWidget* parent);
  void setRows(std::vector<ListRow> rows);
  [[nodiscard]] const std::vector<ListRow>& rows() const { return model_->rows(); }
  void restyle();

 Q_SIGNALS:
  void rowOpened(int row);
  /// The current row; -1: none.
  void rowChosen(int row);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void currentChanged(const QModelIndex& now, const QModelIndex& before) override;

 private:
  void arrangeColumns();
  const after::SheetLook& look_;
  ListModel* model_;
};

}  // namespace cabwright::review_room
