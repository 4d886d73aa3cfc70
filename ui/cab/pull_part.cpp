// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/pull_part.h"

#include "cab/names.h"
#include "drawing/furniture.h"
#include "drawing/key_cap.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kHung = 30, kPulled = 42, kRing = 11;

}  // namespace

PullPart::PullPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                   unit::Control control, QPointF hook, QWidget* parent)
    : ControlPart(seat, style, shortcuts, control, QString(), parent), hook_(hook) {}

void PullPart::paint(drawing::Pen& pen) const {
  const bool pulled = value() > 0.5;
  const QString hand = handLetter();
  const Tone tone = hand.isEmpty() ? Tone::kInk : Tone::kHand;
  const QPointF ring = hook_ + QPointF(0, pulled ? kPulled : kHung);
  pen.rect(QRectF(hook_.x() - 14, hook_.y() - 5, 28, 8), {drawing::kNorm, Tone::kInk}, Tone::kFace,
           2);
  pen.line(hook_ + QPointF(0, 3), ring - QPointF(0, kRing), {drawing::kRing, tone});
  pen.circle(ring, kRing, {drawing::kBold, tone}, hand.isEmpty() ? Tone::kFace : Tone::kHand);
  if (!hand.isEmpty())
    pen.text(ring + QPointF(0, 0.37 * drawing::kText), hand,
             {.anchor = Anchor::kMiddle, .bold = true, .tone = Tone::kPaper, .on = Tone::kHand});
  const auto word = [&](double x, Anchor anchor, double position) {
    const bool here = (position > 0.5) == pulled;
    pen.text({x, hook_.y() + 33}, positionText(control(), position),
             {.size = drawing::kText + (here ? 1.5 : 0),
              .anchor = anchor,
              .bold = here,
              .tone = here ? Tone::kInk : Tone::kInk2});
  };
  word(hook_.x() - 30, Anchor::kEnd, 0);
  word(hook_.x() + 30, Anchor::kStart, 1);
  const QString why = refusal();
  const QPointF below = hook_ + QPointF(0, 78);
  if (why.isEmpty()) {
    drawing::paintNameLine(pen, below, nameOf(control()), keyText(), false, drawing::kText);
  } else {
    pen.text(below, drawing::elideText(translateSeen(why), area().width()),
             {.anchor = Anchor::kMiddle, .tone = Tone::kBad});
  }
  if (hasFocus()) drawing::paintFocusRing(pen, QRectF(hook_.x() - 14, hook_.y() - 3, 28, 56), 10);
}

}  // namespace cabwright::cab
