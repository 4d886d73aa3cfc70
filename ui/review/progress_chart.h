// SPDX-License-Identifier: GPL-3.0-or-later
// Attempts as points over their number: points of the sheet above, time below, with the learning
// curve through the times where there is one. Drawn by Qt Charts; nothing to be operated, the list
// beside it says the same in words.
#pragma once

#include <QWidget>

#include "after/sheet_look.h"
#include "review/progress.h"

QT_BEGIN_NAMESPACE
class QChart;
class QChartView;
class QLineSeries;
class QScatterSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace cabwright::review_room {

class ProgressChart : public QWidget {
  Q_OBJECT
 public:
  /// The look must outlive it.
  ProgressChart(const after::SheetLook& look, QWidget* parent);

  void setAttempts(const review::VersionAttempts& attempts);
  void restyle();
  /// What is drawn, for tests.
  [[nodiscard]] QList<QPointF> drawnPercents() const;
  [[nodiscard]] QList<QPointF> drawnMinutes() const;
  [[nodiscard]] QList<QPointF> drawnCurve() const;

 private:
  struct Plot {
    QChart* chart = nullptr;
    QChartView* view = nullptr;
    QValueAxis *attempts = nullptr, *scale = nullptr;
    QLineSeries *line = nullptr, *curve = nullptr;
    QScatterSeries *passed = nullptr, *missed = nullptr;
  };
  Plot makePlot(const QString& title, const QString& below);
  void style(const Plot& plot) const;

  const after::SheetLook& look_;
  Plot percents_, minutes_;
};

}  // namespace cabwright::review_room
