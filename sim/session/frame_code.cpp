// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/frame_code.h"

#include <bit>

namespace cabwright::session {
namespace {

void putNumber(Bytes& out, std::uint32_t number) {
  while (number >= 0x80U) {
    out.push_back(static_cast<std::uint8_t>((number & 0x7fU) | 0x80U));
    number >>= 7;
  }
  out.push_back(static_cast<std::uint8_t>(number));
}

// Reads one number and moves `at` past it; empty when the bytes end inside it, when it does not
// fit 32 bits, or when it is written longer than it needs (one value, one spelling).
std::optional<std::uint32_t> takeNumber(std::span<const std::uint8_t> bytes, std::size_t& at) {
  std::uint64_t number = 0;
  for (unsigned shift = 0; shift < 35 && at < bytes.size(); shift += 7) {
    const std::uint8_t byte = bytes[at++];
    number |= static_cast<std::uint64_t>(byte & 0x7fU) << shift;
    if ((byte & 0x80U) != 0) continue;
    if (number > 0xffffffffULL || (byte == 0 && shift > 0)) return std::nullopt;
    return static_cast<std::uint32_t>(number);
  }
  return std::nullopt;
}

}  // namespace

Bytes encodeKeyFrame(std::span<const float> values) {
  Bytes out;
  out.reserve(values.size() * 4);
  for (const float value : values) {
    const auto bits = std::bit_cast<std::uint32_t>(value);
    for (unsigned shift = 0; shift < 32; shift += 8)
      out.push_back(static_cast<std::uint8_t>((bits >> shift) & 0xffU));
  }
  return out;
}

Bytes encodeDeltaFrame(std::span<const float> before, std::span<const float> values) {
  Bytes out;
  std::uint32_t skipped = 0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    const std::uint32_t change =
        std::bit_cast<std::uint32_t>(before[i]) ^ std::bit_cast<std::uint32_t>(values[i]);
    if (change == 0) {
      ++skipped;
      continue;
    }
    putNumber(out, skipped);
    putNumber(out, change);
    skipped = 0;
  }
  return out;
}

std::optional<std::string> decodeKeyFrame(std::span<const std::uint8_t> bytes,
                                          std::span<float> values) {
  if (bytes.size() != values.size() * 4)
    return "a key frame of " + std::to_string(bytes.size()) + " bytes, where " +
           std::to_string(values.size() * 4) + " belong";
  for (std::size_t i = 0; i < values.size(); ++i) {
    std::uint32_t bits = 0;
    for (std::size_t byte = 0; byte < 4; ++byte)
      bits |= static_cast<std::uint32_t>(bytes[4 * i + byte]) << (8 * byte);
    values[i] = std::bit_cast<float>(bits);
  }
  return std::nullopt;
}

std::optional<std::string> decodeDeltaFrame(std::span<const std::uint8_t> bytes,
                                            std::span<float> values) {
  std::size_t index = 0;
  for (std::size_t at = 0; at < bytes.size();) {
    const auto skipped = takeNumber(bytes, at);
    const auto change = skipped ? takeNumber(bytes, at) : std::nullopt;
    if (!change || *change == 0) return "a delta frame that is cut short or garbled";
    if (*skipped >= values.size() - index) return "a delta frame for a signal that does not exist";
    index += *skipped;
    values[index] = std::bit_cast<float>(std::bit_cast<std::uint32_t>(values[index]) ^ *change);
    ++index;
  }
  return std::nullopt;
}

}  // namespace cabwright::session
