// SPDX-License-Identifier: GPL-3.0-or-later
// The same actions give the same bits, and a copied world is the same world.
#include <gtest/gtest.h>

#include <vector>

#include "golden_script.h"
#include "plant/plant.h"
#include "plant/world.h"
#include "random_machine.h"

namespace cabwright::testing {
namespace {

TEST(Determinism, EveryTickHasTheSameHashWhenRepeated) {
  std::vector<std::uint64_t> first;
  for (int pass = 0; pass < 2; ++pass) {
    plant::World w(plant::Parameters(), goldenLine(), goldenStart(), plant::makeDopri5());
    GoldenScript script;
    for (std::int64_t tick = 0; tick < 60'000; ++tick) {
      w.advance(script.advanceTo(tick));
      if (pass == 0) {
        first.push_back(w.hash());
      } else {
        ASSERT_EQ(w.hash(), first[static_cast<std::size_t>(tick)]) << "tick " << tick;
      }
    }
  }
}

TEST(Determinism, ACopyGoesTheSameWayToTheBit) {
  plant::World w(plant::Parameters(), goldenLine(), goldenStart(), plant::makeDopri5());
  GoldenScript script;
  // Copies taken in the middle of steps, on the way up, under load, braking.
  for (std::int64_t tick = 0; tick < 50'000; ++tick) {
    const plant::PlantInputs& u = script.advanceTo(tick);
    w.advance(u);
    if (tick % 4'999 != 7) continue;
    plant::World original(w), copy(w);
    EXPECT_EQ(copy.hash(), w.hash());
    GoldenScript again = script;
    for (std::int64_t k = tick + 1; k < tick + 1'500; ++k) {
      const plant::PlantInputs& next = again.advanceTo(k);
      original.advance(next);
      copy.advance(next);
      ASSERT_EQ(original.hash(), copy.hash()) << "copied at " << tick << ", tick " << k;
    }
  }
}

TEST(Determinism, LookingDoesNotTouch) {
  plant::World seen(plant::Parameters(), goldenLine(), goldenStart(), plant::makeDopri5());
  plant::World unseen(seen);
  GoldenScript a, b;
  for (std::int64_t tick = 0; tick < 20'000; ++tick) {
    seen.advance(a.advanceTo(tick));
    unseen.advance(b.advanceTo(tick));
    EXPECT_GE(seen.readings().main_reservoir_pa, 0.0);
    EXPECT_GE(plant::calcAccounts(seen).air_kg, 0.0);
  }
  EXPECT_EQ(seen.hash(), unseen.hash());
}

TEST(Determinism, TheHashSeesEveryState) {
  const plant::World w(plant::Parameters(), goldenLine(), goldenStart(), plant::makeDopri5());
  for (std::size_t k = 0; k < plant::kStates; ++k) {
    plant::World other(w);
    other.x[k] = std::nextafter(other.x[k], 1e300);
    EXPECT_NE(other.hash(), w.hash()) << "state " << k;
  }
}

TEST(Determinism, APlantIsCopiedWithItsWorld) {
  plant::Plant p(plant::Parameters(), goldenLine(), goldenStart());
  GoldenScript script;
  std::int64_t tick = 0;
  for (; tick < 3'000; ++tick) p.advance(script.advanceTo(tick));
  plant::Plant copy = p;
  plant::Plant assigned(plant::Parameters(), {}, plant::StartConditions());
  assigned = p;
  for (; tick < 6'000; ++tick) {
    const plant::PlantInputs& u = script.advanceTo(tick);
    p.advance(u);
    copy.advance(u);
    assigned.advance(u);
  }
  EXPECT_EQ(copy.hash(), p.hash());
  EXPECT_EQ(assigned.hash(), p.hash());
}

}  // namespace
}  // namespace cabwright::testing
