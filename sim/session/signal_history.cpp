// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/signal_history.h"

#include <algorithm>

namespace cabwright::session {

SignalHistory::SignalHistory(std::span<const unit::Signal> signals) {
  for (const unit::Signal signal : signals)
    if (std::ranges::find(signals_, signal) == signals_.end()) signals_.push_back(signal);
  columns_.resize(signals_.size());
}

void SignalHistory::seeFrame(const unit::Frame& frame) {
  if (frame.tick % kFrameTicks != 0) return;
  if (!ticks_.empty() && ticks_.back() >= frame.tick) return;
  ticks_.push_back(frame.tick);
  for (std::size_t k = 0; k < signals_.size(); ++k) columns_[k].push_back(frame[signals_[k]]);
}

void SignalHistory::cutAfter(std::int64_t tick) {
  ticks_.erase(std::ranges::upper_bound(ticks_, tick), ticks_.end());
  for (std::vector<float>& column : columns_) column.resize(ticks_.size());
}

const std::vector<float>* SignalHistory::findColumn(unit::Signal signal) const {
  const auto found = std::ranges::find(signals_, signal);
  if (found == signals_.end()) return nullptr;
  return &columns_[static_cast<std::size_t>(found - signals_.begin())];
}

std::span<const float> SignalHistory::series(unit::Signal signal) const {
  const std::vector<float>* column = findColumn(signal);
  return column != nullptr ? std::span<const float>(*column) : std::span<const float>();
}

std::optional<float> SignalHistory::findValue(unit::Signal signal, std::int64_t tick) const {
  const std::vector<float>* column = findColumn(signal);
  const auto after = std::ranges::upper_bound(ticks_, tick);
  if (column == nullptr || after == ticks_.begin()) return std::nullopt;
  return (*column)[static_cast<std::size_t>(after - ticks_.begin()) - 1];
}

const std::vector<unit::Signal>& chartSignals() {
  using enum unit::Signal;
  static const std::vector<unit::Signal> kChart{
      kCab1Air,         kCab1TrainPipe,   kCab1ReleasePipe, kCab1GuardsGauge, kCab1Speed,
      kCab1Rpm1,        kCab1Rpm2,        kCab2Air,         kCab2TrainPipe,   kCab2ReleasePipe,
      kCab2GuardsGauge, kCab2Speed,       kCab2Rpm1,        kCab2Rpm2,        kCab1LampEngine1,
      kCab1LampEngine2, kCab1LampAir,     kCab1LampDevice,  kCab1LampCharge,  kCab1LampFire,
      kCab2LampEngine1, kCab2LampEngine2, kCab2LampAir,     kCab2LampDevice,  kCab2LampCharge,
      kCab2LampFire,    kCab1Throttle,    kCab1Gear,        kCab1Brake,       kCab1Reverser,
      kCab1Handbrake,   kCab1Device,      kCab2Throttle,    kCab2Gear,        kCab2Brake,
      kCab2Reverser,    kCab2Handbrake,   kCab2Device,      kEngine1OilGauge, kEngine2OilGauge,
      kSpeed,           kTrueAbsSpeed,    kTruePosition,    kTrueRpm1,        kTrueRpm2,
      kTrueAir,         kTrueTrainPipe,   kTrueReleasePipe, kCab1Signal,      kCab1Mark,
      kPlace,           kHandLeft,        kHandRight,       kLookItem,        kGuardCode,
      kGuardValid,      kHeardWords,
  };
  return kChart;
}

}  // namespace cabwright::session
