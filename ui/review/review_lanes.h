// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on the lanes of the timeline: place, hands, actions, faults, marks, and what the
// instructor and the assessor had to say.
#pragma once

#include <cstdint>
#include <vector>

#include "after/strip_model.h"
#include "review_room/opened.h"

namespace cabwright::review_room {

/// A fault from its coming to its going, ticks.
struct FaultStay {
  std::string id;
  QString words;
  std::int64_t from = 0, to = 0;
};

/// As the record tells it; one that is still there goes on to the end of the session.
[[nodiscard]] std::vector<FaultStay> findFaultStays(
    const std::vector<session::TimedAction>& actions, std::int64_t last_tick);

/// From above. Faults that are there at the same time stand in rows, three at most. Without the
/// marks when they are not to be seen (MarksPage::hidesMarks()).
[[nodiscard]] std::vector<after::Lane> makeReviewLanes(const Opened& opened, bool hides_marks);

/// Ticks of the verdicts, in order, each once.
[[nodiscard]] std::vector<std::int64_t> findVerdictTicks(const std::vector<after::Lane>& lanes);

/// What was done, fell or was said at just this tick, in words; empty: nothing.
[[nodiscard]] QString wordsOfMoment(const Opened& opened, const std::vector<after::Lane>& lanes,
                                    std::int64_t tick);

}  // namespace cabwright::review_room
