// SPDX-License-Identifier: GPL-3.0-or-later
// Rules out of tables. Used by the readers only.
#pragma once

#include <vector>

#include "scenario/rule_text.h"
#include "scenario/table_reader.h"

namespace cabwright::scenario {

/// Reads one [[rule]]; what is wrong goes to the sink.
[[nodiscard]] RuleText readRule(TableReader& table);
/// Reads keys that replace those of a known rule; `id` is given as "rule".
[[nodiscard]] RuleText readRuleChange(TableReader& table);
/// All of a file or scenario; ids are looked at for doubles.
[[nodiscard]] std::vector<RuleText> readRules(TableReader& root);
/// Puts the keys of a change over those of a rule.
void applyChange(const RuleText& change, RuleText& rule);

}  // namespace cabwright::scenario
