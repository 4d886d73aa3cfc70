// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_list.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>

#include "drawing/pen.h"
#include "review_room/shelf_look.h"

namespace cabwright::review_room {

using drawing::Anchor;
using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr double kRowHeight = 34, kCapHalf = 0.36 * drawing::kText, kPad = 9, kSign = 26;

class ListDelegate : public QStyledItemDelegate {
 public:
  ListDelegate(const after::SheetLook& look, const ListModel& model, ListMarks marks,
               QObject* parent)
      : QStyledItemDelegate(parent), look_(look), model_(model), marks_(marks) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    painter->save();
    painter->setClipRect(option.rect);
    painter->translate(option.rect.topLeft());
    painter->scale(look_.scale, look_.scale);
    drawing::Pen pen(*painter, look_.theme);
    const QSizeF size = QSizeF(option.rect.size()) / look_.scale;
    const Tone on = option.state.testFlag(QStyle::State_Selected) ? Tone::kWash : Tone::kFace;
    pen.rect({0, 0, size.width() + 1, size.height() + 1}, drawing::kNoLine, on);
    pen.line({0, size.height() - 0.5}, {size.width(), size.height() - 0.5},
             {drawing::kHairline, Tone::kHair});
    const ListRow& row = model_.rows()[static_cast<std::size_t>(index.row())];
    if (index.column() == marks_.bar && row.share >= 0)
      paintBar(pen, size, row.share, on);
    else
      paintWords(pen, size, row, index, on);
    painter->restore();
  }

 private:
  void paintWords(drawing::Pen& pen, QSizeF size, const ListRow& row, const QModelIndex& index,
                  Tone on) const {
    const ListColumn& column = model_.columns()[static_cast<std::size_t>(index.column())];
    const bool has_sign = index.column() == marks_.sign && row.sign != VerdictSign::kNone;
    const double left = kPad + (has_sign ? kSign : 0), y = size.height() / 2 + kCapHalf;
    if (has_sign) drawing::paintVerdict(pen, {kPad + 9, size.height() / 2}, row.sign, 8.5, on);
    const bool bold = row.strong && index.column() == 0;
    drawing::Words words{.bold = bold, .tone = Tone::kInk, .on = on};
    if (has_sign) words.tone = drawing::toneOf(row.sign);
    if (row.bad && index.column() == marks_.sign) words.tone = Tone::kBad;
    if (column.right) words.anchor = Anchor::kEnd;
    pen.text({column.right ? size.width() - kPad : left, y},
             drawing::elideText(index.data().toString(), size.width() - left - kPad + 4,
                                drawing::kText, bold),
             words);
  }

  static void paintBar(drawing::Pen& pen, QSizeF size, double share, Tone on) {
    const QRectF all(kPad, size.height() / 2 - 6, size.width() - 2 * kPad, 12);
    pen.rect(all, {drawing::kHairline, Tone::kRule}, on == Tone::kWash ? Tone::kFace : on);
    if (share > 0)
      pen.rect({all.left(), all.top(), std::max(2.0, all.width() * share), all.height()},
               drawing::kNoLine, Tone::kBad);
  }

  const after::SheetLook& look_;
  const ListModel& model_;
  ListMarks marks_;
};

}  // namespace

ListModel::ListModel(std::vector<ListColumn> columns, QObject* parent)
    : QAbstractTableModel(parent), columns_(std::move(columns)) {}

int ListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int ListModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant ListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const QStringList& cells = rows_[static_cast<std::size_t>(index.row())].cells;
  if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return cells.value(index.column());
  if (role != Qt::AccessibleTextRole) return {};
  if (index.column() != 0) return cells.value(index.column());
  QStringList said = cells;  // the whole row at its beginning
  said.removeAll(QString());
  return said.join(QLatin1String(", "));
}

QVariant ListModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
  const ListColumn& column = columns_[static_cast<std::size_t>(section)];
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((column.right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  return role == Qt::DisplayRole ? QVariant(column.title) : QVariant();
}

void ListModel::setRows(std::vector<ListRow> rows) {
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
}

ListTable::ListTable(const after::SheetLook& look, std::vector<ListColumn> columns, ListMarks marks,
                     const QString& name, QWidget* parent)
    : QTableView(parent), look_(look), model_(new ListModel(std::move(columns), this)) {
  setModel(model_);
  setItemDelegate(new ListDelegate(look, *model_, marks, this));
  setAccessibleName(name);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  setShowGrid(false);
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setEditTriggers(NoEditTriggers);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerPixel);
  setTabKeyNavigation(false);
  setWordWrap(false);
  horizontalHeader()->setSectionsClickable(false);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  connect(this, &QAbstractItemView::doubleClicked, this,
          [this](const QModelIndex& at) { Q_EMIT rowOpened(at.row()); });
}

void ListTable::setRows(std::vector<ListRow> rows) {
  model_->setRows(std::move(rows));
  if (model_->rowCount() > 0)
    selectRow(0);
  else
    Q_EMIT rowChosen(-1);
}

void ListTable::restyle() {
  const int row = toPixels(kRowHeight, look_);
  verticalHeader()->setMinimumSectionSize(row);
  verticalHeader()->setDefaultSectionSize(row);
  horizontalHeader()->setFixedHeight(toPixels(kRowHeight + 4, look_));
  arrangeColumns();
  viewport()->update();
}

void ListTable::arrangeColumns() {
  int rest = viewport()->width(), sharing = 0;
  for (const ListColumn& column : model_->columns()) {
    rest -= toPixels(column.width, look_);
    sharing += column.width == 0 ? 1 : 0;
  }
  for (int k = 0; k < model_->columnCount(); ++k) {
    const double width = model_->columns()[static_cast<std::size_t>(k)].width;
    setColumnWidth(k,
                   width > 0 ? toPixels(width, look_) : std::max(40, rest / std::max(1, sharing)));
  }
}

void ListTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  arrangeColumns();
}

void ListTable::currentChanged(const QModelIndex& now, const QModelIndex& before) {
  QTableView::currentChanged(now, before);
  Q_EMIT rowChosen(now.isValid() ? now.row() : -1);
}

void ListTable::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && currentIndex().isValid()) {
    Q_EMIT rowOpened(currentIndex().row());
    return;
  }
  QTableView::keyPressEvent(event);
}

}  // namespace cabwright::review_room
