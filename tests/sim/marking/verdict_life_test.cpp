// SPDX-License-Identifier: GPL-3.0-or-later
// The life of a verdict: pending, final, not exercised; tolerances, repetition, evidence.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "rig.h"

namespace cabwright::marking {
namespace {

using testing::HasSubstr;
using Signal = unit::Signal;
constexpr Signal kAir = Signal::kTrueAir;

TEST(Verdict, OfAResponseGoesFromNotExercisedThroughPendingToMet) {
  Story story(makeAB(RuleKind::kResponse));
  story.frame(0);
  EXPECT_EQ(story.outcome(), Outcome::kNotExercised);
  story.act(10, 'a');
  EXPECT_EQ(story.outcome(), Outcome::kPendingBad);
  story.act(20, 'b');
  EXPECT_EQ(story.outcome(), Outcome::kPendingGood);
  EXPECT_FALSE(story.verdict().is_final);
  story.finish(30);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
  EXPECT_TRUE(story.verdict().is_final);
  EXPECT_EQ(story.verdict().times_exercised, 1);
}

TEST(Verdict, OfAPastRuleIsFinalAtTheMomentOfTheBreach) {
  Story story(makeAB(RuleKind::kPrecedence));
  story.frame(0).act(10, 'b');
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
  EXPECT_TRUE(story.verdict().is_final);
  EXPECT_EQ(story.verdict().tick, 10);
  story.act(20, 'a').act(30, 'b').finish(40);
  EXPECT_EQ(story.verdict().tick, 10);
  EXPECT_EQ(story.verdict().times_broken, 1);
  EXPECT_EQ(story.verdict().times_exercised, 2);
}

TEST(Verdict, NeverExercisedStaysSoUnlessItHadToOccur) {
  RuleSpec spec = makeAB(RuleKind::kPrecedence);
  Story may(spec);
  spec.must_occur = true;
  Story must(spec);
  may.frame(0).finish(10);
  must.frame(0).finish(10);
  EXPECT_EQ(may.outcome(), Outcome::kNotExercised);
  EXPECT_EQ(must.outcome(), Outcome::kBroken);
}

TEST(Verdict, OfANeverWhileWhoseTimeNeverCameIsNotExercised) {
  RuleSpec spec = makeRule(RuleKind::kNeverWhile);
  spec.condition = "true.air < 75 psi";
  spec.during = "true.speed > 1 mph";
  Story story(spec);
  story.frame(0).frame(10).finish(20);
  EXPECT_EQ(story.outcome(), Outcome::kNotExercised);
}

TEST(Verdict, DoesNotChangeAfterTheEnd) {
  Story story(makeAB(RuleKind::kNotCoExistence));
  story.frame(0).act(1, 'a').finish(5).act(6, 'b').frame(7);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
}

RuleSpec airAtB(double least) {
  RuleSpec spec = makeRule(RuleKind::kHoldFor);
  spec.b = {kB, "the start"};
  spec.condition = "true.air >= " + std::to_string(static_cast<int>(least)) + " psi";
  spec.rule_class = RuleClass::kCritical;
  spec.tolerance = {"72 psi", "true.air >= 72 psi", 0, RuleClass::kSerious};
  return spec;
}

Verdict judgedWithAir(const RuleSpec& spec, double air) {
  Story story(spec);
  story.frame(0, kAir, air).act(0, 'b').finish(10);
  return story.verdict();
}

TEST(Tolerance, LetsACriticalBreachFallToALowerClass) {
  EXPECT_EQ(judgedWithAir(airAtB(75), 75).outcome, Outcome::kMet);
  const Verdict inside = judgedWithAir(airAtB(75), 72);
  EXPECT_EQ(inside.outcome, Outcome::kBroken);
  EXPECT_EQ(inside.judged_as, RuleClass::kSerious);
  EXPECT_TRUE(inside.inside_tolerance);
  EXPECT_THAT(inside.reason, HasSubstr("72 psi"));
  const Verdict beyond = judgedWithAir(airAtB(75), 71.5);
  EXPECT_EQ(beyond.outcome, Outcome::kBroken);
  EXPECT_EQ(beyond.judged_as, RuleClass::kCritical);
  EXPECT_FALSE(beyond.inside_tolerance);
  EXPECT_DOUBLE_EQ(beyond.margin.value(), -3.5);
  EXPECT_EQ(beyond.unit, "psi");
}

TEST(Tolerance, ThatFallsToNothingForgivesAndSaysSo) {
  RuleSpec spec = airAtB(75);
  spec.tolerance.falls_to.reset();
  const Verdict inside = judgedWithAir(spec, 73);
  EXPECT_EQ(inside.outcome, Outcome::kMet);
  EXPECT_TRUE(inside.inside_tolerance);
  EXPECT_EQ(judgedWithAir(spec, 71).outcome, Outcome::kBroken);
}

TEST(Tolerance, DoesNotHideALaterBreachBeyondIt) {
  Story story(airAtB(75));
  story.frame(0, kAir, 73).act(0, 'b');
  EXPECT_FALSE(story.verdict().is_final);
  story.frame(10, kAir, 60).act(10, 'b').finish(20);
  EXPECT_EQ(story.verdict().judged_as, RuleClass::kCritical);
  EXPECT_EQ(story.verdict().tick, 10);
  EXPECT_EQ(story.verdict().times_broken, 2);
}

TEST(Tolerance, OfTimeIsClosedAsWell) {
  const auto at = [](std::int64_t distance) {
    RuleSpec spec = makeAB(RuleKind::kResponse);
    spec.to_s = 2;
    spec.rule_class = RuleClass::kCritical;
    spec.tolerance = {"half a second", "", 0.5, RuleClass::kTechnique};
    Story story(spec);
    story.frame(0).act(0, 'a').act(distance, 'b').finish(1000);
    return story.verdict();
  };
  EXPECT_EQ(at(200).outcome, Outcome::kMet);
  EXPECT_EQ(at(201).judged_as, RuleClass::kTechnique);
  EXPECT_EQ(at(250).judged_as, RuleClass::kTechnique);
  EXPECT_EQ(at(251).judged_as, RuleClass::kCritical);
}

TEST(Tolerance, OfAPrecedenceCoversBothEndsOfItsWindow) {
  const auto at = [](std::int64_t distance) {
    RuleSpec spec = makeAB(RuleKind::kPrecedence);
    spec.from_s = 1;
    spec.to_s = 2;
    spec.rule_class = RuleClass::kCritical;
    spec.tolerance = {"a tenth", "", 0.1, RuleClass::kSerious};
    Story story(spec);
    story.frame(0).act(0, 'a').act(distance, 'b').finish(1000);
    return story.verdict();
  };
  EXPECT_EQ(at(89).judged_as, RuleClass::kCritical);
  EXPECT_EQ(at(90).judged_as, RuleClass::kSerious);
  EXPECT_EQ(at(100).outcome, Outcome::kMet);
  EXPECT_EQ(at(210).judged_as, RuleClass::kSerious);
  EXPECT_EQ(at(211).judged_as, RuleClass::kCritical);
}

RuleSpec neverBelow() {
  RuleSpec spec = makeRule(RuleKind::kNeverWhile);
  spec.condition = "true.air < 75 psi";
  spec.during = "true.relay";
  spec.for_s = 0.2;
  spec.rule_class = RuleClass::kCritical;
  spec.tolerance = {"a needle's width", "true.air >= 72 psi", 0, RuleClass::kTechnique};
  return spec;
}

TEST(Tolerance, OfASustainedRuleHasToBeLeftForTheWholeTime) {
  Story story(neverBelow());
  story.set(Signal::kTrueRelay, 1).frame(0, kAir, 80).frame(10, kAir, 74).frame(20).frame(30);
  EXPECT_EQ(story.verdict().judged_as, RuleClass::kTechnique);
  story.frame(40, kAir, 70).frame(50);  // one sample beyond is not enough
  EXPECT_EQ(story.verdict().judged_as, RuleClass::kTechnique);
  story.frame(60);
  EXPECT_EQ(story.verdict().judged_as, RuleClass::kCritical);
  story.frame(90, kAir, 80).finish(100);
  EXPECT_DOUBLE_EQ(story.verdict().corrected_after_s.value(), 0.8);
  EXPECT_DOUBLE_EQ(story.verdict().margin.value(), -5);
}

TEST(Margin, OfASustainedRuleIsTheLeastOfTheRunWhileItWasAsked) {
  Story story(neverBelow());
  story.frame(0, kAir, 20);  // not asked: the relay is out
  story.set(Signal::kTrueRelay, 1).frame(10, kAir, 90).frame(20).frame(30).frame(40, kAir, 81.5);
  story.frame(50).frame(60).frame(70, kAir, 95).frame(80, kAir, 78).frame(90, kAir, 95);
  story.finish(100);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
  EXPECT_DOUBLE_EQ(story.verdict().margin.value(), 6.5);  // 78 did not last
  EXPECT_EQ(story.verdict().unit, "psi");
}

TEST(Margin, OfAWindowIsTheTimeInHand) {
  RuleSpec spec = makeAB(RuleKind::kPrecedence);
  spec.from_s = 5;
  spec.to_s = 60;
  Story story(spec);
  story.frame(0).act(0, 'a').act(5200, 'b').act(5300, 'b').act(5300, 'a').act(7000, 'b').finish(
      9000);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
  EXPECT_DOUBLE_EQ(story.verdict().margin.value(), 7);  // the closest call of the three
  EXPECT_EQ(story.verdict().unit, "s");
}

TEST(Repeated, CountsAHigherClassFromTheGivenBreachOn) {
  RuleSpec spec = makeAB(RuleKind::kAlternatePrecedence);
  spec.rule_class = RuleClass::kTechnique;
  spec.repeated = Repeated{2, RuleClass::kSerious};
  Story story(spec);
  story.frame(0).act(1, 'b');
  EXPECT_EQ(story.verdict().judged_as, RuleClass::kTechnique);
  story.act(2, 'b');
  EXPECT_EQ(story.verdict().judged_as, RuleClass::kSerious);
  EXPECT_THAT(story.verdict().reason, HasSubstr("2 times"));
}

TEST(Evidence, HoldsTheValuesReadWithTheTruthBesideThem) {
  RuleSpec spec = makeRule(RuleKind::kHoldFor);
  spec.reads = Reads::kShown;
  spec.b = {"did set cab1.reverser forward", "reverser put to forward"};
  spec.condition = "cab1.air >= 75 psi";
  Story story(spec);
  story.set(kAir, 40).frame(123, Signal::kCab1Air, 70).act(123, "set cab1.reverser 1").finish(200);
  const Verdict v = story.verdict();
  EXPECT_EQ(v.outcome, Outcome::kBroken);
  EXPECT_EQ(v.act, "set cab1.reverser 1");
  ASSERT_EQ(v.readings.size(), 1U);
  EXPECT_EQ(v.readings[0].signal, Signal::kCab1Air);
  EXPECT_EQ(v.readings[0].value, 70);
  EXPECT_EQ(v.readings[0].counterpart, kAir);
  EXPECT_EQ(v.readings[0].true_value, 40);
  EXPECT_THAT(v.reason, HasSubstr("Reverser put to forward at 0:00:01.23"));
}

TEST(Evidence, OfAMissedDeadlineIsTheLastFrameWithinIt) {
  RuleSpec spec = makeRule(RuleKind::kReachWithin);
  spec.a = {kA, "A"};
  spec.condition = "true.air >= 75 psi";
  spec.to_s = 1;
  Story story(spec);
  story.frame(0, kAir, 60).act(0, 'a').frame(90, kAir, 73).frame(110, kAir, 80).finish(200);
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
  EXPECT_EQ(story.verdict().tick, 100);
  EXPECT_EQ(story.verdict().readings.at(0).value, 73);
  EXPECT_DOUBLE_EQ(story.verdict().margin.value(), -2);  // the nearest it came
}

TEST(Evidence, NamesTheWayThatWasTaken) {
  RuleSpec spec = makeAB(RuleKind::kPrecedence);
  spec.a = {"did say call_warning or did press cab*.horn", "a warning"};
  Story story(spec);
  story.frame(0).act(1, "press cab2.horn low").act(2, 'b').finish(3);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
  EXPECT_EQ(story.verdict().way, "did press cab*.horn");
}

TEST(Order, NamesEveryStepOutOfItsPlaceOnce) {
  RuleSpec spec = makeRule(RuleKind::kOrder);
  spec.steps = {{kA, "first"}, {kB, "second"}, {kC, "third"}, {"did do stand_clear", "fourth"}};
  Story story(spec);
  story.frame(0).act(1, 'b').act(2, 'd').act(3, 'a').finish(9);
  const Verdict v = story.verdict();
  EXPECT_EQ(v.outcome, Outcome::kBroken);
  EXPECT_EQ(v.tick, 1);
  EXPECT_THAT(v.details, testing::ElementsAre("Second at 0:00:00.01: before first.",
                                              "Fourth at 0:00:00.02: before third.",
                                              "First at 0:00:00.03: too late.", "Third: never."));
  EXPECT_EQ(v.times_broken, 2);
}

TEST(HoldAfter, IsFinalAtTheFirstLapse) {
  RuleSpec spec = makeRule(RuleKind::kHoldAfter);
  spec.a = {kA, "A"};
  spec.condition = "true.air >= 75 psi";
  Story story(spec);
  story.frame(0, kAir, 60).act(0, 'a').frame(10, kAir, 80).frame(20);
  EXPECT_EQ(story.outcome(), Outcome::kPendingGood);
  story.frame(30, kAir, 74);
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
  EXPECT_TRUE(story.verdict().is_final);
  EXPECT_EQ(story.verdict().tick, 30);
}

TEST(ReachWithin, IsMetAtOnceByWhatIsSoAlready) {
  RuleSpec spec = makeRule(RuleKind::kReachWithin);
  spec.a = {kA, "A"};
  spec.condition = "true.air >= 75 psi";
  spec.to_s = 1;
  Story story(spec);
  story.frame(0, kAir, 80).act(3, 'a');
  EXPECT_EQ(story.outcome(), Outcome::kPendingGood);
  EXPECT_DOUBLE_EQ(story.verdict().margin.value(), 1);
}

TEST(Marker, GivesTheSameMarksOnceMoreAndFromACopy) {
  std::vector<RuleSpec> rules{makeAB(RuleKind::kResponse), neverBelow(), airAtB(75)};
  for (std::size_t k = 0; k < rules.size(); ++k) rules[k].id = "r" + std::to_string(k);
  rules[0].to_s = 0.5;
  Story first(rules), again(rules);
  const auto head = [](Story& s) {
    s.set(Signal::kTrueRelay, 1).frame(0, kAir, 80).act(5, 'a').frame(10, kAir, 73);
  };
  const auto tail = [](Marker& m) {
    unit::Frame frame;
    frame[Signal::kTrueRelay] = 1;
    for (std::int64_t tick = 20; tick <= 100; tick += 10) {
      frame.tick = tick;
      frame[kAir] = static_cast<float>(tick);
      m.seeFrame(frame);
    }
    m.seeAction(100, actOf('b'));
    m.finish(110);
  };
  head(first);
  head(again);
  Marker copy = first.marker;
  tail(first.marker);
  tail(copy);
  tail(again.marker);
  const auto expected = first.marker.verdicts();
  for (const Marker* other : {&copy, &again.marker}) {
    const auto got = other->verdicts();
    ASSERT_EQ(got.size(), expected.size());
    for (std::size_t k = 0; k < got.size(); ++k) {
      EXPECT_EQ(got[k].outcome, expected[k].outcome);
      EXPECT_EQ(got[k].reason, expected[k].reason);
      EXPECT_EQ(got[k].margin, expected[k].margin);
      EXPECT_EQ(got[k].tick, expected[k].tick);
    }
  }
  EXPECT_EQ(expected[0].outcome, Outcome::kBroken);
  EXPECT_EQ(first.marker.marks().size(), again.marker.marks().size());
  EXPECT_FALSE(first.marker.marks().empty());
}

TEST(Marker, LooksAtATickGoneBackAsAtThePresentOne) {
  Story story(makeAB(RuleKind::kPrecedence));
  story.frame(100).act(50, 'a').act(20, 'b').finish(10);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
}

}  // namespace
}  // namespace cabwright::marking
