// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/guide.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "scenario_texts.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::faultsOf;
using cabwright::testing::good;
using cabwright::testing::kHead;
using cabwright::testing::testLibrary;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

const std::string kTwoSteps = R"(title = "Two"
[[step]]
id = "key"
phase = "desk"
do = "Switch on"
why = "The desk is dead without."
place = "cab1"
points = ["cab1.key", "control_key", "cab1.lamp_air", "end1.hoses", "saloon"]
done = "cab1.key == on"
[[step]]
id = "air"
do = "Wait for air"
why = "The dogs need it."
when = "cab1.air < 75 psi"
alternative = "Drains"
anytime = true
done = "cab1.air >= 75 psi"
acts = ["look_along", "tell_shed"]
meanwhile = "warning.age <= 1 s"
)";

TextLibrary library() {
  TextLibrary texts = testLibrary();
  texts.add(Shelf::kGuides, "two", kTwoSteps);
  texts.add(Shelf::kGuides, "broken", "[[step]]\nid = \"x\"\n");
  return texts;
}

std::variant<LoadedScenario, FileFaults> parse(const std::string& rest) {
  return parseScenario({"x.toml", kHead + rest}, library());
}

std::vector<std::string> ids(const Guide& guide) {
  std::vector<std::string> all;
  for (const GuideStep& step : guide.steps) all.push_back(step.id);
  return all;
}

std::string own(const std::string& id, const std::string& rest) {
  return "[[guide.step]]\nid = \"" + id + "\"\ndo = \"D\"\nwhy = \"W\"\ndone = \"cab1.wiper\"\n" +
         rest;
}

TEST(Guide, ReadsAllOfAStep) {
  const Guide guide = good(parseGuide({"two.toml", kTwoSteps}));
  ASSERT_EQ(guide.steps.size(), 2U);
  const GuideStep& key = guide.steps[0];
  EXPECT_EQ(key.act, "Switch on");
  EXPECT_EQ(key.place, unit::Place::kCab1);
  EXPECT_THAT(
      key.points,
      ElementsAre(GuidePoint(unit::Control::kCab1Key), GuidePoint(unit::Object::kControlKey),
                  GuidePoint(unit::Signal::kCab1LampAir), GuidePoint(unit::Item::kEnd1Hoses),
                  GuidePoint(unit::Place::kSaloon)));
  EXPECT_FALSE(key.when);
  EXPECT_FALSE(key.anytime);
  const GuideStep& air = guide.steps[1];
  EXPECT_TRUE(air.when);
  EXPECT_TRUE(air.anytime);
  EXPECT_EQ(air.alternative, "Drains");
  EXPECT_THAT(air.acts, ElementsAre(unit::Phrase::kLookAlong, unit::Phrase::kTellShed));
  EXPECT_TRUE(air.meanwhile);
  EXPECT_FALSE(key.meanwhile);
}

TEST(Guide, SaysAllThatIsWrongWithItsPlace) {
  EXPECT_THAT(faultsOf(parseGuide({"g.toml",
                                   "[[step]]\n"
                                   "id = \"a\"\n"
                                   "do = \"D\"\n"
                                   "why = \"W\"\n"
                                   "place = \"cab3\"\n"
                                   "points = [\"cab1.kee\", \"true.air\"]\n"
                                   "done = \"cab1.aire > 5\"\n"
                                   "[[step]]\n"
                                   "id = \"a\"\n"
                                   "why = \"W\"\n"
                                   "done = \"true.air > 5 psi\"\n"
                                   "before = \"b\"\n"})),
              ElementsAre(HasSubstr("g.toml:5:9: unknown place 'cab3'; did you mean 'cab1'?"),
                          "g.toml:6:11: unknown thing to point at 'cab1.kee'; did you mean "
                          "'cab1.key'?",
                          HasSubstr("g.toml:6:23: unknown thing to point at 'true.air'"),
                          HasSubstr("g.toml:7:9: unknown"), HasSubstr("'do'"),
                          "g.toml:9:6: there is a step 'a' already",
                          HasSubstr("g.toml:11:8: 'done' reads what is shown and done, but "
                                    "true.air is the truth"),
                          HasSubstr("g.toml:12:1: unknown key 'before'")));
  EXPECT_THAT(faultsOf(parseGuide({"g.toml", "title = \"T\"\n"})),
              ElementsAre("g.toml:1:1: a guide needs one [[step]] at least"));
}

