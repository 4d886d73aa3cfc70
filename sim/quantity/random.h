// SPDX-License-Identifier: GPL-3.0-or-later
// Chance that comes out the same everywhere. The standard library's distributions are left to each
// library's taste, so a scenario seed would mean other faults on another machine.
#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "quantity/hash.h"

namespace cabwright::quantity {

/// SplitMix64 [G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014]: one 64-bit counter, one mixing
/// function. Used to spread a seed over the larger state below.
class SplitMix64 {
 public:
  constexpr explicit SplitMix64(std::uint64_t seed) noexcept : state_(seed) {}
  constexpr std::uint64_t next() noexcept {
    std::uint64_t z = state_ += 0x9e3779b97f4a7c15u;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
    return z ^ (z >> 31);
  }

 private:
  std::uint64_t state_;
};

/// xoshiro256** [D. Blackman, S. Vigna, ACM TOMS 47 (2021)], seeded as its authors advise.
/// A value type: a copy goes on with the same numbers.
class Random {
 public:
  using State = std::array<std::uint64_t, 4>;

  constexpr explicit Random(std::uint64_t seed) noexcept {
    SplitMix64 spread(seed);
    for (std::uint64_t& word : state_) word = spread.next();
  }

  /// A stream of its own for a named purpose: one more draw for one purpose does not change what
  /// another purpose draws from the same seed.
  constexpr Random(std::uint64_t seed, std::string_view purpose) noexcept
      : Random(seed ^ hashOf(purpose)) {}

  /// Goes on from a known state; not all four words may be zero.
  constexpr explicit Random(const State& state) noexcept : state_(state) {}

  /// All 64 bits equally likely.
  constexpr std::uint64_t next() noexcept {
    const std::uint64_t result = std::rotl(state_[1] * 5, 7) * 9;
    const std::uint64_t t = state_[1] << 17;
    state_[2] ^= state_[0];
    state_[3] ^= state_[1];
    state_[1] ^= state_[2];
    state_[0] ^= state_[3];
    state_[2] ^= t;
    state_[3] = std::rotl(state_[3], 45);
    return result;
  }

  /// A whole number from 0 to n - 1, each equally likely; 0 when n is 0. Numbers from the
  /// incomplete last round of n are thrown away, so no remainder is favoured.
  constexpr std::uint64_t uniformBelow(std::uint64_t n) noexcept {
    if (n == 0) return 0;
    const std::uint64_t incomplete = (0 - n) % n;  // 2^64 modulo n
    std::uint64_t drawn = next();
    while (drawn < incomplete) drawn = next();
    return drawn % n;
  }

  /// At least 0 and below 1, a multiple of 2^-53.
  constexpr double uniform01() noexcept { return static_cast<double>(next() >> 11) * 0x1p-53; }

  /// The place of one weight, drawn in proportion to it. Weights that are negative, infinite or
  /// not numbers count as zero; nothing is drawn when none counts.
  constexpr std::optional<std::size_t> pickWeighted(std::span<const double> weights) noexcept {
    double total = 0.0;
    for (const double w : weights) total += counted(w);
    if (!(total > 0.0)) return std::nullopt;
    double left = uniform01() * total;
    std::optional<std::size_t> last;
    for (std::size_t k = 0; k < weights.size(); ++k) {
      const double w = counted(weights[k]);
      if (w <= 0.0) continue;
      last = k;  // also what rounding leaves over
      if (left < w) break;
      left -= w;
    }
    return last;
  }

 private:
  static constexpr double counted(double w) noexcept { return w > 0.0 && w < 1e300 ? w : 0.0; }
  static constexpr std::uint64_t hashOf(std::string_view text) noexcept {
    Fnv1a64 hash;
    hash.addText(text);
    return hash.value();
  }

  State state_{};
};

}  // namespace cabwright::quantity
