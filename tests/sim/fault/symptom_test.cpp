// SPDX-License-Identifier: GPL-3.0-or-later
// Symptoms come out of the machine: each of these runs twice, sound and with the fault.
#include <gtest/gtest.h>

#include "fault_rig.h"

namespace cabwright::fault {
namespace {

using cabwright::testing::armed;
using cabwright::testing::FaultRig;
using cabwright::testing::readyStart;

FaultRig withFault(std::string_view name, double size = 0) {
  FaultRig rig;
  rig.faults.arm(armed(name, size));
  return rig;
}

double fallInLap(FaultRig rig) {
  rig.run(60.0);
  return 21.0 - rig.value("true.train_pipe");
}

TEST(Symptom, ALeakingTrainPipeFallsMoreThanThreeInchesAMinuteInLap) {
  EXPECT_LT(fallInLap(FaultRig()), 3.0);
  EXPECT_GT(fallInLap(withFault("vacuum.train_pipe_leak", 3.0)), 3.0);
}

TEST(Symptom, AValveThatPassesFromTheReleasePipeCreepsTheBrakeOff) {
  const auto riseAfterApplication = [](FaultRig rig) {
    rig.act("set cab1.brake full");
    rig.run(1.0);
    rig.act("set cab1.brake lap");
    rig.run(1.0);
    const double applied = rig.value("true.train_pipe");
    rig.run(20.0);
    return rig.value("true.train_pipe") - applied;
  };
  EXPECT_LT(riseAfterApplication(FaultRig()), 0.0);
  EXPECT_GT(riseAfterApplication(withFault("drivers_valve1.passes_to_release", 2.0)), 1.0);
}

TEST(Symptom, AnOpenDrainEmptiesTheMainReservoir) {
  FaultRig sound, leaking = withFault("air.main_drain_open");
  sound.run(20.0);
  leaking.run(20.0);
  EXPECT_GT(sound.value("true.main_air"), 85.0);
  EXPECT_LT(leaking.value("true.main_air"), 60.0);
}

double secondsUntilDeviceTrips(FaultRig rig) {
  rig.act("hold cab1.device down");
  rig.act("scenario: set cab1.reverser forward");
  rig.run(2.0);
  rig.act("release cab1.device");
  for (int k = 0; k < 300; ++k) {
    if (rig.value("true.device_vent") > 0.1) return 0.1 * k;
    rig.run(0.1);
  }
  return 1e9;
}

TEST(Symptom, ABlockedChokeMakesTheSafetyDeviceLateOrNever) {
  const double sound = secondsUntilDeviceTrips(FaultRig());
  EXPECT_NEAR(sound, 5.0, 1.0);
  const double late = secondsUntilDeviceTrips(withFault("safety_device1.choke_blocked", 55.0));
  EXPECT_NEAR(late / sound, 1.0 / 0.45, 0.25);
  EXPECT_GT(secondsUntilDeviceTrips(withFault("safety_device1.choke_blocked", 100.0)), 100.0);
}

TEST(Symptom, AStuckGaugeStaysWhileTheVacuumFalls) {
  FaultRig rig;
  rig.run(1.0);
  rig.faults.arm(armed("cab1.train_pipe_stuck"));
  rig.run(0.02);
  const double shown = rig.value("cab1.train_pipe");
  rig.act("set cab1.brake full");
  rig.run(10.0);
  EXPECT_LT(rig.value("true.train_pipe"), 5.0);
  EXPECT_NEAR(rig.value("cab1.train_pipe"), shown, 0.05);
  EXPECT_LT(rig.value("cab2.train_pipe"), 5.0);
}

TEST(Symptom, ToothOnToothThereIsNoMeshAndNoAirLamp) {
  const auto meshed = [](FaultRig rig) {
    rig.run(0.1);
    rig.act("set cab1.reverser forward");
    rig.run(4.0);
    return std::pair(rig.value("true.drive1.meshed"), rig.value("cab1.lamp_air"));
  };
  unit::UnitStart facing = readyStart();
  for (auto& line : facing.plant.line) line.tooth_phase_deg = 4.0;
  EXPECT_EQ(meshed(FaultRig(facing)), std::pair(1.0, 1.0));
  FaultRig blocked(facing);
  blocked.faults.arm(armed("final_drive1.tooth_on_tooth"));
  EXPECT_EQ(meshed(blocked), std::pair(0.0, 0.0));
}

TEST(Symptom, ADeadCellTakesTwoVolts) {
  FaultRig sound, dead = withFault("battery.cell_dead", 1.0);
  sound.run(1.0);
  dead.run(1.0);
  EXPECT_NEAR(sound.value("true.volts") - dead.value("true.volts"), 2.1, 0.2);
}

TEST(Symptom, TwoLeaksLeakTogether) {
  const double one = fallInLap(withFault("vacuum.train_pipe_leak", 2.0));
  const double other = fallInLap(withFault("vacuum.hose_chafed", 2.0));
  FaultRig both = withFault("vacuum.train_pipe_leak", 2.0);
  both.faults.arm(armed("vacuum.hose_chafed", 2.0));
  EXPECT_NEAR(one, other, 1e-3);
  EXPECT_GT(fallInLap(both), 1.5 * one);
}

}  // namespace
}  // namespace cabwright::fault
