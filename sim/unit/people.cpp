// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/people.h"

#include <algorithm>

#include "quantity/units.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

constexpr double kToTheRearS = 40.0;     // the length of the unit, and up into the cab
constexpr double kLookAtBlocksS = 25.0;  // along the unit and back, looking at each
constexpr double kAnsweringWithinS = 20.0;
constexpr float kHornWarns = 0.3F;  // loud enough to be heard along the unit (house value)
constexpr double kBlocksPressN = 500.0;
constexpr int kStopCode = 1;

std::int64_t ticksOf(double seconds) {
  return static_cast<std::int64_t>(seconds * q::kTicksPerSecond + 0.5);
}

constexpr std::array<Item, 6> kPeopleItems{Item::kSide1People,    Item::kSide2People,
                                           Item::kTrailer1People, Item::kTrailer2People,
                                           Item::kEngine1People,  Item::kEngine2People};
constexpr std::array<Item, 6> kProtectionItems{
    Item::kEnd1Protection,  Item::kEnd2Protection,     Item::kSide1Protection,
    Item::kSide2Protection, Item::kTrailer1Protection, Item::kTrailer2Protection};

bool isPassing(const World& w, Item item) {
  const int hidden = w.item[indexOf(item)].hidden;
  return hidden > 0 &&
         itemInfo(item).conditions[static_cast<std::size_t>(hidden - 1)].name == "passing";
}

bool anyHidden(const World& w, std::span<const Item> items) {
  return std::ranges::any_of(items, [&w](Item i) { return w.item[indexOf(i)].hidden > 0; });
}

bool isWorkedOn(const World& w) {
  return anyHidden(w, kProtectionItems) || anyHidden(w, kPeopleItems);
}

bool isSwitchGuarded(const World& w) {
  constexpr std::array kSwitches{Item::kEngine1Switch, Item::kEngine2Switch};
  return anyHidden(w, kSwitches) || anyHidden(w, kPeopleItems);
}

double secondsToAnswer(const World& w, Phrase phrase) {
  const double answer = w.parameters.hands.answer_s;
  if (phrase == Phrase::kLookAlong) return 0.0;
  return phrase == Phrase::kAskBlocks ? answer + kLookAtBlocksS : answer;
}

void warn(World& w) {
  w.people.warned_at = w.tick;
  if (w.people.passers_leave_at != kNever) return;
  w.people.passers_leave_at = w.tick + ticksOf(w.parameters.hands.person_leaves_s);
}

// What the second person sees of the blocks: on, off, or not the same.
double judgeBlocks(const PeopleSenses& senses) {
  const auto on = std::count_if(senses.block_force_n.begin(), senses.block_force_n.end(),
                                [](double f) { return f > kBlocksPressN; });
  return on == plant::kCylinders ? 1.0 : on == 0 ? 0.0 : 0.5;
}

void answerSecond(World& w, Phrase to, const PeopleSenses& senses) {
  PeopleState& p = w.people;
  if (!p.second_there) return say(w, Actor::kHelper, Reply::kNobodyThere);
  const int rear = rearCab(w);
  const Control valve = ofCab(Control::kCab1GuardsValve, rear);
  if (to == Phrase::kAskRearGauge) {
    p.second_reading =
        w.instrument[indexOf(instrumentOfCab(Instrument::kCab1GuardsGauge, rear))].shown;
    p.second_read_at = w.tick;
    return say(w, Actor::kHelper, Reply::kRearReading, p.second_reading);
  }
  if (to == Phrase::kAskValveOpen) {
    w.control[valve] = 1.0;
    return say(w, Actor::kHelper, Reply::kValveOpen);
  }
  if (to == Phrase::kAskValveShut) {
    w.control[valve] = 0.0;
    return say(w, Actor::kHelper, Reply::kValveShut);
  }
  p.second_blocks = judgeBlocks(senses);
  say(w, Actor::kHelper,
      p.second_blocks > 0.9   ? Reply::kBlocksOn
      : p.second_blocks < 0.1 ? Reply::kBlocksOff
                              : Reply::kBlocksDiffer);
}

