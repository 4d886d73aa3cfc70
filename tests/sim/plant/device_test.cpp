// SPDX-License-Identifier: GPL-3.0-or-later
// A safety device that trips takes the power away by itself, whatever the throttle's valves do.
#include <gtest/gtest.h>

#include "plant_rig.h"

namespace cabwright::testing {
namespace {

// Notch 3 asked for all the while, idling warm, device let go after a while if wanted.
PlantRig runWithDevice(bool let_go) {
  PlantRig rig(warmReady());
  rig.forward();
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.notch(3);
  rig.run(10.0);
  rig.in.cab[0].device_held = !let_go;
  rig.run(20.0);
  return rig;
}

TEST(Device, TripsTheThrottleMotorsEvenWithTheirValvesOpen) {
  const PlantRig held = runWithDevice(false), let_go = runWithDevice(true);
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    EXPECT_NEAR(held.rpm(n), 1600.0, 30.0);
    EXPECT_LT(q::paToPsiGauge(let_go.now().line[n].throttle_motor_pa), 0.5);
    EXPECT_LT(let_go.now().line[n].lever, 0.01);
    EXPECT_NEAR(let_go.rpm(n), 425.0, 15.0);
  }
}

TEST(Device, GivesTheThrottleBackWhenTakenHoldOf) {
  PlantRig rig = runWithDevice(true);
  rig.in.cab[0].device_held = true;
  rig.run(15.0);
  EXPECT_NEAR(rig.rpm(0), 1600.0, 30.0);
}

TEST(Device, LeavesTheThrottleAloneUntilItTrips) {
  PlantRig rig(warmReady());
  rig.forward();
  rig.notch(3);
  rig.run(10.0);
  rig.in.cab[0].device_held = false;
  rig.runUntil([](const PlantRig& r) { return r.now().cab[0].device_vent > 0.0; }, 20.0);
  EXPECT_NEAR(rig.rpm(0), 1600.0, 30.0) << "up to the moment it acts";
  // The cock shut, or no direction selected: no device, no trip.
  rig.in.cab[0].device_cock_open = false;
  rig.run(10.0);
  EXPECT_NEAR(rig.rpm(0), 1600.0, 30.0);
}

}  // namespace
}  // namespace cabwright::testing
