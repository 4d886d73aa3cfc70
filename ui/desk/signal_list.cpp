// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/signal_list.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>

#include "after/sheet_delegate.h"
#include "desk/live_page.h"
#include "desk/strip_groups.h"
#include "drawing/pen.h"

namespace cabwright::desk {

using drawing::Anchor;
using drawing::Tone;
using unit::Signal;

namespace {

constexpr double kRow = 54, kSample = 44;

QString toQt(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

// Shown: a dial; true: a full disc; done: a hand's square.
void paintLayer(drawing::Pen& pen, QPointF centre, unit::Layer layer, Tone on) {
  switch (layer) {
    case unit::Layer::kShown:
      pen.circle(centre, 6.5, {drawing::kNorm, Tone::kInk2}, on);
      pen.line(centre, centre + QPointF(3, -3.6), {drawing::kNorm, Tone::kInk2});
      return;
    case unit::Layer::kTrue:
      pen.circle(centre, 6.5, drawing::kNoLine, Tone::kInk2);
      return;
    case unit::Layer::kDone:
      pen.polygon({{centre + QPointF(-6, -6), centre + QPointF(6, 0), centre + QPointF(-6, 6)}},
                  {drawing::kNorm, Tone::kInk2}, on);
      return;
  }
}

class SignalDelegate : public after::SheetDelegate {
 public:
  SignalDelegate(const after::SheetLook& look, const SignalListModel& model, QObject* parent)
      : after::SheetDelegate(look, parent), model_(model) {}

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
    return {toPixels(200, look()), toPixels(kRow, look())};
  }

  void paintCell(drawing::Pen& pen, QSizeF size, const QModelIndex& index,
                 bool chosen) const override {
    const double w = size.width(), h = size.height();
    const Signal signal = model_.signalAt(index.row());
    const after::Curve* curve = model_.findCurve(signal);
    const Tone on = chosen ? Tone::kWash : Tone::kFace;
    pen.rect({0, 0, w, h}, drawing::kNoLine, on);
    pen.line({10, h - 0.5}, {w - 10, h - 0.5}, {drawing::kHairline, Tone::kHair});
    paintSample(pen, curve, h / 2, on);
    const double x = kSample + 14, room = w - x - 12;
    pen.text({x, 23}, drawing::elideText(model_.wordsOf(signal), room, drawing::kText, curve),
             {.bold = curve != nullptr, .on = on});
    paintLayer(pen, {x + 7, 39}, unit::signalInfo(signal).layer, on);
    pen.text({x + 22, 45}, drawing::elideText(model_.detailsOf(signal), room - 22),
             {.tone = Tone::kInk2, .on = on});
  }

 private:
  static void paintSample(drawing::Pen& pen, const after::Curve* curve, double y, Tone on) {
    const QRectF box(10, y - 12, kSample - 10, 24);
    if (curve == nullptr) {
      pen.rect(box, {drawing::kThin, Tone::kRule}, on, 3);
      return;
    }
    pen.rect(box, {drawing::kNorm, Tone::kInk}, Tone::kPaper, 3);
    pen.line({box.left() + 3, y}, {box.right() - 3, y}, {3, curve->tone, curve->dash, false});
  }

  const SignalListModel& model_;
};

}  // namespace

SignalListModel::SignalListModel(QObject* parent) : QAbstractListModel(parent) {
  for (const unit::SignalInfo& info : unit::signalTable()) {
    const QString layer = layerName(info.layer), unit = toQt(info.unit), name = toQt(info.name);
    QStringList details{layer};
    if (!unit.isEmpty()) details << unit;
    details << name;
    Row row{signalText(info.id), details.join(QStringLiteral(" \u00B7 ")), {}};
    row.key = (row.words + QLatin1Char(' ') + toQt(info.text) + QLatin1Char(' ') +
               quantityName(info.unit) + QLatin1Char(' ') + row.details)
                  .toLower();
    rows_.push_back(std::move(row));
  }
  filter();
}

int SignalListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(visible_.size());
}

Signal SignalListModel::signalAt(int row) const { return visible_[static_cast<std::size_t>(row)]; }

const after::Curve* SignalListModel::findCurve(Signal signal) const {
  const auto found = std::ranges::find(chosen_, signal, &after::Curve::signal);
  return found == chosen_.end() ? nullptr : &*found;
}

QString SignalListModel::wordsOf(Signal signal) const {
  return rows_[static_cast<std::size_t>(signal)].words;
}

QString SignalListModel::detailsOf(Signal signal) const {
  return rows_[static_cast<std::size_t>(signal)].details;
}

QVariant SignalListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Signal signal = signalAt(index.row());
  switch (role) {
    case Qt::DisplayRole:
      return wordsOf(signal);
    case Qt::AccessibleTextRole:
      return wordsOf(signal) + QLatin1String(", ") + detailsOf(signal);
    case Qt::ToolTipRole:
      return toQt(unit::signalInfo(signal).text);
    case Qt::CheckStateRole:
      return findCurve(signal) != nullptr ? Qt::Checked : Qt::Unchecked;
    default:
      return {};
  }
}

bool SignalListModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::CheckStateRole) return false;
  Q_EMIT asked(signalAt(index.row()), value.toInt() == Qt::Checked);
  return true;
}

Qt::ItemFlags SignalListModel::flags(const QModelIndex& index) const {
  return QAbstractListModel::flags(index) | Qt::ItemIsUserCheckable;
}

void SignalListModel::filter() {
  beginResetModel();
  visible_.clear();
  const QStringList words = search_.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (std::size_t k = 0; k < rows_.size(); ++k) {
    const auto signal = static_cast<Signal>(k);
    if (only_chosen_ && findCurve(signal) == nullptr) continue;
    if (std::ranges::all_of(words, [&](const QString& w) { return rows_[k].key.contains(w); }))
      visible_.push_back(signal);
  }
  endResetModel();
}

void SignalListModel::setSearch(const QString& words) {
  if (words.toLower() == search_) return;
  search_ = words.toLower();
  filter();
}

void SignalListModel::setOnlyChosen(bool only) {
  if (only == only_chosen_) return;
  only_chosen_ = only;
  filter();
}

void SignalListModel::setChosen(const std::vector<after::Plot>& plots) {
  chosen_.clear();
  for (const after::Plot& plot : plots)
    chosen_.insert(chosen_.end(), plot.curves.begin(), plot.curves.end());
  if (only_chosen_) {
    filter();
  } else if (!visible_.empty()) {
    Q_EMIT dataChanged(index(0), index(rowCount() - 1));
  }
}

SignalList::SignalList(const after::SheetLook& look, SignalListModel& model, QWidget* parent)
    : QListView(parent), model_(model) {
  setModel(&model);
  setItemDelegate(new SignalDelegate(look, model, this));
  setUniformItemSizes(true);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setEditTriggers(NoEditTriggers);
  setMouseTracking(false);
}

void SignalList::restyle() {
  doItemsLayout();
  viewport()->update();
}

void SignalList::toggle(const QModelIndex& index) {
  if (!index.isValid()) return;
  const bool on = model_.data(index, Qt::CheckStateRole).toInt() == Qt::Checked;
  model_.setData(index, on ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
}

void SignalList::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter) {
    toggle(currentIndex());
    return;
  }
  QListView::keyPressEvent(event);
}

void SignalList::mouseReleaseEvent(QMouseEvent* event) {
  QListView::mouseReleaseEvent(event);
  if (event->button() == Qt::LeftButton) toggle(indexAt(event->position().toPoint()));
}

}  // namespace cabwright::desk
