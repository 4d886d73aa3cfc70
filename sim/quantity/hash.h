// SPDX-License-Identifier: GPL-3.0-or-later
// FNV-1a, 64 bits [G. Fowler, L. C. Noll, K.-P. Vo; draft-eastlake-fnv, section 5]: the fingerprint
// of the world's state, compared second by second when a session is run again. It finds
// differences; it is no protection against somebody who wants to forge one.
//
//   h = 14695981039346656037;  for each byte b:  h = (h xor b) * 1099511628211   (modulo 2^64)
#pragma once

#include <bit>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <string_view>

namespace cabwright::quantity {

/// Takes in values one after the other; the order counts. Numbers go in as their eight bytes, the
/// lowest first, whatever the machine's own order.
class Fnv1a64 {
 public:
  constexpr void addByte(std::uint8_t byte) noexcept { value_ = (value_ ^ byte) * kPrime; }

  constexpr void addText(std::string_view text) noexcept {
    for (const char c : text) addByte(static_cast<std::uint8_t>(c));
  }

  constexpr void addBytes(std::span<const std::byte> bytes) noexcept {
    for (const std::byte b : bytes) addByte(std::to_integer<std::uint8_t>(b));
  }

  /// Any whole number or bool, widened to 64 bits first: 7 is 7 whatever type holds it.
  template <std::integral T>
  constexpr void addInt(T number) noexcept {
    std::uint64_t bits = static_cast<std::uint64_t>(number);
    for (int k = 0; k < 8; ++k, bits >>= 8) addByte(static_cast<std::uint8_t>(bits & 0xff));
  }

  /// The bits of the number, so that a difference in the last place shows. Two exceptions where
  /// different bits mean the same: -0 counts as +0, and every NaN as one and the same NaN.
  constexpr void addDouble(double number) noexcept {
    if (number == 0.0) number = 0.0;
    if (number != number) number = std::numeric_limits<double>::quiet_NaN();
    addInt(std::bit_cast<std::uint64_t>(number));
  }

  [[nodiscard]] constexpr std::uint64_t value() const noexcept { return value_; }

 private:
  static constexpr std::uint64_t kPrime = 1099511628211u;
  std::uint64_t value_ = 14695981039346656037u;
};

}  // namespace cabwright::quantity
