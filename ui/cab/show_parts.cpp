// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/show_parts.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "drawing/key_cap.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kNeedleLagS = 0.08;
constexpr double kLeastTurnDeg = 0.08;  // less does not show

}  // namespace

DialPart::DialPart(Seat& seat, const SheetStyle& style, QPointF centre, double radius,
                   drawing::DialScale scale, std::vector<DialNeedleOf> needles, QString name,
                   QWidget* parent)
    : Part(seat, style, parent),
      centre_(centre),
      radius_(radius),
      scale_(std::move(scale)),
      needles_(std::move(needles)),
      name_(std::move(name)) {
  setFocusPolicy(Qt::TabFocus);
  const std::string_view id = unit::signalInfo(needles_.front().signal).name;
  setObjectName(QString::fromUtf8(id.data(), static_cast<qsizetype>(id.size())));
  for (const DialNeedleOf& n : needles_) shown_.push_back(seat.value(n.signal));
  shown_tick_ = seat.run().tick();
  readable_ = seat.isPerceived(needles_.front().signal);
  setAccessibleName(name_);
}

void DialPart::refresh() {
  const std::int64_t tick = seat().run().tick();
  const double dt = static_cast<double>(tick - shown_tick_) * 0.01;
  const double share =
      style().reduced_motion || dt < 0 ? 1.0 : 1.0 - std::exp(-std::max(0.0, dt) / kNeedleLagS);
  shown_tick_ = tick;
  bool moved = false;
  for (std::size_t k = 0; k < needles_.size(); ++k) {
    const double before = drawing::dialAngle(scale_, shown_[k]);
    const double wanted = seat().value(needles_[k].signal);
    const double next = shown_[k] + (wanted - shown_[k]) * share;
    const double after = drawing::dialAngle(scale_, next);
    const bool last = std::abs(drawing::dialAngle(scale_, wanted) - after) < kLeastTurnDeg;
    shown_[k] = last ? wanted : next;
    if (std::abs(after - before) > kLeastTurnDeg) moved = true;
  }
  const bool readable = seat().isPerceived(needles_.front().signal);
  if (moved || readable != readable_) update();
  if (moved) announceValue();
  readable_ = readable;
}

PartRole DialPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kGauge;
  r.name = name_;
  if (!readable_) {
    r.value = tr("cannot be read");
    return r;
  }
  QStringList values;
  for (std::size_t k = 0; k < needles_.size(); ++k) {
    const QString number = QString::number(shown_[k], 'f', scale_.minor < 1 ? 1 : 0);
    const QString with_unit = scale_.unit.isEmpty() ? number : tr("%1 %2").arg(number, scale_.unit);
    values << (needles_[k].name.isEmpty() ? with_unit
                                          : tr("%1 %2").arg(needles_[k].name, with_unit));
  }
  r.value = values.join(QLatin1String(", "));
  r.number = shown_.front();
  r.low = scale_.low;
  r.high = scale_.high;
  return r;
}

void DialPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void DialPart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

void DialPart::paint(drawing::Pen& pen) const {
  std::vector<drawing::DialNeedle> needles;
  for (std::size_t k = needles_.size(); k-- > 0;)  // the first one lies on top
    needles.push_back({shown_[k], needles_[k].kind});
  drawing::DialLook look;
  look.focus = hasFocus();
  look.dark = !readable_;
  drawing::paintDial(pen, centre_, radius_, scale_, needles, look);
  const double yn = centre_.y() + radius_ + 30;
  if (named_) drawing::paintNameLine(pen, {centre_.x(), yn}, name_, {});
  if (!under_.isEmpty())
    pen.text({centre_.x(), yn + 26}, under_, {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  if (needles_.size() < 2) return;
  for (std::size_t k = 0; k < needles_.size(); ++k) {
    const double y = yn + 26 + 25 * static_cast<double>(k);
    drawing::paintNeedleSign(pen, {centre_.x() - 72, y - 7}, needles_[k].kind);
    pen.text({centre_.x() - 34, y}, needles_[k].name, {.tone = Tone::kInk2});
  }
}

LampPart::LampPart(Seat& seat, const SheetStyle& style, unit::Signal lamp,
                   std::optional<unit::Signal> brightness, drawing::LampColor color, QPointF centre,
                   QString word, QWidget* parent)
    : Part(seat, style, parent),
      lamp_(lamp),
      brightness_(brightness),
      color_(color),
      centre_(centre),
      word_(std::move(word)) {
  setFocusPolicy(Qt::TabFocus);
  setAccessibleName(word_);
  const std::string_view name = unit::signalInfo(lamp).name;
  setObjectName(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
}

void LampPart::refresh() {
  const bool readable = seat().isPerceived(lamp_);
  const bool lit = readable && seat().value(lamp_) > 0.5;
  const double bright = brightness_ ? seat().value(*brightness_) : 1.0;
  if (lit == lit_ && readable == readable_ && std::abs(bright - bright_) < 0.03) return;
  const bool switched = lit != lit_;
  lit_ = lit;
  bright_ = bright;
  readable_ = readable;
  update();
  if (switched) announceValue();
}

PartRole LampPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kLamp;
  r.name = word_;
  r.value = !readable_ ? tr("cannot be seen") : lit_ ? tr("lit") : tr("dark");
  r.description = textOf(lamp_);
  return r;
}

bool LampPart::activate() {
  Q_EMIT asked(this);
  return true;
}

void LampPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate();
}

void LampPart::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space || event->key() == Qt::Key_Return) {
    activate();
  } else {
    event->ignore();
  }
}

void LampPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void LampPart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

void LampPart::paint(drawing::Pen& pen) const {
  drawing::LampLook look;
  look.color = color_;
  look.lit = lit_;
  look.brightness = std::clamp(bright_, 0.0, 1.0);
  look.mixed = true;
  look.focus = hasFocus();
  look.out_of_reach = !readable_;
  drawing::paintLamp(pen, centre_, look, word_);
}

void DialPart::paintPointer(drawing::Pen& pen) const {
  paintPointerUnder(pen, {centre_.x(), centre_.y() + radius_ + 30},
                    drawing::textWidth(name_, drawing::kName, true));
}

void LampPart::paintPointer(drawing::Pen& pen) const {
  paintPointerUnder(pen, centre_ + QPointF(0, 44), drawing::textWidth(word_, drawing::kText, true));
}

}  // namespace cabwright::cab
