// SPDX-License-Identifier: GPL-3.0-or-later
// The order in which people write a scenario, and what they leave out. Used by the writer only.
#pragma once

#include <cstddef>
#include <string_view>

#include "scenario/draft.h"

namespace cabwright::scenario {

/// Keys of a section stand in the order of this number; those nobody knows come last.
[[nodiscard]] std::size_t rankOf(DraftSection section, std::string_view key);

/// Said or not said, it means the same; new files do not say it.
[[nodiscard]] bool isUsual(DraftSection section, const DraftEntry& entry);

/// Without a blank line between this section and the one above.
[[nodiscard]] bool isTight(DraftSection section, bool first_of_list);

}  // namespace cabwright::scenario
