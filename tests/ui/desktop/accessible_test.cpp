// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader is told of each sheet: a name, what it is and how it stands; levers have a
// range and steps; no two things go by the same words.
#include <gtest/gtest.h>

#include <QAccessible>
#include <map>
#include <tuple>

#include "cab/plate_cab_round.h"
#include "driver.h"

namespace cabwright::tests {
namespace {

using unit::Control;

class Reader : public ::testing::Test {
 protected:
  Reader() {
    QAccessible::setActive(true);
    desk.begin("cold-preparation", scenario::Mode::kPractice);
    for (const char* thing : {"brake_handle", "reversing_lever", "control_key", "door_key"})
      desk.seat().act("take", thing);
    desk.settle();
  }
  ~Reader() override { QAccessible::setActive(false); }

  void go(const std::string& place) {
    desk.seat().act("go", place, "skip");
    desk.settle();
  }
  std::vector<cab::Part*> visibleParts() {
    std::vector<cab::Part*> parts;
    for (auto* part : desk.view().findChildren<cab::Part*>())
      if (part->isVisible()) parts.push_back(part);
    return parts;
  }
  static QAccessibleInterface* of(QObject* part) {
    return QAccessible::queryAccessibleInterface(part);
  }
  QAccessibleInterface* of(Control c) {
    return of(desk.find<cab::ControlPart>(unit::controlInfo(c).name));
  }
  void checkSheet();

  Desk desk;
};

std::string text(QAccessibleInterface* i, QAccessible::Text which) {
  return i->text(which).toStdString();
}

// What is there to be pressed and nothing else needs no more than its name.
bool isMereButton(const cab::Part* part) {
  return qobject_cast<const cab::WordButton*>(part) != nullptr ||
         qobject_cast<const cab::BalloonPart*>(part) != nullptr ||
         qobject_cast<const cab::TurnPart*>(part) != nullptr;
}

void Reader::checkSheet() {
  using Words = std::tuple<QAccessible::Role, std::string>;
  std::map<Words, std::set<std::string>> told;
  std::map<Words, std::size_t> times;
  for (cab::Part* part : visibleParts()) {
    SCOPED_TRACE(part->objectName().toStdString() + " " + part->metaObject()->className());
    QAccessibleInterface* i = of(part);
    ASSERT_NE(i, nullptr);
    EXPECT_NE(i->role(), QAccessible::NoRole);
    EXPECT_FALSE(text(i, QAccessible::Name).empty());
    EXPECT_TRUE(isMereButton(part) || !text(i, QAccessible::Value).empty());
    const Words words{i->role(), text(i, QAccessible::Name)};
    told[words].insert(text(i, QAccessible::Description));
    ++times[words];
    if (i->role() != QAccessible::Slider) continue;
    ASSERT_NE(i->valueInterface(), nullptr);
    EXPECT_LT(i->valueInterface()->minimumValue().toDouble(),
              i->valueInterface()->maximumValue().toDouble());
    ASSERT_NE(i->actionInterface(), nullptr);
    const QStringList actions = i->actionInterface()->actionNames();
    EXPECT_TRUE(actions.contains(QAccessibleActionInterface::increaseAction()));
    EXPECT_TRUE(actions.contains(QAccessibleActionInterface::decreaseAction()));
  }
  for (const auto& [words, descriptions] : told)
    EXPECT_EQ(descriptions.size(), times[words]) << "twice alike: " << std::get<1>(words);
}

TEST_F(Reader, IsToldOfEverythingOnEverySheet) {
  for (const unit::PlaceInfo& info : unit::placeTable()) {
    SCOPED_TRACE(info.name);
    if (desk.seat().place() != info.id) go(std::string(info.name));
    checkSheet();
    if (unit::cabOf(info.id) < 0) continue;
    desk.key(Qt::Key_Period);
    SCOPED_TRACE("turned round");
    checkSheet();
  }
}

TEST_F(Reader, MovesALeverByStepsAndHearsWhereItStands) {
  go("cab1");
  QAccessibleInterface* gear = of(Control::kCab1Gear);
  ASSERT_NE(gear, nullptr);
  EXPECT_EQ(gear->valueInterface()->currentValue().toDouble(), 0);
  const std::string before = text(gear, QAccessible::Value);
  gear->actionInterface()->doAction(QAccessibleActionInterface::increaseAction());
  desk.settle();
  EXPECT_EQ(gear->valueInterface()->currentValue().toDouble(), 1);
  EXPECT_NE(text(gear, QAccessible::Value), before);
  gear->actionInterface()->doAction(QAccessibleActionInterface::decreaseAction());
  desk.settle();
  EXPECT_EQ(gear->valueInterface()->currentValue().toDouble(), 0);
}

TEST_F(Reader, PutsAControlWhereItIsWanted) {
  go("cab1");
  desk.seat().act("insert", "brake_handle", "cab1");
  desk.settle();
  QAccessibleInterface* brake = of(Control::kCab1Brake);
  brake->valueInterface()->setCurrentValue(0.45);
  desk.settle();
  EXPECT_NEAR(brake->valueInterface()->currentValue().toDouble(), 0.45, 0.03);
  brake->valueInterface()->setCurrentValue(-1.0);
  desk.settle();
  EXPECT_EQ(brake->valueInterface()->currentValue().toDouble(), -1);
}

TEST_F(Reader, IsToldOfARefusalAtTheControl) {
  go("cab1");
  QAccessibleInterface* brake = of(Control::kCab1Brake);
  const std::string before = text(brake, QAccessible::Value);
  brake->actionInterface()->doAction(QAccessibleActionInterface::increaseAction());
  desk.settle();
  EXPECT_NE(text(brake, QAccessible::Value), before);
  EXPECT_EQ(brake->valueInterface()->currentValue().toDouble(), 0);
}

TEST_F(Reader, SwitchesAndLooksAndPresses) {
  go("cab1");
  desk.key(Qt::Key_Period);
  QAccessibleInterface* wiper = of(Control::kCab1Wiper);
  EXPECT_TRUE(wiper->state().checkable);
  EXPECT_FALSE(wiper->state().checked);
  wiper->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  desk.settle();
  EXPECT_TRUE(wiper->state().checked);
  auto* seal = desk.find<cab::ItemPart>(QStringLiteral("cab1.seal"));
  of(seal)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  desk.settle();
  EXPECT_EQ(desk.seat().unit().world().trainee.looking, unit::Item::kCab1Seal);
}

}  // namespace
}  // namespace cabwright::tests
