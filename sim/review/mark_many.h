// SPDX-License-Identifier: GPL-3.0-or-later
// Marks many sessions again, as many at once as there are processors. What is broken is said and
// stops nothing.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace cabwright::review {

struct MarkedSession {
  std::filesystem::path file;
  std::string fault;  ///< not empty: it could not be marked, and why
  std::string session_id, trainee, scenario, started_utc, mode;
  bool complete = false;  ///< false: it was cut off
  bool passed = false;
  double percent = 0;
  std::vector<std::string> failed_by;  ///< ids of broken criticals
  /// Each line's id and what it came to.
  std::vector<std::pair<std::string, std::string>> verdicts;
  std::optional<bool> as_recorded;  ///< the sheet is the one recorded at the end
};

/// Never throws for what is in the file.
[[nodiscard]] MarkedSession markOne(const std::filesystem::path& file);

/// One line of JSON, without its end.
[[nodiscard]] std::string toJsonLine(const MarkedSession& marked);
/// The name of a file as it stands there: bytes that are no UTF-8 as "\xff".
[[nodiscard]] std::string nameInLine(const std::filesystem::path& file);
/// The file that such a line is about, by nameInLine(), if it could be marked; empty for any other
/// text.
[[nodiscard]] std::optional<std::string> readMarkedFile(const std::string& line);
/// Whether these are such lines and nothing else, the last of them perhaps cut off.
[[nodiscard]] bool areMarkLines(std::string_view text);

/// All session files of these files and folders, each once, sorted; folders are gone down into.
[[nodiscard]] std::vector<std::filesystem::path> findSessions(
    const std::vector<std::filesystem::path>& places);

/// Called with each as it is done, from one thread at a time; false stops the rest.
using EachMarked = std::function<bool(const MarkedSession& marked)>;

/// `threads` 0: as many as there are processors. Gives how many were marked.
std::size_t markMany(const std::vector<std::filesystem::path>& files, const EachMarked& each,
                     unsigned threads = 0);

}  // namespace cabwright::review
