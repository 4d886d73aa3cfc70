// SPDX-License-Identifier: GPL-3.0-or-later
// Hands the newest value from the thread that makes it to the one that sounds it.
#pragma once

#include <mutex>

namespace cabwright::hearing {

/// Only the newest counts. The lock is held for the copying of a small value and nothing else, and
/// who takes never waits for it: a busy box is looked into again next time.
template <typename Value>
class Mailbox {
 public:
  void put(const Value& value) {
    const std::lock_guard lock(mutex_);
    value_ = value;
    fresh_ = true;
  }
  /// True, and `into` is set, if something was put since.
  bool take(Value& into) {
    const std::unique_lock lock(mutex_, std::try_to_lock);
    if (!lock.owns_lock() || !fresh_) return false;
    into = value_;
    fresh_ = false;
    return true;
  }

 private:
  std::mutex mutex_;
  Value value_{};
  bool fresh_ = false;
};

}  // namespace cabwright::hearing
