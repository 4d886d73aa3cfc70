// SPDX-License-Identifier: GPL-3.0-or-later
// SHA-256 (FIPS 180-4), and bytes as hexadecimal text.
#pragma once

#include <sodium/crypto_hash_sha256.h>

#include <array>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace cabwright::session {

using Digest = std::array<std::uint8_t, crypto_hash_sha256_BYTES>;

/// A digest that is fed piece by piece.
class Sha256 {
 public:
  Sha256();
  Sha256& add(std::span<const std::uint8_t> bytes);
  /// Little-endian, eight bytes.
  Sha256& add(std::int64_t number);
  Sha256& add(std::uint8_t byte) { return add(std::span<const std::uint8_t>(&byte, 1)); }
  /// The characters alone, without a length.
  Sha256& add(std::string_view text);
  /// Once, at the end.
  [[nodiscard]] Digest finish();

 private:
  crypto_hash_sha256_state state_;
};

/// Of all bytes of a file; nothing if it cannot be read to its end.
[[nodiscard]] std::optional<Digest> digestOfFile(const std::filesystem::path& file);

/// Lower case, two digits for each byte.
[[nodiscard]] std::string toHex(std::span<const std::uint8_t> bytes);
/// Fills all of `bytes`; false when the text is not exactly that many bytes in hexadecimal.
[[nodiscard]] bool readHex(std::string_view text, std::span<std::uint8_t> bytes);

/// A new random salt from the operating system.
using Salt = std::array<std::uint8_t, 16>;
[[nodiscard]] Salt makeSalt();

}  // namespace cabwright::session
