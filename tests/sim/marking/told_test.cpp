// SPDX-License-Identifier: GPL-3.0-or-later
// What is told against what the gauge did: by example, and against its words over random runs.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <vector>

#include "rig.h"

namespace cabwright::marking {
namespace {

using testing::HasSubstr;

constexpr auto kPipe = unit::Signal::kTrueTrainPipe;
constexpr auto kRelay = unit::Signal::kTrueRelay;  // carries the condition

RuleSpec makeTold(double by = 0.5) {
  RuleSpec spec = makeRule(RuleKind::kFallTold);
  spec.b = {"did note leak *", "the fall entered"};
  spec.condition = "true.relay";
  spec.condition_name = "lapped";
  spec.measure = "true.train_pipe";
  spec.by = by;
  return spec;
}

// Lapped at 21 inHg at 10 s, fallen to 19 a minute later.
Story lappedForAMinute(const RuleSpec& spec = makeTold()) {
  Story story(spec);
  story.set(kRelay, 0).frame(0, kPipe, 24);
  story.set(kRelay, 1).frame(1000, kPipe, 21);
  story.frame(4000, kPipe, 20.5).frame(7000, kPipe, 19);
  return story;
}

TEST(FallTold, IsMetByWhatTheGaugeFellInTheMinute) {
  Story story = lappedForAMinute();
  story.act(7000, "note leak 1.8").finish(8000);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
  EXPECT_NEAR(story.verdict().margin.value(), 0.3, 1e-6);
  EXPECT_EQ(story.verdict().unit, "inHg");
}

TEST(FallTold, IsBrokenByAnotherFigureHigherOrLower) {
  for (const char* told : {"note leak 0", "note leak 1.4", "note leak 2.6", "note leak -2"}) {
    Story story = lappedForAMinute();
    story.act(7000, told).finish(8000);
    EXPECT_EQ(story.outcome(), Outcome::kBroken) << told;
    EXPECT_THAT(story.verdict().reason, HasSubstr("It fell 2.00 inHg in 60 s, 2.00 in a minute"));
  }
}

TEST(FallTold, CountsByTheMinuteHoweverLongItWasWatched) {
  Story story = lappedForAMinute();
  story.frame(13000, kPipe, 17).act(13000, "note leak 2").finish(14000);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
}

TEST(FallTold, BeginsAnewWhenTheConditionDoes) {
  Story story = lappedForAMinute();
  story.set(kRelay, 0).frame(7100, kPipe, 21);
  story.set(kRelay, 1).frame(7200, kPipe, 21).frame(10200, kPipe, 20.5);
  story.act(10200, "note leak 1").finish(11000);
  EXPECT_EQ(story.outcome(), Outcome::kMet);
}

TEST(FallTold, IsBrokenWhenNothingWasWatchedUpToIt) {
  Story story = lappedForAMinute();
  story.set(kRelay, 0).frame(7100, kPipe, 19).act(7100, "note leak 2").finish(8000);
  EXPECT_EQ(story.outcome(), Outcome::kBroken);
  EXPECT_THAT(story.verdict().reason, HasSubstr("Nothing was watched up to it: lapped"));
}

TEST(FallTold, IsNotExercisedByOtherNotes) {
  Story story = lappedForAMinute();
  story.act(7000, "note volts 25").finish(8000);
  EXPECT_EQ(story.outcome(), Outcome::kNotExercised);
}

TEST(FallTold, NeedsASignalAnErrorAndAnActAndNoOtherKindHasThem) {
  RuleSpec spec = makeTold();
  spec.measure = "true.train_pip";
  ASSERT_EQ(faultsOf({spec}).size(), 1U);
  EXPECT_THAT(faultsOf({spec})[0].what, HasSubstr("true.train_pipe"));
  spec.measure = "cab1.train_pipe";  // the rule reads what is true
  EXPECT_EQ(faultsOf({spec}).at(0).field, "measure");
  spec = makeTold(0);
  EXPECT_EQ(faultsOf({spec}).at(0).field, "by");
  spec = makeTold(-1);
  EXPECT_EQ(faultsOf({spec}).at(0).field, "by");
  spec = makeTold();
  spec.b = {"when true.train_pipe < 3 inHg", "B"};
  EXPECT_EQ(faultsOf({spec}).at(0).field, "b");
  spec = makeAB(RuleKind::kPrecedence);
  spec.measure = "true.train_pipe";
  EXPECT_EQ(faultsOf({spec}).at(0).field, "measure");
}

// Against the words: the stretch is looked for backwards from each note, Frame by Frame.
RC_GTEST_PROP(FallTold, AgreesWithItsWords, ()) {
  struct Sample {
    std::int64_t tick;
    bool holds;
    int pipe, told;  ///< told 0: nothing
  };
  std::vector<Sample> samples;
  std::int64_t tick = 0;
  const int length = *rc::gen::inRange(1, 20);
  for (int k = 0; k < length; ++k) {
    samples.push_back({tick, *rc::gen::inRange(0, 4) > 0, *rc::gen::inRange(0, 25),
                       *rc::gen::element(0, 0, 1, 2, 5, 20)});
    tick += 1000 * *rc::gen::inRange(1, 5);
  }
  Story story(makeTold());
  bool exercised = false, kept = true;
  for (std::size_t k = 0; k < samples.size(); ++k) {
    const Sample& s = samples[k];
    story.set(kRelay, s.holds ? 1 : 0).frame(s.tick, kPipe, s.pipe);
    if (s.told == 0) continue;
    story.act(s.tick, "note leak " + std::to_string(s.told));
    exercised = true;
    std::size_t first = k + 1;
    while (first > 0 && samples[first - 1].holds) --first;
    if (first >= k) {
      kept = false;  // it does not hold now, or has only begun to
      continue;
    }
    const double minutes = static_cast<double>(s.tick - samples[first].tick) / 6000.0;
    const double rate = (samples[first].pipe - s.pipe) / minutes;
    kept &= std::abs(rate - s.told) <= 0.5;
  }
  story.finish(tick);
  RC_ASSERT(story.outcome() == (!exercised ? Outcome::kNotExercised
                                : kept     ? Outcome::kMet
                                           : Outcome::kBroken));
}

}  // namespace
}  // namespace cabwright::marking
