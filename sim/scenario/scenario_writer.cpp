// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/scenario_writer.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <system_error>

#include "scenario/draft_writer.h"
#include "scenario/scenario.h"

namespace cabwright::scenario {

namespace {

namespace fs = std::filesystem;

Draft withoutUsual(Draft draft) {
  for (std::size_t k = 0; k < kDraftSections; ++k) {
    const auto section = static_cast<DraftSection>(k);
    const auto tidy = [&](DraftTable& table) {
      std::erase_if(table.entries,
                    [&](const DraftEntry& entry) { return isUsual(section, entry); });
    };
    if (isList(section)) {
      for (DraftTable& table : draft.list(section)) tidy(table);
    } else {
      tidy(draft.table(section));
    }
  }
  return draft;
}

// A safe road for texts laid out in a way this writer does not know: what is read again must be
// what was meant.
bool says(const std::string& text, const Draft& draft) {
  auto read = readDraft({"", text});
  auto* again = std::get_if<Draft>(&read);
  return again && withoutUsual(std::move(*again)).saysTheSame(withoutUsual(draft));
}

}  // namespace

std::string writeDraft(const Draft& draft) {
  std::string text = changedText(draft, draft.original);
  if (text == draft.original || says(text, draft)) return text;
  return changedText(draft, Draft().original);
}

FileFaults findDraftFaults(const Draft& draft, const std::string& name, const Library& library,
                           const RuleCheck& check) {
  const SourceFile file{name, writeDraft(draft)};
  auto parsed = parseScenario(file, library, check);
  auto* faults = std::get_if<FileFaults>(&parsed);
  return faults ? std::move(*faults) : FileFaults{};
}

std::optional<FileFault> saveText(const std::string& path, const std::string& text) {
  const auto hindered = [&](const std::string& what) { return FileFault{{path, 0, 0}, what}; };
  std::error_code error;
  const fs::path file = path, part = path + ".part";
  if (fs::is_directory(file, error)) return hindered("is a folder, a file is wanted");
  if (file.has_parent_path()) fs::create_directories(file.parent_path(), error);
  if (error) return hindered("its folder cannot be made: " + error.message());
  {
    std::ofstream out(part, std::ios::binary | std::ios::trunc);
    out.write(text.data(), static_cast<std::streamsize>(text.size()));
    out.close();
    if (!out) {
      fs::remove(part, error);
      return hindered("cannot be written");
    }
  }
  fs::rename(part, file, error);
  if (!error) return std::nullopt;
  const std::string why = error.message();
  fs::remove(part, error);
  return hindered("cannot be written: " + why);
}

}  // namespace cabwright::scenario
