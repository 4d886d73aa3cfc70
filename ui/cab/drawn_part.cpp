// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/drawn_part.h"

#include "cab/names.h"
#include "drawing/key_cap.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;

Tone DrawnState::line() const {
  if (!reachable) return Tone::kRule;
  return held.isEmpty() ? Tone::kInk : Tone::kHand;
}

Tone DrawnState::fill() const { return held.isEmpty() ? Tone::kFace : Tone::kWash; }

DrawnPart::DrawnPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                     unit::Control control, QString command, DrawControl draw, QWidget* parent)
    : ControlPart(seat, style, shortcuts, control, std::move(command), parent),
      draw_(std::move(draw)) {}

bool DrawnPart::activate() {
  if (!info().continuous) return ControlPart::activate();
  const double middle = (info().lowest + info().highest) / 2;
  double next = value() > middle ? info().lowest : info().highest;
  if (info().whole) next = value() < info().highest ? value() + 1 : info().lowest;
  seat().setControl(control(), next);
  return true;
}

void DrawnPart::paint(drawing::Pen& pen) const {
  DrawnState state;
  state.value = value();
  state.held = handLetter();
  state.focus = hasFocus();
  state.reachable = seat().isReachable(control());
  state.key = keyText();
  state.position = positionText(control(), value());
  state.refusal = translateSeen(refusal());
  draw_(pen, state);
}

void paintControlName(drawing::Pen& pen, QPointF middle_baseline, const QString& name,
                      const DrawnState& state, double width) {
  if (state.refusal.isEmpty()) {
    drawing::paintNameLine(pen, middle_baseline, name, state.key, false, drawing::kText);
  } else {
    pen.text(middle_baseline, drawing::elideText(state.refusal, width),
             {.anchor = Anchor::kMiddle, .tone = Tone::kBad});
  }
}

void paintControlWord(drawing::Pen& pen, QPointF baseline, Anchor anchor, const DrawnState& state,
                      double width) {
  const bool refused = !state.refusal.isEmpty();
  const QString words = refused ? state.refusal : state.position;
  pen.text(baseline, drawing::elideText(words, width, drawing::kText, !refused),
           {.anchor = anchor,
            .bold = !refused,
            .tone = refused                ? Tone::kBad
                    : state.held.isEmpty() ? Tone::kInk
                                           : Tone::kHand});
}

}  // namespace cabwright::cab
