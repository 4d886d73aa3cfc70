// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/marking_witness.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "sample_scenario.h"

namespace cabwright::session {
namespace {

using testing::HasSubstr;

marking::MarkSheet sheetAfter(const std::vector<Deed>& deeds, std::int64_t last_tick = 1500,
                              const std::string& place = "end2") {
  Situation situation = sampleSituation();
  situation.loaded.scenario.start.place = place;
  const scenario::Setup setup = scenario::makeSetup(situation.loaded, 7);
  MarkingWitness marking(makeTerms(situation, setup));
  session::Run run(setup);
  run.addWitness(marking);
  run.begin();
  perform(run, deeds, last_tick);
  marking.finish(run.tick());
  return marking.makeSheet({});
}

const marking::JudgementRow* findRow(const marking::MarkSheet& sheet, const std::string& item) {
  const auto row = std::ranges::find(sheet.judgements->rows, item, &marking::JudgementRow::item);
  return row == sheet.judgements->rows.end() ? nullptr : &*row;
}

TEST(MarkingWitness, CallsAHiddenDefectByItsNameWhenNobodyJudgedIt) {
  const auto sheet = sheetAfter({});
  const auto* row = findRow(sheet, "end2.hoses");
  ASSERT_NE(row, nullptr);
  EXPECT_EQ(row->result, marking::JudgementResult::kNotJudged);
  EXPECT_EQ(row->truth, "hanging");
}

TEST(MarkingWitness, ADefectFoundIsAHitEvenIfItIsPutRightAfterwards) {
  const auto sheet = sheetAfter({{10, "look end2.hoses"},
                                 {250, "judge end2.hoses defect"},
                                 {300, "instructor: condition end2.hoses good"}});
  const auto* row = findRow(sheet, "end2.hoses");
  ASSERT_NE(row, nullptr);
  EXPECT_EQ(row->result, marking::JudgementResult::kHit);
  EXPECT_EQ(row->truth, "hanging");
}

TEST(MarkingWitness, AThingThatWasSoundWhenJudgedIsNoMissWhenItBreaksLater) {
  const auto sheet = sheetAfter({{10, "look end2.coupling"},
                                 {250, "judge end2.coupling good"},
                                 {300, "instructor: condition end2.coupling pin_gone"}});
  const auto* row = findRow(sheet, "end2.coupling");
  ASSERT_NE(row, nullptr);
  EXPECT_EQ(row->result, marking::JudgementResult::kRight);
}

TEST(MarkingWitness, ADefectPutInOnTheWayCountsAsNotJudged) {
  const auto sheet = sheetAfter({{300, "instructor: condition end2.coupling pin_gone"}});
  const auto* row = findRow(sheet, "end2.coupling");
  ASSERT_NE(row, nullptr);
  EXPECT_EQ(row->result, marking::JudgementResult::kNotJudged);
  EXPECT_TRUE(std::ranges::any_of(sheet.head.faults, [](const marking::SheetNote& note) {
    return note.tick == 300 && note.text.find("pin_gone") != std::string::npos;
  }));
}

// A fault of the machine is no condition put on a thing by name; what it shows follows from it.
TEST(MarkingWitness, AFaultThatShowsWhereTheTraineeComesCountsAsNotJudged) {
  const Deed goes{900, "go engine1"};
  const auto met = sheetAfter({{300, "instructor: arm engine1.fan_lost"}, goes}, 12000);
  const auto* row = findRow(met, "engine1.fan");
  ASSERT_NE(row, nullptr);
  EXPECT_EQ(row->result, marking::JudgementResult::kNotJudged);
  EXPECT_EQ(met.judgements->not_judged, 2);  // beside the hoses that hang from the start

  const auto judged = sheetAfter({{300, "instructor: arm engine1.fan_lost"},
                                  goes,
                                  {11000, "look engine1.fan"},
                                  {11600, "judge engine1.fan defect"}},
                                 12000);
  ASSERT_NE(findRow(judged, "engine1.fan"), nullptr);
  EXPECT_EQ(findRow(judged, "engine1.fan")->result, marking::JudgementResult::kHit);
}

TEST(MarkingWitness, AFaultThatShowsWhereNobodyCameOrComesLaterIsNoMiss) {
  const auto elsewhere = sheetAfter({{300, "instructor: arm engine1.fan_lost"}}, 12000);
  EXPECT_EQ(findRow(elsewhere, "engine1.fan"), nullptr);
  const auto later =
      sheetAfter({{300, "go engine1"}, {11000, "instructor: arm engine1.fan_lost"}}, 12000);
  EXPECT_EQ(findRow(later, "engine1.fan"), nullptr);
}

TEST(MarkingWitness, WhatTheTraineesOwnHandsChangedIsNoHiddenDefect) {
  const auto sheet = sheetAfter(kGoodDeeds, 1500, "cab1");
  for (const auto& row : sheet.judgements->rows)
    EXPECT_THAT(row.item, testing::Not(HasSubstr("handbrake")));
}

TEST(MarkingWitness, WhereTheScenarioPutAControlToBeginWithIsNoHiddenDefect) {
  const auto rowsOf = [](bool staged) {
    Situation situation = sampleSituation();
    auto& controls = situation.loaded.scenario.start.controls;
    std::erase_if(controls, [](const unit::Setting& s) { return s.name == "cab2.handbrake"; });
    controls.push_back({"cab2.handbrake", "off"});
    const scenario::Setup setup = scenario::makeSetup(situation.loaded, 7);
    MarkingTerms terms = makeTerms(situation, setup);
    if (!staged) terms.staged.clear();
    MarkingWitness marking(terms);
    session::Run run(setup);
    run.addWitness(marking);
    run.begin();
    perform(run, {}, 100);
    marking.finish(run.tick());
    return marking.makeSheet({});
  };
  EXPECT_EQ(findRow(rowsOf(true), "cab2.handbrake_chain"), nullptr);
  EXPECT_NE(findRow(rowsOf(false), "cab2.handbrake_chain"), nullptr);
  EXPECT_NE(findRow(rowsOf(true), "end2.hoses"), nullptr);
}

TEST(MarkingWitness, RemarksOfTheInstructorStandInTheHead) {
  const auto sheet = sheetAfter({{300, "instructor: remark try the other side"}});
  ASSERT_EQ(sheet.head.prompts.size(), 1U);
  EXPECT_EQ(sheet.head.prompts[0].text, "try the other side");
  EXPECT_EQ(sheet.head.prompts[0].tick, 300);
}

}  // namespace
}  // namespace cabwright::session
