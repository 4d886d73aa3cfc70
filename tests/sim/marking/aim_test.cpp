// SPDX-License-Identifier: GPL-3.0-or-later
// An exercise that was not done is not passed, however little was broken; nor is one that took
// longer than it may.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "marking/sheet.h"
#include "rig.h"

namespace cabwright::marking {
namespace {

using ::testing::HasSubstr;

Aim makeAim(std::string words = "The air is up.") {
  return {std::get<unit::Condition>(unit::Condition::parse("cab1.air >= 75 psi")),
          std::move(words)};
}

// A run in which nothing is broken, with so much air at a tick.
MarkSheet sheetWith(double air, std::optional<Aim> aim, std::optional<double> allowed_s = {}) {
  Story story(makeAB(RuleKind::kPrecedence));
  story.frame(0).act(1, 'a').act(2, 'b');
  AimListener listener(std::move(aim));
  unit::Frame frame;
  listener.seeFrame(frame);
  frame.tick = 5000;
  frame[unit::Signal::kCab1Air] = static_cast<float>(air);
  listener.seeFrame(frame);
  story.finish(9000);
  SheetHead head;
  head.last_tick = 9000;
  head.time_allowed_s = allowed_s;
  return makeSheet(head, {}, story.marker.rules(), story.marker.verdicts(), std::nullopt, {},
                   listener.result());
}

TEST(Aim, NotReachedIsNotPassedAndSaysWhatWasAsked) {
  const MarkSheet sheet = sheetWith(74, makeAim());
  EXPECT_FALSE(sheet.decision.passed);
  EXPECT_EQ(sheet.totals.percent, 100);
  EXPECT_THAT(sheet.decision.text, HasSubstr("the exercise was not done. Asked: The air is up."));
  EXPECT_THAT(printSheet(sheet), HasSubstr("it did not come to that"));
}

TEST(Aim, ReachedOnceIsEnough) {
  const MarkSheet sheet = sheetWith(75, makeAim());
  EXPECT_TRUE(sheet.decision.passed) << sheet.decision.text;
  ASSERT_TRUE(sheet.aim && sheet.aim->reached_at);
  EXPECT_EQ(*sheet.aim->reached_at, 5000);
  EXPECT_THAT(printSheet(sheet), HasSubstr("The air is up: at 0:00:50.0"));
}

TEST(Aim, IsCalledByItsConditionWithoutWords) {
  const MarkSheet sheet = sheetWith(0, makeAim(""));
  EXPECT_EQ(sheet.aim->words, "'cab1.air >= 75 psi'");
}

TEST(Aim, TimeAllowedRunsUntilItIsReached) {
  EXPECT_TRUE(sheetWith(75, makeAim(), 50).decision.passed);
  const MarkSheet late = sheetWith(75, makeAim(), 49.9);
  EXPECT_FALSE(late.decision.passed);
  EXPECT_THAT(late.decision.text, HasSubstr("longer than the time allowed"));
  EXPECT_FALSE(sheetWith(75, std::nullopt, 89).decision.passed);
  EXPECT_TRUE(sheetWith(75, std::nullopt, 90).decision.passed);
}

}  // namespace
}  // namespace cabwright::marking
