// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/judgement.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "unit/item_list.h"
#include "unit/place_list.h"

namespace cabwright::marking {
namespace {

#define CABWRIGHT_NAME(Y, id, name, kind, text) name,
constexpr std::string_view kItems[] = {CABWRIGHT_ITEMS(CABWRIGHT_NAME, )};
constexpr std::string_view kPlaces[] = {CABWRIGHT_PLACES(CABWRIGHT_NAME, )};
#undef CABWRIGHT_NAME

/// No look counts that is shorter (common practice, no published source); some items take longer.
constexpr double kLeastLookSeconds = 1.0;
/// What is judged is judged on the Frame before, so a look may seem so much shorter than it was.
constexpr double kFrameSeconds = 0.1;

// Signals count tables from 1; 0 and anything odd is none.
int toNumber(float value) {
  return std::isfinite(value) && value > 0 && value < 10'000 ? static_cast<int>(value + 0.5F) : 0;
}

std::string placeText(int number) {
  const auto place = static_cast<std::size_t>(number);
  return number < 1 || place > std::size(kPlaces) ? "on the way" : std::string(kPlaces[place - 1]);
}

JudgementResult calcResult(const std::string& judged, bool defect) {
  if (judged == "unsure") return JudgementResult::kUnsure;
  if (judged == "defect") return defect ? JudgementResult::kHit : JudgementResult::kFalseAlarm;
  return defect ? JudgementResult::kMiss : JudgementResult::kRight;
}

void countRow(const JudgementRow& row, const JudgementPolicy& policy, JudgementTable& table) {
  if (row.empty_entry) {
    ++table.empty;
    table.earned -= policy.empty_cost;
  }
  const bool open = row.result == JudgementResult::kUnsure;
  if (row.defect && !open) table.possible += policy.hit_points;
  switch (row.result) {
    case JudgementResult::kHit:
      ++table.hits;
      if (!row.empty_entry) table.earned += policy.hit_points;  // a guess is no find
      break;
    case JudgementResult::kMiss:
      ++table.misses;
      if (row.defect == RuleClass::kCritical) ++table.missed_critical;
      break;
    case JudgementResult::kNotJudged:
      ++table.not_judged;
      break;
    case JudgementResult::kFalseAlarm:
      ++table.false_alarms;
      table.earned -= policy.false_alarm_cost;
      break;
    case JudgementResult::kRight:
      ++table.right;
      break;
    case JudgementResult::kUnsure:
      ++table.unsure;
      break;
  }
}

}  // namespace

std::string_view wordOf(JudgementResult r) {
  switch (r) {
    case JudgementResult::kHit:
      return "hit";
    case JudgementResult::kMiss:
      return "miss";
    case JudgementResult::kNotJudged:
      return "not judged";
    case JudgementResult::kFalseAlarm:
      return "false alarm";
    case JudgementResult::kRight:
      return "right";
    case JudgementResult::kUnsure:
      break;
  }
  return "not sure";
}

void JudgementListener::seeFrame(const unit::Frame& frame) {
  place_ = toNumber(frame[unit::Signal::kPlace]);
  const auto item = static_cast<std::size_t>(toNumber(frame[unit::Signal::kLookItem]));
  if (item == 0 || item > std::size(kItems)) return;
  looked_s_.resize(std::size(kItems), 0.0);
  double& longest = looked_s_[item - 1];
  longest = std::max(longest, static_cast<double>(frame[unit::Signal::kLookSeconds]));
  needed_s_.resize(std::size(kItems), kLeastLookSeconds);
  needed_s_[item - 1] =
      std::max(kLeastLookSeconds, static_cast<double>(frame[unit::Signal::kLookNeeded]));
}

JudgementListener::Heard* JudgementListener::find(const std::string& item) {
  for (Heard& heard : heard_) {
    if (heard.item == item) return &heard;
  }
  return nullptr;
}

void JudgementListener::seeAction(std::int64_t tick, const unit::Action& action) {
  if (action.verb != "judge" || action.actor != unit::Actor::kTrainee) return;
  const std::size_t blank = action.argument.find(' ');
  const std::string judged = action.argument.substr(0, blank);
  if (judged != "good" && judged != "defect" && judged != "unsure") return;
  const auto known = std::find(std::begin(kItems), std::end(kItems), action.object);
  if (known == std::end(kItems)) return;
  Heard heard{action.object, judged, {}, placeText(place_), 0, kLeastLookSeconds, tick, 0};
  if (blank != std::string::npos) heard.judged_class = action.argument.substr(blank + 1);
  const auto item = static_cast<std::size_t>(known - std::begin(kItems));
  if (item < looked_s_.size()) heard.looked_s = looked_s_[item];
  if (item < needed_s_.size()) heard.needed_s = needed_s_[item];
  if (Heard* before = find(action.object)) {
    heard.revised = before->revised + (before->judged == judged ? 0 : 1);
    heard_.erase(heard_.begin() + (before - heard_.data()));
  }
  heard_.push_back(std::move(heard));  // the last word counts, and stands where it was said
}

JudgementTable JudgementListener::makeTable(const std::vector<TruthRow>& truth,
                                            const JudgementPolicy& policy) const {
  JudgementTable table;
  std::vector<bool> spoken(truth.size(), false);
  for (const Heard& heard : heard_) {
    JudgementRow row;
    row.item = heard.item;
    row.truth = "good";
    for (std::size_t k = 0; k < truth.size(); ++k) {
      if (truth[k].item != heard.item) continue;
      spoken[k] = true;
      row.truth = truth[k].condition;
      row.defect = truth[k].defect;
    }
    row.judged = heard.judged;
    row.judged_class = heard.judged_class;
    row.place = heard.place;
    row.looked_s = heard.looked_s;
    row.tick = heard.tick;
    row.revised = heard.revised;
    row.empty_entry = heard.judged != "unsure" && heard.looked_s < heard.needed_s - kFrameSeconds;
    row.result = calcResult(heard.judged, row.defect.has_value());
    table.rows.push_back(std::move(row));
  }
  for (std::size_t k = 0; k < truth.size(); ++k) {
    if (spoken[k] || !truth[k].defect) continue;
    JudgementRow row;
    row.item = truth[k].item;
    row.truth = truth[k].condition;
    row.defect = truth[k].defect;
    row.result = JudgementResult::kNotJudged;
    table.rows.push_back(std::move(row));
  }
  for (const JudgementRow& row : table.rows) countRow(row, policy, table);
  return table;
}

}  // namespace cabwright::marking
