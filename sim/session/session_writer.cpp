// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/session_writer.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <bit>
#include <cerrno>
#include <cstring>
#include <map>
#include <system_error>

#include "session/frame_code.h"
#include "session/schema.h"
#include "session/session_error.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

[[noreturn]] void failWith(const fs::path& file, int system_error) {
  throw SessionError(file.string() + ": " + std::generic_category().message(system_error));
}

void checkPlace(const fs::path& file) {
  std::error_code ignored;
  if (fs::exists(fs::symlink_status(file, ignored)))
    throw SessionError(file.string() + ": exists already and is not overwritten");
  const fs::path folder = file.has_parent_path() ? file.parent_path() : fs::path(".");
  if (!fs::is_directory(folder, ignored))
    throw SessionError(file.string() + ": there is no folder " + folder.string());
  // SQLite would take them for this file's own.
  for (const char* end : {"-wal", "-shm", "-journal"})
    if (fs::exists(file.string() + end, ignored))
      throw SessionError(file.string() + ": the remains of another session lie beside it: " +
                         file.filename().string() + end);
  if (file.filename().empty()) throw SessionError(file.string() + ": names a folder, not a file");
}

// Gives the finished file its name unless somebody took it meanwhile. A hard link is the one
// call that does both; file systems without links get the next best.
void publish(const fs::path& hidden, const fs::path& file) {
  if (::link(hidden.c_str(), file.c_str()) == 0) {
    ::unlink(hidden.c_str());
    return;
  }
  const int why = errno;
  if (why == EEXIST) {
    ::unlink(hidden.c_str());
    throw SessionError(file.string() + ": exists already and is not overwritten");
  }
  std::error_code failed;
  fs::rename(hidden, file, failed);
  if (!failed) return;
  ::unlink(hidden.c_str());
  failWith(file, why);
}

// The names, each with its mark for the head.
std::map<std::string, std::string> writePeople(Database& database, const SessionHeader& header) {
  std::map<std::string, std::string> marks;
  Statement put(database, "INSERT INTO person(id, role, name, salt) VALUES(?1, ?2, ?3, ?4)");
  std::int64_t id = 0;
  for (const Person& person : header.people) {
    if (!fits(person)) throw SessionError(database.name() + ": a name is longer than any");
    const Salt salt = makeSalt();
    put.bind(1, ++id).bind(2, std::string_view(person.role)).bind(3, std::string_view(person.name));
    put.bind(4, salt).run();
    marks.emplace("person_" + std::to_string(id), toHex(calcPersonMark(salt, person)));
  }
  return marks;
}

void writeAbout(Database& database, RowChain& chain, const SessionHeader& header) {
  std::map<std::string, std::string> about{
      {"frame_ticks", std::to_string(kFrameTicks)},
      {"program_version", header.program_version},
      {"scenario", header.scenario},
      {"seed", std::to_string(header.seed)},
      {"session_id", header.session_id},
      {"started_utc", header.started_utc},
      {"ticks_per_second", std::to_string(kTicksPerSecond)},
  };
  if (header.mode) about.emplace("mode", scenario::wordOf(*header.mode));
  if (header.run_mode) about.emplace("run_mode", scenario::wordOf(*header.run_mode));
  if (!fits({"trainee", header.trainee_number}))
    throw SessionError(database.name() + ": a number is longer than any");
  if (!header.trainee_number.empty()) about.emplace("trainee_number", header.trainee_number);
  about.merge(writePeople(database, header));
  Statement put(database, "INSERT INTO about(key, value) VALUES(?1, ?2)");
  for (const auto& [key, value] : about) {
    addAbout(chain, key, value);
    put.bind(1, std::string_view(key)).bind(2, std::string_view(value)).run();
  }
}

void writeTexts(Database& database, RowChain& chain, const SessionHeader& header) {
  Statement put_source(database, "INSERT INTO source(id, role, name, text) VALUES(?1, ?2, ?3, ?4)");
  std::int64_t id = 0;
  for (const SourceText& source : header.sources) {
    addSource(chain, source);
    put_source.bind(1, ++id).bind(2, std::string_view(source.role));
    put_source.bind(3, std::string_view(source.name)).bind(4, std::string_view(source.text)).run();
  }
  Statement put_signal(database, "INSERT INTO signal(id, name, unit) VALUES(?1, ?2, ?3)");
  id = 0;
  for (const unit::SignalInfo& signal : unit::signalTable()) {
    addSignal(chain, id, signal.name, signal.unit);
    put_signal.bind(1, id++).bind(2, signal.name).bind(3, signal.unit).run();
  }
}

// Everything that stands before the first event, in one go.
void writeHeader(Database& database, RowChain& chain, const SessionHeader& header) {
  database.run("PRAGMA page_size = 4096");
  database.run("PRAGMA application_id = " + std::to_string(kApplicationId));
  database.run("PRAGMA user_version = " + std::to_string(kFormatVersion));
  // From the first byte on, and to the end: while a session is recorded, a change of journal mode
  // would be the one moment at which a killed process leaves a file that only a writer puts right.
  database.run("PRAGMA journal_mode = WAL");
  database.run("BEGIN");
  for (const SchemaEntry& entry : schemaOf(kFormatVersion)) database.run(std::string(entry.sql));
  writeAbout(database, chain, header);
  writeTexts(database, chain, header);
  Statement put(database, "INSERT INTO about(key, value) VALUES('chain', ?1)");
  put.bind(1, std::string_view(chain.text())).run();
  database.run("COMMIT");
}

