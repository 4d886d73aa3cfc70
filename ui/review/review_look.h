// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's colours and type for the ordinary widgets of a review.
#pragma once

#include <QString>

#include "after/sheet_look.h"
#include "drawing/boxes.h"

namespace cabwright::review_room {

/// For a window that shows a sheet at this scale.
[[nodiscard]] QString reviewStyleSheet(const after::SheetLook& look);

/// The scale of a sheet that fills a window of this size.
[[nodiscard]] double reviewScale(int width, int height);

}  // namespace cabwright::review_room
