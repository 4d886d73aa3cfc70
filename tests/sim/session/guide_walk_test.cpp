// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/guide_walk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "sample_scenario.h"
#include "shipped_run.h"

namespace cabwright::session {
namespace {

using testing::ElementsAre;

unit::Frame frameWith(std::int64_t tick, std::map<unit::Signal, float> values) {
  unit::Frame frame;
  frame.tick = tick;
  for (const auto& [signal, value] : values) frame[signal] = value;
  return frame;
}

GuideWalk walkOf(const std::string& steps) {
  auto parsed = scenario::parseGuide({"guide.toml", steps});
  if (const auto* faults = std::get_if<scenario::FileFaults>(&parsed))
    for (const auto& fault : *faults) ADD_FAILURE() << scenario::toText(fault);
  return GuideWalk(std::get<scenario::Guide>(parsed));
}

std::string step(const std::string& id, const std::string& rest) {
  return "[[step]]\nid = \"" + id + "\"\ndo = \"D\"\nwhy = \"W\"\n" + rest + "\n";
}

std::string currentId(const GuideWalk& walk) {
  return walk.current() != nullptr ? walk.current()->id : "";
}

constexpr auto kKey = unit::Signal::kCab1Key;
constexpr auto kWiper = unit::Signal::kCab1Wiper;

TEST(GuideWalk, AStepIsDoneWhileItIsTheNextOneAndNotBefore) {
  GuideWalk walk = walkOf(step("a", "done = \"cab1.key\"") + step("b", "done = \"cab1.wiper\""));
  EXPECT_EQ(walk.current(), nullptr);
  walk.seeFrame(frameWith(0, {{kWiper, 1}}));
  EXPECT_EQ(currentId(walk), "a");
  walk.seeFrame(frameWith(10, {{kKey, 1}}));  // the wiper stands again
  EXPECT_EQ(currentId(walk), "b");
  EXPECT_EQ(walk.behind(), 1U);
  walk.seeFrame(frameWith(20, {{kWiper, 1}}));
  EXPECT_TRUE(walk.isDone());
  EXPECT_EQ(walk.current(), nullptr);
  EXPECT_THAT(walk.ticks(), ElementsAre(10, 20));
}

TEST(GuideWalk, WhatHoldsAlreadyIsDoneAtOnceAndStaysDone) {
  GuideWalk walk = walkOf(step("a", "done = \"cab1.key\"") + step("b", "done = \"cab1.wiper\"") +
                          step("c", "done = \"cab1.gear == 1\""));
  walk.seeFrame(frameWith(0, {{kKey, 1}, {kWiper, 1}}));
  EXPECT_EQ(currentId(walk), "c");
  walk.seeFrame(frameWith(10, {}));
  EXPECT_EQ(currentId(walk), "c");
  EXPECT_THAT(walk.states(), ElementsAre(StepState::kDone, StepState::kDone, StepState::kCurrent));
}

TEST(GuideWalk, AnytimeCountsWhateverWasNextThen) {
  GuideWalk walk =
      walkOf(step("a", "done = \"cab1.key\"") + step("b", "done = \"cab1.wiper\"\nanytime = true"));
  walk.seeFrame(frameWith(0, {{kWiper, 1}}));
  walk.seeFrame(frameWith(10, {}));
  EXPECT_EQ(currentId(walk), "a");
  walk.seeFrame(frameWith(20, {{kKey, 1}}));
  EXPECT_TRUE(walk.isDone());
}

TEST(GuideWalk, AStepThatDoesNotApplyIsPassedOverWhenItsTurnComes) {
  const std::string text = step("a", "done = \"cab1.key\"") +
                           step("b", "done = \"cab1.wiper\"\nwhen = \"cab1.air < 75 psi\"") +
                           step("c", "done = \"cab1.gear == 1\"");
  GuideWalk walk = walkOf(text);
  // At that time, not before.
  walk.seeFrame(frameWith(0, {{unit::Signal::kCab1Air, 80}}));
  walk.seeFrame(frameWith(10, {{kKey, 1}, {unit::Signal::kCab1Air, 60}}));
  EXPECT_EQ(currentId(walk), "b");
  GuideWalk other = walkOf(text);
  other.seeFrame(frameWith(10, {{kKey, 1}, {unit::Signal::kCab1Air, 80}}));
  EXPECT_EQ(currentId(other), "c");
  EXPECT_EQ(other.states()[1], StepState::kPassedOver);
}

TEST(GuideWalk, WhatIsToBeSaidOrDoneIsSaidOrDoneWhileItIsTheNextOne) {
  const auto looks = *unit::findSignal("did.look_both_ways");
  GuideWalk walk = walkOf(step("a", "done = \"cab1.key\"") +
                          step("b", "done = \"cab1.wiper\"\nacts = [\"look_both_ways\"]") +
                          step("c",
                               "done = \"cab1.wiper\"\nacts = [\"look_both_ways\", "
                               "\"look_both_ways\"]"));
  walk.seeFrame(frameWith(0, {{looks, 3}}));
  EXPECT_TRUE(walk.openPhrases(frameWith(0, {{looks, 3}})).empty());
  unit::Frame now = frameWith(10, {{kKey, 1}, {kWiper, 1}, {looks, 3}});
  walk.seeFrame(now);
  EXPECT_EQ(currentId(walk), "b");
  EXPECT_THAT(walk.openPhrases(now), ElementsAre(unit::Phrase::kLookBothWays));
  now = frameWith(20, {{kWiper, 1}, {looks, 4}});
  walk.seeFrame(now);
  EXPECT_EQ(currentId(walk), "c");
  walk.seeFrame(frameWith(30, {{kWiper, 1}, {looks, 5}}));
  EXPECT_EQ(currentId(walk), "c");
  walk.seeFrame(frameWith(40, {{looks, 6}}));
  EXPECT_EQ(currentId(walk), "c");  // the rest of it is still to be done
  EXPECT_TRUE(walk.openPhrases(frameWith(40, {{looks, 6}})).empty());
  walk.seeFrame(frameWith(50, {{kWiper, 1}, {looks, 6}}));
  EXPECT_TRUE(walk.isDone());
}

TEST(GuideWalk, WhatHasToBeSoMeanwhileIsRemembered) {
  const auto age = unit::Signal::kWarned;
  GuideWalk walk = walkOf(step("a", "done = \"cab1.key\"") +
                          step("b", "done = \"cab1.wiper\"\nmeanwhile = \"warning.age <= 1 s\""));
  walk.seeFrame(frameWith(0, {{age, 0.5}}));  // for something else
  walk.seeFrame(frameWith(10, {{kKey, 1}, {kWiper, 1}, {age, 20}}));
  EXPECT_EQ(currentId(walk), "b");
  walk.seeFrame(frameWith(20, {{age, 0}}));
  EXPECT_EQ(currentId(walk), "b");
  walk.seeFrame(frameWith(30, {{kWiper, 1}, {age, 9}}));
  EXPECT_TRUE(walk.isDone());
}

// Only when its turn comes: who does it while it is the next one still has to look.
TEST(GuideWalk, WhatIsPastWhenItsTurnComesIsNotAskedFor) {
  const std::string steps =
      step("a", "done = \"cab1.key\"") +
      step("b", "done = \"cab1.wiper\"\nacts = [\"look_both_ways\"]\npast = \"cab1.wiper\"");
  GuideWalk late = walkOf(steps), in_time = walkOf(steps);
  late.seeFrame(frameWith(0, {{kWiper, 1}}));
  late.seeFrame(frameWith(10, {{kKey, 1}, {kWiper, 1}}));
  EXPECT_TRUE(late.isDone());
  EXPECT_EQ(late.states()[1], StepState::kPassedOver);
  in_time.seeFrame(frameWith(0, {}));
  in_time.seeFrame(frameWith(10, {{kKey, 1}}));
  in_time.seeFrame(frameWith(20, {{kKey, 1}, {kWiper, 1}}));
  EXPECT_EQ(currentId(in_time), "b");
}

TEST(GuideWalk, WhatIsDoneOfAStepIsNoLongerOpen) {
  using unit::Control, unit::Item, unit::Object;
  GuideWalk walk = walkOf(step(
      "a",
      "points = [\"cab1.key\", \"end1.hoses\", \"end1.lamps\", \"brake_handle\", \"cab1.wiper\"]\n"
      "done = \"cab1.key == on and judged.end1.hoses >= 1 and judged.end1.lamps >= 1 and "
      "cab1.has_brake_handle and said.tell_shed >= 1\""));
  unit::Frame now = frameWith(0, {});
  walk.seeFrame(now);
  for (const scenario::GuidePoint& point : walk.current()->points)
    EXPECT_TRUE(walk.isOpen(point, now)) << point.index();
  EXPECT_FALSE(walk.isOpen(Item::kEnd2Hoses, now));
  EXPECT_THAT(walk.openPhrases(now), ElementsAre(unit::Phrase::kTellShed));
  now = frameWith(10, {{kKey, 1},
                       {*unit::findSignal("judged.end1.hoses"), 1},
                       {*unit::findSignal("said.tell_shed"), 1},
                       {*unit::findSignal("cab1.has_brake_handle"), 1}});
  walk.seeFrame(now);
  EXPECT_FALSE(walk.isOpen(Control::kCab1Key, now));
  EXPECT_FALSE(walk.isOpen(Item::kEnd1Hoses, now));
  EXPECT_TRUE(walk.isOpen(Item::kEnd1Lamps, now));
  EXPECT_FALSE(walk.isOpen(Object::kBrakeHandle, now));
  EXPECT_TRUE(walk.isOpen(Control::kCab1Wiper, now));  // `done` says nothing of it
  EXPECT_TRUE(walk.openPhrases(now).empty());
}

TEST(GuideWalk, ARunOutsideAssessmentHasIt) {
  const Situation situation = shippedSituation("warm-tooth");
  LiveRun assessed(situation, {});
  EXPECT_EQ(assessed.guide(), nullptr);
  LiveOptions guided;
  guided.mode = scenario::Mode::kGuided;
  LiveRun live(situation, guided);
  ASSERT_NE(live.guide(), nullptr);
  EXPECT_EQ(currentId(*live.guide()), "book");
  EXPECT_EQ(LiveRun(sampleSituation(), guided).guide(), nullptr);
}

// What good.txt does next at these acts, and the step a guide has to show then.
struct Stop {
  std::string act, step;
};
struct Exercise {
  std::string name;
  std::vector<Stop> stops;
};
void PrintTo(const Exercise& exercise, std::ostream* out) { *out << exercise.name; }

std::vector<Stop> withShared(std::vector<Stop> own) {
  const std::vector<Stop> shared{{"look booking.notices", "book"},
                                 {"take brake_handle", "collect"},
                                 {"say ask_permission", "leave"},
                                 {"look end1.hoses", "end1"},
                                 {"look engine1.oil", "engine1"},
                                 {"look trailer1.alarm_telltale", "trailer1"},
                                 {"look trailer2.scotches", "trailer2"},
                                 {"set cab2.red_lamps on", "tail"},
                                 {"look cupboard.volts_read", "cupboard"},
                                 {"set cab1.key on", "key"},
                                 {"hold cab1.lamp_test", "lamp-test"},
                                 {"insert brake_handle cab1", "handles"},
                                 {"set cab1.white_lamps on", "white"},
                                 {"hold cab1.stop2", "prove-2"},
                                 {"hold cab1.start1", "restart-1"},
                                 {"note leak 1.9", "leak"},
                                 {"say ask_second_person", "second"},
                                 {"set cab1.brake full", "test-full"},
                                 {"say ask_rear_gauge", "rear-gauge"},
                                 {"say ask_valve_open", "valve-open"},
                                 {"say ask_bell_test", "bell-ask"},
                                 {"ring cab1.bell 3", "bell"},
                                 {"hold cab1.horn high", "horn"},
                                 {"set cab1.wiper on", "wiper"},
                                 {"hold cab1.fire_test", "fire-bell"},
                                 {"set cab2.handbrake off", "rear-handbrake"},
                                 {"set cab1.handbrake off", "handbrake"},
                                 {"ring cab1.bell 2", "answer"},
                                 {"do look_ahead", "look-ahead"},
                                 {"set cab1.gear 1", "gear-1"},
                                 {"do look_back", "look-back"},
                                 {"set cab1.gear 2", "gear-2"},
                                 {"set cab1.gear 3", "gear-3"},
                                 {"set cab1.gear N", "secure"}};
  own.insert(own.end(), shared.begin(), shared.end());
  return own;
}

class Guided : public testing::TestWithParam<Exercise> {};

TEST_P(Guided, GoodWalksItToItsEndAndEachStepIsWhatItDoesNext) {
  const Exercise& exercise = GetParam();
  LiveOptions options;
  options.mode = scenario::Mode::kGuided;
  LiveRun live(shippedSituation(exercise.name), options);
  ASSERT_NE(live.guide(), nullptr);
  const GuideWalk& walk = *live.guide();
  scenario::ScriptRunner runner(goodScript(exercise.name, live.unit()));
  std::map<std::string, std::vector<std::string>> shown;  // at each act, the step that was next
  // A hand that does two things in one hundredth of a second gives the guide no Frame between.
  // (A look is begun at once: it has to last as long as the script says.)
  std::int64_t last_act = -1;
  playGood(
      live, runner, [] { return true; },
      [&](const unit::Action& action) {
        if (live.tick() == last_act && action.verb != "look") live.advance(1);
        last_act = live.tick();
        GuideWalk now = walk;
        now.seeFrame(live.frame());
        shown[unit::toText(action)].push_back(currentId(now));
      });
  EXPECT_TRUE(walk.isDone()) << "stands before step " << currentId(walk) << ", " << walk.behind()
                             << " of " << walk.steps().size();
  for (const Stop& stop : exercise.stops)
    EXPECT_THAT(shown[stop.act], testing::Contains(stop.step)) << stop.act;
  EXPECT_TRUE(std::ranges::is_sorted(walk.ticks()));
  for (std::size_t k = 0; k < walk.steps().size(); ++k)
    EXPECT_EQ(walk.states()[k], StepState::kDone) << walk.steps()[k].id;
  // One look at the whole unit is not one step: they are spread over the run.
  std::vector<std::int64_t> ticks = walk.ticks();
  ticks.erase(std::unique(ticks.begin(), ticks.end()), ticks.end());
  EXPECT_GT(ticks.size(), walk.steps().size() * 3 / 4);
}

INSTANTIATE_TEST_SUITE_P(
    Shipped, Guided,
    testing::Values(Exercise{"cold-preparation",
                             withShared({{"set engine1.switch ground", "ready-1"},
                                         {"hold engine1.start", "start-1"},
                                         {"set engine1.hand_throttle fast_idle", "ease-1"},
                                         {"go engine2", "go-2"},
                                         {"set engine2.switch ground", "ready-2"},
                                         {"hold engine2.start", "start-2"},
                                         {"set engine2.switch cab", "home-2"},
                                         {"set engine1.switch cab", "home-1"},
                                         {"hold cab1.device", "device"},
                                         {"set cab1.reverser forward", "direction"}})},
                    Exercise{"warm-tooth", withShared({{"hold cab1.device", "start-device"},
                                                       {"hold cab1.horn low", "dark-lamp"},
                                                       {"hold cab1.start2", "cab-start-2"},
                                                       {"hold cab1.start1", "cab-start-1"}})},
                    Exercise{"taking-over",
                             {{"say ask_permission", "leave"},
                              {"look side1.protection", "round"},
                              {"look engine2.isolating_switch", "engine-2"},
                              {"look cab2.controls_neutral", "rear-cab"},
                              {"hold cab1.start2", "start-2"},
                              {"set cab1.brake full", "brake-full"},
                              {"say ask_bell_test", "bell"},
                              {"set cab2.handbrake off", "rear-off"},
                              {"set cab1.handbrake off", "hold-15"},
                              {"ring cab1.bell 2", "answer"}}},
                    Exercise{"hill-start",
                             {{"set cab2.handbrake off", "rear-handbrake"},
                              {"set cab1.handbrake off", "leading-handbrake"},
                              {"ring cab1.bell 2", "answer"},
                              {"set cab1.throttle 2", "hill-power"}}},
                    Exercise{"defect-found",
                             {{"look side1.rigging", "round"},
                              {"say tell_shed", "tell"},
                              {"decide fail", "decide"},
                              {"say refuse_unit", "say"}}}),
    [](const auto& exercise) {
      std::string name = exercise.param.name;
      std::ranges::replace(name, '-', '_');
      return name;
    });

// Where things go out of course, and where an end is changed.
INSTANTIATE_TEST_SUITE_P(OutOfCourse, Guided,
                         testing::Values(Exercise{"change-of-ends",
                                                  {{"set cab1.handbrake on", "secure"},
                                                   {"take brake_handle", "take-out"},
                                                   {"look cab2.seal", "look-there"},
                                                   {"insert reversing_lever cab2", "put-in"},
                                                   {"hold cab2.start1", "start-1"},
                                                   {"set cab2.brake full", "full"},
                                                   {"set cab1.handbrake off", "far-off"},
                                                   {"ring cab2.bell 2", "answer"}}},
                                         Exercise{"late-device",
                                                  {{"hold cab1.device", "charge"},
                                                   {"release cab1.device", "let-go"},
                                                   {"look cab1.seal", "seal"},
                                                   {"release cab1.device", "once-more"},
                                                   {"decide fail", "decide"},
                                                   {"say refuse_unit", "say"},
                                                   {"say tell_shed", "shed"}}},
                                         Exercise{"band-slips",
                                                  {{"ring cab1.bell 2", "answer"},
                                                   {"set cab1.gear 3", "gear-3"},
                                                   {"set cab1.gear N", "stop-here"},
                                                   {"say ask_restricted", "iso-ask"},
                                                   {"set cab2.handbrake on", "iso-rear"},
                                                   {"look engine2.gearbox", "iso-look"},
                                                   {"set engine2.switch off", "iso-switch"},
                                                   {"set engine2.pin sleeve", "iso-pin"},
                                                   {"set cab2.handbrake off", "iso-rear-off"},
                                                   {"set cab1.reverser reverse", "iso-prove"},
                                                   {"decide restricted", "iso-decide"},
                                                   {"set cab1.handbrake off", "iso-off"}}},
                                         Exercise{"one-engine",
                                                  {{"set cab1.throttle idle", "which"},
                                                   {"set cab1.handbrake on", "iso-hold"},
                                                   {"say ask_restricted", "iso-ask"},
                                                   {"look engine2.tray", "iso-look"},
                                                   {"set engine2.pin sleeve", "iso-pin"},
                                                   {"set cab1.brake release", "iso-charge"},
                                                   {"set cab1.gear 1", "on-hill"}}},
                                         Exercise{"low-air",
                                                  {{"go side1", "gauge"},
                                                   {"set drain_main shut", "drain"},
                                                   {"set cab1.throttle 1", "cut-out"},
                                                   {"set cab1.handbrake off", "hold-off"},
                                                   {"ring cab1.bell 2", "answer"},
                                                   {"set cab1.gear 2", "second"},
                                                   {"decide go_on", "book-gear"}}},
                                         Exercise{"weak-battery",
                                                  {{"set heater off", "volts"},
                                                   {"look engine1.belts", "engine-1"},
                                                   {"look engine2.belts", "engine-2"},
                                                   {"hold cab1.start2", "start-2"},
                                                   {"hold cab1.start1", "start-1"},
                                                   {"say tell_shed", "book"},
                                                   {"decide restricted", "decide"}}},
                                         Exercise{"overcharge",
                                                  {{"hold cab2.device", "over"},
                                                   {"say ask_blocks", "blocks"},
                                                   {"hold cord1 pulled", "cord-1"},
                                                   {"hold cord4 pulled", "cord-4"},
                                                   {"set cab1.handbrake off", "far-off"},
                                                   {"set cab2.handbrake off", "near-off"},
                                                   {"hold cab2.stop1", "stop-engines"},
                                                   {"take brake_handle", "take-out"},
                                                   {"set battery_switch open", "battery"},
                                                   {"say hand_over", "hand-over"}}},
                                         Exercise{"fire-bell",
                                                  {{"ring cab1.bell 2", "answer"},
                                                   {"set cab1.brake full", "stop"},
                                                   {"hold cab1.stop1", "engines-out"},
                                                   {"set cab1.handbrake on", "secure"},
                                                   {"set engine1.fuel_cock shut", "cock"},
                                                   {"decide fail", "fail"}}},
                                         Exercise{"passenger-alarm",
                                                  {{"set cab1.throttle idle", "stop"},
                                                   {"say tell_guard", "ask"},
                                                   {"set alarm flat", "telltale"},
                                                   {"decide go_on", "book"},
                                                   {"set cab1.handbrake off", "off"}}},
                                         Exercise{"handbrake-on",
                                                  {{"set cab1.throttle idle", "drags"},
                                                   {"set cab1.handbrake on", "stop"},
                                                   {"set cab2.handbrake off", "let-off"},
                                                   {"look trailer1.wheels", "heat"},
                                                   {"decide go_on", "book"},
                                                   {"set cab1.handbrake off", "off"}}},
                                         Exercise{"loose-jumper",
                                                  {{"hold cab2.start1", "try"},
                                                   {"look cupboard.breakers", "breakers"},
                                                   {"hold cab1.start1", "other-end"},
                                                   {"hold cab1.stop1", "stop"},
                                                   {"look between.jumper", "between"},
                                                   {"say ask_reseat", "ask"},
                                                   {"set jumper home", "home"},
                                                   {"hold cab2.start2", "prove"},
                                                   {"decide go_on", "book"}}},
                                         Exercise{"not-charging",
                                                  {{"set cab1.throttle 1", "revs"},
                                                   {"set heater off", "loads"},
                                                   {"look engine2.belts", "belt-2"},
                                                   {"say tell_signaller", "tell"},
                                                   {"decide restricted", "decide"}}},
                                         Exercise{"frost",
                                                  {{"set cab1.reverser forward", "over"},
                                                   {"look trailer1.blocks", "blocks"},
                                                   {"set cab1.brake full", "break-off"},
                                                   {"look trailer1.blocks", "look-again"},
                                                   {"set cab1.handbrake off", "hold-off"},
                                                   {"ring cab1.bell 2", "answer"},
                                                   {"set cab1.brake 0.5", "try-brake"}}},
                                         Exercise{"dark-engine-lamp",
                                                  {{"look cab1.lamps", "tacho"},
                                                   {"look engine2.tray", "gauge"},
                                                   {"set cab2.handbrake off", "book"},
                                                   {"set cab1.handbrake off", "hold-off"},
                                                   {"ring cab1.bell 2", "answer"}}}),
                         [](const auto& exercise) {
                           std::string name = exercise.param.name;
                           std::ranges::replace(name, '-', '_');
                           return name;
                         });

}  // namespace
}  // namespace cabwright::session
