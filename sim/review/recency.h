// SPDX-License-Identifier: GPL-3.0-or-later
// Who is due for what again, from the last time they passed it. A reminder: it revokes nothing, and
// nothing else reads it.
//
// The rule of dates: a pass is good to the end of the same day of the month, so many months later;
// where that month has no such day, to the end of its last day. It is counted from the day of the
// pass and never from a day that was moved: 31 January and one month is 28 or 29 February, and two
// months is 31 March.
#pragma once

#include <chrono>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "review/shelf.h"
#include "session/verify.h"

namespace cabwright::review {

using Day = std::chrono::year_month_day;

/// Of a date "2031-03-15", alone or in front of a time. Empty for what is no day.
[[nodiscard]] std::optional<Day> readDay(std::string_view text);
/// By the rule above. `months` may be 0 to 1200; more and less are taken for these.
[[nodiscard]] Day addMonths(Day day, int months);
/// From one day to another, negative backwards.
[[nodiscard]] int countDays(Day from, Day to);

struct RecencyRules {
  int months = 0;                          ///< for every exercise that has no own rule; 0: none
  std::map<std::string, int> by_exercise;  ///< by title; 0: never due
  [[nodiscard]] int monthsFor(const std::string& exercise) const;
  [[nodiscard]] bool isOn() const;
  bool operator==(const RecencyRules&) const = default;
};

struct DuePass {
  const ShelfItem* item = nullptr;  ///< the last one passed
  std::string trainee;              ///< traineeKey()
  std::string exercise;
  Day passed{}, due{};
  int days_left = 0;  ///< 0: today is the last day; negative: so many days over
};

/// Which day a session was begun, where it was recorded; empty leaves it out.
using DayOf = std::function<std::optional<Day>(const ShelfItem&)>;

/// Counts towards it: a sealed assessment that was passed and not decided otherwise, or any session
/// that an assessor decided as passed.
[[nodiscard]] bool renewsPass(const ShelfItem& item);

/// How long the result of one session is good for, as its report says it.
struct GoodFor {
  enum class Kind : std::uint8_t {
    kAltered,  ///< the record is not what was sealed, and proves no pass
    kNoPass,   ///< renewsPass() says so
    kNoDay,    ///< the session does not say when it was begun
    kNoTime,   ///< a pass, and no rule for this exercise
    kUntil,
  };
  Kind kind = Kind::kNoPass;
  Day passed{};    ///< of kNoTime and kUntil
  Day until{};     ///< of kUntil: the last day
  int months = 0;  ///< likewise
};

[[nodiscard]] GoodFor findGoodFor(const ShelfItem& item, session::Standing standing,
                                  const RecencyRules& rules, const DayOf& day_of);

/// For each trainee and exercise with a rule the last pass, the first due in front. Who has never
/// passed is not due for anything. The items must outlive what is given.
[[nodiscard]] std::vector<DuePass> findDue(const std::vector<const ShelfItem*>& items,
                                           const RecencyRules& rules, const DayOf& day_of,
                                           Day today);

}  // namespace cabwright::review
