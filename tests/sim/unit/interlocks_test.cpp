// SPDX-License-Identifier: GPL-3.0-or-later
// The table row by row, without a plant: facts in, current out.
#include <gtest/gtest.h>

#include "interlock_bench.h"

namespace cabwright::unit {
namespace {

TEST(InterlockTable, HasOneRowPerOutcomeInTheirOrder) {
  std::size_t k = 0;
  for (const InterlockRow& row : interlockTable()) {
    EXPECT_EQ(static_cast<std::size_t>(row.outcome), k++);
    EXPECT_NE(row.needs, 0u) << row.action;
    EXPECT_FALSE(row.refused.empty()) << row.action;
  }
}

TEST(DeskAlive, NeedsBatteryBreakerVoltsAndKey) {
  EXPECT_TRUE(Bench().result().desk[0]);
  for (Control c : {Control::kBatterySwitch, Control::kBreakerControl, Control::kCab1Key}) {
    Bench b;
    b.in.control[c] = 0;
    EXPECT_FALSE(b.result().desk[0]) << controlInfo(c).name;
  }
  Bench keyless;
  keyless.in.has_key[0] = false;
  EXPECT_FALSE(keyless.result().desk[0]);
}

TEST(ControlRelay, PullsAbove17AndDropsBelow12) {
  Bench b;
  b.in.bus_v = 16.5;
  EXPECT_FALSE(b.result().desk[0]);
  b.in.bus_v = 17.5;
  EXPECT_TRUE(b.result().desk[0]);
  b.in.bus_v = 12.5;
  EXPECT_TRUE(b.result().desk[0]);
  b.in.bus_v = 11.5;
  EXPECT_FALSE(b.result().desk[0]);
}

TEST(ControlRelay, RidesThroughADipShorterThanItsLag) {
  Bench b;
  ASSERT_TRUE(b.result().desk[0]);
  b.in.bus_v = 8.0;
  b.memory = calcMemory(b.memory, b.in, b.p, 0.01);
  EXPECT_TRUE(b.memory.relay_in);
  for (int k = 0; k < 10; ++k) b.memory = calcMemory(b.memory, b.in, b.p, 0.01);
  EXPECT_FALSE(b.memory.relay_in);
}

TEST(SecondKey, LeavesControlWithTheFirstCab) {
  Bench b;
  ASSERT_TRUE(b.result().desk[0]);
  b.in.has_key[1] = true;
  b.set(Control::kCab1Key, 1, 1);
  const InterlockResult r = b.result();
  EXPECT_TRUE(r.desk[0]);
  EXPECT_FALSE(r.desk[1]);
  b.set(Control::kCab1Key, 0, 0);
  EXPECT_TRUE(b.result().desk[1]);
}

TEST(GroundStart, NeedsSwitchNeutralAndAStoppedEngine) {
  const auto start = [](auto change) {
    Bench b;
    b.in.control[Control::kEngine2Switch] = 2;
    b.in.control[Control::kEngine2Start] = 1;
    change(b);
    return b.result().starter;
  };
  EXPECT_EQ(start([](Bench&) {}), (std::array<bool, 2>{false, true}));
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kEngine2Switch] = 0; })[1]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kEngine2Switch] = 1; })[1]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kEngine2Start] = 0; })[1]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kCab2Gear] = 1; })[1]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kBreakerStart] = 0; })[1]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kCab1Key] = 0; })[1]);
  EXPECT_FALSE(start([](Bench& b) { b.p.start_relay[1].dead = 1; })[1]);
  // No direction and no device: what a cab start needs, one from the ground does not.
  EXPECT_TRUE(start([](Bench& b) { b.in.control[Control::kCab1Reverser] = 0; })[1]);
  EXPECT_TRUE(start([](Bench& b) { b.in.control[Control::kCab1Device] = 0; })[1]);
}

TEST(CabStart, NeedsDirectionDeviceNeutralAndTheSwitchAtCab) {
  const auto start = [](auto change) {
    Bench b;
    b.in.control[Control::kCab1Start1] = 1;
    change(b);
    return b.result().starter;
  };
  EXPECT_EQ(start([](Bench&) {}), (std::array<bool, 2>{true, false}));
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kCab1Reverser] = 0; })[0]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kCab1Device] = 0; })[0]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kCab1Gear] = 2; })[0]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kEngine1Switch] = 1; })[0]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kEngine1Switch] = 2; })[0]);
  EXPECT_FALSE(start([](Bench& b) { b.in.control[Control::kCab1Start1] = 0; })[0]);
  EXPECT_FALSE(start([](Bench& b) { b.p.desk[0].start1_dead = 1; })[0]);
  // The air light is no part of it, nor is the air gauge.
  EXPECT_TRUE(start([](Bench& b) { b.in.meshed = {0, 0}; })[0]);
  EXPECT_TRUE(start([](Bench& b) { b.in.control_psi = 20; })[0]);
}

