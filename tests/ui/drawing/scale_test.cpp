// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "canvas.h"
#include "drawing/dial.h"

namespace cabwright::drawing {
namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;
using testing_ui::Canvas;

// The scales in use, in their instruments' units.
std::vector<std::pair<const char*, DialScale>> scalesInUse() {
  return {
      {"vacuum", {.low = 0, .high = 30, .major = 5, .minor = 1, .marks = {{15, "15"}, {21, "21"}}}},
      {"air",
       {.low = 0,
        .high = 120,
        .major = 20,
        .minor = 5,
        .middle = 10,
        .marks = {{75, "75"}, {95, "95"}}}},
      {"engine", {.low = 0, .high = 2000, .major = 500, .minor = 100, .figure_divisor = 100}},
      {"speed", {.low = 0, .high = 80, .major = 10, .minor = 2}},
      {"battery", {.low = 0, .high = 40, .major = 10, .minor = 1, .middle = 5}},
      {"oil", {.low = 0, .high = 100, .major = 20, .minor = 5, .middle = 10}},
      {"coolant", {.low = 0, .high = 120, .major = 20, .minor = 5, .middle = 10}},
      {"fuel", {.low = 0, .high = 100, .major = 20, .minor = 5, .middle = 10}},
  };
}

TEST(ScalesInUse, AreGraduatedByTheRules) {
  for (const auto& [name, scale] : scalesInUse())
    EXPECT_THAT(findScaleFaults(scale), IsEmpty()) << name;
}

// Cases of the standards' notes: 0 to 10 bar by 2 and 0.5 or by 1 and 0.2, -1 to 0 bar by 0.2 and
// 0.05, 0 to 2500 by 500 and 100, 0 to 120 degrees by 20 and 5.
TEST(ScaleFaults, AreNotFoundInGoodScales) {
  const auto faults = [](double low, double high, double major, double minor) {
    return findScaleFaults({.low = low, .high = high, .major = major, .minor = minor});
  };
  EXPECT_THAT(faults(0, 10, 2, 0.5), IsEmpty());
  EXPECT_THAT(faults(0, 10, 1, 0.2), IsEmpty());
  EXPECT_THAT(faults(-1, 0, 0.2, 0.05), IsEmpty());
  EXPECT_THAT(faults(0, 2500, 500, 100), IsEmpty());
  EXPECT_THAT(faults(0, 120, 20, 5), IsEmpty());
}

TEST(ScaleFaults, AreFoundOneByOne) {
  const DialScale good{.low = 0, .high = 100, .major = 20, .minor = 5};
  const auto with = [&](auto change) {
    DialScale scale = good;
    change(scale);
    return findScaleFaults(scale);
  };
  ASSERT_THAT(findScaleFaults(good), IsEmpty());
  EXPECT_THAT(with([](DialScale& s) { s.major = 25; }), SizeIs(1)) << "25 is not 1, 2 or 5";
  EXPECT_THAT(findScaleFaults({.low = 0, .high = 16, .major = 4, .minor = 1}), SizeIs(1));
  EXPECT_THAT(with([](DialScale& s) { s.minor = 4; }), SizeIs(1));
  EXPECT_THAT(with([](DialScale& s) { s.minor = 1; }), SizeIs(1)) << "19 marks between figures";
  EXPECT_THAT(with([](DialScale& s) { s.minor = 2; }), IsEmpty()) << "9 marks between figures";
  EXPECT_THAT(with([](DialScale& s) { s.major = 50; }), SizeIs(1)) << "gap under one interval";
  EXPECT_THAT(with([](DialScale& s) { s.high = 110; }), SizeIs(1)) << "no figure at the end";
  EXPECT_THAT(with([](DialScale& s) { s.middle = 10; }), IsEmpty());
  EXPECT_THAT(with([](DialScale& s) { s.middle = 2; }), SizeIs(1));
  EXPECT_THAT(with([](DialScale& s) { s.figure_divisor = 3; }), SizeIs(1));
  EXPECT_THAT(with([](DialScale& s) { s.marks = {{101, "101"}}; }), SizeIs(1));
  EXPECT_THAT(with([](DialScale& s) { s.zones = {{40, 20}}; }), SizeIs(1));
  EXPECT_THAT(with([](DialScale& s) { s.high = 0; }), SizeIs(1));
  EXPECT_THAT(with([](DialScale& s) { s.minor = 0; }), SizeIs(1));
}

TEST(Needle, StandsWhereItsValueIs) {
  const DialScale scale{.low = -10, .high = 20, .major = 5, .minor = 1};
  EXPECT_DOUBLE_EQ(dialAngle(scale, -10), -135);
  EXPECT_DOUBLE_EQ(dialAngle(scale, 5), 0);
  EXPECT_DOUBLE_EQ(dialAngle(scale, 20), 135);
  EXPECT_DOUBLE_EQ(dialAngle(scale, 12.5), -135 + 270 * 22.5 / 30);
  EXPECT_DOUBLE_EQ(dialAngle(scale, -11), -135) << "stays on the scale";
  EXPECT_DOUBLE_EQ(dialAngle(scale, 1e9), 135);
}

constexpr QPointF kCentre(150, 150);
constexpr double kPx = 3;

Canvas paintWith(const DialScale& scale, double r, std::vector<DialNeedle> needles,
                 DialLook look = {}) {
  Canvas canvas({300, 300}, kPx);
  canvas.paint([&](Pen& pen) { paintDial(pen, kCentre, r, scale, needles, look); });
  return canvas;
}

bool isInk(QRgb pixel) { return qGray(pixel) < 110; }

// Pixels that a needle changed although they belong to a figure or are within 1 u of it.
int countSpoilt(const QImage& bare, const QImage& with, const QRectF& figure) {
  const QRect box = QTransform::fromScale(kPx, kPx).mapRect(figure).toAlignedRect();
  constexpr int kNear = static_cast<int>(kPx);
  const auto isNearTheFigure = [&](int x, int y) {
    for (int dy = -kNear; dy <= kNear; ++dy)
      for (int dx = -kNear; dx <= kNear; ++dx)
        if (dx * dx + dy * dy <= kNear * kNear && box.contains(x + dx, y + dy) &&
            isInk(bare.pixel(x + dx, y + dy)))
          return true;
    return false;
  };
  int spoilt = 0;
  for (int y = box.top(); y <= box.bottom(); ++y)
    for (int x = box.left(); x <= box.right(); ++x)
      if (isInk(bare.pixel(x, y)) != isInk(with.pixel(x, y)) && isNearTheFigure(x, y)) ++spoilt;
  return spoilt;
}

TEST(Needle, NeverCoversAFigure) {
  for (const auto& [name, scale] : scalesInUse())
    for (double r : {74.0, 102.0}) {
      const Canvas bare = paintWith(scale, r, {});
      for (double value = scale.low; value <= scale.high; value += scale.major / 2)
        for (NeedleKind kind : {NeedleKind::kSolid, NeedleKind::kHollow}) {
          const Canvas with = paintWith(scale, r, {{value, kind}});
          for (double figure = scale.low; figure <= scale.high; figure += scale.major)
            EXPECT_EQ(
                countSpoilt(bare.image(), with.image(), dialFigureBox(scale, kCentre, r, figure)),
                0)
                << name << " r " << r << " needle " << value << " figure " << figure;
        }
    }
}

TEST(Needle, ReachesTheSmallestMarksAndDoesNotCoverThem) {
  for (double r : {74.0, 102.0}) {
    const DialScale scale{.low = 0, .high = 30, .major = 5, .minor = 1};
    const double value = 2.5, a = dialAngle(scale, value);
    for (NeedleKind kind : {NeedleKind::kSolid, NeedleKind::kHollow}) {
      const Canvas with = paintWith(scale, r, {{value, kind}});
      EXPECT_TRUE(with.is(pointAt(kCentre, 0.865 * r - 1.5, a), Tone::kInk, 70)) << r;
      EXPECT_TRUE(with.is(pointAt(kCentre, 0.900 * r, a), Tone::kFace)) << r;
    }
  }
}

TEST(Needle, OfTheSecondPointerIsOpen) {
  const DialScale scale{.low = 0, .high = 30, .major = 5, .minor = 1};
  const double r = 102, a = dialAngle(scale, 2.5);
  const QPointF in_the_diamond = pointAt(kCentre, 0.47 * r - 6, a);
  EXPECT_TRUE(paintWith(scale, r, {{2.5, NeedleKind::kHollow}}).is(in_the_diamond, Tone::kFace));
  EXPECT_TRUE(paintWith(scale, r, {{2.5, NeedleKind::kSolid}}).is(in_the_diamond, Tone::kInk));
}

TEST(Dial, ShowsNoNeedleWhereItCannotBeRead) {
  const DialScale scale{.low = 0, .high = 30, .major = 5, .minor = 1};
  for (DialLook look : {DialLook{.out_of_reach = true}, DialLook{.dark = true}})
    EXPECT_EQ(paintWith(scale, 102, {{7}}, look).image(),
              paintWith(scale, 102, {{22}}, look).image());
  EXPECT_NE(paintWith(scale, 102, {{7}}).image(), paintWith(scale, 102, {{22}}).image());
  const Canvas dark = paintWith(scale, 102, {{7}}, {.dark = true});
  EXPECT_TRUE(dark.is(pointAt(kCentre, 0.85 * 102, 0), Tone::kShade)) << "no mark is seen";
}

TEST(Dial, KeepsItsGapAtSixForTheUnit) {
  const DialScale scale{.low = 0, .high = 80, .major = 10, .minor = 2, .unit = "mph"};
  const double r = 102, width = textWidth(scale.unit);
  const QRectF unit(kCentre.x() - width / 2, kCentre.y() + 0.76 * r - 0.72 * kText, width,
                    0.9 * kText);
  for (double value = 0; value <= 80; value += 10)
    EXPECT_FALSE(dialFigureBox(scale, kCentre, r, value).intersects(unit)) << value;
}

}  // namespace
}  // namespace cabwright::drawing
