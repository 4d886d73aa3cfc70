// SPDX-License-Identifier: GPL-3.0-or-later
// Where things stand on the strip, in u of its widget, and which stretch of time it shows.
#pragma once

#include <QRectF>
#include <QSizeF>
#include <cstdint>
#include <vector>

#include "after/strip_model.h"

namespace cabwright::after {

/// A stretch of the run, ticks.
struct Span {
  std::int64_t from = 0, to = 1;
  [[nodiscard]] std::int64_t length() const { return to - from; }
  bool operator==(const Span&) const = default;
};

/// Never longer than the run, never outside it, never shorter than two seconds.
[[nodiscard]] Span clampSpan(Span wanted, std::int64_t last_tick);
/// By a factor (less than 1: nearer), `around` staying where it is.
[[nodiscard]] Span zoomedSpan(Span now, double factor, std::int64_t around, std::int64_t last_tick);

struct StripLayout {
  double left = 0, right = 0;  ///< x of the plots' sides
  double flags_top = 0;        ///< y of the first row of flags
  double lanes_top = 0;        ///< y of the first lane's middle
  double actions_y = 0;        ///< middle of the row of actions
  double axis_y = 0;           ///< line of the axis of time
  bool axis_above = false;     ///< its times stand above the line, and that above the lanes
  double end = 0;              ///< below the last plot
  std::vector<QRectF> plots;   ///< boxes of the plots; in a review as many as there is room for

  [[nodiscard]] double xOf(std::int64_t tick, Span span) const;
  [[nodiscard]] std::int64_t tickAt(double x, Span span) const;
};

inline constexpr double kLanePitch = 30, kLaneBar = 24, kFlagPitch = 31;

/// `rows` of flags; none in a review, where signs and actions have lanes of their own, and where
/// the axis of time stands on top.
[[nodiscard]] StripLayout layOutStrip(QSizeF size, std::size_t lanes, std::size_t plots, int rows);

/// A flag in its row; `merged` others stand behind it, too near to be shown.
struct PlacedFlag {
  std::size_t flag = 0;
  double x = 0;           ///< of its pole
  bool mirrored = false;  ///< it hangs to the left: no room at the right
  int row = 0;
  int merged = 0;
};
inline constexpr int kMostFlagRows = 3;
/// Those within the span, each in the first row where it does not touch another.
[[nodiscard]] std::vector<PlacedFlag> placeFlags(const std::vector<Flag>& flags,
                                                 const StripLayout& layout, Span span);

/// Ticks of the marks on the axis of time: at least `least_u` apart.
[[nodiscard]] std::vector<std::int64_t> axisTicks(const StripLayout& layout, Span span,
                                                  double least_u);

}  // namespace cabwright::after