TEST(Starter, DropsOutAsTheEngineLampLights) {
  Bench b;
  b.in.control[Control::kCab1Start1] = 1;
  b.in.oil_psi[0] = 30;  // a cold engine has oil pressure as soon as it is turned
  b.in.rpm[0] = 170;
  InterlockResult r = b.result();
  EXPECT_TRUE(r.starter[0]);
  EXPECT_FALSE(r.lamp_engine[0][0]);
  b.in.rpm[0] = 350;
  r = b.result();
  EXPECT_FALSE(r.starter[0]);
  EXPECT_TRUE(r.lamp_engine[0][0]);
}

TEST(Starter, StaysInWithWeldedContactsWhileTheBatteryIsOn) {
  Bench b;
  b.p.start_relay[0].welded = 1;
  EXPECT_TRUE(b.result().starter[0]);
  b.in.control[Control::kBatterySwitch] = 0;
  EXPECT_FALSE(b.result().starter[0]);
}

TEST(Stop, FromTheCabNeedsADirectionFromTheGroundNothing) {
  Bench b;
  b.in.control[Control::kCab1Stop2] = 1;
  EXPECT_EQ(b.result().stop, (std::array<bool, 2>{false, true}));
  b.in.control[Control::kCab1Reverser] = 0;
  EXPECT_FALSE(b.result().stop[1]);
  b.in.control[Control::kEngine2Stop] = 1;
  b.in.bus_v = 0;
  b.p.stop_solenoid[1].dead = 1;
  EXPECT_TRUE(b.result().stop[1]);
}

TEST(Stop, IsLostInTheCabWithADeadSolenoid) {
  Bench b;
  b.in.control[Control::kCab1Stop1] = 1;
  ASSERT_TRUE(b.result().stop[0]);
  b.p.stop_solenoid[0].dead = 1;
  EXPECT_FALSE(b.result().stop[0]);
}

TEST(Direction, ForwardInCab2IsReverseForTheMachine) {
  EXPECT_EQ(Bench(0).result().direction, 1);
  EXPECT_EQ(Bench(1).result().direction, -1);
  Bench b;
  b.set(Control::kCab1Reverser, 0, -1);
  EXPECT_EQ(b.result().direction, -1);
  b.set(Control::kCab1Reverser, 0, 0);
  EXPECT_EQ(b.result().direction, 0);
}

TEST(AirLamp, SpeaksOfMeshAndAirTogether) {
  Bench b;
  EXPECT_TRUE(b.result().lamp_air[0]);
  b.in.meshed = {1, 0};
  EXPECT_FALSE(b.result().lamp_air[0]);
  b.in.meshed = {1, -1};  // the wrong way is not in mesh
  EXPECT_FALSE(b.result().lamp_air[0]);
  b.in.meshed = {1, 1};
  b.in.control[Control::kBreakerLamps] = 0;
  EXPECT_FALSE(b.result().lamp_air[0]);
}

TEST(AirLamp, LightsAbove75AndGoesOutBelow70) {
  Bench b;
  b.in.control_psi = 74;
  EXPECT_FALSE(b.result().lamp_air[0]);
  b.in.control_psi = 76;
  EXPECT_TRUE(b.result().lamp_air[0]);
  b.in.control_psi = 71;
  EXPECT_TRUE(b.result().lamp_air[0]);
  b.in.control_psi = 69;
  EXPECT_FALSE(b.result().lamp_air[0]);
}

TEST(AirLamp, IsByPassedForAPinnedDriveButNotForBoth) {
  Bench b;
  b.in.meshed = {1, 0};
  b.in.control[Control::kEngine2Pin] = 1;
  EXPECT_TRUE(b.result().lamp_air[0]);
  b.in.meshed = {0, 0};
  EXPECT_FALSE(b.result().lamp_air[0]);
  b.in.control[Control::kEngine1Pin] = 1;
  EXPECT_FALSE(b.result().lamp_air[0]);
}

TEST(AirLamp, FollowsAStuckMeshSwitch) {
  Bench b;
  b.in.meshed = {1, 0};
  b.p.mesh_switch[1].stuck = 1;
  EXPECT_TRUE(b.result().lamp_air[0]);
  b.in.meshed = {1, 1};
  b.p.mesh_switch[1].stuck = -1;
  EXPECT_FALSE(b.result().lamp_air[0]);
}

