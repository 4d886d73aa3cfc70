// SPDX-License-Identifier: GPL-3.0-or-later
// What is different when a session is marked again. Its rules are its own, so that a difference
// comes from another program than the one that recorded it, or from a changed file.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "review/mark_many.h"

namespace cabwright::review {

struct LineDifference {
  std::string rule;
  std::string recorded, now;  ///< verdicts in words; empty: the line was not there
  bool operator==(const LineDifference&) const = default;
};

struct MarkDifference {
  std::filesystem::path file;
  std::string fault;      ///< not empty: it could not be marked, and why
  bool complete = false;  ///< false: it was cut off, and there is nothing to compare with
  bool same = false;      ///< the whole sheet is the one recorded
  /// Whether it was passed then and is now, where the two differ.
  bool decision_differs = false, passed_now = false;
  std::vector<LineDifference> lines;  ///< empty as well where only words of the sheet differ
};

/// Reads the recorded sheet where it has to be compared. Never throws for what is in the file.
[[nodiscard]] MarkDifference findMarkDifference(const MarkedSession& marked);

}  // namespace cabwright::review
