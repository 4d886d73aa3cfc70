// SPDX-License-Identifier: GPL-3.0-or-later
// The guide of every shipped exercise, beside its good.txt: no step is left standing before the
// script is done, and what was not done was passed over because it does not apply. What good.txt
// says, and does with eyes and voice, because a rule marks it, is asked for by the step that is
// next then, which is not done without it.
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

// All that the rules of an exercise say, as one text.
std::string rulesOf(const LiveRun& live) {
  std::string all;
  for (const scenario::RuleText& rule : live.situation().loaded.scenario.rules)
    for (const scenario::RuleField& field : rule.fields) {
      if (const auto* text = std::get_if<std::string>(&field.value)) all += *text + '\n';
      if (const auto* texts = std::get_if<std::vector<std::string>>(&field.value))
        for (const std::string& text : *texts) all += text + '\n';
    }
  return all;
}

bool isMarked(const std::string& rules, const std::string& phrase) {
  if (phrase == "look_both_ways") return rules.find("trainee.crossed_blind") != std::string::npos;
  for (const char* how : {"say ", "do ", "said.", "did.", "answered."})
    if (rules.find(how + phrase) != std::string::npos) return true;
  return false;
}

// A step counts it however long before its turn it was said.
bool isCountedBy(const scenario::GuideStep& step, const std::string& phrase) {
  return std::ranges::any_of(step.done.signals(), [&](unit::Signal signal) {
    const std::string_view name = unit::signalInfo(signal).name;
    return name == "said." + phrase || name == "answered." + phrase;
  });
}

// The step that is next, if whoever does no more than the guide says would leave this out.
std::string leftOutBy(const GuideWalk& walk, const LiveRun& live, const unit::Action& action) {
  if (action.verb != "say" && action.verb != "do") return {};
  GuideWalk now = walk;
  now.seeFrame(live.frame());
  for (const unit::Phrase phrase : now.openPhrases(live.frame()))
    if (unit::phraseTable()[unit::indexOf(phrase)].name == action.object) return {};
  for (std::size_t k = now.behind(); k < now.steps().size(); ++k)
    if (isCountedBy(now.steps()[k], action.object)) return {};
  if (now.current() == nullptr) return "after the last step";
  return now.current()->id + ": " + now.current()->act;
}

// The same of the horn: a step that asks for a warning is not done by an older one.
std::string hornLeftOutBy(const GuideWalk& walk, const LiveRun& live, const unit::Action& action) {
  if (action.verb != "hold" || !action.object.ends_with(".horn")) return {};
  const auto runs = [&](const char* name) { return live.frame()[*unit::findSignal(name)] >= 0.5F; };
  if (runs("true.engine1.running") && runs("true.engine2.running")) return {};  // of no start
  GuideWalk now = walk;
  now.seeFrame(live.frame());
  if (now.current() == nullptr) return "after the last step";
  const auto asks = [](const unit::Condition& condition) {
    return std::ranges::any_of(condition.signals(), [](unit::Signal signal) {
      return signal == unit::Signal::kWarned || signal == unit::Signal::kHeardHorn;
    });
  };
  const scenario::GuideStep& step = *now.current();
  if (step.meanwhile && asks(*step.meanwhile)) return {};
  for (std::size_t k = now.behind(); k < now.steps().size(); ++k)
    if (now.steps()[k].anytime && asks(now.steps()[k].done)) return {};
  return step.id + ": " + step.act;
}

class EveryGuide : public testing::TestWithParam<std::string> {};

TEST_P(EveryGuide, IsWalkedToItsEndByGood) {
  LiveOptions options;
  options.mode = scenario::Mode::kGuided;
  LiveRun live(shippedSituation(GetParam()), options);
  ASSERT_NE(live.guide(), nullptr);
  const GuideWalk& walk = *live.guide();
  scenario::ScriptRunner runner(goodScript(GetParam(), live.unit()));
  const std::string rules = rulesOf(live);
  std::int64_t last_act = -1;
  playGood(
      live, runner, [] { return true; },
      [&](const unit::Action& action) {
        // A hand that does two things in one hundredth of a second gives no Frame between.
        if (live.tick() == last_act && action.verb != "look") live.advance(1);
        last_act = live.tick();
        if (rules.find("heard.horn") != std::string::npos) {
          EXPECT_EQ(hornLeftOutBy(walk, live, action), "") << live.tick();
        }
        if (isMarked(rules, action.object)) {
          EXPECT_EQ(leftOutBy(walk, live, action), "")
              << unit::toText(action) << " at " << live.tick();
        }
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
