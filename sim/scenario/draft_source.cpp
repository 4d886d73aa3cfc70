// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/draft_source.h"

#include <toml++/toml.h>

#include <algorithm>
#include <optional>
#include <sstream>

namespace cabwright::scenario {

namespace {

DraftValue valueOf(const toml::node& node) {
  if (const auto* text = node.as_string()) return DraftValue(text->get());
  if (const auto* flag = node.as_boolean()) return DraftValue(flag->get());
  if (const auto* whole = node.as_integer()) return DraftValue(whole->get());
  DraftValue value;
  if (const auto* number = node.as_floating_point()) {
    value.value = number->get();
    return value;
  }
  if (const auto* array = node.as_array()) {
    DraftList list;
    for (const toml::node& item : *array) list.items.push_back(valueOf(item));
    return DraftValue(std::move(list));
  }
  if (const auto* table = node.as_table()) {
    DraftInline keys;
    for (const auto& [key, item] : *table) {
      keys.keys.emplace_back(key.str());
      keys.values.push_back(valueOf(item));
    }
    return DraftValue(std::move(keys));
  }
  // Dates mean nothing in a scenario; the reader says so.
  std::ostringstream words;
  node.visit([&](const auto& other) { words << other; });
  return DraftValue(words.str());
}

const toml::node* follow(const toml::node* node, const KeyPath& path) {
  for (const std::string& part : path) {
    // The last one of a list of tables is what a head speaks of.
    while (node && node->is_array() && !node->as_array()->empty()) node = &node->as_array()->back();
    const auto* table = node ? node->as_table() : nullptr;
    node = table ? table->get(part) : nullptr;
  }
  return node;
}

std::optional<DraftSection> findSection(std::string_view path, bool list) {
  for (std::size_t k = 0; k < kDraftSections; ++k) {
    const auto section = static_cast<DraftSection>(k);
    if (pathOf(section) == path && isList(section) == list) return section;
  }
  return std::nullopt;
}

// The section a key belongs to by its whole path, and how many parts of it name the section.
std::pair<DraftSection, std::size_t> sectionOf(const KeyPath& path) {
  for (std::size_t parts = path.size() - 1; parts > 0; --parts) {
    const std::string name =
        joinName(KeyPath(path.begin(), path.begin() + static_cast<std::ptrdiff_t>(parts)));
    if (const auto section = findSection(name, false)) return {*section, parts};
  }
  return {DraftSection::kHead, 0};
}

// Tables in which a key may have several parts.
bool isDotted(DraftSection section) {
  return section == DraftSection::kStart || section == DraftSection::kControls ||
         section == DraftSection::kObjects || section == DraftSection::kParameters;
}

class SourceReader {
 public:
  explicit SourceReader(std::string_view text) : root_(toml::parse(text)) {
    source_.layout = findLayout(text);
    for (std::size_t k = 0; k < kDraftSections; ++k) {
      if (!isList(static_cast<DraftSection>(k))) source_.tables[k].emplace_back();
    }
  }

  DraftSource read() {
    const auto& statements = source_.layout.statements;
    std::size_t next = 0;
    for (std::size_t b = 0; b < source_.layout.blocks.size(); ++b) {
      beginBlock(b);
      for (; next < statements.size() && statements[next].block == b; ++next) readStatement(next);
    }
    return std::move(source_);
  }

 private:
  std::vector<SourceTable>& of(DraftSection section) {
    return source_.tables[static_cast<std::size_t>(section)];
  }

  void beginBlock(std::size_t b) {
    const FileBlock& block = source_.layout.blocks[b];
    element_.reset();
    inside_ = false;
    for (std::size_t parts = block.path.size(); parts > 0; --parts) {
      const KeyPath front(block.path.begin(),
                          block.path.begin() + static_cast<std::ptrdiff_t>(parts));
      const auto section = findSection(joinName(front), true);
      if (!section) continue;
      if (parts == block.path.size() && block.is_list) {
        element_ = section;
        SourceTable table;
        table.table.origin = of(*section).size() + 1;
        table.block = b;
        of(*section).push_back(std::move(table));
      } else {
        readInside(*section, block, parts);
      }
      return;
    }
  }

