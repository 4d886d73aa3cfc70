// SPDX-License-Identifier: GPL-3.0-or-later
// Stepping through a session, and the keys for it.
#include <QKeyEvent>
#include <algorithm>

#include "review_room/review_view.h"

namespace cabwright::review_room {
namespace {

// The nearest before or behind; the end where there is none.
std::int64_t findNext(const std::vector<std::int64_t>& ticks, std::int64_t now, int direction,
                      std::int64_t otherwise) {
  if (direction > 0) {
    const auto next = std::ranges::upper_bound(ticks, now);
    return next == ticks.end() ? otherwise : *next;
  }
  const auto here = std::ranges::lower_bound(ticks, now);
  return here == ticks.begin() ? otherwise : *std::prev(here);
}

}  // namespace

// Frames are recorded every tenth tick, and right before each action.
std::int64_t ReviewView::findFrame(int direction) const {
  const std::int64_t now = opened_->cursor(), each = session::kFrameTicks;
  const std::int64_t whole = direction > 0 ? (now / each + 1) * each : (now - 1) / each * each;
  const std::int64_t act = findNext(frame_ticks_, now, direction, whole);
  return direction > 0 ? std::min(whole, act) : std::max(whole, act);
}

std::int64_t ReviewView::findAct(int direction) const {
  return findNext(act_ticks_, opened_->cursor(), direction, opened_->cursor());
}

std::int64_t ReviewView::findVerdict(int direction) const {
  return findNext(verdict_ticks_, opened_->cursor(), direction, opened_->cursor());
}

void ReviewView::step(Step step) {
  if (step == Step::kPlay) {
    setPlaying(!isPlaying());
    return;
  }
  switch (step) {
    case Step::kVerdictBack:
      return jumpTo(findVerdict(-1));
    case Step::kActBack:
      return jumpTo(findAct(-1));
    case Step::kSecondBack:
      return jumpTo(opened_->cursor() - session::kTicksPerSecond);
    case Step::kFrameBack:
      return jumpTo(findFrame(-1));
    case Step::kFrameOn:
      return jumpTo(findFrame(1));
    case Step::kSecondOn:
      return jumpTo(opened_->cursor() + session::kTicksPerSecond);
    case Step::kActOn:
      return jumpTo(findAct(1));
    case Step::kVerdictOn:
      return jumpTo(findVerdict(1));
    case Step::kPlay:
      break;
  }
}

bool ReviewView::stepByKey(const QKeyEvent& event) {
  const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
  const bool control = event.modifiers().testFlag(Qt::ControlModifier);
  const auto move = [&](int way) {
    if (shift && control)
      jumpTo(opened_->cursor() + way * 10 * session::kTicksPerSecond);
    else if (control)
      step(way < 0 ? Step::kActBack : Step::kActOn);
    else if (shift)
      step(way < 0 ? Step::kSecondBack : Step::kSecondOn);
    else
      step(way < 0 ? Step::kFrameBack : Step::kFrameOn);
    return true;
  };
  switch (event.key()) {
    case Qt::Key_Left:
      return move(-1);
    case Qt::Key_Right:
      return move(1);
    case Qt::Key_Home:
      jumpTo(0);
      return true;
    case Qt::Key_End:
      jumpTo(opened_->lastTick());
      return true;
    case Qt::Key_PageUp:
      step(Step::kVerdictBack);
      return true;
    case Qt::Key_PageDown:
      step(Step::kVerdictOn);
      return true;
    case Qt::Key_Space:
      if (!event.isAutoRepeat()) step(Step::kPlay);
      return true;
    case Qt::Key_Up:
      transport_->changeRate(1);
      return true;
    case Qt::Key_Down:
      transport_->changeRate(-1);
      return true;
    default:
      return false;
  }
}

bool ReviewView::shareByKey(int key) {
  if (key >= Qt::Key_F6 && key <= Qt::Key_F8) {
    setShare(static_cast<Share>(key - Qt::Key_F6));
    return true;
  }
  if (key != Qt::Key_F9 || side_ == nullptr) return false;
  showSide(side_->isHidden());
  return true;
}

void ReviewView::keyPressEvent(QKeyEvent* event) {
  if (stepByKey(*event) || shareByKey(event->key())) return;
  event->ignore();
  if (event->modifiers() == Qt::NoModifier && !event->isAutoRepeat()) Q_EMIT otherKey(event->key());
}

}  // namespace cabwright::review_room
