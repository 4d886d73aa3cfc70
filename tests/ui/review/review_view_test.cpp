// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/review_view.h"

#include <gmock/gmock.h>

#include <QBackingStore>

#include "review/review.h"
#include "review_rig.h"
#include "review_room/review_lanes.h"

namespace cabwright::review_room {
namespace {

using unit::Control;

class ReviewViewTest : public ReviewRig {
 protected:
  void SetUp() override {
    record(session::kGoodDeeds);
    show();
  }
};

TEST_F(ReviewViewTest, TheCursorIsDraggedAndThePlateFollows) {
  QTest::mousePress(&view_->strip(), Qt::LeftButton, {}, at(300));
  EXPECT_NEAR(static_cast<double>(cursor()), 300, 2);
  for (const std::int64_t tick : {400, 500, 650}) {
    QTest::mouseMove(&view_->strip(), at(tick));
    QMouseEvent move(QEvent::MouseMove, at(tick), view_->strip().mapToGlobal(at(tick)),
                     Qt::NoButton, Qt::LeftButton, {});
    QCoreApplication::sendEvent(&view_->strip(), &move);
    settle();
    EXPECT_NEAR(static_cast<double>(cursor()), static_cast<double>(tick), 2);
    EXPECT_EQ(view_->moment().seat().run().tick(), cursor());
    const auto [shown, recorded] = shownAndRecorded(Control::kCab1Handbrake);
    EXPECT_EQ(shown, recorded) << tick;
  }
  QTest::mouseRelease(&view_->strip(), Qt::LeftButton, {}, at(650));
  const std::int64_t left = cursor();
  QTest::mouseMove(&view_->strip(), at(100));
  EXPECT_EQ(cursor(), left) << "it stays where it was put";
}

// Only what the cursor changes is drawn anew; nothing may be left standing, or be missing.
TEST_F(ReviewViewTest, WhatIsOnTheScreenIsWhatAFreshDrawingGives) {
  const auto countOther = [&] {
    const auto* screen = dynamic_cast<const QImage*>(view_->backingStore()->paintDevice());
    if (screen == nullptr) return -1;
    QImage fresh(view_->size(), QImage::Format_RGB32);
    view_->render(&fresh);
    const QRect strip(view_->strip().mapTo(view_.get(), QPoint()), view_->strip().size());
    const QImage shown = screen->copy(strip).convertToFormat(QImage::Format_RGB32);
    const QImage wanted = fresh.copy(strip);
    int other = 0;
    for (int y = 0; y < shown.height(); ++y)
      for (int x = 0; x < shown.width(); ++x) other += shown.pixel(x, y) != wanted.pixel(x, y);
    return other;
  };
  view_->setShare(Share::kStrips);  // with all its plots
  settle();
  for (const std::int64_t tick : {300, 900, 120, 0, 915}) {
    QTest::mouseClick(&view_->strip(), Qt::LeftButton, {}, at(tick));
    settle();
    // A dashed curve is not drawn to the last pixel alike where only a part of it is.
    EXPECT_THAT(countOther(), testing::AllOf(testing::Ge(0), testing::Lt(20))) << tick;
  }
}

TEST_F(ReviewViewTest, TheAxisOfTimeStandsAboveTheLanes) {
  const after::StripLayout layout = after::layOutStrip({1200, 700}, 7, 5, 0);
  EXPECT_TRUE(layout.axis_above);
  EXPECT_LT(layout.axis_y, layout.lanes_top - after::kLaneBar / 2);
  EXPECT_GT(layout.plots.back().bottom(), 680) << "below there is nothing but the edge";
  EXPECT_EQ(layout.plots.size(), 5U);
  const after::StripLayout low = after::layOutStrip({1200, 600}, 7, 5, 0);
  EXPECT_EQ(low.plots.size(), 4U) << "where a fifth would crowd them";
  EXPECT_GT(low.plots[0].height(), 60);
  const after::StripLayout afterwards = after::layOutStrip({1200, 700}, 7, 5, 2);
  EXPECT_FALSE(afterwards.axis_above);
  EXPECT_EQ(afterwards.axis_y, afterwards.end);
  EXPECT_LE(afterwards.plots.back().bottom(), afterwards.axis_y + 1);
  // What is pressed there is a moment like everywhere.
  QTest::mouseClick(&view_->strip(), Qt::LeftButton, {}, at(500, 10));
  EXPECT_NEAR(static_cast<double>(cursor()), 500, 2);
}

TEST_F(ReviewViewTest, WhereNoPlateHasRoomTheStripsHaveTheRest) {
  view_->resize(1100, 620);
  settle();
  ASSERT_FALSE(view_->moment().hasRoom());
  EXPECT_LT(view_->moment().height(), 200 * view_->look().scale + 10);
  EXPECT_GT(view_->strip().height(), view_->height() / 2);
  view_->resize(1920, 1080);
  settle();
  EXPECT_TRUE(view_->moment().hasRoom());
}

TEST_F(ReviewViewTest, KeysStepByRecordedMomentSecondActionAndVerdict) {
  view_->strip().setFocus();
  press(Qt::Key_Right);
  EXPECT_EQ(cursor(), 10);
  press(Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(cursor(), 110);
  press(Qt::Key_Right);
  EXPECT_EQ(cursor(), 120);
  press(Qt::Key_Right, Qt::ControlModifier);
  EXPECT_EQ(cursor(), 253) << "the next action";
  EXPECT_TRUE(view_->transport().events().contains(QStringLiteral("Handbrake")));
  press(Qt::Key_Left);
  EXPECT_EQ(cursor(), 250);
  press(Qt::Key_Right);
  EXPECT_EQ(cursor(), 253) << "recorded before the action";
  press(Qt::Key_Left, Qt::ControlModifier);
  EXPECT_EQ(cursor(), 120);
  press(Qt::Key_End);
  EXPECT_EQ(cursor(), 915);
  press(Qt::Key_PageUp);
  const auto verdicts = findVerdictTicks(view_->strip().lanes());
  ASSERT_FALSE(verdicts.empty());
  EXPECT_EQ(cursor(), *std::prev(std::ranges::lower_bound(verdicts, 915)));
  press(Qt::Key_Home);
  press(Qt::Key_PageDown);
  EXPECT_EQ(cursor(), *std::ranges::upper_bound(verdicts, 0));
}

TEST_F(ReviewViewTest, ItPlaysAtTheRateThatIsChosen) {
  QTest::mouseClick(view_->transport().button(Step::kPlay), Qt::LeftButton);
  EXPECT_TRUE(view_->isPlaying());
  view_->passRealTime(0.2);
  const std::int64_t first = cursor();
  EXPECT_GE(first, 20);
  for (int k = 0; k < 4; ++k) press(Qt::Key_Up);
  EXPECT_EQ(view_->transport().rate(), 20);
  const std::int64_t before = cursor();
  view_->passRealTime(0.2);
  EXPECT_GE(cursor() - before, 400);
  for (int k = 0; k < 10; ++k) press(Qt::Key_Down);
  EXPECT_EQ(view_->transport().rate(), 0.1);
  press(Qt::Key_Space);
  EXPECT_FALSE(view_->isPlaying());
  const std::int64_t stopped = cursor();
  press(Qt::Key_Left);
  EXPECT_LT(cursor(), stopped);
}

TEST_F(ReviewViewTest, PlayingEndsAtTheEnd) {
  view_->jumpTo(900);
  view_->setPlaying(true);
  for (int k = 0; k < 3; ++k) view_->passRealTime(0.2);
  EXPECT_EQ(cursor(), 915);
  EXPECT_FALSE(view_->isPlaying());
}

TEST_F(ReviewViewTest, ThePlateIsThatOfTheMomentAndNothingCanBeDoneOnIt) {
  press(Qt::Key_F8);
  view_->jumpTo(400);
  settle();
  cab::SeatView* plate = view_->moment().plate();
  ASSERT_NE(plate, nullptr);
  EXPECT_TRUE(plate->isVisible());
  const std::uint64_t before = view_->moment().seat().run().run().hash();
  for (cab::Part* part : plate->plate()->parts())
    if (part->isVisible()) QTest::mouseClick(part, Qt::LeftButton);
  QTest::keyClick(plate, Qt::Key_W);
  settle();
  EXPECT_EQ(view_->moment().seat().run().run().hash(), before);
  EXPECT_EQ(plate->panel(), nullptr);
}

TEST_F(ReviewViewTest, ItIsLookedAtFromElsewhereAndBack) {
  press(Qt::Key_F8);
  cab::SeatView* plate = view_->moment().plate();
  ASSERT_NE(plate, nullptr);
  QTest::keyClick(plate, Qt::Key_4);
  settle();
  EXPECT_EQ(view_->moment().seat().place(), unit::Place::kEngine1);
  EXPECT_GT(view_->moment().from()->currentIndex(), 0);
  QTest::keyClick(view_->moment().from(), Qt::Key_Home);
  settle();
  EXPECT_EQ(view_->moment().seat().place(), unit::Place::kCab1);
}

TEST_F(ReviewViewTest, KeysGoOnActingWhenThePlateHasThem) {
  press(Qt::Key_F8);
  QTest::keyClick(view_->moment().plate(), Qt::Key_Right);
  EXPECT_EQ(cursor(), 10);
}

TEST_F(ReviewViewTest, WheelZoomsAndTheOtherButtonShifts) {
  const QPoint point = at(450);
  QWheelEvent wheel(point, view_->strip().mapToGlobal(point), {}, {0, 360}, Qt::NoButton,
                    Qt::NoModifier, Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(&view_->strip(), &wheel);
  const after::Span zoomed = view_->strip().span();
  EXPECT_LT(zoomed.length(), 915);
  QTest::mousePress(&view_->strip(), Qt::MiddleButton, {}, at(zoomed.from + 200));
  const QPoint to = at(zoomed.from + 100);
  QMouseEvent move(QEvent::MouseMove, to, view_->strip().mapToGlobal(to), Qt::NoButton,
                   Qt::MiddleButton, {});
  QCoreApplication::sendEvent(&view_->strip(), &move);
  EXPECT_GT(view_->strip().span().from, zoomed.from);
  EXPECT_EQ(view_->strip().span().length(), zoomed.length());
}

TEST_F(ReviewViewTest, SharesChangeWhatHasTheMostRoom) {
  const int both = view_->moment().height();
  press(Qt::Key_F6);
  EXPECT_LT(view_->moment().height(), both);
  EXPECT_TRUE(view_->strip().isVisible());
  press(Qt::Key_F8);
  EXPECT_GT(view_->moment().height(), both);
  EXPECT_FALSE(view_->strip().isVisible());
}

TEST_F(ReviewViewTest, WhatIsAlteredAndFitsAgainIsFoundByRunningIt) {
  view_.reset();
  forge("UPDATE action SET text = 'say ask_permission' WHERE text = 'say call_warning'");
  show();
  view_->jumpTo(200);
  settle();
  EXPECT_TRUE(view_->moment().isWhole());
  view_->jumpTo(700);
  settle();
  EXPECT_FALSE(view_->moment().isWhole());
  EXPECT_TRUE(view_->moment().note().contains(QStringLiteral("differs")))
      << view_->moment().note().toStdString();
  EXPECT_EQ(view_->moment().row().frame().tick, 700) << "the recorded values are there";
}

TEST_F(ReviewViewTest, TheHeadSaysWhoseItIsAndHowTheSealStands) {
  EXPECT_TRUE(view_->headText().contains(QStringLiteral("P. Example")));
  EXPECT_TRUE(view_->headText().contains(QStringLiteral("Handbrake")));
  EXPECT_TRUE(view_->sealText().startsWith(QStringLiteral("Not sealed")));
  view_.reset();
  std::filesystem::remove(file());
  review::recordAndSeal(file(), review::kBadDeeds);
  show();
  EXPECT_TRUE(view_->sealText().startsWith(QStringLiteral("Sealed, and whole")));
  view_.reset();
  session::Database::openForWriting(file()).run("UPDATE frame SET tick = 11 WHERE tick = 10");
  show();
  EXPECT_TRUE(view_->sealText().startsWith(QStringLiteral("ALTERED")));
}

TEST_F(ReviewViewTest, MarksAreHiddenWhereTheyMustNotBeSeen) {
  ASSERT_FALSE(findVerdictTicks(view_->strip().lanes()).empty());
  view_->setHidesMarks(true);
  EXPECT_TRUE(findVerdictTicks(view_->strip().lanes()).empty());
  press(Qt::Key_PageDown);
  EXPECT_EQ(cursor(), 0) << "nor found by stepping";
}

TEST(ReviewLanes, FaultsStandFromTheirComingToTheirGoing) {
  const auto told = [](std::int64_t tick, const std::string& words) {
    return session::TimedAction{tick, 1, true, {unit::Actor::kScenario, "remark", "fault", words}};
  };
  const auto stays = findFaultStays({told(10, "vacuum.train_pipe_leak (2 mm) armed"),
                                     told(300, "vacuum.train_pipe_leak (2 mm) there"),
                                     told(400, "vacuum.train_pipe_leak (3 mm) 'second' growing"),
                                     told(500, "vacuum.train_pipe_leak (2 mm) cleared")},
                                    900);
  ASSERT_EQ(stays.size(), 2U);
  EXPECT_EQ(stays[0].from, 300);
  EXPECT_EQ(stays[0].to, 500);
  EXPECT_TRUE(stays[0].words.endsWith(QStringLiteral("2 mm")));
  EXPECT_EQ(stays[1].id, "second");
  EXPECT_EQ(stays[1].to, 900);
}

}  // namespace
}  // namespace cabwright::review_room
