// SPDX-License-Identifier: GPL-3.0-or-later
// The two blocks of the parts sheet.
#pragma once

#include <QCoreApplication>

#include "drawing/pen.h"
#include "drawing/sheet_frame.h"

namespace cabwright::drawing {

[[nodiscard]] inline QString partsWords(const char* text) {
  return QCoreApplication::translate("PartsSheet", text);
}

/// Dials, lamps, levers, buttons and switches, hands. Spare height goes between the rows.
void paintPartsWorld(Pen& pen, const SheetFrame& frame);
/// Plan, what is carried, notebook, small marks, title block.
void paintPartsYou(Pen& pen, const SheetFrame& frame);

}  // namespace cabwright::drawing
