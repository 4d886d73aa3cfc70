// SPDX-License-Identifier: GPL-3.0-or-later
// The running check value of a session file.
//
// Every row carries a value made from its content and from the value of the row before it, so a
// changed, lost, doubled or reordered row is seen at the first row that no longer fits. SQLite
// itself keeps no sums of its pages. This guards against accidents and clumsy edits; it is not a
// signature, anybody with the program can make a new chain.
//
// h = FNV-1a 64 [G. Fowler, L. C. Noll, K.-P. Vo; offset 14695981039346656037, prime 1099511628211]
// over little-endian fields, each text with its length in front so that neighbours cannot merge.
#pragma once

#include <bit>
#include <cstdint>
#include <span>
#include <string_view>

namespace cabwright::session {

class Chain {
 public:
  Chain() = default;
  explicit Chain(std::uint64_t value) : value_(value) {}

  void add(std::uint8_t byte) { value_ = (value_ ^ byte) * kPrime; }
  void add(std::int64_t number) {
    auto bits = std::bit_cast<std::uint64_t>(number);
    for (int i = 0; i < 8; ++i, bits >>= 8) add(static_cast<std::uint8_t>(bits & 0xffU));
  }
  void add(std::span<const std::uint8_t> bytes) {
    add(static_cast<std::int64_t>(bytes.size()));
    for (const std::uint8_t byte : bytes) add(byte);
  }
  void add(std::string_view text) {
    add(static_cast<std::int64_t>(text.size()));
    for (const char c : text) add(static_cast<std::uint8_t>(c));
  }
  [[nodiscard]] std::uint64_t value() const { return value_; }
  /// As SQLite keeps it: its integers are signed.
  [[nodiscard]] std::int64_t stored() const { return std::bit_cast<std::int64_t>(value_); }

 private:
  static constexpr std::uint64_t kPrime = 1099511628211ULL;
  std::uint64_t value_ = 14695981039346656037ULL;
};

}  // namespace cabwright::session
