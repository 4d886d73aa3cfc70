// SPDX-License-Identifier: GPL-3.0-or-later
// The three ways to take an exercise, and what each gives and keeps back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QKeySequenceEdit>
#include <QListWidget>
#include <fstream>

#include "cab/names.h"
#include "cab/show_parts.h"
#include "cab/you_parts.h"
#include "driver.h"

namespace cabwright::tests {
namespace {

using scenario::Mode;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;
using unit::Signal;

cab::NotebookPart& notebook(Desk& desk) { return *desk.view().findChild<cab::NotebookPart*>(); }

std::vector<std::string> pointedAt(Desk& desk) {
  std::vector<std::string> names;
  for (auto* part : desk.view().findChildren<cab::Part*>())
    if (part->isVisible() && part->isPointed()) names.push_back(part->objectName().toStdString());
  return names;
}

void act(Desk& desk, const char* verb, const char* object, const char* argument = "") {
  EXPECT_TRUE(desk.seat().act(verb, object, argument).accepted) << verb << ' ' << object;
  desk.settle();
}

TEST(Guided, TheNextStepAndItsReasonStandThereAndAreFollowed) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kGuided);
  EXPECT_TRUE(notebook(desk).showsHint());
  const std::string first = desk.seat().guide()->current()->act;
  EXPECT_THAT(notebook(desk).role().description.toStdString(), HasSubstr(first));
  EXPECT_THAT(notebook(desk).role().description.toStdString(),
              HasSubstr(desk.seat().guide()->current()->why));
  EXPECT_THAT(pointedAt(desk), ::testing::Contains("booking.notices"));
  const auto mouse = makeMouse(desk);
  for (const char* item : {"booking.notices", "booking.repair_book"}) {
    ASSERT_FALSE(mouse->perform({unit::Actor::kTrainee, "look", item, ""}));
    desk.pass(5);
    ASSERT_FALSE(mouse->perform({unit::Actor::kTrainee, "judge", item, "good"}));
  }
  desk.pass(0.5);
  EXPECT_NE(desk.seat().guide()->current()->act, first);
  EXPECT_THAT(notebook(desk).role().description.toStdString(),
              HasSubstr(desk.seat().guide()->current()->act));
  EXPECT_THAT(pointedAt(desk), ::testing::Contains("thing.brake_handle"));
  EXPECT_THAT(pointedAt(desk), Not(::testing::Contains("booking.notices")));
}

// Whoever did what the step says has not done it until it is all done; what is left is what is
// pointed at.
TEST(Guided, WhatIsDoneOfAStepLosesItsFrameAndTheRestKeepsIt) {
  Desk desk;
  desk.begin("warm-start", Mode::kGuided);
  EXPECT_THAT(pointedAt(desk), ::testing::Contains("engine1.fuel"));
  EXPECT_THAT(pointedAt(desk), Not(::testing::Contains("say")));
  const auto judge = [&](const std::string& item) {
    act(desk, "look", item.c_str());
    desk.pass(5.5);
    act(desk, "judge", item.c_str(), "good");
    desk.pass(0.3);
  };
  judge("engine1.fuel");
  EXPECT_THAT(pointedAt(desk), Not(::testing::Contains("engine1.fuel")));
  EXPECT_THAT(pointedAt(desk), ::testing::Contains("engine1.oil"));
  const std::vector<std::string> rest{"people", "isolating_switch", "cock", "coolant", "oil",
                                      "belts",  "throttle",         "tray", "cover"};
  for (const std::string& item : rest) judge("engine1." + item);
  ASSERT_EQ(desk.seat().guide()->current()->id, "look-engine-2");
  EXPECT_THAT(pointedAt(desk), ::testing::Contains("say"));
  act(desk, "go", "engine2", "skip");
  desk.pass(0.3);
  judge("engine2.fuel");
  for (const std::string& item : rest) judge("engine2." + item);
  EXPECT_EQ(desk.seat().guide()->current()->id, "look-engine-2");  // nobody looked both ways
  EXPECT_THAT(pointedAt(desk), ElementsAre("say"));
  desk.key(Qt::Key_U);
  const auto* list = desk.view().panel()->findChild<QListWidget*>();
  ASSERT_NE(list, nullptr);
  std::vector<std::string> strong;
  for (int row = 0; row < list->count(); ++row)
    if (list->item(row)->font().bold()) strong.push_back(list->item(row)->text().toStdString());
  EXPECT_THAT(strong, ElementsAre("Do: Look both ways"));
  desk.key(Qt::Key_Escape);
  act(desk, "do", "look_both_ways");
  desk.pass(0.3);
  EXPECT_EQ(desk.seat().guide()->current()->id, "rear");
  EXPECT_THAT(pointedAt(desk), Not(::testing::Contains("say")));
}

