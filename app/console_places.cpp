// SPDX-License-Identifier: GPL-3.0-or-later
#include "console_places.h"

#include <algorithm>
#include <cstdlib>
#include <system_error>

namespace cabwright::console {
namespace fs = std::filesystem;

fs::path programFolder() {
  std::error_code failed;
  const fs::path program = fs::read_symlink("/proc/self/exe", failed);
  return failed ? fs::path() : program.parent_path();
}

namespace {

bool isFolder(const fs::path& path) {
  std::error_code ignored;
  return fs::is_directory(path, ignored);
}

bool isThere(const fs::path& path) {
  std::error_code ignored;
  return fs::exists(path, ignored);
}

// Places nobody had to name: a build tree has a link to the scenarios beside the program; an
// installed program finds them from its own place, so that the prefix may be moved.
std::optional<fs::path> findOwn() {
  const fs::path folder = programFolder();
  for (const fs::path& data :
       {folder, folder / CABWRIGHT_DATA_FROM_BIN, fs::path(CABWRIGHT_DATA_INSTALLED)})
    if (isFolder(data / "scenarios")) return (data / "scenarios").lexically_normal();
  return std::nullopt;
}

}  // namespace

Places::Places(const std::optional<std::string>& given) {
  const char* variable = std::getenv("CABWRIGHT_DATA");
  const bool has_variable = variable != nullptr && *variable != '\0';
  if (!given && !has_variable) {
    scenarios_ = findOwn();
    return;
  }
  const fs::path data = given ? *given : variable;
  if (isFolder(data / "scenarios"))
    scenarios_ = data / "scenarios";
  else
    fault_ = std::string(given ? "--data" : "CABWRIGHT_DATA") + ": no folder " +
             (data / "scenarios").string();
}

std::optional<std::string> Places::findFault() const { return fault_; }

std::optional<fs::path> Places::findScenarios() const { return scenarios_; }

std::optional<fs::path> Places::findScenario(const std::string& word) const {
  const fs::path path = word;
  if (isFolder(path) && isThere(path / "scenario.toml")) return path / "scenario.toml";
  if (isThere(path) && !isFolder(path)) return path;
  // A name, not a way out of the folder.
  const bool is_name = path.has_filename() && path == path.filename() && word != "..";
  if (scenarios_ && is_name && isThere(*scenarios_ / path / "scenario.toml"))
    return *scenarios_ / path / "scenario.toml";
  return std::nullopt;
}

std::optional<fs::path> Places::findScript(const std::string& word,
                                           const fs::path& scenario) const {
  const fs::path beside = scenario.parent_path();
  for (const fs::path& path : {fs::path(word), beside / word, beside / (word + ".txt")})
    if (isThere(path) && !isFolder(path)) return path;
  return std::nullopt;
}

std::vector<std::string> Places::exercises() const {
  std::vector<std::string> names;
  std::error_code failed;
  if (!scenarios_) return names;
  for (const auto& entry : fs::directory_iterator(*scenarios_, failed))
    if (isThere(entry.path() / "scenario.toml")) names.push_back(entry.path().filename().string());
  std::ranges::sort(names);
  return names;
}

}  // namespace cabwright::console
