// SPDX-License-Identifier: GPL-3.0-or-later
// Faults are put in and put right with mouse and keys.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "desk_rig.h"

namespace cabwright::tests {
namespace {

using desk::SpotState;
using ::testing::HasSubstr;
using ::testing::StartsWith;

desk::UnitView& unitOf(DeskRig& rig) { return *rig.window().faults()->unit(); }

bool clickSpot(DeskRig& rig, const char* id) {
  return rig.click(unitOf(rig).button(desk::findSpot(id)));
}

SpotState stateOf(DeskRig& rig, const char* id) { return unitOf(rig).states()[desk::findSpot(id)]; }

TEST(Faults, EverySpotCanBePressedAndShowsWhatLivesThere) {
  DeskRig rig;
  for (std::size_t k = 0; k < desk::spotTable().size(); ++k) {
    ASSERT_TRUE(rig.click(unitOf(rig).button(k))) << desk::spotTable()[k].id;
    EXPECT_EQ(static_cast<std::size_t>(rig.find<QListWidget>("fault_list")->count()),
              desk::faultsAt(k).size());
    EXPECT_EQ(unitOf(rig).chosen(), k);
  }
}

TEST(Faults, AreSaidBeforeTheyArePutIn) {
  DeskRig rig;
  ASSERT_TRUE(clickSpot(rig, "compressor2"));
  const fault::FaultSpec* spec = rig.window().faults()->form()->shown();
  ASSERT_NE(spec, nullptr);
  QString all;
  for (const QLabel* label : rig.window().faults()->form()->findChildren<QLabel*>())
    all += label->text() + QLatin1Char('\n');
  EXPECT_THAT(all.toStdString(), HasSubstr(spec->symptom));
  EXPECT_THAT(all.toStdString(), HasSubstr(spec->decision));
  EXPECT_TRUE(rig.run().actions().empty());
}

TEST(Faults, ArePutInWithTheMouseAndBearAMark) {
  DeskRig rig;
  ASSERT_TRUE(clickSpot(rig, "compressor2"));
  ASSERT_TRUE(rig.click("put_in"));
  EXPECT_THAT(rig.lastDone(), StartsWith("instructor: arm compressor2."));
  rig.pass(0.2);
  EXPECT_EQ(stateOf(rig, "compressor2").kind, SpotState::Kind::kThere);
  EXPECT_EQ(stateOf(rig, "compressor2").count, 1);
  EXPECT_EQ(stateOf(rig, "compressor1").kind, SpotState::Kind::kSound);
  EXPECT_THAT(
      unitOf(rig).button(desk::findSpot("compressor2"))->accessibleDescription().toStdString(),
      HasSubstr("there"));
  ASSERT_TRUE(rig.click("put_right"));
  EXPECT_THAT(rig.lastDone(), StartsWith("instructor: clear compressor2."));
  rig.pass(0.2);
  EXPECT_EQ(stateOf(rig, "compressor2").kind, SpotState::Kind::kSound);
}

TEST(Faults, WithSizeAndMomentFromTheKeyboardAlone) {
  DeskRig rig;
  rig.key(Qt::Key_F3);
  rig.type(QStringLiteral("train pipe leak"));
  rig.key(Qt::Key_Return);  // into the list
  rig.key(Qt::Key_Return);  // on to its size
  ASSERT_EQ(QApplication::focusWidget()->objectName().toStdString(), "fault_size");
  rig.type(QStringLiteral("4"));
  rig.key(Qt::Key_Tab);
  ASSERT_EQ(QApplication::focusWidget()->objectName().toStdString(), "fault_moment");
  rig.key(Qt::Key_Down);  // after some seconds
  rig.key(Qt::Key_Tab);
  rig.key(Qt::Key_A, Qt::ControlModifier);
  rig.type(QStringLiteral("12"));
  rig.find<QPushButton>("put_in")->setFocus();
  rig.key(Qt::Key_Return);
  EXPECT_EQ(rig.lastDone(), "instructor: arm vacuum.train_pipe_leak size 4 after 12 s");
  rig.pass(11);
  EXPECT_EQ(stateOf(rig, "train_pipe").kind, SpotState::Kind::kArmed);
  rig.pass(2);
  EXPECT_EQ(stateOf(rig, "train_pipe").kind, SpotState::Kind::kThere);
}

// Search, into the list, on to the size, in: whoever has both hands full presses Enter.
TEST(Faults, FiveGoInInAHurryByEnterAlone) {
  DeskRig rig;
  const auto putIn = [&](const char* words) {
    rig.key(Qt::Key_F3);
    rig.type(QString::fromLatin1(words));
    for (int k = 0; k < 3; ++k) rig.key(Qt::Key_Return);
    return rig.lastDone();
  };
  EXPECT_EQ(putIn("train pipe leak"), "instructor: arm vacuum.train_pipe_leak");
  EXPECT_EQ(putIn("compressor2.belt_gone"), "instructor: arm compressor2.belt_gone");
  EXPECT_EQ(putIn("gearbox2.band3_worn"), "instructor: arm gearbox2.band3_worn");
  EXPECT_EQ(putIn("cab1.lamp_charge_blown"), "instructor: arm cab1.lamp_charge_blown");
  EXPECT_EQ(putIn("handbrake2.left_on"), "instructor: arm handbrake2.left_on");
  rig.pass(0.2);
  EXPECT_EQ(rig.run().faultsNow().size(), 5U);
}

// Five are armed and the phone rings: what each waits for stands beside it.
TEST(Faults, SayWhatTheyWaitFor) {
  DeskRig rig;
  const auto arm = [&](const char* words) {
    rig.desk().take(
        std::get<unit::Action>(unit::parseAction(std::string("instructor: arm ") + words)));
  };
  rig.pass(10);
  arm("compressor2.belt_gone after 300 s");
  arm("gearbox2.band3_worn size 55 when cab1.gear == 3 or cab2.gear == 3 after 20 s");
  arm("battery.cell_dead size 1 when cab1.air >= 94 psi");
  rig.pass(0.1);
  QString all;
  for (const QLabel* label : rig.window().faults()->present()->findChildren<QLabel*>())
    all += label->text() + QLatin1Char('\n');
  EXPECT_THAT(all.toStdString(), HasSubstr("armed at 0:00:10; comes at 0:05:10"));
  EXPECT_THAT(all.toStdString(),
              HasSubstr("armed at 0:00:10; when third gear is selected, and 20 s later"));
  EXPECT_THAT(all.toStdString(), HasSubstr("armed at 0:00:10; when cab1.air >= 94 psi"));
}

TEST(Faults, EnterInTheSecondsPutsItInToo) {
  DeskRig rig;
  ASSERT_TRUE(clickSpot(rig, "compressor2"));
  desk::FaultForm& form = *rig.window().faults()->form();
  form.moment()->choice()->setCurrentIndex(1);
  form.moment()->seconds()->setFocus();
  rig.key(Qt::Key_A, Qt::ControlModifier);
  rig.type(QStringLiteral("20"));
  rig.key(Qt::Key_Return);
  EXPECT_THAT(rig.lastDone(), HasSubstr("after 20 s"));
}

TEST(Faults, AConditionIsCheckedByItsReader) {
  DeskRig rig;
  ASSERT_TRUE(clickSpot(rig, "gearbox2"));
  desk::FaultForm& form = *rig.window().faults()->form();
  form.moment()->choice()->setCurrentIndex(form.moment()->choice()->count() - 1);
  EXPECT_FALSE(form.putIn()->isEnabled());
  form.moment()->condition()->setFocus();
  rig.type(QStringLiteral("cab1.speeed > 5 mph"));
  EXPECT_FALSE(form.putIn()->isEnabled());
  EXPECT_THAT(form.moment()->fault().toStdString(), HasSubstr("cab1.speed"));
  rig.key(Qt::Key_Return);
  EXPECT_TRUE(rig.run().actions().empty());
  rig.key(Qt::Key_A, Qt::ControlModifier);
  rig.type(QStringLiteral("cab1.speed > 5 mph"));
  EXPECT_TRUE(form.putIn()->isEnabled());
  rig.key(Qt::Key_Return);
  EXPECT_THAT(rig.lastDone(), HasSubstr("when cab1.speed > 5 mph"));
}

TEST(Faults, ReadyConditionsAreAllUnderstood) {
  for (const desk::ReadyCondition& ready : desk::readyConditions()) {
    const auto parsed = unit::Condition::parse(ready.text);
    EXPECT_TRUE(std::holds_alternative<unit::Condition>(parsed)) << ready.text;
  }
}

TEST(Faults, GrowWhereTheyCan) {
  DeskRig rig;
  ASSERT_TRUE(clickSpot(rig, "main_reservoir"));
  ASSERT_EQ(rig.window().faults()->form()->shown()->name, "air.main_leak");
  ASSERT_TRUE(rig.find<QWidget>("fault_ramp")->isVisible());
  rig.find<QDoubleSpinBox>("fault_ramp")->setValue(20);
  ASSERT_TRUE(rig.click("put_in"));
  EXPECT_THAT(rig.lastDone(), HasSubstr("ramp 20 s"));
  rig.pass(10);
  EXPECT_EQ(stateOf(rig, "main_reservoir").kind, SpotState::Kind::kGrowing);
  rig.pass(11);
  EXPECT_EQ(stateOf(rig, "main_reservoir").kind, SpotState::Kind::kThere);
}

TEST(Faults, EveryOneOfTheCatalogueIsPutInFromTheDesk) {
  DeskRig rig;
  desk::FaultForm& form = *rig.window().faults()->form();
  for (const fault::FaultSpec& spec : fault::faultCatalogue()) {
    form.showFault(&spec);
    const auto fault = scenario::findActionFault(rig.run().unit(), form.makeAction());
    EXPECT_FALSE(fault) << spec.name << ": " << fault.value_or("");
  }
}

TEST(Faults, ArrowsReachEverySpot) {
  DeskRig rig;
  rig.key(Qt::Key_F6);
  std::set<QWidget*> reached{QApplication::focusWidget()};
  std::vector<QWidget*> open{QApplication::focusWidget()};
  while (!open.empty()) {
    QWidget* from = open.back();
    open.pop_back();
    for (const Qt::Key key : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down}) {
      from->setFocus();
      rig.key(key);
      if (reached.insert(QApplication::focusWidget()).second)
        open.push_back(QApplication::focusWidget());
    }
  }
  EXPECT_EQ(reached.size(), desk::spotTable().size());
}

}  // namespace
}  // namespace cabwright::tests
