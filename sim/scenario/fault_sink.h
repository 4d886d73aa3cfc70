// SPDX-License-Identifier: GPL-3.0-or-later
// Collects what is wrong in one file while it is read. Used by the readers only.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scenario/file_fault.h"
#include "scenario/rule_text.h"

namespace cabwright::scenario {

/// More than this nobody reads; the rest is counted. Keeps a hostile file from costing time.
inline constexpr std::size_t kMostFaults = 200;

class FaultSink {
 public:
  explicit FaultSink(const SourceFile& file);

  void add(std::size_t line, std::size_t column, std::string what);
  void add(const FilePlace& at, std::string what) { add(at.line, at.column, std::move(what)); }
  /// Of the file as such.
  void add(std::string what) { add(0, 0, std::move(what)); }
  /// Looking for nearest names is worth while no longer.
  [[nodiscard]] bool isFull() const { return faults_.size() >= kMostFaults; }
  [[nodiscard]] bool isEmpty() const { return faults_.empty(); }
  /// How many so far, those not listed included: whether reading a part of the file added any.
  [[nodiscard]] std::size_t count() const { return faults_.size() + uncounted_; }

  [[nodiscard]] FilePlace place(std::size_t line, std::size_t column) const {
    return {file_.name, line, column};
  }
  [[nodiscard]] const SourceFile& file() const { return file_; }
  /// Offset of a place in the text; npos if there is none.
  [[nodiscard]] std::size_t offsetOf(std::size_t line, std::size_t column);

  /// What was found, sorted; with a last line about those that were only counted.
  [[nodiscard]] FileFaults take();

 private:
  const SourceFile& file_;
  std::vector<std::size_t> line_starts_;
  FileFaults faults_;
  std::size_t uncounted_ = 0;
  struct {
    std::size_t line = 0, column = 1, offset = 0;
  } last_;  ///< looked for last: a list of many texts on one line is walked through once
};

/// The places of the bytes of a TOML text that begins at `at`, and of its end: so that a word in it
/// can be pointed at. Empty if what stands there is not that text.
[[nodiscard]] std::vector<TextPlace> findTextPlaces(FaultSink& sink, const FilePlace& at,
                                                    std::string_view decoded);

/// Without characters that would break a message: control characters become '?'.
[[nodiscard]] std::string printable(std::string_view text, std::size_t longest = 80);

}  // namespace cabwright::scenario
