// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/hand_threads.h"

#include <QPainter>

#include "cab/lever_part.h"
#include "cab/why_thread.h"

namespace cabwright::cab {
namespace {

using unit::Control;

// The device is the throttle's own handle: the line goes to the lever whose knob bears the hand.
Control shownFor(Control c) {
  for (int cab = 0; cab < 2; ++cab)
    if (c == unit::ofCab(Control::kCab1Device, cab))
      return unit::ofCab(Control::kCab1Throttle, cab);
  return c;
}

const ControlPart* findPart(const Plate& plate, Control c) {
  for (const Part* part : plate.parts()) {
    const auto* control = qobject_cast<const ControlPart*>(part);
    if (control != nullptr && control->control() == c) return control;
  }
  return nullptr;
}

constexpr double kLane = 1, kLaneGap = 4;  // above the hands, under the words over them

// Under all that is written of it.
QPointF footOf(const ControlPart& part) {
  const auto* lever = qobject_cast<const LeverPart*>(&part);
  const double x = lever != nullptr ? lever->pivot().x() : part.area().center().x();
  return {x, part.area().bottom() + 4};
}

}  // namespace

HandThreads::HandThreads(Seat& seat, const SheetStyle& style, QWidget* sheet)
    : QWidget(sheet), seat_(seat), style_(style) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAttribute(Qt::WA_NoSystemBackground);
  setFocusPolicy(Qt::NoFocus);
}

bool HandThreads::isHeld(Control control) const {
  for (const auto& hand : seat_.unit().world().trainee.hands)
    if (hand.on && (*hand.on == control || shownFor(*hand.on) == control)) return true;
  return false;
}

void HandThreads::refresh(const Plate* plate, const std::array<HandPart*, 2>& hands) {
  setGeometry(parentWidget()->rect());
  std::array<std::optional<QLineF>, 2> now;
  for (std::size_t k = 0; k < 2; ++k) {
    const auto on = seat_.unit().world().trainee.hands[k].on;
    const ControlPart* part = on && plate != nullptr ? findPart(*plate, shownFor(*on)) : nullptr;
    if (part != nullptr) now[k] = QLineF(hands[k]->top(), footOf(*part));
  }
  setVisible(now[0] || now[1]);
  if (now == shown_) return;
  shown_ = now;
  behind_.clear();
  for (std::size_t k = 0; plate != nullptr && k < plate->parts().size(); ++k) {
    const Part* part = plate->parts()[k];
    const auto* control = qobject_cast<const ControlPart*>(part);
    if (control != nullptr && (isHeld(control->control()) || !part->isVisible())) continue;
    if (part->mask().isEmpty()) {
      behind_.push_back(part->geometry());
    } else {
      for (const QRect& piece : part->mask()) behind_.push_back(piece.translated(part->pos()));
    }
  }
  raise();
  update();
}

// Down from the thing, over along a lane of its own above the foot, and down to the hand; behind
// whatever else is on the plate.
void HandThreads::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  QRegion free(rect());
  for (const QRect& other : behind_) free -= other;
  painter.setClipRegion(free);
  painter.scale(style_.frame.scale, style_.frame.scale);
  drawing::Pen pen(painter, style_.theme);
  for (std::size_t k = 0; k < 2; ++k) {
    if (!shown_[k]) continue;
    const QPointF hand = shown_[k]->p1(), thing = shown_[k]->p2();
    const double lane = hand.y() - kLane - kLaneGap * static_cast<double>(k);
    const QPainterPath line =
        roundedPath({{thing, QPointF(thing.x(), lane), QPointF(hand.x(), lane), hand}});
    pen.path(line, {drawing::kNorm, drawing::Tone::kHand, {2, 5}, true});
    pen.circle(thing, 3, drawing::kNoLine, drawing::Tone::kHand);
  }
}

}  // namespace cabwright::cab
