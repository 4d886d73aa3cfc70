// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/mark_many.h"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <nlohmann/json.hpp>
#include <thread>

#include "quantity/sort_once.h"
#include "quantity/utf8.h"
#include "review/shelf.h"
#include "session/replay.h"

namespace cabwright::review {
namespace fs = std::filesystem;
namespace {

using nlohmann::json;

void fill(MarkedSession& marked, const session::Store& store) {
  const session::Remarked again = session::markAgain(store);
  const marking::SheetHead& head = again.sheet.head;
  marked.session_id = head.session_id;
  marked.trainee = head.trainee;
  marked.scenario = head.title;
  marked.started_utc = head.started_utc;
  marked.mode = head.mode;
  marked.complete = again.complete;
  marked.passed = again.complete && again.sheet.decision.passed;
  marked.percent = again.sheet.totals.percent;
  marked.as_recorded = again.as_recorded;
  for (const marking::SheetLine& line : again.sheet.lines) {
    marked.verdicts.emplace_back(line.id, line.verdictText());
    if (line.fails_run) marked.failed_by.push_back(line.id);
  }
}

constexpr std::string_view kLineBegins = "{\"";

std::string withoutName(const std::string& what, const fs::path& file) {
  const std::string begins = file.string() + ": ";
  return what.starts_with(begins) ? what.substr(begins.size()) : what;
}

}  // namespace

MarkedSession markOne(const fs::path& file) {
  MarkedSession marked;
  marked.file = file;
  try {
    fill(marked, session::Store(file));
  } catch (const std::exception& error) {
    marked = {};
    marked.file = file;
    marked.fault = withoutName(error.what(), file);
  }
  return marked;
}

std::string nameInLine(const fs::path& file) {
  const std::string name = file.string();
  std::string shown;
  for (std::size_t at = 0; at < name.size();) {
    const std::size_t length = quantity::calcCharacterLength(std::string_view(name).substr(at));
    if (length == 0)
      shown += fmt::format("\\x{:02x}", static_cast<unsigned char>(name[at]));
    else
      shown += name.substr(at, length);
    at += std::max<std::size_t>(length, 1);
  }
  return shown;
}

std::string toJsonLine(const MarkedSession& marked) {
  json line = {{"file", nameInLine(marked.file)}};
  if (!marked.fault.empty()) {
    line["fault"] = marked.fault;
  } else {
    json verdicts = json::object();
    for (const auto& [id, verdict] : marked.verdicts) verdicts[id] = verdict;
    line.update({{"session_id", marked.session_id},
                 {"trainee", marked.trainee},
                 {"scenario", marked.scenario},
                 {"started_utc", marked.started_utc},
                 {"mode", marked.mode},
                 {"complete", marked.complete},
                 {"passed", marked.passed},
                 {"percent", marked.percent},
                 {"failed_by", marked.failed_by},
                 {"verdicts", std::move(verdicts)},
                 {"as_recorded", marked.as_recorded ? json(*marked.as_recorded) : json(nullptr)}});
  }
  return line.dump(-1, ' ', false, json::error_handler_t::replace);
}

std::optional<std::string> readMarkedFile(const std::string& line) {
  const json read = json::parse(line, nullptr, false);
  if (!read.is_object() || !read.contains("file") || !read["file"].is_string() ||
      read.contains("fault"))
    return std::nullopt;
  return read["file"].get<std::string>();
}

bool areMarkLines(std::string_view text) {
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    const std::string_view line = text.substr(0, end);
    const json read = json::parse(line, nullptr, false);
    const bool is_cut = end == std::string_view::npos && read.is_discarded();
    if (is_cut) return line.starts_with(kLineBegins.substr(0, line.size()));
    if (!read.is_object() || !read.contains("file") ||
        !(read.contains("fault") || read.contains("passed")))
      return false;
    if (end == std::string_view::npos) break;
    text.remove_prefix(end + 1);
  }
  return true;
}

std::vector<fs::path> findSessions(const std::vector<fs::path>& places) {
  std::vector<fs::path> files;
  for (const fs::path& place : places) {
    std::error_code unknown;
    if (fs::is_directory(place, unknown)) {
      const auto found = findSessionFiles(place);
      files.insert(files.end(), found.begin(), found.end());
    } else {
      files.push_back(place);
    }
  }
  quantity::sortOnce(files);
  return files;
}

std::size_t markMany(const std::vector<fs::path>& files, const EachMarked& each, unsigned threads) {
  std::atomic<std::size_t> next{0}, done{0};
  std::atomic<bool> stops{false};
  std::mutex telling;
  const auto work = [&] {
    for (std::size_t k = next.fetch_add(1); k < files.size() && !stops; k = next.fetch_add(1)) {
      const MarkedSession marked = markOne(files[k]);
      const std::scoped_lock lock(telling);
      if (stops) return;
      ++done;
      if (!each(marked)) stops = true;
    }
  };
  if (threads == 0) threads = std::max(1U, std::thread::hardware_concurrency());
  std::vector<std::thread> others;
  for (std::size_t k = 1; k < std::min<std::size_t>(threads, files.size()); ++k)
    others.emplace_back(work);
  work();
  for (std::thread& other : others) other.join();
  return done;
}

}  // namespace cabwright::review
