// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/tick.h"

#include <algorithm>
#include <cmath>

#include "quantity/units.h"
#include "unit/frame_fill.h"
#include "unit/people.h"
#include "unit/perception.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

// No hand lets a button go and presses it again so quickly: a relay that chatters is one attempt.
constexpr double kChattersS = 0.3;
constexpr double kCockShut =
    0.25;  // of the fuel cock: below it nothing runs (see plant_inputs.cpp)
constexpr std::int32_t kBottleLasts = 1000;  // ticks, house value
constexpr double kRunsForGoodS = 3.0;        // after that a further attempt is a new start
constexpr double kPullingN = 2000.0;         // wheels pull against a scotch
constexpr double kTurnsRadPerS = 1.0;        // a crank that turns

// What a look that has lasted long enough has shown.
void noteSeen(World& w, Item item) {
  if (!hasSeen(w, item)) return;
  ItemState& state = w.item[indexOf(item)];
  const int present = findVisibleCondition(w, item);
  if (state.looked && state.seen == present) return;
  state.looked = true;
  state.seen = present;
  w.items_changed = true;
}

// Harm is counted when it begins, not at each tick it lasts.
void countBeginning(bool is, bool& was, int& count) {
  if (is && !was) ++count;
  was = is;
}

bool isHandbrakeOn(const World& w) {
  return w.control[Control::kCab1Handbrake] > 0.9 || w.control[Control::kCab2Handbrake] > 0.9;
}

bool isPersonAtEngine(const World& w, std::size_t line) {
  return line == 0 ? isPersonAt(w, Place::kEngine1) || isPersonAt(w, Place::kSide1)
                   : isPersonAt(w, Place::kEngine2) || isPersonAt(w, Place::kSide2);
}

void noteSignalsPassed(World& w, double from_m, double to_m, const Route& route) {
  const double half = 0.5 * kUnitLengthM;
  for (std::size_t k = 0; k < route.signals.size(); ++k) {
    const RouteSignal& s = route.signals[k];
    const double shift = s.direction > 0 ? half : -half;
    const double was = s.direction * (from_m + shift - s.position_m);
    const double is = s.direction * (to_m + shift - s.position_m);
    if (was > 0.0 || is <= 0.0) continue;
    if (!w.signal_clear[k]) ++w.harm.passed_danger;
    // It goes back to danger behind the end that leads, for the next train.
    w.signal_clear[k] = false;
  }
}

}  // namespace

void advanceTrainee(World& w) {
  TraineeState& t = w.trainee;
  if (t.walking && w.tick >= t.arrives) {
    t.walking = false;
    t.place = t.heading;
  }
  if (!t.looking) return;
  if (t.walking || t.place != itemInfo(*t.looking).place || !hasLight(w)) {
    t.looking.reset();
    return;
  }
  // Time spent before a dark lamp is no look at it.
  if (!canMakeOut(w, *t.looking)) {
    t.looking_since = w.tick + 1;
    return;
  }
  const auto ticks =
      static_cast<std::int32_t>(std::min<std::int64_t>(w.tick + 1 - t.looking_since, 1'000'000));
  std::int32_t& longest = t.looked_ticks[indexOf(*t.looking)];
  longest = std::max(longest, ticks);
  noteSeen(w, *t.looking);
}

void advanceFires(World& w) {
  for (int line = 0; line < plant::kLines; ++line) {
    const auto n = static_cast<std::size_t>(line);
    const FireParameters& fire = w.parameters.fire[n];
    const bool burns = fire.burns > 0.5;
    const bool fed = w.control[ofEngine(Control::kEngine1FuelCock, line)] > kCockShut;
    std::int32_t& bottle = w.bottle[n];
    if (!w.control.on(ofEngine(Control::kEngine1Bottle, line))) {
      bottle = kBottleFull;
    } else if (bottle == kBottleFull) {
      const bool helps = burns && fire.bottle_empty <= 0.5;
      bottle = !helps ? kBottleSpent : fed ? kFireHeldDown + kBottleLasts : kFireOut;
    } else if (bottle >= kFireHeldDown) {
      bottle = !fed ? kFireOut : bottle == kFireHeldDown ? kBottleSpent : bottle - 1;
    } else if (!burns) {
      bottle = kBottleSpent;  // nothing of it is left for another fire
    }
  }
}

