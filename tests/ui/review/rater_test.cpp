// SPDX-License-Identifier: GPL-3.0-or-later
// A second assessor: marks blind, hands in, and is compared; the figures against the published
// example.
#include <QTextBrowser>

#include "marks_rig.h"
#include "review_room/rater_model.h"

namespace cabwright::review_room {
namespace {

using marking::Outcome;
using testing::HasSubstr;
using testing::Not;
using Rater2 = MarksRig;

TEST_F(Rater2, MarksBlindHandsInAndIsCompared) {
  openAssessment();
  press("self_second");
  type("sign_on_name", "S. Second");
  press("sign_on_do");
  ASSERT_EQ(page_->mode(), MarksPage::Mode::kBlind);
  EXPECT_TRUE(page_->hidesMarks());
  const std::string words = visibleWords().toStdString();
  for (const char* told : {"passed", "Passed", "points", "0:00:02", "margin", "one broken fails"})
    EXPECT_THAT(words, Not(HasSubstr(told)));
  const auto& rows = page_->blind().list().rows();
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[0].rule, "pawl") << "as the scenario has them, not as they came out";
  EXPECT_FALSE(rows[1].tick);
  press("blind_do");
  EXPECT_THAT(said("blind_do").toStdString(), HasSubstr("No line has been marked"));
  press("blind_as0");
  EXPECT_EQ(page_->blind().list().selected(), "gear") << "on to the next";
  QTest::keyClick(&page_->blind().list(), Qt::Key_1);
  EXPECT_TRUE(opened_->entries().empty()) << "kept until it is handed in";
  clickRow(page_->blind().list(), "gear");
  EXPECT_TRUE(find<QAbstractButton>("blind_as0")->isChecked());
  press("blind_as1");
  press("blind_do");
  const auto marks = added<review::BlindMark>();
  ASSERT_EQ(marks.size(), 2U);
  EXPECT_EQ(marks[0], (review::BlindMark{"pawl", Outcome::kMet}));
  EXPECT_EQ(marks[1], (review::BlindMark{"gear", Outcome::kBroken}));
  EXPECT_EQ(page_->mode(), MarksPage::Mode::kSelfRating) << "the trainee has not rated it yet";
  press("self3");
  press("self_do");
  press("tab2");
  EXPECT_EQ(page_->raters().view().alike, 2);
  EXPECT_THAT(find<QTextBrowser>("agreement")->toPlainText().toStdString(),
              HasSubstr("2 of 2 lines, po 1.00"));
}

TEST_F(Rater2, WhoHasSeenTheMarksCannotMarkThemBlind) {
  openPractice();
  press("sign_on");
  type("sign_on_name", "R. Who");
  press("sign_on_do");
  press("tab2");
  press("second");
  press("sign_on_do");
  EXPECT_THAT(said("sign_on_do").toStdString(), HasSubstr("has seen these marks"));
  find<QLineEdit>("sign_on_name")->clear();
  type("sign_on_name", "S. Second");
  press("sign_on_do");
  EXPECT_EQ(page_->mode(), MarksPage::Mode::kBlind);
  press("blind_do_leave");
  EXPECT_EQ(page_->mode(), MarksPage::Mode::kOpen);
  press("tab2");
  press("second");
  press("sign_on_do");
  EXPECT_THAT(said("sign_on_do").toStdString(), HasSubstr("has seen these marks"))
      << "left it, and saw them";
}

TEST_F(Rater2, WhoHasAddedAnythingAsAssessorCannotEither) {
  openPractice();
  signOn();
  ASSERT_EQ(opened_->add({review::Rating{"planning", 3, ""}}), std::nullopt);
  open();
  press("tab2");
  press("second");
  type("sign_on_name", "R. Who");
  press("sign_on_do");
  EXPECT_THAT(said("sign_on_do").toStdString(), HasSubstr("has seen these marks"));
}

// Fifty items: both yes 20, only the first yes 5, only the second yes 10, both no 15.
struct Fifty {
  marking::MarkSheet sheet;
  std::vector<review::Entry> entries;
  Fifty() {
    add(20, Outcome::kMet, Outcome::kMet);
    add(5, Outcome::kMet, Outcome::kBroken);
    add(10, Outcome::kBroken, Outcome::kMet);
    add(15, Outcome::kBroken, Outcome::kBroken);
  }
  void add(int count, Outcome first, Outcome second) {
    for (int k = 0; k < count; ++k) {
      marking::SheetLine line;
      line.number = static_cast<int>(sheet.lines.size()) + 1;
      line.id = "rule" + std::to_string(line.number);
      line.title = "Rule " + std::to_string(line.number);
      line.verdict.outcome = first;
      entries.push_back({line.number,
                         review::kUtc,
                         {"assessor", "S. Second"},
                         9,
                         {},
                         review::BlindMark{line.id, second}});
      sheet.lines.push_back(line);
    }
  }
};

TEST(RaterView, ShowsThePublishedExample) {
  const Fifty fifty;
  const RaterView view = makeRaterView(fifty.sheet, fifty.entries, 9);
  EXPECT_EQ(view.marks.count, 50);
  EXPECT_EQ(view.alike, 35);
  EXPECT_NEAR(view.marks.plain, 0.70, 1e-12);
  EXPECT_NEAR(*view.marks.kappa, 0.40, 1e-12);
  EXPECT_EQ(kappaText(view.marks), "0.40, standard error 0.13, 95 % interval 0.15 to 0.65");
  const after::SheetLook look;
  const std::string html = toHtml(makeRaterFacts(view, "S. Second"), look).toStdString();
  EXPECT_THAT(html, HasSubstr("35 of 50 lines, po 0.70"));
  EXPECT_THAT(html, HasSubstr("sheet: met; S. Second: broken"));
}

TEST(RaterView, WarnsWhereNearlyAllMarksAreTheSame) {
  Fifty rare;
  rare.sheet.lines.clear();
  rare.entries.clear();
  rare.add(85, Outcome::kMet, Outcome::kMet);
  rare.add(5, Outcome::kMet, Outcome::kBroken);
  rare.add(5, Outcome::kBroken, Outcome::kMet);
  rare.add(5, Outcome::kBroken, Outcome::kBroken);
  const RaterView view = makeRaterView(rare.sheet, rare.entries, 9);
  EXPECT_NEAR(view.marks.plain, 0.90, 1e-12);
  EXPECT_NEAR(*view.marks.kappa, 0.44, 5e-3);
  EXPECT_THAT(kappaNotes(view).join(' ').toStdString(), HasSubstr("Nearly all lines"));
  EXPECT_THAT(kappaNotes(makeRaterView(Fifty().sheet, Fifty().entries, 9)).join(' ').toStdString(),
              Not(HasSubstr("Nearly all lines")));
}

TEST(RaterView, SaysWhyThereIsNoKappa) {
  EXPECT_THAT(kappaText({}).toStdString(), HasSubstr("nothing was marked by both"));
  review::Agreement same;
  same.count = 9;
  same.plain = same.chance = 1;
  EXPECT_THAT(kappaText(same).toStdString(), HasSubstr("one and the same mark"));
}

TEST(RaterView, LinesThatWereLeftOutAreCountedAndNotCompared) {
  Fifty fifty;
  fifty.entries.resize(40);
  const RaterView view = makeRaterView(fifty.sheet, fifty.entries, 9);
  EXPECT_EQ(view.marks.count, 40);
  EXPECT_EQ(view.unmarked, 10);
  EXPECT_EQ(findRaters(fifty.entries), (std::vector<Rater>{{9, "S. Second"}}));
}

}  // namespace
}  // namespace cabwright::review_room
