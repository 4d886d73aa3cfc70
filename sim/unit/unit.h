// SPDX-License-Identifier: GPL-3.0-or-later
// The vehicle as people meet it: controls, interlocks, the machine, instruments, places, people.
// One value: a copy is a mark to return to. Actions go in, Frames come out, nothing else.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "plant/plant.h"
#include "unit/action.h"
#include "unit/controls.h"
#include "unit/frame.h"
#include "unit/instruments.h"
#include "unit/items.h"
#include "unit/objects.h"
#include "unit/places.h"
#include "unit/route.h"
#include "unit/unit_parameters.h"
#include "unit/unit_start.h"
#include "unit/world.h"

namespace cabwright::unit {

struct ActionOutcome {
  bool accepted = true;
  /// What the person perceives: of a refusal "will not move"; of a look what is seen; else "".
  std::string perceived;
  /// Why, for guided practice and the instructor ("the throttle is not shut"); empty in assessment.
  std::string cause;
};

/// What can be perceived and reached from one place.
struct Perceivable {
  std::vector<Control> controls;
  std::vector<Item> items;
  std::vector<Signal> signals;  ///< shown signals that can be read or heard here
  std::vector<Object> objects;  ///< lying here or in a socket here
  std::vector<Place> places;    ///< where one can go from here
};

/// The verbs (object, argument in brackets if it may be left out):
///   set CONTROL POSITION      hold CONTROL [POSITION]   release CONTROL    press CONTROL
///   go PLACE [skip] [under]   take OBJECT   insert OBJECT CAB   put OBJECT
///   look ITEM   judge ITEM good|defect|unsure [C|S|T]   book ITEM|general TEXT
///   note WHAT NUMBER   decide go_on|restricted|fail [REASON]   say PHRASE   do ACT
///   ring cabN.bell CODE ("2", "3-3"); guard: ring bell CODE
///   of signaller, instructor and scenario: set signal.NAME clear|danger
///   of instructor and scenario: condition ITEM|INSTRUMENT WORD [SIZE]   fault PARAMETER VALUE
///     (of the unit or of the plant, within its bounds)   tooth 1|2 DEGREES   place OBJECT WHERE
///     set CONTROL POSITION from anywhere   remark TEXT (changes nothing)
///     arm FAULT ...   clear ID (nothing in here: a Run has the faults)
///   of the instructor, changing nothing: pace PACE   mark NAME   intervene TEXT
class Unit {
 public:
  /// Throws std::invalid_argument with the first fault of parameters, route or start.
  Unit(const plant::Parameters& parameters, const Route& route, const UnitStart& start);

  /// What is wrong with the words of an action: unknown verb, object, position, with what is
  /// allowed and the nearest known name. Nothing: the unit knows what is meant.
  [[nodiscard]] std::optional<std::string> findActionFault(const Action& action) const;

  /// Does it, between two ticks. A refusal changes nothing but the count of refusals; an action
  /// with a fault is refused with that fault.
  ActionOutcome apply(const Action& action);

  /// One tick of 10 ms: hands and people, interlocks, machine, instruments, Frame.
  void advance();

  [[nodiscard]] std::int64_t tick() const { return w_.tick; }
  /// What can be perceived and measured after the last tick.
  [[nodiscard]] const Frame& frame() const { return w_.frame; }
  /// The machine's own state after the last tick (Mechanism view, Desk).
  [[nodiscard]] const plant::PlantReadings& readings() const { return plant_.readings(); }
  [[nodiscard]] const plant::Plant& plant() const { return plant_; }
  [[nodiscard]] const UnitParameters& parameters() const { return w_.parameters; }
  [[nodiscard]] const Route& route() const { return route_; }
  /// The whole of the discrete state, to look at.
  [[nodiscard]] const World& world() const { return w_; }

  /// Changes a number from the next tick on. Throws std::out_of_range outside its bounds.
  void setParameter(const plant::ParameterInfo& which, double value);
  void setParameter(const UnitParameterInfo& which, double value);

  [[nodiscard]] Perceivable perceivable(Place place) const;
  /// Whether an item can be seen closely from where the trainee is, in this light.
  [[nodiscard]] bool canSee(Item item) const;
  /// What it shows just now to whoever looks at it closely.
  [[nodiscard]] Sight sightOf(Item item) const;
  /// 0: sound; n: the nth condition of the item's list is what is there.
  [[nodiscard]] int presentCondition(Item item) const;

  /// What people said during the last tick.
  [[nodiscard]] std::span<const Message> lastMessages() const { return w_.messages; }

  /// Hash of the whole world, plant included, to the bit (FNV-1a 64).
  [[nodiscard]] std::uint64_t hash() const;

 private:
  friend class Actions;
  Route route_;
  plant::Plant plant_;
  plant::Parameters base_;  ///< as constructed: what a lifted condition goes back to
  World w_;
};

}  // namespace cabwright::unit
