// SPDX-License-Identifier: GPL-3.0-or-later
// Time, marks, remarks and stepping in, by mouse and keys, and what an assessment refuses.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "desk/live_strips.h"
#include "desk_rig.h"

namespace cabwright::tests {
namespace {

using scenario::Mode;
using ::testing::HasSubstr;
using ::testing::StartsWith;

TEST(Bar, PaceIsKeptByTheSeatsClock) {
  DeskRig rig;
  ASSERT_TRUE(rig.click("pace 5"));
  EXPECT_EQ(rig.lastDone(), "instructor: pace 5");
  const std::int64_t before = rig.run().tick();
  rig.pass(1);
  EXPECT_EQ(rig.run().tick() - before, 500);
  rig.key(Qt::Key_F7);
  EXPECT_EQ(rig.lastDone(), "instructor: pace 2");
  rig.key(Qt::Key_F8);
  EXPECT_EQ(rig.lastDone(), "instructor: pace 5");
  ASSERT_TRUE(rig.click("pace 0.1"));
  const std::int64_t slow = rig.run().tick();
  rig.pass(2);
  EXPECT_NEAR(static_cast<double>(rig.run().tick() - slow), 20, 1);
}

TEST(Bar, FreezesAndGoesOnAsFastAsBefore) {
  DeskRig rig;
  ASSERT_TRUE(rig.click("pace 2"));
  rig.key(Qt::Key_Space, Qt::ControlModifier);
  EXPECT_EQ(rig.lastDone(), "instructor: pace frozen");
  EXPECT_TRUE(rig.seat().isFrozen());
  const std::int64_t before = rig.run().tick();
  rig.pass(1);
  EXPECT_EQ(rig.run().tick(), before);
  ASSERT_TRUE(rig.click("freeze"));
  EXPECT_EQ(rig.lastDone(), "instructor: pace 2");
  EXPECT_FALSE(rig.seat().isFrozen());
}

TEST(Bar, ARemarkIsWrittenFromAnywhere) {
  DeskRig rig;
  rig.key(Qt::Key_F2);
  rig.type(QStringLiteral("waits at the lamp"));
  rig.key(Qt::Key_Return);
  EXPECT_EQ(rig.lastDone(), "instructor: remark general waits at the lamp");
  EXPECT_TRUE(rig.find<QLineEdit>("remark")->text().isEmpty());
}

TEST(Bar, MarksHaveNamesAndAreAskedBackTo) {
  DeskRig rig;
  rig.pass(3);
  rig.key(Qt::Key_F4);
  rig.type(QStringLiteral("before the start"));
  rig.key(Qt::Key_Return);
  EXPECT_EQ(rig.lastDone(), "instructor: mark before the start");
  ASSERT_EQ(rig.run().marks().size(), 1U);
  EXPECT_THAT(rig.find<QComboBox>("marks")->currentText().toStdString(),
              HasSubstr("before the start"));
  QSignalSpy asked(&rig.desk(), &desk::Desk::backAsked);
  ASSERT_TRUE(rig.click("go_back"));
  ASSERT_EQ(asked.count(), 1);
  EXPECT_EQ(asked[0][0].value<session::TimeMark>(), rig.run().marks()[0]);
}

TEST(Bar, SteppingInIsSaidAtTheHead) {
  DeskRig rig;
  rig.key(Qt::Key_F2);
  rig.type(QStringLiteral("stopped him at the hose"));
  ASSERT_TRUE(rig.click("step_in"));
  EXPECT_EQ(rig.lastDone(), "instructor: intervene stopped him at the hose");
  EXPECT_TRUE(rig.run().intervenedAt().has_value());
}

TEST(Bar, AnAssessmentRefusesWhatWouldFalsifyItAndSaysSo) {
  DeskRig rig("warm-tooth", Mode::kAssessment);
  ASSERT_TRUE(rig.click("pace 5"));
  EXPECT_THAT(rig.window().said().toStdString(), StartsWith("Refused: "));
  EXPECT_TRUE(rig.run().actions().empty());
  EXPECT_FALSE(rig.find<QPushButton>("pace 5")->isChecked());
  EXPECT_TRUE(rig.find<QPushButton>("pace 1")->isChecked());
  rig.key(Qt::Key_F4);
  rig.type(QStringLiteral("here"));
  rig.key(Qt::Key_Return);
  QSignalSpy asked(&rig.desk(), &desk::Desk::backAsked);
  ASSERT_TRUE(rig.click("go_back"));
  EXPECT_EQ(asked.count(), 0);
  EXPECT_THAT(rig.window().said().toStdString(), StartsWith("Refused: "));
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
  // A remark and a fault may be.
  rig.key(Qt::Key_F2);
  rig.type(QStringLiteral("looks first"));
  rig.key(Qt::Key_Return);
  EXPECT_EQ(rig.lastDone(), "instructor: remark general looks first");
}

TEST(Bar, AMomentOfThePagesIsAskedBackTo) {
  DeskRig rig;
  rig.pass(12);
  rig.window().tabs()->setCurrentIndex(1);
  auto* strips = dynamic_cast<desk::LiveStrips*>(rig.window().page());
  ASSERT_NE(strips, nullptr);
  desk::FootLine& foot = *rig.window().foot();
  EXPECT_FALSE(foot.here()->isVisible());
  QSignalSpy asked(&rig.desk(), &desk::Desk::momentAsked);
  Q_EMIT strips->momentChosen(450);
  EXPECT_THAT(foot.here()->text().toStdString(), HasSubstr("0:00:04"));
  ASSERT_TRUE(rig.click("go_here"));
  ASSERT_EQ(asked.count(), 1);
  EXPECT_EQ(asked[0][0].toLongLong(), 450);
  EXPECT_FALSE(foot.here()->isVisible());
}

TEST(Bar, AnAssessmentSaysWhyThereIsNoWayBackToAMoment) {
  DeskRig rig("warm-tooth", Mode::kAssessment);
  rig.pass(2);
  rig.window().foot()->offerMoment(100);
  EXPECT_FALSE(rig.window().foot()->here()->isVisible());
  EXPECT_THAT(rig.window().said().toStdString(), HasSubstr("its evidence is of one go"));
  QSignalSpy asked(&rig.desk(), &desk::Desk::momentAsked);
  rig.desk().goBackTo(100);
  EXPECT_EQ(asked.count(), 0);
}

TEST(FootLine, ARefusalGoesWithThePageAndWithTheRun) {
  DeskRig rig("warm-tooth", scenario::Mode::kAssessment);
  desk::DeskWindow& window = rig.window();
  const auto refuse = [&] {
    EXPECT_FALSE(rig.desk().take("pace", "5"));
    EXPECT_TRUE(window.said().startsWith(QLatin1String("Refused"))) << window.said().toStdString();
  };
  refuse();
  window.showPage(window.people());
  EXPECT_EQ(window.said(), QString());
  refuse();
  const std::unique_ptr<cab::Seat> other = makeSeat("hill-start", scenario::Mode::kPractice);
  rig.desk().setSeat(other.get());
  EXPECT_EQ(window.said(), QString());
  EXPECT_TRUE(rig.desk().take("mark", "here"));
  window.showPage(window.faults());
  EXPECT_EQ(window.said(), QLatin1String("mark set: here"));  // what was done stays
  rig.desk().setSeat(nullptr);
}

TEST(Clock, SaysThatTheTraineeHasStoppedIt) {
  DeskRig rig;
  const auto shows = [&](const char* words) {
    for (const QLabel* label : rig.window().findChildren<QLabel*>())
      if (label->text().contains(QLatin1String(words))) return true;
    return false;
  };
  EXPECT_FALSE(shows("stopped in the cab"));
  rig.seat().setFrozen(true);
  EXPECT_TRUE(shows("stopped in the cab"));
  EXPECT_TRUE(rig.desk().take("pace", "frozen"));
  EXPECT_TRUE(shows("frozen"));
  EXPECT_FALSE(shows("stopped in the cab"));
}

}  // namespace
}  // namespace cabwright::tests
