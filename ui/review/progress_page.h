// SPDX-License-Identifier: GPL-3.0-or-later
// How one trainee gets on with one exercise: a chart of the attempts at one version of it, the same
// as a list, and what the learning curve says.
#pragma once

#include <QLabel>
#include <QWidget>

#include "after/rows_table.h"
#include "review_room/progress_chart.h"
#include "review_room/shelf_filter_bar.h"
#include "review_room/shelf_model.h"

namespace cabwright::review_room {

class ProgressPage : public QWidget {
  Q_OBJECT
 public:
  /// Look and model must outlive it. Of the model it takes what is shown there: days, modes and
  /// words asked for hold here as well.
  ProgressPage(const after::SheetLook& look, const ShelfModel& model, QWidget* parent);
  void restyle();
  /// Reads the model again; does nothing while it is not seen.
  void refresh();
  [[nodiscard]] ProgressChart* chart() const { return chart_; }
  [[nodiscard]] after::RowsTable* attempts() const { return attempts_; }
  [[nodiscard]] QComboBox* versions() const { return version_; }
  /// What is said above and below the chart.
  [[nodiscard]] QString saidText() const;

 Q_SIGNALS:
  void openAsked(const QString& file);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void fillVersions();
  void showVersion();
  void showNothing(const QString& why);
  const after::SheetLook& look_;
  const ShelfModel& model_;
  std::vector<review::VersionAttempts> found_;
  QLabel *heading_, *why_not_, *curve_words_;
  drawing::ChoiceBox* version_;
  ProgressChart* chart_;
  after::RowsTable* attempts_;
  QWidget* body_;
};

/// "each doubling of attempts leaves 80 % of the time": what the curve says, or why there is none.
[[nodiscard]] QString curveText(const review::VersionAttempts& attempts);

}  // namespace cabwright::review_room
