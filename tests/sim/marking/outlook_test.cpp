// SPDX-License-Identifier: GPL-3.0-or-later
// What would break next: asked of the monitors in the middle of a run, and held against what the
// run then comes to.
#include "marking/outlook.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "rig.h"

namespace cabwright::marking {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using unit::Signal;

// Of one rule; there must be one.
Outlook lookAt(const Story& story) {
  const auto all = story.marker.outlook();
  EXPECT_EQ(all.size(), 1U);
  return all.empty() ? Outlook{} : all.front();
}

TEST(Outlook, NothingBeforeTheFirstFrameAndAfterTheEnd) {
  Story story(makeAB(RuleKind::kResponse));
  EXPECT_THAT(story.marker.outlook(), IsEmpty());
  story.frame(0).act(10, 'a');
  EXPECT_EQ(lookAt(story).waiting, Waiting::kComing);
  story.finish(20);
  EXPECT_THAT(story.marker.outlook(), IsEmpty());
}

TEST(Outlook, AnAnswerHasToComeByItsDeadline) {
  RuleSpec rule = makeAB(RuleKind::kResponse);
  rule.from_s = 1;
  rule.to_s = 5;
  rule.tolerance.slack_s = 0.5;
  rule.tolerance.text = "half a second";
  Story story(rule);
  story.frame(0);
  EXPECT_EQ(lookAt(story).waiting, Waiting::kResting);
  EXPECT_THAT(lookAt(story).what, ElementsAre("A"));
  story.act(100, 'a').frame(150);
  const Outlook asked = lookAt(story);
  EXPECT_EQ(asked.waiting, Waiting::kComing);
  EXPECT_EQ(asked.outcome, Outcome::kPendingBad);
  EXPECT_THAT(asked.what, ElementsAre("B"));
  EXPECT_EQ(asked.since, 100);
  EXPECT_EQ(asked.good_from, 200);
  EXPECT_EQ(asked.deadline, 650);
  EXPECT_EQ(asked.breaks_at, 650);
  // At its deadline it can still be kept, one tick later it is broken.
  Story in_time = story, late = story;
  in_time.frame(650).act(650, 'b').frame(651);
  EXPECT_NE(in_time.outcome(), Outcome::kPendingBad);
  late.frame(651);
  EXPECT_EQ(late.outcome(), Outcome::kBroken);
}

TEST(Outlook, WhatIsMissingBeforeIsNamedUntilItIsDone) {
  Story story(makeAB(RuleKind::kPrecedence));
  story.frame(0);
  EXPECT_EQ(lookAt(story).waiting, Waiting::kMissing);
  EXPECT_THAT(lookAt(story).what, ElementsAre("A"));
  EXPECT_EQ(lookAt(story).before, "B");
  story.act(10, 'a');
  EXPECT_EQ(lookAt(story).waiting, Waiting::kReady);
  EXPECT_THAT(lookAt(story).what, IsEmpty());
}

TEST(Outlook, WhatIsTooYoungIsGoodFromATickOn) {
  RuleSpec rule = makeAB(RuleKind::kPrecedence);
  rule.from_s = 2;
  Story story(rule);
  story.frame(0).act(100, 'a').frame(150);
  EXPECT_EQ(lookAt(story).waiting, Waiting::kMissing);
  EXPECT_EQ(lookAt(story).good_from, 300);
  story.frame(300);
  EXPECT_EQ(lookAt(story).waiting, Waiting::kReady);
}

TEST(Outlook, OfSeveralThingsThoseLeftAreNamed) {
  RuleSpec rule = makeRule(RuleKind::kAllBefore);
  rule.steps = {{kA, "A"}, {kC, "C"}};
  rule.b = {kB, "B"};
  Story story(rule);
  story.frame(0).act(10, 'c');
  EXPECT_THAT(lookAt(story).what, ElementsAre("A"));
  story.act(20, 'a');
  EXPECT_EQ(lookAt(story).waiting, Waiting::kReady);

  rule.kind = RuleKind::kSequence;
  Story sequence(rule);
  sequence.frame(0).act(10, 'c');
  EXPECT_THAT(lookAt(sequence).what, ElementsAre("A", "C"));
  sequence.act(20, 'a');
  EXPECT_THAT(lookAt(sequence).what, ElementsAre("C"));
  sequence.act(30, 'c');
  EXPECT_EQ(lookAt(sequence).waiting, Waiting::kReady);
}

TEST(Outlook, OfAnOrderTheNextStepInFrontOfTheOneAfter) {
  RuleSpec rule = makeRule(RuleKind::kOrder);
  rule.steps = {{kA, "A"}, {kB, "B"}, {kC, "C"}};
  Story story(rule);
  story.frame(0).act(10, 'a');
  EXPECT_THAT(lookAt(story).what, ElementsAre("B"));
  EXPECT_EQ(lookAt(story).before, "C");
  story.act(20, 'b').act(30, 'c');
  EXPECT_THAT(story.marker.outlook(), IsEmpty());
}

TEST(Outlook, WhatMustNotComeAndWhatHasToComeAtAll) {
  RuleSpec absence = makeRule(RuleKind::kAbsence, "absence");
  absence.a = {kA, "A"};
  RuleSpec existence = makeRule(RuleKind::kExistence, "existence");
  existence.a = {kB, "B"};
  existence.to_s = 60;
  Story story({absence, existence});
  story.frame(0);
  const auto all = story.marker.outlook();
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].rule, 1U);  // its time runs
  EXPECT_EQ(all[0].waiting, Waiting::kComing);
  EXPECT_EQ(all[0].breaks_at, 6000);
  EXPECT_EQ(all[1].waiting, Waiting::kAvoiding);
  EXPECT_THAT(all[1].what, ElementsAre("A"));
  story.act(10, 'a').act(20, 'b');
  EXPECT_THAT(story.marker.outlook(), IsEmpty());  // one is broken, the other met
}

