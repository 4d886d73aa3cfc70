// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/recency.h"

#include <algorithm>
#include <charconv>
#include <tuple>

namespace cabwright::review {
namespace {

constexpr int kMostMonths = 1200;

bool readNumber(std::string_view text, int& number) {
  const auto result = std::from_chars(text.data(), text.data() + text.size(), number);
  return result.ec == std::errc() && result.ptr == text.data() + text.size() && number >= 0;
}

}  // namespace

std::optional<Day> readDay(std::string_view text) {
  int year = 0, month = 0, day = 0;
  const bool parted = text.size() >= 10 && text[4] == '-' && text[7] == '-' &&
                      (text.size() == 10 || text[10] == 'T' || text[10] == ' ');
  if (!parted || !readNumber(text.substr(0, 4), year) || !readNumber(text.substr(5, 2), month) ||
      !readNumber(text.substr(8, 2), day))
    return std::nullopt;
  const Day read{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                 std::chrono::day(static_cast<unsigned>(day))};
  if (!read.ok()) return std::nullopt;
  return read;
}

Day addMonths(Day day, int months) {
  const auto to = std::chrono::year_month(day.year(), day.month()) +
                  std::chrono::months(std::clamp(months, 0, kMostMonths));
  const Day same{to.year(), to.month(), day.day()};
  if (same.ok()) return same;
  return Day(std::chrono::year_month_day_last(to.year(), std::chrono::month_day_last(to.month())));
}

int countDays(Day from, Day to) {
  return static_cast<int>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

int RecencyRules::monthsFor(const std::string& exercise) const {
  const auto own = by_exercise.find(exercise);
  return own == by_exercise.end() ? months : own->second;
}

bool RecencyRules::isOn() const {
  return months > 0 ||
         std::ranges::any_of(by_exercise, [](const auto& rule) { return rule.second > 0; });
}

bool renewsPass(const ShelfItem& item) {
  if (!item.decision.empty()) return item.decision == "passed";
  return item.sealed && item.mode == "assessment" && item.outcome == ShelfOutcome::kPassed;
}

GoodFor findGoodFor(const ShelfItem& item, session::Standing standing, const RecencyRules& rules,
                    const DayOf& day_of) {
  using Kind = GoodFor::Kind;
  if (standing == session::Standing::kAltered) return {Kind::kAltered};
  if (!renewsPass(item)) return {Kind::kNoPass};
  const auto day = day_of(item);
  if (!day) return {Kind::kNoDay};
  const int months = rules.monthsFor(item.scenario);
  if (months <= 0) return {Kind::kNoTime, *day};
  return {Kind::kUntil, *day, addMonths(*day, months), months};
}

std::vector<DuePass> findDue(const std::vector<const ShelfItem*>& items, const RecencyRules& rules,
                             const DayOf& day_of, Day today) {
  std::map<std::pair<std::string, std::string>, DuePass> last;
  for (const ShelfItem* item : items) {
    if (!renewsPass(*item) || traineeKey(*item).empty()) continue;
    if (rules.monthsFor(item->scenario) <= 0) continue;
    const auto day = day_of(*item);
    if (!day) continue;
    DuePass& pass = last[{traineeKey(*item), item->scenario}];
    if (pass.item != nullptr && pass.passed >= *day) continue;
    pass = {item, traineeKey(*item), item->scenario, *day, {}, 0};
  }
  std::vector<DuePass> due;
  for (auto& [key, pass] : last) {
    pass.due = addMonths(pass.passed, rules.monthsFor(pass.exercise));
    pass.days_left = countDays(today, pass.due);
    due.push_back(std::move(pass));
  }
  std::ranges::stable_sort(due, [](const DuePass& a, const DuePass& b) {
    return std::tie(a.days_left, a.trainee, a.exercise) <
           std::tie(b.days_left, b.trainee, b.exercise);
  });
  return due;
}

}  // namespace cabwright::review
