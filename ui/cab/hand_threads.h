// SPDX-License-Identifier: GPL-3.0-or-later
// The dotted lines from each hand at the foot of the sheet up to what it is on. Lies over the sheet
// and takes no mouse.
#pragma once

#include <QWidget>
#include <array>
#include <optional>
#include <vector>

#include "cab/hands_part.h"
#include "cab/plate.h"

namespace cabwright::cab {

class HandThreads : public QWidget {
  Q_OBJECT
 public:
  HandThreads(Seat& seat, const SheetStyle& style, QWidget* sheet);
  /// Follows what the hands are on; `plate` may be null.
  void refresh(const Plate* plate, const std::array<HandPart*, 2>& hands);
  /// From where to where that of a hand goes, u of the sheet; empty: it is on nothing that is here.
  [[nodiscard]] const std::optional<QLineF>& thread(int side) const {
    return shown_[static_cast<std::size_t>(side)];
  }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] bool isHeld(unit::Control control) const;
  Seat& seat_;
  const SheetStyle& style_;
  std::array<std::optional<QLineF>, 2> shown_;
  std::vector<QRect> behind_;  ///< parts they go behind, in pixels
};

}  // namespace cabwright::cab
