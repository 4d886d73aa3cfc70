// SPDX-License-Identifier: GPL-3.0-or-later
// The layout of a session file (extension .cabsession), version 1.
//
//   about    key, value: format, versions, session id, start, scenario title, seed, tick length,
//            mode (only if it was chosen otherwise than the scenario has it)
//   person   role, name: the only table with names of people; erasing it harms nothing else
//   source   the texts the run was made from, whole
//   signal   the number, name and unit of each value in a frame
//   action   what was done, as text, with its tick and order number
//   frame    what could be seen, ten times a second and before each action (frame_code.h)
//   state    the hash of the whole state, each second
//   verdict  the lines of the mark sheet, when the run ended
//   closing  how it ended, and the whole mark sheet; missing when the run was cut off
//
// action, frame, state and closing share one sequence, 1, 2, 3 ... without a gap: the order in
// which a marker saw them. `chain` is the running check value after the row (chain.h); it begins
// with about, source and signal.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "session/chain.h"
#include "session/record.h"

namespace cabwright::session {

inline constexpr std::int32_t kApplicationId = 0x43616257;  // "CabW"
inline constexpr std::int32_t kFormatVersion = 1;
/// A key frame at least this often, so that any moment is found by reading a few rows.
inline constexpr std::int64_t kKeyFrameTicks = 10 * kTicksPerSecond;

struct SchemaEntry {
  std::string_view type, name, sql;
};

/// Everything a session file may contain, nothing else; the texts are compared to the letter.
inline constexpr std::array kSchema{
    SchemaEntry{"table", "about",
                "CREATE TABLE about(key TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) "
                "STRICT, WITHOUT ROWID"},
    SchemaEntry{"table", "person",
                "CREATE TABLE person(role TEXT NOT NULL, name TEXT NOT NULL) STRICT"},
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

/// How each kind of row enters the chain: one place for writer and reader.
void addSource(Chain& chain, const SourceText& source);
void addSignal(Chain& chain, std::int64_t id, std::string_view name, std::string_view unit);
void addAction(Chain& chain, std::int64_t seq, const TimedAction& action, std::string_view text);
void addFrame(Chain& chain, std::int64_t seq, std::int64_t tick, bool is_key,
              std::span<const std::uint8_t> data);
void addState(Chain& chain, std::int64_t seq, const StateHash& state);
void addClosing(Chain& chain, std::int64_t seq, const Closing& closing);

}  // namespace cabwright::session
