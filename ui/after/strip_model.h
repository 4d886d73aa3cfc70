// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on the strip: lanes of things that are one thing or another (where, which hand holds
// what, lamps), plots of what is measured, and the flags of what fell.
#pragma once

#include <QString>
#include <cstdint>
#include <vector>

#include "after/finished_run.h"
#include "drawing/ink.h"
#include "drawing/verdict.h"

namespace cabwright::after {

/// Those behind the brake stand in a review only: what was wrong with her, what was done, and what
/// belongs to single moments.
enum class LaneKind : std::uint8_t { kPlace, kHand, kLamp, kBrake, kFault, kActions, kSigns };

/// A stretch during which a lane says the same. Ticks, the end excluded.
struct Segment {
  std::int64_t from = 0, to = 0;
  int value = 0;
  QString words;     ///< empty: nothing stands there
  bool lit = false;  ///< of lamps
};

/// Something of one moment, on a lane.
struct Sign {
  std::int64_t tick = 0;
  drawing::VerdictSign verdict = drawing::VerdictSign::kNone;  ///< none: a mark in its tone
  drawing::Tone tone = drawing::Tone::kInk;
  QString words;
  int line = 0;  ///< number on the sheet; 0: none
};

struct Lane {
  LaneKind kind = LaneKind::kPlace;
  unit::Signal signal{};
  QString name;
  std::vector<Segment> segments;  ///< in order of time; without gaps, but for faults
  std::vector<Sign> signs = {};   ///< in order of time
};

struct Curve {
  unit::Signal signal{};
  QString name;  ///< empty: the plot's own name says it
  drawing::Tone tone = drawing::Tone::kCurve1;
  std::vector<double> dash;  ///< u; empty: solid
};

/// Low and high are the ends of its scale, in the unit of its signals.
struct Plot {
  QString name, unit;
  double low = 0, high = 1, step = 1;
  int decimals = 0;
  std::vector<double> limits;  ///< figures that matter
  std::vector<Curve> curves;

  /// What the box of the plot spans: a little more than the scale, so that a curve at its end is
  /// seen whole.
  [[nodiscard]] double bottom() const { return low - 0.05 * (high - low); }
  [[nodiscard]] double top() const { return high + 0.05 * (high - low); }
};

/// A thing that fell, at its moment.
struct Flag {
  std::int64_t tick = 0;
  int line = 0;  ///< number on the sheet
  marking::RuleClass rule_class = marking::RuleClass::kSerious;
  QString title;
  bool again = false;  ///< the same line fell before or after: no number of its own
};

[[nodiscard]] std::vector<Lane> makeLanes(const session::SignalHistory& history, int cab);
[[nodiscard]] std::vector<Plot> makePlots(const session::SignalHistory& history, int cab);
/// In order of time.
[[nodiscard]] std::vector<Flag> makeFlags(const FinishedRun& run);

/// What a lane says at a tick; empty when nothing.
[[nodiscard]] QString wordsAt(const Lane& lane, std::int64_t tick);

}  // namespace cabwright::after
