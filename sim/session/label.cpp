// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/label.h"

#include <algorithm>
#include <array>

#include "session/database.h"
#include "session/file_tail.h"
#include "session/seal.h"
#include "session/session_error.h"
#include "session/situation.h"
#include "session/store_checks.h"

namespace cabwright::session {
namespace {

// A file that ends before its last page was cut off by somebody.
void checkSize(const std::filesystem::path& file) {
  std::error_code failed;
  const auto size = std::filesystem::file_size(file, failed);
  const auto end = findPagesEnd(file);
  if (failed || !end || size < *end)
    throw SessionError(file.string() + ": the file is damaged (torn or overwritten)");
}

// Format 1 names the mode only when it was chosen; else the scenario says it.
std::optional<scenario::Mode> modeOf(const SessionHeader& header) {
  if (header.run_mode) return header.run_mode;
  if (header.mode) return header.mode;
  const auto read = readSituation(header.sources);
  const auto* situation = std::get_if<Situation>(&read);
  if (situation == nullptr) return std::nullopt;
  return situation->loaded.scenario.mode;
}

void readEnd(Database& database, Label& label) {
  Statement row(database, "SELECT passed, tick, sheet FROM closing LIMIT 1");
  if (row.step()) {
    label.passed = row.integer(0) != 0;
    label.last_tick = row.integer(1);
    label.sheet_json = row.text(2);
    return;
  }
  label.last_tick = database.integer("SELECT tick FROM frame ORDER BY seq DESC LIMIT 1");
}

}  // namespace

Label readLabel(const std::filesystem::path& file) {
  checkOutside(file);
  const bool has_journal = hasJournal(file);
  if (!has_journal) checkSize(file);
  if (needsCopyToRead(file))
    throw SessionError(file.string() + ": was cut off, in a folder that cannot be written");
  const int version = readFormatVersion(file);
  Database database = Database::openUntrusted(file, file.string(), has_journal);
  checkSchema(database, version);
  LoadedHeader loaded = loadHeader(database, version);
  Label label;
  label.mode = modeOf(loaded.header);
  label.scenario_hash = calcScenarioHash(loaded.header.sources);
  label.header = std::move(loaded.header);
  label.header.sources.clear();
  if (version >= 2) {
    label.sealed = loadSeal(database).has_value();
    label.review = loadReview(database, loaded.known_people);
  }
  readEnd(database, label);
  return label;
}

}  // namespace cabwright::session