TEST(Gear, IsSelectedWithoutMeshAndUnderPowerForNothingPreventsIt) {
  Bench b;
  b.set(Control::kCab1Gear, 0, 2);
  b.set(Control::kCab1Throttle, 0, 4);
  b.in.meshed = {0, 0};
  EXPECT_EQ(b.result().gear, (std::array<int, 2>{2, 2}));
  b.in.control[Control::kEngine1Switch] = 1;
  EXPECT_EQ(b.result().gear, (std::array<int, 2>{0, 2}));
  b.p.desk[0].gear_contact_dead = 2;
  EXPECT_EQ(b.result().gear[1], 0);
  b.set(Control::kCab1Gear, 0, 3);
  EXPECT_EQ(b.result().gear[1], 3);
}

TEST(Gear, ValvesThatStickOpenGoOnBesideTheSelectedOne) {
  Bench b;
  b.set(Control::kCab1Gear, 0, 1);
  b.p.gear_valve[0].gear3_stuck = 1;
  b.p.gear_valve[1].gear1_stuck = -1;
  const plant::PlantInputs out = calcPlantInputs(b.in, b.result(), b.p);
  EXPECT_EQ(out.line[0].gear_valve, (std::array<bool, 4>{true, false, true, false}));
  EXPECT_EQ(out.line[1].gear_valve, (std::array<bool, 4>{false, false, false, false}));
}

TEST(Throttle, ReachesOnlyEnginesWhoseSwitchIsAtCab) {
  Bench b;
  b.set(Control::kCab1Throttle, 0, 3);
  EXPECT_EQ(b.result().notch, (std::array<int, 2>{3, 3}));
  b.in.control[Control::kEngine1Switch] = 2;
  EXPECT_EQ(b.result().notch, (std::array<int, 2>{0, 3}));
  b.set(Control::kCab1Device, 0, 0);
  EXPECT_EQ(b.result().notch, (std::array<int, 2>{0, 0}));
}

TEST(Jumper, LooseLeavesTheTrailerCabItsLampsAndNothingElse) {
  Bench b(1);
  b.in.control[Control::kCab2Start1] = 1;
  b.in.control[Control::kCab2Gear] = 0;
  ASSERT_TRUE(b.result().starter[0]);
  b.in.control[Control::kJumper] = 0;
  const InterlockResult r = b.result();
  EXPECT_TRUE(r.desk[1]);
  EXPECT_TRUE(r.lamp_device[1]);
  EXPECT_FALSE(r.starter[0]);
  EXPECT_EQ(r.direction, 0);
  EXPECT_FALSE(r.lamp_air[1]);
  Bench motor_car(0);
  motor_car.in.control[Control::kJumper] = 0;
  EXPECT_EQ(motor_car.result().direction, 1);
}

TEST(Device, IsInCircuitWhereAReverserIsTurnedKeyOrNoKey) {
  Bench b;
  EXPECT_TRUE(b.result().device_in_circuit[0]);
  EXPECT_FALSE(b.result().device_in_circuit[1]);
  b.set(Control::kCab1Key, 0, 0);
  EXPECT_TRUE(b.result().device_in_circuit[0]);
  b.set(Control::kCab1Reverser, 0, 0);
  EXPECT_FALSE(b.result().device_in_circuit[0]);
}

TEST(DeviceLamp, FollowsTheHandleNotTheAir) {
  Bench b;
  EXPECT_TRUE(b.result().lamp_device[0]);
  b.set(Control::kCab1Device, 0, 0);
  EXPECT_FALSE(b.result().lamp_device[0]);
  b.p.desk[0].device_contact_stuck = 1;
  EXPECT_TRUE(b.result().lamp_device[0]);
  EXPECT_FALSE(calcPlantInputs(b.in, b.result(), b.p).cab[0].device_held);
}

TEST(ChargeLamp, BurnsUntilTheGeneratorCarriesTheBus) {
  Bench b;
  EXPECT_TRUE(b.result().lamp_charge[0]);
  b.in.bus_v = 27.5;
  EXPECT_FALSE(b.result().lamp_charge[0]);
  b.in.bus_v = 26.2;
  EXPECT_FALSE(b.result().lamp_charge[0]);
  b.in.bus_v = 25.0;
  EXPECT_TRUE(b.result().lamp_charge[0]);
}

