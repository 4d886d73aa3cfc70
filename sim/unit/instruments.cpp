// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/instruments.h"

#include <algorithm>

namespace cabwright::unit {

namespace {

// Scale and lag by what a gauge measures; the lags are those of common mechanical gauges (CP).
struct Scale {
  std::string_view unit;
  double lowest, highest, lag_s;
};
constexpr Scale kScales[] = {{"psi", 0.0, 120.0, 0.5}, {"inHg", 0.0, 30.0, 0.3},
                             {"mph", 0.0, 80.0, 0.5},  {"rpm", 0.0, 2000.0, 0.3},
                             {"%", 0.0, 100.0, 2.0},   {"C", 0.0, 120.0, 3.0},
                             {"V", 0.0, 40.0, 0.2}};
constexpr double kSlowLagS = 10.0;

InstrumentInfo makeInstrument(Instrument id, std::string_view name, std::string_view unit,
                              Signal signal) {
  InstrumentInfo info{id, name, unit, unit.empty(), 0.0, 1.0, 0.0, signal};
  for (const Scale& s : kScales) {
    if (s.unit != unit) continue;
    info.lowest = s.lowest;
    info.highest = s.highest;
    info.lag_s = s.lag_s;
  }
  return info;
}

std::vector<InstrumentInfo> makeTable() {
  std::vector<InstrumentInfo> table;
#define CABWRIGHT_INSTRUMENT(Y, id, name, unit, text) \
  table.push_back(makeInstrument(Instrument::k##id, name, unit, Signal::k##id));
  CABWRIGHT_INSTRUMENTS(CABWRIGHT_INSTRUMENT, )
#undef CABWRIGHT_INSTRUMENT
  return table;
}

}  // namespace

const std::vector<InstrumentInfo>& instrumentTable() {
  static const std::vector<InstrumentInfo> table = makeTable();
  return table;
}

std::optional<Instrument> findInstrument(std::string_view name) {
  for (const InstrumentInfo& info : instrumentTable()) {
    if (info.name == name) return info.id;
  }
  return std::nullopt;
}

std::optional<InstrumentCondition> findInstrumentCondition(const InstrumentInfo& info,
                                                           std::string_view word) {
  using enum InstrumentCondition;
  if (word == "sound") return kSound;
  if (info.lamp) {
    if (word == "blown") return kBlown;
    if (word == "lit") return kLit;
    return std::nullopt;
  }
  if (word == "stuck") return kStuck;
  if (word == "offset") return kOffset;
  if (word == "slow") return kSlow;
  if (word == "dead") return kDead;
  return std::nullopt;
}

InstrumentState calcInstrument(const InstrumentInfo& info, InstrumentState s, double truth,
                               double dt) {
  using enum InstrumentCondition;
  if (info.lamp) {
    s.shown = s.condition == kLit ? 1.0 : s.condition == kBlown ? 0.0 : truth;
    return s;
  }
  if (s.condition == kStuck) return s;
  const double lag = s.condition == kSlow ? std::max(s.size, kSlowLagS) : info.lag_s;
  const double aim = s.condition == kDead ? info.lowest : truth;
  s.needle += (aim - s.needle) * dt / (lag + dt);
  const double offset = s.condition == kOffset ? s.size : 0.0;
  s.shown = std::clamp(s.needle + offset, info.lowest, info.highest);
  return s;
}

}  // namespace cabwright::unit
