// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "rig.h"

namespace cabwright::marking {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

RuleSpec named(RuleSpec spec, const std::string& id, const std::string& phase, RuleClass c,
               double weight) {
  spec.id = id;
  spec.phase = phase;
  spec.title = "title of " + id;
  spec.rule_class = c;
  spec.weight = weight;
  if (c == RuleClass::kCritical) spec.tolerance.text = "none: done or not";
  return spec;
}

// safety: a before b, critical. engines: c once, serious; d after c, technique, never exercised.
std::vector<RuleSpec> makeRules() {
  RuleSpec exists = makeRule(RuleKind::kExistence);
  exists.a = {kC, "the look"};
  RuleSpec unused = makeRule(RuleKind::kResponse);
  unused.a = {"did do stand_clear", "standing clear"};
  unused.b = {kA, "A"};
  return {named(unused, "unused", "engines", RuleClass::kTechnique, 3),
          named(exists, "exists", "engines", RuleClass::kSerious, 4),
          named(makeAB(RuleKind::kPrecedence), "order", "safety", RuleClass::kCritical, 6)};
}

MarkSheet sheetOf(Story& story, double pass = 80) {
  SheetHead head;
  head.title = "Cold preparation";
  head.last_tick = 1000;
  PassRule rule;
  rule.pass_percent = pass;
  return makeSheet(head, rule, story.marker.rules(), story.marker.verdicts());
}

TEST(Sheet, PutsCriticalsFirstThenPhasesAndInsideAPhaseTime) {
  std::vector<RuleSpec> rules = makeRules();
  RuleSpec early = makeRule(RuleKind::kExistence);
  early.a = {kA, "A"};
  rules.push_back(named(early, "early", "engines", RuleClass::kSerious, 1));
  rules.push_back(named(early, "depart", "depart", RuleClass::kSerious, 1));
  Story story(rules);
  story.frame(0).act(1, 'a').act(2, 'b').act(3, 'c').finish(10);
  PassRule pass;
  pass.phases = {"depart"};
  const MarkSheet sheet = makeSheet({}, pass, story.marker.rules(), story.marker.verdicts());
  std::vector<std::string> ids;
  for (const SheetLine& line : sheet.lines) ids.push_back(line.id);
  EXPECT_THAT(ids, ElementsAre("order", "depart", "early", "exists", "unused"));
  EXPECT_EQ(sheet.lines[4].number, 5);
}

TEST(Sheet, GivesNoPointsForWhatWasNotExercised) {
  Story story(makeRules());
  story.frame(0).act(1, 'a').act(2, 'b').act(3, 'c').finish(10);
  const MarkSheet sheet = sheetOf(story);
  EXPECT_EQ(sheet.totals.possible, 10);
  EXPECT_EQ(sheet.totals.earned, 10);
  EXPECT_EQ(sheet.totals.not_exercised, 1);
  EXPECT_TRUE(sheet.decision.passed);
}

TEST(Sheet, DoesNotPassARunInWhichNothingWasExercised) {
  Story story(makeAB(RuleKind::kPrecedence));
  story.frame(0).finish(10);
  const MarkSheet sheet = sheetOf(story, 0);
  EXPECT_FALSE(sheet.decision.passed);
  EXPECT_THAT(sheet.decision.text, HasSubstr("nothing was exercised"));
}

TEST(Sheet, FailsTheRunForOneCriticalWhateverThePoints) {
  std::vector<RuleSpec> rules = makeRules();
  rules[1].weight = 1000;
  Story story(rules);
  story.frame(0).act(2, 'b').act(3, 'c').finish(10);
  const MarkSheet sheet = sheetOf(story);
  EXPECT_GT(sheet.totals.percent, 99);
  EXPECT_FALSE(sheet.decision.passed);
  EXPECT_THAT(sheet.decision.failed_by, ElementsAre(1));
  EXPECT_TRUE(sheet.lines[0].fails_run);
  EXPECT_THAT(sheet.decision.text, HasSubstr("title of order"));
}

TEST(Sheet, DoesNotFailTheRunForACriticalInsideItsTolerance) {
  RuleSpec spec = named(makeAB(RuleKind::kPrecedence), "order", "", RuleClass::kCritical, 1);
  spec.tolerance = {"standing", "true.speed < 1 mph", 0, RuleClass::kSerious};
  RuleSpec other = makeRule(RuleKind::kExistence);
  other.a = {kB, "B"};
  Story story({spec, named(other, "exists", "", RuleClass::kSerious, 9)});
  story.frame(0).act(1, 'b').finish(10);
  const MarkSheet sheet = sheetOf(story);
  EXPECT_TRUE(sheet.decision.passed);
  EXPECT_EQ(sheet.totals.percent, 90);
  EXPECT_THAT(printSheet(sheet), HasSubstr("counted as serious"));
}

std::vector<RuleSpec> makeChain(RuleClass root, RuleClass follower) {
  RuleSpec done = makeRule(RuleKind::kExistence);
  done.a = {kA, "A"};
  std::vector<RuleSpec> rules{named(done, "done", "one", root, 5),
                              named(makeAB(RuleKind::kPrecedence), "before", "two", follower, 7)};
  rules[1].follows = {"done"};
  return rules;
}

TEST(FollowsFrom, IsShownAndCountedOnce) {
  Story story(makeChain(RuleClass::kSerious, RuleClass::kSerious));
  story.frame(0).act(1, 'b').finish(10);
  const MarkSheet sheet = sheetOf(story);
  EXPECT_EQ(sheet.lines[1].verdictText(), "follows from line 1");
  EXPECT_EQ(sheet.totals.possible, 5);
  EXPECT_EQ(sheet.totals.broken, 1);
  EXPECT_EQ(sheet.totals.following, 1);
}

TEST(FollowsFrom, DoesNotHoldWhenTheOtherRuleIsKept) {
  Story story(makeChain(RuleClass::kSerious, RuleClass::kSerious));
  story.frame(0).act(1, 'b').act(2, 'a').finish(10);
  const MarkSheet sheet = sheetOf(story);
  EXPECT_EQ(sheet.lines[1].verdictText(), "broken");
  EXPECT_EQ(sheet.totals.possible, 12);
}

TEST(FollowsFrom, DoesNotSaveACriticalThatFollowsFromALesserBreach) {
  Story story(makeChain(RuleClass::kSerious, RuleClass::kCritical));
  story.frame(0).act(1, 'b').finish(10);
  const MarkSheet sheet = sheetOf(story, 0);
  EXPECT_EQ(sheet.lines[0].id, "before");
  EXPECT_EQ(sheet.lines[0].verdictText(), "follows from line 2");
  EXPECT_THAT(sheet.decision.failed_by, ElementsAre(1));
}

TEST(FollowsFrom, FailsTheRunByTheCriticalItFollowsFrom) {
  Story story(makeChain(RuleClass::kCritical, RuleClass::kCritical));
  story.frame(0).act(1, 'b').finish(10);
  const MarkSheet sheet = sheetOf(story);
  ASSERT_EQ(sheet.decision.failed_by.size(), 1U);
  const auto line = static_cast<std::size_t>(sheet.decision.failed_by[0]) - 1;
  EXPECT_EQ(sheet.lines[line].id, "done");
}

TEST(Sheet, SettlesAnewAfterVoidsPromptsAndOverrides) {
  Story story(makeRules());
  story.frame(0).act(2, 'b').act(3, 'c').finish(10);
  MarkSheet sheet = sheetOf(story);
  sheet.lines[0].void_reason = "the program lagged";
  settleSheet(sheet, story.marker.rules());
  EXPECT_TRUE(sheet.decision.passed);
  EXPECT_EQ(sheet.totals.possible, 4);
  EXPECT_EQ(sheet.lines[0].verdictText(), "void (the program lagged)");
  sheet.lines[1].prompted_at = 3;
  settleSheet(sheet, story.marker.rules());
  EXPECT_FALSE(sheet.decision.passed);
  EXPECT_EQ(sheet.lines[1].verdictText(), "met, prompted");
  EXPECT_EQ(sheet.totals.earned, 0);
  sheet.lines[0].void_reason.clear();
  sheet.lines[1].prompted_at.reset();
  sheet.lines[0].override_record = Override{"An Assessor", "", "seen by me", Outcome::kMet};
  settleSheet(sheet, story.marker.rules());
  EXPECT_TRUE(sheet.decision.passed);
  EXPECT_THAT(sheet.lines[0].verdictText(), HasSubstr("the program: broken"));
  EXPECT_EQ(sheet.lines[0].verdict.outcome, Outcome::kBroken);
}

TEST(Sheet, DecidesNothingBeforeTheEnd) {
  Story story(makeRules());
  story.frame(0).act(1, 'a');
  const MarkSheet sheet = sheetOf(story);
  EXPECT_FALSE(sheet.decision.complete);
  EXPECT_FALSE(sheet.decision.passed);
  EXPECT_THAT(sheet.decision.text, HasSubstr("not ended"));
}

TEST(SheetText, IsCalmAndNoWiderThanThePage) {
  std::vector<RuleSpec> rules = makeRules();
  rules[2].reason = std::string(50, 'w') + " and because of many words that go on over the line";
  rules[2].advice = "do A first";
  Story story(rules);
  story.frame(0).act(2, 'b').finish(10);
  const std::string text = printSheet(sheetOf(story));
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) EXPECT_LE(line.size(), 79U) << line;
  EXPECT_THAT(text, HasSubstr("Mark sheet: Cold preparation"));
  EXPECT_THAT(text, HasSubstr("Instead   do A first"));
  EXPECT_THAT(text, HasSubstr("not exercised"));
  EXPECT_LT(text.find("Totals"), text.find("Decision"));
  EXPECT_THAT(text, Not(HasSubstr("\033")));
}

