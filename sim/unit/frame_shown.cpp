// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown, heard, smelled and felt.
#include <algorithm>
#include <cmath>

#include "quantity/units.h"
#include "unit/frame_fill.h"
#include "unit/hissing.h"
#include "unit/people.h"
#include "unit/perception.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

using Truths = std::array<double, kInstrumentCount>;

constexpr double kGlowV = 8.0, kFullV = 24.0;  // filaments begin to glow, burn as they should
constexpr double kSoundS = 0.5;                // how long a thump or a click rings in the ear
constexpr double kTouchN = 2000.0;             // blocks seen to be on
constexpr double kSeenMovingMph = 0.5;         // less is not seen against the ground
constexpr double kArmatureTurns = 1.0;         // rad/s
constexpr double kStickingOutV = 10.0;         // red and white lamps give light above this

double shareOf(double value, double from, double to) {
  return std::clamp((value - from) / (to - from), 0.0, 1.0);
}

bool heardJustNow(const World& w, std::int64_t since) {
  return since != kNever && static_cast<double>(w.tick - since) * q::kTickSeconds < kSoundS;
}

void senseDesk(const World& w, const plant::PlantReadings& r, std::size_t c, Truths& t) {
  const int cab = static_cast<int>(c);
  const auto put = [&](Instrument of_cab1, double v) {
    t[indexOf(instrumentOfCab(of_cab1, cab))] = v;
  };
  const InterlockResult& result = w.result;
  const double train = q::paToInHgVacuum(r.train_pipe_pa);
  put(Instrument::kCab1Air, q::paToPsiGauge(r.control_reservoir_pa));
  put(Instrument::kCab1TrainPipe, train);
  put(Instrument::kCab1ReleasePipe, q::paToInHgVacuum(r.release_pipe_pa));
  put(Instrument::kCab1GuardsGauge, train);
  put(Instrument::kCab1Speed, std::abs(q::mpsToMph(r.speed_mps)));
  put(Instrument::kCab1Rpm1, std::abs(q::radPerSecToRpm(r.line[0].crank_rad_per_s)));
  put(Instrument::kCab1Rpm2, std::abs(q::radPerSecToRpm(r.line[1].crank_rad_per_s)));
  put(Instrument::kCab1LampEngine1, result.lamp_engine[c][0] ? 1.0 : 0.0);
  put(Instrument::kCab1LampEngine2, result.lamp_engine[c][1] ? 1.0 : 0.0);
  put(Instrument::kCab1LampAir, result.lamp_air[c] ? 1.0 : 0.0);
  put(Instrument::kCab1LampDevice, result.lamp_device[c] ? 1.0 : 0.0);
  put(Instrument::kCab1LampCharge, result.lamp_charge[c] ? 1.0 : 0.0);
  put(Instrument::kCab1LampFire, result.lamp_fire[c] ? 1.0 : 0.0);
}

void fillLineside(World& w, const plant::PlantReadings& r, const Route& route, int cab,
                  FrameWriter& out) {
  const auto c = static_cast<std::size_t>(cab);
  const auto at = [&](Signal first, Signal second) { return ofNumber(first, second, c); };
  const double front = calcFront(r, cab);
  std::size_t index = 0;
  const RouteSignal* s = findSignalAhead(route, front, cab, index);
  const double ahead = s == nullptr ? 9999.0 : std::abs(s->position_m - front);
  const bool seen = s != nullptr && ahead <= s->sighting_m;
  out.put(at(Signal::kCab1Signal, Signal::kCab2Signal), !seen                   ? -1.0
                                                        : w.signal_clear[index] ? 1.0
                                                                                : 0.0);
  out.put(at(Signal::kCab1SignalDistance, Signal::kCab2SignalDistance), seen ? ahead : 9999.0);
  out.put(at(Signal::kCab1Limit, Signal::kCab2Limit), calcLimit(route, front, front));
  out.put(at(Signal::kCab1Mark, Signal::kCab2Mark), calcMarkDistance(route, front, cab));
}

