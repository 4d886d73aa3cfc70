// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_cab.h"

#include <array>

#include "cab/lever_part.h"
#include "cab/names.h"
#include "cab/plate_cab_round.h"
#include "cab/show_parts.h"
#include "cab/switch_parts.h"
#include "drawing/furniture.h"
#include "drawing/handbrake.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::DialScale;
using drawing::LampColor;
using drawing::NeedleKind;
using drawing::Tone;
using unit::Control;
using unit::Item;
using unit::Signal;

namespace {

constexpr double kDialR = 102, kTachR = 74, kLeverR = 98;
constexpr double kWorld = 1180;  // width the columns are laid out for

QRectF around(QPointF centre, double left, double up, double right, double down) {
  return {centre.x() - left, centre.y() - up, left + right, up + down};
}

Signal ofCab(Signal of_cab1, int cab) {
  const auto stride = static_cast<int>(Signal::kCab2Air) - static_cast<int>(Signal::kCab1Air);
  return static_cast<Signal>(static_cast<int>(of_cab1) + cab * stride);
}

Item itemOfCab(Item of_cab1, int cab) {
  const auto stride =
      static_cast<int>(Item::kCab2Detonators) - static_cast<int>(Item::kCab1Detonators);
  return static_cast<Item>(static_cast<int>(of_cab1) + cab * stride);
}

}  // namespace

CabPlate::CabPlate(int cab, const PlateContext& context, QWidget* parent)
    : Plate(context, parent), cab_(cab) {
  const QRectF& a = area();
  const auto column = [&](double x) { return a.left() + (x - 40) * a.width() / kWorld; };
  x_ = {column(112), column(310), column(542), column(844), column(1116), column(1220)};
  const double spare = context.style.frame.spare;
  y_dial_ = 332 + spare * 0.3;
  y_name_ = y_dial_ + kDialR + 30;
  y_lamp_ = y_dial_ + 216 + spare * 0.2;
  y_pivot_ = y_lamp_ + 194 + spare * 0.3;
  addFirstColumn();
  addDials();
  addLamps();
  addLevers();
  addWall();
}

void CabPlate::addDials() {
  const auto dial = [&](QPointF centre, double r, DialScale scale,
                        std::vector<DialNeedleOf> needles, const QString& name) {
    const double legend = needles.size() > 1 ? 90 : 30;
    return addShown<DialPart>(around(centre, r + 46, r + 42, r + 46, r + legend + 14), centre, r,
                              std::move(scale), std::move(needles), name);
  };
  dial({x_.vacuum, y_dial_}, kDialR,
       {.low = 0,
        .high = 30,
        .major = 5,
        .minor = 1,
        .unit = tr("inHg VAC"),
        .marks = {{15, QStringLiteral("15")}, {21, QStringLiteral("21")}}},
       {{ofCab(Signal::kCab1TrainPipe, cab_), NeedleKind::kSolid, tr("train pipe")},
        {ofCab(Signal::kCab1ReleasePipe, cab_), NeedleKind::kHollow, tr("release pipe")}},
       tr("Vacuum"));
  dial({x_.air, y_dial_}, kDialR,
       {.low = 0,
        .high = 120,
        .major = 20,
        .minor = 5,
        .middle = 10,
        .unit = tr("psi"),
        .marks = {{75, QStringLiteral("75")}, {95, QStringLiteral("95")}}},
       {{ofCab(Signal::kCab1Air, cab_), NeedleKind::kSolid, {}}}, tr("Control air"));
  for (int line = 0; line < 2; ++line) {
    const QPointF centre(x_.engines + (line == 0 ? -82 : 82), y_dial_ + kDialR - kTachR);
    DialPart* tach = dial(
        centre, kTachR, {.low = 0, .high = 2000, .major = 500, .minor = 100, .figure_divisor = 100},
        {{ofCab(line == 0 ? Signal::kCab1Rpm1 : Signal::kCab1Rpm2, cab_), NeedleKind::kSolid, {}}},
        tr("Engine %1").arg(line + 1));
    tach->setUnder(tr("×100 rev/min"));
    tach->setArea(around(centre, 81, kTachR + 8, 81, kTachR + 66));
  }
  dial({x_.speed, y_dial_}, kDialR,
       {.low = 0, .high = 80, .major = 10, .minor = 2, .unit = tr("mph")},
       {{ofCab(Signal::kCab1Speed, cab_), NeedleKind::kSolid, {}}}, tr("Speed"));
}

