// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/truth_view.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QPainter>
#include <QShortcut>
#include <algorithm>

#include "after/sheet_delegate.h"
#include "drawing/pen.h"
#include "drawing/verdict.h"

namespace cabwright::desk {

using drawing::Anchor;
using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr double kSide = 16, kTop = 10, kBar = 46, kField = 40, kSearch = 330, kRow = 32;
constexpr double kCapHalf = 0.36 * drawing::kText;
/// Figures are read, not watched: ten times a second is enough.
constexpr std::int64_t kShowTicks = session::kFrameTicks;

VerdictSign signOf(Agreement agreement) {
  return agreement == Agreement::kDiffers   ? VerdictSign::kDefect
         : agreement == Agreement::kSuspect ? VerdictSign::kUnsure
                                            : VerdictSign::kNone;
}

class TruthDelegate : public after::SheetDelegate {
 public:
  TruthDelegate(const after::SheetLook& look, const TruthModel& model, QObject* parent)
      : after::SheetDelegate(look, parent), model_(model) {}

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
    return {toPixels(100, look()), toPixels(kRow, look())};
  }

  void paintCell(drawing::Pen& pen, QSizeF size, const QModelIndex& index,
                 bool chosen) const override {
    const TruthRow* row = model_.rowAt(index.row());
    const Tone on = chosen ? Tone::kWash : row == nullptr ? Tone::kPaper : Tone::kFace;
    pen.rect({0, 0, size.width() + 1, size.height() + 1}, drawing::kNoLine, on);
    pen.line({0, size.height() - 0.5}, {size.width(), size.height() - 0.5},
             {drawing::kHairline, row == nullptr ? Tone::kRule : Tone::kHair});
    if (row == nullptr) {
      if (index.column() == TruthModel::kName)
        pen.text({8, size.height() - 9}, index.data().toString(), {.bold = true, .on = on});
    } else {
      paintValue(pen, size, index, *row, on);
    }
  }

 private:
  void paintValue(drawing::Pen& pen, QSizeF size, const QModelIndex& index, const TruthRow& row,
                  Tone on) const {
    const double y = size.height() / 2 + kCapHalf;
    const QString words = index.data().toString();
    switch (index.column()) {
      case TruthModel::kName:
        pen.text({22, y}, drawing::elideText(words, size.width() - 30), {.on = on});
        return;
      case TruthModel::kTrue:
        pen.text({size.width() - 8, y}, words, {.anchor = Anchor::kEnd, .bold = true, .on = on});
        return;
      case TruthModel::kUnit:
        pen.text({2, y}, words, {.tone = Tone::kInk2, .on = on});
        return;
      case TruthModel::kFinding:
        paintFinding(pen, size, words, row.agreement(), on);
        return;
      default: {
        const auto agreement = model_.agreementAt(index);
        if (!agreement) return;
        const bool differs = *agreement == Agreement::kDiffers;
        drawing::paintVerdict(pen, {20, size.height() / 2}, signOf(*agreement), 8.5, on);
        pen.text({size.width() - 12, y}, words,
                 {.anchor = Anchor::kEnd,
                  .bold = differs,
                  .tone = differs ? Tone::kBad : Tone::kInk,
                  .on = on});
      }
    }
  }

  static void paintFinding(drawing::Pen& pen, QSizeF size, const QString& words,
                           Agreement agreement, Tone on) {
    if (agreement == Agreement::kAgrees) return;
    const VerdictSign sign = signOf(agreement);
    drawing::paintVerdict(pen, {18, size.height() / 2}, sign, 8.5, on);
    pen.text({36, size.height() / 2 + kCapHalf}, drawing::elideText(words, size.width() - 44),
             {.tone = drawing::toneOf(sign), .on = on});
  }

  const TruthModel& model_;
};

}  // namespace

TruthView::TruthView(Desk& desk, QWidget* parent)
    : LivePage(desk, parent),
      model_(new TruthModel(this)),
      search_(new QLineEdit(this)),
      table_(new QTableView(this)) {
  setAccessibleName(tr("True values"));
  search_->setPlaceholderText(tr("Search: a word, a unit"));
  search_->setAccessibleName(tr("Search the values"));
  search_->setClearButtonEnabled(true);
  table_->setModel(model_);
  table_->setItemDelegate(new TruthDelegate(look(), *model_, table_));
  table_->setAccessibleName(tr("True values and gauges"));
  table_->verticalHeader()->hide();
  table_->setShowGrid(false);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->setTabKeyNavigation(false);
  table_->setWordWrap(false);
  table_->horizontalHeader()->setSectionsClickable(false);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  makeBar();
  connect(search_, &QLineEdit::textChanged, model_, &TruthModel::setSearch);
  auto* find = new QShortcut(QKeySequence::Find, this);
  find->setContext(Qt::WidgetWithChildrenShortcut);
  connect(find, &QShortcut::activated, this, [this] {
    search_->setFocus();
    search_->selectAll();
  });
  setMinimumSize(860, 360);
  chooseSystem(-1);
  restyle();
}

TruthView::~TruthView() = default;

