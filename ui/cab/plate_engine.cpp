// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_engine.h"

#include "cab/lever_part.h"
#include "cab/names.h"
#include "cab/show_parts.h"
#include "cab/switch_parts.h"
#include "drawing/furniture.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::ButtonSign;
using drawing::Tone;
using unit::Control;
using unit::Item;
using unit::Signal;

namespace {

constexpr double kDialR = 54, kTankDialR = 46, kThrottleR = 62;
constexpr double kDrivePitch = 90;
constexpr QPointF kStick{560, 372};

QRectF around(QPointF centre, double left, double up, double right, double down) {
  return {centre.x() - left, centre.y() - up, left + right, up + down};
}

}  // namespace

EnginePlate::EnginePlate(int line, const PlateContext& context, QWidget* parent)
    : Plate(context, parent), line_(line), mirrored_(line == 1) {
  g_.width = area().width();
  g_.stretch = std::max(0.0, area().width() - 1180);
  g_.lower = context.style.frame.spare * 0.55;
  panel_ = 318 + g_.stretch * 0.3;
  fuel_ = 762 + g_.stretch * 0.65;
  drive_ = 948 + g_.stretch;
  turned_tick_ = context.seat.run().tick();
  addItems();
  addGauges();
  addPanel();
  addDriveControls();
  seen_ = see();
}

Item EnginePlate::item(Item of_engine1) const {
  const auto stride = unit::indexOf(Item::kEngine2People) - unit::indexOf(Item::kEngine1People);
  return static_cast<Item>(unit::indexOf(of_engine1) + static_cast<std::size_t>(line_) * stride);
}

QPointF EnginePlate::at(double x, double y) const {
  return {mirrored_ ? area().right() - x : area().left() + x, area().top() + y};
}

QRectF EnginePlate::box(double x, double y, double w, double h) const {
  return QRectF(at(mirrored_ ? x + w : x, y), QSizeF(w, h));
}

// Labels are given where they begin in the drawing of engine 1; mirrored they end there.
void EnginePlate::addThing(Item of_engine1, const QRectF& thing, QPointF label, bool leader,
                           QPointF bend) {
  ItemShape shape;
  shape.thing = box(thing.x(), thing.y(), thing.width(), thing.height());
  shape.label = at(label.x(), label.y());
  shape.label_ends = mirrored_;
  if (!bend.isNull()) shape.bend = at(bend.x(), bend.y());
  shape.leader = leader;
  addItem(item(of_engine1), shape);
}

void EnginePlate::addItems() {
  const double low = g_.lower, w = g_.stretch;
  addThing(Item::kEngine1Coolant, {84, 56, 18, 44}, {122, 78}, false);
  addThing(Item::kEngine1AirFilter, {232, 44, 92, 42}, {232, 108}, false);
  addThing(Item::kEngine1Exhaust, {400, 44, 110, 36}, {392, 101}, false);
  addThing(Item::kEngine1Bottle, {1040 + w, 47, 114, 32}, {1052 + w, 106}, false);
  addThing(Item::kEngine1Oil, {199, 92, 17, 18}, {140, 116}, false);
  addThing(Item::kEngine1Fan, {24, 159, 90, 90}, {30, 314});
  addThing(Item::kEngine1Coupling, {584, 150, 66, 76}, {580, 298});
  addThing(Item::kEngine1Gearbox, {700, 144, 116, 90}, {706, 298});
  const QPointF c = g_.wheel();
  addThing(Item::kEngine1FinalDrive, {c.x() - 40, c.y() - 40, 80, 80}, {c.x() - 202, 306}, true,
           {c.x() - 120, 276});
  addThing(Item::kEngine1Tray, {250, 296, 90, 56}, {238, 384});
  addThing(Item::kEngine1People, {452, 306, 60, 44}, {436, 384});
  const QPointF crank = g_.freeEnd(), comp = compressorAt(g_);
  addThing(Item::kEngine1Belts, {crank.x() - 58, crank.y() - 62, 40, 40}, {0, crank.y() + 24});
  addThing(Item::kEngine1Cover, {crank.x() - 9, crank.y() + kCrankPulleyR + 5, 18, 18},
           {0, crank.y() + 86});
  Q_UNUSED(comp)
  addThing(Item::kEngine1Switch, {panel_ + 268, 506 + low, 14, 24}, {panel_ + 258, 590 + low},
           false);
  addThing(Item::kEngine1Throttle, {panel_ + 140, 664 + low, 34, 20}, {panel_ + 196, 722 + low},
           true);
  addThing(Item::kEngine1Fuel, {fuel_ + 50, 562 + low, 24, 30}, {fuel_ + 84, 592 + low}, false);
  addThing(Item::kEngine1FuelCock, {fuel_ + 50, 672 + low, 78, 8}, {fuel_ + 30, 714 + low}, false);
}

void EnginePlate::addGauges() {
  const double low = g_.lower;
  const auto dial = [&](QPointF centre, double r, const drawing::DialScale& scale, Signal signal,
                        const QString& name) {
    addShown<DialPart>(around(centre, r + 8, r + 8, r + 8, r + 40), centre, r, scale,
                       std::vector<DialNeedleOf>{{signal, drawing::NeedleKind::kSolid, {}}}, name);
  };
  dial(at(panel_ + 70, 490 + low), kDialR,
       {.low = 0, .high = 80, .major = 20, .minor = 5, .unit = tr("psi")},
       of(Signal::kEngine1OilGauge, Signal::kEngine2OilGauge), tr("Oil pressure"));
  dial(at(panel_ + 196, 490 + low), kDialR,
       {.low = 0, .high = 120, .major = 20, .minor = 5, .unit = tr("°C")},
       of(Signal::kEngine1CoolantGauge, Signal::kEngine2CoolantGauge), tr("Coolant"));
  dial(at(fuel_ + 89, 480 + low), kTankDialR,
       {.low = 0, .high = 100, .major = 50, .minor = 10, .unit = tr("%")},
       of(Signal::kEngine1FuelGauge, Signal::kEngine2FuelGauge), tr("Tank"));
}

