// SPDX-License-Identifier: GPL-3.0-or-later
// Walking, and the loose things that are carried, put in and laid down.
#include <cmath>

#include "quantity/units.h"
#include "unit/actions.h"
#include "unit/hands.h"
#include "unit/people.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

constexpr double kLookedRecentlyS = 15.0;
constexpr double kStandingMph = 0.1;

bool hasWord(std::string_view text, std::string_view word) {
  while (!text.empty()) {
    if (firstWord(text) == word) return true;
  }
  return false;
}

}  // namespace

bool Actions::carries(Object o) const {
  return w_.object_exists[indexOf(o)] && w_.object[indexOf(o)].state == ObjectState::kCarried;
}

ActionOutcome Actions::go(const Action& a) {
  TraineeState& t = w_.trainee;
  const Place to = *findPlace(a.object);
  if (t.walking) return refuse("on the way", "you are walking already");
  if (to == t.place) return {};
  const bool skip = hasWord(a.argument, "skip");
  if (skip && w_.assessment) return refuse("walking takes its time", "not skipped in assessment");
  const Walk walk = calcWalk(t.place, to, hasWord(a.argument, "under"));
  const double mph = std::abs(q::mpsToMph(u_.readings().speed_mps));
  const bool stays_inside =
      placeInfo(t.place).kind == PlaceKind::kInside && placeInfo(to).kind == PlaceKind::kInside;
  if (mph > kStandingMph && !stays_inside)
    return refuse("not while it moves", "the unit is moving");
  const int cab = cabOf(to);
  if (cab >= 0) {
    const Control lock = ofCab(Control::kCab1Lock, cab);
    if (!w_.control.on(lock) && !carries(Object::kDoorKey)) {
      return refuse("the door is locked", "the door key is not with you");
    }
    w_.control[lock] = 1.0;
  }
  letGoOfAll(w_);
  t.looking.reset();
  t.walking = true;
  t.heading = to;
  t.walk = walk;
  const double seconds = skip ? 0.0 : walk.seconds();
  t.arrives = w_.tick + static_cast<std::int64_t>(std::ceil(seconds * q::kTicksPerSecond));
  const bool looked =
      t.looked_both_ways != kNever &&
      static_cast<double>(w_.tick - t.looked_both_ways) * q::kTickSeconds <= kLookedRecentlyS;
  t.crossings += walk.crossings;
  if (!looked) t.crossed_blind += walk.crossings;
  if (walk.between) ++t.between;
  if (walk.under) ++t.under;
  return {};
}

ActionOutcome Actions::take(const Action& a) {
  const Object o = *findObject(a.object);
  ObjectPlace& at = w_.object[indexOf(o)];
  if (!w_.object_exists[indexOf(o)]) return refuse("there is none", "it is not on the unit");
  if (at.state == ObjectState::kCarried) return refuse("it is with you", "");
  if (w_.trainee.walking || at.place != w_.trainee.place) return refuse("it is not here", "");
  if (at.state == ObjectState::kInserted) {
    const int cab = cabOf(at.place);
    if (o == Object::kBrakeHandle && !facts_.fulfils(Outcome::kBrakeHandle, cab)) {
      return refuseRow(Outcome::kBrakeHandle, cab);
    }
    if (o == Object::kReversingLever && !facts_.fulfils(Outcome::kTakeReverser, cab)) {
      return refuseRow(Outcome::kTakeReverser, cab);
    }
    const bool key = o == Object::kControlKey || o == Object::kSpareKey;
    if (key && w_.control.on(ofCab(Control::kCab1Key, cab))) {
      return refuse("the key will not come out", "the key switch is on");
    }
    if (isProtected(w_)) ++w_.harm.touched_protected;
  }
  at = {ObjectState::kCarried, w_.trainee.place};
  return {};
}

ActionOutcome Actions::insertPadlock(Place place) {
  const int line = place == Place::kEngine1 ? 0 : 1;
  const double isolating = w_.control[ofEngine(Control::kEngine1Switch, line)];
  if (isolating < 0.5 || isolating > 1.5) {
    return refuse("the hole does not line up", "the isolating switch is not at off");
  }
  w_.object[indexOf(Object::kPadlock)] = {ObjectState::kInserted, place};
  return {};
}

ActionOutcome Actions::insert(const Action& a) {
  const Object o = *findObject(a.object);
  const Place place = *findPlace(a.argument);
  const int cab = cabOf(place);
  if (!carries(o)) return refuse("it is not with you", "");
  if (w_.trainee.walking || place != w_.trainee.place) return refuse("out of reach", "not there");
  if (isProtected(w_)) ++w_.harm.touched_protected;
  if (o == Object::kPadlock) return insertPadlock(place);
  const bool key = o == Object::kControlKey || o == Object::kSpareKey;
  const bool taken =
      key ? isInserted(w_, Object::kControlKey, place) || isInserted(w_, Object::kSpareKey, place)
          : isInserted(w_, o, place);
  if (taken) return refuse("there is one in it", "");
  if (o == Object::kReversingLever && !facts_.fulfils(Outcome::kInsertReverser, cab)) {
    return refuseRow(Outcome::kInsertReverser, cab);
  }
  if (o == Object::kBrakeHandle && !facts_.fulfils(Outcome::kBrakeHandle, cab)) {
    return refuse("the handle will not go in", missingWords(Fact::kHandleInLap));
  }
  w_.object[indexOf(o)] = {ObjectState::kInserted, place};
  return {};
}

ActionOutcome Actions::put(const Action& a) {
  const Object o = *findObject(a.object);
  if (!carries(o)) return refuse("it is not with you", "");
  if (w_.trainee.walking) return refuse("on the way", "you are walking");
  w_.object[indexOf(o)] = {ObjectState::kLying, w_.trainee.place};
  return {};
}

}  // namespace cabwright::unit
