// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/hissing.h"

#include <algorithm>

namespace cabwright::unit {

namespace {

constexpr double kSilentKgS = 0.3e-3;  // what seams and seals of a sound unit lose at one place
constexpr double kHalfKgS = 3.0e-3;    // a hole of 1.5 mm at 6 bar, or of 4 mm into the train pipe
// Between the cars nobody may be while an engine turns: what hisses there has to reach who walks
// along, as something fainter (house value).
constexpr double kFromBeside = 0.4;

double inCab(const plant::Escapes& e, std::size_t c) {
  return e.drivers_valve[c] + e.guards_valve[c] + e.device_vent[c] + e.device_choke[c];
}

double alongMotorCar(const plant::Escapes& e, std::size_t n) {
  const double vessels = n == 0 ? e.main_reservoir + e.main_drain + e.safety_valve
                                : e.control_reservoir + e.control_drain;
  return e.side[n] + e.chamber[n] + e.gears[n] + e.throttle[n] + e.shift[n] + e.exhauster_back[n] +
         vessels;
}

double alongTrailer(const plant::Escapes& e, std::size_t n) {
  return e.trailer[n] + e.chamber[n + 2] + e.alarm + e.release_pipe;
}

}  // namespace

double calcEscapeHeardAt(const plant::Escapes& e, Place place) {
  switch (place) {
    case Place::kCab1:
      return inCab(e, 0);
    case Place::kCab2:
      return inCab(e, 1);
    case Place::kEnd1:
      return e.end[0];
    case Place::kEnd2:
      return e.end[1];
    case Place::kBetween:
      return e.between;
    case Place::kSide1:
      return alongMotorCar(e, 0) + kFromBeside * e.between;
    case Place::kEngine1:
      return alongMotorCar(e, 0);
    case Place::kSide2:
      return alongMotorCar(e, 1) + kFromBeside * e.between;
    case Place::kEngine2:
      return alongMotorCar(e, 1);
    case Place::kTrailer1:
      return alongTrailer(e, 0) + kFromBeside * e.between;
    case Place::kTrailer2:
      return alongTrailer(e, 1) + kFromBeside * e.between;
    case Place::kSaloon:
      return e.alarm;
    default:
      return 0.0;
  }
}

double calcHiss(double flow_kg_s) {
  const double heard = std::max(0.0, flow_kg_s - kSilentKgS);
  return heard / (heard + kHalfKgS);
}

}  // namespace cabwright::unit
