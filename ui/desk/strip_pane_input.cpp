// SPDX-License-Identifier: GPL-3.0-or-later
// Mouse and keys on the live strips.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "desk/strip_pane.h"

namespace cabwright::desk {
namespace {

constexpr double kDragStarts = 5;

}  // namespace

void StripPane::mouseMoveEvent(QMouseEvent* event) {
  const QPointF u = toSheet(event->position());
  if (drag_from_ && (dragged_ || std::abs(u.x() - drag_from_->x()) > kDragStarts)) {
    dragged_ = true;
    const double per_u = static_cast<double>(window_) / std::max(1.0, layout_.right - layout_.left);
    shiftTo(drag_to_ + std::llround((drag_from_->x() - u.x()) * per_u));
  }
  if (u.x() < layout_.left || u.x() > layout_.right) {
    setCursor(std::nullopt);
  } else {
    setCursor(layout_.tickAt(u.x(), span()));
  }
}

void StripPane::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  drag_from_ = toSheet(event->position());
  drag_to_ = span().to;
  dragged_ = false;
}

void StripPane::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) drag_from_.reset();
}

void StripPane::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && cursor_) Q_EMIT momentChosen(*cursor_);
}

void StripPane::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  if (!hasFocus()) setCursor(std::nullopt);
}

void StripPane::wheelEvent(QWheelEvent* event) {
  if (event->angleDelta().y() != 0) Q_EMIT windowAsked(event->angleDelta().y() > 0 ? -1 : 1);
  event->accept();
}

bool StripPane::goToEvent(int direction) {
  const std::int64_t from = cursor_.value_or(span().to);
  const std::vector<const RunEvent*> shown = eventsShown();
  if (direction > 0) {
    for (const RunEvent* event : shown) {
      if (event->tick <= from) continue;
      setCursor(event->tick);
      return true;
    }
  } else {
    for (auto it = shown.rbegin(); it != shown.rend(); ++it) {
      if ((*it)->tick >= from) continue;
      setCursor((*it)->tick);
      return true;
    }
  }
  return true;
}

bool StripPane::useKey(int key, bool far) {
  const std::int64_t now = cursor_.value_or(span().to);
  // A step that is seen, in whole tenths of a second.
  const std::int64_t step = std::max<std::int64_t>(10, window_ / 4000 * 10) * (far ? 10 : 1);
  switch (key) {
    case Qt::Key_Left:
      if (now - step < span().from) shiftTo(span().to - window_ / 4);
      setCursor(now - step);
      return true;
    case Qt::Key_Right:
      if (isHeld() && now + step > span().to) shiftTo(span().to + window_ / 4);
      setCursor(now + step);
      return true;
    case Qt::Key_Home:
      setCursor(span().from);
      return true;
    case Qt::Key_End:
      setHeld(false);
      setCursor(std::nullopt);
      return true;
    case Qt::Key_PageUp:
      return goToEvent(-1);
    case Qt::Key_PageDown:
      return goToEvent(1);
    case Qt::Key_Space:
      setHeld(!isHeld());
      return true;
    case Qt::Key_Escape:
      if (!cursor_) return false;
      setCursor(std::nullopt);
      return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      Q_EMIT windowAsked(-1);
      return true;
    case Qt::Key_Minus:
      Q_EMIT windowAsked(1);
      return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (!cursor_) return false;
      Q_EMIT momentChosen(*cursor_);
      return true;
    default:
      return false;
  }
}

void StripPane::keyPressEvent(QKeyEvent* event) {
  if (!useKey(event->key(), event->modifiers().testFlag(Qt::ShiftModifier))) event->ignore();
}

void StripPane::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  over_->update();
}

void StripPane::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  over_->update();
}

}  // namespace cabwright::desk
