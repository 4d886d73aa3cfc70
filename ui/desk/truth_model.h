// SPDX-License-Identifier: GPL-3.0-or-later
// The truths as a table: only cells whose words have changed are told to be drawn anew.
#pragma once

#include <QAbstractTableModel>
#include <array>
#include <optional>
#include <vector>

#include "desk/truth_rows.h"

namespace cabwright::desk {

class TruthModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { kName, kTrue, kUnit, kCab1, kCab2, kSpot, kFinding, kColumns };

  explicit TruthModel(QObject* parent);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

  void clear();
  void update(const session::LiveRun& run);

  /// Only rows that hold every word; empty: all.
  void setSearch(const QString& words);
  /// Only those of a system; empty: all.
  void setSystem(std::optional<System> system);
  /// Only those whose gauges are not as they should be.
  void setOnlyDiffering(bool only);

  /// Null: a heading.
  [[nodiscard]] const TruthRow* rowAt(int row) const;
  /// How a gauge stands in this column; none: there is no gauge.
  [[nodiscard]] std::optional<Agreement> agreementAt(const QModelIndex& index) const;
  /// Rows whose gauges differ, or are broken.
  [[nodiscard]] int differing() const { return differing_; }
  [[nodiscard]] int suspect() const { return suspect_; }
  /// The first finding of all, to be said in one line; empty: none.
  [[nodiscard]] QString firstFinding() const;

 private:
  struct Written {  ///< as the rows were drawn
    std::array<QString, kColumns> words;
    Agreement agreement = Agreement::kAgrees;
    bool operator==(const Written&) const = default;
  };
  struct Line {
    System heading = System::kCount;
    int row = -1;  ///< -1: a heading
  };
  [[nodiscard]] Written write(const TruthRow& row) const;
  [[nodiscard]] bool isWanted(std::size_t row) const;
  void filter();
  void tellChanges(int line, const Written& before);
  TruthRows truths_;
  std::vector<Written> written_;
  std::vector<QString> keys_;
  std::vector<Line> lines_;
  QString search_;
  std::optional<System> system_;
  bool only_differing_ = false;
  int differing_ = 0, suspect_ = 0;
};

}  // namespace cabwright::desk
