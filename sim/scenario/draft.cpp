// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/draft.h"

#include <algorithm>
#include <cmath>

#include "scenario/draft_source.h"
#include "scenario/toml_file.h"

namespace cabwright::scenario {

namespace {

constexpr std::array<std::string_view, kDraftSections> kPaths{"",
                                                              "conditions",
                                                              "start",
                                                              "start.controls",
                                                              "start.objects",
                                                              "start.parameters",
                                                              "people",
                                                              "hidden",
                                                              "draw",
                                                              "fault",
                                                              "event",
                                                              "guide",
                                                              "guide.step",
                                                              "marking",
                                                              "marking.judgements",
                                                              "marking.use",
                                                              "marking.change",
                                                              "rule"};

std::optional<double> asNumber(const DraftValue& v) {
  if (const auto* whole = std::get_if<std::int64_t>(&v.value)) return static_cast<double>(*whole);
  if (const auto* number = std::get_if<double>(&v.value)) return *number;
  return std::nullopt;
}

}  // namespace

std::string_view pathOf(DraftSection section) { return kPaths[static_cast<std::size_t>(section)]; }

bool isList(DraftSection section) {
  switch (section) {
    case DraftSection::kHidden:
    case DraftSection::kDraw:
    case DraftSection::kFault:
    case DraftSection::kEvent:
    case DraftSection::kGuideStep:
    case DraftSection::kUse:
    case DraftSection::kChange:
    case DraftSection::kRule:
      return true;
    default:
      return false;
  }
}

DraftValue::DraftValue(double number) {
  constexpr double kLargestWhole = 1e15;
  if (std::trunc(number) == number && std::abs(number) < kLargestWhole) {
    value = static_cast<std::int64_t>(number);
  } else {
    value = number;
  }
}

DraftValue::DraftValue(const std::vector<std::string>& texts) {
  DraftList list;
  for (const std::string& text : texts) list.items.emplace_back(text);
  value = std::move(list);
}

bool DraftValue::operator==(const DraftValue& other) const {
  if (const auto a = asNumber(*this), b = asNumber(other); a && b) return *a == *b;
  if (value.index() != other.value.index()) return false;
  if (const auto* list = std::get_if<DraftList>(&value)) {
    return list->items == std::get<DraftList>(other.value).items;
  }
  if (const auto* table = std::get_if<DraftInline>(&value)) {
    const auto& with = std::get<DraftInline>(other.value);
    if (table->keys.size() != with.keys.size()) return false;
    for (std::size_t k = 0; k < table->keys.size(); ++k) {
      const auto at = std::find(with.keys.begin(), with.keys.end(), table->keys[k]);
      if (at == with.keys.end()) return false;
      const auto j = static_cast<std::size_t>(at - with.keys.begin());
      if (!(table->values[k] == with.values[j])) return false;
    }
    return true;
  }
  if (const auto* text = std::get_if<std::string>(&value)) {
    return *text == std::get<std::string>(other.value);
  }
  return std::get<bool>(value) == std::get<bool>(other.value);
}

const DraftValue* DraftTable::find(std::string_view key) const {
  for (const DraftEntry& entry : entries) {
    if (entry.key == key) return &entry.value;
  }
  return nullptr;
}

void DraftTable::set(std::string_view key, DraftValue value) {
  for (DraftEntry& entry : entries) {
    if (entry.key != key) continue;
    entry.value = std::move(value);
    return;
  }
  entries.push_back({std::string(key), std::move(value)});
}

void DraftTable::remove(std::string_view key) {
  std::erase_if(entries, [&](const DraftEntry& entry) { return entry.key == key; });
}

std::string DraftTable::text(std::string_view key) const {
  const DraftValue* found = find(key);
  const auto* text = found ? std::get_if<std::string>(&found->value) : nullptr;
  return text ? *text : std::string();
}

std::vector<std::string> DraftTable::texts(std::string_view key) const {
  std::vector<std::string> all;
  const DraftValue* found = find(key);
  if (!found) return all;
  if (const auto* one = std::get_if<std::string>(&found->value)) all.push_back(*one);
  if (const auto* list = std::get_if<DraftList>(&found->value)) {
    for (const DraftValue& item : list->items) {
      if (const auto* text = std::get_if<std::string>(&item.value)) all.push_back(*text);
    }
  }
  return all;
}

bool DraftTable::flag(std::string_view key, bool otherwise) const {
  const DraftValue* found = find(key);
  const auto* flag = found ? std::get_if<bool>(&found->value) : nullptr;
  return flag ? *flag : otherwise;
}

bool DraftTable::operator==(const DraftTable& other) const {
  if (entries.size() != other.entries.size()) return false;
  return std::all_of(entries.begin(), entries.end(), [&](const DraftEntry& entry) {
    const DraftValue* with = other.find(entry.key);
    return with && *with == entry.value;
  });
}

Draft::Draft() : original("# SPDX-License-Identifier: GPL-3.0-or-later\n") {
  for (std::size_t k = 0; k < kDraftSections; ++k) {
    if (!isList(static_cast<DraftSection>(k))) tables_[k].emplace_back();
  }
}

std::variant<Draft, FileFaults> readDraft(const SourceFile& file) {
  FaultSink sink(file);
  (void)parseToml(file, sink);
  if (!sink.isEmpty()) return sink.take();
  const DraftSource source = readSource(file.text);
  Draft draft;
  draft.original = file.text;
  for (std::size_t k = 0; k < kDraftSections; ++k) {
    const auto section = static_cast<DraftSection>(k);
    if (!isList(section)) {
      draft.table(section) = source.tables[k].front().table;
      continue;
    }
    for (const SourceTable& one : source.tables[k]) draft.list(section).push_back(one.table);
  }
  return draft;
}

}  // namespace cabwright::scenario