TEST(Guided, AThingTakenAlongIsNoLongerPointedAt) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kGuided);
  for (const char* item : {"booking.notices", "booking.repair_book"}) {
    act(desk, "look", item);
    desk.pass(5.5);
    act(desk, "judge", item, "good");
  }
  desk.pass(0.3);
  ASSERT_EQ(desk.seat().guide()->current()->id, "collect");
  EXPECT_THAT(pointedAt(desk), ::testing::Contains("thing.control_key"));
  act(desk, "take", "control_key");
  desk.pass(0.3);
  EXPECT_THAT(pointedAt(desk), Not(::testing::Contains("thing.control_key")));
  EXPECT_THAT(pointedAt(desk), ::testing::Contains("thing.door_key"));
}

std::string titleLine(Desk& desk) {
  return desk.view().findChild<cab::TitlePart*>()->role().value.toStdString();
}

TEST(Practice, TimeThatIsLetPassLeavesTheTimeAllowed) {
  Desk desk;
  desk.begin("warm-start", Mode::kPractice);
  const auto pass = [&] {
    desk.seat().passUntilChange();
    while (desk.seat().isPassing()) desk.seat().passRealTime(0.02);
    return desk.view().message().toStdString();
  };
  // Nothing is asked for, nothing moves: by two minutes at most, up to the last one.
  const std::int64_t minute = 60 * session::kTicksPerSecond, end = 20 * minute;
  std::string words;
  bool stopped_by_time = false;
  while (desk.seat().run().tick() < end - minute) {
    const std::int64_t before = desk.seat().run().tick();
    words = pass();
    EXPECT_LT(desk.seat().run().tick() - before, 2 * minute + session::kFrameTicks);
    if (words == "Two minutes have passed and nothing changed.") {
      stopped_by_time = true;
      EXPECT_GE(desk.seat().run().tick() - before, 2 * minute);
    }
  }
  EXPECT_TRUE(stopped_by_time);
  EXPECT_EQ(words, "One minute of the time allowed is left.");
  EXPECT_EQ(desk.seat().run().tick(), end - minute);
  EXPECT_THAT(titleLine(desk), HasSubstr("real time"));
  do words = pass();
  while (desk.seat().run().tick() < end);
  EXPECT_EQ(words, "The time allowed is over.");
  EXPECT_EQ(desk.seat().run().tick(), end);
}

TEST(Modes, TheTitleBlockSaysWhenTheTimeAllowedIsOver) {
  for (const Mode mode : {Mode::kGuided, Mode::kPractice, Mode::kAssessment}) {
    Desk desk;
    desk.begin("warm-start", mode);
    desk.pass(20 * 60 - 0.1);
    EXPECT_THAT(titleLine(desk), HasSubstr("real time"));
    desk.pass(0.5);
    EXPECT_THAT(titleLine(desk), HasSubstr("over the time allowed"));
  }
}

TEST(Practice, AHintComesOnlyWhenAskedFor) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kPractice);
  desk.pass(5);
  EXPECT_FALSE(notebook(desk).showsHint());
  EXPECT_TRUE(notebook(desk).role().description.isEmpty());
  EXPECT_TRUE(pointedAt(desk).empty());
  desk.key(Qt::Key_I);
  EXPECT_TRUE(notebook(desk).showsHint());
  EXPECT_FALSE(pointedAt(desk).empty());
}

TEST(Practice, ADarkLampSaysWhyAndARefusalHasItsCause) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kPractice);
  act(desk, "take", "door_key");
  act(desk, "go", "cab1", "skip");
  auto* lever = desk.find<cab::LeverPart>(QStringLiteral("cab1.brake"));
  desk.drag(desk.onSheet(lever->knobAt(0)), desk.onSheet(lever->knobAt(0.5)));
  EXPECT_THAT(desk.view().message().toStdString(), HasSubstr(": "));
  for (auto* lamp : desk.view().findChildren<cab::LampPart*>()) {
    if (lamp->lamp() != Signal::kCab1LampAir) continue;
    ASSERT_TRUE(desk.click(lamp));
    auto* why = qobject_cast<cab::WhyPanel*>(desk.view().panel());
    ASSERT_NE(why, nullptr);
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
  }
}

