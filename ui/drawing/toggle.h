// SPDX-License-Identifier: GPL-3.0-or-later
// A switch of two positions, drawn as a small lever between two words; or a cock in its pipe, whose
// bar lies along the pipe when it is open and across it when it is shut.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>

#include "drawing/pen.h"

namespace cabwright::drawing {

struct ToggleLook {
  QString off = {}, on = {};  ///< words of the two positions, off on the left
  bool is_on = false;         ///< of a cock: open
  bool cock = false;
  QString held = {};  ///< letter of the hand, empty: nobody
  bool focus = false;
  bool out_of_reach = false;
};

/// 76 u wide and 52 u high without its words, focus ring included.
void paintToggle(Pen& pen, QPointF centre, const ToggleLook& look);

/// All that it may paint on, with its words in their bold form.
[[nodiscard]] QRectF toggleBounds(QPointF centre, const ToggleLook& look);

}  // namespace cabwright::drawing
