// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_list.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "after/sheet_delegate.h"
#include "review_room/marks_card.h"
#include "review_room/marks_style.h"

namespace cabwright::review_room {
namespace {

class CardDelegate : public after::SheetDelegate {
 public:
  CardDelegate(const after::SheetLook& look, const MarksModel& model, QListView* view)
      : SheetDelegate(look, view), model_(model), view_(view) {}

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
    const double wide = view_->viewport()->width() / look().scale;
    return {view_->viewport()->width(),
            static_cast<int>(std::ceil(calcCardHeight(rowOf(index), wide) * look().scale))};
  }

  void paintCell(drawing::Pen& pen, QSizeF size, const QModelIndex& index,
                 bool chosen) const override {
    paintCard(pen, size, rowOf(index), chosen, view_->hasFocus());
  }

 private:
  const MarkRow& rowOf(const QModelIndex& index) const {
    return model_.rows()[static_cast<std::size_t>(index.row())];
  }
  const MarksModel& model_;
  QListView* view_;
};

}  // namespace

int MarksModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant MarksModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const MarkRow& row = rows_[static_cast<std::size_t>(index.row())];
  if (role == Qt::DisplayRole) return row.title;
  if (role == Qt::ToolTipRole) return row.detail.isEmpty() ? QVariant() : QVariant(row.detail);
  if (role != Qt::AccessibleTextRole) return {};
  QStringList parts;
  if (row.rule.empty()) {
    parts << row.title << row.points;
  } else {
    parts << tr("Line %1").arg(row.number) << row.title;
    parts << (row.was.isEmpty() ? row.verdict : tr("%1, recorded as %2").arg(row.verdict, row.was));
    if (row.critical) parts << tr("critical");
    parts << row.margin << row.points << row.moment << row.detail;
    if (row.commented) parts << tr("has a comment");
  }
  parts.removeAll(QString());
  return parts.join(QLatin1String(", "));
}

Qt::ItemFlags MarksModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return {};
  const bool heading = rows_[static_cast<std::size_t>(index.row())].rule.empty();
  return heading ? Qt::ItemFlags(Qt::NoItemFlags)  // keys go past it
                 : Qt::ItemFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
}

void MarksModel::setRows(std::vector<MarkRow> rows) {
  if (rows == rows_) return;
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
}

MarksList::MarksList(const after::SheetLook& look, const QString& name, QWidget* parent)
    : CardList(look, name, parent), model_(new MarksModel(this)) {
  setModel(model_);
  setItemDelegate(new CardDelegate(look, *model_, this));
  setMinimumHeight(80);
}

const MarkRow* MarksList::findRow(const QModelIndex& index) const {
  if (!index.isValid()) return nullptr;
  const MarkRow& row = rows()[static_cast<std::size_t>(index.row())];
  return row.rule.empty() ? nullptr : &row;
}

int MarksList::findIndex(const std::string& rule) const {
  const auto row = std::ranges::find(rows(), rule, &MarkRow::rule);
  return rule.empty() || row == rows().end() ? -1 : static_cast<int>(row - rows().begin());
}

void MarksList::setRows(std::vector<MarkRow> rows) {
  if (rows == model_->rows()) return;
  const std::string before = selected();
  const int at = verticalScrollBar()->value();
  told_ = false;
  model_->setRows(std::move(rows));
  told_ = true;
  doItemsLayout();
  select(before);
  verticalScrollBar()->setValue(at);
}

std::string MarksList::selected() const {
  const MarkRow* row = selectionModel()->hasSelection()
                           ? findRow(selectionModel()->selectedIndexes().front())
                           : nullptr;
  return row == nullptr ? std::string() : row->rule;
}

void MarksList::select(const std::string& rule) {
  if (rule == selected()) return;
  told_ = false;
  const int row = findIndex(rule);
  if (row < 0) {
    selectionModel()->clear();
  } else {
    const QModelIndex index = model_->index(row);
    selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect);
    scrollTo(index);
  }
  told_ = true;
}

void MarksList::selectionChanged(const QItemSelection& now, const QItemSelection& before) {
  QListView::selectionChanged(now, before);
  if (told_ && !selected().empty()) Q_EMIT lineChosen(toQt(selected()));
}

void MarksList::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Home || event->key() == Qt::Key_End) {
    chooseEnd(event->key() == Qt::Key_Home);
    return;
  }
  CardList::keyPressEvent(event);
}

void MarksList::enterCard(const QModelIndex& index) {
  const MarkRow* row = findRow(index);
  if (row != nullptr && row->tick) Q_EMIT momentChosen(*row->tick);
}

// The view's own way there stops at a heading.
void MarksList::chooseEnd(bool first) {
  const int count = model_->rowCount();
  for (int k = 0; k < count; ++k) {
    const QModelIndex index = model_->index(first ? k : count - 1 - k);
    if (findRow(index) == nullptr) continue;
    setCurrentIndex(index);
    return;
  }
}

void MarksList::mousePressEvent(QMouseEvent* event) {
  pressed_on_selected_ =
      indexAt(event->pos()).isValid() && selectionModel()->isSelected(indexAt(event->pos()));
  QListView::mousePressEvent(event);
}

// A row that was chosen only now has been told of already.
void MarksList::mouseReleaseEvent(QMouseEvent* event) {
  QListView::mouseReleaseEvent(event);
  const MarkRow* row = findRow(indexAt(event->pos()));
  if (pressed_on_selected_ && row != nullptr && row->tick) Q_EMIT momentChosen(*row->tick);
}

}  // namespace cabwright::review_room
