// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with the words of a sheet: too small, outside, one over another, too pale, not on
// what they say they stand on, crossed by a line.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "drawing/pen.h"
#include "drawing/sheet_frame.h"

namespace cabwright::testing_ui {

using PaintSheet = std::function<void(drawing::Pen&, const drawing::SheetFrame&)>;

/// Findings in plain words; empty: none. `counted` takes the number of words that were looked at.
[[nodiscard]] std::vector<std::string> findWordFaults(const PaintSheet& paint, QSizeF window,
                                                      drawing::Theme theme, int* counted = nullptr);

}  // namespace cabwright::testing_ui
