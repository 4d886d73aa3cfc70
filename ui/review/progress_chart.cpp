// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/progress_chart.h"

#include <QChart>
#include <QChartView>
#include <QGraphicsLayout>
#include <QLineSeries>
#include <QScatterSeries>
#include <QVBoxLayout>
#include <QValueAxis>
#include <algorithm>
#include <array>
#include <cmath>

#include "drawing/face.h"
#include "review_room/shelf_look.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

constexpr double kMarker = 15, kCurveWidth = 2.3;

// Round upper ends, each with as many marks as divide it into round parts.
struct RoundTop {
  double top;
  int marks;
};
constexpr std::array<RoundTop, 12> kRoundTops{{{1, 2},
                                               {2, 3},
                                               {5, 6},
                                               {10, 6},
                                               {20, 5},
                                               {30, 4},
                                               {40, 5},
                                               {60, 4},
                                               {90, 4},
                                               {120, 5},
                                               {240, 5},
                                               {480, 5}}};

RoundTop roundTop(double most) {
  for (const RoundTop& top : kRoundTops)
    if (most <= top.top) return top;
  return {std::ceil(most / 600) * 600, 5};
}

}  // namespace

ProgressChart::ProgressChart(const after::SheetLook& look, QWidget* parent)
    : QWidget(parent), look_(look) {
  setAccessibleName(tr("Attempts as a chart"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  percents_ = makePlot(tr("Points of 100"), QString());
  minutes_ = makePlot(tr("Minutes"), tr("Attempt"));
  column->addWidget(percents_.view, 1);
  column->addWidget(minutes_.view, 1);
  percents_.scale->setRange(0, 105);  // room for the mark of a full one
  percents_.scale->setTickType(QValueAxis::TicksDynamic);
  percents_.scale->setTickInterval(20);
  restyle();
}

ProgressChart::Plot ProgressChart::makePlot(const QString& title, const QString& below) {
  Plot plot;
  plot.chart = new QChart;
  plot.chart->setMargins({});
  plot.chart->layout()->setContentsMargins(0, 0, 0, 0);
  plot.chart->setBackgroundVisible(false);
  plot.chart->setPlotAreaBackgroundVisible(true);
  plot.chart->legend()->hide();
  plot.view = new QChartView(plot.chart, this);
  plot.view->setRenderHint(QPainter::Antialiasing);
  plot.view->setFrameShape(QFrame::NoFrame);
  plot.view->setFocusPolicy(Qt::NoFocus);
  plot.view->setAttribute(Qt::WA_TransparentForMouseEvents);
  plot.view->setBackgroundBrush(Qt::NoBrush);
  plot.attempts = new QValueAxis(plot.chart);
  plot.scale = new QValueAxis(plot.chart);
  plot.attempts->setTitleText(below);
  plot.attempts->setLabelFormat(QStringLiteral("%.0f"));
  plot.scale->setTitleText(title);
  // As wide in both charts, so that they begin at one place.
  plot.scale->setLabelFormat(QStringLiteral("%3.0f"));
  plot.chart->addAxis(plot.attempts, Qt::AlignBottom);
  plot.chart->addAxis(plot.scale, Qt::AlignLeft);
  plot.curve = new QLineSeries(plot.chart);
  plot.line = new QLineSeries(plot.chart);
  plot.missed = new QScatterSeries(plot.chart);
  plot.passed = new QScatterSeries(plot.chart);
  plot.missed->setMarkerShape(QScatterSeries::MarkerShapeRectangle);
  for (QXYSeries* series :
       std::initializer_list<QXYSeries*>{plot.curve, plot.line, plot.missed, plot.passed}) {
    plot.chart->addSeries(series);
    series->attachAxis(plot.attempts);
    series->attachAxis(plot.scale);
  }
  return plot;
}

void ProgressChart::setAttempts(const review::VersionAttempts& attempts) {
  QList<QPointF> percents[2], minutes[2], percent_line, minute_line;  // not passed, passed
  double most = 0;
  for (const review::Attempt& attempt : attempts.attempts) {
    if (!attempt.ended) continue;
    const QPointF percent(attempt.number, attempt.percent);
    const QPointF minute(attempt.number, attempt.seconds / 60);
    percents[attempt.passed ? 1 : 0] << percent;
    minutes[attempt.passed ? 1 : 0] << minute;
    percent_line << percent;
    minute_line << minute;
    most = std::max(most, minute.y());
  }
  percents_.line->replace(percent_line);
  minutes_.line->replace(minute_line);
  percents_.missed->replace(percents[0]);
  percents_.passed->replace(percents[1]);
  minutes_.missed->replace(minutes[0]);
  minutes_.passed->replace(minutes[1]);
  const auto count = static_cast<int>(attempts.attempts.size());
  QList<QPointF> curve;
  if (attempts.curve)
    for (int k = 0; k <= 60; ++k) {
      const double number = 1 + (count - 1) * k / 60.0;
      curve << QPointF(number, review::calcSeconds(*attempts.curve, number) / 60);
      most = std::max(most, curve.back().y());
    }
  minutes_.curve->replace(curve);
  const RoundTop top = roundTop(most);
  minutes_.scale->setRange(0, top.top);
  minutes_.scale->setTickCount(top.marks);
  for (const Plot& plot : {percents_, minutes_}) {
    plot.attempts->setRange(0.5, std::max(count, 4) + 0.5);
    plot.attempts->setTickType(QValueAxis::TicksDynamic);
    plot.attempts->setTickAnchor(1);
    plot.attempts->setTickInterval(std::max(1.0, std::ceil(count / 12.0)));
  }
}

void ProgressChart::style(const Plot& plot) const {
  const auto color = [this](Tone tone) { return drawing::colorOf(look_.theme, tone); };
  QFont font(drawing::faceName());
  font.setPixelSize(textPx(look_));
  plot.chart->setPlotAreaBackgroundBrush(color(Tone::kFace));
  plot.chart->setPlotAreaBackgroundPen(QPen(color(Tone::kInk), 1));
  for (QValueAxis* axis : {plot.attempts, plot.scale}) {
    axis->setLabelsFont(font);
    axis->setTitleFont(font);
    axis->setLabelsColor(color(Tone::kInk2));
    axis->setTitleBrush(color(Tone::kInk2));
    axis->setLinePen(QPen(color(Tone::kInk), 1));
    axis->setGridLinePen(QPen(color(Tone::kHair), 1));
  }
  plot.attempts->setGridLineVisible(false);
  const double k = look_.scale;
  plot.line->setPen(QPen(color(Tone::kInk2), std::max(1.0, drawing::kThin * k)));
  QPen curve(color(Tone::kCurve1), std::max(1.0, kCurveWidth * k));
  curve.setDashPattern({4, 3});
  plot.curve->setPen(curve);
  for (QScatterSeries* series : {plot.passed, plot.missed}) {
    const Tone tone = series == plot.passed ? Tone::kGood : Tone::kBad;
    series->setMarkerSize(kMarker * k);
    series->setPen(QPen(color(tone), std::max(1.0, drawing::kNorm * k)));
    series->setBrush(color(Tone::kFace));
  }
}

void ProgressChart::restyle() {
  style(percents_);
  style(minutes_);
}

namespace {

QList<QPointF> together(const QScatterSeries* a, const QScatterSeries* b) {
  QList<QPointF> points = a->points() + b->points();
  std::ranges::sort(points, {}, &QPointF::x);
  return points;
}

}  // namespace

QList<QPointF> ProgressChart::drawnPercents() const {
  return together(percents_.passed, percents_.missed);
}

QList<QPointF> ProgressChart::drawnMinutes() const {
  return together(minutes_.passed, minutes_.missed);
}

QList<QPointF> ProgressChart::drawnCurve() const { return minutes_.curve->points(); }

}  // namespace cabwright::review_room
