// SPDX-License-Identifier: GPL-3.0-or-later
// Parts that have gone wrong make the machine worse, each by its own physics.
#include <gtest/gtest.h>

#include <cmath>

#include "plant/engine.h"
#include "plant_rig.h"

namespace cabwright::testing {
namespace {

// Engine 1 started warm with the starter, the button let go after it runs, then full hand throttle.
PlantRig startAndRace(double pinion_sticks) {
  plant::Parameters p;
  p.starter[0].pinion_sticks = pinion_sticks;
  plant::StartConditions s = warmReady();
  s.line[0].crank_rpm = 0.0;
  PlantRig rig(s, {}, p);
  rig.in.line[0].hand_throttle = 0.6;
  rig.in.line[0].starter_contactor = true;
  rig.run(2.0);
  rig.in.line[0].starter_contactor = false;
  rig.run(1.0);
  rig.in.line[0].hand_throttle = 1.0;
  rig.run(60.0);
  return rig;
}

TEST(FaultyParts, AStuckPinionIsDrivenByTheEngine) {
  const PlantRig sound = startAndRace(0.0), stuck = startAndRace(1.0);
  const plant::LineReadings &good = sound.now().line[0], &bad = stuck.now().line[0];
  EXPECT_FALSE(good.pinion_in);
  EXPECT_EQ(good.starter_rad_per_s, 0.0);
  EXPECT_TRUE(bad.pinion_in);
  EXPECT_NEAR(bad.starter_rad_per_s, 10.0 * bad.crank_rad_per_s, 1e-9);
  EXPECT_EQ(bad.starter_a, 0.0) << "driven, not fed";
  std::printf(
      "FAULTY | pinion stuck at %.0f rpm: armature %.0f rpm, winding %.0f C (sound %.0f C)\n",
      stuck.rpm(0), q::radPerSecToRpm(bad.starter_rad_per_s), q::kelvinToCelsius(bad.starter_k),
      q::kelvinToCelsius(good.starter_k));
  // Its bearings and brushes heat it: some 1.2 kW at this speed by the drag law.
  EXPECT_GT(bad.starter_k, good.starter_k + 5.0);
  EXPECT_EQ(good.wear_starter_rad, 0.0);
  EXPECT_GT(bad.wear_starter_rad, 1e4) << "and it turns far too fast";
  EXPECT_GT(bad.rack, good.rack) << "the engine works for it";
}

TEST(FaultyParts, AStuckPinionComesOutWhenItIsFreed) {
  PlantRig rig = startAndRace(1.0);
  rig.world.m.p.starter[0].pinion_sticks = 0.0;
  rig.run(0.1);
  EXPECT_FALSE(rig.now().line[0].pinion_in);
  EXPECT_EQ(rig.now().line[0].starter_rad_per_s, 0.0);
}

double chargeAfterTwoHours(double earth_s, bool switch_closed) {
  plant::Parameters p;
  p.battery.earth_s = earth_s;
  plant::StartConditions s;
  PlantRig rig(s, {}, p);
  rig.in.battery_switch_closed = switch_closed;
  rig.run(7200.0);
  return rig.now().battery_charge;
}

TEST(FaultyParts, AnEarthFaultDrawsThroughTheBatterySwitch) {
  const double two_amperes = 2.0 / 24.0;
  const double sound = chargeAfterTwoHours(0.0, true),
               open = chargeAfterTwoHours(two_amperes, false);
  const double closed = chargeAfterTwoHours(two_amperes, true);
  std::printf(
      "FAULTY | 2 A to the frame for two hours: charge %.4f closed, %.5f open, %.5f sound\n",
      closed, open, sound);
  EXPECT_EQ(open, sound) << "the open switch takes it off";
  EXPECT_NEAR(sound - closed, 0.02, 0.002) << "4 of 200 A h";
  EXPECT_NEAR(plant::StartConditions::afterStanding(2.0, 15.0,
                                                    [] {
                                                      plant::Parameters p;
                                                      p.battery.earth_s = 2.0 / 24.0;
                                                      return p;
                                                    }())
                  .battery_charge,
              closed, 1e-4);
}

// Pulls away in first and changes up twice under full power, again and again against the brakes.
struct Haul {
  double speed_mph = 0, tractive_n = 0, box_k = 0, drum_k = 0;
};

Haul haul(double oil_level) {
  plant::Parameters p;
  for (plant::GearboxParameters& g : p.gearbox) g.oil_level = oil_level;
  PlantRig rig(warmReady(), {}, p);
  rig.forward();
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.handbrakes(0.0);
  rig.run(5.0);
  Haul h;
  for (int round = 0; round < 3; ++round) {
    for (int gear = 1; gear <= 3; ++gear) {
      rig.notch(0);
      rig.gear(gear);
      rig.run(2.0);
      rig.notch(4);
      rig.run(12.0);
      if (round == 0 && gear == 1) h.tractive_n = rig.now().tractive_n;
      h.drum_k = std::max(h.drum_k, rig.now().line[0].drum_k[static_cast<std::size_t>(gear - 1)]);
    }
    if (round == 0) h.speed_mph = rig.mph();
    rig.notch(0);
    rig.in.cab[0].drivers_valve = plant::kValveFull;
    rig.run(40.0);
    rig.in.cab[0].drivers_valve = plant::kValveRelease;
    rig.run(20.0);
  }
  h.box_k = rig.now().line[0].box_oil_k;
  return h;
}

TEST(FaultyParts, AGearboxShortOfOilPullsWorseAndRunsHotter) {
  Haul before = haul(1.0);
  const Haul sound = before;
  for (double level : {0.5, 0.2, 0.0}) {
    const Haul h = haul(level);
    std::printf(
        "FAULTY | box oil %.0f %%: pull %.2f kN (sound %.2f), %.2f mph (%.2f), box %.1f C "
        "(%.1f), drum %.1f C (%.1f)\n",
        100.0 * level, 1e-3 * h.tractive_n, 1e-3 * sound.tractive_n, h.speed_mph, sound.speed_mph,
        q::kelvinToCelsius(h.box_k), q::kelvinToCelsius(sound.box_k), q::kelvinToCelsius(h.drum_k),
        q::kelvinToCelsius(sound.drum_k));
    EXPECT_LT(h.tractive_n, before.tractive_n);
    EXPECT_LT(h.speed_mph, before.speed_mph);
    EXPECT_GT(h.box_k, before.box_k);
    EXPECT_GT(h.drum_k, before.drum_k);
    before = h;
  }
  EXPECT_LT(before.tractive_n, 0.97 * sound.tractive_n);
}

TEST(FaultyParts, ABoxALittleBelowItsMarkIsSound) {
  const Haul full = haul(1.0), lower = haul(0.85);
  EXPECT_NEAR(lower.tractive_n, full.tractive_n, 0.005 * full.tractive_n);
}

double oilBar(double level, double rpm) {
  plant::EngineParameters p;
  p.oil_level = level;
  return 1e-5 * plant::calcOilPressure(p, q::rpmToRadPerSec(rpm), 80.0);
}

TEST(FaultyParts, EngineOilPressureFallsWithTheSump) {
  for (double rpm : {420.0, 900.0, 1800.0}) {
    EXPECT_EQ(oilBar(0.75, rpm), oilBar(1.0, rpm)) << "between the marks";
    EXPECT_LT(oilBar(0.3, rpm), 0.6 * oilBar(1.0, rpm)) << "seven tenths missing";
    EXPECT_EQ(oilBar(0.05, rpm), 0.0) << "nothing but air";
  }
  // Nothing on the dipstick: enough for the lamp at idle, gone as the engine speeds up and the oil
  // hangs in pipes and bearings.
  std::printf("FAULTY | 30 %% of the engine oil: %.2f bar at idle, %.2f at 900, %.2f at 1800 rpm\n",
              oilBar(0.3, 420.0), oilBar(0.3, 900.0), oilBar(0.3, 1800.0));
  EXPECT_GT(oilBar(0.3, 420.0), 0.7);
  EXPECT_LT(oilBar(0.3, 1800.0), 0.1);
  for (double level = 0.0; level < 1.0; level += 0.05) {
    EXPECT_LE(oilBar(level, 1200.0), oilBar(level + 0.05, 1200.0));
  }
}

}  // namespace
}  // namespace cabwright::testing
