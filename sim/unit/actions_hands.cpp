// SPDX-License-Identifier: GPL-3.0-or-later
// Hands on controls: what lets itself be moved, what blocks, and what harm is done by moving it.
#include <cmath>

#include "quantity/units.h"
#include "unit/actions.h"
#include "unit/hands.h"
#include "unit/people.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

bool fromAnywhere(Actor actor) { return actor == Actor::kInstructor || actor == Actor::kScenario; }

bool isPulled(double value) { return value > 0.5; }

}  // namespace

bool Actions::canReach(Control c) const {
  if (w_.trainee.walking) return false;
  if (c == Control::kHandLamp) return carries(Object::kLamp);
  return contains(controlInfo(c).places, w_.trainee.place);
}

std::optional<ActionOutcome> Actions::findCabObstacle(Control c, double value) const {
  const int cab = cabOfControl(c);
  const auto blocked = [&](Outcome row) -> std::optional<ActionOutcome> {
    if (facts_.fulfils(row, cab)) return std::nullopt;
    return refuseRow(row, cab);
  };
  switch (asOfFirst(c)) {
    case Control::kCab1Key:
      if (value > 0.5 && !isInserted(w_, Object::kControlKey, cabPlace(cab)) &&
          !isInserted(w_, Object::kSpareKey, cabPlace(cab))) {
        return refuse("an empty key slot", "there is no key in it");
      }
      return std::nullopt;
    case Control::kCab1Reverser:
      return blocked(Outcome::kMoveReverser);
    case Control::kCab1Throttle:
      if (value < 0.5) return std::nullopt;
      return blocked(Outcome::kThrottleStays);
    case Control::kCab1Brake:
      return blocked(Outcome::kBrakeValve);
    case Control::kCab1Handbrake:
      if (value >= w_.control[c]) return std::nullopt;
      return blocked(Outcome::kTurnHandbrakeOff);
    case Control::kCab1Lock:
      if (carries(Object::kDoorKey)) return std::nullopt;
      return refuse("it does not turn", "the door key is not with you");
    default:
      return std::nullopt;
  }
}

std::optional<ActionOutcome> Actions::findEngineObstacle(Control c, double value) const {
  const int line = engineOfControl(c);
  const Place place = line == 0 ? Place::kEngine1 : Place::kEngine2;
  switch (asOfFirst(c)) {
    case Control::kEngine1Switch: {
      const Item item = line == 0 ? Item::kEngine1Switch : Item::kEngine2Switch;
      if (w_.item[indexOf(item)].hidden > 0 || isInserted(w_, Object::kPadlock, place)) {
        return refuse("it does not turn", "a padlock is through it");
      }
      return std::nullopt;
    }
    case Control::kEngine1Pin:
      if (value < 0.5 || facts_.fulfils(Outcome::kPin, 0, line)) return std::nullopt;
      return refuseRow(Outcome::kPin, 0, line);
    case Control::kEngine1Bottle:
      if (value > 0.5 || w_.control[c] < 0.5) return std::nullopt;
      return refuse("it stays out", "a bottle is pulled once");
    default:
      return std::nullopt;
  }
}

std::optional<ActionOutcome> Actions::findObstacle(Control c, double value) const {
  if (cabOfControl(c) >= 0) return findCabObstacle(c, value);
  if (engineOfControl(c) >= 0) return findEngineObstacle(c, value);
  if (c == Control::kAlarm) {
    const bool inside = w_.trainee.place == Place::kSaloon;
    if (isPulled(value) != inside && isPulled(value) != w_.control.on(c)) {
      return refuse("not from here", "it is pulled inside and put back outside, at its tell-tale");
    }
  }
  return std::nullopt;
}

// Harm is what happens, whoever allowed it.
void Actions::noteHarm(Control c, double value) {
  if (c != Control::kHandLamp && isProtected(w_)) ++w_.harm.touched_protected;
  const bool moving = std::abs(q::mpsToMph(u_.readings().speed_mps)) > kMovingMph;
  const Control first = asOfFirst(c);
  if (first == Control::kCab1Reverser && moving && value != w_.control[c]) {
    ++(value == 0.0 ? w_.harm.reverser_off_moving : w_.harm.reversed_moving);
  }
  const bool cord =
      c == Control::kCord1 || c == Control::kCord2 || c == Control::kCord3 || c == Control::kCord4;
  const bool secured =
      w_.control[Control::kCab1Handbrake] > 0.9 && w_.control[Control::kCab2Handbrake] > 0.9;
  if (cord && isPulled(value) && !secured) ++w_.harm.cords;
}

