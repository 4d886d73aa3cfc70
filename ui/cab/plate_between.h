// SPDX-License-Identifier: GPL-3.0-or-later
// Between the cars, looked at from side 1: car 1 is on the right.
#pragma once

#include "cab/draw_between.h"
#include "cab/ground_plate.h"

namespace cabwright::cab {

class BetweenPlate : public GroundPlate {
  Q_OBJECT
 public:
  BetweenPlate(const PlateContext& context, QWidget* parent);

  /// How the art stands just now, for tests.
  [[nodiscard]] BetweenLook look() const;

 protected:
  void drawGround(drawing::Pen& pen) const override;
  void drawLive(drawing::Pen& pen) const override;
  [[nodiscard]] std::vector<double> liveState() const override;

 private:
  EndFrame f_;
  DetailCircle coupler_, jumper_;
  double top_y_ = 0;
};

}  // namespace cabwright::cab
