// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/record.h"

#include <array>
#include <ctime>
#include <random>

namespace cabwright::session {

std::string makeSessionId() {
  std::random_device source;
  std::array<unsigned, 16> bytes{};
  for (unsigned& byte : bytes) byte = source() & 0xffU;
  bytes[6] = (bytes[6] & 0x0fU) | 0x40U;  // version 4
  bytes[8] = (bytes[8] & 0x3fU) | 0x80U;  // variant of RFC 9562
  static constexpr char kDigits[] = "0123456789abcdef";
  std::string id;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    if (i == 4 || i == 6 || i == 8 || i == 10) id += '-';
    id += kDigits[bytes[i] >> 4];
    id += kDigits[bytes[i] & 0xfU];
  }
  return id;
}

std::string currentUtc() {
  const std::time_t now = std::time(nullptr);
  std::tm parts{};
  gmtime_r(&now, &parts);
  std::array<char, 32> text{};
  const std::size_t size = std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%SZ", &parts);
  return {text.data(), size};
}

}  // namespace cabwright::session
