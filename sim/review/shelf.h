// SPDX-License-Identifier: GPL-3.0-or-later
// Many sessions: what stands in the files of some folders, at a glance.
//
// A file is opened once and looked at as far as its label goes; what was found is kept in a cache
// with the file's size and time, so that the next look costs one question to the file system; it is
// kept on the way too, for a look that is broken off. Only
// what is opened later is read to its end: whether a session is whole is told by
// session::verifySession().
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "review/shelf_sheet.h"

namespace cabwright::review {

enum class ShelfOutcome : std::uint8_t { kPassed, kFailed, kCutOff, kBroken };
[[nodiscard]] std::string_view wordOf(ShelfOutcome outcome);

struct ShelfItem {
  std::filesystem::path file;
  std::uint64_t bytes = 0;
  std::int64_t changed_ns = 0;  ///< time of its last change, as the file system counts
  ShelfOutcome outcome = ShelfOutcome::kBroken;
  std::string why_broken;  ///< in one line, without the file's name
  std::string session_id, scenario, started_utc;
  std::string number;   ///< the trainee signed on with; empty: none
  std::string trainee;  ///< name; empty: none was given, or it was erased
  std::string mode;     ///< "guided", "practice", "assessment"
  std::int64_t last_tick = 0;
  bool sealed = false;        ///< it bears a seal, whole or not
  std::string decision;       ///< of an assessor, "passed" ...; empty without one
  std::string scenario_hash;  ///< tells versions of an exercise apart
  SheetGlance sheet;          ///< empty of a session that was cut off
  bool operator==(const ShelfItem&) const = default;
};

/// By what a trainee is told from others: number, or name where there is none.
[[nodiscard]] const std::string& traineeKey(const ShelfItem& item);

/// Every file in this folder and those within whose name ends in .cabsession; hidden ones and links
/// to folders are left out.
[[nodiscard]] std::vector<std::filesystem::path> findSessionFiles(
    const std::filesystem::path& folder);

/// What stands on one file. Never throws for what is in it.
[[nodiscard]] ShelfItem lookAt(const std::filesystem::path& file);

/// Where this user's programs keep what can be made again: XDG_CACHE_HOME, or HOME/.cache, and
/// cabwright in it. Empty when neither variable is set.
[[nodiscard]] std::filesystem::path userCacheFolder();

/// Asked now and then with how many files have been looked at, of how many; false gives it up.
using ShelfProgress = std::function<bool(std::size_t done, std::size_t all)>;

struct ShelfOptions {
  /// Where the cache is kept; empty: none. It can be thrown away at any time, and one that cannot
  /// be read or written changes nothing but the time it takes.
  std::filesystem::path cache_folder = userCacheFolder();
  /// What was looked at is put into the cache whenever it is so many files more, and at the end,
  /// given up or not: whoever looks again goes on from there.
  std::size_t keep_every = 500;
  bool goes_down = true;  ///< into folders within
  ShelfProgress progress;
};

struct Shelf {
  std::vector<ShelfItem> items;  ///< by folder and name
  std::size_t opened = 0;        ///< files that were looked at; the others were known
  bool complete = true;          ///< false when it was given up
};

/// All files whose name ends in .cabsession in these folders. Files and folders that cannot be read
/// are there as broken. Never throws for what it finds.
[[nodiscard]] Shelf openShelf(const std::vector<std::filesystem::path>& folders,
                              const ShelfOptions& options = {});

}  // namespace cabwright::review
