// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts as cards in a list: sign, title and moment; word and margin; the reason.
#pragma once

#include <QAbstractListModel>
#include <vector>

#include "after/card_list.h"
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

class VerdictList : public after::CardList {
  Q_OBJECT
 public:
  VerdictList(const after::SheetLook& look, const QString& name, QWidget* parent);
  void setRows(std::vector<VerdictRow> rows) { model_->setRows(std::move(rows)); }
  [[nodiscard]] const std::vector<VerdictRow>& rows() const { return model_->rows(); }

 Q_SIGNALS:
  /// Enter, or a double click, on one that has a moment behind it.
  void momentChosen(qint64 tick);

 protected:
  void enterCard(const QModelIndex& index) override;

 private:
  VerdictModel* model_;
};

}  // namespace cabwright::desk
