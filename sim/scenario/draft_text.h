// SPDX-License-Identifier: GPL-3.0-or-later
// Values of a draft as a person would write them in a file.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "scenario/draft.h"

namespace cabwright::scenario {

/// Lines are not longer than this where they can be broken.
inline constexpr std::size_t kWidestLine = 100;

/// A text in quotation marks, on one line.
[[nodiscard]] std::string quotedText(std::string_view text);

/// On one line, or, of a list that does not fit behind `used` columns, over several.
[[nodiscard]] std::string valueText(const DraftValue& value, std::size_t used = 0,
                                    std::string_view line_end = "\n");

/// "5 s", "1 min 30 s", "2 h": ticks of 10 ms as readTicks takes them.
[[nodiscard]] std::string timeText(std::int64_t ticks);
/// "2 C", "40 %": as short as it is exact; a plain number if there is no unit.
[[nodiscard]] DraftValue quantityValue(double value, std::string_view unit);

}  // namespace cabwright::scenario
