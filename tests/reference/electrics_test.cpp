// SPDX-License-Identifier: GPL-3.0-or-later
// Battery and bus.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <array>

#include "plant/electrics.h"
#include "plant_rig.h"
#include "published.h"

namespace cabwright::reference {
namespace {

using testing::PlantRig;

// Battery council table, rest voltage of six cells at 26.7 C at 100, 75, 50, 25, 0 % charge, as
// reproduced at studylib.net/doc/18054160: read. Doubled for 24 V.
constexpr std::array<double, 5> kSixCellV{12.65, 12.45, 12.24, 12.06, 11.89};

TEST(Battery, RestVoltageFollowsThePublishedTable) {
  // A straight line with the table's own ends stays within 0.06 V of it (24 V): the usual rule
  // V = SG + 0.84 a cell is no closer, 0.03 V in six cells.
  plant::BatteryParameters b;
  b.full_v = 2.0 * kSixCellV.front();
  b.empty_v = 2.0 * kSixCellV.back();
  for (std::size_t k = 0; k < kSixCellV.size(); ++k) {
    const double charge = 1.0 - 0.25 * static_cast<double>(k);
    EXPECT_NEAR(plant::calcRestVoltage(b, charge), 2.0 * kSixCellV[k], 0.061) << charge;
  }
}

TEST(Battery, OwnRestVoltageIsNearThePublishedTable) {
  // The machine's own ends, 25.2 V (common practice: 25.2 V open circuit) and 23.8 V: within 0.10 V
  // of the table, which is what full batteries differ by among makers (2.12 to 2.15 V a cell).
  const plant::BatteryParameters own;
  for (std::size_t k = 0; k < kSixCellV.size(); ++k) {
    const double charge = 1.0 - 0.25 * static_cast<double>(k);
    EXPECT_NEAR(plant::calcRestVoltage(own, charge), 2.0 * kSixCellV[k], 0.101) << charge;
  }
}

plant::BusState loaded(double source_v, double source_ohm, double load_ohm) {
  plant::BusInputs in;
  in.source_v = source_v;
  in.source_ohm = source_ohm;
  in.load_s = 1.0 / load_ohm;
  return plant::solveBus(plant::Parameters(), in);
}

TEST(Bus, TerminalVoltageUnderALightLoad) {
  // OpenStax, College Physics, section 21.2, worked example "Terminal voltage and load": 12.0 V,
  // 0.100 ohm, load 10.0 ohm: 1.188 A, 11.9 V. From memory, to be verified in print. Half units.
  const auto s = loaded(12.0, 0.100, 10.0);
  EXPECT_PUBLISHED("OpenStax, College Physics, section 21.2", s.bus_v, 11.9, 0.05);
  EXPECT_NEAR(s.battery_a, 1.188, 5e-4);
}

TEST(Bus, TerminalVoltageUnderAHeavyLoad) {
  // The same with 0.500 ohm: 20.0 A, 10.0 V, 200 W. From memory, to be verified in print. Exact.
  const auto s = loaded(12.0, 0.100, 0.500);
  EXPECT_PUBLISHED("OpenStax, College Physics, section 21.2", s.bus_v, 10.0, 1e-9);
  EXPECT_PUBLISHED("OpenStax, College Physics, section 21.2", s.battery_a, 20.0, 1e-9);
  EXPECT_PUBLISHED("OpenStax, College Physics, section 21.2", s.bus_v * s.battery_a, 200.0, 1e-8);
  EXPECT_NEAR(plant::calcTerminalVoltage(12.0, 0.100, s.battery_a), s.bus_v, 1e-9);
}

TEST(Bus, TerminalVoltageOfAWornBattery) {
  // The same with the internal resistance grown to 0.500 ohm: 12.0 A, 6.00 V, 72.0 W. From memory,
  // to be verified in print. Exact.
  const auto s = loaded(12.0, 0.500, 0.500);
  EXPECT_PUBLISHED("OpenStax, College Physics, section 21.2", s.battery_a, 12.0, 1e-9);
  EXPECT_PUBLISHED("OpenStax, College Physics, section 21.2", s.bus_v, 6.00, 1e-9);
  EXPECT_PUBLISHED("OpenStax, College Physics, section 21.2", s.bus_v * s.battery_a, 72.0, 1e-8);
}

TEST(Bus, StarterBankUnderSixHundredAmperes) {
  // Computed from the law: 25.4 V, 10 mohm, 600 A: 19.4 V.
  EXPECT_NEAR(plant::calcTerminalVoltage(25.4, 0.010, 600.0), 19.4, 1e-9);
}

TEST(Bus, GivesMostPowerIntoItsOwnResistance) {
  // Maximum power theorem, computed: E^2/(4 r) = 16.1 kW at R = r, less on either side. Half a unit
  // in the last digit.
  const auto power = [](double ohm) {
    const auto s = loaded(25.4, 0.010, ohm);
    return s.bus_v * s.battery_a * 1e-3;
  };
  EXPECT_NEAR(power(0.010), 16.1, 0.05);
  EXPECT_LT(power(0.011), power(0.010));
  EXPECT_LT(power(0.009), power(0.010));
}

TEST(Bus, StalledStarterTakesWhatOhmAllows) {
  // Kirchhoff's law, computed: 25.2 V over 10 + 20 mohm, less 1.5 V at the brushes: 790 A, and 17.3
  // V at the terminals. Exact but for the solver.
  plant::Parameters p;
  p.starter[0].resistance_ohm = 0.020;
  p.starter[0].brush_v = 1.5;
  plant::BusInputs in;
  in.source_v = 25.2;
  in.source_ohm = 0.010;
  in.starter_on[0] = true;
  const auto s = plant::solveBus(p, in);
  EXPECT_NEAR(s.starter_a[0], 790.0, 1e-6);
  EXPECT_NEAR(s.bus_v, 17.3, 1e-8);
}

TEST(Bus, SeriesMotorsTorqueGrowsWithTheSquareOfSmallCurrents) {
  // Any text on electrical machines (Theraja; Hughes): unsaturated, T is as I^2; saturated, as I.
  // From memory, to be verified in print. 2 %, what the knee leaves at a hundredth and at a
  // hundredfold of it.
  const plant::StarterParameters s;
  const auto times = [&](double amps) {
    return plant::calcStarterTorque(s, 2.0 * amps) / plant::calcStarterTorque(s, amps);
  };
  EXPECT_NEAR(times(0.01 * s.knee_a), 4.0, 0.08);
  EXPECT_NEAR(times(100.0 * s.knee_a), 2.0, 0.04);
}

TEST(Battery, LosesTheAmpereHoursItGives) {
  // Faraday's law, computed: charge lost is the integral of current over the capacity. 10 min at
  // about 20 A from 200 A h. 1e-6 of full for the trapezoids.
  PlantRig rig{plant::StartConditions()};
  rig.in.load_conductance_s = 0.8;
  rig.tick();
  const double from = rig.now().battery_charge;
  double coulombs = 0.0, before = rig.now().battery_a;
  for (int k = 0; k < 60000; ++k) {
    rig.tick();
    coulombs += 0.5 * (before + rig.now().battery_a) * 0.01;
    before = rig.now().battery_a;
  }
  const plant::BatteryParameters b;
  ASSERT_GT(coulombs, 10000.0);
  const double self = b.self_discharge_a * 600.0;
  EXPECT_NEAR(from - rig.now().battery_charge, (coulombs + self) / (b.capacity_ah * 3600.0), 1e-6);
}

TEST(Battery, CrankingVoltageIsAsUsual) {
  // Common practice, no published source: a 24 V bank does not fall below 16 to 18 V while
  // cranking; breakaway takes two to three times the cranking current.
  PlantRig rig(testing::coldNight(10.0));
  rig.in.line[0].starter_contactor = true;
  rig.in.line[0].fuel_cock_open = false;
  rig.tick();
  const double breakaway_a = rig.now().line[0].starter_a, lowest_v = rig.now().bus_v;
  rig.run(3.0);
  fmt::print("REFERENCE | {} | {}\n", "breakaway and cranking current",
             fmt::format("{:.0f} A at {:.1f} V, then {:.0f} A at {:.1f} V", breakaway_a, lowest_v,
                         rig.now().line[0].starter_a, rig.now().bus_v));
  EXPECT_GT(lowest_v, 16.0);
  EXPECT_GT(rig.now().bus_v, 18.0);
  EXPECT_GT(breakaway_a / rig.now().line[0].starter_a, 2.0);
  EXPECT_LT(breakaway_a / rig.now().line[0].starter_a, 3.0);
}

TEST(Battery, ChargesAtTheUsualVoltage) {
  // Common practice, no published source: charging at 27.5 to 28.5 V.
  PlantRig rig(testing::warmReady());
  rig.forward();
  rig.notch(2);
  rig.run(60.0);
  EXPECT_GT(rig.now().bus_v, 27.5);
  EXPECT_LT(rig.now().bus_v, 28.5);
}

TEST(Battery, GeneratorsRaiseTheBusAboveRest) {
  // Common practice, no published source: with the engines above idle the bus stands above the
  // battery's rest voltage of 25.2 V and never above 28.5 V.
  PlantRig rig(testing::warmReady());
  rig.run(5.0);
  EXPECT_LT(rig.now().bus_v, 25.2) << "below the cut-in speed nothing charges";
  rig.forward();
  rig.notch(2);
  rig.run(20.0);
  EXPECT_GT(rig.now().bus_v, 25.7);
  EXPECT_LT(rig.now().bus_v, 28.5);
  EXPECT_LT(rig.now().battery_a, 0.0);
}

}  // namespace
}  // namespace cabwright::reference
