// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/digest.h"

#include <sodium.h>

#include <bit>
#include <fstream>

namespace cabwright::session {

Sha256::Sha256() { crypto_hash_sha256_init(&state_); }

Sha256& Sha256::add(std::span<const std::uint8_t> bytes) {
  crypto_hash_sha256_update(&state_, bytes.data(), bytes.size());
  return *this;
}

Sha256& Sha256::add(std::int64_t number) {
  auto bits = std::bit_cast<std::uint64_t>(number);
  std::array<std::uint8_t, 8> bytes{};
  for (std::uint8_t& byte : bytes) {
    byte = static_cast<std::uint8_t>(bits & 0xffU);
    bits >>= 8;
  }
  return add(bytes);
}

Sha256& Sha256::add(std::string_view text) {
  return add({reinterpret_cast<const std::uint8_t*>(text.data()), text.size()});
}

Digest Sha256::finish() {
  Digest digest{};
  crypto_hash_sha256_final(&state_, digest.data());
  return digest;
}

std::optional<Digest> digestOfFile(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  Sha256 digest;
  std::array<char, 65'536> block{};
  while (in) {
    in.read(block.data(), block.size());
    digest.add(std::string_view(block.data(), static_cast<std::size_t>(in.gcount())));
  }
  if (!in.eof() || in.bad()) return std::nullopt;
  return digest.finish();
}

std::string toHex(std::span<const std::uint8_t> bytes) {
  static constexpr char kDigits[] = "0123456789abcdef";
  std::string text;
  text.reserve(2 * bytes.size());
  for (const std::uint8_t byte : bytes) text += {kDigits[byte >> 4], kDigits[byte & 0xfU]};
  return text;
}

bool readHex(std::string_view text, std::span<std::uint8_t> bytes) {
  static constexpr std::string_view kDigits = "0123456789abcdef";
  if (text.size() != 2 * bytes.size()) return false;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    const auto high = kDigits.find(text[2 * i]), low = kDigits.find(text[2 * i + 1]);
    if (high == std::string_view::npos || low == std::string_view::npos) return false;
    bytes[i] = static_cast<std::uint8_t>(high << 4 | low);
  }
  return true;
}

Salt makeSalt() {
  Salt salt{};
  randombytes_buf(salt.data(), salt.size());
  return salt;
}

}  // namespace cabwright::session
