// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/draft_writer.h"

#include <algorithm>
#include <array>
#include <optional>

#include "scenario/block_places.h"
#include "scenario/draft_source.h"
#include "scenario/draft_text.h"
#include "scenario/text_edits.h"

namespace cabwright::scenario {

namespace {

std::size_t indexOf(DraftSection section) { return static_cast<std::size_t>(section); }

bool isUnchanged(DraftSection section, const Draft& draft, const DraftSource& source) {
  const std::vector<SourceTable>& was = source.tables[indexOf(section)];
  if (!isList(section)) return draft.table(section) == was.front().table;
  const std::vector<DraftTable>& now = draft.list(section);
  if (now.size() != was.size()) return false;
  for (std::size_t k = 0; k < now.size(); ++k) {
    if (now[k].origin != k + 1 || !(now[k] == was[k].table)) return false;
  }
  return true;
}

class DraftWriter {
 public:
  DraftWriter(const Draft& draft, std::string text, std::array<bool, kDraftSections> anew)
      : draft_(draft),
        text_(std::move(text)),
        anew_(anew),
        source_(readSource(text_)),
        places_(text_, source_.layout) {}

  std::string write() {
    // Keys first: at one place they come before whole sections.
    for (std::size_t k = 0; k < kDraftSections; ++k) writeKeys(static_cast<DraftSection>(k));
    for (std::size_t k = 0; k < kDraftSections; ++k) writeBlocks(static_cast<DraftSection>(k));
    if (edits_.isEmpty()) return text_;
    std::string out = edits_.applied(text_, {0, text_.size()}, lineEnd());
    const std::string blank = lineEnd() + lineEnd();
    while (out.ends_with(blank) && !text_.ends_with(blank))
      out.resize(out.size() - lineEnd().size());
    return out;
  }

 private:
  [[nodiscard]] const std::string& lineEnd() const { return source_.layout.line_end; }
  [[nodiscard]] const FileLayout& layout() const { return source_.layout; }

  void writeKeys(DraftSection section) {
    const std::vector<SourceTable>& was = source_.tables[indexOf(section)];
    if (!isList(section)) {
      unplaced_[indexOf(section)] = changeTable(section, draft_.table(section), was.front());
      return;
    }
    matchList(section);
    const std::vector<DraftTable>& now = draft_.list(section);
    const std::vector<std::size_t>& match = match_[indexOf(section)];
    for (std::size_t k = 0; k < now.size(); ++k) {
      if (match[k] != kNowhere) changeTable(section, now[k], was[match[k]]);
    }
  }

  // Which table of the file each table of the draft comes from, if any.
  void matchList(DraftSection section) {
    const std::vector<SourceTable>& was = source_.tables[indexOf(section)];
    const std::vector<DraftTable>& now = draft_.list(section);
    std::vector<std::size_t>& match = match_[indexOf(section)];
    match.assign(now.size(), kNowhere);
    std::vector<bool> taken(was.size(), false);
    for (std::size_t k = 0; k < now.size() && !anew_[indexOf(section)]; ++k) {
      const std::size_t origin = now[k].origin;
      if (origin == 0 || origin > was.size() || taken[origin - 1]) continue;
      match[k] = origin - 1;
      taken[origin - 1] = true;
    }
    for (std::size_t k = 0; k < was.size(); ++k) {
      if (!taken[k] && was[k].block != kNowhere) removeBlock(was[k].block);
    }
  }

  // Gives what finds no place in the blocks there are.
  std::vector<DraftEntry> changeTable(DraftSection section, const DraftTable& now,
                                      const SourceTable& was) {
    std::vector<std::size_t> kept;
    for (std::size_t k = 0; k < was.table.entries.size(); ++k) {
      if (changeEntry(section, was.table.entries[k], was.statements[k], now) &&
          was.statements[k] != kNowhere) {
        kept.push_back(was.statements[k]);
      }
    }
    std::vector<DraftEntry> fresh;
    for (const DraftEntry& entry : now.entries) {
      if (!was.table.has(entry.key) && !isUsual(section, entry)) fresh.push_back(entry);
    }
    std::stable_sort(fresh.begin(), fresh.end(), [&](const DraftEntry& a, const DraftEntry& b) {
      return rankOf(section, a.key) < rankOf(section, b.key);
    });
    std::erase_if(fresh, [&](const DraftEntry& entry) {
      return placeEntry(section, entry, was.block, kept);
    });
    if (was.block == kNowhere && kept.empty()) dropEmptyBlocks(section, was, fresh.empty());
    return fresh;
  }