TEST(Practice, TimeThatIsLetPassStopsAtAnyKey) {
  for (Qt::Key key : {Qt::Key_V, Qt::Key_Tab, Qt::Key_Right, Qt::Key_Space, Qt::Key_Escape,
                      Qt::Key_F12, Qt::Key_Q}) {
    SCOPED_TRACE(key);
    Desk desk;
    desk.begin("cold-preparation", Mode::kPractice);
    ASSERT_TRUE(desk.tabTo(desk.find<cab::ItemPart>(QStringLiteral("booking.notices"))));
    QWidget* before = desk.focus();
    desk.key(Qt::Key_V);
    ASSERT_TRUE(desk.seat().isPassing());
    const std::int64_t tick = desk.seat().run().tick();
    desk.window().passTime(0.02);
    EXPECT_GT(desk.seat().run().tick(), tick + 50);  // quicker than the clock
    desk.key(key);
    EXPECT_FALSE(desk.seat().isPassing());
    EXPECT_EQ(desk.focus(), before);  // it stopped the time and did nothing else
    EXPECT_EQ(desk.seat().unit().world().trainee.looking, std::nullopt);
    desk.key(Qt::Key_Tab);
    EXPECT_NE(desk.focus(), before);
  }
}

TEST(Assessment, SaysNoCauseAndGivesNoHint) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kAssessment);
  EXPECT_EQ(desk.find<cab::WordButton>(QStringLiteral("hint")), nullptr);
  EXPECT_EQ(desk.find<cab::WordButton>(QStringLiteral("pass")), nullptr);
  desk.key(Qt::Key_I);
  EXPECT_FALSE(notebook(desk).showsHint());
  EXPECT_TRUE(pointedAt(desk).empty());
  act(desk, "take", "door_key");
  act(desk, "go", "lineside");
  desk.pass(60);
  act(desk, "go", "cab1");
  desk.pass(180);
  ASSERT_EQ(desk.seat().place(), unit::Place::kCab1);
  auto* lever = desk.find<cab::LeverPart>(QStringLiteral("cab1.brake"));
  desk.drag(desk.onSheet(lever->knobAt(0)), desk.onSheet(lever->knobAt(0.5)));
  EXPECT_EQ(desk.view().message().toStdString(), "there is no handle");
  for (auto* lamp : desk.view().findChildren<cab::LampPart*>())
    if (lamp->isVisible()) desk.click(lamp);
  EXPECT_EQ(desk.view().panel(), nullptr);
}

TEST(Assessment, LetsNoTimePassAndGoesNowhereBack) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kAssessment);
  cab::Seat* seat = &desk.seat();
  desk.key(Qt::Key_V);
  desk.key(Qt::Key_T, Qt::ControlModifier);
  EXPECT_FALSE(desk.seat().isPassing());
  desk.key(Qt::Key_Space, Qt::ControlModifier);
  EXPECT_FALSE(desk.seat().isFrozen());
  const std::int64_t tick = desk.seat().run().tick();
  desk.pass(1);
  EXPECT_EQ(desk.seat().run().tick(), tick + 100);
  desk.key(Qt::Key_R, Qt::ControlModifier);
  EXPECT_EQ(desk.window().seat(), seat);
  EXPECT_GE(desk.seat().run().tick(), tick + 100);
  // The settings may be looked at; the clock goes on.
  desk.key(Qt::Key_F1);
  const std::int64_t there = desk.seat().run().tick();
  desk.pass(1);
  EXPECT_EQ(desk.seat().run().tick(), there + 100);
  desk.key(Qt::Key_Escape);
  EXPECT_EQ(desk.window().page(), &desk.view());
}

TEST(Assessment, AWalkTakesItsTime) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kAssessment);
  EXPECT_FALSE(desk.seat().act("go", "lineside", "skip").accepted);
  ASSERT_TRUE(desk.click(desk.find<cab::BalloonPart>(QStringLiteral("go.lineside"))));
  EXPECT_TRUE(desk.seat().isWalking());
  desk.pass(1);
  EXPECT_TRUE(desk.seat().isWalking());
  for (cab::Part* part : desk.plate().parts()) {
    auto* item = qobject_cast<cab::ItemPart*>(part);
    if (item != nullptr) desk.click(item);
  }
  EXPECT_EQ(desk.seat().unit().world().trainee.looking, std::nullopt);
  double waited = 1;
  while (desk.seat().isWalking() && waited < 300) {
    desk.pass(1);
    waited += 1;
  }
  EXPECT_GT(waited, 10);
  EXPECT_EQ(desk.seat().place(), unit::Place::kLineside);
}