void EnginePlate::addPanel() {
  const double low = g_.lower;
  const QPointF turn = at(panel_ + 332, 492 + low);
  auto* isolating = addControl<KeySwitchPart>(
      around(turn, 84, 66, 94, 80), control(Control::kEngine1Switch),
      QStringLiteral("engine.switch"), turn, std::vector<double>{-50, 0, 50});
  isolating->setName({});
  const QPointF pivot = at(panel_ + 112, 676 + low);
  auto* throttle =
      addControl<LeverPart>(around(pivot, 112, 96, 112, 64), control(Control::kEngine1HandThrottle),
                            QStringLiteral("engine.throttle"),
                            LeverShape{.pivot = pivot,
                                       .radius = kThrottleR,
                                       .angles = {{0, -46}, {0.3, -17}, {1, 46}},
                                       .wedge = std::pair{-34.0, 46.0},
                                       .step = 0.05});
  throttle->setNamed(false);
  const auto button = [&](double x, Control which, const char* command, ButtonSign sign,
                          const QString& word) {
    const QPointF centre = at(x, 636 + low);
    auto* part = addControl<ButtonPart>(around(centre, 30, 27, 84, 54), control(which),
                                        QString::fromLatin1(command), centre, sign);
    part->setLabel(word);
    part->setKeyBelow(true);
    return part;
  };
  // Start stands left of Stop on both engines, as their keys lie.
  const double first = panel_ + (mirrored_ ? 336 : 258), second = panel_ + (mirrored_ ? 230 : 358);
  button(mirrored_ ? first + 40 : first, Control::kEngine1Start, "engine.start", ButtonSign::kStart,
         tr("Start"))
      ->setHeldScale(15);
  button(mirrored_ ? second + 42 : second, Control::kEngine1Stop, "engine.stop", ButtonSign::kStop,
         tr("Stop"));
}

void EnginePlate::addDriveControls() {
  const double low = g_.lower;
  const auto toggle = [&](QPointF centre, Control which) {
    return addControl<TogglePart>(around(centre, 115, 28, 115, 60), control(which), QString(),
                                  centre);
  };
  toggle(at(fuel_ + 89, 646 + low), Control::kEngine1FuelCock)->setNamed(false);
  const double x = drive_ + 116, y = 390 + low;
  toggle(at(x, y), Control::kEngine1AirCock);
  toggle(at(x, y + kDrivePitch), Control::kEngine1Sleeve);
  toggle(at(x, y + 2 * kDrivePitch), Control::kEngine1Pin);
  toggle(at(x, y + 3 * kDrivePitch), Control::kEngine1Bottle);
}

void EnginePlate::pushDrawing(drawing::Pen& pen) const {
  pen.push({mirrored_ ? area().right() : area().left(), area().top()}, 0, mirrored_ ? -1 : 1, 1);
}

void EnginePlate::paintGround(drawing::Pen& pen) const {
  const double low = g_.lower;
  pushDrawing(pen);
  paintUnderframe(pen, g_);
  paintRadiator(pen);
  paintFilterAndExhaust(pen);
  paintEngineCasing(pen);
  paintCoupling(pen);
  paintGearbox(pen);
  paintFreeEnd(pen, g_);
  const QRectF tank(fuel_ + 23, 420 + low, 132, 140);
  paintFuelTank(pen, tank, {fuel_ + 89, 646 + low});
  pen.rect({panel_, 420 + low, 434, 316}, {}, Tone::kNone, 4);
  pen.line({panel_ + 18, 604 + low - 2}, {panel_ + 18, 604 + low - 2}, {drawing::kThin});
  // From the throttle's pivot a rod goes to the pump.
  pen.rect({panel_ + 112, 670 + low, 58, 8}, {drawing::kThin}, Tone::kFace, 3);
  pen.circle({panel_ + 166, 674 + low}, 4, {drawing::kThin}, Tone::kPaper);
  pen.pop();
  paintWords(pen);
}

void EnginePlate::paintWords(drawing::Pen& pen) const {
  const Anchor start = mirrored_ ? Anchor::kEnd : Anchor::kStart;
  const Anchor end = mirrored_ ? Anchor::kStart : Anchor::kEnd;
  const auto quiet = [](Anchor anchor) {
    return drawing::Words{.anchor = anchor, .tone = Tone::kInk2};
  };
  pen.text(at(0, 384), tr("Section on the crank"), quiet(start));
  pen.text(at(0, 730 + g_.lower), tr("View on the free end"), quiet(start));
  const QPointF comp = compressorAt(g_), exh = exhausterAt(g_), gen = generatorAt(g_);
  pen.text(at(std::max(comp.x(), 54.0), comp.y() - 58), tr("Compressor"), quiet(Anchor::kMiddle));
  pen.text(at(exh.x(), exh.y() - 58), tr("Exhauster"), quiet(Anchor::kMiddle));
  pen.text(at(306, gen.y() + 50), tr("Generator"), quiet(end));
  const QPointF from = at(comp.x(), comp.y() - 46), to = at(exh.x(), exh.y() - 48);
  drawing::paintCentreLine(pen, from, from);
  Q_UNUSED(to)
}

}  // namespace cabwright::cab