void TruthView::makeBar() {
  for (int k = -1; k < static_cast<int>(System::kCount); ++k) {
    const QString words = k < 0 ? tr("All") : nameOf(static_cast<System>(k));
    auto* button = new ChoiceButton(look(), words, this);
    connect(button, &QAbstractButton::clicked, this, [this, k] { chooseSystem(k); });
    systems_.push_back(button);
  }
  only_ = new ChoiceButton(look(), tr("Only what differs"), this);
  connect(only_, &QAbstractButton::clicked, model_, &TruthModel::setOnlyDiffering);
  setTabOrder(search_, only_);
  QWidget* before = only_;
  for (ChoiceButton* button : systems_) {
    setTabOrder(before, button);
    before = button;
  }
  setTabOrder(before, table_);
}

void TruthView::chooseSystem(int which) {
  model_->setSystem(which < 0 ? std::nullopt : std::optional(static_cast<System>(which)));
  for (std::size_t k = 0; k < systems_.size(); ++k)
    systems_[k]->setChecked(static_cast<int>(k) == which + 1);
}

QString TruthView::summary() const {
  const int n = model_->differing(), broken = model_->suspect();
  if (n == 0 && broken == 0) return tr("All gauges and lamps show what is so.");
  QString words = n == 0   ? tr("All gauges and lamps agree; broken: %1.").arg(broken)
                  : n == 1 ? tr("One row differs.")
                           : tr("%n rows differ.", nullptr, n);
  return words + QLatin1Char(' ') + model_->firstFinding();
}

void TruthView::forget() {
  model_->clear();
  shown_tick_ = asked_tick_ = -1;
}

// While time stands the last figures are shown exactly.
void TruthView::showRun() {
  const std::int64_t tick = run()->tick();
  const bool stands = tick == asked_tick_;
  asked_tick_ = tick;
  if (tick == shown_tick_ ||
      (!stands && tick > shown_tick_ && shown_tick_ >= 0 && tick - shown_tick_ < kShowTicks))
    return;
  shown_tick_ = tick;
  model_->update(*run());
  const QString words = summary();
  if (words == accessibleDescription()) return;
  setAccessibleDescription(words);
  update(0, px(kTop + kBar), width(), px(kField + 12));  // not the table below
}

void TruthView::restyle() {
  setStyleSheet(pageStyle(look()));
  table_->verticalHeader()->setMinimumSectionSize(px(kRow));
  table_->verticalHeader()->setDefaultSectionSize(px(kRow));
  arrange();
}

void TruthView::arrange() {
  const double k = look().scale, wide = width() / k, high = height() / k;
  placeInRow(systems_, kSide - 3, kTop, k);
  const double top = kTop + kBar + 8;
  place(search_, {kSide, top, kSearch, kField});
  placeInRow({only_}, kSide + kSearch + 8, top + 1, k);
  place(table_, {kSide, top + kField + 8, wide - 2 * kSide, high - top - kField - 24});
  arrangeColumns();
}

// Of the columns of gauges, whatever the language.
int TruthView::widestHeading() const {
  int wide = 0;
  for (const int column : {TruthModel::kCab1, TruthModel::kCab2, TruthModel::kSpot})
    wide =
        std::max(wide, table_->horizontalHeader()->fontMetrics().horizontalAdvance(
                           model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString()));
  return wide;
}

// Figures have their width; name and finding share the rest.
void TruthView::arrangeColumns() {
  const int figure = px(112), unit = px(84), shown = std::max(px(128), widestHeading() + px(20));
  const int bar = 2 * px(14);
  const int rest = std::max(px(400), table_->width() - figure - unit - 3 * shown - bar);
  const int name = std::min(px(560), rest * 11 / 20);
  table_->setColumnWidth(TruthModel::kName, name);
  table_->setColumnWidth(TruthModel::kTrue, figure);
  table_->setColumnWidth(TruthModel::kUnit, unit);
  for (const int column : {TruthModel::kCab1, TruthModel::kCab2, TruthModel::kSpot})
    table_->setColumnWidth(column, shown);
  table_->setColumnWidth(TruthModel::kFinding, rest - name);
}

void TruthView::paintSheet(drawing::Pen& pen, QSizeF sheet) {
  const double wide = sheet.width(), y = kTop + kBar + 8 + kField / 2;
  pen.line({kSide, kTop + kBar}, {wide - kSide, kTop + kBar}, {drawing::kHairline, Tone::kRule});
  const double left = kSide + kSearch + 8 + only_->sizeInSheet().width() + 24;
  const VerdictSign sign = model_->differing() > 0 ? VerdictSign::kDefect
                           : model_->suspect() > 0 ? VerdictSign::kUnsure
                                                   : VerdictSign::kGood;
  if (run() == nullptr) return;
  drawing::paintVerdict(pen, {left + 10, y}, sign, 9.5, Tone::kPaper);
  pen.text({left + 30, y + kCapHalf}, drawing::elideText(summary(), wide - left - 30 - kSide),
           {.tone = drawing::toneOf(sign)});
}

}  // namespace cabwright::desk
