// SPDX-License-Identifier: GPL-3.0-or-later
// What each verb does, behind Unit::apply and Unit::findActionFault.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "unit/unit.h"

namespace cabwright::unit {

class Actions {
 public:
  explicit Actions(Unit& unit);

  /// The words are known to be sound.
  ActionOutcome apply(const Action& action);

 private:
  // hands
  ActionOutcome set(const Action& a);
  ActionOutcome setSignal(const Action& a);
  ActionOutcome hold(const Action& a);
  ActionOutcome release(const Action& a);
  ActionOutcome press(const Action& a);
  ActionOutcome ring(const Action& a);
  ActionOutcome move(const Action& a, Control c, double value);
  void putAt(Control c, double value);
  [[nodiscard]] std::optional<ActionOutcome> findObstacle(Control c, double value) const;
  [[nodiscard]] std::optional<ActionOutcome> findCabObstacle(Control c, double value) const;
  [[nodiscard]] std::optional<ActionOutcome> findEngineObstacle(Control c, double value) const;
  [[nodiscard]] bool canReach(Control c) const;
  void noteHarm(Control c, double value);

  // feet and loose things
  ActionOutcome go(const Action& a);
  ActionOutcome take(const Action& a);
  ActionOutcome insert(const Action& a);
  ActionOutcome put(const Action& a);
  ActionOutcome insertPadlock(Place place);
  [[nodiscard]] bool carries(Object o) const;

  // eyes and words
  ActionOutcome look(const Action& a);
  ActionOutcome judge(const Action& a);
  ActionOutcome book(const Action& a);
  ActionOutcome note(const Action& a);
  ActionOutcome decide(const Action& a);
  ActionOutcome utterPhrase(const Action& a);
  void count();

  // what only instructor and scenario do
  ActionOutcome condition(const Action& a);
  ActionOutcome fault(const Action& a);
  ActionOutcome tooth(const Action& a);
  ActionOutcome placeObject(const Action& a);

  [[nodiscard]] ActionOutcome refuse(std::string_view perceived, std::string_view cause) const;
  [[nodiscard]] ActionOutcome refuseRow(Outcome o, int cab, int line = 0) const;

  Unit& u_;
  World& w_;
  Facts facts_;  ///< as the levers stand now, which may be later than the last tick
};

/// What the circuits sense, from controls, loose things and the machine.
[[nodiscard]] InterlockInputs senseCircuits(const World& w, const plant::PlantReadings& readings);
[[nodiscard]] bool isInserted(const World& w, Object o, Place place);

/// Moves a loose thing: "carried", "none", "cab1" (its socket), "lying PLACE"; the fault in words.
[[nodiscard]] std::optional<std::string> findObjectWordFault(Object o, std::string_view where);
void placeObjectAt(World& w, Object o, std::string_view where);

/// Puts a condition into an item or instrument, with its effects; the words are known to be sound.
void putCondition(World& w, plant::Plant& plant, const plant::Parameters& base,
                  std::string_view name, std::string_view words);

/// Cab or engine of a control of theirs, -1 otherwise.
[[nodiscard]] int cabOfControl(Control c);
[[nodiscard]] int engineOfControl(Control c);
/// The control of cab 1 (engine 1) that this one is like.
[[nodiscard]] Control asOfFirst(Control c);

/// Splits off the first word of a text.
[[nodiscard]] std::string_view firstWord(std::string_view& text);
[[nodiscard]] std::optional<double> readFinite(std::string_view text);

}  // namespace cabwright::unit
