// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_cab_round.h"

#include "cab/draw_cab_round.h"
#include "cab/names.h"
#include "cab/show_parts.h"
#include "cab/switch_parts.h"
#include "cab/thing_part.h"
#include "drawing/furniture.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Pen;
using drawing::Tone;
using unit::Control;
using unit::Item;
using unit::Signal;

namespace {

constexpr double kGaugeR = 74;
constexpr double kFloorHeight = 96, kThingsHeight = 62;
constexpr double kRowPitch = 106;  // of the switches, at least

QRectF around(QPointF centre, double left, double up, double right, double down) {
  return {centre.x() - left, centre.y() - up, left + right, up + down};
}

Item itemOfCab(Item of_cab1, int cab) {
  const auto stride =
      static_cast<int>(Item::kCab2Detonators) - static_cast<int>(Item::kCab1Detonators);
  return static_cast<Item>(static_cast<int>(of_cab1) + cab * stride);
}

}  // namespace

CabRoundPlate::CabRoundPlate(int cab, const PlateContext& context, QWidget* parent)
    : RoomPlate(context, parent), cab_(cab), at_(makeLayout()) {
  addBackWall();
  addGuardsCorner();
  addDoor();
  addSwitches();
  const QRectF row(area().left(), area().bottom() - kThingsHeight + 2, area().width(),
                   kThingsHeight - 2);
  addShown<ThingRow>(row, row, std::vector<unit::Object>{});
  auto* turn =
      addControl<TurnPart>({}, tr("Turn to the desk"), QPointF(area().right(), area().top() + 18));
  turn->setArea({area().right() - turn->width() - 4, area().top() - 8, turn->width() + 8, 36});
  connect(turn, &TurnPart::turned, this, &Plate::turnAsked);
}

double CabRoundPlate::rowPitch() const { return kRowPitch + spare() * 0.2; }

CabRoundPlate::Layout CabRoundPlate::makeLayout() const {
  Layout l;
  // In a taller window the things hang lower and farther apart.
  const double top = area().top() + 36 + spare() * 0.1, second = top + spare() * 0.25;
  const double third = top + spare() * 0.5;
  l.wall_top = area().top() + 34;
  l.floor = area().bottom() - kThingsHeight - kFloorHeight;
  l.back_end = across(672);
  l.door_left = across(700);
  l.door_right = l.door_left + 140;
  l.panel_left = area().right() - 300;
  l.canister = {across(46), top + 58, 84, 92};
  l.flags = {across(172), top + 44, 76, 106};
  l.clips = {across(40), second + 204, 200, 62};
  l.extinguisher = {across(276), top + 50, 76, 196};
  l.first_aid = {across(384), top + 62, 104, 82};
  l.book = {across(384), second + 186, 104, 126};
  l.gauge = {across(576), top + 124};
  l.valve = {across(576), third + 330};
  l.cock = {across(136), third + 366};
  l.door = {l.door_left, l.wall_top + 20, 140, l.floor - l.wall_top - 20};
  l.lock = {l.door_right - 30, l.door.top() + 202 + spare() * 0.2};
  l.panel = {l.panel_left, l.wall_top + 8, 300, 3 * rowPitch() + 20};
  l.seat = {l.panel_left + 84, l.floor - 88, 132, 82};
  l.floor_box = {area().left(), l.floor, area().width(), kFloorHeight - 8};
  return l;
}

QPointF CabRoundPlate::darkWords() const { return {area().center().x() - 60, area().top() + 18}; }

void CabRoundPlate::addNamed(Item of_cab1, const QRectF& thing, QPointF label, bool leader) {
  addItem(itemOfCab(of_cab1, cab_), {.thing = thing, .label = label, .leader = leader});
}

