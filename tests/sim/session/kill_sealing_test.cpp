// SPDX-License-Identifier: GPL-3.0-or-later
// A process that seals, adds entries or erases names is killed at moments drawn by a fixed seed,
// or finds the disk full. Each time the session is as it was or as it was to be, and nothing
// between. CABWRIGHT_KILLS=200 tries more moments.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <random>
#include <thread>

#include "sealed_session.h"
#include "session/erase.h"
#include "session/file_tail.h"
#include "session/verify.h"
#include "shared_tick.h"

namespace cabwright::session {
namespace {

using testing::HasSubstr;

constexpr std::int64_t kShown = 300;

std::filesystem::path sessionFile(const Folder& folder, std::int64_t number) {
  return folder / (std::to_string(number) + ".cabsession");
}

// Session after session, each sealed at its end. `at` is the number of a session from the moment
// its end is asked for until it is sealed, and -1 outside.
[[noreturn]] void sealForEver(const Folder& folder, std::atomic<std::int64_t>& at) {
  try {
    RecorderOptions options;
    options.key_folder = folder / "keys";
    for (std::int64_t session = 0;; ++session) {
      Recorder recorder(sessionFile(folder, session), assessmentHeader(), options);
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

std::vector<NewReviewRow> oneEntry() {
  return {{"2031-02-04T08:00:00Z", "comment", R"({"text":"well done"})", {"assessor", "R. Who"}}};
}

[[noreturn]] void appendForEver(const std::filesystem::path& file,
                                std::atomic<std::int64_t>& count) {
  try {
    for (std::int64_t number = 1;; ++number) {
      appendReview(file, oneEntry(), sampleKey());
      count.store(number);
    }
  } catch (...) {
    ::_exit(3);
  }
}

void kill(pid_t child) {
  ::kill(child, SIGKILL);
  int status = 0;
  ASSERT_EQ(::waitpid(child, &status, 0), child);
  ASSERT_TRUE(WIFSIGNALED(status)) << "the child ended by itself";
}

TEST(KilledSealing, LeavesASessionThatIsSealedOrCanBe) {
  const int kills = killsOr(15);
  std::minstd_rand random(22);  // NOLINT: which moments does not matter, that they vary does
  int cut = 0, sealed = 0;
  for (int attempt = 0; cut < kills && attempt < 100 * kills; ++attempt) {
    const Folder folder;
    const SharedTick ending;
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) sealForEver(folder, *ending);
    while ((*ending).load() < 0) std::this_thread::yield();
    std::this_thread::sleep_for(std::chrono::microseconds(random() % 60'000));
    kill(child);
    const std::int64_t session = (*ending).load();
    if (session < 0) continue;
    ++cut;
    const auto file = sessionFile(folder, session);
    Verification found = verifySession(file);
    ASSERT_THAT(found.standing, testing::AnyOf(Standing::kWhole, Standing::kNotSealed))
        << found.findings.front();
    EXPECT_GE(Store(file).lastTick(), kShown - kTicksPerSecond);
    if (found.standing == Standing::kWhole) {
      ++sealed;
      continue;
    }
    sealSession(file, sampleKey(), SealHow::kOnRequest);
    found = verifySession(file);
    EXPECT_EQ(found.standing, Standing::kWhole);
    for (const std::string& name : folder.names())
      EXPECT_THAT(name, testing::Not(HasSubstr("chan")));
  }
  EXPECT_EQ(cut, kills);
  RecordProperty("already_sealed", sealed);
}

TEST(KilledAppending, LosesNoEntryThatWasThere) {
  const int kills = killsOr(10);
  std::minstd_rand random(23);  // NOLINT: as above
  const Folder folder;
  const auto file = folder / "a.cabsession";
  recordSealed(file, folder / "keys", kShown);
  std::size_t before = 0;
  for (int attempt = 0; attempt < kills; ++attempt) {
    const SharedTick count;
    (*count).store(0);
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) appendForEver(file, *count);
    std::this_thread::sleep_for(std::chrono::microseconds(random() % 200'000));
    kill(child);
    const auto added = static_cast<std::size_t>((*count).load());
    const Verification found = verifySession(file);
    ASSERT_EQ(found.standing, Standing::kWhole) << found.findings.front();
    EXPECT_GE(found.review.size(), before + added);
    EXPECT_LE(found.review.size(), before + added + 1);
    before = found.review.size();
  }
  appendReview(file, oneEntry(), sampleKey());  // and takes away what the last one left
  for (const std::string& name : folder.names()) EXPECT_THAT(name, testing::Not(HasSubstr("chan")));
}

// Does it in a process of its own that may not make a file larger than so many bytes. Gives the
// message, "" when it went well.
template <class Act>
std::string withLittleRoom(const Folder& folder, rlim_t bytes, Act act) {
  const pid_t child = ::fork();
  if (child == 0) {
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{bytes, bytes};
    const bool limited = ::setrlimit(RLIMIT_FSIZE, &limit) == 0;
    const std::string message = errorOf([&] {
      act();
      return 0;
    });
    spill(folder / "message", limited ? message.substr(0, 1000) : "no limit");
    ::_exit(0);
  }
  ::waitpid(child, nullptr, 0);
  return slurp(folder / "message");
}

TEST(FullDisk, WhileSealingAppendingOrErasingLeavesTheSessionAsItWas) {
  const Folder folder;
  const auto file = folder / "a.cabsession";
  {
    Recorder recorder(file, sampleHeader());
    std::int64_t number = 0;
    showSample(recorder, 0, kShown, number);
    recorder.close(sampleClosing(kShown));
  }
  std::string before = slurp(file);
  for (const rlim_t room : {rlim_t{4096}, rlim_t{before.size() / 2}, rlim_t{before.size() + 10}}) {
    const auto message =
        withLittleRoom(folder, room, [&] { sealSession(file, sampleKey(), SealHow::kOnRequest); });
    EXPECT_THAT(message, HasSubstr("the disk is full")) << room;
    EXPECT_EQ(slurp(file), before);
  }
  sealSession(file, sampleKey(), SealHow::kOnRequest);
  before = slurp(file);
  for (const rlim_t room : {rlim_t{4096}, rlim_t{before.size() / 2}, rlim_t{before.size() - 10}}) {
    EXPECT_THAT(withLittleRoom(folder, room, [&] { appendReview(file, oneEntry(), sampleKey()); }),
                HasSubstr("the disk is full"));
    EXPECT_THAT(withLittleRoom(folder, room, [&] { erasePeople(file, sampleKey()); }),
                HasSubstr("the disk is full"));
    EXPECT_EQ(slurp(file), before);
  }
  EXPECT_THAT(folder.names(), testing::UnorderedElementsAre("a.cabsession", "message"));
}

TEST(FullDisk, AnAssessmentThatFindsNoRoomForItsSealIsThereAndCanBeSealedLater) {
  const Folder folder;
  const auto file = folder / "a.cabsession";
  recordSealed(folder / "size", folder / "keys", kShown);
  const auto room = std::filesystem::file_size(folder / "size") - 1;
  const auto message =
      withLittleRoom(folder, room, [&] { recordSealed(file, folder / "keys", kShown); });
  EXPECT_THAT(message, HasSubstr("the disk is full"));
  const Verification found = verifySession(file);
  EXPECT_EQ(found.standing, Standing::kNotSealed);
  EXPECT_TRUE(found.has_end);
  sealSession(file, sampleKey(), SealHow::kOnRequest);
  EXPECT_EQ(verifySession(file).standing, Standing::kWhole);
}

}  // namespace
}  // namespace cabwright::session
