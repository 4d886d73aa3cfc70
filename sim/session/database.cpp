// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/database.h"

#include <sqlite3.h>

#include <cerrno>
#include <cstring>

#include "session/session_error.h"

namespace cabwright::session {
namespace {

// What a person can do something about gets plain words; the rest keeps SQLite's own.
std::string describe(int code, sqlite3* database) {
  switch (code & 0xff) {
    case SQLITE_FULL:
      return "the disk is full";
    case SQLITE_READONLY:
      return "the file or its folder is read-only";
    case SQLITE_PERM:
      return "no permission";
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return "another program is using the file";
    case SQLITE_NOTADB:
      return "not a session file (not an SQLite database)";
    case SQLITE_CORRUPT:
      return "the file is damaged (torn or overwritten)";
    case SQLITE_TOOBIG:
      return "an entry is larger than any session holds";
    case SQLITE_NOMEM:
      return "out of memory";
    case SQLITE_AUTH:
      return "the file asks for something only a program may do";
    default:
      break;
  }
  std::string text = database != nullptr ? sqlite3_errmsg(database) : sqlite3_errstr(code);
  const int system = database != nullptr ? sqlite3_system_errno(database) : 0;
  const bool about_file = (code & 0xff) == SQLITE_CANTOPEN || (code & 0xff) == SQLITE_IOERR;
  if (about_file && system != 0) {
    // Thread-unsafe strerror is avoided: the writer has a thread of its own.
    char buffer[128] = {};
    text = strerror_r(system, buffer, sizeof buffer);
  }
  return text;
}

// Reading is all an untrusted file may cause; everything else is refused before it runs.
int allowReadingOnly(void*, int action, const char* name, const char*, const char*, const char*) {
  switch (action) {
    case SQLITE_SELECT:
    case SQLITE_READ:
    case SQLITE_FUNCTION:
      return SQLITE_OK;
    case SQLITE_PRAGMA:
      return name != nullptr && std::strcmp(name, "quick_check") == 0 ? SQLITE_OK : SQLITE_DENY;
    default:
      return SQLITE_DENY;
  }
}

// An RFC 3986 name that tells SQLite nobody writes the file: no locks, no files beside it.
std::string immutableUri(const std::string& file) {
  static constexpr char kDigits[] = "0123456789ABCDEF";
  std::string uri = "file:";
  for (const char c : file) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                       std::strchr("/-_.~", c) != nullptr;
    const auto byte = static_cast<unsigned char>(c);
    if (plain)
      uri += c;
    else
      uri += {'%', kDigits[byte >> 4], kDigits[byte & 0xfU]};
  }
  return uri + "?immutable=1";
}

void setLimits(sqlite3* database) {
  sqlite3_limit(database, SQLITE_LIMIT_LENGTH, 32 << 20);
  sqlite3_limit(database, SQLITE_LIMIT_SQL_LENGTH, 16 << 10);
  sqlite3_limit(database, SQLITE_LIMIT_COLUMN, 32);
  sqlite3_limit(database, SQLITE_LIMIT_EXPR_DEPTH, 20);
  sqlite3_limit(database, SQLITE_LIMIT_COMPOUND_SELECT, 4);
  sqlite3_limit(database, SQLITE_LIMIT_VDBE_OP, 25'000);
  sqlite3_limit(database, SQLITE_LIMIT_FUNCTION_ARG, 8);
  sqlite3_limit(database, SQLITE_LIMIT_ATTACHED, 0);
  sqlite3_limit(database, SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 64);
  sqlite3_limit(database, SQLITE_LIMIT_VARIABLE_NUMBER, 16);
  sqlite3_limit(database, SQLITE_LIMIT_TRIGGER_DEPTH, 0);
  sqlite3_limit(database, SQLITE_LIMIT_WORKER_THREADS, 0);
}

// Whatever is in the file's schema does nothing by itself.
void hold(sqlite3* database) {
  sqlite3_db_config(database, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
  sqlite3_db_config(database, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
  sqlite3_db_config(database, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
  sqlite3_db_config(database, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
  sqlite3_db_config(database, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0, nullptr);
}

}  // namespace

void Statement::Finalize::operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }

Statement::Statement(Database& database, std::string_view sql) : database_(&database) {
  sqlite3_stmt* raw = nullptr;
  check(sqlite3_prepare_v2(database.handle(), sql.data(), static_cast<int>(sql.size()), &raw,
                           nullptr));
  statement_.reset(raw);
}

void Statement::check(int code) const {
  if (code != SQLITE_OK) database_->fail(code);
}

Statement& Statement::bind(int parameter, std::int64_t value) {
  check(sqlite3_bind_int64(statement_.get(), parameter, value));
  return *this;
}

Statement& Statement::bind(int parameter, std::string_view text) {
  check(sqlite3_bind_text64(statement_.get(), parameter, text.data() == nullptr ? "" : text.data(),
                            text.size(), SQLITE_TRANSIENT, SQLITE_UTF8));
  return *this;
}

Statement& Statement::bind(int parameter, std::span<const std::uint8_t> bytes) {
  static constexpr std::uint8_t kNothing = 0;  // a null pointer would be stored as NULL
  check(sqlite3_bind_blob64(statement_.get(), parameter,
                            bytes.data() == nullptr ? &kNothing : bytes.data(), bytes.size(),
                            SQLITE_TRANSIENT));
  return *this;
}

Statement& Statement::bindReal(int parameter, std::optional<double> value) {
  check(value ? sqlite3_bind_double(statement_.get(), parameter, *value)
              : sqlite3_bind_null(statement_.get(), parameter));
  return *this;
}

bool Statement::step() {
  const int code = sqlite3_step(statement_.get());
  if (code == SQLITE_ROW) return true;
  if (code == SQLITE_DONE) return false;
  database_->fail(code);
}

void Statement::run() {
  step();
  reset();
}

void Statement::reset() { sqlite3_reset(statement_.get()); }

std::int64_t Statement::integer(int column) const {
  return sqlite3_column_int64(statement_.get(), column);
}

std::string Statement::text(int column) const {
  const auto* text = sqlite3_column_text(statement_.get(), column);
  if (text == nullptr) return {};
  const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column));
  return {reinterpret_cast<const char*>(text), size};
}

std::span<const std::uint8_t> Statement::bytes(int column) const {
  const auto* data =
      static_cast<const std::uint8_t*>(sqlite3_column_blob(statement_.get(), column));
  const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column));
  return {data, data == nullptr ? 0 : size};
}

