// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/machine.h"

namespace cabwright::plant {

SpeedVector calcLoads(const Modes& modes, const Forces& forces) {
  SpeedVector load = forces.f;
  for (std::size_t r = 0; r < modes.sliding_count; ++r) {
    const std::size_t k = modes.sliding[r];
    const double force = slideForce(forces.bounds, k, modes.row[k]);
    const RowShape& s = modes.sliding_shape[r];
    load[s.a] += s.ca * force;
    load[s.b] += s.cb * force;
  }
  return load;
}

namespace {

// Heat of every sliding row, to where it goes.
void addSlidingHeat(const Machine& m, const Modes& modes, const State& x, const Forces& out,
                    State& dx) {
  for (std::size_t r = 0; r < modes.sliding_count; ++r) {
    const std::size_t k = modes.sliding[r];
    const double heat =
        -slideForce(out.bounds, k, modes.row[k]) * rowSpeed(modes.sliding_shape[r], x);
    if (k >= kBandRow && k < kClutchRow) {
      const std::size_t n = (k - kBandRow) / kBands, b = (k - kBandRow) % kBands;
      dx[stateOf(n, kDrumK + b)] += heat / m.p.gearbox[n].band[b].heat_j_k;
    } else if (k >= kClutchRow && k < kDogRow) {
      const std::size_t n = k - kClutchRow;
      dx[stateOf(n, kClutchK)] += heat / m.p.gearbox[n].clutch.heat_j_k;
    } else if (k >= kRailRow && k < kBlockRow) {
      dx[kRailJ] += heat;
    } else if (k >= kBlockRow && k < kBreakawayRow) {
      dx[kBlockJ] += heat;
    } else if (k == kBreakawayRow) {
      dx[kResistanceJ] += heat;
    } else if (k < kCrankRow || k >= kShaftRow) {
      dx[kBearingJ] += heat;  // freewheel, tooth faces, shaft bearings
    }
    // The crank's friction heat is already with coolant and oil.
  }
}

}  // namespace

void calcRates(const Machine& m, const Modes& modes, const State& x, State& dx, Forces& out) {
  calcForces(m, x, dx, out);
  const SpeedVector load = calcLoads(modes, out);
  for (std::size_t r = 0; r < kSpeeds; ++r) {
    double sum = 0.0;
    for (std::size_t c = 0; c < kSpeeds; ++c) sum += modes.accelerate[r][c] * load[c];
    dx[r] = sum;
  }
  addSlidingHeat(m, modes, x, out, dx);
}

}  // namespace cabwright::plant
