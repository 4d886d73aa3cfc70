// SPDX-License-Identifier: GPL-3.0-or-later
// Acting for others, each in the name of whoever is meant to have done it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QComboBox>
#include <QTranslator>

#include "desk_rig.h"

namespace cabwright::tests {
namespace {

using ::testing::HasSubstr;
using ::testing::StartsWith;

TEST(People, TheGuardRingsAndOpensHisValve) {
  DeskRig rig;
  rig.window().showPage(rig.window().people());
  ASSERT_TRUE(rig.click("ring 3-3"));
  EXPECT_EQ(rig.lastDone(), "guard: ring bell 3-3");
  ASSERT_TRUE(rig.click("cab2.guards_valve open"));
  EXPECT_EQ(rig.lastDone(), "guard: set cab2.guards_valve open");
  rig.pass(0.1);
  EXPECT_EQ(rig.seat().value(unit::Control::kCab2GuardsValve), 1);
}

TEST(People, TheSignallerHasEverySignalOfTheLine) {
  DeskRig rig;
  rig.window().showPage(rig.window().people());
  ASSERT_FALSE(rig.run().unit().route().signals.empty());
  for (const unit::RouteSignal& signal : rig.run().unit().route().signals) {
    for (const char* to : {"clear", "danger", "clear"}) {
      const std::string name = "signal." + signal.name + " " + to;
      ASSERT_TRUE(rig.click(name.c_str())) << name;
      EXPECT_EQ(rig.lastDone(), "signaller: set " + name);
    }
  }
  for (const bool clear : rig.run().unit().world().signal_clear) EXPECT_TRUE(clear);
}

TEST(People, SomebodyComesToTheEngineAndIsSentAway) {
  DeskRig rig;
  rig.window().showPage(rig.window().people());
  desk::PeoplePage& page = *rig.window().people();
  int tried = 0;
  for (int k = 0; k < page.where()->count(); ++k) {
    page.where()->setCurrentIndex(k);
    ASSERT_GT(page.what()->count(), 0);
    ASSERT_TRUE(rig.click("put_there"));
    EXPECT_THAT(rig.lastDone(), StartsWith("instructor: condition "));
    const auto item = static_cast<unit::Item>(page.where()->currentData().toInt());
    EXPECT_GT(rig.run().unit().presentCondition(item), 0);
    EXPECT_THAT(rig.find<QLabel>("now_there")->text().toStdString(),
                HasSubstr(page.what()->currentText().toStdString()));
    ASSERT_TRUE(rig.click("take_away"));
    EXPECT_EQ(rig.run().unit().presentCondition(item), 0);
    ++tried;
  }
  EXPECT_EQ(tried, 12);  // six with people, six where something can hang
}

class NamesLarge : public QTranslator {
 public:
  QString translate(const char* context, const char*, const char*, int) const override {
    return QLatin1String(context) == QLatin1String("Sentence") ? QStringLiteral("large")
                                                               : QString();
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

// "End 1: ..." goes on small in English; where names are written large, they stay so.
TEST(People, WhereSomebodyIsReadsAsTheLanguageWritesNames) {
  const auto first = [] {
    DeskRig rig;
    const QString words = rig.find<QComboBox>("bystander_where")->itemText(0);
    return words.mid(words.indexOf(QLatin1String(": ")) + 2).left(1);
  };
  const QString small = first();
  NamesLarge large;
  QCoreApplication::installTranslator(&large);
  EXPECT_EQ(first(), small.toUpper());
  QCoreApplication::removeTranslator(&large);
  EXPECT_NE(small, small.toUpper());
}

TEST(People, WhateverOthersCanSayIsSaidAndHeard) {
  DeskRig rig("warm-tooth", scenario::Mode::kPractice, {1600, 1000});
  rig.window().showPage(rig.window().people());
  desk::PeoplePage& page = *rig.window().people();
  EXPECT_EQ(page.words()->count(), static_cast<int>(unit::Reply::kCount) - 1);  // all but silence
  EXPECT_EQ(page.speaker()->count(), 4);
  for (int who = 0; who < page.speaker()->count(); ++who) {
    page.speaker()->setCurrentIndex(who);
    for (int k = 0; k < page.words()->count(); ++k) {
      page.words()->setCurrentIndex(k);
      ASSERT_TRUE(rig.click("say_it"));
      EXPECT_THAT(rig.lastDone(),
                  HasSubstr(": say " + page.words()->currentData().toString().toStdString()));
      rig.pass(0.1);
      const float heard = rig.run().frame()[unit::Signal::kHeardWords];
      EXPECT_FLOAT_EQ(heard, static_cast<float>(k + 1));
    }
  }
  page.speaker()->setCurrentIndex(1);
  ASSERT_TRUE(rig.click("say_it"));
  EXPECT_THAT(rig.lastDone(), StartsWith("signaller: say "));
}

TEST(People, AnyControlIsFoundAndMoved) {
  DeskRig rig;
  rig.window().showPage(rig.window().people());
  desk::PeoplePage& page = *rig.window().people();
  page.search()->setFocus();
  rig.type(QStringLiteral("drain main"));
  ASSERT_EQ(page.controls()->count(), 1);
  page.positions()->setCurrentIndex(1);
  ASSERT_TRUE(rig.click("set_control"));
  EXPECT_EQ(rig.lastDone(), "instructor: set drain_main open");
  rig.pass(0.1);
  EXPECT_EQ(rig.seat().value(unit::Control::kDrainMain), 1);
}

TEST(People, InAssessmentNobodyActsForTheTrainee) {
  DeskRig rig("warm-tooth", scenario::Mode::kAssessment);
  rig.window().showPage(rig.window().people());
  desk::PeoplePage& page = *rig.window().people();
  page.search()->setText(QStringLiteral("cab1.throttle"));
  page.positions()->setCurrentIndex(2);
  ASSERT_TRUE(rig.click("set_control"));
  EXPECT_THAT(rig.window().said().toStdString(), StartsWith("Refused: "));
  EXPECT_TRUE(rig.run().actions().empty());
  ASSERT_TRUE(rig.click("ring 2"));
  EXPECT_EQ(rig.lastDone(), "guard: ring bell 2");
}

}  // namespace
}  // namespace cabwright::tests
