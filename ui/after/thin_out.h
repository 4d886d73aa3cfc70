// SPDX-License-Identifier: GPL-3.0-or-later
// A curve of any length in as many points as can be seen: of each column the lowest and the highest
// value, so that no peak is lost however narrow it is.
#pragma once

#include <QList>
#include <QPointF>
#include <cstddef>
#include <cstdint>
#include <span>

namespace cabwright::after {

/// No more can be told apart on a strip, and none is drawn.
inline constexpr std::size_t kMostPoints = 600;

/// The samples of `from` to `to` (ticks, both ends included) and one beyond each end, so that the
/// line goes on to the edge. x in seconds. Columns lie at whole multiples of their own width, so
/// that a curve does not flicker while it is shifted.
[[nodiscard]] QList<QPointF> thinOut(std::span<const std::int64_t> ticks,
                                     std::span<const float> values, std::int64_t from,
                                     std::int64_t to, std::size_t most = kMostPoints);

/// Leaves out what lies on the line between its neighbours, no more than a quarter of a pixel off
/// it in height; ends stay. x must grow.
[[nodiscard]] QList<QPointF> withoutStraight(const QList<QPointF>& points, double y_per_pixel);

}  // namespace cabwright::after
