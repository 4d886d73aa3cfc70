// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/scene.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

#include "unit/perception.h"

namespace cabwright::hearing {

namespace {

using unit::Frame;
using unit::Place;
using unit::Signal;

// The full force of one brake cylinder's blocks, and the drive from shaft to axle: house values,
// they colour a sound and decide nothing.
constexpr double kFullBlocksKn = 60.0;
constexpr double kFinalRatio = 2.75, kWheelRadiusM = 0.457, kDogTeeth = 12.0;
constexpr double kMpsPerMph = 0.44704;
constexpr double kBleedingPsi = 1.0;  // the device's timing volume still empties
constexpr double kOpened = 0.02;

bool isOn(const Frame& f, Signal s) { return f[s] > 0.5F; }

Signal ofLine(Signal first, Signal second, std::size_t n) { return n == 0 ? first : second; }

// How near the engines are, and how much stands between.
struct Surroundings {
  double engine_nearness, walls;
};
Surroundings surroundingsOf(Place place) {
  switch (place) {
    case Place::kEngine1:
    case Place::kEngine2:
      return {1.0, 0.0};
    case Place::kSide1:
    case Place::kSide2:
      return {0.7, 0.0};
    case Place::kBetween:
      return {0.5, 0.0};
    case Place::kEnd1:
    case Place::kTrailer1:
    case Place::kTrailer2:
      return {0.35, 0.0};
    case Place::kCupboard:
    case Place::kSaloon:
      return {0.65, 0.7};
    case Place::kCab1:
      return {0.55, 0.8};
    case Place::kCab2:
      return {0.0, 0.8};
    default:
      return {0.0, 0.0};
  }
}

bool isAtUnit(Place place) { return unit::placeInfo(place).kind != unit::PlaceKind::kAway; }

HeardEngine calcEngine(const Frame& f, Place place, std::size_t n) {
  HeardEngine e;
  const int line = static_cast<int>(n);
  if (unit::contains(unit::hearingOfEngine(line), place)) {
    e.note_rpm = f[ofLine(Signal::kHeardEngine1, Signal::kHeardEngine2, n)];
    e.starter = isOn(f, ofLine(Signal::kEngine1Grind, Signal::kEngine2Grind, n));
    e.evenness = f[ofLine(Signal::kEngine1Even, Signal::kEngine2Even, n)];
    const double trapped = f[ofLine(Signal::kTrueTrapped1, Signal::kTrueTrapped2, n)];
    e.load = f[ofLine(Signal::kTrueRack1, Signal::kTrueRack2, n)] * (1.0 - trapped);
  }
  if (unit::contains(unit::hearingOfHum(line), place)) {
    e.hum = f[ofLine(Signal::kHeardHum1, Signal::kHeardHum2, n)];
    e.compressor = isOn(f, ofLine(Signal::kTrueCompressor1, Signal::kTrueCompressor2, n))
                       ? Compressor::kLoaded
                       : Compressor::kUnloaded;
  } else {
    // Beside its engine it is straight ahead, elsewhere on its own side.
    e.bearing = n == 0 ? -0.35 : 0.35;
  }
  return e;
}

// In a cab: air drawn in through a valve that is open or passes, or blown out of the device.
double calcInwardsInCab(const Frame& f, std::size_t cab) {
  const bool opened =
      f[ofLine(Signal::kCab1Brake, Signal::kCab2Brake, cab)] > kOpened ||
      f[ofLine(Signal::kCab1GuardsValve, Signal::kCab2GuardsValve, cab)] > kOpened ||
      f[Signal::kTrueDeviceVent] > kOpened;
  const bool bleeds = !isOn(f, ofLine(Signal::kCab1Device, Signal::kCab2Device, cab)) &&
                      f[ofLine(Signal::kTrueDevice1, Signal::kTrueDevice2, cab)] > kBleedingPsi;
  return opened || !bleeds ? 1.0 : 0.0;
}

double calcInwards(const Frame& f, Place place) {
  switch (place) {
    case Place::kCab1:
      return calcInwardsInCab(f, 0);
    case Place::kCab2:
      return calcInwardsInCab(f, 1);
    case Place::kBetween:
      return 0.5;
    case Place::kSide1:
    case Place::kEngine1:
      return isOn(f, Signal::kCord1) ? 1.0 : 0.2;
    case Place::kSide2:
    case Place::kEngine2:
      return isOn(f, Signal::kCord2) ? 1.0 : 0.2;
    default:
      return 1.0;  // pipes, chambers and the alarm: all under vacuum
  }
}

// Teeth that pass each other a second: crown wheel against axle.
double calcRattleHz(const Frame& f) {
  double most = 0.0;
  const double axle_rpm = std::abs(static_cast<double>(f[Signal::kSpeed])) * kMpsPerMph /
                          kWheelRadiusM * 60.0 / (2.0 * std::numbers::pi);
  for (std::size_t n = 0; n < 2; ++n) {
    if (!isOn(f, ofLine(Signal::kEngine1Rattle, Signal::kEngine2Rattle, n))) continue;
    const double shaft = f[ofLine(Signal::kTrueOutput1, Signal::kTrueOutput2, n)];
    most = std::max(most, std::abs(std::abs(shaft) / kFinalRatio - axle_rpm) / 60.0 * kDogTeeth);
  }
  return std::clamp(most, 4.0, 80.0);
}

void fillWheels(const Frame& f, HeardScene& s) {
  s.speed_mph = std::abs(static_cast<double>(f[Signal::kSpeed]));
  double press_kn = 0.0;
  for (Signal b :
       {Signal::kTrueBlocks1, Signal::kTrueBlocks2, Signal::kTrueBlocks3, Signal::kTrueBlocks4}) {
    press_kn += f[b];
  }
  s.block_press = press_kn / (4.0 * kFullBlocksKn);
}

// A number of a scene inside its range; what is no number is 0.
double bounded(double value, double low, double high) {
  return std::isfinite(value) ? std::clamp(value, low, high) : std::clamp(0.0, low, high);
}

}  // namespace

HeardScene calcScene(const Frame& frame, Place place) {
  HeardScene s;
  s.horn = static_cast<int>(frame[Signal::kHeardHorn] + 0.5F);
  s.horn_level = frame[Signal::kHeardHornLevel];
  s.bell_code = static_cast<int>(frame[Signal::kHeardBell]);
  s.bell_age_s = frame[Signal::kHeardBellAge];
  const Surroundings around = surroundingsOf(place);
  s.walls = around.walls;
  if (isOn(frame, Signal::kWalking)) return calcBounded(s);
  s.engine_nearness = around.engine_nearness;
  for (std::size_t n = 0; n < s.engine.size(); ++n) s.engine[n] = calcEngine(frame, place, n);
  s.hiss = frame[Signal::kHeardHiss];
  s.hiss_inwards = calcInwards(frame, place);
  s.thump = isOn(frame, Signal::kHeardThump);
  s.rattle = isOn(frame, Signal::kHeardRattle);
  if (s.rattle) s.rattle_hz = calcRattleHz(frame);
  s.click = isOn(frame, Signal::kHeardClick);
  const int cab = unit::cabOf(place);
  if (cab >= 0) {
    s.bell = isOn(frame, ofLine(Signal::kCab1BellRings, Signal::kCab2BellRings,
                                static_cast<std::size_t>(cab)));
  }
  s.fire_bell = isOn(frame, Signal::kHeardFireBell);
  if (isAtUnit(place)) fillWheels(frame, s);
  return calcBounded(s);
}

HeardScene calcBounded(const HeardScene& scene) {
  HeardScene s = scene;
  for (HeardEngine& e : s.engine) {
    e.note_rpm = bounded(e.note_rpm, 0.0, 4000.0);
    e.evenness = bounded(e.evenness, 0.0, 1.0);
    e.load = bounded(e.load, 0.0, 1.0);
    e.hum = bounded(e.hum, 0.0, 1.0);
    e.bearing = bounded(e.bearing, -1.0, 1.0);
  }
  s.engine_nearness = bounded(s.engine_nearness, 0.0, 1.0);
  s.walls = bounded(s.walls, 0.0, 1.0);
  s.hiss = bounded(s.hiss, 0.0, 1.0);
  s.hiss_inwards = bounded(s.hiss_inwards, 0.0, 1.0);
  s.rattle_hz = bounded(s.rattle_hz, 0.0, 200.0);
  s.bell_age_s = bounded(s.bell_age_s, 0.0, 1e6);
  s.horn = std::clamp(s.horn, 0, 2);
  s.horn_level = bounded(s.horn_level, 0.0, 1.0);
  s.speed_mph = bounded(s.speed_mph, 0.0, 120.0);
  s.block_press = bounded(s.block_press, 0.0, 1.0);
  return s;
}

}  // namespace cabwright::hearing
