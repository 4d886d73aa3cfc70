// SPDX-License-Identifier: GPL-3.0-or-later
// The plate of an engine: everything of the place is on it, nothing lies on anything else, hands
// and eyes work through it, and what is drawn follows the state.
#include "cab/plate_engine.h"

#include <gtest/gtest.h>

#include <QtTest>

#include "cab/lever_part.h"
#include "session/situation.h"

namespace cabwright::cab {
namespace {

struct Bench {
  std::unique_ptr<Seat> seat;
  SheetStyle style;
  Shortcuts shortcuts;
  std::unique_ptr<Plate> plate;

  Bench(int line, QSize window, const std::vector<std::string>& instructor = {},
        bool dark = false) {
    auto loaded = session::loadSituation(std::string(CABWRIGHT_SOURCE_DIR) +
                                         "/scenarios/cold-preparation/scenario.toml");
    auto& situation = std::get<session::Situation>(loaded);
    if (dark) situation.loaded.scenario.start.dark = true;
    session::LiveOptions options;
    options.mode = scenario::Mode::kGuided;
    auto run = std::make_unique<session::LiveRun>(situation, options);
    for (const std::string& words : instructor) {
      auto action = std::get<unit::Action>(unit::parseAction(words));
      action.actor = unit::Actor::kInstructor;
      const session::Taken taken = run->take(action);
      EXPECT_FALSE(taken.fault) << words;
    }
    seat = std::make_unique<Seat>(std::move(run));
    seat->act("go", line == 0 ? "engine1" : "engine2", "skip");
    pass(0.1);
    style.frame = drawing::calcSheetFrame(window);
    const QRectF world = style.frame.world;
    const auto place = line == 0 ? unit::Place::kEngine1 : unit::Place::kEngine2;
    const double top = world.top() + Plate::bandHeight(place);
    plate = makePlate(place,
                      {*seat, style, shortcuts,
                       QRectF(world.left(), top, world.width(), 836 + style.frame.spare - top),
                       QRectF(world.left(), world.top(), world.width(), top - world.top())},
                      nullptr);
    plate->resize(window);
    plate->show();
    plate->refresh();
  }

