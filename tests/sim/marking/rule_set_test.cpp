// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/rule_set.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "marking/verdict.h"
#include "rig.h"

namespace cabwright::marking {
namespace {

using testing::HasSubstr;

RuleFault onlyFault(RuleSpec spec) {
  const auto faults = faultsOf({std::move(spec)});
  EXPECT_EQ(faults.size(), 1U);
  return faults.empty() ? RuleFault{} : faults.front();
}

TEST(RuleSet, TakesASoundRule) { EXPECT_TRUE(faultsOf({makeAB(RuleKind::kPrecedence)}).empty()); }

TEST(RuleSet, ReportsAllFaultsAtOnceWithTheirPlaces) {
  RuleSpec first = makeRule(RuleKind::kPrecedence, "one");
  first.a = {"did do look_ahed", ""};
  RuleSpec second = makeRule(RuleKind::kNeverWhile, "two");
  second.condition = "true.speed > ";
  second.during = "true.aer < 1 psi";
  second.weight = -1;
  const auto faults = faultsOf({first, second});
  ASSERT_EQ(faults.size(), 5U);
  EXPECT_EQ(faults[0].field, "a");
  EXPECT_EQ(faults[0].at, 4U);
  EXPECT_THAT(faults[0].what, HasSubstr("look_ahead"));
  EXPECT_EQ(faults[1].field, "b");
  EXPECT_THAT(faults[1].what, HasSubstr("precedence needs 'b'"));
  EXPECT_EQ(faults[2].field, "weight");
  EXPECT_EQ(faults[3].field, "condition");
  EXPECT_EQ(faults[3].at, 13U);
  EXPECT_EQ(faults[4].field, "during");
  for (std::size_t k = 2; k < 5; ++k) EXPECT_EQ(faults[k].rule, 1U);
}

TEST(RuleSet, RefusesWhatAKindHasNoUseFor) {
  RuleSpec spec = makeAB(RuleKind::kCoExistence);
  spec.to_s = 3;
  EXPECT_EQ(onlyFault(spec).field, "within");
  spec = makeAB(RuleKind::kPrecedence);
  spec.condition = "true.speed > 1 mph";
  EXPECT_EQ(onlyFault(spec).field, "condition");
  spec = makeAB(RuleKind::kCoExistence);
  spec.tolerance = {"a second", "", 1, std::nullopt};
  EXPECT_EQ(onlyFault(spec).field, "slack");
}

TEST(RuleSet, WantsWholeTicksAndWindowsTheRightWayRound) {
  RuleSpec spec = makeAB(RuleKind::kPrecedence);
  spec.to_s = 0.125;
  EXPECT_THAT(onlyFault(spec).what, HasSubstr("hundredths"));
  spec.to_s = 0.29;  // no whole number of ticks in binary; it is meant as 29
  EXPECT_TRUE(faultsOf({spec}).empty());
  spec.from_s = 0.3;
  EXPECT_THAT(onlyFault(spec).what, HasSubstr("before it begins"));
  spec.from_s = -1;
  EXPECT_EQ(onlyFault(spec).field, "within");
  spec.from_s = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(onlyFault(spec).field, "within");
}

TEST(RuleSet, WantsAToleranceOfEveryCriticalRule) {
  RuleSpec spec = makeAB(RuleKind::kPrecedence);
  spec.rule_class = RuleClass::kCritical;
  EXPECT_EQ(onlyFault(spec).field, "tolerance");
  spec.tolerance.text = "none: it is done or it is not";
  EXPECT_TRUE(faultsOf({spec}).empty());
  spec.tolerance.falls_to = RuleClass::kCritical;
  EXPECT_EQ(onlyFault(spec).field, "tolerance");
}

TEST(RuleSet, WantsATimeOfACriticalRuleOverSignals) {
  RuleSpec spec = makeRule(RuleKind::kNeverWhile);
  spec.condition = "true.speed > 1 mph";
  spec.rule_class = RuleClass::kCritical;
  spec.tolerance.text = "none";
  EXPECT_EQ(onlyFault(spec).field, "for");
  spec.for_s = 0.1;
  EXPECT_TRUE(faultsOf({spec}).empty());
}

TEST(RuleSet, HoldsARuleToWhatItSaysItReads) {
  RuleSpec spec = makeRule(RuleKind::kHoldFor);
  spec.b = {kB, ""};
  spec.condition = "true.air >= 75 psi";
  spec.reads = Reads::kShown;
  EXPECT_THAT(onlyFault(spec).what, HasSubstr("true.air"));
  spec.condition = "cab1.air >= 75 psi";
  EXPECT_TRUE(faultsOf({spec}).empty());
  spec.reads = Reads::kTrue;
  EXPECT_THAT(onlyFault(spec).what, HasSubstr("write true.air"));
}

TEST(RuleSet, WantsIdsOfTheirOwn) {
  RuleSpec one = makeAB(RuleKind::kPrecedence), two = one;
  EXPECT_EQ(faultsOf({one, two}).at(0).field, "id");
  two.id = "has blank";
  EXPECT_EQ(faultsOf({one, two}).at(0).field, "id");
  two.id = "";
  EXPECT_EQ(faultsOf({one, two}).at(0).field, "id");
}

TEST(RuleSet, FollowsKnownRulesAndNeverInARing) {
  RuleSpec one = makeAB(RuleKind::kPrecedence), two = one, three = one;
  one.id = "one";
  two.id = "two";
  three.id = "three";
  two.follows = {"oen"};
  EXPECT_THAT(faultsOf({one, two}).at(0).what, HasSubstr("one"));
  two.follows = {"two"};
  EXPECT_THAT(faultsOf({one, two}).at(0).what, HasSubstr("itself"));
  one.follows = {"two"};
  two.follows = {"three"};
  EXPECT_TRUE(faultsOf({one, two, three}).empty());
  three.follows = {"one"};
  EXPECT_THAT(faultsOf({one, two, three}).at(0).what, HasSubstr("in turn"));
}

TEST(RuleSet, WorksOutEqualConditionsOnce) {
  RuleSpec spec = makeRule(RuleKind::kHoldFor, "one");
  spec.b = {"did press cab1.start1 if true.air >= 75 psi", ""};
  spec.condition = "true.air >= 75 psi";
  RuleSpec other = spec;
  other.id = "two";
  EXPECT_EQ(compiled({spec, other})->conditions().size(), 1U);
}

TEST(RuleWords, GoBothWays) {
  EXPECT_EQ(ruleKindWords().size(), 22U);
  for (std::string_view word : ruleKindWords()) EXPECT_EQ(wordOf(findRuleKind(word).value()), word);
  EXPECT_FALSE(findRuleKind("precedents"));
  EXPECT_EQ(findRuleClass("C"), RuleClass::kCritical);
  EXPECT_EQ(findRuleClass("serious"), RuleClass::kSerious);
  EXPECT_EQ(findReads("shown"), Reads::kShown);
}

// Each gauge and its truth exist, are of one unit, and lie in the right layers.
TEST(Counterpart, OfAGaugeIsATruthOfTheSameUnit) {
  int found = 0;
  for (const unit::SignalInfo& info : unit::signalTable()) {
    const auto truth = findCounterpart(info.id);
    if (!truth) continue;
    ++found;
    EXPECT_EQ(unit::signalInfo(*truth).unit, info.unit) << info.name;
    EXPECT_EQ(unit::signalInfo(*truth).layer, unit::Layer::kTrue) << info.name;
  }
  EXPECT_EQ(found, 21);
}

}  // namespace
}  // namespace cabwright::marking
