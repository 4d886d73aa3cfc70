// SPDX-License-Identifier: GPL-3.0-or-later
// What a good scenario comes to.
#include "scenario/scenario.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>
#include <sstream>

#include "scenario_texts.h"
#include "unit/unit.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::good;
using cabwright::testing::parseAfterHead;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const std::string kFull = R"(
mode = "assessment"
seed = 42
time_allowed = "50 min"

[conditions]
weather = "frost"
temperature = "2 C"
rail = "damp"
dark = true
stood_hours = 9

[start]
place = "lineside"
berth = "bay"
battery_charge = 0.8
line.coolant_level = 0.9
line2.coolant_level = 0.5

[start.controls]
cab2.pawl = "out"
engine1.hand_throttle = 0.25
cab1.display = 3

[start.objects]
brake_handle = "carried"

[start.parameters]
vacuum.train_leak_c = 0.2
relay.pull_v = 18

[people]
guard = true
second_person = false

[[hidden]]
item = "end2.hoses"
condition = "hanging"

[[hidden]]
instrument = "cab1.air"
condition = "offset 4"

[[draw]]
name = "rear end"
from = [
  { item = "end1.coupling", condition = "pin_gone", weight = 3 },
  { fault = "gearbox2.band3_worn", size = "40 %" },
  { nothing = true, weight = 0.5 },
]

[[fault]]
fault = "vacuum.train_pipe_leak"
size = "2 mm"
at = "3 min"
ramp = 20
until = "10 min"

[[fault]]
id = "bang"
fault = "compressor1.belt_gone"
when = "cab1.speed > 20 mph"
after = "5 s"
until_when = "cab1.speed < 1 mph"

[[event]]
who = "guard"
at = "1 min"
do = "ring bell 2"

[[event]]
who = "signaller"
when = "heard.bell == 2"
after = "10 s"
do = ["set signal.S1 clear"]

[marking]
pass_mark = "6 points"
phases = ["Before boarding", "Brake"]
complete = "cab1.train_pipe >= 21 inHg"
complete_says = "The vacuum is up."
[marking.judgements]
hit_points = 3
[[marking.use]]
file = "common"
[[marking.change]]
rule = "brake-test"
weight = 6

[[rule]]
id = "own"
title = "Own rule"
reason = "because"
kind = "limit"
condition = "true.abs_speed <= 25 mph"
within = [1, 20]
for = "2 s"
steps = ["did look end1.hoses"]
must_occur = true
follows = ["brake-test"]
weight = 2
)";

TEST(Scenario, TheLeastIsAScenario) {
  const LoadedScenario s = good(parseAfterHead(""));
  EXPECT_EQ(s.scenario.title, "T");
  EXPECT_EQ(s.scenario.mode, Mode::kPractice);
  EXPECT_FALSE(s.scenario.time_allowed_s);
  EXPECT_EQ(s.scenario.pass_percent, 80.0);
  EXPECT_EQ(s.vehicle.title, "Plain");
  EXPECT_EQ(s.route.route.name, "line");
  EXPECT_THAT(s.sources, SizeIs(3));
  const auto setup = makeSetup(s, 1);
  EXPECT_NO_THROW(unit::Unit(setup.parameters, setup.route, setup.start));
}

TEST(Scenario, HeadAndConditionsAreKept) {
  const Scenario s = good(parseAfterHead(kFull)).scenario;
  EXPECT_EQ(s.mode, Mode::kAssessment);
  EXPECT_EQ(s.seed, 42u);
  EXPECT_EQ(s.time_allowed_s, 3000.0);
  EXPECT_EQ(s.weather, "frost");
  EXPECT_EQ(s.stood_hours, 9.0);
  EXPECT_TRUE(s.start.dark);
  EXPECT_TRUE(s.start.assessment);
  EXPECT_TRUE(s.start.guard_present);
  EXPECT_FALSE(s.start.second_person);
  EXPECT_THAT(s.phases, ElementsAre("Before boarding", "Brake"));
  ASSERT_TRUE(s.aim);
  EXPECT_EQ(s.aim->condition.text(), "cab1.train_pipe >= 21 inHg");
  EXPECT_EQ(s.aim->says, "The vacuum is up.");
}

TEST(Scenario, TheStartIsWhatStandingHasMadeOfItAndWhatTheFileSays) {
  const LoadedScenario loaded = good(parseAfterHead(kFull));
  const unit::UnitStart& start = loaded.scenario.start;
  plant::Parameters changed = loaded.vehicle.plant;
  changed.vacuum.train_leak_c = 0.2;
  const auto stood = plant::StartConditions::afterStanding(9.0, 2.0, changed);
  EXPECT_EQ(start.plant.line[0].coolant_c, stood.line[0].coolant_c);
  EXPECT_EQ(start.plant.line[0].trapped_air, 1.0);
  EXPECT_EQ(start.plant.battery_charge, 0.8);
  EXPECT_EQ(start.plant.position_m, -250.0);
  EXPECT_EQ(start.plant.line[0].coolant_level, 0.9);  // both,
  EXPECT_EQ(start.plant.line[1].coolant_level, 0.5);  // but this one otherwise
  EXPECT_EQ(start.place, "lineside");
  const auto setup = makeSetup(loaded, 42);
  EXPECT_EQ(setup.parameters.vacuum.train_leak_c, 0.2);
  EXPECT_EQ(setup.parameters.train.adhesion_factor, 0.7);
  const unit::Unit unit(setup.parameters, setup.route, setup.start);
  EXPECT_EQ(unit.parameters().relay.pull_v, 18.0);
  EXPECT_EQ(unit.frame()[*unit::findSignal("cab2.pawl")], 0.0f);
  EXPECT_EQ(unit.frame()[*unit::findSignal("engine1.hand_throttle")], 0.25f);
  EXPECT_EQ(unit.frame()[*unit::findSignal("end2.hose")], 0.0f);  // hidden: hanging
}

