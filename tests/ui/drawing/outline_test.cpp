// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/outline.h"

#include <gtest/gtest.h>

#include "drawing/pen.h"

namespace cabwright::drawing {
namespace {

TEST(Outline, ReadsLinesInBothForms) {
  const QPainterPath absolute = outlineOf("M1 2 L11 2 H21 V12 Z");
  const QPainterPath relative = outlineOf("m1,2 l10 0 h10 v10 z");
  EXPECT_EQ(absolute, relative);
  EXPECT_EQ(absolute.boundingRect(), QRectF(1, 2, 20, 10));
}

TEST(Outline, RepeatsACommandForFurtherNumbers) {
  EXPECT_EQ(outlineOf("M0 0 L10 0 10 10 -5-5"), outlineOf("M0 0 L10 0 L10 10 L-5 -5"));
}

TEST(Outline, ReadsCurves) {
  QPainterPath expected;
  expected.quadTo(5, 10, 10, 0);
  expected.cubicTo(12, 0, 14, 4, 16, 4);
  EXPECT_EQ(outlineOf("M0 0 q5 10 10 0 c2 0 4 4 6 4"), expected);
}

TEST(Outline, BendsArcsToTheRightSide) {
  // Half circles over a line from left to right: clockwise goes over the top.
  EXPECT_NEAR(outlineOf("M-5 0 A5 0 1 5 0").boundingRect().top(), -5, 1e-6);
  EXPECT_NEAR(outlineOf("M-5 0 A5 0 0 5 0").boundingRect().bottom(), 5, 1e-6);
  // The small and the large arc of a circle of radius 5 through (-3, 0) and (3, 0); its middle is 4
  // away from the chord.
  EXPECT_NEAR(outlineOf("M-3 0 A5 0 1 3 0").boundingRect().height(), 1, 0.01);
  EXPECT_NEAR(outlineOf("M-3 0 A5 1 1 3 0").boundingRect().height(), 9, 0.01);
}

TEST(Capsule, IsAsThickAsItsRadius) {
  const QPainterPath finger = capsuleShape({0, 0}, {0, -30}, 8);
  const QRectF box = finger.boundingRect();
  EXPECT_NEAR(box.width(), 16, 0.2);
  EXPECT_NEAR(box.height(), 46, 0.2);
}

TEST(Face, IsProportional) {
  EXPECT_LT(textWidth(QStringLiteral("iii")), 0.8 * textWidth(QStringLiteral("MMM")));
  EXPECT_LT(textWidth(QStringLiteral("iii"), kText, true),
            0.8 * textWidth(QStringLiteral("MMM"), kText, true));
}

}  // namespace
}  // namespace cabwright::drawing
