// SPDX-License-Identifier: GPL-3.0-or-later
// Short ways to write rules and runs in the tests of marking.
#pragma once

#include <gtest/gtest.h>

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "marking/marker.h"
#include "marking/rule_set.h"

namespace cabwright::marking {

/// Three acts that mean nothing to each other.
inline const std::string kA = "did do look_ahead";
inline const std::string kB = "did do look_back";
inline const std::string kC = "did do look_along";
inline unit::Action actOf(char letter) {
  static const std::map<char, std::string> objects{
      {'a', "look_ahead"}, {'b', "look_back"}, {'c', "look_along"}, {'d', "stand_clear"}};
  return {unit::Actor::kTrainee, "do", objects.at(letter), ""};
}

inline RuleSpec makeRule(RuleKind kind, std::string id = "rule") {
  RuleSpec spec;
  spec.id = std::move(id);
  spec.title = "what is asked";
  spec.reason = "because";
  spec.kind = kind;
  spec.reads = Reads::kTrue;
  return spec;
}
inline RuleSpec makeAB(RuleKind kind) {
  RuleSpec spec = makeRule(kind);
  spec.a = {kA, "A"};
  spec.b = {kB, "B"};
  return spec;
}

inline std::shared_ptr<const RuleSet> compiled(std::vector<RuleSpec> rules) {
  auto result = compileRules(std::move(rules));
  if (const auto* faults = std::get_if<std::vector<RuleFault>>(&result)) {
    for (const RuleFault& f : *faults) ADD_FAILURE() << f.rule << " " << f.field << ": " << f.what;
    return std::get<0>(compileRules({}));
  }
  return std::get<0>(result);
}

inline std::vector<RuleFault> faultsOf(std::vector<RuleSpec> rules) {
  auto result = compileRules(std::move(rules));
  if (auto* faults = std::get_if<std::vector<RuleFault>>(&result)) return std::move(*faults);
  return {};
}

/// A run told step by step.
class Story {
 public:
  explicit Story(RuleSpec rule) : Story(std::vector<RuleSpec>{std::move(rule)}) {}
  explicit Story(std::vector<RuleSpec> rules) : marker(compiled(std::move(rules))) {}

  /// A Frame with one signal changed; the others stay.
  Story& frame(std::int64_t tick, unit::Signal signal, double value) {
    now_[signal] = static_cast<float>(value);
    return frame(tick);
  }
  Story& frame(std::int64_t tick) {
    now_.tick = tick;
    marker.seeFrame(now_);
    return *this;
  }
  Story& set(unit::Signal signal, double value) {
    now_[signal] = static_cast<float>(value);
    return *this;
  }
  Story& act(std::int64_t tick, char letter) { return act(tick, actOf(letter)); }
  Story& act(std::int64_t tick, const unit::Action& action) {
    marker.seeAction(tick, action);
    return *this;
  }
  Story& act(std::int64_t tick, const std::string& text) {
    return act(tick, std::get<unit::Action>(unit::parseAction(text)));
  }
  Story& finish(std::int64_t tick) {
    marker.finish(tick);
    return *this;
  }
  [[nodiscard]] Verdict verdict(std::size_t rule = 0) const { return marker.verdicts().at(rule); }
  [[nodiscard]] Outcome outcome(std::size_t rule = 0) const { return verdict(rule).outcome; }

  Marker marker;

 private:
  unit::Frame now_;
};

inline void PrintTo(Outcome outcome, std::ostream* out) { *out << wordOf(outcome); }

}  // namespace cabwright::marking
