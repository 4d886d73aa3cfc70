// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/recorder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <thread>

#include "sample_session.h"
#include "session/database.h"

namespace cabwright::session {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;

TEST(Recorder, GivesBackAllItWasShownInTheSameOrder) {
  const Folder folder;
  Notebook shown;
  std::int64_t number = 0, again = 0;
  {
    Recorder recorder(folder / "a.cabsession", sampleHeader());
    showSample(recorder, 0, 3000, number);
    recorder.close(sampleClosing(3000));
  }
  showSample(shown, 0, 3000, again);
  const Store store(folder / "a.cabsession");
  EXPECT_EQ(store.header(), sampleHeader());
  EXPECT_EQ(store.closing(), sampleClosing(3000));
  EXPECT_EQ(store.lastTick(), 3000);
  EXPECT_TRUE(store.missingSignals().empty());
  Notebook read;
  store.show(read);
  ASSERT_EQ(read.events.size(), shown.events.size());
  for (std::size_t i = 0; i < read.events.size(); ++i)
    EXPECT_TRUE(same(read.events[i], shown.events[i])) << "event " << i;
  EXPECT_EQ(store.readActions().size(), static_cast<std::size_t>(number));
}

TEST(Recorder, LeavesOneFileAndNothingBesideItWhenClosed) {
  const Folder folder;
  Recorder recorder(folder / "a.cabsession", sampleHeader());
  std::int64_t number = 0;
  showSample(recorder, 0, 200, number);
  recorder.close(sampleClosing(200));
  EXPECT_THAT(folder.names(), ElementsAre("a.cabsession"));
}

TEST(Recorder, KeepsWhatItWasShownWhenItIsNeverClosed) {
  const Folder folder;
  {
    Recorder recorder(folder / "a.cabsession", sampleHeader());
    std::int64_t number = 0;
    showSample(recorder, 0, 555, number);
  }
  const Store store(folder / "a.cabsession");
  EXPECT_FALSE(store.closing());
  EXPECT_EQ(store.lastTick(), 550);
}

TEST(Recorder, IsNeverMoreThanASecondOfSessionTimeAheadOfTheFile) {
  const Folder folder;
  Recorder recorder(folder / "a.cabsession", sampleHeader());
  for (std::int64_t tick = 0; tick <= 20'000; tick += kFrameTicks) {
    recorder.seeFrame(sampleFrame(tick));
    // Whatever the speed: at worst the next frame is due and this much is not yet safe.
    ASSERT_LE(tick + kFrameTicks - recorder.committedTick(), kTicksPerSecond + 1);
  }
}

TEST(Recorder, CommitsByTheClockWhenTheRunStandsStill) {
  const Folder folder;
  Recorder recorder(folder / "a.cabsession", sampleHeader(), {0, std::chrono::milliseconds(1)});
  recorder.seeFrame(sampleFrame(0));
  for (int i = 0; i < 10'000 && recorder.committedTick() < 0; ++i)
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
  EXPECT_EQ(recorder.committedTick(), 0);
  EXPECT_EQ(readAll(folder / "a.cabsession").size(), 1U);  // read while it is still being written
}

TEST(Recorder, HoldsAnyNumberOfActionsInOneTick) {
  const Folder folder;
  Recorder recorder(folder / "a.cabsession", sampleHeader());
  recorder.seeFrame(sampleFrame(0));
  for (int number = 1; number <= 10'000; ++number)
    recorder.seeAction({0, number, false, {unit::Actor::kTrainee, "say", "x", ""}});
  recorder.close(sampleClosing(0));
  EXPECT_EQ(Store(folder / "a.cabsession").readActions().size(), 10'000U);
}

TEST(Recorder, FindsTheFrameOfAnyMoment) {
  const Folder folder;
  Recorder recorder(folder / "a.cabsession", sampleHeader());
  std::int64_t number = 0;
  showSample(recorder, 0, 5000, number);
  recorder.close(sampleClosing(5000));
  const Store store(folder / "a.cabsession");
  for (const std::int64_t tick : {0, 9, 10, 36, 37, 999, 1000, 1001, 4999, 5000, 9999}) {
    const std::int64_t at = tick % 100 == 37 ? tick : std::min(tick, std::int64_t{5000}) / 10 * 10;
    const auto frame = store.findFrame(tick);
    ASSERT_TRUE(frame);
    EXPECT_EQ(frame->tick, at);
    EXPECT_EQ(frame->value, sampleFrame(at).value);
  }
  EXPECT_FALSE(store.findFrame(-1));
}

TEST(Recorder, DoesNotOverwriteAFileThatIsThere) {
  const Folder folder;
  spill(folder / "a.cabsession", "precious");
  const auto message = errorOf([&] { Recorder r(folder / "a.cabsession", sampleHeader()); });
  EXPECT_THAT(message, HasSubstr("a.cabsession: exists already and is not overwritten"));
  EXPECT_EQ(slurp(folder / "a.cabsession"), "precious");
  EXPECT_THAT(folder.names(), ElementsAre("a.cabsession"));
}

TEST(Recorder, DoesNotTakeUpTheJournalOfAnotherSession) {
  const Folder folder;
  spill(folder / "a.cabsession-wal", "of a session that was moved away");
  EXPECT_THAT(errorOf([&] { Recorder r(folder / "a.cabsession", sampleHeader()); }),
              HasSubstr("the remains of another session lie beside it: a.cabsession-wal"));
  EXPECT_THAT(folder.names(), ElementsAre("a.cabsession-wal"));
}

TEST(Recorder, SaysWhenTheFolderIsMissing) {
  const Folder folder;
  const auto message = errorOf([&] { Recorder r(folder / "no/a.cabsession", sampleHeader()); });
  EXPECT_THAT(message, HasSubstr("a.cabsession: there is no folder"));
  EXPECT_THAT(message, testing::Not(HasSubstr("\n")));
}

TEST(Recorder, SaysWhenTheFolderCannotBeWritten) {
  const auto message = errorOf([&] { Recorder r("/proc/a.cabsession", sampleHeader()); });
  EXPECT_THAT(message, StartsWith("/proc/a.cabsession: "));
  EXPECT_THAT(message, testing::Not(HasSubstr("\n")));
}

TEST(Recorder, LatchesAFullDiskKeepsWhatIsSafeAndDoesNotStopTheRun) {
  const Folder folder;
  std::int64_t number = 0;
  std::int64_t safe = -1;
  {
    Recorder recorder(folder / "a.cabsession", sampleHeader(),
                      {200 * 1024, std::chrono::milliseconds(250)});
    std::int64_t tick = 0;
    for (; tick < 4'000'000 && !recorder.findFault(); tick += 100)
      showSample(recorder, tick, tick + 99, number);
    ASSERT_TRUE(recorder.findFault());
    EXPECT_THAT(*recorder.findFault(), HasSubstr("a.cabsession: the disk is full"));
    showSample(recorder, tick, tick + 1000, number);  // goes on, unrecorded
    safe = recorder.committedTick();
    EXPECT_THAT(errorOf([&] { recorder.close(sampleClosing(tick)); }), HasSubstr("disk is full"));
  }
  const Store store(folder / "a.cabsession");
  EXPECT_FALSE(store.closing());
  EXPECT_GT(safe, 100);
  EXPECT_EQ(store.lastTick(), safe);
  EXPECT_FALSE(readAll(folder / "a.cabsession").empty());
}

TEST(Recorder, PersonsCanBeErasedWithoutHarmToTheRest) {
  const Folder folder;
  {
    Recorder recorder(folder / "a.cabsession", sampleHeader());
    std::int64_t number = 0;
    showSample(recorder, 0, 300, number);
    recorder.close(sampleClosing(300));
  }
  const auto before = readAll(folder / "a.cabsession").size();
  Database::openForWriting(folder / "a.cabsession").run("DELETE FROM person");
  EXPECT_TRUE(Store(folder / "a.cabsession").header().people.empty());
  EXPECT_EQ(readAll(folder / "a.cabsession").size(), before);
}

TEST(Recorder, MakesNoFileThatCouldNotBeReadAgain) {
  const Folder folder;
  SessionHeader header = sampleHeader();
  header.people = {{"trainee", std::string(20'000, 'x')}};
  EXPECT_THAT(errorOf([&] { Recorder r(folder / "a.cabsession", header); }),
              HasSubstr("a name is longer than any"));
  EXPECT_TRUE(folder.names().empty());
}

TEST(SessionId, IsARandomUuidOfVersionFour) {
  const std::string id = makeSessionId();
  ASSERT_EQ(id.size(), 36U);
  EXPECT_EQ(id[14], '4');
  EXPECT_THAT(std::string("89ab"), HasSubstr(std::string(1, id[19])));
  EXPECT_NE(id, makeSessionId());
}

}  // namespace
}  // namespace cabwright::session
