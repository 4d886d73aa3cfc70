// SPDX-License-Identifier: GPL-3.0-or-later
// Kappa against worked examples: fifty items of a textbook, and pairs of tables with the same plain
// agreement and another kappa.
#include "review/agreement.h"

#include <gtest/gtest.h>

#include "reviewed_session.h"

namespace cabwright::review {
namespace {

std::vector<MarkPair> table(int both_met, int first_met, int second_met, int both_broken) {
  std::vector<MarkPair> pairs;
  pairs.insert(pairs.end(), static_cast<std::size_t>(both_met), {"met", "met"});
  pairs.insert(pairs.end(), static_cast<std::size_t>(first_met), {"met", "broken"});
  pairs.insert(pairs.end(), static_cast<std::size_t>(second_met), {"broken", "met"});
  pairs.insert(pairs.end(), static_cast<std::size_t>(both_broken), {"broken", "broken"});
  return pairs;
}

TEST(Agreement, OfFiftyItems) {
  const Agreement a = calcAgreement(table(20, 5, 10, 15));
  EXPECT_EQ(a.count, 50);
  EXPECT_NEAR(a.plain, 0.70, 1e-12);
  EXPECT_NEAR(a.chance, 0.50, 1e-12);
  EXPECT_NEAR(*a.kappa, 0.40, 1e-12);
  EXPECT_NEAR(*a.standard_error, 0.130, 5e-4);
}

TEST(Agreement, TheSamePlainAgreementCanBeAnotherKappa) {
  const Agreement a = calcAgreement(table(45, 15, 25, 15));
  const Agreement b = calcAgreement(table(25, 35, 5, 35));
  EXPECT_NEAR(a.plain, 0.60, 1e-12);
  EXPECT_NEAR(b.plain, 0.60, 1e-12);
  EXPECT_NEAR(*a.kappa, 0.13, 5e-3);
  EXPECT_NEAR(*b.kappa, 0.26, 5e-3);
  const Agreement rare = calcAgreement(table(85, 5, 5, 5));
  EXPECT_NEAR(rare.plain, 0.90, 1e-12);
  EXPECT_NEAR(*rare.kappa, 0.44, 5e-3);
}

TEST(Agreement, SaysNothingWhereNothingCanBeTold) {
  EXPECT_FALSE(calcAgreement({}).kappa);
  EXPECT_FALSE(calcAgreement(table(9, 0, 0, 0)).kappa);
  EXPECT_EQ(calcAgreement(table(9, 0, 0, 0)).plain, 1);
}

// Ninety-one couples rated on four steps [A. Agresti, An Introduction to Categorical Data
// Analysis]: a table that many programs have been checked with.
TEST(Agreement, WeightedOfNinetyOneCouples) {
  const std::vector<std::vector<int>> table{
      {7, 7, 2, 3}, {2, 8, 3, 7}, {1, 5, 4, 9}, {2, 8, 9, 14}};
  std::vector<RatingPair> pairs;
  for (int i = 0; i < 4; ++i)
    for (int j = 0; j < 4; ++j)
      pairs.insert(
          pairs.end(),
          static_cast<std::size_t>(table[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)]),
          {i + 1, j + 1});
  const Agreement a = calcWeightedAgreement(pairs, 4);
  EXPECT_EQ(a.count, 91);
  EXPECT_NEAR(*a.kappa, 0.2374, 5e-5);
  EXPECT_NEAR(*a.standard_error, 0.0783, 5e-5);
}

TEST(Agreement, WeightedOnTwoStepsIsTheUnweightedOne) {
  std::vector<RatingPair> pairs(20, {1, 1});
  pairs.insert(pairs.end(), 5, {1, 2});
  pairs.insert(pairs.end(), 10, {2, 1});
  pairs.insert(pairs.end(), 15, {2, 2});
  const Agreement a = calcWeightedAgreement(pairs, 2);
  EXPECT_NEAR(a.plain, 0.70, 1e-12);
  EXPECT_NEAR(*a.kappa, 0.40, 1e-12);
}

TEST(Agreement, WeightedLeavesOutWhatIsNoStepAndSaysNothingOfOneStepAlone) {
  EXPECT_EQ(calcWeightedAgreement({{0, 3}, {6, 1}}, 5).count, 0);
  const Agreement same = calcWeightedAgreement({{4, 4}, {4, 4}}, 5);
  EXPECT_EQ(same.plain, 1);
  EXPECT_FALSE(same.kappa);
}

TEST(Agreement, PairsTheLastRatingsOfTwo) {
  const Entry first{1, kUtc, kAssessor, 3, {}, Rating{"planning", 2, ""}};
  const Entry again{2, kUtc, kAssessor, 3, {}, Rating{"planning", 4, ""}};
  const Entry alone{3, kUtc, kAssessor, 3, {}, Rating{"awareness", 5, ""}};
  const Entry second{4, kUtc, {"assessor", "S. Second"}, 4, {}, Rating{"planning", 3, ""}};
  const auto rated = pairRatings({first, again, alone, second}, 4);
  ASSERT_EQ(rated.size(), 1U);
  EXPECT_EQ(rated[0].scale, "planning");
  EXPECT_EQ(rated[0].pair.first, 4);
  EXPECT_EQ(rated[0].pair.second, 3);
}

TEST(Agreement, PairsTheSheetWithTheLastBlindMarks) {
  const Folder folder;
  recordAndSeal(folder / "a", kBadDeeds);
  const session::Person second{"assessor", "S. Second"};
  addEntries(
      folder / "a", second,
      {BlindMark{"gear", marking::Outcome::kMet}, BlindMark{"gear", marking::Outcome::kBroken},
       BlindMark{"pawl", marking::Outcome::kBroken}},
      session::sampleKey(), kUtc);
  const Reviewed reviewed = reviewSession(session::Store(folder / "a"));
  const auto pairs = pairMarks(reviewed.sheet, reviewed.entries, reviewed.entries[0].person);
  ASSERT_EQ(pairs.size(), 2U);
  EXPECT_EQ(calcAgreement(pairs).plain, 0.5);
  EXPECT_TRUE(pairMarks(reviewed.sheet, reviewed.entries, 77).empty());
}

}  // namespace
}  // namespace cabwright::review
