// SPDX-License-Identifier: GPL-3.0-or-later
// The curves of the strip, drawn by Qt Charts: one chart for each plot, one axis of time for all.
#pragma once

#include <QGraphicsView>
#include <functional>
#include <vector>

#include "after/sheet_look.h"
#include "after/strip_model.h"

QT_BEGIN_NAMESPACE
class QChart;
class QLineSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace cabwright::after {

/// What is to be drawn of a signal between two ticks: seconds and values, kMostPoints of them at
/// most, and one beyond each end.
using PointSource =
    std::function<QList<QPointF>(unit::Signal signal, std::int64_t from, std::int64_t to)>;

class StripPlots : public QGraphicsView {
  Q_OBJECT
 public:
  StripPlots(const SheetLook& look, QWidget* parent);
  ~StripPlots() override;

  /// The history must outlive this or be replaced first.
  void setPlots(const session::SignalHistory& history, const std::vector<Plot>& plots);
  /// The same of values kept elsewhere: for a run that goes on.
  void setPlots(PointSource source, const std::vector<Plot>& plots);
  /// The ends of a plot's scale are others.
  void setScale(std::size_t plot, const Plot& now);
  /// Where each plot stands, pixels of this widget; those without a place are not seen.
  void placePlots(const std::vector<QRectF>& boxes);
  /// From and to which tick; the points are chosen anew.
  void showTicks(std::int64_t from, std::int64_t to);
  void restyle();

  /// What is drawn of a signal now: seconds and values. Empty: it is not on the strip.
  [[nodiscard]] QList<QPointF> drawnPoints(unit::Signal signal) const;

 private:
  struct Line {
    QLineSeries* series = nullptr;
    Curve curve;
  };
  struct Chart {
    QChart* chart = nullptr;
    QValueAxis* time = nullptr;
    QValueAxis* scale = nullptr;
    std::vector<Line> lines;
  };
  Chart makeChart(const Plot& plot);

  const SheetLook& look_;
  PointSource source_;
  double origin_s_ = 0;  ///< what x counts from
  std::int64_t length_ = 0;
  QGraphicsScene scene_;
  std::vector<Chart> charts_;
};

}  // namespace cabwright::after
