// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/table_reader.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "plant/named_numbers.h"
#include "scenario/quantity_text.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

std::string boundsInWords(Bounds bounds, std::string_view unit) {
  std::string text =
      plant::shortNumber(bounds.lowest) + " to " + plant::shortNumber(bounds.highest);
  if (!unit.empty()) text.append(" ").append(unit);
  return text;
}

void flattenInto(const toml::table& table, const FaultSink& sink, const std::string& prefix,
                 std::vector<FlatEntry>& all) {
  for (const auto& [key, node] : table) {
    const std::string name = prefix + std::string(key.str());
    const bool is_branch = node.is_table() && !node.as_table()->empty();
    if (is_branch) {
      flattenInto(*node.as_table(), sink, name + ".", all);
    } else {
      all.push_back({name, &node, placeOf(sink, key.source()), placeOf(sink, node.source())});
    }
  }
}

}  // namespace

FilePlace placeOf(const FaultSink& sink, const toml::source_region& region) {
  return sink.place(region.begin.line, region.begin.column);
}

std::string_view kindOf(const toml::node& node) {
  switch (node.type()) {
    case toml::node_type::table:
      return "a table";
    case toml::node_type::array:
      return "a list";
    case toml::node_type::string:
      return "text";
    case toml::node_type::integer:
    case toml::node_type::floating_point:
      return "a number";
    case toml::node_type::boolean:
      return "true or false";
    default:
      return "a date or time";
  }
}

TableReader::TableReader(const toml::table& table, FaultSink& sink, std::string what, bool lenient)
    : table_(table), sink_(sink), what_(std::move(what)), lenient_(lenient) {}

FilePlace TableReader::placeOfKey(std::string_view key) const {
  for (const auto& [k, node] : table_) {
    if (k.str() == key) return placeOf(sink_, k.source());
  }
  return at();
}

FilePlace TableReader::placeOfValue(std::string_view key) const {
  const toml::node* node = table_.get(key);
  return node ? placeOf(sink_, node->source()) : at();
}

const toml::node* TableReader::find(std::string_view key, Need need) {
  if (std::find(known_.begin(), known_.end(), key) == known_.end()) known_.emplace_back(key);
  const toml::node* node = table_.get(key);
  if (!node && need == Need::kMust && !lenient_) {
    FilePlace where = at();
    if (where.line == 0) where = sink_.place(1, 1);
    sink_.add(where, what_ + " needs '" + std::string(key) + "'");
  }
  return node;
}

void TableReader::wrongKind(std::string_view key, const toml::node& node, std::string_view wanted) {
  sink_.add(placeOf(sink_, node.source()), "'" + std::string(key) + "' is " +
                                               std::string(kindOf(node)) +
                                               "; allowed: " + std::string(wanted));
}

std::optional<std::string> TableReader::text(std::string_view key, Need need) {
  const toml::node* node = find(key, need);
  if (!node) return std::nullopt;
  const auto* value = node->as_string();
  if (!value) {
    wrongKind(key, *node, "text");
    return std::nullopt;
  }
  if (need == Need::kMust && trimmed(value->get()).empty()) {
    sink_.add(placeOf(sink_, node->source()), "'" + std::string(key) + "' is empty");
    return std::nullopt;
  }
  return value->get();
}

std::optional<double> readNumberNode(const toml::node& node, std::string_view name,
                                     std::string_view unit, Bounds bounds, FaultSink& sink) {
  const FilePlace at = placeOf(sink, node.source());
  double value = 0;
  if (const auto* text = node.as_string()) {
    const auto read = readQuantity(text->get(), unit, false);
    if (const auto* wrong = std::get_if<std::string>(&read)) {
      sink.add(at, "'" + std::string(name) + "': " + *wrong);
      return std::nullopt;
    }
    value = std::get<double>(read);
  } else if (const auto number = node.is_number() ? node.value<double>() : std::nullopt) {
    value = *number;
  } else {
    sink.add(at, "'" + std::string(name) + "' is " + std::string(kindOf(node)) +
                     "; allowed: a number" +
                     (unit.empty() ? std::string() : " of " + std::string(unit)));
    return std::nullopt;
  }
  if (value >= bounds.lowest && value <= bounds.highest) return value;
  sink.add(at, "'" + std::string(name) + "' is " + plant::shortNumber(value) +
                   "; allowed: " + boundsInWords(bounds, unit));
  return std::nullopt;
}

std::optional<double> TableReader::number(std::string_view key, std::string_view unit,
                                          Bounds bounds, Need need) {
  const toml::node* node = find(key, need);
  return node ? readNumberNode(*node, key, unit, bounds, sink_) : std::nullopt;
}

