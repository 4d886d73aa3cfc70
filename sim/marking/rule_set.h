// SPDX-License-Identifier: GPL-3.0-or-later
// Rules checked and made ready.
#pragma once

#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "marking/event.h"
#include "marking/rule.h"
#include "unit/condition.h"

namespace cabwright::marking {

/// What is wrong with a rule. `field` is the name of a field of RuleSpec as files write it ("a",
/// "b", "steps", "reset", "condition", "condition_name", "during", "during_name", "first_only",
/// "inside", "slack", "within", "for", "times", "measure", "by", "follows", "tolerance", "weight",
/// "id", "title", "reason", "repeated"); `item` the position in a list; `at` the offset inside that
/// text.
struct RuleFault {
  std::size_t rule = 0;
  std::string field;
  std::size_t item = 0;
  std::size_t at = 0;
  std::string what;
};

class RuleSet;

/// All faults at once, in order of rules; or the set. Bounds have to be whole ticks.
[[nodiscard]] std::variant<std::shared_ptr<const RuleSet>, std::vector<RuleFault>> compileRules(
    std::vector<RuleSpec> rules, const WordCheck& check = findWordFault);

/// A condition by its place in the pool: equal ones are worked out once for all rules.
using ConditionId = std::size_t;

struct CompiledWay {
  EventWay way;
  std::optional<ConditionId> condition, guard;
};
struct CompiledEvent {
  std::vector<CompiledWay> ways;
  std::string name;  ///< for sentences
};

/// A rule with its texts read and its seconds in ticks.
struct CompiledRule {
  RuleSpec spec;
  CompiledEvent a, b, reset;
  std::vector<CompiledEvent> steps;
  std::optional<ConditionId> condition, during, inside;
  std::int64_t lo = 0;
  std::optional<std::int64_t> hi;
  std::int64_t hold = 0, slack = 0;
  std::optional<unit::Signal> measure;
  std::vector<std::size_t> follows;
  std::vector<unit::Signal> signals;  ///< all it reads, each once
};

class RuleSet {
 public:
  [[nodiscard]] const std::vector<CompiledRule>& rules() const { return rules_; }
  [[nodiscard]] const std::vector<unit::Condition>& conditions() const { return conditions_; }
  /// Whether some event waits for this condition to begin or end.
  [[nodiscard]] const std::vector<bool>& edged() const { return edged_; }

 private:
  friend class RuleCompiler;
  std::vector<CompiledRule> rules_;
  std::vector<unit::Condition> conditions_;
  std::vector<bool> edged_;
};

}  // namespace cabwright::marking
