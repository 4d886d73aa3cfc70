// SPDX-License-Identifier: GPL-3.0-or-later
// Names of numbers, shared by the parameter table and the table of start conditions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace cabwright::plant {

/// A number as people write it: six significant digits at most, no trailing zeros.
[[nodiscard]] std::string shortNumber(double v);

/// True when a written dotted name speaks of this one: equal, or equal but for the instance number
/// on its first group ("engine.fuel" for "engine2.fuel"; "gearbox.band3.x" for "gearbox1.band3.x").
[[nodiscard]] bool namesMatch(std::string_view written, std::string_view full);

template <class Info>
[[nodiscard]] std::vector<const Info*> findNamed(const std::vector<Info>& table,
                                                 std::string_view written) {
  std::vector<const Info*> found;
  for (const Info& info : table) {
    if (info.name == written) return {&info};
    if (namesMatch(written, info.name)) found.push_back(&info);
  }
  return found;
}

}  // namespace cabwright::plant
