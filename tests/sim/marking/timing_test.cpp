// SPDX-License-Identifier: GPL-3.0-or-later
// Both ends of every time bound: windows are closed, in whole ticks.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <vector>

#include "rig.h"

namespace cabwright::marking {
namespace {

using Signal = unit::Signal;
constexpr Signal kAir = Signal::kTrueAir;

RuleSpec timed(RuleSpec spec, double lo, double hi) {
  spec.from_s = lo;
  spec.to_s = hi;
  return spec;
}

// a at 1000, b `distance` later; window 0.5 s to 2 s.
Outcome outcomeAt(RuleKind kind, std::int64_t distance) {
  Story run(timed(makeAB(kind), 0.5, 2));
  run.frame(0).act(1000, 'a').act(1000 + distance, 'b').finish(5000);
  return run.outcome();
}

TEST(Precedence, HasAWindowClosedAtBothEnds) {
  EXPECT_EQ(outcomeAt(RuleKind::kPrecedence, 49), Outcome::kBroken);
  EXPECT_EQ(outcomeAt(RuleKind::kPrecedence, 50), Outcome::kMet);
  EXPECT_EQ(outcomeAt(RuleKind::kPrecedence, 200), Outcome::kMet);
  EXPECT_EQ(outcomeAt(RuleKind::kPrecedence, 201), Outcome::kBroken);
}

TEST(AlternatePrecedence, HasAWindowClosedAtBothEnds) {
  EXPECT_EQ(outcomeAt(RuleKind::kAlternatePrecedence, 49), Outcome::kBroken);
  EXPECT_EQ(outcomeAt(RuleKind::kAlternatePrecedence, 50), Outcome::kMet);
  EXPECT_EQ(outcomeAt(RuleKind::kAlternatePrecedence, 200), Outcome::kMet);
  EXPECT_EQ(outcomeAt(RuleKind::kAlternatePrecedence, 201), Outcome::kBroken);
}

TEST(Response, HasAWindowClosedAtBothEnds) {
  for (RuleKind kind : {RuleKind::kResponse, RuleKind::kAlternateResponse}) {
    EXPECT_EQ(outcomeAt(kind, 49), Outcome::kBroken);
    EXPECT_EQ(outcomeAt(kind, 50), Outcome::kMet);
    EXPECT_EQ(outcomeAt(kind, 200), Outcome::kMet);
    EXPECT_EQ(outcomeAt(kind, 201), Outcome::kBroken);
  }
}

TEST(NotSuccession, HasAWindowClosedAtBothEnds) {
  EXPECT_EQ(outcomeAt(RuleKind::kNotSuccession, 49), Outcome::kMet);
  EXPECT_EQ(outcomeAt(RuleKind::kNotSuccession, 50), Outcome::kBroken);
  EXPECT_EQ(outcomeAt(RuleKind::kNotSuccession, 200), Outcome::kBroken);
  EXPECT_EQ(outcomeAt(RuleKind::kNotSuccession, 201), Outcome::kMet);
}

TEST(Existence, HasAWindowClosedAtBothEnds) {
  const auto at = [](std::int64_t tick) {
    RuleSpec spec = timed(makeRule(RuleKind::kExistence), 0.5, 2);
    spec.a = {kA, "A"};
    Story run(spec);
    run.frame(1000).act(1000 + tick, 'a').finish(5000);
    return run.outcome();
  };
  EXPECT_EQ(at(49), Outcome::kBroken);
  EXPECT_EQ(at(50), Outcome::kMet);
  EXPECT_EQ(at(200), Outcome::kMet);
  EXPECT_EQ(at(201), Outcome::kBroken);
}

TEST(Response, FallsDueRightAfterItsLastTickAndNotBefore) {
  Story run(timed(makeAB(RuleKind::kResponse), 0, 2));
  run.frame(0).act(1000, 'a').frame(1200);
  EXPECT_EQ(run.outcome(), Outcome::kPendingBad);
  run.frame(1201);
  EXPECT_EQ(run.outcome(), Outcome::kBroken);
  EXPECT_TRUE(run.verdict().is_final);
  EXPECT_EQ(run.verdict().tick, 1200);
}

TEST(Response, OfTheLastTickOfItsWindowStillCountsWhenThingsOfThatTickFollow) {
  Story run(timed(makeAB(RuleKind::kResponse), 0, 2));
  run.frame(0).act(1000, 'a').frame(1200).act(1200, 'b').finish(1201);
  EXPECT_EQ(run.outcome(), Outcome::kMet);
}

TEST(SameTick, GoesByTheOrderOfArrival) {
  Story before(makeAB(RuleKind::kPrecedence)), after(makeAB(RuleKind::kPrecedence));
  before.frame(0).act(7, 'a').act(7, 'b').finish(8);
  after.frame(0).act(7, 'b').act(7, 'a').finish(8);
  EXPECT_EQ(before.outcome(), Outcome::kMet);
  EXPECT_EQ(after.outcome(), Outcome::kBroken);
}

TEST(HoldFor, NeedsTheWholeTimeToTheTick) {
  const auto at = [](std::int64_t tick) {
    RuleSpec spec = makeRule(RuleKind::kHoldFor);
    spec.b = {kB, "B"};
    spec.condition = "true.air >= 75 psi";
    spec.for_s = 5;
    Story run(spec);
    run.frame(0, kAir, 60).frame(100, kAir, 80).frame(tick).act(tick, 'b').finish(2000);
    return run.outcome();
  };
  EXPECT_EQ(at(599), Outcome::kBroken);
  EXPECT_EQ(at(600), Outcome::kMet);
}

TEST(HoldFor, DoesNotTakeTheTimeBeforeTheRunForGranted) {
  RuleSpec spec = makeRule(RuleKind::kHoldFor);
  spec.b = {kB, "B"};
  spec.condition = "true.air >= 75 psi";
  spec.for_s = 5;
  Story early(spec), late(spec);
  early.frame(0, kAir, 80).frame(499).act(499, 'b').finish(2000);
  late.frame(0, kAir, 80).frame(500).act(500, 'b').finish(2000);
  EXPECT_EQ(early.outcome(), Outcome::kBroken);
  EXPECT_EQ(late.outcome(), Outcome::kMet);
}

TEST(NeverWhile, ForgivesWhatIsShorterThanItsTimeToTheTick) {
  const auto lasting = [](std::int64_t ticks) {
    RuleSpec spec = makeRule(RuleKind::kNeverWhile);
    spec.condition = "true.air < 75 psi";
    spec.for_s = 1;
    Story run(spec);
    run.frame(0, kAir, 80).frame(1000, kAir, 70);
    run.frame(1000 + ticks).frame(1000 + ticks + 1, kAir, 80).finish(5000);
    return run.outcome();
  };
  EXPECT_EQ(lasting(98), Outcome::kMet);  // holds until the next Frame: 99 ticks
  EXPECT_EQ(lasting(100), Outcome::kBroken);
}

TEST(NeverWhile, IsNotBrokenByTheFirstSampleAlone) {
  RuleSpec spec = makeRule(RuleKind::kNeverWhile);
  spec.condition = "true.air < 75 psi";
  spec.for_s = 1;
  Story run(spec);
  run.frame(0, kAir, 70).frame(99);
  EXPECT_EQ(run.outcome(), Outcome::kPendingGood);
  run.frame(100);
  EXPECT_EQ(run.outcome(), Outcome::kBroken);
}

Outcome reachedAt(RuleKind kind, std::int64_t distance) {
  RuleSpec spec = timed(makeRule(kind), 0.5, 2);
  spec.a = {kA, "A"};
  spec.condition = "true.air >= 75 psi";
  Story run(spec);
  run.frame(0, kAir, 60).frame(1000).act(1000, 'a');
  // Reaches it for one Frame only.
  run.frame(1000 + distance, kAir, 80).frame(1000 + distance + 1, kAir, 60).finish(5000);
  return run.outcome();
}

TEST(ReachWithin, HasAWindowClosedAtBothEnds) {
  EXPECT_EQ(reachedAt(RuleKind::kReachWithin, 49), Outcome::kBroken);
  EXPECT_EQ(reachedAt(RuleKind::kReachWithin, 50), Outcome::kMet);
  EXPECT_EQ(reachedAt(RuleKind::kReachWithin, 200), Outcome::kMet);
  EXPECT_EQ(reachedAt(RuleKind::kReachWithin, 201), Outcome::kBroken);
}

TEST(OnceWithin, HasAWindowClosedAtBothEnds) {
  const auto at = [](std::int64_t distance) {
    RuleSpec spec = timed(makeRule(RuleKind::kOnceWithin), 0.5, 2);
    spec.b = {kB, "B"};
    spec.condition = "true.air >= 75 psi";
    Story run(spec);
    run.frame(0, kAir, 60).frame(1000, kAir, 80).frame(1001, kAir, 60);
    run.frame(1000 + distance).act(1000 + distance, 'b').finish(5000);
    return run.outcome();
  };
  EXPECT_EQ(at(49), Outcome::kBroken);
  EXPECT_EQ(at(50), Outcome::kMet);
  EXPECT_EQ(at(200), Outcome::kMet);
  EXPECT_EQ(at(201), Outcome::kBroken);
}

TEST(HoldAfter, HasAWindowClosedAtBothEnds) {
  const auto lapseAt = [](std::int64_t distance) {
    RuleSpec spec = timed(makeRule(RuleKind::kHoldAfter), 0.5, 2);
    spec.a = {kA, "A"};
    spec.condition = "true.air >= 75 psi";
    Story run(spec);
    run.frame(0, kAir, 80).frame(1000).act(1000, 'a').frame(1000 + distance - 1);
    run.frame(1000 + distance, kAir, 60).frame(1000 + distance + 1, kAir, 80).finish(5000);
    return run.outcome();
  };
  EXPECT_EQ(lapseAt(49), Outcome::kMet);
  EXPECT_EQ(lapseAt(50), Outcome::kBroken);
  EXPECT_EQ(lapseAt(200), Outcome::kBroken);
  EXPECT_EQ(lapseAt(201), Outcome::kMet);
}

Outcome keptUntil(RuleKind kind, std::int64_t distance) {
  RuleSpec spec = timed(makeAB(kind), 0.5, 2);
  spec.condition = "true.air >= 75 psi";
  Story run(spec);
  run.frame(0, kAir, 80).frame(1000).act(1000, 'a');
  run.frame(1000 + distance).act(1000 + distance, 'b').finish(5000);
  return run.outcome();
}

TEST(HeldSince, HasAWindowClosedAtBothEnds) {
  EXPECT_EQ(keptUntil(RuleKind::kHeldSince, 49), Outcome::kBroken);
  EXPECT_EQ(keptUntil(RuleKind::kHeldSince, 50), Outcome::kMet);
  EXPECT_EQ(keptUntil(RuleKind::kHeldSince, 200), Outcome::kMet);
  EXPECT_EQ(keptUntil(RuleKind::kHeldSince, 201), Outcome::kBroken);
}

TEST(HoldUntil, HasAWindowClosedAtBothEnds) {
  EXPECT_EQ(keptUntil(RuleKind::kHoldUntil, 49), Outcome::kBroken);
  EXPECT_EQ(keptUntil(RuleKind::kHoldUntil, 50), Outcome::kMet);
  EXPECT_EQ(keptUntil(RuleKind::kHoldUntil, 200), Outcome::kMet);
  EXPECT_EQ(keptUntil(RuleKind::kHoldUntil, 201), Outcome::kBroken);
}

// Random timed words against the rules' own words, written with quantifiers.
struct Letter {
  std::int64_t tick;
  char letter;
};
using Word = std::vector<Letter>;

bool within(std::int64_t distance, std::int64_t lo, std::optional<std::int64_t> hi) {
  return distance >= lo && (!hi || distance <= *hi);
}

bool holdsOn(RuleKind kind, const Word& word, std::int64_t lo, std::optional<std::int64_t> hi) {
  for (std::size_t k = 0; k < word.size(); ++k) {
    const bool backward = kind == RuleKind::kPrecedence || kind == RuleKind::kAlternatePrecedence;
    if (word[k].letter != (backward ? 'b' : 'a')) continue;
    bool found = false;
    if (backward) {
      for (std::size_t j = k; j-- > 0;) {
        if (word[j].letter == 'b' && kind == RuleKind::kAlternatePrecedence) break;
        found |= word[j].letter == 'a' && within(word[k].tick - word[j].tick, lo, hi);
      }
    } else {
      for (std::size_t j = k + 1; j < word.size(); ++j) {
        if (word[j].letter == 'a' && kind == RuleKind::kAlternateResponse) break;
        found |= word[j].letter == 'b' && within(word[j].tick - word[k].tick, lo, hi);
      }
    }
    if (found == (kind == RuleKind::kNotSuccession)) return false;
  }
  return true;
}

RC_GTEST_PROP(TimedRule, AgreesWithItsWordsOnRandomTimedRuns, ()) {
  const RuleKind kind =
      *rc::gen::element(RuleKind::kPrecedence, RuleKind::kAlternatePrecedence, RuleKind::kResponse,
                        RuleKind::kAlternateResponse, RuleKind::kNotSuccession);
  const std::int64_t lo = *rc::gen::inRange(0, 6);
  std::optional<std::int64_t> hi;
  if (*rc::gen::inRange(0, 4) > 0) hi = lo + *rc::gen::inRange(0, 8);
  Word word;
  std::int64_t tick = 0;
  const int length = *rc::gen::inRange(0, 14);
  for (int k = 0; k < length; ++k) {
    tick += *rc::gen::inRange(0, 4);
    word.push_back({tick, *rc::gen::element('a', 'b', 'c')});
  }
  RuleSpec spec = makeAB(kind);
  spec.from_s = static_cast<double>(lo) / 100.0;
  if (hi) spec.to_s = static_cast<double>(*hi) / 100.0;
  Story run(spec);
  run.frame(0);
  for (const Letter& l : word) {
    if (l.tick % 3 == 0) run.frame(l.tick);  // Frames between must not matter
    run.act(l.tick, l.letter);
  }
  run.finish(tick + 50);
  RC_ASSERT((run.outcome() != Outcome::kBroken) == holdsOn(kind, word, lo, hi));
}

}  // namespace
}  // namespace cabwright::marking
