// SPDX-License-Identifier: GPL-3.0-or-later
// The desk of a cab and what hangs round it. A lever stands under the dial it moves, on one centre
// line: vacuum and brake, air and reverser, engines and throttle, speed and gear.
#pragma once

#include "cab/plate.h"

namespace cabwright::cab {

class CabPlate : public Plate {
  Q_OBJECT
 public:
  CabPlate(int cab, const PlateContext& context, QWidget* parent);

 protected:
  void paintGround(drawing::Pen& pen) const override;

 private:
  struct Columns {
    double key, vacuum, air, engines, speed, wall;
  };
  void addDials();
  void addLamps();
  void addLevers();
  void addFirstColumn();
  void addWall();
  [[nodiscard]] unit::Control control(unit::Control of_cab1) const {
    return unit::ofCab(of_cab1, cab_);
  }

  int cab_;
  Columns x_;
  double y_dial_, y_name_, y_lamp_, y_pivot_;
};

}  // namespace cabwright::cab
