// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/line_card.h"

#include <gtest/gtest.h>

#include <QKeyEvent>
#include <algorithm>
#include <set>

#include "after/words.h"
#include "view_rig.h"

namespace cabwright::after {
namespace {

using marking::Outcome;
using marking::RuleClass;
using scenario::Mode;
using unit::Signal;

class LineCardTest : public ViewRig {};

TEST_F(LineCardTest, EveryBrokenLineHasACardAndCriticalsComeFirst) {
  open(Mode::kPractice);
  int broken = 0;
  for (const marking::SheetLine& line : sheet_.lines) {
    if (line.outcome() != Outcome::kBroken) continue;
    ++broken;
    EXPECT_EQ(std::ranges::count_if(view_->cards(),
                                    [&](const auto* card) { return card->speaksOf(line.number); }),
              1)
        << line.title;
  }
  EXPECT_GT(broken, 3);
  int before = 0;
  bool lighter = false;
  for (const LineCard* card : view_->cards()) {
    EXPECT_GT(card->line(), before);  // as on the sheet, each once
    before = card->line();
    const bool critical = lineOf(sheet_, card->line()).rule_class == RuleClass::kCritical;
    EXPECT_FALSE(critical && lighter);
    lighter = lighter || !critical;
  }
  EXPECT_TRUE(lighter);
  EXPECT_EQ(lineOf(sheet_, view_->cards().front()->line()).rule_class, RuleClass::kCritical);
}

TEST_F(LineCardTest, HoldsWhatWasDoneWhyItMattersAndWhatToDoInstead) {
  open(Mode::kPractice);
  for (LineCard* card : view_->cards()) {
    const marking::SheetLine& line = lineOf(sheet_, card->line());
    const QString words = card->words();
    for (const std::string& part : {line.title, line.why, line.advice, line.verdict.reason})
      EXPECT_TRUE(words.contains(QString::fromStdString(part))) << part;
    EXPECT_EQ(card->accessibleDescription(), words);
    EXPECT_FALSE(card->evidence().dials.empty() && card->evidence().lamps.empty());
  }
}

TEST_F(LineCardTest, ItsLampsAreThoseTheRuleLooksAt) {
  open(Mode::kPractice);
  LineCard* card = view_->cards().front();
  ASSERT_EQ(lineOf(sheet_, card->line()).id, "air-light");
  const Evidence& evidence = card->evidence();
  ASSERT_EQ(evidence.lamps.size(), 1U);
  EXPECT_EQ(evidence.lamps.front().word, QLatin1String("AIR"));
  EXPECT_FALSE(evidence.lamps.front().lit);
  EXPECT_TRUE(evidence.dials.empty());
  EXPECT_GE(evidence.values.size(), 2U);
}

TEST_F(LineCardTest, WithoutAGaugeInTheRuleItShowsAirVacuumAndLampsOfThatMoment) {
  open(Mode::kPractice, "bad-no-guard");
  int found = 0;
  for (LineCard* card : view_->cards()) {
    const auto& readings = lineOf(sheet_, card->line()).verdict.readings;
    const auto isGauge = [](const marking::Reading& r) {
      const auto& info = unit::signalInfo(r.signal);
      return info.layer == unit::Layer::kShown && info.name.starts_with("cab");
    };
    if (std::ranges::any_of(readings, isGauge)) continue;
    ++found;
    const unit::Frame frame = run_->frameAt(card->tick());
    const Evidence& evidence = card->evidence();
    ASSERT_EQ(evidence.dials.size(), 2U);
    EXPECT_EQ(evidence.dials[0].needles.back().value, static_cast<double>(frame[Signal::kCab1Air]));
    EXPECT_EQ(evidence.dials[1].needles.back().value,
              static_cast<double>(frame[Signal::kCab1TrainPipe]));
    ASSERT_EQ(evidence.lamps.size(), 4U);
    EXPECT_EQ(evidence.lamps[0].lit, frame[Signal::kCab1LampAir] > 0.5F);
  }
  EXPECT_GT(found, 0);
}

TEST_F(LineCardTest, TakingAgainBeginsTenSecondsBefore) {
  open(Mode::kPractice);
  qint64 asked = -1;
  QObject::connect(view_.get(), &AfterView::takeAgain, view_.get(),
                   [&asked](qint64 tick) { asked = tick; });
  int tried = 0;
  for (LineCard* card : view_->cards()) {
    const marking::SheetLine& line = lineOf(sheet_, card->line());
    EXPECT_EQ(card->takeAgainButton() == nullptr, neverCame(line)) << line.title;
    if (card->takeAgainButton() == nullptr) continue;
    card->takeAgainButton()->click();
    EXPECT_EQ(asked, std::max<std::int64_t>(0, line.verdict.tick - 1000));
    ++tried;
  }
  EXPECT_GT(tried, 0);
}

TEST_F(LineCardTest, NothingIsTakenAgainFromTheMiddleOfAnAssessment) {
  open(Mode::kAssessment);
  ASSERT_FALSE(view_->cards().empty());
  for (LineCard* card : view_->cards()) EXPECT_EQ(card->takeAgainButton(), nullptr);
}

TEST_F(LineCardTest, WhatFollowsStandsOnceWithTheLineItFollowsFrom) {
  open(Mode::kPractice, "bad-half-brake-test");
  int following = 0;
  for (const marking::SheetLine& line : sheet_.lines) {
    if (line.outcome() != Outcome::kBroken || !line.follows_line) continue;
    ++following;
    QString all;
    for (const LineCard* card : view_->cards()) {
      EXPECT_NE(card->line(), line.number);
      all += card->words();
    }
    EXPECT_EQ(all.count(sheetWords(line.title)), 1);
    EXPECT_TRUE(view_->showLine(line.number));
  }
  EXPECT_GT(following, 0);
}

TEST_F(LineCardTest, ChoosingItMovesTheCursorToItsMoment) {
  open(Mode::kPractice);
  for (LineCard* card : view_->cards()) {
    QKeyEvent enter(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier);
    QApplication::sendEvent(card, &enter);
    EXPECT_EQ(view_->strip().cursor(), card->tick());
    EXPECT_TRUE(card->isSelected());
    EXPECT_FALSE(card->visibleRegion().isEmpty());
  }
  EXPECT_FALSE(view_->showLine(9999));
}

}  // namespace
}  // namespace cabwright::after
