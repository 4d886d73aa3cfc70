// SPDX-License-Identifier: GPL-3.0-or-later
// The canonical bytes of a row: little-endian numbers of eight bytes, and texts and bytes with
// their length in front, so that neighbours cannot merge.
#pragma once

#include <bit>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace cabwright::session {

class Payload {
 public:
  void clear() { bytes_.clear(); }
  void add(std::uint8_t byte) { bytes_.push_back(byte); }
  void add(std::int64_t number) {
    auto bits = std::bit_cast<std::uint64_t>(number);
    for (int i = 0; i < 8; ++i, bits >>= 8) add(static_cast<std::uint8_t>(bits & 0xffU));
  }
  void add(std::span<const std::uint8_t> bytes) {
    add(static_cast<std::int64_t>(bytes.size()));
    bytes_.insert(bytes_.end(), bytes.begin(), bytes.end());
  }
  void add(std::string_view text) {
    add(std::span(reinterpret_cast<const std::uint8_t*>(text.data()), text.size()));
  }
  [[nodiscard]] std::span<const std::uint8_t> bytes() const { return bytes_; }

 private:
  std::vector<std::uint8_t> bytes_;
};

}  // namespace cabwright::session
