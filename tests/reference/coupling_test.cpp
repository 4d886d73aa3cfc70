// SPDX-License-Identifier: GPL-3.0-or-later
// The fluid coupling: the law of similarity, its losses, the slip to expect.
#include <gtest/gtest.h>

#include <cmath>

#include "plant/drive.h"
#include "plant_rig.h"
#include "quantity/units.h"

namespace cabwright::reference {
namespace {

namespace q = cabwright::quantity;
using testing::PlantRig;

// A coupling of this torque coefficient at 3 % slip.
plant::CouplingParameters coupling(double lambda) {
  plant::CouplingParameters c;
  c.diameter_m = 0.40;
  c.density_kg_m3 = 860.0;
  c.lambda_flat *= lambda / plant::calcCouplingLambda(c, 0.03);
  return c;
}

double torqueAt(const plant::CouplingParameters& c, double rpm, double slip) {
  const double pump = q::rpmToRadPerSec(rpm);
  return plant::calcCouplingTorque(c, pump, pump * (1.0 - slip));
}

TEST(Coupling, TorqueCoefficientOfAHundredKilowatts) {
  // T = lambda rho w^2 D^5 (unseel.com, "Fluid coupling": law read; numbers computed from it):
  // 100 kW at 1500 rpm, 0.40 m, 860 kg/m3: lambda = 2.930e-3 for 636.62 N m. Half a unit in the
  // last digit of lambda, 0.02 %.
  EXPECT_NEAR(torqueAt(coupling(2.930e-3), 1500.0, 0.03), 636.62, 0.12);
}

TEST(Coupling, HalfSpeedCarriesAQuarterOfTheTorque) {
  // The same law: T by 4 and P by 8 at half the speed and the same slip. An identity.
  const auto c = coupling(2.930e-3);
  const double full = torqueAt(c, 1500.0, 0.03), half = torqueAt(c, 750.0, 0.03);
  EXPECT_NEAR(full / half, 4.0, 1e-9);
  EXPECT_NEAR(full * 1500.0 / (half * 750.0), 8.0, 1e-9);
}

TEST(Coupling, TorqueGrowsWithTheFifthPowerOfDiameter) {
  // The same law: D x 1.1 gives T x 1.61051. Half a unit in the last digit.
  auto c = coupling(2.930e-3);
  const double small = torqueAt(c, 1500.0, 0.03);
  c.diameter_m *= 1.1;
  EXPECT_NEAR(torqueAt(c, 1500.0, 0.03) / small, 1.61051, 5e-6);
}

// Slip at which the machine's own coupling carries its engine's torque.
double findSlip(double rpm, double torque_nm) {
  const plant::CouplingParameters own;
  double lo = 0.0, hi = 1.0;
  for (int k = 0; k < 60; ++k) {
    const double middle = 0.5 * (lo + hi);
    (torqueAt(own, rpm, middle) < torque_nm ? lo : hi) = middle;
  }
  return hi;
}

TEST(Coupling, SlipsAsMuchAsIsUsualAtItsRating) {
  // unseel.com: full-load slip 2 to 4 %, efficiency 96 to 98 %. Read. A range, no tolerance.
  const double slip = findSlip(1800.0, plant::EngineParameters().brake_nm_1800);
  EXPECT_GT(slip, 0.02);
  EXPECT_LT(slip, 0.04);
}

TEST(Coupling, StallsAtSeveralTimesItsRatedCoefficient) {
  // Common practice, no published source: the stall torque coefficient is several times, roughly 3
  // to 10, the rated one; idling against a held output drags a few per cent of full torque, up to a
  // tenth or so.
  const plant::CouplingParameters own;
  const double rated = plant::calcCouplingLambda(own, findSlip(1800.0, 594.0));
  const double times = plant::calcCouplingLambda(own, 1.0) / rated;
  EXPECT_GT(times, 3.0);
  EXPECT_LT(times, 10.0);
  EXPECT_LT(torqueAt(own, 420.0, 1.0), 0.25 * 594.0);
}

TEST(Coupling, BalancesItsHeatInTheWholeMachine) {
  // Efficiency is the ratio of speeds, torque equal on both halves (unseel.com, read): what is
  // lost, T (w1 - w2), heats the coupling. Pulling away hard for ten seconds, cooling taken off.
  // 1e-3 for the trapezoids over ticks.
  plant::Parameters p;
  for (auto& c : p.coupling) c.loss_w_k = 0.0;
  PlantRig rig(testing::warmReady(), {}, p);
  rig.forward();
  rig.handbrakes(0.0);
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.gear(2);
  rig.run(3.0);
  rig.notch(4);
  const auto lost = [&] {
    const plant::LineReadings& l = rig.now().line[0];
    return l.coupling_nm * (l.crank_rad_per_s - l.turbine_rad_per_s);
  };
  const double warm = rig.now().line[0].coupling_k;
  double heat = 0.0, before = lost();
  for (int k = 0; k < 1000; ++k) {
    rig.tick();
    const double now = lost();
    heat += 0.5 * (before + now) * q::kTickSeconds;
    before = now;
  }
  ASSERT_GT(heat, 1e5) << "the coupling must have worked";
  EXPECT_NEAR((rig.now().line[0].coupling_k - warm) * p.coupling[0].heat_j_k, heat, 1e-3 * heat);
}

}  // namespace
}  // namespace cabwright::reference
