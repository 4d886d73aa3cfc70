// SPDX-License-Identifier: GPL-3.0-or-later
// The instructor's desk beside the trainee's window: opened, begun from, gone back from, closed,
// and never noticed by the trainee.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "desk.h"
#include "desk/desk_window.h"

namespace cabwright::tests {
namespace {

using scenario::Mode;

desk::DeskWindow* openDesk(Desk& desk) {
  desk.window().activateWindow();
  QCoreApplication::processEvents();
  // Not Desk::key: no time is to pass by that.
  QTest::keyClick(&desk.window(), Qt::Key_D, Qt::ControlModifier);
  QCoreApplication::processEvents();
  return desk.window().deskDoor().window();
}

// All that the seat shows, to the bit, and the state of the world.
struct Seen {
  QImage picture;
  std::uint64_t world = 0;
  bool operator==(const Seen&) const = default;
};
Seen look(Desk& desk) {
  desk.window().activateWindow();
  desk.settle();
  return {desk.view().grab().toImage(), desk.seat().unit().hash()};
}

Seen playWith(bool with_desk) {
  Desk desk;
  desk.begin("warm-tooth", Mode::kPractice);
  if (with_desk) {
    desk::DeskWindow* window = openDesk(desk);
    EXPECT_NE(window, nullptr);
    desk.pass(2);
    for (int k = 0; k < window->pageCount(); ++k) {
      window->tabs()->setCurrentIndex(k);
      desk.pass(0.5);
    }
    desk.pass(5 - 0.5 * window->pageCount());
  } else {
    desk.pass(7);
  }
  desk.view().setFocus();
  return look(desk);
}

TEST(DeskDoor, TheTraineeSeesNothingOfIt) {
  const Seen alone = playWith(false), beside = playWith(true);
  EXPECT_EQ(alone.world, beside.world);
  EXPECT_EQ(alone.picture, beside.picture);
}

TEST(DeskDoor, AMarkAndARemarkAreNotSeenAndAFaultIsOnlyByWhatItDoes) {
  Desk alone, beside;
  for (Desk* desk : {&alone, &beside}) desk->begin("warm-tooth", Mode::kPractice);
  openDesk(beside);
  desk::Desk& run = beside.window().deskDoor().desk();
  EXPECT_TRUE(run.take("mark", "here"));
  EXPECT_TRUE(run.take("remark", "general", "waits"));
  EXPECT_TRUE(run.take("arm", "horn", "") == false);  // no such fault: nothing happens
  for (Desk* desk : {&alone, &beside}) desk->pass(3);
  EXPECT_EQ(look(alone), look(beside));
  EXPECT_TRUE(run.take("arm", "cab1.lamp_air_lit"));
  for (Desk* desk : {&alone, &beside}) desk->pass(1);
  EXPECT_NE(look(alone).world, look(beside).world);
}

TEST(DeskDoor, ClosingChangesNothingInTheRun) {
  Desk desk;
  desk.begin("warm-tooth", Mode::kPractice);
  desk::DeskWindow* window = openDesk(desk);
  ASSERT_NE(window, nullptr);
  desk.pass(1);
  const std::uint64_t before = desk.seat().unit().hash();
  window->close();
  EXPECT_FALSE(window->isVisible());
  EXPECT_EQ(desk.seat().unit().hash(), before);
  EXPECT_FALSE(desk.seat().isFinished());
  EXPECT_TRUE(desk.seat().run().actions().empty());
  EXPECT_EQ(openDesk(desk), window);
  EXPECT_TRUE(window->isVisible());
}

TEST(DeskDoor, RemembersItsSize) {
  const QTemporaryDir home;
  QSettings settings(home.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
  const std::filesystem::path scenarios = std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios";
  {
    desktop::DeskDoor door(settings);
    door.open(scenarios, {});
    door.window()->resize(1111, 777);
    QCoreApplication::processEvents();
    door.close();
  }
  desktop::DeskDoor door(settings);
  door.open(scenarios, {});
  EXPECT_EQ(door.window()->size(), QSize(1111, 777));
}

TEST(DeskDoor, GoesBackToAMark) {
  Desk desk;
  desk.begin("warm-tooth", Mode::kPractice);
  desk::DeskWindow* window = openDesk(desk);
  ASSERT_NE(window, nullptr);
  desk.pass(3);
  desk::Desk& run = desk.window().deskDoor().desk();
  ASSERT_TRUE(run.take("mark", "before"));
  const std::int64_t tick = run.tick();
  const std::uint64_t then = desk.seat().unit().hash();
  EXPECT_TRUE(run.take("set", "cab1.horn", "low"));
  desk.pass(4);
  EXPECT_NE(desk.seat().unit().hash(), then);
  QSignalSpy changed(&run, &desk::Desk::runChanged);
  window->bar()->back()->click();
  desk.settle();
  QCoreApplication::processEvents();
  EXPECT_GE(changed.count(), 1);
  EXPECT_NEAR(static_cast<double>(run.tick()), static_cast<double>(tick), 5);
  EXPECT_EQ(desk.seat().value(unit::Control::kCab1Horn), 0);
  EXPECT_FALSE(desk.sawModal());
}

TEST(DeskDoor, GoesBackToAMomentOfTheStrip) {
  Desk desk;
  desk.begin("warm-tooth", Mode::kPractice);
  desk::DeskWindow* window = openDesk(desk);
  ASSERT_NE(window, nullptr);
  desk.pass(8);
  window->foot()->offerMoment(300);
  ASSERT_TRUE(window->foot()->here()->isVisible());
  window->foot()->here()->click();
  for (int k = 0; k < 3; ++k) QCoreApplication::processEvents();
  EXPECT_NEAR(static_cast<double>(desk.window().deskDoor().desk().tick()), 300, 5);
  EXPECT_FALSE(window->foot()->leaveOff()->isVisible());
  EXPECT_FALSE(desk.sawModal());
}

// Whatever is typed or clicked meanwhile reaches nobody but the button that leaves it off.
TEST(DeskDoor, GoingBackIsLeftOffByItsButtonAndByEscapeAndByNothingElse) {
  for (const bool by_button : {true, false}) {
    Desk desk;
    desk.begin("warm-tooth", Mode::kPractice);
    desk::DeskWindow* window = openDesk(desk);
    ASSERT_NE(window, nullptr);
    desk.pass(8);
    desk::Desk& run = desk.window().deskDoor().desk();
    const std::uint64_t before = desk.seat().unit().hash();
    const cab::Seat* seat = &desk.seat();
    int seen = 0;
    QObject::connect(&run, &desk::Desk::goingBackChanged, window, [&](bool going) {
      if (!going) return;
      QTimer::singleShot(0, window, [&] {
        ++seen;
        EXPECT_TRUE(window->foot()->leaveOff()->isVisible());
        QTest::mouseClick(window->bar()->freeze(), Qt::LeftButton);
        QTest::keyClick(window, Qt::Key_F2);
        desk.window().close();
        EXPECT_TRUE(desk.window().isVisible());
        if (by_button) {
          QTest::mouseClick(window->foot()->leaveOff(), Qt::LeftButton);
        } else {
          QTest::keyClick(window, Qt::Key_Escape);
        }
      });
    });
    run.goBackTo(700);
    for (int k = 0; k < 3; ++k) QCoreApplication::processEvents();
    EXPECT_EQ(seen, 1);
    EXPECT_EQ(&desk.seat(), seat);
    EXPECT_EQ(desk.seat().unit().hash(), before);
    EXPECT_FALSE(desk.seat().isFrozen());
    EXPECT_THAT(window->said().toStdString(), ::testing::HasSubstr("Left off"));
    EXPECT_FALSE(window->foot()->leaveOff()->isVisible());
    QTest::mouseClick(window->bar()->freeze(), Qt::LeftButton);  // afterwards all is as before
    EXPECT_TRUE(desk.seat().isFrozen());
  }
}

TEST(DeskDoor, TheTraineesMenuFollowsTheInstructorsFreeze) {
  Desk desk;
  desk.begin("warm-tooth", Mode::kPractice);
  ASSERT_NE(openDesk(desk), nullptr);
  QAction* stop = nullptr;
  for (QAction* action : desk.window().findChildren<QAction*>())
    if (action->shortcut() == QKeySequence(Qt::CTRL | Qt::Key_Space)) stop = action;
  ASSERT_NE(stop, nullptr);
  desk::Desk& run = desk.window().deskDoor().desk();
  ASSERT_TRUE(run.take("pace", "frozen"));
  EXPECT_TRUE(stop->isChecked());
  stop->trigger();  // the trainee cannot start it again
  EXPECT_TRUE(desk.seat().isFrozen());
  EXPECT_TRUE(stop->isChecked());
  ASSERT_TRUE(run.take("pace", "1"));
  EXPECT_FALSE(stop->isChecked());
  stop->trigger();
  EXPECT_TRUE(desk.seat().isFrozen());
  EXPECT_TRUE(stop->isChecked());
}

TEST(DeskDoor, ASituationBeginsInTheTraineesWindow) {
  Desk desk;
  desk::DeskWindow* window = openDesk(desk);
  ASSERT_NE(window, nullptr);
  window->showPage(window->situation());
  auto* exercise = window->findChild<QComboBox*>(QStringLiteral("exercise"));
  ASSERT_GE(exercise->count(), 5);
  window->situation()->setTrainee(QStringLiteral("11"));
  for (int k = 0; k < exercise->count(); ++k) {
    exercise->setCurrentIndex(k);
    if (window->situation()->wish().exercise == "cold-preparation") break;
  }
  window->findChild<QDoubleSpinBox*>(QStringLiteral("temperature"))->setValue(-8);
  window->findChild<QCheckBox*>(QStringLiteral("dark"))->setChecked(true);
  window->findChild<QDoubleSpinBox*>(QStringLiteral("seed"))->setValue(42);
  window->situation()->begin()->click();
  QCoreApplication::processEvents();
  ASSERT_NE(desk.window().seat(), nullptr);
  const session::LiveRun& run = desk.seat().run();
  EXPECT_DOUBLE_EQ(run.situation().loaded.scenario.start.plant.ambient_c, -8);
  EXPECT_TRUE(run.situation().loaded.scenario.start.dark);
  EXPECT_EQ(run.header().seed, 42U);
  EXPECT_EQ(run.header().trainee_number, "11");
  EXPECT_TRUE(window->isVisible());
  // The record carries what was changed.
  bool said = false;
  for (const auto& source : run.header().sources)
    said = said || (source.role == "scenario" &&
                    source.text.find("temperature = \"-8 C\"") != std::string::npos);
  EXPECT_TRUE(said);
}

// What is being assessed is not thrown away by a click at the desk.
TEST(DeskDoor, NothingElseBeginsWhileAnAssessmentGoesOn) {
  Desk desk;
  desk.begin("warm-start", Mode::kAssessment);
  desk::DeskWindow* window = openDesk(desk);
  ASSERT_NE(window, nullptr);
  cab::Seat* seat = &desk.seat();
  window->situation()->begin()->click();
  for (int k = 0; k < 3; ++k) QCoreApplication::processEvents();
  ASSERT_EQ(desk.window().seat(), seat);
  EXPECT_FALSE(desk.seat().isFinished());
  EXPECT_THAT(window->said().toStdString(), ::testing::HasSubstr("assessment goes on"));
  desk.window().endRun();
  window->situation()->begin()->click();
  for (int k = 0; k < 3; ++k) QCoreApplication::processEvents();
  EXPECT_NE(desk.window().seat(), nullptr);
  EXPECT_FALSE(desk.seat().isFinished());
}

}  // namespace
}  // namespace cabwright::tests
