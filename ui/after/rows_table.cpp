// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/rows_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>

#include "after/sheet_delegate.h"
#include "drawing/pen.h"

namespace cabwright::after {

using drawing::Anchor;
using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr double kRow = 34, kCapHalf = 0.36 * drawing::kText, kPad = 8, kSign = 26;

class RowsDelegate : public SheetDelegate {
 public:
  RowsDelegate(const SheetLook& look, const RowsModel& model, RowsMarks marks, QObject* parent)
      : SheetDelegate(look, parent), model_(model), marks_(marks) {}

  void paintCell(drawing::Pen& pen, QSizeF size, const QModelIndex& index,
                 bool chosen) const override {
    const double w = size.width(), h = size.height();
    const TableRow& row = model_.rows()[static_cast<std::size_t>(index.row())];
    const TableColumn& column = model_.columns()[static_cast<std::size_t>(index.column())];
    const Tone on = chosen ? Tone::kWash : Tone::kFace;
    pen.rect({0, 0, w + 1, h + 1}, drawing::kNoLine, on);
    pen.line({0, h - 0.5}, {w, h - 0.5}, {drawing::kHairline, Tone::kHair});
    if (index.column() == marks_.bar && row.share >= 0) {
      paintBar(pen, size, row.share, on);
      return;
    }
    const bool bears_sign = index.column() == marks_.sign && row.sign != VerdictSign::kNone;
    const double left = kPad + (bears_sign ? kSign : 0);
    if (bears_sign) drawing::paintVerdict(pen, {kPad + 10, h / 2}, row.sign, 8.5, on);
    const bool bold = row.strong && index.column() == marks_.strong;
    drawing::Words words{.bold = bold, .tone = Tone::kInk, .on = on};
    if (bears_sign) words.tone = drawing::toneOf(row.sign);
    if (row.bad && index.column() == marks_.sign) words.tone = Tone::kBad;
    if (column.right) words.anchor = Anchor::kEnd;
    pen.text({column.right ? w - kPad : left, h / 2 + kCapHalf},
             drawing::elideText(index.data().toString(), w - left - kPad + 2, drawing::kText, bold),
             words);
  }

 private:
  static void paintBar(drawing::Pen& pen, QSizeF size, double share, Tone on) {
    const QRectF all(kPad, size.height() / 2 - 6, size.width() - 2 * kPad, 12);
    pen.rect(all, {drawing::kHairline, Tone::kRule}, on == Tone::kWash ? Tone::kFace : on);
    if (share > 0)
      pen.rect({all.left(), all.top(), std::max(2.0, all.width() * share), all.height()},
               drawing::kNoLine, Tone::kBad);
  }

  const RowsModel& model_;
  RowsMarks marks_;
};

}  // namespace

namespace {

// A reader of the screen hears the whole row at its beginning.
QString wholeOf(QStringList cells) {
  cells.removeAll(QString());
  return cells.join(QLatin1String(", "));
}

}  // namespace

RowsModel::RowsModel(std::vector<TableColumn> columns, QObject* parent)
    : QAbstractTableModel(parent), columns_(std::move(columns)) {}

int RowsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int RowsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant RowsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const QStringList& cells = rows_[static_cast<std::size_t>(index.row())].cells;
  switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
      return cells.value(index.column());
    case Qt::AccessibleTextRole:
      return index.column() == 0 ? wholeOf(cells) : cells.value(index.column());
    default:
      return {};
  }
}

QVariant RowsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
  const TableColumn& column = columns_[static_cast<std::size_t>(section)];
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((column.right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  return role == Qt::DisplayRole ? QVariant(column.title) : QVariant();
}

void RowsModel::setRows(std::vector<TableRow> rows) {
  const auto reset = [this](auto put) {
    beginResetModel();
    put();
    endResetModel();
  };
  putRows(rows_, std::move(rows), reset, [this](int k, const TableRow& before) {
    const TableRow& now = rows_[static_cast<std::size_t>(k)];
    const bool look = now.sign != before.sign || now.strong != before.strong ||
                      now.share != before.share || now.bad != before.bad;
    for (int column = 0; column < columnCount(); ++column) {
      if (!look && before.cells.value(column) == now.cells.value(column)) continue;
      Q_EMIT dataChanged(index(k, column), index(k, column));
    }
  });
}

void RowsModel::replaceRows(std::vector<TableRow> rows) {
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
}

RowsTable::RowsTable(const SheetLook& look, std::vector<TableColumn> columns, RowsMarks marks,
                     const QString& name, QWidget* parent)
    : QTableView(parent), look_(look), model_(new RowsModel(std::move(columns), this)) {
  setModel(model_);
  setItemDelegate(new RowsDelegate(look, *model_, marks, this));
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

void RowsTable::replaceRows(std::vector<TableRow> rows) {
  model_->replaceRows(std::move(rows));
  if (model_->rowCount() > 0)
    selectRow(0);
  else
    Q_EMIT rowChosen(-1);
}

void RowsTable::currentChanged(const QModelIndex& now, const QModelIndex& before) {
  QTableView::currentChanged(now, before);
  Q_EMIT rowChosen(now.isValid() ? now.row() : -1);
}

void RowsTable::restyle() {
  const int row = toPixels(kRow, look_);
  verticalHeader()->setMinimumSectionSize(row);
  verticalHeader()->setDefaultSectionSize(row);
  horizontalHeader()->setFixedHeight(toPixels(kRow + 4, look_));
  arrangeColumns();
  viewport()->update();
}

void RowsTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  arrangeColumns();
}

void RowsTable::arrangeColumns() {
  int rest = viewport()->width(), sharing = 0;
  for (const TableColumn& column : model_->columns()) {
    rest -= toPixels(column.width, look_);
    sharing += column.width == 0 ? 1 : 0;
  }
  for (int k = 0; k < model_->columnCount(); ++k) {
    const double width = model_->columns()[static_cast<std::size_t>(k)].width;
    setColumnWidth(k,
                   width > 0 ? toPixels(width, look_) : std::max(40, rest / std::max(1, sharing)));
  }
}

void RowsTable::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && currentIndex().isValid()) {
    Q_EMIT rowOpened(currentIndex().row());
    return;
  }
  QTableView::keyPressEvent(event);
}

}  // namespace cabwright::after
