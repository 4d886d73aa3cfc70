// SPDX-License-Identifier: GPL-3.0-or-later
// A unit to play with: prepared starts, and acting by the text form of actions.
#pragma once

#include <gtest/gtest.h>

#include <functional>
#include <string>

#include "unit/unit.h"

namespace cabwright::unit {

/// The trainee in cab 1 with everything in its socket, the desk alive, air and vacuum up.
inline UnitStart preparedStart() {
  UnitStart s;
  s.place = "cab1";
  s.objects = {{"brake_handle", "cab1"},
               {"reversing_lever", "cab1"},
               {"control_key", "cab1"},
               {"door_key", "carried"},
               {"hand_lamp", "carried"}};
  s.controls = {{"cab1.key", "on"}, {"cab1.lock", "unlocked"}};
  s.plant.main_psi = s.plant.control_psi = 92.0;
  s.plant.train_pipe_inhg = s.plant.chamber_inhg = 21.0;
  s.plant.release_pipe_inhg = 25.0;
  for (plant::LineStart& line : s.plant.line) line.coolant_c = line.oil_c = 70.0;
  return s;
}

/// The same with both engines ticking over.
inline UnitStart runningStart() {
  UnitStart s = preparedStart();
  for (plant::LineStart& line : s.plant.line) {
    line.crank_rpm = 420.0;
    line.latch_tripped = 0.0;
  }
  return s;
}

inline Unit makeUnit(const UnitStart& start, const Route& route = {}) {
  return Unit(plant::Parameters(), route, start);
}

inline ActionOutcome act(Unit& unit, const std::string& text) {
  const auto parsed = parseAction(text);
  if (const auto* fault = std::get_if<std::string>(&parsed)) return {false, *fault, ""};
  return unit.apply(std::get<Action>(parsed));
}

/// Acts, and fails the test when it is refused.
inline void doIt(Unit& unit, const std::string& text) {
  const ActionOutcome outcome = act(unit, text);
  EXPECT_TRUE(outcome.accepted) << text << ": " << outcome.perceived << " (" << outcome.cause
                                << ")";
}

inline void run(Unit& unit, double seconds) {
  const int ticks = static_cast<int>(seconds * 100.0 + 0.5);
  for (int k = 0; k < ticks; ++k) unit.advance();
}

/// Runs until it holds; false when it has not by then.
inline bool runUntil(Unit& unit, double seconds, const std::function<bool(const Frame&)>& holds) {
  for (int k = 0; k < static_cast<int>(seconds * 100.0 + 0.5); ++k) {
    if (holds(unit.frame())) return true;
    unit.advance();
  }
  return holds(unit.frame());
}

inline double value(const Unit& unit, const std::string& name) {
  const auto signal = findSignal(name);
  EXPECT_TRUE(signal.has_value()) << name;
  return signal ? static_cast<double>(unit.frame()[*signal]) : -1e9;
}

}  // namespace cabwright::unit
