// SPDX-License-Identifier: GPL-3.0-or-later
// The horn has air of its own: it swells, sounds with its pressure, and dies away.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>

#include "plant_rig.h"

namespace cabwright::testing {
namespace {

plant::Parameters withoutCompressors() {
  plant::Parameters p;
  for (plant::CompressorParameters& c : p.compressor) c.belt = 0.0;
  return p;
}

TEST(Horn, SwellsToItsNoteAndDiesAwayByItsOwnAir) {
  const plant::Parameters p = withoutCompressors();
  PlantRig rig(warmReady(90.0), {}, p);
  EXPECT_EQ(rig.now().cab[0].horn_level, 0.0);
  rig.in.cab[0].horn = true;
  const double swells =
      rig.runUntil([](const PlantRig& r) { return r.now().cab[0].horn_level >= 1.0; }, 5.0);
  rig.run(2.0);
  EXPECT_EQ(rig.now().cab[1].horn_level, 0.0) << "each cab has its own";
  const double from_pa = rig.now().cab[0].horn_pa;
  EXPECT_GT(q::paToPsiGauge(from_pa), p.air.horn_full_psi);
  EXPECT_LT(from_pa, rig.now().control_reservoir_pa) << "less than the valve has before it";

  rig.in.cab[0].horn = false;
  rig.run(0.2);
  // Choked, isothermal: p = p0 exp(-C rho0 R T0 sqrt(T/T0) t/V), ISO 6358.
  const double rate =
      p.air.horn_c * 1e-8 * 1.185 * std::sqrt(293.15 / 288.15) * 287.05287 * 288.15 / p.air.horn_m3;
  EXPECT_NEAR(rig.now().cab[0].horn_pa, from_pa * std::exp(-0.2 * rate), 1e-3 * from_pa);
  EXPECT_GT(rig.now().cab[0].horn_level, 0.3) << "still dying away";
  const double dies =
      rig.runUntil([](const PlantRig& r) { return r.now().cab[0].horn_level <= 0.0; }, 5.0) + 0.2;
  std::printf("HORN | full after %.2f s, silent %.2f s after the lever\n", swells, dies);
  EXPECT_GT(swells, 0.05);
  EXPECT_LT(swells, 0.5);
  EXPECT_GT(dies, 0.5);
  EXPECT_LT(dies, 1.5);
}

TEST(Horn, TakesItsAirFromTheControlReservoir) {
  // House values: three seconds take 90 psi to some 87.6, once main and control reservoir have
  // settled; while it blows the check valve takes a little more.
  PlantRig rig(warmReady(90.0), {}, withoutCompressors());
  rig.in.cab[0].horn = true;
  rig.run(3.0);
  const double blowing = rig.controlPsi();
  rig.in.cab[0].horn = false;
  rig.run(5.0);
  std::printf("HORN | three seconds take 90 psi to %.2f, then %.2f\n", blowing, rig.controlPsi());
  EXPECT_NEAR(rig.controlPsi(), 87.6, 0.3);
  EXPECT_LT(blowing, rig.controlPsi() - 0.5);
}

TEST(Horn, IsLoudOnlyWithAir) {
  double before = 0.0;
  for (double psi : {2.0, 15.0, 30.0, 45.0, 80.0}) {
    PlantRig rig(warmReady(psi), {}, withoutCompressors());
    rig.in.cab[1].horn = true;
    rig.run(1.0);
    const double level = rig.now().cab[1].horn_level;
    if (psi < 5.0) {
      EXPECT_EQ(level, 0.0);
    } else {
      EXPECT_GT(level, before) << psi << " psi";
    }
    before = level;
  }
  EXPECT_EQ(before, 1.0);
}

TEST(Horn, KeepsItsBooksWhateverItsVolume) {
  for (double volume : {1e-4, 1e-3, 1e-2}) {
    plant::Parameters p = withoutCompressors();
    p.air.horn_m3 = volume;
    PlantRig rig(warmReady(90.0), {}, p);
    const plant::Accounts from = plant::calcAccounts(rig.world);
    for (int blast = 0; blast < 5; ++blast) {
      rig.in.cab[0].horn = blast % 2 == 0;
      rig.run(0.7);
    }
    const plant::Accounts now = plant::calcAccounts(rig.world);
    EXPECT_NEAR(now.air_kg - from.air_kg, now.air_in_kg - now.air_out_kg, 1e-7 * from.air_kg);
    EXPECT_GT(now.air_out_kg, 0.01);
  }
}

}  // namespace
}  // namespace cabwright::testing