// Where it stands from now on; a wheel is turned there by the hand, tick by tick.
void Actions::putAt(Control c, double value) {
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    if (c != ofCab(Control::kCab1Handbrake, cab)) continue;
    w_.wheel_target[static_cast<std::size_t>(cab)] = value;
    return;
  }
  w_.control[c] = value;
}

ActionOutcome Actions::move(const Action& a, Control c, double value) {
  if (fromAnywhere(a.actor)) {
    putAt(c, value);
    w_.control[c] = value;
    return {};
  }
  if (a.actor != Actor::kTrainee) {  // guard and second person, in the rear cab or at the doors
    if (a.actor == Actor::kHelper && !w_.people.second_there) {
      return refuse("nobody is there", "the second person is not at the rear");
    }
    w_.control[c] = value;
    return {};
  }
  if (!canReach(c)) {
    return refuse(w_.trainee.walking ? "on the way" : "out of reach",
                  w_.trainee.walking ? "you are walking" : "it is not at this place");
  }
  if (auto obstacle = findObstacle(c, value)) return *obstacle;
  noteHarm(c, value);
  if (c != Control::kHandLamp) reach(w_, c);
  putAt(c, value);
  return {};
}

ActionOutcome Actions::setSignal(const Action& a) {
  const std::string name = a.object.substr(a.object.find('.') + 1);
  for (std::size_t k = 0; k < u_.route_.signals.size(); ++k) {
    if (u_.route_.signals[k].name != name) continue;
    const bool clear = a.argument == "clear";
    if (w_.signal_clear[k] && !clear) withdrawCode(w_);
    w_.signal_clear[k] = clear;
  }
  return {};
}

ActionOutcome Actions::set(const Action& a) {
  if (a.object.starts_with("signal.")) return setSignal(a);
  const Control c = *findControl(a.object);
  const ControlInfo& info = controlInfo(c);
  const double value = *findPosition(info, a.argument);
  const bool rest = info.spring == ControlSpring::kSprings && value == info.positions[0].value;
  if (rest && a.actor == Actor::kTrainee) return release(a);
  w_.pressed_until[indexOf(c)] = kNever;
  return move(a, c, value);
}

ActionOutcome Actions::hold(const Action& a) {
  const Control c = *findControl(a.object);
  const ControlInfo& info = controlInfo(c);
  double value = w_.control[c];  // of what stays: the hand rests on it
  if (!a.argument.empty()) {
    value = *findPosition(info, a.argument);
  } else if (info.spring == ControlSpring::kSprings) {
    value = info.positions[1].value;
  }
  w_.pressed_until[indexOf(c)] = kNever;
  return move(a, c, value);
}

ActionOutcome Actions::release(const Action& a) {
  const Control c = *findControl(a.object);
  if (!isHeld(w_, c)) return refuse("no hand is on it", "");
  letGo(w_, c);
  return {};
}

ActionOutcome Actions::press(const Action& a) {
  const Control c = *findControl(a.object);
  const ActionOutcome outcome = move(a, c, controlInfo(c).positions[1].value);
  if (outcome.accepted) {
    w_.pressed_until[indexOf(c)] =
        w_.tick + static_cast<std::int64_t>(w_.parameters.hands.press_s * q::kTicksPerSecond + 0.5);
  }
  return outcome;
}

ActionOutcome Actions::ring(const Action& a) {
  const std::vector<int> groups = readBellCode(a.argument);
  if (a.actor == Actor::kGuard || fromAnywhere(a.actor)) {
    w_.people.guard_is_repeating = false;
    giveCode(w_, w_.people.from_guard, groups);
    return {};
  }
  const Control bell = *findControl(a.object);
  if (!canReach(bell)) return refuse("out of reach", "the bell button is not at this place");
  noteHarm(bell, 0.0);
  reach(w_, bell);
  giveCode(w_, w_.people.from_driver, groups);
  return {};
}

}  // namespace cabwright::unit
