// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_cupboard.h"

#include <array>

#include "cab/draw_cupboard.h"
#include "cab/names.h"
#include "cab/show_parts.h"
#include "cab/thing_part.h"
#include "drawing/furniture.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Pen;
using drawing::Tone;
using unit::Control;
using unit::Item;

namespace {

constexpr double kLeaf = 52, kThingsHeight = 62, kVoltsR = 92;
constexpr std::array<Control, 4> kBreakers{Control::kBreakerControl, Control::kBreakerStart,
                                           Control::kBreakerLamps, Control::kBreakerLights};
constexpr std::array<Consumer, 5> kConsumers{Consumer::kControl, Consumer::kStarter,
                                             Consumer::kLamps, Consumer::kLights, Consumer::kFan};

QRectF around(QPointF centre, double left, double up, double right, double down) {
  return {centre.x() - left, centre.y() - up, left + right, up + down};
}

}  // namespace

CupboardPlate::CupboardPlate(const PlateContext& context, QWidget* parent)
    : RoomPlate(context, parent) {
  const QRectF& a = area();
  box_ = {a.left() + kLeaf + 8, a.top() + 34, a.width() - 2 * kLeaf - 16,
          a.height() - 34 - kThingsHeight - 26};
  const double more = spare();
  bus_x_ = box_.left() + 0.30 * box_.width();
  bus_y_ = box_.top() + 48 + more * 0.05;
  y_breaker_ = bus_y_ + 124 + more * 0.1;
  y_branch_ = y_breaker_ + 122 + more * 0.1;
  y_heater_ = y_branch_ + 72 + more * 0.05;
  y_consumer_ = box_.bottom() - 122;
  volts_ = {box_.left() + 0.15 * box_.width(), box_.top() + 126 + more * 0.1};
  knife_ = {volts_.x(), volts_.y() + 284 + more * 0.2};
  battery_ = {volts_.x(), box_.bottom() - 44};
  addBattery();
  addBreakers();
  const QRectF row(a.left(), a.bottom() - kThingsHeight + 2, a.width(), kThingsHeight - 2);
  addShown<ThingRow>(row, row, std::vector<unit::Object>{});
}

double CupboardPlate::column(int which) const {
  const double pitch = (box_.right() - 20 - bus_x_) / 5;
  return bus_x_ + (which + 0.42) * pitch;
}

void CupboardPlate::addBattery() {
  auto* dial = addShown<DialPart>(
      around(volts_, kVoltsR + 12, kVoltsR + 32, kVoltsR + 44, kVoltsR + 12), volts_, kVoltsR,
      drawing::DialScale{.low = 0,
                         .high = 35,
                         .major = 5,
                         .minor = 1,
                         .unit = tr("V"),
                         .marks = {{24, QStringLiteral("24")}, {28, QStringLiteral("28")}}},
      std::vector<DialNeedleOf>{{unit::Signal::kCupboardVolts, drawing::NeedleKind::kSolid, {}}},
      nameOf(Item::kVolts));
  dial->setNamed(false);
  addItem(Item::kVolts, {.thing = around(volts_, kVoltsR, kVoltsR, kVoltsR, kVoltsR),
                         .label = volts_ + QPointF(-62, kVoltsR + 36),
                         .leader = false});
  const QPointF c = knife_;
  auto* knife = addControl<DrawnPart>(
      {}, Control::kBatterySwitch, QString(), [c](Pen& pen, const DrawnState& state) {
        paintKnifeSwitch(pen, c, state);
        paintControlWord(pen, c + QPointF(-58, 24), Anchor::kEnd, state, 96);
      });
  knife->setArea(
      around(c, 158, 136, 160, 100),
      {around(c, 38, 136, 38, 100), around(c, -30, 80, 160, 100), around(c, 158, -4, -44, 34)});
  const QRectF slab = knifeSwitchSlab(c);
  addItem(Item::kBatterySwitchItem, {.thing = {slab.left() + 8, slab.bottom() - 20, 84, 16},
                                     .label = {slab.right() + 10, slab.top() + 16},
                                     .leader = false});
}

void CupboardPlate::addBreakers() {
  const std::array<QString, 5> names{tr("Control"), tr("Start"), tr("Lamps"), tr("Lights"),
                                     tr("Heater")};
  for (int k = 0; k < 5; ++k) {
    const auto which = static_cast<std::size_t>(k);
    const QPointF c(column(k), k < 4 ? y_breaker_ : y_heater_);
    const Control control = k < 4 ? kBreakers[which] : Control::kHeater;
    const QString name = names[which];
    const QPointF words = c + (k < 4 ? QPointF(14, 80) : QPointF(-46, -6));
    const Anchor anchor = k < 4 ? Anchor::kStart : Anchor::kEnd;
    auto* part = addControl<DrawnPart>(
        {}, control, QString(), [c, name, words, anchor](Pen& pen, const DrawnState& state) {
          paintBreaker(pen, c, state);
          pen.text(words, name, {.anchor = anchor, .on = Tone::kFace});
          paintControlWord(pen, words + QPointF(0, 24), anchor, state, 116);
        });
    const QRectF said = k < 4 ? around(c, -10, -63, 134, 112) : around(c, 134, 26, -43, 28);
    part->setArea(around(c, 134, 64, 134, 112), {around(c, 42, 64, 42, 64), said});
  }
  const double rail = y_breaker_ - 72;
  addItem(Item::kBreakers, {.thing = {column(0) - 44, rail - 5, column(3) - column(0) + 88, 10},
                            .label = {column(4) - 32, rail + 6},
                            .leader = false});
}

