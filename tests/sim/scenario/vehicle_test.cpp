// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/vehicle.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cstdlib>
#include <fstream>
#include <set>

#include "scenario_texts.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::faultsOf;
using cabwright::testing::good;
using cabwright::testing::shippedScenarios;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

std::vector<std::string> faultsIn(const std::string& text) {
  return faultsOf(parseVehicle({"v.toml", "title = \"x\"\n" + text}));
}

// All numbers of two vehicles, bit for bit.
::testing::AssertionResult same(const Vehicle& a, const Vehicle& b) {
  for (const auto& info : plant::parameterTable()) {
    if (info.of(a.plant) != info.of(b.plant)) {
      return ::testing::AssertionFailure()
             << info.name << ": " << info.of(a.plant) << ", " << info.of(b.plant);
    }
  }
  for (const auto& info : unit::unitParameterTable()) {
    if (info.of(a.unit) != info.of(b.unit)) {
      return ::testing::AssertionFailure()
             << info.name << ": " << info.of(a.unit) << ", " << info.of(b.unit);
    }
  }
  return ::testing::AssertionSuccess();
}

std::set<std::string> allFields() {
  std::set<std::string> fields;
  for (const auto& info : plant::parameterTable()) {
    fields.insert(info.name.substr(info.name.rfind('.') + 1));
  }
  for (const auto& info : unit::unitParameterTable()) {
    fields.insert(info.name.substr(info.name.rfind('.') + 1));
  }
  return fields;
}

TEST(VehicleFile, GroupsSpeakOfAllAndNumberedGroupsOfOne) {
  // The one of one wins, whichever stands first.
  const Vehicle v = good(parseVehicle({"v.toml",
                                       "title = \"x\"\n"
                                       "[engine2]\ninertia_kg_m2 = 5.5\n"
                                       "[engine]\ninertia_kg_m2 = 4.5\n"
                                       "[gearbox.band3]\nfriction = 0.1\n"
                                       "[gearbox1]\nband1.friction = 0.11\n"
                                       "[relay]\npull_v = \"18 V\"\n"
                                       "[air]\nmain_m3 = 1\n"}));
  EXPECT_EQ(v.plant.engine[0].inertia_kg_m2, 4.5);
  EXPECT_EQ(v.plant.engine[1].inertia_kg_m2, 5.5);
  EXPECT_EQ(v.plant.gearbox[0].band[2].friction, 0.1);
  EXPECT_EQ(v.plant.gearbox[1].band[2].friction, 0.1);
  EXPECT_EQ(v.plant.gearbox[0].band[0].friction, 0.11);
  EXPECT_EQ(v.plant.gearbox[1].band[0].friction, 0.12);
  EXPECT_EQ(v.plant.air.main_m3, 1.0);
  EXPECT_EQ(v.unit.relay.pull_v, 18.0);
}

TEST(VehicleFile, NeedsATitle) {
  EXPECT_THAT(faultsOf(parseVehicle({"v.toml", "[air]\nhorn_c = 3\n"})),
              ElementsAre("v.toml:1:1: a vehicle file needs 'title'"));
}

TEST(VehicleFile, PointsAtUnknownNamesWithTheNearest) {
  EXPECT_THAT(faultsIn("[engine]\ninertia_kgm2 = 4\n[grarbox]\nsun_1 = 24\n[gearbox.band4]\n"
                       "friction = 0.1\n"),
              ElementsAre("v.toml:3:1: unknown parameter 'engine.inertia_kgm2'; did you mean "
                          "'engine.inertia_kg_m2'?",
                          "v.toml:5:1: unknown parameter 'grarbox.sun_1'; did you mean "
                          "'gearbox.sun_1'?",
                          "v.toml:7:1: unknown parameter 'gearbox.band4.friction'; did you mean "
                          "'gearbox.band1.friction'?"));
}

TEST(VehicleFile, PointsAtWrongTypesUnitsAndBounds) {
  EXPECT_THAT(
      faultsIn("[air]\ncut_out_psi = \"6.5 bar\"\nhorn_c = true\nmain_m3 = nan\n"
               "control_m3 = -1\ndrain_c = [1]\nrelief_psi = \"115\"\nrelief_c = \"ten\"\n"),
      ElementsAre("v.toml:3:15: 'air.cut_out_psi': unit 'bar' found; allowed: a number of psi",
                  "v.toml:4:10: 'air.horn_c' is true or false; allowed: a number of dm3/(s bar)",
                  "v.toml:5:11: 'air.main_m3' is nan; allowed: 0.01 to 5 m3",
                  "v.toml:6:14: 'air.control_m3' is -1; allowed: 0.005 to 5 m3",
                  "v.toml:7:11: 'air.drain_c' is a list; allowed: a number of dm3/(s bar)",
                  "v.toml:8:14: 'air.relief_psi': no unit found; allowed: a number of psi",
                  "v.toml:9:12: 'air.relief_c': 'ten' found; allowed: a number of dm3/(s bar)"));
}

