// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/draft_order.h"

#include <algorithm>
#include <array>
#include <span>

#include "plant/named_numbers.h"
#include "plant/start_conditions.h"
#include "unit/controls.h"
#include "unit/objects.h"

namespace cabwright::scenario {

namespace {

using Words = std::span<const std::string_view>;

constexpr std::array<std::string_view, 10> kHead{"title", "purpose",     "summary", "vehicle",
                                                 "route", "mode",        "level",   "teaches",
                                                 "seed",  "time_allowed"};
constexpr std::array<std::string_view, 5> kConditions{"weather", "temperature", "rail", "dark",
                                                      "stood_hours"};
constexpr std::array<std::string_view, 5> kStart{"place", "berth", "position_m", "speed_mph",
                                                 "teeth"};
constexpr std::array<std::string_view, 2> kPeople{"guard", "second_person"};
constexpr std::array<std::string_view, 13> kFault{
    "item",  "instrument", "condition", "fault",      "size",        "at", "when",
    "after", "ramp",       "until",     "until_when", "until_after", "id"};
constexpr std::array<std::string_view, 3> kDraw{"name", "count", "from"};
constexpr std::array<std::string_view, 5> kEvent{"who", "at", "when", "after", "do"};
constexpr std::array<std::string_view, 2> kGuide{"use", "without"};
constexpr std::array<std::string_view, 15> kStep{
    "id",     "phase", "before", "after",     "do",   "why",  "alternative", "place",
    "points", "done",  "acts",   "meanwhile", "past", "when", "anytime"};
constexpr std::array<std::string_view, 4> kMarking{"pass_mark", "phases", "complete",
                                                   "complete_says"};
constexpr std::array<std::string_view, 4> kJudgements{"hit_points", "false_alarm_cost",
                                                      "empty_cost", "missed_critical_fails"};
constexpr std::array<std::string_view, 3> kUse{"file", "rules", "except"};
constexpr std::array<std::string_view, 36> kRule{
    "id",        "rule",           "phase",    "title",          "reason",     "advice",
    "kind",      "class",          "weight",   "reads",          "a",          "a_name",
    "b",         "b_name",         "steps",    "step_names",     "reset",      "reset_name",
    "condition", "condition_name", "during",   "during_name",    "within",     "for",
    "times",     "measure",        "by",       "tolerance",      "inside",     "slack",
    "falls_to",  "follows",        "repeated", "repeated_class", "first_only", "must_occur"};

Words wordsOf(DraftSection section) {
  switch (section) {
    case DraftSection::kHead:
      return kHead;
    case DraftSection::kConditions:
      return kConditions;
    case DraftSection::kStart:
      return kStart;
    case DraftSection::kPeople:
      return kPeople;
    case DraftSection::kHidden:
    case DraftSection::kFault:
      return kFault;
    case DraftSection::kDraw:
      return kDraw;
    case DraftSection::kEvent:
      return kEvent;
    case DraftSection::kGuide:
      return kGuide;
    case DraftSection::kGuideStep:
      return kStep;
    case DraftSection::kMarking:
      return kMarking;
    case DraftSection::kJudgements:
      return kJudgements;
    case DraftSection::kUse:
      return kUse;
    case DraftSection::kChange:
    case DraftSection::kRule:
      return kRule;
    default:
      return {};
  }
}

constexpr std::size_t kLast = 100000;

template <class Table>
std::size_t placeIn(const Table& table, std::string_view key) {
  std::size_t k = 0;
  for (const auto& info : table) {
    if (plant::namesMatch(key, info.name)) return k;
    ++k;
  }
  return kLast;
}

}  // namespace

std::size_t rankOf(DraftSection section, std::string_view key) {
  if (section == DraftSection::kControls) return placeIn(unit::controlTable(), key);
  if (section == DraftSection::kObjects) return placeIn(unit::objectTable(), key);
  const Words words = wordsOf(section);
  const auto at = std::find(words.begin(), words.end(), key);
  if (at != words.end()) return static_cast<std::size_t>(at - words.begin());
  if (section != DraftSection::kStart) return kLast;
  return words.size() + placeIn(plant::startTable(), key);
}

bool isUsual(DraftSection section, const DraftEntry& entry) {
  const auto is = [&](std::string_view key, const DraftValue& value) {
    return entry.key == key && entry.value == value;
  };
  switch (section) {
    case DraftSection::kHead:
      return is("seed", 0);
    case DraftSection::kConditions:
      return is("dark", false);
    case DraftSection::kStart:
      return is("teeth", "as_said");
    case DraftSection::kPeople:
      return is("guard", true) || is("second_person", true);
    case DraftSection::kHidden:
    case DraftSection::kFault:
      return is("at", "0 s") || is("after", "0 s") || is("ramp", "0 s");
    case DraftSection::kDraw:
      return is("count", 1);
    case DraftSection::kEvent:
      return is("after", "0 s");
    case DraftSection::kGuideStep:
      return is("anytime", false);
    default:
      return false;
  }
}

bool isTight(DraftSection section, bool first_of_list) {
  switch (section) {
    case DraftSection::kControls:
    case DraftSection::kObjects:
    case DraftSection::kParameters:
    case DraftSection::kJudgements:
      return true;
    case DraftSection::kHidden:
      return !first_of_list;
    default:
      return false;
  }
}

}  // namespace cabwright::scenario
