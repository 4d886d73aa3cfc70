// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/rows_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>

#include "desk/live_page.h"
#include "desk/sheet_delegate.h"
#include "drawing/pen.h"

namespace cabwright::desk {

using drawing::Anchor;
using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr double kRow = 34, kCapHalf = 0.36 * drawing::kText, kPad = 8, kSign = 26;

class RowsDelegate : public SheetDelegate {
 public:
  RowsDelegate(const after::SheetLook& look, const RowsModel& model, int sign_column,
               int strong_column, QObject* parent)
      : SheetDelegate(look, parent),
        model_(model),
        sign_column_(sign_column),
        strong_column_(strong_column) {}

  void paintCell(drawing::Pen& pen, QSizeF size, const QModelIndex& index,
                 bool chosen) const override {
    const double w = size.width(), h = size.height();
    const TableRow& row = model_.rows()[static_cast<std::size_t>(index.row())];
    const TableColumn& column = model_.columns()[static_cast<std::size_t>(index.column())];
    const Tone on = chosen ? Tone::kWash : Tone::kFace;
    pen.rect({0, 0, w + 1, h + 1}, drawing::kNoLine, on);
    pen.line({0, h - 0.5}, {w, h - 0.5}, {drawing::kHairline, Tone::kHair});
    const bool bears_sign = index.column() == sign_column_ && row.sign != VerdictSign::kNone;
    const double left = kPad + (bears_sign ? kSign : 0);
    if (bears_sign) drawing::paintVerdict(pen, {kPad + 10, h / 2}, row.sign, 8.5, on);
    const bool bold = row.strong && index.column() == strong_column_;
    drawing::Words words{.bold = bold, .tone = Tone::kInk, .on = on};
    if (bears_sign) words.tone = drawing::toneOf(row.sign);
    if (column.right) words.anchor = Anchor::kEnd;
    pen.text({column.right ? w - kPad : left, h / 2 + kCapHalf},
             drawing::elideText(index.data().toString(), w - left - kPad + 2, drawing::kText, bold),
             words);
  }

 private:
  const RowsModel& model_;
  int sign_column_, strong_column_;
};

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
      // A reader of the screen hears the whole row at its beginning.
      return index.column() == 0 ? cells.join(QLatin1String(", ")) : cells.value(index.column());
    default:
      return {};
  }
}

QVariant RowsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section >= columnCount()) return {};
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
    const bool look = now.sign != before.sign || now.strong != before.strong;
    for (int column = 0; column < columnCount(); ++column) {
      if (!look && before.cells.value(column) == now.cells.value(column)) continue;
      Q_EMIT dataChanged(index(k, column), index(k, column));
    }
  });
}

RowsTable::RowsTable(const after::SheetLook& look, std::vector<TableColumn> columns,
                     int sign_column, int strong_column, const QString& name, QWidget* parent)
    : QTableView(parent), look_(look), model_(new RowsModel(std::move(columns), this)) {
  setModel(model_);
  setItemDelegate(new RowsDelegate(look, *model_, sign_column, strong_column, this));
  setAccessibleName(name);
  verticalHeader()->hide();
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
  connect(this, &QAbstractItemView::doubleClicked, this, [this](const QModelIndex& at) {
    Q_EMIT rowChosen(rows()[static_cast<std::size_t>(at.row())].tag);
  });
}

void RowsTable::restyle() {
  const int row = toPixels(kRow, look_.scale);
  verticalHeader()->setMinimumSectionSize(row);
  verticalHeader()->setDefaultSectionSize(row);
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
    rest -= toPixels(column.width, look_.scale);
    sharing += column.width == 0 ? 1 : 0;
  }
  for (int k = 0; k < model_->columnCount(); ++k) {
    const double width = model_->columns()[static_cast<std::size_t>(k)].width;
    setColumnWidth(
        k, width > 0 ? toPixels(width, look_.scale) : std::max(40, rest / std::max(1, sharing)));
  }
}

void RowsTable::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && currentIndex().isValid()) {
    Q_EMIT rowChosen(rows()[static_cast<std::size_t>(currentIndex().row())].tag);
    return;
  }
  QTableView::keyPressEvent(event);
}

}  // namespace cabwright::desk