void callSecond(World& w) {
  PeopleState& p = w.people;
  if (!w.second_person) return say(w, Actor::kHelper, Reply::kNobodyThere);
  if (!p.second_called) {
    p.second_called = true;
    p.second_arrives = w.tick + ticksOf(kToTheRearS);
  }
  say(w, Actor::kHelper, p.second_there ? Reply::kAtTheRear : Reply::kOnMyWay);
}

// A test that nobody rings in is forgotten as a code is.
void agreeBellTest(World& w) {
  if (!w.guard_present) return say(w, Actor::kGuard, Reply::kNobodyThere);
  w.people.bell_test_until = w.tick + ticksOf(w.parameters.hands.code_stands_s);
  w.people.guard_tries = 0;
  say(w, Actor::kGuard, Reply::kReadyForBell);
}

void answer(World& w, Phrase to, const PeopleSenses& senses) {
  switch (to) {
    case Phrase::kAskPermission:
      return say(w, Actor::kSignaller, Reply::kGranted);
    case Phrase::kAskProtection:
      return say(w, Actor::kScenario, isWorkedOn(w) ? Reply::kStillWorking : Reply::kNobodyWorks);
    case Phrase::kAskSwitch:
      return say(w, Actor::kScenario,
                 isSwitchGuarded(w) ? Reply::kFitterHasIt : Reply::kNobodyKnows);
    case Phrase::kAskSecondPerson:
      return callSecond(w);
    case Phrase::kAskRearGauge:
    case Phrase::kAskValveOpen:
    case Phrase::kAskValveShut:
    case Phrase::kAskBlocks:
      return answerSecond(w, to, senses);
    case Phrase::kThankSecondPerson:
      w.people.second_called = w.people.second_there = false;
      return say(w, Actor::kHelper, Reply::kUnderstood);
    case Phrase::kAskBellTest:
      return agreeBellTest(w);
    case Phrase::kTellGuard:
      return say(w, Actor::kGuard, w.guard_present ? Reply::kUnderstood : Reply::kNobodyThere);
    case Phrase::kTellSignaller:
      return say(w, Actor::kSignaller, Reply::kUnderstood);
    case Phrase::kAskReseat:
      return say(w, Actor::kScenario, isWorkedOn(w) ? Reply::kStillWorking : Reply::kMayReseat);
    case Phrase::kAskRestricted:
      return say(w, Actor::kSignaller, Reply::kMayRestricted);
    case Phrase::kTellShed:
    case Phrase::kRefuseUnit:
    case Phrase::kHandOver:
    case Phrase::kCallFire:
      return say(w, Actor::kScenario, Reply::kUnderstood);
    case Phrase::kLookAlong:
      return say(w, Actor::kTrainee, isPersonAnywhere(w) ? Reply::kPersonSeen : Reply::kNobodySeen);
    default:
      return;
  }
}

// Strokes still to come switch the bell on and off by themselves.
bool advanceQueue(World& w, BellState& bell) {
  const HandParameters& p = w.parameters.hands;
  if (bell.to_give.empty() || w.tick < bell.next_tick) return bell.queue_on;
  bell.queue_on = !bell.queue_on;
  bell.next_tick = w.tick + ticksOf(p.stroke_s);
  if (!bell.queue_on && --bell.to_give.front() == 0) {
    bell.to_give.erase(bell.to_give.begin());
    bell.next_tick = w.tick + ticksOf(p.group_s);
  }
  return bell.queue_on;
}

// Makes a code of the strokes as they begin.
void advanceBell(World& w, BellState& bell, bool button, bool heard) {
  const HandParameters& p = w.parameters.hands;
  const bool was = bell.sounding;
  bell.sounding = advanceQueue(w, bell) || button;
  if (!bell.sounding || was) return;
  const double since = static_cast<double>(w.tick - bell.last_stroke) * q::kTickSeconds;
  // Half way between the spacing of strokes in a group and that between groups.
  const double same_group = 0.5 * (3.0 * p.stroke_s + p.group_s);
  const bool new_group = bell.last_stroke == kNever || since >= same_group;
  if (new_group && bell.code < 100) {
    bell.code *= 10;
    bell.strokes = 0;
  }
  if (bell.strokes < 9) {
    ++bell.strokes;
    ++bell.code;
  }
  bell.last_stroke = w.tick;
  bell.any_heard = bell.any_heard || heard;
}

