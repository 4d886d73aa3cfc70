// SPDX-License-Identifier: GPL-3.0-or-later
// The booking-on point: notices, the working, the unit's repair book, and the key cupboard with
// what a driver takes along.
#pragma once

#include "cab/room_plate.h"

namespace cabwright::cab {

class BookingPlate : public RoomPlate {
  Q_OBJECT
 public:
  BookingPlate(const PlateContext& context, QWidget* parent);

 protected:
  void paintGround(drawing::Pen& pen) const override;
  void paintState(drawing::Pen& pen) const override;
  [[nodiscard]] std::vector<double> liveState() const override;
  [[nodiscard]] QPointF darkWords() const override { return {desk_.center().x(), desk_.bottom() - 10}; }

 private:
  void addPegs();
  void paintWorking(drawing::Pen& pen) const;
  void paintBook(drawing::Pen& pen) const;
  QRectF notices_, working_, cupboard_, desk_, book_;
};

/// Papers pinned to a board: a grid of them with lines of writing.
void paintNoticeBoard(drawing::Pen& pen, const QRectF& box);
/// A cupboard with its door open to the right, two boards with pegs inside.
void paintKeyCupboard(drawing::Pen& pen, const QRectF& box);
/// A sloped writing desk from the front, with a lamp over it.
void paintDesk(drawing::Pen& pen, const QRectF& box);
/// An open book of two pages; writing goes on the right one.
void paintOpenBook(drawing::Pen& pen, const QRectF& box);

}  // namespace cabwright::cab
