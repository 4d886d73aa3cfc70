// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet: what it says, filters, the line at the cursor, overrides and comments by hand.
#include <QSignalSpy>
#include <QTextBrowser>

#include "marks_rig.h"
#include "review_room/marks_facts.h"
#include "review_room/marks_rows.h"
#include "session/store.h"

namespace cabwright::review_room {
namespace {

using marking::Outcome;
using testing::HasSubstr;
using Marks = MarksRig;

TEST_F(Marks, LinesSayWhatTheSheetSays) {
  openPractice();
  const auto& rows = page_->lines().list().rows();
  ASSERT_EQ(rows.size(), 4U);  // two headings
  EXPECT_TRUE(rows[0].rule.empty());
  EXPECT_EQ(rows[1].rule, "gear");
  EXPECT_EQ(rows[1].verdict, "broken");
  EXPECT_TRUE(rows[1].critical);
  EXPECT_EQ(rows[1].tick, 200);
  EXPECT_EQ(rows[3].rule, "pawl");
  EXPECT_EQ(rows[3].verdict, "met");
  EXPECT_EQ(rows[3].points, "2 of 2");
  EXPECT_THAT(find<QLabel>("result")->text().toStdString(), HasSubstr("Not passed"));
}

TEST_F(Marks, FiltersLeaveOnlyTheirLines) {
  openPractice();
  press("filter1");
  EXPECT_EQ(page_->lines().list().rows().size(), 2U);
  EXPECT_EQ(page_->lines().list().rows()[1].rule, "gear");
  press("filter3");
  EXPECT_TRUE(page_->lines().list().rows().empty());
  EXPECT_THAT(find<QTextBrowser>("line_detail")->toPlainText().toStdString(),
              HasSubstr("No line of the sheet"));
  EXPECT_EQ(find<QAbstractButton>("filter3")->text(), "Overridden 0");
  press("filter0");
  EXPECT_EQ(page_->lines().list().rows().size(), 4U);
}

TEST_F(Marks, TheSelectedRowAndTheCursorAreOneThing) {
  openPractice();
  MarksList& list = page_->lines().list();
  EXPECT_EQ(list.selected(), "") << "nothing had fallen yet";
  clickRow(list, "pawl");
  EXPECT_EQ(opened_->cursor(), 253);
  EXPECT_EQ(list.selected(), "pawl");
  opened_->setCursor(240);
  EXPECT_EQ(list.selected(), "gear");
  opened_->setCursor(199);
  EXPECT_EQ(list.selected(), "");
  list.setFocus();
  clickRow(list, "gear");
  EXPECT_EQ(opened_->cursor(), 200);
  QTest::keyClick(&list, Qt::Key_Down);
  EXPECT_EQ(list.selected(), "pawl") << "past the heading";
  EXPECT_EQ(opened_->cursor(), 253);
  opened_->setCursor(900);
  const QSignalSpy asked(page_.get(), &MarksPage::jumpAsked);
  QTest::keyClick(&list, Qt::Key_Return);
  EXPECT_EQ(asked.count(), 1);
  EXPECT_EQ(opened_->cursor(), 253);
}

TEST_F(Marks, ALineIsOverriddenByHandAndBothStay) {
  openPractice();
  clickRow(page_->lines().list(), "gear");
  press("override");
  ASSERT_TRUE(find<QWidget>("sign_on_name")->isVisible()) << "nobody has signed on";
  type("sign_on_name", "R. Who");
  press("sign_on_do");
  ASSERT_TRUE(opened_->signer());
  press("override_do");
  EXPECT_THAT(said("override_do").toStdString(), HasSubstr("counts as"));
  press("override_as1");
  type("override_reason", "no reason at all");
  press("override_do");
  EXPECT_THAT(said("override_do").toStdString(), HasSubstr("already"));
  press("override_as0");
  find<QPlainTextEdit>("override_reason")->clear();
  press("override_do");
  EXPECT_THAT(said("override_do").toStdString(), HasSubstr("needs a reason"));
  EXPECT_TRUE(opened_->entries().empty());
  type("override_reason", "asked to by the instructor");
  press("override_do");
  const auto overrides = added<review::Override>();
  ASSERT_EQ(overrides.size(), 1U);
  EXPECT_EQ(overrides[0].rule, "gear");
  EXPECT_EQ(overrides[0].old_verdict, "broken");
  EXPECT_EQ(overrides[0].outcome, Outcome::kMet);
  EXPECT_EQ(opened_->verification().standing, session::Standing::kWhole);
  const MarkRow& row = page_->lines().list().rows()[1];
  EXPECT_EQ(row.was, "broken");
  EXPECT_EQ(row.verdict, "met");
  EXPECT_THAT(find<QTextBrowser>("line_detail")->toPlainText().toStdString(),
              HasSubstr("asked to by the instructor"));
  EXPECT_THAT(find<QLabel>("result")->text().toStdString(), HasSubstr("with overrides"));
}

TEST_F(Marks, WithoutALineTheOverrideAsksForOne) {
  openPractice();
  signOn();
  press("override");
  EXPECT_THAT(find<QTextBrowser>("line_detail")->toPlainText().toStdString(),
              HasSubstr("Choose the line"));
  EXPECT_TRUE(find<QTextBrowser>("line_detail")->isVisible());
}

TEST_F(Marks, ALineIsMadeVoid) {
  openPractice();
  signOn();
  clickRow(page_->lines().list(), "gear");
  press("override");
  press("override_as3");
  type("override_reason", "the gear stuck");
  press("override_do");
  ASSERT_EQ(added<review::Override>().size(), 1U);
  EXPECT_FALSE(added<review::Override>()[0].outcome);
  EXPECT_EQ(page_->lines().list().rows()[1].verdict, "void");
  EXPECT_TRUE(opened_->sheet().decision.passed);
}

TEST_F(Marks, AnOverrideByTheTraineeIsRefused) {
  openPractice();
  signOn(review::kTrainee);
  clickRow(page_->lines().list(), "gear");
  press("override");
  press("override_as0");
  type("override_reason", "I think so");
  press("override_do");
  EXPECT_EQ(said("override_do"), "An override is for an assessor.");
  EXPECT_TRUE(opened_->entries().empty());
}

// Before anybody has written a reason that cannot be kept.
TEST_F(Marks, ToASessionThatIsNotSealedNothingIsAddedAndThatIsSaidAtOnce) {
  session::record(file_, review::kBadDeeds);
  open();
  clickRow(page_->lines().list(), "gear");
  for (const char* act : {"override", "remark", "sign"}) {
    press(act);
    EXPECT_EQ(find<QLabel>("signer")->text(), "Not sealed: nothing can be added to it.") << act;
    EXPECT_FALSE(find<QWidget>("override_do")->isVisible());
    EXPECT_FALSE(find<QWidget>("remark_do")->isVisible());
  }
}

TEST_F(Marks, CommentsStandOnALineOrAtTheCursor) {
  openPractice();
  signOn();
  clickRow(page_->lines().list(), "pawl");
  press("remark");
  press("remark_do");
  EXPECT_EQ(said("remark_do"), "A comment says something.");
  type("remark_text", "well done");
  press("remark_do");
  opened_->setCursor(700);
  press("remark");
  press("remark_on1");
  opened_->setCursor(710);
  type("remark_text", "slow here");
  QTest::keyClick(find<QPlainTextEdit>("remark_text"), Qt::Key_Return, Qt::ControlModifier);
  const auto comments = added<review::Comment>();
  ASSERT_EQ(comments.size(), 2U);
  EXPECT_EQ(comments[0], (review::Comment{"pawl", std::nullopt, "well done"}));
  EXPECT_EQ(comments[1], (review::Comment{"", 710, "slow here"}));
  EXPECT_TRUE(page_->lines().list().rows()[3].commented);
}

TEST_F(Marks, EverythingGoesByKeysAlone) {
  openPractice();
  signOn();
  MarksList& list = page_->lines().list();
  list.setFocus();
  QTest::keyClick(&list, Qt::Key_Down);
  QTest::keyClick(&list, Qt::Key_Home);
  ASSERT_EQ(list.selected(), "gear");
  QTest::keyClick(&list, Qt::Key_O);
  QWidget* at = QApplication::focusWidget();
  ASSERT_NE(at, nullptr);
  EXPECT_EQ(at->objectName(), "override_as0");
  QTest::keyClick(at, Qt::Key_Space);
  while (QApplication::focusWidget()->objectName() != QLatin1String("override_reason"))
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  QTest::keyClicks(QApplication::focusWidget(), "Of course: so it was");
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  ASSERT_EQ(added<review::Override>().size(), 1U) << said("override_do").toStdString();
  EXPECT_EQ(added<review::Override>()[0].reason, "Of course: so it was")
      << "letters that are keys elsewhere are letters here";
  EXPECT_EQ(QApplication::focusWidget(), &list);
  QTest::keyClick(&list, Qt::Key_C);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
  EXPECT_EQ(QApplication::focusWidget(), &list);
}

TEST_F(Marks, TheRecordHoldsWhatIdentifiesTheSession) {
  openPractice();
  press("tab4");
  const std::string words = find<QTextBrowser>("record")->toPlainText().toStdString();
  for (const std::string& what :
       {opened_->sheet().head.session_id, opened_->sheet().head.scenario_hash,
        fileDigest(file_).toStdString(), std::string("sealed"), std::string("not signed yet"),
        std::string("P. Example"), std::string("vacuum.train_pipe_leak"), std::string("0.1.0")})
    EXPECT_THAT(words, HasSubstr(what));
}

TEST_F(Marks, EveryButtonAndFieldHasAName) {
  openPractice();
  for (const QWidget* widget : page_->findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus) continue;
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    const bool named =
        !widget->accessibleName().isEmpty() || (button != nullptr && !button->text().isEmpty());
    EXPECT_TRUE(named) << widget->metaObject()->className() << " "
                       << widget->objectName().toStdString();
  }
}

TEST(MarkRows, TheRowAtAMomentIsTheLastThatFell) {
  std::vector<MarkRow> rows(4);
  rows[0].title = "heading";
  const char* ids[]{"", "a", "b", "c"};
  for (std::size_t k = 1; k < 4; ++k) rows[k].rule = ids[k];
  rows[1].tick = 300;
  rows[2].tick = 100;
  rows[3].tick = 300;
  EXPECT_EQ(findRowAt(rows, 99, ""), "");
  EXPECT_EQ(findRowAt(rows, 100, ""), "b");
  EXPECT_EQ(findRowAt(rows, 299, "c"), "b");
  EXPECT_EQ(findRowAt(rows, 300, ""), "a");
  EXPECT_EQ(findRowAt(rows, 900, "c"), "c");
}

TEST(MarkLinks, LeadToAMomentOrNowhere) {
  EXPECT_EQ(tickOfLink("tick:4520"), 4520);
  for (const char* bad : {"tick:", "tick:x", "4520", "http:tick:4"})
    EXPECT_EQ(tickOfLink(bad), std::nullopt);
}

}  // namespace
}  // namespace cabwright::review_room
