// SPDX-License-Identifier: GPL-3.0-or-later
// An end of the unit, seen from the ground before it.
#pragma once

#include "cab/draw_end.h"
#include "cab/ground_plate.h"

namespace cabwright::cab {

class EndPlate : public GroundPlate {
  Q_OBJECT
 public:
  /// `end`: 0 or 1.
  EndPlate(int end, const PlateContext& context, QWidget* parent);

  /// How the art stands just now, for tests.
  struct Look {
    bool white = false, red = false, hoses_on = true, hooked_up = true, tail_lamp = true;
    double brightness = 1, wiper = 0;
    int number = 0, protection = 0;
  };
  [[nodiscard]] Look look() const;

 protected:
  void drawGround(drawing::Pen& pen) const override;
  void drawLive(drawing::Pen& pen) const override;
  [[nodiscard]] std::vector<double> liveState() const override;

 private:
  void addLeft();
  void addRight();
  void addLamps();
  [[nodiscard]] unit::Item item(unit::Item of_end1) const;
  [[nodiscard]] unit::Signal signal(unit::Signal of_end1) const;

  int end_;
  EndFrame f_;
  DetailCircle hose_, coupling_;
};

}  // namespace cabwright::cab
