// SPDX-License-Identifier: GPL-3.0-or-later
// A whole working day's beginning: the unit is prepared from cold and taken away, in assessment,
// with nothing but a mouse, and again with nothing but keys. It passes, and what was recorded is
// the same when it is run again.
#include <gtest/gtest.h>

#include <QPushButton>

#include "driver.h"
#include "session/replay.h"

namespace cabwright::tests {
namespace {

const std::string kExercise = "cold-preparation";

desktop::ChoiceCard* cardOf(desktop::ChooseView& view, const QString& title) {
  for (auto* card : view.findChildren<desktop::ChoiceCard*>())
    if (card->words().title == title && card->isVisible()) return card;
  return nullptr;
}

QString titleOf(const desktop::ChooseView& view, const std::string& exercise) {
  for (const desktop::Exercise& e : view.exercises())
    if (e.name == exercise) return e.title;
  return {};
}

QPushButton* beginButton(desktop::ChooseView& view) {
  for (auto* button : view.findChildren<QPushButton*>())
    if (button->text() == QLatin1String("Begin")) return button;
  return nullptr;
}

void chooseByMouse(Desk& desk) {
  desktop::ChooseView& choose = *desk.window().chooseView();
  ASSERT_EQ(desk.window().page(), &choose);
  auto* card = cardOf(choose, titleOf(choose, kExercise));
  ASSERT_NE(card, nullptr);
  // The list is longer than the page: to the card with the wheel.
  QWidget* sight = card->parentWidget()->parentWidget();
  const auto middle = [&] { return card->mapTo(sight, card->rect().center()); };
  for (int k = 0; k < 60 && !sight->rect().contains(middle()); ++k)
    desk.wheel(sight, middle().y() < 0 ? 1 : -1);
  ASSERT_TRUE(desk.click(card));
  ASSERT_TRUE(card->isChecked());
  ASSERT_TRUE(desk.click(cardOf(choose, QStringLiteral("Assessment"))));
  ASSERT_TRUE(desk.click(beginButton(choose)));
  ASSERT_NE(desk.window().seat(), nullptr);
}

void chooseByKeys(Desk& desk) {
  desktop::ChooseView& choose = *desk.window().chooseView();
  auto* card = cardOf(choose, titleOf(choose, kExercise));
  for (int k = 0; k < 60 && !card->isChecked(); ++k) {
    auto* now = qobject_cast<desktop::ChoiceCard*>(desk.focus());
    const bool in_list = now != nullptr && now->parentWidget() == card->parentWidget();
    desk.key(in_list ? Qt::Key_Down : Qt::Key_Tab);
  }
  ASSERT_TRUE(card->isChecked());
  auto* way = cardOf(choose, QStringLiteral("Assessment"));
  for (int k = 0; k < 20 && !way->isChecked(); ++k) {
    auto* now = qobject_cast<desktop::ChoiceCard*>(desk.focus());
    const bool among = now != nullptr && now->parentWidget() == way->parentWidget();
    desk.key(among ? Qt::Key_Down : Qt::Key_Tab);
  }
  ASSERT_TRUE(way->isChecked());
  ASSERT_TRUE(desk.tabTo(beginButton(choose)));
  desk.key(Qt::Key_Space);
  ASSERT_NE(desk.window().seat(), nullptr);
}

void endByKey(Desk& desk) {
  desk.pass(1);
  desk.key(Qt::Key_E, Qt::ControlModifier);
  ASSERT_FALSE(desk.seat().isFinished());  // of an assessment it is asked
  desk.key(Qt::Key_E, Qt::ControlModifier);
  ASSERT_TRUE(desk.seat().isFinished());
  ASSERT_EQ(desk.window().page(), desk.window().afterView());
}

std::string brokenLines(const marking::MarkSheet& sheet) {
  std::string text;
  for (const marking::SheetLine& line : sheet.lines)
    if (line.earned < line.possible) text += line.id + ": " + line.verdictText() + "\n";
  return text;
}

void expectPassedAndRecorded(Desk& desk) {
  const marking::MarkSheet sheet = desk.seat().run().sheet();
  EXPECT_TRUE(sheet.decision.passed) << sheet.decision.text;
  EXPECT_GT(sheet.totals.percent, 95) << brokenLines(sheet);
  EXPECT_EQ(desk.seat().run().recordFault(), std::nullopt);
  EXPECT_FALSE(desk.sawModal());
  const QStringList files = desk.sessions().entryList(QDir::Files);
  ASSERT_EQ(files.size(), 1);
  const session::Store store(desk.sessions().filePath(files.front()).toStdString());
  const session::Replayed again = session::replay(store);
  EXPECT_FALSE(again.difference) << again.difference->quantity << " at " << again.difference->tick;
  EXPECT_EQ(again.last_tick, desk.seat().run().tick());
  const session::Remarked marked = session::markAgain(store);
  EXPECT_TRUE(marked.complete);
  EXPECT_EQ(marked.as_recorded, true);
  EXPECT_TRUE(marked.sheet.decision.passed);
  EXPECT_EQ(marked.sheet.totals.earned, sheet.totals.earned);
}

TEST(CabDay, IsPreparedAndTakenAwayByMouse) {
  Desk desk;
  ASSERT_NO_FATAL_FAILURE(chooseByMouse(desk));
  EXPECT_TRUE(desk.seat().inAssessment());
  const auto mouse = makeMouse(desk);
  const auto fault = play(desk, *mouse, kExercise, "good");
  ASSERT_FALSE(fault) << *fault;
  ASSERT_NO_FATAL_FAILURE(endByKey(desk));
  expectPassedAndRecorded(desk);
}

TEST(CabDay, IsPreparedAndTakenAwayByKeyboard) {
  Desk desk;
  ASSERT_NO_FATAL_FAILURE(chooseByKeys(desk));
  EXPECT_TRUE(desk.seat().inAssessment());
  const auto keys = makeKeys(desk);
  const auto fault = play(desk, *keys, kExercise, "good");
  ASSERT_FALSE(fault) << *fault;
  ASSERT_NO_FATAL_FAILURE(endByKey(desk));
  expectPassedAndRecorded(desk);
}

}  // namespace
}  // namespace cabwright::tests