  void pass(double seconds) {
    for (double t = 0; t < seconds; t += 0.05) {
      seat->passRealTime(0.05);
      if (plate) plate->refresh();
    }
  }
  EnginePlate& engine() { return dynamic_cast<EnginePlate&>(*plate); }
  Part* part(const std::string& name) { return plate->findPart(QString::fromStdString(name)); }
};

QRectF labelOf(const ItemPart& item) {
  const double w = drawing::textWidth(item.accessibleName(), drawing::kText, true) + 26;
  const ItemShape& shape = item.shape();
  const double left = shape.label_ends ? shape.label.x() - w : shape.label.x();
  return {left, shape.label.y() - 16, w, 21};
}

class EnginePlateTest : public ::testing::TestWithParam<std::tuple<int, QSize>> {};

// The ring of focus is whole: it shows in the middle of each side of the thing.
TEST_P(EnginePlateTest, WhereTheFocusIsCanBeSeenAllRoundTheThing) {
  const auto [line, window] = GetParam();
  Bench bench(line, window);
  bench.plate->activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(bench.plate.get()));
  const double scale = bench.style.frame.scale;
  for (ItemPart* item : bench.plate->findChildren<ItemPart*>()) {
    bench.plate->setFocus();
    const QImage before = bench.plate->grab().toImage();
    item->setFocus();
    ASSERT_TRUE(item->hasFocus());
    const QImage after = bench.plate->grab().toImage();
    const QRectF thing = item->shape().thing;
    const auto changes = [&](QPointF from, QPointF way) {
      for (double out = 2; out < 9; out += 0.5) {
        const QPoint at = ((from + out * way) * scale).toPoint();
        if (after.rect().contains(at) && after.pixel(at) != before.pixel(at)) return true;
      }
      return false;
    };
    const QPointF c = thing.center();
    EXPECT_TRUE(changes({thing.left(), c.y()}, {-1, 0})) << qPrintable(item->objectName());
    EXPECT_TRUE(changes({thing.right(), c.y()}, {1, 0})) << qPrintable(item->objectName());
    EXPECT_TRUE(changes({c.x(), thing.top()}, {0, -1})) << qPrintable(item->objectName());
    EXPECT_TRUE(changes({c.x(), thing.bottom()}, {0, 1})) << qPrintable(item->objectName());
  }
}

TEST_P(EnginePlateTest, HoldsAllThatBelongsToThePlace) {
  const auto [line, window] = GetParam();
  Bench bench(line, window);
  const auto all =
      bench.seat->unit().perceivable(line == 0 ? unit::Place::kEngine1 : unit::Place::kEngine2);
  ASSERT_GE(all.items.size(), 5U);
  for (unit::Item item : all.items) {
    const auto name = std::string(unit::itemInfo(item).name);
    EXPECT_NE(qobject_cast<ItemPart*>(bench.part(name)), nullptr) << name;
  }
  int controls = 0;
  for (unit::Control control : all.controls) {
    if (control == unit::Control::kHandLamp) continue;  // carried, and shown with the hands
    const auto name = std::string(unit::controlInfo(control).name);
    EXPECT_NE(qobject_cast<ControlPart*>(bench.part(name)), nullptr) << name;
    ++controls;
  }
  EXPECT_EQ(controls, 9);
}

TEST_P(EnginePlateTest, NamesStandApartAndInside) {
  const auto [line, window] = GetParam();
  Bench bench(line, window);
  const QRectF world = bench.style.frame.world;
  const auto& items = bench.plate->items();
  for (const ItemPart* a : items) {
    const QRectF box = labelOf(*a);
    EXPECT_TRUE(world.contains(box)) << qPrintable(a->accessibleName());
    for (const ItemPart* b : items) {
      if (a < b) {
        EXPECT_FALSE(box.intersects(labelOf(*b)))
            << qPrintable(a->accessibleName()) << " / " << qPrintable(b->accessibleName());
      }
    }
  }
}

// What a mouse meets in the middle of a control is that control, and no two controls overlap.
TEST_P(EnginePlateTest, ControlsLieFree) {
  const auto [line, window] = GetParam();
  Bench bench(line, window);
  for (const Part* part : bench.plate->parts()) {
    EXPECT_TRUE(bench.plate->rect().contains(part->geometry())) << qPrintable(part->objectName());
    if (qobject_cast<const ControlPart*>(part) != nullptr) {
      EXPECT_EQ(bench.plate->childAt(part->geometry().center()), part)
          << qPrintable(part->objectName());
    }
  }
  for (const ItemPart* item : bench.plate->items()) {
    const QTransform t = bench.style.frame.toWindow();
    const QPoint middle = t.map(item->shape().thing.center()).toPoint();
    EXPECT_EQ(bench.plate->childAt(middle), item) << qPrintable(item->objectName());
  }
}

INSTANTIATE_TEST_SUITE_P(BothEnginesInAllWindows, EnginePlateTest,
                         ::testing::Combine(::testing::Values(0, 1),
                                            ::testing::Values(QSize(1280, 720), QSize(1920, 1080),
                                                              QSize(1600, 1000),
                                                              QSize(1280, 960))));

TEST(EnginePlateWork, AClickLooksAtAThing) {
  Bench bench(1, {1280, 720});
  Part* part = bench.part("engine2.oil");
  const auto* item = qobject_cast<ItemPart*>(part);
  const QPoint middle = bench.style.frame.toWindow().map(item->shape().thing.center()).toPoint();
  QTest::mouseClick(part, Qt::LeftButton, {}, middle - part->pos());
  EXPECT_EQ(bench.seat->unit().world().trainee.looking, unit::Item::kEngine2Oil);
}

TEST(EnginePlateWork, SwitchAndLeverMoveByMouseAndKey) {
  Bench bench(0, {1920, 1080});
  Part* isolating = bench.part("engine1.switch");
  const QTransform t = bench.style.frame.toWindow();
  EXPECT_EQ(bench.seat->value(unit::Control::kEngine1Switch), 0);
  QTest::keyClick(isolating, Qt::Key_Up);
  bench.pass(0.05);
  EXPECT_EQ(bench.seat->value(unit::Control::kEngine1Switch), 1);
  QTest::mouseClick(isolating, Qt::LeftButton, {}, isolating->rect().center());
  bench.pass(0.05);
  EXPECT_EQ(bench.seat->value(unit::Control::kEngine1Switch), 2);
  Part* throttle = bench.part("engine1.hand_throttle");
  QTest::keyClick(throttle, Qt::Key_Up);
  bench.pass(0.05);
  EXPECT_NEAR(bench.seat->value(unit::Control::kEngine1HandThrottle), 0.05, 1e-9);
  Part* cock = bench.part("engine1.air_cock");
  const QPoint on_cock = t.map(cock->area().topLeft() + QPointF(114, 28)).toPoint() - cock->pos();
  QTest::mouseClick(cock, Qt::LeftButton, {}, on_cock);
  bench.pass(0.05);
  EXPECT_EQ(bench.seat->value(unit::Control::kEngine1AirCock), 0);
}

TEST(EnginePlateWork, TheShortcutsFindTheirControls) {
  Bench bench(1, {1280, 720});
  for (const char* command : {"engine.start", "engine.stop", "engine.throttle", "engine.switch"})
    EXPECT_NE(bench.plate->findControl(QString::fromLatin1(command)), nullptr) << command;
}

TEST(EnginePlateLive, WhatIsSeenAtAGlanceFollowsTheState) {
  Bench sound(0, {1280, 720});
  EXPECT_EQ(sound.engine().seen().person, 0);
  EXPECT_EQ(sound.engine().seen().pool, PoolKind::kNone);
  EXPECT_TRUE(sound.engine().seen().belts.guard);
  Bench bench(0, {1280, 720},
              {"condition engine1.people fitter", "condition engine1.tray pool_black",
               "condition engine1.cover off", "fault fire1.burns 1"});
  EXPECT_EQ(bench.engine().seen().person, 2);
  EXPECT_EQ(bench.engine().seen().pool, PoolKind::kPool);
  EXPECT_FALSE(bench.engine().seen().belts.guard);
  EXPECT_TRUE(bench.engine().seen().fire);
  bench.seat->setControl(unit::Control::kEngine1Pin, 1);
  bench.pass(0.1);
  EXPECT_FALSE(sound.engine().seen().drive.pin_in_sleeve);
  EXPECT_EQ(bench.engine().seen().drive.pin_in_sleeve,
            bench.seat->value(unit::Control::kEngine1Pin) > 0.5);
}

// A belt that is gone is not missed from afar behind its guard, but by who looks.
TEST(EnginePlateLive, BeltsBehindTheGuardAskForALook) {
  Bench bench(1, {1280, 720}, {"condition engine2.belts exhauster_gone"});
  EXPECT_TRUE(bench.engine().seen().belts.exhauster);
  bench.seat->look(unit::Item::kEngine2Belts);
  bench.pass(0.1);
  EXPECT_FALSE(bench.engine().seen().belts.exhauster);
  EXPECT_TRUE(bench.engine().seen().belts.compressor);
}

// The stick shows its oil when it has been drawn and looked at for long enough, not before.
TEST(EnginePlateLive, TheDipstickIsReadWhenItHasBeenLookedAt) {
  Bench bench(0, {1280, 720}, {"condition engine1.oil below"});
  EXPECT_FALSE(bench.engine().seen().stick_out);
  bench.seat->look(unit::Item::kEngine1Oil);
  bench.pass(0.1);
  EXPECT_TRUE(bench.engine().seen().stick_out);
  EXPECT_FALSE(bench.engine().seen().oil_mark);
  bench.pass(20);
  ASSERT_TRUE(bench.engine().seen().oil_mark);
  EXPECT_LT(*bench.engine().seen().oil_mark, 0);
  Bench full(0, {1280, 720});
  full.seat->look(unit::Item::kEngine1Oil);
  full.pass(20);
  ASSERT_TRUE(full.engine().seen().oil_mark);
  EXPECT_GT(*full.engine().seen().oil_mark, 0.4);
  EXPECT_LE(*full.engine().seen().oil_mark, 1);
}

// Started, it turns: each pulley as fast as its diameter says, and stands again when motion is not
// wanted.
TEST(EnginePlateLive, PulleysTurnByTheirDiameters) {
  Bench bench(0, {1280, 720},
              {"set battery_switch closed", "place control_key cab1", "set cab1.key on"});
  bench.seat->setControl(unit::Control::kEngine1Switch, 2);
  bench.seat->hold(unit::Control::kEngine1Start);
  bench.pass(1.0);
  ASSERT_GT(bench.seat->value(unit::Signal::kEngine1Note), 20);
  const auto step = [](double from, double to) { return to >= from ? to - from : to - from + 360; };
  const EngineTurn before = bench.engine().turn();
  bench.pass(0.1);
  const EngineTurn after = bench.engine().turn();
  const double crank = step(before.crank, after.crank);
  EXPECT_GT(crank, 0.5);
  EXPECT_LT(crank, 90);
  EXPECT_NEAR(step(before.compressor, after.compressor) * kCompressorPulleyR, crank * kCrankPulleyR,
              0.02 * crank * kCrankPulleyR);
  EXPECT_NEAR(step(before.generator, after.generator) * kGeneratorPulleyR, crank * kCrankPulleyR,
              0.02 * crank * kCrankPulleyR);
  bench.style.reduced_motion = true;
  const double stands = bench.engine().turn().crank;
  bench.pass(0.2);
  EXPECT_EQ(bench.engine().turn().crank, stands);
}

TEST(EnginePlateLive, InTheDarkNothingIsReadClosely) {
  Bench bench(0, {1280, 720}, {}, true);
  EXPECT_TRUE(bench.engine().seen().dark);
  bench.seat->look(unit::Item::kEngine1Coolant);
  bench.pass(0.2);
  EXPECT_FALSE(bench.engine().seen().coolant);
}

TEST(EngineDrawing, AHullGoesRoundItsCirclesAndNoFurther) {
  const QPolygonF hull = hullAround({{{0, 0}, 10}, {{100, 0}, 10}}, 5);
  const QRectF box = hull.boundingRect();
  EXPECT_NEAR(box.left(), -15, 0.1);
  EXPECT_NEAR(box.right(), 115, 0.1);
  EXPECT_NEAR(box.height(), 30, 0.1);
  EXPECT_TRUE(hull.containsPoint({50, 14}, Qt::OddEvenFill));
  EXPECT_FALSE(hull.containsPoint({50, 16}, Qt::OddEvenFill));
}

}  // namespace
}  // namespace cabwright::cab