void CabPlate::addLamps() {
  const Signal bright = cab_ == 0 ? Signal::kCab1Bright : Signal::kCab2Bright;
  const auto lamp = [&](double x, Signal of_cab1, LampColor color, const QString& word) {
    const QPointF centre(x, y_lamp_);
    addShown<LampPart>(around(centre, 62, 30, 62, 54), ofCab(of_cab1, cab_), bright, color, centre,
                       word);
  };
  lamp((x_.vacuum + x_.air) / 2 + 20, Signal::kCab1LampFire, LampColor::kRed, tr("FIRE"));
  lamp(x_.air, Signal::kCab1LampAir, LampColor::kGreen, tr("AIR"));
  lamp(x_.air + 96, Signal::kCab1LampCharge, LampColor::kYellow, tr("CHARGE"));
  lamp(x_.engines - 112, Signal::kCab1LampEngine1, LampColor::kGreen, tr("ENGINE 1"));
  lamp(x_.engines, Signal::kCab1LampDevice, LampColor::kGreen, tr("SAFETY"));
  lamp(x_.engines + 112, Signal::kCab1LampEngine2, LampColor::kGreen, tr("ENGINE 2"));
  // Horn and bell, under the speed.
  const auto button = [&](double dx, Control of_cab1, const char* command,
                          drawing::ButtonSign sign) {
    const QPointF centre(x_.speed + dx, y_lamp_);
    return addControl<ButtonPart>(around(centre, 30, 30, 34, 58), control(of_cab1),
                                  QString::fromLatin1(command), centre, sign);
  };
  ButtonPart* low = button(-66, Control::kCab1Horn, "cab.horn_low", drawing::ButtonSign::kHorn);
  low->setPressedValue(1);
  low->setKeyBelow(true);
  low->setAccessibleName(tr("Horn, low"));
  ButtonPart* high = button(0, Control::kCab1Horn, "cab.horn_high", drawing::ButtonSign::kHorn);
  high->setPressedValue(2);
  high->setKeyBelow(true);
  high->setAccessibleName(tr("Horn, high"));
  ButtonPart* bell = button(66, Control::kCab1Bell, "cab.bell", drawing::ButtonSign::kBell);
  bell->setKeyBelow(true);
}

void CabPlate::addLevers() {
  const auto lever = [&](double x, Control of_cab1, const char* command, LeverShape shape) {
    const QPointF pivot(x, y_pivot_);
    shape.pivot = pivot;
    shape.radius = kLeverR;
    std::vector<drawing::Detent> detents;
    for (const auto& [value, angle] : shape.angles)
      detents.push_back({angle, positionText(control(of_cab1), value)});
    const QRectF quadrant = drawing::leverBounds(pivot, kLeverR, detents);
    const QRectF words = around(pivot, 118, 0, 118, 70);
    return addControl<LeverPart>(quadrant.united(words).adjusted(-3, -3, 3, 3), control(of_cab1),
                                 QString::fromLatin1(command), std::move(shape));
  };
  LeverPart* brake = lever(x_.vacuum, Control::kCab1Brake, "cab.brake",
                           {.angles = {{-1, -64}, {0, -26}, {1, 62}},
                            .wedge = std::pair{-8.0, 62.0},
                            .first_step = 0.25,
                            .step = 0.05});
  brake->setSocketOf(unit::Object::kBrakeHandle);
  LeverPart* reverser = lever(x_.air, Control::kCab1Reverser, "cab.reverser",
                              {.angles = {{-1, -40}, {0, 0}, {1, 40}}});
  reverser->setSocketOf(unit::Object::kReversingLever);
  const std::vector<std::pair<double, double>> notches{
      {0, -60}, {1, -30}, {2, 0}, {3, 30}, {4, 60}};
  LeverPart* throttle =
      lever(x_.engines, Control::kCab1Throttle, "cab.throttle", {.angles = notches});
  throttle->setDevice(control(Control::kCab1Device));
  lever(x_.speed, Control::kCab1Gear, "cab.gear", {.angles = notches});
  // The throttle's handle is the safety device: pressed down at its side.
  const QPointF device(x_.engines + 138, y_pivot_ + 6);
  auto* hold =
      addControl<DevicePart>(around(device, 56, 30, 74, 52), control(Control::kCab1Device), device);
  Q_UNUSED(hold)
}

