// SPDX-License-Identifier: GPL-3.0-or-later
// Guard, second person, passers-by and those who answer: what they hear, think and say.
#pragma once

#include "unit/world.h"

namespace cabwright::unit {

/// What people can perceive of the machine at this tick.
struct PeopleSenses {
  double speed_mph = 0;
  std::array<double, plant::kCylinders> block_force_n{};
};

/// Groups of strokes of a written code: "2" or "3-3"; empty when it is none (1 to 9 strokes a
/// group, three groups at most).
[[nodiscard]] std::vector<int> readBellCode(std::string_view written);

/// Lets a side give a code; what it was giving is cut off.
void giveCode(World& w, BellState& bell, const std::vector<int>& groups);

/// The trainee says or does it: counts, and answers are set on their way.
void utter(World& w, Phrase phrase);

/// Somebody else says it, and is heard wherever the trainee is.
void say(World& w, Actor who, Reply reply, double value = 0.0);

/// Somebody at the unit who would be hurt: by place of the people items.
[[nodiscard]] bool isPersonAt(const World& w, Place place);
[[nodiscard]] bool isPersonAnywhere(const World& w);
[[nodiscard]] bool isProtected(const World& w);

/// The cab at the far end from the desk that is alive (from the trainee when none is).
[[nodiscard]] int rearCab(const World& w);

/// One tick of bells, answers and people walking.
void advancePeople(World& w, const PeopleSenses& senses);

/// A signal went back to danger: the guard's code no longer stands.
void withdrawCode(World& w);

}  // namespace cabwright::unit
