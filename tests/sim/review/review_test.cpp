// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/review.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "reviewed_session.h"
#include "session/replay.h"
#include "session/verify.h"

namespace cabwright::review {
namespace {

using marking::Outcome;
using session::errorOf;
using testing::HasSubstr;

class ReviewTest : public testing::Test {
 protected:
  void SetUp() override { recordAndSeal(file_, kBadDeeds); }
  void add(const session::Person& by, std::vector<Content> contents) {
    addEntries(file_, by, std::move(contents), session::sampleKey(2), kUtc);
  }
  std::string refusal(const session::Person& by, const Content& content) {
    return errorOf([&] {
      add(by, {content});
      return 0;
    });
  }
  Reviewed review() { return reviewSession(session::Store(file_)); }
  const marking::SheetLine& line(const Reviewed& reviewed, const std::string& id) {
    for (const marking::SheetLine& l : reviewed.sheet.lines)
      if (l.id == id) return l;
    throw std::out_of_range(id);
  }
  Folder folder_;
  std::filesystem::path file_ = folder_ / "a.cabsession";
};

TEST_F(ReviewTest, AnOverrideCountsAndTheAutomaticVerdictStays) {
  ASSERT_FALSE(review().sheet.decision.passed);
  add(kAssessor, {Override{"gear", "", Outcome::kMet, "asked to by the instructor"}});
  const Reviewed after = review();
  EXPECT_TRUE(after.sheet.decision.passed);
  const auto& gear = line(after, "gear");
  EXPECT_EQ(gear.verdict.outcome, Outcome::kBroken);
  EXPECT_EQ(gear.outcome(), Outcome::kMet);
  EXPECT_EQ(gear.override_record->who, "R. Who");
  EXPECT_EQ(gear.override_record->when_utc, kUtc);
  EXPECT_EQ(std::get<Override>(after.entries.at(0).content).old_verdict, "broken");
}

TEST_F(ReviewTest, TheLastOverrideOfALineCountsAndBothAreKept) {
  add(kAssessor, {Override{"gear", "", Outcome::kMet, "one"}});
  add({"assessor", "S. Second"}, {Override{"gear", "", Outcome::kBroken, "two"}});
  const Reviewed after = review();
  EXPECT_FALSE(after.sheet.decision.passed);
  EXPECT_EQ(after.entries.size(), 2U);
  EXPECT_EQ(line(after, "gear").override_record->who, "S. Second");
}

TEST_F(ReviewTest, AVoidLineDoesNotCount) {
  add(kAssessor, {Override{"gear", "", std::nullopt, "a fault of the program"}});
  const Reviewed after = review();
  EXPECT_EQ(after.sheet.totals.voided, 1);
  EXPECT_TRUE(after.sheet.decision.passed);
}

TEST_F(ReviewTest, WhatWasRecordedStaysAsItWasAndTheSealWhole) {
  const auto before = session::readAll(file_);
  const auto closing = session::Store(file_).closing();
  const auto seal = session::Store(file_).seal();
  add(kTrainee, {SelfRating{2, "forgot the gear"}});
  add(kTrainee, {ScoreShown{}});
  add(kAssessor, {Override{"gear", "", Outcome::kMet, "x"}, Rating{"planning", 3, "slow"},
                  Comment{"", 200, "here"}, Decision{Result::kPassed, "as overridden", ""},
                  SignOff{"I have seen all of it"}});
  const auto after = session::readAll(file_);
  ASSERT_EQ(after.size(), before.size());
  for (std::size_t i = 0; i < after.size(); ++i) EXPECT_TRUE(session::same(after[i], before[i]));
  EXPECT_EQ(session::Store(file_).closing(), closing);
  EXPECT_EQ(session::Store(file_).seal(), seal);
  const session::Verification found = session::verifySession(file_);
  EXPECT_EQ(found.standing, session::Standing::kWhole);
  EXPECT_EQ(found.review.size(), 7U);
  EXPECT_EQ(found.review.back().kind, "signature");
  EXPECT_FALSE(session::replay(session::Store(file_)).difference);
  EXPECT_EQ(session::markAgain(session::Store(file_)).as_recorded, true);
}

TEST_F(ReviewTest, ATraineeRatesHimselfBeforeTheScoreIsSeenAndOnce) {
  EXPECT_THAT(refusal(kAssessor, SelfRating{3, ""}), HasSubstr("by the trainee"));
  EXPECT_THAT(refusal(kTrainee, SelfRating{9, ""}), HasSubstr("from 1 to 5"));
  EXPECT_EQ(refusal(kTrainee, SelfRating{3, ""}), "");
  EXPECT_THAT(refusal(kTrainee, SelfRating{4, ""}), HasSubstr("already"));
}

TEST_F(ReviewTest, ATraineeDoesNotRateHimselfAfterwards) {
  add(kAssessor, {ScoreShown{}});
  EXPECT_THAT(refusal(kTrainee, SelfRating{3, ""}), HasSubstr("before the score is seen"));
}

TEST_F(ReviewTest, WhatAnEntryNeedsIsAskedFor) {
  EXPECT_THAT(refusal(kAssessor, Override{"gear", "", Outcome::kMet, " "}), HasSubstr("a reason"));
  EXPECT_THAT(refusal(kAssessor, Override{"none", "", Outcome::kMet, "x"}), HasSubstr("no line"));
  EXPECT_THAT(refusal(kTrainee, Override{"gear", "", Outcome::kMet, "x"}), HasSubstr("assessor"));
  EXPECT_THAT(refusal(kAssessor, Decision{Result::kPassed, "", ""}), HasSubstr("needs a reason"));
  EXPECT_THAT(refusal(kAssessor, SignOff{"x"}), HasSubstr("decides before signing"));
  EXPECT_THAT(refusal({"assessor", ""}, Comment{"", std::nullopt, "x"}), HasSubstr("who made it"));
  EXPECT_THAT(refusal(kAssessor, Comment{"", std::nullopt, std::string(20'000, 'x')}),
              HasSubstr("too long"));
  EXPECT_THAT(refusal(kAssessor, Unknown{"omen"}), HasSubstr("no known kind"));
  EXPECT_TRUE(review().entries.empty());
}

TEST_F(ReviewTest, AllOrNoneIsAdded) {
  EXPECT_NE(errorOf([&] {
              add(kAssessor, {Comment{"", std::nullopt, "good"}, SignOff{"x"}});
              return 0;
            }),
            "");
  EXPECT_TRUE(review().entries.empty());
}

TEST_F(ReviewTest, NothingIsAddedToASessionWithoutASealOrAltered) {
  session::record(folder_ / "open.cabsession", kBadDeeds);
  EXPECT_THAT(errorOf([&] {
                addEntries(folder_ / "open.cabsession", kAssessor, {Comment{"", std::nullopt, "x"}},
                           session::sampleKey(), kUtc);
                return 0;
              }),
              HasSubstr("is not sealed"));
  std::string bytes = session::slurp(file_);
  bytes[bytes.size() / 2] ^= 1;
  session::spill(file_, bytes);
  EXPECT_NE(refusal(kAssessor, Comment{"", std::nullopt, "x"}), "");
  EXPECT_EQ(session::slurp(file_), bytes);
}

TEST_F(ReviewTest, TheSamePersonIsOneRowAndAnotherOfThatNameToo) {
  add(kAssessor, {Comment{"", std::nullopt, "one"}});
  add(kAssessor, {Comment{"", std::nullopt, "two"}});
  add(kTrainee, {Comment{"", std::nullopt, "three"}});
  const auto entries = review().entries;
  EXPECT_EQ(entries[0].person, entries[1].person);
  EXPECT_EQ(entries[2].person, 1);  // who took part
}

}  // namespace
}  // namespace cabwright::review
