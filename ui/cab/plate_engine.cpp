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

constexpr double kDialR = 58, kTankDialR = 54, kThrottleR = 62;
constexpr double kDrivePitch = 90;

QRectF around(QPointF centre, double left, double up, double right, double down) {
  return {centre.x() - left, centre.y() - up, left + right, up + down};
}

}  // namespace

EnginePlate::EnginePlate(int line, const PlateContext& context, QWidget* parent)
    : Plate(context, parent), line_(line), mirrored_(line == 1) {
  g_.width = area().width();
  g_.stretch = std::max(0.0, area().width() - 1180);
  g_.lower = context.style.frame.spare * 0.55;
  panel_ = 300 + g_.stretch * 0.3;
  fuel_ = 756 + g_.stretch * 0.65;
  drive_ = 948 + g_.stretch;
  turned_tick_ = context.seat.run().tick();
  addGauges();
  addPanel();
  addDriveControls();
  addItems();  // last: a hasp or a union beside a control lies above the room that control takes
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

QPointF EnginePlate::onPanel(double x, double y) const {
  const double left = mirrored_ ? area().right() - panel_ - kPanelWidth : area().left() + panel_;
  return {left + x, area().top() + kLowerTop + g_.lower + y};
}

// Labels are given where they begin in the drawing of engine 1; mirrored they end there.
void EnginePlate::addThing(Item of_engine1, const QRectF& thing, QPointF label, bool leader) {
  addItem(item(of_engine1), {.thing = box(thing.x(), thing.y(), thing.width(), thing.height()),
                             .label = at(label.x(), label.y()),
                             .label_ends = mirrored_,
                             .leader = leader});
}

void EnginePlate::addPanelThing(Item of_engine1, const QRectF& thing, QPointF label, bool leader) {
  addItem(item(of_engine1), {.thing = QRectF(onPanel(thing.x(), thing.y()), thing.size()),
                             .label = onPanel(label.x(), label.y()),
                             .leader = leader});
}

void EnginePlate::addItems() {
  const double low = g_.lower, w = g_.stretch;
  addThing(Item::kEngine1Coolant, {74, 58, 36, 40}, {132, 78}, false);
  addThing(Item::kEngine1AirFilter, {250, 44, 74, 42}, {238, 108}, false);
  addThing(Item::kEngine1Exhaust, {400, 44, 110, 36}, {392, 99}, false);
  addThing(Item::kEngine1Bottle, {1040 + w, 47, 114, 32}, {1052 + w, 106}, false);
  addThing(Item::kEngine1Oil, {199, 92, 17, 18}, {136, 108}, false);
  addThing(Item::kEngine1Fan, {24, 159, 90, 90}, {30, 314});
  addThing(Item::kEngine1Coupling, {584, 150, 66, 76}, {580, 298});
  addThing(Item::kEngine1Gearbox, {700, 144, 116, 90}, {706, 298});
  const QPointF c = g_.wheel();
  addThing(Item::kEngine1FinalDrive, {c.x() - 40, c.y() - 40, 80, 80}, {c.x() - 214, 306});
  addThing(Item::kEngine1Tray, {312, 296, 80, 56}, {304, 384});
  addThing(Item::kEngine1People, {464, 306, 60, 44}, {486, 384});
  const QPointF crank = g_.freeEnd();
  addThing(Item::kEngine1Belts, {crank.x() - 58, crank.y() - 62, 40, 40}, {0, crank.y() + 24});
  addThing(Item::kEngine1Cover, {crank.x() - 9, crank.y() + kCrankPulleyR + 5, 18, 18},
           {0, crank.y() + 86});
  addPanelThing(Item::kEngine1Switch, {kHasp.x() - 7, kHasp.y() - 14, 14, 24}, {260, 172}, false);
  addPanelThing(Item::kEngine1Throttle, {156, 251, 30, 14}, {196, 303}, true);
  addThing(Item::kEngine1Fuel, {fuel_ + 50, 562 + low, 24, 36}, {fuel_ + 84, 590 + low}, false);
  addThing(Item::kEngine1FuelCock, {fuel_ + 106, 656 + low, 22, 32}, {fuel_ + 4, 708 + low}, false);
}

void EnginePlate::addGauges() {
  const double low = g_.lower;
  const auto dial = [&](QPointF centre, double r, const drawing::DialScale& scale, Signal signal,
                        const QString& name) {
    addShown<DialPart>(around(centre, r + 8, r + 8, r + 8, r + 40), centre, r, scale,
                       std::vector<DialNeedleOf>{{signal, drawing::NeedleKind::kSolid, {}}}, name);
  };
  dial(onPanel(70, 66), kDialR, {.low = 0, .high = 80, .major = 20, .minor = 5, .unit = tr("psi")},
       of(Signal::kEngine1OilGauge, Signal::kEngine2OilGauge), tr("Oil pressure"));
  dial(onPanel(198, 66), kDialR,
       {.low = 0, .high = 150, .major = 50, .minor = 10, .unit = tr("°C")},
       of(Signal::kEngine1CoolantGauge, Signal::kEngine2CoolantGauge), tr("Coolant"));
  dial(at(fuel_ + 89, 463 + low), kTankDialR,
       {.low = 0, .high = 100, .major = 50, .minor = 10, .unit = tr("%")},
       of(Signal::kEngine1FuelGauge, Signal::kEngine2FuelGauge), tr("Tank"));
}

void EnginePlate::addPanel() {
  const QPointF turn = onPanel(336, 72);
  auto* isolating = addControl<KeySwitchPart>(
      around(turn, 84, 66, 114, 80), control(Control::kEngine1Switch),
      QStringLiteral("engine.switch"), turn, std::vector<double>{-50, 0, 50});
  isolating->setName({});
  const QPointF pivot = onPanel(124, 258);
  auto* throttle =
      addControl<LeverPart>(around(pivot, 110, 94, 110, 60), control(Control::kEngine1HandThrottle),
                            QStringLiteral("engine.throttle"),
                            LeverShape{.pivot = pivot,
                                       .radius = kThrottleR,
                                       .angles = {{0, -46}, {0.3, -17}, {1, 46}},
                                       .wedge = std::pair{-34.0, 46.0},
                                       .step = 0.05});
  throttle->setNamed(false);
  const auto button = [&](double x, Control which, const char* command, ButtonSign sign,
                          const QString& word) {
    const QPointF centre = onPanel(x, 226);
    auto* part = addControl<ButtonPart>(around(centre, 30, 27, 80, 54), control(which),
                                        QString::fromLatin1(command), centre, sign);
    part->setLabel(word);
    part->setKeyBelow(true);
    return part;
  };
  button(254, Control::kEngine1Start, "engine.start", ButtonSign::kStart, tr("Start"))
      ->setHeldScale(15);
  button(362, Control::kEngine1Stop, "engine.stop", ButtonSign::kStop, tr("Stop"));
}

void EnginePlate::addDriveControls() {
  const double low = g_.lower;
  const auto toggle = [&](QPointF centre, Control which) {
    return addControl<TogglePart>(around(centre, 114, 28, 114, 60), control(which), QString(),
                                  centre);
  };
  toggle(at(fuel_ + 89, 640 + low), Control::kEngine1FuelCock)->setNamed(false);
  const double x = drive_ + 119, y = 396 + low;
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
  paintFuelTank(pen, QRectF(fuel_ + 15, 398 + low, 148, 162), 640 + low);
  pen.rect({drive_ + 2, 362 + low, 230, 374}, {}, Tone::kNone, 4);
  pen.line({drive_ + 16, 397 + low + 2 * kDrivePitch + 60},
           {drive_ + 216, 397 + low + 2 * kDrivePitch + 60}, {drawing::kHairline, Tone::kRule});
  pen.pop();
  paintPanel(pen);
  paintWords(pen);
}

void EnginePlate::paintPanel(drawing::Pen& pen) const {
  pen.rect(QRectF(onPanel(0, 0), QSizeF(kPanelWidth, kPanelHeight)), {}, Tone::kNone, 4);
  // From the throttle's pivot a rod goes to the pump.
  pen.rect(QRectF(onPanel(124, 254), QSizeF(62, 8)), {drawing::kThin}, Tone::kFace, 3);
  pen.circle(onPanel(180, 258), 5, {drawing::kThin}, Tone::kPaper);
}

void EnginePlate::paintWords(drawing::Pen& pen) const {
  const Anchor start = mirrored_ ? Anchor::kEnd : Anchor::kStart;
  const Anchor end = mirrored_ ? Anchor::kStart : Anchor::kEnd;
  const auto quiet = [](Anchor anchor) {
    return drawing::Words{.anchor = anchor, .tone = Tone::kInk2};
  };
  pen.text(at(0, 384), tr("Section on the crank centre line"), quiet(start));
  pen.text(at(0, 730 + g_.lower), tr("View on the free end"), quiet(start));
  const QPointF comp = compressorAt(g_), exh = exhausterAt(g_), gen = generatorAt(g_);
  pen.text(at(std::max(comp.x(), 54.0), comp.y() - 58), tr("Compressor"), quiet(Anchor::kMiddle));
  pen.text(at(exh.x(), exh.y() - 58), tr("Exhauster"), quiet(Anchor::kMiddle));
  pen.text(at(288, gen.y() + 52), tr("Generator"), quiet(end));
}

}  // namespace cabwright::cab
