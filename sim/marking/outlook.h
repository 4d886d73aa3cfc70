// SPDX-License-Identifier: GPL-3.0-or-later
// What a rule that is not decided yet waits for, worked out from its monitor as it stands: what
// would break next, and by when. All words are the rule's own.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "marking/rule.h"
#include "marking/verdict.h"

namespace cabwright::marking {

enum class Waiting : std::uint8_t {
  kEnding,    ///< it is breached: `what` has to end by the deadline
  kComing,    ///< `what` has to come, by the deadline if there is one
  kKeeping,   ///< `what` has to be kept: up to the deadline, until `before` comes, or all the time
  kMissing,   ///< `before` may come, and if it came now the rule would break: `what` is missing
  kAvoiding,  ///< `what` must not come
  kReady,     ///< `before` may come: nothing is missing for it
  kResting,   ///< nothing is asked until `what` comes
};
/// "ending", "coming" ...
[[nodiscard]] std::string_view wordOf(Waiting waiting);

struct Outlook {
  std::size_t rule = 0;  ///< its place among the rules
  RuleClass rule_class = RuleClass::kSerious;
  Outcome outcome = Outcome::kNotExercised;  ///< so far: pending good, pending bad, not exercised
  Waiting waiting = Waiting::kResting;
  std::vector<std::string> what;  ///< events or conditions by the rule's own names, in its order
  std::string before;             ///< the event that judges it, by its name; may be empty
  std::optional<std::int64_t> since;     ///< tick at which it was asked, or the breach began
  std::optional<std::int64_t> deadline;  ///< the last tick that is in time, the tolerance included
  /// Of what is missing only because it is too young: from this tick on it is good.
  std::optional<std::int64_t> good_from;
  std::optional<double> margin;  ///< by how much the condition holds now; negative: does not
  std::string unit;              ///< of the margin
  /// The tick at which it comes to a breach if nothing is done: the deadline, or where the margin
  /// runs out at its present pace. Empty: nobody can tell.
  std::optional<std::int64_t> breaks_at;
};

/// What is nearest first: by the tick at which it breaks, then by what waits (in the order above),
/// then the graver class, then the order of the rules.
void sortByNearness(std::vector<Outlook>& outlooks);

}  // namespace cabwright::marking
