// SPDX-License-Identifier: GPL-3.0-or-later
// Each part paints inside the bounds it states, in all its states, and fills a good part of them.
#include <gtest/gtest.h>

#include "canvas.h"
#include "drawing/button.h"
#include "drawing/dial.h"
#include "drawing/hand.h"
#include "drawing/handbrake.h"
#include "drawing/key_switch.h"
#include "drawing/lamp.h"
#include "drawing/lever.h"
#include "drawing/objects.h"
#include "drawing/plan.h"
#include "drawing/toggle.h"

namespace cabwright::drawing {
namespace {

using testing_ui::Canvas;

constexpr QPointF kAt(220, 220);

void expectInside(const QRectF& bounds, const char* what, const std::function<void(Pen&)>& draw) {
  Canvas canvas({440, 440}, 1.5);
  canvas.paint(draw);
  const QRectF painted = canvas.painted();
  ASSERT_FALSE(painted.isNull()) << what;
  EXPECT_TRUE(bounds.adjusted(-0.6, -0.6, 0.6, 0.6).contains(painted))
      << what << ": " << painted.left() << " " << painted.top() << " " << painted.right() << " "
      << painted.bottom() << " is not in " << bounds.left() << " " << bounds.top() << " "
      << bounds.right() << " " << bounds.bottom();
  EXPECT_GT(painted.width() * painted.height(), 0.15 * bounds.width() * bounds.height()) << what;
}

TEST(Bounds, HoldADial) {
  for (double r : {66.0, 102.0})
    for (double mark : {0.0, 60.0, 75.0, 120.0}) {
      const DialScale scale{.low = 0,
                            .high = 120,
                            .major = 20,
                            .minor = 5,
                            .unit = QStringLiteral("psi"),
                            .marks = {{mark, QStringLiteral("120")}}};
      const std::vector<DialNeedle> needles{{88}, {10, NeedleKind::kHollow}};
      for (DialLook look : {DialLook{}, DialLook{.focus = true}, DialLook{.being_read = true},
                            DialLook{.out_of_reach = true}, DialLook{.dark = true}})
        expectInside(dialBounds(kAt, r, scale), "dial",
                     [&](Pen& pen) { paintDial(pen, kAt, r, scale, needles, look); });
    }
}

TEST(Bounds, HoldALamp) {
  const QString word = QStringLiteral("ENGINE 1");
  for (bool lit : {false, true})
    for (bool focus : {false, true})
      expectInside(lampBounds(kAt, word), "lamp", [&](Pen& pen) {
        paintLamp(pen, kAt, {.color = LampColor::kGreen, .lit = lit, .focus = focus}, word);
      });
}

TEST(Bounds, HoldALever) {
  const std::vector<Detent> detents{{-64, "release"}, {-26, "lap"}, {62, "full", true}};
  for (double at : {-64.0, -26.0, 0.0, 62.0})
    for (const LeverLook& look :
         {LeverLook{}, LeverLook{.held = "L", .pressed = true, .focus = true},
          LeverLook{.empty = true}, LeverLook{.focus = true, .empty = true},
          LeverLook{.blocked = {{-70, -30}}, .ghost = -64, .wedge = {{-8, 62}}}})
      expectInside(leverBounds(kAt, 98, detents), "lever",
                   [&](Pen& pen) { paintLever(pen, kAt, 98, detents, at, look); });
}

TEST(Bounds, HoldAButton) {
  for (ButtonState state :
       {ButtonState::kUp, ButtonState::kPressed, ButtonState::kBlocked, ButtonState::kDead})
    for (double share : {0.0, 0.4, 1.0})
      expectInside(buttonBounds(kAt, 19, "Start"), "button", [&](Pen& pen) {
        paintButton(pen, kAt, 19,
                    {.sign = ButtonSign::kFire, .state = state, .focus = true, .held_share = share},
                    "Start");
      });
}

TEST(Bounds, HoldAKeySwitch) {
  for (bool has_key : {false, true}) {
    const KeySwitchLook look{.positions = {{-50, "off"}, {0, "half"}, {50, "on"}},
                             .at = 50,
                             .has_key = has_key,
                             .held = "R",
                             .focus = true};
    expectInside(keySwitchBounds(kAt, 34, look), "key switch",
                 [&](Pen& pen) { paintKeySwitch(pen, kAt, 34, look); });
  }
}

TEST(Bounds, HoldAToggle) {
  for (bool cock : {false, true})
    for (bool on : {false, true})
      for (bool focus : {false, true}) {
        const ToggleLook look{
            .off = "shut", .on = "open", .is_on = on, .cock = cock, .held = "L", .focus = focus};
        expectInside(toggleBounds(kAt, look), "toggle",
                     [&](Pen& pen) { paintToggle(pen, kAt, look); });
      }
}

TEST(Bounds, HoldAHandbrake) {
  for (double R : {30.0, 44.0})
    for (bool in : {false, true})
      expectInside(handbrakeBounds(kAt, R), "handbrake", [&](Pen& pen) {
        paintHandbrake(pen, kAt, R, {.on = 0.5, .pawl_in = in, .focus = true, .pawl_focus = true});
      });
}

TEST(Bounds, HoldAHandAndWhatItHolds) {
  for (int grip = 0; grip <= static_cast<int>(Grip::kBell); ++grip)
    for (bool right : {false, true})
      for (double k : {0.62, 1.2})
        expectInside(handBounds(kAt, k), "hand",
                     [&](Pen& pen) { paintHand(pen, kAt, right, static_cast<Grip>(grip), k); });
}

TEST(Bounds, HoldALooseThing) {
  for (int thing = 0; thing <= static_cast<int>(LooseThing::kDipstick); ++thing)
    for (bool here : {false, true})
      expectInside(looseThingBounds(kAt), "loose thing", [&](Pen& pen) {
        paintLooseThing(pen, kAt, static_cast<LooseThing>(thing), here);
      });
}

// Balloons of the plan, at the widths a sheet gives it.

std::vector<PlanPlace> allPlaces(const QRectF& box) {
  std::vector<PlanPlace> places;
  for (int i = 0; i < kPlanPlaces; ++i)
    places.push_back({.key = QString(QLatin1Char('A')),
                      .at = planPosition(box, i),
                      .here = i == 11,
                      .reachable = true,
                      .pointed = i % 2 == 0});
  return places;
}

TEST(Plan, StaysInItsBox) {
  for (double width : {316.0, 420.0})
    for (bool right : {false, true})
      for (bool moving : {false, true}) {
        const QRectF box(10, 20, width, 110);
        expectInside(box, "plan", [&](Pen& pen) {
          paintPlan(pen, box, {.forward_is_right = right, .moving = moving}, allPlaces(box));
        });
      }
}

TEST(Plan, KeepsItsBalloonsApart) {
  const double balloon = PlanLook{}.balloon_r, ring = balloon + 5;
  for (double width : {316.0, 360.0, 420.0}) {
    const QRectF box(0, 0, width, 110);
    for (int i = 0; i < kPlanPlaces; ++i)
      for (int j = i + 1; j < kPlanPlaces; ++j) {
        const QPointF apart = planPosition(box, i) - planPosition(box, j);
        EXPECT_GE(std::hypot(apart.x(), apart.y()), balloon + ring) << i << " and " << j;
      }
  }
}

TEST(Plan, PutsThePlacesWhereTheyAre) {
  const QRectF box(0, 0, 400, 110);
  const auto at = [&](int place) { return planPosition(box, place); };
  constexpr int kBooking = 0, kLineside = 1, kEnd1 = 2, kEnd2 = 3, kSide1 = 4, kSide2 = 5,
                kTrailer1 = 6, kTrailer2 = 7, kEngine1 = 8, kEngine2 = 9, kBetween = 10, kCab1 = 11,
                kCab2 = 12, kCupboard = 13, kSaloon = 14;
  // From the rear to the front.
  const std::vector<int> along{kEnd2, kCab2, kSaloon, kBetween, kCupboard, kCab1, kEnd1};
  for (std::size_t i = 1; i < along.size(); ++i) {
    EXPECT_LT(at(along[i - 1]).x(), at(along[i]).x());
    EXPECT_DOUBLE_EQ(at(along[i]).y(), box.center().y());
  }
  for (int place : {kBooking, kLineside, kSide1, kTrailer1, kEngine1})
    EXPECT_GT(at(place).y(), box.center().y()) << "side 1 is below";
  for (int place : {kSide2, kTrailer2, kEngine2}) EXPECT_LT(at(place).y(), box.center().y());
  EXPECT_LT(at(kTrailer1).x(), at(kBetween).x());
  EXPECT_GT(at(kEngine1).x(), at(kBetween).x());
}

}  // namespace
}  // namespace cabwright::drawing