  // [[draw.from]]: a part of the draw above it.
  void readInside(DraftSection section, const FileBlock& block, std::size_t parts) {
    inside_ = true;
    if (of(section).empty()) return;
    source_.knots.push_back({{block.head.begin, block.end}, {section}});
    const std::string& key = block.path[parts];
    SourceTable& table = of(section).back();
    const toml::node* node = nodeOf(section, of(section).size() - 1);
    const auto* inner = node ? node->as_table() : nullptr;
    if (!inner || !inner->contains(key) || table.table.has(key)) return;
    add(table, key, *inner->get(key), kNowhere);
  }

  const toml::node* nodeOf(DraftSection section, std::size_t index) const {
    const toml::node* node = follow(&root_, splitName(pathOf(section)));
    const auto* array = node ? node->as_array() : nullptr;
    return array && index < array->size() ? array->get(index) : nullptr;
  }

  void readStatement(std::size_t k) {
    const FileStatement& s = source_.layout.statements[k];
    if (inside_) return;
    if (element_) {
      const toml::node* element = nodeOf(*element_, of(*element_).size() - 1);
      const toml::node* node = follow(element, s.path);
      if (node) add(of(*element_).back(), joinName(s.path), *node, k);
      return;
    }
    KeyPath path = source_.layout.blocks[s.block].path;
    path.insert(path.end(), s.path.begin(), s.path.end());
    if (const toml::node* node = follow(&root_, path)) readNode(path, *node, k, s.lines);
  }

  void readNode(const KeyPath& path, const toml::node& node, std::size_t statement,
                ByteRange lines) {
    const std::string name = joinName(path);
    if (const auto list = findSection(name, true); list && node.is_array()) {
      noteKnot(lines, *list);
      for (const toml::node& item : *node.as_array()) {
        const auto* inner = item.as_table();
        if (!inner) continue;
        SourceTable table;
        table.table.origin = of(*list).size() + 1;
        for (const auto& [key, value] : *inner) add(table, std::string(key.str()), value, kNowhere);
        of(*list).push_back(std::move(table));
      }
      return;
    }
    const auto [section, parts] = sectionOf(path);
    if (const auto* inner = node.as_table();
        inner && (isDotted(section) || section == DraftSection::kHead ||
                  section == DraftSection::kMarking || section == DraftSection::kGuide)) {
      noteKnot(lines, section);
      // Nothing can be added beside an inline table, or below it.
      for (std::size_t k = 1; k < kDraftSections; ++k) {
        const auto below = static_cast<DraftSection>(k);
        if (pathOf(below) == name || pathOf(below).starts_with(name + ".")) noteKnot(lines, below);
      }
      for (const auto& [key, value] : *inner) {
        KeyPath below = path;
        below.emplace_back(key.str());
        readNode(below, value, kNowhere, lines);
      }
      return;
    }
    if (statement == kNowhere) noteKnot(lines, section);
    add(of(section).front(), joinName(path, parts), node, statement);
  }

  void noteKnot(ByteRange lines, DraftSection section) {
    if (source_.knots.empty() || source_.knots.back().lines.begin != lines.begin) {
      source_.knots.push_back({lines, {}});
    }
    auto& sections = source_.knots.back().sections;
    if (std::find(sections.begin(), sections.end(), section) == sections.end()) {
      sections.push_back(section);
    }
  }

  static void add(SourceTable& table, std::string key, const toml::node& node,
                  std::size_t statement) {
    table.table.entries.push_back({std::move(key), valueOf(node)});
    table.statements.push_back(statement);
  }

  toml::table root_;
  DraftSource source_;
  std::optional<DraftSection> element_;  ///< the block is one of a list
  bool inside_ = false;                  ///< the block is a part of one
};

}  // namespace

DraftSource readSource(std::string_view text) { return SourceReader(text).read(); }

}  // namespace cabwright::scenario
