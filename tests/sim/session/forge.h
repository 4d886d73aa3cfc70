// SPDX-License-Identifier: GPL-3.0-or-later
// Makes the check values of an edited session fit again, so that tests reach the checks behind.
#pragma once

#include <bit>
#include <filesystem>
#include <map>
#include <string>

#include "session/database.h"
#include "session/schema.h"

namespace cabwright::session {

inline RowChain forgeHeaderChain(Database& database) {
  RowChain chain(kFormatVersion,
                 *database.findText("SELECT value FROM about WHERE key = 'session_id'"));
  Statement about(database, "SELECT key, value FROM about WHERE key <> 'chain' ORDER BY key");
  while (about.step()) addAbout(chain, about.text(0), about.text(1));
  Statement sources(database, "SELECT role, name, text FROM source ORDER BY id");
  while (sources.step()) addSource(chain, {sources.text(0), sources.text(1), sources.text(2)});
  Statement signals(database, "SELECT id, name, unit FROM signal ORDER BY id");
  while (signals.step()) addSignal(chain, signals.integer(0), signals.text(1), signals.text(2));
  Statement put(database, "UPDATE about SET value = ?1 WHERE key = 'chain'");
  put.bind(1, std::string_view(chain.text())).run();
  return chain;
}

inline void forgeRow(Database& database, RowChain& chain, std::int64_t seq,
                     const std::string& table) {
  Statement row(database, "SELECT * FROM " + table + " WHERE seq = ?1");
  row.bind(1, seq).step();
  if (table == "action") {
    const std::string text = row.text(4);
    addAction(chain, seq, {row.integer(1), row.integer(2), row.integer(3) != 0, {}}, text);
  } else if (table == "frame") {
    addFrame(chain, seq, row.integer(1), row.integer(2) != 0, row.bytes(3));
  } else if (table == "state") {
    addState(chain, seq, {row.integer(1), std::bit_cast<std::uint64_t>(row.integer(2))});
  } else {
    Closing closing{row.integer(1), row.text(2), row.integer(3) != 0, row.text(4), {}};
    Statement lines(database, "SELECT rule, verdict, tick, margin, unit, reason FROM verdict");
    while (lines.step())
      closing.verdicts.push_back({lines.text(0), lines.text(1), lines.integer(2), lines.real(3),
                                  lines.text(4), lines.text(5)});
    addClosing(chain, seq, closing);
  }
  row.reset();
  Statement put(database, "UPDATE " + table + " SET chain = ?1 WHERE seq = ?2");
  put.bind(1, chain.stored()).bind(2, seq).run();
}

inline void forgeChain(const std::filesystem::path& file) {
  Database database = Database::openForWriting(file);
  database.run("PRAGMA synchronous = OFF");
  database.run("BEGIN");
  RowChain chain = forgeHeaderChain(database);
  std::map<std::int64_t, std::string> rows;
  for (const std::string table : {"action", "frame", "state", "closing"}) {
    Statement all(database, "SELECT seq FROM " + table);
    while (all.step()) rows[all.integer(0)] = table;
  }
  for (const auto& [seq, table] : rows) forgeRow(database, chain, seq, table);
  database.run("COMMIT");
}

}  // namespace cabwright::session
