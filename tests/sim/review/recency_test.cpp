// SPDX-License-Identifier: GPL-3.0-or-later
// Dates that are due, to the day.
#include "review/recency.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>

namespace cabwright::review {
namespace {

Day day(const std::string& text) {
  const auto read = readDay(text);
  if (!read) throw std::invalid_argument(text);
  return *read;
}

std::string text(Day day) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()),
                     static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
}

TEST(Recency, TheSameDayOfTheMonthOrItsLast) {
  struct Case {
    const char* from;
    int months;
    const char* to;
  };
  for (const Case& one : std::vector<Case>{{"2031-03-15", 12, "2032-03-15"},
                                           {"2031-01-31", 1, "2031-02-28"},
                                           {"2032-01-31", 1, "2032-02-29"},
                                           {"2031-01-31", 2, "2031-03-31"},
                                           {"2031-01-31", 3, "2031-04-30"},
                                           {"2032-02-29", 12, "2033-02-28"},
                                           {"2032-02-29", 48, "2036-02-29"},
                                           {"2096-02-29", 48, "2100-02-28"},
                                           {"2031-08-31", 6, "2032-02-29"},
                                           {"2031-12-31", 1, "2032-01-31"},
                                           {"2031-11-30", 3, "2032-02-29"},
                                           {"2031-03-15", 0, "2031-03-15"},
                                           {"2031-03-15", -4, "2031-03-15"}})
    EXPECT_EQ(text(addMonths(day(one.from), one.months)), one.to) << one.from << one.months;
}

TEST(Recency, DaysAreReadStrictly) {
  EXPECT_EQ(text(day("2031-03-15T08:00:00Z")), "2031-03-15");
  for (const char* bad : {"", "2031-02-29", "2031-13-01", "2031-00-10", "31-03-15", "2031-03-1",
                          "2031/03/15", "2031-03-15x", "2031-03--1", "-031-03-15"})
    EXPECT_FALSE(readDay(bad)) << bad;
  EXPECT_EQ(countDays(day("2031-12-31"), day("2032-03-01")), 61);
  EXPECT_EQ(countDays(day("2031-01-02"), day("2031-01-01")), -1);
}

ShelfItem item(const std::string& number, const std::string& date, const std::string& exercise) {
  ShelfItem made;
  made.number = number;
  made.scenario = exercise;
  made.started_utc = date + "T10:00:00Z";
  made.mode = "assessment";
  made.sealed = true;
  made.outcome = ShelfOutcome::kPassed;
  return made;
}

std::vector<DuePass> due(const std::vector<ShelfItem>& items, const RecencyRules& rules,
                         const std::string& today) {
  std::vector<const ShelfItem*> all;
  for (const ShelfItem& one : items) all.push_back(&one);
  return findDue(
      all, rules, [](const ShelfItem& one) { return readDay(one.started_utc); }, day(today));
}

TEST(Recency, OnlyAPassedSealedAssessmentOrAnAssessorsWordRenews) {
  ShelfItem one = item("07", "2031-03-15", "A");
  EXPECT_TRUE(renewsPass(one));
  one.decision = "failed";
  EXPECT_FALSE(renewsPass(one));
  one.decision = "not yet";
  EXPECT_FALSE(renewsPass(one));
  one.decision.clear();
  one.sealed = false;
  EXPECT_FALSE(renewsPass(one));
  one.sealed = true;
  one.mode = "practice";
  EXPECT_FALSE(renewsPass(one));
  one.decision = "passed";
  EXPECT_TRUE(renewsPass(one));
  one = item("07", "2031-03-15", "A");
  one.outcome = ShelfOutcome::kFailed;
  EXPECT_FALSE(renewsPass(one));
}

TEST(Recency, IsOffUnlessSet) {
  EXPECT_FALSE(RecencyRules().isOn());
  EXPECT_TRUE(due({item("07", "2031-03-15", "A")}, {}, "2040-01-01").empty());
  RecencyRules rules{12, {{"A", 0}}};
  EXPECT_TRUE(rules.isOn());
  EXPECT_TRUE(due({item("07", "2031-03-15", "A")}, rules, "2040-01-01").empty());
  rules = {0, {{"A", 3}}};
  EXPECT_EQ(due({item("07", "2031-03-15", "A"), item("07", "2031-03-15", "B")}, rules, "2031-04-01")
                .size(),
            1U);
}

TEST(Recency, TheLastPassCountsAndTheFirstDueStandsInFront) {
  const std::vector<ShelfItem> items{item("07", "2031-01-31", "A"), item("07", "2030-06-01", "A"),
                                     item("08", "2031-02-10", "A"), item("07", "2031-02-01", "B"),
                                     item("", "2020-01-01", "A")};
  const RecencyRules rules{1, {{"B", 12}}};
  const auto found = due(items, rules, "2031-03-01");
  ASSERT_EQ(found.size(), 3U);
  EXPECT_EQ(found[0].item, &items[0]);
  EXPECT_EQ(text(found[0].due), "2031-02-28");
  EXPECT_EQ(found[0].days_left, -1);
  EXPECT_EQ(found[1].trainee, "08");
  EXPECT_EQ(found[1].days_left, 9);
  EXPECT_EQ(text(found[2].due), "2032-02-01");
}

TEST(Recency, SaysHowLongOneResultIsGood) {
  using Kind = GoodFor::Kind;
  const DayOf day_of = [](const ShelfItem& one) { return readDay(one.started_utc); };
  const RecencyRules rules{0, {{"A", 12}}};
  const auto good = [&](const ShelfItem& one, session::Standing standing) {
    return findGoodFor(one, standing, rules, day_of);
  };
  constexpr auto kWhole = session::Standing::kWhole;
  const ShelfItem passed = item("07", "2031-01-31", "A");
  EXPECT_EQ(good(passed, kWhole).kind, Kind::kUntil);
  EXPECT_EQ(text(good(passed, kWhole).until), "2032-01-31");
  EXPECT_EQ(text(good(passed, kWhole).passed), "2031-01-31");
  EXPECT_EQ(good(passed, kWhole).months, 12);
  // Who it was is another question than for how long.
  EXPECT_EQ(good(item("", "2031-01-31", "A"), kWhole).kind, Kind::kUntil);
  EXPECT_EQ(good(item("07", "2031-01-31", "B"), kWhole).kind, Kind::kNoTime);
  EXPECT_EQ(good(item("07", "", "A"), kWhole).kind, Kind::kNoDay);
  EXPECT_EQ(good(passed, session::Standing::kAltered).kind, Kind::kAltered);
  ShelfItem practice = passed;
  practice.mode = "practice";
  EXPECT_EQ(good(practice, kWhole).kind, Kind::kNoPass);
}

TEST(Recency, TheLastDayIsStillGood) {
  const RecencyRules rules{1, {}};
  EXPECT_EQ(due({item("07", "2031-01-31", "A")}, rules, "2031-02-28").at(0).days_left, 0);
}

}  // namespace
}  // namespace cabwright::review
