// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/lever_part.h"

#include <QMouseEvent>
#include <QtMath>
#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "drawing/key_cap.h"

namespace cabwright::cab {

using drawing::Tone;

LeverPart::LeverPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                     unit::Control control, QString command, LeverShape shape, QWidget* parent)
    : ControlPart(seat, style, shortcuts, control, std::move(command), parent),
      shape_(std::move(shape)) {}

void LeverPart::setSocketOf(unit::Object handle, std::optional<unit::Object> or_else) {
  handle_ = handle;
  other_handle_ = or_else;
}

bool LeverPart::hasHandle() const {
  if (!handle_) return true;
  const unit::World& w = seat().unit().world();
  const auto inserted = [&](unit::Object o) {
    const unit::ObjectPlace& at = w.object[unit::indexOf(o)];
    return w.object_exists[unit::indexOf(o)] && at.state == unit::ObjectState::kInserted &&
           at.place == seat().place();
  };
  return inserted(*handle_) || (other_handle_ && inserted(*other_handle_));
}

bool LeverPart::isPressedDown() const { return device_ && seat().value(*device_) > 0.5; }

void LeverPart::refresh() {
  const Drawn now{hasHandle(), isPressedDown()};
  if (now != drawn_) {
    drawn_ = now;
    update();
  }
  ControlPart::refresh();
}

double LeverPart::angleOf(double value) const {
  const auto& a = shape_.angles;
  for (std::size_t k = 0; k + 1 < a.size(); ++k) {
    const auto [v0, a0] = a[k];
    const auto [v1, a1] = a[k + 1];
    if (value < std::min(v0, v1) || value > std::max(v0, v1)) continue;
    return v1 == v0 ? a0 : a0 + (a1 - a0) * (value - v0) / (v1 - v0);
  }
  return value <= a.front().first ? a.front().second : a.back().second;
}

QPointF LeverPart::knobAt(double value) const {
  return drawing::leverKnob(shape_.pivot, shape_.radius, angleOf(value));
}

double LeverPart::valueAt(QPointF point) const {
  const QPointF d = point - shape_.pivot;
  const double angle = qRadiansToDegrees(std::atan2(d.x(), -d.y()));
  const auto& a = shape_.angles;
  std::size_t nearest = 0;
  for (std::size_t k = 1; k < a.size(); ++k) {
    if (std::abs(a[k].second - angle) < std::abs(a[nearest].second - angle)) nearest = k;
  }
  if (!info().continuous) return a[nearest].first;
  // A detent catches what comes within a few degrees of it.
  if (std::abs(a[nearest].second - angle) < 5) return a[nearest].first;
  for (std::size_t k = 0; k + 1 < a.size(); ++k) {
    const auto [v0, a0] = a[k];
    const auto [v1, a1] = a[k + 1];
    if (angle < a0 || angle > a1) continue;
    const double v = v0 + (v1 - v0) * (angle - a0) / (a1 - a0);
    return std::round(v * 100) / 100;
  }
  return a[nearest].first;
}

double LeverPart::nextValue(int by) const {
  const double at = value();
  const auto& a = shape_.angles;
  if (shape_.step <= 0 || !info().continuous) {
    std::size_t k = 0;  // the detent at or below where it stands
    while (k + 1 < a.size() && a[k + 1].first <= at + 1e-9) ++k;
    const bool on = std::abs(a[k].first - at) < 1e-9;
    const auto next = static_cast<std::ptrdiff_t>(k) + (by > 0 || on ? by : 0);
    return a[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(next, 0, std::ssize(a) - 1))]
        .first;
  }
  // Below zero there are detents only; above it steps, the first a little longer.
  double next = at;
  if (by > 0) {
    next = at < 0 ? 0 : at < shape_.first_step ? shape_.first_step : at + shape_.step;
  } else {
    next = at <= 0 ? info().lowest : at <= shape_.first_step + 1e-9 ? 0 : at - shape_.step;
  }
  return std::clamp(std::round(next * 100) / 100, info().lowest, info().highest);
}

