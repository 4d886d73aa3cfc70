// SPDX-License-Identifier: GPL-3.0-or-later
// Epicyclic trains of the textbooks through the plant's simple set and its drums.
//
// Willis: (annulus - carrier)/(sun - carrier) = -1/k. A pair of outer wheels on an arm obeys the
// same law with k = teeth over teeth, as does a compound train with k the quotient of the products;
// two wheels coupled through an idler have k negative.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "plant_rig.h"
#include "published.h"
#include "willis.h"

namespace cabwright::reference {
namespace {

namespace q = cabwright::quantity;
using testing::PlantRig;

// Lossless: torques on input, output and drum sum to nothing, and so do their powers.
void expectLossless(const DrumMix& drum, double input, double output_of_held_drum) {
  const double t_in = 1.0, t_drum = drum.calcHolding() * t_in;
  const double t_out = -drum.calcRatio() * t_in;
  const double largest = std::max({1.0, std::abs(t_drum), std::abs(t_out)});
  EXPECT_NEAR(t_in + t_drum + t_out, 0.0, 1e-9 * largest);
  // At any speeds of the two free shafts, not only with the drum held.
  for (double output : {output_of_held_drum, 17.0, -3.0}) {
    const double power = t_in * input + t_out * output + t_drum * drum.calcSpeed(input, output);
    EXPECT_NEAR(power, 0.0, 1e-9 * largest * std::max(std::abs(input), std::abs(output)));
  }
}

TEST(Epicyclic, TwoOuterWheelsOnAnArm) {
  // Khurmi & Gupta, Theory of Machines, Ex. 13.4 p. 438: A 36, B 45 teeth, arm 150 rpm
  // anticlockwise; A fixed: B 270; A 300 rpm clockwise: B 510 rpm anticlockwise. Read in a
  // companion notebook. Whole numbers: exact but for rounding.
  const DrumMix b = annulusOf(SimpleSet{36, 45}, kInput, kOutput);
  EXPECT_PUBLISHED("Khurmi & Gupta, Theory of Machines, Ex. 13.4", b.calcSpeed(0.0, 150.0), 270.0,
                   1e-9);
  EXPECT_PUBLISHED("Khurmi & Gupta, Theory of Machines, Ex. 13.4", b.calcSpeed(-300.0, 150.0),
                   510.0, 1e-9);
}

TEST(Epicyclic, ArmOfASunAndRing) {
  // Khurmi & Gupta Ex. 13.7 p. 444: sun 40, ring 90 fixed, sun one turn: arm 0.308 (4/13). Read in
  // a companion notebook. Exact.
  const auto drums =
      plant::calcDrumMixes({SimpleSet{40, 90}, SimpleSet{40, 90}, SimpleSet{40, 90}});
  EXPECT_PUBLISHED("Khurmi & Gupta, Theory of Machines, Ex. 13.7", 1.0 / drums[0].calcRatio(),
                   4.0 / 13.0, 1e-12);
}

TEST(Epicyclic, SmallDifferences) {
  // Khurmi & Gupta Ex. 13.13 p. 452: A 100 fixed, planet in mesh with A, C 101 and D 99, arm one
  // turn: C +0.0099 (1/101), D -0.0101 (-1/99). Read in a companion notebook. Exact.
  EXPECT_PUBLISHED("Khurmi & Gupta, Theory of Machines, Ex. 13.13",
                   annulusOf(SimpleSet{100, -101}, kInput, kOutput).calcSpeed(0.0, 1.0),
                   1.0 / 101.0, 1e-12);
  EXPECT_PUBLISHED("Khurmi & Gupta, Theory of Machines, Ex. 13.13",
                   annulusOf(SimpleSet{100, -99}, kInput, kOutput).calcSpeed(0.0, 1.0), -1.0 / 99.0,
                   1e-12);
}

TEST(Epicyclic, PlanetaryTransmissionOfALectureNote) {
  // lecad.uni-lj.si, "Planetary transmissions": sun 21, ring 108 fixed: 6.14286. Read. Half a unit
  // in the last digit. (Its planets have corrected teeth: 21 + 2 x 43 is not 108.)
  const DrumMix ring = annulusOf(SimpleSet{21, 108}, kInput, kOutput);
  EXPECT_PUBLISHED("lecad.uni-lj.si, Planetary transmissions", ring.calcRatio(), 6.14286, 5e-6);
}

TEST(Epicyclic, TorqueThatHoldsTheRing) {
  // Khurmi & Gupta Ex. 13.20 p. 465: sun turns five times as fast as the carrier, torque on the sun
  // 100 N m: the ring must be held with 400 N m. Read in a companion notebook. Exact.
  const DrumMix ring = annulusOf(SimpleSet{16, 64}, kInput, kOutput);
  EXPECT_NEAR(ring.calcRatio(), 5.0, 1e-12);
  EXPECT_PUBLISHED("Khurmi & Gupta, Theory of Machines, Ex. 13.20", 100.0 * ring.calcHolding(),
                   400.0, 1e-9);
}

TEST(Epicyclic, CompoundTrainWithTheSunHeld) {
  // Khurmi & Gupta Ex. 13.22 p. 468: annulus A 60 driven at 740 rad/s with 130 kW, planets B 15 and
  // C 20 on one shaft, sun D 25 held: carrier 563.8 rad/s, holding torque 54.9 N m. Read in a
  // companion notebook. Half units in the last digits.
  const DrumMix d = annulusOf(SimpleSet{60.0 * 20.0, 15.0 * 25.0}, kInput, kOutput);
  EXPECT_PUBLISHED("Khurmi & Gupta, Theory of Machines, Ex. 13.22", 740.0 / d.calcRatio(), 563.8,
                   0.05);
  EXPECT_PUBLISHED("Khurmi & Gupta, Theory of Machines, Ex. 13.22", 130e3 / 740.0 * d.calcHolding(),
                   54.9, 0.05);
}

TEST(Epicyclic, CompoundTrainThatNearlyCancels) {
  // Khurmi & Gupta Ex. 13.19 p. 463: sun A 15, planets B 20 in ring E 55 held, C 15 with B, in ring
  // D 50; A 1000 rpm, 100 N m. Exactly 37.5 rpm and 2666.67 N m. Teeth read in a companion
  // notebook, whose 37.15 rpm and 2692 N m come from rounding on the way; the exact value is used.
  const SimpleSet of_d{15.0 * 15.0, 20.0 * 50.0};
  const DrumMix carrier = [&] {  // from annulus D = output and sun A = input
    return carrierOf(of_d, kInput, kOutput);
  }();
  const DrumMix e = annulusOf(SimpleSet{15, 55}, kInput, carrier);
  EXPECT_NEAR(1000.0 / e.calcRatio(), 37.5, 1e-9);
  EXPECT_NEAR(100.0 * e.calcRatio(), 2666.67, 0.005);
}

// Bevan, The Theory of Machines, Ch. 11 Ex. 10 p. 403, a box of three coupled sets and a reverse
// set: teeth, input torque 1500, the links of sets 1 to 3 and "sun 3 fixed" for third gear read in
// a companion notebook; that the annuli of sets 1 and 2 are braked in first and second gear, and
// the links of the reverse set, from memory. Ratios computed, rational: 1e-9.
class BevansBox : public ::testing::Test {
 protected:
  const SimpleSet set1{26, 70}, set2{24, 72}, set3{23, 61}, reverse{31, 71};
  const std::array<DrumMix, 3> drums = plant::calcDrumMixes({set1, set2, set3});
  const DrumMix ring1 = drums[0];  // and carrier 2, and annulus 3
  const DrumMix ring2 = drums[1];  // and carrier 3
  const DrumMix sun3 = sunOf(set3, ring1, ring2);
  const DrumMix reverse_ring = annulusOf(reverse, ring1, kOutput);