TEST(Practice, FreezesAndTakesAgain) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kPractice);
  desk.pass(2);
  desk.key(Qt::Key_Space, Qt::ControlModifier);
  EXPECT_TRUE(desk.seat().isFrozen());
  const std::int64_t tick = desk.seat().run().tick();
  desk.pass(1);
  EXPECT_EQ(desk.seat().run().tick(), tick);
  desk.key(Qt::Key_R, Qt::ControlModifier);
  EXPECT_LT(desk.seat().run().tick(), 10);
  EXPECT_FALSE(desk.seat().isFrozen());
}

// A box that waits for a key takes any but Escape; and the window may be closed as it stands.
TEST(Settings, EscapeLeavesThemFromAKeyBoxAndChangesNoKey) {
  Desk desk;
  desk.begin("cold-preparation", Mode::kPractice);
  desk.key(Qt::Key_F1);
  ASSERT_NE(desk.window().page(), &desk.view());
  auto* box = desk.window().page()->findChild<QKeySequenceEdit*>();
  ASSERT_NE(box, nullptr);
  ASSERT_TRUE(desk.tabTo(box));
  const QKeySequence before = box->keySequence();
  desk.key(Qt::Key_Escape);
  EXPECT_EQ(desk.window().page(), &desk.view());
  desk.key(Qt::Key_F1);
  box = desk.window().page()->findChild<QKeySequenceEdit*>();
  EXPECT_EQ(box->keySequence(), before);
  ASSERT_TRUE(desk.tabTo(box));
}

// Without light a thing is not made out; the hand lamp, lit by the mouse, shows it.
TEST(Looking, AtWhatIsNotLitShowsNothingUntilTheLampIsOn) {
  QTemporaryDir home;
  const std::filesystem::path own = home.filePath(QStringLiteral("scenarios")).toStdString();
  std::filesystem::copy(std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios", own,
                        std::filesystem::copy_options::recursive);
  const std::filesystem::path file = own / "cold-preparation" / "scenario.toml";
  std::stringstream words;
  words << std::ifstream(file).rdbuf();
  std::string changed = words.str();
  const std::string head = "[conditions]\n";
  changed.insert(changed.find(head) + head.size(), "dark = true\n");
  std::ofstream(file) << changed;

  Desk desk({1280, 800}, own);
  desk.begin("cold-preparation", Mode::kPractice);
  act(desk, "take", "door_key");
  act(desk, "take", "hand_lamp");
  act(desk, "go", "side1", "skip");
  auto* wheels = desk.find<cab::ItemPart>(QStringLiteral("side1.wheels"));
  ASSERT_TRUE(desk.click(wheels));
  desk.pass(5);
  EXPECT_THAT(desk.view().message().toStdString(), HasSubstr("too dark to see"));
  EXPECT_EQ(desk.seat().unit().world().trainee.looking, std::nullopt);
  EXPECT_FALSE(desk.seat().unit().world().item[unit::indexOf(wheels->item())].looked);
  auto* lamp = desk.find<cab::CarriedPart>(QStringLiteral("thing.hand_lamp"));
  ASSERT_TRUE(desk.click(lamp));
  auto* list = desk.view().panel()->findChild<QListWidget*>();
  int row = -1;
  for (int k = 0; k < list->count(); ++k)
    if (list->item(k)->text().startsWith(QLatin1String("Switch on"))) row = k;
  ASSERT_GE(row, 0);
  desk.clickAt(
      list->viewport()->mapTo(&desk.window(), list->visualItemRect(list->item(row)).center()));
  desk.key(Qt::Key_Return);
  EXPECT_EQ(desk.seat().value(unit::Control::kHandLamp), 1);
  ASSERT_TRUE(desk.click(wheels));
  desk.pass(5);
  EXPECT_TRUE(desk.seat().unit().world().item[unit::indexOf(wheels->item())].looked);
  EXPECT_THAT(notebook(desk).role().value.toStdString(),
              HasSubstr(wheels->accessibleName().toStdString()));
}

}  // namespace
}  // namespace cabwright::tests