  // False if its line goes.
  bool changeEntry(DraftSection section, const DraftEntry& was, std::size_t statement,
                   const DraftTable& now) {
    if (statement == kNowhere) return true;  // a knot that is not touched
    const FileStatement& s = layout().statements[statement];
    const DraftValue* wanted = now.find(was.key);
    if (wanted && *wanted == was.value) return true;
    if (!wanted || (isUsual(section, {was.key, *wanted}) && !s.remarked)) {
      edits_.remove(s.lines);
      return false;
    }
    changeValue(text_, s.value, was.value, *wanted, lineEnd(), edits_);
    return true;
  }

  // A line for a new key beside those of its section; false if the section stands nowhere yet.
  bool placeEntry(DraftSection section, const DraftEntry& entry, std::size_t block,
                  const std::vector<std::size_t>& kept) {
    KeyPath path = splitName(entry.key);
    if (section == DraftSection::kRule || section == DraftSection::kChange) path = {entry.key};
    if (block == kNowhere && section != DraftSection::kHead) {
      const KeyPath front = splitName(pathOf(section));
      path.insert(path.begin(), front.begin(), front.end());
    }
    const auto place = findKeyPlace(section, entry.key, path, block, kept);
    if (!place) return false;
    const KeyPath& head = layout().blocks[place->block].path;
    if (block == kNowhere) {
      path.erase(path.begin(), path.begin() + static_cast<std::ptrdiff_t>(head.size()));
    }
    edits_.insertLines(place->at, lineOf(path, entry.value));
    return true;
  }

  struct KeyPlace {
    std::size_t at, block;
  };
  std::optional<KeyPlace> findKeyPlace(DraftSection section, std::string_view key,
                                       const KeyPath& path, std::size_t block,
                                       const std::vector<std::size_t>& kept) const {
    if (block != kNowhere) return KeyPlace{placeAmong(section, key, kept, block), block};
    // The block with the longest head of all that this key can stand below.
    std::optional<std::size_t> best;
    for (const std::size_t k : kept) {
      const std::size_t b = layout().statements[k].block;
      if (!isFront(layout().blocks[b].path, path)) continue;
      if (!best || layout().blocks[b].path.size() > layout().blocks[*best].path.size()) best = b;
    }
    for (std::size_t b = 0; b < layout().blocks.size() && !best; ++b) {
      const FileBlock& at = layout().blocks[b];
      if (!at.is_list && joinName(at.path) == pathOf(section)) best = b;
    }
    if (!best) return std::nullopt;
    return KeyPlace{placeAmong(section, key, kept, *best), *best};
  }

  static bool isFront(const KeyPath& front, const KeyPath& path) {
    return front.size() < path.size() && std::equal(front.begin(), front.end(), path.begin());
  }

  // Behind the last key that comes before it, or in front of all.
  std::size_t placeAmong(DraftSection section, std::string_view key,
                         const std::vector<std::size_t>& kept, std::size_t block) const {
    const std::size_t rank = rankOf(section, key);
    std::optional<std::size_t> behind, first;
    for (const std::size_t k : kept) {
      const FileStatement& s = layout().statements[k];
      if (s.block != block) continue;
      if (!first) first = s.lines.begin;
      if (rankOf(section, nameIn(section, s)) <= rank) behind = s.lines.end;
    }
    if (behind) return *behind;
    return first ? *first : places_.firstLine(block);
  }

  [[nodiscard]] std::string nameIn(DraftSection section, const FileStatement& s) const {
    const KeyPath& head = layout().blocks[s.block].path;
    if (isList(section)) return joinName(s.path);
    KeyPath path = head;
    path.insert(path.end(), s.path.begin(), s.path.end());
    return joinName(path, section == DraftSection::kHead ? 0 : splitName(pathOf(section)).size());
  }

  [[nodiscard]] std::string lineOf(const KeyPath& path, const DraftValue& value) const {
    const std::string key = keyText(path) + " = ";
    return key + valueText(value, key.size(), lineEnd()) + lineEnd();
  }

  // A section of which nothing is left loses its head.
  void dropEmptyBlocks(DraftSection section, const SourceTable& was, bool nothing_new) {
    if (!nothing_new || was.table.entries.empty() || section == DraftSection::kHead) return;
    for (std::size_t b = 1; b < layout().blocks.size(); ++b) {
      const FileBlock& block = layout().blocks[b];
      const bool holds = std::any_of(was.statements.begin(), was.statements.end(), [&](auto k) {
        return k != kNowhere && layout().statements[k].block == b;
      });
      const auto others = std::count_if(layout().statements.begin(), layout().statements.end(),
                                        [&](const FileStatement& s) { return s.block == b; });
      const auto own = std::count_if(was.statements.begin(), was.statements.end(), [&](auto k) {
        return k != kNowhere && layout().statements[k].block == b;
      });
      if (holds && own == others && !block.is_list) removeBlock(b);
    }
  }

