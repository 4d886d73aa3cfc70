// SPDX-License-Identifier: GPL-3.0-or-later
// The one road out: everything anyone can perceive or measure at one tick, as plain values.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "unit/signal_list.h"

namespace cabwright::unit {

enum class Layer : std::uint8_t {
  kShown,  ///< what a gauge, a lamp or the ear gives: may be wrong when the instrument is
  kTrue,   ///< what is so: for the instructor, the assessor and rules about harm
  kDone,   ///< what people have set, hold, carry, judged or said
};

#define CABWRIGHT_SIGNAL(id, name, unit, layer, text) id,
enum class Signal : std::uint16_t { CABWRIGHT_SIGNALS(CABWRIGHT_SIGNAL) kCount };
#undef CABWRIGHT_SIGNAL
inline constexpr std::size_t kSignalCount = static_cast<std::size_t>(Signal::kCount);

/// Values are single precision: that is what is recorded, so a rule sees the same live and later.
/// Switches and lamps are 0 or 1.
struct Frame {
  std::int64_t tick = 0;
  std::array<float, kSignalCount> value{};
  [[nodiscard]] float operator[](Signal s) const { return value[static_cast<std::size_t>(s)]; }
  float& operator[](Signal s) { return value[static_cast<std::size_t>(s)]; }
};

struct SignalInfo {
  Signal id;
  std::string_view name;  ///< dotted, e.g. "cab1.air"
  std::string_view unit;  ///< "psi", "inHg", "mph", "rpm", "C", "V", "" for plain numbers
  Layer layer;
  std::string_view text;  ///< what it is, one line
};

[[nodiscard]] std::span<const SignalInfo> signalTable();
[[nodiscard]] std::optional<Signal> findSignal(std::string_view name);
[[nodiscard]] const SignalInfo& signalInfo(Signal s);

}  // namespace cabwright::unit