TEST(SheetText, ColumnsStandBelowEachOtherHoweverLongTheNames) {
  Story story(makeRules());
  story.frame(0).finish(10);
  MarkSheet sheet = sheetOf(story);
  JudgementTable table;
  for (const char* item : {"end1.hoses", "engine1.isolating_switch"}) {
    JudgementRow row;
    row.item = item;
    row.truth = "good";
    row.judged = "unsure";
    table.rows.push_back(row);
  }
  sheet.judgements = table;
  std::istringstream lines(printSheet(sheet));
  std::vector<std::size_t> columns;
  for (std::string line; std::getline(lines, line);)
    if (const auto at = line.find("unsure"); at != std::string::npos) columns.push_back(at);
  ASSERT_EQ(columns.size(), 2U);
  EXPECT_EQ(columns[0], columns[1]);
}

TEST(SheetText, SaysOfFiguresNoMoreThanTheyAre) {
  EXPECT_EQ(describePercent(79.9), "79");
  EXPECT_EQ(describePercent(100), "100");
  Verdict verdict;
  EXPECT_EQ(describeMargin(verdict), "");
  verdict.margin = -1.5;
  EXPECT_EQ(describeMargin(verdict), "") << "of a switch there is no by how much";
  verdict.unit = "s";
  EXPECT_EQ(describeMargin(verdict), "missed by 1.5 s");
  verdict.margin = 4.9;
  EXPECT_EQ(describeMargin(verdict), "4.9 s in hand");
  EXPECT_EQ(describeValue(*unit::findSignal("cab1.air"), 14.64F), "14.64 psi");
  EXPECT_EQ(describeValue(*unit::findSignal("cab1.brake"), 0), "lap");
}

TEST(SheetJson, HoldsEveryKeyAndReadsBack) {
  Story story(makeRules());
  story.frame(0).act(2, 'b').act(3, 'c').finish(10);
  const auto json = nlohmann::json::parse(printSheetJson(sheetOf(story)));
  EXPECT_EQ(json["decision"]["passed"], false);
  EXPECT_EQ(json["decision"]["failed_by"][0], 1);
  EXPECT_EQ(json["lines"].size(), 3U);
  EXPECT_EQ(json["lines"][0]["verdict"], "broken");
  EXPECT_EQ(json["lines"][0]["critical"], true);
  EXPECT_EQ(json["lines"][0]["act"], "do look_back");
  EXPECT_TRUE(json["lines"][0]["margin"].is_null());
  EXPECT_EQ(json["head"]["title"], "Cold preparation");
}

TEST(SheetJson, StandsBytesThatAreNoText) {
  Story story(makeAB(RuleKind::kPrecedence));
  story.frame(0).act(1, unit::Action{unit::Actor::kTrainee, "do", "look_back", "\xff\xfe"});
  story.finish(2);
  EXPECT_TRUE(nlohmann::json::accept(printSheetJson(sheetOf(story))));
}

}  // namespace
}  // namespace cabwright::marking