void fillCab(World& w, const plant::PlantReadings& r, const Route& route, std::size_t c,
             FrameWriter& out) {
  const int cab = static_cast<int>(c);
  const auto at = [&](Signal first, Signal second) { return ofNumber(first, second, c); };
  const InterlockResult& result = w.result;
  const DeskParameters& desk = w.parameters.desk[c];
  const bool light = r.bus_v > kStickingOutV;
  out.put(at(Signal::kCab1Bright, Signal::kCab2Bright),
          result.desk[c] ? shareOf(r.bus_v, kGlowV, kFullV) : 0.0);
  fillLineside(w, r, route, cab, out);
  const bool rings = w.people.from_guard.sounding && result.bell_fed && desk.bell_dead <= 0.5;
  out.put(at(Signal::kCab1BellRings, Signal::kCab2BellRings), rings);
  out.put(at(Signal::kCab1FireBell, Signal::kCab2FireBell),
          result.fire_bell[c] && desk.fire_bell_dead <= 0.5);
  out.put(at(Signal::kCab1Hiss, Signal::kCab2Hiss),
          calcHiss(calcEscapeHeardAt(r.escape, cabPlace(cab))));
  out.put(at(Signal::kCab1Swept, Signal::kCab2Swept),
          result.lights_fed && light && w.control.on(ofCab(Control::kCab1Wiper, cab)) &&
              desk.wiper_dead <= 0.5);
  out.put(at(Signal::kEnd1White, Signal::kEnd2White),
          result.white[c] && light && desk.white_lamps_dead <= 0.5);
  out.put(at(Signal::kEnd1RedLit, Signal::kEnd2RedLit),
          result.red[c] && light && desk.red_lamps_dead <= 0.5);
  const bool readable = !w.dark || (result.lights_fed && light);
  out.put(at(Signal::kEnd1Shows, Signal::kEnd2Shows),
          readable ? w.control[ofCab(Control::kCab1Display, cab)] : 0.0);
}

void fillEngine(World& w, const plant::Plant& plant, std::size_t n, FrameWriter& out) {
  const plant::LineReadings& line = plant.readings().line[n];
  const auto at = [&](Signal first, Signal second) { return ofNumber(first, second, n); };
  const double rpm = std::abs(q::radPerSecToRpm(line.crank_rad_per_s));
  out.put(at(Signal::kEngine1Note, Signal::kEngine2Note), rpm);
  out.put(at(Signal::kEngine1Even, Signal::kEngine2Even), line.fired_fraction);
  out.put(at(Signal::kEngine1Smoke, Signal::kEngine2Smoke), std::min(1.0, line.smoke));
  // It hums as long as its belt drives it.
  const double belt = plant.parameters().exhauster[n].belt;
  out.put(at(Signal::kEngine1Hum, Signal::kEngine2Hum), belt * shareOf(rpm, 0.0, 420.0));
  out.put(at(Signal::kEngine1Thump, Signal::kEngine2Thump), heardJustNow(w, w.thump_at[n]));
  out.put(at(Signal::kEngine1Rattle, Signal::kEngine2Rattle),
          line.dog == plant::DogState::kRattling);
  out.put(at(Signal::kEngine1Grind, Signal::kEngine2Grind),
          line.pinion_in && (line.starter_a > 0.0 || line.starter_rad_per_s > kArmatureTurns));
  double hottest = line.clutch_k;
  for (double k : line.drum_k) hottest = std::max(hottest, k);
  out.put(at(Signal::kEngine1HotSmell, Signal::kEngine2HotSmell),
          shareOf(q::kelvinToCelsius(hottest), 120.0, 240.0));
  out.put(at(Signal::kEngine1FireSeen, Signal::kEngine2FireSeen), isBurning(w, n));
}

void fillHeardEngines(World& w, Place here, bool there, FrameWriter& out) {
  bool thump = false, rattle = false;
  double hot = 0.0, fuel = 0.0;
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    const int line = static_cast<int>(n);
    const auto shown = [&](Signal first, Signal second) -> double {
      return w.frame[ofNumber(first, second, n)];
    };
    const bool note = there && contains(hearingOfEngine(line), here);
    const bool close = there && contains(hearingOfHum(line), here);
    const bool drive = there && contains(hearingOfDrive(line), here);
    out.put(ofNumber(Signal::kHeardEngine1, Signal::kHeardEngine2, n),
            note ? shown(Signal::kEngine1Note, Signal::kEngine2Note) : 0.0);
    out.put(ofNumber(Signal::kHeardHum1, Signal::kHeardHum2, n),
            close ? shown(Signal::kEngine1Hum, Signal::kEngine2Hum) : 0.0);
    thump = thump || (drive && shown(Signal::kEngine1Thump, Signal::kEngine2Thump) > 0.5);
    rattle = rattle || (drive && shown(Signal::kEngine1Rattle, Signal::kEngine2Rattle) > 0.5);
    if (!close) continue;
    hot = std::max(hot, shown(Signal::kEngine1HotSmell, Signal::kEngine2HotSmell));
    fuel = std::max(fuel, shown(Signal::kEngine1Smoke, Signal::kEngine2Smoke));
  }
  out.put(Signal::kHeardThump, thump);
  out.put(Signal::kHeardRattle, rattle);
  out.put(Signal::kSmelledHot, hot);
  out.put(Signal::kSmelledFuel, fuel);
}

