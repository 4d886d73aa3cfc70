// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/block_places.h"

#include <algorithm>

#include "scenario/draft_order.h"

namespace cabwright::scenario {

BlockPlaces::BlockPlaces(std::string_view text, const FileLayout& layout)
    : text_(text), layout_(layout), gone_(layout.blocks.size(), false) {}

std::size_t BlockPlaces::firstLine(std::size_t block) const {
  if (block > 0) return layout_.blocks[block].head.end;
  // Below the comments a file begins with, the licence among them.
  std::size_t at = 0;
  while (at < text_.size() && text_[at] == '#') at = nextLine(text_, at);
  return at;
}

ByteRange BlockPlaces::rangeToRemove(std::size_t block) const {
  const FileBlock& b = layout_.blocks[block];
  ByteRange range{b.lead, b.end};
  const FileBlock* next = block + 1 < layout_.blocks.size() ? &layout_.blocks[block + 1] : nullptr;
  if (next && next->path == b.path && next->lead == b.end) range.begin = b.head.begin;
  if (range.end >= text_.size()) {
    while (range.begin > 0 && hasBlankLineBefore(range.begin)) {
      range.begin = lineStart(text_, range.begin - 1);
    }
    return range;
  }
  if (range.begin != 0 && !hasBlankLineBefore(range.begin)) return range;
  while (isBlankLine(text_, range.end)) range.end = nextLine(text_, range.end);
  return range;
}

bool BlockPlaces::hasBlankLineBefore(std::size_t at) const {
  return at > 0 && isBlankLine(text_, lineStart(text_, at - 1));
}

// The number of the section a block belongs to.
std::size_t BlockPlaces::orderOf(std::size_t block) const {
  const KeyPath& path = layout_.blocks[block].path;
  for (std::size_t parts = path.size(); parts > 0; --parts) {
    const std::string name =
        joinName(KeyPath(path.begin(), path.begin() + static_cast<std::ptrdiff_t>(parts)));
    for (std::size_t k = 1; k < kDraftSections; ++k) {
      if (pathOf(static_cast<DraftSection>(k)) == name) return k;
    }
  }
  return block == 0 ? 0 : kDraftSections;
}

// Behind its last key and the comments that stand right below that.
std::size_t BlockPlaces::endOf(std::size_t block) const {
  const FileBlock& b = layout_.blocks[block];
  const bool is_empty_head = block == 0 && b.end == 0;
  std::size_t at = is_empty_head ? firstLine(0) : b.end;
  const std::size_t limit =
      block + 1 < layout_.blocks.size() ? layout_.blocks[block + 1].lead : text_.size();
  if (is_empty_head) return at;
  std::size_t end = at;
  while (end < limit && text_[end] == '#') end = nextLine(text_, end);
  return end;
}

BlockPlaces::Gap BlockPlaces::gapFor(DraftSection section, bool first_of_list,
                                     std::optional<std::size_t> before) const {
  const auto order = static_cast<std::size_t>(section);
  std::size_t anchor = 0;
  if (before) {
    anchor = *before;
  } else {
    for (std::size_t b = 0; b < layout_.blocks.size(); ++b) {
      // A new first one of a list stands in front of the others.
      const std::size_t at = orderOf(b);
      if (!gone_[b] && (at < order || (at == order && !isList(section)))) anchor = b;
    }
  }
  // What belongs to the one before (its parts) stays with it.
  while (before && anchor + 1 < layout_.blocks.size() && orderOf(anchor + 1) == order &&
         layout_.blocks[anchor + 1].path.size() > layout_.blocks[anchor].path.size()) {
    ++anchor;
  }
  Gap gap;
  gap.at = endOf(anchor);
  const std::string_view path = pathOf(section);
  const std::string_view family = path.substr(0, path.find('.'));
  const auto isFamily = [&](std::size_t k) {
    const std::string_view other = pathOf(static_cast<DraftSection>(k));
    return other == family || (other.starts_with(family) && other.substr(family.size(), 1) == ".");
  };
  bool near = isFamily(orderOf(anchor) < kDraftSections ? orderOf(anchor) : 0);
  for (std::size_t k = 1; k <= order; ++k) near = near || (is_new_[k] && isFamily(k));
  gap.blank_before = !(isTight(section, first_of_list) && near);
  const bool at_end = gap.at >= text_.size();
  gap.blank_after = !at_end && !isBlankLine(text_, gap.at);
  if (anchor + 1 < layout_.blocks.size() && layout_.blocks[anchor + 1].lead == gap.at &&
      orderOf(anchor + 1) == order && isTight(section, false)) {
    gap.blank_after = false;
  }
  return gap;
}

}  // namespace cabwright::scenario
