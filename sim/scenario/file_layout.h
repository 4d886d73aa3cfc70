// SPDX-License-Identifier: GPL-3.0-or-later
// Where each statement of a TOML text stands, to the byte: so that a file can be changed without
// touching what is beside the change. Used by the writer only; the text must be sound TOML.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace cabwright::scenario {

using KeyPath = std::vector<std::string>;

struct ByteRange {
  std::size_t begin = 0, end = 0;
};

/// KEY = VALUE, with the lines it takes.
struct FileStatement {
  KeyPath path;           ///< the key's own parts, without those of the head above it
  ByteRange value;        ///< without a remark behind it
  ByteRange lines;        ///< whole lines, the line end included
  bool remarked = false;  ///< a comment stands on its last line, or inside its value
  std::size_t block = 0;
};

/// A head and what stands below it. The first block has no head.
struct FileBlock {
  KeyPath path;
  bool is_list = false;  ///< [[...]]
  ByteRange head;        ///< its line; empty for the first block
  /// Where the comment lines begin that stand right above the head; head.begin without any.
  std::size_t lead = 0;
  /// Behind its last statement (its head, if it has none): where more can be added.
  std::size_t end = 0;
};

struct FileLayout {
  std::vector<FileBlock> blocks;
  std::vector<FileStatement> statements;  ///< in the order of the text
  std::string line_end = "\n";
};

[[nodiscard]] FileLayout findLayout(std::string_view text);

/// The ranges of the items of a list: text of a value that begins with '['.
[[nodiscard]] std::vector<ByteRange> findItems(std::string_view text, ByteRange value);

/// The start of the line that holds this byte, and the start of the next one.
[[nodiscard]] std::size_t lineStart(std::string_view text, std::size_t at);
[[nodiscard]] std::size_t nextLine(std::string_view text, std::size_t at);
/// Nothing but spaces and tabs up to the end of the line that begins here.
[[nodiscard]] bool isBlankLine(std::string_view text, std::size_t at);

/// A key as it has to be written: quoted where needed, parts joined by dots.
[[nodiscard]] std::string keyText(const KeyPath& path);
/// "cab2.pawl" as parts, and back.
[[nodiscard]] KeyPath splitName(std::string_view dotted);
[[nodiscard]] std::string joinName(const KeyPath& path, std::size_t from = 0);

}  // namespace cabwright::scenario
