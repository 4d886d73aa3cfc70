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

// ---- other orders ----------------------------------------------------------------------------
// The guide knows one order. To who takes another safe one it goes on with what is left: it does
// not ask again for what is done, and comes to its end.

std::string goodLines() {
  const std::string path = (shippedFolder() / "cold-preparation" / "good.txt").string();
  return std::get<scenario::SourceFile>(scenario::loadText(path)).text;
}

// From the first line that begins so to before the next one after it that begins so.
std::string cut(const std::string& lines, const std::string& from, const std::string& to) {
  const std::size_t begin = lines.find(from);
  return lines.substr(begin, lines.find(to, begin + 1) - begin);
}

std::string swapped(const std::string& lines, const std::string& a, const std::string& b) {
  std::string out = lines;
  for (std::size_t at = 0; at < out.size(); ++at) {
    if (out.compare(at, a.size(), a) == 0)
      out.replace(at, a.size(), b);
    else if (out.compare(at, b.size(), b) == 0)
      out.replace(at, b.size(), a);
  }
  return out;
}

std::string with(std::string lines, const std::string& old, const std::string& now) {
  return lines.replace(lines.find(old), old.size(), now);
}

struct OtherOrder {
  std::string name, lines;
  std::string last;  ///< where to stop looking; empty: at the end of it all
};
void PrintTo(const OtherOrder& order, std::ostream* out) { *out << order.name; }

std::vector<OtherOrder> otherOrders() {
  const std::string good = goodLines();
  const std::string ground = cut(good, "# Engine 1 from the ground", "go cab1");
  const std::string proving = cut(good, "# Each engine stopped once", "# The reservoir");
  const std::string test = cut(good, "set cab1.brake 0.45", "# full application");
  return {{"ShippedOtherWays",
           std::get<scenario::SourceFile>(
               scenario::loadText(
                   (shippedFolder() / "cold-preparation" / "good-other-ways.txt").string()))
               .text,
           ""},
          {"Engine2FirstFromTheGround", with(good, ground, swapped(ground, "engine1", "engine2")),
           "hold cab1.device"},
          {"Engine1ProvedFirst",
           with(good, proving,
                swapped(swapped(swapped(swapped(proving, "stop1", "stop2"), "rpm1", "rpm2"),
                                "start1", "start2"),
                        "lamp_engine1", "lamp_engine2")),
           "note leak 1.9"},
          {"OneFullApplication", with(good, test, ""), "say ask_rear_gauge"}};
}

class OtherOrders : public testing::TestWithParam<OtherOrder> {};

TEST_P(OtherOrders, AreNotHeldAgainstWhoTakesThem) {
  LiveOptions options;
  options.mode = scenario::Mode::kGuided;
  LiveRun live(shippedSituation("cold-preparation"), options);
  const std::string path = (shippedFolder() / "cold-preparation" / "other.txt").string();
  auto parsed = scenario::parseScript(
      {path, GetParam().lines},
      [&live](const unit::Action& action) { return live.unit().findActionFault(action); });
  if (const auto* faults = std::get_if<scenario::FileFaults>(&parsed))
    for (const auto& fault : *faults) FAIL() << scenario::toText(fault);
  scenario::ScriptRunner runner(std::get<scenario::Script>(parsed));
  bool looking = true;
  std::string step_then;
  playGood(
      live, runner, [&] { return looking; },
      [&](const unit::Action& action) {
        if (GetParam().last.empty() || unit::toText(action) != GetParam().last) return;
        looking = false;
        step_then = currentId(*live.guide());
      });
  const GuideWalk& walk = *live.guide();
  if (GetParam().last.empty()) {
    EXPECT_TRUE(walk.isDone()) << "asks for " << currentId(walk);
    return;
  }
  // It asks for what is done next, as it does when all was done in its own order.
  LiveRun taught(shippedSituation("cold-preparation"), options);
  scenario::ScriptRunner good(goodScript("cold-preparation", taught.unit()));
  bool going = true;
  std::string step_taught;
  playGood(
      taught, good, [&] { return going; },
      [&](const unit::Action& action) {
        if (unit::toText(action) != GetParam().last) return;
        going = false;
        step_taught = currentId(*taught.guide());
      });
  EXPECT_FALSE(looking) << "never came to " << GetParam().last;
  EXPECT_EQ(step_then, step_taught);
}

INSTANTIATE_TEST_SUITE_P(ColdPreparation, OtherOrders, testing::ValuesIn(otherOrders()),
                         [](const auto& order) { return order.param.name; });

}  // namespace
}  // namespace cabwright::session
