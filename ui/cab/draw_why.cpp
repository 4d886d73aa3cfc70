// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_why.h"

#include <algorithm>
#include <array>

#include "drawing/button.h"
#include "drawing/dial.h"
#include "drawing/handbrake.h"
#include "drawing/key_switch.h"
#include "drawing/lamp.h"
#include "drawing/lever.h"
#include "quantity/units.h"
#include "unit/actions.h"

namespace cabwright::cab {
namespace {

using drawing::Detent;
using drawing::kBold;
using drawing::kHeavy;
using drawing::kNorm;
using drawing::kThin;
using drawing::Pen;
using drawing::Tone;
using unit::Control;
using unit::Fact;

bool isOf(Control c, Control of_cab1) { return c == of_cab1 || c == unit::ofCab(of_cab1, 1); }

// By what the fact is seen at, where the fact itself says less.
WhyDetail ofControl(const Seat& seat, Control c) {
  const double value = seat.value(c);
  if (isOf(c, Control::kCab1Key)) return {WhySketch::kKey, value, false, false};
  if (isOf(c, Control::kCab1Reverser)) return {WhySketch::kReverser, value, false, false};
  if (isOf(c, Control::kCab1Throttle) || isOf(c, Control::kCab1Gear))
    return {WhySketch::kNotches, value, false, false};
  if (isOf(c, Control::kCab1Brake)) return {WhySketch::kBrake, value, false, false};
  if (isOf(c, Control::kCab1Device)) return {WhySketch::kDevice, value, false, false};
  if (c == Control::kEngine1Pin || c == Control::kEngine2Pin)
    return {WhySketch::kPin, value, false, false};
  if (unit::controlInfo(c).kind == unit::ControlKind::kButton)
    return {WhySketch::kButton, value, false, false};
  const std::string_view name = unit::controlInfo(c).name;
  if (name.starts_with("breaker") || name.starts_with("battery"))
    return {WhySketch::kBreaker, value, false, false};
  return {};
}

bool isPartOf(const unit::WhyFact& fact, unit::Item item) {
  return fact.points && *fact.points == unit::WhyPoint(item);
}

WhyDetail ofDrive(const Seat& seat, const unit::WhyFact& fact) {
  const std::size_t n = isPartOf(fact, unit::Item::kEngine2FinalDrive) ? 1 : 0;
  const plant::LineReadings& line = seat.unit().readings().line[n];
  WhyDetail d{WhySketch::kDogs, 1, false, false};
  using plant::DogState;
  d.on_tooth = line.dog == DogState::kOnTooth || line.dog == DogState::kRattling;
  if (d.on_tooth) d.value = 0;
  if (line.dog == DogState::kEntering) d.value = -0.3;
  if (line.dog == DogState::kMeshed) d.value = -1;
  return d;
}

}  // namespace

WhyDetail calcWhyDetail(const Seat& seat, const unit::WhyFact& fact) {
  if (findMissingThing(seat, fact))
    return {fact.fact == Fact::kKeyOn ? WhySketch::kKey : WhySketch::kSocket, 0, false, false};
  const auto* control = fact.points ? std::get_if<Control>(&*fact.points) : nullptr;
  const auto* signal = fact.points ? std::get_if<unit::Signal>(&*fact.points) : nullptr;
  switch (fact.fact) {
    case Fact::kDrivesMeshed:
      if (control == nullptr) return ofDrive(seat, fact);
      break;
    case Fact::kAirSwitchMade:
      return {WhySketch::kAir, quantity::paToPsiGauge(seat.unit().readings().control_reservoir_pa),
              false, false};
    case Fact::kEngineUp:
    case Fact::kEngineStopped:
      return {WhySketch::kEngine, fact.fact == Fact::kEngineStopped ? 1.0 : 0.0, false, false};
    case Fact::kPawlOut:
      return {WhySketch::kPawl, 1, false, false};
    case Fact::kLampBreakerIn:
      if (signal != nullptr) return {WhySketch::kLamp, 0, false, false};
      break;
    default:
      break;
  }
  if (control == nullptr) return {};
  WhyDetail d = ofControl(seat, *control);
  if (d.kind == WhySketch::kKey) d.present = true;
  return d;
}

std::optional<unit::Object> findMissingThing(const Seat& seat, const unit::WhyFact& fact) {
  if (fact.there) return std::nullopt;
  if (fact.fact == Fact::kHandleIn) return unit::Object::kBrakeHandle;
  if (fact.fact == Fact::kReverserIn) return unit::Object::kReversingLever;
  if (fact.fact != Fact::kKeyOn || !fact.points) return std::nullopt;
  const auto* key = std::get_if<Control>(&*fact.points);
  if (key == nullptr) return std::nullopt;
  const unit::Place cab = unit::cabPlace(unit::cabOfControl(*key));
  const unit::World& w = seat.unit().world();
  for (unit::Object o : {unit::Object::kControlKey, unit::Object::kSpareKey}) {
    const unit::ObjectPlace& at = w.object[unit::indexOf(o)];
    if (w.object_exists[unit::indexOf(o)] && at.state == unit::ObjectState::kInserted &&
        at.place == cab)
      return std::nullopt;
  }
  return unit::Object::kControlKey;
}

namespace {

void paintContact(Pen& pen) {
  pen.line({-50, 8}, {-20, 8}, {kHeavy});
  pen.line({20, 8}, {50, 8}, {kNorm, Tone::kRule, {6, 4}, false});
  pen.line({-17, 6}, {17, -16}, {kBold});
  pen.circle({-20, 8}, 5, {kNorm}, Tone::kFace);
  pen.circle({20, 8}, 5, {kNorm}, Tone::kFace);
}

// Crown above, sleeve below; between them the way the sleeve still has to go.
void paintDogs(Pen& pen, const WhyDetail& d) {
  constexpr double kPitch = 44, kTooth = 22, kHigh = 16;
  const double gap = d.on_tooth ? 0 : std::max(-kHigh, d.value * 12);
  const auto teeth = [&](double from, double y, double to) {
    for (double x = from; x < 66; x += kPitch)
      pen.rect(QRectF(QPointF(x, y), QPointF(x + kTooth, to)).normalized(), {kThin}, Tone::kFace);
  };
  const double crown = -8 - gap / 2, sleeve = 8 + gap / 2;
  const QRectF above(-60, -60, 120, crown - kHigh / 2 + 60),
      below(-60, sleeve + kHigh / 2, 120, 60);
  for (const auto& [box, lean] : {std::pair{above, 45.0}, std::pair{below, -45.0}}) {
    pen.rect(box, {kNorm}, Tone::kFace);
    pen.hatch(drawing::rectShape(box), Tone::kInk2, 6, lean);
  }
  teeth(-66, above.bottom(), crown + kHigh / 2);
  teeth(d.on_tooth || d.value > 0 ? -62 : -66 + kTooth, below.top(), sleeve - kHigh / 2);
  if (!d.on_tooth) return;
  for (double x = -66; x < 60; x += kPitch)
    pen.line({x + 4, 0}, {x + kTooth, 0}, {kHeavy, Tone::kBad, {}, false});
}

void paintEngine(Pen& pen, bool turns) {
  pen.circle({0, 0}, 32, {kNorm}, Tone::kFace);
  pen.circle({0, 0}, 25, {kThin, Tone::kRule});
  for (int k = 0; k < 5; ++k)
    pen.line(drawing::pointAt({0, 0}, 8, 72.0 * k), drawing::pointAt({0, 0}, 25, 72.0 * k),
             {kThin});
  pen.circle({0, 0}, 8, {kNorm}, Tone::kPaper);
  if (!turns) {
    pen.rect({-41, 28, 82, 9}, {kThin}, Tone::kShade, 2);  // it stands
    return;
  }
  pen.arc({0, 0}, 40, -50, 60, {kBold});
  const QPointF tip = drawing::pointAt({0, 0}, 40, 66);
  pen.polygon({{tip, drawing::pointAt({0, 0}, 46, 48), drawing::pointAt({0, 0}, 34, 48)}}, {},
              Tone::kInk);
}

void paintBreaker(Pen& pen) {
  pen.rect({-22, -38, 44, 76}, {kNorm}, Tone::kFace, 4);
  pen.rect({-10, -22, 20, 44}, {kThin}, Tone::kPaper, 3);
  pen.rect({-13, 2, 26, 16}, {kNorm}, Tone::kShade, 3);
  pen.line({-5, 10}, {5, 10}, {kNorm});
}

void paintDevice(Pen& pen) {
  pen.rect({-40, 26, 80, 8}, {kNorm}, Tone::kShade, 2);
  pen.line({0, 26}, {0, -2}, {kHeavy});
  pen.rect({-24, -20, 48, 20}, {kNorm}, Tone::kFace, 9);
  pen.path(
      [] {
        QPainterPath down(QPointF(34, -24));
        down.lineTo(34, 4);
        down.moveTo(28, -3);
        down.lineTo(34, 5);
        down.lineTo(40, -3);
        return down;
      }(),
      {kNorm, Tone::kHand});
}

void paintPin(Pen& pen) {
  pen.rect({-44, 2, 88, 30}, {kNorm}, Tone::kFace, 3);
  pen.hatch(drawing::rectShape({-44, 2, 88, 30}), Tone::kInk2, 7);
  pen.rect({-6, -34, 12, 58}, {kNorm}, Tone::kPaper, 2);
  pen.circle({0, -36}, 9, {kBold});
}

void paintLevers(Pen& pen, const WhyDetail& d) {
  drawing::LeverLook look;
  std::vector<Detent> detents;
  double at = 0;
  if (d.kind == WhySketch::kNotches) {
    for (double a : {-60.0, -30.0, 0.0, 30.0, 60.0}) detents.push_back({a, {}, false});
    at = -60 + 30 * d.value;
  } else if (d.kind == WhySketch::kBrake) {
    detents = {{-64, {}, false}, {-26, {}, false}, {62, {}, true}};
    look.wedge = std::pair{-8.0, 62.0};
    at = d.value < 0 ? -26 + 38 * d.value : -26 + 88 * d.value;
  } else {
    detents = {{-40, {}, false}, {0, {}, false}, {40, {}, false}};
    at = 40 * d.value;
    look.empty = d.kind == WhySketch::kSocket;
  }
  pen.push({0, 30}, 0, 0.62, 0.62);
  drawing::paintLever(pen, {0, 0}, 98, detents, at, look);
  pen.pop();
}

void paintInside(Pen& pen, const WhyDetail& d) {
  switch (d.kind) {
    case WhySketch::kContact:
      return paintContact(pen);
    case WhySketch::kDogs:
      return paintDogs(pen, d);
    case WhySketch::kAir: {
      const drawing::DialScale scale{
          .low = 0, .high = 120, .major = 60, .minor = 20, .zones = {{0, 75}}};
      const std::array needle{drawing::DialNeedle{d.value, drawing::NeedleKind::kSolid}};
      return drawing::paintDial(pen, {0, 0}, 44, scale, needle);
    }
    case WhySketch::kEngine:
      return paintEngine(pen, d.value > 0);
    case WhySketch::kKey:
      return drawing::paintKeySwitch(
          pen, {0, 0}, 30,
          {.positions = {{-50, {}, false}, {50, {}, false}}, .at = -50, .has_key = d.present});
    case WhySketch::kSocket:
    case WhySketch::kReverser:
    case WhySketch::kNotches:
    case WhySketch::kBrake:
      return paintLevers(pen, d);
    case WhySketch::kDevice:
      return paintDevice(pen);
    case WhySketch::kPawl:
      return drawing::paintHandbrake(pen, {0, -6}, 32, {.on = 1, .pawl_in = true});
    case WhySketch::kButton:
      return drawing::paintButton(pen, {0, 0}, 26, {.sign = drawing::ButtonSign::kStart});
    case WhySketch::kBreaker:
      return paintBreaker(pen);
    case WhySketch::kLamp:
      return drawing::paintLamp(pen, {0, 0}, {}, QString(), 24);
    case WhySketch::kPin:
      return paintPin(pen);
  }
}

}  // namespace

void paintWhyDetail(Pen& pen, QPointF centre, const WhyDetail& detail, Tone rim) {
  pen.circle(centre, kWhyCircle, drawing::kNoLine, Tone::kFace);
  pen.push(centre, 0);
  pen.painter().setClipPath(drawing::circleShape({0, 0}, kWhyCircle - 1), Qt::IntersectClip);
  paintInside(pen, detail);
  pen.pop();
  pen.circle(centre, kWhyCircle, {drawing::kFocus, rim});
}

}  // namespace cabwright::cab
