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

constexpr std::string_view kFirstLine = "cabwright shelf 2";
constexpr std::size_t kManyItems = 50'000;
constexpr std::size_t kFields = 20;

using Lists = std::vector<std::shared_ptr<const LineNames>>;

// `list`: which list of names its lines have, -1 for none.
json toJson(const ShelfItem& item, int list) {
  return json::array(
      {item.file.string(),  item.bytes,         item.changed_ns,    static_cast<int>(item.outcome),
       item.why_broken,     item.session_id,    item.number,        item.trainee,
       item.scenario,       item.started_utc,   item.mode,          item.last_tick,
       item.sealed,         item.decision,      item.scenario_hash, item.sheet.earned,
       item.sheet.possible, item.sheet.percent, item.sheet.letters, list});
}

bool isItem(const json& line) {
  if (!line.is_array() || line.size() != kFields) return false;
  for (const std::size_t k : {0U, 4U, 5U, 6U, 7U, 8U, 9U, 10U, 13U, 14U, 18U})
    if (!line[k].is_string()) return false;
  for (const std::size_t k : {1U, 2U, 3U, 11U, 19U})
    if (!line[k].is_number_integer()) return false;
  for (const std::size_t k : {15U, 16U, 17U})
    if (!line[k].is_number()) return false;
  return line[12].is_boolean();
}

bool fromJson(const json& line, const Lists& lists, ShelfItem& item) {
  if (!isItem(line)) return false;
  const auto outcome = line[3].get<std::int64_t>(), list = line[19].get<std::int64_t>();
  if (outcome < 0 || outcome > 3) return false;
  std::size_t k = 0;
  const auto text = [&] { return line[k++].get<std::string>(); };
  const auto number = [&] { return line[k++].get<double>(); };
  item.file = text();
  item.bytes = line[k++].get<std::uint64_t>();
  item.changed_ns = line[k++].get<std::int64_t>();
  item.outcome = static_cast<ShelfOutcome>(outcome);
  ++k;
  for (std::string* field : {&item.why_broken, &item.session_id, &item.number, &item.trainee,
                             &item.scenario, &item.started_utc, &item.mode})
    *field = text();
  item.last_tick = line[k++].get<std::int64_t>();
  item.sealed = line[k++].get<bool>();
  item.decision = text();
  item.scenario_hash = text();
  for (double* field : {&item.sheet.earned, &item.sheet.possible, &item.sheet.percent})
    *field = number();
  item.sheet.letters = text();
  if (list < 0) return item.sheet.letters.empty();
  if (static_cast<std::size_t>(list) >= lists.size()) return false;
  item.sheet.names = lists[static_cast<std::size_t>(list)];
  return item.sheet.names->size() == item.sheet.letters.size();
}

json toJson(const LineNames& names) {
  json all = json::array();
  for (const LineName& name : names) all.push_back({name.id, name.title, name.critical});
  return {{"names", std::move(all)}};
}

// One that cannot be read is there as an empty one, so that the others keep their numbers.
std::shared_ptr<const LineNames> readNames(const json& line) {
  auto names = std::make_shared<LineNames>();
  const auto all = line.find("names");
  if (all == line.end() || !all->is_array()) return names;
  for (const json& one : *all) {
    if (!one.is_array() || one.size() != 3 || !one[0].is_string() || !one[1].is_string() ||
        !one[2].is_boolean())
      return std::make_shared<LineNames>();
    names->push_back({one[0].get<std::string>(), one[1].get<std::string>(), one[2].get<bool>()});
  }
  return names;
}

// All lists first, then the files.
std::string textOf(std::map<std::string, ShelfItem>& known) {
  NameLists shared;
  std::map<const LineNames*, int> numbers;
  std::string text(kFirstLine), items;
  const auto add = [](std::string& to, const json& line) {
    to += '\n';
    to += line.dump(-1, ' ', false, json::error_handler_t::replace);
  };
  for (auto& [name, item] : known) {
    shared.share(item.sheet);
    int list = -1;
    if (item.sheet.names) {
      const auto [at, is_new] =
          numbers.emplace(item.sheet.names.get(), static_cast<int>(numbers.size()));
      if (is_new) add(text, toJson(*item.sheet.names));
      list = at->second;
    }
    add(items, toJson(item, list));
  }
  return text + items + '\n';
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
  Lists lists;
  while (std::getline(in, line)) {
    const json read = json::parse(line, nullptr, false);
    ShelfItem item;
    if (read.is_object())
      lists.push_back(readNames(read));
    else if (fromJson(read, lists, item))
      known[item.file.string()] = std::move(item);
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
  const std::string text = textOf(known);
  std::error_code failed;
  fs::create_directories(folder_, failed);
  const fs::path hidden = folder_ / fmt::format(".shelf.{}", ::getpid());
  if (!failed && writeAll(hidden, text)) fs::rename(hidden, file_, failed);
  fs::remove(hidden, failed);
}

}  // namespace cabwright::review
