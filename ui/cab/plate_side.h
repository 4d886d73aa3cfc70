// SPDX-License-Identifier: GPL-3.0-or-later
// Along one side of a car: the motor car or the trailer, as it stands before who walks by. From
// side 1 the cab of car 1 is on the right, from side 2 on the left; the trailer's the other way.
#pragma once

#include <optional>
#include <vector>

#include "cab/draw_car.h"
#include "cab/draw_car_detail.h"
#include "cab/ground_plate.h"

namespace cabwright::cab {

class SidePlate : public GroundPlate {
  Q_OBJECT
 public:
  /// `side`: 0 or 1.
  SidePlate(bool motor_car, int side, const PlateContext& context, QWidget* parent);

  /// How the art stands just now, for tests.
  [[nodiscard]] CarLook look() const;
  /// How the drain cock in its circle is drawn.
  [[nodiscard]] DrainState drain() const;
  [[nodiscard]] const CarFrame& frame() const { return f_; }

 protected:
  void drawGround(drawing::Pen& pen) const override;
  void drawLive(drawing::Pen& pen) const override;
  [[nodiscard]] std::vector<double> liveState() const override;

 private:
  void layOut();
  void addAbove();
  void addBelow();
  struct Named {
    unit::Item item{};
    QRectF thing;
    QPointF dot;
  };
  /// Where one of the lines of a detail crosses a height, u: the one nearer the cab or the other.
  [[nodiscard]] double joinAt(const DetailCircle& detail, double y, bool towards_cab) const;
  /// Names in a row below the car, side by side round `middle`.
  void addRow(std::vector<Named> names, double middle);
  void addWheelNames();
  void addSmallCircles();
  void addControls();
  /// The item of this car and side, given that of the motor car's side 1; for the motor car's last
  /// one and the trailer's own there are names of their own.
  [[nodiscard]] unit::Item item(unit::Item of_side1) const;
  /// The trailer's own, given that of side 1.
  [[nodiscard]] unit::Item ownItem(unit::Item of_trailer1) const;
  [[nodiscard]] std::optional<unit::Control> scotchControl() const;
  [[nodiscard]] std::optional<unit::Control> drainControl() const;
  [[nodiscard]] unit::Control cord() const;
  [[nodiscard]] double valueOf(std::optional<unit::Control> control) const;
  [[nodiscard]] double mirrored(double x) const;

  bool motor_;
  int side_;
  CarFrame f_;
  DetailCircle wheel_, cylinder_, drain_;
  double y_below_ = 0;
};

}  // namespace cabwright::cab
