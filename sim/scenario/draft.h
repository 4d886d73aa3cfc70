// SPDX-License-Identifier: GPL-3.0-or-later
// A scenario as it is written, to be changed by hand or by a window: section by section the keys
// and values of its file. What they mean only the reader of scenarios knows (findDraftFaults).
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "scenario/file_fault.h"

namespace cabwright::scenario {

struct DraftValue;
struct DraftList {
  std::vector<DraftValue> items;
};
/// { item = "end2.tail_lamp", weight = 2 }
struct DraftInline {
  std::vector<std::string> keys;
  std::vector<DraftValue> values;  ///< as many
};

struct DraftValue {
  std::variant<std::string, bool, std::int64_t, double, DraftList, DraftInline> value;

  DraftValue() = default;
  DraftValue(std::string text) : value(std::move(text)) {}         // NOLINT(*-explicit-*)
  DraftValue(std::string_view text) : value(std::string(text)) {}  // NOLINT(*-explicit-*)
  DraftValue(const char* text) : value(std::string(text)) {}       // NOLINT(*-explicit-*)
  DraftValue(bool flag) : value(flag) {}                           // NOLINT(*-explicit-*)
  DraftValue(int whole) : value(std::int64_t{whole}) {}            // NOLINT(*-explicit-*)
  DraftValue(std::int64_t whole) : value(whole) {}                 // NOLINT(*-explicit-*)
  /// A whole one is written without a point.
  DraftValue(double number);                                  // NOLINT(*-explicit-*)
  DraftValue(DraftList list) : value(std::move(list)) {}      // NOLINT(*-explicit-*)
  DraftValue(DraftInline table) : value(std::move(table)) {}  // NOLINT(*-explicit-*)
  DraftValue(const std::vector<std::string>& texts);          // NOLINT(*-explicit-*)

  /// 2 and 2.0 are the same; keys of a table may stand in any order.
  bool operator==(const DraftValue& other) const;
};

struct DraftEntry {
  std::string key;  ///< below its section, dotted: "cab2.pawl"
  DraftValue value;
  bool operator==(const DraftEntry&) const = default;
};

/// A section, or one of a list of them.
struct DraftTable {
  std::vector<DraftEntry> entries;
  /// Which one of its list in the file it was read from, counted from 1; 0: a new one. Keep it when
  /// the table is changed or moved, so that its comments go with it.
  std::size_t origin = 0;

  [[nodiscard]] bool has(std::string_view key) const { return find(key) != nullptr; }
  [[nodiscard]] const DraftValue* find(std::string_view key) const;
  void set(std::string_view key, DraftValue value);
  void remove(std::string_view key);
  /// "" if it is not there or no text.
  [[nodiscard]] std::string text(std::string_view key) const;
  /// A list of texts, or one text.
  [[nodiscard]] std::vector<std::string> texts(std::string_view key) const;
  [[nodiscard]] bool flag(std::string_view key, bool otherwise) const;
  /// The same keys with the same values, in any order.
  bool operator==(const DraftTable& other) const;
};

/// In the order in which people write them.
enum class DraftSection : std::uint8_t {
  kHead,        ///< title ... time_allowed, above all sections
  kConditions,  ///< [conditions]
  kStart,       ///< [start]: place, berth, teeth and the numbers
  kControls,    ///< [start.controls]
  kObjects,     ///< [start.objects]
  kParameters,  ///< [start.parameters]
  kPeople,      ///< [people]
  kHidden,      ///< [[hidden]], and so on: lists
  kDraw,
  kFault,
  kEvent,
  kGuide,      ///< [guide]
  kGuideStep,  ///< [[guide.step]]
  kMarking,    ///< [marking]
  kJudgements,
  kUse,     ///< [[marking.use]]
  kChange,  ///< [[marking.change]]
  kRule,    ///< [[rule]]
  kCount
};
inline constexpr std::size_t kDraftSections = static_cast<std::size_t>(DraftSection::kCount);

/// "start.controls"; "" of the head.
[[nodiscard]] std::string_view pathOf(DraftSection section);
/// Whether there may be several.
[[nodiscard]] bool isList(DraftSection section);

class Draft {
 public:
  /// A new one, empty.
  Draft();

  /// Of a section that is no list.
  [[nodiscard]] DraftTable& table(DraftSection section) { return of(section).front(); }
  [[nodiscard]] const DraftTable& table(DraftSection section) const { return of(section).front(); }
  /// Of one that is.
  [[nodiscard]] std::vector<DraftTable>& list(DraftSection section) { return of(section); }
  [[nodiscard]] const std::vector<DraftTable>& list(DraftSection section) const {
    return of(section);
  }

  /// The text it was read from; of a new one its first line. Writing changes this text.
  std::string original;

  /// The same in every section, whatever text it was read from.
  [[nodiscard]] bool saysTheSame(const Draft& other) const { return tables_ == other.tables_; }

 private:
  [[nodiscard]] std::vector<DraftTable>& of(DraftSection section) {
    return tables_[static_cast<std::size_t>(section)];
  }
  [[nodiscard]] const std::vector<DraftTable>& of(DraftSection section) const {
    return tables_[static_cast<std::size_t>(section)];
  }
  std::array<std::vector<DraftTable>, kDraftSections> tables_;
};

/// The draft of a file. Faults are those of its form alone.
[[nodiscard]] std::variant<Draft, FileFaults> readDraft(const SourceFile& file);

}  // namespace cabwright::scenario
