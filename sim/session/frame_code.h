// SPDX-License-Identifier: GPL-3.0-or-later
// Frames as bytes, without loss of a single bit.
//
// A key frame is every value as a 32-bit IEEE 754 pattern, little-endian. A delta frame is, for
// each value whose bits changed since the frame before it, a pair of base-128 variable-length
// numbers (seven bits to a byte, least first, top bit: more follow):
//   how many values were skipped since the last changed one,  bits xor the bits before (never 0)
// An unchanged frame is empty. Nothing here knows what a signal means: a reader with another list
// of signals decodes the same values.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cabwright::session {

using Bytes = std::vector<std::uint8_t>;

[[nodiscard]] Bytes encodeKeyFrame(std::span<const float> values);

/// Both of the same length.
[[nodiscard]] Bytes encodeDeltaFrame(std::span<const float> before, std::span<const float> values);

/// Fills `values` (its size says how many are expected); the fault in words if the bytes are not a
/// key frame of that size, with `values` unchanged.
[[nodiscard]] std::optional<std::string> decodeKeyFrame(std::span<const std::uint8_t> bytes,
                                                        std::span<float> values);

/// Turns the frame before into this one, in place. The fault in words if the bytes are no delta
/// frame of that size; `values` may then be partly changed and must not be used.
[[nodiscard]] std::optional<std::string> decodeDeltaFrame(std::span<const std::uint8_t> bytes,
                                                          std::span<float> values);

}  // namespace cabwright::session
