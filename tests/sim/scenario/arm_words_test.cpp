// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/arm_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "scenario_texts.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::faultsOf;
using cabwright::testing::parseAfterHead;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

unit::Action actionOf(const std::string& text) {
  return std::get<unit::Action>(unit::parseAction(text));
}
ArmWords wordsOf(const std::string& text) {
  auto read = readArm(actionOf("instructor: " + text));
  if (const auto* wrong = std::get_if<std::string>(&read)) ADD_FAILURE() << text << ": " << *wrong;
  return std::get<ArmWords>(std::move(read));
}
std::string wrongOf(const std::string& text) {
  const auto read = readArm(actionOf("instructor: " + text));
  return std::holds_alternative<std::string>(read) ? std::get<std::string>(read) : "good";
}

TEST(ArmWords, ABareNameIsTheUsualSizeNow) {
  const ArmWords words = wordsOf("arm vacuum.train_pipe_leak");
  EXPECT_EQ(words.spec, fault::findFault("vacuum.train_pipe_leak"));
  EXPECT_EQ(words.size, words.spec->size.usual);
  EXPECT_EQ(words.ramp_ticks, 0);
  EXPECT_EQ(words.after_ticks, 0);
  EXPECT_FALSE(words.when);
  EXPECT_EQ(words.id, "");
}

TEST(ArmWords, AllPartsInAnyOrder) {
  for (const std::string text :
       {"arm gearbox2.band3_worn size 40 ramp 1 min 30 s after 12.5 s when cab1.gear == 3 and "
        "cab1.speed > 20 mph as slipping band",
        "arm gearbox2.band3_worn as slipping band when cab1.gear == 3 and cab1.speed > 20 mph "
        "after "
        "12.5 s ramp 90 s size 40 %"}) {
    const ArmWords words = wordsOf(text);
    EXPECT_EQ(words.size, 40.0);
    EXPECT_EQ(words.ramp_ticks, 9000);
    EXPECT_EQ(words.after_ticks, 1250);
    ASSERT_TRUE(words.when) << text;
    EXPECT_EQ(words.when->text(), "cab1.gear == 3 and cab1.speed > 20 mph");
    EXPECT_EQ(words.id, "slipping band");
  }
}

TEST(ArmWords, SayWhatIsWrongAndWhatIsMeant) {
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leek"),
              HasSubstr("did you mean 'vacuum.train_pipe_leak'"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak sise 2"), HasSubstr("did you mean 'size'"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak size"), HasSubstr("'size' what?"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak size 2 size 3"), HasSubstr("'size' twice"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak size 2 psi"), HasSubstr("mm"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak size 1e9"), HasSubstr("allowed"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak ramp soon"), HasSubstr("ramp: 'soon'"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak after 5"), HasSubstr("after: '5'"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak when cab1.aire > 5 psi"), HasSubstr("cab1.air"));
  EXPECT_THAT(wrongOf("arm vacuum.train_pipe_leak when 1 > 0"), HasSubstr("without any signal"));
  EXPECT_THAT(wrongOf("arm compressor1.belt_gone size 2"), HasSubstr("no size"));
  EXPECT_THAT(wrongOf("arm compressor1.belt_gone ramp 2 s"), HasSubstr("comes at once"));
}

TEST(ArmWords, EveryFaultOfTheCatalogueOfEverySizeIsReadBackAsItWasMade) {
  for (const fault::FaultSpec& spec : fault::faultCatalogue()) {
    for (const double share : {0.0, 0.37, 1.0}) {
      ArmWords words;
      words.spec = &spec;
      const fault::SizeRange& range = spec.size;
      if (range.exists()) words.size = range.lowest + share * (range.highest - range.lowest);
      if (range.whole) words.size = static_cast<double>(static_cast<int>(words.size));
      if (spec.gradual) words.ramp_ticks = 777;
      words.after_ticks = 5;
      words.when = std::get<unit::Condition>(unit::Condition::parse("cab1.air >= 75 psi"));
      words.id = "one";
      const auto read = unit::parseAction(unit::toText(makeArm(words)));
      const ArmWords back = std::get<ArmWords>(readArm(std::get<unit::Action>(read)));
      EXPECT_EQ(back.spec, &spec);
      EXPECT_EQ(back.size, words.size) << spec.name;
      EXPECT_EQ(back.ramp_ticks, words.ramp_ticks) << spec.name;
      EXPECT_EQ(back.after_ticks, 5);
      EXPECT_EQ(back.when->text(), "cab1.air >= 75 psi");
      EXPECT_EQ(back.id, "one");
    }
  }
}

