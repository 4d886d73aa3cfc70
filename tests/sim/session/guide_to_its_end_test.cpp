// SPDX-License-Identifier: GPL-3.0-or-later
// The guide of every shipped exercise, beside its good.txt: no step is left standing before the
// script is done, and what was not done was passed over because it does not apply.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "session/guide_walk.h"
#include "shipped_run.h"

namespace cabwright::session {
namespace {

namespace fs = std::filesystem;

std::vector<std::string> shippedExercises() {
  std::vector<std::string> names;
  for (const auto& folder : fs::directory_iterator(shippedFolder()))
    if (fs::exists(folder.path() / "good.txt")) names.push_back(folder.path().filename().string());
  std::ranges::sort(names);
  return names;
}

class EveryGuide : public testing::TestWithParam<std::string> {};

TEST_P(EveryGuide, IsWalkedToItsEndByGood) {
  LiveOptions options;
  options.mode = scenario::Mode::kGuided;
  LiveRun live(shippedSituation(GetParam()), options);
  ASSERT_NE(live.guide(), nullptr);
  const GuideWalk& walk = *live.guide();
  scenario::ScriptRunner runner(goodScript(GetParam(), live.unit()));
  std::int64_t last_act = -1;
  playGood(
      live, runner, [] { return true; },
      [&](const unit::Action& action) {
        // A hand that does two things in one hundredth of a second gives no Frame between.
        if (live.tick() == last_act && action.verb != "look") live.advance(1);
        last_act = live.tick();
      });
  ASSERT_FALSE(walk.steps().empty());
  EXPECT_TRUE(walk.isDone()) << "stands before step "
                             << (walk.current() ? walk.current()->id : "none") << ", "
                             << walk.behind() << " of " << walk.steps().size();
  for (std::size_t k = 0; k < walk.steps().size(); ++k) {
    if (walk.states()[k] == StepState::kPassedOver) {
      EXPECT_TRUE(walk.steps()[k].when.has_value()) << walk.steps()[k].id;
    }
  }
  // One look at the whole unit is not one step: they are spread over the run.
  std::vector<std::int64_t> ticks = walk.ticks();
  ticks.erase(std::unique(ticks.begin(), ticks.end()), ticks.end());
  EXPECT_GT(ticks.size(), walk.steps().size() / 2);
}

INSTANTIATE_TEST_SUITE_P(Shipped, EveryGuide, testing::ValuesIn(shippedExercises()),
                         [](const auto& name) {
                           std::string words = name.param;
                           std::ranges::replace(words, '-', '_');
                           return words;
                         });

}  // namespace
}  // namespace cabwright::session
