// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/seal.h"

#include <algorithm>
#include <array>
#include <fstream>

#include "session/database.h"
#include "session/file_change.h"
#include "session/file_tail.h"
#include "session/payload.h"
#include "session/session_error.h"
#include "session/store.h"
#include "session/store_checks.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

bool keepsAJournal(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::array<char, 20> head{};
  in.read(head.data(), head.size());
  return head[18] != 1 || head[19] != 1 || hasJournal(file);
}

void putSeal(const fs::path& copy, const std::string& name, const Seal& seal) {
  Database database = Database::openOwnCopy(copy, name);
  database.run("BEGIN");
  {
    Statement put(database,
                  "INSERT INTO seal(id, how, count, last, station, signature) "
                  "VALUES(1, ?1, ?2, ?3, ?4, ?5)");
    put.bind(1, wordOf(seal.how)).bind(2, seal.count).bind(3, seal.last).bind(4, seal.station);
    put.bind(5, seal.signature).run();
  }
  database.run("COMMIT");
  database.close();
}

template <std::size_t N>
bool copyExactly(std::span<const std::uint8_t> from, std::array<std::uint8_t, N>& to) {
  if (from.size() != N) return false;
  std::ranges::copy(from, to.begin());
  return true;
}

}  // namespace

std::string_view wordOf(SealHow how) {
  return how == SealHow::kWhenItEnded ? "when it ended" : "on request";
}

std::vector<std::uint8_t> sealMessage(std::string_view session_id, SealHow how, std::int64_t count,
                                      const Digest& last) {
  Payload message;
  message.add(std::string_view("Cabwright seal 2"));
  message.add(wordOf(how));
  message.add(session_id);
  message.add(count);
  message.add(std::span<const std::uint8_t>(last));
  return {message.bytes().begin(), message.bytes().end()};
}

// It works only while nobody else has the file open.
void foldJournal(const fs::path& file) {
  checkOutside(file);
  if (!keepsAJournal(file)) return;
  { const Store store(file); }  // somebody else's file is looked at before it is written to
  Database database = Database::openForWriting(file);
  const auto mode = database.findText("PRAGMA journal_mode = DELETE");
  if (mode != "delete")
    throw SessionError(file.string() + ": is still being recorded, or another program reads it");
  database.close();
}

void sealSession(const fs::path& file, const SigningKey& key, SealHow how) {
  Seal seal;
  std::string session_id;
  {
    const Store store(file);
    if (store.formatVersion() < 2)
      throw SessionError(file.string() + ": recorded in format 1, which has no seal");
    if (store.seal()) throw SessionError(file.string() + ": is sealed already");
    const ChainEnd end = store.readChainEnd();
    session_id = store.header().session_id;
    seal = {how, end.count, end.last, key.publicKey(),
            key.sign(sealMessage(session_id, how, end.count, end.last))};
  }
  foldJournal(file);
  FileChange change(file);
  {
    // Somebody may have been at it between the first look and the lock.
    const Store store(change.copy());
    const ChainEnd end = store.readChainEnd();
    if (end.count != seal.count || end.last != seal.last || store.seal())
      throw SessionError(file.string() + ": another program is changing the file");
  }
  putSeal(change.copy(), file.string(), seal);
  appendTail(change.copy(), session_id, key);
  change.commit();
}

std::optional<Seal> loadSeal(Database& database) {
  Statement row(database, "SELECT id, how, count, last, station, signature FROM seal");
  if (!row.step()) return std::nullopt;
  Seal seal;
  const std::string how = row.text(1);
  seal.how = how == wordOf(SealHow::kOnRequest) ? SealHow::kOnRequest : SealHow::kWhenItEnded;
  seal.count = row.integer(2);
  const bool good =
      row.integer(0) == 1 && how == wordOf(seal.how) && copyExactly(row.bytes(3), seal.last) &&
      copyExactly(row.bytes(4), seal.station) && copyExactly(row.bytes(5), seal.signature);
  if (!good || row.step()) throw SessionError(database.name() + ": damaged: its seal is none");
  return seal;
}

}  // namespace cabwright::session
