// SPDX-License-Identifier: GPL-3.0-or-later
// Air is heard where it escapes, by what the plant lets through, and by nothing else.
#include "unit/hissing.h"

#include <gmock/gmock.h>

#include <set>

#include "unit_fixture.h"

namespace cabwright::unit {
namespace {

double hissAt(const Unit& unit, Place place) {
  return calcHiss(calcEscapeHeardAt(unit.readings().escape, place));
}

std::set<std::string> whereItHisses(const Unit& unit) {
  std::set<std::string> places;
  for (const PlaceInfo& p : placeTable()) {
    if (hissAt(unit, p.id) > 0.1) places.insert(std::string(p.name));
  }
  return places;
}

// The trainee's device let go bleeds for five seconds; after that the cab is quiet.
Unit quietUnit(UnitStart s = preparedStart()) {
  Unit unit = makeUnit(s);
  run(unit, 0.5);
  return unit;
}

struct Leak {
  std::string how;  ///< an action of the instructor
  std::set<std::string> heard_at;
};
const std::vector<Leak> kVacuumLeaks{
    {"set end1.hose off", {"end1"}},
    {"set end2.hose off", {"end2"}},
    {"condition end2.hoses split", {"end2"}},
    {"condition between.hoses chafed", {"between", "side1", "side2", "trailer1", "trailer2"}},
    {"condition side2.pipes chafed", {"side2", "engine2"}},
    {"condition trailer1.pipes chafed", {"trailer1"}},
    {"condition side1.brake_cylinder bag_torn", {"side1", "engine1"}},
    {"condition trailer2.cord caught", {"trailer2"}},
    {"condition trailer1.underframe seam", {"trailer1", "trailer2"}},
    {"set cab2.guards_valve 0.1", {"cab2"}},
    {"set cab1.brake full", {"cab1"}},
    {"set alarm pulled", {"saloon", "trailer1", "trailer2"}},
    {"fault drivers_valve2.lap_to_air_c 2", {"cab2"}},
    {"fault exhauster2.backflow_c 5", {"side2", "engine2"}},
    {"fault vacuum.guards_leak_c 4", {"cab1", "cab2"}},
};
const std::vector<Leak> kAirLeaks{
    {"set drain_main open", {"side1", "engine1"}},
    {"set drain_control open", {"side2", "engine2"}},
    {"condition between.air_hose hisses", {"between", "side1", "side2", "trailer1", "trailer2"}},
    {"condition trailer2.drains cracked", {"trailer2"}},
    {"condition side1.pipes air_joint", {"side1", "engine1"}},
    {"condition side2.pipes air_joint", {"side2", "engine2"}},
};

TEST(Hiss, ASoundUnitIsQuiet) { EXPECT_EQ(whereItHisses(quietUnit()), std::set<std::string>{}); }

TEST(Hiss, EachLeakIsHeardWhereItIsAndNowhereElse) {
  for (const auto& leaks : {kVacuumLeaks, kAirLeaks}) {
    for (const Leak& leak : leaks) {
      Unit unit = quietUnit();
      doIt(unit, "instructor: " + leak.how);
      run(unit, 0.1);
      EXPECT_EQ(whereItHisses(unit), leak.heard_at) << leak.how;
    }
  }
}

TEST(Hiss, BetweenTheCarsIsLoudestThereAndNotAtTheEngines) {
  Unit unit = quietUnit();
  doIt(unit, "instructor: condition between.hoses chafed");
  run(unit, 0.1);
  for (const Place beside : {Place::kSide1, Place::kSide2, Place::kTrailer1, Place::kTrailer2}) {
    EXPECT_LT(hissAt(unit, beside), 0.7 * hissAt(unit, Place::kBetween));
  }
  EXPECT_EQ(hissAt(unit, Place::kEngine1), 0.0);
}

TEST(Hiss, IsSilentWithNothingInTheVessel) {
  UnitStart s = preparedStart();
  s.plant.main_psi = s.plant.control_psi = 0.0;
  s.plant.train_pipe_inhg = s.plant.chamber_inhg = s.plant.release_pipe_inhg = 0.0;
  for (const auto& leaks : {kVacuumLeaks, kAirLeaks}) {
    for (const Leak& leak : leaks) {
      Unit unit = quietUnit(s);
      doIt(unit, "instructor: " + leak.how);
      run(unit, 0.1);
      EXPECT_EQ(whereItHisses(unit), std::set<std::string>{}) << leak.how;
    }
  }
}

TEST(Hiss, GrowsWithThePressureAndReachesTheEarThere) {
  double last = 0.0;
  for (double psi : {5.0, 30.0, 60.0, 90.0}) {
    UnitStart s = preparedStart();
    s.plant.main_psi = s.plant.control_psi = psi;
    s.place = "side1";
    Unit unit = quietUnit(s);
    doIt(unit, "instructor: condition side1.pipes air_joint");
    run(unit, 0.1);
    EXPECT_GT(value(unit, "heard.hiss"), last + 0.02) << psi;
    last = value(unit, "heard.hiss");
  }
}

TEST(Hiss, DiesAwayAsTheVesselEmpties) {
  UnitStart s = preparedStart();
  s.place = "side1";
  Unit unit = quietUnit(s);
  doIt(unit, "instructor: set drain_main open");
  run(unit, 0.2);
  EXPECT_GT(value(unit, "heard.hiss"), 0.9);
  EXPECT_TRUE(runUntil(unit, 120.0, [](const Frame& f) { return f[Signal::kHeardHiss] < 0.05F; }));
}

TEST(Hiss, OfALeakingShiftCylinderIsHeardOnlyWithADirectionSelected) {
  Unit unit = quietUnit();
  doIt(unit, "instructor: fault final_drive2.leak_c 1");
  run(unit, 1.0);
  EXPECT_EQ(hissAt(unit, Place::kEngine2), 0.0);
  doIt(unit, "set cab1.reverser forward");
  run(unit, 1.0);
  EXPECT_GT(hissAt(unit, Place::kEngine2), 0.2);
  EXPECT_LT(hissAt(unit, Place::kEngine1), 0.05);
}

}  // namespace
}  // namespace cabwright::unit
