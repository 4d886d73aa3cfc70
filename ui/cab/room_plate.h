// SPDX-License-Identifier: GPL-3.0-or-later
// What the plates of rooms have in common: what moves by itself is drawn anew when the numbers it
// depends on change, items are named, and a word says when it is too dark.
#pragma once

#include <utility>
#include <vector>

#include "cab/plate.h"

namespace cabwright::cab {

class RoomPlate : public Plate {
  Q_OBJECT
 public:
  RoomPlate(const PlateContext& context, QWidget* parent) : Plate(context, parent) {}

 protected:
  /// What the state shows at a glance.
  virtual void paintState(drawing::Pen& pen) const { Q_UNUSED(pen) }
  /// All that paintState() depends on, as numbers.
  [[nodiscard]] virtual std::vector<double> liveState() const { return {}; }
  /// Where the word about missing light stands: baseline, its middle.
  [[nodiscard]] virtual QPointF darkWords() const = 0;
  /// The tone these words stand in, and what on.
  [[nodiscard]] virtual std::pair<drawing::Tone, drawing::Tone> darkTones() const {
    return {drawing::Tone::kInk, drawing::Tone::kPaper};
  }

  void paintLive(drawing::Pen& pen) const final;
  QRectF findLiveChange() final;

  /// A length of a sheet 1180 u wide at this width, from the left edge of the area.
  [[nodiscard]] double across(double x_of_1180) const {
    return area().left() + x_of_1180 * area().width() / 1180;
  }
  [[nodiscard]] double spare() const { return context().style.frame.spare; }
  [[nodiscard]] bool isDarkOutside() const { return seat().unit().world().dark; }
  [[nodiscard]] bool isOn(unit::Control c) const { return seat().value(c) > 0.5; }

 private:
  std::vector<double> live_;
};

}  // namespace cabwright::cab
