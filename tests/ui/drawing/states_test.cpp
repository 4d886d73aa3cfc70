// SPDX-License-Identifier: GPL-3.0-or-later
// A state is seen in the shape of a part, not in its colour alone: probes at computed points.
#include <gtest/gtest.h>

#include <cmath>

#include "canvas.h"
#include "drawing/button.h"
#include "drawing/furniture.h"
#include "drawing/hand.h"
#include "drawing/handbrake.h"
#include "drawing/key_cap.h"
#include "drawing/lamp.h"
#include "drawing/lever.h"
#include "drawing/toggle.h"
#include "drawing/verdict.h"

namespace cabwright::drawing {
namespace {

using testing_ui::Canvas;

constexpr QPointF kAt(150, 150);

Canvas paint(const std::function<void(Pen&)>& draw, Theme theme = Theme::kDay) {
  Canvas canvas({300, 300}, 3, theme);
  canvas.paint(draw);
  return canvas;
}

// Share of pixels around a point whose brightness differs by a quarter of the range or more: hue is
// left out.
double greyDifference(const Canvas& a, const Canvas& b, const QRectF& where_u) {
  const QRect box = QTransform::fromScale(a.pxPerU(), a.pxPerU()).mapRect(where_u).toAlignedRect();
  int differ = 0;
  for (int y = box.top(); y <= box.bottom(); ++y)
    for (int x = box.left(); x <= box.right(); ++x)
      if (std::abs(qGray(a.image().pixel(x, y)) - qGray(b.image().pixel(x, y))) >= 64) ++differ;
  return static_cast<double>(differ) / (box.width() * box.height());
}

TEST(Lamp, DiffersInShapeWhenLit) {
  constexpr double r = 16;
  for (Theme theme : {Theme::kDay, Theme::kNight})
    for (LampColor color : {LampColor::kRed, LampColor::kYellow, LampColor::kGreen,
                            LampColor::kBlue, LampColor::kWhite}) {
      const auto lamp = [&](bool lit) {
        return paint([&](Pen& pen) { paintLamp(pen, kAt, {.color = color, .lit = lit}, {}, r); },
                     theme);
      };
      const Canvas lit = lamp(true), unlit = lamp(false);
      for (int ray = 0; ray < 12; ++ray) {
        const QPointF on_ray = pointAt(kAt, r + 6.5, ray * 30);
        EXPECT_TRUE(lit.is(on_ray, Tone::kInk, 90)) << ray;
        EXPECT_TRUE(unlit.is(on_ray, Tone::kPaper)) << ray;
      }
      EXPECT_GT(greyDifference(lit, unlit, {kAt.x() - 26, kAt.y() - 26, 52, 52}), 0.05);
    }
}

TEST(Lamp, CarriesItsSignWhereColoursMix) {
  for (LampColor color : {LampColor::kRed, LampColor::kYellow, LampColor::kGreen, LampColor::kBlue})
    EXPECT_TRUE(paint([&](Pen& pen) {
                  paintLamp(pen, kAt, {.color = color, .lit = true, .mixed = true}, {});
                }).is(kAt, Tone::kBezel))
        << int(color);
  EXPECT_TRUE(paint([&](Pen& pen) {
                paintLamp(pen, kAt, {.color = LampColor::kWhite, .lit = true, .mixed = true}, {});
              }).is(kAt, Tone::kWhite));
}

TEST(Lamp, IsDullerAtLowVoltage) {
  const auto lit = [&](double brightness) {
    return paint([&](Pen& pen) {
      paintLamp(pen, kAt, {.color = LampColor::kYellow, .lit = true, .brightness = brightness}, {});
    });
  };
  EXPECT_LT(lit(0.1).at(kAt).lightnessF(), lit(1).at(kAt).lightnessF() - 0.1);
  const QPointF end_of_ray = pointAt(kAt, 16 + 9.5, 0);
  EXPECT_TRUE(lit(1).is(end_of_ray, Tone::kInk, 90));
  EXPECT_TRUE(lit(0.1).is(end_of_ray, Tone::kPaper));
}

const std::vector<Detent> kWays{{-40, {}}, {0, {}}, {40, {}}};
constexpr double kR = 98;

Canvas lever(double at, const LeverLook& look) {
  return paint([&](Pen& pen) { paintLever(pen, kAt, kR, kWays, at, look); });
}

TEST(Lever, HatchesTheArcItMayNotEnter) {
  const QPainterPath forbidden = sectorShape(kAt, kR - 15, kR - 2, -45, 20);
  const QPainterPath free_arc = sectorShape(kAt, kR - 15, kR - 2, 26, 44);
  const Canvas blocked = lever(40, {.blocked = {{-49, 23}}}), open = lever(40, {});
  EXPECT_GT(blocked.share(forbidden, Tone::kBad, 100), 0.15);
  EXPECT_LT(blocked.share(free_arc, Tone::kBad, 100), 0.01);
  EXPECT_LT(open.share(forbidden, Tone::kBad, 100), 0.01);
  EXPECT_TRUE(blocked.is(pointAt(kAt, kR + 2, 23), Tone::kBad, 60))
      << "the stop, on the lever's side";
}

TEST(Lever, ShowsWhoHoldsIt) {
  const QPointF beside_the_letter = leverKnob(kAt, kR, 40) + QPointF(-13, 0);
  EXPECT_TRUE(lever(40, {.held = QStringLiteral("R")}).is(beside_the_letter, Tone::kHand));
  EXPECT_TRUE(lever(40, {}).is(beside_the_letter, Tone::kFace, 60));
  const Canvas l = lever(40, {.held = QStringLiteral("L")}),
               r = lever(40, {.held = QStringLiteral("R")});
  const QPointF knob = leverKnob(kAt, kR, 40);
  EXPECT_GT(greyDifference(l, r, {knob.x() - 10, knob.y() - 10, 20, 20}), 0.02);
}

TEST(Lever, ShowsWhenItsHandleIsPressed) {
  const QPointF on_ring = leverKnob(kAt, kR, 0) + QPointF(-23, 0);
  EXPECT_TRUE(lever(0, {.held = "R", .pressed = true}).is(on_ring, Tone::kHand, 50));
  EXPECT_FALSE(lever(0, {.held = "R"}).is(on_ring, Tone::kHand, 50));
}

TEST(Lever, LeavesASocketWithoutAnArm) {
  const QPointF edge_of_arm = pointAt(kAt, 30, 40) + pointAt({}, 5.8, 130);
  EXPECT_TRUE(lever(40, {}).is(edge_of_arm, Tone::kInk, 80));
  EXPECT_FALSE(lever(40, {.empty = true}).is(edge_of_arm, Tone::kInk, 80));
}

TEST(Lever, StandsAtItsAngle) {
  for (double at : {-40.0, -13.0, 0.0, 40.0}) {
    const Canvas canvas = lever(at, {.held = QStringLiteral("R")});
    EXPECT_TRUE(canvas.is(leverKnob(kAt, kR, at) + QPointF(13, 0), Tone::kHand)) << at;
  }
}

Canvas button(const ButtonLook& look) {
  return paint([&](Pen& pen) { paintButton(pen, kAt, 19, look); });
}

TEST(Button, ShowsItsStates) {
  const QPainterPath inner = circleShape(kAt, 12);
  EXPECT_GT(button({.state = ButtonState::kPressed}).share(inner, Tone::kHand), 0.95);
  EXPECT_GT(button({.state = ButtonState::kBlocked}).share(inner, Tone::kBad, 100), 0.15);
  EXPECT_LT(button({}).share(inner, Tone::kBad, 100), 0.01);
  // Without current its ring is broken.
  const QPainterPath ring = sectorShape(kAt, 18.6, 19.4, 0, 359.9);
  EXPECT_GT(button({}).share(ring, Tone::kInk, 90), 0.9);
  const double broken = button({.state = ButtonState::kDead}).share(ring, Tone::kRule, 90);
  EXPECT_GT(broken, 0.35);
  EXPECT_LT(broken, 0.8);
}

TEST(Button, FillsItsArcAsTimeRuns) {
  const auto arc_is_heavy = [](double share, double degrees) {
    return button({.state = ButtonState::kPressed, .held_share = share})
        .is(pointAt(kAt, 19 + 13 + 1.6, degrees), Tone::kHand, 60);
  };
  EXPECT_TRUE(arc_is_heavy(0.5, 90));
  EXPECT_FALSE(arc_is_heavy(0.5, 270));
  EXPECT_TRUE(arc_is_heavy(1, 270));
  EXPECT_FALSE(arc_is_heavy(0, 90));
}

TEST(Cock, LiesAlongItsPipeWhenOpen) {
  const auto cock = [](bool open) {
    return paint([&](Pen& pen) { paintToggle(pen, kAt, {.is_on = open, .cock = true}); });
  };
  // The bar's end, beyond the body of the cock.
  const QPointF along = kAt + QPointF(18, 3.9), across = kAt - QPointF(3.9, 17);
  EXPECT_TRUE(cock(true).is(along, Tone::kInk, 90));
  EXPECT_TRUE(cock(false).is(across, Tone::kInk, 90));
  EXPECT_FALSE(cock(false).is(along, Tone::kInk, 90));
  EXPECT_FALSE(cock(true).is(across, Tone::kInk, 90));
}

TEST(Toggle, LeansToItsSide) {
  const auto toggle = [](bool on) {
    return paint([&](Pen& pen) { paintToggle(pen, kAt, {.is_on = on, .held = "R"}); });
  };
  const QPointF aside(14 + 7, -1);
  EXPECT_TRUE(toggle(true).is(kAt + aside, Tone::kHand, 60));
  EXPECT_FALSE(toggle(false).is(kAt + aside, Tone::kHand, 60));
  EXPECT_TRUE(toggle(false).is(kAt + QPointF(-aside.x(), aside.y()), Tone::kHand, 60));
}

TEST(Handbrake, ShowsItsPawlAndHowFarItIsOn) {
  const auto brake = [](double on, bool in) {
    return paint([&](Pen& pen) { paintHandbrake(pen, kAt, 44, {.on = on, .pawl_in = in}); });
  };
  EXPECT_TRUE(brake(1, true).is(handbrakePawl(kAt, 44), Tone::kInk));
  EXPECT_FALSE(brake(1, false).is(handbrakePawl(kAt, 44), Tone::kInk));
  const auto arc = [&](double on, double degrees) {
    return brake(on, true).is(pointAt(kAt, 44 + 9, degrees), Tone::kInk, 60);
  };
  EXPECT_TRUE(arc(0.5, -60));
  EXPECT_FALSE(arc(0.5, 50));
  EXPECT_TRUE(arc(1, 50));
  EXPECT_FALSE(arc(0, -60));
}

TEST(Hand, IsAnotherPictureForEachGrip) {
  std::vector<Canvas> pictures;
  for (int grip = 0; grip <= static_cast<int>(Grip::kBell); ++grip)
    pictures.push_back(
        paint([&](Pen& pen) { paintHand(pen, kAt, true, static_cast<Grip>(grip), 1); }));
  for (std::size_t i = 0; i < pictures.size(); ++i)
    for (std::size_t j = i + 1; j < pictures.size(); ++j)
      EXPECT_GT(greyDifference(pictures[i], pictures[j], handBounds(kAt)), 0.004) << i << " " << j;
}

TEST(Hand, IsMirrored) {
  const auto hand = [](bool right) {
    return paint([&](Pen& pen) { paintHand(pen, kAt, right, Grip::kFree, 1); });
  };
  const QPointF thumb(43, 2);  // of a right hand it points to the left
  EXPECT_FALSE(hand(true).is(kAt + QPointF(-thumb.x() - 9, thumb.y()), Tone::kPaper, 60));
  EXPECT_TRUE(hand(true).is(kAt + QPointF(thumb.x() + 9, thumb.y()), Tone::kPaper, 60));
  EXPECT_FALSE(hand(false).is(kAt + QPointF(thumb.x() + 9, thumb.y()), Tone::kPaper, 60));
}

TEST(Verdict, HasAShapeForEachJudgement) {
  const std::vector<VerdictSign> signs{VerdictSign::kGood, VerdictSign::kDefect,
                                       VerdictSign::kUnsure, VerdictSign::kSeen,
                                       VerdictSign::kNone};
  std::vector<Canvas> pictures;
  for (VerdictSign sign : signs)
    pictures.push_back(paint([&](Pen& pen) { paintVerdict(pen, kAt, sign, 9.5, Tone::kPaper); }));
  for (std::size_t i = 0; i < pictures.size(); ++i)
    for (std::size_t j = i + 1; j < pictures.size(); ++j)
      EXPECT_GT(greyDifference(pictures[i], pictures[j], {kAt.x() - 11, kAt.y() - 11, 22, 22}),
                0.05)
          << i << " " << j;
  EXPECT_TRUE(pictures.back().painted().isNull());
}

TEST(KeyCap, GrowsWithItsWord) {
  EXPECT_DOUBLE_EQ(keyCapWidth(QStringLiteral("I")), 25);
  EXPECT_GT(keyCapWidth(QStringLiteral("Shift")), 40);
  paint([](Pen& pen) {
    EXPECT_DOUBLE_EQ(paintKeyCap(pen, kAt, QStringLiteral("Shift")),
                     keyCapWidth(QStringLiteral("Shift")));
  });
}

TEST(FocusRing, StandsFiveUnitsClear) {
  const QRectF thing(100, 100, 80, 40);
  const Canvas canvas = paint([&](Pen& pen) { paintFocusRing(pen, thing); });
  EXPECT_TRUE(canvas.is({140, 100 - 5 - 1.6}, Tone::kHand));
  EXPECT_TRUE(canvas.is({140, 100 - 4}, Tone::kPaper));
  EXPECT_TRUE(canvas.is({140, 100 - 5 - 3.2 - 1}, Tone::kPaper));
}

}  // namespace
}  // namespace cabwright::drawing
