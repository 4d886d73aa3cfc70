// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/utf8.h"

namespace cabwright::quantity {

std::size_t calcCharacterLength(std::string_view text) {
  const auto byte = [&](std::size_t k) {
    return k < text.size() ? static_cast<unsigned char>(text[k]) : 0u;
  };
  const auto follows = [&](std::size_t k) { return (byte(k) & 0xC0u) == 0x80u; };
  const unsigned b = byte(0);
  if (text.empty()) return 0;
  if (b < 0x80) return 1;
  if (b < 0xC2 || b > 0xF4) return 0;
  if (b < 0xE0) return follows(1) ? 2 : 0;
  if (b < 0xF0) {
    if (!follows(1) || !follows(2)) return 0;
    if (b == 0xE0 && byte(1) < 0xA0) return 0;
    if (b == 0xED && byte(1) > 0x9F) return 0;
    return 3;
  }
  if (!follows(1) || !follows(2) || !follows(3)) return 0;
  if (b == 0xF0 && byte(1) < 0x90) return 0;
  if (b == 0xF4 && byte(1) > 0x8F) return 0;
  return 4;
}

}  // namespace cabwright::quantity
