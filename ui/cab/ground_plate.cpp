// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/ground_plate.h"

#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "cab/switch_parts.h"
#include "drawing/furniture.h"
#include "unit/perception.h"

namespace cabwright::cab {

using drawing::Tone;

namespace {

constexpr double kSignRoom = 26;   // for a verdict, before the name
constexpr double kMiddle = 6.5;    // of a line of words, above its baseline
constexpr double kBesideName = 7;  // from a name to its leader
constexpr double kElbow = 16;      // least level piece of a leader; then it goes at 45 degrees

}  // namespace

unit::Signal showsOf(unit::Item item) {
  return static_cast<unit::Signal>(static_cast<std::size_t>(unit::Signal::kShowsNotices) +
                                   unit::indexOf(item));
}

// Tangents from outside touch where the radius stands across them.
std::vector<QLineF> DetailCircle::joins() const {
  const QPointF way = centre - spot;
  const double distance = std::hypot(way.x(), way.y());
  std::vector<QLineF> lines;
  if (distance <= std::abs(r - spot_r)) return lines;
  const double along = std::atan2(way.y(), way.x()), aside = std::acos((spot_r - r) / distance);
  for (double a : {along - aside, along + aside}) {
    const QPointF across(std::cos(a), std::sin(a));
    lines.emplace_back(spot + spot_r * across, centre + r * across);
  }
  return lines;
}

GroundPlate::GroundPlate(const PlateContext& context, QWidget* parent) : Plate(context, parent) {}

int GroundPlate::shown(unit::Item item) const {
  return static_cast<int>(std::lround(seat().value(showsOf(item))));
}

void GroundPlate::addNamed(unit::Item item, const QRectF& thing, Stands stands, QPointF at,
                           QPointF dot) {
  if (dot.isNull()) dot = thing.center();
  ItemShape shape{.thing = thing, .label = at, .leader = false};
  const double width = drawing::textWidth(nameOf(item), drawing::kText, true) + kSignRoom;
  const double text_width = drawing::textWidth(nameOf(item));
  QPointF from, bend;
  switch (stands) {
    case Stands::kLeft:
      shape.label_ends = true;
      from = at + QPointF(kBesideName, -kMiddle);
      bend = {std::max(from.x() + kElbow, dot.x() - std::abs(dot.y() - from.y())), from.y()};
      break;
    case Stands::kRight:
      from = at + QPointF(-kBesideName, -kMiddle);
      bend = {std::min(from.x() - kElbow, dot.x() + std::abs(dot.y() - from.y())), from.y()};
      break;
    case Stands::kAbove:
    case Stands::kBelow: {
      shape.label.rx() -= width / 2;
      const double x = std::clamp(dot.x(), shape.label.x() + 8,
                                  shape.label.x() + std::max(10.0, text_width - 8));
      from = {x, stands == Stands::kAbove ? at.y() + 8 : at.y() - 20};
      bend = from;
      break;
    }
  }
  leaders_.push_back(QPolygonF({from, bend, dot}));
  addItem(item, shape);
}

ControlPart* GroundPlate::addToggle(unit::Control control, QPointF centre, double half_width) {
  const QRectF box(centre.x() - half_width, centre.y() - 29, 2 * half_width, 90);
  return addControl<TogglePart>(box, control, QString(), centre);
}

QRectF GroundPlate::darkWordsBox() const {
  const double w = drawing::textWidth(tr("too dark to see closely"), drawing::kText, false, true);
  return {dark_words_.x() - w / 2, dark_words_.y() - 16, w, 21};
}

void GroundPlate::drawDetails(drawing::Pen& pen) const {
  for (const DetailCircle& d : details_) {
    for (const QLineF& join : d.joins())
      pen.line(join.p1(), join.p2(), {drawing::kThin, Tone::kRule});
    pen.circle(d.spot, d.spot_r, {drawing::kNorm, Tone::kInk2});
    pen.circle(d.centre, d.r, {drawing::kNorm, Tone::kInk2}, Tone::kPaper);
  }
}

void GroundPlate::paintGround(drawing::Pen& pen) const { drawGround(pen); }

void GroundPlate::paintLive(drawing::Pen& pen) const {
  drawLive(pen);
  for (const QPolygonF& leader : leaders_)  // they end on what moves as well
    drawing::paintLeader(pen, leader[2], leader[1], leader[0]);
  if (!unit::hasLight(seat().unit().world()))
    pen.text(dark_words_, tr("too dark to see closely"),
             {.anchor = drawing::Anchor::kMiddle, .italic = true, .tone = Tone::kInk2, .halo = 3});
}

QRectF GroundPlate::findLiveChange() {
  std::vector<double> now = liveState();
  now.push_back(unit::hasLight(seat().unit().world()) ? 1 : 0);
  if (now == live_) return {};
  live_ = std::move(now);
  return area();
}

}  // namespace cabwright::cab
