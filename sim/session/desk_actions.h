// SPDX-License-Identifier: GPL-3.0-or-later
// What an instructor does at the desk, as actions: made here, read back here. All are taken and
// recorded like any other (LiveRun::take); in scripts they are written with "instructor: " in
// front.
//
//   arm FAULT [size N] [ramp 30 s] [after 5 s] [when CONDITION] [as ID]     scenario/arm_words.h
//   clear ID
//   pace frozen|0.1|0.25|0.5|1|2|5|10      how fast time passes from here on (unit/pace.h)
//   mark NAME                              a moment to come back to (LiveRun::goBackTo)
//   remark general TEXT                    a remark at this second
//   remark prompt TEXT                     the same, said to the trainee: help that was given
//   intervene TEXT                         "I stepped in here": ends the unaided part
//
// pace, mark, remark and intervene change nothing in the world.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "scenario/arm_words.h"
#include "scenario/scenario.h"
#include "unit/action.h"
#include "unit/pace.h"
#include "unit/unit.h"

namespace cabwright::session {

[[nodiscard]] unit::Action makePace(const unit::Pace& pace);
/// The pace that a `pace` asks for; none of any other action.
[[nodiscard]] std::optional<unit::Pace> findPaceOf(const unit::Action& action);

[[nodiscard]] unit::Action makeMark(std::string_view name);
[[nodiscard]] std::optional<std::string> findMarkName(const unit::Action& action);

/// What a remark is about, where the sheet sets it apart from others.
inline constexpr std::string_view kPrompt = "prompt";
inline constexpr std::string_view kTakenAgain = "taken_again";  ///< said by LiveRun itself

[[nodiscard]] unit::Action makeRemark(std::string_view text);
[[nodiscard]] unit::Action makePrompt(std::string_view text);
[[nodiscard]] unit::Action makeIntervene(std::string_view text);
/// The words of a remark (with what it is about in front, unless that is "general") or of an
/// intervention; none of any other action.
[[nodiscard]] std::optional<std::string> findRemark(const unit::Action& action);
[[nodiscard]] std::optional<std::string> findIntervention(const unit::Action& action);

/// What has to be known of a run to say whether the desk may do something in it.
struct DeskSituation {
  scenario::Mode mode = scenario::Mode::kPractice;
  std::int64_t tick = 0;
  std::optional<std::int64_t> intervened_at;  ///< the last intervention
  unit::Pace pace = unit::kStandardPace;
  const unit::Unit* unit = nullptr;  ///< what is hidden in it; null: as if nothing were
};

/// In an assessment `pace frozen` belongs to an intervention: it may come so long after it.
inline constexpr std::int64_t kFreezeTicks = 1000;

/// Why this must not be done, in words; nothing where it may. In guided and practice runs all may.
/// In an assessment refused is what would make the evidence worth less:
///   - a pace other than 1, unless it is `frozen` with an intervention (kFreezeTicks);
///   - before any intervention: acting for the trainee (a control of the cab or the machine set by
///     instructor or scenario, a loose thing put elsewhere, a tooth turned), and taking away or
///     changing a condition that was put into a thing.
/// Faults armed and cleared, remarks, marks, interventions, signals, guard, signaller and helper
/// are allowed at any time, and all the trainee does.
[[nodiscard]] std::optional<std::string> findDeskFault(const DeskSituation& situation,
                                                       const unit::Action& action);
/// The same for going back to a moment.
[[nodiscard]] std::optional<std::string> findGoBackFault(scenario::Mode mode);

}  // namespace cabwright::session