void CabPlate::addFirstColumn() {
  const double x = x_.key;
  const double spare = context().style.frame.spare;
  const double y_key = y_dial_ - 72;
  auto* key = addControl<KeySwitchPart>(around({x, y_key}, 78, 52, 78, 100),
                                        control(Control::kCab1Key), QStringLiteral("cab.key"),
                                        QPointF(x, y_key), std::vector<double>{-50, 50});
  key->setNeedsKey(true);
  const double y_start = y_dial_ + 76 + spare * 0.1;
  const std::array<std::array<Control, 2>, 2> buttons{
      {{Control::kCab1Start1, Control::kCab1Start2}, {Control::kCab1Stop1, Control::kCab1Stop2}}};
  const std::array<std::array<const char*, 2>, 2> commands{
      {{"cab.start1", "cab.start2"}, {"cab.stop1", "cab.stop2"}}};
  for (std::size_t row = 0; row < 2; ++row) {
    for (std::size_t line = 0; line < 2; ++line) {
      const QPointF centre(x + 8 + 54 * static_cast<double>(line),
                           y_start + 78 * static_cast<double>(row));
      auto* button = addControl<ButtonPart>(
          around(centre, 26, 27, 26, 52), control(buttons[row][line]),
          QString::fromLatin1(commands[row][line]), centre,
          row == 0 ? drawing::ButtonSign::kStart : drawing::ButtonSign::kStop);
      button->setKeyBelow(true);
      if (row == 0) button->setHeldScale(15);
    }
  }
  const double y_test = y_start + 164 + spare * 0.1;
  auto* lamps = addControl<ButtonPart>(
      around({x + 8, y_test}, 26, 27, 26, 52), control(Control::kCab1LampTest),
      QStringLiteral("cab.lamp_test"), QPointF(x + 8, y_test), drawing::ButtonSign::kLamp);
  lamps->setKeyBelow(true);
  auto* fire = addControl<ButtonPart>(
      around({x + 62, y_test}, 26, 27, 26, 52), control(Control::kCab1FireTest),
      QStringLiteral("cab.fire_test"), QPointF(x + 62, y_test), drawing::ButtonSign::kFire);
  fire->setKeyBelow(true);
  const QPointF wheel(x - 30, y_pivot_ - 48);
  addControl<HandbrakePart>(around(wheel, 60, 62, 134, 122), control(Control::kCab1Handbrake),
                            control(Control::kCab1Pawl), wheel);
  const QPointF pawl = drawing::handbrakePawl(wheel, 44);
  const QRectF on_pawl(pawl.x() - 16, pawl.y() - 18, 32, 32);
  const QPointF words = wheel + QPointF(58, -26);
  const QRectF on_words(words.x() - 4, words.y() - 20, 94, 28);
  auto* part = addControl<PawlPart>(on_pawl, control(Control::kCab1Pawl), pawl, words);
  part->setArea(on_pawl.united(on_words), {on_pawl, on_words});
}

// What is looked at on the desk: a line of its own above the hands.
void CabPlate::addWall() {
  const double y = area().bottom() - 1;
  double x = area().left() + drawing::textWidth(tr("Look at")) + 26;
  const auto item = [&](Item of_cab1) {
    const Item here = itemOfCab(of_cab1, cab_);
    const double w = drawing::textWidth(nameOf(here), drawing::kText, true) + 26;
    addItem(here, {.thing = QRectF(x, y - 18, w, 22), .label = {x, y}, .leader = false});
    x += w + 34;
  };
  item(Item::kCab1Gauges);
  item(Item::kCab1Lamps);
  item(Item::kCab1Neutral);
  item(Item::kCab1HandbrakeItem);
  item(Item::kCab1Windows);
  auto* turn = addControl<TurnPart>({}, tr("Turn round"), QPointF(area().right(), y));
  turn->setArea({area().right() - turn->width() - 4, y - 26, turn->width() + 8, 36});
  connect(turn, &TurnPart::turned, this, &Plate::turnAsked);
}

void CabPlate::paintGround(drawing::Pen& pen) const {
  const auto chain = [&](double x, double from, double to) {
    if (to - from > 8) drawing::paintCentreLine(pen, {x, from}, {x, to});
  };
  const double dial_end = y_dial_ + kDialR, lever_top = y_pivot_ - 130;
  chain(x_.air, dial_end, y_name_ - 20);
  chain(x_.air, y_name_ + 8, y_lamp_ - 30);
  chain(x_.vacuum, y_name_ + 66, lever_top);
  chain(x_.speed, dial_end, y_name_ - 20);
  chain(x_.speed, y_name_ + 8, y_lamp_ - 54);
  const std::array<std::pair<double, QString>, 3> buttons{
      {{-66, tr("low")}, {0, tr("high")}, {66, tr("bell")}}};
  pen.text({x_.speed - 33, y_lamp_ - 56}, tr("Horn"), {.anchor = Anchor::kMiddle});
  for (const auto& [dx, word] : buttons)
    pen.text({x_.speed + dx, y_lamp_ - 32}, word, {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  const double y_start = y_dial_ + 76 + context().style.frame.spare * 0.1;
  const double x = x_.key;
  pen.text({x + 8, y_start - 28}, QStringLiteral("1"),
           {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  pen.text({x + 62, y_start - 28}, QStringLiteral("2"),
           {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  pen.text({x - 72, y_start + 6.5}, tr("Start"));
  pen.text({x - 72, y_start + 84.5}, tr("Stop"));
  pen.text({x - 72, y_start + 170.5 + context().style.frame.spare * 0.1}, tr("Test"));
  pen.text({area().left(), area().bottom() - 1}, tr("Look at"), {.tone = Tone::kInk2});
}

}  // namespace cabwright::cab
