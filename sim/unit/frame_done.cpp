// SPDX-License-Identifier: GPL-3.0-or-later
// What people have done: controls, hands, words, judgements; and the state of the items.
#include "quantity/units.h"
#include "unit/actions.h"
#include "unit/frame_fill.h"
#include "unit/item_state.h"
#include "unit/perception.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

Signal after(Signal first, std::size_t k) {
  return static_cast<Signal>(static_cast<std::size_t>(first) + k);
}

int handNumber(const Hand& hand) { return hand.on ? static_cast<int>(indexOf(*hand.on)) + 1 : 0; }

void fillTrainee(const World& w, FrameWriter& out) {
  const TraineeState& t = w.trainee;
  using enum Signal;
  out.put(kPlace, t.walking ? 0 : static_cast<int>(t.place) + 1);
  out.put(kWalking, t.walking);
  out.put(kWalkLeft, t.walking ? static_cast<double>(t.arrives - w.tick) * q::kTickSeconds : 0.0);
  out.put(kLight, hasLight(w));
  out.put(kHandLeft, handNumber(t.hands[0]));
  out.put(kHandRight, handNumber(t.hands[1]));
  out.put(kLetGo, t.let_go);
  out.put(kCrossings, t.crossings);
  out.put(kWentBetween, t.between);
  out.put(kWentUnder, t.under);
  out.put(kCrossedBlind, t.crossed_blind);
  out.put(kLookItem, t.looking ? static_cast<int>(indexOf(*t.looking)) + 1 : 0);
  out.put(kLookSeconds, t.looking ? calcAge(w, t.looking_since) : 0.0);
  out.put(kActs, t.acts);
  out.put(kRefused, t.refused);
  out.put(kDecision, t.decision);
  for (std::size_t k = 0; k < kPlaceCount; ++k) {
    out.put(after(kSeenBooking, k), !t.walking && k == static_cast<std::size_t>(t.place));
  }
  out.put(kLookNeeded, t.looking ? calcSecondsToSee(w, *t.looking) : 0.0);
  for (std::size_t k = 0; k < kPhraseCount; ++k) {
    out.put(after(kPhraseAskPermission, k), t.said[k]);
    out.put(after(kAnsweredAskPermission, k), static_cast<int>(t.answered[k]));
  }
}

void fillObjects(const World& w, FrameWriter& out) {
  int carried = 0;
  for (std::size_t k = 0; k < kObjectCount; ++k) {
    const bool with_me = w.object_exists[k] && w.object[k].state == ObjectState::kCarried;
    out.put(after(Signal::kCarriedBrakeHandle, k), with_me);
    if (with_me) ++carried;
  }
  out.put(Signal::kCarriedCount, carried);
  for (std::size_t c = 0; c < plant::kCabs; ++c) {
    const Place place = cabPlace(static_cast<int>(c));
    out.put(ofNumber(Signal::kKey1, Signal::kKey2, c),
            isInserted(w, Object::kControlKey, place) || isInserted(w, Object::kSpareKey, place));
    out.put(ofNumber(Signal::kReverser1, Signal::kReverser2, c),
            isInserted(w, Object::kReversingLever, place));
    out.put(ofNumber(Signal::kBrake1, Signal::kBrake2, c),
            isInserted(w, Object::kBrakeHandle, place));
  }
}

void fillPeople(const World& w, FrameWriter& out) {
  const PeopleState& p = w.people;
  using enum Signal;
  out.put(kGuardCode, p.from_guard.complete);
  out.put(kGuardCodeAge, calcAge(w, p.from_guard.complete_at));
  out.put(kGuardValid, p.guard_code_valid);
  out.put(kGuardAnswered, p.guard_answered);
  out.put(kGuardAnsweredCode, p.guard_code_valid && p.guard_answered ? p.from_guard.complete : 0);
  out.put(kGuardRepeated, p.guard_repeated);
  out.put(kDriverCode, p.from_driver.complete);
  out.put(kDriverCodeAge, calcAge(w, p.from_driver.complete_at));
  out.put(kDriverHeard, p.from_driver.complete_heard);
  out.put(kWarned, calcAge(w, p.warned_at));
}

