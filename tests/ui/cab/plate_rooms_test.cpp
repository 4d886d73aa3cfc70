// SPDX-License-Identifier: GPL-3.0-or-later
// The plates of rooms and of the lineside: everything of the place is on them, names stand apart
// and inside, hands and eyes work through them, and loose things are taken from where they lie.
#include <gtest/gtest.h>

#include <QtTest>

#include "cab/plate_booking.h"
#include "cab/plate_cab_round.h"
#include "cab/thing_part.h"
#include "session/situation.h"

namespace cabwright::cab {
namespace {

using unit::Control;
using unit::Item;
using unit::Object;
using unit::Place;

struct Room {
  std::unique_ptr<Seat> seat;
  SheetStyle style;
  Shortcuts shortcuts;
  std::unique_ptr<Plate> plate;

  Room(Place place, QSize window, bool second = false, bool dark = false) {
    auto loaded = session::loadSituation(std::string(CABWRIGHT_SOURCE_DIR) +
                                         "/scenarios/cold-preparation/scenario.toml");
    auto& situation = std::get<session::Situation>(loaded);
    if (dark) situation.loaded.scenario.start.dark = true;
    session::LiveOptions options;
    options.mode = scenario::Mode::kGuided;
    seat = std::make_unique<Seat>(std::make_unique<session::LiveRun>(situation, options));
    if (place != Place::kBooking) {
      seat->act("take", "door_key");
      seat->act("go", std::string(unit::placeInfo(place).name), "skip");
    }
    seat->passRealTime(0.2);
    style.frame = drawing::calcSheetFrame(window);
    const QRectF world = style.frame.world;
    const double top = world.top() + Plate::bandHeight(place);
    const PlateContext context{
        *seat, style, shortcuts,
        QRectF(world.left(), top, world.width(), 836 + style.frame.spare - top),
        QRectF(world.left(), world.top(), world.width(), top - world.top())};
    plate = second ? makeSecondPlate(place, context, nullptr) : makePlate(place, context, nullptr);
    plate->resize(window);
    plate->show();
    plate->refresh();
  }

  /// A control's new place is in the Frame of the next tick.
  double valueOf(Control c) {
    seat->passRealTime(0.02);
    plate->refresh();
    return seat->value(c);
  }

