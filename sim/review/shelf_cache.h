// SPDX-License-Identifier: GPL-3.0-or-later
// What was found on a shelf, kept for the next time. One line of JSON for each file, and one for
// each list of the names of a sheet's lines, which stands before the files that refer to it.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "review/shelf.h"

namespace cabwright::review {

class ShelfCache {
 public:
  /// An empty folder: none is kept.
  explicit ShelfCache(std::filesystem::path folder);

  /// By file name. Lines that cannot be read are left out; no cache is an empty one.
  [[nodiscard]] std::map<std::string, ShelfItem> load() const;
  /// Adds these to what is kept, all at once, for this user alone; files that are gone are dropped
  /// when there are many. Does nothing where it cannot be written.
  void save(const std::vector<ShelfItem>& items) const;

 private:
  std::filesystem::path folder_, file_;
};

}  // namespace cabwright::review
