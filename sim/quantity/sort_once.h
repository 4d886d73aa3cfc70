// SPDX-License-Identifier: GPL-3.0-or-later
// Puts values in order and leaves each once.
#pragma once

#include <algorithm>
#include <vector>

namespace cabwright::quantity {

template <class T>
void sortOnce(std::vector<T>& all) {
  std::sort(all.begin(), all.end());
  // Not ranges::unique: what it gives does not compile with clang 14 beside this libstdc++.
  all.erase(std::unique(all.begin(), all.end()), all.end());
}

}  // namespace cabwright::quantity
