// SPDX-License-Identifier: GPL-3.0-or-later
// What everything on the sheet afterwards shares.
#pragma once

#include "drawing/ink.h"

namespace cabwright::after {

struct SheetLook {
  drawing::Theme theme = drawing::Theme::kDay;
  double scale = 1;  ///< device-independent pixels for one u
};

}  // namespace cabwright::after
