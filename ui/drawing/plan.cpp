// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/plan.h"

#include <algorithm>
#include <array>

#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

constexpr double kHalfCar = 17, kRow = 36;  // half a car's width; rows of balloons off its middle
constexpr double kMargin = 19, kEndRoom = 34;  // to the first balloon, to the first car
constexpr double kHalfGap = 16;                // between the cars
constexpr double kCabDepth = 36, kEngineHalf = 18;
constexpr double kHereRing = 4, kPointedRing = 3;
constexpr double kBeside = 3.5;  // between the letters of a key and its ring

struct Cars {
  double left, right, middle, y;
  [[nodiscard]] double engineX() const { return middle + kHalfGap + 24; }
};

Cars carsIn(const QRectF& box) {
  return {box.left() + kEndRoom, box.right() - kEndRoom, box.center().x(), box.center().y()};
}

// A car from its inner to its outer end; `out` is +1 where the outer end is on the right.
void paintCar(Pen& pen, double inner, double outer, double y, double out) {
  QPainterPath shape(QPointF(inner, y - kHalfCar));
  shape.lineTo(outer - out * 12, y - kHalfCar);
  shape.quadTo(outer, y - kHalfCar + 3, outer, y);
  shape.quadTo(outer, y + kHalfCar - 3, outer - out * 12, y + kHalfCar);
  shape.lineTo(inner, y + kHalfCar);
  shape.closeSubpath();
  pen.path(shape, {}, Tone::kFace);
  const double cab = outer - out * kCabDepth;
  pen.line({cab, y - kHalfCar}, {cab, y + kHalfCar}, {kThin});
}

void paintEngines(Pen& pen, const Cars& cars) {
  for (double side : {-1.0, 1.0}) {
    const QRectF box(cars.engineX() - kEngineHalf, cars.y + side * 8.5 - 4.5, 2 * kEngineHalf, 9);
    pen.hatch(rectShape(box), Tone::kInk2, 4, 45, 1);
    pen.rect(box, {kThin, Tone::kInk2});
    pen.line({cars.engineX(), cars.y + side * kHalfCar}, {cars.engineX(), cars.y + side * kRow},
             {kThin});
  }
}

void paintArrow(Pen& pen, const QRectF& box, const Cars& cars, const PlanLook& look) {
  const double y = cars.y - kRow;
  if (look.forward_is_right) {
    pen.push({box.right() - 4, y}, 0);
  } else {
    pen.push({box.left() + 4, y}, 180);
  }
  pen.line({-46, 0}, {look.moving ? -8.0 : 0.0, 0}, {look.moving ? kBold : kNorm});
  if (look.moving) {
    pen.path(outlineOf("M-12 -7 L0 0 L-12 7 Z"), kNoLine, Tone::kInk);
    pen.path(outlineOf("M-24 -7 L-12 0 L-24 7 Z"), kNoLine, Tone::kInk);
  } else {
    pen.path(outlineOf("M-9 -5 L0 0 L-9 5"), {});
  }
  pen.pop();
}

// The track, the way on foot along side 1, and the unit on it.
void paintUnit(Pen& pen, const QRectF& box, const PlanLook& look) {
  const Cars cars = carsIn(box);
  for (double dy : {-7.0, 7.0})
    pen.line({box.left(), cars.y + dy}, {box.right(), cars.y + dy}, {kHairline, Tone::kRule});
  for (double dy : {-5.0, 5.0})
    pen.line({cars.middle - kHalfGap, cars.y + dy}, {cars.middle + kHalfGap, cars.y + dy}, {kThin});
  const double path_y = cars.y + kRow;
  pen.line({planPosition(box, 6).x(), path_y}, {planPosition(box, 0).x(), path_y},
           {kThin, Tone::kRule, {5, 4}, false});
  paintCar(pen, cars.middle - kHalfGap, cars.left, cars.y, -1);
  paintCar(pen, cars.middle + kHalfGap, cars.right, cars.y, 1);
  paintEngines(pen, cars);
  paintArrow(pen, box, cars, look);
}

void paintBalloon(Pen& pen, const PlanPlace& place, double r) {
  const Tone line = place.here ? Tone::kHand : place.reachable ? Tone::kInk : Tone::kRule;
  const Tone word = place.here ? Tone::kPaper : place.reachable ? Tone::kInk : Tone::kInk2;
  // Round; longer where the key is two letters wide, so that its ring runs through neither.
  const double half = std::max(r, textWidth(place.key, kText, place.here) / 2 + kBeside);
  const auto ring = [&](double out) {
    const QPointF corner(half + out, r + out);
    return QRectF(place.at - corner, place.at + corner);
  };
  if (place.here) pen.rect(ring(kHereRing), {kThin, Tone::kHand}, Tone::kPaper, r + kHereRing);
  pen.rect(ring(0), {place.here ? kNorm : kThin, line}, place.here ? Tone::kHand : Tone::kPaper, r);
  pen.text(place.at + QPointF(0, 0.365 * kText), place.key,
           {.anchor = Anchor::kMiddle,
            .bold = place.here,
            .tone = word,
            .on = place.here ? Tone::kHand : Tone::kPaper});
  if (place.pointed)
    pen.rect(ring(kPointedRing), {kFocus, Tone::kInfo}, Tone::kNone, r + kPointedRing);
}

}  // namespace

QPointF planPosition(const QRectF& box, int place_number) {
  Q_ASSERT(place_number >= 0 && place_number < kPlanPlaces);
  const Cars cars = carsIn(box);
  const double end1 = box.right() - kMargin, end2 = box.left() + kMargin;
  const double engine = cars.engineX(), step = (end1 - engine) / 3;
  const double cab1 = cars.right - 20, cab2 = cars.left + 20;
  const double saloon = (cars.left + kCabDepth + cars.middle - kHalfGap) / 2;
  const double side1 = cars.y + kRow, side2 = cars.y - kRow;
  const std::array<QPointF, kPlanPlaces> places{{{end1, side1},
                                                 {engine + 2 * step, side1},
                                                 {end1, cars.y},
                                                 {end2, cars.y},
                                                 {engine + step, side1},
                                                 {engine + step, side2},
                                                 {saloon, side1},
                                                 {saloon, side2},
                                                 {engine, side1},
                                                 {engine, side2},
                                                 {cars.middle, cars.y},
                                                 {cab1, cars.y},
                                                 {cab2, cars.y},
                                                 {cab1 - 34, cars.y},
                                                 {saloon, cars.y}}};
  return places[static_cast<std::size_t>(place_number)];
}

void paintPlan(Pen& pen, const QRectF& box, const PlanLook& look,
               std::span<const PlanPlace> places) {
  paintUnit(pen, box, look);
  for (const PlanPlace& place : places)
    if (!place.here) paintBalloon(pen, place, look.balloon_r);
  for (const PlanPlace& place : places)
    if (place.here) paintBalloon(pen, place, look.balloon_r);
}

}  // namespace cabwright::drawing
