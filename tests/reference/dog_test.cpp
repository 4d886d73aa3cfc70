// SPDX-License-Identifier: GPL-3.0-or-later
// The dog clutch: chance and wait of alignment, by the plant's formula and by throwing the dog of
// the whole machine at teeth in random places.
//
// The formulas are derived, not published (uniform random phase; pitch P, window W, relative speed
// w, overlap h entered at axial speed u): chance W/P at rest, (W - w h/u)/P moving; mean wait (P -
// W)^2/(2 P w), longest (P - W)/w. Signs as in Pollack Periodica 15(1) p. 61 (abstract read): the
// chance rises with teeth, axial speed, backlash; falls with speed difference and overlap.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "plant/drive.h"
#include "plant_rig.h"
#include "quantity/random.h"
#include "quantity/units.h"

namespace cabwright::reference {
namespace {

namespace q = cabwright::quantity;
using testing::PlantRig;

// Six teeth, window 6 deg, overlap 2 mm, sleeve at 0.1 m/s.
plant::FinalDriveParameters sixTeeth() {
  plant::FinalDriveParameters f;
  f.teeth = 6.0;
  f.window_deg = 6.0;
  f.overlap_m = 0.002;
  f.sleeve_mps = 0.1;
  return f;
}

const double kTenRpm = q::rpmToRadPerSec(10.0);

TEST(DogClutch, ChanceOfAlignment) {
  // At rest 0.100; at 10 rpm 0.080. Computed from the law: arithmetic.
  EXPECT_NEAR(plant::calcDogChance(sixTeeth(), 0.0), 0.100, 1e-12);
  EXPECT_NEAR(plant::calcDogChance(sixTeeth(), kTenRpm), 0.080, 1e-12);
}

TEST(DogClutch, SpeedLimit) {
  // Where the window passes while the overlap is travelled: W u/h = 50 rpm. Computed: arithmetic.
  EXPECT_NEAR(q::radPerSecToRpm(plant::calcDogSpeedLimit(sixTeeth())), 50.0, 1e-9);
  EXPECT_EQ(plant::calcDogChance(sixTeeth(), q::rpmToRadPerSec(50.1)), 0.0);
}

TEST(DogClutch, ChanceRisesAndFallsAsPublished) {
  // Pollack Periodica 15(1) p. 61 (abstract, read): signs only. More teeth of the same window.
  const auto chance = [](auto change) {
    plant::FinalDriveParameters f = sixTeeth();
    change(f);
    return plant::calcDogChance(f, kTenRpm);
  };
  const double base = plant::calcDogChance(sixTeeth(), kTenRpm);
  EXPECT_GT(chance([](auto& f) { f.teeth = 9.0; }), base);
  EXPECT_GT(chance([](auto& f) { f.sleeve_mps = 0.2; }), base);
  EXPECT_GT(chance([](auto& f) { f.window_deg = 8.0; }), base);
  EXPECT_LT(chance([](auto& f) { f.overlap_m = 0.004; }), base);
  EXPECT_LT(plant::calcDogChance(sixTeeth(), 2.0 * kTenRpm), base);
}

// The final drive of line 1 alone: nothing rubs, the crown wheel turns by itself at this speed and
// place against the standing axle, the air is up at once.
PlantRig freeShaft(double phase_rad, double crown_rad_per_s) {
  plant::Parameters p;
  plant::FinalDriveParameters& f = p.final_drive[0];
  f = sixTeeth();
  f.move_psi = 5.0;
  f.full_psi = 10.0;
  f.shift_c = 5.0;
  f.tooth_friction = f.bearing_nm = f.bearing_nm_s = 0.0;
  plant::GearboxParameters& g = p.gearbox[0];
  g.drag_nm = g.drag_nm_s = g.drum_drag_nm = 0.0;
  p.freewheel[0].drag_nm = 0.0;
  plant::StartConditions s;
  s.main_psi = s.control_psi = 90.0;
  PlantRig rig(s, {}, p);
  rig.in.line[0].shift_forward = true;
  plant::World& w = rig.world;
  const double sleeve = w.m.d.contact_m[0] - 0.002;
  w.x[plant::stateOf(0, plant::kSleeve)] = sleeve;
  w.x[plant::stateOf(0, plant::kShaftAngle)] = phase_rad * f.ratio;
  w.x[plant::speedOf(0, plant::kBoxOut)] = crown_rad_per_s * f.ratio;
  const auto ends = plant::calcShiftVolumes(f, sleeve);
  w.x[plant::stateOf(0, plant::kShiftForwardMass)] =
      plant::calcMass(q::psiGaugeToPa(80.0), ends.forward_m3, w.m.d.gas_k);
  w.x[plant::stateOf(0, plant::kShiftReverseMass)] =
      plant::calcMass(q::kStandardAtmospherePa, ends.reverse_m3, w.m.d.gas_k);
  return rig;
}

struct Throw {
  bool first_time = false;  ///< in at the first gap, the one it met on arriving
  double wait_s = 0.0;      ///< from meeting the teeth to finding a gap
};

Throw throwDog(double phase_rad, double crown_rad_per_s) {
  PlantRig rig = freeShaft(phase_rad, crown_rad_per_s);
  Throw result;
  double met_s = -1.0;
  bool found = false, turned_away = false;
  while (rig.seconds() < 3.0) {
    rig.tick();
    for (const plant::PlantEvent& e : rig.world.events) {
      const std::string what(e.what);
      if (e.line != 1) continue;
      if (what == "dog stands tooth on tooth") {
        met_s = rig.seconds();
        turned_away = true;
      }
      if (what == "dog finds a gap" && !found) {
        found = true;
        if (met_s >= 0.0) result.wait_s = rig.seconds() - met_s;
      }
      if (what == "dog thrown back") turned_away = true;
      if (what == "dog drops in") {
        EXPECT_TRUE(found);
        result.first_time = !turned_away;
        return result;
      }
    }
  }
  ADD_FAILURE() << "never went in from phase " << phase_rad;
  return result;
}

const double kPitch = q::degToRad(60.0);

TEST(DogClutch, ThrownAtRandomTeethInTheWholeMachine) {
  // Monte Carlo, 600 throws at 10 rpm: the chance of the first gap 0.080, the wait 0.405 s in the
  // mean and never above 0.900 s. Computed from the law; three standard deviations of the sample,
  // and a tick of 10 ms on each wait.
  constexpr int kThrows = 600;
  q::Random random(20240607u);
  int first = 0;
  double sum = 0.0, squares = 0.0, longest = 0.0;
  for (int k = 0; k < kThrows; ++k) {
    const Throw got = throwDog(random.uniform01() * kPitch, kTenRpm);
    first += got.first_time ? 1 : 0;
    sum += got.wait_s;
    squares += got.wait_s * got.wait_s;
    longest = std::max(longest, got.wait_s);
  }
  const double n = kThrows, mean = sum / n;
  const double deviation = std::sqrt((squares / n - mean * mean) / n);
  fmt::print("REFERENCE | {} | {}\n",
             "dog at 10 rpm, 600 throws: chance 0.080, mean wait 0.405 s, longest 0.900 s",
             fmt::format("{:.4f}, {:.4f} s, {:.3f} s", first / n, mean, longest));
  EXPECT_NEAR(first / n, 0.080, 3.0 * std::sqrt(0.080 * 0.920 / n));
  EXPECT_NEAR(mean, 0.405, 3.0 * deviation + 0.005);
  EXPECT_LE(longest, 0.900 + 0.0101);
  EXPECT_GT(longest, 0.85);
}

TEST(DogClutch, ThrownAtEveryToothPlaceInTurn) {
  // The same by an even grid of 300 places: the chance to 1/300 on either edge, the mean wait to a
  // tick.
  constexpr int kPlaces = 300;
  int first = 0;
  double sum = 0.0;
  for (int k = 0; k < kPlaces; ++k) {
    const Throw got = throwDog((k + 0.5) / kPlaces * kPitch, kTenRpm);
    first += got.first_time ? 1 : 0;
    sum += got.wait_s;
  }
  EXPECT_NEAR(static_cast<double>(first) / kPlaces, 0.080, 1.0 / kPlaces + 1e-9);
  EXPECT_NEAR(sum / kPlaces, 0.405, 0.005);
}

TEST(DogClutch, PromisesNothingAtRest) {
  // At no relative speed a tooth that faces a tooth faces it for good: the share of places that
  // ever go in is W/P = 0.100, and no wait helps. Computed from the law; the grid is 60 places.
  int in = 0;
  for (int k = 0; k < 60; ++k) {
    PlantRig rig = freeShaft((k + 0.5) / 60.0 * kPitch, 0.0);
    rig.run(5.0);
    const plant::DogState dog = rig.now().line[0].dog;
    in += dog == plant::DogState::kMeshed ? 1 : 0;
    EXPECT_TRUE(dog == plant::DogState::kMeshed || dog == plant::DogState::kOnTooth);
  }
  EXPECT_EQ(in, 6);
}

TEST(DogClutch, RattlesAboveItsSpeedLimit) {
  // Above W u/h no gap is wide enough for long enough. Computed from the law: 55 rpm against 50.
  PlantRig rig = freeShaft(0.3, q::rpmToRadPerSec(55.0));
  rig.run(5.0);
  EXPECT_EQ(rig.now().line[0].dog, plant::DogState::kRattling);
}

}  // namespace
}  // namespace cabwright::reference
