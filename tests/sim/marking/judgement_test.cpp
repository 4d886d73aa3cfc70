// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/judgement.h"

#include <gtest/gtest.h>

#include "marking/sheet.h"
#include "rig.h"
#include "unit/item_list.h"
#include "unit/place_list.h"

namespace cabwright::marking {
namespace {

#define CABWRIGHT_NAME(Y, id, name, kind, text) name,
constexpr std::string_view kItems[] = {CABWRIGHT_ITEMS(CABWRIGHT_NAME, )};
constexpr std::string_view kPlaces[] = {CABWRIGHT_PLACES(CABWRIGHT_NAME, )};
#undef CABWRIGHT_NAME

float numberOf(std::span<const std::string_view> names, std::string_view name) {
  const auto found = std::find(names.begin(), names.end(), name);
  return static_cast<float>(found - names.begin() + 1);
}

class Looks {
 public:
  Looks& look(std::int64_t tick, std::string_view item, double seconds) {
    unit::Frame frame;
    frame.tick = tick;
    frame[unit::Signal::kPlace] = numberOf(kPlaces, "end1");
    frame[unit::Signal::kLookItem] = numberOf(kItems, item);
    frame[unit::Signal::kLookNeeded] = static_cast<float>(needed_s);
    frame[unit::Signal::kLookSeconds] = static_cast<float>(seconds);
    listener.seeFrame(frame);
    return *this;
  }
  Looks& judge(std::int64_t tick, const std::string& item, const std::string& words) {
    listener.seeAction(tick, {unit::Actor::kTrainee, "judge", item, words});
    return *this;
  }
  JudgementListener listener;
  double needed_s = 0;
};

const std::vector<TruthRow> kTruth{{"end1.hoses", "hanging", RuleClass::kCritical},
                                   {"end1.lamps", "dark", RuleClass::kSerious},
                                   {"end1.window", "odd but sound", std::nullopt}};

TEST(Judgements, CountHitsMissesAndFalseAlarms) {
  Looks looks;
  looks.look(100, "end1.hoses", 2.5).judge(110, "end1.hoses", "defect C");
  looks.look(200, "end1.lamps", 1).judge(210, "end1.lamps", "good");
  looks.look(300, "end1.window", 3).judge(310, "end1.window", "defect T");
  looks.look(400, "end1.steps", 3).judge(410, "end1.steps", "good");
  const JudgementTable table = looks.listener.makeTable(kTruth);
  ASSERT_EQ(table.rows.size(), 4U);
  EXPECT_EQ(table.rows[0].result, JudgementResult::kHit);
  EXPECT_EQ(table.rows[0].judged_class, "C");
  EXPECT_EQ(table.rows[0].place, "end1");
  EXPECT_FLOAT_EQ(static_cast<float>(table.rows[0].looked_s), 2.5F);
  EXPECT_EQ(table.rows[1].result, JudgementResult::kMiss);
  EXPECT_EQ(table.rows[2].result, JudgementResult::kFalseAlarm);
  EXPECT_EQ(table.rows[3].result, JudgementResult::kRight);
  EXPECT_EQ(table.hits, 1);
  EXPECT_EQ(table.misses, 1);
  EXPECT_EQ(table.false_alarms, 1);
  EXPECT_EQ(table.missed_critical, 0);
  EXPECT_EQ(table.possible, 4);
  EXPECT_EQ(table.earned, 1);  // two for the hit, less one
}

TEST(Judgements, AreEmptyEntriesAfterALookTooShortForTheItem) {
  Looks looks;
  looks.needed_s = 5;
  looks.look(100, "end1.hoses", 4.8).judge(110, "end1.hoses", "defect");
  looks.look(200, "end1.lamps", 5).judge(210, "end1.lamps", "defect");
  const JudgementTable table = looks.listener.makeTable(kTruth);
  EXPECT_TRUE(table.rows[0].empty_entry);
  EXPECT_FALSE(table.rows[1].empty_entry);
}

TEST(Judgements, WithoutALookOfASecondAreEmptyEntries) {
  Looks looks;
  looks.look(100, "end1.hoses", 0.8).judge(110, "end1.hoses", "defect");
  looks.judge(120, "end1.lamps", "unsure");
  const JudgementTable table = looks.listener.makeTable(kTruth);
  EXPECT_TRUE(table.rows[0].empty_entry);
  EXPECT_FALSE(table.rows[1].empty_entry);  // asking costs nothing
  EXPECT_EQ(table.empty, 1);
  EXPECT_EQ(table.earned, -1);
}

TEST(Judgements, MakeAllDefectABadBargain) {
  Looks looks;
  int tick = 0;
  for (std::string_view item : kItems) {
    tick += 2;
    looks.look(tick, item, 5).judge(tick + 1, std::string(item), "defect");
  }
  EXPECT_LT(looks.listener.makeTable(kTruth).earned, 0);
}

TEST(Judgements, TakeTheLastWordAndSayItWasRevised) {
  Looks looks;
  looks.look(1, "end1.hoses", 5).judge(2, "end1.hoses", "good").judge(9, "end1.hoses", "defect");
  looks.judge(10, "end1.hoses", "defect");
  const JudgementTable table = looks.listener.makeTable(kTruth);
  EXPECT_EQ(table.rows[0].result, JudgementResult::kHit);
  EXPECT_EQ(table.rows[0].revised, 1);
  EXPECT_EQ(table.rows[0].tick, 10);
}

TEST(Judgements, ListDefectsNobodySpokeOf) {
  const JudgementTable table = JudgementListener().makeTable(kTruth);
  ASSERT_EQ(table.rows.size(), 2U);
  EXPECT_EQ(table.rows[0].result, JudgementResult::kNotJudged);
  EXPECT_EQ(table.not_judged, 2);
  EXPECT_EQ(table.missed_critical, 0);
}

TEST(Judgements, OfOthersAndOfUnknownThingsDoNotCount) {
  JudgementListener listener;
  listener.seeAction(1, {unit::Actor::kHelper, "judge", "end1.hoses", "defect"});
  listener.seeAction(2, {unit::Actor::kTrainee, "judge", "end9.hoses", "defect"});
  listener.seeAction(3, {unit::Actor::kTrainee, "judge", "end1.hoses", "perhaps"});
  EXPECT_EQ(listener.makeTable({}).rows.size(), 0U);
}

TEST(Judgements, OfACriticalDefectAsGoodFailTheRun) {
  Looks looks;
  looks.look(1, "end1.hoses", 5).judge(2, "end1.hoses", "good");
  RuleSpec spec = makeRule(RuleKind::kExistence);
  spec.a = {kA, "A"};
  spec.weight = 1000;
  Story story(spec);
  story.frame(0).act(1, 'a').finish(2);
  const JudgementTable table = looks.listener.makeTable(kTruth);
  const auto sheetFor = [&](bool fails) {
    JudgementPolicy policy;
    policy.missed_critical_fails = fails;
    return makeSheet({}, {}, story.marker.rules(), story.marker.verdicts(), table, policy);
  };
  EXPECT_FALSE(sheetFor(true).decision.passed);
  EXPECT_TRUE(sheetFor(false).decision.passed);
  EXPECT_NE(printSheet(sheetFor(true)).find("end1.hoses"), std::string::npos);
}

}  // namespace
}  // namespace cabwright::marking
