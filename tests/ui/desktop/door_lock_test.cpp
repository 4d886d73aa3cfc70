// SPDX-License-Identifier: GPL-3.0-or-later
// Who may look in on a shared machine, and how a trainee signs on.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "desk.h"
#include "desk/desk_window.h"
#include "review_room/review_window.h"
#include "review_room/shelf_page.h"
#include "session/erase.h"
#include "session/store.h"

namespace cabwright::tests {
namespace {

using scenario::Mode;
using testing::HasSubstr;

const QString kWords = QStringLiteral("four plain words");

class DoorLockTest : public testing::Test {
 protected:
  void setWords() {
    auto& keeper = desk_.window().lockKeeper();
    keeper.change({}, kWords, [](bool done) { EXPECT_TRUE(done); });
    keeper.wait();
    ASSERT_TRUE(keeper.isSet());
  }
  void askForDesk() {
    desk_.window().activateWindow();
    QCoreApplication::processEvents();
    QTest::keyClick(&desk_.window(), Qt::Key_D, Qt::ControlModifier);
    QCoreApplication::processEvents();
  }
  [[nodiscard]] bool deskIsOpen() {
    const desk::DeskWindow* window = desk_.window().deskDoor().window();
    return window != nullptr && window->isVisible();
  }
  [[nodiscard]] review_room::LockPanel* panel() { return desk_.window().doorLock().panel(); }
  void give(const QString& words) {
    QTest::keyClicks(panel()->box(), words);
    QTest::keyClick(panel()->box(), Qt::Key_Return);
    desk_.window().lockKeeper().wait();
    QCoreApplication::processEvents();
  }
  Desk desk_;
};

TEST_F(DoorLockTest, WithoutAPassphraseTheDeskOpensAtOnce) {
  askForDesk();
  EXPECT_TRUE(deskIsOpen());
  EXPECT_FALSE(panel()->isVisible());
}

TEST_F(DoorLockTest, WithOneItIsAskedForAndTheRunGoesOn) {
  setWords();
  desk_.window().lockKeeper().lock();
  desk_.begin("warm-tooth", Mode::kPractice);
  askForDesk();
  EXPECT_FALSE(deskIsOpen());
  ASSERT_TRUE(panel()->isVisible());
  const std::int64_t before = desk_.seat().run().tick();
  desk_.pass(2);
  EXPECT_GT(desk_.seat().run().tick(), before);
  const std::size_t acts = desk_.seat().run().actions().size();
  give("not the one");
  EXPECT_FALSE(deskIsOpen());
  EXPECT_EQ(desk_.seat().run().actions().size(), acts);  // no key came to the cab
  give(kWords);
  EXPECT_TRUE(deskIsOpen());
  EXPECT_FALSE(panel()->isVisible());
  EXPECT_FALSE(desk_.sawModal());
  // Unlocked once, until it is locked again.
  desk_.window().deskDoor().close();
  askForDesk();
  EXPECT_TRUE(deskIsOpen());
}

TEST_F(DoorLockTest, AnAssessmentBegunFromTheCabClosesTheDeskAndAsksEachTime) {
  setWords();
  askForDesk();
  ASSERT_TRUE(deskIsOpen());
  ASSERT_TRUE(desk_.window().chooseView()->choose("cold-preparation", Mode::kAssessment));
  desk_.window().chooseView()->setTrainee("07");
  desk_.window().activateWindow();
  QTest::keyClick(desk_.window().chooseView(), Qt::Key_Return);
  QCoreApplication::processEvents();
  ASSERT_NE(desk_.window().seat(), nullptr);
  ASSERT_TRUE(desk_.seat().inAssessment());
  EXPECT_FALSE(deskIsOpen());
  askForDesk();
  EXPECT_FALSE(deskIsOpen());
  give(kWords);
  EXPECT_TRUE(deskIsOpen());
  desk_.window().deskDoor().close();
  askForDesk();  // open or not: who asks may be the one who is assessed
  EXPECT_FALSE(deskIsOpen());
  QTest::keyClick(panel()->box(), Qt::Key_Escape);
  EXPECT_FALSE(panel()->isVisible());
  EXPECT_FALSE(desk_.window().runningFile().empty());
  desk_.window().endRun();
  EXPECT_TRUE(desk_.window().runningFile().empty());
  askForDesk();
  EXPECT_TRUE(deskIsOpen());
}

TEST_F(DoorLockTest, OneThatTheInstructorBeginsAtTheDeskLeavesItOpen) {
  setWords();
  askForDesk();
  desk::SituationWish wish;
  wish.exercise = "cold-preparation";
  wish.mode = Mode::kAssessment;
  ASSERT_TRUE(desk_.window().begin(wish));
  EXPECT_TRUE(deskIsOpen());
}

TEST_F(DoorLockTest, TheReviewAsksTooAndShowsTheShelf) {
  setWords();
  desk_.window().lockKeeper().lock();
  const auto ask = [this] {
    desk_.window().activateWindow();
    QCoreApplication::processEvents();
    QTest::keyClick(&desk_.window(), Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    QCoreApplication::processEvents();
  };
  ask();
  EXPECT_EQ(desk_.window().reviewDoor().window(), nullptr);
  give(kWords);
  ASSERT_NE(desk_.window().reviewDoor().window(), nullptr);
  EXPECT_TRUE(desk_.window().reviewDoor().shelf()->isVisible());
}

TEST_F(DoorLockTest, WhatIsRecordedJustNowIsNotLookedInto) {
  desk_.begin("warm-tooth", Mode::kPractice);
  desk_.pass(1);
  const std::filesystem::path file = desk_.window().runningFile();
  ASSERT_TRUE(std::filesystem::exists(file));
  auto& door = desk_.window().reviewDoor();
  ASSERT_TRUE(door.open(file));
  EXPECT_FALSE(door.window()->isOpening());
  EXPECT_EQ(door.window()->view(), nullptr);
  EXPECT_THAT(door.window()->said().toStdString(), HasSubstr("is being recorded"));
  desk_.window().endRun();
  door.open(file);
  EXPECT_TRUE(door.window()->isOpening());
  door.window()->cancelOpening();
}

TEST_F(DoorLockTest, ATraineeSignsOnWithANumberAndPerhapsAName) {
  auto* choose = desk_.window().chooseView();
  ASSERT_TRUE(choose->choose("warm-tooth", Mode::kPractice));
  QLineEdit *number = nullptr, *name = nullptr;
  for (QLineEdit* box : choose->findChildren<QLineEdit*>()) {
    if (box->accessibleName() == "Your number") number = box;
    if (box->accessibleName() == "Your name") name = box;
  }
  ASSERT_TRUE(number != nullptr && name != nullptr);
  number->setFocus();
  number->selectAll();
  QTest::keyClicks(number, "31");
  QTest::keyClicks(name, "P. Example");
  QTest::keyClicks(number, "4");
  EXPECT_EQ(name->text(), "");  // another number is somebody else
  QTest::keyClicks(name, "Q. Sample");
  QTest::keyClick(name, Qt::Key_Return);
  QCoreApplication::processEvents();
  ASSERT_NE(desk_.window().seat(), nullptr);
  EXPECT_EQ(desk_.seat().run().header().trainee_number, "314");
  desk_.pass(1);
  const std::filesystem::path file = desk_.window().runningFile();
  desk_.window().endRun();
  {
    const session::Store store(file);
    EXPECT_EQ(session::traineeWords(store.header()), "314, Q. Sample");
    ASSERT_TRUE(store.closing());
    EXPECT_THAT(store.closing()->sheet_json, testing::Not(HasSubstr("Q. Sample")));
  }
  EXPECT_EQ(session::erasePeople(file, session::SigningKey(session::Seed{})), 1U);
  EXPECT_EQ(session::traineeWords(session::Store(file).header()), "314");
}

}  // namespace
}  // namespace cabwright::tests
