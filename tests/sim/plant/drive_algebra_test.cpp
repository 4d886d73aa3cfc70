// SPDX-License-Identifier: GPL-3.0-or-later
// Ratios, torques and speeds follow from tooth numbers, whatever they are, in the algebra and in
// the running machine.
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <array>
#include <cmath>

#include "plant_rig.h"
#include "random_machine.h"
#include "vehicle_text.h"

namespace cabwright::testing {
namespace {

// The box written out as seven unknown speeds and solved by elimination: input, output and the
// three annuli (each the next carrier) against Willis for each set, one drum held, input given.
std::array<double, 3> solveBox(const plant::GearboxParameters& g, int held, double input) {
  // Unknowns: output, annulus 1, annulus 2, annulus 3.
  const double k[3] = {g.annulus_1 / g.sun_1, g.annulus_2 / g.sun_2, g.annulus_3 / g.sun_3};
  double m[4][5] = {};
  for (int s = 0; s < 3; ++s) {
    m[s][s + 1] = k[s];     // k w_annulus
    m[s][s] -= 1.0 + k[s];  // (1 + k) w_carrier: output, annulus 1, annulus 2
    m[s][4] = -input;       // sun
  }
  m[3][held + 1] = 1.0;
  for (int c = 0; c < 4; ++c) {
    int best = c;
    for (int r = c; r < 4; ++r) {
      if (std::abs(m[r][c]) > std::abs(m[best][c])) best = r;
    }
    std::swap(m[c], m[best]);
    for (int r = 0; r < 4; ++r) {
      if (r == c) continue;
      const double f = m[r][c] / m[c][c];
      for (int j = c; j < 5; ++j) m[r][j] -= f * m[c][j];
    }
  }
  return {m[0][4] / m[0][0], m[1][4] / m[1][1], m[2][4] / m[2][2]};
}

TEST(Gearbox, RatiosOfAnyTeethFollowFromWillis) {
  EXPECT_TRUE(rc::check([](std::uint64_t seed) {
    quantity::Random r(seed);
    plant::GearboxParameters g;
    drawTeeth(r, g);
    const auto drums = plant::calcDrumMixes(g);
    for (int held = 0; held < 3; ++held) {
      const auto at = static_cast<std::size_t>(held);
      const double output = solveBox(g, held, 100.0)[0];
      RC_ASSERT(std::abs(drums[at].calcRatio() - 100.0 / output) < 1e-9 * drums[at].calcRatio());
      RC_ASSERT(std::abs(drums[at].calcSpeed(100.0, output)) < 1e-9);
    }
    // More teeth held further down the train: a shorter way round.
    RC_ASSERT(drums[0].calcRatio() > drums[1].calcRatio());
    RC_ASSERT(drums[1].calcRatio() > drums[2].calcRatio());
    RC_ASSERT(drums[2].calcRatio() > 1.0);
  }));
}

TEST(Gearbox, TorquesAndPowersOfAnyTeethSumToZero) {
  EXPECT_TRUE(rc::check([](std::uint64_t seed) {
    quantity::Random r(seed);
    plant::Parameters p;
    drawTeeth(r, p.gearbox[0]);
    RC_ASSERT(plant::findParameterFaults(p).empty());
    const plant::Derived d = plant::calcDerived(p, 288.15);
    const double in = drawBetween(r, -200.0, 200.0), out = drawBetween(r, -200.0, 200.0);
    for (std::size_t b = 0; b < plant::kBands; ++b) {
      // A torque on the drum reaches input and output through the row the plant integrates with.
      const plant::RowShape& row = d.shape[plant::kBandRow + b];
      const double drum_nm = drawBetween(r, -2000.0, 2000.0);
      const double on_input = row.ca * drum_nm, on_output = row.cb * drum_nm;
      RC_ASSERT(std::abs(on_input + on_output - drum_nm) < 1e-9 * std::abs(drum_nm) + 1e-9);
      const double drum = row.ca * in + row.cb * out;
      RC_ASSERT(std::abs(on_input * in + on_output * out - drum_nm * drum) < 1e-6);
      // Holding torque: with the drum held, input 1 needs this on the drum and -ratio at the
      // output.
      const double hold = d.drum[0][b].calcHolding(), ratio = d.drum[0][b].calcRatio();
      RC_ASSERT(std::abs(1.0 + hold - ratio) < 1e-9 * ratio);
    }
  }));
}

// Rolls in a gear at ten miles an hour; checks kinematics at every tick.
void expectRollsByTheAlgebra(const plant::Parameters& p, int gear) {
  plant::StartConditions s = warmReady(90.0);
  s.speed_mph = gear < 3 ? 8.0 : 20.0;
  PlantRig rig(s, {}, p);
  rig.forward();
  rig.handbrakes(0.0);
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.gear(gear);
  rig.run(3.0);
  rig.notch(2);
  int locked = 0;
  for (int tick = 0; tick < 1200; ++tick) {
    rig.tick();
    for (std::size_t n = 0; n < plant::kLines; ++n) {
      const plant::LineReadings& l = rig.now().line[n];
      const plant::GearboxParameters& g = p.gearbox[n];
      // Willis for each set, from the readings alone.
      const double k[3] = {g.annulus_1 / g.sun_1, g.annulus_2 / g.sun_2, g.annulus_3 / g.sun_3};
      double carrier = l.output_rad_per_s;
      for (std::size_t set = 0; set < 3; ++set) {
        ASSERT_NEAR(l.input_rad_per_s + k[set] * l.drum_rad_per_s[set], (1.0 + k[set]) * carrier,
                    1e-9 * (1.0 + std::abs(l.input_rad_per_s) * k[set]) * 10.0);
        carrier = l.drum_rad_per_s[set];
      }
      if (!l.gear_locked[static_cast<std::size_t>(gear - 1)]) continue;
      ++locked;
      const double ratio = gear == 4 ? 1.0 : 100.0 / solveBox(g, gear - 1, 100.0)[0];
      ASSERT_NEAR(l.input_rad_per_s, ratio * l.output_rad_per_s, 1e-8);
      ASSERT_NEAR(l.output_rad_per_s, p.final_drive[n].ratio * l.wheel_rad_per_s, 1e-8);
      ASSERT_NEAR(l.wheel_rad_per_s * p.train.wheel_radius_m, rig.now().speed_mps, 1e-8);
    }
  }
  EXPECT_GT(locked, 1000) << "gear " << gear << " must have been in";
}

TEST(Gearbox, EveryGearOfTheShippedVehiclesTurnsByItsTeeth) {
  for (const char* name : {"two-engine-unit", "long-gear-unit"}) {
    const plant::Parameters p = shippedVehicle(name);
    for (int gear = 1; gear <= 4; ++gear) expectRollsByTheAlgebra(p, gear);
  }
}

TEST(Gearbox, OtherTeethWheelsAndFinalDrivesMoveTheSpeedsAsTheAlgebraSays) {
  for (std::uint64_t seed = 1; seed <= 6; ++seed) {
    quantity::Random r(seed);
    // Bands that hold whatever there is to hold.
    std::string text =
        "gearbox.band1.leverage = 15\ngearbox.band2.leverage = 6.4\n"
        "gearbox.band3.leverage = 3\n";
    for (int n = 1; n <= plant::kLines; ++n) {
      plant::GearboxParameters box;
      drawTeeth(r, box);
      text += fmt::format(
          "[gearbox{}]\nsun_1 = {}\nannulus_1 = {}\nsun_2 = {}\nannulus_2 = {}\nsun_3 = {}\n"
          "annulus_3 = {}\n",
          n, box.sun_1, box.annulus_1, box.sun_2, box.annulus_2, box.sun_3, box.annulus_3);
    }
    text += fmt::format("[train]\nwheel_radius_m = {}\n", drawBetween(r, 0.35, 0.55));
    text += fmt::format("[final_drive]\nratio = {}\n", drawBetween(r, 2.0, 4.0));
    expectRollsByTheAlgebra(vehicleWith(text), 1 + static_cast<int>(seed % 4));
  }
}

double calcSpeedAtGovernedMaximum(const plant::Parameters& p) {
  PlantRig rig(warmReady(), {}, p);
  rig.forward();
  rig.handbrakes(0.0);
  rig.in.cab[0].drivers_valve = plant::kValveRelease;
  rig.gear(1);
  rig.run(4.0);
  rig.notch(4);
  rig.run(60.0);
  return rig.now().speed_mps;
}

TEST(Gearbox, TopSpeedInFirstFollowsWheelAndRatio) {
  const auto with = [](const std::string& text) {
    return calcSpeedAtGovernedMaximum(vehicleWith(text));
  };
  const double shipped = with("");
  EXPECT_NEAR(with("train.wheel_radius_m = 0.5027\n") / shipped, 1.1, 0.011);
  EXPECT_NEAR(with("final_drive.ratio = 3.30\n") / shipped, 1.0 / 1.2, 0.011);
  // 24 : 90, ratio up by 4.75 / 4.25.
  EXPECT_NEAR(with("gearbox.annulus_1 = 90\n") / shipped, 4.25 / 4.75, 0.011);
}

}  // namespace
}  // namespace cabwright::testing
