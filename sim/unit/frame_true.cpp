// SPDX-License-Identifier: GPL-3.0-or-later
// The truth, for instructor, assessor and rules about harm.
#include <algorithm>
#include <cmath>

#include "quantity/units.h"
#include "unit/frame_fill.h"
#include "unit/people.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

int engagedGear(const plant::LineReadings& line) {
  for (int g = 0; g < plant::kGears; ++g) {
    const auto k = static_cast<std::size_t>(g);
    // A cylinder under air, and its drum or clutch at rest.
    if (line.gear_locked[k] && q::paToPsiGauge(line.gear_pa[k]) > 5.0) return g + 1;
  }
  return 0;
}

void fillEngine(const World& w, const plant::LineReadings& line, std::size_t n, FrameWriter& out) {
  const auto put = [&](Signal first, Signal second, auto value) {
    out.put(ofNumber(first, second, n), value);
  };
  using enum Signal;
  const StartLog& log = w.start[n];
  put(kTrueRpm1, kTrueRpm2, q::radPerSecToRpm(line.crank_rad_per_s));
  put(kTrueRack1, kTrueRack2, line.rack);
  put(kTrueLever1, kTrueLever2, line.lever);
  put(kTrueFired1, kTrueFired2, line.fired_fraction);
  put(kTrueRunning1, kTrueRunning2, line.running);
  put(kTrueCoolant1, kTrueCoolant2, q::kelvinToCelsius(line.coolant_k));
  put(kTrueOil1, kTrueOil2, q::kelvinToCelsius(line.oil_k));
  put(kTrueOilPressure1, kTrueOilPressure2, line.oil_pressure_pa / q::kPaPerPsi);
  put(kTrueCoolantLevel1, kTrueCoolantLevel2, line.coolant_level);
  put(kTrueTrapped1, kTrueTrapped2, line.trapped_air);
  put(kTrueFuel1, kTrueFuel2, line.fuel_kg);
  put(kTrueLatch1, kTrueLatch2, line.fuel_latch_tripped);
  put(kTrueProtection1, kTrueProtection2, line.protection_tripped);
  put(kTrueStarter1, kTrueStarter2, w.result.starter[n]);
  put(kTrueStarterA1, kTrueStarterA2, line.starter_a);
  put(kTrueStarterC1, kTrueStarterC2, q::kelvinToCelsius(line.starter_k));
  put(kTrueCrankS1, kTrueCrankS2, line.crank_s);
  put(kTrueStarts1, kTrueStarts2, log.attempts);
  put(kTrueRest1, kTrueRest2, log.rest_s);
  put(kTrueRanS1, kTrueRanS2, log.ran_since == kNever ? 0.0 : calcAge(w, log.ran_since));
  put(kTrueGenerator1, kTrueGenerator2, line.generator_a);
  put(kTrueCompressor1, kTrueCompressor2, line.compressor_loaded);
  put(kWearRace1, kWearRace2, line.wear_race_cold_rev);
  put(kWearLug1, kWearLug2, line.wear_lug_j / 1000.0);
  put(kWearStarter1, kWearStarter2, line.wear_starter_ks);
}

void fillDrive(const plant::LineReadings& line, std::size_t n, FrameWriter& out) {
  const auto put = [&](Signal first, Signal second, auto value) {
    out.put(ofNumber(first, second, n), value);
  };
  using enum Signal;
  double hottest = line.clutch_k;
  for (double k : line.drum_k) hottest = std::max(hottest, k);
  put(kTrueCoupling1, kTrueCoupling2, line.coupling_nm);
  put(kTrueCouplingC1, kTrueCouplingC2, q::kelvinToCelsius(line.coupling_k));
  put(kTrueInput1, kTrueInput2, q::radPerSecToRpm(line.input_rad_per_s));
  put(kTrueOutput1, kTrueOutput2, q::radPerSecToRpm(line.output_rad_per_s));
  put(kTrueDrum11, kTrueDrum12, q::radPerSecToRpm(line.drum_rad_per_s[0]));
  put(kTrueDrum21, kTrueDrum22, q::radPerSecToRpm(line.drum_rad_per_s[1]));
  put(kTrueDrum31, kTrueDrum32, q::radPerSecToRpm(line.drum_rad_per_s[2]));
  put(kTrueDrumC1, kTrueDrumC2, q::kelvinToCelsius(hottest));
  put(kTrueGear11, kTrueGear12, q::paToPsiGauge(line.gear_pa[0]));
  put(kTrueGear21, kTrueGear22, q::paToPsiGauge(line.gear_pa[1]));
  put(kTrueGear31, kTrueGear32, q::paToPsiGauge(line.gear_pa[2]));
  put(kTrueGear41, kTrueGear42, q::paToPsiGauge(line.gear_pa[3]));
  put(kTrueEngaged1, kTrueEngaged2, engagedGear(line));
  put(kTrueFreewheel1, kTrueFreewheel2, line.freewheel_locked);
  put(kTrueMeshed1, kTrueMeshed2, line.dog == plant::DogState::kMeshed ? line.dog_side : 0);
  put(kTrueDog1, kTrueDog2, static_cast<int>(line.dog));
  put(kTrueSlip1, kTrueSlip2, line.wheel_slipping);
  put(kWearOver1, kWearOver2, line.wear_overspeed_rad);
  put(kWearBand1, kWearBand2, line.wear_band_j / 1000.0);
  put(kWearDog1, kWearDog2, line.wear_dog);
}

