// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/desk_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "desk_fixture.h"

namespace cabwright::session {
namespace {

using scenario::Mode;
using testing::HasSubstr;

unit::Unit plainUnit() { return unit::Unit(plant::Parameters(), unit::Route(), unit::UnitStart()); }

std::string wrongOf(const std::string& text) {
  return plainUnit().findActionFault(actionOf(text)).value_or("");
}

TEST(DeskActions, AreMadeAndReadBack) {
  for (const unit::Pace& pace : unit::kPaces) {
    const unit::Action action = makePace(pace);
    EXPECT_EQ(actionOf(unit::toText(action)), action);
    EXPECT_EQ(findPaceOf(action), pace);
  }
  EXPECT_EQ(unit::toText(makeMark("before the hill")), "instructor: mark before the hill");
  EXPECT_EQ(findMarkName(makeMark("before the hill")), "before the hill");
  EXPECT_EQ(unit::toText(makeIntervene("  brake not on ")), "instructor: intervene brake not on");
  EXPECT_EQ(findIntervention(makeIntervene("brake not on")), "brake not on");
  EXPECT_EQ(unit::toText(makeRemark("looked well")), "instructor: remark general looked well");
  EXPECT_EQ(findRemark(makeRemark("looked well")), "looked well");
  EXPECT_EQ(unit::toText(makePrompt("the gauge?")), "instructor: remark prompt the gauge?");
  EXPECT_FALSE(findMarkName(actionOf("mark here")));  // the trainee's
  EXPECT_FALSE(findPaceOf(makeMark("2")));
}

TEST(DeskActions, TheUnitKnowsTheirWords) {
  for (const std::string text : {"pace 0.25", "pace frozen", "mark a", "intervene she rolled",
                                 "arm compressor1.belt_gone", "clear x"})
    EXPECT_EQ(wrongOf("instructor: " + text), "") << text;
  EXPECT_THAT(wrongOf("instructor: pace 3"), HasSubstr("unknown pace '3'"));
  EXPECT_THAT(wrongOf("instructor: pace frosen"), HasSubstr("did you mean 'frozen'"));
  EXPECT_THAT(wrongOf("instructor: pace 2 please"), HasSubstr("takes nothing behind it"));
  EXPECT_THAT(wrongOf("instructor: mark"), HasSubstr("missing"));
  EXPECT_THAT(wrongOf("instructor: mark " + std::string(90, 'x')), HasSubstr("80"));
  EXPECT_THAT(wrongOf("instructor: intervene"), HasSubstr("missing"));
  EXPECT_THAT(wrongOf("instructor: marke a"), HasSubstr("did you mean 'mark'"));
  for (const std::string who : {"", "guard: ", "scenario: ", "signaller: ", "helper: "})
    for (const std::string text : {"pace 2", "mark a", "intervene b"})
      EXPECT_THAT(wrongOf(who + text), HasSubstr("for the instructor")) << who << text;
}

TEST(DeskActions, ChangeNothingInTheWorld) {
  unit::Unit unit = plainUnit();
  const std::uint64_t before = unit.hash();
  for (const std::string text : {"pace 0.1", "mark a", "intervene b", "remark general c",
                                 "arm compressor1.belt_gone", "clear x"})
    EXPECT_TRUE(unit.apply(actionOf("instructor: " + text)).accepted);
  EXPECT_EQ(unit.hash(), before);
}

class DeskPolicy : public testing::Test {
 protected:
  std::string refusal(const std::string& text) const {
    return findDeskFault(at_, actionOf(text)).value_or("");
  }
  unit::Unit unit_ = plainUnit();
  DeskSituation at_{Mode::kAssessment, 5000, std::nullopt, unit::kStandardPace, &unit_};
};

const std::vector<std::string> kFalsifying{
    "instructor: pace 0.5",          "instructor: pace 10",
    "instructor: pace frozen",       "instructor: set cab1.brake full",
    "scenario: set cab1.throttle 1", "instructor: place brake_handle carried",
    "instructor: tooth 1 12",        "instructor: condition end1.hoses good"};
const std::vector<std::string> kHonest{"instructor: arm vacuum.train_pipe_leak size 3",
                                       "instructor: clear vacuum.train_pipe_leak",
                                       "instructor: fault vacuum.side1_leak_c 2",
                                       "instructor: condition end1.hoses hanging",
                                       "instructor: remark general well done",
                                       "instructor: remark prompt the gauge",
                                       "instructor: mark here",
                                       "instructor: intervene she rolled back",
                                       "instructor: pace 1",
                                       "instructor: set signal.S1 danger",
                                       "guard: ring bell 2",
                                       "guard: set cab2.guards_valve open",
                                       "helper: set door1 open",
                                       "signaller: set signal.S1 clear",
                                       "set cab1.brake full",
                                       "go saloon"};

TEST_F(DeskPolicy, AnAssessmentRefusesWhatFalsifiesIt) {
  for (const std::string& text : kFalsifying) EXPECT_NE(refusal(text), "") << text;
  for (const std::string& text : kHonest) EXPECT_EQ(refusal(text), "") << text;
  EXPECT_TRUE(findGoBackFault(Mode::kAssessment));
}

TEST_F(DeskPolicy, ElsewhereAllIsAllowed) {
  for (const Mode mode : {Mode::kGuided, Mode::kPractice}) {
    at_.mode = mode;
    for (const std::string& text : kFalsifying) EXPECT_EQ(refusal(text), "") << text;
    EXPECT_FALSE(findGoBackFault(mode));
  }
}

TEST_F(DeskPolicy, SaysTheReason) {
  EXPECT_THAT(refusal("instructor: pace 2"), HasSubstr("runs at pace 1"));
  EXPECT_THAT(refusal("instructor: set cab1.brake full"), HasSubstr("for the trainee"));
  EXPECT_THAT(refusal("instructor: set cab1.brake full"), HasSubstr("; step in first"));
  EXPECT_THAT(refusal("instructor: condition end1.hoses good"), HasSubstr("evidence"));
  EXPECT_THAT(refusal("instructor: condition end1.hoses good"), HasSubstr("; step in first"));
}

TEST_F(DeskPolicy, TimeStandsStillOnlyWithAnIntervention) {
  at_.intervened_at = 5000;
  EXPECT_EQ(refusal("instructor: pace frozen"), "");
  at_.tick = 5000 + kFreezeTicks;
  EXPECT_EQ(refusal("instructor: pace frozen"), "");
  ++at_.tick;
  EXPECT_THAT(refusal("instructor: pace frozen"), HasSubstr("step in first"));
  EXPECT_NE(refusal("instructor: pace 2"), "");
}

TEST_F(DeskPolicy, AfterAnInterventionHandsMayHelp) {
  at_.intervened_at = 100;
  for (const std::string text : {"instructor: set cab1.brake full", "instructor: tooth 1 12",
                                 "instructor: condition end1.hoses good"})
    EXPECT_EQ(refusal(text), "") << text;
}

TEST_F(DeskPolicy, ADefectThatIsThereIsNotExchangedForAnother) {
  EXPECT_EQ(refusal("instructor: condition end1.hoses split"), "");
  unit_.apply(actionOf("instructor: condition end1.hoses hanging"));  // seen at the hoses
  unit_.apply(actionOf("instructor: condition cab1.air stuck"));      // hidden in the gauge
  unit_.advance();
  EXPECT_THAT(refusal("instructor: condition end1.hoses split"), HasSubstr("evidence"));
  EXPECT_THAT(refusal("instructor: condition cab1.air dead"), HasSubstr("evidence"));
  EXPECT_EQ(refusal("instructor: condition end2.hoses split"), "");
  EXPECT_EQ(refusal("instructor: condition cab2.air dead"), "");
}

}  // namespace
}  // namespace cabwright::session
