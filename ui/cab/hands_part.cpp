// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/hands_part.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <cmath>

#include "cab/names.h"
#include "drawing/furniture.h"
#include "drawing/key_cap.h"

namespace cabwright::cab {

using drawing::Grip;
using drawing::Tone;
using unit::Control;

namespace {

constexpr double kHandScale = 0.86, kHandX = 50, kHandY = 62;

bool isOneOf(Control c, Control of_cab1) { return c == of_cab1 || c == unit::ofCab(of_cab1, 1); }

// The device belongs to the throttle's handle, in whichever cab that is.
std::optional<Control> deviceOf(Control c) {
  for (int cab = 0; cab < 2; ++cab) {
    if (c == unit::ofCab(Control::kCab1Throttle, cab) ||
        c == unit::ofCab(Control::kCab1Device, cab))
      return unit::ofCab(Control::kCab1Device, cab);
  }
  return std::nullopt;
}

}  // namespace

Hold findHold(const unit::Unit& unit, int side) {
  Hold hold{unit.world().trainee.hands[static_cast<std::size_t>(side)].on};
  if (!hold.on) return hold;
  const auto value = [&unit](Control c) {
    return static_cast<double>(unit.frame()[unit::controlInfo(c).signal]);
  };
  hold.value = value(*hold.on);
  const auto device = deviceOf(*hold.on);
  hold.down = device && value(*device) > 0.5;
  return hold;
}

Grip gripOf(const Hold& hold) {
  if (!hold.on) return Grip::kFree;
  if (deviceOf(*hold.on)) return hold.down ? Grip::kKnobPressed : Grip::kKnob;
  if (*hold.on == Control::kHandLamp) return Grip::kLamp;
  if (isOneOf(*hold.on, Control::kCab1Bell)) return Grip::kBell;
  if (isOneOf(*hold.on, Control::kCab1Key)) return Grip::kKey;
  if (isOneOf(*hold.on, Control::kCab1Handbrake)) return Grip::kWheel;
  switch (unit::controlInfo(*hold.on).kind) {
    case unit::ControlKind::kButton:
      return Grip::kFinger;
    case unit::ControlKind::kCock:
      return Grip::kCock;
    case unit::ControlKind::kWheel:
      return Grip::kWheel;
    case unit::ControlKind::kSwitch:
      return Grip::kFinger;
    case unit::ControlKind::kLever:
      break;
  }
  return Grip::kKnob;
}

QString howText(const Hold& hold) {
  if (!hold.on) return {};
  QString words = positionText(*hold.on, std::round(hold.value * 100) / 100);
  if (hold.down) words += HandPart::tr(", handle pressed down");
  return words;
}

HandPart::HandPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, int side,
                   QWidget* parent)
    : Part(seat, style, parent), shortcuts_(shortcuts), side_(side) {
  setFocusPolicy(Qt::StrongFocus);
  setObjectName(side == 0 ? QStringLiteral("hand.left") : QStringLiteral("hand.right"));
  setAccessibleName(side == 0 ? tr("Left hand") : tr("Right hand"));
  connect(&shortcuts, &Shortcuts::changed, this, [this] { update(); });
}

QPointF HandPart::top() const { return {area().left() + kHandX, area().top() - 2}; }

void HandPart::refresh() {
  const Hold now = held();
  if (now == shown_) return;
  const bool other = now.on != shown_.on;
  shown_ = now;
  update();
  if (other) announceValue();
}

PartRole HandPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kButton;
  r.name = side_ == 0 ? tr("Left hand") : tr("Right hand");
  const Hold hold = held();
  r.value = hold.on ? nameOf(*hold.on) + QLatin1String(", ") + howText(hold) : tr("free");
  r.description = tr("Enter lets go");
  return r;
}

bool HandPart::activate() {
  const Hold hold = held();
  if (!hold.on) return false;
  seat().release(*hold.on);
  return true;
}

void HandPart::paint(drawing::Pen& pen) const {
  const QRectF& a = area();
  const QPointF wrist(a.left() + kHandX, a.top() + kHandY);
  const Hold hold = held();
  drawing::paintHand(pen, wrist, side_ == 1, gripOf(hold), kHandScale);
  const double x = a.left() + 116;
  const auto on = hold.on;
  const QString head = side_ == 0 ? (on ? tr("Left hand on") : tr("Left hand"))
                                  : (on ? tr("Right hand on") : tr("Right hand"));
  const double w = pen.text({x, a.top() + 30}, head, {.tone = Tone::kInk2});
  const QString key = style().show_keys ? shortcuts_.text(side_ == 0 ? QStringLiteral("hand.left")
                                                                     : QStringLiteral("hand.right"))
                                        : QString();
  if (on && !key.isEmpty())
    drawing::paintKeyCap(pen, {x + w + 10 + drawing::keyCapWidth(key) / 2, a.top() + 23.5}, key);
  const double room = a.right() - x;
  pen.text({x, a.top() + 60},
           drawing::elideText(on ? nameOf(*on) : tr("free"), room, drawing::kName, true),
           {.size = drawing::kName, .bold = on.has_value(), .tone = on ? Tone::kInk : Tone::kInk2});
  pen.text({x, a.top() + 88}, drawing::elideText(howText(hold), room), {.tone = Tone::kInk2});
  if (hasFocus()) drawing::paintFocusRing(pen, a.adjusted(4, 4, -4, -4), 6);
}

void HandPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate();
}

void HandPart::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space || event->key() == Qt::Key_Return) {
    activate();
  } else {
    event->ignore();
  }
}

void HandPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void HandPart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

}  // namespace cabwright::cab