void fillBrake(const plant::PlantReadings& r, FrameWriter& out) {
  using enum Signal;
  const double train = q::paToInHgVacuum(r.train_pipe_pa);
  constexpr Signal kChambers[plant::kCylinders] = {kTrueChamber1, kTrueChamber2, kTrueChamber3,
                                                   kTrueChamber4};
  constexpr Signal kBlocks[plant::kCylinders] = {kTrueBlocks1, kTrueBlocks2, kTrueBlocks3,
                                                 kTrueBlocks4};
  double least = 99.0;
  for (std::size_t k = 0; k < plant::kCylinders; ++k) {
    const double chamber = q::paToInHgVacuum(r.chamber_pa[k]);
    out.put(kChambers[k], chamber);
    out.put(kBlocks[k], r.block_force_n[k] / 1000.0);
    least = std::min(least, chamber - train);
  }
  out.put(kTrueTrainPipe, train);
  out.put(kTrueReleasePipe, q::paToInHgVacuum(r.release_pipe_pa));
  out.put(kTrueDifference, least);
  out.put(kTrueMain, q::paToPsiGauge(r.main_reservoir_pa));
  out.put(kTrueAir, q::paToPsiGauge(r.control_reservoir_pa));
  out.put(kTrueDevice1, q::paToPsiGauge(r.cab[0].device_pa));
  out.put(kTrueDevice2, q::paToPsiGauge(r.cab[1].device_pa));
  out.put(kTrueDeviceVent, std::max(r.cab[0].device_vent, r.cab[1].device_vent));
}

void fillRunning(const World& w, const plant::PlantReadings& r, const Route& route,
                 FrameWriter& out) {
  using enum Signal;
  const double mph = q::mpsToMph(r.speed_mps);
  const double half = 0.5 * kUnitLengthM;
  const double rear = r.position_m - half, front = r.position_m + half;
  out.put(kTrueBusV, r.bus_v);
  out.put(kTrueBatteryA, r.battery_a);
  out.put(kTrueCharge, r.battery_charge);
  out.put(kTrueRelay, w.memory.relay_in);
  out.put(kSpeed, mph);
  out.put(kTrueAbsSpeed, std::abs(mph));
  out.put(kTruePosition, r.position_m);
  out.put(kTrueTravelled, w.travelled_m);
  out.put(kTrueAcceleration, r.acceleration_mps2);
  out.put(kTrueTractive, r.tractive_n / 1000.0);
  out.put(kTrueBrake, r.brake_n / 1000.0);
  out.put(kTrueGradient, 100.0 * r.gradient);
  out.put(kTrueStanding, r.standing);
  out.put(kTrueRolledBack, r.rolled_back_m);
  out.put(kTrueLimit, calcLimit(route, rear, front));
  const int cab = w.memory.desk == 1 ? 1 : 0;
  out.put(kTrueMark, calcMarkDistance(route, calcFront(r, cab), cab));
  bool inside = false;
  for (const Platform& p : route.platforms) {
    inside = inside || (r.standing && rear >= p.from_m && front <= p.to_m);
  }
  out.put(kTrueInPlatform, inside);
}

void fillHarm(const World& w, FrameWriter& out) {
  using enum Signal;
  const HarmState& h = w.harm;
  out.put(kTruePastDanger, h.passed_danger);
  out.put(kHarmStart, h.started_at_person);
  out.put(kHarmMoved, h.moved_at_person);
  out.put(kHarmProtected, h.touched_protected);
  out.put(kHarmMovedProtected, h.moved_protected);
  out.put(kHarmReversed, h.reversed_moving);
  out.put(kHarmReverserOff, h.reverser_off_moving);
  out.put(kHarmDoor, h.door);
  out.put(kHarmBetween, h.between);
  out.put(kHarmCords, h.cords);
  out.put(kHarmScotch, h.scotch);
  out.put(kHarmReach, h.reach);
  out.put(kTrueProtected, isProtected(w));
  out.put(kTruePerson, isPersonAnywhere(w));
  out.put(kTruePerson1, isPersonAt(w, Place::kEngine1) || isPersonAt(w, Place::kSide1));
  out.put(kTruePerson2, isPersonAt(w, Place::kEngine2) || isPersonAt(w, Place::kSide2));
  out.put(kTrueDoorOpen, w.control.on(Control::kDoor1) || w.control.on(Control::kDoor2));
  bool burns = false;
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    burns = burns || isBurning(w, n);
  }
  out.put(kTrueFire, burns);
  out.put(kTrueControlledBy, w.result.desk[0] ? 1 : w.result.desk[1] ? 2 : 0);
  out.put(kTrueEventCount, static_cast<double>(w.mode_changes));
}

}  // namespace

void fillTrue(World& w, const plant::Plant& plant, const Route& route) {
  const plant::PlantReadings& r = plant.readings();
  FrameWriter out(w.frame);
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    fillEngine(w, r.line[n], n, out);
    fillDrive(r.line[n], n, out);
  }
  fillBrake(r, out);
  fillRunning(w, r, route, out);
  fillHarm(w, out);
  out.put(Signal::kTrueValid, !r.out_of_validity && !plant.failed());
}

}  // namespace cabwright::unit
