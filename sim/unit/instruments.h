// SPDX-License-Identifier: GPL-3.0-or-later
// Gauges and lamps: a layer of their own between the truth and the eye. Each has a condition.
// An instrument is named like its signal: "cab1.air", "cab2.lamp_device", "engine1.oil_gauge".
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "unit/frame.h"

namespace cabwright::unit {

#define CABWRIGHT_INSTRUMENTS(S, Y) \
  CABWRIGHT_CAB_GAUGES(S, Y, 1)     \
  CABWRIGHT_CAB_LAMPS(S, Y, 1)      \
  CABWRIGHT_CAB_GAUGES(S, Y, 2)     \
  CABWRIGHT_CAB_LAMPS(S, Y, 2)      \
  CABWRIGHT_ENGINE_GAUGES(S, Y, 1)  \
  CABWRIGHT_ENGINE_GAUGES(S, Y, 2)  \
  CABWRIGHT_UNIT_GAUGES(S, Y)
#define CABWRIGHT_INSTRUMENT(Y, id, name, unit, text) k##id,
enum class Instrument : std::uint8_t { CABWRIGHT_INSTRUMENTS(CABWRIGHT_INSTRUMENT, ) kCount };
#undef CABWRIGHT_INSTRUMENT
inline constexpr std::size_t kInstrumentCount = static_cast<std::size_t>(Instrument::kCount);
[[nodiscard]] constexpr std::size_t indexOf(Instrument i) { return static_cast<std::size_t>(i); }
[[nodiscard]] constexpr Instrument instrumentOfCab(Instrument of_cab1, int cab) {
  const auto stride = indexOf(Instrument::kCab2Air) - indexOf(Instrument::kCab1Air);
  return static_cast<Instrument>(indexOf(of_cab1) + static_cast<std::size_t>(cab) * stride);
}

enum class InstrumentCondition : std::uint8_t {
  kSound,
  kStuck,   ///< gauge: stays where it is
  kOffset,  ///< gauge: reads too much by its size (in its own unit)
  kSlow,    ///< gauge: lag as long as its size in seconds, ten at least if none is given
  kDead,    ///< gauge: falls to its rest and stays there
  kBlown,   ///< lamp: never lights
  kLit,     ///< lamp: lit whatever is so
};

struct InstrumentInfo {
  Instrument id;
  std::string_view name;
  std::string_view unit;
  bool lamp;
  double lowest, highest;  ///< ends of the scale
  double lag_s;            ///< of a sound one
  Signal signal;
};

[[nodiscard]] const std::vector<InstrumentInfo>& instrumentTable();
[[nodiscard]] std::optional<Instrument> findInstrument(std::string_view name);
/// The condition by its word ("sound", "stuck", "offset", "slow", "dead"; of lamps "sound",
/// "blown", "lit"); none if the word does not fit this kind of instrument.
[[nodiscard]] std::optional<InstrumentCondition> findInstrumentCondition(const InstrumentInfo& info,
                                                                         std::string_view word);

struct InstrumentState {
  InstrumentCondition condition = InstrumentCondition::kSound;
  double size = 0;    ///< offset in the gauge's unit, or seconds of a slow one
  double needle = 0;  ///< where the mechanism stands, without an offset
  double shown = 0;
};

/// One tick of a gauge or lamp towards what it measures. Pure; dt in seconds.
[[nodiscard]] InstrumentState calcInstrument(const InstrumentInfo& info, InstrumentState before,
                                             double truth, double dt);

}  // namespace cabwright::unit
