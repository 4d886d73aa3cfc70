// SPDX-License-Identifier: GPL-3.0-or-later
// Throttle valves stuck open, and the driver lets go: the device itself vents the motors.
#include <gtest/gtest.h>

#include "fault_rig.h"
#include "quantity/units.h"

namespace cabwright::testing {
namespace {

unit::UnitStart runningStart() {
  unit::UnitStart s = readyStart();
  for (plant::LineStart& line : s.plant.line) {
    line.crank_rpm = 420;
    line.coolant_c = line.oil_c = 75;
    line.box_oil_c = line.coupling_c = 60;
    line.latch_tripped = 0;
  }
  s.controls = {{"cab1.key", "on"}, {"cab1.reverser", "forward"}};
  return s;
}

TEST(DeviceTrip, TakesThePowerAwayWithTheThrottleValvesStuckOpen) {
  FaultRig rig(runningStart());
  rig.faults.arm(armed("throttle_motor1.valve_stuck_open", 3.0));
  rig.act("hold cab1.device");
  rig.run(12.0);
  const auto rpm = [&](std::size_t n) {
    return quantity::radPerSecToRpm(rig.unit.readings().line[n].crank_rad_per_s);
  };
  ASSERT_GT(rpm(0), 1500.0) << "stuck in notch 3";
  EXPECT_LT(rpm(1), 500.0) << "the other one is sound";
  rig.act("release cab1.device");
  rig.run(3.0);
  EXPECT_GT(rpm(0), 1500.0) << "the device has not acted yet";
  rig.run(12.0);
  EXPECT_GT(rig.value("true.device_vent"), 0.9);
  EXPECT_LT(rpm(0), 500.0);
}

}  // namespace
}  // namespace cabwright::testing
