// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of the shelf about many sessions at once: progress, weak lines, due dates.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QSignalSpy>
#include <cmath>

#include "made_session.h"
#include "shelf_rig.h"

namespace cabwright::tests {
namespace {

using marking::Outcome;
using testing::HasSubstr;

class ManyTest : public testing::Test {
 protected:
  ManyTest() : exercise_(session::sampleSituation()) {}
  void make(const std::string& name, MadeSession made) {
    makeSession(rig_.own / (name + ".cabsession"), exercise_, made);
  }
  // Six attempts of trainee 07 along an 80 % curve of ten minutes, before them one at an earlier
  // version, and one of trainee 08.
  void makeAttempts() {
    MadeSession made;
    made.number = "07";
    made.name = "P. Example";
    made.more_text = "earlier";
    made.started_utc = "2031-01-31T08:00:00Z";
    make("earlier", made);
    made.more_text.clear();
    for (int k = 1; k <= 6; ++k) {
      made.started_utc = "2031-02-0" + std::to_string(k) + "T08:00:00Z";
      made.ticks = std::lround(60'000 * std::pow(k, -0.322));
      made.outcome = [k](const std::string& rule) {
        if (rule == "gear" && k <= 2) return Outcome::kBroken;
        return rule == "pawl" ? Outcome::kNotExercised : Outcome::kMet;
      };
      make("a" + std::to_string(k), made);
    }
    made.number = "08";
    make("other", made);
  }
  void goTo(int page) {
    const QPoint at = rig_.page.tabs()->tabRect(page).center();
    QTest::mouseClick(rig_.page.tabs(), Qt::LeftButton, {}, at);
    QApplication::processEvents();
  }
  session::Situation exercise_;
  ShelfRig rig_;
};

TEST_F(ManyTest, ProgressOfOneTraineeWithACurveFromFiveAttemptsOn) {
  makeAttempts();
  rig_.open();
  goTo(1);
  auto* page = rig_.page.progressPage();
  EXPECT_EQ(page->saidText(), "Choose a trainee and an exercise above.");
  goTo(0);
  ASSERT_TRUE(rig_.click("a3.cabsession"));
  QTest::mouseClick(rig_.button("progress"), Qt::LeftButton);
  ASSERT_TRUE(page->isVisible());
  EXPECT_THAT(page->saidText().toStdString(), HasSubstr("N^-0.322"));
  EXPECT_THAT(page->saidText().toStdString(), HasSubstr("leaves 80 % of the time"));
  EXPECT_THAT(page->saidText().toStdString(), HasSubstr("07, P. Example"));
  ASSERT_EQ(page->attempts()->rows().size(), 6U);
  EXPECT_EQ(page->attempts()->rows()[0].cells[4], "0:10:00");
  const auto minutes = page->chart()->drawnMinutes();
  ASSERT_EQ(minutes.size(), 6);
  EXPECT_NEAR(minutes[1].y(), 8.0, 0.01);
  EXPECT_NEAR(page->chart()->drawnCurve().back().y(), minutes[5].y(), 0.01);
  EXPECT_EQ(page->chart()->drawnPercents()[5].y(), 100);
  EXPECT_LT(page->chart()->drawnPercents()[0].y(), 100);
}

TEST_F(ManyTest, VersionsOfAnExerciseAreKeptApart) {
  makeAttempts();
  rig_.open();
  ASSERT_TRUE(rig_.click("a3.cabsession"));
  QTest::mouseClick(rig_.button("progress"), Qt::LeftButton);
  auto* page = rig_.page.progressPage();
  ASSERT_EQ(page->versions()->count(), 2);
  EXPECT_EQ(page->versions()->currentIndex(), 1);
  page->versions()->setFocus();
  QTest::keyClick(page->versions(), Qt::Key_Up);
  EXPECT_EQ(page->attempts()->rows().size(), 1U);
  EXPECT_TRUE(page->chart()->drawnCurve().isEmpty());
  EXPECT_THAT(page->saidText().toStdString(), HasSubstr("from 5 attempts on"));
  QSignalSpy opened(&rig_.page, &review_room::ShelfPage::openAsked);
  page->attempts()->setFocus();
  QTest::keyClick(page->attempts(), Qt::Key_Return);
  ASSERT_EQ(opened.size(), 1);
  EXPECT_EQ(opened[0][0].toString(), rig_.path("earlier.cabsession"));
}

TEST_F(ManyTest, WeakLinesLeadToTheSessionsInWhichTheyBroke) {
  makeAttempts();
  rig_.open();
  goTo(2);
  auto* page = rig_.page.weakPage();
  ASSERT_FALSE(page->lines()->rows().empty());
  const auto& worst = page->lines()->rows()[0];
  EXPECT_EQ(worst.cells[2], "25 %");
  EXPECT_EQ(worst.cells[3], "2");
  EXPECT_EQ(worst.cells[4], "8");
  ASSERT_EQ(page->brokenIn()->rows().size(), 2U);
  EXPECT_GT(page->never()->rows().size() + page->lines()->rows().size(), 1U);
  QSignalSpy opened(&rig_.page, &review_room::ShelfPage::openAsked);
  page->lines()->setFocus();
  QTest::keyClick(page->lines(), Qt::Key_Return);
  EXPECT_TRUE(page->brokenIn()->hasFocus());
  QTest::keyClick(page->brokenIn(), Qt::Key_Return);
  ASSERT_EQ(opened.size(), 1);
  EXPECT_EQ(opened[0][0].toString(), rig_.path("a2.cabsession"));  // the latest first
  // Another question, other counts.
  for (QLineEdit* box : rig_.page.findChildren<QLineEdit*>())
    if (box->accessibleName() == "From day") QTest::keyClicks(box, "2031-02-03");
  ASSERT_FALSE(page->lines()->rows().empty());
  EXPECT_EQ(page->lines()->rows()[0].cells[2], "0 %");
  EXPECT_TRUE(page->brokenIn()->rows().empty());
}

TEST_F(ManyTest, DueDatesAreOffAtFirstAndRememberedWhenSet) {
  makeAttempts();
  rig_.page.recencyPage()->setToday([] { return QDate(2031, 3, 1); });
  rig_.open();
  goTo(3);
  auto* page = rig_.page.recencyPage();
  EXPECT_TRUE(page->list()->rows().empty());
  EXPECT_THAT(page->headingText().toStdString(), HasSubstr("No validity is set"));
  auto* general = page->form()->findChild<QSpinBox*>("general");
  general->setFocus();
  general->selectAll();
  QTest::keyClicks(general, "1");
  QTest::keyClick(general, Qt::Key_Return);
  ASSERT_EQ(page->list()->rows().size(), 2U);
  EXPECT_EQ(page->list()->rows()[0].cells[2], "6 Feb 2031");
  EXPECT_EQ(page->list()->rows()[0].cells[3], "6 Mar 2031");
  EXPECT_EQ(page->list()->rows()[0].cells[4], "5 day(s) left");
  EXPECT_EQ(review_room::loadRecency(rig_.settings).months, 1);
  auto* own = page->form()->findChild<QSpinBox*>("own");
  own->setFocus();
  own->selectAll();
  QTest::keyClicks(own, "0");
  QTest::keyClick(own, Qt::Key_Return);
  EXPECT_TRUE(page->list()->rows().empty());
  own->selectAll();
  QTest::keyClick(own, Qt::Key_Down);
  EXPECT_EQ(page->list()->rows().size(), 2U);
}

TEST_F(ManyTest, AnythingInTheSettingsIsTaken) {
  rig_.settings.setValue("recency/months", "often");
  EXPECT_EQ(review_room::loadRecency(rig_.settings).months, 0);
  rig_.settings.setValue("recency/months", 1'000'000);
  rig_.settings.setValue("recency/exercises/size", 3);
  EXPECT_EQ(review_room::loadRecency(rig_.settings).months, 120);
  EXPECT_TRUE(review_room::loadRecency(rig_.settings).by_exercise.empty());
}

}  // namespace
}  // namespace cabwright::tests
