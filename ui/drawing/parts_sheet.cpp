// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/parts_sheet.h"

#include "drawing/furniture.h"
#include "drawing/parts_sheet_blocks.h"

namespace cabwright::drawing {

void paintPartsSheet(Pen& pen, const SheetFrame& frame) {
  paintFrame(pen, frame);
  paintPartsWorld(pen, frame);
  paintPartsYou(pen, frame);
}

}  // namespace cabwright::drawing