// Half of all signals: written only when something about an item has changed.
void fillItems(World& w, FrameWriter& out) {
  const auto& looking = w.trainee.looking;
  const bool made_out = looking && canMakeOut(w, *looking);
  out.put(Signal::kLookCondition, made_out ? findVisibleCondition(w, *looking) : -1);
  const ItemTests holding = findHolding(w);
  if (!w.items_changed && holding == w.items_holding) return;
  w.items_changed = false;
  w.items_holding = holding;
  const std::array<int, kItemCount> present = findAllPresent(w, holding);
  const std::vector<ItemInfo>& table = itemTable();
  int open = 0, critical = 0, seen = 0, found = 0, unsure = 0;
  for (std::size_t k = 0; k < kItemCount; ++k) {
    const ItemState& state = w.item[k];
    DefectClass rank = DefectClass::kNone;
    if (present[k] > 0) rank = table[k].conditions[static_cast<std::size_t>(present[k] - 1)].rank;
    out.put(after(Signal::kJudgedNotices, k), static_cast<int>(state.verdict));
    out.put(after(Signal::kLookedNotices, k), state.looked);
    out.put(after(Signal::kBookedNotices, k), state.booked > 0);
    out.put(after(Signal::kDefectNotices, k), static_cast<int>(rank));
    out.put(after(Signal::kShowsNotices, k), present[k]);
    const bool unbooked = table[k].bookable && state.booked == 0;
    if (unbooked && rank != DefectClass::kNone) ++open;
    const bool grave = unbooked && rank == DefectClass::kCritical;
    if (grave) ++critical;
    if (grave && state.seen == present[k]) ++seen;
    if (state.booked == 0 && state.verdict == Verdict::kUnsure) ++unsure;
    if (unbooked && state.verdict == Verdict::kDefect) ++found;
  }
  out.put(Signal::kDefectsOpen, open);
  out.put(Signal::kDefectsCritical, critical);
  out.put(Signal::kDefectsSeen, seen);
  out.put(Signal::kUnsureOpen, unsure);
  out.put(Signal::kFoundNotBooked, found);
}

void fillJudgements(const World& w, FrameWriter& out) {
  using enum Signal;
  const JudgeCounts& n = w.counts;
  out.put(kJudgedCount, n.judged);
  out.put(kJudgedHits, n.hits);
  out.put(kJudgedMisses, n.misses);
  out.put(kJudgedCritical, n.missed_critical);
  out.put(kJudgedFalse, n.false_alarms);
  out.put(kJudgedUnsure, n.unsure);
  out.put(kJudgedEmpty, n.empty);
  out.put(kJudgedClass, n.wrong_class);
  out.put(kJudgedLook, w.judgements.empty() ? 0.0 : w.judgements.back().looked_s);
  out.put(kBookedCount, static_cast<double>(w.book.size()));
  out.put(kNotes, static_cast<double>(w.notes.size()));
  out.put(kNoteValue, w.notes.empty() ? 0.0 : w.notes.back().value);
}

}  // namespace

void fillDone(World& w) {
  FrameWriter out(w.frame);
  fillTrainee(w, out);
  for (std::size_t k = 0; k < kControlCount; ++k) {
    out.put(after(Signal::kCab1Key, k), w.control.value[k]);
  }
  fillObjects(w, out);
  fillPeople(w, out);
  fillJudgements(w, out);
  fillItems(w, out);
}

void fillFrame(World& w, const plant::Plant& plant, const Route& route) {
  w.frame.tick = w.tick;
  fillShown(w, plant, route);
  fillTrue(w, plant, route);
  fillDone(w);
}

}  // namespace cabwright::unit
