// SPDX-License-Identifier: GPL-3.0-or-later
// The keyboard's way over the sheet: Tab comes to everything that can be used, each once, as it is
// read, and round again; panels take the keys and give them back.
#include <gtest/gtest.h>

#include <set>

#include "driver.h"

namespace cabwright::tests {
namespace {

struct Sheet {
  unit::Place place;
  bool turned = false;
};

std::vector<Sheet> allSheets() {
  std::vector<Sheet> sheets;
  for (const unit::PlaceInfo& info : unit::placeTable()) {
    sheets.push_back({info.id});
    if (unit::cabOf(info.id) >= 0) sheets.push_back({info.id, true});
  }
  return sheets;
}

std::string nameOf(const Sheet& sheet) {
  return std::string(unit::placeInfo(sheet.place).name) + (sheet.turned ? ", turned round" : "");
}

void goTo(Desk& desk, const Sheet& sheet) {
  if (desk.seat().place() != sheet.place)
    desk.seat().act("go", std::string(unit::placeInfo(sheet.place).name), "skip");
  desk.settle();
  if (desk.view().isTurned() != sheet.turned) desk.key(Qt::Key_Period);
  ASSERT_EQ(desk.seat().place(), sheet.place);
  ASSERT_EQ(desk.view().isTurned(), sheet.turned);
}

// One time round with Tab, from the sheet itself.
std::vector<QWidget*> walkRound(Desk& desk) {
  desk.key(Qt::Key_Escape);
  std::vector<QWidget*> seen;
  for (int k = 0; k < 300; ++k) {
    desk.key(Qt::Key_Tab);
    if (!seen.empty() && desk.focus() == seen.front()) return seen;
    seen.push_back(desk.focus());
  }
  return {};
}

std::string wordsOf(const QWidget* w) {
  if (w == nullptr) return "nothing";
  return (w->objectName() + QLatin1Char('/') + w->accessibleName()).toStdString();
}

bool isThing(const cab::Part* part) { return qobject_cast<const cab::ItemPart*>(part) != nullptr; }

TEST(FocusOrder, TabComesToEverythingOnceAndRoundAgain) {
  Desk desk;
  desk.begin("cold-preparation", scenario::Mode::kPractice);
  desk.seat().act("take", "door_key");
  for (const Sheet& sheet : allSheets()) {
    SCOPED_TRACE(nameOf(sheet));
    ASSERT_NO_FATAL_FAILURE(goTo(desk, sheet));
    const std::vector<QWidget*> round = walkRound(desk);
    ASSERT_FALSE(round.empty());
    const std::set<QWidget*> once(round.begin(), round.end());
    EXPECT_EQ(once.size(), round.size());
    for (auto* part : desk.view().findChildren<cab::Part*>()) {
      if (!part->isVisible()) continue;
      const bool wanted = (part->focusPolicy() & Qt::TabFocus) != 0;
      EXPECT_EQ(once.contains(part), wanted) << wordsOf(part);
    }
    for (cab::Part* part : desk.plate().parts()) {
      const bool used = isThing(part) || qobject_cast<cab::ControlPart*>(part) != nullptr;
      EXPECT_TRUE(!used || once.contains(part)) << wordsOf(part);
    }
  }
}

TEST(FocusOrder, GoesAsASheetIsRead) {
  Desk desk;
  desk.begin("cold-preparation", scenario::Mode::kPractice);
  desk.seat().act("take", "door_key");
  for (const Sheet& sheet : allSheets()) {
    SCOPED_TRACE(nameOf(sheet));
    ASSERT_NO_FATAL_FAILURE(goTo(desk, sheet));
    const std::vector<QWidget*> round = walkRound(desk);
    const cab::Part* before = nullptr;
    bool left_plate = false;
    for (QWidget* widget : round) {
      auto* part = qobject_cast<cab::Part*>(widget);
      if (part == nullptr || !desk.plate().isAncestorOf(part)) {
        left_plate = left_plate || before != nullptr;
        continue;
      }
      EXPECT_FALSE(left_plate) << "the plate is left and come to again at " << wordsOf(part);
      if (before != nullptr && isThing(before) == isThing(part)) {
        const QPointF a = before->area().center(), b = part->area().center();
        EXPECT_TRUE(b.x() >= a.x() || b.y() > a.y()) << wordsOf(before) << ", " << wordsOf(part);
        EXPECT_GT(b.y(), a.y() - 61) << wordsOf(before) << ", " << wordsOf(part);
      }
      EXPECT_FALSE(before != nullptr && isThing(before) && !isThing(part)) << wordsOf(part);
      before = part;
    }
    EXPECT_NE(before, nullptr);
  }
}

TEST(FocusOrder, BacktabGoesTheSameWayBack) {
  Desk desk;
  desk.begin("cold-preparation", scenario::Mode::kPractice);
  const std::vector<QWidget*> round = walkRound(desk);
  ASSERT_FALSE(round.empty());
  for (std::size_t k = round.size(); k-- > 0;) {
    desk.key(Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(desk.focus(), round[k]) << wordsOf(desk.focus());
  }
}

// After every walk the keys go on as before: the sheet has them.
TEST(FocusOrder, WhoWalksAwayKeepsTheKeys) {
  Desk desk;
  desk.begin("cold-preparation", scenario::Mode::kPractice);
  desk.seat().act("take", "door_key");
  desk.settle();
  auto* notices = desk.find<cab::ItemPart>(QStringLiteral("booking.notices"));
  ASSERT_TRUE(desk.tabTo(notices));
  desk.key(Qt::Key_F4);
  EXPECT_TRUE(desk.seat().isWalking());
  desk.pass(90);
  ASSERT_EQ(desk.seat().place(), unit::Place::kLineside);
  ASSERT_NE(desk.focus(), nullptr);
  desk.key(Qt::Key_1);
  EXPECT_TRUE(desk.seat().isWalking());
}

TEST(FocusOrder, PanelsTakeTheKeysAndGiveThemBack) {
  Desk desk;
  desk.begin("cold-preparation", scenario::Mode::kPractice);
  auto* notices = desk.find<cab::ItemPart>(QStringLiteral("booking.notices"));
  ASSERT_TRUE(desk.tabTo(notices));
  for (Qt::Key key : {Qt::Key_U, Qt::Key_N, Qt::Key_E, Qt::Key_M, Qt::Key_C}) {
    SCOPED_TRACE(key);
    desk.key(key);
    ASSERT_NE(desk.view().panel(), nullptr);
    EXPECT_TRUE(desk.view().panel()->isAncestorOf(desk.focus())) << wordsOf(desk.focus());
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
    const std::int64_t tick = desk.seat().run().tick();
    desk.pass(0.5);
    EXPECT_GT(desk.seat().run().tick(), tick);  // it stops nothing
    bool left = false;
    for (int k = 0; k < 12 && !left; ++k) {
      desk.key(Qt::Key_Tab);
      left = !desk.view().panel()->isAncestorOf(desk.focus());
    }
    EXPECT_TRUE(left);
    desk.key(Qt::Key_Escape);
    EXPECT_EQ(desk.view().panel(), nullptr);
    ASSERT_TRUE(desk.tabTo(notices));
    desk.key(key);
    ASSERT_NE(desk.view().panel(), nullptr);
    desk.key(Qt::Key_Escape);
    EXPECT_EQ(desk.view().panel(), nullptr);
    EXPECT_EQ(desk.focus(), notices) << wordsOf(desk.focus());
  }
}

}  // namespace
}  // namespace cabwright::tests