void CabRoundPlate::addBackWall() {
  const Layout& l = at_;
  const double names = l.canister.top() - 28;
  addNamed(Item::kCab1Detonators, l.canister, {l.canister.left() - 12, names}, false);
  addNamed(Item::kCab1Flags, l.flags, {l.flags.left() + 10, names}, false);
  addNamed(Item::kCab1Clips, l.clips, {l.clips.left() + 78, l.clips.bottom() + 46}, false);
  addNamed(Item::kCab1Extinguisher, l.extinguisher.adjusted(2, 0, -2, 0),
           {l.extinguisher.left() - 22, names}, false);
  addNamed(Item::kCab1FirstAid, l.first_aid, {l.first_aid.left() + 16, names}, false);
  addNamed(Item::kCab1Book, l.book, {l.book.left() - 54, l.book.bottom() + 32}, false);
  const QRectF seal = sealBox(l.cock);
  addNamed(Item::kCab1Seal, seal, {seal.right() + 34, seal.bottom() + 12}, false);
  const QPointF c = l.cock;
  addControl<DrawnPart>(around(c, 100, 44, 46, 66), control(Control::kCab1DeviceCock), QString(),
                        [c](Pen& pen, const DrawnState& state) {
                          paintSealedCock(pen, c, state);
                          paintControlWord(pen, c + QPointF(-96, 42), Anchor::kStart, state, 118);
                        })
      ->setArea(around(c, 100, 44, 68, 60),
                {around(c, 42, 44, 42, 22), around(c, 100, -23, 22, 60)});
}

void CabRoundPlate::addGuardsCorner() {
  const Layout& l = at_;
  const Signal gauge = cab_ == 0 ? Signal::kCab1GuardsGauge : Signal::kCab2GuardsGauge;
  auto* dial = addShown<DialPart>(
      around(l.gauge, kGaugeR + 12, kGaugeR + 40, kGaugeR + 40, kGaugeR + 40), l.gauge, kGaugeR,
      drawing::DialScale{.low = 0,
                         .high = 30,
                         .major = 5,
                         .minor = 1,
                         .unit = tr("inHg"),
                         .marks = {{15, QStringLiteral("15")}, {21, QStringLiteral("21")}}},
      std::vector<DialNeedleOf>{{gauge, drawing::NeedleKind::kSolid, {}}},
      nameOf(itemOfCab(Item::kCab1GuardsGaugeItem, cab_)));
  dial->setNamed(false);
  addNamed(Item::kCab1GuardsGaugeItem, around(l.gauge, kGaugeR, kGaugeR, kGaugeR, kGaugeR),
           {l.gauge.x() - 62, l.gauge.y() + kGaugeR + 34}, false);
  const QPointF c = l.valve;
  addControl<DrawnPart>(around(c, 40, 72, 76, 62), control(Control::kCab1GuardsValve), QString(),
                        [c](Pen& pen, const DrawnState& state) {
                          paintGuardsValve(pen, c, state);
                          paintControlWord(pen, c + QPointF(6, 50), Anchor::kStart, state, 72);
                        })
      ->setArea(around(c, 92, 72, 92, 62), {around(c, 34, 72, 76, 36), around(c, 40, -34, 78, 62)});
  const QRectF strainer = strainerBox(c);
  addNamed(Item::kCab1GuardsValveItem, strainer, {strainer.left() - 56, strainer.bottom() + 30},
           false);
}

void CabRoundPlate::addDoor() {
  const Layout& l = at_;
  const QPointF c = l.lock;
  addControl<DrawnPart>(around(c, 74, 44, 56, 70), control(Control::kCab1Lock), QString(),
                        [c](Pen& pen, const DrawnState& state) {
                          paintDoorLock(pen, c, state);
                          paintControlWord(pen, c + QPointF(18, 62), Anchor::kEnd, state, 120);
                        });
  addNamed(Item::kCab1LockItem, {l.door.left() + 38, l.door.bottom() - 106, 64, 56},
           {l.door.left() + 8, l.door.bottom() - 134}, false);
  addNamed(Item::kCab1Floor, {l.floor_box.left() + 150, l.floor_box.top() + 22, 96, 44},
           {l.floor_box.left() + 34, l.floor_box.top() + 51}, false);
}

