// SPDX-License-Identifier: GPL-3.0-or-later
#include "source_tree.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace cabwright::architecture {

namespace fs = std::filesystem;

namespace {

constexpr std::array<std::string_view, 7> kFolders{"app",   "sim",       "ui", "assets",
                                                   "tests", "scenarios", ".ci"};

void addFile(const fs::path& top, const fs::path& path, std::vector<SourceFile>& files) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  if (text.str().find('\0') != std::string::npos) return;
  files.push_back({path.lexically_relative(top).generic_string(), text.str()});
}

bool isIdentifier(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

// Where the comment, literal or plain character at `at` ends.
std::size_t findEnd(std::string_view text, std::size_t at) {
  const std::string_view rest = text.substr(at);
  const auto after = [&](std::string_view mark, std::size_t skip) {
    const std::size_t found = rest.find(mark, skip);
    return found == std::string_view::npos ? text.size() : at + found + mark.size();
  };
  if (rest.starts_with("//")) return std::min(text.size(), at + rest.find('\n'));
  if (rest.starts_with("/*")) return after("*/", 2);
  const bool inside_word = at > 0 && isIdentifier(text[at - 1]);
  if (rest.starts_with("R\"(") && !inside_word) return after(")\"", 3);
  // An apostrophe between digits separates thousands.
  if (rest[0] == '"' || (rest[0] == '\'' && !inside_word)) {
    for (std::size_t k = 1; k < rest.size(); ++k) {
      if (rest[k] == '\\') {
        ++k;
      } else if (rest[k] == rest[0]) {
        return at + k + 1;
      }
    }
    return text.size();
  }
  return at + 1;
}

}  // namespace

std::vector<SourceFile> loadSources() {
  const fs::path top = CABWRIGHT_SOURCE_DIR;
  std::vector<SourceFile> files;
  for (const fs::directory_entry& entry : fs::directory_iterator(top)) {
    if (entry.is_regular_file()) addFile(top, entry.path(), files);
  }
  for (const std::string_view folder : kFolders) {
    if (!fs::is_directory(top / folder)) continue;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(top / folder)) {
      if (entry.is_regular_file()) addFile(top, entry.path(), files);
    }
  }
  std::ranges::sort(files, {}, &SourceFile::path);
  return files;
}

bool isCpp(std::string_view path) { return path.ends_with(".h") || path.ends_with(".cpp"); }

bool isIn(std::string_view path, std::string_view folder) {
  return path.size() > folder.size() && path.starts_with(folder) && path[folder.size()] == '/';
}

std::string blankCommentsAndStrings(std::string_view text) {
  std::string out(text);
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = findEnd(text, at);
    if (end > at + 1) {
      for (std::size_t k = at; k < end; ++k) {
        if (out[k] != '\n') out[k] = ' ';
      }
    }
    at = end;
  }
  return out;
}

std::string roomOf(std::string_view path) {
  if (!isIn(path, "sim")) return "";
  const std::string_view rest = path.substr(4);
  const std::size_t slash = rest.find('/');
  return slash == std::string_view::npos ? "" : std::string(rest.substr(0, slash));
}

void addOffences(const SourceFile& file, std::string_view text, const LineRule& rule,
                 Offences& offences) {
  std::size_t number = 1;
  for (std::size_t at = 0; at < text.size(); ++number) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string what = rule(text.substr(at, end - at));
    if (!what.empty()) {
      offences.push_back(file.path + ":" + std::to_string(number) + ": " + what);
    }
    at = end + 1;
  }
}

}  // namespace cabwright::architecture
