// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_between.h"

#include <algorithm>

namespace cabwright::cab {

using drawing::Pen;
using unit::Control;
using unit::Item;

namespace {

constexpr double kDetailR = 105, kHeightShown_m = 2.72;

}  // namespace

BetweenPlate::BetweenPlate(const PlateContext& context, QWidget* parent)
    : GroundPlate(context, parent) {
  const QRectF& a = area();
  const double height = std::min(a.height(), 800.0);
  top_y_ = a.top() + (a.height() - height) / 2 + 30;
  f_.scale = (height - 44) / (kHeightShown_m + 0.17);
  f_.x = a.center().x();
  f_.rail_y = top_y_ + kHeightShown_m * f_.scale;
  coupler_ = {f_.at(0, 1.0), 0.25 * f_.scale, {a.left() + 116, f_.at(0, 0.86).y()}, kDetailR};
  jumper_ = {f_.at(kHalfGap_m - 0.13, kJumperUp_m),
             0.20 * f_.scale,
             {a.right() - 116, f_.at(0, kJumperUp_m).y() + 20},
             kDetailR};
  const auto circle = [&](Item i, const QRectF& thing, const DetailCircle& d, QPointF dot) {
    addNamed(i, thing.translated(d.centre), Stands::kAbove,
             {d.centre.x(), d.centre.y() - kDetailR - 18}, d.centre + dot);
  };
  circle(Item::kBetweenCoupler, {-58, -72, 116, 146}, coupler_, {-34, -38});
  circle(Item::kBetweenJumper, {-66, -32, 128, 66}, jumper_, {20, -28});
  addToggle(Control::kJumper, jumper_.centre + QPointF(0, kDetailR + 46), 110);
  addNamed(Item::kBetweenGangway, f_.box(-0.6, 2.06, 0.5, 2.58), Stands::kLeft,
           {a.left() + 130, f_.at(0, 2.36).y()}, f_.at(-0.52, 2.30));
  addNamed(Item::kBetweenHoses, f_.box(-0.70, 0.08, 0.70, 0.42), Stands::kLeft,
           {a.left() + 110, f_.at(0, 0.22).y()}, f_.at(-0.63, 0.41));
  addNamed(Item::kBetweenAirHose, f_.box(-0.31, 0.50, 0.31, 0.66), Stands::kRight,
           {a.right() - 160, f_.at(0, 0.52).y()}, f_.at(0.27, 0.585));
  setDetails({coupler_, jumper_});
  setDarkWords({f_.x, a.top() + 18});
}

BetweenLook BetweenPlate::look() const {
  return {seat().value(Control::kJumper) > 0.5, shown(Item::kBetweenHoses) == 2};
}

std::vector<double> BetweenPlate::liveState() const {
  const BetweenLook l = look();
  return {l.jumper_home ? 1.0 : 0, l.hose_parted ? 1.0 : 0};
}

void BetweenPlate::drawGround(Pen& pen) const {
  drawCarEnds(pen, f_, top_y_);
  drawGangway(pen, f_, top_y_);
  drawCoupler(pen, f_);
  drawDetails(pen);
  drawCouplerDetail(pen, coupler_.centre);
}

void BetweenPlate::drawLive(Pen& pen) const {
  const BetweenLook l = look();
  drawVacuumHoses(pen, f_, l.hose_parted);
  drawAirHose(pen, f_);
  drawJumper(pen, f_, l.jumper_home);
  pen.circle(jumper_.spot, jumper_.spot_r, {drawing::kNorm, drawing::Tone::kInk2});
  drawJumperDetail(pen, jumper_.centre, l.jumper_home);
}

}  // namespace cabwright::cab
