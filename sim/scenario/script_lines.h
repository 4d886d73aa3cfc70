// SPDX-License-Identifier: GPL-3.0-or-later
// A script before its words are looked at: lines that say something, and edits of another script's
// lines. Used by the script reader only.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/fault_sink.h"

namespace cabwright::scenario {

/// A line that is neither empty nor a comment.
struct ScriptLine {
  std::size_t file = 0;    ///< 0: the script itself, 1: the one it stands on
  std::size_t number = 0;  ///< from 1
  std::string_view whole;  ///< as it stands in the file
  std::string_view text;   ///< without blanks at either end
};

/// The column of a part of the line.
[[nodiscard]] std::size_t columnOf(const ScriptLine& line, std::string_view part);

struct ScriptLines {
  std::optional<std::string> breaks;  ///< what "# breaks:" at the head names
  std::vector<ScriptLine> lines;
};
/// The lines point into the text of the sink's file.
[[nodiscard]] ScriptLines readLines(FaultSink& sink, std::size_t file);

/// Whether the first word is this one; it is then taken off, with the blanks behind it.
[[nodiscard]] bool takeWord(std::string_view& text, std::string_view word);

struct EditedLines {
  std::vector<ScriptLine> lines;
  /// Lines of edits that could not be made: their words are looked at all the same.
  std::vector<ScriptLine> left_over;
};
/// Applies the edits that stand in `edits` (all lines behind "as NAME") to the lines of a whole
/// script, `base_name`. What is wrong goes to the sink of the edits' file.
[[nodiscard]] EditedLines applyEdits(const std::vector<ScriptLine>& base,
                                     std::string_view base_name,
                                     const std::vector<ScriptLine>& edits, FaultSink& sink);

}  // namespace cabwright::scenario
