// SPDX-License-Identifier: GPL-3.0-or-later
// Changes a file all at once: what is done is done to a copy beside it, which takes the file's name
// when it is ready. Whoever is killed, or finds the disk full, on the way leaves the file as it
// was.
#pragma once

#include <cstdint>
#include <filesystem>

namespace cabwright::session {

class FileChange {
 public:
  /// Locks the file against others that change it so, and copies its first `bytes` (all of it by
  /// default). Throws SessionError: somebody else is at it, no room, no permission.
  explicit FileChange(const std::filesystem::path& file, std::uintmax_t bytes = UINTMAX_MAX);
  /// Without a commit() the copy is taken away and the file is as it was.
  ~FileChange();
  FileChange(const FileChange&) = delete;
  FileChange& operator=(const FileChange&) = delete;

  [[nodiscard]] const std::filesystem::path& copy() const { return copy_; }

  /// Puts the copy on the disk for good and gives it the file's name. Throws SessionError.
  void commit();

 private:
  void removeCopy() noexcept;
  std::filesystem::path file_, copy_;
  int lock_ = -1;
  bool is_done_ = false;
};

}  // namespace cabwright::session
