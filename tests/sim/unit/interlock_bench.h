// SPDX-License-Identifier: GPL-3.0-or-later
// The circuits on the bench: real levers, contacts and volts, no plant.
#pragma once

#include "unit/interlocks.h"

namespace cabwright::unit {

// Everything as it should be in a cab that leads: desk alive, air up, drives in mesh.
struct Bench {
  InterlockInputs in;
  UnitParameters p;
  InterlockMemory memory;

  explicit Bench(int cab = 0) {
    const auto c = static_cast<std::size_t>(cab);
    in.has_key[c] = in.has_reverser[c] = in.has_brake_handle[c] = true;
    set(Control::kCab1Key, cab, 1);
    set(Control::kCab1Reverser, cab, 1);
    set(Control::kCab1Device, cab, 1);
    in.bus_v = 24.5;
    in.control_psi = 90.0;
    in.meshed = cab == 0 ? std::array<int, 2>{1, 1} : std::array<int, 2>{-1, -1};
  }
  void set(Control of_cab1, int cab, double v) { in.control[ofCab(of_cab1, cab)] = v; }
  InterlockResult result() {
    for (int k = 0; k < 50; ++k) memory = calcMemory(memory, in, p, 0.01);
    return calcInterlocks(in, memory, p);
  }
};

}  // namespace cabwright::unit
