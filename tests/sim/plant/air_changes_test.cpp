// SPDX-License-Identifier: GPL-3.0-or-later
// Vehicles with other reservoirs, compressors, chokes and leaks: the times move as gas laws say,
// because nothing but gas laws makes them.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>

#include "plant_rig.h"

namespace cabwright::testing {
namespace {

double calcFillTime(const plant::Parameters& p) {
  PlantRig rig(warmIdling(), {}, p);
  for (plant::LineInputs& line : rig.in.line) line.hand_throttle = 0.42;
  return rig.runUntil([](const PlantRig& r) { return r.controlPsi() >= 75.0; }, 4000.0);
}

TEST(AirChanges, ReservoirTwiceAsLargeTakesTwiceAsLong) {
  plant::Parameters p;
  const double shipped = calcFillTime(p);
  p.air.main_m3 *= 2.0;
  const double larger = calcFillTime(p);
  const double wanted =
      (p.air.main_m3 + p.air.control_m3) / (0.5 * p.air.main_m3 + p.air.control_m3);
  std::printf("CHANGE | main reservoir x 2: fill x %.3f, volumes say %.3f\n", larger / shipped,
              wanted);
  EXPECT_NEAR(larger / shipped, wanted, 0.03 * wanted);
  p.air.control_m3 *= 2.0;
  EXPECT_NEAR(calcFillTime(p) / shipped, 2.0, 0.06);
}

TEST(AirChanges, HalfTheSweptVolumeTakesTwiceAsLong) {
  plant::Parameters p;
  const double shipped = calcFillTime(p);
  for (plant::CompressorParameters& c : p.compressor) c.swept_l_rev *= 0.5;
  const double slower = calcFillTime(p);
  // The leaks stay: a little more than twice.
  std::printf("CHANGE | swept volume x 0.5: fill x %.3f\n", slower / shipped);
  EXPECT_NEAR(slower / shipped, 2.0, 0.08);
  p = {};
  p.compressor[1].belt = 0.0;
  EXPECT_NEAR(calcFillTime(p) / shipped, 2.0, 0.08) << "and so does one compressor of two";
}

// Time from letting go to the device beginning to open the pipe; negative: not within two minutes.
double calcDeviceTime(const plant::Parameters& p, double air_psi) {
  PlantRig rig(warmReady(air_psi), {}, p);
  rig.forward();
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.run(10.0);
  rig.in.cab[0].device_held = false;
  return rig.runUntil([](const PlantRig& r) { return r.now().cab[0].device_vent > 0.0; }, 120.0);
}

TEST(AirChanges, TheDevicesTimeIsItsChokeAndVolume) {
  plant::Parameters p;
  const double shipped = calcDeviceTime(p, 92.0);
  p.safety_device[0].choke_c *= 2.0;
  EXPECT_NEAR(calcDeviceTime(p, 92.0), 0.5 * shipped, 0.02);
  p = {};
  p.safety_device[0].volume_m3 *= 1.5;
  EXPECT_NEAR(calcDeviceTime(p, 92.0), 1.5 * shipped, 0.03);
  p = {};
  p.safety_device[0].choke_c = 0.0;
  EXPECT_LT(calcDeviceTime(p, 92.0), 0.0) << "blocked: never";
  std::printf("CHANGE | device: %.2f s, from 75 psi %.2f s, from 95 psi %.2f s\n", shipped,
              calcDeviceTime({}, 75.0), calcDeviceTime({}, 94.5));
  EXPECT_NEAR(calcDeviceTime({}, 75.0), calcDeviceTime({}, 94.5), 0.1);
}

// Standing, handle in lap, engines stopped, the pipe's vacuum known.
PlantRig makeLapped(const plant::Parameters& p) {
  plant::StartConditions s;
  s.train_pipe_inhg = s.chamber_inhg = 21.0;
  s.release_pipe_inhg = 25.0;
  return PlantRig(s, {}, p);
}

TEST(AirChanges, ALeakInLapFallsByTheGasLaw) {
  for (double c : {0.1, 0.5, 2.0}) {
    plant::Parameters p;
    p.vacuum.train_leak_c = c;
    for (plant::CylinderParameters& y : p.brake_cylinder) y.leak_c = 0.0;
    PlantRig rig = makeLapped(p);
    const double from = rig.now().train_pipe_pa;
    rig.run(0.5);
    const double rate = (rig.now().train_pipe_pa - from) / 0.5;
    double volume = p.vacuum.train_m3;
    for (const plant::CylinderParameters& y : p.brake_cylinder) volume += y.lower_m3;
    // Choked at this vacuum: m' = C rho0 p1 sqrt(T0/T), ISO 6358, with C in dm3/(s bar).
    const double gas_k = 288.15;
    const double mass_rate = c * 1e-8 * 1.185 * 101325.0 * std::sqrt(293.15 / gas_k);
    const double wanted = 287.05287 * gas_k * mass_rate / volume;
    std::printf("CHANGE | lap leak C = %.1f: %.1f Pa/s, law %.1f Pa/s\n", c, rate, wanted);
    EXPECT_NEAR(rate, wanted, 0.01 * wanted);
  }
}

double calcTimeToApply(double c) {
  plant::Parameters p;
  p.vacuum.train_leak_c = c;
  PlantRig rig = makeLapped(p);
  return rig.runUntil([](const PlantRig& r) { return r.now().block_force_n[0] > 0.0; }, 3600.0);
}

TEST(AirChanges, LeaksOfThreeSizesApplyTheBrakeInProportionOrNever) {
  const double large = calcTimeToApply(0.8), middle = calcTimeToApply(0.4);
  std::printf("CHANGE | lapped leak to blocks on: %.1f s, half the hole %.1f s\n", large, middle);
  EXPECT_GT(large, 0.0);
  EXPECT_NEAR(middle / large, 2.0, 0.1);
  EXPECT_LT(calcTimeToApply(0.0), 0.0) << "tight: never within the hour";
  // With the handle in release and the engines running the feed makes small leaks good.
  plant::Parameters p;
  p.vacuum.train_leak_c = 0.8;
  PlantRig rig(warmReady(), {}, p);
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.run(120.0);
  EXPECT_EQ(rig.now().block_force_n[0], 0.0);
}

TEST(AirChanges, AChokedReservoirEmptiesExponentially) {
  plant::Parameters p;
  p.air.check_back_c = p.air.check_c = 0.0;
  plant::StartConditions s;
  s.main_psi = 95.0;
  PlantRig rig(s, {}, p);
  rig.in.reservoir_drain[0] = true;
  const double from = rig.now().main_reservoir_pa;
  rig.run(6.0);
  const double c = p.air.drain_c + p.air.main_leak_c;
  const double rate =
      c * 1e-8 * 1.185 * std::sqrt(293.15 / 288.15) * 287.05287 * 288.15 / p.air.main_m3;
  ASSERT_GT(from * std::exp(-rate * 6.0), 101325.0 / p.air.critical_ratio) << "choked throughout";
  EXPECT_NEAR(rig.now().main_reservoir_pa, from * std::exp(-rate * 6.0), 1e-4 * from);
}

}  // namespace
}  // namespace cabwright::testing
