// SPDX-License-Identifier: GPL-3.0-or-later
// Mouse and keys on the strip.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "after/flag_sign.h"
#include "after/strip_chart.h"

namespace cabwright::after {
namespace {

constexpr double kNearer = 0.8, kDragStarts = 5;

}  // namespace

std::optional<std::size_t> StripChart::findFlagAt(QPointF u) const {
  for (const PlacedFlag& placed : placed_) {
    const Flag& flag = flags_[placed.flag];
    const double width = flagWidth(flag.again ? QString() : QString::number(flag.line));
    const double left = placed.mirrored ? placed.x - width : placed.x;
    const QRectF box(left, layout_.flags_top + placed.row * kFlagPitch, width, kFlagHeight);
    if (box.adjusted(-3, -4, 3, 4).contains(u)) return placed.flag;
  }
  return std::nullopt;
}

void StripChart::mouseMoveEvent(QMouseEvent* event) {
  const QPointF u = toSheet(event->position());
  if (review_) {
    dragInReview(u, event->buttons());
    return;
  }
  if (drag_from_ && (dragged_ || std::abs(u.x() - drag_from_->x()) > kDragStarts)) {
    dragged_ = true;
    const double per_u =
        static_cast<double>(drag_span_.length()) / std::max(1.0, layout_.right - layout_.left);
    const std::int64_t by = std::llround((drag_from_->x() - u.x()) * per_u);
    showSpan({drag_span_.from + by, drag_span_.to + by});
    setCursor(layout_.tickAt(u.x(), span_));
    return;
  }
  const bool on_flag = findFlagAt(u).has_value();
  QWidget::setCursor(on_flag ? Qt::PointingHandCursor : Qt::ArrowCursor);
  if (on_flag) {
    moveCursor(flags_[*findFlagAt(u)].tick);
  } else if (u.x() >= layout_.left && u.x() <= layout_.right) {
    moveCursor(layout_.tickAt(u.x(), span_));
  }
}

void StripChart::mousePressEvent(QMouseEvent* event) {
  if (review_) {
    pressInReview(toSheet(event->position()), event->button());
    return;
  }
  if (event->button() != Qt::LeftButton) return;
  drag_from_ = toSheet(event->position());
  drag_span_ = span_;
  dragged_ = false;
}

void StripChart::mouseReleaseEvent(QMouseEvent* event) {
  if (review_) {
    drag_from_.reset();
    return;
  }
  if (event->button() != Qt::LeftButton || !drag_from_) return;
  drag_from_.reset();
  const auto flag = findFlagAt(toSheet(event->position()));
  if (!dragged_ && flag) Q_EMIT flagChosen(flags_[*flag].line);
}

void StripChart::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / 120.0;
  if (notches != 0) {
    const std::int64_t around = layout_.tickAt(toSheet(event->position()).x(), span_);
    showSpan(zoomedSpan(span_, std::pow(kNearer, notches), around, last_tick_));
  }
  event->accept();
}

bool StripChart::goToFlag(int direction) {
  const auto go = [this](const Flag& flag) {
    setCursor(flag.tick);
    return true;
  };
  if (direction > 0) {
    for (const Flag& flag : flags_)
      if (flag.tick > cursor_) return go(flag);
  } else {
    for (auto it = flags_.rbegin(); it != flags_.rend(); ++it)
      if (it->tick < cursor_) return go(*it);
  }
  return true;
}

bool StripChart::moveByKey(int key, bool far) {
  // A step that is seen, in whole tenths of a second.
  const std::int64_t step = std::max<std::int64_t>(10, span_.length() / 4000 * 10) * (far ? 10 : 1);
  switch (key) {
    case Qt::Key_Left:
      setCursor(cursor_ - step);
      return true;
    case Qt::Key_Right:
      setCursor(cursor_ + step);
      return true;
    case Qt::Key_Home:
      setCursor(0);
      return true;
    case Qt::Key_End:
      setCursor(last_tick_);
      return true;
    case Qt::Key_PageUp:
      return goToFlag(-1);
    case Qt::Key_PageDown:
      return goToFlag(1);
    default:
      return false;
  }
}

bool StripChart::zoomByKey(int key) {
  switch (key) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      showSpan(zoomedSpan(span_, kNearer, cursor_, last_tick_));
      return true;
    case Qt::Key_Minus:
      showSpan(zoomedSpan(span_, 1 / kNearer, cursor_, last_tick_));
      return true;
    case Qt::Key_0:
      showAll();
      return true;
    default:
      return false;
  }
}

void StripChart::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (review_) {  // how far a step goes is up to the review
    if (!zoomByKey(key)) event->ignore();
    return;
  }
  if (moveByKey(key, event->modifiers().testFlag(Qt::ShiftModifier)) || zoomByKey(key)) return;
  if (key == Qt::Key_Return || key == Qt::Key_Enter) {
    for (const Flag& flag : flags_) {
      if (flag.tick != cursor_) continue;
      Q_EMIT flagChosen(flag.line);
      return;
    }
  }
  event->ignore();
}

void StripChart::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  over_->update();
}

void StripChart::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  over_->update();
}

}  // namespace cabwright::after
