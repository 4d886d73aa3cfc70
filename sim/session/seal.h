// SPDX-License-Identifier: GPL-3.0-or-later
// The seal of a session: its count of rows and the end of its chain, signed with Ed25519.
//
// A seal says: since then nobody without the key has changed, cut off or added a row. It does not
// say that what was recorded is true; that is what a replay is for.
//
// Sealing never leaves anything half done. The journal is folded into the file first, by SQLite,
// which can be interrupted anywhere; then seal and tail (file_tail.h) are put on a copy that takes
// the file's place.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "session/digest.h"
#include "session/signing_key.h"

namespace cabwright::session {

class Database;

/// A station that seals what it has just recorded says "when it ended"; anybody who asks for a seal
/// later gets one that says so.
enum class SealHow : std::uint8_t { kWhenItEnded, kOnRequest };
[[nodiscard]] std::string_view wordOf(SealHow how);

struct Seal {
  SealHow how = SealHow::kWhenItEnded;
  std::int64_t count = 0;  ///< number of the last row
  Digest last{};           ///< value of the chain after it
  PublicKey station{};
  Signature signature{};
  bool operator==(const Seal&) const = default;
};

/// What is signed: a domain string that names the use, the session id, count and value.
[[nodiscard]] std::vector<std::uint8_t> sealMessage(std::string_view session_id, SealHow how,
                                                    std::int64_t count, const Digest& last);

/// Seals a session that has ended or was cut off, after reading all of it. Throws SessionError: it
/// is damaged, of format 1, sealed already, still being recorded, or there is no room.
void sealSession(const std::filesystem::path& file, const SigningKey& key, SealHow how);

/// Folds the journal of a session that nobody records any more into the file, which keeps none from
/// then on; does nothing where there is none. Throws SessionError: it is still being recorded, or
/// no session.
void foldJournal(const std::filesystem::path& file);

/// The seal as it stands in the file, not yet held against anything. Throws SessionError when the
/// row is no seal.
[[nodiscard]] std::optional<Seal> loadSeal(Database& database);

}  // namespace cabwright::session
