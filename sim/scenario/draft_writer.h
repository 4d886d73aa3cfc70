// SPDX-License-Identifier: GPL-3.0-or-later
// From what a text says to what it is to say. Used by the writer only.
#pragma once

#include <string>

#include "scenario/draft.h"
#include "scenario/draft_order.h"

namespace cabwright::scenario {

/// The text, which must be sound, with what the draft has otherwise. The origins of the draft speak
/// of the draft's own original; in any other text all is new.
[[nodiscard]] std::string changedText(const Draft& draft, const std::string& text);

}  // namespace cabwright::scenario
