// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/script.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "scenario_texts.h"
#include "unit/unit.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::faultsOf;
using cabwright::testing::good;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

Script parse(const std::string& text) { return good(parseScript({"s.txt", text})); }
std::vector<std::string> faultsIn(const std::string& text, const ActionCheck& check = {}) {
  return faultsOf(parseScript({"s.txt", text}, check));
}

// Plays a script against Frames made by hand; says what was due at which tick.
std::vector<std::string> play(ScriptRunner& runner, std::int64_t ticks,
                              const std::function<void(unit::Frame&)>& change = {}) {
  std::vector<std::string> all;
  for (std::int64_t t = 0; t <= ticks; ++t) {
    unit::Frame frame;
    frame.tick = t;
    if (change) change(frame);
    for (const ScriptRunner::Due& due : runner.advance(frame)) {
      all.push_back(std::to_string(t) + " line " + std::to_string(due.at.line) + ": " +
                    unit::toText(due.action));
    }
  }
  return all;
}

TEST(Script, TimesCountFromTheStartOrFromTheLineAbove) {
  ScriptRunner runner(
      parse("# a comment\n"
            "at 0.5 s: set cab1.key on\n"
            "set cab1.gear 1\n"
            "then: set cab1.throttle 1\n"
            "after 0.25 s: set cab1.throttle 2\n"
            "wait 0.1 s\n"
            "guard: ring bell 2\n"
            "at 1 s: signaller: set signal.S1 clear\n"));
  EXPECT_THAT(
      play(runner, 200),
      ElementsAre("50 line 2: set cab1.key on", "50 line 3: set cab1.gear 1",
                  "50 line 4: set cab1.throttle 1", "75 line 5: set cab1.throttle 2",
                  "85 line 7: guard: ring bell 2", "100 line 8: signaller: set signal.S1 clear"));
  EXPECT_TRUE(runner.isDone());
  EXPECT_FALSE(runner.fault());
}

TEST(Script, WaitsUntilAConditionHolds) {
  ScriptRunner runner(parse("wait until cab1.air >= 75 psi at most 2 s\nset cab1.throttle 1\n"));
  const auto rising = [](unit::Frame& f) {
    f[unit::Signal::kCab1Air] = static_cast<float>(f.tick);
  };
  EXPECT_THAT(play(runner, 100, rising), ElementsAre("75 line 2: set cab1.throttle 1"));
}

TEST(Script, AWaitThatRunsOutIsAnErrorWithItsValues) {
  ScriptRunner runner(
      parse("\nwait until cab1.air >= 75 psi and cab1.lamp_air at most 0.3 s\n"
            "set cab1.throttle 1\n"));
  const auto low = [](unit::Frame& f) { f[unit::Signal::kCab1Air] = 61.5f; };
  EXPECT_THAT(play(runner, 100, low), IsEmpty());
  ASSERT_TRUE(runner.fault());
  EXPECT_TRUE(runner.isDone());
  EXPECT_EQ(toText(*runner.fault()),
            "s.txt:2:1: waited 0.3 s for 'cab1.air >= 75 psi and cab1.lamp_air'; at 0.3 s "
            "cab1.air is 61.5 psi, cab1.lamp_air is 0");
}

TEST(Script, ATimeThatAWaitHasUsedUpIsAnError) {
  ScriptRunner runner(
      parse("wait until cab1.lamp_air at most 9 s\nat 0.2 s: set cab1.throttle 1\n"));
  EXPECT_THAT(
      play(runner, 100,
           [](unit::Frame& f) { f[unit::Signal::kCab1LampAir] = f.tick >= 30 ? 1.0f : 0.0f; }),
      IsEmpty());
  ASSERT_TRUE(runner.fault());
  EXPECT_EQ(toText(*runner.fault()),
            "s.txt:2:1: this was to be done at 0.2 s; it is 0.3 s already");
}

