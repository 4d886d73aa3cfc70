// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/event.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "rig.h"

namespace cabwright::marking {
namespace {

using testing::HasSubstr;

Event parsed(const std::string& text) {
  auto result = Event::parse(text);
  if (const auto* fault = std::get_if<EventFault>(&result)) {
    ADD_FAILURE() << text << ": " << fault->what;
    return {};
  }
  return std::get<Event>(result);
}

EventFault faultOf(const std::string& text) {
  const auto result = Event::parse(text);
  if (const auto* fault = std::get_if<EventFault>(&result)) return *fault;
  ADD_FAILURE() << text << " is taken";
  return {};
}

bool fits(const std::string& pattern, const std::string& action) {
  return parsed(pattern).ways.at(0).act.fits(std::get<unit::Action>(unit::parseAction(action)));
}

TEST(Pattern, FitsLettersAndStars) {
  EXPECT_TRUE(fitsPattern("", ""));
  EXPECT_TRUE(fitsPattern("*", ""));
  EXPECT_TRUE(fitsPattern("a*c", "abbc"));
  EXPECT_TRUE(fitsPattern("a*c", "ac"));
  EXPECT_TRUE(fitsPattern("*ab*ab", "xabyabab"));
  EXPECT_FALSE(fitsPattern("a*c", "abcd"));
  EXPECT_FALSE(fitsPattern("a", ""));
  EXPECT_FALSE(fitsPattern("", "a"));
}

TEST(EventText, OfAnActFitsWhatIsWritten) {
  EXPECT_TRUE(fits("did press cab1.start1", "press cab1.start1"));
  EXPECT_FALSE(fits("did press cab1.start1", "press cab1.start2"));
  EXPECT_FALSE(fits("did press cab1.start1", "hold cab1.start1"));
  EXPECT_TRUE(fits("did press cab*.start*", "press cab2.start1"));
  EXPECT_TRUE(fits("did * cab1.start1", "release cab1.start1"));
}

TEST(EventText, WithoutAnArgumentFitsAny) {
  EXPECT_TRUE(fits("did set cab1.gear", "set cab1.gear 2"));
  EXPECT_TRUE(fits("did set cab1.gear 2", "set cab1.gear 2"));
  EXPECT_FALSE(fits("did set cab1.gear 2", "set cab1.gear 3"));
  EXPECT_TRUE(fits("did judge end1.hoses defect*", "judge end1.hoses defect C"));
}

TEST(EventText, KnowsAPositionByNumberAsByName) {
  EXPECT_TRUE(fits("did set cab1.reverser forward", "set cab1.reverser 1"));
  EXPECT_TRUE(fits("did set cab1.reverser forward", "set cab1.reverser forward"));
  EXPECT_TRUE(fits("did set engine1.hand_throttle 0.3", "set engine1.hand_throttle fast_idle"));
  EXPECT_FALSE(fits("did set cab1.reverser forward", "set cab1.reverser -1"));
}

TEST(EventText, MeansTheTraineeUnlessItNamesSomebody) {
  EXPECT_FALSE(fits("did ring bell 2", "guard: ring bell 2"));
  EXPECT_TRUE(fits("did guard: ring bell 2", "guard: ring bell 2"));
  EXPECT_FALSE(fits("did guard: ring bell 2", "ring bell 2"));
  EXPECT_TRUE(fits("did anyone: ring bell 2", "ring bell 2"));
  EXPECT_TRUE(fits("did anyone: ring bell 2", "helper: ring bell 2"));
}

TEST(EventText, SplitsIntoWaysAtOrDidAndOrWhenOnly) {
  const Event event = parsed(
      "did say call_warning or did press cab1.horn if cab1.air >= 40 psi or cab1.seen "
      "or when cab1.lamp_air or cab2.lamp_air");
  ASSERT_EQ(event.ways.size(), 3U);
  EXPECT_EQ(event.ways[0].act.object, "call_warning");
  EXPECT_FALSE(event.ways[0].guard);
  EXPECT_EQ(event.ways[1].guard.value().text(), "cab1.air >= 40 psi or cab1.seen");
  EXPECT_EQ(event.ways[2].trigger, EventWay::Trigger::kBegins);
  EXPECT_EQ(event.ways[2].condition.text(), "cab1.lamp_air or cab2.lamp_air");
}

TEST(EventText, KeepsQuotedWordsTogether) {
  const Event event = parsed("did book general \"left as found if not or did it\" if cab1.seen");
  ASSERT_EQ(event.ways.size(), 1U);
  EXPECT_EQ(event.ways[0].act.argument, "left as found if not or did it");
  EXPECT_TRUE(event.ways[0].guard);
}

TEST(EventText, ReadsBothEdges) {
  EXPECT_EQ(parsed("when cab1.lamp_air").ways[0].trigger, EventWay::Trigger::kBegins);
  EXPECT_EQ(parsed("when no longer cab1.lamp_air").ways[0].trigger, EventWay::Trigger::kEnds);
  EXPECT_EQ(parsed("when no longer cab1.lamp_air if cab1.seen").ways[0].guard.value().text(),
            "cab1.seen");
}

TEST(EventFaultText, PointsAtTheWord) {
  EXPECT_EQ(faultOf("").at, 0U);
  EXPECT_THAT(faultOf("  ").what, HasSubstr("empty"));
  EXPECT_EQ(faultOf("after cab1.seen").at, 0U);
  EXPECT_EQ(faultOf("did").what, "'did' without a verb");
  EXPECT_THAT(faultOf("did press").what, HasSubstr("without an object"));
  EXPECT_EQ(faultOf("did press cab1.start1 if cab1.aer > 3 psi").at, 25U);
  EXPECT_THAT(faultOf("did press cab1.start1 if cab1.aer > 3 psi").what, HasSubstr("cab1.air"));
  EXPECT_EQ(faultOf("did press cab1.start1 or when cab1.bogus").at, 30U);
  EXPECT_EQ(faultOf("did gard: ring bell 2").at, 4U);
  EXPECT_THAT(faultOf("did gard: ring bell 2").what, HasSubstr("guard"));
  EXPECT_THAT(faultOf("did book general \"open").what, HasSubstr("not closed"));
}

TEST(EventFaultText, NamesTheNearestKnownWord) {
  EXPECT_THAT(faultOf("did pres cab1.start1").what, HasSubstr("press"));
  EXPECT_THAT(faultOf("did press cab1.strat1").what, HasSubstr("cab1.start1"));
  EXPECT_THAT(faultOf("did press cab3.*").what, HasSubstr("fits no control"));
  EXPECT_THAT(faultOf("did set cab1.reverser forwards").what, HasSubstr("forward"));
  EXPECT_THAT(faultOf("did judge end1.hoses bad").what, HasSubstr("defect"));
  EXPECT_THAT(faultOf("did press cab1.horn low").what, HasSubstr("nothing behind"));
  EXPECT_THAT(faultOf("did go cabb1").what, HasSubstr("cab1"));
  EXPECT_THAT(faultOf("did say call_warnin").what, HasSubstr("call_warning"));
  EXPECT_THAT(faultOf("did look end1.hose").what, HasSubstr("end1.hoses"));
}

RuleSpec absenceOf(const std::string& event) {
  RuleSpec spec = makeRule(RuleKind::kAbsence);
  spec.a = {event, "it"};
  return spec;
}
constexpr auto kAir = unit::Signal::kTrueAir;

TEST(EventEdge, ThatHoldsAtTheFirstFrameBeginsThere) {
  Story story(absenceOf("when true.air >= 75 psi"));
  story.frame(3, kAir, 80);
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
  EXPECT_EQ(story.verdict().tick, 3);
}

TEST(EventEdge, EndsOnlyWhatHasBeen) {
  Story story(absenceOf("when no longer true.air >= 75 psi"));
  story.frame(0, kAir, 60).frame(10, kAir, 80);
  EXPECT_EQ(story.outcome(), Outcome::kPendingGood);
  story.frame(20, kAir, 70);
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
}

TEST(EventEdge, ComesOnceForEachTimeItBegins) {
  RuleSpec spec = makeRule(RuleKind::kExistence);
  spec.a = {"when true.air >= 75 psi", "it"};
  spec.times = 2;
  Story story(spec);
  story.frame(0, kAir, 80).frame(10).act(10, 'a').frame(20);
  EXPECT_EQ(story.outcome(), Outcome::kPendingBad);
  story.frame(30, kAir, 60).frame(40, kAir, 80);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
}

TEST(EventGuard, IsJudgedOnTheFrameRightBeforeTheAct) {
  Story story(absenceOf("did set cab1.reverser if true.air < 72 psi"));
  story.frame(0, kAir, 75).act(5, "set cab1.reverser forward");
  EXPECT_EQ(story.outcome(), Outcome::kPendingGood);
  story.frame(10, kAir, 71).act(10, "set cab1.reverser off");
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
}

}  // namespace
}  // namespace cabwright::marking
