// SPDX-License-Identifier: GPL-3.0-or-later
// The checks at the door of a session file and the reading of its header tables. Used by Store.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "session/database.h"
#include "session/record.h"
#include "session/row_chain.h"
#include "session/seal.h"

namespace cabwright::session {

/// A session longer than this is taken for nonsense: one week.
inline constexpr std::int64_t kMostTicks = std::int64_t{7} * 24 * 3600 * kTicksPerSecond;

/// What can be told without SQLite: a regular file, not empty, not absurdly large, its magic, its
/// application id and format version. Throws SessionError.
void checkOutside(const std::filesystem::path& file);

/// Whether a journal lies beside it: the session is still being written, or was cut off.
[[nodiscard]] bool hasJournal(const std::filesystem::path& file);

/// True when SQLite would have to write beside the file to read its journal, and may not.
[[nodiscard]] bool needsCopyToRead(const std::filesystem::path& file);

/// Which format the file's head says it has. Throws SessionError.
[[nodiscard]] int readFormatVersion(const std::filesystem::path& file);

/// Exactly the known tables. Throws SessionError.
void checkSchema(Database& database, int version);

/// Exactly the known tables and quick_check without complaint. Throws SessionError.
void checkInside(Database& database, int version);

/// A row of the table of people, with what stands for it in the chain.
struct KnownPerson {
  std::int64_t id = 0;
  Person person;
  Digest mark{};
  bool took_part = false;  ///< in the session itself
};

struct LoadedHeader {
  SessionHeader header;
  RowChain chain;  ///< after the header
  /// For each recorded value the signal of this program, or empty: recorded by a newer one.
  std::vector<std::optional<unit::Signal>> signals;
  std::size_t erased_people = 0;  ///< of those that took part: their names are gone
  std::vector<KnownPerson> known_people;
};
/// Throws SessionError.
[[nodiscard]] LoadedHeader loadHeader(Database& database, int version);
/// Throws SessionError.
[[nodiscard]] std::optional<Closing> loadClosing(Database& database, std::int64_t& seq,
                                                 std::int64_t& chain);

}  // namespace cabwright::session
