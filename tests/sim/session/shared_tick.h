// SPDX-License-Identifier: GPL-3.0-or-later
// For tests that kill a process: how far it had come.
#pragma once

#include <sys/mman.h>

#include <atomic>
#include <cstdint>
#include <cstdlib>
#include <new>

namespace cabwright::session {

// What the two processes share: the last tick shown to the recorder, to be read after the kill.
class SharedTick {
 public:
  SharedTick() {
    void* memory = ::mmap(nullptr, sizeof(std::atomic<std::int64_t>), PROT_READ | PROT_WRITE,
                          MAP_SHARED | MAP_ANONYMOUS, -1, 0);
    if (memory == MAP_FAILED) throw std::bad_alloc();
    tick_ = new (memory) std::atomic<std::int64_t>(-1);
  }
  ~SharedTick() { ::munmap(tick_, sizeof *tick_); }
  SharedTick(const SharedTick&) = delete;
  SharedTick& operator=(const SharedTick&) = delete;
  std::atomic<std::int64_t>& operator*() const { return *tick_; }

 private:
  std::atomic<std::int64_t>* tick_;
};

/// How many kills such a test tries: few by default, CABWRIGHT_KILLS for more.
inline int killsOr(int standard) {
  const char* wanted = std::getenv("CABWRIGHT_KILLS");  // NOLINT: no thread sets it
  return wanted == nullptr ? standard : std::atoi(wanted);
}

}  // namespace cabwright::session