TEST(Script, WhoWalksHasToArriveBeforeTheNextThing) {
  ScriptRunner runner(parse("go engine1\nlook engine1.oil\n"));
  const auto walking = [](unit::Frame& f) {
    f[unit::Signal::kWalking] = f.tick > 0 && f.tick < 40 ? 1.0f : 0.0f;
  };
  EXPECT_THAT(play(runner, 100, walking),
              ElementsAre("0 line 1: go engine1", "40 line 2: look engine1.oil"));
}

TEST(Script, AnActOfThisTickIsSeenInTheNextFrame) {
  // The lever still stands where it was in the Frame at which it is moved.
  ScriptRunner runner(
      parse("set cab1.horn off\n"
            "wait until cab1.horn == off at most 1 s\n"
            "set cab1.wiper on\n"));
  EXPECT_THAT(play(runner, 10),
              ElementsAre("0 line 1: set cab1.horn off", "1 line 3: set cab1.wiper on"));
}

TEST(Script, DrivesAUnitFromItsFrames) {
  unit::UnitStart start;
  start.place = "booking";
  unit::Unit unit(plant::Parameters(), unit::Route(), start);
  ScriptRunner runner(
      good(parseScript({"s.txt",
                        "take hand_lamp\ngo lineside skip\nlook end1.lamps\ngo end1\n"
                        "wait until trainee.place == 3 at most 60 s\n"},
                       [&](const unit::Action& a) { return unit.findActionFault(a); })));
  while (!runner.isDone() && unit.tick() < 60'000) {
    for (const ScriptRunner::Due& due : runner.advance(unit.frame())) unit.apply(due.action);
    unit.advance();
  }
  EXPECT_FALSE(runner.fault()) << toText(*runner.fault());
}

TEST(Script, ACopyGoesOnAlike) {
  ScriptRunner runner(parse("at 0.1 s: set cab1.key on\nwait 0.2 s\nset cab1.gear 1\n"));
  play(runner, 5);
  ScriptRunner copy = runner;
  EXPECT_EQ(play(runner, 100), play(copy, 100));
}

TEST(Script, SaysWhichRuleItIsToBreak) {
  EXPECT_EQ(parse("# breaks: hb-on\nwait 1 s\n").breaks, "hb-on");
  EXPECT_EQ(parse("# words\nwait 1 s\n# more\n").breaks, std::nullopt);
  EXPECT_THAT(faultsIn("wait 1 s\n  # breaks: x\n"),
              ElementsAre("s.txt:2:5: 'breaks:' belongs at the head, before the first step"));
  EXPECT_THAT(faultsIn("# breaks: x\n# breaks: y\n# breaks:\n"),
              ElementsAre(HasSubstr("s.txt:2:3: a second 'breaks:'"),
                          HasSubstr("s.txt:3:3: a second 'breaks:'")));
  EXPECT_THAT(faultsIn("# breaks: two words\n"),
              ElementsAre("s.txt:1:3: 'breaks:' is followed by the id of one rule"));
}

TEST(Script, ListsEveryFaultWithItsPlace) {
  EXPECT_THAT(
      faultsIn("at 12,5 s: set cab1.key on\n"
               "at 3 set cab1.key on\n"
               "after 5 km: set cab1.key on\n"
               "wait 0.123 s\n"
               "wait until cab1.air >= 75\n"
               "  wait until cab1.airr >= 75 psi at most 9 s\n"
               "wait until cab1.air >= 75 bar at most soon\n"
               "after 1 s:\n"
               "conductor: ring bell 2\n"
               "wait -3 s\n"
               "wait 2 s 1 min\n"),
      ElementsAre(
          HasSubstr("s.txt:1:4: '12,5 s' found; allowed: a time such as 12.5 s"),
          HasSubstr("s.txt:2:4: no ':' after the time"),
          HasSubstr("s.txt:3:7: '5 km' found; allowed: a time such as"),
          HasSubstr("s.txt:4:6: 0.123 s found; allowed: whole hundredths of a second"),
          HasSubstr("s.txt:5:12: a wait without a limit"),
          HasSubstr("s.txt:6:14: unknown signal 'cab1.airr'; did you mean 'cab1.air'?"),
          HasSubstr("s.txt:7:27: "), HasSubstr("s.txt:7:39: 'soon' found"),
          HasSubstr("s.txt:8:11: no verb"), HasSubstr("s.txt:9:1: unknown actor 'conductor'"),
          HasSubstr("s.txt:10:6: '-3 s' found"), HasSubstr("s.txt:11:6: '2 s 1 min' found")));
}

