// SPDX-License-Identifier: GPL-3.0-or-later
// Reads one table of a file key by key: types, units and bounds are checked on the way, and what
// nobody asked for is an unknown key in the end. Used by the readers only.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/fault_sink.h"
#include "scenario/toml_file.h"

namespace cabwright::scenario {

enum class Need : std::uint8_t { kMay, kMust };

struct Bounds {
  double lowest, highest;
};

[[nodiscard]] FilePlace placeOf(const FaultSink& sink, const toml::source_region& region);
/// "text", "a number", "a list" ...
[[nodiscard]] std::string_view kindOf(const toml::node& node);

class TableReader {
 public:
  /// `what` names the table in messages: "[start]". With `lenient` nothing is missed.
  TableReader(const toml::table& table, FaultSink& sink, std::string what, bool lenient);

  [[nodiscard]] FilePlace at() const { return placeOf(sink_, table_.source()); }
  [[nodiscard]] FilePlace placeOfKey(std::string_view key) const;
  [[nodiscard]] FilePlace placeOfValue(std::string_view key) const;
  [[nodiscard]] bool has(std::string_view key) const { return table_.contains(key); }
  [[nodiscard]] FaultSink& sink() { return sink_; }
  [[nodiscard]] bool isLenient() const { return lenient_; }

  /// The value of a key, which is known from now on; none if it is not there.
  const toml::node* find(std::string_view key, Need need = Need::kMay);

  std::optional<std::string> text(std::string_view key, Need need = Need::kMay);
  /// A number or a text with the unit; inside the bounds.
  std::optional<double> number(std::string_view key, std::string_view unit, Bounds bounds,
                               Need need = Need::kMay);
  std::optional<std::int64_t> whole(std::string_view key, std::int64_t lowest, std::int64_t highest,
                                    Need need = Need::kMay);
  std::optional<bool> flag(std::string_view key);
  std::optional<std::int64_t> ticks(std::string_view key);
  /// The number of a word in a list of allowed ones.
  std::optional<std::size_t> word(std::string_view key, std::span<const std::string_view> allowed,
                                  Need need = Need::kMay);
  /// A list of texts, or one text; with their places.
  struct Text {
    std::string text;
    FilePlace at;
  };
  std::vector<Text> texts(std::string_view key, Need need = Need::kMay);
  std::optional<TableReader> table(std::string_view key);
  /// [[key]], or a list of inline tables.
  std::vector<TableReader> tables(std::string_view key);

  /// All that is left is unknown. To be called once, at the end.
  void finish();

 private:
  [[nodiscard]] std::string pathOf(std::string_view key) const;
  void wrongKind(std::string_view key, const toml::node& node, std::string_view wanted);

  const toml::table& table_;
  FaultSink& sink_;
  std::string what_;
  bool lenient_;
  std::vector<std::string> known_;
};

/// Numbers as TOML has them, or a text with its unit; the fault goes to the sink. `name` is what
/// messages call it.
[[nodiscard]] std::optional<double> readNumberNode(const toml::node& node, std::string_view name,
                                                   std::string_view unit, Bounds bounds,
                                                   FaultSink& sink);

/// A value with its dotted name, of tables in tables: {"cab2.pawl", node}.
struct FlatEntry {
  std::string name;
  const toml::node* node = nullptr;
  FilePlace key_at;
  FilePlace at;  ///< of the value
};
/// In order of place. Lists are not gone into.
[[nodiscard]] std::vector<FlatEntry> flatten(const toml::table& table, const FaultSink& sink);

}  // namespace cabwright::scenario
