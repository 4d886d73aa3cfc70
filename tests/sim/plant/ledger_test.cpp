// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing comes from nowhere: air, vacuum and energy over the twenty-minute run, with the shipped
// vehicle and with others, under the script and under random hands.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "golden_script.h"
#include "plant/plant.h"
#include "plant/world.h"
#include "random_machine.h"
#include "vehicle_text.h"

namespace cabwright::testing {
namespace {

// Of the mass that went through, and of the energy put in. The table asks for 5e-3 of the fuel; the
// equations book every joule, so that only the steps' own errors are left.
constexpr double kMassShare = 1e-6, kEnergyShare = 1e-6, kLittleShare = 1e-4;
constexpr double kHardlyAnythingJ = 1e4;  // for hands that do next to nothing in their two minutes

// Ledgers that only ever grow.
const std::vector<std::pair<std::size_t, const char*>>& growing() {
  static const std::vector<std::pair<std::size_t, const char*>> items{
      {plant::kFuelJ, "fuel"},           {plant::kExhaustJ, "exhaust"},
      {plant::kAuxiliaryJ, "auxiliary"}, {plant::kResistanceJ, "resistance"},
      {plant::kBlockJ, "blocks"},        {plant::kRailJ, "rail"},
      {plant::kBearingJ, "bearings"},    {plant::kElectricJ, "electric"},
      {plant::kAirInKg, "compressed"},   {plant::kVacuumOutKg, "drawn off"}};
  return items;
}

// Energy of the height lost since position 0, J.
double calcDescent(const plant::World& w) {
  const double lost_m = -w.m.grade.calcHeight(w.x[plant::kPosition]);
  return std::max(0.0, w.m.p.train.mass_kg * quantity::kStandardGravity * lost_m);
}

struct Book {
  plant::Accounts first;
  plant::State last{};
  double moving_j = 0;  ///< what the masses brought along

  explicit Book(const plant::World& w)
      : first(plant::calcAccounts(w)), last(w.x), moving_j(plant::calcKineticEnergy(w.m, w.x)) {}

  // Between the ends of a step a ledger is read off a polynomial, which may dip where a block has
  // just touched: by a thousandth of what the brake takes in a second, never more.
  void checkGrowth(const plant::World& w) {
    for (const auto& [at, name] : growing()) {
      const double slack = at >= plant::kAirInKg ? 1e-6 : 300.0;
      EXPECT_GE(w.x[at], last[at] - slack) << name << " shrinks at tick " << w.tick;
      last[at] = std::max(last[at], w.x[at]);
    }
  }

