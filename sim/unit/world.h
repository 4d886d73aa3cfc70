// SPDX-License-Identifier: GPL-3.0-or-later
// The discrete state of the world: everything that is not in the plant. Plain values only.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "plant/inputs.h"
#include "unit/action.h"
#include "unit/controls.h"
#include "unit/frame.h"
#include "unit/instruments.h"
#include "unit/interlocks.h"
#include "unit/items.h"
#include "unit/objects.h"
#include "unit/places.h"
#include "unit/unit_parameters.h"

namespace cabwright::unit {

inline constexpr std::int64_t kNever = -1;
/// Above this speed the unit counts as moving, for people.
inline constexpr double kMovingMph = 0.2;

/// What a hand is on. Two of them; a hand stays where it is until it is needed elsewhere.
struct Hand {
  std::optional<Control> on;
  std::int64_t since = kNever;  ///< tick of its last use
};

struct ItemState {
  int hidden = 0;  ///< condition put in, 0: none
  Verdict verdict = Verdict::kNone;
  int booked = 0;  ///< entries about it
  int seen = 0;    ///< the condition that was last seen by looking long enough, 0: good or never
  bool looked = false;  ///< it has been looked at long enough
};

/// One judgement, as the sheet wants it.
struct Judgement {
  std::int64_t tick = 0;
  Item item{};
  Verdict verdict = Verdict::kNone;
  DefectClass said_class = DefectClass::kNone;
  Place from = Place::kBooking;
  double looked_s = 0;  ///< the longest look at it so far
  int present = 0;      ///< the condition that was there
  DefectClass rank = DefectClass::kNone;
  bool empty = false;  ///< not looked at long enough: does not count
};

struct BookEntry {
  std::int64_t tick = 0;
  std::optional<Item> item;  ///< none: a general entry
  std::string text;
};

struct Note {
  std::int64_t tick = 0;
  std::string what;
  double value = 0;
};

/// Something said: by an answer of the table, its words are wordsOf(reply).
struct Message {
  std::int64_t tick = 0;
  Actor who = Actor::kGuard;
  Reply reply = Reply::kNone;
  double value = 0;  ///< a reading told, in inHg
};

/// An answer on its way: people think before they speak.
struct PendingReply {
  std::int64_t due = 0;
  Phrase to = Phrase::kAskPermission;  ///< what it answers; what is done about it is done when due
};

/// Strokes on a bell circuit: what one side gives, and the code the other makes of it.
struct BellState {
  std::vector<int> to_give;    ///< strokes of each group still to come
  std::int64_t next_tick = 0;  ///< when the bell goes on or off next
  bool queue_on = false;       ///< the code being given has the bell on just now
  bool sounding = false;       ///< by code or by hand
  int strokes = 0;             ///< heard in the group under way
  int code = 0;                ///< groups heard so far, as digits
  std::int64_t last_stroke = kNever;
  int complete = 0;  ///< last complete code
  std::int64_t complete_at = kNever;
  bool any_heard = false;  ///< at least one stroke of the code under way sounded at the far end
  bool complete_heard = false;
};

struct PeopleState {
  BellState from_guard, from_driver;
  bool guard_code_valid = false, guard_answered = false;
  int guard_repeats = 0;  ///< code the guard will give back, 0 none
  std::int64_t guard_repeats_at = kNever;
  bool guard_is_repeating = false;  ///< the strokes under way give a code back, and order nothing
  int guard_repeated = 0;           ///< last code given back
  std::int64_t bell_test_until = kNever;  ///< a bell test is agreed and not answered yet, so long
  int guard_tries = 0;  ///< code the guard gave in it, to be repeated and to order nothing; 0 none
  int heard_code = 0;   ///< last code of the guard's that reached the trainee's ear
  std::int64_t heard_code_at = kNever;
  std::vector<PendingReply> pending;
  Reply last_reply = Reply::kNone;
  std::int64_t last_reply_at = kNever;
  bool second_called = false, second_there = false;
  std::int64_t second_arrives = kNever;
  double second_reading = 0;
  std::int64_t second_read_at = kNever;
  double second_blocks = -1;
  std::int64_t warned_at = kNever;
  std::int64_t passers_leave_at = kNever;
};

struct TraineeState {
  Place place = Place::kBooking;
  bool walking = false;
  Place heading = Place::kBooking;
  std::int64_t arrives = kNever;
  Walk walk;
  std::array<Hand, 2> hands;  ///< left, right
  int let_go = 0;
  std::optional<Item> looking;
  std::int64_t looking_since = kNever;
  std::array<std::int32_t, kItemCount> looked_ticks{};  ///< longest look at each, ticks
  std::int64_t looked_both_ways = kNever;
  int crossings = 0, crossed_blind = 0, between = 0, under = 0;
  int acts = 0, refused = 0;
  int decision = 0;
  std::array<int, kPhraseCount> said{};
  std::array<Reply, kPhraseCount> answered{};  ///< what came back, kNone since it was last said
};

/// One bit for each test of an item's condition.
using ItemTests = std::array<std::uint64_t, 8>;

/// What the judgements come to, the last one of each item counting.
struct JudgeCounts {
  int judged = 0, hits = 0, misses = 0, missed_critical = 0, false_alarms = 0, unsure = 0,
      empty = 0, wrong_class = 0;
};

/// Harm done, counted at the moment it is done.
struct HarmState {
  int passed_danger = 0, started_at_person = 0, moved_at_person = 0, touched_protected = 0,
      moved_protected = 0, reversed_moving = 0, reverser_off_moving = 0, door = 0, between = 0,
      cords = 0, scotch = 0, reach = 0;
};

/// States of a fire bottle.
inline constexpr std::int32_t kBottleSpent = -1, kBottleFull = 0, kFireOut = 1, kFireHeldDown = 2;

/// Bookkeeping of each starter and engine that the plant does not keep.
struct StartLog {
  bool fed = false;
  int attempts = 0;
  std::int64_t last_fed = kNever;
  double rest_s = 9999;
  std::int64_t ran_since = kNever;
};

struct World {
  std::int64_t tick = 0;
  bool assessment = false, dark = false, guard_present = true, second_person = true;
  ControlValues control;
  std::array<double, plant::kCabs> wheel_target{1.0, 1.0};  ///< of the handbrake wheels
  std::array<std::int64_t, kControlCount> pressed_until{};  ///< of pushed buttons
  std::array<ObjectPlace, kObjectCount> object{};
  std::array<bool, kObjectCount> object_exists{};
  UnitParameters parameters;
  InterlockMemory memory;
  InterlockResult result;
  plant::PlantInputs inputs;
  std::array<InstrumentState, kInstrumentCount> instrument{};
  std::array<ItemState, kItemCount> item{};
  bool items_changed = true;    ///< since the Frame's item signals were last written
  ItemTests items_holding{};    ///< when they were
  bool numbers_changed = true;  ///< since the tests of numbers were last made
  ItemTests number_tests{};     ///< which of them hold
  std::vector<Judgement> judgements;
  JudgeCounts counts;
  std::vector<BookEntry> book;
  std::vector<Note> notes;
  TraineeState trainee;
  PeopleState people;
  HarmState harm;
  std::array<StartLog, plant::kLines> start;
  std::vector<bool> signal_clear;  ///< of the route's signals, in their order
  double travelled_m = 0;
  double last_position_m = 0;
  std::int64_t mode_changes = 0;
  bool was_moving = false;
  /// Harm under way at the last tick: it is counted when it begins.
  bool was_on_scotch = false, was_door_open = false, was_at_person = false, was_protected = false,
       was_between = false, was_reaching = false;
  std::array<std::int64_t, plant::kLines> thump_at{kNever, kNever};
  std::int64_t click_at = kNever;
  /// Of each engine's fire bottle: one of the numbers above, or more: ticks that it still lasts.
  std::array<std::int32_t, plant::kLines> bottle{};
  std::vector<Message> messages;
  Frame frame;
};

/// Whether that engine (0 or 1) burns now.
[[nodiscard]] inline bool isBurning(const World& w, std::size_t line) {
  return w.parameters.fire[line].burns > 0.5 && w.bottle[line] < kFireOut;
}

}  // namespace cabwright::unit
