// SPDX-License-Identifier: GPL-3.0-or-later
// The same run twice, sound and with a fault in it, and what can be perceived of the difference.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>

#include "fault_rig.h"

namespace cabwright::testing {

/// From what a run begins.
struct Setup {
  unit::UnitStart start = readyStart();
  double gradient = 0;  ///< rise over run towards growing positions
};

/// Done at a time of the run, as text.
struct Deed {
  double at_s = 0;
  std::string act;
};

/// What is read of a signal between two times: its last value, extremes, mean, or swing.
enum class Reading { kEnd, kMax, kMin, kMean, kSwing };

struct Look {
  std::string signal;
  Reading reading = Reading::kEnd;
  double from_s = 0, to_s = 0;
};

struct SymptomRow {
  std::string fault;
  double size = 0;  ///< 0: its usual one
  Setup setup;
  std::vector<Deed> deeds;
  Look look;
  double more = 0;  ///< so much more with the fault than without it (less, if negative)
};

inline double readRun(const SymptomRow& row, bool with_fault) {
  unit::Route route;
  if (row.setup.gradient != 0.0) route.grades = {{-1000.0, row.setup.gradient, 0.0}};
  unit::Unit unit(plant::Parameters(), route, row.setup.start);
  fault::ActiveFaults faults;
  if (with_fault) faults.arm(armed(row.fault, row.size));
  const unit::Signal signal = unit::findSignal(row.look.signal).value();
  double low = 1e18, high = -1e18, sum = 0.0, last = 0.0;
  std::size_t next = 0;
  std::int64_t count = 0;
  const auto ticks = static_cast<std::int64_t>(row.look.to_s * 100.0 + 0.5);
  for (std::int64_t k = 0; k < ticks; ++k) {
    faults.advance(unit);
    for (; next < row.deeds.size() && row.deeds[next].at_s * 100.0 <= static_cast<double>(k);
         ++next) {
      const auto outcome =
          unit.apply(std::get<unit::Action>(unit::parseAction(row.deeds[next].act)));
      EXPECT_TRUE(outcome.accepted) << row.fault << ": " << row.deeds[next].act << ": "
                                    << outcome.perceived << " " << outcome.cause;
    }
    unit.advance();
    if (static_cast<double>(k) < row.look.from_s * 100.0) continue;
    last = static_cast<double>(unit.frame()[signal]);
    low = std::min(low, last);
    high = std::max(high, last);
    sum += last;
    ++count;
  }
  switch (row.look.reading) {
    case Reading::kMax:
      return high;
    case Reading::kMin:
      return low;
    case Reading::kMean:
      return sum / static_cast<double>(count);
    case Reading::kSwing:
      return high - low;
    case Reading::kEnd:
      break;
  }
  return last;
}

}  // namespace cabwright::testing