  // Shares of what went through: of energy the heat of the fuel put in, and, where a run begins at
  // speed or goes downhill with dead engines, what that and the battery gave.
  void checkBalance(const plant::World& w, const std::string& run, bool only_fuel = true) const {
    const plant::Accounts a = plant::calcAccounts(w);
    const double air = (a.air_kg - first.air_kg) - (a.air_in_kg - a.air_out_kg);
    const double air_through = a.air_in_kg + std::abs(a.air_out_kg) + 1e-3 * first.air_kg;
    const double vacuum = (a.vacuum_kg - first.vacuum_kg) - (a.vacuum_in_kg - a.vacuum_out_kg);
    const double vacuum_through =
        std::abs(a.vacuum_in_kg) + a.vacuum_out_kg + 1e-3 * first.vacuum_kg;
    const double energy = (a.stored_j - first.stored_j) - (a.in_j - a.out_j);
    const double given_j =
        kHardlyAnythingJ + moving_j + std::max(0.0, w.x[plant::kBatteryJ]) + calcDescent(w);
    const double through = w.x[plant::kFuelJ] + (only_fuel ? 0.0 : given_j);
    std::printf("LEDGER | %s | air %.1e, vacuum %.1e, energy %.1e of %.1f MJ\n", run.c_str(),
                air / air_through, vacuum / vacuum_through, energy / through, through * 1e-6);
    EXPECT_LE(std::abs(air), kMassShare * air_through) << run;
    EXPECT_LE(std::abs(vacuum), kMassShare * vacuum_through) << run;
    EXPECT_LE(std::abs(energy), (only_fuel ? kEnergyShare : kLittleShare) * through) << run;
  }
};

class GoldenLedger : public ::testing::TestWithParam<GoldenVehicle> {};

TEST_P(GoldenLedger, Closes) {
  const plant::Parameters p = shippedVehicle(GetParam().name);
  plant::World w(p, goldenLine(), goldenStart(p, GetParam().ambient_c), plant::makeDopri5());
  GoldenScript script;
  Book book(w);
  for (std::int64_t tick = 0; tick < kGoldenTicks; ++tick) {
    w.advance(script.advanceTo(tick));
    ASSERT_FALSE(w.failed) << "tick " << tick;
    if (tick % 100 == 0) book.checkGrowth(w);
    if (tick == kGoldenTicks / 2) {
      book.checkBalance(w, fmt::format("golden run, {}, half way", GetParam().name));
    }
  }
  book.checkBalance(w, fmt::format("golden run, {}", GetParam().name));
  EXPECT_EQ(w.counts.storms, 0) << "no storm of events in an ordinary run";
  EXPECT_GT(w.x[plant::kFuelJ], 1e7) << "and the engines did run";
  EXPECT_GT(w.x[plant::kBlockJ], 1e6);
}

INSTANTIATE_TEST_SUITE_P(Vehicles, GoldenLedger, ::testing::ValuesIn(kGoldenVehicles),
                         [](const auto& vehicle) { return shortName(vehicle.param); });

TEST(Ledger, ClosesForOtherVehiclesOverTheGoldenRun) {
  for (std::uint64_t seed = 1; seed <= 3; ++seed) {
    quantity::Random r(seed);
    const plant::Parameters p = makeSensibleParameters(r);
    plant::World w(p, goldenLine(), goldenStart(p), plant::makeDopri5());
    GoldenScript script;
    Book book(w);
    for (std::int64_t tick = 0; tick < kGoldenTicks; ++tick) {
      w.advance(script.advanceTo(tick));
      ASSERT_FALSE(w.failed) << "vehicle " << seed << ", tick " << tick;
      if (tick % 100 == 0) book.checkGrowth(w);
    }
    book.checkBalance(w, fmt::format("golden run, vehicle {}", seed));
  }
}

TEST(Ledger, ClosesForOtherVehiclesUnderRandomHands) {
  for (std::uint64_t seed = 1; seed <= 12; ++seed) {
    quantity::Random r(seed * 77);
    const plant::Parameters p = makeSensibleParameters(r);
    const plant::StartConditions start = makeRandomStart(r);
    const plant::GradeProfile line = makeRandomLine(r);
    plant::World w(p, line, start, plant::makeDopri5());
    Book book(w);
    plant::PlantInputs u;
    for (int tick = 0; tick < 12000; ++tick) {
      if (r.uniformBelow(80) == 0) actAtRandom(r, u);
      w.advance(u);
      ASSERT_FALSE(w.failed) << "seed " << seed << ", tick " << tick;
      if (tick % 20 == 0) book.checkGrowth(w);
    }
    book.checkBalance(w, fmt::format("random hands {}", seed), false);
  }
}

// A number changed under way takes along what hung on it, and the account says how much.
TEST(Ledger, ClosesWhenNumbersChangeUnderWay) {
  plant::StartConditions start;
  start.speed_mph = 30;
  start.line[0].coolant_c = start.line[1].coolant_c = 60;
  plant::Plant plant(plant::Parameters(), {}, start);
  const plant::Accounts first = plant.accounts();
  const auto change = [&](const char* name, double value) {
    for (const plant::ParameterInfo& info : plant::parameterTable())
      if (info.name == name) return plant.setParameter(info, value);
    FAIL() << name;
  };
  const auto missing = [&] {
    const plant::Accounts a = plant.accounts();
    return (a.stored_j - first.stored_j) - (a.in_j - a.out_j + a.altered_j);
  };
  for (int tick = 0; tick < 3000; ++tick) {
    if (tick == 1000) change("train.mass_kg", 90000);
    if (tick == 1500) change("engine1.coolant_capacity_j_k", 440e3);
    if (tick == 2000) change("exhauster1.belt", 0);
    plant.advance({});
  }
  const plant::Accounts a = plant.accounts();
  EXPECT_GT(a.altered_j, 1e6)
      << "half as much again of the train, half as much again of its energy";
  EXPECT_LE(std::abs(missing()), 1e-6 * first.stored_j);
  EXPECT_GT(first.stored_j, 5e6);
  const double before = a.altered_j;
  change("vacuum.side1_leak_c", 3);
  change("gearbox1.band3.friction", 0.1);
  EXPECT_EQ(plant.accounts().altered_j, before) << "a leak or a lining brings nothing along";
}

// The last of the coolant takes its heat along and no more than that.
TEST(Ledger, ClosesWhenTheCoolantRunsDry) {
  plant::Parameters p;
  p.engine[0].coolant_leak_per_s = 0.01;
  plant::StartConditions start;
  start.line[0].coolant_c = 85;
  plant::Plant plant(p, {}, start);
  const plant::Accounts first = plant.accounts();
  for (int tick = 0; tick < 13000; ++tick) plant.advance({});
  EXPECT_LT(plant.readings().line[0].coolant_level, 1e-3);
  const plant::Accounts a = plant.accounts();
  EXPECT_GT(a.out_j, 5e6);
  EXPECT_NEAR(a.stored_j - first.stored_j, a.in_j - a.out_j, 10.0);
}

}  // namespace
}  // namespace cabwright::testing
