// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_side.h"

#include <algorithm>
#include <cmath>

#include "cab/draw_car_detail.h"
#include "cab/names.h"
#include "cab/pull_part.h"
#include "unit/perception.h"

namespace cabwright::cab {

using drawing::Pen;
using unit::Control;
using unit::Item;
using unit::Signal;

SidePlate::SidePlate(bool motor_car, int side, const PlateContext& context, QWidget* parent)
    : GroundPlate(context, parent), motor_(motor_car), side_(side) {
  layOut();
  addAbove();
  addBelow();
  addWheelNames();
  addSmallCircles();
  addControls();
}

void SidePlate::layOut() {
  const QRectF& a = area();
  const double spare = std::max(0.0, a.height() - 736);
  f_.cab_right = motor_ == (side_ == 0);
  f_.scale = (a.width() - 60) / (kCarLength_m + 0.4);
  const double room = a.width() - kCarLength_m * f_.scale;
  f_.left = a.left() + (f_.cab_right ? room - 28 : 28);
  f_.rail_y = a.top() + 44 + 0.25 * spare + kCarTop_m * f_.scale;
  y_below_ = f_.rail_y + 0.3 * f_.scale + 26;
  const double top = y_below_ + 12 + 0.3 * spare;
  const double w = a.width() / 1180;
  wheel_ = {f_.at(kDetailWheel_m, 0.46),
            0.66 * f_.scale,
            {mirrored(a.left() + 279 * w), top + kWheelCircle},
            kWheelCircle};
  cylinder_ = {f_.at(kCylinder_m, 0.48),
               0.44 * f_.scale,
               {mirrored(a.left() + 730 * w), top + 12 + kSmallCircle},
               kSmallCircle};
  drain_ = {f_.at(kDrain_m, 0.42),
            0.40 * f_.scale,
            {mirrored(a.left() + 1036 * w), top + 12 + kSmallCircle},
            kSmallCircle};
  setDetails({wheel_, cylinder_, drain_});
  setDarkWords({f_.at(12.73, 0).x(), a.top() + 18});
}

double SidePlate::mirrored(double x) const {
  return f_.cab_right ? x : area().left() + area().right() - x;
}

Item SidePlate::item(Item of_side1) const {
  const auto first = motor_ ? (side_ == 0 ? Item::kSide1Protection : Item::kSide2Protection)
                            : (side_ == 0 ? Item::kTrailer1Protection : Item::kTrailer2Protection);
  return static_cast<Item>(unit::indexOf(first) + unit::indexOf(of_side1) -
                           unit::indexOf(Item::kSide1Protection));
}

Item SidePlate::ownItem(Item of_trailer1) const {
  const auto stride =
      unit::indexOf(Item::kTrailer2Telltale) - unit::indexOf(Item::kTrailer1Telltale);
  return static_cast<Item>(unit::indexOf(of_trailer1) + static_cast<std::size_t>(side_) * stride);
}

std::optional<Control> SidePlate::scotchControl() const {
  if (side_ != 0) return {};
  return motor_ ? Control::kScotch1 : Control::kScotch2;
}

std::optional<Control> SidePlate::drainControl() const {
  if (!motor_) return {};
  return side_ == 0 ? Control::kDrainMain : Control::kDrainControl;
}

Control SidePlate::cord() const {
  if (motor_) return side_ == 0 ? Control::kCord1 : Control::kCord2;
  return side_ == 0 ? Control::kCord3 : Control::kCord4;
}

double SidePlate::valueOf(std::optional<Control> control) const {
  return control ? seat().value(*control) : 0;
}

void SidePlate::addAbove() {
  const double y = area().top() + 18;
  const auto above = [&](Item i, const QRectF& thing, double along_m, QPointF dot) {
    addNamed(i, thing, Stands::kAbove, {f_.at(along_m, 0).x(), y}, dot);
  };
  if (!motor_)
    above(ownItem(Item::kTrailer1Telltale), f_.box(0.16, 3.02, 0.48, 3.52), 1.0, f_.at(0.32, 3.36));
  above(item(Item::kSide1Windows), f_.box(2.32, 2.0, 3.62, 2.86), 3.3, f_.at(3.3, 2.72));
  above(item(Item::kSide1Doors), f_.box(8.55, 1.02, 9.40, 3.08), 8.2, f_.at(8.90, 2.95));
  above(item(Item::kSide1People), f_.box(9.62, 0.98, 10.28, 1.75), 10.2, f_.at(10.05, 1.62));
  const double bracket = f_.at(kBracket_m, 0).x();
  const double half =
      drawing::textWidth(nameOf(Item::kSide1Protection), drawing::kText, true) / 2 + 13;
  addNamed(item(Item::kSide1Protection), f_.box(16.42, 1.45, 16.98, 1.92), Stands::kAbove,
           {std::clamp(bracket, area().left() + half, area().right() - half), y},
           f_.at(kBracket_m, kBracketUp_m));
}

void SidePlate::addBelow() {
  const auto below = [&](Item i, const QRectF& thing, double along_m, QPointF dot) {
    addNamed(i, thing, Stands::kBelow, {f_.at(along_m, 0).x(), y_below_}, dot);
  };
  if (motor_) {
    const Item cardan = side_ == 0 ? Item::kSide1Cardan : Item::kSide2Cardan;
    below(cardan, f_.box(4.75, 0.26, 6.30, 0.60), 7.3, f_.at(5.9, 0.47));
  } else {
    addRow({{ownItem(Item::kTrailer1Batteries), f_.box(4.85, 0.22, 6.25, 0.60), f_.at(5.8, 0.34)},
            {ownItem(Item::kTrailer1Underframe), f_.box(6.55, 0.24, 8.55, 0.62), f_.at(7.6, 0.42)},
            {ownItem(Item::kTrailer1Heater), f_.box(8.9, 0.26, 10.45, 0.62), f_.at(9.4, 0.45)}},
           (joinAt(wheel_, y_below_ - 7, true) + joinAt(cylinder_, y_below_ - 7, false)) / 2);
  }
  below(item(Item::kSide1Skirts), f_.box(16.50, 0.52, 17.40, 0.92), 16.7, f_.at(16.9, 0.66));
}

double SidePlate::joinAt(const DetailCircle& detail, double y, bool towards_cab) const {
  std::vector<double> at;
  for (const QLineF& join : detail.joins())
    at.push_back(join.pointAt((y - join.y1()) / join.dy()).x());
  return towards_cab == f_.cab_right ? std::ranges::max(at) : std::ranges::min(at);
}

void SidePlate::addRow(std::vector<Named> names, double middle) {
  std::ranges::sort(names, {}, [](const Named& n) { return n.dot.x(); });
  const auto width = [](const Named& n) {
    return drawing::textWidth(nameOf(n.item), drawing::kText, true) + 26;  // and a verdict
  };
  double x = middle + 13 - 4 * static_cast<double>(names.size() - 1);
  for (const Named& n : names) x -= width(n) / 2;
  for (const Named& n : names) {
    addNamed(n.item, n.thing, Stands::kBelow, {x + width(n) / 2, y_below_}, n.dot);
    x += width(n) + 8;
  }
}

void SidePlate::addWheelNames() {
  const QPointF c = wheel_.centre;
  const double aside = kWheelCircle + 24;
  const auto name = [&](Item i, const QRectF& thing, bool right, double dy, QPointF dot) {
    addNamed(item(i), thing.translated(c), right ? Stands::kRight : Stands::kLeft,
             c + QPointF(right ? aside : -aside, dy), c + dot);
  };
  name(Item::kSide1Springs, kSpringTop, false, -64, {-58, -49});
  name(Item::kSide1Blocks, kBlockLeft, false, 4, {-85, 14});
  name(Item::kSide1Wheels, kWheelTread, false, 92, {-50, 66});
  name(Item::kSide1Axleboxes, kBoxMiddle, true, -64, {14, -2});
  name(Item::kSide1Scotches, kScotchRight, true, 40, {92, 76});
  name(Item::kSide1Rigging, kRiggingRight, true, 110, {30, 111});
}

void SidePlate::addSmallCircles() {
  const auto name = [&](Item i, const QRectF& thing, QPointF c, double dx, double dy, QPointF dot) {
    addNamed(item(i), thing.translated(c), Stands::kBelow, c + QPointF(dx, dy), c + dot);
  };
  const double under = kSmallCircle + 32;
  name(Item::kSide1Cylinder, kDrum, cylinder_.centre, -78, under, {-34, 10});
  name(Item::kSide1Cord, kCordRight, cylinder_.centre, 92, under, {74, 22});
  name(Item::kSide1Pipes, kPipesTop, drain_.centre, -74, under, {-74, -36});
  name(Item::kSide1Drains, kCockBelow, drain_.centre, 66, under, {6, 90});
}

void SidePlate::addControls() {
  const double y = std::min(wheel_.centre.y() + kWheelCircle + 62 + 0.15 * (area().height() - 736),
                            area().bottom() - 61);
  const Control door = side_ == 0 ? Control::kDoor1 : Control::kDoor2;
  if (const auto scotch = scotchControl()) {
    addToggle(door, {wheel_.centre.x() - 120, y}, 112);
    addToggle(*scotch, {wheel_.centre.x() + 120, y}, 112);
  } else {
    addToggle(door, {wheel_.centre.x(), y}, 150);
  }
  const QPointF hook(cylinder_.centre.x(), y - 26);
  addControl<PullPart>(QRectF(hook.x() - 120, hook.y() - 12, 240, 98), cord(), hook);
  addToggle(drainControl().value_or(Control::kAlarm), {drain_.centre.x(), y}, 130);
}

CarLook SidePlate::look() const {
  CarLook l;
  l.motor = motor_;
  l.door_open = seat().value(side_ == 0 ? Control::kDoor1 : Control::kDoor2) > 0.5;
  l.alarm = !motor_ && seat().value(Control::kAlarm) > 0.5;
  const Signal blocks = motor_
                            ? (side_ == 0 ? Signal::kSide1BlocksOn : Signal::kSide2BlocksOn)
                            : (side_ == 0 ? Signal::kTrailer1BlocksOn : Signal::kTrailer2BlocksOn);
  // In the dark nothing is to be made out of them: drawn neither on nor off.
  l.blocks_on = seat().isPerceived(blocks) ? std::clamp(seat().value(blocks), 0.0, 1.0) : 0.5;
  const int scotches = shown(item(Item::kSide1Scotches));
  l.scotches = std::max(scotches, valueOf(scotchControl()) > 0.5 ? 1 : 0);
  l.person = shown(item(Item::kSide1People));
  l.protection = shown(item(Item::kSide1Protection));
  const auto seen = [this](Signal first, Signal second) {
    const Signal s = side_ == 0 ? first : second;
    return seat().isPerceived(s) ? seat().value(s) : 0.0;
  };
  l.smoke = std::clamp(seen(Signal::kEngine1Smoke, Signal::kEngine2Smoke), 0.0, 1.0);
  l.fire = seen(Signal::kEngine1FireSeen, Signal::kEngine2FireSeen) > 0.5;
  return l;
}

// An open cock is seen by its bar; what else is wrong with it, by who has looked.
DrainState SidePlate::drain() const {
  if (valueOf(drainControl()) > 0.5) return DrainState::kOpen;
  const unit::World& w = seat().unit().world();
  const Item drains = item(Item::kSide1Drains);
  const int condition = unit::hasSeen(w, drains) ? unit::findVisibleCondition(w, drains) : 0;
  if (condition == 0) return DrainState::kShut;
  const std::string& name =
      unit::itemInfo(drains).conditions[static_cast<std::size_t>(condition - 1)].name;
  if (name == "dripping") return DrainState::kDripping;
  if (name == "cracked") return DrainState::kCracked;
  return name == "ice" ? DrainState::kIced : DrainState::kShut;
}

std::vector<double> SidePlate::liveState() const {
  const CarLook l = look();
  return {l.door_open ? 1.0 : 0, l.alarm ? 1.0 : 0, std::round(l.blocks_on * 40),
          double(l.scotches),    double(l.person),  double(l.protection),
          double(drain()),       valueOf(cord()),   std::round(l.smoke * 12),
          l.fire ? 1.0 : 0};
}

void SidePlate::drawGround(Pen& pen) const {
  drawTrackAlong(pen, f_, area().left(), area().right());
  if (motor_) {
    drawUnderMotorCar(pen, f_);
  } else {
    drawUnderTrailer(pen, f_);
  }
  drawSkirts(pen, f_);
  drawBogie(pen, f_, kInnerBogie_m);
  drawBogie(pen, f_, kOuterBogie_m);
  drawCarBody(pen, f_, motor_);
  drawDetails(pen);
}

void SidePlate::drawLive(Pen& pen) const {
  const CarLook l = look();
  drawCarLive(pen, f_, l);
  drawWheelDetail(pen, wheel_.centre, l.blocks_on, l.scotches > 0);
  drawCylinderDetail(pen, cylinder_.centre, l.blocks_on, valueOf(cord()) > 0.5);
  drawDrainDetail(pen, drain_.centre, motor_, drain());
}

}  // namespace cabwright::cab
