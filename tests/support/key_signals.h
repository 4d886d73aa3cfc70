// SPDX-License-Identifier: GPL-3.0-or-later
// What people see of the machine, written down ten times a second, and how far two runs differ.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>
#include <vector>

#include "plant/world.h"

namespace cabwright::testing {

inline constexpr std::size_t kKeySignals = 21;
using KeyRow = std::array<double, kKeySignals>;

[[nodiscard]] const std::array<std::string_view, kKeySignals>& keySignalNames();
[[nodiscard]] KeyRow calcKeyRow(const plant::World& world);

struct GoldenRun {
  std::vector<KeyRow> rows;  ///< every tenth tick
  std::vector<plant::PlantEvent> events;
  plant::StepCounts counts;
};

/// Plays the golden script through a world with this method; throws if the world fails.
[[nodiscard]] GoldenRun runGolden(std::unique_ptr<plant::StepMethod> method,
                                  const plant::Parameters& vehicle = plant::Parameters(),
                                  double ambient_c = 2.0);

/// Differences of two runs, each signal relative to its range in the reference.
struct SignalError {
  std::array<double, kKeySignals> p99{}, most{};
  double worst_p99 = 0, worst = 0;
  std::size_t worst_signal = 0;
};
[[nodiscard]] SignalError compareRuns(const std::vector<KeyRow>& run,
                                      const std::vector<KeyRow>& reference);

}  // namespace cabwright::testing
