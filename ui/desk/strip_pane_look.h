// SPDX-License-Identifier: GPL-3.0-or-later
// Measures of the live strips, in u.
#pragma once

#include <QRectF>
#include <algorithm>

#include "after/strip_model.h"
#include "drawing/ink.h"

namespace cabwright::desk {

inline constexpr double kCapHalf = 0.36 * drawing::kText;
inline constexpr double kScaleRight = 182;  ///< where the figures of the scales end
inline constexpr double kLimits = 52;       ///< room beside a plot for the figures that matter
inline constexpr double kValue = 100;       ///< room for a value beside a curve's name
inline constexpr double kEdge = 4;          ///< right margin

/// From name to name beside a plot.
[[nodiscard]] inline double legendLead(const after::Plot& plot, const QRectF& box) {
  return std::min(25.0, (box.height() + 4) / static_cast<double>(plot.curves.size()));
}

}  // namespace cabwright::desk
