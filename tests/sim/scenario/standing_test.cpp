// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong from the start has been so all the while the unit stood.
#include <gtest/gtest.h>

#include "scenario_texts.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::good;
using cabwright::testing::parseAfterHead;

plant::StartConditions startWith(const std::string& hours, const std::string& more) {
  const std::string conditions =
      hours.empty() ? "" : "[conditions]\ntemperature = 2\nstood_hours = " + hours + "\n";
  return makeSetup(good(parseAfterHead(conditions + more)), 1).start.plant;
}

const std::string kLoad = "[[fault]]\nfault = \"battery.load_left_on\"\nsize = \"300 W\"\n";

TEST(StoodScenario, ALoadLeftOnHasFlattenedTheBatteryByMorning) {
  EXPECT_GT(startWith("14", "").battery_charge, 0.999);
  EXPECT_LT(startWith("14", kLoad).battery_charge, 0.25);
  EXPECT_EQ(startWith("", kLoad).battery_charge, 1.0) << "it has only just been left on";
}

TEST(StoodScenario, OnlyThroughAClosedSwitchAndOnlyIfItWasThere) {
  const std::string open = "[start.controls]\nbattery_switch = \"open\"\n";
  EXPECT_GT(startWith("14", open + kLoad).battery_charge, 0.999);
  EXPECT_GT(startWith("14", kLoad + "at = \"5 min\"\n").battery_charge, 0.999);
}

TEST(StoodScenario, WhatTheFileSaysOfTheStartHolds) {
  EXPECT_EQ(startWith("14", "[start]\nbattery_charge = 0.8\n" + kLoad).battery_charge, 0.8);
}

TEST(StoodScenario, ALeakHasLeakedToo) {
  const std::string leak = "[[fault]]\nfault = \"air.main_leak\"\n";
  const plant::StartConditions sound = startWith("1", ""), leaky = startWith("1", leak);
  EXPECT_GT(sound.main_psi, 60.0);
  EXPECT_LT(leaky.main_psi, 0.5 * sound.main_psi);
  EXPECT_EQ(leaky.line[0].coolant_c, sound.line[0].coolant_c);
}

}  // namespace
}  // namespace cabwright::scenario
