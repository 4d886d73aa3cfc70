// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/shelf.h"

#include <sys/stat.h>

#include <algorithm>
#include <atomic>
#include <cstdlib>
#include <exception>
#include <map>
#include <mutex>
#include <system_error>
#include <thread>

#include "quantity/sort_once.h"
#include "review/review.h"
#include "review/shelf_cache.h"
#include "session/label.h"

namespace cabwright::review {
namespace fs = std::filesystem;
namespace {

// Size and time in one question; false when there is no such file to be asked.
bool readStamp(ShelfItem& item) {
  struct stat status {};
  if (::stat(item.file.c_str(), &status) != 0) return false;
  item.bytes = static_cast<std::uint64_t>(status.st_size);
  item.changed_ns = std::int64_t{status.st_mtim.tv_sec} * 1'000'000'000 + status.st_mtim.tv_nsec;
  return true;
}

// Decision and overrides, of each the last one.
void readAdded(ShelfItem& item, const std::vector<session::ReviewRow>& rows) {
  for (const session::ReviewRow& row : rows) {
    const auto content = readContent(row.kind, row.body);
    if (!content) continue;
    if (const auto* decision = std::get_if<Decision>(&*content))
      item.decision = wordOf(decision->result);
    if (const auto* given = std::get_if<Override>(&*content)) overrideLine(item.sheet, *given);
  }
}

void fill(ShelfItem& item) {
  const session::Label label = session::readLabel(item.file);
  item.session_id = label.header.session_id;
  item.scenario = label.header.scenario;
  item.started_utc = label.header.started_utc;
  item.number = label.header.trainee_number;
  item.trainee = session::traineeName(label.header);
  item.scenario_hash = label.scenario_hash;
  item.mode = label.mode ? std::string(scenario::wordOf(*label.mode)) : std::string();
  item.sealed = label.sealed;
  item.last_tick = label.last_tick;
  item.sheet = readGlance(label.sheet_json);
  readAdded(item, label.review);
  if (!label.passed)
    item.outcome = ShelfOutcome::kCutOff;
  else
    item.outcome = *label.passed ? ShelfOutcome::kPassed : ShelfOutcome::kFailed;
}

bool isSession(const fs::path& file) { return file.extension() == ".cabsession"; }

bool isHidden(const fs::path& file) { return file.filename().string().starts_with('.'); }

ShelfItem brokenItem(const fs::path& file, const std::string& why) {
  ShelfItem item;
  item.file = file;
  item.why_broken = why;
  return item;
}

// Links to folders are not followed: they may lead in circles.
void listFolder(const fs::path& folder, bool goes_down, std::vector<fs::path>& files,
                std::vector<ShelfItem>& broken) {
  std::error_code failed;
  fs::directory_iterator entries(folder, failed);
  if (failed) {
    broken.push_back(brokenItem(folder, failed.message()));
    return;
  }
  for (const fs::directory_iterator end; entries != end; entries.increment(failed)) {
    if (failed) return;
    const fs::directory_entry& entry = *entries;
    std::error_code unknown;
    if (isHidden(entry.path())) continue;
    if (entry.is_directory(unknown) && !entry.is_symlink(unknown)) {
      if (goes_down) listFolder(entry.path(), goes_down, files, broken);
    } else if (isSession(entry.path())) {
      files.push_back(entry.path());
    }
  }
}

// Looks at those that are not known, in as many threads as there are processors, and keeps what was
// found.
class Looking {
 public:
  Looking(std::vector<ShelfItem>& items, std::vector<std::size_t> unknown,
          const ShelfOptions& options, const ShelfCache& cache)
      : items_(items), unknown_(std::move(unknown)), options_(options), cache_(cache) {}

  /// False: it was given up.
  bool run() {
    const std::size_t most = std::max(1U, std::thread::hardware_concurrency());
    std::vector<std::thread> threads;
    for (std::size_t k = 1; k < std::min(most, unknown_.size()); ++k)
      threads.emplace_back([this] { work(false); });
    work(true);
    for (std::thread& thread : threads) thread.join();
    if (!fresh_.empty()) cache_.save(fresh_);
    return !given_up_.load();
  }

 private:
  void work(bool asks) {
    for (std::size_t k = next_.fetch_add(1); k < unknown_.size() && !given_up_.load();
         k = next_.fetch_add(1)) {
      ShelfItem& item = items_[unknown_[k]];
      item = lookAt(item.file);
      keep(item);
      if (asks && options_.progress &&
          !options_.progress(items_.size() - unknown_.size() + k, items_.size()))
        given_up_.store(true);
    }
  }

