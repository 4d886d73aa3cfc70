// SPDX-License-Identifier: GPL-3.0-or-later
// Exhausters pumping down, and the force of a vacuum piston.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "plant/air_machines.h"
#include "plant/gas.h"
#include "plant/running.h"
#include "plant_rig.h"
#include "published.h"
#include "quantity/elementary.h"
#include "quantity/units.h"
#include "small_problem.h"

namespace cabwright::reference {
namespace {

namespace q = cabwright::quantity;
using testing::PlantRig;

constexpr double kGasK = 293.15;

// An exhauster of this suction speed at one turn a second.
plant::ExhausterParameters exhauster(double speed_m3_s, double ultimate_pa) {
  plant::ExhausterParameters e;
  e.swept_l_rev = speed_m3_s * 1e3;
  e.ultimate_pa = ultimate_pa;
  return e;
}

double calcPumpDown(double volume_m3, double speed_m3_s, double ultimate_pa, double from_pa,
                    double to_pa) {
  const plant::ExhausterParameters e = exhauster(speed_m3_s, ultimate_pa);
  const auto pressure = [=](const Values& y) {
    return plant::calcPressure(y[0], volume_m3, kGasK);
  };
  SmallProblem vessel(
      [&](const Values& y, Values& dy) {
        const double log_ratio = q::detLog(q::kStandardAtmospherePa / pressure(y));
        dy[0] = -plant::calcExhauster(e, 2.0 * q::kPi, pressure(y), log_ratio, kGasK).mass_kg_s;
      },
      {plant::calcMass(from_pa, volume_m3, kGasK)}, 1e-9, {1e-10});
  return vessel.findTime([&](const Values& y) { return pressure(y) - to_pa; }, 1e4);
}

TEST(PumpDown, OneCubicMetreAtAHundredLitresASecond) {
  // engineeringtoolbox.com, "Vacuum pumps - evacuation time": t = (V/S) ln(p0/p1), 1 m3, 0.1 m3/s,
  // from 1000 mbar to 500, 100, 10 mbar: 6.9, 23, 46 s. Read. Half a unit in the last digits.
  EXPECT_PUBLISHED("engineeringtoolbox.com, evacuation time", calcPumpDown(1.0, 0.1, 0.0, 1e5, 5e4),
                   6.9, 0.05);
  EXPECT_PUBLISHED("engineeringtoolbox.com, evacuation time", calcPumpDown(1.0, 0.1, 0.0, 1e5, 1e4),
                   23.0, 0.5);
  EXPECT_PUBLISHED("engineeringtoolbox.com, evacuation time", calcPumpDown(1.0, 0.1, 0.0, 1e5, 1e3),
                   46.0, 0.5);
}

TEST(PumpDown, MatchesTheLogarithm) {
  // The same law to its digits: 6.931, 23.026, 46.052 s. Computed from the law.
  EXPECT_NEAR(calcPumpDown(1.0, 0.1, 0.0, 1e5, 5e4), 6.931, 5e-4);
  EXPECT_NEAR(calcPumpDown(1.0, 0.1, 0.0, 1e5, 1e4), 23.026, 5e-4);
  EXPECT_NEAR(calcPumpDown(1.0, 0.1, 0.0, 1e5, 1e3), 46.052, 5e-4);
}

TEST(PumpDown, StaysBelowThePurchasersRule) {
  // The same page: t = N V/S with N = 1, 2, 3, 4 for 15, 22.5, 26, 28 inHg, a safe rule: the true
  // logarithms are 0.70, 1.39, 2.03, 2.75 (computed, half a unit in the last digit).
  constexpr std::array<double, 4> kInHg{15.0, 22.5, 26.0, 28.0};
  constexpr std::array<double, 4> kTrue{0.70, 1.39, 2.03, 2.75};
  for (std::size_t n = 0; n < kInHg.size(); ++n) {
    const double took =
        calcPumpDown(1.0, 1.0, 0.0, q::kStandardAtmospherePa, q::inHgVacuumToPa(kInHg[n]));
    EXPECT_LT(took, static_cast<double>(n + 1));
    EXPECT_NEAR(took, kTrue[n], 0.005);
  }
}

TEST(PumpDown, TowardsAnUltimateVacuum) {
  // t = (V/S) ln((p0 - pu)/(p - pu)) (law read on a pump maker's page, numbers computed): 0.2 m3,
  // 0.01 m3/s, pu at 28 inHg, to 21 inHg: 20 ln 4 = 27.726 s; with pu left out 24.203 s.
  const double to = q::inHgVacuumToPa(21.0);
  EXPECT_NEAR(calcPumpDown(0.2, 0.01, q::inHgVacuumToPa(28.0), q::kStandardAtmospherePa, to),
              27.726, 0.001);
  EXPECT_NEAR(calcPumpDown(0.2, 0.01, 0.0, q::kStandardAtmospherePa, to), 24.203, 0.001);
}

TEST(PumpDown, OfTheReleasePipeInTheWholeMachine) {
  // The same 27.726 s in the machine: one exhauster at a steady 420 rpm (a flywheel of any size),
  // pipe tight, driver's valve in lap. 0.001 s and what the crank loses meanwhile.
  plant::Parameters p;
  p.engine[0].inertia_kg_m2 = 1e9;
  p.vacuum.release_m3 = 0.2;
  p.vacuum.release_leak_c = 0.0;
  p.exhauster[0].swept_l_rev = 0.01 / 7.0 * 1e3;  // 7 turns a second
  p.exhauster[0].ultimate_pa = q::inHgVacuumToPa(28.0);
  p.exhauster[1].belt = 0.0;
  plant::StartConditions s;
  s.line[0].crank_rpm = 420.0;
  PlantRig rig(s, {}, p);
  const double floor = q::inHgVacuumToPa(28.0), to = q::inHgVacuumToPa(21.0);
  double before = rig.now().release_pipe_pa;
  while (rig.now().release_pipe_pa > to) {
    before = rig.now().release_pipe_pa;
    rig.tick();
    ASSERT_LT(rig.seconds(), 60.0);
  }
  const double now = rig.now().release_pipe_pa;
  const double over =
      std::log((to - floor) / (now - floor)) / std::log((before - floor) / (now - floor));
  EXPECT_NEAR(rig.seconds() - over * q::kTickSeconds, 27.726, 0.001);
}

TEST(VacuumPiston, LiftOfASuctionCup) {
  // Esposito, Fluid Power with Applications, Ex. 14.5 p. 536: outer diameter 6 in on which the
  // atmosphere of 14.7 psi presses, inner 5 in at -10 psi: 324 lb (323.35 unrounded); perfect
  // vacuum 416 lb. Read in a companion notebook. 1 lb: it rounds up.
  const double inch = 0.0254, lbf = q::kPaPerPsi * inch * inch;
  const double outside = plant::calcPistonForce(6.0 * inch, 14.7 * q::kPaPerPsi, 0.0);
  const double inside = plant::calcPistonForce(5.0 * inch, 4.7 * q::kPaPerPsi, 0.0);
  EXPECT_PUBLISHED("Esposito, Fluid Power, Ex. 14.5", (outside - inside) / lbf, 324.0, 1.0);
  EXPECT_PUBLISHED("Esposito, Fluid Power, Ex. 14.5", outside / lbf, 416.0, 1.0);
}

TEST(VacuumPiston, EighteenInchesAtTwentyOne) {
  // Computed from the law, pressure difference on area: 0.164173 m2 x 71 114.2 Pa = 11 675 N, half
  // a unit of the last digit doubled.
  EXPECT_NEAR(
      plant::calcPistonForce(18.0 * 0.0254, q::kStandardAtmospherePa, q::inHgVacuumToPa(21.0)),
      11675.0, 1.0);
}

TEST(VacuumPiston, FullApplicationInTheWholeMachine) {
  // Common practice, no published source: a vacuum brake applied from 21 inHg gives less than the
  // static piston force, as the rising piston shrinks its chamber; 75 to 95 % are usual. The
  // machine's blocks press with (piston force - spring) x rigging.
  PlantRig rig(testing::warmReady());
  rig.in.cab[0].drivers_valve = plant::kValveFull;
  rig.run(20.0);
  const plant::CylinderParameters y;
  const double full = (11675.0 - y.spring_n) * y.rigging_ratio * y.rigging_efficiency;
  for (double force : rig.now().block_force_n) {
    EXPECT_GT(force, 0.75 * full);
    EXPECT_LT(force, 0.95 * full);
  }
  // And what the chambers then hold is all the force there is: the piston's own balance.
  const double chamber = rig.now().chamber_pa[0];
  const double piston = plant::calcPistonForce(y.bore_m, rig.now().train_pipe_pa, chamber);
  EXPECT_NEAR(rig.now().block_force_n[0],
              (piston - y.spring_n) * y.rigging_ratio * y.rigging_efficiency, 0.005 * full);
}

}  // namespace
}  // namespace cabwright::reference
