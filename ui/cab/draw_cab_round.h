// SPDX-License-Identifier: GPL-3.0-or-later
// What hangs and stands behind the driver: equipment of a cab's back wall and of its door side.
#pragma once

#include "cab/drawn_part.h"

namespace cabwright::cab {

/// A tin with lid, strap and wire seal.
void paintCanister(drawing::Pen& pen, const QRectF& box);
/// Two flags rolled round their sticks, in their clips.
void paintRolledFlags(drawing::Pen& pen, const QRectF& box);
/// Two rail clips with the cable between them, hung over their bracket.
void paintTrackClips(drawing::Pen& pen, const QRectF& box);
void paintExtinguisher(drawing::Pen& pen, const QRectF& box);
void paintFirstAidBox(drawing::Pen& pen, const QRectF& box);
/// A book in its pocket, and the plates riveted below it.
void paintBookAndPlates(drawing::Pen& pen, const QRectF& box);
/// Leaf, window, hinges and handle; the lock is a part of its own.
void paintCabDoor(drawing::Pen& pen, const QRectF& box, bool dark_outside);
/// The shelf the first things stand on.
void paintShelf(drawing::Pen& pen, double left, double right, double y);
/// A seat that tips up against the wall.
void paintTipUpSeat(drawing::Pen& pen, const QRectF& box);
/// Plates with a tread pattern, and the well with the steps before the door.
void paintCabFloor(drawing::Pen& pen, const QRectF& box, double well_left, double well_right);

/// Case, keyhole and bolt; the bolt stands in the frame when it is locked. `centre`: of the case.
void paintDoorLock(drawing::Pen& pen, QPointF centre, const DrawnState& state);
/// What stands still of a cock in a level pipe: flanges, and the wire and lead that seal its
/// handle.
void paintCockPipe(drawing::Pen& pen, QPointF centre);
/// Its plug and handle.
void paintSealedCock(drawing::Pen& pen, QPointF centre, const DrawnState& state);
/// Box of the seal of that cock.
[[nodiscard]] QRectF sealBox(QPointF cock);
/// The pipe of the guard's valve, to `reach` u right of it; left of it the strainer air is drawn
/// in through.
void paintValvePipe(drawing::Pen& pen, QPointF centre, double reach);
/// Its body and its handle, which turns a quarter.
void paintGuardsValve(drawing::Pen& pen, QPointF centre, const DrawnState& state);
[[nodiscard]] QRectF strainerBox(QPointF valve);
/// A number wheel behind its window, with its neighbours above and below.
void paintNumberWheel(drawing::Pen& pen, QPointF centre, const DrawnState& state,
                      const QString& blank);
/// Two lines of a pipe `half` u wide to either side, round corners.
void paintPipe(drawing::Pen& pen, const QPolygonF& middle, double half = 6);

}  // namespace cabwright::cab
