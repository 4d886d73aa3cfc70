// SPDX-License-Identifier: GPL-3.0-or-later
// What moves by itself at an engine, and what is seen of its state at a glance.
#include <algorithm>
#include <cmath>

#include "cab/plate_engine.h"
#include "unit/perception.h"

namespace cabwright::cab {

using drawing::Tone;
using unit::Item;
using unit::Signal;

namespace {

/// Everything turns slower than it does, by this factor: at governed speed two turns a second,
/// so that the eye follows a spoke.
constexpr double kSlowness = 15;
constexpr double kTickS = 0.01;
/// At most so many pictures in a second.
constexpr std::int64_t kTicksPerPicture = 4;
/// How much faster than the crank they turn.
constexpr double kCompressorRatio = kCrankPulleyR / kCompressorPulleyR,
                 kExhausterRatio = kCrankPulleyR / kExhausterPulleyR,
                 kGeneratorRatio = kCrankPulleyR / kGeneratorPulleyR, kFanRatio = 8.0 / 13.0;
/// What a condition of the item table stands for, by its place in the list.
enum Belts : int { kNoCompressorBelt = 1, kNoExhausterBelt = 2, kNoGeneratorBelt = 5 };
enum Fan : int { kNoFanBelt = 1 };
enum Cover : int { kCoverOff = 2 };
enum Tray : int { kOldStain = 1 };
enum People : int { kFitter = 2 };
enum Oil : int { kNotOnStick = 1, kBelowMark = 2, kAboveMark = 3 };

double turned(double deg, double by) { return std::fmod(deg + by, 360.0); }

bool operator!=(const BeltsLook& a, const BeltsLook& b) {
  return a.compressor != b.compressor || a.exhauster != b.exhauster || a.generator != b.generator ||
         a.guard != b.guard;
}

bool differ(const EnginePlate::Seen& a, const EnginePlate::Seen& b) {
  return a.belts != b.belts || a.fan_belt != b.fan_belt ||
         a.drive.pin_in_sleeve != b.drive.pin_in_sleeve || a.drive.air_open != b.drive.air_open ||
         a.drive.sleeve_drawn != b.drive.sleeve_drawn || a.bottle_pulled != b.bottle_pulled ||
         a.padlock != b.padlock || a.fire != b.fire || a.person != b.person || a.pool != b.pool ||
         std::abs(a.smoke - b.smoke) > 0.02 || a.coolant != b.coolant ||
         a.stick_out != b.stick_out || a.oil_mark != b.oil_mark || a.dark != b.dark;
}

/// Where the oil stands between the marks of the stick, 0 and 1.
double oilMark(double level, int condition) {
  switch (condition) {
    case kNotOnStick:
      return -0.3;
    case kBelowMark:
      return -0.12;
    case kAboveMark:
      return 1.2;
    default:
      // Full is the upper mark, 0.75 of it the lower one.
      return std::clamp((level - 0.75) / 0.25, -0.3, 1.0) * 0.8;
  }
}

}  // namespace

Signal EnginePlate::shows(Item of_engine1) const {
  return static_cast<Signal>(static_cast<int>(Signal::kShowsNotices) +
                             static_cast<int>(unit::indexOf(item(of_engine1))));
}

EnginePlate::Seen EnginePlate::see() const {
  const auto condition = [&](Item i) { return static_cast<int>(seat().value(shows(i))); };
  const auto control = [&](unit::Control c) { return seat().value(this->control(c)); };
  const unit::World& w = seat().unit().world();
  const auto looks_at = [&](Item i) {
    return w.trainee.looking == item(i) && !seat().isWalking() && unit::hasLight(w);
  };
  Seen now;
  now.dark = !unit::hasLight(w);
  now.belts.guard = condition(Item::kEngine1Cover) != kCoverOff;
  // Behind the guard a belt that is gone is not missed at a glance while everything stands.
  const bool turning = seat().value(of(Signal::kEngine1Note, Signal::kEngine2Note)) > 1;
  if (turning || !now.belts.guard || looks_at(Item::kEngine1Belts)) {
    const int belts = condition(Item::kEngine1Belts);
    now.belts.compressor = belts != kNoCompressorBelt;
    now.belts.exhauster = belts != kNoExhausterBelt;
    now.belts.generator = belts != kNoGeneratorBelt;
  }
  if (turning || looks_at(Item::kEngine1Fan))
    now.fan_belt = condition(Item::kEngine1Fan) != kNoFanBelt;
  now.drive.pin_in_sleeve = control(unit::Control::kEngine1Pin) > 0.5;
  now.drive.air_open = control(unit::Control::kEngine1AirCock) > 0.5;
  now.drive.sleeve_drawn = control(unit::Control::kEngine1Sleeve) > 0.5;
  now.bottle_pulled = control(unit::Control::kEngine1Bottle) > 0.5;
  const unit::ObjectPlace& lock = w.object[unit::indexOf(unit::Object::kPadlock)];
  now.padlock = w.object_exists[unit::indexOf(unit::Object::kPadlock)] &&
                lock.state == unit::ObjectState::kInserted &&
                lock.place == (line_ == 0 ? unit::Place::kEngine1 : unit::Place::kEngine2);
  now.fire = seat().value(of(Signal::kEngine1FireSeen, Signal::kEngine2FireSeen)) > 0.5;
  if (seat().value(of(Signal::kTruePerson1, Signal::kTruePerson2)) > 0.5)
    now.person = condition(Item::kEngine1People) == kFitter ? 2 : 1;
  const int tray = condition(Item::kEngine1Tray);
  now.pool = tray == 0 ? PoolKind::kNone : tray == kOldStain ? PoolKind::kStain : PoolKind::kPool;
  now.smoke = seat().value(of(Signal::kEngine1Smoke, Signal::kEngine2Smoke));
  const std::size_t n = static_cast<std::size_t>(line_);
  if (looks_at(Item::kEngine1Coolant))
    now.coolant = std::round(seat().unit().readings().line[n].coolant_level * 50) / 50;
  now.stick_out = looks_at(Item::kEngine1Oil);
  const bool read = seat().value(Signal::kLookSeconds) >= seat().value(Signal::kLookNeeded);
  if (now.stick_out && read)
    now.oil_mark = oilMark(seat().unit().plant().parameters().engine[n].oil_level,
                           condition(Item::kEngine1Oil));
  return now;
}

void EnginePlate::advanceTurn(double seconds) {
  const double deg_per_rpm = 6.0 / kSlowness * seconds;
  const double crank = seat().value(of(Signal::kEngine1Note, Signal::kEngine2Note)) * deg_per_rpm;
  turn_.crank = turned(turn_.crank, crank);
  if (seen_.fan_belt) turn_.fan = turned(turn_.fan, crank * kFanRatio);
  if (seen_.belts.compressor) turn_.compressor = turned(turn_.compressor, crank * kCompressorRatio);
  if (seen_.belts.exhauster) turn_.exhauster = turned(turn_.exhauster, crank * kExhausterRatio);
  if (seen_.belts.generator) turn_.generator = turned(turn_.generator, crank * kGeneratorRatio);
  const plant::LineReadings& r = seat().unit().readings().line[static_cast<std::size_t>(line_)];
  constexpr double kDegPerRad = 57.29577951308232;
  turn_.shaft = turned(turn_.shaft, r.output_rad_per_s * kDegPerRad / kSlowness * seconds);
  // Drawn with forward to the right a wheel that runs forward turns clockwise.
  turn_.wheel = turned(turn_.wheel, r.wheel_rad_per_s * kDegPerRad / kSlowness * seconds);
}

QRectF EnginePlate::findLiveChange() {
  const std::int64_t tick = seat().run().tick();
  const Seen now = see();
  const bool other = differ(now, seen_);
  bool moved = false;
  seen_ = now;
  if (tick - drawn_tick_ >= kTicksPerPicture || tick < drawn_tick_) {
    // After a jump in time nothing whirls past to catch up.
    const double seconds = std::clamp(static_cast<double>(tick - turned_tick_) * kTickS, 0.0, 0.25);
    turned_tick_ = tick;
    const EngineTurn before = turn_;
    if (!context().style.reduced_motion) {
      advanceTurn(seconds);
      if (now.smoke >= 0.02 || now.fire) {
        phase_ = std::fmod(phase_ + 0.35 * seconds, 1.0);
        moved = true;
      }
    }
    moved = moved || turn_.crank != before.crank || turn_.shaft != before.shaft ||
            turn_.wheel != before.wheel;
    drawn_tick_ = tick;
  }
  if (other) return area();
  if (!moved) return {};
  // The panel lies between what moves, and is left alone.
  const QRectF free_end = box(0, g_.freeEnd().y() - 160, panel_ - 4, 260);
  update(context().style.frame.toWindow().mapRect(free_end).toAlignedRect());
  return box(0, EngineGeometry::kSolebar, g_.width, EngineGeometry::kRail);
}

void EnginePlate::paintLive(drawing::Pen& pen) const {
  pushDrawing(pen);
  paintFan(pen, turn_.fan, seen_.fan_belt);
  paintHeaderTank(pen, seen_.coolant);
  paintCrankTrain(pen, turn_.crank);
  paintCardanShaft(pen, g_, turn_.shaft);
  FinalDriveLook drive = seen_.drive;
  drive.axle_deg = turn_.wheel;
  paintFinalDrive(pen, g_, drive);
  paintFireBottle(pen, g_, seen_.bottle_pulled);
  paintBelts(pen, g_, turn_, seen_.belts);
  paintPool(pen, seen_.pool);
  if (seen_.person > 0) paintPerson(pen, {482, EngineGeometry::kGround}, seen_.person == 2);
  paintSmoke(pen, seen_.smoke, phase_);
  if (seen_.fire) {
    paintFlames(pen, {140, 182}, 66, phase_);
    paintFlames(pen, g_.freeEnd() + QPointF(-40, -70), 110, phase_ + 0.3);
  }
  if (seen_.stick_out) paintDipstick(pen, {600, 372}, seen_.oil_mark);
  pen.pop();
  paintHasp(pen, onPanel(kHasp.x(), kHasp.y()), seen_.padlock);
  if (seen_.stick_out) {
    const auto mark = [&](double x, const QString& word) {
      pen.text(at(600 + x, 402), word, {.anchor = drawing::Anchor::kMiddle});
    };
    mark(34, tr("MIN"));
    mark(184, tr("MAX"));
  }
  if (seen_.dark)
    pen.text(
        at(600, 384), tr("too dark to see closely"),
        {.anchor = mirrored_ ? drawing::Anchor::kEnd : drawing::Anchor::kStart, .italic = true});
}

}  // namespace cabwright::cab