// True at the tick at which the code under way is complete.
bool completeCode(World& w, BellState& bell) {
  if (bell.last_stroke == kNever || bell.sounding || !bell.to_give.empty()) return false;
  if (w.tick - bell.last_stroke < ticksOf(w.parameters.hands.code_s)) return false;
  bell.complete = bell.code;
  bell.complete_at = w.tick;
  bell.complete_heard = bell.any_heard;
  bell.code = bell.strokes = 0;
  bell.any_heard = false;
  bell.last_stroke = kNever;
  return true;
}

std::vector<int> groupsOf(int code) {
  std::vector<int> groups;
  for (; code > 0; code /= 10) groups.insert(groups.begin(), code % 10);
  return groups;
}

bool isBellTested(const World& w) {
  return w.people.bell_test_until != kNever && w.tick <= w.people.bell_test_until;
}

// Answered, one way or the other, the test is over: what comes then is meant.
void endBellTest(PeopleState& p) {
  p.bell_test_until = kNever;
  p.guard_tries = 0;
}

void hearDriver(World& w) {
  PeopleState& p = w.people;
  const int code = p.from_driver.complete;
  const bool heard = p.from_driver.complete_heard;
  if (isBellTested(w) && heard && code == p.guard_tries) return endBellTest(p);
  const bool recent = p.from_guard.complete_at != kNever &&
                      w.tick - p.from_guard.complete_at < ticksOf(kAnsweringWithinS);
  if (p.guard_code_valid && recent && !p.guard_answered && code == p.from_guard.complete) {
    p.guard_answered = heard;
    return;
  }
  if (w.guard_present && heard && code != kStopCode) {
    p.guard_repeats = code;
    p.guard_repeats_at = w.tick + ticksOf(w.parameters.hands.answer_s);
  }
}

bool isBellFed(const World& w) { return w.result.bell_fed; }

bool driversBellReaches(const World& w) {
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    if (w.trainee.place != cabPlace(cab)) continue;
    return isBellFed(w) && w.parameters.desk[static_cast<std::size_t>(cab)].bell_button_dead <= 0.5;
  }
  return isBellFed(w);
}

// Heard by who is in a cab whose bell works.
void hearGuard(World& w, const BellState& bell) {
  const int cab = cabOf(w.trainee.place);
  if (w.trainee.walking || cab < 0 || !bell.complete_heard) return;
  if (w.parameters.desk[static_cast<std::size_t>(cab)].bell_dead > 0.5) return;
  w.people.heard_code = bell.complete;
  w.people.heard_code_at = w.tick;
}

// The guard's code is complete: a driver's given back, one rung to try the bell, or an order, which
// one stroke, "stop", always is.
void noteGuardsCode(World& w, int before, std::int64_t before_at) {
  PeopleState& p = w.people;
  hearGuard(w, p.from_guard);
  const int code = p.from_guard.complete;
  const bool is_trial = isBellTested(w) && code != kStopCode;
  if (!p.guard_is_repeating && !is_trial) {
    p.guard_code_valid = true;
    p.guard_answered = false;
    return;
  }
  if (p.guard_is_repeating) {
    p.guard_repeated = code;
    endBellTest(p);
  } else {
    p.guard_tries = code;
  }
  p.from_guard.complete = before;
  p.from_guard.complete_at = before_at;
  p.guard_is_repeating = false;
}

void advanceBells(World& w, double speed_mph) {
  PeopleState& p = w.people;
  if (p.guard_repeats_at != kNever && w.tick >= p.guard_repeats_at) {
    giveCode(w, p.from_guard, groupsOf(p.guard_repeats));
    p.guard_is_repeating = true;
    p.guard_repeats_at = kNever;
  }
  const bool button = w.control.on(Control::kCab1Bell) || w.control.on(Control::kCab2Bell);
  advanceBell(w, p.from_driver, button, driversBellReaches(w));
  if (completeCode(w, p.from_driver)) hearDriver(w);
  const int before = p.from_guard.complete;
  const std::int64_t before_at = p.from_guard.complete_at;
  advanceBell(w, p.from_guard, false, isBellFed(w));
  if (completeCode(w, p.from_guard)) noteGuardsCode(w, before, before_at);
  const bool moving = speed_mph > kMovingMph;
  const bool old = p.from_guard.complete_at != kNever &&
                   w.tick - p.from_guard.complete_at > ticksOf(w.parameters.hands.code_stands_s);
  // Once the unit runs on a code, it has been used up when it stands again.
  if (!moving && (old || w.was_moving)) p.guard_code_valid = false;
}

