// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_saloon.h"

#include "cab/names.h"
#include "cab/switch_parts.h"
#include "cab/thing_part.h"
#include "drawing/furniture.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Pen;
using drawing::Tone;
using unit::Control;
using unit::Item;

namespace {

constexpr double kColumn = 204, kThingsHeight = 62;

QRectF around(QPointF centre, double left, double up, double right, double down) {
  return {centre.x() - left, centre.y() - up, left + right, up + down};
}

QRectF pictureIn(const QRectF& area) {
  return {area.left() + kColumn, area.top() + 34, area.width() - 2 * kColumn,
          area.height() - 34 - kThingsHeight - 10};
}

}  // namespace

SaloonPlate::SaloonPlate(const PlateContext& context, QWidget* parent)
    : RoomPlate(context, parent),
      view_(pictureIn(context.area)),
      left_(context.area.left() + 96),
      right_(context.area.right() - 98) {
  const QRectF& p = view_.picture();
  const auto toggle = [&](double x, double y, Control c) {
    const QPointF centre(x, y);
    addControl<TogglePart>(around(centre, 96, 30, 97, 62), c, QString(), centre);
  };
  const double y_door = p.top() + 0.62 * p.height();
  toggle(left_, y_door, Control::kDoor2);
  toggle(right_, y_door, Control::kDoor1);
  toggle(left_, p.top() + 60, Control::kSaloonLights);
  const QPointF handle(right_, p.top() + 66);
  addControl<DrawnPart>(around(handle, 84, 44, 84, 92), Control::kAlarm, QString(),
                        [handle](Pen& pen, const DrawnState& state) {
                          paintAlarmHandle(pen, handle, state);
                          paintControlName(pen, handle + QPointF(0, 62), nameOf(Control::kAlarm),
                                           state, 164);
                          pen.text(handle + QPointF(0, 86), state.position,
                                   {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
                        });
  const double names = area().left();
  addItem(Item::kSaloonLightsItem,
          {.thing = saloonLampBox(view_), .label = {p.left() + 92, p.top() + 34}});
  addItem(Item::kSaloonDoors, {.thing = saloonDoorBox(view_, 2), .label = {names, y_door - 74}});
  addItem(Item::kSaloonAlarm, {.thing = saloonAlarmBox(view_),
                               .label = {area().right(), p.top() + 218},
                               .label_ends = true});
  const QRectF row(area().left(), area().bottom() - kThingsHeight + 2, area().width(),
                   kThingsHeight - 2);
  addShown<ThingRow>(row, row, std::vector<unit::Object>{});
}

// As they burn: switched on, with current as far as the lights' breaker.
bool SaloonPlate::areLampsLit() const {
  return isOn(Control::kSaloonLights) && isOn(Control::kBreakerLights) &&
         seat().value(unit::Signal::kTrueBusV) > 12;
}

SaloonState SaloonPlate::state() const {
  SaloonState s;
  s.door_open = {isOn(Control::kDoor1), isOn(Control::kDoor2)};
  s.alarm_pulled = isOn(Control::kAlarm);
  s.lamps_lit = areLampsLit();
  s.dark_outside = isDarkOutside();
  return s;
}

std::vector<double> SaloonPlate::liveState() const {
  const SaloonState s = state();
  return {s.door_open[0] ? 1.0 : 0.0, s.door_open[1] ? 1.0 : 0.0, s.alarm_pulled ? 1.0 : 0.0,
          s.lamps_lit ? 1.0 : 0.0};
}

QPointF SaloonPlate::darkWords() const {
  return {view_.picture().center().x(), view_.picture().bottom() - 20};
}

void SaloonPlate::paintGround(Pen& pen) const {
  drawing::paintCaption(pen, area().topLeft() + QPointF(0, 18), area().width(),
                        tr("Saloon, looking towards cab 1"));
  const double y = view_.picture().top() + 0.62 * view_.picture().height() - 40;
  pen.text({left_, y}, tr("side 2, other line"), {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  pen.text({right_, y}, tr("side 1, path"), {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  paintSaloonGround(pen, view_, isDarkOutside());
}

void SaloonPlate::paintState(Pen& pen) const { paintSaloonState(pen, view_, state()); }

}  // namespace cabwright::cab
