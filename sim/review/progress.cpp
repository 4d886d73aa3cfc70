// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/progress.h"

#include <algorithm>

#include "quantity/elementary.h"

namespace cabwright::review {

using quantity::detExp;
using quantity::detLog;

std::optional<LearningCurve> fitLearningCurve(const std::vector<TimedAttempt>& attempts) {
  std::vector<std::pair<double, double>> points;
  double x_mean = 0, y_mean = 0;
  for (const TimedAttempt& attempt : attempts) {
    if (attempt.number < 1 || attempt.seconds <= 0) continue;
    points.emplace_back(detLog(attempt.number), detLog(attempt.seconds));
    x_mean += points.back().first;
    y_mean += points.back().second;
  }
  if (points.size() < kLeastForCurve) return std::nullopt;
  const auto count = static_cast<double>(points.size());
  x_mean /= count;
  y_mean /= count;
  double xx = 0, xy = 0, yy = 0;
  for (const auto& [x, y] : points) {
    xx += (x - x_mean) * (x - x_mean);
    xy += (x - x_mean) * (y - y_mean);
    yy += (y - y_mean) * (y - y_mean);
  }
  if (xx <= 0) return std::nullopt;
  LearningCurve curve;
  curve.exponent = -xy / xx;
  curve.first_s = detExp(y_mean + curve.exponent * x_mean);
  curve.fitted_to = points.size();
  curve.accounted = yy > 0 ? std::clamp(xy * xy / (xx * yy), 0.0, 1.0) : 1;
  return curve;
}

double calcSeconds(const LearningCurve& curve, double number) {
  return curve.first_s * detExp(-curve.exponent * detLog(std::max(number, 1.0)));
}

double calcDoublingShare(const LearningCurve& curve) {
  return detExp(-curve.exponent * detLog(2.0));
}

bool isPassed(const ShelfItem& item) {
  return item.decision.empty() ? item.outcome == ShelfOutcome::kPassed : item.decision == "passed";
}

std::vector<VersionAttempts> findAttempts(const std::vector<const ShelfItem*>& items,
                                          const std::string& trainee, const std::string& exercise) {
  std::vector<const ShelfItem*> own;
  for (const ShelfItem* item : items)
    if (item->outcome != ShelfOutcome::kBroken && traineeKey(*item) == trainee &&
        item->scenario == exercise)
      own.push_back(item);
  // RFC 3339 in UTC and of one length: by time as by letters.
  std::ranges::stable_sort(own, {}, &ShelfItem::started_utc);
  std::vector<VersionAttempts> versions;
  for (const ShelfItem* item : own) {
    auto version =
        std::ranges::find(versions, item->scenario_hash, &VersionAttempts::scenario_hash);
    if (version == versions.end()) {
      versions.push_back({item->scenario_hash, {}, {}});
      version = std::prev(versions.end());
    }
    Attempt attempt;
    attempt.item = item;
    attempt.number = static_cast<int>(version->attempts.size()) + 1;
    attempt.ended = item->outcome != ShelfOutcome::kCutOff;
    attempt.passed = isPassed(*item);
    attempt.percent = item->sheet.percent;
    attempt.seconds = static_cast<double>(item->last_tick) / 100;
    attempt.criticals_broken = countBrokenCriticals(item->sheet);
    version->attempts.push_back(attempt);
  }
  for (VersionAttempts& version : versions) {
    std::vector<TimedAttempt> timed;
    for (const Attempt& attempt : version.attempts)
      if (attempt.ended) timed.push_back({attempt.number, attempt.seconds});
    version.curve = fitLearningCurve(timed);
  }
  return versions;
}

}  // namespace cabwright::review
