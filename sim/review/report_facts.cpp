// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/report_facts.h"

#include <fmt/format.h>

#include <system_error>

#include "review/progress.h"

namespace cabwright::review {

std::optional<AttemptPlace> findAttempt(const std::filesystem::path& file, ShelfOptions options) {
  std::error_code failed;
  const std::filesystem::path own = std::filesystem::absolute(file, failed).lexically_normal();
  if (failed) return std::nullopt;
  options.goes_down = false;
  const Shelf shelf = openShelf({own.parent_path()}, options);
  std::vector<const ShelfItem*> items;
  const ShelfItem* wanted = nullptr;
  for (const ShelfItem& item : shelf.items) {
    items.push_back(&item);
    if (item.file == own) wanted = &item;
  }
  if (wanted == nullptr || traineeKey(*wanted).empty()) return std::nullopt;
  for (const VersionAttempts& version : findAttempts(items, traineeKey(*wanted), wanted->scenario))
    for (const Attempt& attempt : version.attempts)
      if (attempt.item == wanted)
        return AttemptPlace{attempt.number, static_cast<int>(version.attempts.size())};
  return std::nullopt;
}

std::string describePlant(const session::SessionHeader& header) {
  for (const session::SourceText& source : header.sources)
    if (source.role == "vehicle")
      return fmt::format("{} [{}]", source.name, session::calcScenarioHash({source}));
  return {};
}

}  // namespace cabwright::review
