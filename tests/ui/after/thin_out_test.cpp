// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/thin_out.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace cabwright::after {
namespace {

struct Series {
  std::vector<std::int64_t> ticks;
  std::vector<float> values;
};

// Mostly level, with peaks of a single sample: what a mean or every nth sample would lose.
Series randomSeries(std::mt19937& random, std::size_t size) {
  Series series;
  std::uniform_int_distribution<int> chance(0, 99), height(-1000, 1000);
  float level = 0;
  for (std::size_t k = 0; k < size; ++k) {
    series.ticks.push_back(static_cast<std::int64_t>(k) * 10);
    if (chance(random) < 10) level += static_cast<float>(height(random)) / 100.0F;
    const bool peak = chance(random) < 2;
    series.values.push_back(peak ? level + static_cast<float>(height(random)) : level);
  }
  return series;
}

// For each sample in the stretch there is a drawn point as high and one as low, no further away
// than a column is wide; and every point is a sample.
void expectEnvelope(const Series& s, const QList<QPointF>& points, std::int64_t from,
                    std::int64_t to, std::int64_t column) {
  for (std::size_t k = 0; k < s.ticks.size(); ++k) {
    if (s.ticks[k] < from || s.ticks[k] > to) continue;
    const auto near = [&](const QPointF& p) {
      return std::abs(p.x() * 100 - static_cast<double>(s.ticks[k])) <=
             static_cast<double>(column) + 0.5;
    };
    const auto v = static_cast<double>(s.values[k]);
    ASSERT_TRUE(std::ranges::any_of(points, [&](auto p) { return near(p) && p.y() >= v; })) << k;
    ASSERT_TRUE(std::ranges::any_of(points, [&](auto p) { return near(p) && p.y() <= v; })) << k;
  }
  for (const QPointF& p : points) {
    const auto k = static_cast<std::size_t>(std::lround(p.x() * 10));
    ASSERT_LT(k, s.values.size());
    EXPECT_EQ(p.y(), static_cast<double>(s.values[k]));
  }
}

TEST(ThinOut, KeepsEveryExtremeOfEveryStretch) {
  std::mt19937 random(7);
  for (const std::size_t size : {1U, 2U, 50U, 600U, 601U, 1500U, 4000U}) {
    const Series s = randomSeries(random, size);
    std::uniform_int_distribution<std::int64_t> any(0, s.ticks.back());
    for (int round = 0; round < 3; ++round) {
      const std::int64_t a = any(random), b = any(random);
      const std::int64_t from = std::min(a, b), to = std::max(a, b);
      const auto points = thinOut(s.ticks, s.values, from, to);
      EXPECT_LE(static_cast<std::size_t>(points.size()), kMostPoints);
      EXPECT_TRUE(std::ranges::is_sorted(points, {}, [](const QPointF& p) { return p.x(); }));
      const std::int64_t column = 10 * ((to - from) / 10 / 297 + 1);
      expectEnvelope(s, points, from, to, column);
    }
  }
}

TEST(ThinOut, KeepsAllWhenThereIsRoom) {
  std::mt19937 random(3);
  const Series s = randomSeries(random, 500);
  const auto points = thinOut(s.ticks, s.values, 0, s.ticks.back());
  ASSERT_EQ(points.size(), 500);
  for (int k = 0; k < 500; ++k)
    EXPECT_EQ(points[k].y(), static_cast<double>(s.values[static_cast<std::size_t>(k)]));
}

TEST(ThinOut, GoesOnToTheEdges) {
  const Series s{{0, 100, 200, 300}, {1, 2, 3, 4}};
  EXPECT_EQ(thinOut(s.ticks, s.values, 120, 180), (QList<QPointF>{{1, 2}, {2, 3}}));
}

TEST(ThinOut, IsSteadyWhileTheStretchIsShifted) {
  std::mt19937 random(5);
  const Series s = randomSeries(random, 20000);
  const auto inside = [&](std::int64_t from, std::int64_t to) {
    QList<QPointF> points;
    for (const QPointF& p : thinOut(s.ticks, s.values, from, to))
      if (p.x() > 120 && p.x() < 590) points << p;
    return points;
  };
  EXPECT_EQ(inside(10000, 60000), inside(10700, 60700));
  EXPECT_GT(inside(10000, 60000).size(), 300);
}

TEST(ThinOut, OfNothingIsNothing) { EXPECT_TRUE(thinOut({}, {}, 0, 100).isEmpty()); }

}  // namespace
}  // namespace cabwright::after
