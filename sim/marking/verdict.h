// SPDX-License-Identifier: GPL-3.0-or-later
// What became of a rule, with the evidence somebody can stand behind.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "marking/rule.h"
#include "unit/frame.h"

namespace cabwright::marking {

/// Five verdicts (RV-LTL and vacuity). At the end of the run pending good becomes met, pending bad
/// broken; not exercised stays what it is and never earns a point. That a line follows from another
/// is said beside it (SheetLine).
enum class Outcome : std::uint8_t { kNotExercised, kPendingGood, kPendingBad, kMet, kBroken };
[[nodiscard]] std::string_view wordOf(Outcome o);

/// A signal as it was at the deciding moment; of a gauge also what was true.
struct Reading {
  unit::Signal signal{};
  float value = 0;
  std::optional<unit::Signal> counterpart;
  float true_value = 0;
};

struct Verdict {
  Outcome outcome = Outcome::kNotExercised;
  bool is_final = false;
  std::int64_t tick = 0;                      ///< when it fell; of a rule not exercised 0
  RuleClass judged_as = RuleClass::kSerious;  ///< of a breach: after tolerance and repetition
  bool inside_tolerance = false;              ///< the breach lay inside the tolerance
  std::optional<double> margin;      ///< positive: by how much it was kept; negative: missed
  std::string unit;                  ///< of the margin
  std::string reason;                ///< one sentence: what was seen
  std::string act;                   ///< the deciding act as it was done; empty: none
  std::string way;                   ///< which of several acceptable ways was taken
  std::vector<std::string> details;  ///< of an order: each step out of place
  std::vector<Reading> readings;
  int times_exercised = 0, times_broken = 0;
  /// Of a lasting breach that ended by itself within the run: how long it lasted, s.
  std::optional<double> corrected_after_s;
};

/// One thing that fell, for the time strip.
struct Mark {
  std::int64_t tick = 0;
  std::size_t rule = 0;
  bool met = false;
  bool inside_tolerance = false;
};

/// "0:07:31.25" of a tick.
[[nodiscard]] std::string clockText(std::int64_t tick);

/// The true counterpart of what an instrument shows, if one number is just that.
[[nodiscard]] std::optional<unit::Signal> findCounterpart(unit::Signal shown);

}  // namespace cabwright::marking
