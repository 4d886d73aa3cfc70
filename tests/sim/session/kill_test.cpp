// SPDX-License-Identifier: GPL-3.0-or-later
// A process that records is killed at moments drawn by a fixed seed, fifty times. Each time the
// file opens, and of what the process had shown the recorder at most a second is missing.
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <chrono>
#include <csignal>
#include <random>
#include <thread>

#include "sample_session.h"
#include "shared_tick.h"

namespace cabwright::session {
namespace {

const int kKills = killsOr(50);

[[noreturn]] void recordForEver(const std::filesystem::path& file, std::atomic<std::int64_t>& at) {
  try {
    Recorder recorder(file, sampleHeader());
    std::int64_t number = 0;
    for (std::int64_t tick = 0;; ++tick) {
      showSample(recorder, tick, tick, number);
      at.store(tick);
    }
  } catch (...) {
    ::_exit(3);
  }
}

constexpr std::int64_t kShown = 500;

std::filesystem::path sessionFile(const Folder& folder, std::int64_t number) {
  return folder / (std::to_string(number) + ".cabsession");
}

// Session after session, each closed. `at` is the number of a session while it is being closed, and
// -1 outside.
[[noreturn]] void recordAndCloseForEver(const Folder& folder, std::atomic<std::int64_t>& at) {
  try {
    for (std::int64_t session = 0;; ++session) {
      Recorder recorder(sessionFile(folder, session), sampleHeader());
      std::int64_t number = 0;
      showSample(recorder, 0, kShown, number);
      at.store(session);
      recorder.close(sampleClosing(kShown));
      at.store(-1);
    }
  } catch (...) {
    ::_exit(3);
  }
}

TEST(KilledRecorder, LosesAtMostASecondAndTheFileOpens) {
  std::minstd_rand random(20);  // NOLINT: which moments does not matter, that they vary does
  for (int kill = 0; kill < kKills; ++kill) {
    const Folder folder;
    const auto file = folder / "a.cabsession";
    const SharedTick tick;
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) recordForEver(file, *tick);
    const auto due = static_cast<std::int64_t>(random() % 4000);
    while ((*tick).load() < due)
      std::this_thread::sleep_for(std::chrono::microseconds(random() % 400));
    ::kill(child, SIGKILL);
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status)) << "the child ended by itself";
    const std::int64_t reached = (*tick).load();
    const Store store(file);
    EXPECT_FALSE(store.closing());
    EXPECT_LE(reached - store.lastTick(), kTicksPerSecond) << "kill " << kill;
    // What is there is whole and is what was shown.
    Notebook shown;
    std::int64_t number = 0;
    showSample(shown, 0, store.lastTick(), number);
    const auto read = readAll(file);
    ASSERT_LE(read.size(), shown.events.size());
    for (std::size_t i = 0; i < read.size(); ++i) ASSERT_TRUE(same(read[i], shown.events[i]));
  }
}

// The end is a moment as well: at any time while a session is being closed a kill leaves a file
// that opens, and of what was shown at most the last second is missing.
TEST(KilledRecorder, LosesAtMostASecondWhileTheSessionIsBeingClosed) {
  std::minstd_rand random(21);  // NOLINT: which moments does not matter, that they vary does
  int cut = 0;
  // The kill falls into a closing sooner or later, however the machine deals out its time.
  for (int kill = 0; cut < kKills && kill < 100 * kKills; ++kill) {
    const Folder folder;
    const SharedTick closing;
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) recordAndCloseForEver(folder, *closing);
    while ((*closing).load() < 0) std::this_thread::yield();
    std::this_thread::sleep_for(std::chrono::microseconds(random() % 2000));
    ::kill(child, SIGKILL);
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status)) << "the child ended by itself";
    const std::int64_t session = (*closing).load();
    if (session < 0) continue;
    ++cut;
    const auto file = sessionFile(folder, session);
    const Store store(file);
    EXPECT_GE(store.lastTick(), kShown - kTicksPerSecond) << "kill " << kill;
    EXPECT_NO_THROW(readAll(file)) << "kill " << kill;
  }
  EXPECT_EQ(cut, kKills);
}

TEST(KilledRecorder, LeavesNoHalfMadeSessionUnderItsName) {
  for (int kill = 0; kill < kKills; ++kill) {
    const Folder folder;
    const auto file = folder / "a.cabsession";
    const SharedTick tick;
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) recordForEver(file, *tick);
    std::this_thread::sleep_for(std::chrono::microseconds(100 * kill));
    ::kill(child, SIGKILL);
    ASSERT_EQ(::waitpid(child, nullptr, 0), child);
    if (!std::filesystem::exists(file)) continue;
    EXPECT_NO_THROW(readAll(file)) << "kill " << kill;
  }
}

}  // namespace
}  // namespace cabwright::session
