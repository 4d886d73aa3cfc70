// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/strip_layout.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "after/flag_sign.h"

namespace cabwright::after {
namespace {

constexpr double kLabels = 238, kRightMargin = 52, kPlotGap = 16, kAxisHeight = 40;
constexpr double kAxisAbove = 42, kBelowPlots = 12;  // of a review
constexpr double kLeastPlot = 40, kGoodPlot = 66;
constexpr std::size_t kSheetPlots = 4;
constexpr double kFlagGap = 4, kMergedRoom = 36;
constexpr std::int64_t kShortest = 200;
constexpr std::array<std::int64_t, 15> kSteps_s{1,   2,   5,   10,   15,   30,   60,   120,
                                                300, 600, 900, 1800, 3600, 7200, 14400};

}  // namespace

Span clampSpan(Span wanted, std::int64_t last_tick) {
  const std::int64_t whole = std::max<std::int64_t>(last_tick, 1);
  const std::int64_t length = std::clamp(wanted.length(), std::min(kShortest, whole), whole);
  const std::int64_t from = std::clamp<std::int64_t>(wanted.from, 0, whole - length);
  return {from, from + length};
}

Span zoomedSpan(Span now, double factor, std::int64_t around, std::int64_t last_tick) {
  const double share = std::clamp(
      static_cast<double>(around - now.from) / static_cast<double>(now.length()), 0.0, 1.0);
  const std::int64_t whole = std::max<std::int64_t>(last_tick, 1);
  const double wanted =
      std::clamp(static_cast<double>(now.length()) * factor,
                 static_cast<double>(std::min(kShortest, whole)), static_cast<double>(whole));
  const std::int64_t length = std::llround(wanted);
  const std::int64_t from = around - std::llround(share * wanted);
  return clampSpan({from, from + length}, last_tick);
}

double StripLayout::xOf(std::int64_t tick, Span span) const {
  return left + (right - left) * static_cast<double>(tick - span.from) /
                    static_cast<double>(std::max<std::int64_t>(1, span.length()));
}

std::int64_t StripLayout::tickAt(double x, Span span) const {
  const double share = std::clamp((x - left) / std::max(1.0, right - left), 0.0, 1.0);
  return span.from + std::llround(share * static_cast<double>(span.length()));
}

StripLayout layOutStrip(QSizeF size, std::size_t lanes, std::size_t plots, int rows) {
  StripLayout layout;
  const bool is_review = rows == 0;
  layout.left = kLabels;
  layout.right = std::max(kLabels + 100, size.width() - kRightMargin);
  layout.axis_above = is_review;
  layout.flags_top = is_review ? kAxisAbove + 6 : 4;
  layout.lanes_top = layout.flags_top + rows * kFlagPitch + (is_review ? 0 : 6) + kLaneBar / 2;
  layout.actions_y =
      layout.lanes_top + (static_cast<double>(lanes) - (is_review ? 1 : 0)) * kLanePitch;
  layout.end = size.height() - (is_review ? kBelowPlots : kAxisHeight);
  layout.axis_y = is_review ? kAxisAbove : layout.end;
  double top = layout.actions_y + kLanePitch / 2 + 12;
  if (is_review) {
    const double room = std::max(0.0, layout.end - top + kPlotGap);
    // Four are as many as belong together; more of them only where their words have room.
    if (room < static_cast<double>(plots) * (kGoodPlot + kPlotGap))
      plots = std::min(plots, kSheetPlots);
    plots = std::min(plots, static_cast<std::size_t>(room / (kLeastPlot + kPlotGap)));
  }
  const auto n = static_cast<double>(std::max<std::size_t>(1, plots));
  const double height = std::max(kLeastPlot, (layout.end - top - (n - 1) * kPlotGap) / n);
  for (std::size_t k = 0; k < plots; ++k, top += height + kPlotGap)
    layout.plots.emplace_back(layout.left, top, layout.right - layout.left, height);
  return layout;
}

std::vector<PlacedFlag> placeFlags(const std::vector<Flag>& flags, const StripLayout& layout,
                                   Span span) {
  std::vector<PlacedFlag> placed;
  std::array<double, kMostFlagRows> free_from{};
  std::array<std::size_t, kMostFlagRows> last_in{};
  for (std::size_t k = 0; k < flags.size(); ++k) {
    if (flags[k].tick < span.from || flags[k].tick > span.to) continue;
    const double x = layout.xOf(flags[k].tick, span);
    const double width = flagWidth(flags[k].again ? QString() : QString::number(flags[k].line));
    const bool mirrored = x + width + kMergedRoom > layout.right + kRightMargin;
    const double first = mirrored ? x - width : x;
    const auto row = static_cast<std::size_t>(
        std::ranges::find_if(free_from, [first](double end) { return end <= first; }) -
        free_from.begin());
    if (row == free_from.size()) {  // no room: counted on the last one of the lowest row
      ++placed[last_in.back()].merged;
      continue;
    }
    // Behind those of the lowest row there is room for "+9".
    const double room = row + 1 == free_from.size() ? kMergedRoom : 0;
    free_from[row] = first + width + kFlagGap + room;
    last_in[row] = placed.size();
    placed.push_back({k, x, mirrored, static_cast<int>(row), 0});
  }
  return placed;
}

std::vector<std::int64_t> axisTicks(const StripLayout& layout, Span span, double least_u) {
  const double least_s = least_u / std::max(1.0, layout.right - layout.left) *
                         static_cast<double>(span.length()) / 100.0;
  const auto found = std::ranges::find_if(
      kSteps_s, [least_s](std::int64_t s) { return static_cast<double>(s) >= least_s; });
  const std::int64_t step = 100 * (found == kSteps_s.end() ? kSteps_s.back() : *found);
  std::vector<std::int64_t> ticks;
  for (std::int64_t t = (span.from + step - 1) / step * step; t <= span.to; t += step)
    ticks.push_back(t);
  return ticks;
}

}  // namespace cabwright::after
