// SPDX-License-Identifier: GPL-3.0-or-later
// A thin, owning wrapper around SQLite: the handle and the prepared statement, errors as
// SessionError with the file's name in front. Nothing here knows what a session is.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_stmt;

namespace cabwright::session {

class Database;

/// A prepared statement. Parameters count from 1, columns from 0, as in SQLite.
class Statement {
 public:
  Statement(Database& database, std::string_view sql);

  Statement& bind(int parameter, std::int64_t value);
  Statement& bind(int parameter, std::string_view text);
  Statement& bind(int parameter, std::span<const std::uint8_t> bytes);
  /// NULL when there is none.
  Statement& bindReal(int parameter, std::optional<double> value);

  /// True when there is a row to read, false at the end. Throws SessionError.
  bool step();
  /// Runs a statement that gives no rows, and makes it ready for the next use.
  void run();
  void reset();

  [[nodiscard]] std::int64_t integer(int column) const;
  [[nodiscard]] std::string text(int column) const;
  /// Valid until the next step.
  [[nodiscard]] std::span<const std::uint8_t> bytes(int column) const;
  [[nodiscard]] std::optional<double> real(int column) const;
  [[nodiscard]] bool isNull(int column) const;

 private:
  struct Finalize {
    void operator()(sqlite3_stmt* statement) const;
  };
  void check(int code) const;
  Database* database_;
  std::unique_ptr<sqlite3_stmt, Finalize> statement_;
};

class Database {
 public:
  /// A new file to write, called by another name in messages.
  static Database create(const std::filesystem::path& file, std::string name);
  /// An existing file of our own making, to go on writing.
  static Database openForWriting(const std::filesystem::path& file);
  /// A copy nobody else knows of, to change it: nothing in its schema acts by itself, what is
  /// deleted is overwritten, and no journal is written, since a copy that fails is thrown away.
  static Database openOwnCopy(const std::filesystem::path& file, std::string name);
  /// Somebody else's file, taken as hostile input: read-only, defensive mode, no trust in its
  /// schema, cell sizes checked, low limits, and nothing but reading allowed. With `has_journal`
  /// SQLite reads the journal that lies beside it as well (an unclosed session) and may put an
  /// index of it there; without, it touches nothing but the file itself.
  static Database openUntrusted(const std::filesystem::path& file, std::string name,
                                bool has_journal);

  void run(const std::string& sql);
  /// First column of the first row; empty without a row.
  [[nodiscard]] std::optional<std::string> findText(const std::string& sql);
  [[nodiscard]] std::int64_t integer(const std::string& sql);

  /// Room for this many bytes, then "the disk is full".
  void limitSize(std::int64_t bytes);

  [[nodiscard]] sqlite3* handle() const { return handle_.get(); }
  /// The name used in messages.
  [[nodiscard]] const std::string& name() const { return name_; }
  /// The SessionError for an SQLite result code, in words.
  [[noreturn]] void fail(int code) const;

  /// Closes and says whether that worked (the destructor closes as well, silently).
  void close();

 private:
  Database(const std::string& file, std::string name, int flags);
  struct Close {
    void operator()(sqlite3* database) const;
  };
  std::string name_;
  std::unique_ptr<sqlite3, Close> handle_;
};

}  // namespace cabwright::session
