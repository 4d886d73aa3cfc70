// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet that shows every part in all its states.
#pragma once

#include "drawing/pen.h"
#include "drawing/sheet_frame.h"

namespace cabwright::drawing {

/// Fills a sheet of this frame; the paper itself must be there already.
void paintPartsSheet(Pen& pen, const SheetFrame& frame);

}  // namespace cabwright::drawing
