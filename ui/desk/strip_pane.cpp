// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/strip_pane.h"

#include <QAccessible>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

#include "after/over_layer.h"
#include "after/thin_out.h"
#include "after/words.h"
#include "desk/live_page.h"
#include "desk/strip_groups.h"

namespace cabwright::desk {
namespace {

constexpr double kLeft = 190, kLeastLegend = 300, kMostLegend = 540, kTop = 6, kFoot = 76;
constexpr double kPlotGap = 12, kLead = 24, kLeastPlot = 46;
constexpr int kMostFaultRows = 3;

// The first curve of a plot is the solid one: it lies below those with gaps, so that both are seen
// where they run together.
std::vector<after::Plot> reversed(std::vector<after::Plot> plots) {
  for (after::Plot& plot : plots) std::ranges::reverse(plot.curves);
  return plots;
}

}  // namespace

StripPane::StripPane(const after::SheetLook& look, const SignalTape& tape, const RunEvents& events,
                     QWidget* parent)
    : QWidget(parent),
      look_(look),
      tape_(tape),
      events_(events),
      curves_(new after::StripPlots(look, this)),
      over_(new after::OverLayer(look, this, [this](drawing::Pen& pen) { paintOver(pen); })) {
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAccessibleName(tr("Live strips"));
}

StripPane::~StripPane() = default;

void StripPane::setSignals(const std::vector<unit::Signal>& signals) {
  plots_ = groupSignals(signals);
  for (after::Plot& plot : plots_) fitScale(plot, tape_);
  curves_->setPlots([this](unit::Signal signal, std::int64_t from,
                           std::int64_t to) { return pointsOf(signal, from, to); },
                    reversed(plots_));
  arrange();
  announce();
}

// As few points as show the same: most curves are straight most of the time.
QList<QPointF> StripPane::pointsOf(unit::Signal signal, std::int64_t from, std::int64_t to) const {
  const QList<QPointF> points = tape_.points(signal, from, to);
  for (std::size_t k = 0; k < plots_.size() && k < layout_.plots.size(); ++k) {
    const after::Plot& plot = plots_[k];
    if (std::ranges::find(plot.curves, signal, &after::Curve::signal) == plot.curves.end())
      continue;
    const double high_px = layout_.plots[k].height() * look_.scale;
    return after::withoutStraight(points, (plot.top() - plot.bottom()) / std::max(1.0, high_px));
  }
  return points;
}

void StripPane::setWindow(std::int64_t ticks) {
  if (ticks == window_) return;
  window_ = ticks;
  arrange();
}

void StripPane::setHeld(bool held) {
  if (held == isHeld()) return;
  if (held) {
    held_to_ = tape_.lastTick();
  } else {
    held_to_.reset();
  }
  arrange();
  Q_EMIT heldChanged(held);
}

void StripPane::forget() {
  cursor_.reset();
  held_to_.reset();
  for (std::size_t k = 0; k < plots_.size(); ++k) {
    std::vector<unit::Signal> signals;
    for (const after::Curve& curve : plots_[k].curves) signals.push_back(curve.signal);
    plots_[k] = groupSignals(signals).front();
    curves_->setScale(k, plots_[k]);
  }
  arrange();
  Q_EMIT heldChanged(false);
}

void StripPane::restyle() {
  curves_->restyle();
  arrange();
}

after::Span StripPane::span() const {
  const std::int64_t to = held_to_.value_or(tape_.lastTick());
  return {to - window_, to};
}

void StripPane::shiftTo(std::int64_t to) {
  const std::int64_t oldest = std::min(tape_.firstTick() + window_, tape_.lastTick());
  const std::int64_t wanted = std::clamp(to, oldest, tape_.lastTick());
  if (!isHeld()) setHeld(true);
  if (wanted == *held_to_) return;
  held_to_ = wanted;
  arrange();
}

void StripPane::advance() {
  if (isHeld()) {
    over_->update();  // how long ago that was
    return;
  }
  for (std::size_t k = 0; k < plots_.size(); ++k)
    if (fitScale(plots_[k], tape_)) {
      curves_->setScale(k, plots_[k]);
      ground_ = {};
    }
  if (cursor_ && *cursor_ < span().from) setCursor(std::nullopt);
  if (faultRows() != rows_) {
    arrange();
  } else {
    draw();
  }
}

void StripPane::draw() {
  const after::Span shown = span();
  curves_->showTicks(shown.from, shown.to);
  update();
}

void StripPane::resizeEvent(QResizeEvent*) { arrange(); }

double StripPane::laneY(int lane) const {
  const int above = lane + (lane > 1 ? rows_ - 1 : 0);
  return kTop + after::kLanePitch * (above + 0.5);
}

void StripPane::arrange() {
  ground_ = {};
  rows_ = faultRows();
  const double width = this->width() / look_.scale, height = this->height() / look_.scale;
  layout_ = {};
  layout_.left = kLeft;
  const double legend = std::clamp(width * 0.34, kLeastLegend, kMostLegend);
  layout_.right = std::max(kLeft + 100, width - legend);
  layout_.lanes_top = laneY(0);
  layout_.actions_y = laneY(3);
  layout_.axis_y = height - kFoot;
  arrangeRows();
  over_->setGeometry(rect());
  std::vector<QRectF> boxes;
  if (!layout_.plots.empty()) {
    const double k = look_.scale;
    const QRectF all(layout_.plots.front().topLeft() * k, layout_.plots.back().bottomRight() * k);
    curves_->setGeometry(all.toAlignedRect());
    for (const QRectF& box : layout_.plots)
      boxes.emplace_back(box.topLeft() * k - QPointF(curves_->pos()), box.size() * k);
  }
  curves_->setVisible(!boxes.empty());
  curves_->placePlots(boxes);
  over_->raise();
  draw();
}

// Each plot is as high as its legend wants; what is left over is shared out evenly.
void StripPane::arrangeRows() {
  double top = laneY(3) + after::kLanePitch / 2 + 8;
  double wanted = 0;
  const auto least = [](const after::Plot& plot) {
    return std::max(kLeastPlot, kLead * static_cast<double>(plot.curves.size()) + 4);
  };
  for (const after::Plot& plot : plots_) wanted += least(plot);
  const auto n = static_cast<double>(std::max<std::size_t>(1, plots_.size()));
  const double room = layout_.axis_y - top - (n - 1) * kPlotGap;
  const double spare = (room - wanted) / n;
  for (const after::Plot& plot : plots_) {
    const double high = spare >= 0 ? least(plot) + spare : room * least(plot) / wanted;
    layout_.plots.emplace_back(layout_.left, top, layout_.right - layout_.left,
                               std::max(16.0, high));
    top += high + kPlotGap;
  }
}

double StripPane::xOf(std::int64_t tick) const { return xIn(tick) * look_.scale; }

std::vector<StripPane::FaultBar> StripPane::faultBars() const {
  const after::Span shown = span();
  std::vector<FaultBar> bars;
  std::array<std::int64_t, kMostFaultRows> free_from;
  free_from.fill(-1);
  for (const FaultStay& stay : events_.faults()) {
    const std::int64_t to = stay.to.value_or(tape_.lastTick());
    if (to < shown.from || stay.from > shown.to) continue;
    const auto row =
        std::ranges::find_if(free_from, [&](std::int64_t t) { return t <= stay.from; });
    const auto which = row == free_from.end() ? kMostFaultRows - 1 : row - free_from.begin();
    free_from[static_cast<std::size_t>(which)] = stay.to.value_or(INT64_MAX);
    bars.push_back({&stay, static_cast<int>(which)});
  }
  return bars;
}

int StripPane::faultRows() const {
  int rows = 1;
  for (const FaultBar& bar : faultBars()) rows = std::max(rows, bar.row + 1);
  return rows;
}

std::vector<const RunEvent*> StripPane::eventsShown() const {
  const after::Span shown = span();
  std::vector<const RunEvent*> found;
  const auto& events = events_.events();
  for (auto it = std::ranges::lower_bound(events, shown.from, {}, &RunEvent::tick);
       it != events.end() && it->tick <= shown.to; ++it)
    found.push_back(&*it);
  return found;
}

void StripPane::setCursor(std::optional<std::int64_t> tick) {
  if (tick) *tick = std::clamp(*tick, std::max<std::int64_t>(0, span().from), span().to);
  if (tick == cursor_) return;
  cursor_ = tick;
  // The figures beside the curves are those of the cursor; the curves themselves stay.
  const int legend = toPixels(layout_.right + 2, look_);
  update(legend, 0, width() - legend, height());
  over_->update();
  announce();
  Q_EMIT cursorChanged();
}

std::optional<double> StripPane::shownValue(unit::Signal signal) const {
  const auto value = tape_.findValue(signal, cursor_.value_or(span().to));
  if (!value) return std::nullopt;
  return static_cast<double>(*value);
}

QString StripPane::momentText() const {
  const std::int64_t tick = cursor_.value_or(span().to);
  QStringList parts{tr("At %1").arg(after::timeText(tick, true))};
  for (const after::Plot& plot : plots_)
    for (const after::Curve& curve : plot.curves)
      if (const auto value = shownValue(curve.signal))
        parts << tr("%1: %2").arg(curve.name, after::valueText(curve.signal, *value));
  return parts.join(QLatin1String(", "));
}

// Ten times a second would be too much for an ear: only what the reader moved is told.
void StripPane::announce() {
  setAccessibleDescription(momentText());
  if (!QAccessible::isActive() || !hasFocus()) return;
  QAccessibleEvent event(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&event);
}

}  // namespace cabwright::desk
