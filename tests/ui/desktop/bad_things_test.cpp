// SPDX-License-Identifier: GPL-3.0-or-later
// What goes wrong around the program: no place to record, a full disk, a file that is none, a
// window closed in the middle, a machine that slept. A clear word, and nothing is lost.
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <QStatusBar>
#include <csignal>
#include <fstream>

#include "desk.h"
#include "session/replay.h"
#include "session/store.h"

namespace cabwright::tests {
namespace {

using scenario::Mode;

QString saidBy(Desk& desk) { return desk.window().statusBar()->currentMessage(); }

// While it stands no file of this process grows beyond that.
class FullDisk {
 public:
  explicit FullDisk(rlim_t most) : handler_(std::signal(SIGXFSZ, SIG_IGN)) {
    ::getrlimit(RLIMIT_FSIZE, &before_);
    const rlimit now{most, before_.rlim_max};
    ::setrlimit(RLIMIT_FSIZE, &now);
  }
  ~FullDisk() {
    ::setrlimit(RLIMIT_FSIZE, &before_);
    std::signal(SIGXFSZ, handler_);
  }
  FullDisk(const FullDisk&) = delete;
  FullDisk& operator=(const FullDisk&) = delete;

 private:
  rlimit before_{};
  void (*handler_)(int);
};

void recordTo(Desk& desk, const QString& folder) { desk.window().preferences().sessions = folder; }

TEST(BadThings, WhereNothingCanBeRecordedPracticeGoesOnAndSaysSo) {
  Desk desk;
  recordTo(desk, QStringLiteral("/proc/none"));
  ASSERT_TRUE(desk.window().begin("hill-start", Mode::kPractice, QStringLiteral("07")));
  EXPECT_TRUE(saidBy(desk).startsWith(QLatin1String("Not recorded"))) << saidBy(desk).toStdString();
  EXPECT_TRUE(saidBy(desk).contains(QLatin1String("/proc/none"))) << saidBy(desk).toStdString();
  desk.pass(1);
  desk.window().endRun();
  EXPECT_EQ(desk.window().page(), desk.window().afterView());
}

TEST(BadThings, WhereNothingCanBeRecordedNoAssessmentBegins) {
  Desk desk;
  recordTo(desk, QStringLiteral("/proc/none"));
  EXPECT_FALSE(desk.window().begin("hill-start", Mode::kAssessment, QStringLiteral("07")));
  EXPECT_EQ(desk.window().seat(), nullptr);
  EXPECT_EQ(desk.window().page(), desk.window().chooseView());
  EXPECT_TRUE(saidBy(desk).contains(QLatin1String("/proc/none"))) << saidBy(desk).toStdString();
}

TEST(BadThings, AFullDiskIsSaidWhileTheRunGoesOnAndAtItsEnd) {
  Desk desk;
  desk.begin("hill-start", Mode::kPractice);
  const FullDisk full(200'000);
  desk.pass(60);
  EXPECT_TRUE(saidBy(desk).startsWith(QLatin1String("Not recorded"))) << saidBy(desk).toStdString();
  desk.window().endRun();
  EXPECT_TRUE(desk.seat().run().recordFault());
  EXPECT_EQ(desk.window().page(), desk.window().afterView());
  EXPECT_TRUE(saidBy(desk).startsWith(QLatin1String("Not recorded"))) << saidBy(desk).toStdString();
}

TEST(BadThings, AWindowThatIsClosedInTheMiddleLeavesAWholeSession) {
  Desk desk;
  desk.begin("hill-start", Mode::kAssessment);
  desk.seat().act("set", "cab1.horn", "low");
  desk.pass(3);
  const std::int64_t last = desk.seat().run().tick();
  EXPECT_FALSE(desk.window().close());  // of an assessment it is asked
  EXPECT_TRUE(desk.window().close());
  EXPECT_EQ(desk.window().seat(), nullptr);
  const QStringList files = desk.sessions().entryList(QDir::Files);
  ASSERT_EQ(files.size(), 1);
  const session::Store store(desk.sessions().filePath(files.front()).toStdString());
  const session::Replayed again = session::replay(store);
  EXPECT_FALSE(again.difference);
  EXPECT_EQ(again.last_tick, last);
}

TEST(BadThings, FilesThatAreNoSessionsDoNotKeepTheWindowFromOpening) {
  Desk first;
  first.begin("hill-start", Mode::kPractice);
  first.window().endRun();
  const QDir folder = first.sessions();
  for (const char* name : {"empty.cabsession", "noise.cabsession"})
    std::ofstream(folder.filePath(QString::fromLatin1(name)).toStdString(), std::ios::binary)
        << (name[0] == 'n' ? std::string(5000, '\xa5') : std::string());
  Desk second;
  recordTo(second, folder.path());
  second.begin("hill-start", Mode::kPractice);
  second.pass(1);
  second.window().endRun();
  EXPECT_FALSE(second.seat().run().recordFault());
  EXPECT_EQ(folder.entryList(QDir::Files).size(), 4);
}

TEST(BadThings, AMachineThatSleptAnHourHasLostAQuarterSecond) {
  Desk desk;
  desk.begin("hill-start", Mode::kAssessment);
  const std::int64_t before = desk.seat().run().tick();
  desk.window().passTime(3600);
  EXPECT_LE(desk.seat().run().tick() - before, 25);
  EXPECT_GT(desk.seat().run().tick(), before);
}

}  // namespace
}  // namespace cabwright::tests
