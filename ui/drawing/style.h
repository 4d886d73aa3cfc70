// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's colours and type for ordinary widgets, as style sheets: what all rooms share, and a
// way to write the little that is a room's own.
#pragma once

#include <QString>

#include "drawing/ink.h"

namespace cabwright::drawing {

/// Of fields, buttons, ticks, lists, tables, tabs and bars; no background where the sheet lies
/// behind. Labels by their object names: "second", "heading", "title", "bad".
/// `text_px`: height of common words.
[[nodiscard]] QString commonStyle(Theme theme, int text_px);

/// Puts in tones and sizes for words that begin with @: @paper, @face, @ink, @ink2, @wash, @hand,
/// @good, @bad, @doubt, @rule, @hair; @text, and @title, @name and @result in proportion; @family.
[[nodiscard]] QString fillStyle(QString sheet, Theme theme, int text_px);

}  // namespace cabwright::drawing
