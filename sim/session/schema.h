// SPDX-License-Identifier: GPL-3.0-or-later
// The layout of a session file (extension .cabsession); FORMAT.md tells its whole meaning.
//
//   about    key, value: format, versions, session id, start, scenario title, seed, tick length,
//            the mode it was run in, a mark for each person
//   person   role, name, salt: the only table with names of people; erasing it harms nothing else
//   source   the texts the run was made from, whole
//   signal   the number, name and unit of each value in a frame
//   action   what was done, as text, with its tick and order number
//   frame    what could be seen, ten times a second and before each action (frame_code.h)
//   state    the hash of the whole state, each second
//   verdict  the lines of the mark sheet, when the run ended
//   closing  how it ended, and the whole mark sheet; missing when the run was cut off
//
//   seal     what the whole of it came to, signed, when it ended (seal.h)
//   review   what assessors and trainee added after the seal, signed entry by entry
//
// action, frame, state and closing share one sequence, 1, 2, 3 ... without a gap: the order in
// which a marker saw them. `chain` is the running check value after the row (row_chain.h); it
// begins with about, source and signal.
//
// Format 1 has no seal, no review, no salt, and a weaker chain. It is read and no longer written.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "session/record.h"
#include "session/row_chain.h"

namespace cabwright::session {

inline constexpr std::int32_t kApplicationId = 0x43616257;  // "CabW"
inline constexpr std::int32_t kFormatVersion = 2;
inline constexpr std::int32_t kOldestFormat = 1;
/// A key frame at least this often, so that any moment is found by reading a few rows.
inline constexpr std::int64_t kKeyFrameTicks = 10 * kTicksPerSecond;

struct SchemaEntry {
  std::string_view type, name, sql;
};

/// What both formats have; the texts are compared to the letter.
inline constexpr std::array kSharedSchema{
    SchemaEntry{"table", "about",
                "CREATE TABLE about(key TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) "
                "STRICT, WITHOUT ROWID"},
    SchemaEntry{"table", "source",
                "CREATE TABLE source(id INTEGER PRIMARY KEY, role TEXT NOT NULL, "
                "name TEXT NOT NULL, text TEXT NOT NULL) STRICT"},
    SchemaEntry{"table", "signal",
                "CREATE TABLE signal(id INTEGER PRIMARY KEY, name TEXT NOT NULL, "
                "unit TEXT NOT NULL) STRICT"},
    SchemaEntry{"table", "action",
                "CREATE TABLE action(seq INTEGER PRIMARY KEY, tick INTEGER NOT NULL, "
                "number INTEGER NOT NULL, scheduled INTEGER NOT NULL, text TEXT NOT NULL, "
                "chain INTEGER NOT NULL) STRICT"},
    SchemaEntry{"table", "frame",
                "CREATE TABLE frame(seq INTEGER PRIMARY KEY, tick INTEGER NOT NULL, "
                "is_key INTEGER NOT NULL, data BLOB NOT NULL, chain INTEGER NOT NULL) STRICT"},
    SchemaEntry{"index", "key_frame", "CREATE INDEX key_frame ON frame(tick) WHERE is_key = 1"},
    SchemaEntry{"table", "state",
                "CREATE TABLE state(seq INTEGER PRIMARY KEY, tick INTEGER NOT NULL, "
                "hash INTEGER NOT NULL, chain INTEGER NOT NULL) STRICT"},
    SchemaEntry{"table", "verdict",
                "CREATE TABLE verdict(line INTEGER PRIMARY KEY, rule TEXT NOT NULL, "
                "verdict TEXT NOT NULL, tick INTEGER NOT NULL, margin REAL, unit TEXT NOT NULL, "
                "reason TEXT NOT NULL) STRICT"},
    SchemaEntry{"table", "closing",
                "CREATE TABLE closing(seq INTEGER PRIMARY KEY, tick INTEGER NOT NULL, "
                "reason TEXT NOT NULL, passed INTEGER NOT NULL, sheet TEXT NOT NULL, "
                "chain INTEGER NOT NULL) STRICT"},
};

/// What else a file of format 1 holds, and nothing beside.
inline constexpr std::array kOldSchema{
    SchemaEntry{"table", "person",
                "CREATE TABLE person(role TEXT NOT NULL, name TEXT NOT NULL) STRICT"},
};

/// What else a file of format 2 holds, and nothing beside.
inline constexpr std::array kNewSchema{
    SchemaEntry{"table", "person",
                "CREATE TABLE person(id INTEGER PRIMARY KEY, role TEXT NOT NULL, "
                "name TEXT NOT NULL, salt BLOB NOT NULL) STRICT"},
    SchemaEntry{"table", "seal",
                "CREATE TABLE seal(id INTEGER PRIMARY KEY, how TEXT NOT NULL, "
                "count INTEGER NOT NULL, last BLOB NOT NULL, station BLOB NOT NULL, "
                "signature BLOB NOT NULL) STRICT"},
    SchemaEntry{"table", "review",
                "CREATE TABLE review(seq INTEGER PRIMARY KEY, utc TEXT NOT NULL, "
                "kind TEXT NOT NULL, person INTEGER NOT NULL, mark BLOB NOT NULL, "
                "body TEXT NOT NULL, last BLOB NOT NULL, key BLOB NOT NULL, "
                "signature BLOB NOT NULL) STRICT"},
};

/// All of a format.
[[nodiscard]] std::vector<SchemaEntry> schemaOf(int version);

/// How each kind of row enters the chain: one place for writer and reader.
void addAbout(RowChain& chain, std::string_view key, std::string_view value);
void addSource(RowChain& chain, const SourceText& source);
void addSignal(RowChain& chain, std::int64_t id, std::string_view name, std::string_view unit);
void addAction(RowChain& chain, std::int64_t seq, const TimedAction& action, std::string_view text);
void addFrame(RowChain& chain, std::int64_t seq, std::int64_t tick, bool is_key,
              std::span<const std::uint8_t> data);
void addState(RowChain& chain, std::int64_t seq, const StateHash& state);
void addClosing(RowChain& chain, std::int64_t seq, const Closing& closing);

/// Whether role and name are no longer than those of any person, 10,000 bytes.
[[nodiscard]] bool fits(const Person& person);

/// What stands for a person inside the chain: SHA-256(magic | salt | role | name). With the salt
/// erased together with the name nobody can tell whose it was, not even by trying names.
[[nodiscard]] Digest calcPersonMark(const Salt& salt, const Person& person);

}  // namespace cabwright::session
