// SPDX-License-Identifier: GPL-3.0-or-later
// Which truths there are, by system, and which gauges and lamps speak of each.
#pragma once

#include <array>
#include <optional>
#include <span>

#include "desk/truth_rows.h"

namespace cabwright::desk {

struct TruthSource {
  System system = System::kAir;
  std::optional<unit::Signal> signal;  ///< none: a lamp that should burn, or worked out
  /// Name and unit where they are not the signal's own; English, context TruthView.
  const char* name = nullptr;
  const char* unit = nullptr;
  std::array<std::optional<unit::Instrument>, kGaugeColumns> gauges{};
};

[[nodiscard]] std::span<const TruthSource> truthTable();

/// The value now, in the row's unit; of a lamp 1 when the circuits feed it.
[[nodiscard]] double readTruth(const TruthSource& source, const session::LiveRun& run);

}  // namespace cabwright::desk