TEST(VehicleFile, PointsAtNumbersThatDoNotFitEachOther) {
  EXPECT_THAT(faultsIn("[air]\ncut_in_psi = 99\n"),
              ElementsAre("v.toml:3:14: air.cut_out_psi = 95.5: must be above cut_in_psi = 99"));
  EXPECT_THAT(faultsIn("[gearbox]\nsun_1 = 25\n"),
              ElementsAre(HasSubstr("v.toml:3:9: gearbox1: set 1: sun 25 and annulus 78"),
                          HasSubstr("v.toml:3:9: gearbox1: set 1: sun + annulus = 103")));
  EXPECT_THAT(faultsIn("[final_drive2]\nteeth = 50\n"),
              ElementsAre(HasSubstr("v.toml:3:9: final_drive2: teeth must be whole")));
}

TEST(VehicleFile, ValuesInPlaceOfGroupsAreFaults) {
  EXPECT_THAT(faultsIn("air = 5\n[[engine]]\ninertia_kg_m2 = 4\n"),
              ElementsAre(HasSubstr("v.toml:2:1: unknown parameter 'air'"),
                          HasSubstr("v.toml:3:3: unknown parameter 'engine'")));
}

// When the standard numbers change on purpose: CABWRIGHT_WRITE_VEHICLE=1 with this test writes the
// shipped file anew.
TEST(ShippedVehicle, SaysTheStandardVehicleInFull) {
  const std::string path = (shippedScenarios() / "vehicles/two-engine-unit.toml").string();
  const auto loaded = loadText(path);
  ASSERT_TRUE(std::holds_alternative<SourceFile>(loaded)) << path;
  Vehicle standard;
  standard.title = "Two-engine unit";
  standard.text =
      "A generic two-car diesel unit with mechanical transmission: motor car with two underfloor "
      "engines, trailer car, a cab at each end. House values throughout; it is no real vehicle.";
  if (std::getenv("CABWRIGHT_WRITE_VEHICLE")) {
    std::ofstream(path, std::ios::binary) << vehicleText(standard);
    FAIL() << "written anew: look at it, and run this again without the variable";
  }
  const Vehicle shipped = good(parseVehicle(std::get<SourceFile>(loaded)));
  EXPECT_TRUE(same(shipped, standard)) << "see above this test if that is on purpose";
  for (const std::string& field : allFields()) {
    EXPECT_NE(std::get<SourceFile>(loaded).text.find("\n" + field + " = "), std::string::npos)
        << field;
  }
}

TEST(ShippedVehicle, TheOtherOneIsSoundAndQuiteAnother) {
  const auto loaded = loadText((shippedScenarios() / "vehicles/long-gear-unit.toml").string());
  ASSERT_TRUE(std::holds_alternative<SourceFile>(loaded));
  const Vehicle v = good(parseVehicle(std::get<SourceFile>(loaded)));
  int differs = 0;
  const plant::Parameters standard;
  for (const auto& info : plant::parameterTable()) differs += info.of(v.plant) != info.of(standard);
  EXPECT_GT(differs, 60);
  EXPECT_EQ(v.plant.gearbox[1].sun_3, 33.0);
  EXPECT_EQ(v.plant.engine[0].firing_ratio, standard.engine[0].firing_ratio);
  EXPECT_EQ(v.plant.engine[1].firing_ratio, 2.8);
  EXPECT_EQ(unitSettings(v.unit).size(), 5u);
  // And a machine can be made of it.
  EXPECT_NO_THROW(plant::Plant(v.plant, plant::GradeProfile(), plant::StartConditions()));
}

RC_GTEST_PROP(VehicleText, ReadsBackAsTheSameVehicleToTheBit, ()) {
  Vehicle v;
  v.title = *rc::gen::nonEmpty(rc::gen::container<std::string>(rc::gen::inRange(' ', '\x7f')));
  v.title += "x";
  const auto changes = *rc::gen::inRange(0, 40);
  for (int k = 0; k < changes; ++k) {
    const auto& table = plant::parameterTable();
    const auto& info = table[*rc::gen::inRange<std::size_t>(0, table.size())];
    const double share = *rc::gen::inRange(0, 1'000'003) / 1'000'003.0;
    // Small steps from the standard value, so that most still fit each other.
    const double way = info.highest - info.lowest;
    info.of(v.plant) = std::min(info.highest, info.standard + 1e-7 * share * way);
  }
  if (!plant::findParameterFaults(v.plant).empty()) RC_DISCARD("does not fit together");
  const auto read = parseVehicle({"v.toml", vehicleText(v)});
  RC_ASSERT(std::holds_alternative<Vehicle>(read));
  const Vehicle& back = std::get<Vehicle>(read);
  RC_ASSERT(back.title == v.title);
  RC_ASSERT(static_cast<bool>(same(back, v)));
}

TEST(VehicleText, NamesEveryNumber) {
  const std::string text = vehicleText(Vehicle{});
  for (const std::string& field : allFields()) {
    EXPECT_THAT(text, HasSubstr("\n" + field + " = ")) << field;
  }
}

}  // namespace
}  // namespace cabwright::scenario
