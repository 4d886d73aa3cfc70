// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/strip_plots.h"

#include <QChart>
#include <QGraphicsLayout>
#include <QLineSeries>
#include <QValueAxis>

#include "after/thin_out.h"

namespace cabwright::after {
namespace {

constexpr double kCurveWidth = 2.3;

}  // namespace

StripPlots::StripPlots(const SheetLook& look, QWidget* parent)
    : QGraphicsView(parent), look_(look) {
  setScene(&scene_);
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setInteractive(false);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setViewportUpdateMode(FullViewportUpdate);  // all curves change at once
  setOptimizationFlags(DontSavePainterState | DontAdjustForAntialiasing);
  scene_.setItemIndexMethod(QGraphicsScene::NoIndex);
  setAlignment(Qt::AlignLeft | Qt::AlignTop);
  setRenderHint(QPainter::Antialiasing);
  setBackgroundBrush(Qt::NoBrush);
  setStyleSheet(QStringLiteral("background: transparent"));
  viewport()->setAutoFillBackground(false);
}

StripPlots::~StripPlots() = default;

StripPlots::Chart StripPlots::makeChart(const Plot& plot) {
  Chart made;
  made.chart = new QChart;
  made.chart->setMargins({});
  made.chart->layout()->setContentsMargins(0, 0, 0, 0);
  made.chart->setBackgroundVisible(false);
  made.chart->setPlotAreaBackgroundVisible(false);
  made.chart->legend()->hide();
  made.time = new QValueAxis(made.chart);
  made.scale = new QValueAxis(made.chart);
  made.scale->setRange(plot.bottom(), plot.top());
  made.chart->addAxis(made.time, Qt::AlignBottom);
  made.chart->addAxis(made.scale, Qt::AlignLeft);
  made.time->setVisible(false);
  made.scale->setVisible(false);
  for (std::size_t k = plot.curves.size(); k-- > 0;) {  // the first one lies on top
    auto* series = new QLineSeries(made.chart);
    made.chart->addSeries(series);
    series->attachAxis(made.time);
    series->attachAxis(made.scale);
    made.lines.push_back({series, plot.curves[k]});
  }
  scene_.addItem(made.chart);
  return made;
}

void StripPlots::setPlots(const session::SignalHistory& history, const std::vector<Plot>& plots) {
  setPlots(
      [&history](unit::Signal signal, std::int64_t from, std::int64_t to) {
        return thinOut(history.ticks(), history.series(signal), from, to);
      },
      plots);
}

void StripPlots::setPlots(PointSource source, const std::vector<Plot>& plots) {
  source_ = std::move(source);
  charts_.clear();
  scene_.clear();
  length_ = 0;
  for (const Plot& plot : plots) charts_.push_back(makeChart(plot));
  restyle();
}

void StripPlots::setScale(std::size_t plot, const Plot& now) {
  if (plot < charts_.size()) charts_[plot].scale->setRange(now.bottom(), now.top());
}

void StripPlots::placePlots(const std::vector<QRectF>& boxes) {
  scene_.setSceneRect(QRectF(QPointF(), size()));
  for (std::size_t k = 0; k < charts_.size(); ++k) {
    charts_[k].chart->setVisible(k < boxes.size());
    if (k >= boxes.size()) continue;
    charts_[k].chart->setGeometry(boxes[k]);
    charts_[k].chart->setPlotArea({{0, 0}, boxes[k].size()});
  }
}

// x counts from the left edge: while the same length of time is shown, the axis stays as it is, and
// each curve is worked out once and not twice.
void StripPlots::showTicks(std::int64_t from, std::int64_t to) {
  if (!source_) return;
  origin_s_ = static_cast<double>(from) / 100.0;
  const bool other = to - from != length_;
  length_ = to - from;
  for (const Chart& chart : charts_) {
    if (other) chart.time->setRange(0, static_cast<double>(length_) / 100.0);
    for (const Line& line : chart.lines) {
      QList<QPointF> points = source_(line.curve.signal, from, to);
      for (QPointF& point : points) point.rx() -= origin_s_;
      line.series->replace(points);
    }
  }
}

void StripPlots::restyle() {
  for (const Chart& chart : charts_) {
    for (const Line& line : chart.lines) {
      const double width = std::max(1.0, kCurveWidth * look_.scale);
      QPen pen(drawing::colorOf(look_.theme, line.curve.tone), width, Qt::SolidLine, Qt::FlatCap,
               Qt::RoundJoin);
      if (!line.curve.dash.empty()) {
        QList<qreal> dash;  // in widths of the pen
        for (const double length : line.curve.dash) dash << length * look_.scale / width;
        pen.setDashPattern(dash);
      }
      line.series->setPen(pen);
    }
  }
}

QList<QPointF> StripPlots::drawnPoints(unit::Signal signal) const {
  for (const Chart& chart : charts_)
    for (const Line& line : chart.lines)
      if (line.curve.signal == signal) {
        QList<QPointF> points = line.series->points();
        for (QPointF& point : points) point.rx() += origin_s_;
        return points;
      }
  return {};
}

}  // namespace cabwright::after
