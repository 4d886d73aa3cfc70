// SPDX-License-Identifier: GPL-3.0-or-later
// The assessor's window beside the program's: opened by its key, and shut while an assessment goes
// on.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "desk.h"
#include "review_room/review_window.h"

namespace cabwright::tests {
namespace {

using scenario::Mode;

review_room::ReviewWindow* openReview(Desk& desk) {
  desk.window().activateWindow();
  QCoreApplication::processEvents();
  QTest::keyClick(&desk.window(), Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
  QCoreApplication::processEvents();
  return desk.window().reviewDoor().window();
}

TEST(ReviewDoor, OpensBesideByItsKey) {
  Desk desk;
  review_room::ReviewWindow* room = openReview(desk);
  ASSERT_NE(room, nullptr);
  EXPECT_TRUE(room->isVisible());
}

TEST(ReviewDoor, IsShutWhileAnAssessmentGoesOn) {
  Desk desk;
  review_room::ReviewWindow* room = openReview(desk);
  ASSERT_NE(room, nullptr);
  desk.begin("warm-tooth", Mode::kAssessment);
  EXPECT_FALSE(room->isVisible()) << "what was open is closed";
  openReview(desk);
  EXPECT_FALSE(room->isVisible());
  EXPECT_FALSE(desk.window().reviewDoor().open("some.cabsession"));
  desk.window().endRun();
  openReview(desk);
  EXPECT_TRUE(room->isVisible()) << "it is over";
}

TEST(ReviewDoor, StaysOpenInPractice) {
  Desk desk;
  review_room::ReviewWindow* room = openReview(desk);
  desk.begin("warm-tooth", Mode::kPractice);
  EXPECT_TRUE(room->isVisible());
}

}  // namespace
}  // namespace cabwright::tests
