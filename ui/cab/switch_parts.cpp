// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/switch_parts.h"

#include <QMouseEvent>
#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "drawing/furniture.h"
#include "drawing/handbrake.h"
#include "drawing/key_cap.h"
#include "drawing/key_switch.h"
#include "drawing/toggle.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;

ButtonPart::ButtonPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                       unit::Control control, QString command, QPointF centre,
                       drawing::ButtonSign sign, QWidget* parent)
    : ControlPart(seat, style, shortcuts, control, std::move(command), parent),
      centre_(centre),
      sign_(sign) {}

void ButtonPart::press() {
  if (pressed_) {
    seat().hold(control(), *pressed_);
  } else {
    ControlPart::press();
  }
}

void ButtonPart::refresh() {
  const bool in = value() != 0;
  if (in && held_since_ < 0) held_since_ = seat().run().tick();
  if (!in) held_since_ = -1;
  const double held =
      held_since_ < 0 ? 0 : static_cast<double>(seat().run().tick() - held_since_) * 0.01;
  if (held_scale_s_ > 0 && std::abs(held - held_s_) > 0.1) update();
  held_s_ = held;
  ControlPart::refresh();
}

void ButtonPart::paint(drawing::Pen& pen) const {
  drawing::ButtonLook look;
  look.sign = sign_;
  look.focus = hasFocus();
  const bool in = pressed_ ? value() == *pressed_ : value() != 0;
  look.state = in                    ? drawing::ButtonState::kPressed
               : refusal().isEmpty() ? drawing::ButtonState::kUp
                                     : drawing::ButtonState::kBlocked;
  if (in && held_scale_s_ > 0) look.held_share = std::min(1.0, held_s_ / held_scale_s_);
  drawing::paintButton(pen, centre_, 18, look);
  const QString key = keyText();
  double x = centre_.x() + 28;
  if (!label_.isEmpty()) x += pen.text({x, centre_.y() + 6.5}, label_) + 10;
  if (key.isEmpty()) return;
  if (key_below_) {
    drawing::paintKeyCap(pen, centre_ + QPointF(0, 37), key);
  } else {
    drawing::paintKeyCap(pen, {x + drawing::keyCapWidth(key) / 2, centre_.y()}, key);
  }
}

TogglePart::TogglePart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                       unit::Control control, QString command, QPointF centre, QWidget* parent)
    : ControlPart(seat, style, shortcuts, control, std::move(command), parent), centre_(centre) {}

void TogglePart::paint(drawing::Pen& pen) const {
  drawing::ToggleLook look;
  look.off = positionText(control(), info().lowest);
  look.on = positionText(control(), info().highest);
  look.is_on = value() > 0.5;
  look.cock = info().kind == unit::ControlKind::kCock;
  look.held = handLetter();
  look.focus = hasFocus();
  look.out_of_reach = !seat().isReachable(control());
  drawing::paintToggle(pen, centre_, look);
  const QString why = refusal();
  if (why.isEmpty()) {
    drawing::paintNameLine(pen, centre_ + QPointF(0, 52), writtenName(), keyText(), false,
                           drawing::kText);
  } else {
    pen.text(centre_ + QPointF(0, 52), drawing::elideText(translateSeen(why), area().width()),
             {.anchor = Anchor::kMiddle, .tone = Tone::kBad});
  }
}

KeySwitchPart::KeySwitchPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                             unit::Control control, QString command, QPointF centre,
                             std::vector<double> angles, QWidget* parent)
    : ControlPart(seat, style, shortcuts, control, std::move(command), parent),
      centre_(centre),
      angles_(std::move(angles)),
      name_(nameOf(control)) {}

bool KeySwitchPart::hasKey() const {
  if (!needs_key_) return true;
  const bool first = seat().place() == unit::Place::kCab1;
  return seat().value(first ? unit::Signal::kKey1 : unit::Signal::kKey2) > 0.5;
}

void KeySwitchPart::refresh() {
  if (hasKey() != had_key_) {
    had_key_ = hasKey();
    update();
  }
  ControlPart::refresh();
}

// To the next position and round again.
bool KeySwitchPart::activate() {
  const auto& positions = info().positions;
  std::size_t at = 0;
  for (std::size_t k = 0; k < positions.size(); ++k) {
    if (positions[k].value == value()) at = k;
  }
  seat().setControl(control(), positions[(at + 1) % positions.size()].value);
  return true;
}

void KeySwitchPart::paint(drawing::Pen& pen) const {
  drawing::KeySwitchLook look;
  const auto& positions = info().positions;
  for (std::size_t k = 0; k < positions.size(); ++k) {
    look.positions.push_back({angles_[k], positionText(control(), positions[k].value)});
    if (positions[k].value == value()) look.at = angles_[k];
  }
  look.has_key = hasKey();
  look.held = handLetter();
  look.focus = hasFocus();
  drawing::paintKeySwitch(pen, centre_, 34, look);
  drawing::paintNameLine(pen, centre_ + QPointF(0, 66), name_, keyText());
  const QString why = refusal();
  if (!why.isEmpty())
    pen.text(centre_ + QPointF(0, 91), drawing::elideText(translateSeen(why), area().width()),
             {.anchor = Anchor::kMiddle, .tone = Tone::kBad});
}

HandbrakePart::HandbrakePart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                             unit::Control wheel, unit::Control pawl, QPointF centre,
                             QWidget* parent)
    : ControlPart(seat, style, shortcuts, wheel, QStringLiteral("cab.handbrake"), parent),
      pawl_(pawl),
      centre_(centre) {}

void HandbrakePart::refresh() {
  if (seat().value(pawl_) != pawl_shown_) {
    pawl_shown_ = seat().value(pawl_);
    update();
  }
  ControlPart::refresh();
}

