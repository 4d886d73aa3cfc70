// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/control_part.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "cab/names.h"

namespace cabwright::cab {
namespace {

constexpr int kWheelNotch = 120;  // eighths of a degree, as Qt counts
constexpr double kContinuousSteps = 20;

bool isPressKey(int key) {
  return key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter;
}

}  // namespace

ControlPart::ControlPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                         unit::Control control, QString command, QWidget* parent)
    : Part(seat, style, parent),
      shortcuts_(shortcuts),
      control_(control),
      command_(std::move(command)) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setObjectName(QString::fromUtf8(info().name.data(), static_cast<qsizetype>(info().name.size())));
  setAccessibleName(nameOf(control_));
  if (isMomentary()) setToolTip(tr("%1. Right button: a hand stays on it").arg(nameOf(control_)));
}

void ControlPart::refresh() {
  if (lift_due_ && seat().run().tick() != pressed_at_) {
    lift_due_ = false;
    seat().release(control_);
  }
  Shown now{value(), seat().isReachable(control_), handLetter(), refusal()};
  if (now == shown_) return;
  const bool moved = now.value != shown_.value;
  shown_ = std::move(now);
  update();
  if (moved) announceValue();
}

PartRole ControlPart::role() const {
  PartRole r;
  r.kind = info().kind == unit::ControlKind::kButton   ? PartRole::Kind::kButton
           : info().kind == unit::ControlKind::kSwitch ? PartRole::Kind::kSwitch
                                                       : PartRole::Kind::kLever;
  r.name = accessibleName();
  r.value = positionText(control_, value());
  const QString hand = handLetter();
  if (hand == QLatin1String("L")) r.value += tr(", left hand on it");
  if (hand == QLatin1String("R")) r.value += tr(", right hand on it");
  if (!refusal().isEmpty()) r.value += QLatin1String(": ") + translateSeen(refusal());
  r.description = textOf(control_);
  if (!keyText().isEmpty()) r.description += tr(". Key: %1").arg(keyText());
  if (isMomentary()) r.description += tr(". Right click: a hand stays on it");
  r.number = value();
  r.low = info().lowest;
  r.high = info().highest;
  return r;
}

QString ControlPart::keyText() const {
  return style().show_keys && !command_.isEmpty() ? shortcuts_.text(command_) : QString();
}

QString ControlPart::writtenName() const { return named_ ? nameOf(control_) : QString(); }

QString ControlPart::handLetter() const {
  const auto hand = seat().handOn(control_);
  if (!hand) return {};
  return *hand == 0 ? QStringLiteral("L") : QStringLiteral("R");
}

double ControlPart::nextValue(int by) const {
  const double at = value();
  if (info().continuous) {
    const double size = info().whole ? 1 : (info().highest - info().lowest) / kContinuousSteps;
    return std::clamp(at + by * size, info().lowest, info().highest);
  }
  std::vector<double> values;
  for (const unit::ControlPosition& p : info().positions) values.push_back(p.value);
  std::ranges::sort(values);
  auto here = std::ranges::min_element(values, {}, [at](double v) { return std::abs(v - at); });
  const auto index =
      std::clamp<std::ptrdiff_t>(here - values.begin() + by, 0, std::ssize(values) - 1);
  return values[static_cast<std::size_t>(index)];
}

bool ControlPart::put(double wanted) {
  if (isMomentary()) return false;
  double to = std::clamp(wanted, info().lowest, info().highest);
  if (!info().continuous) {
    const auto& all = info().positions;
    to = std::ranges::min_element(all, {}, [wanted](const unit::ControlPosition& p) {
           return std::abs(p.value - wanted);
         })->value;
  }
  if (to != value()) seat().setControl(control_, to);
  return true;
}

bool ControlPart::step(int by) {
  const double wanted = nextValue(by);
  if (wanted == value()) return false;
  seat().setControl(control_, wanted);
  return true;
}

