// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>
#include <array>

#include "after/sheet_delegate.h"
#include "drawing/pen.h"
#include "review_room/shelf_look.h"

namespace cabwright::review_room {

using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr double kRowHeight = 34, kCapHalf = 0.36 * drawing::kText, kPad = 9, kSign = 26;

// Least width of each column, u, and which part of what is left over it gets.
struct ColumnWidth {
  double least, share;
};
constexpr std::array<ColumnWidth, kShelfColumns> kWidths{
    {{150, 2}, {250, 4}, {220, 0}, {124, 0}, {92, 0}, {184, 0}, {104, 0}, {90, 0}, {212, 3}}};

class ShelfDelegate : public after::SheetDelegate {
 public:
  ShelfDelegate(const after::SheetLook& look, const ShelfModel& model, QObject* parent)
      : SheetDelegate(look, parent), model_(model) {}

  void paintCell(drawing::Pen& pen, QSizeF size, const QModelIndex& index,
                 bool chosen) const override {
    const double w = size.width(), h = size.height();
    const Tone on = chosen ? Tone::kWash : Tone::kFace;
    pen.rect({0, 0, w + 1, h + 1}, drawing::kNoLine, on);
    pen.line({0, h - 0.5}, {w, h - 0.5}, {drawing::kHairline, Tone::kHair});
    const auto column = static_cast<ShelfColumn>(index.column());
    const ShelfRow& row = model_.row(index.row());
    drawing::Words words{.tone = toneOf(column, index.row()), .on = on};
    double left = kPad;
    if (column == ShelfColumn::kOutcome && !model_.isRunning(index.row())) {
      drawing::paintVerdict(pen, {kPad + 9, h / 2}, row.sign, 8.5, on);
      left += kSign;
    }
    if (column == ShelfColumn::kTrainee) words.bold = true;
    pen.text({left, h / 2 + kCapHalf},
             drawing::elideText(index.data().toString(), w - left - 4, drawing::kText, words.bold),
             words);
  }

 private:
  [[nodiscard]] Tone toneOf(ShelfColumn column, int row) const {
    if (column == ShelfColumn::kOutcome)
      return model_.isRunning(row) ? Tone::kInk2 : drawing::toneOf(model_.row(row).sign);
    const bool second = column == ShelfColumn::kFile || column == ShelfColumn::kMode ||
                        column == ShelfColumn::kSeal;
    return second ? Tone::kInk2 : Tone::kInk;
  }
  const ShelfModel& model_;
};

// The head of a column with the sign of how it is sorted behind its name.
class ShelfHeader : public QHeaderView {
 public:
  ShelfHeader(const after::SheetLook& look, QWidget* parent)
      : QHeaderView(Qt::Horizontal, parent), look_(look) {}

 protected:
  void paintSection(QPainter* painter, const QRect& rect, int section) const override {
    painter->save();
    painter->setClipRect(rect);
    painter->translate(rect.topLeft());
    painter->scale(look_.scale, look_.scale);
    drawing::Pen pen(*painter, look_.theme);
    const double w = rect.width() / look_.scale, h = rect.height() / look_.scale;
    pen.rect({-1, -1, w + 2, h + 2}, drawing::kNoLine, Tone::kFace);
    pen.line({0, h - 0.7}, {w, h - 0.7}, {drawing::kThin, Tone::kInk});
    const bool sorted = isSortIndicatorShown() && sortIndicatorSection() == section;
    const QString name = model()->headerData(section, Qt::Horizontal).toString();
    const QString words = drawing::elideText(name, w - kPad - (sorted ? 22 : 4), drawing::kText);
    const double after = pen.text({kPad, h / 2 + kCapHalf}, words,
                                  {.tone = sorted ? Tone::kInk : Tone::kInk2, .on = Tone::kFace});
    if (sorted) {
      const double x = kPad + after + 7, half = 5;
      const double d = sortIndicatorOrder() == Qt::AscendingOrder ? -1 : 1;
      pen.polygon(QPolygonF({QPointF(x, h / 2 - d * half * 0.7),
                             QPointF(x + 2 * half, h / 2 - d * half * 0.7),
                             QPointF(x + half, h / 2 + d * half)}),
                  drawing::kNoLine, Tone::kInk);
    }
    painter->restore();
  }

 private:
  const after::SheetLook& look_;
};

}  // namespace

ShelfTable::ShelfTable(const after::SheetLook& look, ShelfModel& model, QWidget* parent)
    : QTableView(parent), look_(look), model_(model) {
  setHorizontalHeader(new ShelfHeader(look, this));
  setModel(&model);
  setItemDelegate(new ShelfDelegate(look, model, this));
  setAccessibleName(tr("Sessions"));
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  setShowGrid(false);
  setSelectionBehavior(SelectRows);
  setSelectionMode(ExtendedSelection);
  setEditTriggers(NoEditTriggers);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerPixel);
  setTabKeyNavigation(false);
  setWordWrap(false);
  horizontalHeader()->setSectionsClickable(true);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  horizontalHeader()->setSortIndicator(static_cast<int>(ShelfColumn::kStarted),
                                       Qt::DescendingOrder);
  setSortingEnabled(true);
  connect(this, &QAbstractItemView::doubleClicked, this,
          [this](const QModelIndex& at) { Q_EMIT rowOpened(at.row()); });
}

void ShelfTable::restyle() {
  const int row = toPixels(kRowHeight, look_);
  verticalHeader()->setMinimumSectionSize(row);
  verticalHeader()->setDefaultSectionSize(row);
  horizontalHeader()->setFixedHeight(toPixels(kRowHeight + 4, look_));
  arrangeColumns();
  viewport()->update();
  horizontalHeader()->viewport()->update();
}

std::vector<int> ShelfTable::chosenRows() const {
  std::vector<int> rows;
  for (const QModelIndex& at : selectionModel()->selectedRows()) rows.push_back(at.row());
  std::ranges::sort(rows);
  return rows;
}

void ShelfTable::arrangeColumns() {
  double least = 0, shares = 0;
  for (const ColumnWidth& width : kWidths) {
    least += width.least;
    shares += width.share;
  }
  const double rest = viewport()->width() / look_.scale - least;
  for (int k = 0; k < kShelfColumns; ++k) {
    const ColumnWidth& width = kWidths[static_cast<std::size_t>(k)];
    setColumnWidth(k, toPixels(std::max(60.0, width.least + rest * width.share / shares), look_));
  }
}

void ShelfTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  arrangeColumns();
}

void ShelfTable::selectionChanged(const QItemSelection& now, const QItemSelection& before) {
  QTableView::selectionChanged(now, before);
  Q_EMIT rowsChosen();
}

void ShelfTable::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && currentIndex().isValid()) {
    Q_EMIT rowOpened(currentIndex().row());
    return;
  }
  if (event->matches(QKeySequence::Copy)) {
    event->ignore();  // the page copies paths
    return;
  }
  QTableView::keyPressEvent(event);
}

}  // namespace cabwright::review_room