  // One thread writes, and the others go on looking meanwhile.
  void keep(const ShelfItem& item) {
    std::vector<ShelfItem> kept;
    {
      const std::scoped_lock lock(mutex_);
      fresh_.push_back(item);
      if (is_writing_ || fresh_.size() < options_.keep_every) return;
      is_writing_ = true;
      kept.swap(fresh_);
    }
    cache_.save(kept);
    const std::scoped_lock lock(mutex_);
    is_writing_ = false;
  }

  std::vector<ShelfItem>& items_;
  std::vector<std::size_t> unknown_;
  const ShelfOptions& options_;
  const ShelfCache& cache_;
  std::atomic<std::size_t> next_{0};
  std::atomic<bool> given_up_{false};
  std::mutex mutex_;              ///< of all below
  std::vector<ShelfItem> fresh_;  ///< looked at and not written yet
  bool is_writing_ = false;
};

// What goes on in a journal does not show in the file itself.
bool mayGrowBeside(const ShelfItem& item) {
  std::error_code ignored;
  return item.outcome == ShelfOutcome::kCutOff && fs::exists(item.file.string() + "-wal", ignored);
}

std::vector<std::size_t> takeKnown(std::vector<ShelfItem>& items,
                                   const std::map<std::string, ShelfItem>& known) {
  std::vector<std::size_t> unknown;
  for (std::size_t k = 0; k < items.size(); ++k) {
    ShelfItem& item = items[k];
    const auto before = known.find(item.file.string());
    const bool same =
        readStamp(item) && before != known.end() && before->second.bytes == item.bytes &&
        before->second.changed_ns == item.changed_ns && !mayGrowBeside(before->second);
    if (same)
      item = before->second;
    else
      unknown.push_back(k);
  }
  return unknown;
}

}  // namespace

std::string_view wordOf(ShelfOutcome outcome) {
  switch (outcome) {
    case ShelfOutcome::kPassed:
      return "passed";
    case ShelfOutcome::kFailed:
      return "failed";
    case ShelfOutcome::kCutOff:
      return "cut off";
    case ShelfOutcome::kBroken:
      break;
  }
  return "broken";
}

const std::string& traineeKey(const ShelfItem& item) {
  return item.number.empty() ? item.trainee : item.number;
}

std::vector<fs::path> findSessionFiles(const fs::path& folder) {
  std::vector<fs::path> files;
  std::vector<ShelfItem> broken;
  listFolder(folder, true, files, broken);
  return files;
}

ShelfItem lookAt(const fs::path& file) {
  ShelfItem item;
  item.file = file;
  readStamp(item);
  try {
    fill(item);
  } catch (const std::exception& error) {
    const ShelfItem stamp = item;
    item = {};
    item.file = stamp.file;
    item.bytes = stamp.bytes;
    item.changed_ns = stamp.changed_ns;
    const std::string what = error.what(), begins = file.string() + ": ";
    item.why_broken = what.starts_with(begins) ? what.substr(begins.size()) : what;
  }
  return item;
}

fs::path userCacheFolder() {
  const char* cache = std::getenv("XDG_CACHE_HOME");  // NOLINT: read before threads set any
  if (cache != nullptr && fs::path(cache).is_absolute()) return fs::path(cache) / "cabwright";
  const char* home = std::getenv("HOME");  // NOLINT: as above
  if (home == nullptr || *home == '\0') return {};
  return fs::path(home) / ".cache/cabwright";
}

Shelf openShelf(const std::vector<fs::path>& folders, const ShelfOptions& options) {
  Shelf shelf;
  std::vector<fs::path> files;
  std::vector<ShelfItem> broken;
  for (const fs::path& folder : folders) {
    std::error_code ignored;
    const fs::path place = fs::absolute(folder, ignored).lexically_normal();
    listFolder(place, options.goes_down, files, broken);
  }
  quantity::sortOnce(files);
  for (const fs::path& file : files) {
    shelf.items.emplace_back();
    shelf.items.back().file = file;
  }
  const ShelfCache cache(options.cache_folder);
  std::vector<std::size_t> unknown = takeKnown(shelf.items, cache.load());
  shelf.opened = unknown.size();
  if (!unknown.empty())
    shelf.complete = Looking(shelf.items, std::move(unknown), options, cache).run();
  NameLists lists;
  for (ShelfItem& item : shelf.items) lists.share(item.sheet);
  shelf.items.insert(shelf.items.end(), broken.begin(), broken.end());
  return shelf;
}

}  // namespace cabwright::review
