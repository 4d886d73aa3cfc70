// SPDX-License-Identifier: GPL-3.0-or-later
// Several things before b, in an order or in any: against their definitions by brute force, all
// words over {a,b,c,d} up to length 6, one letter each tick.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdint>
#include <string>
#include <vector>

#include "rig.h"

namespace cabwright::marking {
namespace {

using ::testing::HasSubstr;

std::vector<std::string> allWords(std::size_t longest) {
  std::vector<std::string> words{""};
  for (std::size_t from = 0; words[from].size() < longest; ++from) {
    for (char letter : {'a', 'b', 'c', 'd'}) words.push_back(words[from] + letter);
  }
  return words;
}

RuleSpec makeSteps(RuleKind kind) {
  RuleSpec spec = makeRule(kind);
  spec.steps = {{kA, "A"}, {kC, "C"}};
  spec.b = {kB, "B"};
  return spec;
}

Outcome play(const RuleSpec& rule, const std::string& word) {
  Story story(rule);
  story.frame(0);
  for (std::size_t k = 0; k < word.size(); ++k)
    story.act(static_cast<std::int64_t>(k) + 1, word[k]);
  story.finish(100);
  return story.outcome();
}

// a at i, c at j, i < j < k, no reset from i on up to j.
bool isInSequence(const std::string& w, std::size_t k, bool resets) {
  for (std::size_t j = 0; j < k; ++j) {
    if (w[j] != 'c') continue;
    for (std::size_t i = 0; i < j; ++i) {
      const bool broken = resets && w.substr(i, j - i).find('d') != std::string::npos;
      if (w[i] == 'a' && !broken) return true;
    }
  }
  return false;
}

template <class Holds>
void compareAll(const RuleSpec& rule, Holds holds) {
  for (const std::string& w : allWords(6)) {
    bool exercised = false, kept = true;
    for (std::size_t k = 0; k < w.size(); ++k) {
      if (w[k] != 'b' || (rule.first_only && exercised)) continue;
      exercised = true;
      kept = kept && holds(w, k);
    }
    const Outcome wanted = !exercised ? Outcome::kNotExercised
                           : kept     ? Outcome::kMet
                                      : Outcome::kBroken;
    ASSERT_EQ(play(rule, w), wanted) << w;
  }
}

TEST(Sequence, AsksForItsStepsOneAfterTheOther) {
  compareAll(makeSteps(RuleKind::kSequence),
             [](const std::string& w, std::size_t k) { return isInSequence(w, k, false); });
}

TEST(Sequence, BeginsAnewAtItsReset) {
  RuleSpec rule = makeSteps(RuleKind::kSequence);
  rule.reset = {"did do stand_clear", "D"};
  compareAll(rule, [](const std::string& w, std::size_t k) { return isInSequence(w, k, true); });
}

TEST(AllBefore, AsksForItsStepsInAnyOrder) {
  compareAll(makeSteps(RuleKind::kAllBefore), [](const std::string& w, std::size_t k) {
    return w.find('a') < k && w.find('c') < k;
  });
}

TEST(FirstOnly, JudgesTheFirstAndNoOther) {
  RuleSpec rule = makeAB(RuleKind::kPrecedence);
  rule.first_only = true;
  compareAll(rule, [](const std::string& w, std::size_t k) { return w.find('a') < k; });
  RuleSpec sequence = makeSteps(RuleKind::kSequence);
  sequence.first_only = true;
  compareAll(sequence,
             [](const std::string& w, std::size_t k) { return isInSequence(w, k, false); });
  RuleSpec all = makeSteps(RuleKind::kAllBefore);
  all.first_only = true;
  compareAll(
      all, [](const std::string& w, std::size_t k) { return w.find('a') < k && w.find('c') < k; });
}

TEST(FirstOnly, HoldsForRulesOverSignalsToo) {
  RuleSpec rule = makeRule(RuleKind::kHoldFor);
  rule.condition = "true.air >= 75 psi";
  rule.b = {kB, "B"};
  rule.first_only = true;
  Story story(rule);
  story.frame(0, unit::Signal::kTrueAir, 80).act(1, 'b');
  story.frame(2, unit::Signal::kTrueAir, 10).act(3, 'b').finish(4);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
  EXPECT_EQ(story.verdict().times_exercised, 1);
}

TEST(Sequence, SaysWhatWasMissing) {
  Story story(makeSteps(RuleKind::kSequence));
  story.frame(0).act(1, 'a').act(2, 'b').finish(3);
  EXPECT_THAT(story.verdict().reason, HasSubstr("Not done before it, in this order: C."));
}

TEST(AllBefore, SaysWhatWasMissingAndHoldsToItsWindow) {
  RuleSpec rule = makeSteps(RuleKind::kAllBefore);
  rule.to_s = 1;
  Story story(rule);
  story.frame(0).act(1, 'a').act(150, 'c').act(200, 'b').finish(300);
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
  EXPECT_THAT(story.verdict().reason, HasSubstr("Not done before it, at most 1 s: A."));
  rule.tolerance = {"a second more is forgiven", "", 1, std::nullopt};
  Story forgiven(rule);
  forgiven.frame(0).act(1, 'a').act(150, 'c').act(200, 'b').finish(300);
  EXPECT_EQ(forgiven.outcome(), Outcome::kMet);
  EXPECT_TRUE(forgiven.verdict().inside_tolerance);
}

TEST(Sequence, HoldsToItsWindow) {
  RuleSpec rule = makeSteps(RuleKind::kSequence);
  rule.to_s = 1;
  Story late(rule);
  late.frame(0).act(1, 'a').act(2, 'c').act(103, 'b').finish(200);
  EXPECT_EQ(late.outcome(), Outcome::kBroken);
  ASSERT_TRUE(late.verdict().margin);
  EXPECT_NEAR(*late.verdict().margin, -0.01, 1e-12);
  Story just(rule);
  just.frame(0).act(1, 'a').act(2, 'c').act(102, 'b').finish(200);
  EXPECT_EQ(just.outcome(), Outcome::kMet);
}

TEST(Names, StandInSentencesForConditions) {
  RuleSpec rule = makeRule(RuleKind::kHoldFor);
  rule.condition = "true.air >= 75 psi";
  rule.condition_name = "air enough";
  rule.b = {kB, "the start"};
  Story story(rule);
  story.frame(0).act(1, 'b').finish(2);
  EXPECT_EQ(story.verdict().reason,
            "The start at 0:00:00.01. Asked before it: air enough. It was not so.");
}

TEST(RuleSet, RefusesNamesWithoutConditionsAndFirstOnlyWhereNothingIsJudgedAtB) {
  RuleSpec rule = makeAB(RuleKind::kResponse);
  rule.condition_name = "what";
  rule.during_name = "when";
  rule.first_only = true;
  rule.reset = {kC, "C"};
  std::vector<std::string> fields;
  for (const RuleFault& fault : faultsOf({rule})) fields.push_back(fault.field);
  EXPECT_THAT(fields, ::testing::UnorderedElementsAre("condition_name", "during_name", "first_only",
                                                      "reset"));
}

}  // namespace
}  // namespace cabwright::marking
