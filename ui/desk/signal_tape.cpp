// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/signal_tape.h"

#include <algorithm>

#include "after/thin_out.h"

namespace cabwright::desk {
namespace {

constexpr std::size_t kDropAtOnce = 1200;

std::size_t indexOf(unit::Signal signal) { return static_cast<std::size_t>(signal); }

}  // namespace

SignalTape::SignalTape() : columns_(unit::kSignalCount) {}

void SignalTape::clear() {
  ticks_.clear();
  columns_.assign(unit::kSignalCount, {});
}

void SignalTape::put(Column& column, float value) {
  const std::size_t row = ticks_.size() - 1;
  if (!column.known) {
    column.known = true;
    column.first = row;
    column.same = value;
  } else if (!column.values.empty()) {
    column.values.push_back(value);
  } else if (value != column.same) {
    column.values.assign(row - column.first, column.same);
    column.values.push_back(value);
  }
  if (value >= kNever) return;
  if (!column.range) column.range = Range{value, value};
  column.range->low = std::min(column.range->low, value);
  column.range->high = std::max(column.range->high, value);
}

void SignalTape::addRow(const unit::Frame& frame) {
  ticks_.push_back(frame.tick);
  for (std::size_t k = 0; k < columns_.size(); ++k) put(columns_[k], frame.value[k]);
}

// Samples of the history between two ticks, both left out.
void SignalTape::takeHistory(const session::SignalHistory& history, std::int64_t after,
                             std::int64_t before) {
  const std::vector<std::int64_t>& ticks = history.ticks();
  auto row = static_cast<std::size_t>(std::ranges::upper_bound(ticks, after) - ticks.begin());
  const auto end =
      static_cast<std::size_t>(std::ranges::lower_bound(ticks, before) - ticks.begin());
  if (end > row + kMostSamples) row = end - kMostSamples;
  if (row >= end) return;
  std::vector<std::span<const float>> series(columns_.size());
  for (const unit::Signal signal : history.signals())
    series[indexOf(signal)] = history.series(signal);
  for (; row < end; ++row) {
    ticks_.push_back(ticks[row]);
    for (std::size_t k = 0; k < columns_.size(); ++k) {
      Column& column = columns_[k];
      if (!series[k].empty()) {
        put(column, series[k][row]);
      } else if (!column.values.empty()) {
        column.values.push_back(column.values.back());
      }
    }
  }
}

bool SignalTape::sample(const session::LiveRun& run) {
  const unit::Frame& frame = run.frame();
  if (!ticks_.empty() && frame.tick < lastTick()) clear();
  if (!ticks_.empty() && frame.tick - lastTick() < kSampleTicks) return false;
  if (ticks_.empty() || frame.tick - lastTick() > 2 * kSampleTicks)
    takeHistory(run.history(), ticks_.empty() ? -1 : lastTick(), frame.tick);
  addRow(frame);
  if (ticks_.size() > kMostSamples + kDropAtOnce) dropOldest();
  return true;
}

void SignalTape::dropOldest() {
  const std::size_t rows = ticks_.size() - kMostSamples;
  const auto head = static_cast<std::ptrdiff_t>(rows);
  ticks_.erase(ticks_.begin(), ticks_.begin() + head);
  for (Column& column : columns_) {
    const std::size_t before = std::min(column.first, rows);
    column.first -= before;
    if (column.values.empty()) continue;
    column.values.erase(column.values.begin(),
                        column.values.begin() + static_cast<std::ptrdiff_t>(rows - before));
  }
}

std::optional<float> SignalTape::findValue(unit::Signal signal, std::int64_t tick) const {
  const Column& column = columns_[indexOf(signal)];
  const auto after =
      static_cast<std::size_t>(std::ranges::upper_bound(ticks_, tick) - ticks_.begin());
  if (!column.known || after == 0 || after - 1 < column.first) return std::nullopt;
  return column.values.empty() ? column.same : column.values[after - 1 - column.first];
}

std::optional<SignalTape::Range> SignalTape::range(unit::Signal signal) const {
  return columns_[indexOf(signal)].range;
}

QList<QPointF> SignalTape::points(unit::Signal signal, std::int64_t from, std::int64_t to) const {
  const Column& column = columns_[indexOf(signal)];
  if (!column.known || column.first >= ticks_.size()) return {};
  const auto known = std::span(ticks_).subspan(column.first);
  if (!column.values.empty()) return after::thinOut(known, column.values, from, to);
  const std::int64_t begin = std::max(from, known.front()), end = std::min(to, known.back());
  if (end < begin) return {};
  const auto at = [&column](std::int64_t tick) {
    return QPointF(static_cast<double>(tick) / 100.0, static_cast<double>(column.same));
  };
  return {at(begin), at(end)};
}

std::size_t SignalTape::bytes() const {
  std::size_t sum = ticks_.capacity() * sizeof(std::int64_t) + columns_.size() * sizeof(Column);
  for (const Column& column : columns_) sum += column.values.capacity() * sizeof(float);
  return sum;
}

}  // namespace cabwright::desk
