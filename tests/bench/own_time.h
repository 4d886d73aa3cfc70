// SPDX-License-Identifier: GPL-3.0-or-later
// What a thread, or a whole process, has worked: others who use the machine do not count.
#pragma once

#include <algorithm>
#include <chrono>
#include <ctime>
#include <numeric>
#include <vector>

namespace cabwright::bench {

template <clockid_t kOf>
struct WorkClock {
  using duration = std::chrono::nanoseconds;
  using time_point = std::chrono::time_point<WorkClock, duration>;
  static time_point now() {
    timespec spent{};
    clock_gettime(kOf, &spent);
    return time_point(std::chrono::seconds(spent.tv_sec) + std::chrono::nanoseconds(spent.tv_nsec));
  }
};
using ThreadClock = WorkClock<CLOCK_THREAD_CPUTIME_ID>;
using ProcessClock = WorkClock<CLOCK_PROCESS_CPUTIME_ID>;

template <class Clock>
double milliseconds(std::chrono::time_point<Clock> since) {
  return std::chrono::duration<double, std::milli>(Clock::now() - since).count();
}

struct Times {
  std::vector<double> ms;
  [[nodiscard]] double mean() const {
    return std::accumulate(ms.begin(), ms.end(), 0.0) / static_cast<double>(ms.size());
  }
  /// The time that this part of them (0 to 1) kept to; 0.5: the median, 1: the worst.
  [[nodiscard]] double share(double part) const {
    std::vector<double> sorted = ms;
    std::ranges::sort(sorted);
    return sorted[static_cast<std::size_t>(part * static_cast<double>(sorted.size() - 1))];
  }
};

}  // namespace cabwright::bench
