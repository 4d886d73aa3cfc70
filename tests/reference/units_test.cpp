// SPDX-License-Identifier: GPL-3.0-or-later
// Units and constants as the plant uses them, against metrology and standard-atmosphere figures.
#include <gtest/gtest.h>

#include <cmath>

#include "plant/gas.h"
#include "plant/running.h"
#include "published.h"
#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::reference {
namespace {

namespace q = cabwright::quantity;

TEST(Units, InchOfMercuryIsTheConventionalOne) {
  // NIST SP 811, appendix B.8: 3.386 389 E+03 Pa. Read (in a reprint).
  // Half a unit in the last printed digit. "At 60 F" would be 3376.85, "at 32 F" 3386.38.
  EXPECT_NEAR(q::inHgVacuumToPa(0.0) - q::inHgVacuumToPa(1.0), 3386.389, 0.0005);
}

TEST(Units, PoundPerSquareInch) {
  // NIST SP 811, appendix B.8: 6.894 757 E+03 Pa. From memory, to be verified in print (four digits
  // read); it is 4.448 221 615 260 5 N over (0.0254 m)^2. Half a unit in the last printed digit.
  EXPECT_NEAR(q::psiGaugeToPa(1.0) - q::psiGaugeToPa(0.0), 6894.757, 0.0005);
}

TEST(Units, GasConstantOfDryAir) {
  // ICAO Doc 7488 / ISO 2533: R = 287.05287 J/(kg K), ratio of specific heats 1.4 (from R* =
  // 8314.32 and M = 28.964420; constants read, the quotient from memory). Half a unit in the last
  // printed digit. One kilogram at 1 K in 1 m3 has R pascals.
  EXPECT_PUBLISHED("ICAO Doc 7488", plant::calcPressure(1.0, 1.0, 1.0), 287.05287, 5e-6);
  EXPECT_DOUBLE_EQ(q::kAirHeatRatio, 1.4);
}

TEST(Units, SeaLevelAirOfTheStandardAtmosphere) {
  // ICAO Doc 7488, table: 1.2250 kg/m3 (read), 340.294 m/s (from memory; 340.3 read). Half units in
  // the last printed digits.
  EXPECT_PUBLISHED("ICAO Doc 7488", plant::calcMass(q::kStandardAtmospherePa, 1.0, 288.15), 1.2250,
                   5e-5);
  // The two constants of the plant taken together.
  EXPECT_PUBLISHED("ICAO Doc 7488",
                   std::sqrt(q::kAirHeatRatio * plant::calcPressure(1.0, 1.0, 288.15)), 340.294,
                   5e-4);
}

TEST(Units, AirAtOneThousandMetresOfTheStandardAtmosphere) {
  // ICAO Doc 7488, table: 281.65 K, 89 874.6 Pa, 1.11164 kg/m3. From memory, to be verified in
  // print. Half a unit in the last printed digit of the density.
  EXPECT_PUBLISHED("ICAO Doc 7488", plant::calcMass(89874.6, 1.0, 281.65), 1.11164, 5e-6);
  // The pressure follows from the sea-level one by (T/T0)^(g/(R L)): the plant's power function
  // with the plant's constants; half a unit in the last printed digit.
  const double exponent = q::kStandardGravity / (q::kAirGasConstant * 6.5e-3);
  EXPECT_NEAR(q::kStandardAtmospherePa * q::detPow(281.65 / 288.15, exponent), 89874.6, 0.05);
}

TEST(Units, TwentyOneInchesOfVacuum) {
  // Computed from the two conversions of NIST SP 811: 71.1142 kPa below, 30.2108 kPa absolute,
  // 10.3142 psi below; one atmosphere is 29.9213 inHg. Half units in the last digits.
  EXPECT_NEAR(q::inHgVacuumToPa(21.0) * 1e-3, 30.2108, 5e-5);
  EXPECT_NEAR((q::kStandardAtmospherePa - q::inHgVacuumToPa(21.0)) * 1e-3, 71.1142, 5e-5);
  EXPECT_NEAR(-q::paToPsiGauge(q::inHgVacuumToPa(21.0)), 10.3142, 5e-5);
  EXPECT_NEAR(q::paToInHgVacuum(0.0), 29.9213, 5e-5);
}

TEST(Units, MileAnHourAndTurnAMinute) {
  // NIST SP 811, appendix B.8: mile per hour 4.4704 E-01 m/s (exact), revolution per minute
  // 1.047 198 E-01 rad/s. From memory, to be verified in print. Half a unit in the last digit.
  EXPECT_DOUBLE_EQ(q::mphToMps(1.0), 0.44704);
  EXPECT_NEAR(q::rpmToRadPerSec(1.0), 1.047198e-1, 5e-8);
}

TEST(Units, OnePercentOfGradientOnATonne) {
  // Computed from g = 9.80665 m/s2: 98.0665 N per tonne for 1 %; and 22.4 lbf per long ton (2240 lb
  // x 1 %; lb = 0.45359237 kg). Half units in the last digits.
  EXPECT_NEAR(plant::calcGradeForce(1000.0, 0.01), 98.0665, 5e-5);
  const double lbf = q::kPaPerPsi * 0.0254 * 0.0254;
  EXPECT_NEAR(plant::calcGradeForce(2240.0 * 0.45359237, 0.01) / lbf, 22.4, 5e-5);
}

}  // namespace
}  // namespace cabwright::reference
