// SPDX-License-Identifier: GPL-3.0-or-later
// Where the spots stand on the drawing: side 1 below, side 2 above, cab 1 on the right.
#include <QtGlobal>
#include <array>
#include <deque>
#include <string>

#include "desk/draw_unit.h"
#include "desk/spots.h"

namespace cabwright::desk {
namespace {

// One of each drive line; `off` from the middle of the unit.
struct LineSpot {
  const char* id;
  const char* name;
  double x, off;
};
constexpr std::array kLineSpots{
    LineSpot{"coupling", QT_TRANSLATE_NOOP("Spot", "Coupling and freewheel %1"), 992, kAxisOff},
    LineSpot{"gearbox", QT_TRANSLATE_NOOP("Spot", "Gearbox %1"), 936, kAxisOff},
    LineSpot{"engine", QT_TRANSLATE_NOOP("Spot", "Engine %1"), 1068, kAxisOff},
    LineSpot{"compressor", QT_TRANSLATE_NOOP("Spot", "Compressor %1"), 1180, kAxisOff},
    LineSpot{"exhauster", QT_TRANSLATE_NOOP("Spot", "Exhauster %1"), 1222, kAxisOff},
    LineSpot{"generator", QT_TRANSLATE_NOOP("Spot", "Generator %1"), 1264, kAxisOff},
    LineSpot{"fuel", QT_TRANSLATE_NOOP("Spot", "Fuel of engine %1"), 900, kOuterOff},
    LineSpot{"throttle_motor", QT_TRANSLATE_NOOP("Spot", "Throttle motor %1"), 1006, kOuterOff},
    LineSpot{"starter", QT_TRANSLATE_NOOP("Spot", "Starter %1"), 1050, kOuterOff},
    LineSpot{"panel", QT_TRANSLATE_NOOP("Spot", "Panel of engine %1"), 1094, kOuterOff},
    LineSpot{"cooling", QT_TRANSLATE_NOOP("Spot", "Cooling of engine %1"), 1142, kOuterOff},
    LineSpot{"brake_cylinder", QT_TRANSLATE_NOOP("Spot", "Brake cylinder %1"), 1200, kOuterOff},
    LineSpot{"door", QT_TRANSLATE_NOOP("Spot", "Doors, side %1"), 430, kOuterOff},
    LineSpot{"side", QT_TRANSLATE_NOOP("Spot", "Beside car 1, side %1"), 1068, kBesideOff},
};

// One of each cab, as it stands in cab 1; cab 2 is its mirror image.
constexpr std::array kCabSpots{
    LineSpot{"gauges", QT_TRANSLATE_NOOP("Spot", "Gauges of cab %1"), 1438, -20},
    LineSpot{"lamps", QT_TRANSLATE_NOOP("Spot", "Lamps of cab %1"), 1438, 20},
    LineSpot{"controls", QT_TRANSLATE_NOOP("Spot", "Controls of cab %1"), 1398, 0},
    LineSpot{"valve", QT_TRANSLATE_NOOP("Spot", "Brake valves of cab %1"), 1398, -42},
    LineSpot{"device", QT_TRANSLATE_NOOP("Spot", "Safety device of cab %1"), 1398, 42},
    LineSpot{"equipment", QT_TRANSLATE_NOOP("Spot", "Equipment of cab %1"), 1364, 70},
    LineSpot{"handbrake", QT_TRANSLATE_NOOP("Spot", "Handbrake of car %1"), 1364, -70},
    LineSpot{"end", QT_TRANSLATE_NOOP("Spot", "End %1"), 1492, 0},
};

struct OwnSpot {
  const char* id;
  const char* name;
  int number;
  double x, off;
};
constexpr std::array kOwnSpots{
    OwnSpot{"final_drive1", QT_TRANSLATE_NOOP("Spot", "Final drive %1"), 1, 858, kAxisOff},
    OwnSpot{"final_drive2", QT_TRANSLATE_NOOP("Spot", "Final drive %1"), 2, 820, -kAxisOff},
    OwnSpot{"brake_cylinder3", QT_TRANSLATE_NOOP("Spot", "Brake cylinder %1"), 3, 290, kOuterOff},
    OwnSpot{"brake_cylinder4", QT_TRANSLATE_NOOP("Spot", "Brake cylinder %1"), 4, 290, -kOuterOff},
    OwnSpot{"main_reservoir", QT_TRANSLATE_NOOP("Spot", "Main reservoir"), 0, 1264, kOuterOff},
    OwnSpot{"control_reservoir", QT_TRANSLATE_NOOP("Spot", "Control reservoir"), 0, 1264,
            -kOuterOff},
    OwnSpot{"train_pipe", QT_TRANSLATE_NOOP("Spot", "Train pipe"), 0, 1124, 0},
    OwnSpot{"cupboard", QT_TRANSLATE_NOOP("Spot", "Electric cupboard"), 0, 1312, -kAxisOff},
    OwnSpot{"horn", QT_TRANSLATE_NOOP("Spot", "Horn valve"), 0, 1434, -68},
    OwnSpot{"hoses", QT_TRANSLATE_NOOP("Spot", "Hoses between the cars"), 0, 740, -28},
    OwnSpot{"jumper", QT_TRANSLATE_NOOP("Spot", "Jumper between the cars"), 0, 740, 28},
    OwnSpot{"battery", QT_TRANSLATE_NOOP("Spot", "Battery"), 0, 512, kOuterOff},
    OwnSpot{"release_reservoir", QT_TRANSLATE_NOOP("Spot", "Release reservoir"), 0, 372, 0},
    OwnSpot{"alarm", QT_TRANSLATE_NOOP("Spot", "Passenger alarm"), 0, 576, -kAxisOff},
    OwnSpot{"blocks", QT_TRANSLATE_NOOP("Spot", "Blocks and tyres"), 0, 214, kAxisOff + 20},
};

// Names live as long as the program.
std::string_view keep(std::string id) {
  static std::deque<std::string> kept;
  return kept.emplace_back(std::move(id));
}

std::vector<Spot> makeSpots() {
  std::vector<Spot> spots;
  for (int n = 1; n <= 2; ++n) {
    const double side = n == 1 ? 1 : -1;
    for (const LineSpot& s : kLineSpots)
      spots.push_back(
          {keep(s.id + std::to_string(n)), s.name, n, QPointF(s.x, kUnitMiddle + side * s.off)});
    for (const LineSpot& s : kCabSpots)
      spots.push_back({keep(s.id + std::to_string(n)), s.name, n,
                       QPointF(n == 1 ? s.x : kUnitWidth - s.x, kUnitMiddle + s.off)});
  }
  for (const OwnSpot& s : kOwnSpots)
    spots.push_back({s.id, s.name, s.number, QPointF(s.x, kUnitMiddle + s.off)});
  return spots;
}

}  // namespace

const std::vector<Spot>& spotTable() {
  static const std::vector<Spot> spots = makeSpots();
  return spots;
}

}  // namespace cabwright::desk
