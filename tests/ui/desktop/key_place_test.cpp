// SPDX-License-Identifier: GPL-3.0-or-later
// Keys that lie as what they press does go by their place on the keyboard, whatever letter is
// there; the letter is shown where they act and in the settings.
#include <gtest/gtest.h>

#include <QKeyEvent>
#include <QKeySequenceEdit>

#include "driver.h"

namespace cabwright::tests {
namespace {

using unit::Control;

// As an evdev keyboard counts them.
constexpr quint32 kPlaceQ = 24, kPlaceW = 25, kPlaceA = 38, kPlaceZ = 52;

void send(Desk& desk, QEvent::Type type, quint32 scan_code, Qt::Key letter) {
  QKeyEvent event(type, letter, Qt::NoModifier, scan_code, 0, 0, QString(QChar(letter)));
  QWidget* to = desk.focus() != nullptr ? desk.focus() : &desk.view();
  QCoreApplication::sendEvent(to, &event);
}

void toCab(Desk& desk) {
  desk.begin("cold-preparation", scenario::Mode::kPractice);
  desk.seat().act("take", "door_key");
  desk.seat().act("go", "cab1", "skip");
  desk.settle();
  desk.view().setFocus();
}

// Where a French keyboard has A and Z, and Q below A.
TEST(KeyPlace, StartAndStopLieAsTheButtonsDoOnAnyKeyboard) {
  Desk desk;
  toCab(desk);
  send(desk, QEvent::KeyPress, kPlaceQ, Qt::Key_A);
  desk.pass(0.2);
  EXPECT_EQ(desk.seat().value(Control::kCab1Start1), 1);
  EXPECT_EQ(desk.seat().value(Control::kCab1Stop1), 0);
  send(desk, QEvent::KeyRelease, kPlaceQ, Qt::Key_A);
  desk.pass(0.2);
  EXPECT_EQ(desk.seat().value(Control::kCab1Start1), 0);
  send(desk, QEvent::KeyPress, kPlaceA, Qt::Key_Q);
  desk.pass(0.2);
  EXPECT_EQ(desk.seat().value(Control::kCab1Stop1), 1);
  EXPECT_EQ(desk.seat().value(Control::kCab1Start1), 0);
  send(desk, QEvent::KeyRelease, kPlaceA, Qt::Key_Q);
}

TEST(KeyPlace, TheLetterThatLiesThereIsShownOnceItIsKnown) {
  Desk desk;
  toCab(desk);
  auto* start2 = desk.findControl(QStringLiteral("cab.start2"));
  ASSERT_NE(start2, nullptr);
  EXPECT_TRUE(start2->role().description.contains(QStringLiteral("Key: W")));
  send(desk, QEvent::KeyPress, kPlaceW, Qt::Key_Z);
  desk.pass(0.2);
  send(desk, QEvent::KeyRelease, kPlaceW, Qt::Key_Z);
  EXPECT_TRUE(start2->role().description.contains(QStringLiteral("Key: Z")));
  // Z was the left hand's letter; by its place it is not.
  for (const char* lever : {"cab1.gear", "cab1.throttle"}) desk.seat().act("hold", lever);
  const bool left_on_gear = desk.seat().handOn(Control::kCab1Gear) == 0;
  const Control left = left_on_gear ? Control::kCab1Gear : Control::kCab1Throttle;
  ASSERT_EQ(desk.seat().handOn(left), 0);
  desk.seat().act("release", left_on_gear ? "cab1.throttle" : "cab1.gear");  // a hand to press with
  send(desk, QEvent::KeyPress, kPlaceW, Qt::Key_Z);
  desk.pass(0.2);
  send(desk, QEvent::KeyRelease, kPlaceW, Qt::Key_Z);
  EXPECT_EQ(desk.seat().handOn(left), 0);
  send(desk, QEvent::KeyPress, kPlaceZ, Qt::Key_W);
  EXPECT_FALSE(desk.seat().handOn(left).has_value());
  desk.key(Qt::Key_F1);
  QStringList shown;
  for (auto* box : desk.window().page()->findChildren<QKeySequenceEdit*>())
    shown << box->keySequence().toString();
  EXPECT_TRUE(shown.contains(QStringLiteral("Z")));
  EXPECT_TRUE(shown.contains(QStringLiteral("W")));
}

TEST(KeyPlace, AChosenKeyGoesByItsLetter) {
  cab::Shortcuts keys;
  EXPECT_TRUE(keys.isByPlace(QStringLiteral("cab.start1")));
  keys.setKeys(QStringLiteral("cab.start1"), QKeySequence(Qt::Key_9 | Qt::CTRL));
  EXPECT_FALSE(keys.isByPlace(QStringLiteral("cab.start1")));
  EXPECT_FALSE(keys.findCommands(Qt::Key_Q, {}, kPlaceQ).contains(QStringLiteral("cab.start1")));
  EXPECT_EQ(keys.findCommands(Qt::Key_9, Qt::ControlModifier, 18),
            QStringList{QStringLiteral("cab.start1")});
}

// No letter stands for two things that can be done at the same place, on the keyboards that are
// known.
TEST(KeyPlace, NoTwoCommandsHaveOneKeyWithLettersWhereTheyLieElsewhere) {
  struct Layout {
    quint32 place;
    Qt::Key letter;
  };
  for (const Layout& moved :
       {Layout{kPlaceQ, Qt::Key_A}, Layout{kPlaceW, Qt::Key_Z}, Layout{kPlaceA, Qt::Key_Q},
        Layout{kPlaceZ, Qt::Key_W}, Layout{kPlaceZ, Qt::Key_Y}}) {
    const cab::Shortcuts keys;
    for (const QString& command : keys.findCommands(moved.letter, {}, moved.place))
      EXPECT_TRUE(keys.isByPlace(command)) << command.toStdString();
  }
}

}  // namespace
}  // namespace cabwright::tests
