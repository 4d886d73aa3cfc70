// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/strip_chart.h"

#include <QAccessible>
#include <QPainter>
#include <algorithm>

#include "after/over_layer.h"
#include "after/words.h"

namespace cabwright::after {

StripChart::StripChart(const SheetLook& look, QWidget* parent)
    : QWidget(parent),
      look_(look),
      plots_view_(new StripPlots(look, this)),
      over_(new OverLayer(look, this, [this](drawing::Pen& pen) { paintOver(pen); })) {
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Strip chart of the run"));
}

StripChart::~StripChart() = default;

void StripChart::setRun(const FinishedRun& run) {
  review_ = false;
  const int cab = findLeadingCab(*run.history);
  lanes_ = makeLanes(*run.history, cab);
  flags_ = makeFlags(run);
  take(run, cab);
  cursor_ = flags_.empty() ? last_tick_ : flags_.front().tick;
  span_ = {0, last_tick_};
  arrange();
  announce();
}

void StripChart::take(const FinishedRun& run, int cab) {
  history_ = run.history;
  actions_ = run.actions;
  plots_ = makePlots(*history_, cab);
  last_tick_ = std::max<std::int64_t>(1, run.sheet.head.last_tick);
  plots_view_->setPlots(*history_, plots_);
}

void StripChart::setReview(const FinishedRun& run, std::vector<Lane> lanes) {
  review_ = true;
  lanes_ = std::move(lanes);
  flags_.clear();
  take(run, findLeadingCab(*run.history));
  cursor_ = 0;
  span_ = {0, last_tick_};
  arrange();
  announce();
}

void StripChart::setReviewLanes(std::vector<Lane> lanes) {
  lanes_ = std::move(lanes);
  arrange();
  announce();
}

void StripChart::restyle() {
  plots_view_->restyle();
  arrange();
}

void StripChart::resizeEvent(QResizeEvent*) { arrange(); }

// How many rows the flags need depends on the stretch that is shown; the plots get the rest.
void StripChart::arrange() {
  const QSizeF size(width() / look_.scale, height() / look_.scale);
  layout_ = layOutStrip(size, lanes_.size(), plots_.size(), review_ ? 0 : kMostFlagRows);
  placed_ = placeFlags(flags_, layout_, span_);
  int rows = review_ ? 0 : 1;
  for (const PlacedFlag& flag : placeFlags(flags_, layout_, {0, last_tick_}))
    rows = std::max(rows, flag.row + 1);
  layout_ = layOutStrip(size, lanes_.size(), plots_.size(), rows);
  over_->setGeometry(rect());
  std::vector<QRectF> boxes;
  plots_view_->setVisible(!layout_.plots.empty());
  if (!layout_.plots.empty()) {
    const double k = look_.scale;
    const QRectF all(layout_.plots.front().topLeft() * k, layout_.plots.back().bottomRight() * k);
    plots_view_->setGeometry(all.toAlignedRect());
    for (const QRectF& box : layout_.plots)
      boxes.emplace_back(box.topLeft() * k - QPointF(plots_view_->pos()), box.size() * k);
  }
  plots_view_->placePlots(boxes);
  plots_view_->showTicks(span_.from, span_.to);
  over_->raise();
  update();
}

QPointF StripChart::toSheet(QPointF position) const { return position / look_.scale; }

double StripChart::xOf(std::int64_t tick) const { return layout_.xOf(tick, span_) * look_.scale; }

void StripChart::showSpan(Span span) {
  const Span clamped = clampSpan(span, last_tick_);
  if (clamped == span_) return;
  span_ = clamped;
  arrange();
}

void StripChart::moveCursor(std::int64_t tick) {
  const std::int64_t wanted = std::clamp<std::int64_t>(tick, 0, last_tick_);
  if (wanted == cursor_) return;
  updateCursor();
  cursor_ = wanted;
  updateCursor();
  announce();
  Q_EMIT cursorMoved(cursor_);
}

// Not all of it: the curves below would be drawn anew with every step of the mouse.
void StripChart::updateCursor() {
  const double k = look_.scale, x = layout_.xOf(cursor_, span_), high = height() / k;
  const auto pixels = [k](const QRectF& u) {
    return QRectF(u.topLeft() * k, u.size() * k).toAlignedRect().adjusted(-1, -1, 1, 1);
  };
  const double reach = 8 + (review_ ? widestValue() : 0);
  over_->update(pixels({x - reach, 0, 2 * reach, high}));
  over_->update(pixels({0, 0, layout_.left - 8, high}));
  if (layout_.axis_above)
    over_->update(pixels({0, 0, width() / k, layout_.axis_y + 2}));
  else
    over_->update(pixels({0, layout_.axis_y, width() / k, high - layout_.axis_y}));
}

void StripChart::setCursor(std::int64_t tick) {
  moveCursor(tick);
  if (cursor_ >= span_.from && cursor_ <= span_.to) return;
  showSpan({cursor_ - span_.length() / 2, cursor_ - span_.length() / 2 + span_.length()});
}

void StripChart::setSelectedLine(int line) {
  selected_line_ = line;
  over_->update();
}

std::optional<double> StripChart::valueAtCursor(unit::Signal signal) const {
  const auto value = history_ == nullptr ? std::nullopt : history_->findValue(signal, cursor_);
  if (!value) return std::nullopt;
  return static_cast<double>(*value);
}

void StripChart::announce() {
  setAccessibleDescription(summary());
  if (!QAccessible::isActive()) return;
  QAccessibleEvent event(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&event);
}

QString StripChart::momentText() const {
  QStringList parts{tr("At %1").arg(timeText(cursor_, true))};
  for (const Lane& lane : lanes_) {
    if (lane.segments.empty()) continue;
    const QString words = wordsAt(lane, cursor_);
    parts << tr("%1: %2").arg(lane.name, words.isEmpty() ? tr("free") : words);
  }
  for (const Plot& plot : plots_) {
    for (const Curve& curve : plot.curves) {
      const auto value = valueAtCursor(curve.signal);
      if (value)
        parts << tr("%1: %2").arg(curve.name.isEmpty() ? plot.name : curve.name,
                                  valueText(curve.signal, *value));
    }
  }
  return parts.join(QLatin1String(", "));
}

QString StripChart::summary() const {
  QStringList parts{tr("From the start to %1.").arg(timeText(last_tick_))};
  for (const Flag& flag : flags_)
    if (!flag.again)
      parts << tr("Line %1, %2, at %3: %4.")
                   .arg(QString::number(flag.line), className(flag.rule_class), timeText(flag.tick),
                        flag.title);
  if (flags_.empty() && !review_) parts << tr("No line was broken.");
  parts << momentText() + QLatin1Char('.');
  return parts.join(QLatin1Char(' '));
}

}  // namespace cabwright::after
