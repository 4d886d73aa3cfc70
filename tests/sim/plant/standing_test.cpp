// SPDX-License-Identifier: GPL-3.0-or-later
// A unit that stands: what a start after so many hours says against the machine left to itself.
#include <gtest/gtest.h>

#include <cmath>

#include "plant/brake_piston.h"
#include "plant_rig.h"

namespace cabwright::testing {
namespace {

plant::StartConditions stood(double hours, const plant::Parameters& p = plant::Parameters(),
                             const plant::LeftOn& on = {}) {
  return plant::StartConditions::afterStanding(hours, 2.0, p, on);
}

TEST(Standing, ANightEmptiesTheReservoirs) {
  // House values: 0.03 dm3/(s bar) in all takes 95 psi to 5 in some six hours, to nothing by
  // morning; in five minutes it takes less than 5 psi, the most that is let pass (common practice,
  // no published source).
  EXPECT_GT(stood(5.0 / 60.0).control_psi, stood(0.0).control_psi - 5.0);
  EXPECT_NEAR(stood(6.0).main_psi, 5.0, 2.0);
  for (double hours : {8.0, 14.0}) {
    const plant::StartConditions s = stood(hours);
    std::printf("STAND | %g h: main %.2f psi, control %.2f psi, chambers %.2f inHg\n", hours,
                s.main_psi, s.control_psi, s.chamber_inhg);
    EXPECT_LT(s.main_psi, 2.0) << hours << " h";
    EXPECT_LT(s.control_psi, 2.0) << hours << " h";
  }
}

TEST(Standing, LeavesAirAndChambersWhereTheMachineLeavesThem) {
  // The pistons come down as the vacuum goes, in the machine and in the start after some hours.
  PlantRig rig(stood(0.0));
  rig.in.battery_switch_closed = false;
  for (int hour = 1; hour <= 6; ++hour) {
    rig.run(3600.0);
    const plant::StartConditions said = stood(hour);
    const double chamber = q::paToInHgVacuum(rig.now().chamber_pa[0]);
    std::printf(
        "STAND | %d h: chamber %.2f inHg, said %.2f; main %.2f psi, said %.2f; travel %.1f mm\n",
        hour, chamber, said.chamber_inhg, q::paToPsiGauge(rig.now().main_reservoir_pa),
        said.main_psi, 1e3 * rig.now().piston_m[0]);
    // Pistons on their way down press the pipe's air out through its small leak: up to 0.05 inHg,
    // which the start leaves out.
    EXPECT_NEAR(chamber, said.chamber_inhg, 0.06);
    EXPECT_NEAR(q::paToPsiGauge(rig.now().main_reservoir_pa), said.main_psi, 0.05);
    EXPECT_NEAR(rig.controlPsi(), said.control_psi, 0.05);
    EXPECT_NEAR(rig.releaseInHg(), said.release_pipe_inhg, 0.02);
  }
}

TEST(Standing, PistonsRestWhereTheirForcesBalance) {
  const plant::CylinderParameters y;
  const double area = 0.25 * q::kPi * y.bore_m * y.bore_m;
  for (double inhg : {0.0, 1.0, 1.5, 1.6, 2.0, 5.0, 12.0, 21.0, 27.0}) {
    // Of air that had this vacuum with the piston down.
    const double mrt = q::inHgVacuumToPa(inhg) * y.upper_m3;
    const double pipe = q::kStandardAtmospherePa;
    const double travel = plant::calcRestingTravel(y, area, pipe, mrt);
    const double chamber = plant::calcChamberPressure(y, area, travel, mrt);
    const double net =
        area * (pipe - chamber) - y.spring_n - std::max(0.0, travel - y.take_up_m) * y.rigging_n_m;
    if (travel == 0.0) {
      EXPECT_LE(net, 1e-6) << inhg;
    } else {
      EXPECT_NEAR(net, 0.0, 1e-6) << inhg;
    }
    EXPECT_EQ(travel > 0.0, inhg > 1.62) << inhg;
  }
}

TEST(Standing, LeaksThatWereThereAllNightHaveLeakedAllNight) {
  plant::Parameters p;
  p.air.main_leak_c = 0.6;
  EXPECT_LT(stood(0.5, p).main_psi, 0.5 * stood(0.5).main_psi);
  p = {};
  p.brake_cylinder[0].ball_leak_c = 0.02;
  EXPECT_LT(stood(0.5, p).chamber_inhg, 0.8 * stood(0.5).chamber_inhg);
  p = {};
  p.exhauster[1].backflow_c = 0.5;
  EXPECT_LT(stood(0.5, p).release_pipe_inhg, 0.5 * stood(0.5).release_pipe_inhg);
}

TEST(Standing, ALoadLeftOnFlattensTheBattery) {
  const plant::Parameters p;
  const plant::LeftOn on{true, 300.0 / (24.0 * 24.0)};
  // Two hours in the machine against the start after them.
  plant::StartConditions from;
  from.ambient_c = 2.0;
  PlantRig rig(from);
  rig.in.load_conductance_s = on.load_s;
  rig.run(2.0 * 3600.0);
  EXPECT_NEAR(rig.now().battery_charge, stood(2.0, p, on).battery_charge, 1e-4);
  // Some 12.5 A for fourteen hours are most of 200 A h.
  const double morning = stood(14.0, p, on).battery_charge;
  std::printf("STAND | 300 W left on for 14 h: charge %.3f (without %.5f)\n", morning,
              stood(14.0).battery_charge);
  EXPECT_GT(morning, 0.05);
  EXPECT_LT(morning, 0.25);
  EXPECT_LT(stood(24.0, p, on).battery_charge, 0.02);
  EXPECT_GT(stood(14.0, p, {false, on.load_s}).battery_charge, 0.999) << "the switch was open";
  EXPECT_EQ(stood(14.0).battery_charge, stood(14.0, p, {false, 0.0}).battery_charge);
}

}  // namespace
}  // namespace cabwright::testing
