// SPDX-License-Identifier: GPL-3.0-or-later
// Pages that are looked at meanwhile, and the end of an assessment, which is asked about.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QStatusBar>

#include "desk.h"

namespace cabwright::tests {
namespace {

using scenario::Mode;

QAction* actionOf(Desk& desk, const char* words) {
  for (QAction* action : desk.window().findChildren<QAction*>())
    if (action->text().remove(QLatin1Char('&')) == QLatin1String(words)) return action;
  return nullptr;
}

TEST(Aside, TheClockGoesOnAfterwardsAsItWentBefore) {
  for (const char* page : {"Settings", "Cautions"}) {
    SCOPED_TRACE(page);
    Desk desk;
    desk.begin("warm-start", Mode::kPractice);
    for (const bool stopped : {false, true}) {
      desk.seat().setFrozen(stopped);
      actionOf(desk, page)->trigger();
      ASSERT_NE(desk.window().page(), &desk.view());
      EXPECT_TRUE(desk.seat().isFrozen());
      actionOf(desk, page)->trigger();  // a second time changes nothing
      if (QLatin1String(page) == QLatin1String("Settings")) {
        desk.key(Qt::Key_Escape);
      } else {
        desk.window().page()->findChild<QPushButton*>()->click();
      }
      EXPECT_EQ(desk.window().page(), &desk.view());
      EXPECT_EQ(desk.seat().isFrozen(), stopped);
    }
  }
}

TEST(Aside, TheSheetAfterARunIsStillThere) {
  Desk desk;
  desk.begin("warm-start", Mode::kPractice);
  desk.pass(1);
  desk.window().endRun();
  after::AfterView* sheet = desk.window().afterView();
  ASSERT_EQ(desk.window().page(), sheet);
  actionOf(desk, "Settings")->trigger();
  desk.key(Qt::Key_Escape);
  EXPECT_EQ(desk.window().page(), sheet);
  actionOf(desk, "Cautions")->trigger();
  desk.window().page()->findChild<QPushButton*>()->click();
  EXPECT_EQ(desk.window().page(), sheet);
}

TEST(EndOfAssessment, IsToldFirstAndDoneTheSecondTime) {
  for (const char* way : {"End the run and see the sheet", "Choose an exercise"}) {
    SCOPED_TRACE(way);
    Desk desk;
    desk.begin("warm-start", Mode::kAssessment);
    desk.pass(1);
    actionOf(desk, way)->trigger();
    ASSERT_NE(desk.window().seat(), nullptr);
    EXPECT_FALSE(desk.seat().isFinished());
    EXPECT_EQ(desk.window().page(), &desk.view());
    EXPECT_TRUE(desk.window().statusBar()->isVisible());
    EXPECT_THAT(desk.window().statusBar()->currentMessage().toStdString(),
                ::testing::HasSubstr("ends the assessment"));
    desk.pass(11);  // forgotten: it is asked anew
    actionOf(desk, way)->trigger();
    ASSERT_NE(desk.window().seat(), nullptr);
    EXPECT_FALSE(desk.seat().isFinished());
    desk.pass(2);
    actionOf(desk, way)->trigger();
    EXPECT_TRUE(desk.window().seat() == nullptr || desk.seat().isFinished());
    EXPECT_FALSE(desk.sawModal());
  }
}

TEST(EndOfAssessment, TheWindowClosesTheSecondTimeToo) {
  Desk desk;
  desk.begin("warm-start", Mode::kAssessment);
  EXPECT_FALSE(desk.window().close());
  EXPECT_TRUE(desk.window().isVisible());
  EXPECT_FALSE(desk.seat().isFinished());
  EXPECT_TRUE(desk.window().close());
}

TEST(EndOfAssessment, PracticeEndsAtOnce) {
  Desk desk;
  desk.begin("warm-start", Mode::kPractice);
  desk.key(Qt::Key_E, Qt::ControlModifier);
  EXPECT_TRUE(desk.seat().isFinished());
}

}  // namespace
}  // namespace cabwright::tests