TEST(Outlook, AfterAnAThereIsNoBForATime) {
  RuleSpec rule = makeAB(RuleKind::kNotSuccession);
  rule.to_s = 3;
  Story story(rule);
  story.frame(0).act(100, 'a').frame(200);
  EXPECT_EQ(lookAt(story).waiting, Waiting::kAvoiding);
  EXPECT_THAT(lookAt(story).what, ElementsAre("B"));
  EXPECT_EQ(lookAt(story).deadline, 400);
  EXPECT_FALSE(lookAt(story).breaks_at);  // it is over then, and good
  story.frame(401);
  EXPECT_EQ(lookAt(story).waiting, Waiting::kResting);
}

RuleSpec makeAirLimit() {
  RuleSpec rule = makeRule(RuleKind::kLimit);
  rule.condition = "cab1.air >= 75 psi";
  rule.condition_name = "air at 75 psi or more";
  rule.for_s = 2;
  return rule;
}

TEST(Outlook, AShrinkingMarginSaysWhenItRunsOut) {
  Story story(makeAirLimit());
  for (std::int64_t tick = 0; tick <= 1000; tick += 10)
    story.frame(tick, Signal::kCab1Air, 95.0 - static_cast<double>(tick) / 100.0);
  const Outlook falling = lookAt(story);
  EXPECT_EQ(falling.waiting, Waiting::kKeeping);
  EXPECT_THAT(falling.what, ElementsAre("air at 75 psi or more"));
  EXPECT_NEAR(falling.margin.value_or(0), 10.0, 1e-4);
  EXPECT_EQ(falling.unit, "psi");
  // 1 psi a second: gone at 20 s, and a breach when it has lasted 2 s.
  EXPECT_NEAR(static_cast<double>(falling.breaks_at.value_or(0)), 2200.0, 2.0);
  for (std::int64_t tick = 1010; tick <= 1400; tick += 10) story.frame(tick, Signal::kCab1Air, 85);
  EXPECT_FALSE(lookAt(story).breaks_at);
}

TEST(Outlook, ABreachThatHasBegunHasToEndInTime) {
  Story story(makeAirLimit());
  story.frame(0, Signal::kCab1Air, 80).frame(100, Signal::kCab1Air, 70).frame(150);
  const Outlook begun = lookAt(story);
  EXPECT_EQ(begun.waiting, Waiting::kEnding);
  EXPECT_EQ(begun.since, 100);
  EXPECT_EQ(begun.deadline, 300);
  EXPECT_NEAR(begun.margin.value_or(0), -5.0, 1e-4);
  Story ended = story;
  ended.frame(299, Signal::kCab1Air, 80).frame(400);
  EXPECT_EQ(ended.outcome(), Outcome::kPendingGood);
  story.frame(300);
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
}

