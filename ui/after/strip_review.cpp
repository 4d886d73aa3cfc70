// SPDX-License-Identifier: GPL-3.0-or-later
// What the strip has in a review only: faults as hatched bars, signs of single moments, values at
// the cursor, and a cursor that stays where it is put.
#include <QHelpEvent>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "after/strip_chart.h"
#include "after/words.h"

namespace cabwright::after {

using drawing::Anchor;
using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr double kCapHalf = 0.36 * drawing::kText;
constexpr double kSignR = 9.5, kSignReach = 13, kValueHigh = 25, kValueGap = 12;

double valueWidth(const QString& value) {
  return drawing::textWidth(value, drawing::kText, true) + 14;
}

}  // namespace

void StripChart::paintFault(drawing::Pen& pen, const Segment& segment, double y) const {
  const double x0 = std::max(layout_.left, layout_.xOf(segment.from, span_));
  const double x1 = std::min(layout_.right, layout_.xOf(segment.to, span_));
  const QRectF bar(x0 + 1, y - kLaneBar / 2, std::max(4.0, x1 - x0 - 2), kLaneBar);
  pen.rect(bar, drawing::kNoLine, Tone::kFace, 3);
  pen.hatch(drawing::rectShape(bar, 3), Tone::kBad, 6, 45);
  pen.rect(bar, {drawing::kThin, Tone::kBad}, Tone::kNone, 3);
  const QString words = drawing::elideText(segment.words, bar.width() - 20, drawing::kText);
  if (words.size() < 5) return;
  const double wide = drawing::textWidth(words);
  pen.rect({bar.left() + 4, bar.top() + 2, wide + 10, kLaneBar - 4}, drawing::kNoLine, Tone::kFace);
  pen.text({bar.left() + 9, y + kCapHalf}, words, {.tone = Tone::kBad, .on = Tone::kFace});
}

// Of those that stand too close the gravest is drawn; the others are found by stepping.
void StripChart::paintSigns(drawing::Pen& pen, const Lane& lane, double y) const {
  const auto grave = [](const Sign& sign) {
    return sign.verdict == VerdictSign::kDefect ? 2 : sign.verdict == VerdictSign::kUnsure ? 1 : 0;
  };
  for (int rank = 0; rank <= 2; ++rank)
    for (const Sign& sign : lane.signs) {
      if (sign.tick < span_.from || sign.tick > span_.to || grave(sign) != rank) continue;
      const QPointF at(layout_.xOf(sign.tick, span_), y);
      if (sign.verdict != VerdictSign::kNone) {
        pen.circle(at, kSignR + 1.5, drawing::kNoLine, Tone::kPaper);
        drawing::paintVerdict(pen, at, sign.verdict, kSignR, Tone::kPaper);
        if (sign.line != 0 && sign.line == selected_line_)
          pen.circle(at, kSignR + 4, {drawing::kNorm, Tone::kHand});
        continue;
      }
      pen.polygon(
          {{at + QPointF(0, -8), at + QPointF(7, 0), at + QPointF(0, 8), at + QPointF(-7, 0)}},
          {drawing::kThin, sign.tone}, sign.tone);
    }
}

double StripChart::widestValue() const {
  double wide = 0;
  for (const Plot& plot : plots_)
    for (const Curve& curve : plot.curves)
      if (const auto value = valueAtCursor(curve.signal))
        wide = std::max(wide, valueWidth(QString::number(*value, 'f', plot.decimals)));
  return kValueGap + wide;
}

// Beside the cursor, on the side where there is room, clear of the one before, and not in the plot
// of something else.
void StripChart::paintValue(drawing::Pen& pen, QPointF at, const QString& value, const QRectF& plot,
                            double& free_y) const {
  const double wide = valueWidth(value);
  const double x =
      at.x() + kValueGap + wide > layout_.right ? at.x() - kValueGap - wide : at.x() + kValueGap;
  double y = at.y() - kValueHigh / 2;
  if (std::abs(y - free_y) < kValueHigh + 2) {
    const double above = free_y - kValueHigh - 2, below = free_y + kValueHigh + 2;
    const bool no_room_below = below > plot.bottom() - kValueHigh / 2;
    const bool no_room_above = above < plot.top() - kValueHigh;
    y = (y < free_y && !no_room_above) || no_room_below ? above : below;
  }
  free_y = y;
  const QRectF box(x, y, wide, kValueHigh);
  pen.rect(box, {drawing::kThin, Tone::kHand}, Tone::kFace, 3);
  pen.text({box.center().x(), box.center().y() + kCapHalf}, value,
           {.anchor = Anchor::kMiddle, .bold = true, .on = Tone::kFace});
}

