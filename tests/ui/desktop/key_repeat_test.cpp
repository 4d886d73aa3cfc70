// SPDX-License-Identifier: GPL-3.0-or-later
// A key that is held, as an X server tells of it and Qt does not always understand it.
#include <gtest/gtest.h>

#include <QtTest>

#include "desktop/key_repeat.h"

namespace cabwright::tests {
namespace {

class Listener : public QWidget {
 public:
  int pressed = 0, repeated = 0, released = 0;
  QString typed;

 protected:
  void keyPressEvent(QKeyEvent* event) override {
    ++(event->isAutoRepeat() ? repeated : pressed);
    typed += event->text();
  }
  void keyReleaseEvent(QKeyEvent* event) override { released += event->isAutoRepeat() ? 0 : 1; }
};

class KeyRepeatTest : public ::testing::Test {
 protected:
  KeyRepeatTest() {
    listener_.show();
    listener_.activateWindow();
    listener_.setFocus();
    QCoreApplication::processEvents();
  }
  void send(QEvent::Type type, qulonglong time, Qt::Key key = Qt::Key_W, bool repeat = false) {
    QKeyEvent event(type, key, Qt::NoModifier, static_cast<quint32>(key), 0, 0,
                    QKeySequence(key).toString().toLower(), repeat);
    event.setTimestamp(time);
    QCoreApplication::sendEvent(listener_.windowHandle(), &event);
  }

  desktop::KeyRepeat repeat_;
  Listener listener_;
};

TEST_F(KeyRepeatTest, ReleasesAndPressesOfTheSameMomentAreOneHold) {
  send(QEvent::KeyPress, 1000);
  for (qulonglong time = 1660; time < 3000; time += 40) {
    send(QEvent::KeyRelease, time);
    send(QEvent::KeyPress, time);
  }
  EXPECT_EQ(listener_.pressed, 1);
  EXPECT_EQ(listener_.repeated, 34);
  EXPECT_EQ(listener_.released, 0);
  EXPECT_EQ(listener_.typed.size(), 35);  // what is written repeats as before
  send(QEvent::KeyRelease, 3010);
  EXPECT_TRUE(QTest::qWaitFor([this] { return listener_.released == 1; }));
  EXPECT_EQ(listener_.pressed, 1);
}

TEST_F(KeyRepeatTest, AKeyPressedTwiceIsPressedTwice) {
  send(QEvent::KeyPress, 1000);
  send(QEvent::KeyRelease, 1060);
  send(QEvent::KeyPress, 1075);
  EXPECT_EQ(listener_.pressed, 2);
  EXPECT_EQ(listener_.released, 1);  // before the second press
  send(QEvent::KeyRelease, 1140);
  EXPECT_TRUE(QTest::qWaitFor([this] { return listener_.released == 2; }));
}

TEST_F(KeyRepeatTest, AnotherKeyOrAClickFindsTheFirstOneLetGo) {
  send(QEvent::KeyPress, 1000);
  send(QEvent::KeyRelease, 1060);
  EXPECT_EQ(listener_.released, 0);
  send(QEvent::KeyPress, 1060, Qt::Key_Q);
  EXPECT_EQ(listener_.released, 1);
  send(QEvent::KeyRelease, 1200, Qt::Key_Q);
  QTest::mouseClick(listener_.windowHandle(), Qt::LeftButton);
  EXPECT_EQ(listener_.released, 2);
}

// What Qt has understood is left alone.
TEST_F(KeyRepeatTest, KnownRepeatsPass) {
  send(QEvent::KeyPress, 1000);
  send(QEvent::KeyRelease, 1660, Qt::Key_W, true);
  send(QEvent::KeyPress, 1660, Qt::Key_W, true);
  EXPECT_EQ(listener_.pressed, 1);
  EXPECT_EQ(listener_.repeated, 1);
  EXPECT_EQ(listener_.released, 0);
}

}  // namespace
}  // namespace cabwright::tests
