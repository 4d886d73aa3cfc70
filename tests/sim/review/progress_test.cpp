// SPDX-License-Identifier: GPL-3.0-or-later
// One trainee's attempts, the learning curve against published figures, and the lines a group
// finds hard.
#include "review/progress.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "review/weak_lines.h"

namespace cabwright::review {
namespace {

using testing::ElementsAre;

LearningCurve eighty() { return {100, 0.322, 0, 1}; }

// The 80 % curve: b = .322 gives 100, 80, 70.2, 64, the 8th 51.2, the 16th 41.
TEST(LearningCurve, IsThePublishedOne) {
  const std::vector<std::pair<int, double>> published{{1, 100},  {2, 80},   {3, 70.2},
                                                      {4, 64.0}, {8, 51.2}, {16, 41.0}};
  for (const auto& [number, seconds] : published)
    EXPECT_NEAR(calcSeconds(eighty(), number), seconds, 0.05) << number;
  EXPECT_NEAR(calcDoublingShare(eighty()), 0.8, 1e-4);
}

TEST(LearningCurve, IsFoundAgainInTimesThatFollowIt) {
  std::vector<TimedAttempt> attempts;
  for (const int number : {1, 2, 3, 4, 8, 16})
    attempts.push_back({number, calcSeconds(eighty(), number)});
  const auto curve = fitLearningCurve(attempts);
  ASSERT_TRUE(curve);
  EXPECT_NEAR(curve->first_s, 100, 1e-9);
  EXPECT_NEAR(curve->exponent, 0.322, 1e-12);
  EXPECT_NEAR(curve->accounted, 1, 1e-12);
  EXPECT_EQ(curve->fitted_to, 6U);
}

// By the closed form of least squares, worked out with the C library.
TEST(LearningCurve, IsTheOneOfLeastSquares) {
  const std::vector<TimedAttempt> attempts{{1, 900}, {2, 870}, {3, 640}, {4, 700}, {5, 610}};
  double n = 0, x = 0, y = 0, xx = 0, xy = 0;
  for (const TimedAttempt& at : attempts) {
    const double lx = std::log(at.number), ly = std::log(at.seconds);
    n += 1, x += lx, y += ly, xx += lx * lx, xy += lx * ly;
  }
  const double slope = (n * xy - x * y) / (n * xx - x * x);
  const auto curve = fitLearningCurve(attempts);
  ASSERT_TRUE(curve);
  EXPECT_NEAR(curve->exponent, -slope, 1e-9);
  EXPECT_NEAR(curve->first_s, std::exp((y - slope * x) / n), 1e-6);
  EXPECT_GT(curve->accounted, 0.5);
  EXPECT_LT(curve->accounted, 1);
}

TEST(LearningCurve, NeedsFiveAttemptsThatTookTime) {
  std::vector<TimedAttempt> attempts{{1, 100}, {2, 80}, {3, 70}, {4, 64}};
  EXPECT_FALSE(fitLearningCurve(attempts));
  attempts.push_back({5, 0});
  attempts.push_back({0, 50});
  EXPECT_FALSE(fitLearningCurve(attempts));
  attempts.push_back({6, 60});
  EXPECT_TRUE(fitLearningCurve(attempts));
  EXPECT_FALSE(fitLearningCurve(std::vector<TimedAttempt>(6, TimedAttempt{3, 50})));
}

std::shared_ptr<const LineNames> names() {
  static const auto all =
      std::make_shared<const LineNames>(LineNames{{"brake", "Brake proved", true},
                                                  {"gear", "Gear in order", false},
                                                  {"horn", "Horn sounded", false}});
  return all;
}

ShelfItem item(const std::string& number, int day, const std::string& letters,
               const std::string& hash = "a") {
  ShelfItem made;
  made.number = number;
  made.scenario = "Cold morning";
  made.scenario_hash = hash;
  made.started_utc = "2031-03-0" + std::to_string(day) + "T08:00:00Z";
  made.last_tick = 60'000 - day * 1000;
  made.outcome = letters.empty() ? ShelfOutcome::kCutOff : ShelfOutcome::kPassed;
  if (!letters.empty()) made.sheet = {8, 10, 80, letters, names()};
  return made;
}

std::vector<const ShelfItem*> pointers(const std::vector<ShelfItem>& items) {
  std::vector<const ShelfItem*> all;
  for (const ShelfItem& one : items) all.push_back(&one);
  return all;
}

TEST(Progress, TellsTraineesExercisesAndVersionsApart) {
  std::vector<ShelfItem> items{item("07", 5, "mmm", "b"), item("07", 2, "Fmn"),
                               item("08", 1, "mmm"), item("07", 3, ""), item("07", 4, "mbf")};
  items[3].decision = "failed";
  items.push_back(item("07", 6, "mmm"));
  items.back().scenario = "Another";
  items.push_back(item("07", 1, ""));
  items.back().outcome = ShelfOutcome::kBroken;
  const auto versions = findAttempts(pointers(items), "07", "Cold morning");
  ASSERT_EQ(versions.size(), 2U);
  const auto& first = versions[0].attempts;
  ASSERT_EQ(first.size(), 3U);
  EXPECT_EQ(first[0].item, &items[1]);
  EXPECT_EQ(first[0].criticals_broken, 1);
  EXPECT_EQ(first[0].seconds, 580);
  EXPECT_FALSE(first[1].ended);
  EXPECT_EQ(first[2].number, 3);
  EXPECT_EQ(first[2].criticals_broken, 0);
  EXPECT_FALSE(versions[0].curve);
  EXPECT_EQ(versions[1].scenario_hash, "b");
}

TEST(Progress, FitsWhatEndedOnly) {
  std::vector<ShelfItem> items;
  for (int day = 1; day <= 6; ++day) items.push_back(item("07", day, day == 2 ? "" : "mmm"));
  const auto versions = findAttempts(pointers(items), "07", "Cold morning");
  ASSERT_TRUE(versions.at(0).curve);
  EXPECT_EQ(versions[0].curve->fitted_to, 5U);
  items[5] = item("07", 6, "");
  EXPECT_FALSE(findAttempts(pointers(items), "07", "Cold morning").at(0).curve);
}

TEST(Progress, AnAssessorsDecisionComesBeforeTheProgram) {
  ShelfItem one = item("07", 1, "mmm");
  EXPECT_TRUE(isPassed(one));
  one.decision = "not yet";
  EXPECT_FALSE(isPassed(one));
  one.outcome = ShelfOutcome::kFailed;
  one.decision = "passed";
  EXPECT_TRUE(isPassed(one));
}

TEST(WeakLines, CountsWhatWasBrokenOfWhatWasExercised) {
  const std::vector<ShelfItem> items{item("07", 1, "Fmn"), item("08", 3, "bbn"),
                                     item("09", 2, "mfn"), item("10", 4, "vpn"), item("11", 5, "")};
  const WeakLines weak = findWeakLines(pointers(items));
  EXPECT_EQ(weak.sessions, 4);
  ASSERT_EQ(weak.exercised.size(), 2U);
  const WeakLine &brake = weak.exercised[0], &gear = weak.exercised[1];
  EXPECT_EQ(brake.id, "brake");
  EXPECT_EQ(brake.broken, 2);
  EXPECT_EQ(brake.exercised, 3);
  EXPECT_TRUE(brake.critical);
  EXPECT_THAT(brake.broken_in, ElementsAre(&items[1], &items[0]));
  EXPECT_EQ(gear.broken, 1);
  EXPECT_EQ(gear.exercised, 2);
  ASSERT_EQ(weak.never.size(), 1U);
  EXPECT_EQ(weak.never[0].id, "horn");
  EXPECT_EQ(weak.never[0].not_exercised, 4);
  EXPECT_EQ(weak.never[0].share(), 0);
}

TEST(WeakLines, ALineOfAnotherTitleIsAnotherLine) {
  std::vector<ShelfItem> items{item("07", 1, "bmn"), item("07", 2, "bmn")};
  items[1].sheet.names =
      std::make_shared<const LineNames>(LineNames{{"brake", "Brake, otherwise", true},
                                                  {"gear", "Gear in order", false},
                                                  {"horn", "Horn sounded", false}});
  const WeakLines weak = findWeakLines(pointers(items));
  EXPECT_EQ(weak.exercised.size(), 3U);
  EXPECT_EQ(weak.exercised[2].exercised, 2);
  EXPECT_EQ(findWeakLines({}).sessions, 0);
}

}  // namespace
}  // namespace cabwright::review