double StripChart::yOfLane(std::size_t lane) const {
  return (layout_.lanes_top + static_cast<double>(lane) * kLanePitch) * look_.scale;
}

const Sign* StripChart::findSignAt(QPointF u) const {
  const Sign* best = nullptr;
  double y = layout_.lanes_top, least = kSignReach;
  for (const Lane& lane : lanes_) {
    for (const Sign& sign : lane.signs) {
      if (sign.tick < span_.from || sign.tick > span_.to) continue;
      const double far = std::hypot(layout_.xOf(sign.tick, span_) - u.x(), y - u.y());
      if (far > least) continue;
      least = far;
      best = &sign;
    }
    y += kLanePitch;
  }
  return best;
}

void StripChart::dragInReview(QPointF u, Qt::MouseButtons buttons) {
  if (!drag_from_ || buttons == Qt::NoButton) {
    const bool on_axis = u.x() >= layout_.left && u.x() <= layout_.right;
    QWidget::setCursor(findSignAt(u) != nullptr ? Qt::PointingHandCursor
                       : on_axis                ? Qt::IBeamCursor
                                                : Qt::ArrowCursor);
    return;
  }
  if (!dragged_ && std::abs(u.x() - drag_from_->x()) < 2) return;
  dragged_ = true;
  if (buttons.testFlag(Qt::LeftButton)) {
    moveCursor(layout_.tickAt(u.x(), span_));
    return;
  }
  const double per_u =
      static_cast<double>(drag_span_.length()) / std::max(1.0, layout_.right - layout_.left);
  const std::int64_t by = std::llround((drag_from_->x() - u.x()) * per_u);
  showSpan({drag_span_.from + by, drag_span_.to + by});
}

void StripChart::pressInReview(QPointF u, Qt::MouseButton button) {
  drag_from_ = u;
  drag_span_ = span_;
  dragged_ = false;
  if (button != Qt::LeftButton) return;
  setFocus(Qt::MouseFocusReason);
  if (const Sign* sign = findSignAt(u)) {
    const int line = sign->line;
    moveCursor(sign->tick);
    drag_from_.reset();
    if (line != 0) Q_EMIT flagChosen(line);
    return;
  }
  if (u.x() >= layout_.left - 6) moveCursor(layout_.tickAt(u.x(), span_));
}

QString StripChart::wordsUnder(QPointF position) const {
  if (!review_) return {};
  const QPointF u = toSheet(position);
  if (const Sign* sign = findSignAt(u))
    return timeText(sign->tick, true) + QLatin1String("  ") + sign->words;
  const auto lane = static_cast<std::int64_t>(
      std::floor((u.y() - layout_.lanes_top + kLanePitch / 2) / kLanePitch));
  if (u.x() < layout_.left || lane < 0 || lane >= std::ssize(lanes_)) return {};
  const Lane& at = lanes_[static_cast<std::size_t>(lane)];
  const std::int64_t tick = layout_.tickAt(u.x(), span_);
  if (at.kind != LaneKind::kActions) return wordsAt(at, tick);
  QStringList words;
  for (const session::TimedAction& timed : actions_)
    if (std::abs(layout_.xOf(timed.tick, span_) - u.x()) < 5 && words.size() < 8)
      words << timeText(timed.tick, true) + QLatin1String("  ") +
                   actText(unit::toText(timed.action));
  return words.join(QLatin1Char('\n'));
}

bool StripChart::event(QEvent* event) {
  if (!review_ || event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const QString words = wordsUnder(help->pos());
  if (words.isEmpty()) {
    QToolTip::hideText();
  } else {
    QToolTip::showText(help->globalPos(), words, this);
  }
  return true;
}

}  // namespace cabwright::after
