// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/file_change.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <system_error>

#include "session/session_error.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

[[noreturn]] void fail(const fs::path& file, const std::string& why) {
  throw SessionError(file.string() + ": " + why);
}

[[noreturn]] void fail(const fs::path& file, int system_error) {
  if (system_error == ENOSPC || system_error == EFBIG) fail(file, "the disk is full");
  fail(file, std::generic_category().message(system_error));
}

// Who waited for the lock may hold that of a file which has lost its name meanwhile.
bool stillHasItsName(int descriptor, const fs::path& file) {
  struct stat held {
  }, named{};
  return ::fstat(descriptor, &held) == 0 && ::stat(file.c_str(), &named) == 0 &&
         held.st_dev == named.st_dev && held.st_ino == named.st_ino;
}

int lock(const fs::path& file) {
  for (int attempt = 0; attempt < 100; ++attempt) {
    const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (descriptor < 0) fail(file, errno);
    if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
      const int why = errno;
      ::close(descriptor);
      if (why == EWOULDBLOCK) fail(file, "another program is changing the file");
      fail(file, why);
    }
    if (stillHasItsName(descriptor, file)) return descriptor;
    ::close(descriptor);
  }
  fail(file, "another program is changing the file");
}

// Copies what one who was killed left behind takes away no room for ever.
void removeLeftovers(const fs::path& file) {
  const std::string begins = fmt::format(".{}.", file.filename().string());
  std::error_code ignored;
  for (const auto& entry : fs::directory_iterator(file.parent_path(), ignored)) {
    const std::string name = entry.path().filename().string();
    if (name.starts_with(begins) && name.find(".change") != std::string::npos)
      fs::remove(entry.path(), ignored);
  }
}

int copyBytes(int from, int to, std::uintmax_t bytes) {
  std::array<char, 1 << 16> buffer{};
  while (bytes > 0) {
    const ssize_t got = ::read(from, buffer.data(), std::min<std::uintmax_t>(bytes, buffer.size()));
    if (got < 0) return errno;
    if (got == 0) return 0;
    for (ssize_t done = 0; done < got;) {
      const ssize_t put = ::write(to, buffer.data() + done, static_cast<std::size_t>(got - done));
      if (put < 0) return errno;
      done += put;
    }
    bytes -= static_cast<std::uintmax_t>(got);
  }
  return 0;
}

int putOnDisk(const fs::path& path) {
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) return errno;
  const int fault = ::fsync(descriptor) == 0 ? 0 : errno;
  ::close(descriptor);
  return fault;
}

}  // namespace

FileChange::FileChange(const fs::path& file, std::uintmax_t bytes) {
  std::error_code failed;
  file_ = fs::canonical(file, failed);
  if (failed) fail(file, failed.message());
  lock_ = lock(file_);
  removeLeftovers(file_);
  copy_ = file_;
  copy_.replace_filename(fmt::format(".{}.{}.change", file_.filename().string(), ::getpid()));
  struct stat status {};
  int fault = ::fstat(lock_, &status) == 0 ? 0 : errno;
  const int out = ::open(copy_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC,
                         static_cast<mode_t>(status.st_mode & 0777U));
  if (fault == 0 && out < 0) fault = errno;
  if (fault == 0) fault = copyBytes(lock_, out, bytes);
  if (out >= 0 && ::close(out) != 0 && fault == 0) fault = errno;
  if (fault == 0) return;
  if (out >= 0) removeCopy();
  ::close(lock_);
  fail(file_, fault);
}

void FileChange::removeCopy() noexcept {
  for (const char* end : {"", "-journal", "-wal", "-shm"}) ::unlink((copy_.string() + end).c_str());
}

FileChange::~FileChange() {
  if (!is_done_) removeCopy();
  ::close(lock_);
}

void FileChange::commit() {
  if (const int fault = putOnDisk(copy_); fault != 0) fail(file_, fault);
  if (::rename(copy_.c_str(), file_.c_str()) != 0) fail(file_, errno);
  is_done_ = true;
  // Some file systems cannot do this for a folder; the name is there all the same.
  static_cast<void>(putOnDisk(file_.parent_path()));
}

}  // namespace cabwright::session
