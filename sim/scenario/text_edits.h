// SPDX-License-Identifier: GPL-3.0-or-later
// Changes to a text, gathered first and done at once. Used by the writer only.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scenario/draft.h"
#include "scenario/file_layout.h"

namespace cabwright::scenario {

/// Puts `text` in the place of a range, which may be empty.
struct TextEdit {
  ByteRange range;
  std::string text;
  bool whole_lines = false;  ///< begins on a line of its own
};

class TextEdits {
 public:
  void replace(ByteRange range, std::string text) {
    edits_.push_back({range, std::move(text), false});
  }
  void remove(ByteRange range) { edits_.push_back({range, {}, false}); }
  /// Lines put in at the start of a line. Of several at one place the first stays first.
  void insertLines(std::size_t at, std::string text) {
    edits_.push_back({{at, at}, std::move(text), true});
  }
  [[nodiscard]] bool isEmpty() const { return edits_.empty(); }

  /// The part `of` of the text, changed. Never two blank lines where lines were put in.
  [[nodiscard]] std::string applied(std::string_view text, ByteRange of,
                                    std::string_view line_end) const;

 private:
  std::vector<TextEdit> edits_;
};

/// Makes the value that stands at `value` into `now`; of a list over several lines only the items
/// that are other ones.
void changeValue(std::string_view text, ByteRange value, const DraftValue& was,
                 const DraftValue& now, std::string_view line_end, TextEdits& edits);

}  // namespace cabwright::scenario