TEST(Script, PointsAtTheWordThatTheUnitDoesNotKnow) {
  const unit::Unit unit(plant::Parameters{}, unit::Route{}, unit::UnitStart{});
  const ActionCheck check = [&](const unit::Action& a) { return unit.findActionFault(a); };
  EXPECT_THAT(faultsIn("at 1 s: sett cab1.key on\n"
                       "  set cab1.kee on\n"
                       "set cab1.key up\n"
                       "go engine3\n"
                       "judge end1.hoses bad\n"
                       "judge end1.hoses defect X\n"
                       "guard: go end1\n",
                       check),
              ElementsAre(HasSubstr("s.txt:1:9: unknown verb 'sett'; did you mean 'set'?"),
                          HasSubstr("s.txt:2:7: unknown control 'cab1.kee'; did you mean "
                                    "'cab1.key'?"),
                          HasSubstr("s.txt:3:14: 'cab1.key' cannot be 'up'"),
                          HasSubstr("s.txt:4:4: unknown place 'engine3'"),
                          HasSubstr("s.txt:5:18: unknown verdict 'bad'"),
                          HasSubstr("s.txt:6:25: unknown class 'X'"),
                          HasSubstr("s.txt:7:8: only the trainee can 'go'")));
}

TEST(Script, RefusesTimesThatHavePassedOnPaper) {
  EXPECT_THAT(faultsIn("at 10 s: set cab1.key on\nwait 5 s\nat 14.5 s: set cab1.key off\n"),
              ElementsAre("s.txt:3:1: this time has passed already: the steps above take until "
                          "15.00 s at least"));
}

TEST(Script, TakesTimesOfSeveralParts) {
  const Script s = parse("at 1 h 2 min 3.5 s: set cab1.key on\nwait 2 min\n");
  EXPECT_EQ(s.steps[0].ticks, 372'350);
  EXPECT_EQ(s.steps[1].ticks, 12'000);
}

TEST(Script, HostileFilesAreToldFromGoodOnes) {
  EXPECT_THAT(faultsIn(std::string("wait 1 s\n\0", 10)),
              ElementsAre("s.txt:2:1: a NUL byte: this is no text file"));
  EXPECT_THAT(faultsIn(std::string(3000, 'x')), ElementsAre(HasSubstr("more than 2000")));
  std::string many;
  for (int k = 0; k < 100'001; ++k) many += "wait 1 s\n";
  EXPECT_THAT(faultsIn(many), ElementsAre(HasSubstr("s.txt:100001:1: more than 100000 steps")));
  std::string wrong;
  for (int k = 0; k < 300'000; ++k) wrong += "at x\n";
  EXPECT_EQ(faultsIn(wrong).size(), 201u);
  EXPECT_THAT(faultsIn("wait until " + std::string(1900, '(') + " at most 1 s\n"),
              ElementsAre(HasSubstr("s.txt:1:")));
}

TEST(Script, SaysSomething) {
  EXPECT_THAT(faultsIn(""), ElementsAre("s.txt: no step in it: a script says who does what"));
  EXPECT_THAT(faultsIn("# breaks: x\n\n"), ElementsAre(HasSubstr("s.txt: no step in it")));
}

}  // namespace
}  // namespace cabwright::scenario
