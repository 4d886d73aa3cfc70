// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/hands.h"

#include <algorithm>

#include "quantity/units.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

void springBack(World& w, Control c) {
  const ControlInfo& info = controlInfo(c);
  if (info.spring == ControlSpring::kSprings) w.control[c] = info.positions.front().value;
  w.pressed_until[indexOf(c)] = kNever;
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    if (c != ofCab(Control::kCab1Handbrake, cab)) continue;
    w.wheel_target[static_cast<std::size_t>(cab)] = w.control[c];
  }
}

// A hand that leaves the throttle's handle leaves the device too.
void release(World& w, Hand& hand) {
  if (!hand.on) return;
  const Control c = *hand.on;
  hand.on.reset();
  springBack(w, c);
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    if (c == ofCab(Control::kCab1Throttle, cab)) springBack(w, ofCab(Control::kCab1Device, cab));
  }
}

bool holdsDevice(const World& w, const Hand& hand) {
  return hand.on && isDevice(*hand.on) && w.control.on(*hand.on);
}

void turnWheel(World& w, int cab) {
  const auto c = static_cast<std::size_t>(cab);
  const Control wheel = ofCab(Control::kCab1Handbrake, cab);
  const bool pawl_holds =
      w.control.on(ofCab(Control::kCab1Pawl, cab)) && w.parameters.desk[c].pawl_worn <= 0.5;
  const HandParameters& p = w.parameters.hands;
  double& value = w.control[wheel];
  if (isHeld(w, wheel)) {
    const double step = q::kTickSeconds / p.handbrake_s;
    const double wanted = w.wheel_target[c];
    if (wanted > value) value = std::min(wanted, value + step);
    if (wanted < value && !pawl_holds) value = std::max(wanted, value - step);
  } else if (!pawl_holds && value > 0.0) {
    value = std::max(0.0, value - q::kTickSeconds / p.unwind_s);
    w.wheel_target[c] = value;
  }
}

}  // namespace

bool isDevice(Control c) { return c == Control::kCab1Device || c == Control::kCab2Device; }

bool isSameGrip(Control a, Control b) {
  if (a == b) return true;
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    const Control throttle = ofCab(Control::kCab1Throttle, cab);
    const Control device = ofCab(Control::kCab1Device, cab);
    if ((a == throttle && b == device) || (a == device && b == throttle)) return true;
  }
  return false;
}

bool isHeld(const World& w, Control c) {
  for (const Hand& hand : w.trainee.hands) {
    if (hand.on && isSameGrip(*hand.on, c)) return true;
  }
  return false;
}

void reach(World& w, Control c) {
  std::array<Hand, 2>& hands = w.trainee.hands;
  for (Hand& hand : hands) {
    if (!hand.on || !isSameGrip(*hand.on, c)) continue;
    // A hand that holds the device down goes on holding it while it moves the throttle.
    if (!holdsDevice(w, hand)) hand.on = c;
    hand.since = w.tick;
    return;
  }
  // The left hand goes to the throttle's handle, the right to the rest, while both are free.
  const bool left_first =
      isDevice(c) || isSameGrip(c, Control::kCab1Device) || isSameGrip(c, Control::kCab2Device);
  const std::array<std::size_t, 2> order =
      left_first ? std::array<std::size_t, 2>{0, 1} : std::array<std::size_t, 2>{1, 0};
  for (std::size_t k : order) {
    if (hands[k].on) continue;
    hands[k] = {c, w.tick};
    return;
  }
  std::size_t chosen = hands[0].since <= hands[1].since ? 0 : 1;
  if (holdsDevice(w, hands[chosen])) chosen = 1 - chosen;
  release(w, hands[chosen]);
  ++w.trainee.let_go;
  hands[chosen] = {c, w.tick};
}

void letGo(World& w, Control c) {
  for (Hand& hand : w.trainee.hands) {
    if (hand.on && isSameGrip(*hand.on, c)) release(w, hand);
  }
  springBack(w, c);
}

void letGoOfAll(World& w) {
  for (Hand& hand : w.trainee.hands) release(w, hand);
}

void advanceHands(World& w) {
  for (std::size_t k = 0; k < kControlCount; ++k) {
    if (w.pressed_until[k] == kNever || w.tick < w.pressed_until[k]) continue;
    springBack(w, static_cast<Control>(k));
  }
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    if (!w.control.on(ofCab(Control::kCab1Device, cab))) {
      w.control[ofCab(Control::kCab1Throttle, cab)] = 0.0;
    }
    turnWheel(w, cab);
  }
}

}  // namespace cabwright::unit
