// SPDX-License-Identifier: GPL-3.0-or-later
// The line as seen from the front of the unit.
#include <algorithm>
#include <cmath>

#include "unit/frame_fill.h"

namespace cabwright::unit {

namespace {

constexpr double kOverrunM = 30.0;  // a mark this far behind the front still counts as the next one
constexpr double kNoMark = 9999.0;
constexpr double kNoLimitMph = 999.0;

double facing(int cab) { return cab == 0 ? 1.0 : -1.0; }

}  // namespace

double calcFront(const plant::PlantReadings& r, int cab) {
  return r.position_m + facing(cab) * 0.5 * kUnitLengthM;
}

const RouteSignal* findSignalAhead(const Route& route, double front_m, int cab,
                                   std::size_t& index) {
  const RouteSignal* nearest = nullptr;
  double least = 0.0;
  for (std::size_t k = 0; k < route.signals.size(); ++k) {
    const RouteSignal& s = route.signals[k];
    if (s.direction != (cab == 0 ? 1 : -1)) continue;
    const double ahead = facing(cab) * (s.position_m - front_m);
    if (ahead < 0.0 || (nearest != nullptr && ahead >= least)) continue;
    nearest = &s;
    least = ahead;
    index = k;
  }
  return nearest;
}

double calcMarkDistance(const Route& route, double front_m, int cab) {
  double least = kNoMark;
  for (const Platform& p : route.platforms) {
    const double mark = cab == 0 ? p.mark_up_m : p.mark_down_m;
    const double ahead = facing(cab) * (mark - front_m);
    if (ahead > -kOverrunM && ahead < least) least = ahead;
  }
  return least;
}

// Each limit holds from its own position to the next one's; before the first, the first holds.
double calcLimit(const Route& route, double from_m, double to_m) {
  double lowest = kNoLimitMph;
  for (std::size_t k = 0; k < route.limits.size(); ++k) {
    const bool begins = k == 0 || route.limits[k].from_m <= to_m;
    const bool ends = k + 1 < route.limits.size() && route.limits[k + 1].from_m <= from_m;
    if (begins && !ends) lowest = std::min(lowest, route.limits[k].mph);
  }
  return lowest;
}

}  // namespace cabwright::unit
