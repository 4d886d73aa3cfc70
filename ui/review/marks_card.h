// SPDX-License-Identifier: GPL-3.0-or-later
// How one line of the mark sheet is drawn in its list.
#pragma once

#include "drawing/pen.h"
#include "review_room/marks_rows.h"

namespace cabwright::review_room {

/// As high as its words need in this width, u.
[[nodiscard]] double calcCardHeight(const MarkRow& row, double width);
/// From the origin on. `focus`: the keys are at the list.
void paintCard(drawing::Pen& pen, QSizeF size, const MarkRow& row, bool selected, bool focus);

}  // namespace cabwright::review_room
