// SPDX-License-Identifier: GPL-3.0-or-later
// The plates on the ground round the unit: everything of the place is on them, nothing lies on
// anything else, hands and eyes work through them, and what is drawn follows the state.
#include "cab/ground_plate.h"

#include <gtest/gtest.h>

#include <QtTest>
#include <set>

#include "cab/names.h"
#include "cab/plate_between.h"
#include "cab/plate_end.h"
#include "cab/plate_side.h"
#include "session/situation.h"

namespace cabwright::cab {
namespace {

using unit::Place;

struct GroundBench {
  std::unique_ptr<Seat> seat;
  SheetStyle style;
  Shortcuts shortcuts;
  QRectF area;
  std::unique_ptr<Plate> plate;

  GroundBench(Place place, QSize window, const std::vector<std::string>& by_others = {},
              bool dark = false) {
    auto loaded = session::loadSituation(std::string(CABWRIGHT_SOURCE_DIR) +
                                         "/scenarios/cold-preparation/scenario.toml");
    auto& situation = std::get<session::Situation>(loaded);
    if (dark) situation.loaded.scenario.start.dark = true;
    session::LiveOptions options;
    options.mode = scenario::Mode::kGuided;
    auto run = std::make_unique<session::LiveRun>(situation, options);
    for (const std::string& words : by_others) {
      auto action = std::get<unit::Action>(unit::parseAction(words));
      action.actor = unit::Actor::kInstructor;
      EXPECT_FALSE(run->take(action).fault) << words;
    }
    seat = std::make_unique<Seat>(std::move(run));
    seat->act("go", std::string(unit::placeInfo(place).name), "skip");
    pass(0.1);
    style.frame = drawing::calcSheetFrame(window);
    const QRectF world = style.frame.world;
    const double top = world.top() + Plate::bandHeight(place);
    area = QRectF(world.left(), top, world.width(), 836 + style.frame.spare - top);
    plate = makePlate(place,
                      {*seat, style, shortcuts, area,
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
  template <class P>
  P& as() {
    return dynamic_cast<P&>(*plate);
  }
  Part* part(std::string_view name) {
    return plate->findPart(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
  }
  QPoint pixel(QPointF u) const { return style.frame.toWindow().map(u).toPoint(); }
};

QRectF nameBox(const ItemPart& item) {
  const double w = drawing::textWidth(item.accessibleName(), drawing::kText, true) + 26;
  const ItemShape& shape = item.shape();
  const double left = shape.label_ends ? shape.label.x() - w : shape.label.x();
  return {left, shape.label.y() - 16, w, 21};
}

constexpr std::array<Place, 7> kGround{Place::kEnd1,   Place::kEnd2,     Place::kSide1,
                                       Place::kSide2,  Place::kTrailer1, Place::kTrailer2,
                                       Place::kBetween};

class GroundPlateTest : public ::testing::TestWithParam<std::tuple<Place, QSize>> {};

TEST_P(GroundPlateTest, HoldsAllThatBelongsToThePlace) {
  const auto [place, window] = GetParam();
  GroundBench bench(place, window);
  std::size_t items = 0;
  for (const unit::ItemInfo& info : unit::itemTable()) {
    if (info.place != place) continue;
    ++items;
    EXPECT_NE(qobject_cast<ItemPart*>(bench.part(info.name)), nullptr) << info.name;
  }
  EXPECT_GE(items, 5U);
  EXPECT_EQ(bench.plate->items().size(), items);
  for (const unit::Control control : bench.seat->unit().perceivable(place).controls) {
    if (control == unit::Control::kHandLamp) continue;  // carried, and shown with the hands
    const std::string_view name = unit::controlInfo(control).name;
    EXPECT_NE(qobject_cast<ControlPart*>(bench.part(name)), nullptr) << name;
  }
}

TEST_P(GroundPlateTest, NamesStandApartAndInside) {
  const auto [place, window] = GetParam();
  GroundBench bench(place, window);
  const auto& items = bench.plate->items();
  for (std::size_t a = 0; a < items.size(); ++a) {
    const QRectF box = nameBox(*items[a]);
    EXPECT_TRUE(bench.area.contains(box)) << qPrintable(items[a]->objectName());
    for (std::size_t b = a + 1; b < items.size(); ++b)
      EXPECT_FALSE(box.adjusted(-3, -3, 3, 3).intersects(nameBox(*items[b])))
          << qPrintable(items[a]->objectName()) << " on " << qPrintable(items[b]->objectName());
    EXPECT_FALSE(box.intersects(bench.as<GroundPlate>().darkWordsBox()))
        << qPrintable(items[a]->objectName());
    for (const Part* part : bench.plate->parts()) {
      if (qobject_cast<const ItemPart*>(part) == nullptr) {
        EXPECT_FALSE(box.intersects(part->area()))
            << qPrintable(items[a]->objectName()) << " on " << qPrintable(part->objectName());
      }
    }
  }
}

TEST_P(GroundPlateTest, WhatIsClickedIsWhatIsMeant) {
  const auto [place, window] = GetParam();
  GroundBench bench(place, window);
  for (const ItemPart* item : bench.plate->items()) {
    EXPECT_EQ(bench.plate->childAt(bench.pixel(item->shape().thing.center())), item)
        << qPrintable(item->objectName());
    EXPECT_EQ(bench.plate->childAt(bench.pixel(nameBox(*item).center())), item)
        << qPrintable(item->objectName());
  }
  for (const Part* part : bench.plate->parts())
    EXPECT_TRUE(bench.plate->rect().contains(part->geometry())) << qPrintable(part->objectName());
}

// A leader ends inside its thing and crosses no name.
TEST_P(GroundPlateTest, LeadersEndOnTheirThings) {
  const auto [place, window] = GetParam();
  GroundBench bench(place, window);
  const auto& leaders = bench.as<GroundPlate>().leaders();
  const auto& items = bench.plate->items();
  ASSERT_EQ(leaders.size(), items.size());
  for (std::size_t k = 0; k < leaders.size(); ++k) {
    EXPECT_TRUE(items[k]->shape().thing.adjusted(-4, -4, 4, 4).contains(leaders[k].back()))
        << qPrintable(items[k]->objectName());
    for (const ItemPart* other : items) {
      const QRectF box = nameBox(*other);
      for (int leg = 0; leg + 1 < leaders[k].size(); ++leg) {
        for (int step = 1; step < 20; ++step) {
          const QPointF at =
              leaders[k][leg] + (leaders[k][leg + 1] - leaders[k][leg]) * (step / 20.0);
          EXPECT_FALSE(box.contains(at)) << qPrintable(items[k]->objectName()) << " through "
                                         << qPrintable(other->objectName());
        }
      }
    }
  }
}

// The lines between a spot and its circle touch both and cross no name; the circle is on the plate
// and on no other.
TEST_P(GroundPlateTest, DetailCirclesKeepClear) {
  const auto [place, window] = GetParam();
  GroundBench bench(place, window);
  const auto& details = bench.as<GroundPlate>().details();
  ASSERT_GE(details.size(), 2U);
  for (const DetailCircle& d : details) {
    const QPointF reach(d.r, d.r);
    EXPECT_TRUE(bench.area.contains(QRectF(d.centre - reach, d.centre + reach)));
    for (const DetailCircle& other : details) {
      if (&d < &other) {
        EXPECT_GT(QLineF(d.centre, other.centre).length(), d.r + other.r + 12);
      }
    }
    const auto joins = d.joins();
    ASSERT_EQ(joins.size(), 2U);
    for (const QLineF& join : joins) {
      EXPECT_NEAR(QLineF(join.p1(), d.spot).length(), d.spot_r, 1e-6);
      EXPECT_NEAR(QLineF(join.p2(), d.centre).length(), d.r, 1e-6);
      for (const ItemPart* item : bench.plate->items()) {
        const QRectF box = nameBox(*item).adjusted(0, 0, -24, 0);  // a blank verdict takes no room
        for (int step = 0; step <= 100; ++step)
          EXPECT_FALSE(box.contains(join.pointAt(step / 100.0))) << qPrintable(item->objectName());
      }
    }
  }
}

INSTANTIATE_TEST_SUITE_P(EverywhereInAllWindows, GroundPlateTest,
                         ::testing::Combine(::testing::ValuesIn(kGround),
                                            ::testing::Values(QSize(1280, 720), QSize(1920, 1080),
                                                              QSize(1600, 1000),
                                                              QSize(1280, 960))));

TEST(GroundPlateWork, AClickLooksAtAThing) {
  GroundBench bench(Place::kSide2, {1280, 720});
  Part* part = bench.part("side2.rigging");
  const auto* item = qobject_cast<ItemPart*>(part);
  ASSERT_NE(item, nullptr);
  QTest::mouseClick(part, Qt::LeftButton, {},
                    bench.pixel(item->shape().thing.center()) - part->pos());
  EXPECT_EQ(bench.seat->unit().world().trainee.looking, unit::Item::kSide2Rigging);
}

TEST(GroundPlateWork, ControlsMoveByMouseAndKey) {
  GroundBench bench(Place::kSide1, {1920, 1080});
  Part* scotch = bench.part("scotch1");
  const double before = bench.seat->value(unit::Control::kScotch1);
  QTest::mouseClick(scotch, Qt::LeftButton);
  bench.pass(0.1);
  EXPECT_EQ(bench.seat->value(unit::Control::kScotch1), 1 - before);
  Part* drain = bench.part("drain_main");
  QTest::keyClick(drain, Qt::Key_Up);
  bench.pass(0.1);
  EXPECT_EQ(bench.seat->value(unit::Control::kDrainMain), 1);
  QTest::keyClick(drain, Qt::Key_Down);
  bench.pass(0.1);
  EXPECT_EQ(bench.seat->value(unit::Control::kDrainMain), 0);
}

// A cord is pulled as long as the finger is on it.
TEST(GroundPlateWork, TheCordGoesBackWhenItIsLetGo) {
  GroundBench bench(Place::kTrailer2, {1280, 720});
  Part* cord = bench.part("cord4");
  QTest::mousePress(cord, Qt::LeftButton);
  bench.pass(0.1);
  EXPECT_EQ(bench.seat->value(unit::Control::kCord4), 1);
  QTest::mouseRelease(cord, Qt::LeftButton);
  bench.pass(0.1);
  EXPECT_EQ(bench.seat->value(unit::Control::kCord4), 0);
  QTest::keyPress(cord, Qt::Key_Space);
  bench.pass(0.1);
  EXPECT_EQ(bench.seat->value(unit::Control::kCord4), 1);
  QTest::keyRelease(cord, Qt::Key_Space);
  bench.pass(0.1);
  EXPECT_EQ(bench.seat->value(unit::Control::kCord4), 0);
}

TEST(EndPlateLive, ShowsWhatIsSeenAtAGlance) {
  GroundBench sound(Place::kEnd1, {1280, 720});
  const EndPlate::Look before = sound.as<EndPlate>().look();
  EXPECT_TRUE(before.hoses_on && before.hooked_up && before.tail_lamp);
  EXPECT_FALSE(before.white || before.red);
  EXPECT_EQ(before.number, 0);
  GroundBench bench(Place::kEnd1, {1280, 720},
                    {"condition end1.coupling hanging", "condition end1.tail_lamp missing",
                     "condition end1.protection board", "set battery_switch closed",
                     "set cab1.white_lamps on", "set cab1.display 4"});
  bench.pass(1);
  const EndPlate::Look look = bench.as<EndPlate>().look();
  EXPECT_FALSE(look.hooked_up);
  EXPECT_FALSE(look.tail_lamp);
  EXPECT_EQ(look.protection, 2);
  EXPECT_TRUE(look.white);
  EXPECT_FALSE(look.red);
  EXPECT_EQ(look.number, 4);
  bench.seat->setControl(unit::Control::kHose1, 0);
  bench.pass(0.1);
  EXPECT_FALSE(bench.as<EndPlate>().look().hoses_on);
}

// Things that ask for a close look are drawn alike, sound or not.
TEST(EndPlateLive, ASplitHoseLooksLikeASoundOneFromAfar) {
  GroundBench sound(Place::kEnd2, {1280, 720}),
      split(Place::kEnd2, {1280, 720}, {"condition end2.hoses split", "condition end2.horn snow"});
  EXPECT_EQ(sound.plate->grab().toImage(), split.plate->grab().toImage());
  GroundBench hanging(Place::kEnd2, {1280, 720}, {"condition end2.hoses hanging"});
  EXPECT_NE(sound.plate->grab().toImage(), hanging.plate->grab().toImage());
}

TEST(SidePlateLive, TheCabStandsOnTheSideItIsOn) {
  const QSize window(1280, 720);
  EXPECT_TRUE(GroundBench(Place::kSide1, window).as<SidePlate>().frame().cab_right);
  EXPECT_FALSE(GroundBench(Place::kSide2, window).as<SidePlate>().frame().cab_right);
  EXPECT_FALSE(GroundBench(Place::kTrailer1, window).as<SidePlate>().frame().cab_right);
  EXPECT_TRUE(GroundBench(Place::kTrailer2, window).as<SidePlate>().frame().cab_right);
}

TEST(SidePlateLive, ShowsWhatIsSeenAtAGlance) {
  GroundBench sound(Place::kTrailer2, {1280, 720});
  const CarLook before = sound.as<SidePlate>().look();
  EXPECT_FALSE(before.door_open || before.alarm);
  EXPECT_EQ(before.person, 0);
  EXPECT_EQ(before.scotches, 0);
  GroundBench bench(Place::kTrailer2, {1280, 720},
                    {"condition trailer2.people feet", "condition trailer2.scotches scotch",
                     "condition trailer2.protection flag", "set alarm pulled", "set door2 open"});
  const CarLook look = bench.as<SidePlate>().look();
  EXPECT_TRUE(look.door_open);
  EXPECT_TRUE(look.alarm);
  EXPECT_EQ(look.person, 2);
  EXPECT_EQ(look.scotches, 1);
  EXPECT_EQ(look.protection, 1);
  EXPECT_NE(sound.plate->grab().toImage(), bench.plate->grab().toImage());
}

// The blocks are drawn as far from the tyre as they are seen.
TEST(SidePlateLive, BlocksFollowTheirSignal) {
  GroundBench on(Place::kSide1, {1280, 720});
  GroundBench off(Place::kSide1, {1280, 720}, {"set cab1.pawl out", "set cab1.handbrake off"});
  on.pass(20);
  off.pass(20);
  EXPECT_GT(on.as<SidePlate>().look().blocks_on, 0.9);
  EXPECT_LT(off.as<SidePlate>().look().blocks_on, 0.1);
  EXPECT_NE(on.plate->grab().toImage(), off.plate->grab().toImage());
}

// An open cock shows by its bar; that it drips or is cracked, to who has looked.
TEST(SidePlateLive, TheDrainCockIsDrawnAsItIsFound) {
  GroundBench open(Place::kSide1, {1280, 720}, {"set drain_main open"});
  EXPECT_EQ(open.as<SidePlate>().drain(), DrainState::kOpen);
  for (const auto& [words, state] :
       {std::pair{"condition trailer1.drains dripping", DrainState::kDripping},
        std::pair{"condition trailer1.drains cracked", DrainState::kCracked}}) {
    SCOPED_TRACE(words);
    GroundBench bench(Place::kTrailer1, {1280, 720}, {words});
    EXPECT_EQ(bench.as<SidePlate>().drain(), DrainState::kShut);
    const QImage before = bench.plate->grab().toImage();
    bench.seat->look(unit::Item::kTrailer1Drains);
    bench.pass(8);
    EXPECT_EQ(bench.as<SidePlate>().drain(), state);
    EXPECT_NE(before, bench.plate->grab().toImage());
  }
}

TEST(SidePlateLive, FireIsSeenAlongItsSideAndNotFromTheOther) {
  for (const auto& [place, seen] :
       {std::pair{Place::kSide1, true}, std::pair{Place::kTrailer1, true},
        std::pair{Place::kSide2, false}, std::pair{Place::kTrailer2, false}}) {
    GroundBench bench(place, {1280, 720}, {"fault fire1.burns 1"});
    EXPECT_EQ(bench.as<SidePlate>().look().fire, seen) << unit::placeInfo(place).name;
  }
}

TEST(BetweenPlateLive, JumperAndPartedHoseAreSeen) {
  GroundBench bench(Place::kBetween, {1280, 720}, {"condition between.hoses parted"});
  EXPECT_TRUE(bench.as<BetweenPlate>().look().hose_parted);
  EXPECT_TRUE(bench.as<BetweenPlate>().look().jumper_home);
  QTest::mouseClick(bench.part("jumper"), Qt::LeftButton);
  bench.pass(0.1);
  EXPECT_FALSE(bench.as<BetweenPlate>().look().jumper_home);
  GroundBench sound(Place::kBetween, {1280, 720});
  EXPECT_FALSE(sound.as<BetweenPlate>().look().hose_parted);
}

// In the dark the plate says so, and nothing on it moves because of it.
TEST(GroundPlateLive, TheDarkIsTold) {
  for (Place place : kGround) {
    GroundBench day(place, {1280, 720}), night(place, {1280, 720}, {}, true);
    EXPECT_NE(day.plate->grab().toImage(), night.plate->grab().toImage());
    ASSERT_EQ(day.plate->items().size(), night.plate->items().size());
    for (std::size_t k = 0; k < day.plate->items().size(); ++k)
      EXPECT_EQ(day.plate->items()[k]->geometry(), night.plate->items()[k]->geometry());
  }
}

}  // namespace
}  // namespace cabwright::cab