  static void expectGear(const DrumMix& drum, double ratio, double holding_1500) {
    EXPECT_NEAR(drum.calcRatio(), ratio, 1e-9 * std::abs(ratio));
    EXPECT_NEAR(1500.0 * drum.calcHolding(), holding_1500, 0.05);  // half a unit in the last digit
    expectLossless(drum, 100.0, 100.0 / ratio);
  }
};

TEST_F(BevansBox, FirstGear) { expectGear(ring1, 48.0 / 13.0, 4038.5); }
TEST_F(BevansBox, SecondGear) { expectGear(ring2, 64.0 / 29.0, 1810.3); }
// A posted solution prints 1.47 for third gear: an integer division. The exact ratio is used.
TEST_F(BevansBox, ThirdGear) { expectGear(sun3, 2448.0 / 1643.0, 734.9); }
TEST_F(BevansBox, ReverseGear) { expectGear(reverse_ring, -2082.0 / 403.0, -9249.4); }
TEST_F(BevansBox, TurnsAsOneInTopGear) {
  for (const DrumMix& drum : {ring1, ring2, sun3, reverse_ring}) {
    EXPECT_NEAR(drum.calcSpeed(97.0, 97.0), 97.0, 1e-9);
  }
}

TEST(OwnBox, IsLosslessInItsKinematics) {
  // Conservation of torque and power, no published figure; the plant's own teeth, computed from
  // Willis: 1 + 78/24 = 4.25 in first gear.
  const auto drums = plant::calcDrumMixes(plant::GearboxParameters());
  EXPECT_NEAR(drums[0].calcRatio(), 4.25, 1e-12);
  for (const DrumMix& drum : drums) expectLossless(drum, 150.0, 150.0 / drum.calcRatio());
}

TEST(OwnBox, HasTheRatiosOfItsKind) {
  // Common practice, no published source: four-speed boxes of this kind step from about 4.2 through
  // 2.4 and 1.6 to direct.
  const auto drums = plant::calcDrumMixes(plant::GearboxParameters());
  EXPECT_NEAR(drums[0].calcRatio(), 4.2, 0.3);
  EXPECT_NEAR(drums[1].calcRatio(), 2.4, 0.3);
  EXPECT_NEAR(drums[2].calcRatio(), 1.6, 0.2);
}

TEST(OwnBox, RunsAtItsRatioInTheWholeMachine) {
  // Willis with the machine's teeth, 1 + 78/24 = 4.25: with the first drum held the whole machine
  // keeps that ratio to the last digits a lock leaves.
  PlantRig rig(testing::warmReady());
  rig.forward();
  rig.handbrakes(0.0);
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.gear(1);
  rig.run(4.0);
  rig.notch(2);
  rig.run(10.0);
  const plant::LineReadings& line = rig.now().line[0];
  ASSERT_TRUE(line.gear_locked[0]);
  ASSERT_GT(line.output_rad_per_s, 5.0);
  EXPECT_NEAR(line.input_rad_per_s / line.output_rad_per_s, 4.25, 1e-7);
}

}  // namespace
}  // namespace cabwright::reference
