// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of the mark sheet as a list: sign, title and moment; what it counts as, with what was
// recorded struck through, margin and points; what was seen. The selected row is the line before
// one; its moment is a link.
#pragma once

#include <QAbstractListModel>
#include <vector>

#include "after/card_list.h"
#include "review_room/marks_rows.h"

namespace cabwright::review_room {

class MarksModel : public QAbstractListModel {
  Q_OBJECT
 public:
  using QAbstractListModel::QAbstractListModel;
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  /// Rows that are as before stay as they are drawn.
  void setRows(std::vector<MarkRow> rows);
  [[nodiscard]] const std::vector<MarkRow>& rows() const { return rows_; }

 private:
  std::vector<MarkRow> rows_;
};

class MarksList : public after::CardList {
  Q_OBJECT
 public:
  MarksList(const after::SheetLook& look, const QString& name, QWidget* parent);

  /// What was selected stays so while it is still there.
  void setRows(std::vector<MarkRow> rows);
  [[nodiscard]] const std::vector<MarkRow>& rows() const { return model_->rows(); }
  /// Id of the selected line; empty: none.
  [[nodiscard]] std::string selected() const;
  /// Selects and shows it without telling anybody; empty: none.
  void select(const std::string& rule);

 Q_SIGNALS:
  /// Somebody has chosen another line, with mouse or keys.
  void lineChosen(const QString& rule);
  /// Enter, or another click, on the selected line, if it has a moment.
  void momentChosen(qint64 tick);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void enterCard(const QModelIndex& index) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void selectionChanged(const QItemSelection& now, const QItemSelection& before) override;

 private:
  [[nodiscard]] const MarkRow* findRow(const QModelIndex& index) const;
  void chooseEnd(bool first);
  [[nodiscard]] int findIndex(const std::string& rule) const;
  MarksModel* model_;
  bool pressed_on_selected_ = false;
  bool told_ = true;  ///< whether a change of the selection is somebody's
};

}  // namespace cabwright::review_room
