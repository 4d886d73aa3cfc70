// SPDX-License-Identifier: GPL-3.0-or-later
// The project's own files as text, for tests that hold them to the rules of the house.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace cabwright::architecture {

struct SourceFile {
  std::string path;  ///< from the top of the project, with forward slashes
  std::string text;
};

/// Every text file below app, sim, ui, assets, scenarios, tests and .ci, and those at the top, in
/// the order of their paths. Build folders and files that are not text are left out.
[[nodiscard]] std::vector<SourceFile> loadSources();

[[nodiscard]] bool isCpp(std::string_view path);
[[nodiscard]] bool isIn(std::string_view path, std::string_view folder);

/// The text with comments and the contents of string literals blanked out; lines stay where they
/// were. Knows no raw strings with a custom delimiter.
[[nodiscard]] std::string blankCommentsAndStrings(std::string_view text);

/// The room of sim/ a path lies in, or "" outside.
[[nodiscard]] std::string roomOf(std::string_view path);

/// One offence against a rule: "path:line: what".
using Offences = std::vector<std::string>;

/// Runs a rule over each line: offence text, or "" when the line is in order.
using LineRule = std::function<std::string(std::string_view line)>;
void addOffences(const SourceFile& file, std::string_view text, const LineRule& rule,
                 Offences& offences);

}  // namespace cabwright::architecture
