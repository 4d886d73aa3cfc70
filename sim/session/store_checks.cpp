// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/store_checks.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <fstream>
#include <map>
#include <system_error>
#include <utility>

#include "session/schema.h"
#include "session/session_error.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

constexpr std::uintmax_t kMostBytes = std::uintmax_t{2} << 30;
constexpr std::size_t kMostSources = 1000;
constexpr std::size_t kMostTextBytes = std::size_t{32} << 20;
constexpr std::size_t kMostSignals = 4096;
constexpr std::size_t kMostVerdicts = 10'000;

std::uint32_t bigEndian(const std::array<char, 100>& head, std::size_t at) {
  std::uint32_t number = 0;
  for (std::size_t i = 0; i < 4; ++i)
    number = (number << 8) | static_cast<std::uint8_t>(head[at + i]);
  return number;
}

void checkHead(const std::string& name, const std::array<char, 100>& head) {
  static constexpr std::string_view kMagic("SQLite format 3\0", 16);
  if (std::string_view(head.data(), 16) != kMagic)
    throw SessionError(name + ": not a session file");
  if (bigEndian(head, 68) != static_cast<std::uint32_t>(kApplicationId))
    throw SessionError(name + ": a database, but not a session of this program");
  const std::uint32_t version = bigEndian(head, 60);
  if (version < static_cast<std::uint32_t>(kOldestFormat) ||
      version > static_cast<std::uint32_t>(kFormatVersion))
    throw SessionError(fmt::format("{}: session format {}, this program reads formats {} to {}",
                                   name, version, kOldestFormat, kFormatVersion));
}

std::int64_t toNumber(const std::string& file, const std::string& key, const std::string& text) {
  std::uint64_t number = 0;
  const auto result = std::from_chars(text.data(), text.data() + text.size(), number);
  if (text.empty() || result.ec != std::errc() || result.ptr != text.data() + text.size())
    throw SessionError(file + ": \"" + key + "\" is not a number");
  return static_cast<std::int64_t>(number);
}

using About = std::map<std::string, std::string>;

About readAbout(Database& database) {
  About about;
  Statement rows(database, "SELECT key, value FROM about ORDER BY key LIMIT 200");
  while (rows.step()) about[rows.text(0)] = rows.text(1);
  return about;
}

std::optional<scenario::Mode> readMode(const About& about, const std::string& file,
                                       const std::string& key) {
  const auto word = about.find(key);
  if (word == about.end()) return std::nullopt;
  const auto mode = scenario::findMode(word->second);
  if (!mode) throw SessionError(file + ": recorded in a mode this program does not know");
  return mode;
}

void loadAbout(Database& database, LoadedHeader& loaded, About about) {
  about.erase("chain");
  for (const auto& [key, value] : about) addAbout(loaded.chain, key, value);
  const std::string& file = database.name();
  for (const char* key : {"frame_ticks", "program_version", "scenario", "seed", "session_id",
                          "started_utc", "ticks_per_second"})
    if (!about.contains(key)) throw SessionError(file + ": \"" + key + "\" is missing");
  if (toNumber(file, "ticks_per_second", about["ticks_per_second"]) != kTicksPerSecond)
    throw SessionError(file + ": recorded with another length of tick");
  SessionHeader& header = loaded.header;
  header.session_id = about["session_id"];
  header.program_version = about["program_version"];
  header.started_utc = about["started_utc"];
  header.scenario = about["scenario"];
  header.seed = static_cast<std::uint64_t>(toNumber(file, "seed", about["seed"]));
  header.mode = readMode(about, file, "mode");
  header.run_mode = readMode(about, file, "run_mode");
  if (const auto number = about.find("trainee_number"); number != about.end())
    header.trainee_number = number->second;
  if (!fits({"trainee", header.trainee_number}))
    throw SessionError(file + ": holds a number longer than any");
}