TEST(Guide, SaysWhichActIsNone) {
  EXPECT_THAT(faultsOf(parseGuide({"g.toml",
                                   "[[step]]\nid = \"a\"\ndo = \"D\"\nwhy = \"W\"\n"
                                   "done = \"cab1.key\"\nacts = [\"look_bothways\"]\n"
                                   "meanwhile = \"true.air > 5 psi\"\n"})),
              ElementsAre("g.toml:6:9: unknown thing to say or do 'look_bothways'; did you mean "
                          "'look_both_ways'?",
                          HasSubstr("'meanwhile' reads what is shown and done")));
}

TEST(Guide, AScenarioUsesSharedOnesAndAddsItsOwnBesideThem) {
  const LoadedScenario loaded =
      good(parse("[guide]\nuse = \"two\"\n" + own("first", "before = \"key\"\n") +
                 own("middle", "after = \"key\"\n") + own("last", "")));
  const Guide& guide = loaded.scenario.guide;
  EXPECT_THAT(ids(guide), ElementsAre("first", "key", "middle", "air", "last"));
  for (const GuideStep& step : guide.steps) EXPECT_EQ(step.phase, "desk") << step.id;
  EXPECT_EQ(loaded.sources.back().role, "guide");
  EXPECT_EQ(loaded.sources.back().text, kTwoSteps);
  EXPECT_THAT(ids(good(parse("[guide]\nuse = [\"two\"]\nwithout = [\"key\"]\n")).scenario.guide),
              ElementsAre("air"));
  EXPECT_THAT(good(parse("")).scenario.guide.steps, IsEmpty());
}

TEST(Guide, AScenarioSaysWhatIsWrongWithItsUse) {
  EXPECT_THAT(faultsOf(parse("[guide]\nuse = [\"tow\"]\n")),
              ElementsAre("x.toml:7:8: unknown guide 'tow'; did you mean 'two'?"));
  EXPECT_THAT(faultsOf(parse("[guide]\nuse = [\"two\", \"two\"]\nwithout = [\"kee\"]\n" +
                             own("key", "after = \"aer\"\n"))),
              ElementsAre("x.toml:7:15: the guide 'two' is there already",
                          "x.toml:8:12: unknown step 'kee'; did you mean 'key'?",
                          "x.toml:10:6: there is a step 'key' already",
                          HasSubstr("x.toml:14:9: unknown step 'aer'")));
  EXPECT_THAT(faultsOf(parse("[guide]\n")),
              ElementsAre("x.toml:6:1: [guide] needs 'use' or [[guide.step]]"));
  // The shared file's own faults are told at their place, and nothing is made of what is missing.
  EXPECT_THAT(faultsOf(parse("[guide]\nuse = \"broken\"\nwithout = [\"y\"]\n")),
              ElementsAre(HasSubstr("guides/broken.toml:1:1: "), HasSubstr("guides/broken.toml"),
                          HasSubstr("guides/broken.toml")));
}

TEST(Scenario, LevelAndWhatItTeachesAreForWhoeverChooses) {
  const Scenario s = good(parse("level = 3\nteaches = [\"air\", \"mesh\"]\n")).scenario;
  EXPECT_EQ(s.level, 3);
  EXPECT_THAT(s.teaches, ElementsAre("air", "mesh"));
  EXPECT_EQ(good(parse("")).scenario.level, std::nullopt);
  EXPECT_THAT(faultsOf(parse("level = 6\nteaches = [\"air\", \" \", \"air\"]\n")),
              ElementsAre(HasSubstr("x.toml:6:9: 'level' is 6; allowed: 1 to 5"),
                          "x.toml:7:19: an empty text in 'teaches'",
                          "x.toml:7:24: 'air' is said twice in 'teaches'"));
}

}  // namespace
}  // namespace cabwright::scenario
