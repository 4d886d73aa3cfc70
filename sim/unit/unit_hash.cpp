// SPDX-License-Identifier: GPL-3.0-or-later
// The fingerprint of the whole world. Every field of World goes in but what is made anew of the
// others in each tick (the inputs of the plant, the rest of the circuits' result): what is left out
// here could differ in a replay without being seen.
#include <type_traits>

#include "quantity/hash.h"
#include "unit/unit.h"

namespace cabwright::unit {

namespace {

using Hash = quantity::Fnv1a64;

// Declared before the templates that call them.
void add(Hash& h, const ObjectPlace& v);
void add(Hash& h, const InstrumentState& v);
void add(Hash& h, const ItemState& v);
void add(Hash& h, const Judgement& v);
void add(Hash& h, const BookEntry& v);
void add(Hash& h, const Note& v);
void add(Hash& h, const Message& v);
void add(Hash& h, const PendingReply& v);
void add(Hash& h, const Hand& v);
void add(Hash& h, const Walk& v);
void add(Hash& h, const StartLog& v);
void add(Hash& h, const BellState& v);
void add(Hash& h, const PeopleState& v);
void add(Hash& h, const TraineeState& v);
void add(Hash& h, const HarmState& v);
void add(Hash& h, const JudgeCounts& v);
void add(Hash& h, const InterlockMemory& v);
void add(Hash& h, const InterlockResult& v);
void add(Hash& h, const UnitParameters& v);

void add(Hash& h, double v) { h.addDouble(v); }
void add(Hash& h, const std::string& text) {
  h.addInt(text.size());
  h.addText(text);
}
template <class T>
requires std::is_integral_v<T>
void add(Hash& h, T v) { h.addInt(v); }
template <class T>
requires std::is_enum_v<T>
void add(Hash& h, T v) { h.addInt(static_cast<std::int64_t>(v)); }
template <class T>
void add(Hash& h, const std::optional<T>& v) {
  h.addInt(v.has_value());
  if (v) add(h, *v);
}

template <class... T>
void addAll(Hash& h, const T&... values) {
  (add(h, values), ...);
}
template <class Range>
void addEach(Hash& h, const Range& range) {
  h.addInt(range.size());
  for (const auto& v : range) add(h, v);
}

void add(Hash& h, const ObjectPlace& o) { addAll(h, o.state, o.place); }
void add(Hash& h, const InstrumentState& s) { addAll(h, s.condition, s.size, s.needle, s.shown); }
void add(Hash& h, const ItemState& s) {
  addAll(h, s.hidden, s.verdict, s.booked, s.seen, s.looked);
}
void add(Hash& h, const Judgement& j) {
  addAll(h, j.tick, j.item, j.verdict, j.said_class, j.from, j.looked_s, j.present, j.rank,
         j.empty);
}
void add(Hash& h, const BookEntry& e) { addAll(h, e.tick, e.item, e.text); }
void add(Hash& h, const Note& n) { addAll(h, n.tick, n.what, n.value); }
void add(Hash& h, const Message& m) { addAll(h, m.tick, m.who, m.reply, m.value); }
void add(Hash& h, const PendingReply& p) { addAll(h, p.due, p.to); }
void add(Hash& h, const Hand& hand) { addAll(h, hand.on, hand.since); }
void add(Hash& h, const Walk& w) { addAll(h, w.metres, w.climbs, w.crossings, w.between, w.under); }
void add(Hash& h, const StartLog& s) {
  addAll(h, s.fed, s.attempts, s.last_fed, s.rest_s, s.ran_since);
}

void add(Hash& h, const BellState& b) {
  addEach(h, b.to_give);
  addAll(h, b.next_tick, b.queue_on, b.sounding, b.strokes, b.code, b.last_stroke, b.complete,
         b.complete_at, b.any_heard, b.complete_heard);
}

void add(Hash& h, const PeopleState& p) {
  addAll(h, p.from_guard, p.from_driver, p.guard_code_valid, p.guard_answered, p.guard_repeats,
         p.guard_repeats_at, p.guard_is_repeating, p.guard_repeated, p.bell_test_until,
         p.guard_tries, p.heard_code, p.heard_code_at);
  addEach(h, p.pending);
  addAll(h, p.last_reply, p.last_reply_at, p.second_called, p.second_there, p.second_arrives,
         p.second_reading, p.second_read_at, p.second_blocks, p.warned_at, p.passers_leave_at);
}

void add(Hash& h, const TraineeState& t) {
  addAll(h, t.place, t.walking, t.heading, t.arrives, t.walk);
  addEach(h, t.hands);
  addAll(h, t.let_go, t.looking, t.looking_since);
  addEach(h, t.looked_ticks);
  addAll(h, t.looked_both_ways, t.crossings, t.crossed_blind, t.between, t.under, t.acts, t.refused,
         t.decision);
  addEach(h, t.said);
  addEach(h, t.answered);
}

void add(Hash& h, const HarmState& m) {
  addAll(h, m.passed_danger, m.started_at_person, m.moved_at_person, m.touched_protected,
         m.moved_protected, m.reversed_moving, m.reverser_off_moving, m.door, m.between, m.cords,
         m.scotch, m.reach);
}

void add(Hash& h, const JudgeCounts& n) {
  addAll(h, n.judged, n.hits, n.misses, n.missed_critical, n.false_alarms, n.unsure, n.empty,
         n.wrong_class);
}

void add(Hash& h, const InterlockMemory& m) {
  addAll(h, m.relay_v, m.relay_in, m.desk, m.air_switch);
  addEach(h, m.oil_switch);
  addEach(h, m.running_contact);
  add(h, m.charge_relay);
}

// Of the result the facts suffice, but for what welded contacts add.
void add(Hash& h, const InterlockResult& r) {
  for (const auto& cab : r.facts.of) addEach(h, cab);
  addEach(h, r.starter);
  addEach(h, r.stop);
}

void add(Hash& h, const UnitParameters& p) {
  for (const UnitParameterInfo& info : unitParameterTable()) h.addDouble(info.of(p));
}

}  // namespace

std::uint64_t Unit::hash() const {
  Hash h;
  add(h, plant_.hash());
  const World& w = w_;
  addAll(h, w.tick, w.assessment, w.dark, w.guard_present, w.second_person);
  addEach(h, w.control.value);
  addEach(h, w.wheel_target);
  addEach(h, w.pressed_until);
  addEach(h, w.object);
  addEach(h, w.object_exists);
  addAll(h, w.parameters, w.memory, w.result);
  addEach(h, w.instrument);
  addEach(h, w.item);
  addAll(h, w.items_changed, w.numbers_changed);
  addEach(h, w.number_tests);
  addEach(h, w.items_holding);
  addEach(h, w.judgements);
  add(h, w.counts);
  addEach(h, w.book);
  addEach(h, w.notes);
  addAll(h, w.trainee, w.people, w.harm);
  addEach(h, w.start);
  addEach(h, w.signal_clear);
  addAll(h, w.travelled_m, w.last_position_m, w.mode_changes, w.was_moving, w.was_on_scotch,
         w.was_door_open, w.was_at_person, w.was_protected, w.was_between, w.was_reaching);
  addEach(h, w.thump_at);
  add(h, w.click_at);
  addEach(h, w.bottle);
  addEach(h, w.messages);
  for (float v : w.frame.value) h.addDouble(static_cast<double>(v));
  return h.value();
}

}  // namespace cabwright::unit
