// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong in a file, and where.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace cabwright::scenario {

/// A place in a file. Lines and columns count from 1, columns in characters; 0: the file as such.
struct FilePlace {
  std::string file;
  std::size_t line = 0, column = 0;
  bool operator==(const FilePlace&) const = default;
};

struct FileFault {
  FilePlace at;
  std::string what;  ///< what was found, what is allowed, the nearest known name
  bool operator==(const FileFault&) const = default;
};
using FileFaults = std::vector<FileFault>;

/// "file:line:column: what", one line; without line and column when the file as such is meant.
[[nodiscard]] std::string toText(const FileFault& fault);
/// By file (in order of first mention), line and column; the same fault twice counts once.
void sortFaults(FileFaults& faults);

/// A text with the name people know it by.
struct SourceFile {
  std::string name;  ///< for messages: the path as given
  std::string text;
  bool operator==(const SourceFile&) const = default;
};

/// Files larger than this are refused before they are read.
inline constexpr std::size_t kLargestFile = 4u << 20;

/// Reads a text file: there, readable, no folder, not too large, UTF-8 (RFC 3629) without NUL, in
/// lines that end with LF or CR LF. A byte order mark is taken off.
[[nodiscard]] std::variant<SourceFile, FileFault> loadText(const std::string& path);
/// Where the first byte is that is no UTF-8, NUL or a carriage return inside a line; nothing if the
/// text is sound.
[[nodiscard]] std::vector<FileFault> findTextFaults(const SourceFile& file);

}  // namespace cabwright::scenario
