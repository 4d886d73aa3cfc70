// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/truth_model.h"

#include <algorithm>

#include "desk/strip_groups.h"

namespace cabwright::desk {
namespace {

std::optional<GaugeColumn> gaugeOf(int column) {
  switch (column) {
    case TruthModel::kCab1:
      return GaugeColumn::kCab1;
    case TruthModel::kCab2:
      return GaugeColumn::kCab2;
    case TruthModel::kSpot:
      return GaugeColumn::kSpot;
    default:
      return std::nullopt;
  }
}

}  // namespace

TruthModel::TruthModel(QObject* parent) : QAbstractTableModel(parent) {
  for (const TruthRow& row : truths_.rows()) {
    written_.push_back(write(row));
    keys_.push_back((row.name + QLatin1Char(' ') + row.unit + QLatin1Char(' ') +
                     nameOf(row.system) + QLatin1Char(' ') + quantityName(row.unit.toStdString()))
                        .toLower());
  }
  filter();
}

int TruthModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int TruthModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumns;
}

TruthModel::Written TruthModel::write(const TruthRow& row) const {
  return {{row.name, row.valueText(), row.unit, row.shownText(GaugeColumn::kCab1),
           row.shownText(GaugeColumn::kCab2), row.shownText(GaugeColumn::kSpot), row.finding()},
          row.agreement()};
}

const TruthRow* TruthModel::rowAt(int row) const {
  const Line& line = lines_[static_cast<std::size_t>(row)];
  return line.row < 0 ? nullptr : &truths_.rows()[static_cast<std::size_t>(line.row)];
}

std::optional<Agreement> TruthModel::agreementAt(const QModelIndex& index) const {
  const TruthRow* row = rowAt(index.row());
  const auto column = gaugeOf(index.column());
  if (row == nullptr || !column) return std::nullopt;
  const auto& says = row->gauges[static_cast<std::size_t>(*column)];
  return says ? std::optional(says->agreement) : std::nullopt;
}

QVariant TruthModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Line& line = lines_[static_cast<std::size_t>(index.row())];
  if (role == Qt::TextAlignmentRole) {
    const bool figure = index.column() == kTrue || gaugeOf(index.column());
    return static_cast<int>((figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
  if (line.row < 0) return index.column() == kName ? nameOf(line.heading) : QString();
  const Written& row = written_[static_cast<std::size_t>(line.row)];
  const QString words = row.words[static_cast<std::size_t>(index.column())];
  if (role == Qt::DisplayRole || index.column() != kName) return words;
  // A reader of the screen hears the whole row at its name.
  QStringList all{row.words[kName], (row.words[kTrue] + QLatin1Char(' ') + row.words[kUnit])};
  for (const int column : {kCab1, kCab2, kSpot})
    if (!row.words[static_cast<std::size_t>(column)].isEmpty())
      all << tr("%1 shows %2")
                 .arg(headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(),
                      row.words[static_cast<std::size_t>(column)]);
  if (!row.words[kFinding].isEmpty()) all << row.words[kFinding];
  return all.join(QLatin1String(", "));
}

QVariant TruthModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) {
    const bool figure = section == kTrue || gaugeOf(section);
    return static_cast<int>((figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case kName:
      return tr("Value");
    case kTrue:
      return tr("True");
    case kCab1:
      return tr("Cab 1");
    case kCab2:
      return tr("Cab 2");
    case kSpot:
      return tr("On the spot");
    case kFinding:
      return tr("Gauges that differ");
    default:
      return {};
  }
}

void TruthModel::clear() { truths_.clear(); }

void TruthModel::update(const session::LiveRun& run) {
  truths_.update(run);
  const std::vector<Written> before = written_;
  bool other = false;
  int differing = 0, suspect = 0;
  for (std::size_t k = 0; k < written_.size(); ++k) {
    Written now = write(truths_.rows()[k]);
    differing += now.agreement == Agreement::kDiffers ? 1 : 0;
    suspect += now.agreement == Agreement::kSuspect ? 1 : 0;
    if (now == written_[k]) continue;
    other = other || now.agreement != written_[k].agreement;
    written_[k] = std::move(now);
  }
  if (other && only_differing_) {
    filter();
  } else {
    for (int line = 0; line < rowCount(); ++line) {
      const int row = lines_[static_cast<std::size_t>(line)].row;
      if (row >= 0) tellChanges(line, before[static_cast<std::size_t>(row)]);
    }
  }
  differing_ = differing;
  suspect_ = suspect;
}

// Cell by cell: of several at once a view may draw all of itself anew.
void TruthModel::tellChanges(int line, const Written& before) {
  const Written& now =
      written_[static_cast<std::size_t>(lines_[static_cast<std::size_t>(line)].row)];
  for (int column = kTrue; column < kColumns; ++column) {
    const auto which = static_cast<std::size_t>(column);
    const bool gauge = gaugeOf(column) && now.agreement != before.agreement;
    if (!gauge && now.words[which] == before.words[which]) continue;
    Q_EMIT dataChanged(index(line, column), index(line, column));
  }
}

QString TruthModel::firstFinding() const {
  for (const Agreement wanted : {Agreement::kDiffers, Agreement::kSuspect})
    for (const Written& row : written_)
      if (row.agreement == wanted) return tr("%1: %2").arg(row.words[kName], row.words[kFinding]);
  return {};
}

bool TruthModel::isWanted(std::size_t row) const {
  const TruthRow& truth = truths_.rows()[row];
  if (system_ && truth.system != *system_) return false;
  if (only_differing_ && written_[row].agreement == Agreement::kAgrees) return false;
  const QStringList words = search_.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  return std::ranges::all_of(words, [&](const QString& w) { return keys_[row].contains(w); });
}

void TruthModel::filter() {
  beginResetModel();
  lines_.clear();
  System heading = System::kCount;
  for (std::size_t k = 0; k < written_.size(); ++k) {
    if (!isWanted(k)) continue;
    const System system = truths_.rows()[k].system;
    if (system != heading) lines_.push_back({system, -1});
    heading = system;
    lines_.push_back({system, static_cast<int>(k)});
  }
  endResetModel();
}

void TruthModel::setSearch(const QString& words) {
  if (words.toLower() == search_) return;
  search_ = words.toLower();
  filter();
}

void TruthModel::setSystem(std::optional<System> system) {
  if (system == system_) return;
  system_ = system;
  filter();
}

void TruthModel::setOnlyDiffering(bool only) {
  if (only == only_differing_) return;
  only_differing_ = only;
  filter();
}

}  // namespace cabwright::desk
