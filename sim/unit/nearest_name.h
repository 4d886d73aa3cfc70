// SPDX-License-Identifier: GPL-3.0-or-later
// For people who mistype: the known name nearest to a written one.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace cabwright::unit {

/// The known name with the fewest insertions, deletions, replacements and swaps of neighbours
/// (optimal string alignment); none when more than a third of the letters would change (of a short
/// word one may), or when no letter would be left. Ties go to the first.
[[nodiscard]] std::optional<std::string_view> nearestName(std::string_view written,
                                                          std::span<const std::string_view> known);

/// "unknown WHAT 'written'; did you mean 'nearest'?", or with the allowed ones listed when they are
/// few and none is near.
[[nodiscard]] std::string unknownWord(std::string_view what, std::string_view written,
                                      std::span<const std::string_view> known);

}  // namespace cabwright::unit