std::optional<std::int64_t> TableReader::whole(std::string_view key, std::int64_t lowest,
                                               std::int64_t highest, Need need) {
  const toml::node* node = find(key, need);
  if (!node) return std::nullopt;
  const auto* value = node->as_integer();
  if (!value) {
    wrongKind(key, *node, "a whole number");
    return std::nullopt;
  }
  if (value->get() >= lowest && value->get() <= highest) return value->get();
  sink_.add(placeOf(sink_, node->source()),
            "'" + std::string(key) + "' is " + std::to_string(value->get()) +
                "; allowed: " + std::to_string(lowest) + " to " + std::to_string(highest));
  return std::nullopt;
}

std::optional<bool> TableReader::flag(std::string_view key) {
  const toml::node* node = find(key);
  if (!node) return std::nullopt;
  if (const auto* value = node->as_boolean()) return value->get();
  wrongKind(key, *node, "true or false");
  return std::nullopt;
}

std::optional<std::int64_t> TableReader::ticks(std::string_view key) {
  const toml::node* node = find(key);
  if (!node) return std::nullopt;
  std::variant<std::int64_t, std::string> read = std::int64_t{0};
  if (const auto* text = node->as_string()) {
    read = readTicks(text->get());
  } else if (const auto number = node->is_number() ? node->value<double>() : std::nullopt) {
    read = secondsToTicks(*number);
  } else {
    wrongKind(key, *node, "a time: a number of s, or a text such as \"1 min 30 s\"");
    return std::nullopt;
  }
  if (const auto* ticks = std::get_if<std::int64_t>(&read)) return *ticks;
  sink_.add(placeOf(sink_, node->source()),
            "'" + std::string(key) + "': " + std::get<std::string>(read));
  return std::nullopt;
}

std::optional<std::size_t> TableReader::word(std::string_view key,
                                             std::span<const std::string_view> allowed, Need need) {
  const auto found = text(key, need);
  if (!found) return std::nullopt;
  for (std::size_t k = 0; k < allowed.size(); ++k) {
    if (allowed[k] == *found) return k;
  }
  sink_.add(placeOfValue(key), unit::unknownWord(key, *found, allowed));
  return std::nullopt;
}

std::vector<TableReader::Text> TableReader::texts(std::string_view key, Need need) {
  const toml::node* node = find(key, need);
  if (!node) return {};
  if (const auto* one = node->as_string()) {
    return {{one->get(), placeOf(sink_, node->source())}};
  }
  const auto* list = node->as_array();
  if (!list) {
    wrongKind(key, *node, "text, or a list of texts");
    return {};
  }
  if (need == Need::kMust && list->empty()) {
    sink_.add(placeOf(sink_, node->source()), "'" + std::string(key) + "' is an empty list");
  }
  std::vector<Text> all;
  for (const toml::node& item : *list) {
    if (const auto* value = item.as_string()) {
      all.push_back({value->get(), placeOf(sink_, item.source())});
    } else {
      wrongKind(key, item, "text in this list");
    }
  }
  return all;
}

// "marking.use" of a key of [marking].
std::string TableReader::pathOf(std::string_view key) const {
  const std::size_t begin = what_.find_first_not_of('[');
  const bool is_inside = begin != 0 && begin != std::string::npos;
  const std::string outer =
      is_inside ? what_.substr(begin, what_.find(']') - begin) + "." : std::string();
  return outer + std::string(key);
}

std::optional<TableReader> TableReader::table(std::string_view key) {
  const toml::node* node = find(key);
  if (!node) return std::nullopt;
  if (const auto* inner = node->as_table()) {
    return TableReader(*inner, sink_, "[" + pathOf(key) + "]", lenient_);
  }
  wrongKind(key, *node, "a table, as [" + pathOf(key) + "]");
  return std::nullopt;
}

std::vector<TableReader> TableReader::tables(std::string_view key) {
  const toml::node* node = find(key);
  if (!node) return {};
  const auto* list = node->as_array();
  if (!list) {
    wrongKind(key, *node, "a list of tables, as [[" + pathOf(key) + "]]");
    return {};
  }
  std::vector<TableReader> all;
  for (const toml::node& item : *list) {
    if (const auto* inner = item.as_table()) {
      all.emplace_back(*inner, sink_, "[[" + pathOf(key) + "]]", lenient_);
    } else {
      wrongKind(key, item, "a table in this list");
    }
  }
  return all;
}

void TableReader::finish() {
  std::vector<std::string_view> known(known_.begin(), known_.end());
  for (const auto& [key, node] : table_) {
    const std::string_view name = key.str();
    if (std::find(known.begin(), known.end(), name) != known.end()) continue;
    const std::string what =
        sink_.isFull() ? std::string("unknown key") : unit::unknownWord("key", name, known);
    sink_.add(placeOf(sink_, key.source()), what + " in " + what_);
  }
}

std::vector<FlatEntry> flatten(const toml::table& table, const FaultSink& sink) {
  std::vector<FlatEntry> all;
  flattenInto(table, sink, "", all);
  std::stable_sort(all.begin(), all.end(), [](const FlatEntry& a, const FlatEntry& b) {
    return std::tie(a.key_at.line, a.key_at.column) < std::tie(b.key_at.line, b.key_at.column);
  });
  return all;
}

}  // namespace cabwright::scenario
