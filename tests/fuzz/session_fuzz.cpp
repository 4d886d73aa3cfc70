// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a session file: opened, read to the end, verified, labelled. Whatever they are, the
// answer is a value or a SessionError.
#include <sys/mman.h>
#include <unistd.h>

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <string>

#include "review/review.h"
#include "session/label.h"
#include "session/session_error.h"
#include "session/verify.h"

namespace {

using namespace cabwright;

// Held in memory; SQLite opens it by name.
class MemoryFile {
 public:
  MemoryFile(const std::uint8_t* data, std::size_t size) : number_(::memfd_create("session", 0)) {
    if (number_ < 0 || ::write(number_, data, size) != static_cast<ssize_t>(size)) __builtin_trap();
  }
  ~MemoryFile() { ::close(number_); }
  MemoryFile(const MemoryFile&) = delete;
  MemoryFile& operator=(const MemoryFile&) = delete;
  [[nodiscard]] std::filesystem::path path() const {
    return "/proc/self/fd/" + std::to_string(number_);
  }

 private:
  int number_;
};

template <class Act>
void attempt(Act act) {
  try {
    act();
  } catch (const session::SessionError&) {
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const MemoryFile file(data, size);
  attempt([&] { static_cast<void>(session::readLabel(file.path())); });
  attempt([&] {
    const session::Store store(file.path());
    static_cast<void>(store.findFrame(1000));
    static_cast<void>(store.lastTick());
    static_cast<void>(review::readEntries(store));
    session::Store::Reader reader = store.read();
    while (reader.next()) continue;
  });
  static_cast<void>(session::verifySession(file.path()));
  return 0;
}