Database makeFile(const fs::path& file, RowChain& chain, const SessionHeader& header) {
  checkPlace(file);
  fs::path hidden = file;
  hidden.replace_filename(fmt::format(".{}.{}", file.filename().string(), ::getpid()));
  try {
    Database database = Database::create(hidden, file.string());
    writeHeader(database, chain, header);
    database.close();
  } catch (const SessionError&) {
    std::error_code ignored;
    fs::remove(hidden, ignored);
    for (const char* beside : {"-journal", "-wal", "-shm"})
      fs::remove(hidden.string() + beside, ignored);
    throw;
  }
  publish(hidden, file);
  return Database::openForWriting(file);
}

}  // namespace

SessionWriter::SessionWriter(const fs::path& file, const SessionHeader& header,
                             std::int64_t size_limit_bytes)
    : chain_(kFormatVersion, header.session_id), database_(makeFile(file, chain_, header)) {
  database_.run("PRAGMA synchronous = NORMAL");
  if (size_limit_bytes > 0) database_.limitSize(size_limit_bytes);
  prepare();
}

void SessionWriter::prepare() {
  put_frame_.emplace(
      database_, "INSERT INTO frame(seq, tick, is_key, data, chain) VALUES(?1, ?2, ?3, ?4, ?5)");
  put_action_.emplace(database_,
                      "INSERT INTO action(seq, tick, number, scheduled, text, chain) "
                      "VALUES(?1, ?2, ?3, ?4, ?5, ?6)");
  put_state_.emplace(database_, "INSERT INTO state(seq, tick, hash, chain) VALUES(?1, ?2, ?3, ?4)");
}

void SessionWriter::begin() { database_.run("BEGIN"); }
void SessionWriter::commit() { database_.run("COMMIT"); }

void SessionWriter::rollBack() noexcept {
  try {
    put_frame_->reset();
    put_action_->reset();
    put_state_->reset();
    database_.run("ROLLBACK");
  } catch (const SessionError&) {
    // Some failures end the transaction by themselves; there is nothing left to roll back.
  }
}

void SessionWriter::write(const unit::Frame& frame) {
  const bool is_key = !has_frame_ || frame.tick - last_key_tick_ >= kKeyFrameTicks;
  const Bytes data =
      is_key ? encodeKeyFrame(frame.value) : encodeDeltaFrame(last_values_, frame.value);
  addFrame(chain_, ++seq_, frame.tick, is_key, data);
  put_frame_->bind(1, seq_).bind(2, frame.tick).bind(3, std::int64_t{is_key ? 1 : 0});
  put_frame_->bind(4, std::span<const std::uint8_t>(data)).bind(5, chain_.stored()).run();
  if (is_key) last_key_tick_ = frame.tick;
  has_frame_ = true;
  last_values_ = frame.value;
}

void SessionWriter::write(const TimedAction& action) {
  const std::string text = unit::toText(action.action);
  addAction(chain_, ++seq_, action, text);
  put_action_->bind(1, seq_).bind(2, action.tick).bind(3, action.number);
  put_action_->bind(4, std::int64_t{action.scheduled ? 1 : 0}).bind(5, std::string_view(text));
  put_action_->bind(6, chain_.stored()).run();
}

void SessionWriter::write(const StateHash& hash) {
  addState(chain_, ++seq_, hash);
  put_state_->bind(1, seq_).bind(2, hash.tick);
  put_state_->bind(3, std::bit_cast<std::int64_t>(hash.hash)).bind(4, chain_.stored()).run();
}

void SessionWriter::writeClosing(const Closing& closing) {
  Statement put_row(database_,
                    "INSERT INTO verdict(line, rule, verdict, tick, margin, unit, reason) "
                    "VALUES(?1, ?2, ?3, ?4, ?5, ?6, ?7)");
  std::int64_t line = 0;
  for (const VerdictRow& row : closing.verdicts) {
    put_row.bind(1, ++line).bind(2, std::string_view(row.rule));
    put_row.bind(3, std::string_view(row.verdict)).bind(4, row.tick).bindReal(5, row.margin);
    put_row.bind(6, std::string_view(row.unit)).bind(7, std::string_view(row.reason)).run();
  }
  addClosing(chain_, ++seq_, closing);
  Statement put(database_,
                "INSERT INTO closing(seq, tick, reason, passed, sheet, chain) "
                "VALUES(?1, ?2, ?3, ?4, ?5, ?6)");
  put.bind(1, seq_).bind(2, closing.tick).bind(3, std::string_view(closing.reason));
  put.bind(4, std::int64_t{closing.passed ? 1 : 0}).bind(5, std::string_view(closing.sheet_json));
  put.bind(6, chain_.stored()).run();
}

void SessionWriter::finish(const Closing& closing) {
  begin();
  writeClosing(closing);
  database_.run("COMMIT");
  put_frame_.reset();
  put_action_.reset();
  put_state_.reset();
  // From here on nothing can be lost: what follows only folds the journal into the file. Another
  // program that reads along at this moment keeps the journal beside it, which does no harm.
  try {
    database_.run("PRAGMA synchronous = FULL");
    database_.run("PRAGMA wal_checkpoint(TRUNCATE)");
    database_.run("PRAGMA journal_mode = DELETE");
  } catch (const SessionError&) {
    return;
  }
  database_.close();
}

}  // namespace cabwright::session
