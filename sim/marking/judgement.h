// SPDX-License-Identifier: GPL-3.0-or-later
// The table of judgements: what the trainee looked at and said of it, beside what was so.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "marking/rule.h"
#include "unit/action.h"
#include "unit/frame.h"

namespace cabwright::marking {

/// What is so with one item. Items without a row here are taken to be sound.
struct TruthRow {
  std::string item;                 ///< "end1.hoses"
  std::string condition;            ///< in words: "hanging", "good"
  std::optional<RuleClass> defect;  ///< none: sound, or only looks odd
};

enum class JudgementResult : std::uint8_t {
  kHit,         ///< a defect judged defect
  kMiss,        ///< a defect judged good
  kNotJudged,   ///< a defect nobody spoke of
  kFalseAlarm,  ///< a sound thing judged defect
  kRight,       ///< a sound thing judged good
  kUnsure,      ///< not sure, asked: costs nothing
};
[[nodiscard]] std::string_view wordOf(JudgementResult r);

struct JudgementRow {
  std::string item;
  std::string truth;
  std::optional<RuleClass> defect;
  std::string judged;        ///< "good", "defect", "unsure"; empty: not judged
  std::string judged_class;  ///< "C", "S", "T" if one was named
  std::string place;         ///< from where
  double looked_s = 0;
  std::int64_t tick = 0;
  int revised = 0;  ///< times an earlier judgement was changed; the last counts
  JudgementResult result = JudgementResult::kRight;
  bool empty_entry = false;  ///< judged without a look long enough for that item
};

/// What judgements are worth. "All defect" must not pay: a false alarm costs a little.
struct JudgementPolicy {
  double hit_points = 2;  ///< to be had for each defect
  double false_alarm_cost = 1;
  double empty_cost = 1;
  bool missed_critical_fails = true;  ///< judged good; what nobody looked at is a rule's business
};

struct JudgementTable {
  std::vector<JudgementRow> rows;  ///< in order of time; defects nobody judged last
  int hits = 0, misses = 0, not_judged = 0, false_alarms = 0, right = 0, unsure = 0, empty = 0;
  int missed_critical = 0;
  double possible = 0, earned = 0;  ///< earned may be negative
};

/// Listens to the same Frames and Actions as the Marker.
class JudgementListener {
 public:
  void seeFrame(const unit::Frame& frame);
  void seeAction(std::int64_t tick, const unit::Action& action);
  [[nodiscard]] JudgementTable makeTable(const std::vector<TruthRow>& truth,
                                         const JudgementPolicy& policy = {}) const;

 private:
  struct Heard {
    std::string item, judged, judged_class, place;
    double looked_s = 0, needed_s = 0;
    std::int64_t tick = 0;
    int revised = 0;
  };
  Heard* find(const std::string& item);
  std::vector<Heard> heard_;
  std::vector<double> looked_s_;  ///< longest look at each item so far
  std::vector<double> needed_s_;  ///< how long a look at it has to be to count
  int place_ = 0;
};

}  // namespace cabwright::marking
