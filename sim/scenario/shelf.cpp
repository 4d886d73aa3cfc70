// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/shelf.h"

#include <algorithm>
#include <system_error>

#include "scenario/scenario.h"
#include "scenario/scenario_writer.h"

namespace cabwright::scenario {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t kLongestName = 60;

ShelvedScenario lookAt(const fs::path& file, const fs::path& shipped, const RuleCheck& check) {
  ShelvedScenario one;
  one.name = file.parent_path().filename().string();
  one.path = file.string();
  one.title = one.name;
  auto loaded = loadScenario(one.path, shipped, check);
  if (const auto* good = std::get_if<LoadedScenario>(&loaded)) {
    one.title = good->scenario.title;
    return one;
  }
  one.fault = std::get<FileFaults>(loaded).front();
  const auto text = loadText(one.path);
  if (const auto* source = std::get_if<SourceFile>(&text)) {
    auto read = readDraft(*source);
    if (const auto* draft = std::get_if<Draft>(&read)) {
      const std::string title = draft->table(DraftSection::kHead).text("title");
      if (!title.empty()) one.title = title;
    }
  }
  return one;
}

}  // namespace

std::vector<ShelvedScenario> listScenarios(const fs::path& folder, const fs::path& shipped,
                                           const RuleCheck& check) {
  std::vector<ShelvedScenario> all;
  std::error_code error;
  fs::directory_iterator at(folder, error), end;
  while (!error && at != end) {
    const fs::path file = at->path() / "scenario.toml";
    std::error_code unreadable;
    if (fs::exists(file, unreadable)) all.push_back(lookAt(file, shipped, check));
    at.increment(error);
  }
  std::sort(all.begin(), all.end(),
            [](const ShelvedScenario& a, const ShelvedScenario& b) { return a.name < b.name; });
  return all;
}

std::string makeFolderName(const fs::path& folder, const std::string& title) {
  std::string name;
  for (const char c : title) {
    const bool upper = c >= 'A' && c <= 'Z';
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (upper || plain) {
      name += upper ? static_cast<char>(c - 'A' + 'a') : c;
    } else if (!name.empty() && name.back() != '-') {
      name += '-';
    }
    if (name.size() >= kLongestName) break;
  }
  while (!name.empty() && name.back() == '-') name.pop_back();
  if (name.empty()) name = "scenario";
  std::error_code error;
  std::string free = name;
  for (int n = 2; fs::exists(folder / free, error); ++n) free = name + "-" + std::to_string(n);
  return free;
}

std::variant<std::string, FileFault> saveScenario(const Draft& draft, const fs::path& folder) {
  const std::string title = draft.table(DraftSection::kHead).text("title");
  const fs::path file = folder / makeFolderName(folder, title) / "scenario.toml";
  if (auto fault = saveText(file.string(), writeDraft(draft))) return *fault;
  return file.string();
}

}  // namespace cabwright::scenario