std::optional<double> Statement::real(int column) const {
  if (isNull(column)) return std::nullopt;
  return sqlite3_column_double(statement_.get(), column);
}

bool Statement::isNull(int column) const {
  return sqlite3_column_type(statement_.get(), column) == SQLITE_NULL;
}

void Database::Close::operator()(sqlite3* database) const { sqlite3_close_v2(database); }

Database::Database(const std::string& file, std::string name, int flags) : name_(std::move(name)) {
  sqlite3* raw = nullptr;
  const int code = sqlite3_open_v2(file.c_str(), &raw,
                                   flags | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE, nullptr);
  handle_.reset(raw);
  if (code != SQLITE_OK) fail(code);
  sqlite3_busy_timeout(raw, 2000);
}

Database Database::create(const std::filesystem::path& file, std::string name) {
  return {file.string(), std::move(name), SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE};
}

Database Database::openForWriting(const std::filesystem::path& file) {
  return {file.string(), file.string(), SQLITE_OPEN_READWRITE};
}

Database Database::openOwnCopy(const std::filesystem::path& file, std::string name) {
  Database database(file.string(), std::move(name), SQLITE_OPEN_READWRITE);
  hold(database.handle());
  database.run("PRAGMA journal_mode = MEMORY");
  database.run("PRAGMA synchronous = OFF");
  database.run("PRAGMA secure_delete = ON");
  database.run("PRAGMA temp_store = MEMORY");
  return database;
}

Database Database::openUntrusted(const std::filesystem::path& file, std::string name,
                                 bool has_journal) {
  Database database(has_journal ? file.string() : immutableUri(file.string()), std::move(name),
                    SQLITE_OPEN_READONLY | (has_journal ? 0 : SQLITE_OPEN_URI));
  sqlite3* raw = database.handle();
  setLimits(raw);
  hold(raw);
  database.run("PRAGMA cell_size_check = ON");
  database.run("PRAGMA mmap_size = 0");
  database.run("PRAGMA query_only = ON");
  database.run("BEGIN");  // one look at the file, even while somebody still writes it
  sqlite3_set_authorizer(raw, allowReadingOnly, nullptr);
  return database;
}

void Database::run(const std::string& sql) {
  const int code = sqlite3_exec(handle(), sql.c_str(), nullptr, nullptr, nullptr);
  if (code != SQLITE_OK) fail(code);
}

std::optional<std::string> Database::findText(const std::string& sql) {
  Statement statement(*this, sql);
  if (!statement.step() || statement.isNull(0)) return std::nullopt;
  return statement.text(0);
}

std::int64_t Database::integer(const std::string& sql) {
  Statement statement(*this, sql);
  return statement.step() ? statement.integer(0) : 0;
}

void Database::limitSize(std::int64_t bytes) {
  const std::int64_t page = integer("PRAGMA page_size");
  if (page <= 0) throw SessionError(name_ + ": says nothing of its page size");
  run("PRAGMA max_page_count = " + std::to_string(bytes / page));
}

void Database::fail(int code) const {
  throw SessionError(name_ + ": " + describe(code, handle_.get()));
}

void Database::close() {
  const int code = sqlite3_close(handle_.get());
  if (code != SQLITE_OK) fail(code);
  static_cast<void>(handle_.release());
}

}  // namespace cabwright::session
