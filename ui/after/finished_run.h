// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be looked at after a run: its sheet, what was done, and what all gauges showed. It
// comes from a run that has just ended, or from a recorded one.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "marking/sheet.h"
#include "session/live_run.h"

namespace cabwright::after {

struct FinishedRun {
  marking::MarkSheet sheet;
  std::vector<marking::Mark> marks;  ///< all that fell, in order of time; may be empty
  std::vector<session::TimedAction> actions;
  /// Must outlive whatever is made from this. At least chartSignals().
  const session::SignalHistory* history = nullptr;
  /// All signals at a tick; may take some hundredths of a second.
  std::function<unit::Frame(std::int64_t tick)> frame_at;
  /// Whether a moment can be taken again: not in assessment.
  bool may_take_again = false;
};

/// The run must outlive whatever is made from this, and has ended.
[[nodiscard]] FinishedRun makeFinishedRun(const session::LiveRun& run);

/// 1 or 2: the cab that was driven from; 1 if none was.
[[nodiscard]] int findLeadingCab(const session::SignalHistory& history);

/// The same signal of that cab.
[[nodiscard]] unit::Signal ofCab(unit::Signal of_cab1, int cab);

/// How long before a mark it is taken again, ticks: long enough to see it coming.
inline constexpr std::int64_t kLeadTicks = 10 * session::kTicksPerSecond;

/// Whether a broken line never came up, though it had to: it has no moment of its own.
[[nodiscard]] bool neverCame(const marking::SheetLine& line);
/// When a line fell, ticks; of one that never came up the end of the run.
[[nodiscard]] std::int64_t momentOf(const marking::MarkSheet& sheet,
                                    const marking::SheetLine& line);

/// Where to take a line again from. Empty: not in this run, or it never came up.
[[nodiscard]] std::optional<std::int64_t> findTakeAgainTick(const FinishedRun& run,
                                                            const marking::SheetLine& line);

/// Broken lines that count by themselves, in order of the sheet: criticals first.
[[nodiscard]] std::vector<const marking::SheetLine*> findBrokenLines(
    const marking::MarkSheet& sheet);
/// Broken lines that another one dragged along.
[[nodiscard]] std::vector<const marking::SheetLine*> findFollowing(const marking::MarkSheet& sheet,
                                                                   int line);

}  // namespace cabwright::after
