// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_end.h"

#include <algorithm>
#include <cmath>

#include "cab/show_parts.h"
#include "drawing/lamp.h"

namespace cabwright::cab {

using drawing::LampColor;
using drawing::Pen;
using unit::Control;
using unit::Item;
using unit::Signal;

namespace {

constexpr double kLampR = 15, kDetailR = 105;
constexpr double kSweep_s = 1.6;  // of the wiper, there and back

}  // namespace

EndPlate::EndPlate(int end, const PlateContext& context, QWidget* parent)
    : GroundPlate(context, parent), end_(end) {
  const QRectF& a = area();
  const double height = std::min(a.height(), 800.0);
  const double top = a.top() + (a.height() - height) / 2;
  f_.scale = (height - 10) / (kRoofTop_m + 0.28);
  f_.x = a.center().x();
  f_.rail_y = top + 6 + kRoofTop_m * f_.scale;
  const double y = top + height - 208;
  hose_ = {
      f_.at(-(kHoseOut_m + kDummyOut_m) / 2, 0.74), 0.26 * f_.scale, {a.left() + 148, y}, kDetailR};
  coupling_ = {f_.at(0, 0.80), 0.22 * f_.scale, {a.right() - 148, y}, kDetailR};
  setDetails({hose_, coupling_});
  addLamps();
  addLeft();
  addRight();
  const Control hose = end_ == 0 ? Control::kHose1 : Control::kHose2;
  addToggle(hose, {hose_.centre.x(), y + kDetailR + 46}, 140);
  setDarkWords({a.left() + 130, a.top() + 18});
}

Item EndPlate::item(Item of_end1) const {
  const auto stride = unit::indexOf(Item::kEnd2Hoses) - unit::indexOf(Item::kEnd1Hoses);
  return static_cast<Item>(unit::indexOf(of_end1) + static_cast<std::size_t>(end_) * stride);
}

Signal EndPlate::signal(Signal of_end1) const {
  const auto stride = static_cast<int>(Signal::kEnd2White) - static_cast<int>(Signal::kEnd1White);
  return static_cast<Signal>(static_cast<int>(of_end1) + end_ * stride);
}

void EndPlate::addLamps() {
  const Signal bright = signal(Signal::kCab1Bright);
  const auto lamp = [&](Signal of_end1, double out_m, LampColor color, const QString& word) {
    const QPointF c = f_.at(out_m, kLampUp_m);
    addShown<LampPart>(QRectF(c.x() - 31, c.y() - 31, 62, 82), signal(of_end1), bright, color, c,
                       word);
  };
  lamp(Signal::kEnd1White, kWhiteLampOut_m, LampColor::kWhite, tr("WHITE"));
  lamp(Signal::kEnd1RedLit, kRedLampOut_m, LampColor::kRed, tr("RED"));
}

void EndPlate::addLeft() {
  const double x = area().left() + 230, top = f_.rail_y - kRoofTop_m * f_.scale;
  const auto down = [&](double share) { return top + share * (hose_.centre.y() - top); };
  const auto left = [&](Item of_end1, const QRectF& thing, double y, QPointF dot = {}) {
    addNamed(item(of_end1), thing, Stands::kLeft, {x, y}, dot);
  };
  left(Item::kEnd1Horn, f_.box(-1.02, 3.10, -0.60, 3.30), down(0.12));
  left(Item::kEnd1Protection, f_.box(-0.86, 1.90, -0.38, 2.54), down(0.36), f_.at(-0.62, 1.99));
  left(Item::kEnd1Lamps, f_.box(-1.13, 1.52, -0.56, 1.72), down(0.56),
       f_.at(-kWhiteLampOut_m, kLampUp_m));
  const QPointF c = hose_.centre;
  addNamed(item(Item::kEnd1Hoses), QRectF(c.x() - 76, c.y() - 68, 152, 152), Stands::kAbove,
           {c.x(), c.y() - kDetailR - 18}, c + QPointF(47, -24));
  left(Item::kEnd1Sockets, f_.box(-0.47, 1.46, -0.01, 1.74), down(0.69), f_.at(-0.36, 1.53));
}

void EndPlate::addRight() {
  const double x = area().right() - 206, top = f_.rail_y - kRoofTop_m * f_.scale;
  const auto down = [&](double share) { return top + share * (coupling_.centre.y() - top); };
  const auto right = [&](Item of_end1, const QRectF& thing, double y, QPointF dot = {}) {
    addNamed(item(of_end1), thing, Stands::kRight, {x, y}, dot);
  };
  right(Item::kEnd1Display, f_.box(-0.46, 3.07, 0.46, 3.42), down(0.10), f_.at(0.40, 3.30));
  right(Item::kEnd1Window, f_.box(0.16, 2.46, 1.08, 2.90), down(0.30), f_.at(0.86, 2.70));
  right(Item::kEnd1Wiper, f_.box(0.20, 2.05, 0.72, 2.40), down(0.42), f_.at(0.64, 2.07));
  right(Item::kEnd1TailLamp, f_.box(0.145, 1.35, 0.375, 1.80), down(0.66), f_.at(0.34, 1.70));
  const QPointF c = coupling_.centre;
  addNamed(item(Item::kEnd1Coupling), QRectF(c.x() - 66, c.y() - 60, 132, 154), Stands::kAbove,
           {c.x(), c.y() - kDetailR - 18}, c + QPointF(-24, -18));
  right(Item::kEnd1Steps, f_.box(0.94, 0.28, 1.32, 0.68), c.y() + kDetailR + 34,
        f_.at(1.22, 0.345));
  right(Item::kEnd1Lifeguard, f_.box(0.68, 0.08, 0.83, 0.82), c.y() + kDetailR + 72,
        f_.at(0.745, 0.14));
}

EndPlate::Look EndPlate::look() const {
  Look l;
  l.white = seat().value(signal(Signal::kEnd1White)) > 0.5;
  l.red = seat().value(signal(Signal::kEnd1RedLit)) > 0.5;
  l.brightness = seat().value(signal(Signal::kCab1Bright));
  l.number = static_cast<int>(std::lround(seat().value(signal(Signal::kEnd1Shows))));
  l.hoses_on = seat().value(end_ == 0 ? Control::kHose1 : Control::kHose2) > 0.5;
  l.hooked_up = shown(item(Item::kEnd1Coupling)) != 1;
  l.tail_lamp = shown(item(Item::kEnd1TailLamp)) != 2;
  l.protection = shown(item(Item::kEnd1Protection));
  if (seat().value(signal(Signal::kCab1Swept)) > 0.5) {
    const double share =
        std::fmod(static_cast<double>(seat().run().tick()) * 0.01, kSweep_s) / kSweep_s;
    l.wiper = context().style.reduced_motion ? 0.5 : 1 - std::abs(1 - 2 * share);
  }
  return l;
}

std::vector<double> EndPlate::liveState() const {
  const Look l = look();
  return {l.white ? 1.0 : 0,     l.red ? 1.0 : 0,      std::round(l.brightness * 20),
          double(l.number),      l.hoses_on ? 1.0 : 0, l.hooked_up ? 1.0 : 0,
          l.tail_lamp ? 1.0 : 0, double(l.protection), std::round(l.wiper * 60)};
}

void EndPlate::drawGround(Pen& pen) const {
  drawTrackAcross(pen, f_);
  drawWheelsBehind(pen, f_);
  drawSteps(pen, f_);
  drawFace(pen, f_);
  drawBufferBeam(pen, f_);
  drawLifeguards(pen, f_);
  drawDetails(pen);
}

void EndPlate::drawLive(Pen& pen) const {
  const Look l = look();
  drawDisplay(pen, f_, l.number);
  drawWiper(pen, f_, l.wiper);
  drawTailLamp(pen, f_, l.tail_lamp, l.red);
  const auto lamp = [&](double out_m, LampColor color, bool lit, const QString& word) {
    drawing::paintLamp(pen, f_.at(-out_m, kLampUp_m),
                       {.color = color, .lit = lit, .brightness = l.brightness, .mixed = true},
                       word, kLampR);
  };
  lamp(kWhiteLampOut_m, LampColor::kWhite, l.white, tr("WHITE"));
  lamp(kRedLampOut_m, LampColor::kRed, l.red, tr("RED"));
  drawBrakeHoses(pen, f_, l.hoses_on);
  drawCoupling(pen, f_, l.hooked_up);
  drawEndProtection(pen, f_, l.protection);
  for (const DetailCircle* d : {&hose_, &coupling_})
    pen.circle(d->spot, d->spot_r, {drawing::kNorm, drawing::Tone::kInk2});
  drawHoseDetail(pen, hose_.centre, l.hoses_on);
  drawCouplingDetail(pen, coupling_.centre, l.hooked_up);
}

}  // namespace cabwright::cab