std::vector<double> CupboardPlate::liveState() const {
  std::vector<double> state;
  for (Control c : kBreakers) state.push_back(seat().value(c));
  state.push_back(seat().value(Control::kHeater));
  state.push_back(seat().value(Control::kBatterySwitch));
  return state;
}

QPointF CupboardPlate::darkWords() const { return {(column(0) + column(3)) / 2, box_.top() + 26}; }

void CupboardPlate::paintGround(Pen& pen) const {
  drawing::paintCaption(pen, area().topLeft() + QPointF(0, 18), area().width(),
                        tr("Electric cupboard, wiring as single lines"),
                        tr("heavy: live, dashed: dead"));
  paintCupboardCase(pen, box_, kLeaf);
  const QRectF slab = knifeSwitchSlab(knife_);
  pen.rect(slab, {}, Tone::kPaper, 4);
  for (double x : {slab.left() + 10, slab.right() - 10}) {
    for (double y : {slab.top() + 10, slab.bottom() - 30})
      pen.circle({x, y}, 3, {drawing::kThin, Tone::kInk, {}, false});
  }
  // The rail the breakers hang on.
  const double rail = y_breaker_ - 72;
  pen.rect({column(0) - 44, rail - 5, column(3) - column(0) + 88, 10},
           {drawing::kThin, Tone::kInk, {}, false}, Tone::kPaper, 2);
  for (int k = 0; k < 4; ++k) {
    pen.circle({column(k) - 24, rail}, 2, {drawing::kHairline, Tone::kInk, {}, false});
    pen.circle({column(k) + 24, rail}, 2, {drawing::kHairline, Tone::kInk, {}, false});
  }
  pen.text(battery_ + QPointF(70, 6.5), tr("battery"), {.tone = Tone::kInk2, .on = Tone::kFace});
  const std::array<QString, 5> feeds{
      tr("desks and control circuits"), tr("starters and their relays"),
      tr("indication lamps and bell"), tr("lights, displays, wipers"),
      tr("fan of the saloon heater")};
  for (int k = 0; k < 5; ++k) {
    double y = y_consumer_ + 56;
    for (const QString& line : drawing::wrapText(feeds[static_cast<std::size_t>(k)], 128)) {
      pen.text({column(k), y}, line,
               {.anchor = Anchor::kMiddle, .tone = Tone::kInk2, .on = Tone::kFace});
      y += 23;
    }
  }
}

void CupboardPlate::paintWires(Pen& pen) const {
  const bool bus = isOn(Control::kBatterySwitch);
  const double minus = knife_.x() - 96;
  // From the battery, which is always alive, to the hinge; from the clip to the bus.
  paintBattery(pen, battery_, 108);
  const double plus = battery_.x() - 54 + 0.3 * 27;
  paintWire(pen,
            {{{plus, battery_.y()},
              {minus + 20, battery_.y()},
              {minus + 20, knife_.y() + 110},
              {knife_.x(), knife_.y() + 110},
              {knife_.x(), knife_.y() + 88}}},
            true);
  const double turn = knife_.y() - 126;
  paintWire(pen,
            {{{knife_.x(), knife_.y() - 92},
              {knife_.x(), turn},
              {bus_x_ - 12, turn},
              {bus_x_ - 12, bus_y_},
              {column(3), bus_y_}}},
            bus);
  paintWire(
      pen,
      QPolygonF({QPointF(bus_x_ - 12, volts_.y()), QPointF(volts_.x() + kVoltsR + 2, volts_.y())}),
      bus);
  paintJoint(pen, {bus_x_ - 12, volts_.y()}, bus);
}

void CupboardPlate::paintBranches(Pen& pen) const {
  const bool bus = isOn(Control::kBatterySwitch);
  for (int k = 0; k < 5; ++k) {
    const double x = column(k);
    const bool heater = k == 4;
    const bool fed = bus && (!heater || isOn(Control::kBreakerLights));
    const bool on = fed && isOn(heater ? Control::kHeater : kBreakers[static_cast<std::size_t>(k)]);
    if (heater) {
      paintWire(pen, {{{column(3), y_branch_}, {x, y_branch_}, {x, y_heater_ - 54}}}, fed);
      paintJoint(pen, {column(3), y_branch_}, fed);
    } else {
      paintWire(pen, QPolygonF({QPointF(x, bus_y_), QPointF(x, y_breaker_ - 54)}), bus);
      paintJoint(pen, {x, bus_y_}, bus);
    }
    paintWire(pen,
              QPolygonF({QPointF(x, (heater ? y_heater_ : y_breaker_) + 54),
                         QPointF(x, y_consumer_ - 25)}),
              on);
    paintConsumer(pen, {x, y_consumer_}, kConsumers[static_cast<std::size_t>(k)], on);
  }
}

void CupboardPlate::paintState(Pen& pen) const {
  paintWires(pen);
  paintBranches(pen);
}

}  // namespace cabwright::cab
