// SPDX-License-Identifier: GPL-3.0-or-later
// The passphrase on the screen: asked for beside what goes on, set, changed, taken away.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QSignalSpy>
#include <QTest>
#include <memory>

#include "review_room/lock_form.h"
#include "review_room/lock_panel.h"
#include "sample_session.h"

namespace cabwright::tests {
namespace {

using review_room::LockForm;
using review_room::LockKeeper;
using review_room::LockPanel;
using testing::HasSubstr;

const QString kWords = QStringLiteral("four plain words");

class LockTest : public testing::Test {
 protected:
  LockTest() : keeper_(folder_ / "data/lock", nullptr, session::HashCost::kLeast) {
    keeper_.setClock([this] { return now_; });
    window_.resize(800, 600);
    window_.show();
    QApplication::setActiveWindow(&window_);
  }
  static void type(QLineEdit* box, const QString& words) {
    box->setFocus();
    QTest::keyClicks(box, words);
  }
  /// What was asked of the keeper, answered.
  bool set(const QString& words) {
    bool done = false;
    keeper_.change({}, words, [&](bool right) { done = right; });
    keeper_.wait();
    return done;
  }
  void give(QLineEdit* box, const QString& words) {
    type(box, words);
    QTest::keyClick(box, Qt::Key_Return);
    keeper_.wait();
  }
  session::Folder folder_;
  std::int64_t now_ = 1000;
  LockKeeper keeper_;
  QWidget window_;
};

TEST_F(LockTest, IsOpenWithoutAPassphraseAndAfterTheRightOne) {
  EXPECT_TRUE(keeper_.isOpen());
  ASSERT_TRUE(set(kWords));
  EXPECT_TRUE(keeper_.isOpen());
  keeper_.lock();
  EXPECT_FALSE(keeper_.isOpen());
  LockPanel panel(keeper_, &window_);
  QSignalSpy opened(&panel, &LockPanel::opened);
  panel.ask("The review");
  EXPECT_TRUE(panel.box()->hasFocus());
  give(panel.box(), "four wrong words");
  EXPECT_EQ(opened.size(), 0);
  EXPECT_EQ(panel.saidText(), "That is not the passphrase.");
  EXPECT_EQ(panel.box()->text(), "");
  give(panel.box(), kWords);
  EXPECT_EQ(opened.size(), 1);
  EXPECT_FALSE(panel.isVisible());
  EXPECT_TRUE(keeper_.isOpen());
  LockKeeper anew(folder_ / "data/lock", nullptr, session::HashCost::kLeast);
  EXPECT_FALSE(anew.isOpen());
}

TEST_F(LockTest, EscapeClosesAndNoKeyGoesToTheWindow) {
  ASSERT_TRUE(set(kWords));
  keeper_.lock();
  LockPanel panel(keeper_, &window_);
  QSignalSpy closed(&panel, &LockPanel::closed);
  panel.ask("The review");
  type(panel.box(), "abc");
  QTest::keyClick(panel.box(), Qt::Key_Escape);
  EXPECT_EQ(closed.size(), 1);
  EXPECT_FALSE(panel.isVisible());
  EXPECT_EQ(panel.box()->text(), "");
  EXPECT_FALSE(keeper_.isOpen());
}

TEST_F(LockTest, TheWindowGoesOnWhileItIsLookedAtAndMayGiveUp) {
  ASSERT_TRUE(set(kWords));
  keeper_.lock();
  LockPanel panel(keeper_, &window_);
  QSignalSpy opened(&panel, &LockPanel::opened), closed(&panel, &LockPanel::closed);
  panel.ask("The review");
  type(panel.box(), kWords);
  QTest::keyClick(panel.box(), Qt::Key_Return);
  EXPECT_TRUE(keeper_.isBusy());
  EXPECT_FALSE(panel.box()->isEnabled());
  EXPECT_EQ(panel.saidText(), "It is being looked at.");
  EXPECT_EQ(opened.size(), 0);
  QTest::keyClick(&panel, Qt::Key_Escape);
  EXPECT_EQ(closed.size(), 1);
  keeper_.wait();
  EXPECT_FALSE(keeper_.isOpen()) << "who asked had gone";
  EXPECT_EQ(opened.size(), 0);
  panel.ask("The review");
  give(panel.box(), kWords);
  EXPECT_TRUE(keeper_.isOpen());
}

TEST_F(LockTest, WhoAskedMayBeGoneWhenItIsTold) {
  ASSERT_TRUE(set(kWords));
  keeper_.lock();
  auto panel = std::make_unique<LockPanel>(keeper_, &window_);
  panel->ask("The review");
  type(panel->box(), kWords);
  QTest::keyClick(panel->box(), Qt::Key_Return);
  panel.reset();
  keeper_.wait();
  EXPECT_TRUE(keeper_.isOpen());
  bool told = false;
  {
    LockKeeper gone(folder_ / "data/lock", nullptr, session::HashCost::kLeast);
    gone.open(kWords, [&](bool) { told = true; });
  }
  QCoreApplication::processEvents();
  EXPECT_FALSE(told);
}

TEST_F(LockTest, WrongTriesAreMadeToWait) {
  ASSERT_TRUE(set(kWords));
  keeper_.lock();
  LockPanel panel(keeper_, &window_);
  panel.ask("The review");
  for (int k = 0; k < 3; ++k) {
    give(panel.box(), "wrong");
  }
  EXPECT_FALSE(panel.box()->isEnabled());
  EXPECT_THAT(panel.saidText().toStdString(), HasSubstr("wait 5 second"));
  now_ += 5;
  QTest::qWait(700);
  EXPECT_TRUE(panel.box()->isEnabled());
  give(panel.box(), kWords);
  EXPECT_TRUE(keeper_.isOpen());
}

TEST_F(LockTest, TheFormSetsChangesAndTakesAway) {
  LockForm form(keeper_, &window_);
  form.show();
  auto box = [&](const char* name) { return form.findChild<QLineEdit*>(name); };
  auto press = [&](const char* name) {
    QTest::mouseClick(form.findChild<QPushButton*>(name), Qt::LeftButton);
    keeper_.wait();
  };
  type(box("lock-new"), kWords);
  type(box("lock-again"), "four plain word");
  press("lock-set");
  EXPECT_FALSE(keeper_.isSet());
  EXPECT_EQ(form.saidText(), "The two new ones are not the same.");
  type(box("lock-again"), kWords);
  QTest::keyClick(box("lock-again"), Qt::Key_Return);
  EXPECT_TRUE(keeper_.isBusy());
  EXPECT_FALSE(box("lock-new")->isEnabled());
  keeper_.wait();
  EXPECT_TRUE(box("lock-new")->isEnabled());
  EXPECT_TRUE(keeper_.isSet());
  EXPECT_EQ(box("lock-new")->text(), "");
  type(box("lock-old"), "no");
  type(box("lock-new"), "another one");
  type(box("lock-again"), "another one");
  press("lock-set");
  EXPECT_EQ(form.saidText(), "That is not the passphrase.");
  box("lock-old")->clear();
  type(box("lock-old"), kWords);
  press("lock-set");
  EXPECT_EQ(form.saidText(), "The passphrase is another one now.");
  press("lock-now");
  EXPECT_FALSE(keeper_.isOpen());
  type(box("lock-old"), "another one");
  press("lock-remove");
  EXPECT_FALSE(keeper_.isSet());
  EXPECT_TRUE(keeper_.isOpen());
}

TEST_F(LockTest, ShortOnesAreNotTaken) {
  LockForm form(keeper_, &window_);
  form.show();
  type(form.findChild<QLineEdit*>("lock-new"), "short");
  type(form.findChild<QLineEdit*>("lock-again"), "short");
  QTest::mouseClick(form.findChild<QPushButton*>("lock-set"), Qt::LeftButton);
  EXPECT_FALSE(keeper_.isSet());
  EXPECT_THAT(form.saidText().toStdString(), HasSubstr("at least 8"));
}

}  // namespace
}  // namespace cabwright::tests
