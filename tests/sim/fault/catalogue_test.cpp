// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "fault_rig.h"

namespace cabwright::fault {
namespace {

using cabwright::testing::armed;
using cabwright::testing::FaultRig;

std::vector<double> sizesOf(const FaultSpec& spec) {
  if (!spec.size.exists()) return {0.0};
  return {spec.size.lowest, spec.size.usual, spec.size.highest};
}

TEST(Catalogue, NamesEachFaultOnceAndFindsIt) {
  std::set<std::string> names, families;
  for (const FaultSpec& spec : faultCatalogue()) {
    EXPECT_TRUE(names.insert(spec.name).second) << spec.name;
    EXPECT_EQ(findFault(spec.name), &spec);
    families.insert(spec.family);
  }
  EXPECT_GE(families.size(), 100u);
  EXPECT_EQ(findFault("gearbox3.band1_worn"), nullptr);
}

TEST(Catalogue, SaysOfEachWhereItIsHowItShowsAndWhatIsRight) {
  for (const FaultSpec& spec : faultCatalogue()) {
    for (const std::string& text : {spec.where, spec.text, spec.symptom, spec.decision}) {
      EXPECT_GT(text.size(), 3u) << spec.name;
      EXPECT_EQ(text.find_first_of("#@"), std::string::npos) << spec.name << ": " << text;
    }
    EXPECT_FALSE(spec.system.empty());
    EXPECT_TRUE(!spec.numbers.empty() || !spec.acts.empty()) << spec.name << " does nothing";
  }
}

TEST(Catalogue, HoldsEverySystemOfTheMachine) {
  std::set<std::string_view> systems;
  for (const FaultSpec& spec : faultCatalogue()) systems.insert(spec.system);
  EXPECT_THAT(systems,
              ::testing::IsSupersetOf({"final drive", "coupling and freewheel", "gearbox", "engine",
                                       "starting", "electrics", "air", "vacuum brake",
                                       "safety device", "cabs and ends", "instruments"}));
}

// At every size the numbers stay inside their bounds and make a machine that fits together.
TEST(Catalogue, EffectsAreSoundAtEverySize) {
  const unit::UnitStart start;
  for (const FaultSpec& spec : faultCatalogue()) {
    if (spec.numbers.empty()) continue;
    for (double size : sizesOf(spec)) {
      plant::Parameters p;
      for (const NumberEffect& n : spec.numbers) {
        const double value = n.value(size);
        const auto* const* of_plant = std::get_if<const plant::ParameterInfo*>(&n.parameter);
        const double base = of_plant ? (*of_plant)->standard : 0.0;
        double result = value;
        if (n.how == How::kScale) result = base * value;
        if (n.how == How::kAdd) result = base + value;
        EXPECT_GE(result, lowestOf(n.parameter) - 1e-12) << spec.name << " at " << size;
        EXPECT_LE(result, highestOf(n.parameter) + 1e-12) << spec.name << " at " << size;
        if (of_plant) (*of_plant)->of(p) = result;
      }
      EXPECT_THAT(plant::findParameterFaults(p), ::testing::IsEmpty()) << spec.name;
    }
  }
}

TEST(Catalogue, EveryFaultChangesSomethingAndIsUndone) {
  const FaultRig sound;
  const std::vector<double> before = sound.numbers();
  for (const FaultSpec& spec : faultCatalogue()) {
    if (spec.numbers.empty()) continue;
    FaultRig rig = sound;
    rig.faults.arm(armed(spec.name));
    rig.faults.advance(rig.unit);
    EXPECT_NE(rig.numbers(), before) << spec.name;
    EXPECT_TRUE(rig.faults.clear(spec.name));
    rig.faults.advance(rig.unit);
    EXPECT_EQ(rig.numbers(), before) << spec.name;
  }
}

// What a fault does to controls, items and instruments are words the unit knows.
TEST(Catalogue, EveryActIsUnderstoodByTheUnit) {
  const FaultRig rig;
  for (const FaultSpec& spec : faultCatalogue()) {
    for (const ActEffect& effect : spec.acts) {
      for (std::string text : {effect.act, effect.undo}) {
        if (text.empty()) continue;
        for (std::string_view token : {"{size}", "{tooth}"}) {
          if (const auto at = text.find(token); at != std::string::npos) {
            text.replace(at, token.size(), std::to_string(spec.size.usual));
          }
        }
        const auto action = unit::parseAction("scenario: " + text);
        ASSERT_TRUE(std::holds_alternative<unit::Action>(action)) << text;
        const auto fault = rig.unit.findActionFault(std::get<unit::Action>(action));
        EXPECT_FALSE(fault) << spec.name << ": " << text << ": " << fault.value_or("");
      }
    }
  }
}

TEST(Catalogue, EveryActIsCarriedOutAndUndone) {
  unit::UnitStart start = cabwright::testing::readyStart();
  start.controls.push_back({"cab1.handbrake", "off"});
  start.controls.push_back({"cab2.handbrake", "off"});
  const FaultRig sound(start);
  for (const FaultSpec& spec : faultCatalogue()) {
    if (spec.acts.empty()) continue;
    FaultRig rig = sound;
    const std::uint64_t before = rig.unit.hash();
    rig.faults.arm(armed(spec.name));
    rig.faults.advance(rig.unit);
    const std::uint64_t there = rig.unit.hash();
    if (spec.acts.front().undo.empty()) continue;  // once, as teeth are turned
    EXPECT_NE(there, before) << spec.name;
    rig.faults.clear(spec.name);
    rig.faults.advance(rig.unit);
    EXPECT_NE(rig.unit.hash(), there) << spec.name;
  }
}

TEST(Catalogue, RefusesASizeOutsideItsRange) {
  const FaultSpec& leak = *findFault("vacuum.train_pipe_leak");
  EXPECT_FALSE(findSizeFault(leak, 3.0));
  EXPECT_EQ(findSizeFault(leak, 40.0),
            "'vacuum.train_pipe_leak' cannot be of size 40; allowed: 0.3 to 12 mm");
  EXPECT_TRUE(findSizeFault(leak, std::nan("")));
  EXPECT_EQ(findSizeFault(*findFault("engine1.injector_out"), 1.5),
            "'engine1.injector_out' is counted in whole injectors, not 1.5; allowed: 1 to 5 "
            "injectors");
  EXPECT_EQ(findSizeFault(*findFault("starter1.dead"), 2.0),
            "'starter1.dead' has no size: it is there or it is not");
}

TEST(Catalogue, NamesTheNearestFault) {
  EXPECT_EQ(unknownFault("vacuum.train_pipe_leek"),
            "unknown fault 'vacuum.train_pipe_leek'; did you mean 'vacuum.train_pipe_leak'?");
}

}  // namespace
}  // namespace cabwright::fault
