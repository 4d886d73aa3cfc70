// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/review_window.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QMimeData>
#include <QtTest>

#include "reviewed_session.h"

namespace cabwright::review_room {
namespace {

class ReviewWindowTest : public testing::Test {
 protected:
  ReviewWindowTest() {
    session::record(file(), session::kGoodDeeds);
    window_.show();
  }
  [[nodiscard]] std::filesystem::path file(const std::string& name = "a.cabsession") const {
    return folder_ / name;
  }
  [[nodiscard]] bool isSettled() {
    return QTest::qWaitFor([this] { return !window_.isOpening(); }, 60'000);
  }
  review::Folder folder_;
  ReviewWindow window_;
};

TEST_F(ReviewWindowTest, OpensASession) {
  const QSignalSpy opened(&window_, &ReviewWindow::sessionOpened);
  window_.open(file());
  EXPECT_TRUE(window_.isOpening());
  ASSERT_TRUE(isSettled());
  ASSERT_NE(window_.view(), nullptr);
  EXPECT_EQ(window_.page(), window_.view());
  EXPECT_EQ(opened.count(), 1);
  EXPECT_EQ(window_.view()->opened().lastTick(), 915);
}

TEST_F(ReviewWindowTest, AFileIsDroppedHere) {
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(QString::fromStdString(file().string()))});
  QDragEnterEvent enter({200, 200}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&window_, &enter);
  EXPECT_TRUE(enter.isAccepted());
  QDropEvent drop({200, 200}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&window_, &drop);
  ASSERT_TRUE(isSettled());
  EXPECT_NE(window_.view(), nullptr);
}

TEST_F(ReviewWindowTest, WhatCannotBeOpenedIsToldAndTheOpenOneStays) {
  window_.open(file());
  ASSERT_TRUE(isSettled());
  session::spill(file("b"), "no session at all");
  std::string cut = session::slurp(file());
  session::spill(file("c"), cut.substr(0, cut.size() / 2));
  for (const std::string& name :
       {std::string("b"), std::string("c"), std::string("nothing"), std::string(".")}) {
    window_.open(file(name));
    ASSERT_TRUE(isSettled()) << name;
    EXPECT_TRUE(window_.said().contains(QStringLiteral("was not opened"))) << name;
    EXPECT_NE(window_.page(), window_.view());
  }
  ASSERT_NE(window_.view(), nullptr);
  window_.showSession();
  EXPECT_EQ(window_.page(), window_.view());
}

TEST_F(ReviewWindowTest, ReadingIsGivenUpByAButton) {
  window_.open(file());
  auto buttons = window_.page()->findChildren<QPushButton*>();
  ASSERT_EQ(buttons.size(), 1);
  QTest::mouseClick(buttons.front(), Qt::LeftButton);
  EXPECT_FALSE(window_.isOpening());
  QTest::qWait(50);
  EXPECT_EQ(window_.view(), nullptr);
}

TEST_F(ReviewWindowTest, AnAssessmentThatGoesOnIsNotLookedInto) {
  window_.setGuard([](const std::filesystem::path&) { return QStringLiteral("it goes on"); });
  window_.open(file());
  EXPECT_FALSE(window_.isOpening());
  EXPECT_EQ(window_.said(), QStringLiteral("it goes on"));
}

TEST_F(ReviewWindowTest, TheShelfIsShownWithoutASession) {
  auto* shelf = new QWidget;
  window_.setShelf(shelf);
  EXPECT_EQ(window_.page(), shelf);
  window_.open(file());
  ASSERT_TRUE(isSettled());
  QTest::keyClick(&window_, Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(window_.page(), shelf);
  QTest::keyClick(&window_, Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(window_.page(), window_.view());
}

}  // namespace
}  // namespace cabwright::review_room