TEST(Scenario, WithoutStandingHoursItIsAsColdAsTheAir) {
  const unit::UnitStart s = good(parseAfterHead("[conditions]\ntemperature = -4\n")).scenario.start;
  EXPECT_EQ(s.plant.ambient_c, -4.0);
  EXPECT_EQ(s.plant.line[1].oil_c, -4.0);
}

TEST(Scenario, FaultsHaveSizeMomentRampAndEnd) {
  const Scenario s = good(parseAfterHead(kFull)).scenario;
  ASSERT_THAT(s.faults, SizeIs(2));
  EXPECT_EQ(s.faults[0].id, "vacuum.train_pipe_leak");
  EXPECT_EQ(s.faults[0].size, 2.0);
  EXPECT_EQ(s.faults[0].from.ticks, 18'000);
  EXPECT_EQ(s.faults[0].ramp_ticks, 2'000);
  EXPECT_EQ(s.faults[0].until->ticks, 60'000);
  EXPECT_EQ(s.faults[1].id, "bang");
  EXPECT_EQ(s.faults[1].from.when->text(), "cab1.speed > 20 mph");
  EXPECT_EQ(s.faults[1].from.ticks, 500);
  EXPECT_TRUE(s.faults[1].until->when);
}

TEST(Scenario, AFaultWithoutASizeHasItsUsualOne) {
  const Scenario s =
      good(parseAfterHead("[[fault]]\nfault = \"vacuum.train_pipe_leak\"\n")).scenario;
  EXPECT_EQ(s.faults[0].size, fault::findFault("vacuum.train_pipe_leak")->size.usual);
}

TEST(Scenario, PeopleDoTheirThingsInTime) {
  const auto setup = makeSetup(good(parseAfterHead(kFull)), 42);
  Timeline timeline = setup.timeline;
  std::vector<std::string> done;
  for (std::int64_t t = 0; t < 20'000; ++t) {
    unit::Frame frame;
    frame.tick = t;
    frame[unit::Signal::kHeardBell] = t >= 6'200 ? 2.0f : 0.0f;
    for (const unit::Action& a : timeline.advance(frame)) {
      done.push_back(std::to_string(t) + " " + unit::toText(a));
    }
  }
  EXPECT_THAT(done, ElementsAre("6000 guard: ring bell 2", "7200 signaller: set signal.S1 clear"));
}

TEST(Scenario, RulesComeFromTheFileAndFromTheSharedOnes) {
  const LoadedScenario loaded = good(parseAfterHead(kFull));
  const Scenario& s = loaded.scenario;
  ASSERT_THAT(s.rules, SizeIs(3));
  const RuleText& own = s.rules[0];
  EXPECT_EQ(own.id, "own");
  EXPECT_EQ(own.text("kind"), "limit");
  EXPECT_THAT(own.numbers("within"), ElementsAre(1.0, 20.0));
  EXPECT_EQ(own.number("for"), 2.0);
  EXPECT_TRUE(own.flag("must_occur"));
  EXPECT_THAT(own.texts("steps"), ElementsAre("did look end1.hoses"));
  EXPECT_EQ(s.rules[1].id, "hb-off");
  EXPECT_EQ(s.rules[1].number("weight"), 4.0);
  EXPECT_EQ(s.rules[2].number("weight"), 6.0);  // changed here
  EXPECT_EQ(s.pass_percent, 100.0 * 6 / 12);
  EXPECT_EQ(s.judgements.hit_points, 3.0);
  EXPECT_EQ(loaded.sources.back().role, "rules");
  EXPECT_EQ(loaded.sources.back().name, "common");
}

TEST(Scenario, SomeOfTheSharedRulesCanBeChosen) {
  const auto ids = [](const std::string& use) {
    std::vector<std::string> all;
    for (const RuleText& r :
         good(parseAfterHead("[[marking.use]]\nfile = \"common\"\n" + use)).scenario.rules) {
      all.push_back(r.id);
    }
    return all;
  };
  EXPECT_THAT(ids(""), ElementsAre("hb-off", "brake-test"));
  EXPECT_THAT(ids("rules = [\"brake-test\"]\n"), ElementsAre("brake-test"));
  EXPECT_THAT(ids("except = [\"brake-test\"]\n"), ElementsAre("hb-off"));
}

TEST(Scenario, ASharedRuleForgetsWhatIsNotChosenWithIt) {
  const Scenario s = good(parseAfterHead("[[marking.use]]\nfile = \"common\"\n"
                                         "rules = [\"hb-off\"]\n"))
                         .scenario;
  EXPECT_THAT(s.rules[0].texts("follows"), IsEmpty());
}

TEST(Scenario, ARuleKnowsThePlaceOfEachLetter) {
  const LoadedScenario s =
      good(parseAfterHead("[[rule]]\nid = \"r\"\ntitle = \"t\"\n"
                          "reason = \"w\"\nkind = \"k\"\n"
                          "a = \"did \\\"x\\\" \xC3\xA9 y\"\n"
                          "condition = \"\"\"\n  cab1.air\n  > 3\"\"\"\n"
                          "steps = ['one', 'two']\n"));
  const RuleText& r = s.scenario.rules[0];
  EXPECT_EQ(r.placeOf("a"), (FilePlace{"x.toml", 11, 6}));
  EXPECT_EQ(r.placeOf("a", 0, 5), (FilePlace{"x.toml", 11, 12}));   // x, behind an escape
  EXPECT_EQ(r.placeOf("a", 0, 11), (FilePlace{"x.toml", 11, 18}));  // y, behind two bytes
  EXPECT_EQ(r.placeOf("condition", 0, 11), (FilePlace{"x.toml", 14, 1}));
  EXPECT_EQ(r.placeOf("steps", 1, 2), (FilePlace{"x.toml", 15, 20}));
  EXPECT_EQ(r.placeOf("b"), (FilePlace{"x.toml", 7, 6}));  // not there: the rule
}

TEST(Setup, TheSameSeedGivesTheSameAndOthersGiveOthers) {
  const LoadedScenario s = good(parseAfterHead(kFull));
  std::map<std::string, int> drawn;
  for (std::uint64_t seed = 0; seed < 900; ++seed) {
    const auto setup = makeSetup(s, seed);
    ASSERT_THAT(setup.drawn, SizeIs(1));
    EXPECT_EQ(setup.drawn, makeSetup(s, seed).drawn);
    ++drawn[setup.drawn[0]];
  }
  // Weights 3, 1 and 0.5: 600, 200 and 100 of 900; four standard deviations either way.
  EXPECT_NEAR(drawn["rear end: end1.coupling pin_gone"], 600, 57);
  EXPECT_NEAR(drawn["rear end: gearbox2.band3_worn"], 200, 50);
  EXPECT_NEAR(drawn["rear end: nothing"], 100, 38);
}

TEST(Setup, WhatIsDrawnIsPutIn) {
  const LoadedScenario s = good(parseAfterHead(kFull));
  bool item = false, band = false;
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    const auto setup = makeSetup(s, seed);
    if (setup.drawn[0].ends_with("pin_gone")) {
      item = setup.start.conditions.size() == 3 && setup.faults.armed().size() == 2;
    } else if (setup.drawn[0].ends_with("worn")) {
      band = setup.start.conditions.size() == 2 && setup.faults.armed().size() == 3;
    }
  }
  EXPECT_TRUE(item && band);
}

TEST(Setup, DrawsSeveralDifferentOnes) {
  const LoadedScenario s =
      good(parseAfterHead("[[draw]]\nname = \"two\"\ncount = 2\nfrom = [\n"
                          "{ item = \"end1.coupling\", condition = \"pin_gone\" },\n"
                          "{ item = \"end2.coupling\", condition = \"pin_gone\" },\n"
                          "{ item = \"end1.window\", condition = \"cracked\" } ]\n"));
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    const std::vector<std::string> drawn = makeSetup(s, seed).drawn;
    EXPECT_EQ(std::set<std::string>(drawn.begin(), drawn.end()).size(), 2u);
  }
}

TEST(Setup, RandomTeethStandAnywhereInTheirPitch) {
  const LoadedScenario s = good(parseAfterHead("[start]\nteeth = \"random\"\n"));
  int facing = 0;
  for (std::uint64_t seed = 0; seed < 600; ++seed) {
    const double at = makeSetup(s, seed).start.plant.line[0].tooth_phase_deg;
    EXPECT_GE(at, 0.0);
    EXPECT_LT(at, 30.0);
    facing += at < 8.0;
  }
  EXPECT_NEAR(facing, 160, 44);  // 8 of 30 degrees; four standard deviations
}

TEST(Setup, FaultsAreAtWorkInTheRun) {
  const auto setup =
      makeSetup(good(parseAfterHead("[[fault]]\nfault = \"air.main_drain_open\"\nat = 0.1\n")), 0);
  unit::Unit unit(setup.parameters, setup.route, setup.start);
  fault::ActiveFaults faults = setup.faults;
  for (int k = 0; k < 20; ++k) {
    EXPECT_EQ(unit.frame()[*unit::findSignal("drain_main")], k > 10 ? 1.0f : 0.0f) << k;
    faults.advance(unit);
    unit.advance();
  }
}

}  // namespace
}  // namespace cabwright::scenario