// Who is named has the mark that the chain holds; who is not named any more was erased.
void loadPeople(Database& database, LoadedHeader& loaded, const About& about) {
  Statement people(database, "SELECT id, role, name, salt FROM person ORDER BY id LIMIT 1000");
  std::size_t named = 0;
  while (people.step()) {
    KnownPerson known{people.integer(0), {people.text(1), people.text(2)}, {}, false};
    if (!fits(known.person)) throw SessionError(database.name() + ": holds a name longer than any");
    Salt salt{};
    const auto bytes = people.bytes(3);
    if (bytes.size() != salt.size())
      throw SessionError(database.name() + ": damaged: a name without its salt");
    std::ranges::copy(bytes, salt.begin());
    known.mark = calcPersonMark(salt, known.person);
    if (const auto mark = about.find("person_" + std::to_string(known.id)); mark != about.end()) {
      if (mark->second != toHex(known.mark))
        throw SessionError(database.name() + ": damaged: a name at its head was changed");
      loaded.header.people.push_back(known.person);
      known.took_part = true;
      ++named;
    }
    loaded.known_people.push_back(std::move(known));
  }
  const auto marks = std::ranges::count_if(
      about, [](const auto& entry) { return entry.first.starts_with("person_"); });
  loaded.erased_people = static_cast<std::size_t>(marks) - named;
}

void loadOldPeople(Database& database, LoadedHeader& loaded) {
  Statement people(database, "SELECT role, name FROM person ORDER BY rowid LIMIT 100");
  while (people.step()) loaded.header.people.push_back({people.text(0), people.text(1)});
}

// An SQLite integer that stands for yes or no.
bool toFlag(const Database& database, std::int64_t number) {
  if (number != 0 && number != 1)
    throw SessionError(database.name() + ": damaged: " + std::to_string(number) +
                       " where there is yes or no");
  return number == 1;
}

void loadSources(Database& database, LoadedHeader& loaded) {
  Statement rows(database, "SELECT role, name, text, id FROM source ORDER BY id");
  std::size_t bytes = 0;
  while (rows.step()) {
    SourceText source{rows.text(0), rows.text(1), rows.text(2)};
    bytes += source.text.size();
    if (loaded.header.sources.size() >= kMostSources || bytes > kMostTextBytes)
      throw SessionError(database.name() + ": holds more text than any session");
    addSource(loaded.chain, source);
    loaded.header.sources.push_back(std::move(source));
    if (rows.integer(3) != static_cast<std::int64_t>(loaded.header.sources.size()))
      throw SessionError(database.name() + ": the list of texts has gaps");
  }
}

void loadSignals(Database& database, LoadedHeader& loaded) {
  std::array<bool, unit::kSignalCount> listed{};
  Statement rows(database, "SELECT id, name, unit FROM signal ORDER BY id");
  while (rows.step()) {
    const std::string name = rows.text(1);
    const std::string unit = rows.text(2);
    const auto expected = static_cast<std::int64_t>(loaded.signals.size());
    if (rows.integer(0) != expected || loaded.signals.size() >= kMostSignals)
      throw SessionError(database.name() + ": the list of signals has gaps or no end");
    addSignal(loaded.chain, expected, name, unit);
    // As a rule they stand as in this program.
    const auto table = unit::signalTable();
    const auto row = static_cast<std::size_t>(expected);
    const auto signal = row < table.size() && table[row].name == name ? std::optional(table[row].id)
                                                                      : unit::findSignal(name);
    if (signal && std::exchange(listed[static_cast<std::size_t>(*signal)], true))
      throw SessionError(database.name() + ": the signal " + name + " is listed twice");
    if (signal && unit::signalInfo(*signal).unit != unit)
      throw SessionError(fmt::format("{}: {} was recorded in \"{}\", this program has it in \"{}\"",
                                     database.name(), name, unit, unit::signalInfo(*signal).unit));
    loaded.signals.push_back(signal);
  }
  if (loaded.signals.empty()) throw SessionError(database.name() + ": names no signals");
}

}  // namespace

void checkOutside(const fs::path& file) {
  const std::string name = file.string();
  std::error_code failed;
  const fs::file_status status = fs::status(file, failed);
  if (!fs::exists(status)) {
    const bool absent = !failed || failed == std::errc::no_such_file_or_directory;
    throw SessionError(name + ": " + (absent ? "there is no such file" : failed.message()));
  }
  if (!fs::is_regular_file(status)) throw SessionError(name + ": not a regular file");
  const std::uintmax_t size = fs::file_size(file, failed);
  if (size == 0) throw SessionError(name + ": the file is empty");
  if (size > kMostBytes) throw SessionError(name + ": larger than any session (over 2 GiB)");
  std::ifstream in(file, std::ios::binary);
  if (!in) throw SessionError(name + ": cannot be read (no permission?)");
  std::array<char, 100> head{};
  in.read(head.data(), head.size());
  if (in.gcount() != static_cast<std::streamsize>(head.size()))
    throw SessionError(name + ": not a session file");
  checkHead(name, head);
}

