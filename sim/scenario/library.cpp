// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/library.h"

#include <algorithm>
#include <array>
#include <set>
#include <system_error>

namespace cabwright::scenario {

namespace fs = std::filesystem;

namespace {

constexpr std::array<std::string_view, 4> kFolders{"vehicles", "routes", "rules", "guides"};
constexpr std::array<std::string_view, 4> kWords{"vehicle", "route", "rules", "guide"};

std::string_view folderOf(Shelf shelf) { return kFolders[static_cast<std::size_t>(shelf)]; }

}  // namespace

std::string_view wordOf(Shelf shelf) { return kWords[static_cast<std::size_t>(shelf)]; }

bool isShelfName(std::string_view name) {
  if (name.empty() || name.size() > 80) return false;
  return std::all_of(name.begin(), name.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' ||
           c == '_';
  });
}

FolderLibrary::FolderLibrary(fs::path scenarios, fs::path shipped)
    : folder_(std::move(scenarios)), shipped_(std::move(shipped)) {}

std::variant<SourceFile, std::string> FolderLibrary::find(Shelf shelf,
                                                          std::string_view name) const {
  if (!isShelfName(name)) {
    return std::string("a name is made of letters, digits, '-' and '_'");
  }
  const fs::path file = fs::path(folderOf(shelf)) / (std::string(name) + ".toml");
  std::error_code error;
  const bool lent = !shipped_.empty() && !fs::exists(folder_ / file, error);
  const fs::path path = (lent ? shipped_ : folder_) / file;
  auto loaded = loadText(path.string());
  if (auto* fault = std::get_if<FileFault>(&loaded)) return toText(*fault);
  return std::get<SourceFile>(std::move(loaded));
}

std::vector<std::string> FolderLibrary::names(Shelf shelf) const {
  std::set<std::string> all;
  for (const fs::path& folder : {folder_, shipped_}) {
    std::error_code error;
    fs::directory_iterator at(folder / folderOf(shelf), error), end;
    while (!folder.empty() && !error && at != end) {
      if (at->path().extension() == ".toml") all.insert(at->path().stem().string());
      at.increment(error);
    }
  }
  return {all.begin(), all.end()};
}

void TextLibrary::add(Shelf shelf, std::string name, std::string text) {
  texts_[{shelf, std::move(name)}] = std::move(text);
}

std::variant<SourceFile, std::string> TextLibrary::find(Shelf shelf, std::string_view name) const {
  const auto at = texts_.find(std::pair(shelf, std::string(name)));
  if (at == texts_.end()) return std::string("there is no such text");
  return SourceFile{std::string(folderOf(shelf)) + "/" + at->first.second + ".toml", at->second};
}

std::vector<std::string> TextLibrary::names(Shelf shelf) const {
  std::vector<std::string> all;
  for (const auto& [key, text] : texts_) {
    if (key.first == shelf) all.push_back(key.second);
  }
  return all;
}

fs::path findLibraryFolder(const fs::path& scenario_file) {
  std::error_code error;
  const fs::path folder = scenario_file.parent_path();
  fs::path at = fs::absolute(folder.empty() ? fs::path(".") : folder, error).lexically_normal();
  if (error) return folder / "..";
  const fs::path usual = at.parent_path();
  for (int up = 0; up < 16; ++up) {
    if (fs::is_directory(at / "vehicles", error)) return at;
    if (!at.has_relative_path()) break;
    at = at.parent_path();
  }
  return usual;
}

}  // namespace cabwright::scenario
