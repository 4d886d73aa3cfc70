// SPDX-License-Identifier: GPL-3.0-or-later
// What everything on the sheet afterwards shares.
#pragma once

#include <cmath>

#include "drawing/ink.h"

namespace cabwright::after {

struct SheetLook {
  drawing::Theme theme = drawing::Theme::kDay;
  double scale = 1;  ///< device-independent pixels for one u
  bool keys = true;  ///< keys that do something are told; on paper they do nothing
};

/// A length on the sheet in whole pixels.
[[nodiscard]] inline int toPixels(double u, const SheetLook& look) {
  return static_cast<int>(std::lround(u * look.scale));
}

}  // namespace cabwright::after