// One laid beside a file that keeps none is somebody else's.
bool hasJournal(const fs::path& file) {
  std::error_code failed;
  if (fs::file_size(file.string() + "-wal", failed) == 0 || failed) return false;
  std::ifstream in(file, std::ios::binary);
  std::array<char, 20> head{};
  in.read(head.data(), head.size());
  return head[19] == 2;
}

bool needsCopyToRead(const fs::path& file) {
  const fs::path folder = file.has_parent_path() ? file.parent_path() : fs::path(".");
  return hasJournal(file) && ::access(folder.c_str(), W_OK) != 0;
}

int readFormatVersion(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::array<char, 100> head{};
  in.read(head.data(), head.size());
  checkHead(file.string(), head);
  return static_cast<int>(bigEndian(head, 60));
}

void checkSchema(Database& database, int version) {
  const std::vector<SchemaEntry> schema = schemaOf(version);
  std::size_t found = 0;
  {
    Statement rows(database, "SELECT type, name, sql FROM sqlite_schema LIMIT 100");
    while (rows.step()) {
      const std::string type = rows.text(0), name = rows.text(1), sql = rows.text(2);
      const bool known = std::ranges::any_of(schema, [&](const SchemaEntry& entry) {
        return entry.type == type && entry.name == name && entry.sql == sql;
      });
      if (!known)
        throw SessionError(database.name() + ": holds a " + type +
                           " that no session has: " + name.substr(0, 60));
      ++found;
    }
  }
  if (found != schema.size()) throw SessionError(database.name() + ": tables are missing");
}

void checkInside(Database& database, int version) {
  checkSchema(database, version);
  const auto verdict = database.findText("PRAGMA quick_check(1)");
  if (verdict != "ok")
    throw SessionError(database.name() + ": the file is damaged (torn or overwritten)");
}

LoadedHeader loadHeader(Database& database, int version) {
  const About about = readAbout(database);
  const auto id = about.find("session_id"), chain = about.find("chain");
  LoadedHeader loaded{{}, RowChain(version, id == about.end() ? "" : id->second), {}, 0, {}};
  loadAbout(database, loaded, about);
  loadSources(database, loaded);
  loadSignals(database, loaded);
  if (chain == about.end() || chain->second != loaded.chain.text())
    throw SessionError(database.name() + ": damaged: the texts at its head were changed");
  if (version < 2)
    loadOldPeople(database, loaded);
  else
    loadPeople(database, loaded, about);
  return loaded;
}

std::optional<Closing> loadClosing(Database& database, std::int64_t& seq, std::int64_t& chain) {
  Statement rows(database, "SELECT seq, tick, reason, passed, sheet, chain FROM closing");
  if (!rows.step()) return std::nullopt;
  Closing closing;
  seq = rows.integer(0);
  closing.tick = rows.integer(1);
  closing.reason = rows.text(2);
  closing.passed = toFlag(database, rows.integer(3));
  closing.sheet_json = rows.text(4);
  chain = rows.integer(5);
  if (rows.step()) throw SessionError(database.name() + ": contradicts itself: it ends twice");
  Statement verdicts(database,
                     "SELECT rule, verdict, tick, margin, unit, reason, line FROM verdict "
                     "ORDER BY line");
  while (verdicts.step()) {
    if (closing.verdicts.size() >= kMostVerdicts)
      throw SessionError(database.name() + ": holds more verdicts than any session");
    closing.verdicts.push_back({verdicts.text(0), verdicts.text(1), verdicts.integer(2),
                                verdicts.real(3), verdicts.text(4), verdicts.text(5)});
    if (verdicts.integer(6) != static_cast<std::int64_t>(closing.verdicts.size()))
      throw SessionError(database.name() + ": the list of verdicts has gaps");
  }
  return closing;
}

}  // namespace cabwright::session
