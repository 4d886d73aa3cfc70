// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/transport_bar.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QTranslator>

#include "review_room/moment_row.h"

namespace cabwright::review_room {
namespace {

class TransportBarTest : public testing::Test {
 protected:
  TransportBarTest() {
    bar_.setTime(QStringLiteral("0:01:16.9"), QStringLiteral("0:24:12"));
    bar_.setEvents(words_);
    bar_.show();
  }
  void widen(int width) {
    bar_.resize(width, 40);
    QApplication::processEvents();
  }
  [[nodiscard]] QLabel* time() {
    for (auto* label : bar_.findChildren<QLabel*>())
      if (label->text().contains(QLatin1String("24:12"))) return label;
    return nullptr;
  }
  const QString words_ = QStringLiteral("Line 10, look both ways before each crossing: broken");
  after::SheetLook look_;
  TransportBar bar_{look_};
};

TEST_F(TransportBarTest, WhatIsCutSaysSo) {
  widen(1800);
  EXPECT_EQ(bar_.shownEvents(), words_);
  for (int width = 1700; width > 700; width -= 7) {
    widen(width);
    EXPECT_EQ(bar_.events(), words_);
    const QString shown = bar_.shownEvents();
    EXPECT_TRUE(shown == words_ || shown.isEmpty() || shown.endsWith(QChar(0x2026)))
        << shown.toStdString();
  }
}

TEST_F(TransportBarTest, TheTimeIsReadBeforeTheKeysAre) {
  ASSERT_NE(time(), nullptr);
  widen(1800);
  const int all = bar_.button(Step::kPlay)->width();
  widen(bar_.minimumSizeHint().width() - 60);
  EXPECT_LT(bar_.button(Step::kPlay)->width(), all);
  EXPECT_GE(time()->width(), time()->sizeHint().width());
  EXPECT_LE(time()->geometry().right(), bar_.width());
  widen(1800);
  EXPECT_EQ(bar_.button(Step::kPlay)->width(), all);
}

class Mirror : public QTranslator {
 public:
  QString translate(const char* context, const char* source, const char*, int) const override {
    const QLatin1String of(context);
    return of == QLatin1String("MomentRow") || of == QLatin1String("TransportBar")
               ? QStringLiteral("<%1>").arg(QLatin1String(source))
               : QString();
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

// Under the names by which the catalogues have them.
TEST(ReviewWords, OfListsAreTranslated) {
  Mirror mirror;
  QCoreApplication::installTranslator(&mirror);
  const after::SheetLook look;
  const TransportBar bar(look);
  EXPECT_EQ(bar.button(Step::kPlay)->accessibleName(), QLatin1String("<Play and stop>"));
  MomentRow row(look, nullptr);
  row.showFrame({}, 0);
  for (const char* word : {"<SAFETY>", "<FIRE>", "<Brake>", "<Gear>"})
    EXPECT_TRUE(row.accessibleDescription().contains(QLatin1String(word))) << word;
  QCoreApplication::removeTranslator(&mirror);
}

}  // namespace
}  // namespace cabwright::review_room
