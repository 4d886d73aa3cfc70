// SPDX-License-Identifier: GPL-3.0-or-later
// Trains put together from the plant's simple set: nothing here but linear substitution in
// annulus = a sun + b carrier, with a and b from SimpleSet::annulusMix().
#pragma once

#include "plant/drive.h"

namespace cabwright::reference {

using plant::DrumMix;
using plant::SimpleSet;

inline constexpr DrumMix kInput{1.0, 0.0}, kOutput{0.0, 1.0};

inline DrumMix annulusOf(const SimpleSet& set, const DrumMix& sun, const DrumMix& carrier) {
  const auto [a, b] = set.annulusMix();
  return {a * sun.in + b * carrier.in, a * sun.out + b * carrier.out};
}
inline DrumMix sunOf(const SimpleSet& set, const DrumMix& annulus, const DrumMix& carrier) {
  const auto [a, b] = set.annulusMix();
  return {(annulus.in - b * carrier.in) / a, (annulus.out - b * carrier.out) / a};
}
inline DrumMix carrierOf(const SimpleSet& set, const DrumMix& sun, const DrumMix& annulus) {
  const auto [a, b] = set.annulusMix();
  return {(annulus.in - a * sun.in) / b, (annulus.out - a * sun.out) / b};
}

}  // namespace cabwright::reference
