// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "drawing/sheet_frame.h"

namespace cabwright::drawing {
namespace {

constexpr double kMargin = 40, kGutter = 24;

void expectNothingLost(QSizeF window) {
  const SheetFrame f = calcSheetFrame(window);
  EXPECT_NEAR(kMargin + f.world.width() + kGutter + f.you.width() + kMargin, f.width, 1e-9);
  EXPECT_NEAR(f.world.right() + kGutter, f.you.left(), 1e-9);
  EXPECT_NEAR(f.height - f.spare, 1000, 1e-9);
  EXPECT_GE(f.you.width(), 316);
  EXPECT_LE(f.you.width(), 420);
  // The sheet covers the window, and not more than a rounding of it.
  EXPECT_NEAR(f.width * f.scale, window.width(), 1e-9);
  EXPECT_NEAR(f.height * f.scale, window.height(), 1e-9);
}

TEST(SheetFrame, IsTheDrawnSheetAtItsOwnSize) {
  const SheetFrame f = calcSheetFrame({1600, 1000});
  EXPECT_EQ(f, SheetFrame{});
}

TEST(SheetFrame, LosesNothingInAnyWindow) {
  for (QSizeF window : {QSizeF(1280, 720), QSizeF(1600, 1000), QSizeF(1920, 1080),
                        QSizeF(3840, 2160), QSizeF(1280, 1024), QSizeF(2560, 1080)})
    expectNothingLost(window);
}

TEST(SheetFrame, GivesWidthToTheRightBlockFirst) {
  // 1650 x 1000: 50 u to spare, all for the right block.
  const SheetFrame little = calcSheetFrame({1650, 1000});
  EXPECT_NEAR(little.you.width(), 366, 1e-9);
  EXPECT_NEAR(little.world.width(), 1180, 1e-9);
  // 16:9 is 1777.8 u wide: the right block takes its most, the rest goes to the world.
  const SheetFrame wide = calcSheetFrame({1920, 1080});
  EXPECT_NEAR(wide.you.width(), 420, 1e-9);
  EXPECT_NEAR(wide.world.width(), 1180 + 1600.0 / 9 - 104, 1e-9);
}

TEST(SheetFrame, GivesHeightToTheGaps) {
  const SheetFrame tall = calcSheetFrame({1600, 1280});
  EXPECT_NEAR(tall.spare, 280, 1e-9);
  EXPECT_NEAR(tall.scale, 1, 1e-9);
  EXPECT_NEAR(tall.you.width(), 316, 1e-9);
}

}  // namespace
}  // namespace cabwright::drawing
