// SPDX-License-Identifier: GPL-3.0-or-later
// The walkway's end by the line: the unit standing in its siding with the path on side 1 and the
// other line on side 2, and under it a plan of the ways to each place.
#pragma once

#include "cab/room_plate.h"

namespace cabwright::cab {

/// What can be told of the unit from there.
struct LinesideState {
  bool white_lit = false, red_lit = false;  ///< lamps at end 1
  bool board_hangs = false;                 ///< board, flag or lamp at end 1
  bool dark = false, light_in_hand = false;
};
/// The view along the siding from the walkway's end; end 1 is the near one.
void paintSidings(drawing::Pen& pen, const QRectF& window, const LinesideState& state);
/// The plan of the ways, with places, lengths and where the line is crossed.
void paintWays(drawing::Pen& pen, const QRectF& box);

class LinesidePlate : public RoomPlate {
  Q_OBJECT
 public:
  LinesidePlate(const PlateContext& context, QWidget* parent);

 protected:
  void paintGround(drawing::Pen& pen) const override;
  void paintState(drawing::Pen& pen) const override;
  [[nodiscard]] std::vector<double> liveState() const override;
  [[nodiscard]] QPointF darkWords() const override;
  [[nodiscard]] std::pair<drawing::Tone, drawing::Tone> darkTones() const override {
    return {drawing::Tone::kWhite, drawing::Tone::kBezel};
  }

 private:
  [[nodiscard]] LinesideState state() const;
  QRectF view_, ways_;
};

}  // namespace cabwright::cab
