// SPDX-License-Identifier: GPL-3.0-or-later
// A moment of a run kept as a scenario: whoever begins with the file finds the world as it stood.
//
// Kept are all start conditions: every number of the machine, controls and what hands hold, loose
// things, hidden conditions, faults at work and to come, signals, weather, people, and what guard,
// signaller and scenario have not done yet. Not kept, besides what unit_start_of.h names: what a
// fault that grows had still to grow, what is left of a delay that had begun, and needles on their
// way. Those that are so just now are told in words.
#pragma once

#include <string>
#include <vector>

#include "scenario/draft.h"
#include "scenario/scenario.h"
#include "session/run.h"

namespace cabwright::session {

struct KeptMoment {
  scenario::Draft draft;
  std::vector<std::string> not_kept;  ///< one sentence each; empty if the file says all
};

/// A new scenario that begins at this moment, for practice. `loaded` is what the run was made of.
/// Its marking and its guide are left out: they speak of an exercise from its beginning.
[[nodiscard]] KeptMoment calcDraftFrom(const Run& run, const scenario::LoadedScenario& loaded,
                                       const std::string& title);

/// The same put into a draft there is, in the place of its conditions, start, people, hidden
/// things, draws, faults and events; head, guide and marking stay. Gives what is not kept.
std::vector<std::string> putMoment(scenario::Draft& draft, const Run& run,
                                   const scenario::LoadedScenario& loaded);

}  // namespace cabwright::session
