// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/verdict_view.h"

#include <QSignalSpy>
#include <set>

#include "after/words.h"
#include "page_rig.h"

namespace cabwright::desk {
namespace {

using marking::Outcome;

class VerdictViewTest : public PageRig<VerdictView> {};

TEST_F(VerdictViewTest, EachRuleThatFellHasItsCardAndNoOther) {
  sit("hill-start");
  tests::playScript(*seat_, "hill-start", "good", 140);
  pass(0.6);
  std::multiset<QString> fell, shown;
  const auto& rules = run().marker().rules().rules();
  std::set<std::size_t> ruled;
  for (const marking::Mark& mark : run().marker().marks()) ruled.insert(mark.rule);
  const auto verdicts = run().marker().verdicts();
  for (std::size_t k = 0; k < verdicts.size(); ++k)
    if (verdicts[k].outcome == Outcome::kMet || verdicts[k].outcome == Outcome::kBroken ||
        ruled.contains(k))
      fell.insert(after::sheetWords(rules[k].spec.title));
  for (const VerdictRow& row : page_->fallen().rows())
    if (row.part != VerdictPart::kHeading) shown.insert(row.title);
  EXPECT_GT(fell.size(), 3U);
  EXPECT_EQ(shown, fell);
}

TEST_F(VerdictViewTest, BrokenCriticalsStandOnTopAndTheLatestComesFirst) {
  sit("hill-start");
  tests::playScript(*seat_, "hill-start", "bad-brake-first", 140);
  pass(0.6);
  const auto& rows = page_->fallen().rows();
  ASSERT_GT(rows.size(), 3U);
  ASSERT_EQ(rows[0].part, VerdictPart::kHeading);
  EXPECT_EQ(rows[1].part, VerdictPart::kCritical);
  EXPECT_EQ(rows[1].sign, drawing::VerdictSign::kDefect);
  EXPECT_FALSE(rows[1].reason.isEmpty());
  std::int64_t before = INT64_MAX;
  bool fallen = false;
  for (const VerdictRow& row : rows) {
    if (row.part == VerdictPart::kFallen) {
      fallen = true;
      EXPECT_LE(row.tick, before);
      before = row.tick;
    } else {
      EXPECT_FALSE(fallen && row.part == VerdictPart::kCritical);
    }
  }
  EXPECT_TRUE(page_->summary().contains(QLatin1String("broken")));
}

TEST_F(VerdictViewTest, AVerdictAppearsWhenItFalls) {
  sit("hill-start");
  pass(0.5);
  const std::size_t before = page_->fallen().rows().size();
  const std::size_t marks = run().marker().marks().size();
  tests::playScript(*seat_, "hill-start", "good", 100);
  settle();
  EXPECT_GT(run().marker().marks().size(), marks);
  EXPECT_GT(page_->fallen().rows().size(), before);
}

TEST_F(VerdictViewTest, WhatWouldBreakNextStandsFirstAndSaysByWhen) {
  sit("hill-start");
  tests::playScript(*seat_, "hill-start", "good", 60);
  pass(0.6);
  const auto outlook = run().marker().outlook();
  const auto& rows = page_->open().rows();
  ASSERT_FALSE(rows.empty());
  ASSERT_EQ(rows.size(), outlook.size());
  bool dated = false;
  for (std::size_t k = 0; k < rows.size(); ++k) {
    EXPECT_EQ(rows[k].part, VerdictPart::kOpen);
    EXPECT_EQ(rows[k].title,
              after::sheetWords(run().marker().rules().rules()[outlook[k].rule].spec.title));
    EXPECT_FALSE(rows[k].reason.isEmpty());
    for (const std::string& name : outlook[k].what)
      EXPECT_TRUE(rows[k].reason.contains(after::sheetWords(name)));
    const bool moment = outlook[k].breaks_at || outlook[k].deadline;
    // What is only so or not so has no distance: a bare figure would say nothing.
    EXPECT_EQ(rows[k].margin.isEmpty(), !outlook[k].margin || outlook[k].unit.empty());
    EXPECT_EQ(rows[k].moment.isEmpty(), !moment);
    EXPECT_FALSE(dated && outlook[k].breaks_at && k > 0 && !outlook[k - 1].breaks_at);
    dated = dated || outlook[k].breaks_at.has_value();
  }
}

TEST_F(VerdictViewTest, EnterOnACardAsksForItsMoment) {
  sit("hill-start");
  tests::playScript(*seat_, "hill-start", "good", 140);
  pass(0.6);
  QSignalSpy wanted(page_.get(), &VerdictView::momentChosen);
  VerdictList& list = page_->fallen();
  list.setFocus();
  list.setCurrentIndex(list.model()->index(0, 0));
  QTest::keyClick(&list, Qt::Key_Down);
  QTest::keyClick(&list, Qt::Key_Return);
  ASSERT_EQ(wanted.count(), 1);
  EXPECT_EQ(wanted[0][0].toLongLong(),
            list.rows()[static_cast<std::size_t>(list.currentIndex().row())].tick);
  const QString heard = list.currentIndex().data(Qt::AccessibleTextRole).toString();
  EXPECT_TRUE(heard.contains(list.currentIndex().data().toString()));
}

TEST_F(VerdictViewTest, EverythingIsReachedByKeysAndNamed) {
  sit("hill-start");
  expectAllReached();
}

}  // namespace
}  // namespace cabwright::desk
