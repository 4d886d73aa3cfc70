// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts as cards in a list: sign, title and moment; word and margin; the reason.
#pragma once

#include <QAbstractListModel>
#include <QListView>
#include <vector>

#include "after/sheet_look.h"
#include "desk/verdict_rows.h"

namespace cabwright::desk {

class VerdictModel : public QAbstractListModel {
  Q_OBJECT
 public:
  using QAbstractListModel::QAbstractListModel;
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  /// Rows that are as before stay as they are drawn.
  void setRows(std::vector<VerdictRow> rows);
  [[nodiscard]] const std::vector<VerdictRow>& rows() const { return rows_; }

 private:
  std::vector<VerdictRow> rows_;
};

class VerdictList : public QListView {
  Q_OBJECT
 public:
  VerdictList(const after::SheetLook& look, const QString& name, QWidget* parent);
  void setRows(std::vector<VerdictRow> rows) { model_->setRows(std::move(rows)); }
  [[nodiscard]] const std::vector<VerdictRow>& rows() const { return model_->rows(); }
  void restyle();
  /// What stands in it while it has no rows.
  void setEmptyWords(const QString& words) { empty_words_ = words; }

 Q_SIGNALS:
  /// Enter, or a double click, on one that has a moment behind it.
  void momentChosen(qint64 tick);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void choose(const QModelIndex& index);
  const after::SheetLook& look_;
  VerdictModel* model_;
  QString empty_words_;
};

}  // namespace cabwright::desk
