// SPDX-License-Identifier: GPL-3.0-or-later
// Where a section can be put in between those of a file, and what goes with one that is taken out.
// Used by the writer only.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "scenario/draft.h"
#include "scenario/file_layout.h"

namespace cabwright::scenario {

class BlockPlaces {
 public:
  BlockPlaces(std::string_view text, const FileLayout& layout);

  /// Where the first key of a block stands, or would.
  [[nodiscard]] std::size_t firstLine(std::size_t block) const;

  /// The block with the comments above it and the blank lines that would be left over. Comments
  /// above the first of several that stand close together speak of all of them and stay.
  [[nodiscard]] ByteRange rangeToRemove(std::size_t block) const;
  /// It is gone: nothing is put behind it.
  void drop(std::size_t block) { gone_[block] = true; }

  struct Gap {
    std::size_t at = 0;
    bool blank_before = true, blank_after = false;
  };
  /// Behind the block `before`, or behind all sections that come before this one.
  [[nodiscard]] Gap gapFor(DraftSection section, bool first_of_list,
                           std::optional<std::size_t> before) const;
  /// One of this section was put in: what comes next may stand close to it.
  void noteNew(DraftSection section) { is_new_[static_cast<std::size_t>(section)] = true; }

 private:
  [[nodiscard]] std::size_t orderOf(std::size_t block) const;
  [[nodiscard]] std::size_t endOf(std::size_t block) const;
  [[nodiscard]] bool hasBlankLineBefore(std::size_t at) const;

  std::string_view text_;
  const FileLayout& layout_;
  std::vector<bool> gone_;
  std::array<bool, kDraftSections> is_new_{};
};

}  // namespace cabwright::scenario
