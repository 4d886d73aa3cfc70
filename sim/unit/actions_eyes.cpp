// SPDX-License-Identifier: GPL-3.0-or-later
// Looking, judging, writing, saying.
#include "quantity/units.h"
#include "unit/actions.h"
#include "unit/condition.h"
#include "unit/people.h"
#include "unit/perception.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

ActionOutcome Actions::look(const Action& a) {
  const Item item = *findItem(a.object);
  const ItemInfo& info = itemInfo(item);
  TraineeState& t = w_.trainee;
  if (t.walking || t.place != info.place) return refuse("not to be seen from here", "");
  if (!u_.canSee(item)) return refuse("too dark to see", "it takes a lit lamp");
  const std::size_t line = info.place == Place::kEngine2 ? 1 : 0;
  if (info.dip && u_.readings().line[line].crank_rad_per_s > 1.0) {
    return refuse("it cannot be dipped while it turns", "the engine is turning");
  }
  if (t.looking != item) {
    t.looking = item;
    t.looking_since = w_.tick;
  }
  Sight sight = describeSight(w_, item);
  return {true, std::move(sight.seen), std::move(sight.why)};
}

ActionOutcome Actions::judge(const Action& a) {
  const Item item = *findItem(a.object);
  std::string_view words = a.argument;
  const Verdict verdict = *findVerdict(firstWord(words));
  const DefectClass said = findDefectClass(words).value_or(DefectClass::kNone);
  const int present = u_.presentCondition(item);
  Judgement j{w_.tick, item, verdict, said, w_.trainee.place, 0.0, present, DefectClass::kNone,
              false};
  if (present > 0) {
    j.rank = itemInfo(item).conditions[static_cast<std::size_t>(present - 1)].rank;
  }
  j.looked_s = static_cast<double>(w_.trainee.looked_ticks[indexOf(item)]) * q::kTickSeconds;
  j.empty = !hasSeen(w_, item);
  w_.judgements.push_back(j);
  // An empty entry is no judgement: the item stays open.
  if (!j.empty) w_.item[indexOf(item)].verdict = verdict;
  w_.items_changed = true;
  count();
  return {};
}

// The last judgement of each item counts; an empty one counts as empty and nothing else.
void Actions::count() {
  std::array<const Judgement*, kItemCount> last{};
  JudgeCounts& n = w_.counts;
  n = {};
  for (const Judgement& j : w_.judgements) {
    if (j.empty) {
      ++n.empty;
    } else {
      last[indexOf(j.item)] = &j;
    }
  }
  for (const Judgement* j : last) {
    if (j == nullptr) continue;
    ++n.judged;
    const bool defective = j->rank != DefectClass::kNone;
    if (j->verdict == Verdict::kUnsure) ++n.unsure;
    if (j->verdict == Verdict::kDefect) ++(defective ? n.hits : n.false_alarms);
    if (j->verdict == Verdict::kGood && defective) {
      ++n.misses;
      if (j->rank == DefectClass::kCritical) ++n.missed_critical;
    }
    const bool found = j->verdict == Verdict::kDefect && defective;
    if (found && j->said_class != DefectClass::kNone && j->said_class != j->rank) ++n.wrong_class;
  }
}

ActionOutcome Actions::book(const Action& a) {
  const PlaceKind kind = placeInfo(w_.trainee.place).kind;
  const bool here =
      !w_.trainee.walking && (kind == PlaceKind::kInside || w_.trainee.place == Place::kBooking);
  if (!here)
    return refuse("the book is not here", "it lies in the cab and at the booking-on point");
  const std::optional<Item> item = findItem(a.object);
  if (item) ++w_.item[indexOf(*item)].booked;
  w_.items_changed = true;
  w_.book.push_back({w_.tick, item, a.argument});
  return {};
}

ActionOutcome Actions::note(const Action& a) {
  w_.notes.push_back({w_.tick, a.object, *readFinite(a.argument)});
  return {};
}

ActionOutcome Actions::decide(const Action& a) {
  w_.trainee.decision = a.object == "go_on" ? 1 : a.object == "restricted" ? 2 : 3;
  return {};
}

ActionOutcome Actions::utterPhrase(const Action& a) {
  if (a.actor != Actor::kTrainee) {
    std::vector<std::string_view> allowed;
    say(w_, a.actor, static_cast<Reply>(*findSignalWord(Signal::kHeardWords, a.object, allowed)));
    return {};
  }
  const PhraseVerb verb = a.verb == "say" ? PhraseVerb::kSay : PhraseVerb::kDo;
  const Phrase phrase = *findPhrase(a.object, verb);
  const bool looks = verb == PhraseVerb::kDo;
  if (looks && w_.trainee.walking && phrase != Phrase::kLookBothWays) {
    return refuse("on the way", "you are walking");
  }
  utter(w_, phrase);
  return {};
}

}  // namespace cabwright::unit