std::vector<drawing::Detent> LeverPart::detents() const {
  std::vector<drawing::Detent> list;
  for (const auto& [value, angle] : shape_.angles) {
    const bool between = shape_.wedge && value == shape_.angles.back().first;
    list.push_back({angle, positionText(control(), value), between});
  }
  return list;
}

void LeverPart::useKey(bool down) {
  if (!down) return;
  setFocus(Qt::ShortcutFocusReason);
  if (!seat().handOn(control()) && !isPressedDown()) seat().hold(control());
}

void LeverPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  setFocus(Qt::MouseFocusReason);
  const QPointF at = toSheet(event->position());
  const QPointF knob = knobAt(value());
  const bool on_knob = std::hypot(at.x() - knob.x(), at.y() - knob.y()) < 26;
  if (!seat().handOn(control()) && !isPressedDown()) seat().hold(control());
  wanted_ = value();
  if (!on_knob) {
    const double v = valueAt(at);
    if (v != value()) seat().setControl(control(), v);
    wanted_ = v;
  }
  update();
}

void LeverPart::mouseMoveEvent(QMouseEvent* event) {
  if (!wanted_) return;
  const double v = valueAt(toSheet(event->position()));
  if (v == *wanted_) return;
  wanted_ = v;
  seat().setControl(control(), v);
  update();
}

void LeverPart::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  wanted_.reset();
  update();
}

// A second click takes the hand away again.
void LeverPart::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && seat().handOn(control())) seat().release(control());
}

void LeverPart::paint(drawing::Pen& pen) const {
  const double at = angleOf(value());
  drawing::LeverLook look;
  look.held = handLetter();
  look.pressed = isPressedDown();
  if (look.pressed && look.held.isEmpty()) {
    const auto hand = seat().handOn(*device_);
    if (hand) look.held = *hand == 0 ? QStringLiteral("L") : QStringLiteral("R");
  }
  look.focus = hasFocus();
  look.empty = !hasHandle();
  look.out_of_reach = !seat().isReachable(control());
  look.wedge = shape_.wedge;
  const QString why = refusal();
  if (!why.isEmpty() && !look.empty) {
    const double low = shape_.angles.front().second, high = shape_.angles.back().second;
    if (at - low > 1) look.blocked.push_back({low, at - 6});
    if (high - at > 1) look.blocked.push_back({at + 6, high});
    if (wanted_ && *wanted_ != value()) look.ghost = angleOf(*wanted_);
  }
  const std::vector<drawing::Detent> all = detents();
  drawing::paintLever(pen, shape_.pivot, shape_.radius, all, at, look);
  const QPointF name = shape_.pivot + QPointF(0, 38);
  drawing::paintNameLine(pen, name, writtenName(), keyText(), look.empty);
  QString under;
  Tone tone = Tone::kInk2;
  if (!why.isEmpty()) {
    under = translateSeen(why);
    tone = Tone::kBad;
  } else if (look.empty && handle_) {
    under = tr("empty socket");
  } else if (info().continuous && value() > 0 && value() < 1 &&
             std::ranges::none_of(shape_.angles, [this](const auto& detent) {
               return std::abs(detent.first - value()) < 1e-6;  // its name is marked already
             })) {
    under = positionText(control(), value());
  }
  if (under.isEmpty()) return;
  if (writtenName().isEmpty()) {  // beside the key instead
    pen.text(name + QPointF(24, 0), under, {.tone = tone});
  } else {
    pen.text(name + QPointF(0, 25), drawing::elideText(under, area().width()),
             {.anchor = drawing::Anchor::kMiddle, .tone = tone});
  }
}

void LeverPart::paintPointer(drawing::Pen& pen) const {
  const double w = drawing::textWidth(nameOf(control()), drawing::kName, true);
  paintPointerUnder(pen, shape_.pivot + QPointF(0, 38), w);
}

}  // namespace cabwright::cab
