// SPDX-License-Identifier: GPL-3.0-or-later
// Orifices, blow-down and filling through the plant's gas code.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "plant/gas.h"
#include "plant_rig.h"
#include "published.h"
#include "quantity/units.h"
#include "small_problem.h"

namespace cabwright::reference {
namespace {

namespace q = cabwright::quantity;
using testing::PlantRig;

// Critical pressure ratio of air, (2/(gamma+1))^(gamma/(gamma-1)): 0.528282 for 1.4 (Streeter and
// any other text on gas flow; 0.528 and 0.5283 read).
constexpr double kCritical = 0.528282;

double nozzleFactor(double area_m2, double gas_k) {
  return plant::calcChokedFactor(plant::calcNozzleConductance(area_m2), gas_k);
}

TEST(Orifice, ChokesBelowTheCriticalRatio) {
  const plant::FlowLaw law(kCritical);
  const double factor = nozzleFactor(1e-4, 300.0);
  EXPECT_DOUBLE_EQ(plant::calcFlow(factor, law, 2e5, 0.5282 * 2e5),
                   plant::calcFlow(factor, law, 2e5, 0.0));
  EXPECT_LT(plant::calcFlow(factor, law, 2e5, 0.54 * 2e5), plant::calcFlow(factor, law, 2e5, 0.0));
}

TEST(Orifice, ChokedFlowFunctionOfAir) {
  // Murugaperumal, Gas Dynamics and Jet Propulsion, Ex. 1.39 p. 68: m sqrt(T)/(A p) = 0.0404184
  // with R = 287 (read in a companion notebook). With the plant's R = 287.05287 it is smaller by
  // half of 1.84e-4, 0.0404147 (computed from the law). Half a unit in the last digit.
  const plant::FlowLaw law(kCritical);
  const double a = 1e-3, p = 7e5, t = 333.0;
  const double flow = plant::calcFlow(nozzleFactor(a, t), law, p, 1e5);
  EXPECT_NEAR(flow * std::sqrt(t) / (a * p), 0.0404147, 5e-8);
  EXPECT_PUBLISHED("Murugaperumal, Gas Dynamics, Ex. 1.39", flow * std::sqrt(t) / (a * p),
                   0.0404184, 0.0404184 * 1.0e-4);
}

TEST(Orifice, LeakFromATyre) {
  // Cengel & Cimbala, Fluid Mechanics, Ex. 12-5 p. 650: 220 kPa gauge, atmosphere 94 kPa, 298 K,
  // hole of 4 mm, discharge coefficient 1: critical pressure 166 kPa, 0.00924 kg/s. Read in a
  // companion notebook. Half a unit in the last digit; R = 287.05287 for 287 shifts by 0.009 %.
  const plant::FlowLaw law(kCritical);
  const double area = 0.25 * q::kPi * 0.004 * 0.004;
  EXPECT_PUBLISHED("Cengel & Cimbala, Fluid Mechanics, Ex. 12-5", law.b * 314.0, 166.0, 0.5);
  EXPECT_PUBLISHED("Cengel & Cimbala, Fluid Mechanics, Ex. 12-5",
                   plant::calcFlow(nozzleFactor(area, 298.0), law, 314e3, 94e3), 0.00924, 5e-6);
}

TEST(Orifice, SubsonicFlowFollowsTheIsentropicTables) {
  // NACA Report 1135 (1953), table I, gamma = 1.4: M, p/p0, A/A*. The share of the choked flow is
  // the inverse of A/A*. From memory, to be verified in print. ISO 6358 replaces the curve by a
  // quarter ellipse, which stays within 0.0015 of it; 0.0005 is added for the printed digits.
  struct Row {
    double mach, ratio, area;
  };
  constexpr std::array<Row, 6> kTable{{{0.2, 0.9725, 2.964},
                                       {0.3, 0.9395, 2.035},
                                       {0.4, 0.8956, 1.590},
                                       {0.5, 0.8430, 1.340},
                                       {0.6, 0.7840, 1.188},
                                       {0.8, 0.6560, 1.038}}};
  const plant::FlowLaw law(kCritical);
  for (const Row& row : kTable) {
    EXPECT_NEAR(plant::calcFlowFunction(law, row.ratio), 1.0 / row.area, 0.0020)
        << "Mach " << row.mach;
  }
}

TEST(Conductance, ChokedFlowOfOneUnit) {
  // ISO 6358:1989 (law read; numbers computed from it, no worked example of the standard at hand):
  // C = 1 dm3/(s bar), 7 bar absolute, 293.15 K: C rho0 p = 8.2950 g/s, which is 7 dm3/s of
  // reference air. Half a unit in the last digit.
  const plant::FlowLaw law(0.3);
  const double factor = plant::calcChokedFactor(1.0, 293.15);
  EXPECT_NEAR(plant::calcFlow(factor, law, 7e5, 1e5) * 1e3, 8.2950, 5e-5);
  EXPECT_NEAR(plant::calcFlow(factor, law, 7e5, 1e5) / plant::kReferenceDensity * 1e3, 7.0, 1e-9);
}

TEST(Conductance, SubsonicFlowIsAQuarterEllipse) {
  // The same with b = 0.3: 5.8053 g/s at r = 0.8, 3.0787 g/s at r = 0.95. Computed from the law.
  const plant::FlowLaw law(0.3);
  const double factor = plant::calcChokedFactor(1.0, 293.15);
  EXPECT_NEAR(plant::calcFlow(factor, law, 7e5, 0.8 * 7e5) * 1e3, 5.8053, 5e-5);
  EXPECT_NEAR(plant::calcFlow(factor, law, 7e5, 0.95 * 7e5) * 1e3, 3.0787, 5e-5);
}

TEST(Conductance, HotAirFlowsLessByTheRootOfTemperature) {
  // ISO 6358: sqrt(T0/T1); at 313.15 K 0.96754. Computed from the law, half a unit in the last
  // digit.
  EXPECT_NEAR(plant::calcChokedFactor(1.0, 313.15) / plant::calcChokedFactor(1.0, 293.15), 0.96754,
              5e-6);
}

TEST(Conductance, OfAnIdealNozzleOfOneSquareMillimetre) {
  // C = 0.1989 dm3/(s bar), computed from the two laws for the reference air itself, which is
  // humid: 100 kPa/(1.185 kg/m3 x 293.15 K) = 287.87 J/(kg K). The plant's air is dry, R =
  // 287.05287, so that its nozzle passes sqrt(287.87/287.05) - 1 = 0.143 % more mass: 2.9e-4, and
  // half a unit in the last digit. The trade's rule S[mm2] = 5.0 C (JIS usage, from memory) agrees
  // within its digit.
  const double c = plant::calcNozzleConductance(1e-6);
  EXPECT_NEAR(c, 0.1989, 2.9e-4 + 5e-5);
  EXPECT_NEAR(1.0 / c, 5.0, 0.05);
}

TEST(Vessel, BlowsDownIsothermallyAsTheBookSays) {
  // Murugaperumal Ex. 1.39 p. 68: 5 m3 at 333 K through 10 cm2 from 40 to 2 bar: 70.76 s. Read in a
  // companion notebook. Half a unit in the last digit, and 0.0065 s because R = 287.05287 against
  // 287 shortens it by 0.0092 %.
  const plant::FlowLaw law(kCritical);
  const double factor = nozzleFactor(1e-3, 333.0);
  const auto pressure = [](const Values& y) { return plant::calcPressure(y[0], 5.0, 333.0); };
  SmallProblem vessel(
      [&](const Values& y, Values& dy) { dy[0] = -plant::calcFlow(factor, law, pressure(y), 1e5); },
      {plant::calcMass(40e5, 5.0, 333.0)}, 1e-8, {1e-8});
  EXPECT_NEAR(vessel.findTime([&](const Values& y) { return pressure(y) - 2e5; }, 200.0), 70.76,
              0.0115);
}

TEST(Vessel, BlowDownTimeConstant) {
  // The same: V/(R T k A/sqrt(T)) = 23.620 s (computed from the notebook's constants; R as above:
  // 0.0022 s less). The pressure falls by e in each, exactly, while the flow is choked.
  const plant::FlowLaw law(kCritical);
  const double factor = nozzleFactor(1e-3, 333.0);
  SmallProblem vessel(
      [&](const Values& y, Values& dy) {
        dy[0] = -plant::calcFlow(factor, law, plant::calcPressure(y[0], 5.0, 333.0), 1e5);
      },
      {plant::calcMass(40e5, 5.0, 333.0)}, 1e-9, {1e-9});
  const double start = vessel.values()[0];
  const double tau =
      vessel.findTime([&](const Values& y) { return y[0] - start * std::exp(-1.0); }, 100.0);
  EXPECT_NEAR(tau, 23.620, 0.0005 + 0.0022);
  const double twice =
      vessel.findTime([&](const Values& y) { return y[0] - start * std::exp(-2.0); }, 100.0);
  EXPECT_NEAR(twice, 2.0 * tau, 1e-6);
}

// Everything that could take air from the main reservoir shut, but its drain.
plant::Parameters lonelyReservoir() {
  plant::Parameters p;
  p.air.main_leak_c = p.air.control_leak_c = p.air.check_c = p.air.relief_c = 0.0;
  return p;
}

TEST(Vessel, MainReservoirBlowsDownInTheWholeMachine) {
  // The same example in the machine: half the volume through half the area takes the same time.
  // Tolerance as above. The downstream pressure, 1.01325 bar, is below the critical one of 2 bar.
  plant::Parameters p = lonelyReservoir();
  p.air.main_m3 = 2.5;
  p.air.drain_c = plant::calcNozzleConductance(5e-4);
  p.air.critical_ratio = kCritical;
  plant::StartConditions s;
  s.ambient_c = q::kelvinToCelsius(333.0);
  s.main_psi = q::paToPsiGauge(40e5);
  PlantRig rig(s, {}, p);
  rig.in.reservoir_drain[0] = true;
  double before = rig.now().main_reservoir_pa;
  while (rig.now().main_reservoir_pa > 2e5) {
    before = rig.now().main_reservoir_pa;
    rig.tick();
    ASSERT_LT(rig.seconds(), 100.0);
  }
  // Between ticks it falls as an exponential.
  const double over =
      std::log(2e5 / rig.now().main_reservoir_pa) / std::log(before / rig.now().main_reservoir_pa);
  EXPECT_PUBLISHED("Murugaperumal, Gas Dynamics, Ex. 1.39", rig.seconds() - over * q::kTickSeconds,
                   70.76, 0.0115);
}

TEST(Vessel, TwoReservoirsSettleByBoylesLaw) {
  // Boyle-Mariotte: p = (p1 V1 + p2 V2)/(V1 + V2). 0.32 m3 at 90 psi and 0.06 m3 at 0 psi gauge:
  // 75.79 psi gauge. Computed from the law; 0.01 psi for what the check valve's last millibars
  // take.
  plant::StartConditions s;
  s.main_psi = 90.0;
  PlantRig rig(s, {}, [] {
    plant::Parameters p = lonelyReservoir();
    p.air.check_c = 12.0;
    return p;
  }());
  rig.run(60.0);
  EXPECT_NEAR(rig.controlPsi(), 75.789, 0.01);
  EXPECT_NEAR(q::paToPsiGauge(rig.now().main_reservoir_pa), 75.789, 0.01);
}

TEST(Vessel, ContentOfTheTankOfAFillingExample) {
  // Fox & McDonald, Introduction to Fluid Mechanics, Ex. 4.17 p. 149: 0.1 m3 at 293 K, 1e5 Pa gauge
  // over 1.01e5 Pa; the rate of filling 0.102 g/s (notebook prints 0.10; 0.1019 computed) and
  // dT/dt = 0.05 K/s, cv = 717 give back a content of 0.1019e-3 x 287 x 293/(717 x 0.05) =
  // 0.2390 kg. Half a unit in 0.1019, 5e-4, and 1.8e-4 for R. The machine's air is isothermal: the
  // warming itself is not in it.
  EXPECT_NEAR(plant::calcMass(2.01e5, 0.1, 293.0), 0.2390, 0.2390 * 7e-4);
}

TEST(Vessel, FillsThroughAChokedOrificeInAStraightLine) {
  // Computed from the law: from a supply that stays, choked, the flow is constant, so the pressure
  // rises by C rho0 p R T/V: 0.05 m3 behind C = 2 dm3/(s bar) at 8 bar absolute, 293.15 K: 18.96
  // g/s, 0.3191 bar/s, so from 1 to 2.5 bar in 4.7008 s (2.5/8 < b = 0.4). Half a unit of the last
  // digit.
  const plant::FlowLaw law(0.4);
  const double factor = plant::calcChokedFactor(2.0, 293.15);
  const auto pressure = [](const Values& y) { return plant::calcPressure(y[0], 0.05, 293.15); };
  SmallProblem vessel(
      [&](const Values& y, Values& dy) { dy[0] = plant::calcFlow(factor, law, 8e5, pressure(y)); },
      {plant::calcMass(1e5, 0.05, 293.15)}, 1e-9, {1e-9});
  const double took = vessel.findTime([&](const Values& y) { return 2.5e5 - pressure(y); }, 20.0);
  EXPECT_NEAR(took, 4.7008, 5e-5);
}

}  // namespace
}  // namespace cabwright::reference
