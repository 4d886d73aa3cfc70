// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/thin_out.h"

#include <algorithm>

namespace cabwright::after {
namespace {

// Least and most of a column in the order they came; one point if they are the same.
void addColumn(QList<QPointF>& points, std::span<const std::int64_t> ticks,
               std::span<const float> values, std::size_t first, std::size_t end) {
  const auto begin = values.begin();
  const auto [low, high] = std::minmax_element(begin + static_cast<std::ptrdiff_t>(first),
                                               begin + static_cast<std::ptrdiff_t>(end));
  const auto at = [&](auto it) {
    const auto k = static_cast<std::size_t>(it - begin);
    return QPointF(static_cast<double>(ticks[k]) / 100.0, static_cast<double>(*it));
  };
  points << at(std::min(low, high));
  if (low != high) points << at(std::max(low, high));
}

}  // namespace

QList<QPointF> thinOut(std::span<const std::int64_t> ticks, std::span<const float> values,
                       std::int64_t from, std::int64_t to, std::size_t most) {
  const std::size_t size = std::min(ticks.size(), values.size());
  const auto seen = ticks.first(size);
  auto first = static_cast<std::size_t>(std::ranges::lower_bound(seen, from) - seen.begin());
  auto end = static_cast<std::size_t>(std::ranges::upper_bound(seen, to) - seen.begin());
  QList<QPointF> points;
  if (size == 0 || first > end) return points;
  const std::size_t before = first > 0 ? 1 : 0, behind = end < size ? 1 : 0;
  if (before == 1) addColumn(points, ticks, values, first - 1, first);
  // Two points for each column; one more column than fits when they lie across the ends.
  const std::size_t columns = std::max<std::size_t>(1, (most - 2) / 2 - 1);
  const std::size_t stride = end - first <= most - 2 ? 1 : (end - first + columns - 1) / columns;
  while (first < end) {
    const std::size_t next = std::min(end, (first / stride + 1) * stride);
    addColumn(points, ticks, values, first, next);
    first = next;
  }
  if (behind == 1) addColumn(points, ticks, values, end, end + 1);
  return points;
}

// From a point that stays, the next ones may be left out as long as one line through it passes all
// of them near enough.
QList<QPointF> withoutStraight(const QList<QPointF>& points, double y_per_pixel) {
  if (points.size() < 3) return points;
  constexpr double kOff = 0.25, kSteepest = 1e12;
  const double off = kOff * y_per_pixel;
  QList<QPointF> kept{points.front()};
  double low = -kSteepest, high = kSteepest;
  for (qsizetype k = 1; k < points.size(); ++k) {
    const auto slope = [&](const QPointF& from, double by) {
      const double dx = std::max(1e-9, points[k].x() - from.x());
      return (points[k].y() + by - from.y()) / dx;
    };
    const double to = slope(kept.back(), 0);
    if (to < low || to > high) {
      kept << points[k - 1];
      low = -kSteepest;
      high = kSteepest;
    }
    low = std::max(low, slope(kept.back(), -off));
    high = std::min(high, slope(kept.back(), off));
  }
  kept << points.back();
  return kept;
}

}  // namespace cabwright::after
