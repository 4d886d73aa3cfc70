// SPDX-License-Identifier: GPL-3.0-or-later
// The saloon from inside: doors on both sides, alarm handles, lights.
#pragma once

#include "cab/draw_saloon.h"
#include "cab/room_plate.h"

namespace cabwright::cab {

class SaloonPlate : public RoomPlate {
  Q_OBJECT
 public:
  SaloonPlate(const PlateContext& context, QWidget* parent);

 protected:
  void paintGround(drawing::Pen& pen) const override;
  void paintState(drawing::Pen& pen) const override;
  [[nodiscard]] std::vector<double> liveState() const override;
  [[nodiscard]] QPointF darkWords() const override;
  [[nodiscard]] std::pair<drawing::Tone, drawing::Tone> darkTones() const override {
    return {drawing::Tone::kInk, drawing::Tone::kFace};
  }

 private:
  [[nodiscard]] SaloonState state() const;
  [[nodiscard]] bool areLampsLit() const;
  SaloonView view_;
  double left_, right_;  ///< middles of the columns beside the picture
};

}  // namespace cabwright::cab
