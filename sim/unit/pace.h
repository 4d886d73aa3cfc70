// SPDX-License-Identifier: GPL-3.0-or-later
// How fast the time of a run may pass for the people around it. The world does not know: a tick is
// a tick. Who leads a run keeps the pace, and the record says which it was.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace cabwright::unit {

struct Pace {
  std::string_view word;  ///< as in "pace 0.5"
  double rate = 1.0;      ///< seconds of the run to one of the clock; 0: it stands
  bool operator==(const Pace&) const = default;
};

/// All there are, from the slowest to the quickest.
inline constexpr std::array<Pace, 8> kPaces{{{"frozen", 0.0},
                                             {"0.1", 0.1},
                                             {"0.25", 0.25},
                                             {"0.5", 0.5},
                                             {"1", 1.0},
                                             {"2", 2.0},
                                             {"5", 5.0},
                                             {"10", 10.0}}};
inline constexpr Pace kStandardPace = kPaces[4];

[[nodiscard]] constexpr std::optional<Pace> findPace(std::string_view word) {
  for (const Pace& pace : kPaces) {
    if (pace.word == word) return pace;
  }
  return std::nullopt;
}

}  // namespace cabwright::unit
