// SPDX-License-Identifier: GPL-3.0-or-later
// What is so, beside what the gauges and lamps say of it: plain rows, by system.
#pragma once

#include <QString>
#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "session/live_run.h"
#include "unit/instruments.h"

namespace cabwright::desk {

enum class System : std::uint8_t {
  kAir,
  kVacuum,
  kEngines,
  kDrive,
  kBrake,
  kElectrics,
  kCab,
  kTrain,
  kCount
};
[[nodiscard]] QString nameOf(System system);

/// Where a gauge hangs: a column of the table.
enum class GaugeColumn : std::uint8_t { kCab1, kCab2, kSpot, kCount };
inline constexpr std::size_t kGaugeColumns = static_cast<std::size_t>(GaugeColumn::kCount);

enum class Agreement : std::uint8_t {
  kAgrees,   ///< within what can be read off it
  kSuspect,  ///< broken, and right at the moment
  kDiffers,
};

/// What one gauge or lamp says.
struct GaugeSays {
  unit::Instrument instrument{};
  float shown = 0;
  Agreement agreement = Agreement::kAgrees;
  /// What is wrong with it, in the words of the trade: "stuck"; empty: it is sound.
  QString broken;
};

struct TruthRow {
  System system = System::kAir;
  QString name, unit;
  std::optional<unit::Signal> signal;  ///< whose value it is; none of a lamp or a worked-out one
  double value = 0;
  std::array<std::optional<GaugeSays>, kGaugeColumns> gauges;

  /// As it is written: "81.3", "lit", "forward".
  [[nodiscard]] QString valueText() const;
  /// Likewise of what a gauge shows.
  [[nodiscard]] QString shownText(GaugeColumn column) const;
  /// What is not as it should be with its gauges, in one line: "cab 1 reads 7 psi high: offset";
  /// empty: nothing.
  [[nodiscard]] QString finding() const;
  /// The worst of its gauges.
  [[nodiscard]] Agreement agreement() const;
};

/// How near a gauge can be read, in its own unit; half of a lamp's switch for lamps.
[[nodiscard]] double readingAccuracy(std::string_view unit);

/// Follows a run. Gauges lag behind what they measure: what a sound one would show is worked out
/// beside each, and that is what it is held against.
class TruthRows {
 public:
  TruthRows();
  void clear();
  void update(const session::LiveRun& run);
  /// By system, in a fixed order.
  [[nodiscard]] const std::vector<TruthRow>& rows() const { return rows_; }

 private:
  void readGauge(const session::LiveRun& run, TruthRow& row, GaugeSays& says, double dt_s);
  std::vector<TruthRow> rows_;
  /// What a sound one would show, and what was so when it was last worked out.
  struct Sound {
    unit::InstrumentState state;
    double truth = 0;
  };
  std::array<std::optional<Sound>, unit::kInstrumentCount> sound_;
  std::int64_t tick_ = -1;
};

}  // namespace cabwright::desk
