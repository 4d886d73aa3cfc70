// SPDX-License-Identifier: GPL-3.0-or-later
// The shelf by mouse and keys: found, filtered, sorted, opened, marked again.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QClipboard>
#include <QHeaderView>
#include <QSignalSpy>

#include "session/erase.h"
#include "shelf_rig.h"

namespace cabwright::tests {
namespace {

using review::ShelfOutcome;
using review_room::ShelfColumn;
using testing::HasSubstr;

class ShelfPageTest : public testing::Test {
 protected:
  ShelfPageTest() {
    putSession(rig_.own / "good.cabsession", "07", true);
    putSession(rig_.own / "bad.cabsession", "12", false);
    session::record(rig_.own / "cut.cabsession", session::kGoodDeeds, 915, false, "07");
    session::spill(rig_.own / "torn.cabsession",
                   session::slurp(rig_.own / "good.cabsession").substr(0, 9000));
  }
  [[nodiscard]] QString cell(const std::string& name, ShelfColumn column) {
    const int row = rig_.page.model().findShown(rig_.path(name));
    return row < 0 ? QStringLiteral("not there") : rig_.page.model().row(row).cell(column);
  }
  [[nodiscard]] int shown() { return rig_.page.model().rowCount(); }
  template <typename Widget>
  Widget* named(const QString& accessible) {
    for (Widget* widget : rig_.page.findChildren<Widget*>())
      if (widget->accessibleName() == accessible) return widget;
    return nullptr;
  }
  ShelfRig rig_;
};

TEST_F(ShelfPageTest, ShowsWhatStandsOnEachFileAndABrokenOneSpoilsNothing) {
  rig_.open();
  ASSERT_EQ(shown(), 4);
  EXPECT_EQ(cell("good.cabsession", ShelfColumn::kTrainee), "07, P. Example");
  EXPECT_EQ(cell("good.cabsession", ShelfColumn::kOutcome), "passed, 60");
  EXPECT_EQ(cell("good.cabsession", ShelfColumn::kLength), "0:00:09");
  EXPECT_THAT(cell("bad.cabsession", ShelfColumn::kOutcome).toStdString(), HasSubstr("not passed"));
  EXPECT_EQ(cell("cut.cabsession", ShelfColumn::kOutcome), "cut off");
  EXPECT_EQ(cell("torn.cabsession", ShelfColumn::kOutcome), "cannot be read");
  ASSERT_TRUE(rig_.click("torn.cabsession"));
  QSignalSpy opened(&rig_.page, &review_room::ShelfPage::openAsked);
  QTest::keyClick(rig_.table(), Qt::Key_Return);
  EXPECT_EQ(opened.size(), 0);
}

TEST_F(ShelfPageTest, OpensByEnterDoubleClickAndButton) {
  rig_.open();
  QSignalSpy opened(&rig_.page, &review_room::ShelfPage::openAsked);
  ASSERT_TRUE(rig_.click("good.cabsession"));
  QTest::keyClick(rig_.table(), Qt::Key_Return);
  const QModelIndex at =
      rig_.page.model().index(rig_.page.model().findShown(rig_.path("bad.cabsession")), 0);
  QTest::mouseClick(rig_.table()->viewport(), Qt::LeftButton, {},
                    rig_.table()->visualRect(at).center());
  QTest::mouseDClick(rig_.table()->viewport(), Qt::LeftButton, {},
                     rig_.table()->visualRect(at).center());
  QTest::mouseClick(rig_.button("open"), Qt::LeftButton);
  ASSERT_EQ(opened.size(), 3);
  EXPECT_EQ(opened[0][0].toString(), rig_.path("good.cabsession"));
  EXPECT_EQ(opened[1][0].toString(), rig_.path("bad.cabsession"));
  EXPECT_EQ(opened[2][0].toString(), rig_.path("bad.cabsession"));
}

TEST_F(ShelfPageTest, TheSessionThatIsRecordedIsNotLookedInto) {
  rig_.open();
  // By another path to the same file.
  std::filesystem::create_directory_symlink(rig_.own, rig_.folder / "link");
  rig_.page.setRunning(QString::fromStdString((rig_.folder / "link/cut.cabsession").string()));
  QSignalSpy opened(&rig_.page, &review_room::ShelfPage::openAsked);
  ASSERT_TRUE(rig_.click("cut.cabsession"));
  QTest::keyClick(rig_.table(), Qt::Key_Return);
  EXPECT_EQ(opened.size(), 0);
  const int row = rig_.page.model().findShown(rig_.path("cut.cabsession"));
  EXPECT_EQ(rig_.page.model().index(row, static_cast<int>(ShelfColumn::kOutcome)).data().toString(),
            "being recorded");
  rig_.page.setRunning({});
  QTest::keyClick(rig_.table(), Qt::Key_Return);
  EXPECT_EQ(opened.size(), 1);
}

TEST_F(ShelfPageTest, FiltersByTraineeOutcomeDayAndWords) {
  rig_.open();
  auto* trainee = named<QComboBox>("Trainee");
  ASSERT_EQ(trainee->count(), 3);
  trainee->setFocus();
  QTest::keyClick(trainee, Qt::Key_Down);
  EXPECT_EQ(shown(), 2);
  auto* outcome = named<QComboBox>("Outcome");
  outcome->setFocus();
  QTest::keyClick(outcome, Qt::Key_Down);
  EXPECT_EQ(shown(), 1);
  EXPECT_NE(rig_.page.model().findShown(rig_.path("good.cabsession")), -1);
  QTest::mouseClick(rig_.button("clear"), Qt::LeftButton);
  EXPECT_EQ(shown(), 4);
  auto* search = named<QLineEdit>("Search");
  QTest::keyClick(&rig_.page, Qt::Key_F, Qt::ControlModifier);
  EXPECT_TRUE(search->hasFocus());
  QTest::keyClicks(search, "HANDBRAKE p. 12,");
  QTest::keyClick(search, Qt::Key_Return);
  EXPECT_EQ(shown(), 1);
  search->clear();
  QTest::keyClicks(search, "zebra");
  EXPECT_TRUE(waitFor([this] { return shown() == 0; }));
  QTest::mouseClick(rig_.button("clear"), Qt::LeftButton);
  auto *from = named<QLineEdit>("From day"), *to = named<QLineEdit>("To day");
  QTest::keyClicks(from, "2000-01-01");
  EXPECT_EQ(shown(), 3);  // one that cannot be read has no day
  QTest::keyClicks(to, "2000-01-31");
  EXPECT_EQ(shown(), 0);
  to->clear();
  QTest::keyClicks(to, "31 of June");
  EXPECT_EQ(shown(), 3);
}

TEST_F(ShelfPageTest, SortsByTheHeadOfAColumn) {
  rig_.open();
  QHeaderView* head = rig_.table()->horizontalHeader();
  const auto click = [&](ShelfColumn column) {
    const int section = static_cast<int>(column);
    QTest::mouseClick(head->viewport(), Qt::LeftButton, {},
                      {head->sectionViewportPosition(section) + 10, head->height() / 2});
  };
  const auto first = [&] { return rig_.page.model().row(0).cell(ShelfColumn::kFile); };
  click(ShelfColumn::kFile);
  const QString a = first();
  click(ShelfColumn::kFile);
  const QString b = first();
  EXPECT_EQ(QSet<QString>({a, b}), QSet<QString>({"bad.cabsession", "torn.cabsession"}));
  rig_.click("good.cabsession");
  click(ShelfColumn::kOutcome);
  EXPECT_EQ(rig_.table()->chosenRows().size(), 1U);
  EXPECT_EQ(rig_.page.model().row(rig_.table()->chosenRows()[0]).cell(ShelfColumn::kFile),
            "good.cabsession");
}

TEST_F(ShelfPageTest, NewFilesAppearOnReloadAndTheChosenOneStays) {
  rig_.open();
  ASSERT_TRUE(rig_.click("bad.cabsession"));
  putSession(rig_.own / "new.cabsession", "3", true);
  EXPECT_EQ(shown(), 4);
  rig_.reload();
  EXPECT_EQ(shown(), 5);
  ASSERT_EQ(rig_.table()->chosenRows().size(), 1U);
  EXPECT_EQ(rig_.page.model().row(rig_.table()->chosenRows()[0]).cell(ShelfColumn::kFile),
            "bad.cabsession");
}

TEST_F(ShelfPageTest, ErasingTheNameLeavesTheNumber) {
  rig_.open();
  session::erasePeople(rig_.own / "good.cabsession", session::sampleKey());
  rig_.reload();
  EXPECT_EQ(cell("good.cabsession", ShelfColumn::kTrainee), "07");
  // Still one trainee: the one whose name stands in the other file.
  EXPECT_EQ(named<QComboBox>("Trainee")->count(), 3);
}

TEST_F(ShelfPageTest, CopiesThePaths) {
  rig_.open();
  ASSERT_TRUE(rig_.click("good.cabsession"));
  QTest::keyClick(rig_.table(), Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QGuiApplication::clipboard()->text(), rig_.path("good.cabsession"));
  rig_.table()->selectAll();
  QTest::mouseClick(rig_.button("copy"), Qt::LeftButton);
  EXPECT_EQ(QGuiApplication::clipboard()->text().count('\n'), 3);
}

TEST_F(ShelfPageTest, MarksAgainAndSaysWhatDiffers) {
  // The mark sheet as a program with other marking would have left it: sealed by nobody.
  rig_.open();
  rig_.table()->selectAll();
  QTest::mouseClick(rig_.button("mark"), Qt::LeftButton);
  rig_.settle();
  auto* panel = rig_.page.sessions()->marking();
  ASSERT_TRUE(panel->isVisible());
  const QString said = panel->findChild<QLabel*>("heading")->text();
  EXPECT_EQ(said, QString::fromUtf8("Marked again: 4 session(s) · 2 as recorded · 1 cut off, with "
                                    "nothing to compare · 1 cannot be marked"));
  EXPECT_EQ(panel->findChild<QListWidget*>()->count(), 1);
  QTest::keyClick(panel, Qt::Key_Escape);
  EXPECT_FALSE(panel->isVisible());
}

TEST_F(ShelfPageTest, FoldersArePutOnAndTakenOffAndRemembered) {
  const auto other = rig_.folder / "other";
  std::filesystem::create_directory(other);
  putSession(other / "x.cabsession", "3", true);
  rig_.open();
  QTest::mouseClick(rig_.button("folders"), Qt::LeftButton);
  auto* path = named<QLineEdit>("Another folder");
  ASSERT_TRUE(path->isVisible());
  QTest::keyClicks(path, QString::fromStdString((rig_.folder / "none").string()));
  QTest::keyClick(path, Qt::Key_Return);
  EXPECT_TRUE(rig_.page.folders()->others().isEmpty());
  path->clear();
  QTest::keyClicks(path, QString::fromStdString(other.string()));
  QTest::keyClick(path, Qt::Key_Return);
  rig_.settle();
  EXPECT_EQ(shown(), 5);
  {
    review_room::ShelfPage again(nullptr);
    again.setSettings(rig_.settings);
    EXPECT_EQ(again.folders()->others(), QStringList(QString::fromStdString(other.string())));
  }
  auto* list = rig_.page.folders()->findChild<QListWidget*>();
  EXPECT_FALSE(rig_.button("take-off")->isEnabled());  // the program's own one stays
  list->setCurrentRow(1);
  QTest::mouseClick(rig_.button("take-off"), Qt::LeftButton);
  rig_.settle();
  EXPECT_EQ(shown(), 4);
  QTest::keyClick(path, Qt::Key_Escape);
  EXPECT_FALSE(rig_.page.folders()->isVisible());
}

TEST_F(ShelfPageTest, CanBeStoppedAndLookedAtAgain) {
  for (int k = 0; k < 400; ++k)
    std::filesystem::copy_file(rig_.own / "good.cabsession",
                               rig_.own / (std::to_string(k) + ".cabsession"));
  rig_.page.show();
  rig_.page.loader().giveUp();
  QApplication::processEvents();
  EXPECT_FALSE(rig_.page.loader().isBusy());
  EXPECT_EQ(shown(), 0);
  rig_.reload();
  EXPECT_EQ(shown(), 404);
}

TEST_F(ShelfPageTest, AnEmptyShelfSaysSo) {
  for (const char* name : {"good", "bad", "cut", "torn"})
    std::filesystem::remove(rig_.own / (std::string(name) + ".cabsession"));
  rig_.open();
  EXPECT_EQ(shown(), 0);
  QTest::keyClick(rig_.table(), Qt::Key_Return);
  EXPECT_FALSE(rig_.button("open")->isEnabled());
}

}  // namespace
}  // namespace cabwright::tests