void advanceOthers(World& w) {
  PeopleState& p = w.people;
  if (p.second_called && !p.second_there && w.tick >= p.second_arrives) {
    p.second_there = true;
    w.trainee.answered[indexOf(Phrase::kAskSecondPerson)] = Reply::kAtTheRear;
    say(w, Actor::kHelper, Reply::kAtTheRear);
  }
  // A horn warns by its note, not by its lever.
  if (w.frame[Signal::kHeardHornLevel] > kHornWarns) {
    if (p.warned_at == kNever || w.tick - p.warned_at > q::kTicksPerSecond) warn(w);
  }
  if (p.passers_leave_at != kNever && w.tick >= p.passers_leave_at) {
    p.passers_leave_at = kNever;
    for (Item item : kPeopleItems) {
      if (!isPassing(w, item)) continue;
      w.item[indexOf(item)].hidden = 0;
      w.items_changed = true;
      say(w, Actor::kScenario, Reply::kPersonLeaves);
    }
  }
}

}  // namespace

void say(World& w, Actor who, Reply reply, double value) {
  w.messages.push_back({w.tick, who, reply, value});
  w.people.last_reply = reply;
  w.people.last_reply_at = w.tick;
}

std::vector<int> readBellCode(std::string_view written) {
  std::vector<int> groups;
  for (std::size_t k = 0; k < written.size(); ++k) {
    const char c = written[k];
    if (k % 2 == 1) {
      if (c != '-') return {};
    } else if (c >= '1' && c <= '9') {
      groups.push_back(c - '0');
    } else {
      return {};
    }
  }
  return written.size() % 2 == 1 && groups.size() <= 3 ? groups : std::vector<int>{};
}

void giveCode(World& w, BellState& bell, const std::vector<int>& groups) {
  bell.to_give = groups;
  bell.next_tick = w.tick;
  bell.sounding = bell.queue_on = false;
  bell.code = bell.strokes = 0;
  bell.last_stroke = kNever;
  bell.any_heard = false;
}

void utter(World& w, Phrase phrase) {
  ++w.trainee.said[indexOf(phrase)];
  w.trainee.answered[indexOf(phrase)] = Reply::kNone;
  if (phrase == Phrase::kCallWarning) warn(w);
  if (phrase == Phrase::kLookBothWays) w.trainee.looked_both_ways = w.tick;
  w.people.pending.push_back({w.tick + ticksOf(secondsToAnswer(w, phrase)), phrase});
}

bool isPersonAt(const World& w, Place place) {
  for (Item item : kPeopleItems) {
    if (itemInfo(item).place == place && w.item[indexOf(item)].hidden > 0) return true;
  }
  return false;
}

bool isPersonAnywhere(const World& w) { return anyHidden(w, kPeopleItems); }
bool isProtected(const World& w) { return anyHidden(w, kProtectionItems); }

int rearCab(const World& w) {
  if (w.memory.desk >= 0) return 1 - w.memory.desk;
  return w.trainee.place == Place::kCab2 ? 0 : 1;
}

void withdrawCode(World& w) { w.people.guard_code_valid = false; }

void advancePeople(World& w, const PeopleSenses& senses) {
  advanceBells(w, senses.speed_mph);
  advanceOthers(w);
  std::vector<PendingReply>& pending = w.people.pending;
  for (std::size_t k = 0; k < pending.size();) {
    if (w.tick < pending[k].due) {
      ++k;
      continue;
    }
    const Phrase to = pending[k].to;
    pending.erase(pending.begin() + static_cast<std::ptrdiff_t>(k));
    const std::size_t before = w.messages.size();
    answer(w, to, senses);
    if (w.messages.size() > before) {
      w.trainee.answered[indexOf(to)] = w.messages.back().reply;
    }
  }
}

}  // namespace cabwright::unit