RC_GTEST_PROP(ArmWords, AreReadOrRefusedWithASentence, (const std::string& text)) {
  const auto parsed = unit::parseAction("instructor: arm vacuum.train_pipe_leak " + text);
  if (const auto* action = std::get_if<unit::Action>(&parsed)) {
    const auto read = readArm(*action);
    if (const auto* wrong = std::get_if<std::string>(&read)) RC_ASSERT(!wrong->empty());
  }
}

TEST(ArmWords, AnIdOfSeveralWordsIsCleared) {
  EXPECT_EQ(unit::toText(makeClear("slipping band")), "instructor: clear slipping band");
  EXPECT_EQ(idOfClear(makeClear("slipping band")), "slipping band");
}

TEST(ArmWords, OnlyInstructorAndScenarioArm) {
  const unit::Unit unit{plant::Parameters{}, unit::Route{}, unit::UnitStart{}};
  EXPECT_FALSE(findActionFault(unit, actionOf("instructor: arm compressor1.belt_gone")));
  EXPECT_FALSE(findActionFault(unit, actionOf("scenario: clear compressor1.belt_gone")));
  for (const std::string who : {"", "guard: ", "helper: ", "signaller: "}) {
    EXPECT_TRUE(findActionFault(unit, actionOf(who + "arm compressor1.belt_gone"))) << who;
    EXPECT_TRUE(findActionFault(unit, actionOf(who + "clear compressor1.belt_gone"))) << who;
  }
  EXPECT_TRUE(findActionFault(unit, actionOf("instructor: clear")));
}

std::vector<std::string> eventFaults(const std::string& does, const std::string& who = "scenario") {
  return faultsOf(
      parseAfterHead("[[fault]]\nfault = \"compressor1.belt_gone\"\nat = \"5 s\"\n"
                     "[[event]]\nwho = \"" +
                     who + "\"\nat = \"2 s\"\ndo = [" + does + "]\n"));
}

TEST(ArmWords, EventsArmAndClear) {
  EXPECT_THAT(eventFaults("\"arm vacuum.train_pipe_leak size 2 ramp 5 s as leak\", \"clear leak\""),
              IsEmpty());
  EXPECT_THAT(eventFaults("\"clear compressor1.belt_gone\""), IsEmpty());
  EXPECT_THAT(eventFaults("\"arm compressor1.belt_gone\", \"clear compressor1.belt_gone#2\""),
              IsEmpty());
  EXPECT_THAT(eventFaults("\"mark the descent\"", "instructor"), IsEmpty());
}

TEST(ArmWords, EventsSayWhatIsWrongAtItsPlace) {
  EXPECT_THAT(eventFaults("\"arm vacuum.train_pipe_leek\""),
              ElementsAre(HasSubstr("x.toml:12:12: unknown fault 'vacuum.train_pipe_leek'")));
  EXPECT_THAT(eventFaults("\"clear compresor1.belt_gone\""),
              ElementsAre(HasSubstr("x.toml:12:14: unknown fault of this file")));
  EXPECT_THAT(eventFaults("\"arm vacuum.train_pipe_leak as compressor1.belt_gone\""),
              ElementsAre(HasSubstr("is taken by another fault")));
  EXPECT_THAT(eventFaults("\"pace 2\"", "instructor"), ElementsAre(HasSubstr("for people")));
  EXPECT_THAT(eventFaults("\"arm compressor1.belt_gone\"", "guard"),
              ElementsAre(HasSubstr("instructor and the scenario")));
}

}  // namespace
}  // namespace cabwright::scenario
