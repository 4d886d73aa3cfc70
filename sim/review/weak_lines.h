// SPDX-License-Identifier: GPL-3.0-or-later
// What a group finds hard: the lines of the mark sheet by how often they were broken where it came
// to them.
#pragma once

#include <string>
#include <vector>

#include "review/shelf.h"

namespace cabwright::review {

struct WeakLine {
  std::string id, title;
  bool critical = false;
  int broken = 0;         ///< by itself; one that only follows from another line does not count
  int exercised = 0;      ///< met or broken
  int not_exercised = 0;  ///< it stood on the sheet and did not come to it
  std::vector<const ShelfItem*> broken_in;  ///< the latest first
  /// Of those in which it was exercised, 0 to 1; 0 where it never was.
  [[nodiscard]] double share() const {
    return exercised == 0 ? 0 : static_cast<double>(broken) / exercised;
  }
};

struct WeakLines {
  std::vector<WeakLine> exercised;  ///< by share broken, then by how often, then by title
  std::vector<WeakLine> never;      ///< exercised in none of the sessions; by title
  int sessions = 0;                 ///< that have a sheet
};

/// A line is the same in several exercises when id and title are. Sessions that were cut off have
/// no lines. The items must outlive what is given.
[[nodiscard]] WeakLines findWeakLines(const std::vector<const ShelfItem*>& items);

}  // namespace cabwright::review
