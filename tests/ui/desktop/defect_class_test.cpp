// SPDX-License-Identifier: GPL-3.0-or-later
// How grave a defect is can be said from the window, by mouse and by key, and stands in the
// notebook; nothing is asked, and what is left open stays open.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "cab/notebook_part.h"
#include "driver.h"

namespace cabwright::tests {
namespace {

using ::testing::HasSubstr;
using unit::DefectClass;
using unit::Item;
using unit::Verdict;

constexpr Item kThing = Item::kTrailer1Underframe;

const unit::Judgement& last(Desk& desk) { return desk.seat().unit().world().judgements.back(); }

cab::WordButton* letter(Desk& desk, const char* which) {
  return desk.find<cab::WordButton>(QStringLiteral("class.") + QLatin1String(which));
}

// Beside the trailer, the thing looked at for long enough.
void lookAt(Desk& desk, Hand& hand, scenario::Mode mode = scenario::Mode::kAssessment) {
  desk.begin("defect-found", mode);
  desk.seat().act("go", "trailer1");
  for (int k = 0; k < 400 && desk.seat().place() != unit::Place::kTrailer1; ++k) desk.pass(1);
  desk.settle();
  ASSERT_EQ(hand.perform({unit::Actor::kTrainee, "look", "trailer1.underframe", ""}), std::nullopt);
  desk.pass(6);
}

TEST(DefectClass, IsSaidByMouse) {
  Desk desk;
  const auto mouse = makeMouse(desk);
  lookAt(desk, *mouse);
  EXPECT_EQ(letter(desk, "T"), nullptr);  // of what is no defect there is no class
  ASSERT_EQ(mouse->perform({unit::Actor::kTrainee, "judge", "trailer1.underframe", "defect T"}),
            std::nullopt);
  EXPECT_EQ(last(desk).item, kThing);
  EXPECT_EQ(last(desk).verdict, Verdict::kDefect);
  EXPECT_EQ(last(desk).said_class, DefectClass::kTechnical);
  EXPECT_FALSE(desk.sawModal());
  desk.settle();
  ASSERT_TRUE(desk.click(letter(desk, "C")));  // thought better of
  EXPECT_EQ(last(desk).said_class, DefectClass::kCritical);
}

TEST(DefectClass, IsSaidByKeysAndTheLettersAreThemselvesAgainAfterwards) {
  Desk desk;
  const auto keys = makeKeys(desk);
  lookAt(desk, *keys);
  ASSERT_EQ(keys->perform({unit::Actor::kTrainee, "judge", "trailer1.underframe", "defect S"}),
            std::nullopt);
  EXPECT_EQ(last(desk).said_class, DefectClass::kSerious);
  const std::size_t count = desk.seat().unit().world().judgements.size();
  desk.settle();
  desk.key(Qt::Key_Escape);
  desk.key(Qt::Key_C);  // opens what can be done with loose things
  EXPECT_EQ(desk.seat().unit().world().judgements.size(), count);
  EXPECT_NE(desk.view().panel(), nullptr);
}

// D stands beside the safety device: who has judged and takes hold of it unsays nothing.
TEST(DefectClass, OnceJudgedItsLettersAreTheLeversAgainUntilItIsLookedAtAgain) {
  Desk desk;
  const auto keys = makeKeys(desk);
  lookAt(desk, *keys);
  ASSERT_EQ(keys->perform({unit::Actor::kTrainee, "judge", "trailer1.underframe", "good"}),
            std::nullopt);
  desk.settle();
  for (Qt::Key key : {Qt::Key_D, Qt::Key_G, Qt::Key_S, Qt::Key_T}) desk.key(key);
  EXPECT_EQ(desk.seat().unit().world().judgements.size(), 1U);
  EXPECT_EQ(last(desk).verdict, Verdict::kGood);
  desk.key(Qt::Key_U);  // what can be said
  EXPECT_NE(desk.view().panel(), nullptr);
  desk.key(Qt::Key_Escape);
  EXPECT_EQ(desk.seat().unit().world().judgements.size(), 1U);

  ASSERT_TRUE(desk.tabTo(desk.find<cab::ItemPart>(QStringLiteral("trailer1.underframe"))));
  desk.key(Qt::Key_Return);
  desk.key(Qt::Key_D);
  EXPECT_EQ(last(desk).verdict, Verdict::kDefect);
}

TEST(DefectClass, BeforeADefectIsSaidItsLettersSayNothing) {
  Desk desk;
  const auto keys = makeKeys(desk);
  lookAt(desk, *keys);
  desk.key(Qt::Key_S);
  desk.key(Qt::Key_T);
  EXPECT_TRUE(desk.seat().unit().world().judgements.empty());
}

TEST(DefectClass, MayBeLeftOpenAndGoesWithTheDefect) {
  Desk desk;
  const auto keys = makeKeys(desk);
  lookAt(desk, *keys);
  ASSERT_EQ(keys->perform({unit::Actor::kTrainee, "judge", "trailer1.underframe", "defect"}),
            std::nullopt);
  EXPECT_EQ(last(desk).said_class, DefectClass::kNone);
  desk.settle();
  EXPECT_NE(letter(desk, "C"), nullptr);
  desk.key(Qt::Key_G);
  desk.settle();
  EXPECT_EQ(last(desk).verdict, Verdict::kGood);
  EXPECT_EQ(letter(desk, "C"), nullptr);
}

TEST(DefectClass, IsToldToWhoCannotSee) {
  Desk desk;
  const auto keys = makeKeys(desk);
  lookAt(desk, *keys);
  ASSERT_EQ(keys->perform({unit::Actor::kTrainee, "judge", "trailer1.underframe", "defect C"}),
            std::nullopt);
  desk.settle();
  const auto* thing = desk.find<cab::ItemPart>(QStringLiteral("trailer1.underframe"));
  EXPECT_THAT(thing->role().value.toStdString(), HasSubstr("critical"));
  EXPECT_EQ(letter(desk, "C")->role().name, QStringLiteral("critical"));
  EXPECT_TRUE(desk.tabTo(letter(desk, "T")));
  desk.key(Qt::Key_Space);
  EXPECT_EQ(last(desk).said_class, DefectClass::kTechnical);
}

// The lamp test is pressed while one looks: the notebook tells what shows now, not what was dark.
TEST(WhatIsSeen, IsToldAsItIsNow) {
  Desk desk;
  desk.begin("hill-start", scenario::Mode::kPractice);
  desk.seat().act("look", "cab1.lamps");
  desk.pass(0.5);
  const auto* notebook = desk.view().findChild<cab::NotebookPart*>();
  ASSERT_NE(notebook, nullptr);
  EXPECT_THAT(notebook->seen().toStdString(), HasSubstr("under the lamp test"));
  desk.seat().act("hold", "cab1.lamp_test");
  desk.pass(0.5);
  EXPECT_THAT(notebook->seen().toStdString(), testing::Not(HasSubstr("dark")));
  EXPECT_FALSE(notebook->seen().isEmpty());
  desk.seat().act("release", "cab1.lamp_test");
  desk.pass(0.5);
  EXPECT_THAT(notebook->seen().toStdString(), HasSubstr("dark"));
}

}  // namespace
}  // namespace cabwright::tests
