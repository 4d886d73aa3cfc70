// SPDX-License-Identifier: GPL-3.0-or-later
// A draft with the places of its keys in the text it was read from. Used by the writer only.
#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "scenario/draft.h"
#include "scenario/file_layout.h"

namespace cabwright::scenario {

inline constexpr std::size_t kNowhere = static_cast<std::size_t>(-1);

struct SourceTable {
  DraftTable table;
  /// Of each entry: its statement; kNowhere if it does not have one for itself alone.
  std::vector<std::size_t> statements;
  std::size_t block = kNowhere;  ///< of a list: its [[...]]
};

/// What stands in a way that cannot be changed bit by bit: inline tables and lists of them, and
/// [[draw.from]]. It is taken out and written anew when something in it changes.
struct Knot {
  ByteRange lines;
  std::vector<DraftSection> sections;  ///< that have something in it
};

struct DraftSource {
  FileLayout layout;
  std::array<std::vector<SourceTable>, kDraftSections> tables;
  std::vector<Knot> knots;
};

/// The text must be sound TOML.
[[nodiscard]] DraftSource readSource(std::string_view text);

}  // namespace cabwright::scenario