TEST(FireBell, RingsForHeatForTheTestAndNotThroughABrokenLine) {
  Bench b;
  EXPECT_FALSE(b.result().fire_bell[0]);
  b.set(Control::kCab1FireTest, 0, 1);
  EXPECT_TRUE(b.result().fire_bell[0]);
  b.set(Control::kCab1FireTest, 0, 0);
  b.in.burning[1] = true;
  EXPECT_TRUE(b.result().fire_bell[0]);
  EXPECT_TRUE(b.result().lamp_fire[0]);
  b.p.fire[1].line_broken = 1;
  EXPECT_FALSE(b.result().fire_bell[0]);
  b.p.fire[0].line_false = 1;
  EXPECT_TRUE(b.result().fire_bell[0]);
}

TEST(LampTest, LightsEveryLampOfALivingDesk) {
  Bench b;
  b.in.meshed = {0, 0};
  b.set(Control::kCab1LampTest, 0, 1);
  const InterlockResult r = b.result();
  EXPECT_TRUE(r.lamp_air[0] && r.lamp_fire[0] && r.lamp_engine[0][0] && r.lamp_engine[0][1]);
  EXPECT_FALSE(r.lamp_air[1]);
}

TEST(Mechanics, LockLeversAgainstEachOther) {
  Bench b;
  b.set(Control::kCab1Throttle, 0, 1);
  EXPECT_FALSE(b.result().facts.fulfils(Outcome::kMoveReverser));
  b.set(Control::kCab1Throttle, 0, 0);
  EXPECT_TRUE(b.result().facts.fulfils(Outcome::kMoveReverser));
  EXPECT_FALSE(b.result().facts.fulfils(Outcome::kTakeReverser));
  b.set(Control::kCab1Reverser, 0, 0);
  EXPECT_TRUE(b.result().facts.fulfils(Outcome::kTakeReverser));
  EXPECT_TRUE(b.result().facts.fulfils(Outcome::kBrakeHandle));
  b.set(Control::kCab1Brake, 0, -1);
  EXPECT_FALSE(b.result().facts.fulfils(Outcome::kBrakeHandle));
  EXPECT_FALSE(b.result().facts.fulfils(Outcome::kTurnHandbrakeOff));
  b.set(Control::kCab1Pawl, 0, 0);
  EXPECT_TRUE(b.result().facts.fulfils(Outcome::kTurnHandbrakeOff));
}

TEST(PlantInputs, CarryEveryCockAndHandControlToItsPlace) {
  Bench b;
  b.in.control[Control::kEngine2FuelCock] = 0;
  b.in.control[Control::kEngine1HandThrottle] = 0.3;
  b.in.control[Control::kEngine1AirCock] = 0;
  b.in.control[Control::kCab2GuardsValve] = 0.5;
  b.in.control[Control::kCab2Handbrake] = 0.25;
  b.in.control[Control::kCab1DeviceCock] = 0;
  b.in.control[Control::kHose2] = 0;
  b.in.control[Control::kDrainControl] = 1;
  b.in.control[Control::kCord3] = 1;
  b.in.control[Control::kScotch2] = 1;
  b.in.control[Control::kAlarm] = 1;
  const plant::PlantInputs out = calcPlantInputs(b.in, b.result(), b.p);
  EXPECT_FALSE(out.line[1].fuel_cock_open);
  EXPECT_TRUE(out.line[0].fuel_cock_open);
  EXPECT_DOUBLE_EQ(out.line[0].hand_throttle, 0.3);
  EXPECT_FALSE(out.line[0].shift_air_cock_open);
  EXPECT_DOUBLE_EQ(out.cab[1].guards_valve, 0.5);
  EXPECT_DOUBLE_EQ(out.cab[1].handbrake, 0.25);
  EXPECT_FALSE(out.cab[0].device_cock_open);
  EXPECT_EQ(out.hose_on_dummy, (std::array<bool, 2>{true, false}));
  EXPECT_EQ(out.reservoir_drain, (std::array<bool, 2>{false, true}));
  EXPECT_EQ(out.release_cord, (std::array<bool, 4>{false, false, true, false}));
  EXPECT_EQ(out.scotch, (std::array<bool, 2>{false, true}));
  EXPECT_TRUE(out.passenger_alarm);
}

TEST(PlantInputs, LoadGrowsWithWhatIsSwitchedOn) {
  Bench b;
  const double base = calcPlantInputs(b.in, b.result(), b.p).load_conductance_s;
  b.in.control[Control::kSaloonLights] = 1;
  const double lit = calcPlantInputs(b.in, b.result(), b.p).load_conductance_s;
  EXPECT_NEAR(lit - base, b.p.load.saloon_w / (24.0 * 24.0), 1e-12);
}

}  // namespace
}  // namespace cabwright::unit
