// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/changes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "shipped_run.h"

namespace cabwright::session {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

struct Said {
  std::int64_t tick;
  std::string what;
  bool operator==(const Said&) const = default;
};

void act(LiveRun& live, const std::string& text) {
  const Taken taken = live.take(std::get<unit::Action>(unit::parseAction(text)));
  EXPECT_FALSE(taken.fault) << text;
  EXPECT_TRUE(taken.outcome.accepted) << text << ": " << taken.outcome.cause;
}

std::vector<std::string> passes(LiveRun& live, int count, std::int64_t most_ticks = 60'000) {
  ChangeWatch watch(live.unit());
  std::vector<std::string> said;
  for (int k = 0; k < count; ++k) {
    const PassResult result = passUntilChange(live, watch, most_ticks);
    said.push_back(result.what.value_or("nothing"));
  }
  return said;
}

// Good.txt up to the act before which it sits in cab 1 with both engines running.
class ChangesTest : public testing::Test {
 protected:
  void SetUp() override {
    scenario::ScriptRunner runner(goodScript("cold-preparation", live_.unit()));
    playGood(
        live_, runner, [&] { return !started_ || !inCab1(); },
        [&](const auto& action) {
          started_ = started_ || unit::toText(action) == "set engine2.switch cab";
        });
    ASSERT_TRUE(inCab1());
  }
  bool inCab1() const {
    const auto& trainee = live_.unit().world().trainee;
    return trainee.place == unit::Place::kCab1 && !trainee.walking;
  }
  LiveRun live_{shippedSituation("cold-preparation"), {}};
  bool started_ = false;
};

TEST_F(ChangesTest, PassingTimeStopsAtWhatMattersOnTheWay) {
  act(live_, "hold cab1.device");
  act(live_, "set cab1.reverser forward");
  EXPECT_THAT(passes(live_, 3),
              ElementsAre("The device lamp is lit.", "A thump: a final drive goes into mesh.",
                          "The air lamp is lit."));
  act(live_, "set cab1.brake release");
  EXPECT_THAT(passes(live_, 2),
              ElementsAre("The release pipe falls to 25 inHg.", "The train pipe reaches 15 inHg."));
}

TEST_F(ChangesTest, FromTheHandOnTheBrakeToTheNeedleAtRest) {
  act(live_, "hold cab1.device");
  act(live_, "set cab1.reverser forward");
  act(live_, "set cab1.brake release");
  ChangeWatch watch(live_.unit());
  for (int k = 0; k < 20; ++k)
    if (passUntilChange(live_, watch, 20'000).what == "The train pipe reaches 21 inHg.") break;
  EXPECT_NEAR(live_.frame()[unit::Signal::kCab1TrainPipe], 21, 0.4);
  live_.advance(3000);
  act(live_, "set cab1.brake 0.5");
  EXPECT_THAT(passes(live_, 2), ElementsAre("Air hisses.", "The train pipe falls to 15 inHg."));
  act(live_, "set cab1.brake lap");
  const auto said = passes(live_, 2);
  EXPECT_EQ(said.front(), "The hissing stops.");
  double reading = 0;
  ASSERT_EQ(std::sscanf(said.back().c_str(), "The train pipe stands at %lf inHg.", &reading), 1);
  EXPECT_NEAR(live_.frame()[unit::Signal::kCab1TrainPipe], reading, 0.26);
  // It does stand.
  live_.advance(500);
  EXPECT_NEAR(live_.frame()[unit::Signal::kCab1TrainPipe], reading, 0.6);
}

TEST_F(ChangesTest, TheSafetyDeviceLetGoIsSeenInTheLampFirst) {
  act(live_, "hold cab1.device");
  act(live_, "set cab1.reverser forward");
  live_.advance(6000);
  act(live_, "release cab1.device");
  EXPECT_EQ(passes(live_, 1).front(), "The device lamp goes out.");
}

TEST_F(ChangesTest, AStoppedEngineIsHeard) {
  act(live_, "hold cab1.device");
  act(live_, "set cab1.reverser forward");
  live_.advance(2000);
  act(live_, "hold cab1.stop2");
  EXPECT_THAT(passes(live_, 2), ElementsAre("The lamp of engine 2 goes out.", "Engine 2 stops."));
}

TEST_F(ChangesTest, SaysWhenOneIsThere) {
  act(live_, "go cab2");
  // Leaving what was heard behind is no news.
  EXPECT_EQ(passes(live_, 1).front(), "You are there.");
}

TEST_F(ChangesTest, WhenNothingMattersTheTimeAllowedPasses) {
  act(live_, "hold cab1.device");
  live_.advance(2000);
  ChangeWatch watch(live_.unit());
  const std::int64_t from = live_.tick();
  const PassResult result = passUntilChange(live_, watch, 500);
  EXPECT_EQ(result.what, std::nullopt);
  EXPECT_EQ(result.ticks, 500);
  EXPECT_EQ(live_.tick(), from + 500);
}

class ChangesOfExercise : public testing::TestWithParam<const char*> {};

std::vector<Said> watchGood(const char* exercise, LiveRun& live) {
  ChangeWatch watch(live.unit());
  scenario::ScriptRunner runner(goodScript(exercise, live.unit()));
  std::vector<Said> said;
  playGood(live, runner, [&] {
    if (live.tick() % kFrameTicks == 0 && live.tick() > 0)
      if (auto what = watch.see(live.unit())) said.push_back({live.tick(), *what});
    return true;
  });
  return said;
}

TEST_P(ChangesOfExercise, OnlyWhatCanBePerceivedThereIsSaidAndNotTooOften) {
  LiveRun live(shippedSituation(GetParam()), {});
  const std::vector<Said> all = watchGood(GetParam(), live);
  int near = 0, of_desk = 0;
  for (std::size_t k = 0; k < all.size(); ++k) {
    const auto place = live.history().findValue(unit::Signal::kPlace, all[k].tick);
    const bool in_cab = place == static_cast<float>(unit::Place::kCab1) + 1 ||
                        place == static_cast<float>(unit::Place::kCab2) + 1;
    for (const char* desk : {"Control air", "pipe", "lamp", "guard gives", "Signal", "handbrake"})
      if (all[k].what.find(desk) != std::string::npos) {
        EXPECT_TRUE(in_cab) << marking::clockText(all[k].tick) << " " << all[k].what;
        ++of_desk;
      }
    if (k > 0 && all[k].what == all[k - 1].what && all[k].tick - all[k - 1].tick < 100) ++near;
  }
  EXPECT_GT(of_desk, 40);
  EXPECT_EQ(near, 0) << "a needle or lamp flutters";
  std::vector<std::string> what;
  for (const Said& said : all) what.push_back(said.what);
  for (const char* must : {"Signal QS1 shows clear.", "The guard gives 2.", "The unit moves.",
                           "The unit comes to a stand.", "The train pipe reaches 21 inHg.",
                           "Somebody answers: all blocks are on.", "The handbrake is off."})
    EXPECT_THAT(what, Contains(HasSubstr(must)));
  EXPECT_THAT(what, Not(Contains(HasSubstr("Fire"))));
}

// However the time is cut up: what a pass stops at is what somebody saw who looked all the while.
TEST_P(ChangesOfExercise, NoPassGoesPastAChange) {
  LiveRun looked_on(shippedSituation(GetParam()), {});
  const std::vector<Said> all = watchGood(GetParam(), looked_on);
  LiveRun live(shippedSituation(GetParam()), {});
  ChangeWatch watch(live.unit());
  std::vector<Said> said;
  auto next = looked_on.actions().begin();
  const auto end = looked_on.actions().end();
  while (live.tick() < looked_on.tick()) {
    for (; next != end && next->tick == live.tick(); ++next) live.take(next->action);
    const std::int64_t until = next != end ? next->tick : looked_on.tick();
    const auto result =
        passUntilChange(live, watch, std::min<std::int64_t>(until - live.tick(), 470));
    if (result.what) said.push_back({live.tick(), *result.what});
  }
  ASSERT_EQ(said.size(), all.size());
  for (std::size_t k = 0; k < all.size(); ++k) EXPECT_EQ(said[k], all[k]) << all[k].what;
}

INSTANTIATE_TEST_SUITE_P(Shipped, ChangesOfExercise,
                         testing::Values("cold-preparation", "warm-tooth"));

}  // namespace
}  // namespace cabwright::session
