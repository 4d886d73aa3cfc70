// SPDX-License-Identifier: GPL-3.0-or-later
// What a monitor is shown: one thing that arrives, and the conditions as they stand.
#pragma once

#include <cstdint>
#include <vector>

#include "marking/rule_set.h"
#include "marking/window.h"
#include "unit/frame.h"

namespace cabwright::marking {

/// All conditions of a rule set as they stand at the last Frame, and what began or ended at it.
class ConditionPool {
 public:
  explicit ConditionPool(std::size_t size) : values_(size, Robust::never()), edges_(size) {}
  void see(const unit::Frame& frame, const RuleSet& rules) {
    for (std::size_t k = 0; k < values_.size(); ++k) {
      values_[k] = Robust::of(rules.conditions()[k].evaluate(frame));
      if (rules.edged()[k]) edges_[k].push(values_[k]);
    }
  }
  /// Before the first Frame nothing holds.
  [[nodiscard]] const Robust& value(ConditionId id) const { return values_[id]; }
  [[nodiscard]] bool begins(ConditionId id) const { return edges_[id].rise().holds; }
  [[nodiscard]] bool ends(ConditionId id) const {
    return edges_[id].hasBefore() && edges_[id].fall().holds;
  }

 private:
  std::vector<Robust> values_;
  std::vector<Edge> edges_;
};

struct Scene {
  std::int64_t tick = 0;
  const unit::Action* act = nullptr;  ///< none: a Frame arrives
  const ConditionPool& pool;
  const unit::Frame& frame;  ///< the last one
};

/// The number of the first way that fits what arrives.
[[nodiscard]] std::optional<std::size_t> findWay(const CompiledEvent& event, const Scene& scene);

/// The condition of a rule, and the one loosened by its tolerance: condition or inside.
[[nodiscard]] Robust calcStrict(const CompiledRule& rule, const Scene& scene);
[[nodiscard]] Robust calcLoose(const CompiledRule& rule, const Scene& scene);
[[nodiscard]] inline bool hasTolerance(const CompiledRule& rule) {
  return rule.inside.has_value() || rule.slack > 0;
}
/// Of an act: whether its tolerance speaks for it now.
[[nodiscard]] inline bool isInside(const CompiledRule& rule, const Scene& scene) {
  return rule.inside && scene.pool.value(*rule.inside).holds;
}

}  // namespace cabwright::marking
