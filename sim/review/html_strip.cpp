// SPDX-License-Identifier: GPL-3.0-or-later
// The small charts of a report.
#include <fmt/format.h>

#include <algorithm>

#include "review/html_report.h"

namespace cabwright::review {
namespace {

constexpr std::int64_t kBefore = 20 * session::kTicksPerSecond;
constexpr std::int64_t kAfter = 5 * session::kTicksPerSecond;
constexpr double kWidth = 300, kHeight = 56, kEdge = 4;

struct Window {
  std::size_t from = 0, to = 0;  // of the history's ticks, the end excluded
  std::int64_t first = 0, last = 0;
  double low = 0, high = 1;
  [[nodiscard]] double x(std::int64_t tick) const {
    return kEdge + (kWidth - 2 * kEdge) * static_cast<double>(tick - first) /
                       static_cast<double>(std::max<std::int64_t>(last - first, 1));
  }
  [[nodiscard]] double y(double value) const {
    return kHeight - kEdge - (kHeight - 2 * kEdge) * (value - low) / (high - low);
  }
};

void widen(Window& window, std::span<const float> values) {
  for (std::size_t k = window.from; k < window.to; ++k) {
    window.low = std::min(window.low, static_cast<double>(values[k]));
    window.high = std::max(window.high, static_cast<double>(values[k]));
  }
}

// Steps, as a value holds from one frame to the next; points that change nothing are left out.
std::string pathOf(const Window& window, std::span<const float> values,
                   const std::vector<std::int64_t>& ticks) {
  std::string path;
  for (std::size_t k = window.from; k < window.to; ++k) {
    const bool is_edge = k == window.from || k + 1 == window.to;
    if (!is_edge && values[k] == values[k - 1] && values[k] == values[k + 1]) continue;
    path += fmt::format("{}{:.1f} {:.1f}", path.empty() ? "M" : "L", window.x(ticks[k]),
                        window.y(static_cast<double>(values[k])));
  }
  return path;
}

}  // namespace

std::string drawStrip(const session::SignalHistory& history, const marking::Reading& reading,
                      std::int64_t tick) {
  const auto& ticks = history.ticks();
  const auto shown = history.series(reading.signal);
  if (shown.empty()) return {};
  Window window;
  window.first = std::max<std::int64_t>(tick - kBefore, 0);
  window.last = tick + kAfter;
  window.from =
      static_cast<std::size_t>(std::ranges::lower_bound(ticks, window.first) - ticks.begin());
  window.to =
      static_cast<std::size_t>(std::ranges::upper_bound(ticks, window.last) - ticks.begin());
  if (window.to - window.from < 2) return {};
  window.low = window.high = static_cast<double>(shown[window.from]);
  widen(window, shown);
  const auto truth =
      reading.counterpart ? history.series(*reading.counterpart) : std::span<const float>();
  if (!truth.empty()) widen(window, truth);
  const std::string low = fmt::format("{:.4g}", window.low);
  const std::string high = fmt::format("{:.4g}", window.high);
  if (window.high - window.low < 1e-6) window.high = window.low + 1;
  const auto& info = unit::signalInfo(reading.signal);
  std::string svg = fmt::format(
      "<svg viewBox=\"0 0 {0} {1}\" width=\"{0}\" height=\"{1}\" role=\"img\" aria-label=\"{2} "
      "from {3} to {4}, between {5} and {6} {7}\">",
      kWidth, kHeight, escapeHtml(info.name), marking::clockText(window.first),
      marking::clockText(window.last), low, high, escapeHtml(info.unit));
  svg += fmt::format("<path class=\"moment\" d=\"M{0:.1f} 0V{1}\"/>", window.x(tick), kHeight);
  if (!truth.empty())
    svg += fmt::format("<path class=\"true\" d=\"{}\"/>", pathOf(window, truth, ticks));
  svg += fmt::format("<path class=\"shown\" d=\"{}\"/>", pathOf(window, shown, ticks));
  svg +=
      fmt::format("<text x=\"{0}\" y=\"10\">{2}</text><text x=\"{0}\" y=\"{1}\">{3}</text></svg>",
                  kEdge, kHeight - 3, high, low);
  return svg;
}

}  // namespace cabwright::review
