// SPDX-License-Identifier: GPL-3.0-or-later
// Characters of UTF-8 text (RFC 3629).
#pragma once

#include <cstddef>
#include <string_view>

namespace cabwright::quantity {

/// Bytes of the character that a text begins with: no overlong forms, no surrogates, nothing above
/// 10FFFF; 0 if none does.
[[nodiscard]] std::size_t calcCharacterLength(std::string_view text);

}  // namespace cabwright::quantity