void CabRoundPlate::addSwitches() {
  const Layout& l = at_;
  const auto cell = [&](int column, int row) {
    return QPointF(l.panel.left() + 79 + 146 * column, l.panel.top() + 46 + rowPitch() * row);
  };
  const auto toggle = [&](int column, int row, Control c, const QString& command) {
    const QPointF centre = cell(column, row);
    addControl<TogglePart>(around(centre, 74, 30, 74, 62), c, command, centre);
  };
  toggle(0, 0, control(Control::kCab1White), {});
  toggle(1, 0, control(Control::kCab1Red), {});
  toggle(0, 1, control(Control::kCab1CabLight), {});
  toggle(1, 1, Control::kSaloonLights, {});
  toggle(0, 2, control(Control::kCab1Wiper), QStringLiteral("cab.wiper"));
  const QPointF wheel = cell(1, 2) + QPointF(0, -4);
  const Control display = control(Control::kCab1Display);
  addControl<DrawnPart>(around(wheel, 72, 40, 72, 66), display, QString(),
                        [wheel, display](Pen& pen, const DrawnState& state) {
                          paintNumberWheel(pen, wheel, state, QStringLiteral("–"));
                          paintControlName(pen, wheel + QPointF(0, 56), nameOf(display), state,
                                           140);
                        });
}

void CabRoundPlate::paintGround(Pen& pen) const {
  const Layout& l = at_;
  const double caption = area().top() + 18;
  drawing::paintCaption(pen, {area().left(), caption}, l.back_end - area().left(),
                        tr("Back wall of cab %1").arg(cab_ + 1));
  drawing::paintCaption(pen, {l.door_left - 9, caption}, 196, tr("Door side"));
  const drawing::Stroke faint{drawing::kThin, Tone::kRule, {}, false};
  // Walls with their waist rail; things stand before it.
  const QRectF back(area().left(), l.wall_top, l.back_end - area().left(), l.floor - l.wall_top);
  pen.rect(back, {}, Tone::kNone, 3);
  pen.line({l.door_right + 9, l.floor}, {area().right(), l.floor}, {});
  const double rail = l.floor - 64;
  for (double y : {rail, rail + 8}) pen.line({back.left(), y}, {back.right(), y}, faint);
  paintShelf(pen, l.canister.left() - 16, l.flags.right() + 6, l.canister.bottom());
  paintCanister(pen, l.canister);
  paintRolledFlags(pen, l.flags);
  paintTrackClips(pen, l.clips);
  paintExtinguisher(pen, l.extinguisher);
  paintFirstAidBox(pen, l.first_aid);
  paintBookAndPlates(pen, l.book);
  // The train pipe comes up from the floor, to gauge and valve; the device's pipe along the wall.
  const double pipe = l.gauge.x() + kGaugeR + 8;
  paintPipe(pen, {{{pipe, l.floor}, {pipe, l.gauge.y()}, {l.gauge.x() + kGaugeR - 4, l.gauge.y()}}},
            5);
  paintPipe(pen,
            {{{l.cock.x() - 60, l.cock.y()},
              {back.left() + 16, l.cock.y()},
              {back.left() + 16, l.floor}}},
            6);
  // Beyond the cock it goes through the wall.
  pen.rect({l.cock.x() + 62, l.cock.y() - 17, 9, 34}, {}, Tone::kFace, 2);
  paintCockPipe(pen, l.cock);
  paintValvePipe(pen, l.valve, pipe - l.valve.x());
  const QRectF seal = sealBox(l.cock);
  const QPointF lead(seal.center().x() + 7, seal.bottom() - 7);
  drawing::paintLeader(pen, lead, lead + QPointF(16, 13), {seal.right() + 28, lead.y() + 13});
  paintCabDoor(pen, l.door, isDarkOutside());
  pen.rect(l.panel, {}, Tone::kFace, 4);
  for (int row = 1; row < 3; ++row) {
    const double y = l.panel.top() + 5 + rowPitch() * row;
    pen.line({l.panel.left() + 12, y}, {l.panel.right() - 12, y},
             {drawing::kHairline, Tone::kRule, {}, false});
  }
  paintTipUpSeat(pen, l.seat);
  paintCabFloor(pen, l.floor_box, l.door_left, l.door_right);
}

}  // namespace cabwright::cab
