// SPDX-License-Identifier: GPL-3.0-or-later
// The open electric cupboard. Behind its switches lies the wiring as a diagram of single lines, so
// that one sees how far the current gets.
#pragma once

#include "cab/room_plate.h"

namespace cabwright::cab {

class CupboardPlate : public RoomPlate {
  Q_OBJECT
 public:
  CupboardPlate(const PlateContext& context, QWidget* parent);

 protected:
  void paintGround(drawing::Pen& pen) const override;
  void paintState(drawing::Pen& pen) const override;
  [[nodiscard]] std::vector<double> liveState() const override;
  [[nodiscard]] QPointF darkWords() const override;
  [[nodiscard]] std::pair<drawing::Tone, drawing::Tone> darkTones() const override {
    return {drawing::Tone::kInk, drawing::Tone::kFace};
  }

 private:
  void addBattery();
  void addBreakers();
  void paintWires(drawing::Pen& pen) const;
  void paintBranches(drawing::Pen& pen) const;
  [[nodiscard]] double column(int which) const;  ///< 0 to 3 breakers, 4 the heater
  QRectF box_;
  double bus_x_, bus_y_, y_breaker_, y_branch_, y_heater_, y_consumer_;
  QPointF volts_, knife_, battery_;
};

}  // namespace cabwright::cab
