// SPDX-License-Identifier: GPL-3.0-or-later
// Faults of the gearboxes: bands, clutch, valves, oil.
#include "fault/catalogue_rows.h"

namespace cabwright::fault {

namespace {

FaultSystem bandFaults() {
  return {"gearbox",
          2,
          3,
          {
              {.name = "gearbox#.band@_worn",
               .where = "gearbox #, band of gear @",
               .text = "the band's lining is worn",
               .symptom = "in that gear only the tachometer of that engine runs up, pull uneven; "
                          "hot smell on its side",
               .decision = "shut off; light throttle in that gear to the next stop only, isolate",
               .size = {"%", 5.0, 80.0, 55.0, false, "lost"},
               .gradual = true,
               .numbers = {{"gearbox#.band@.friction", How::kScale, leftOf}}},
              {.name = "gearbox#.band@_leak",
               .where = "gearbox #, cylinder of gear @",
               .text = "the band's cylinder leaks",
               .symptom = "in that gear the air falls and the gear is slow to take hold",
               .decision = "gauge first, then one gear or all; avoid that gear, report",
               .size = {"mm", 0.2, 6.0, 1.5},
               .gradual = true,
               .numbers = {{"gearbox#.band@.leak_c", How::kAdd, hole}}},
              {.name = "gearbox#.band@_slow",
               .where = "gearbox #, pipe to the cylinder of gear @",
               .text = "dirt or frost chokes the pipe to the cylinder",
               .symptom = "that gear takes hold late with air good at the gauge",
               .decision = "longer pause in that gear; report",
               .size = {"%", 30.0, 100.0, 80.0, false, "closed"},
               .gradual = true,
               .numbers = {{"gearbox#.band@.fill_c", How::kScale, leftOf}}},
              {.name = "gearbox#.drum@_seized",
               .where = "gearbox #, drum of gear @",
               .text = "the drum is seized to the case",
               .symptom = "pulls without a gear selected, fights every other gear; engine labours",
               .decision = "stop, shut off, isolate that engine and its drive",
               .numbers = {{"gearbox#.band@.seized", How::kTo, one}}},
          }};
}

FaultSystem gearValveFaults() {
  return {"gearbox",
          2,
          4,
          {
              {.name = "gearbox#.gear@_valve_open",
               .where = "gearbox #, valve of gear @",
               .text = "the gear's valve is stuck open",
               .symptom = "creeps in neutral; another gear fights it: the engine labours, heat",
               .decision = "no second gear against it; stop, isolate that engine",
               .numbers = {{"gear_valve#.gear@_stuck", How::kTo, one}}},
              {.name = "gearbox#.gear@_valve_shut",
               .where = "gearbox #, valve of gear @",
               .text = "the gear's valve is stuck shut",
               .symptom = "no take-up in that gear on one engine only, the others good",
               .decision = "go on with the other engine in that gear; report",
               .numbers = {{"gear_valve#.gear@_stuck", How::kTo, minusOne}}},
          }};
}

FaultSystem boxFaults() {
  return {"gearbox",
          2,
          1,
          {
              {.name = "gearbox#.clutch_worn",
               .where = "gearbox #, direct clutch",
               .text = "the plates of the direct clutch are worn",
               .symptom = "in top only the tachometer runs up without speed",
               .decision = "third gear, light throttle; report",
               .size = {"%", 5.0, 95.0, 60.0, false, "lost"},
               .gradual = true,
               .numbers = {{"gearbox#.clutch.capacity_nm_psi", How::kScale, leftOf}}},
              {.name = "gearbox#.clutch_leak",
               .where = "gearbox #, clutch cylinder",
               .text = "the clutch cylinder leaks",
               .symptom = "in top the air falls and the gear is slow to take hold",
               .decision = "gauge first, then one gear or all; stay in third, report",
               .size = {"mm", 0.2, 6.0, 1.5},
               .gradual = true,
               .numbers = {{"gearbox#.clutch.leak_c", How::kAdd, hole}}},
              {.name = "gearbox#.two_bands_on",
               .where = "gearbox #, valves of gears 1 and 2",
               .text = "the valves of first and second gear are both open",
               .symptom = "the box is locked against itself: no movement, the engine is held down",
               .decision = "throttle shut at once; isolate that engine and its drive",
               .numbers = {{"gear_valve#.gear1_stuck", How::kTo, one},
                           {"gear_valve#.gear2_stuck", How::kTo, one}}},
              {.name = "gearbox#.oil_low",
               .where = "gearbox #",
               .text = "the gearbox is low on oil",
               .symptom = "wet bell and drips on the ground; that side pulls a little less",
               .decision = "report; isolate that engine rather than run it dry",
               .size = {"%", 5.0, 90.0, 50.0, false, "missing"},
               .gradual = true,
               .numbers = {{"gearbox#.oil_level", How::kScale, leftOf}}},
          }};
}

}  // namespace

std::vector<FaultSystem> gearFaults() { return {bandFaults(), gearValveFaults(), boxFaults()}; }

}  // namespace cabwright::fault
