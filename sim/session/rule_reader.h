// SPDX-License-Identifier: GPL-3.0-or-later
// Marking rules from a file's words to the marker's own: the one place that knows both.
#pragma once

#include <memory>
#include <variant>
#include <vector>

#include "marking/rule_set.h"
#include "scenario/file_fault.h"
#include "scenario/rule_text.h"

namespace cabwright::session {

/// All faults at once, each at its place in the file; or the rules, in the order of the file. Of a
/// rule that is not whole only what is wrong in the words that are there; who read it said the
/// rest.
[[nodiscard]] std::variant<std::shared_ptr<const marking::RuleSet>, scenario::FileFaults> readRules(
    const std::vector<scenario::RuleText>& rules);

/// The same, for a reader that has faults of its own to tell with them (scenario::RuleCheck).
[[nodiscard]] scenario::FileFaults findRuleFaults(const std::vector<scenario::RuleText>& rules);

}  // namespace cabwright::session
