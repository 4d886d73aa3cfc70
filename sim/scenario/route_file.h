// SPDX-License-Identifier: GPL-3.0-or-later
// Route files. Positions in metres along the line, growing "up" (the way car 1 leads):
//
//   title = "..."   text = "..."   easing = "40 m"   display = 3
//   [[grade]]     from = 0    slope = "level" | "rise 1 in 80" | "fall 1 in 200" | "rise 12.5
//   permille"
//                 curve_radius = "400 m"       # left out: straight
//   [[signal]]    name = "H2"  at = 120   faces = "up" | "down"   sighting = "400 m"
//                 shows = "danger" | "clear"   # at the start; danger if left out
//   [[platform]]  name = "..."  from, to   mark_up, mark_down (where the front stops)   side = 1 |
//   2
//   [[limit]]     from = 0    speed = "30 mph"
//   [[board]]     at = 500    says = "whistle"
//   [[berth]]     name = "siding_2"   at = -300   # where a unit can stand at the start (its
//   middle)
//
// Curve resistance from the radius after Roeckl: 650/(R - 55) N/kN from 300 m up, 500/(R - 30)
// below (standard gauge; in the usual handbooks of train dynamics).
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "scenario/file_fault.h"
#include "unit/route.h"

namespace cabwright::scenario {

struct Board {
  double at_m = 0;
  std::string says;
};
struct Berth {
  std::string name;
  double at_m = 0;
};

struct RouteFile {
  std::string text;
  unit::Route route;  ///< name: that of the file on its shelf
  std::vector<Board> boards;
  std::vector<Berth> berths;
};

/// `name`: what scenarios call it.
[[nodiscard]] std::variant<RouteFile, FileFaults> parseRoute(const std::string& name,
                                                             const SourceFile& file);

/// Curve resistance in N per tonne; radius in m, 80 or more.
[[nodiscard]] double calcCurveResistance(double radius_m);

}  // namespace cabwright::scenario
