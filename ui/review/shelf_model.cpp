// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_model.h"

#include <algorithm>
#include <array>

namespace cabwright::review_room {
namespace {

// Numbers as numbers: 7 stands before 12.
int compareWords(const QString& a, const QString& b) {
  const auto is_number = [](const QString& words) {
    return !words.isEmpty() && std::ranges::all_of(words, [](QChar c) { return c.isDigit(); });
  };
  if (a.size() != b.size() && is_number(a) && is_number(b)) return a.size() < b.size() ? -1 : 1;
  return QString::compare(a, b, Qt::CaseInsensitive);
}

template <typename T>
int compareValues(const T& a, const T& b) {
  return a < b ? -1 : b < a ? 1 : 0;
}

int compareRows(const ShelfRow& a, const ShelfRow& b, ShelfColumn column) {
  switch (column) {
    case ShelfColumn::kStarted:
      return a.item.started_utc.compare(b.item.started_utc);
    case ShelfColumn::kLength:
      return compareValues(a.item.last_tick, b.item.last_tick);
    case ShelfColumn::kOutcome:
      if (a.item.outcome != b.item.outcome) return compareValues(a.item.outcome, b.item.outcome);
      return compareValues(b.item.sheet.percent, a.item.sheet.percent);
    case ShelfColumn::kSeal:
      return compareValues(b.item.sealed, a.item.sealed);
    default:
      return compareWords(a.cell(column), b.cell(column));
  }
}

}  // namespace

ShelfModel::ShelfModel(QObject* parent) : QAbstractTableModel(parent) {}

void ShelfModel::setRows(std::vector<ShelfRow> rows) {
  beginResetModel();
  rows_ = std::move(rows);
  choose();
  endResetModel();
  Q_EMIT shownChanged();
}

void ShelfModel::setFilter(const ShelfFilter& filter) {
  if (filter == filter_) return;
  beginResetModel();
  filter_ = filter;
  choose();
  endResetModel();
  Q_EMIT shownChanged();
}

void ShelfModel::setRunning(const QString& file) {
  if (file == running_) return;
  running_ = file;
  if (rowCount() > 0) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, kShelfColumns - 1));
}

// Asked for each row that is drawn: only what bears its name is looked at closer.
bool ShelfModel::isRunning(int shown) const {
  if (running_.isEmpty()) return false;
  const std::filesystem::path& file = row(shown).item.file;
  return file.filename() == std::filesystem::path(running_.toStdString()).filename() &&
         isRunningFile(QString::fromStdString(file.string()));
}

bool ShelfModel::isRunningFile(const QString& file) const {
  if (running_.isEmpty()) return false;
  std::error_code unknown;
  return file == running_ ||
         std::filesystem::equivalent(file.toStdString(), running_.toStdString(), unknown);
}

int ShelfModel::findShown(const QString& file) const {
  const std::filesystem::path wanted = file.toStdString();
  for (std::size_t k = 0; k < order_.size(); ++k)
    if (rows_[order_[k]].item.file == wanted) return static_cast<int>(k);
  return -1;
}

std::vector<const review::ShelfItem*> ShelfModel::shownItems() const {
  std::vector<const review::ShelfItem*> items;
  items.reserve(order_.size());
  for (const std::size_t k : order_) items.push_back(&rows_[k].item);
  return items;
}

void ShelfModel::choose() {
  order_.clear();
  for (std::size_t k = 0; k < rows_.size(); ++k)
    if (passes(rows_[k], filter_)) order_.push_back(k);
  arrange();
}

// What is alike in the column stands as it did: by the one sorted by before, as long as it lasts.
void ShelfModel::arrange() {
  const bool up = direction_ == Qt::AscendingOrder;
  std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
    const int order = compareRows(rows_[a], rows_[b], column_);
    return up ? order < 0 : order > 0;
  });
}

void ShelfModel::sort(int column, Qt::SortOrder order) {
  if (column < 0 || column >= kShelfColumns) return;
  Q_EMIT layoutAboutToBeChanged();
  const QModelIndexList before = persistentIndexList();
  std::vector<std::size_t> kept;
  for (const QModelIndex& at : before) kept.push_back(order_[static_cast<std::size_t>(at.row())]);
  column_ = static_cast<ShelfColumn>(column);
  direction_ = order;
  arrange();
  std::vector<int> place(rows_.size(), -1);
  for (std::size_t k = 0; k < order_.size(); ++k) place[order_[k]] = static_cast<int>(k);
  QModelIndexList after;
  for (qsizetype k = 0; k < before.size(); ++k)
    after << index(place[kept[static_cast<std::size_t>(k)]], before[k].column());
  changePersistentIndexList(before, after);
  Q_EMIT layoutChanged();
  Q_EMIT shownChanged();
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(order_.size());
}

int ShelfModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kShelfColumns;
}

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const ShelfRow& at = row(index.row());
  const auto column = static_cast<ShelfColumn>(index.column());
  switch (role) {
    case Qt::DisplayRole:
      if (column == ShelfColumn::kOutcome && isRunning(index.row())) return tr("being recorded");
      return at.cell(column);
    case Qt::ToolTipRole:
      if (column == ShelfColumn::kFile) return QString::fromStdString(at.item.file.string());
      if (column == ShelfColumn::kOutcome && !at.item.why_broken.empty())
        return QString::fromStdString(at.item.why_broken);
      return at.cell(column);
    case Qt::AccessibleTextRole: {
      // A reader of the screen hears the whole row at its beginning.
      if (index.column() != 0) return at.cell(column);
      QStringList said = at.cells;
      said.removeAll(QString());
      return said.join(QLatin1String(", "));
    }
    default:
      return {};
  }
}

QVariant ShelfModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= kShelfColumns) return {};
  if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  const std::array<QString, kShelfColumns> names{
      tr("Trainee"), tr("Exercise"), tr("Date and time"), tr("Mode"), tr("Length"),
      tr("Outcome"), tr("Decision"), tr("Seal"),          tr("File")};
  return names[static_cast<std::size_t>(section)];
}

}  // namespace cabwright::review_room
