// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever hands, instructors and files do: nothing crashes and no dial shows nonsense.
#include <gtest/gtest.h>
// rapidcheck's header needs the one above.
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

#include "unit/frame_fill.h"
#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

template <class Table>
std::string anyName(const Table& table) {
  return std::string(table[*rc::gen::inRange<std::size_t>(0, table.size())].name);
}

std::string anyPosition(const ControlInfo& c) {
  return std::string(c.positions[*rc::gen::inRange<std::size_t>(0, c.positions.size())].name);
}

std::string anyControlAction() {
  const ControlInfo& c = controlTable()[*rc::gen::inRange<std::size_t>(0, controlTable().size())];
  const std::string name(c.name);
  switch (*rc::gen::inRange(0, 4)) {
    case 0:
      return "set " + name + " " + anyPosition(c);
    case 1:
      return "hold " + name;
    case 2:
      return "release " + name;
    default:
      return "instructor: set " + name + " " + anyPosition(c);
  }
}

std::string anyAction() {
  switch (*rc::gen::inRange(0, 9)) {
    case 0:
      return "go " + anyName(placeTable()) + (*rc::gen::arbitrary<bool>() ? " skip" : "");
    case 1:
      return "take " + anyName(objectTable());
    case 2:
      return "insert " + anyName(objectTable()) + " cab1";
    case 3: {
      const ItemInfo& item = itemTable()[*rc::gen::inRange<std::size_t>(0, itemTable().size())];
      const auto k = *rc::gen::inRange<std::size_t>(0, item.conditions.size());
      return "scenario: condition " + std::string(item.name) + " " + item.conditions[k].name;
    }
    case 4: {
      const auto& table = unitParameterTable();
      const UnitParameterInfo& p = table[*rc::gen::inRange<std::size_t>(0, table.size())];
      return "scenario: fault " + p.name + " " +
             std::to_string(*rc::gen::arbitrary<bool>() ? p.highest : p.standard);
    }
    case 5:
      return "ring cab1.bell 3-3";
    case 6:
      return "judge " + anyName(itemTable()) + " unsure";
    default:
      return anyControlAction();
  }
}

RC_GTEST_PROP(WildHands, LeaveEverySignalFinite, ()) {
  Unit unit = makeUnit(*rc::gen::arbitrary<bool>() ? runningStart() : preparedStart());
  const int count = *rc::gen::inRange(1, 30);
  for (int k = 0; k < count; ++k) {
    const std::string text = anyAction();
    const ActionOutcome outcome = act(unit, text);
    if (!outcome.accepted) RC_ASSERT(!outcome.perceived.empty());
    const int ticks = *rc::gen::inRange(0, 60);
    for (int t = 0; t < ticks; ++t) unit.advance();
    for (const SignalInfo& s : signalTable()) {
      if (!std::isfinite(unit.frame()[s.id])) RC_FAIL(text + ": " + std::string(s.name));
    }
    const TraineeState& trainee = unit.world().trainee;
    RC_ASSERT(!trainee.hands[0].on || trainee.hands[0].on != trainee.hands[1].on);
  }
  RC_ASSERT(!unit.plant().failed());
}

RC_GTEST_PROP(WildWords, AreRefusedWithASentence, (const std::string& text)) {
  const Unit unit = makeUnit(preparedStart());
  const auto parsed = parseAction(text);
  if (const auto* action = std::get_if<Action>(&parsed)) {
    const auto fault = unit.findActionFault(*action);
    if (fault) RC_ASSERT(!fault->empty());
  }
}

TEST(Frame, HasEverySignalFilledAnewEachTick) {
  Unit unit = makeUnit(runningStart());
  unit.advance();
  World world = unit.world();
  world.frame.value.fill(std::numeric_limits<float>::quiet_NaN());
  world.items_changed = true;  // else the signals of the items may stand as they are
  advanceInstruments(world, unit.readings(), 0.01);
  fillFrame(world, unit.plant(), unit.route());
  for (const SignalInfo& s : signalTable()) {
    EXPECT_TRUE(std::isfinite(world.frame[s.id])) << s.name;
  }
}

}  // namespace
}  // namespace cabwright::unit
