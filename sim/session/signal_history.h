// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps chosen signals of a run for charts, ten values a second, one column for each signal.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "session/record.h"

namespace cabwright::session {

class SignalHistory final : public Witness {
 public:
  /// Each signal once; repeated ones are left out.
  explicit SignalHistory(std::span<const unit::Signal> signals);

  /// Takes the frames of every tenth tick; those shown before an action lie between and are not
  /// needed for a chart.
  void seeFrame(const unit::Frame& frame) override;
  void seeAction(const TimedAction&) override {}
  void seeHash(const StateHash&) override {}

  /// Forgets what came after this tick.
  void cutAfter(std::int64_t tick);

  [[nodiscard]] const std::vector<unit::Signal>& signals() const { return signals_; }
  /// Number of values in each series; value k is that of ticks()[k].
  [[nodiscard]] std::size_t size() const { return ticks_.size(); }
  [[nodiscard]] const std::vector<std::int64_t>& ticks() const { return ticks_; }
  /// Empty for a signal that is not kept. Good until the next frame.
  [[nodiscard]] std::span<const float> series(unit::Signal signal) const;
  /// The value at or before a tick; empty before the first and for a signal that is not kept.
  [[nodiscard]] std::optional<float> findValue(unit::Signal signal, std::int64_t tick) const;

 private:
  [[nodiscard]] const std::vector<float>* findColumn(unit::Signal signal) const;
  std::vector<unit::Signal> signals_;
  std::vector<std::int64_t> ticks_;
  std::vector<std::vector<float>> columns_;  ///< in the order of signals_
};

/// What charts and the debrief are made of: gauges and lamps of both desks, their driving controls,
/// speed and engines as they were, and what the trainee was at: place, hands, look.
[[nodiscard]] const std::vector<unit::Signal>& chartSignals();

}  // namespace cabwright::session