void HandbrakePart::useKey(bool down) {
  if (!down) return;
  setFocus(Qt::ShortcutFocusReason);
  if (!seat().handOn(control())) seat().hold(control());
}

// A wheel is turned all the way one way or the other; it takes its time.
bool HandbrakePart::step(int by) {
  seat().setControl(control(), by > 0 ? 1.0 : 0.0);
  return true;
}

bool HandbrakePart::activate() { return step(value() > 0.5 ? -1 : 1); }

void HandbrakePart::paint(drawing::Pen& pen) const {
  drawing::HandbrakeLook look;
  look.on = value();
  look.turn_deg = value() * 720;
  look.pawl_in = seat().value(pawl_) > 0.5;
  look.held = handLetter();
  look.focus = hasFocus();
  drawing::paintHandbrake(pen, centre_, 44, look);
  const QPointF name(area().center().x(), centre_.y() + 88);
  drawing::paintNameLine(pen, name, nameOf(control()), keyText());
  const QString why = refusal();
  QString under;
  if (!why.isEmpty()) {
    under = translateSeen(why);
  } else {
    const QString wheel = value() >= 0.99 ? tr("hard on")
                          : value() <= 0.01
                              ? tr("off")
                              : positionText(control(), std::round(value() * 100) / 100);
    under = look.pawl_in ? tr("%1, pawl in").arg(wheel) : tr("%1, pawl out").arg(wheel);
  }
  pen.text(name + QPointF(0, 26), drawing::elideText(under, area().width()),
           {.anchor = Anchor::kMiddle, .tone = why.isEmpty() ? Tone::kInk2 : Tone::kBad});
}

PawlPart::PawlPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                   unit::Control pawl, QPointF at, QPointF words_at, QWidget* parent)
    : ControlPart(seat, style, shortcuts, pawl, QStringLiteral("cab.pawl"), parent),
      at_(at),
      words_at_(words_at) {}

void PawlPart::paint(drawing::Pen& pen) const {
  const double w = pen.text(words_at_, nameOf(control()), {.tone = Tone::kInk2});
  if (!keyText().isEmpty())
    drawing::paintKeyCap(
        pen, words_at_ + QPointF(w + 9 + drawing::keyCapWidth(keyText()) / 2, -6.5), keyText());
  if (hasFocus()) drawing::paintFocusRing(pen, QRectF(at_ - QPointF(16, 16), QSizeF(32, 32)), 16);
}

DevicePart::DevicePart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                       unit::Control device, QPointF centre, QWidget* parent)
    : ControlPart(seat, style, shortcuts, device, QStringLiteral("cab.device"), parent),
      centre_(centre) {}

void DevicePart::useKey(bool down) {
  if (down) activate();
}

bool DevicePart::step(int by) {
  if ((by > 0) == (value() > 0.5)) return false;
  return activate();
}

bool DevicePart::activate() {
  if (value() > 0.5) {
    seat().release(control());
  } else {
    seat().hold(control());
  }
  return true;
}

void DevicePart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate();
}

void DevicePart::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  const bool press = key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter;
  if (press && !event->isAutoRepeat()) {
    activate();
  } else if (!press) {
    ControlPart::keyPressEvent(event);
  }
}

// A handle seen from the side: up on its spring, or pressed down to its stop.
void DevicePart::paint(drawing::Pen& pen) const {
  const bool down = value() > 0.5;
  const Tone tone = down ? Tone::kHand : Tone::kInk;
  const QPointF c = centre_;
  const double y = down ? c.y() - 4 : c.y() - 18;
  pen.line(c + QPointF(-20, 6), c + QPointF(20, 6), {drawing::kHeavy, Tone::kInk, {}, false});
  pen.rect(QRectF(c.x() - 16, y, 32, 12), {drawing::kNorm, tone, {}, false},
           down ? Tone::kWash : Tone::kFace, 6);
  pen.line({c.x() - 6, y + 12}, c + QPointF(-6, 4), {drawing::kThin, tone, {}, false});
  pen.line({c.x() + 6, y + 12}, c + QPointF(6, 4), {drawing::kThin, tone, {}, false});
  const QString word = down ? tr("held") : tr("up");
  pen.text(c + QPointF(28, 4), word, {.bold = down, .tone = down ? Tone::kHand : Tone::kInk2});
  // Between two levers there is room for the name alone: its key stands beside the handle.
  pen.text(c + QPointF(0, 34.5), tr("Device"), {.anchor = Anchor::kMiddle, .bold = true});
  if (!keyText().isEmpty())
    drawing::paintKeyCap(pen, c + QPointF(-28 - drawing::keyCapWidth(keyText()) / 2, -3),
                         keyText());
  if (hasFocus()) drawing::paintFocusRing(pen, QRectF(c.x() - 25, c.y() - 25, 50, 38), 6);
}

void ButtonPart::paintPointer(drawing::Pen& pen) const {
  pen.circle(centre_, 24, {drawing::kBold, Tone::kInfo, {}, false});
}

void HandbrakePart::paintPointer(drawing::Pen& pen) const {
  paintPointerUnder(pen, {area().center().x(), centre_.y() + 88},
                    drawing::textWidth(nameOf(control()), drawing::kName, true));
}

void KeySwitchPart::paintPointer(drawing::Pen& pen) const {
  paintPointerUnder(pen, centre_ + QPointF(0, 66), drawing::textWidth(name_, drawing::kName, true));
}

void DevicePart::paintPointer(drawing::Pen& pen) const {
  paintPointerUnder(pen, centre_ + QPointF(0, 3), 44);
}

}  // namespace cabwright::cab