TEST(Outlook, WhatHasToHoldBeforeAndForHowLong) {
  RuleSpec rule = makeRule(RuleKind::kHoldFor);
  rule.b = {kB, "B"};
  rule.condition = "cab1.air >= 75 psi";
  rule.for_s = 3;
  Story story(rule);
  story.frame(0, Signal::kCab1Air, 70);
  EXPECT_EQ(lookAt(story).waiting, Waiting::kMissing);
  EXPECT_NEAR(lookAt(story).margin.value_or(0), -5.0, 1e-4);
  EXPECT_FALSE(lookAt(story).good_from);
  story.frame(100, Signal::kCab1Air, 80);
  EXPECT_EQ(lookAt(story).good_from, 400);
  story.frame(400);
  EXPECT_EQ(lookAt(story).waiting, Waiting::kReady);
}

TEST(Outlook, WhatHasToBeReachedAndWhatHasToBeKept) {
  RuleSpec rule = makeRule(RuleKind::kReachWithin, "reach");
  rule.a = {kA, "A"};
  rule.condition = "cab1.air >= 75 psi";
  rule.to_s = 4;
  RuleSpec until = rule;
  until.id = "until";
  until.kind = RuleKind::kHoldUntil;
  until.b = {kB, "B"};
  until.condition = "cab1.air < 75 psi";
  Story story({rule, until});
  story.frame(0, Signal::kCab1Air, 70).act(100, 'a').frame(110);
  const auto all = story.marker.outlook();
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].waiting, Waiting::kComing);
  EXPECT_THAT(all[0].what, ElementsAre("'cab1.air >= 75 psi'"));
  EXPECT_EQ(all[0].deadline, 500);
  EXPECT_EQ(all[1].waiting, Waiting::kKeeping);
  EXPECT_EQ(all[1].before, "B");
  EXPECT_NEAR(all[1].margin.value_or(0), 5.0, 1e-4);
}

TEST(Outlook, GraverRulesComeFirstWhereNoTimeRuns) {
  RuleSpec light = makeAB(RuleKind::kPrecedence), grave = light;
  light.id = "light";
  light.rule_class = RuleClass::kTechnique;
  grave.id = "grave";
  grave.rule_class = RuleClass::kCritical;
  grave.tolerance.text = "none: it is done or not";
  Story story({light, grave});
  story.frame(0);
  EXPECT_EQ(story.marker.outlook().front().rule, 1U);
}

// Whatever acts came before: `missing` breaks when b comes now, `ready` does not, a deadline is the
// last tick in time, and looking changes nothing.
RC_GTEST_PROP(Outlook, ForetellsWhatTheRunThenComesTo, ()) {
  const auto kind =
      *rc::gen::element(RuleKind::kPrecedence, RuleKind::kAlternatePrecedence,
                        RuleKind::kChainPrecedence, RuleKind::kResponse, RuleKind::kNotSuccession);
  RuleSpec rule = makeAB(kind);
  const bool windowed = kind != RuleKind::kChainPrecedence && *rc::gen::arbitrary<bool>();
  if (windowed) {
    rule.from_s = *rc::gen::inRange(0, 3);
    rule.to_s = rule.from_s + *rc::gen::inRange(1, 4);
  }
  Story story(rule);
  story.frame(0);
  std::int64_t tick = 0;
  const int acts = *rc::gen::inRange(0, 6);
  for (int k = 0; k < acts; ++k) {
    tick += *rc::gen::inRange(0, 300);
    story.frame(tick).act(tick, *rc::gen::element('a', 'c', 'b'));
  }
  const auto all = story.marker.outlook();
  RC_ASSERT(story.verdict().is_final || all.size() == 1U);
  if (all.empty()) return;
  const Outlook& o = all.front();
  if (o.waiting == Waiting::kComing && o.deadline) {
    Story late = story;
    late.frame(std::max(tick, *o.deadline));
    RC_ASSERT(late.outcome() != Outcome::kBroken);
    late.frame(std::max(tick, *o.deadline) + 1);
    RC_ASSERT(late.outcome() == Outcome::kBroken);
  }
  Story now = story;
  now.act(tick, 'b');
  const bool broke = now.outcome() == Outcome::kBroken;
  if (o.waiting == Waiting::kMissing) RC_ASSERT(broke);
  if (o.waiting == Waiting::kReady) RC_ASSERT(!broke);
}

}  // namespace
}  // namespace cabwright::marking
