// SPDX-License-Identifier: GPL-3.0-or-later
// Choosing an exercise: by keys alone, once each, and in a window that is small.
#include <gtest/gtest.h>

#include <QLineEdit>

#include "desk.h"

namespace cabwright::tests {
namespace {

QLineEdit* boxOf(desktop::ChooseView& view, const char* name) {
  for (auto* box : view.findChildren<QLineEdit*>())
    if (box->accessibleName() == QLatin1String(name)) return box;
  return nullptr;
}

desktop::ChoiceCard* wayOf(desktop::ChooseView& view, const char* title) {
  for (auto* card : view.findChildren<desktop::ChoiceCard*>())
    if (card->words().title == QLatin1String(title)) return card;
  return nullptr;
}

// An assessment begun twice would leave a first one in the record, of no length and not passed.
TEST(Choosing, EnterBeginsOnceFromWhereverItIsPressed) {
  for (const char* from : {"Your number", "Your name", ""}) {
    SCOPED_TRACE(from);
    Desk desk;
    desktop::ChooseView& choose = *desk.window().chooseView();
    ASSERT_TRUE(choose.choose("warm-start", scenario::Mode::kAssessment));
    QSignalSpy asked(&choose, &desktop::ChooseView::startAsked);
    if (QLineEdit* box = boxOf(choose, from)) {
      box->setFocus();
      desk.type(QStringLiteral("7"));
    }
    desk.key(Qt::Key_Return);
    EXPECT_EQ(asked.count(), 1);
    ASSERT_NE(desk.window().seat(), nullptr);
    EXPECT_EQ(desk.sessions().entryList({QStringLiteral("*.cabsession")}, QDir::Files).size(), 1);
  }
}

TEST(Choosing, TabGoesAsOneReads) {
  Desk desk;
  desktop::ChooseView& choose = *desk.window().chooseView();
  ASSERT_NE(qobject_cast<desktop::ChoiceCard*>(desk.focus()), nullptr);
  QWidget* first = desk.focus();
  desk.key(Qt::Key_Tab);
  EXPECT_EQ(desk.focus(), wayOf(choose, "Guided"));
  desk.key(Qt::Key_Tab);
  EXPECT_EQ(desk.focus(), boxOf(choose, "Your number"));
  desk.key(Qt::Key_Tab);
  EXPECT_EQ(desk.focus(), boxOf(choose, "Your name"));
  desk.key(Qt::Key_Tab);
  EXPECT_EQ(qobject_cast<QPushButton*>(desk.focus()), choose.findChild<QPushButton*>());
  for (int k = 0; k < 3; ++k) desk.key(Qt::Key_Tab, Qt::ShiftModifier);
  EXPECT_EQ(desk.focus(), wayOf(choose, "Guided"));
  desk.key(Qt::Key_Tab, Qt::ShiftModifier);
  EXPECT_EQ(desk.focus(), first);
}

TEST(Choosing, NothingLiesOverAnythingElseInASmallWindow) {
  for (const QSize size : {QSize(1280, 800), QSize(1024, 560)}) {
    SCOPED_TRACE(size.height());
    Desk desk(size);
    desktop::ChooseView& choose = *desk.window().chooseView();
    desk.settle();
    QWidget* column = wayOf(choose, "Guided")->parentWidget();
    std::vector<QRect> rows;
    for (QWidget* child : column->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
      if (child->isVisible()) rows.push_back(child->geometry());
    ASSERT_GT(rows.size(), 8U);
    for (std::size_t a = 0; a < rows.size(); ++a)
      for (std::size_t b = a + 1; b < rows.size(); ++b)
        EXPECT_FALSE(rows[a].intersects(rows[b])) << a << " and " << b;
  }
}

}  // namespace
}  // namespace cabwright::tests
