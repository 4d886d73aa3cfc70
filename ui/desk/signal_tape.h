// SPDX-License-Identifier: GPL-3.0-or-later
// The last twenty minutes of every signal of a run, ten values a second: whatever is put on a strip
// has its past. A signal that has not changed takes no room.
//
// It only looks at the run. Between two looks the run may have gone on for a while (time that is
// let pass); then the gauges have their values in between from the run's own history, and all
// others are taken to have stood.
#pragma once

#include <QList>
#include <QPointF>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "session/live_run.h"

namespace cabwright::desk {

/// What some signals say when there is nothing to say yet ("9999: never").
inline constexpr float kNever = 9999;

class SignalTape {
 public:
  static constexpr std::int64_t kSampleTicks = session::kFrameTicks;
  static constexpr std::size_t kMostSamples = 12000;  ///< twenty minutes

  SignalTape();
  /// Forgets all.
  void clear();
  /// Takes what the run shows now, unless the last sample is younger than a tenth of a second.
  /// The first time it also takes what the run's own history holds. True: there is something new.
  bool sample(const session::LiveRun& run);

  [[nodiscard]] bool isEmpty() const { return ticks_.empty(); }
  /// Of all samples; good until the next one.
  [[nodiscard]] std::span<const std::int64_t> ticks() const { return ticks_; }
  [[nodiscard]] std::int64_t firstTick() const { return ticks_.empty() ? 0 : ticks_.front(); }
  [[nodiscard]] std::int64_t lastTick() const { return ticks_.empty() ? 0 : ticks_.back(); }

  /// The value at or before a tick; empty before the signal is known.
  [[nodiscard]] std::optional<float> findValue(unit::Signal signal, std::int64_t tick) const;
  /// Lowest and highest value since the tape began, "never" left out. Empty: none.
  struct Range {
    float low = 0, high = 0;
  };
  [[nodiscard]] std::optional<Range> range(unit::Signal signal) const;
  /// From tick to tick in as many points as can be seen (after/thin_out.h); x in seconds.
  [[nodiscard]] QList<QPointF> points(unit::Signal signal, std::int64_t from,
                                      std::int64_t to) const;
  /// Bytes it takes up, about.
  [[nodiscard]] std::size_t bytes() const;

 private:
  struct Column {
    std::size_t first = 0;      ///< sample from which on it is known
    bool known = false;         ///< at all
    float same = 0;             ///< its value while `values` is empty
    std::vector<float> values;  ///< of the samples from `first` on, once it has changed
    std::optional<Range> range;
  };
  void addRow(const unit::Frame& frame);
  void put(Column& column, float value);
  void takeHistory(const session::SignalHistory& history, std::int64_t after, std::int64_t before);
  void dropOldest();

  std::vector<std::int64_t> ticks_;
  std::vector<Column> columns_;
};

}  // namespace cabwright::desk
