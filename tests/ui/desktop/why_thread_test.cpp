// SPDX-License-Identifier: GPL-3.0-or-later
// The thread from a dark lamp or a refused lever to what is missing, and the dotted lines from the
// hands to what they hold: by real events, and never in assessment.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTimer>

#include "cab/show_parts.h"
#include "cab/switch_parts.h"
#include "driver.h"

namespace cabwright::tests {
namespace {

using scenario::Mode;
using ::testing::HasSubstr;
using unit::Control;
using unit::Signal;

void act(Desk& desk, const char* verb, const char* object, const char* argument = "") {
  EXPECT_TRUE(desk.seat().act(verb, object, argument).accepted) << verb << ' ' << object;
  desk.settle();
}

void toCab(Desk& desk, Mode mode) {
  desk.begin("cold-preparation", mode);
  act(desk, "take", "door_key");
  if (mode != Mode::kAssessment) {
    act(desk, "go", "cab1", "skip");
    return;
  }
  act(desk, "go", "lineside");
  desk.pass(60);
  act(desk, "go", "cab1");
  desk.pass(180);
  ASSERT_EQ(desk.seat().place(), unit::Place::kCab1);
}

// With its key in and on, and the reversing lever in its place.
void toLiveCab(Desk& desk) {
  desk.begin("cold-preparation", Mode::kPractice);
  for (const char* thing : {"door_key", "control_key", "reversing_lever"}) act(desk, "take", thing);
  act(desk, "go", "cab1", "skip");
  act(desk, "insert", "control_key", "cab1");
  act(desk, "set", "cab1.key", "on");
  act(desk, "insert", "reversing_lever", "cab1");
  desk.pass(0.5);
}

cab::LampPart* lamp(Desk& desk, Signal signal) {
  for (auto* part : desk.view().findChildren<cab::LampPart*>())
    if (part->isVisible() && part->lamp() == signal) return part;
  return nullptr;
}

// The mouse comes to rest on a part.
void rest(Desk& desk, QWidget* part) {
  desk.view().findChild<QTimer*>(QStringLiteral("rest"))->setInterval(0);
  QTest::mouseMove(desk.window().windowHandle(), QPoint(1, 1));
  QTest::mouseMove(desk.window().windowHandle(), desk.pointOn(part));
  for (int k = 0; k < 5; ++k) desk.settle();
}

QPointF onPlan(Desk& desk, unit::Place place) {
  const auto* plan = desk.view().findChild<cab::PlanPart*>();
  return drawing::planPosition(plan->plan(), static_cast<int>(place));
}

TEST(WhyThread, GoesFromADarkLampByItsCircleToThePlaceOnThePlan) {
  Desk desk;
  toLiveCab(desk);
  auto* engine = lamp(desk, Signal::kCab1LampEngine2);
  ASSERT_TRUE(desk.click(engine));
  auto* why = qobject_cast<cab::WhyPanel*>(desk.view().panel());
  ASSERT_NE(why, nullptr);
  ASSERT_NE(why->missing(), nullptr);
  EXPECT_EQ(why->missing()->fact, unit::Fact::kEngineUp);
  const cab::ThreadPath& path = desk.view().why().thread().path();
  ASSERT_TRUE(path.circle.has_value());
  EXPECT_TRUE(desk.view().why().thread().isVisible());
  EXPECT_EQ(path.detail.kind, cab::WhySketch::kEngine);
  EXPECT_EQ(path.to_circle.front(), engine->centre());
  ASSERT_TRUE(path.end.has_value());
  EXPECT_EQ(*path.end, onPlan(desk, unit::Place::kEngine2));
  // Beside the words and the lamp, not over them.
  const QRectF circle(*path.circle - QPointF(cab::kWhyCircle, cab::kWhyCircle),
                      QSizeF(2 * cab::kWhyCircle, 2 * cab::kWhyCircle));
  EXPECT_FALSE(circle.intersects(engine->area()));
  const double scale = desk.view().style().frame.scale;
  EXPECT_FALSE(circle.intersects(QRectF(QPointF(why->pos()) / scale, QSizeF(why->size()) / scale)));
  EXPECT_FALSE(why->geometry().intersects(engine->geometry()));
  desk.key(Qt::Key_Escape);
  EXPECT_FALSE(desk.view().why().thread().isVisible());
  EXPECT_EQ(desk.view().panel(), nullptr);
}

TEST(WhyThread, EndsAtTheThingItselfWhenThatIsHere) {
  Desk desk;
  toLiveCab(desk);
  ASSERT_TRUE(desk.click(lamp(desk, Signal::kCab1LampDevice)));
  const auto* why = qobject_cast<cab::WhyPanel*>(desk.view().panel());
  ASSERT_NE(why, nullptr);
  ASSERT_NE(why->missing(), nullptr);
  const auto& path = desk.view().why().thread().path();
  ASSERT_TRUE(path.end.has_value());
  EXPECT_LT(path.end->x(), desk.view().style().frame.world.right());
}

TEST(WhyThread, IsShownWhileTheMouseRestsOnADarkLampAndTakesNoFocus) {
  Desk desk;
  toCab(desk, Mode::kPractice);
  QWidget* before = desk.focus();
  rest(desk, lamp(desk, Signal::kCab1LampAir));
  ASSERT_NE(desk.view().why().passing(), nullptr);
  EXPECT_TRUE(desk.view().why().thread().isVisible());
  EXPECT_EQ(desk.focus(), before);
  EXPECT_EQ(desk.view().panel(), nullptr);
  QTest::mouseMove(desk.window().windowHandle(), QPoint(1, 1));
  desk.settle();
  EXPECT_EQ(desk.view().why().passing(), nullptr);
  EXPECT_FALSE(desk.view().why().thread().isVisible());
}

TEST(WhyThread, AsksByItsKeyAboutTheLeverThatWasRefused) {
  Desk desk;
  toCab(desk, Mode::kPractice);
  auto* lever = desk.find<cab::LeverPart>(QStringLiteral("cab1.brake"));
  desk.drag(desk.onSheet(lever->knobAt(0)), desk.onSheet(lever->knobAt(0.5)));
  EXPECT_EQ(desk.view().why().passing(), nullptr);  // in practice not by itself
  desk.view().setFocus();
  desk.key(Qt::Key_F);
  const auto* why = qobject_cast<cab::WhyPanel*>(desk.view().panel());
  ASSERT_NE(why, nullptr);
  EXPECT_EQ(why->asked(), cab::WhyAsked(Control::kCab1Brake));
  const auto& path = desk.view().why().thread().path();
  EXPECT_EQ(path.detail.kind, cab::WhySketch::kSocket);
  ASSERT_TRUE(path.end.has_value());
  EXPECT_EQ(*path.end, onPlan(desk, unit::Place::kBooking));  // the handle hangs there
}

TEST(WhyThread, GuidedShowsByItselfWhyALeverWasRefused) {
  Desk desk;
  toCab(desk, Mode::kGuided);
  auto* lever = desk.find<cab::LeverPart>(QStringLiteral("cab1.brake"));
  desk.drag(desk.onSheet(lever->knobAt(0)), desk.onSheet(lever->knobAt(0.5)));
  ASSERT_NE(desk.view().why().passing(), nullptr);
  EXPECT_TRUE(desk.view().why().thread().isVisible());
}

TEST(WhyThread, IsNeverThereInAssessment) {
  Desk desk;
  toCab(desk, Mode::kAssessment);
  auto* lever = desk.find<cab::LeverPart>(QStringLiteral("cab1.brake"));
  desk.drag(desk.onSheet(lever->knobAt(0)), desk.onSheet(lever->knobAt(0.5)));
  desk.key(Qt::Key_F);
  EXPECT_EQ(desk.view().panel(), nullptr);
  for (auto* part : desk.view().findChildren<cab::LampPart*>()) {
    if (!part->isVisible()) continue;
    rest(desk, part);
    desk.click(part);
    EXPECT_EQ(desk.view().why().passing(), nullptr);
    EXPECT_FALSE(desk.view().why().thread().isVisible());
  }
  rest(desk, lever);
  EXPECT_EQ(desk.view().why().passing(), nullptr);
}

TEST(WhyThread, GoesWithThePlateItWasOn) {
  Desk desk;
  toCab(desk, Mode::kPractice);
  ASSERT_TRUE(desk.click(lamp(desk, Signal::kCab1LampAir)));
  ASSERT_TRUE(desk.view().why().thread().isVisible());
  act(desk, "go", "saloon", "skip");
  EXPECT_FALSE(desk.view().why().thread().isVisible());
  EXPECT_EQ(desk.view().panel(), nullptr);
}

TEST(HandThread, GoesFromAHandUpToWhatItHolds) {
  Desk desk;
  toCab(desk, Mode::kPractice);
  const auto& threads = desk.view().threads();
  EXPECT_FALSE(threads.thread(0).has_value());
  EXPECT_FALSE(threads.thread(1).has_value());
  auto* gear = desk.find<cab::LeverPart>(QStringLiteral("cab1.gear"));
  ASSERT_TRUE(desk.click(gear));
  desk.settle();
  const int side = *desk.seat().handOn(Control::kCab1Gear);
  ASSERT_TRUE(threads.thread(side).has_value());
  EXPECT_EQ(threads.thread(side)->x2(), gear->pivot().x());
  EXPECT_GT(threads.thread(side)->y1(), threads.thread(side)->y2());
  EXPECT_TRUE(threads.isVisible());
  // What lies over the sheet takes no mouse from it.
  ASSERT_TRUE(desk.click(desk.find<cab::ButtonPart>(QStringLiteral("cab1.bell"))));
  desk.key(side == 0 ? Qt::Key_Z : Qt::Key_X);
  desk.settle();
  EXPECT_FALSE(threads.thread(side).has_value());
}

// Neither the lamp that is asked about nor the control that is missing is under the words.
TEST(WhyThread, TheWordsCoverNeitherWhatIsAskedNorWhatIsMissing) {
  Desk desk;
  toLiveCab(desk);
  int asked = 0;
  for (cab::Part* part : desk.view().findChildren<cab::Part*>()) {
    const auto about = cab::WhyGuide::askedOf(part);
    if (!about || !part->isVisible()) continue;
    desk.view().setFocus();
    part->setFocus();
    desk.view().useCommand(QStringLiteral("why"));
    auto* why = qobject_cast<cab::WhyPanel*>(desk.view().panel());
    if (why == nullptr || why->asked() != *about) continue;
    ++asked;
    EXPECT_FALSE(
        why->geometry().intersects(QRect(part->mapTo(&desk.view(), QPoint()), part->size())))
        << part->accessibleName().toStdString();
    QMetaObject::invokeMethod(why, "closed");
    desk.settle();
  }
  EXPECT_GE(asked, 5);
}

TEST(WhyThread, TheWordsAreMovedByMouseAndKeysAndTheThreadFollows) {
  Desk desk;
  toLiveCab(desk);
  ASSERT_TRUE(desk.click(lamp(desk, Signal::kCab1LampEngine2)));
  auto* why = qobject_cast<cab::WhyPanel*>(desk.view().panel());
  ASSERT_NE(why, nullptr);
  const QPoint first = why->pos();
  const QPointF circle = *desk.view().why().thread().path().circle;
  QTest::keyClick(why, first.x() > 200 ? Qt::Key_Left : Qt::Key_Right);
  EXPECT_NE(why->pos(), first);
  EXPECT_EQ(why->pos().y(), first.y());
  EXPECT_NE(*desk.view().why().thread().path().circle, circle);
  const QPoint then = why->pos(), grip(20, 12), way(first.x() > 200 ? -60 : 60, 8);
  QTest::mousePress(why, Qt::LeftButton, {}, grip);
  QMouseEvent move(QEvent::MouseMove, grip + way, why->mapToGlobal(grip + way), Qt::NoButton,
                   Qt::LeftButton, {});
  QCoreApplication::sendEvent(why, &move);
  QTest::mouseRelease(why, Qt::LeftButton, {}, grip);
  EXPECT_EQ(why->pos(), then + way);
  const QPoint put = why->pos();
  desk.pass(0.5);
  EXPECT_EQ(why->pos(), put);  // what is put stays
  for (int k = 0; k < 200; ++k) QTest::keyClick(why, Qt::Key_Up);
  EXPECT_GE(why->pos().y(), 0);
}

}  // namespace
}  // namespace cabwright::tests
