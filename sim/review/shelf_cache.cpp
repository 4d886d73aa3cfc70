// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/shelf_cache.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <system_error>

namespace cabwright::review {
namespace fs = std::filesystem;
namespace {

using nlohmann::json;

constexpr std::string_view kFirstLine = "cabwright shelf 1";
constexpr std::size_t kManyItems = 50'000;

json toJson(const ShelfItem& item) {
  return json::array({item.file.string(), item.bytes, item.changed_ns,
                      static_cast<int>(item.outcome), item.why_broken, item.session_id,
                      item.trainee, item.scenario, item.started_utc, item.mode, item.last_tick,
                      item.sealed, item.decision});
}

bool fromJson(const json& line, ShelfItem& item) {
  if (!line.is_array() || line.size() != 13) return false;
  for (const std::size_t k : {0U, 4U, 5U, 6U, 7U, 8U, 9U, 12U})
    if (!line[k].is_string()) return false;
  for (const std::size_t k : {1U, 2U, 3U, 10U})
    if (!line[k].is_number_integer()) return false;
  const auto outcome = line[3].get<std::int64_t>();
  if (!line[11].is_boolean() || outcome < 0 || outcome > 3) return false;
  item = {
      line[0].get<std::string>(),         line[1].get<std::uint64_t>(), line[2].get<std::int64_t>(),
      static_cast<ShelfOutcome>(outcome), line[4].get<std::string>(),   line[5].get<std::string>(),
      line[6].get<std::string>(),         line[7].get<std::string>(),   line[8].get<std::string>(),
      line[9].get<std::string>(),         line[10].get<std::int64_t>(), line[11].get<bool>(),
      line[12].get<std::string>()};
  return true;
}

// For this user alone: it holds names.
bool writeAll(const fs::path& file, const std::string& text) {
  const int out = ::open(file.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
  if (out < 0) return false;
  std::size_t done = 0;
  while (done < text.size()) {
    const ssize_t put = ::write(out, text.data() + done, text.size() - done);
    if (put <= 0) break;
    done += static_cast<std::size_t>(put);
  }
  return ::close(out) == 0 && done == text.size();
}

}  // namespace

ShelfCache::ShelfCache(fs::path folder)
    : folder_(std::move(folder)), file_(folder_ / "shelf.jsonl") {}

std::map<std::string, ShelfItem> ShelfCache::load() const {
  std::map<std::string, ShelfItem> known;
  if (folder_.empty()) return known;
  std::ifstream in(file_);
  std::string line;
  if (!std::getline(in, line) || line != kFirstLine) return known;
  while (std::getline(in, line)) {
    ShelfItem item;
    if (fromJson(json::parse(line, nullptr, false), item)) known[item.file.string()] = item;
  }
  return known;
}

void ShelfCache::save(const std::vector<ShelfItem>& items) const {
  if (folder_.empty()) return;
  std::map<std::string, ShelfItem> known = load();
  for (const ShelfItem& item : items) known[item.file.string()] = item;
  if (known.size() > kManyItems)
    std::erase_if(known, [](const auto& entry) {
      std::error_code ignored;
      return !fs::exists(entry.second.file, ignored);
    });
  std::string text(kFirstLine);
  for (const auto& [name, item] : known) {
    text += '\n';
    text += toJson(item).dump(-1, ' ', false, json::error_handler_t::replace);
  }
  text += '\n';
  std::error_code failed;
  fs::create_directories(folder_, failed);
  const fs::path hidden = folder_ / fmt::format(".shelf.{}", ::getpid());
  if (!failed && writeAll(hidden, text)) fs::rename(hidden, file_, failed);
  fs::remove(hidden, failed);
}

}  // namespace cabwright::review