// What stays where it is put goes to its other position; of many, a hand is laid on it.
bool ControlPart::activate() {
  if (isMomentary()) {
    seat().act("press", std::string(info().name));
  } else if (info().positions.size() == 2 && !info().continuous) {
    const double other = value() == info().positions[0].value ? info().positions[1].value
                                                              : info().positions[0].value;
    seat().setControl(control_, other);
  } else if (seat().handOn(control_)) {
    seat().release(control_);
  } else {
    seat().hold(control_);
  }
  return true;
}

void ControlPart::press() { seat().hold(control_); }

void ControlPart::pressDown() {
  lift_due_ = false;
  pressed_at_ = seat().run().tick();
  press();
}

// Between two pictures a quick finger comes down and goes up again; it was down all the same.
void ControlPart::lift() {
  if (seat().run().tick() == pressed_at_) {
    lift_due_ = true;
  } else {
    seat().release(control_);
  }
}

void ControlPart::forgetKey() {
  pressed_in_focus_ = false;
  if (pressed_by_key_) useKey(false);
}

void ControlPart::useKey(bool down) {
  if (isMomentary()) {
    if (down) {
      pressed_by_key_ = true;
      pressDown();
    } else if (pressed_by_key_) {
      pressed_by_key_ = false;
      lift();
    }
    return;
  }
  if (!down) return;
  setFocus(Qt::ShortcutFocusReason);
  if (info().positions.size() == 2 && !info().continuous) {
    activate();
  } else if (!seat().handOn(control_)) {
    seat().hold(control_);
  }
}

void ControlPart::wheelEvent(QWheelEvent* event) {
  wheel_rest_ += event->angleDelta().y() + event->angleDelta().x();
  const int notches = wheel_rest_ / kWheelNotch;
  wheel_rest_ -= notches * kWheelNotch;
  for (int k = 0; k < std::abs(notches); ++k) step(notches > 0 ? 1 : -1);
  event->accept();
}

void ControlPart::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (isPressKey(key)) {
    if (event->isAutoRepeat()) return;
    if (isMomentary()) {
      pressed_in_focus_ = true;
      useKey(true);
    } else {
      activate();
    }
    return;
  }
  const bool more = key == Qt::Key_Up || key == Qt::Key_Right;
  const bool less = key == Qt::Key_Down || key == Qt::Key_Left;
  if (!isMomentary() && (more || less)) {
    step(more ? 1 : -1);
  } else if (!isMomentary() && key == Qt::Key_Home) {
    seat().setControl(control_, info().lowest);
  } else if (!isMomentary() && key == Qt::Key_End) {
    seat().setControl(control_, info().highest);
  } else if (key == Qt::Key_Escape && seat().handOn(control_)) {
    seat().release(control_);
  } else {
    event->ignore();
  }
}

void ControlPart::keyReleaseEvent(QKeyEvent* event) {
  if (isPressKey(event->key()) && isMomentary() && !event->isAutoRepeat()) {
    forgetKey();
  } else {
    event->ignore();
  }
}

// With one mouse a button can only be held while nothing else is done; the other mouse button lays
// a hand on it that stays, as a second hand would, until it is taken away.
void ControlPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::RightButton && isMomentary()) {
    if (seat().handOn(control_)) {
      seat().release(control_);
    } else {
      press();
    }
    return;
  }
  if (event->button() != Qt::LeftButton) return;
  if (isMomentary()) {
    pressed_by_mouse_ = true;
    pressDown();
  } else {
    activate();
  }
}

void ControlPart::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !pressed_by_mouse_) return;
  pressed_by_mouse_ = false;
  lift();
}

void ControlPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

// A key that goes down here and comes up elsewhere must not leave a finger on the button; its own
// key is held wherever the focus is.
void ControlPart::focusOutEvent(QFocusEvent* event) {
  if (pressed_in_focus_) forgetKey();
  Part::focusOutEvent(event);
  update();
}

}  // namespace cabwright::cab