  Part* part(std::string_view name) {
    return plate->findPart(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
  }
  Part* part(Item i) { return part(unit::itemInfo(i).name); }
  Part* part(Control c) { return part(unit::controlInfo(c).name); }
  QPoint on(const Part* widget, QPointF sheet) const {
    return style.frame.toWindow().map(sheet).toPoint() - widget->pos();
  }
};

QRectF labelOf(const ItemPart& item) {
  const double w = drawing::textWidth(item.accessibleName(), drawing::kText, true) + 26;
  const ItemShape& shape = item.shape();
  const double left = shape.label_ends ? shape.label.x() - w : shape.label.x();
  return {left, shape.label.y() - 16, w, 21};
}

const std::vector<QSize> kWindows{{1280, 720}, {1920, 1080}, {1600, 1000}, {1280, 960}};

struct Sheet {
  Place place;
  bool second = false;
};
const std::vector<Sheet> kSheets{{Place::kCab1, true}, {Place::kCab2, true}, {Place::kCupboard},
                                 {Place::kSaloon},     {Place::kBooking},    {Place::kLineside}};

TEST(RoomPlates, HoldEveryItemAndControlOfTheirPlace) {
  for (const Sheet& sheet : kSheets) {
    if (sheet.second) continue;
    Room room(sheet.place, {1280, 720});
    for (const unit::ItemInfo& info : unit::itemTable()) {
      if (info.place != sheet.place) continue;
      EXPECT_NE(qobject_cast<ItemPart*>(room.part(info.id)), nullptr) << info.name;
    }
    for (const unit::ControlInfo& info : unit::controlTable()) {
      if (!unit::contains(info.places, sheet.place)) continue;
      EXPECT_NE(qobject_cast<ControlPart*>(room.part(info.id)), nullptr) << info.name;
    }
  }
}

// Desk and what is behind it have each thing between them, and none twice.
TEST(RoomPlates, TheTwoPlatesOfACabHaveAllOfIt) {
  for (Place cab : {Place::kCab1, Place::kCab2}) {
    Room desk(cab, {1280, 720}), round(cab, {1280, 720}, true);
    int items = 0, controls = 0;
    for (const unit::ItemInfo& info : unit::itemTable()) {
      if (info.place != cab) continue;
      ++items;
      EXPECT_NE(desk.part(info.id) != nullptr, round.part(info.id) != nullptr) << info.name;
    }
    for (const unit::ControlInfo& info : unit::controlTable()) {
      if (!unit::contains(info.places, cab)) continue;
      ++controls;
      EXPECT_NE(desk.part(info.id) != nullptr, round.part(info.id) != nullptr) << info.name;
    }
    EXPECT_EQ(items, 16);
    EXPECT_EQ(controls, 25);
    EXPECT_GE(round.plate->items().size(), 5U);
  }
}

TEST(RoomPlates, NamesStandApartAndInside) {
  for (const Sheet& sheet : kSheets) {
    for (QSize window : kWindows) {
      Room room(sheet.place, window, sheet.second);
      const QRectF world = room.style.frame.world;
      for (const ItemPart* a : room.plate->items()) {
        const QRectF box = labelOf(*a);
        EXPECT_TRUE(world.contains(box)) << qPrintable(a->objectName()) << " " << window.width();
        for (const ItemPart* b : room.plate->items()) {
          if (a < b) {
            EXPECT_FALSE(box.intersects(labelOf(*b)))
                << qPrintable(a->objectName()) << " / " << qPrintable(b->objectName());
          }
        }
      }
    }
  }
}

// What a mouse meets in the middle of a thing is that thing, and all of it lies in the window.
TEST(RoomPlates, ThingsLieFree) {
  for (const Sheet& sheet : kSheets) {
    for (QSize window : kWindows) {
      Room room(sheet.place, window, sheet.second);
      for (const Part* part : room.plate->parts())
        EXPECT_TRUE(room.plate->rect().contains(part->geometry()))
            << qPrintable(part->objectName());
      for (const ItemPart* item : room.plate->items()) {
        const QPoint middle =
            room.style.frame.toWindow().map(item->shape().thing.center()).toPoint();
        EXPECT_EQ(room.plate->childAt(middle), item)
            << qPrintable(item->objectName()) << " " << window.width();
      }
    }
  }
}

TEST(RoomPlates, AClickLooksAtAThing) {
  for (Item item : {Item::kCab1Extinguisher, Item::kVolts, Item::kSaloonDoors, Item::kRepairBook}) {
    const Place place = unit::itemInfo(item).place;
    Room room(place, {1280, 720}, unit::cabOf(place) >= 0);
    Part* part = room.part(item);
    ASSERT_NE(part, nullptr);
    const QPointF middle = qobject_cast<ItemPart*>(part)->shape().thing.center();
    QTest::mouseClick(part, Qt::LeftButton, {}, room.on(part, middle));
    EXPECT_EQ(room.seat->unit().world().trainee.looking, item) << unit::itemInfo(item).name;
  }
}

TEST(RoomPlates, ControlsMoveByMouseAndKey) {
  Room cab(Place::kCab1, {1280, 720}, true);
  Part* lock = cab.part(Control::kCab1Lock);
  QTest::keyClick(lock, Qt::Key_Space);
  const double locked = cab.valueOf(Control::kCab1Lock);
  QTest::mouseClick(lock, Qt::LeftButton, {}, lock->rect().center());
  EXPECT_NE(cab.valueOf(Control::kCab1Lock), locked);
  Part* valve = cab.part(Control::kCab1GuardsValve);
  QTest::keyClick(valve, Qt::Key_Up);
  EXPECT_NEAR(cab.valueOf(Control::kCab1GuardsValve), 0.05, 1e-6);
  QTest::keyClick(valve, Qt::Key_Space);
  EXPECT_EQ(cab.valueOf(Control::kCab1GuardsValve), 1);
  Part* display = cab.part(Control::kCab1Display);
  for (int k = 1; k <= 3; ++k) {
    QTest::mouseClick(display, Qt::LeftButton, {}, {50, 30});
    EXPECT_EQ(cab.valueOf(Control::kCab1Display), k);
  }
  QTest::keyClick(display, Qt::Key_Down);
  EXPECT_EQ(cab.valueOf(Control::kCab1Display), 2);

  Room cupboard(Place::kCupboard, {1920, 1080});
  Part* knife = cupboard.part(Control::kBatterySwitch);
  const double before = cupboard.valueOf(Control::kBatterySwitch);
  QTest::keyClick(knife, Qt::Key_Space);
  EXPECT_NE(cupboard.valueOf(Control::kBatterySwitch), before);
}

TEST(RoomPlates, TurningRoundIsAsked) {
  Room cab(Place::kCab2, {1280, 720}, true);
  QSignalSpy asked(cab.plate.get(), &Plate::turnAsked);
  QTest::keyClick(cab.part(std::string_view("turn")), Qt::Key_Return);
  EXPECT_EQ(asked.count(), 1);
  EXPECT_EQ(makeSecondPlate(Place::kSaloon,
                            {*cab.seat, cab.style, cab.shortcuts, QRectF(), QRectF()}, nullptr),
            nullptr);
}

TEST(Things, AreTakenFromTheirPegsAndHungBack) {
  Room room(Place::kBooking, {1280, 720});
  Part* peg = room.part(std::string_view("thing.brake_handle"));
  ASSERT_NE(peg, nullptr);
  ASSERT_TRUE(room.seat->isHere(Object::kBrakeHandle));
  QTest::mouseClick(peg, Qt::LeftButton, {}, peg->rect().center());
  room.plate->refresh();
  EXPECT_TRUE(room.seat->isCarried(Object::kBrakeHandle));
  EXPECT_EQ(peg->role().value, ThingPart::tr("with you"));
  QTest::keyClick(peg, Qt::Key_Return);
  room.plate->refresh();
  EXPECT_TRUE(room.seat->isHere(Object::kBrakeHandle));
  EXPECT_EQ(peg->role().value, ThingPart::tr("hangs here"));
}

TEST(Things, LyingAboutAreShownInARowAndTaken) {
  Room there(Place::kLineside, {1280, 720});
  there.seat->act("put", "door_key");
  there.plate->refresh();
  auto* row = qobject_cast<ThingRow*>(there.part(std::string_view("things")));
  ASSERT_NE(row, nullptr);
  EXPECT_EQ(row->lying(), std::vector<Object>{Object::kDoorKey});
  EXPECT_TRUE(row->isVisible());
  QTest::keyClick(row, Qt::Key_Return);
  there.plate->refresh();
  EXPECT_TRUE(there.seat->isCarried(Object::kDoorKey));
  EXPECT_FALSE(row->isVisible());
}

// Pictures of the same plate in two states differ where the state is drawn.
TEST(RoomPlates, TheDrawingFollowsTheState) {
  const auto picture = [](Room& room) {
    room.plate->refresh();
    return room.plate->grab().toImage();
  };
  Room saloon(Place::kSaloon, {1280, 720});
  const QImage shut = picture(saloon);
  EXPECT_EQ(picture(saloon), shut);
  ASSERT_TRUE(saloon.seat->setControl(Control::kDoor1, 1).accepted);
  EXPECT_EQ(saloon.valueOf(Control::kDoor1), 1);
  EXPECT_NE(picture(saloon), shut);
  Room cupboard(Place::kCupboard, {1280, 720});
  const QImage before = picture(cupboard);
  const double now = cupboard.seat->value(Control::kBreakerLamps);
  ASSERT_TRUE(cupboard.seat->setControl(Control::kBreakerLamps, 1 - now).accepted);
  EXPECT_EQ(cupboard.valueOf(Control::kBreakerLamps), 1 - now);
  EXPECT_NE(picture(cupboard), before);
}

TEST(RoomPlates, InTheDarkAWordSaysSo) {
  Room day(Place::kSaloon, {1280, 720}), night(Place::kSaloon, {1280, 720}, false, true);
  EXPECT_NE(day.plate->grab().toImage(), night.plate->grab().toImage());
  EXPECT_LT(night.seat->value(unit::Signal::kLight), 0.5);
}

}  // namespace
}  // namespace cabwright::cab
