// SPDX-License-Identifier: GPL-3.0-or-later
// Signing on, the trainee's own rating before the marks, ratings, decision and signature, by hand.
#include <sys/stat.h>

#include <QFileInfo>
#include <QSignalSpy>

#include "marks_rig.h"
#include "review_room/rating_scales.h"
#include "session/personal_key.h"

namespace cabwright::review_room {
namespace {

using review::Result;
using testing::HasSubstr;
using testing::Not;
using Sign = MarksRig;

TEST_F(Sign, OnMakesAKeyOfOnesOwn) {
  openPractice();
  press("sign_on");
  press("sign_on_do");
  EXPECT_THAT(said("sign_on_do").toStdString(), HasSubstr("A name is needed"));
  type("sign_on_name", "P. Example");
  press("sign_on_do");
  EXPECT_THAT(said("sign_on_do").toStdString(), HasSubstr("is the trainee"));
  EXPECT_FALSE(opened_->signer());
  find<QLineEdit>("sign_on_name")->clear();
  type("sign_on_name", "R. Who");
  QTest::keyClick(find<QLineEdit>("sign_on_name"), Qt::Key_Return);
  ASSERT_TRUE(opened_->signer());
  EXPECT_EQ(*opened_->signer(), review::kAssessor);
  const auto file = session::personalKeyFile(folder_ / "keys", "R. Who");
  struct stat status {};
  ASSERT_EQ(::stat(file.c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 0777U, 0600U);
  EXPECT_EQ(opened_->signingKey()->publicKey(), session::SigningKey::load(file).publicKey());
  EXPECT_THAT(find<QLabel>("signer")->text().toStdString(), HasSubstr("R. Who, assessor"));
}

TEST_F(Sign, OnSaysWhenTheKeyCannotBeRead) {
  openPractice();
  (void)session::loadOrMakePersonalKey(folder_ / "keys", "R. Who");
  std::filesystem::permissions(session::personalKeyFile(folder_ / "keys", "R. Who"),
                               std::filesystem::perms::all);
  press("sign_on");
  type("sign_on_name", "R. Who");
  press("sign_on_do");
  EXPECT_THAT(said("sign_on_do").toStdString(), HasSubstr("give it mode 600"));
  EXPECT_FALSE(opened_->signer());
}

TEST_F(Sign, NothingOfTheMarksIsSeenBeforeTheTraineeHasRated) {
  openAssessment();
  EXPECT_TRUE(page_->hidesMarks());
  const std::string before = visibleWords().toStdString();
  for (const char* word : {"broken", "passed", "Passed", "gear", "Leave the gear alone", "points"})
    EXPECT_THAT(before, Not(HasSubstr(word)));
  QTest::keyClick(page_.get(), Qt::Key_O);
  QTest::keyClick(page_.get(), Qt::Key_S);
  EXPECT_TRUE(find<QAbstractButton>("self_do")->isVisible()) << "no key leads past it";
  press("self_do");
  EXPECT_THAT(said("self_do").toStdString(), HasSubstr("from 1 to 5"));
  const QSignalSpy hides(page_.get(), &MarksPage::hidesMarksChanged);
  press("self2");
  type("self_text", "the gear");
  press("self_do");
  ASSERT_EQ(hides.count(), 1);
  EXPECT_FALSE(page_->hidesMarks());
  ASSERT_EQ(opened_->entries().size(), 2U);
  EXPECT_EQ(added<review::SelfRating>().at(0), (review::SelfRating{2, "the gear"}));
  EXPECT_TRUE(std::holds_alternative<review::ScoreShown>(opened_->entries()[1].content));
  EXPECT_EQ(opened_->entries()[0].by, review::kTrainee);
  EXPECT_EQ(opened_->entries()[0].key,
            session::SigningKey::loadOrMake(folder_ / "keys").publicKey())
      << "the station stands for it while nobody has signed on";
  EXPECT_FALSE(opened_->signer());
  EXPECT_THAT(visibleWords().toStdString(), HasSubstr("Not passed"));
  open();
  EXPECT_FALSE(page_->hidesMarks()) << "not asked for again";
}

TEST_F(Sign, TheTraineeIsAskedForANameWhenTheRecordHasNone) {
  openAssessment({});
  press("self4");
  press("self_do");
  EXPECT_THAT(said("self_do").toStdString(), HasSubstr("name or a number"));
  type("self_name", "07");
  press("self_do");
  ASSERT_EQ(opened_->entries().size(), 2U);
  EXPECT_EQ(opened_->entries()[0].by, (session::Person{"trainee", "07"}));
}

TEST_F(Sign, AnAssessorLeavesTheSelfRatingOutAndThatIsRecorded) {
  openAssessment();
  press("self_leave_out");
  EXPECT_TRUE(page_->hidesMarks());
  type("sign_on_name", "R. Who");
  press("sign_on_do");
  EXPECT_FALSE(page_->hidesMarks());
  ASSERT_EQ(opened_->entries().size(), 1U);
  EXPECT_TRUE(std::holds_alternative<review::ScoreShown>(opened_->entries()[0].content));
  EXPECT_EQ(opened_->entries()[0].by, review::kAssessor);
}

TEST_F(Sign, WhatCannotBeAddedToIsShownAtOnce) {
  recordAssessment(file_, {review::kTrainee});
  ASSERT_TRUE(isSelfRatingDue(Opened(file_)));
  std::filesystem::permissions(file_, std::filesystem::perms::owner_read);
  const bool may_all_the_same = QFileInfo(QString::fromStdString(file_.string())).isWritable();
  EXPECT_EQ(isSelfRatingDue(Opened(file_)), may_all_the_same);
  session::record(folder_ / "b", review::kBadDeeds);
  EXPECT_FALSE(isSelfRatingDue(Opened(folder_ / "b"))) << "not sealed, and no assessment";
}

TEST_F(Sign, RatingsAreRecordedWithTheirComments) {
  openPractice();
  signOn();
  press("tab1");
  press("rating_do");
  EXPECT_THAT(said("rating_do").toStdString(), HasSubstr("Nothing has been rated"));
  press("rating_communication4");
  type("rating_communication", "spoke up");
  press("rating_planning2");
  press("rating_planning3");
  find<QAbstractButton>("rating_do")->click();  // below what is in sight
  const auto ratings = added<review::Rating>();
  ASSERT_EQ(ratings.size(), 2U);
  EXPECT_EQ(ratings[0], (review::Rating{"communication", 4, "spoke up"}));
  EXPECT_EQ(ratings[1], (review::Rating{"planning", 3, ""}));
  EXPECT_THAT(visibleWords().toStdString(), HasSubstr("Communication: 4 of 5, spoke up"));
  EXPECT_FALSE(find<QAbstractButton>("rating_planning3")->isChecked())
      << "a new rating begins anew";
}

TEST_F(Sign, EveryStepOfEveryScaleHasWords) {
  std::vector<std::string> ids;
  for (const RatingScale& scale : ratingScales()) {
    ids.emplace_back(scale.id);
    for (const char* anchor : scale.anchors) EXPECT_FALSE(ratingWord(anchor).isEmpty());
  }
  EXPECT_GE(ids.size(), 3U);
  EXPECT_LE(ids.size(), 5U);
  EXPECT_EQ(scaleTitle("elsewhere"), "elsewhere");
}

TEST_F(Sign, FromOpenToSigned) {
  openPractice();
  signOn();
  press("sign");
  ASSERT_EQ(page_->tab(), MarksPage::kDecision);
  find<QAbstractButton>("sign_do")->click();
  EXPECT_EQ(said("sign_do"), "An assessor decides before signing.");
  press("decide_do");
  EXPECT_THAT(said("decide_do").toStdString(), HasSubstr("Choose"));
  press("decide_as0");
  press("decide_do");
  EXPECT_THAT(said("decide_do").toStdString(), HasSubstr("needs a reason"));
  EXPECT_TRUE(opened_->entries().empty());
  type("decide_reason", "the gear was asked for");
  type("decide_next", "the pawl once more");
  press("decide_do");
  const auto decisions = added<review::Decision>();
  ASSERT_EQ(decisions.size(), 1U);
  EXPECT_EQ(decisions[0],
            (review::Decision{Result::kPassed, "the gear was asked for", "the pawl once more"}));
  EXPECT_THAT(find<QLabel>("result")->text().toStdString(), HasSubstr("decided by R. Who"));
  find<QAbstractButton>("sign_do")->click();
  ASSERT_EQ(added<review::SignOff>().size(), 1U);
  EXPECT_EQ(opened_->entries().back().key, session::sampleKey(2).publicKey());
  EXPECT_EQ(opened_->verification().standing, session::Standing::kWhole);
  EXPECT_THAT(visibleWords().toStdString(), HasSubstr("Signed by R. Who"));
  EXPECT_THAT(visibleWords().toStdString(), HasSubstr("signed"));
  find<QAbstractButton>("sign_seen")->click();
  ASSERT_EQ(added<review::SignOff>().size(), 2U);
  EXPECT_EQ(opened_->entries().back().by, review::kTrainee);
}

TEST_F(Sign, WhatComesAfterASignatureIsToldNotToBeCovered) {
  openPractice();
  signOn();
  ASSERT_EQ(opened_->add({review::Decision{Result::kFailed, "", ""}}), std::nullopt);
  EXPECT_THAT(signatureState(opened_->entries()).toStdString(), HasSubstr("not signed yet"));
  ASSERT_EQ(opened_->add({review::SignOff{"mine"}}), std::nullopt);
  EXPECT_THAT(signatureState(opened_->entries()).toStdString(), Not(HasSubstr("not covered")));
  ASSERT_EQ(opened_->add({review::Comment{"", std::nullopt, "late"}}), std::nullopt);
  EXPECT_THAT(signatureState(opened_->entries()).toStdString(), HasSubstr("not covered"));
}

}  // namespace
}  // namespace cabwright::review_room