void fillSensed(World& w, const plant::PlantReadings& r, FrameWriter& out) {
  const bool there = !w.trainee.walking;
  const Place here = w.trainee.place;
  const bool inside = there && placeInfo(here).kind == PlaceKind::kInside;
  fillHeardEngines(w, here, there, out);
  out.put(Signal::kHeardHiss, there ? calcHiss(calcEscapeHeardAt(r.escape, here)) : 0.0);
  const bool relays = here == Place::kCupboard || here == Place::kCab1;
  out.put(Signal::kHeardClick, there && relays && heardJustNow(w, w.click_at));
  // The note outlasts the lever by as long as there is air in the horn.
  double tone = 0.0, loud = 0.0;
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    const double level = r.cab[static_cast<std::size_t>(cab)].horn_level;
    if (level <= loud) continue;
    loud = level;
    const double asked = w.control[ofCab(Control::kCab1Horn, cab)];
    tone = asked > 0.5 ? asked : std::max<double>(1.0, w.frame[Signal::kHeardHorn]);
  }
  out.put(Signal::kHeardHorn, here == Place::kBooking ? 0.0 : tone);
  out.put(Signal::kHeardHornLevel, here == Place::kBooking ? 0.0 : loud);
  const int cab = cabOf(here);
  const bool bell_here = there && cab >= 0;
  out.put(Signal::kHeardBell, w.people.heard_code);
  out.put(Signal::kHeardBellAge, calcAge(w, w.people.heard_code_at));
  out.put(Signal::kHeardFireBell,
          bell_here && w.frame[ofNumber(Signal::kCab1FireBell, Signal::kCab2FireBell,
                                        static_cast<std::size_t>(cab))] > 0.5F);
  out.put(Signal::kHeardWords, static_cast<int>(w.people.last_reply));
  out.put(Signal::kHeardWordsAge, calcAge(w, w.people.last_reply_at));
  out.put(Signal::kFelt, inside ? r.acceleration_mps2 : 0.0);
  out.put(Signal::kSeenMoving, std::abs(q::mpsToMph(r.speed_mps)) >= kSeenMovingMph);
  constexpr Signal kBlocks[plant::kCylinders] = {Signal::kSide1BlocksOn, Signal::kSide2BlocksOn,
                                                 Signal::kTrailer1BlocksOn,
                                                 Signal::kTrailer2BlocksOn};
  for (std::size_t k = 0; k < plant::kCylinders; ++k) {
    const Control wheel = k < 2 ? Control::kCab1Handbrake : Control::kCab2Handbrake;
    out.put(kBlocks[k],
            std::clamp(r.block_force_n[k] / kTouchN + 2.0 * w.control[wheel], 0.0, 1.0));
  }
  out.put(Signal::kRearRead, w.people.second_reading);
  out.put(Signal::kRearReadAge, calcAge(w, w.people.second_read_at));
  out.put(Signal::kSecondBlocks, w.people.second_blocks);
  out.put(Signal::kSecondThere, w.people.second_there);
}

}  // namespace

double calcAge(const World& w, std::int64_t since) {
  return since == kNever ? 9999.0 : static_cast<double>(w.tick - since) * q::kTickSeconds;
}

void advanceInstruments(World& w, const plant::PlantReadings& r, double dt) {
  Truths truth{};
  for (std::size_t c = 0; c < plant::kCabs; ++c) senseDesk(w, r, c, truth);
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    const std::size_t oil =
        indexOf(n == 0 ? Instrument::kEngine1OilGauge : Instrument::kEngine2OilGauge);
    truth[oil] = r.line[n].oil_pressure_pa / q::kPaPerPsi;
    truth[oil + 1] = 100.0 * r.line[n].fuel_kg / w.parameters.hands.tank_kg;
    truth[oil + 2] = q::kelvinToCelsius(r.line[n].coolant_k);
  }
  truth[indexOf(Instrument::kCupboardVolts)] = r.bus_v;
  const std::vector<InstrumentInfo>& table = instrumentTable();
  FrameWriter out(w.frame);
  for (std::size_t k = 0; k < kInstrumentCount; ++k) {
    w.instrument[k] = calcInstrument(table[k], w.instrument[k], truth[k], dt);
    out.put(table[k].signal, w.instrument[k].shown);
  }
}

void fillShown(World& w, const plant::Plant& plant, const Route& route) {
  const plant::PlantReadings& r = plant.readings();
  FrameWriter out(w.frame);
  for (std::size_t c = 0; c < plant::kCabs; ++c) fillCab(w, r, route, c, out);
  for (std::size_t n = 0; n < plant::kLines; ++n) fillEngine(w, plant, n, out);
  fillSensed(w, r, out);
}

}  // namespace cabwright::unit