void noteSounds(World& w, const InterlockResult& before, const plant::PlantReadings& r,
                const std::array<bool, plant::kLines>& was_meshed) {
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    const bool meshed = r.line[n].dog == plant::DogState::kMeshed;
    if (meshed && !was_meshed[n]) w.thump_at[n] = w.tick;
    if (w.result.starter[n] != before.starter[n] || w.result.stop[n] != before.stop[n]) {
      w.click_at = w.tick;
    }
  }
  const bool relay = w.result.facts.has(Fact::kRelayIn);
  if (relay != before.facts.has(Fact::kRelayIn)) w.click_at = w.tick;
}

void noteStarts(World& w, const InterlockResult& before, const plant::PlantReadings& r) {
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    StartLog& log = w.start[n];
    const bool fed = w.result.starter[n];
    const bool chatters = log.last_fed != kNever && calcAge(w, log.last_fed) < kChattersS;
    if (fed && !before.starter[n] && !chatters) {
      ++log.attempts;
      log.rest_s = calcAge(w, log.last_fed);
      if (isPersonAtEngine(w, n)) ++w.harm.started_at_person;
    }
    if (fed) log.last_fed = w.tick;
    log.fed = fed;
    if (!r.line[n].running) {
      log.ran_since = kNever;
    } else if (log.ran_since == kNever) {
      log.ran_since = w.tick;
    } else if (!fed && calcAge(w, log.ran_since) > kRunsForGoodS) {
      log.attempts = 0;
    }
  }
}

void noteMovement(World& w, const plant::PlantReadings& r, const Route& route) {
  const bool moving = std::abs(q::mpsToMph(r.speed_mps)) > kMovingMph;
  w.travelled_m += std::abs(r.position_m - w.last_position_m);
  noteSignalsPassed(w, w.last_position_m, r.position_m, route);
  w.last_position_m = r.position_m;
  const bool door = w.control.on(Control::kDoor1) || w.control.on(Control::kDoor2);
  countBeginning(moving && isPersonAnywhere(w), w.was_at_person, w.harm.moved_at_person);
  countBeginning(moving && isProtected(w), w.was_protected, w.harm.moved_protected);
  countBeginning(moving && door, w.was_door_open, w.harm.door);
  const bool scotched = w.control.on(Control::kScotch1) || w.control.on(Control::kScotch2);
  countBeginning(scotched && (std::abs(r.tractive_n) > kPullingN || moving), w.was_on_scotch,
                 w.harm.scotch);
  w.was_moving = moving;
}

void noteExposure(World& w, const plant::PlantReadings& r) {
  const TraineeState& t = w.trainee;
  const bool between = t.walking ? t.walk.between || t.walk.under : t.place == Place::kBetween;
  bool turns = false, reaches = false;
  for (int line = 0; line < plant::kLines; ++line) {
    const auto n = static_cast<std::size_t>(line);
    const bool this_turns =
        std::abs(r.line[n].crank_rad_per_s) > kTurnsRadPerS || w.inputs.line[n].starter_contactor;
    turns = turns || this_turns;
    for (const Hand& hand : t.hands) {
      if (!hand.on || !this_turns) continue;
      reaches = reaches || *hand.on == ofEngine(Control::kEngine1Sleeve, line) ||
                *hand.on == ofEngine(Control::kEngine1Pin, line);
    }
  }
  const bool moving = std::abs(q::mpsToMph(r.speed_mps)) > kMovingMph;
  countBeginning(between && (turns || moving || !isHandbrakeOn(w)), w.was_between, w.harm.between);
  countBeginning(reaches, w.was_reaching, w.harm.reach);
}

}  // namespace cabwright::unit
