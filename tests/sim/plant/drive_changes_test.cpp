// SPDX-License-Identifier: GPL-3.0-or-later
// Bands at low air, rolling back, two faults at once, a long stand with everything off.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>

#include "plant/plant.h"
#include "plant_rig.h"
#include "vehicle_text.h"

namespace cabwright::testing {
namespace {

// A vehicle whose air stays where it is put: a large reservoir, compressors without a drive.
plant::Parameters withSteadyAir(const std::string& more = "") {
  return vehicleWith(
      "air.control_m3 = 5\nair.main_leak_c = 0\nair.control_leak_c = 0\ncompressor.belt = 0\n" +
      more);
}

struct Grip {
  bool locked = false;
  double heat_j = 0, integral_j = 0, wear_j = 0;
};

// First gear, standing against the brakes, full power by the hand throttle: does the band hold?
Grip tryFirstGear(double air_psi, const plant::Parameters& p) {
  PlantRig rig(warmReady(air_psi), {}, p);
  rig.in.cab[0].drivers_valve = plant::kValveFull;
  for (plant::LineInputs& line : rig.in.line) line.shift_forward = true;
  rig.run(5.0);
  rig.gear(1);
  rig.run(4.0);
  for (plant::LineInputs& line : rig.in.line) line.hand_throttle = 1.0;
  rig.run(2.0);
  Grip grip;
  const double heat_j_k = p.gearbox[0].band[0].heat_j_k;
  const double from_k = rig.now().line[0].drum_k[0], worn = rig.now().line[0].wear_band_j;
  double lost_j = 0.0, before = 0.0;
  const auto power = [&] {
    plant::State dx;
    plant::Forces f;
    plant::calcRates(rig.world.m, rig.world.modes, rig.world.x, dx, f);
    const double force = plant::calcRowForces(rig.world.modes, f)[plant::kBandRow];
    return -force * rig.now().line[0].drum_rad_per_s[0];
  };
  before = power();
  for (int tick = 0; tick < 300; ++tick) {
    rig.tick();
    const double now = power();
    grip.integral_j += 0.005 * (before + now);
    before = now;
    lost_j += 0.01 * p.gearbox[0].band[0].cooling_w_k *
              (rig.now().line[0].drum_k[0] - rig.now().line[0].box_oil_k);
  }
  grip.locked = rig.now().line[0].gear_locked[0];
  grip.heat_j = (rig.now().line[0].drum_k[0] - from_k) * heat_j_k + lost_j;
  grip.wear_j = rig.now().line[0].wear_band_j - worn;
  return grip;
}

TEST(DriveChanges, BandsHoldByTheirAirAndHeatByTheirSlip) {
  const plant::Parameters p = withSteadyAir();
  for (double psi : {30.0, 40.0, 50.0, 60.0, 75.0}) {
    const Grip grip = tryFirstGear(psi, p);
    std::printf("CHANGE | first gear, full power, %.0f psi: %s, %.1f kJ in three seconds\n", psi,
                grip.locked ? "holds" : "slips", grip.integral_j * 1e-3);
    EXPECT_EQ(grip.locked, psi > 55.0) << psi << " psi";
    EXPECT_NEAR(grip.heat_j, grip.integral_j, 0.01 * grip.integral_j + 5.0) << psi << " psi";
    if (!grip.locked) {
      EXPECT_GT(grip.integral_j, 1e4);
      // The marker's account leaves out the drum's own oil drag.
      EXPECT_NEAR(grip.wear_j, grip.integral_j, 0.03 * grip.integral_j);
    }
  }
}

TEST(DriveChanges, WornBandAndLowAirTogetherAreThePhysicsOfBoth) {
  const plant::Parameters sound = withSteadyAir();
  const plant::Parameters worn = withSteadyAir("gearbox.band1.friction = 0.1116\n");
  EXPECT_TRUE(tryFirstGear(75.0, sound).locked);
  EXPECT_TRUE(tryFirstGear(75.0, worn).locked) << "worn, but with air enough";
  EXPECT_TRUE(tryFirstGear(60.0, sound).locked) << "low, but with a good lining";
  EXPECT_FALSE(tryFirstGear(60.0, worn).locked) << "both";
}

// The pressure the train pipe settles at, Pa, engines idling and handle in release.
double calcHeldVacuum(double leak_c, double second_belt) {
  PlantRig rig(warmReady(), {},
               vehicleWith(fmt::format("vacuum.train_leak_c = {}\nexhauster2.belt = {}\n", leak_c,
                                       second_belt)));
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.run(400.0);
  return rig.trainInHg();
}

TEST(DriveChanges, LeakAndOneExhausterTogetherAreWorseThanEither) {
  const double sound = calcHeldVacuum(0.1, 1.0);
  const double leak = calcHeldVacuum(4.0, 1.0), lame = calcHeldVacuum(0.1, 0.0);
  const double both = calcHeldVacuum(4.0, 0.0);
  std::printf("CHANGE | vacuum held: sound %.2f, leak %.2f, one exhauster %.2f, both %.2f inHg\n",
              sound, leak, lame, both);
  EXPECT_LT(both, leak - 0.3);
  EXPECT_LT(both, lame - 0.3);
  EXPECT_LE(leak, sound + 0.05);
  EXPECT_LE(lame, sound + 0.05);
}

TEST(DriveChanges, OrderInWhichFaultsComeDoesNotMatter) {
  const auto run = [](bool leak_first) {
    plant::Plant p(plant::Parameters(), {}, warmReady());
    plant::PlantInputs u;
    u.cab[0].drivers_valve = plant::kValveRelease;
    u.cab[0].handbrake = u.cab[1].handbrake = 1.0;
    for (int k = 0; k < 500; ++k) p.advance(u);
    const auto leak = [&] {
      p.setParameter(*plant::findParameters("vacuum.train_leak_c")[0], 2.0);
    };
    const auto belt = [&] { p.setParameter(*plant::findParameters("exhauster1.belt")[0], 0.0); };
    if (leak_first) leak();
    belt();
    if (!leak_first) leak();
    for (int k = 0; k < 3000; ++k) p.advance(u);
    return p.hash();
  };
  EXPECT_EQ(run(true), run(false));
}

struct Rolled {
  double back_mph = 0, turbine = 0, lowest_rpm = 1e9, later_mph = 0;
};

Rolled rollBack(double gradient, int notch) {
  PlantRig rig(warmReady(), slope(gradient));
  rig.forward();
  rig.in.cab[0].drivers_valve = plant::kValveFull;
  rig.run(6.0);
  rig.gear(1);
  rig.run(4.0);
  rig.handbrakes(0.0);
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  Rolled rolled;
  for (int tick = 0; tick < 2500; ++tick) {
    rig.tick();
    rolled.lowest_rpm = std::min(rolled.lowest_rpm, rig.rpm(0));
  }
  rolled.back_mph = rig.mph();
  rolled.turbine = rig.now().line[0].turbine_rad_per_s;
  rig.notch(notch);
  rig.run(25.0);
  rolled.later_mph = rig.mph();
  return rolled;
}

TEST(DriveChanges, RollsBackInFirstAtIdleAndPowerStopsIt) {
  for (double one_in : {80.0, 50.0}) {
    const Rolled r = rollBack(1.0 / one_in, 4);
    std::printf(
        "CHANGE | 1 in %.0f, first, idle: %.2f mph, turbine %.1f rad/s, engine over %.0f "
        "rpm; notch 4: %.2f mph\n",
        one_in, r.back_mph, r.turbine, r.lowest_rpm, r.later_mph);
    EXPECT_LT(r.back_mph, -0.2);
    EXPECT_LT(r.turbine, -1.0) << "the turbine is driven backward";
    EXPECT_GT(r.lowest_rpm, 340.0) << "and the engine stays up";
    EXPECT_GT(r.later_mph, 0.0) << "power stops it";
  }
  EXPECT_LT(rollBack(1.0 / 50.0, 0).later_mph, rollBack(1.0 / 80.0, 0).later_mph - 0.2);
}

TEST(DriveChanges, RollingBackCountsFromWhereTheDogsWerePutOver) {
  PlantRig rig(warmReady());
  rig.forward();
  rig.handbrakes(0.0);
  rig.gear(1);
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.run(4.0);
  rig.notch(2);
  rig.run(20.0);
  rig.notch(0);
  rig.gear(0);
  rig.in.cab[0].drivers_valve = plant::kValveFull;
  ASSERT_GE(rig.runUntil([](const PlantRig& r) { return r.now().standing; }, 60.0), 0.0);
  const double stopped_m = rig.now().position_m;
  ASSERT_GT(stopped_m, 10.0);
  for (plant::LineInputs& line : rig.in.line) {
    line.shift_forward = false;
    line.shift_reverse = true;
  }
  const auto reversed = [](const PlantRig& r) { return r.now().line[0].dog_side < 0; };
  ASSERT_GE(rig.runUntil(reversed, 30.0), 0.0);
  EXPECT_LT(rig.now().rolled_back_m, 0.01) << "what was covered the other way is no rolling back";
}

TEST(DriveChanges, EverythingDecaysAtItsOwnRateThroughTheHours) {
  // What the machine does in three hours by itself against what a start after three hours says.
  plant::Parameters p;
  plant::StartConditions start = plant::StartConditions::afterStanding(0.0, 5.0, p);
  PlantRig rig(start, {}, p);
  rig.in.battery_switch_closed = false;
  struct Sample {
    double main, chamber, coolant, box, coupling, charge;
  };
  const auto sample = [&] {
    const plant::PlantReadings& r = rig.now();
    return Sample{r.main_reservoir_pa,           r.chamber_pa[0],
                  r.line[0].coolant_k - 278.15,  r.line[0].box_oil_k - 278.15,
                  r.line[0].coupling_k - 278.15, r.battery_charge};
  };
  const Sample begin = sample();
  rig.run(5400.0);
  const Sample middle = sample();
  rig.run(5400.0);
  const Sample end = sample();
  const plant::StartConditions said = plant::StartConditions::afterStanding(3.0, 5.0, p);
  std::printf(
      "CHANGE | three hours off: air %.1f psi (said %.1f), coolant %.1f C (said %.1f), "
      "chamber %.2f inHg (said %.2f)\n",
      q::paToPsiGauge(end.main), said.main_psi, end.coolant + 5.0, said.line[0].coolant_c,
      q::paToInHgVacuum(end.chamber), said.chamber_inhg);
  EXPECT_NEAR(q::paToPsiGauge(end.main), said.main_psi, 0.05);
  EXPECT_NEAR(end.coolant + 5.0, said.line[0].coolant_c, 1.0);
  EXPECT_NEAR(end.box + 5.0, said.line[0].box_oil_c, 1.0);
  EXPECT_NEAR(end.coupling + 5.0, said.line[0].coupling_c, 1.0);
  EXPECT_NEAR(end.charge, said.battery_charge, 1e-6);
  EXPECT_NEAR(q::paToInHgVacuum(end.chamber), said.chamber_inhg, 0.02);
  // Equal shares in equal times: the mark of an exponential.
  EXPECT_NEAR(end.coupling / middle.coupling, middle.coupling / begin.coupling, 0.02);
  EXPECT_NEAR(end.box / middle.box, middle.box / begin.box, 0.05);
  EXPECT_LT(end.coolant, middle.coolant);
  EXPECT_LT(middle.coolant, begin.coolant);
  EXPECT_LT(end.main, middle.main);
  EXPECT_GT(end.chamber, middle.chamber);
  // The battery loses the same in the same time.
  EXPECT_NEAR(begin.charge - middle.charge, middle.charge - end.charge, 1e-9);
  EXPECT_EQ(rig.world.counts.storms, 0);
}

}  // namespace
}  // namespace cabwright::testing