  void removeBlock(std::size_t b) {
    edits_.remove(places_.rangeToRemove(b));
    places_.drop(b);
  }

  void writeBlocks(DraftSection section) {
    if (!isList(section)) {
      const std::vector<DraftEntry>& fresh = unplaced_[indexOf(section)];
      if (!fresh.empty()) insertBlock(section, bodyOf(fresh), true, std::nullopt);
      return;
    }
    const std::vector<SourceTable>& was = source_.tables[indexOf(section)];
    const std::vector<DraftTable>& now = draft_.list(section);
    const std::vector<std::size_t>& match = match_[indexOf(section)];
    std::optional<std::size_t> before;  // the block of the last one that stays where it is
    for (std::size_t k = 0; k < now.size(); ++k) {
      if (match[k] == kNowhere) {
        std::vector<DraftEntry> entries = now[k].entries;
        std::erase_if(entries, [&](const DraftEntry& e) { return isUsual(section, e); });
        std::stable_sort(entries.begin(), entries.end(), [&](const auto& a, const auto& b) {
          return rankOf(section, a.key) < rankOf(section, b.key);
        });
        insertBlock(section, bodyOf(entries), k == 0, before);
        continue;
      }
      const std::size_t block = was[match[k]].block;
      if (block == kNowhere) continue;  // an untouched list of inline tables
      if (!before || *before < block) {
        before = block;
      } else {
        moveBlock(section, block, k == 0, before);
      }
    }
  }

  [[nodiscard]] std::string bodyOf(const std::vector<DraftEntry>& entries) const {
    std::string body;
    for (const DraftEntry& entry : entries) body += lineOf(splitName(entry.key), entry.value);
    return body;
  }

  void insertBlock(DraftSection section, const std::string& body, bool first,
                   std::optional<std::size_t> before) {
    const std::string name = keyText(splitName(pathOf(section)));
    const std::string head = isList(section) ? "[[" + name + "]]" : "[" + name + "]";
    insertText(section, head + lineEnd() + body, first, before);
  }

  void insertText(DraftSection section, const std::string& lines, bool first,
                  std::optional<std::size_t> before) {
    const BlockPlaces::Gap gap = places_.gapFor(section, first, before);
    std::string text = gap.blank_before ? lineEnd() + lines : lines;
    if (gap.blank_after) text += lineEnd();
    edits_.insertLines(gap.at, std::move(text));
    places_.noteNew(section);
  }

  // Its own text goes with it, comments above it and changes in it included.
  void moveBlock(DraftSection section, std::size_t block, bool first,
                 std::optional<std::size_t> before) {
    const FileBlock& b = layout().blocks[block];
    const std::string lines = edits_.applied(text_, {b.lead, b.end}, lineEnd());
    edits_.remove(places_.rangeToRemove(block));
    places_.drop(block);
    insertText(section, lines, first, before);
  }

  const Draft& draft_;
  std::string text_;
  std::array<bool, kDraftSections> anew_;
  DraftSource source_;
  BlockPlaces places_;
  TextEdits edits_;
  std::array<std::vector<DraftEntry>, kDraftSections> unplaced_;
  std::array<std::vector<std::size_t>, kDraftSections> match_;
};

}  // namespace

std::string changedText(const Draft& draft, const std::string& text) {
  const DraftSource source = readSource(text);
  std::array<bool, kDraftSections> anew{};
  if (text != draft.original) anew.fill(true);
  TextEdits untie;
  for (const Knot& knot : source.knots) {
    const bool changed =
        std::any_of(knot.sections.begin(), knot.sections.end(),
                    [&](DraftSection section) { return !isUnchanged(section, draft, source); });
    if (!changed) continue;
    untie.remove(knot.lines);
    for (const DraftSection section : knot.sections) {
      const auto& was = source.tables[indexOf(section)];
      if (isList(section) && !was.empty() && was.front().block == kNowhere) {
        anew[indexOf(section)] = true;
      }
    }
  }
  std::string rest = untie.applied(text, {0, text.size()}, source.layout.line_end);
  return DraftWriter(draft, std::move(rest), anew).write();
}

}  // namespace cabwright::scenario
