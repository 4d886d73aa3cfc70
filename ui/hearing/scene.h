// SPDX-License-Identifier: GPL-3.0-or-later
// Everything the trainee hears at one moment, as plain values: what the synthesiser sounds and what
// the captions say. Nothing is in here that could not be heard from where the trainee is.
#pragma once

#include <array>

#include "unit/frame.h"
#include "unit/places.h"

namespace cabwright::hearing {

enum class Compressor { kNotHeard, kUnloaded, kLoaded };

/// One engine with what it drives.
struct HeardEngine {
  double note_rpm = 0.0;  ///< crank speed its note tells of, rpm; 0: stands, or is not heard here
  double evenness = 0.0;  ///< share of cycles that fire, 0..1
  double load = 0.0;      ///< fuel each firing gets, share of full, 0..1
  bool starter = false;   ///< a starter's pinion is in the ring
  double hum = 0.0;       ///< exhauster, 0..1
  Compressor compressor = Compressor::kNotHeard;
  double bearing = 0.0;  ///< from the left -1 .. straight ahead 0 .. the right 1
  bool operator==(const HeardEngine&) const = default;
};

struct HeardScene {
  std::array<HeardEngine, 2> engine;
  double engine_nearness = 0.0;  ///< loudness of engines by the way to them, 0..1
  double walls = 0.0;            ///< 0: in the open .. 1: behind floor and walls
  double hiss = 0.0;             ///< air where the trainee is, 0..1
  double hiss_inwards = 0.0;     ///< share of it that is drawn in; the rest is blown out, 0..1
  bool thump = false;            ///< a final drive has just gone into mesh
  bool rattle = false;           ///< dog teeth pass each other
  double rattle_hz = 0.0;        ///< how many a second
  bool click = false;            ///< relays have just clicked
  bool bell = false;             ///< the bell from the guard sounds
  int bell_code = 0;             ///< last complete code heard, groups as digits; 0 none
  double bell_age_s = 0.0;       ///< time since it was complete, s
  bool fire_bell = false;
  int horn = 0;              ///< 0 silent, 1 low tone, 2 high tone
  double horn_level = 0.0;   ///< 0..1
  double speed_mph = 0.0;    ///< of the wheels heard; 0: none
  double block_press = 0.0;  ///< force on their brake blocks, share of the most, 0..1
  bool operator==(const HeardScene&) const = default;
};

/// What is heard in a frame by a trainee who is at this place; on the way to another place nothing
/// but the horn. Never throws.
[[nodiscard]] HeardScene calcScene(const unit::Frame& frame, unit::Place place);

/// The same scene with every number inside its range and what is no number made 0.
[[nodiscard]] HeardScene calcBounded(const HeardScene& scene);

}  // namespace cabwright::hearing
